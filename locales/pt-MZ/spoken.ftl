### Português de Moçambique, rascunho: as palavras da rádio e do telefone. Ainda não foi lido por quem fala bem a língua.
### Draft. Every literal text is recorded as it stands here, cut at the { … }.
### No digits, no abbreviations. Numbers: SAY, days: DAY and SPAN, measures: MEASURE.
### Forms of numbers: feminine for plantas, batatas, ramas, camadas, linhas, mãos, dobras, horas, idas; cardinal (masculine) for
### quilos, litros, metros, centímetros, baldes, bidões, molhos, recipientes, nós, dias, anos; day behind "dia".
### Forms of days: "on" (no dia …), "from" (do dia …), "to" (ao dia …), and for spans "between", "and", "or": each holds the
### small words and contractions that lean on it.
### Address: the imperative of "você", without the pronoun; one listener, also in a group ("cada pessoa marca").
### "Batata-doce" comes first in every message; the trade's words are in glossary.toml.

## What must never be lost. The messages below refer to these sentences.

# doubt: "buracos de bicho" for insect holes; "bicho" is any small creature that eats crops, plainer than "insecto".
-bad-roots = Se uma batata-doce estiver podre, com bolor ou com buracos de bicho, nunca a coma. Nunca a dê aos animais e nunca a plante. Enterre-a bem fundo ou queime-a.
-take-nothing = Não aproveite nada de uma planta assim: nem batatas, nem ramas.
# doubt: "margem alta e a pique" for a steep bank; "barranco" and "ravina" are for many a gully, "ribanceira" is less known.
-dry-riverbed = Tire areia só onde as regras do lugar o permitem, e de um rio só quando o rio estiver seco. Nunca cave perto de uma margem alta e a pique, porque a terra pode cair e enterrar quem lá estiver.
-children-water = Tape a água guardada, e não deixe as crianças chegar perto dela.
-keep-dry = Nunca regue a areia, porque areia húmida faz apodrecer as batatas.
# doubt: "só em terra húmida" could be heard as a place (the low, wet land), so the sentence says when.
-moist-soil = Plante a machamba só quando a terra estiver húmida, porque a terra seca mata as ramas.

## Dates and units

# Recorded whole with its "de". With capitals as in written.ftl: captions show these words.
month-of = { $month ->
    [1] de Janeiro
    [2] de Fevereiro
    [3] de Março
    [4] de Abril
    [5] de Maio
    [6] de Junho
    [7] de Julho
    [8] de Agosto
    [9] de Setembro
    [10] de Outubro
    [11] de Novembro
   *[12] de Dezembro
 }
# As it is asked for by itself; messages use the forms below, each with its own small words.
# doubt: "dia um" for the first of a month; some say "dia primeiro".
date = dia { SAY($day, form: "day") } { month-of }
date-between = entre o dia { SAY($day, form: "day") } { month-of }
date-and = e o dia { SAY($day, form: "day") } { month-of }
date-or = ou no dia { SAY($day, form: "day") } { month-of }
date-on = no dia { SAY($day, form: "day") } { month-of }
date-from = do dia { SAY($day, form: "day") } { month-of }
date-to = ao dia { SAY($day, form: "day") } { month-of }
week = { $week ->
    [1] primeira
    [2] segunda
    [3] terceira
    [4] quarta
   *[5] última
 } semana { month-of }
span = { DAY($from, form: "between") } { DAY($to, form: "and") }
span-two-days = { DAY($from, form: "on") } { DAY($to, form: "or") }
span-day = { DAY($from, form: "on") }
unit-kilogram = { SAY($n, form: "cardinal") } { $n ->
    [one] quilo
   *[other] quilos
 }
unit-litre = { SAY($n, form: "cardinal") } { $n ->
    [one] litro
   *[other] litros
 }
# Lengths and hands come in halves: $whole is the number below, $half says whether a half is added.
unit-metre = { $half ->
    [yes] { $whole ->
        [0] meio metro
        [one] { SAY($whole, form: "cardinal") } metro e meio
       *[other] { SAY($whole, form: "cardinal") } metros e meio
     }
   *[no] { SAY($whole, form: "cardinal") } { $whole ->
        [one] metro
       *[other] metros
     }
 }
