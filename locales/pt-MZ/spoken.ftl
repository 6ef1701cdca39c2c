### Português de Moçambique, rascunho: as palavras da rádio e do telefone. Ainda não foi lido por quem fala bem a língua.
### Draft. Every literal text is recorded as it stands here, cut at the { … }.
### No digits, no abbreviations. Numbers: SAY, days: DAY and SPAN, measures: MEASURE.
### Forms: feminine for plantas, batatas, ramas, camadas, linhas, mãos; cardinal (masculine) for quilos, litros, metros,
### centímetros, bidões, molhos, recipientes, nós; day behind "dia". Address: the imperative of "você", without the pronoun.
### A date is "dia … de …" and takes its article from the sentence around it ("até ao", "por volta do", "no").

## Dates and units

# With capitals as in written.ftl: captions show these words.
month = { $month ->
    [1] Janeiro
    [2] Fevereiro
    [3] Março
    [4] Abril
    [5] Maio
    [6] Junho
    [7] Julho
    [8] Agosto
    [9] Setembro
    [10] Outubro
    [11] Novembro
   *[12] Dezembro
 }
date = dia { SAY($day, form: "day") } de { month }
# Behind "por volta da".
week = { $week ->
    [1] primeira
    [2] segunda
    [3] terceira
    [4] quarta
   *[5] última
 } semana de { month }
span = entre o { DAY($from) } e o { DAY($to) }
span-day = no { DAY($from) }
unit-kilogram = { SAY($n, form: "cardinal") } { $n ->
    [one] quilo
   *[other] quilos
 }
unit-litre = { SAY($n, form: "cardinal") } { $n ->
    [one] litro
   *[other] litros
 }
# doubt: a decimal is said with "vírgula"; many would say "dois metros e meio".
unit-metre = { SAY($n, form: "cardinal") } { $n ->
    [one] metro
   *[other] metros
 }
unit-centimetre = { SAY($n, form: "cardinal") } { $n ->
    [one] centímetro
   *[other] centímetros
 }
unit-hand = { SAY($n, form: "feminine") } { $n ->
    [one] mão
   *[other] mãos
 }
# doubt: "ponta do polegar até à dobra" for the upper joint of the thumb as a measure.
unit-thumb-joint = { SAY($n, form: "feminine") } { $n ->
    [one] ponta do polegar até à dobra
   *[other] pontas do polegar até à dobra
 }
# doubt: "bidão" for the jerrycan of twenty litres; "galão" or "lata" in places, and whether its size should be said.
unit-jerrycan = { SAY($n, form: "cardinal") } { $n ->
    [one] bidão
   *[other] bidões
 }
unit-bundle = { SAY($n, form: "cardinal") } { $n ->
    [one] molho
   *[other] molhos
 }

## Opening and closing

# doubt: "batatas" alone could be taken for the other potato (batata-reno); each message should be introduced as batata-doce.
opening = Batata-doce, desta colheita até às próximas chuvas. { $kind ->
    [zone] As chuvas são esperadas por volta da { WEEK($rains) }. As quantidades que vai ouvir são para { SAY($roots, form: "feminine") } batatas. Use mais ou menos, conforme a sua machamba.
   *[other] As chuvas são esperadas por volta do { DAY($rains) }.
 }
closing = O seu extensionista conhece as variedades, as datas e as regras da zona. Se o conselho do extensionista for diferente desta mensagem, siga o conselho do extensionista.

## Steps

# doubt: "plantas-mãe" for the mother plants.
# doubt: members are addressed one by one ("escolha", "marque") also where a group is spoken to.
mark-plants = Escolha as plantas-mãe { SPAN($when) }. Marque { SAY($plants, form: "feminine") } plantas fortes. { $kind ->
    [group] Cada membro marca { SAY($plants_each, form: "feminine") } { $plants_each ->
        [one] planta.
       *[other] plantas.
     }
   *[other] Espete um pau ao lado de cada uma.
 } Escolha só plantas com folhas grandes e limpas, sem nenhum sinal de doença. Elas vão dar cerca de { SAY($roots, form: "feminine") } batatas para guardar.