unit-centimetre = { SAY($n, form: "cardinal") } { $n ->
    [one] centímetro
   *[other] centímetros
 }
# doubt: "mão" as a measure is from the wrist to the fingertips; "palmo" is the better known measure, but it is longer.
unit-hand = { $half ->
    [yes] { $whole ->
        [0] meia mão
        [one] { SAY($whole, form: "feminine") } mão e meia
       *[other] { SAY($whole, form: "feminine") } mãos e meia
     }
   *[no] { SAY($whole, form: "feminine") } { $whole ->
        [one] mão
       *[other] mãos
     }
 }
# doubt: "dobra do polegar" for the upper joint of the thumb as a measure.
unit-thumb-joint = { $half ->
    [yes] { $whole ->
        [0] meia dobra do polegar
        [one] { SAY($whole, form: "feminine") } dobra e meia do polegar
       *[other] { SAY($whole, form: "feminine") } dobras e meia do polegar
     }
   *[no] { SAY($whole, form: "feminine") } { $whole ->
        [one] dobra do polegar
       *[other] dobras do polegar
     }
 }
unit-bucket = { SAY($n, form: "cardinal") } { $n ->
    [one] balde
   *[other] baldes
 }
# doubt: "bidão" for the jerrycan; "galão" or "lata" in places.
unit-jerrycan = { SAY($n, form: "cardinal") } { $n ->
    [one] bidão
   *[other] bidões
 }
unit-bundle = { SAY($n, form: "cardinal") } { $n ->
    [one] molho
   *[other] molhos
 }

## Opening and closing. $season says how the day stands to the rains, $variant which of three ways to say it.

# doubt: "produtores" for the farmers; "camponeses" or "agricultores" may be the word of the place.
opening = { $season ->
    [before] { $variant ->
        [1] Aqui as chuvas costumam começar por volta { DAY($rains, form: "from") }.
        [2] Produtores de batata-doce, vamos contar os dias para trás, a partir das chuvas. Costumam começar por volta { DAY($rains, form: "from") }.
       *[3] Este é o próximo trabalho na batata-doce. As chuvas costumam começar por volta { DAY($rains, form: "from") }.
     }
    [near] { $variant ->
        [1] Produtores de batata-doce, as chuvas podem começar a qualquer dia.
        [2] As chuvas podem começar em breve. Observe o céu e a terra.
       *[3] Produtores de batata-doce, é tempo de ter tudo pronto. As chuvas estão perto.
     }
    [after] { $variant ->
        [1] Produtores de batata-doce, as chuvas já começaram.
        [2] As chuvas chegaram. Este é o próximo trabalho na batata-doce.
       *[3] Produtores de batata-doce, as chuvas já chegaram. Vamos ouvir o que fazer agora.
     }
   *[later] { $variant ->
        [1] Produtores de batata-doce, é isto que há a fazer agora.
        [2] Este é o próximo trabalho na batata-doce.
       *[3] Vamos agora à batata-doce, e ao trabalho que se segue.
     }
 } { $kind ->
    [zone] As quantidades que vai ouvir são para { SAY($roots, form: "feminine") } batatas-doces. Para uma machamba maior use mais, e para uma mais pequena use menos.{ $season ->
        [before] {" "}As datas dos trabalhos antes da colheita são para quem colhe primeiro. Se colher mais tarde, atrase esses trabalhos o mesmo número de dias.
       *[later] {""}
     }
   *[other] {""}
 }
closing = { $variant ->
    [1] Se o seu extensionista disser outra coisa, siga o conselho dele.
    [2] Pergunte também ao seu extensionista, e siga primeiro o que ele disser.
   *[3] O conselho do seu extensionista vale mais do que esta mensagem.
 }

## Steps

# doubt: "batatas de semente" for the roots kept to sprout.
mark-plants = Escolha plantas saudáveis de batata-doce, para tirar batatas de semente. Faça isto { SPAN($when) }. { $kind ->
    [group] O grupo marca { SAY($plants, form: "feminine") } plantas ao todo. Cada pessoa marca { SAY($plants_each, form: "feminine") }.
   *[other] Marque { SAY($plants, form: "feminine") } { $plants ->
        [one] planta.
       *[other] plantas.
     }
 } Escolha só plantas fortes, com folhas grandes e limpas, sem nenhum sinal de doença. Espete um pau na terra ao lado de cada uma. Elas vão dar cerca de { SAY($roots, form: "feminine") } batatas para guardar. Lembre-se: { SAY($plants, form: "feminine") } { $plants ->
    [one] planta, com o seu pau ao lado.
   *[other] plantas, cada uma com o seu pau ao lado.
 }
# doubt: "debaixo de um telhado" for under cover; "espalhe-a" (spread it) is said so that one hears how sand dries there.
gather-sand = Traga areia para guardar as suas batatas-doces. Faça isto { SPAN($when) }. Precisa de cerca de { MEASURE($buckets, unit: "bucket") } de { MEASURE($bucket_l, unit: "litre") }. Escolha areia limpa e grossa, com grãos que se sentem nos dedos. Espalhe-a debaixo de um telhado até ficar bem seca, e use-a só quando estiver fria. Areia fina, húmida ou quente faz apodrecer as batatas. Lembre-se: cerca de { MEASURE($buckets, unit: "bucket") } de areia grossa, seca e fria.
# doubt: "pé do caule" for the foot of the stem.
check-plants = Volte a ver as plantas de batata-doce que marcou. Faça isto { SPAN($when) }. Procure folhas pequenas, enroladas ou com manchas, ramas fracas, ou buracos no pé do caule. Se vir algum destes sinais numa planta, ou se tiver dúvida, tire o pau que a marca.
cut-vines = Corte as ramas das plantas de batata-doce que marcou. Faça isto { SPAN($when) }. Deixe de pé { MEASURE($stem_cm, unit: "centimetre") } de caule, mais ou menos o comprimento de { MEASURE($stem_hands, unit: "hand") }. Assim a casca das batatas fica rija, e elas duram mais tempo.
# doubt: "logo" for soon; in places it means later the same day.
# doubt: "colha" for digging out the roots; "arranque" or "cave" may be more usual.
harvest = Colha as batatas-doces das plantas que marcou. Faça isto { SPAN($when) }. Se a terra estiver molhada, espere até ela secar. Levante as plantas devagar, para a enxada não cortar nenhuma batata. Escolha { SAY($roots, form: "feminine") } { $roots ->
    [one] batata com a casca inteira, mais ou menos do comprimento da sua mão.
   *[other] batatas com a casca inteira, mais ou menos do comprimento da sua mão.
 } Tire a terra com a mão, e nunca lave as batatas. Deixe-as algumas horas à sombra. Não guarde as batatas cortadas pela enxada. Cozinhe-as logo. Lembre-se: guarde { SAY($roots, form: "feminine") } { $roots ->
    [one] batata inteira.
   *[other] batatas inteiras.
 }