# doubt: "debaixo de um telhado" for under cover.
gather-sand = Traga areia seca { SPAN($when) }. Precisa de { MEASURE($sand_l, unit: "litre") }, cerca de { MEASURE($sand_kg, unit: "kilogram") }. Escolha areia grossa e limpa. Seque-a debaixo de um telhado e deixe-a arrefecer. Areia fina, húmida ou quente faz apodrecer as batatas.
# doubt: "pé do caule" for the foot of the stem.
check-plants = Veja outra vez as plantas marcadas { SPAN($when) }. Procure folhas pequenas, enroladas ou com manchas. Procure ramas que não crescem, e buracos no pé do caule. Se tiver dúvida, tire o pau e não aproveite nada dessa planta.
# doubt: "o comprimento da mão" (wrist to fingertips); "um palmo" is better known, but longer.
cut-vines = Corte as ramas das plantas marcadas { SPAN($when) }. Deixe um pedaço de caule do comprimento da mão. A casca das batatas fica mais rija, e elas duram mais tempo.
# doubt: "cave" for digging out the roots; "arranque" or "colha" may be more usual.
harvest = Cave as batatas { SPAN($when) }. Cave só em terra seca, e levante as batatas sem as ferir. Fique com { SAY($roots, form: "feminine") } batatas médias, mais ou menos do comprimento da mão, com a casca inteira. As batatas feridas vão para a cozinha, não são para guardar. Tire a terra com a mão e nunca lave as batatas. Deixe-as algumas horas à sombra.
# doubt: "malha apertada" for a tight basket; "panela" for a pot ("pote" in places).
fill-container = Ponha as batatas na areia { SPAN($when) }. Use uma bacia, uma panela, um balde ou um cesto de malha apertada. Sacos não servem. Forre por dentro com papel, e encha no lugar onde vai ficar. O lugar tem de ser fresco, seco e com sombra, longe de crianças, animais e chuva. Precisa de { SAY($containers, form: "cardinal") } { $containers ->
    [one] recipiente.
   *[other] recipientes.
 } Comece com { MEASURE($base_cm, unit: "centimetre") } de areia. { $layer_widths ->
    [uneven] Ponha no máximo { SAY($roots_per_layer, form: "feminine") } batatas na camada de baixo, e no máximo { SAY($roots_top, form: "feminine") } na camada de cima.
   *[even] Ponha no máximo { SAY($roots_per_layer, form: "feminine") } batatas em cada camada.
 } As batatas não podem tocar umas nas outras nem nos lados. Cubra-as com { MEASURE($layer_cm, unit: "centimetre") } de areia, e ponha as seguintes. Faça { SAY($layers, form: "feminine") } { $layers ->
    [one] camada.
   *[other] camadas.
 } Acabe com { MEASURE($top_cm, unit: "centimetre") } de areia. Ela afasta ratos, insectos e galinhas. Não ponha tampa.
# doubt: "com bolor" for mouldy and "furadas" for bored by insects.
monthly-check = Veja as batatas todos os meses, { $turn ->
    [next] a próxima vez no
   *[first] a primeira vez no
 } { DAY($first) }. Tire todas as batatas e olhe bem para cada uma. As que estiverem podres, com bolor ou furadas, enterre-as fundo ou queime-as. Esfregue os rebentos até caírem. Arrume de novo as batatas boas, da mesma maneira, e escreva quantas restam. Até à próxima vez, não mexa nelas.
# doubt: "canteiro" for the seedbed; "viveiro" or "alfobre" in places.
prepare-bed = Prepare o canteiro { SPAN($when) }. Faça-o com { MEASURE($bed_length_m, unit: "metre") } de comprimento e { MEASURE($bed_width_m, unit: "metre") } de largura, perto da água. Solte bem a terra. Ponha uma vedação contra cabritos e galinhas.
last-check = Veja as batatas pela última vez no { DAY($first) }. As que estiverem podres, com bolor ou furadas, enterre-as fundo ou queime-as. Desta vez deixe ficar os rebentos. As batatas boas vão agora para o canteiro.
plant-bed = Plante as batatas no canteiro { SPAN($when) }. Deite-as em linhas, com cerca de { MEASURE($spacing_cm, unit: "centimetre") } entre linha e linha. Faça { SAY($bed_rows, form: "feminine") } { $bed_rows ->
    [one] linha.
   *[other] linhas.
 } Cubra as batatas com pouca terra.
water-bed = Regue o canteiro { SPAN($when) }. Quando estiver cheio de folhas, dê { MEASURE($water_l, unit: "litre") } todos os dias. Isso dá { MEASURE($jerrycans, unit: "jerrycan") }. Enquanto as plantas forem novas, dê menos. Em dias quentes e de vento, dê mais. Pare quando a chuva já fizer esse trabalho.
# doubt: "rebento" is said for the sprout on the root and, here, for the shoot that has grown from it.
# doubt: "nó" for a node; farmers may say "olho".
# doubt: "toco" for the stub left in the bed.
cut-for-planting = Quando as chuvas já tiverem chegado, { SPAN($when) }, corte ramas para plantar. Corte ramas de { MEASURE($cutting_cm, unit: "centimetre") }, com pelo menos { SAY($nodes, form: "cardinal") } nós, só de rebentos saudáveis. { $plan_by ->
    [practice] Segundo a prática comum, o primeiro corte dá cerca de
   *[print] O primeiro corte dá cerca de
 } { SAY($first_cuttings_low, form: "feminine") } a { SAY($first_cuttings_high, form: "feminine") } ramas. Deixe tocos. Eles dão mais ramas depois de quatro a seis semanas. Guarde as ramas à sombra, e plante-as dentro de dois dias.