# doubt: "as que couberem" (as many as fit) for the layers between.
# doubt: "malha apertada" for a tight basket; "panela" for a pot ("pote" in places).
fill-container = Ponha as suas batatas-doces em areia seca. Faça isto { SPAN($when) }. Precisa de { SAY($containers, form: "cardinal") } { $containers ->
    [one] recipiente
   *[other] recipientes
 }{ $container_kinds ->
    [one] {" "}de cerca de { MEASURE($container_l, unit: "litre") }{ $containers ->
        [one] .
       *[other] {" "}cada um.
     }
   *[several] .
 } Use uma bacia, uma panela, um balde ou um cesto de malha apertada, nunca um saco. { $containers ->
    [one] Encha-o no próprio lugar onde vai ficar.
   *[other] Encha cada um no próprio lugar onde vai ficar.
 } Esse lugar deve ser fresco, seco e à sombra, longe de crianças, animais e chuva. Forre o fundo e os lados com papel. Deite no fundo { MEASURE($base_cm, unit: "centimetre") } de areia. { $layer_widths ->
    [uneven] Na camada de baixo ponha no máximo { SAY($roots_per_layer, form: "feminine") } { $roots_per_layer ->
        [one] batata,
       *[other] batatas,
     } e na camada de cima no máximo { SAY($roots_top, form: "feminine") }.{ $layers ->
        [1] {""}
        [2] {""}
        [3] {" "}Na camada do meio ponha as que couberem.
       *[other] {" "}Nas camadas do meio ponha as que couberem.
     }
   *[even] Em cada camada ponha no máximo { SAY($roots_per_layer, form: "feminine") } { $roots_per_layer ->
        [one] batata.
       *[other] batatas.
     }
 } Nenhuma batata pode tocar noutra, nem nos lados. { $layers ->
    [1] Cubra as batatas com { MEASURE($top_cm, unit: "centimetre") } de areia.
   *[other] Cubra as batatas com { MEASURE($layer_cm, unit: "centimetre") } de areia, e ponha as seguintes. Faça assim, ao todo, { SAY($layers, form: "feminine") } camadas de batatas, mas cubra a última com { MEASURE($top_cm, unit: "centimetre") } de areia.
 } Muita areia por cima afasta ratos, insectos e galinhas. Não ponha tampa, e não deite água.
monthly-check = Verifique todos os meses as batatas-doces guardadas. { $turn ->
    [next] A próxima verificação é
   *[first] A primeira verificação é
 } { DAY($first, form: "on") }. Tire todas as batatas, e olhe bem para cada uma. { -bad-roots } Tire os rebentos das batatas boas, esfregando com a mão. Arrume-as de novo em areia seca, da mesma maneira. Escreva quantas restam. Depois não mexa nelas até à próxima verificação.
# doubt: "canteiro" for the bed; "viveiro" or "alfobre" in places. "Faixas" for its strips, with paths between.
prepare-bed = Prepare o canteiro para as suas batatas-doces. Faça isto { SPAN($when) }. Escolha um lugar perto de água. Faça o canteiro com { MEASURE($bed_length_m, unit: "metre") } de comprimento e { MEASURE($bed_width_m, unit: "metre") } de largura. { $bed_parts ->
    [strips] Faça-o em { SAY($strips, form: "feminine") } faixas, cada uma com { MEASURE($strip_width_m, unit: "metre") } de largura, e deixe caminhos entre elas.
   *[one] {""}
 } Solte bem a terra. Ponha uma vedação contra cabritos e galinhas.
last-check = Verifique pela última vez as batatas-doces guardadas, { DAY($first, form: "on") }. Tire todas as batatas, e olhe bem para cada uma. { -bad-roots } Desta vez, deixe ficar os rebentos. As batatas boas vão agora para o canteiro.
# doubt: "encharcada" for soil that is too wet; it may sound wetter than the English "wet".
plant-bed = Plante as batatas-doces no canteiro. Faça isto { SPAN($when) }. Não espere pela chuva. Regue o canteiro até a terra ficar húmida. Faça { SAY($bed_rows, form: "feminine") } { $bed_rows ->
    [one] linha ao comprido do canteiro.
   *[other] linhas ao comprido do canteiro, com { MEASURE($spacing_cm, unit: "centimetre") } entre elas.
 } { $row_roots ->
    [one] Ponha { SAY($row_roots, form: "feminine") } batata em cada linha.
   *[other] Ponha cerca de { SAY($row_roots, form: "feminine") } batatas em cada linha, a { MEASURE($along_row_cm, unit: "centimetre") } umas das outras.
 } Deixe ficar os rebentos. Cubra as batatas com { MEASURE($soil_cm, unit: "centimetre") } de terra. Volte a regar, devagar. Mantenha a terra húmida, mas não encharcada, porque terra encharcada faz apodrecer as batatas.
# doubt: "quentes ou de vento" (hot or windy) for "hot, windy days", so that one does not wait for both.
# doubt: "a cada três dias"; "de três em três dias" is as usual, but takes the number twice.
# doubt: "plantas novas" for the shoots that come up in the bed; "rebentos" is kept for the sprouts on stored roots.
water-bed = Regue o canteiro de batata-doce a partir { DAY($first, form: "from") }. { $shoots ->
    [before] Até nascerem as plantas novas, dê cerca de { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
        [1] todos os dias.
       *[other] a cada { SAY($water_every_days, form: "cardinal") } dias.
     } Isso dá cerca de { MEASURE($jerrycans_young, unit: "jerrycan") } de { MEASURE($jerrycan_l, unit: "litre") }. Mantenha a terra húmida, mas não encharcada, porque terra encharcada faz apodrecer as batatas. À medida que as folhas crescem, regue todos os dias, e dê um pouco mais cada semana.
   *[after] {""}
 } Quando as folhas cobrirem o canteiro, dê cerca de { MEASURE($water_l, unit: "litre") } todos os dias. Isso dá cerca de { MEASURE($jerrycans, unit: "jerrycan") } de { MEASURE($jerrycan_l, unit: "litre") }. Em dias quentes ou de vento, dê mais. Quando a chuva mantiver a terra húmida, pare de regar.
# doubt: "nó" for a leaf joint; farmers may say "olho".
# doubt: "húmida da chuva" for soil that rain, not dew or a bucket, has made moist.
# doubt: "um dedo inteiro" for a finger deep; "um dedo" alone is the width of a finger.
cut-for-planting = Espere até a terra da machamba ficar húmida da chuva, até à fundura de um dedo inteiro. Normalmente isso acontece { SPAN($when) }. Depois corte ramas de batata-doce no canteiro. Tire só ramas saudáveis, sem folhas com manchas, enroladas ou muito pequenas. Cada rama deve ter { MEASURE($cutting_cm, unit: "centimetre") } de comprimento, e pelo menos { SAY($nodes, form: "cardinal") } { $nodes ->
    [one] nó, de onde saem as folhas.
   *[other] nós, de onde saem as folhas.
 } Deixe de pé { MEASURE($stub_cm, unit: "centimetre") } de caule, para voltar a crescer. { $plan_by ->
    [practice] A conta segue a prática comum. No primeiro corte, conte com cerca de
   *[print] No primeiro corte, conte com cerca de
 } { SAY($first_cuttings_low, form: "feminine") } a { SAY($first_cuttings_high, form: "feminine") } ramas. Guarde as ramas à sombra, e plante-as no mesmo dia ou no dia seguinte.
# doubt: "camalhão" for a ridge and "montículo" for a mound; "matuto" is said in parts of the north.
plant-field = Plante a machamba de batata-doce quando a terra estiver húmida da chuva, até à fundura de um dedo inteiro. Normalmente isso acontece { SPAN($when) }. { $layout ->
    [own] Cada um planta nos seus camalhões ou montículos.
    [mounds] Em cada montículo ponha { SAY($on_mound, form: "feminine") } { $on_mound ->
        [one] rama,
       *[other] ramas,
     } com os montículos a { MEASURE($between_cm, unit: "centimetre") } uns dos outros.
   *[ridges] Ponha uma rama a cada { MEASURE($along_cm, unit: "centimetre") } no camalhão, com os camalhões a { MEASURE($between_cm, unit: "centimetre") } uns dos outros.
 } Enterre dois ou três nós de cada rama, e deixe a ponta dela fora da terra. Duas semanas depois, volte a plantar onde as ramas morreram.
# doubt: "gorgulho" for the sweet potato weevil; farmers may just say "bicho da batata".
first-harvest = Procure as primeiras batatas-doces na machamba que plantou. Faça isto { SPAN($when) }. Apalpe a terra debaixo de algumas plantas, à procura de batatas já grandes para comer. Não deixe batatas maduras muito tempo em terra seca, porque o gorgulho as encontra. Colha as últimas até { DAY($last_harvest, form: "to") }.