# doubt: "camalhão" for a ridge and "montículo" for a mound; "matuto" is said in parts of the north.
plant-field = Plante a machamba { SPAN($when) }, mas só quando a terra estiver húmida. { $layout ->
    [own] Cada um planta nos camalhões ou montículos da sua machamba.
    [mounds] Em cada montículo ponha { SAY($on_mound, form: "feminine") } { $on_mound ->
        [one] rama.
       *[other] ramas.
     }
   *[ridges] Ponha uma rama a cada { MEASURE($along_cm, unit: "centimetre") } no camalhão.
 } Enterre dois ou três nós. Duas semanas depois, volte a plantar nas falhas.
# doubt: "gorgulho" for the sweet potato weevil; farmers may just say "bicho da batata".
first-harvest = Procure as primeiras batatas { SPAN($when) }. Apalpe a terra debaixo de algumas plantas, à procura de batatas de tamanho para comer. Não deixe batatas maduras muito tempo em terra seca. O gorgulho encontra-as. Cave as últimas até ao { DAY($last_harvest) }.

## Cautions

caution-rot = Cuidado. Nunca coma batatas podres, com bolor ou furadas. Nunca as dê aos animais, e não as plante. Não corte a parte má para comer o resto. Mesmo as partes que parecem boas podem ter veneno. Enterre essas batatas fundo ou queime-as.
# doubt: "vírus" may be unknown; "doença das folhas" would be plainer but less exact.
caution-virus = Cuidado. Folhas com manchas, pequenas ou torcidas são sinais de vírus. Ramas que não crescem também são. Nunca tire batatas nem ramas de uma planta assim.
# doubt: "rachas" for cracks in the soil; "fendas" in places.
caution-cracks = O gorgulho chega às batatas pelas rachas da terra. Puxe terra para cima das rachas logo que as vir.
caution-heavy-sand = Cuidado, a areia é pesada. Carregue no máximo { MEASURE($load_kg, unit: "kilogram") } de cada vez. Encha o recipiente no lugar onde vai ficar, e não o levante quando estiver cheio.
# doubt: "margem alta e a pique" for a steep bank; "barranco" is for many a gully, "ribanceira" is less known.
caution-riverbed = Tire areia do leito do rio só quando o rio estiver seco. Nunca cave debaixo de uma margem alta e a pique, nem perto dela. A margem pode cair e enterrar quem lá estiver. Tire areia só onde as regras do lugar o permitem.
caution-water-children = Tome conta das crianças. Não as deixe brincar perto de água, poços ou covas. Tape a água guardada, e ponha uma vedação à volta dos poços e das covas. Não deixe cabritos e galinhas entrar no canteiro.
caution-store-dry = Nunca regue as batatas guardadas. A areia tem de ficar seca do primeiro ao último dia.
caution-forecast = Estas datas são médias de anos passados, não são uma previsão para este ano. As chuvas podem vir mais cedo ou mais tarde. Plante só quando a terra estiver húmida.
caution-try-first = Se isto é novo para si, comece com poucas batatas. Guarde também algumas ramas à maneira antiga.

## Questions for a meeting, each after its step

# doubt: whether the questions, without o senhor or a senhora, sound polite enough at a meeting.
ask-mark-plants = Quais são as plantas mais fortes da sua machamba?
ask-gather-sand = Quem tem areia seca aqui perto, e como a tiramos sem perigo?
ask-check-plants = Aqui, como são as plantas doentes?
ask-cut-vines = O que acontece se cortar a rama curta demais?
ask-harvest = Como vai cavar sem ferir as batatas?
ask-fill-container = Em sua casa, onde há um lugar fresco e seco, longe das crianças e dos animais?
ask-monthly-check = O que vê quando as batatas se estragam, e onde as enterra?
ask-prepare-bed = Onde há água, e quem toma conta das crianças?
ask-last-check = Quantas das suas batatas têm rebentos?
ask-plant-bed = O que pode atrasar a plantação?
ask-water-bed = Quando não está, quem rega?
ask-cut-for-planting = Como sabe que as chuvas chegaram mesmo?
ask-plant-field = Que parte da machamba planta primeiro?
ask-first-harvest = Que ramas vai guardar para a próxima época?