## Cautions

caution-rot = Cuidado com batatas-doces estragadas. { -bad-roots } Não a corte, não a descasque nem a cozinhe para aproveitar uma parte. Mesmo a parte que parece boa pode ter veneno. Se tiver dúvida sobre uma batata, trate-a como estragada.
caution-virus = Numa planta de batata-doce, ramas fracas são sinal de doença. Folhas pequenas, enroladas ou com manchas também são. { -take-nothing }
# doubt: "rachas" for cracks in the soil; "fendas" in places.
caution-cracks = O gorgulho chega às batatas-doces pelas rachas da terra. Quando vir uma racha, puxe terra para cima dela.
caution-heavy-sand = Cuidado, a areia é pesada. Carregue no máximo { MEASURE($load_kg, unit: "kilogram") } de cada vez. Encha o recipiente das batatas-doces no lugar onde vai ficar. Nunca o levante quando estiver cheio.
caution-riverbed = Cuidado nos rios. { -dry-riverbed }
caution-water-children = Cuidado com as crianças perto da água. { -children-water } Ponha vedação à volta dos poços e das covas. Não deixe cabritos nem galinhas entrar no canteiro.
caution-store-dry = A areia das batatas-doces guardadas tem de estar sempre seca, do primeiro ao último dia. { -keep-dry }
caution-forecast = Estas datas vêm de anos passados, e não são uma previsão. Este ano a chuva pode vir mais cedo ou mais tarde. Observe o céu e a terra. { -moist-soil }
caution-try-first = Se isto é novo para si, comece com poucas batatas-doces. Guarde também algumas das suas ramas à maneira antiga.

## What the plan leads to

remark-late-work = Algum trabalho da batata-doce não se fez a tempo, e por isso as datas foram contadas de novo. Faça já o que ainda se pode fazer. A machamba pode ser plantada a partir { DAY($field_from, form: "from") }.{ $fewer ->
    [0] {""}
    [one] {" "}Conte com cerca de { SAY($fewer, form: "feminine") } rama a menos no primeiro corte.
   *[other] {" "}Conte com cerca de { SAY($fewer, form: "feminine") } ramas a menos no primeiro corte.
 }
remark-fast-loss = Na verificação { DAY($day, form: "from") }, de { SAY($roots, form: "feminine") } batatas-doces só { SAY($healthy, form: "feminine") } { $healthy ->
    [one] estava boa.
   *[other] estavam boas.
 } { $next ->
    [bed] Ponha já as batatas boas no canteiro, e procure mais ramas para plantar.
   *[check] Procure a causa: areia húmida ou quente, batatas cortadas, batatas que se tocam, ou gorgulho. Use areia nova e seca. Volte a verificar daqui a duas semanas. Se apodrecerem muitas mais, ponha já as boas num canteiro regado.
 }
remark-limited-at-hand = { $limit ->
    [roots] Tem { SAY($roots, form: "feminine") } { $roots ->
        [one] batata-doce para guardar.
       *[other] batatas-doces para guardar.
     }
    [plants] As suas plantas dão cerca de { SAY($roots, form: "feminine") } { $roots ->
        [one] batata-doce para guardar.
       *[other] batatas-doces para guardar.
     }
   *[bed] O canteiro tem lugar para { SAY($roots, form: "feminine") } { $roots ->
        [one] batata-doce.
       *[other] batatas-doces.
     }
 } Para a machamba inteira são precisas { SAY($wanted, form: "feminine") }. As suas batatas chegam para plantar cerca de { SAY($area_m2, form: "cardinal") } dos { SAY($field_m2, form: "cardinal") } metros quadrados da machamba. Plante uma machamba mais pequena, ou peça ramas aos vizinhos.
remark-containers-too-small = Há lugar para { SAY($fit, form: "feminine") } { $fit ->
    [one] batata-doce, não para
   *[other] batatas-doces, não para
 } { SAY($roots, form: "feminine") }. Não meta mais do que cabe, porque as batatas apodrecem onde se tocam. Isto chega para plantar cerca de { SAY($area_m2, form: "cardinal") } dos { SAY($field_m2, form: "cardinal") } metros quadrados da machamba. { $more ->
    [0] Para guardar mais, arranje outro recipiente, ou então plante uma machamba mais pequena.
    [one] Para guardar mais, arranje mais um recipiente, ou então plante uma machamba mais pequena.
   *[other] Para guardar mais, arranje mais { SAY($more, form: "cardinal") } recipientes, ou então plante uma machamba mais pequena.
 }
remark-sand-short = A sua areia cobre { SAY($fit, form: "feminine") } { $fit ->
    [one] batata-doce, não
   *[other] batatas-doces, não
 } { SAY($roots, form: "feminine") }. Não guarde as batatas que a areia não cobrir. Isto chega para plantar cerca de { SAY($area_m2, form: "cardinal") } dos { SAY($field_m2, form: "cardinal") } metros quadrados da machamba. Traga mais { MEASURE($more_l, unit: "litre") } de areia, ou plante uma machamba mais pequena.
remark-water-limits = A sua água chega para um canteiro com { SAY($fit, form: "feminine") } { $fit ->
    [one] batata-doce, não com
   *[other] batatas-doces, não com
 } { SAY($roots, form: "feminine") }. Não faça o canteiro maior do que aqui se diz, e mantenha-o húmido. Isto chega para plantar cerca de { SAY($area_m2, form: "cardinal") } dos { SAY($field_m2, form: "cardinal") } metros quadrados da machamba. Para a machamba inteira, arranje mais { MEASURE($more_l, unit: "litre") } { $per ->
    [all] ao todo.
   *[day] por dia.
 }
remark-hands-short = Quem carrega água consegue regar um canteiro com { SAY($fit, form: "feminine") } { $fit ->
    [one] batata-doce, não com
   *[other] batatas-doces, não com
 } { SAY($roots, form: "feminine") }. Não faça o canteiro maior do que aqui se diz, e mantenha-o húmido. Isto chega para plantar cerca de { SAY($area_m2, form: "cardinal") } dos { SAY($field_m2, form: "cardinal") } metros quadrados da machamba. Para a machamba inteira, ponha mais gente a carregar, ou faça o canteiro mais perto da água.
# doubt: "capim seco por cima da terra" for mulch.
remark-water-short = A partir { DAY($from, form: "from") }, pode faltar água para o canteiro de batata-doce. Procure mais água. Capim seco por cima da terra e sombra poupam água. Sem isso, prepare um canteiro mais pequeno, e plante uma machamba mais pequena.
remark-water-heavy = Nos dias secos, o canteiro de batata-doce precisa de { SAY($trips, form: "feminine") } { $trips ->
    [one] ida à água.
   *[other] idas à água.
 } Isso leva cerca de { SAY($hours, form: "feminine") } { $hours ->
    [one] hora por dia a carregar água.
   *[other] horas por dia a carregar água.
 } Combine já quem vai carregar, ou prepare um canteiro mais pequeno.
remark-rains-too-soon = As chuvas podem começar por volta { DAY($rains, form: "from") }. É cedo demais depois da colheita para guardar batata-doce. Em vez disso, plante ramas da machamba actual, ou ponha já as batatas no canteiro.
remark-storing-not-needed = Aqui o tempo seco dura cerca de { SAY($days, form: "cardinal") } dias na maioria dos anos. É possível manter vivas as ramas de batata-doce durante esse tempo, e por isso não precisa de guardar batatas. Deixe de pé uma parte da machamba actual, ou guarde ramas num pequeno talhão regado.
remark-long-in-sand = As suas batatas-doces têm de ficar { SAY($days, form: "cardinal") } dias na areia. Ninguém contou quantas aguentam tanto tempo. Mantenha também algumas ramas a crescer perto de água, e fale com o seu extensionista.
remark-bed-late = O canteiro de batata-doce dá as primeiras ramas por volta { DAY($cut, form: "from") }, depois de as chuvas começarem. Quando a chuva entrar bem na terra, plante as ramas que tiver. O resto planta-se mais tarde, com outras ramas do canteiro.
remark-field-waits = O primeiro corte de ramas chega para cerca de { SAY($area_m2, form: "cardinal") } dos { SAY($field_m2, form: "cardinal") } metros quadrados da machamba. Os cortes seguintes dão para o resto, cada um depois de mais { SAY($least_days, form: "cardinal") } a { SAY($most_days, form: "cardinal") } dias.
remark-cuttings-short = No primeiro corte { $short ->
    [one] vai faltar cerca de
   *[other] vão faltar cerca de
 } { SAY($short, form: "feminine") } { $short ->
    [one] rama de batata-doce.
   *[other] ramas de batata-doce.
 } Plante cerca de { SAY($area_m2, form: "cardinal") } dos { SAY($field_m2, form: "cardinal") } metros quadrados da machamba quando a chuva entrar bem na terra. { $later_cuts ->
    [0] Os cortes seguintes vêm tarde demais para dar batatas maduras. Por isso, peça cedo ramas aos vizinhos.
   *[other] Os cortes seguintes dão para mais uma parte da machamba. Pode também pedir cedo ramas aos vizinhos.
 }
remark-rains-too-short = Aqui as chuvas são curtas para a batata-doce. { $known ->
    [case] O que plantar pode não amadurecer antes do fim das chuvas.
    [open] Ninguém sabe em quantos anos amadurece antes do fim das chuvas.
   *[record] Em cada cem anos, só em { SAY($of_100, form: "cardinal") } a batata-doce amadurece antes do fim das chuvas.
 } { $helps ->
    [on-time] Prepare o canteiro cedo, para poder plantar logo que a chuva entrar bem na terra.
    [quicker] Plante logo que a chuva entrar bem na terra, e procure uma variedade que amadureça mais cedo.
   *[neither] Plante logo que a chuva entrar bem na terra, e conte com poucas batatas, e pequenas.
 }
remark-cuts-too-late = A batata-doce dos cortes mais tardios, plantada a partir { DAY($from, form: "from") }, vem tarde demais. Só está madura por volta { DAY($ripe, form: "from") }. Na maioria dos anos, as chuvas acabam antes. Não reserve uma parte da machamba para esses cortes. Use essas ramas para o gado, ou deixe-as crescer onde há água.
remark-rains-may-be-late = As chuvas podem tardar até { DAY($late, form: "to") }. Regue o canteiro de batata-doce até elas virem. { -moist-soil }
remark-years-without-rains = Em { SAY($count, form: "cardinal") } de { SAY($judged, form: "cardinal") } anos passados, as chuvas não chegaram a começar bem. Num ano assim, ramas de batata-doce plantadas com a primeira chuva podem morrer. Guarde de reserva algumas batatas, ou continue a regar uma parte do canteiro.

## Questions for a meeting, each after its step

# doubt: whether the questions, without o senhor or a senhora, sound polite enough at a meeting.
ask-mark-plants = Quais são as plantas mais fortes da sua machamba?
ask-gather-sand = Onde há areia grossa aqui perto, e como a tiramos sem perigo?
ask-check-plants = Aqui, como são as plantas doentes de batata-doce?
ask-cut-vines = Porque é que a casca das batatas precisa de tempo para ficar rija?
ask-harvest = Como vai colher para a enxada não cortar nenhuma batata?
ask-fill-container = Em sua casa, onde há um lugar fresco e seco, longe das crianças e dos animais?
ask-monthly-check = Como são as batatas estragadas, e onde as vai enterrar?
ask-prepare-bed = Onde há água aqui perto, e quem toma conta das crianças?
ask-last-check = Quantas das suas batatas têm rebentos?
ask-plant-bed = O que pode impedir que plante o canteiro a tempo?
ask-water-bed = Quando não está em casa, quem rega o canteiro?
ask-cut-for-planting = Como sabe que já choveu o suficiente?
ask-plant-field = Que parte da machamba planta primeiro?
ask-first-harvest = Que ramas vai guardar para a próxima época?
