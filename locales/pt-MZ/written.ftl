### Português de Moçambique, rascunho: as palavras da folha impressa. Ainda não foi lido por quem fala bem a língua.
### Draft, as printed on sheets. The reader is addressed with the imperative of "você", the pronoun left out ("marque",
### "ponha"); a group with its plural ("escolham"). Spelling is the one used before the agreement of 1990, which Mozambique
### still uses in schools and offices ("insectos", "actual", months with a capital).
### Nouns: batata (root), rama (vine, and the piece cut from it to plant), caule (stem), rebento (sprout), toco (stub),
### nó (node), camada (layer), recipiente (container), carga (load), bidão (jerrycan), molho (bundle), canteiro (seedbed),
### machamba (field), camalhão (ridge), montículo (mound), gorgulho (weevil), extensionista (extension worker).
### Text messages (.sms) are worded so that each either holds only letters of the GSM alphabet (é, à and ù are in it; á, ã,
### ç, í, ó, ú are not) or has at most about 130 letters, so that none takes more than two parts. Please keep to that when
### you mend them.
### Values a message may use are listed in the README, "If you translate".

## Words of the sheet itself

# doubt: "batatas" alone could be taken for the other potato (batata-reno); the title says batata-doce once for all.
sheet-title = Batata-doce: desta colheita até às próximas chuvas
sheet-for = Para
sheet-place = Lugar
sheet-rains = Chuvas esperadas
# doubt: "machamba actual" for the field now standing; "machamba velha" would sound abandoned.
sheet-harvest = Colheita da machamba actual
sheet-amounts = O que é preciso
sheet-steps = O que fazer, e quando
sheet-cautions = Cuidado
sheet-when = Quando
# Between a label and its value, with the space before it that the language wants.
colon = :
semicolon = ;
sheet-page = Página
sheet-group = Grupo
sheet-together = Em conjunto
status-draft = Texto em rascunho: ainda não foi lido por quem fala bem português.
status-read = Texto lido por quem fala bem português, mas ainda não aprovado.
status-approved = Texto aprovado.

## Words of the cue sheet

cue-title = Mensagem
cue-language = Língua
cue-voice = Voz
cue-rights = Direitos
cue-status = Estado da voz
cue-length = Duração
# doubt: "sonoridade" for loudness; many technicians use the English word.
cue-loudness = Sonoridade
# doubt: "pico verdadeiro" for true peak; some say "pico real".
cue-true-peak = Pico verdadeiro
cue-from = De
cue-to = Até
cue-words = Palavras
cue-clip = Gravação
voice-stand-in = provisória
voice-draft = gravada, ainda não aprovada
voice-approved = aprovada
voice-stand-in-remark = Esta é uma voz provisória, feita por uma máquina. Deve ser substituída pela voz de uma pessoa.

## Amounts

amount-plants = Plantas a marcar
amount-plants-each = Plantas que cada membro marca
amount-roots = Batatas a guardar
# doubt: "rama" for the vine and for the piece cut to plant; leaflets also say "estaca", which farmers may take for a stick.
amount-cuttings = Ramas para a machamba
amount-first-cuttings = Ramas esperadas do primeiro corte
amount-containers = Recipientes
amount-layers = Camadas de batatas num recipiente
amount-roots-per-layer = { $layer_widths ->
    [uneven] Batatas na camada de baixo, no máximo
   *[even] Batatas em cada camada, no máximo
 }
amount-roots-top-layer = Batatas na camada de cima, no máximo
# doubt: "molho" for a bundle; "feixe" in places.
amount-bundles = Molhos de ramas
amount-lining = Papel para forrar os recipientes
amount-water-total = Água para o canteiro, em toda a época
amount-sand = Areia seca
# doubt: "carga" for one load carried; "viagem" may be plainer.
amount-loads = Cargas de areia a transportar
# doubt: "canteiro" for the seedbed; "viveiro" or "alfobre" in places.
amount-bed = Canteiro
amount-strips = Faixas do canteiro, com caminhos de { MEASURE($path_m, unit: "metre") } entre elas
amount-water = Água para o canteiro, por dia
# doubt: "bidão" for the jerrycan of 20 litres; "galão" or "lata" in places, and whether its size should be said.
amount-jerrycans = Bidões de água, por dia

first-cuttings-value = { $first_cuttings_low } a { $first_cuttings_high }{ $plan_by ->
    [practice] , segundo a prática comum
   *[print] , segundo os dias de crescimento
 }
sand-value = { MEASURE($sand_l, unit: "litre") }, cerca de { MEASURE($sand_kg, unit: "kilogram") }
bed-value = { MEASURE($bed_length_m, unit: "metre") } × { MEASURE($bed_width_m, unit: "metre") }
strips-value = { $strips }, cada uma de { MEASURE($strip_length_m, unit: "metre") } × { MEASURE($strip_width_m, unit: "metre") }
water-value = { MEASURE($water_l, unit: "litre") }
water-total-value = { MEASURE($water_total_l, unit: "litre") }
bundles-value = { MEASURE($bundles, unit: "bundle") } de { $bundle_size } ramas
lining-value = { $lining_m2 } m²
roots-for-zone = { $roots } (um número redondo; ajuste-o a cada machamba)

## Dates and units

# In date, date-short and week: $day, $month, $year, $weekday (1 is Monday), $week (of the month, 1 to 5), and
# $ethiopic_day, $ethiopic_month, $ethiopic_year of the Ethiopian calendar.
# Months with a capital, as the spelling before 1990 has them; CLDR 48 has them small, as Portugal writes now.
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
date = { $day } de { month } de { $year }
# For text messages on phones: as short as can be understood.
month-short = { $month ->
    [1] Jan
    [2] Fev
    [3] Mar
    [4] Abr
    [5] Mai
    [6] Jun
    [7] Jul
    [8] Ago
    [9] Set
    [10] Out
    [11] Nov
   *[12] Dez
 }
date-short = { $day } { month-short }
week = { $week ->
    [1] primeira
    [2] segunda
    [3] terceira
    [4] quarta
   *[5] última
 } semana de { month }
span = { DAY($from) } – { DAY($to) }
span-day = { WEEKDAY($from) }, { DAY($from) }
unit-kilogram = { $n } kg
unit-litre = { $n } L
unit-metre = { $n } m
unit-centimetre = { $n } cm
unit-hand = { $n } { $n ->
    [one] mão
   *[other] mãos
 }
# doubt: "ponta do polegar até à dobra" for the upper joint of the thumb (two and a half centimetres) as a measure.
unit-thumb-joint = { $n } { $n ->
    [one] ponta do polegar até à dobra
   *[other] pontas do polegar até à dobra
 }
unit-jerrycan = { $n } { $n ->
    [one] bidão
   *[other] bidões
 }
unit-bundle = { $n } { $n ->
    [one] molho
   *[other] molhos
 }
# Counted from a local event of the case, such as a feast; $event is its name, $days how far.
# doubt: "de" stands before the event's name without an article ("depois de Páscoa"); write the name so that it fits.
event-before = { $days } { $days ->
    [one] dia
   *[other] dias
 } antes de { $event }
event-on = no dia de { $event }
event-after = { $days } { $days ->
    [one] dia
   *[other] dias
 } depois de { $event }

## Opening and closing

# doubt: "agricultores" for the farmers; "camponeses" or "produtores" may be the word of the place.
opening = { $kind ->
    [zone] Este plano serve para todos os agricultores da zona. As quantidades são para { $roots } batatas: use mais ou menos, conforme a sua machamba.
   *[other] Este plano conta os dias para trás, a partir das chuvas. As chuvas são esperadas por volta de { DAY($rains) }.
 }
closing = O seu extensionista conhece as variedades, as datas e as regras da zona. Se o conselho do extensionista for diferente desta folha, siga o conselho do extensionista.
    .sms = O conselho do seu extensionista vem primeiro.

## Steps: title, text (.text), picture in words (.alt), text message on a phone (.sms, 160 letters or less where it can be)

# doubt: "batatas de semente" for the roots kept to sprout.
mark-plants = Marque { $plants } plantas saudáveis
    .short = Plantas fortes, folhas grandes e limpas, sem doença. Um pau ao lado de cada uma.
    .text = { $kind ->
        [group] Escolham juntos { $plants } plantas fortes; cada membro marca { $plants_each }. Espetem um pau ao lado de cada planta. Escolham
       *[other] Escolha { $plants } plantas fortes. Espete um pau ao lado de cada planta. Escolha
     } só plantas com folhas grandes e limpas, sem nenhum sinal de doença. Elas vão dar cerca de { $roots } batatas para guardar.
    .alt = Uma mão espeta um pau na terra ao lado de uma planta forte.
    .show = Uma rama saudável e uma doente, e um pau.
    .ask = Como distingue uma planta saudável de uma doente?
    .sms = { BRIEF($first) }: marque com paus { $plants } plantas fortes para tirar batatas de semente. Folhas grandes e limpas, nenhuma planta doente.
# doubt: "debaixo de um telhado" for under cover.
gather-sand = Traga areia seca
    .short = Grossa e limpa: { MEASURE($sand_l, unit: "litre") }. Seque-a debaixo de um telhado e deixe-a arrefecer.
    .text = Traga { MEASURE($sand_l, unit: "litre") } de areia grossa e limpa, cerca de { MEASURE($sand_kg, unit: "kilogram") }. Seque-a debaixo de um telhado e deixe-a arrefecer. Areia fina, húmida ou quente faz apodrecer as batatas. Carregue no máximo { MEASURE($load_kg, unit: "kilogram") } de cada vez: cerca de { $loads } { $loads ->
        [one] carga
       *[other] cargas
     }.
    .alt = Debaixo de um telhado, uma mão com uma tigela passa areia seca de um monte para um balde pequeno.
    .show = Um punhado de areia grossa e seca, e um de areia fina e húmida.
    .ask = Onde há areia grossa, e será seguro cavar lá?
    .sms = Até { BRIEF($last) }: traga { MEASURE($sand_l, unit: "litre") } de areia grossa e seca. Seque-a debaixo de um telhado. Carregue { MEASURE($load_kg, unit: "kilogram") } ou menos de cada vez.
# doubt: "pé do caule" for the foot of the stem.
# doubt: "visto" for a tick, in the words for pictures.
check-plants = Veja outra vez as plantas marcadas
    .short = Folhas pequenas, enroladas ou com manchas? Tire o pau e não aproveite nada.
    .text = Procure folhas pequenas, enroladas ou com manchas, ramas que não crescem e buracos no pé do caule. Se tiver dúvida, tire o pau e não aproveite nada dessa planta.
    .alt = Uma planta saudável, com um visto, fica com o seu pau; uma mão tira o pau de uma planta doente, com folhas manchadas e enrugadas.
    .show = Folhas pequenas, enroladas e com manchas.
    .ask = O que faz com uma planta marcada que ficou doente?
    .sms = { BRIEF($first) }: veja outra vez as plantas marcadas. Tire o pau onde as folhas forem pequenas, enroladas ou com manchas.
# doubt: "mão" as a measure is from the wrist to the fingertips; "palmo" is the better known measure, but it is longer.
cut-vines = Corte as ramas das plantas marcadas
    .short = Deixe { MEASURE($stem_cm, unit: "centimetre") } de caule: { MEASURE($stem_hands, unit: "hand") }.
    .text = Corte-as e deixe { MEASURE($stem_cm, unit: "centimetre") } de caule, o comprimento de cerca de { MEASURE($stem_hands, unit: "hand") }. A casca das batatas fica mais rija, e elas duram mais tempo.
    .alt = Uma faca corta ramas, e os caules que ficam têm a altura da mão aberta que está ao lado.
    .show = A mão aberta ao longo de um caule.
    .ask = Porque é que a casca das batatas precisa de tempo para endurecer?
    .sms = { BRIEF($first) }: corte as ramas das plantas marcadas. Deixe { MEASURE($stem_cm, unit: "centimetre") } de caule.
# doubt: "cave" for digging out the roots; "arranque" or "colha" may be more usual.
harvest = Cave e escolha { $roots } batatas
    .short = Só em terra seca. Batatas médias, casca inteira. Nunca as lave. Deixe-as à sombra.
    .text = Cave só em terra seca, e levante as batatas sem as ferir. Fique com { $roots } batatas médias, mais ou menos do comprimento da mão, com a casca inteira. As batatas feridas vão para a cozinha, não são para guardar. Tire a terra com a mão e nunca lave as batatas. Deixe-as algumas horas à sombra, fora do sol.
    .alt = Uma mão levanta da terra solta uma planta com batatas inteiras; ao lado, uma enxada.
    .show = Uma batata média com a casca inteira, e uma ferida.
    .ask = Quais destas batatas se guardam, e quais vão para a cozinha?
    .sms = { BRIEF($first) }: cave em terra seca. Guarde { $roots } batatas médias, inteiras. Nunca as lave. Deixe-as à sombra.
# doubt: "malha apertada" for a tight basket; "panela" for a pot ("pote" in places).
fill-container = Ponha as batatas na areia
    .short = Areia: { MEASURE($base_cm, unit: "centimetre") } em baixo, { MEASURE($layer_cm, unit: "centimetre") } entre camadas, { MEASURE($top_cm, unit: "centimetre") } em cima. As batatas não se tocam. Sem tampa.
    .text = Use { $containers } { $containers ->
        [one] recipiente
       *[other] recipientes
     } de paredes firmes: bacia, panela, balde ou cesto de malha apertada. Sacos não servem. Forre por dentro com papel. Encha no lugar onde vai ficar: fresco, seco e à sombra, longe de crianças, animais e chuva. Comece com { MEASURE($base_cm, unit: "centimetre") } de areia, a altura de cerca de { MEASURE($base_joints, unit: "thumb-joint") }. { $layer_widths ->
        [uneven] Ponha no máximo { $roots_per_layer } batatas na camada de baixo e { $roots_top } na de cima,
       *[even] Ponha no máximo { $roots_per_layer } batatas em cada camada,
     } sem tocarem umas nas outras nem nos lados. Cubra-as com { MEASURE($layer_cm, unit: "centimetre") } de areia e ponha as seguintes: { $layers } { $layers ->
        [one] camada
       *[other] camadas
     } ao todo. Acabe com { MEASURE($top_cm, unit: "centimetre") } de areia: ela afasta ratos, insectos e galinhas. Não ponha tampa.
    .alt = Uma bacia cortada ao meio: areia, batatas separadas, areia, batatas, muita areia por cima; uma mão espalha areia.
    .show = Uma bacia, areia seca e algumas batatas: alguém arruma a primeira camada.
    .ask = Porque é que as batatas não se podem tocar?
    .sms = { BRIEF($first) }: ponha as batatas em areia seca, sem se tocarem. { MEASURE($base_cm, unit: "centimetre") } de areia em baixo, { MEASURE($top_cm, unit: "centimetre") } em cima. Sem tampa. Nunca regue.
# doubt: "com bolor" for mouldy and "furadas" for bored by insects.
monthly-check = Veja as batatas todos os meses
    .short = Olhe para cada batata. Enterre ou queime as podres. Tire os rebentos. Arrume de novo.
    .text = Tire todas as batatas e olhe bem para cada uma. As que estiverem podres, com bolor ou furadas, enterre-as fundo ou queime-as. Esfregue os rebentos até caírem. Arrume de novo as batatas boas, da mesma maneira, e escreva quantas restam. Até à próxima vez, não mexa nelas.
    .alt = Três luas, sinal de que passou um mês; uma mão tira uma batata da bacia; ao lado há uma batata podre, riscada com uma cruz.
    .show = Uma batata podre, se houver, e como arrumar de novo.
    .ask = O que faz com uma batata podre, e porque não se dá aos animais?
    .sms = { BRIEF($first) }: tire todas as batatas. Enterre ou queime as podres, nunca alimente animais com elas. Esfregue os rebentos. Arrume de novo as boas.
prepare-bed = Prepare o canteiro
    .short = { MEASURE($bed_length_m, unit: "metre") } por { MEASURE($bed_width_m, unit: "metre") }, perto da água. Solte a terra. Ponha uma vedação.
    .text = Faça um canteiro de { MEASURE($bed_length_m, unit: "metre") } por { MEASURE($bed_width_m, unit: "metre") }, perto da água. Solte bem a terra. Ponha uma vedação contra cabritos e galinhas.
    .alt = Um homem solta a terra do canteiro com uma enxada; atrás dele, uma vedação.
    .show = O lugar perto da água, e o tamanho do canteiro em passos.
    .ask = O que impede os cabritos e as galinhas de entrar?
    .sms = Até { BRIEF($last) }: faça um canteiro de { MEASURE($bed_length_m, unit: "metre") } por { MEASURE($bed_width_m, unit: "metre") } perto da água. Ponha uma vedação.
last-check = Veja as batatas pela última vez e deixe os rebentos
    .short = Enterre ou queime as podres. Deixe ficar os rebentos.
    .text = Tire todas as batatas. As que estiverem podres, com bolor ou furadas, enterre-as fundo ou queime-as. Desta vez deixe ficar os rebentos: as batatas boas vão agora para o canteiro.
    .alt = Uma mão tira da bacia uma batata com rebentos; uma seta aponta para o canteiro.
    .show = Uma batata com rebentos.
    .ask = Porque é que desta vez os rebentos ficam?
    .sms = { BRIEF($first) }: veja as batatas antes de as plantar. Deixe ficar os rebentos. Enterre ou queime as podres, nunca alimente animais com elas.
# doubt: "deitar" for laying roots flat.
plant-bed = Plante as batatas no canteiro
    .short = Linhas: { $bed_rows }, com { MEASURE($spacing_cm, unit: "centimetre") } entre elas e cerca de { $row_roots } batatas em cada uma. Pouca terra por cima.
    .text = Deite as batatas em linhas, com cerca de { MEASURE($spacing_cm, unit: "centimetre") } entre linhas: { $bed_rows } { $bed_rows ->
        [one] linha com cerca de { $row_roots } batatas.
       *[other] linhas com cerca de { $row_roots } batatas em cada uma.
     } Cubra-as com pouca terra.
    .alt = Batatas deitadas em linha; uma mão cobre-as com terra.
    .show = A distância entre linhas, medida com um pau do tamanho certo.
    .ask = A que fundura fica a batata no canteiro?
    .sms = A partir de { BRIEF($first) }: plante as batatas em linhas, com { MEASURE($spacing_cm, unit: "centimetre") } entre linhas. Cubra-as com pouca terra e regue.
water-bed = Regue o canteiro
    .short = Até { MEASURE($water_l, unit: "litre") } por dia ({ MEASURE($jerrycans, unit: "jerrycan") }); menos para plantas novas.
    .text = Quando o canteiro estiver cheio de folhas, dê cerca de { MEASURE($water_l, unit: "litre") } todos os dias, { MEASURE($jerrycans, unit: "jerrycan") }. Enquanto as plantas forem novas, dê menos; em dias quentes e de vento, dê mais. Pare quando a chuva já fizer esse trabalho.
    .alt = Uma mão deita água de um bidão no canteiro com rebentos.
    .show = Um bidão, e a pouca água de que as plantas novas precisam.
    .ask = Quem traz a água, e quem toma conta das crianças ali?
    .sms = A partir de { BRIEF($first) }: regue o canteiro todos os dias, até { MEASURE($water_l, unit: "litre") }. Não deixe crianças perto da água.
# doubt: "nó" for a node; farmers may say "olho".
# doubt: "toco" for the stub left in the bed.
# doubt: "rebento" is said for the sprout on the root and, here, for the shoot that has grown from it.
cut-for-planting = Corte ramas para plantar
    .short = Com as chuvas: { MEASURE($cutting_cm, unit: "centimetre") }, { $nodes } nós, rebentos saudáveis. Deixe tocos.
    .text = Quando as chuvas já tiverem chegado, corte ramas de { MEASURE($cutting_cm, unit: "centimetre") }, o comprimento de cerca de { MEASURE($cutting_hands, unit: "hand") }, com pelo menos { $nodes } nós, só de rebentos saudáveis. { $plan_by ->
        [practice] Segundo a prática comum, o primeiro corte dá cerca de
       *[print] O primeiro corte dá cerca de
     } { $first_cuttings_low } a { $first_cuttings_high } ramas. Deixe tocos: eles dão mais ramas depois de quatro a seis semanas. Guarde as ramas à sombra e plante-as dentro de dois dias.
    .alt = Uma mão segura uma rama do canteiro, a outra corta-a com uma faca; ficam tocos.
    .show = Uma rama do tamanho certo ao lado da mão: conte os nós.
    .ask = De que plantas não tiramos ramas?
    .sms = Quando as chuvas já tiverem chegado: corte ramas de { MEASURE($cutting_cm, unit: "centimetre") } com { $nodes } nós, só de plantas saudáveis. Deixe tocos.
# doubt: "camalhão" for a ridge and "montículo" for a mound; "matuto" is said in parts of the north.
plant-field = Plante a machamba
    .short = Só em terra húmida. Enterre dois ou três nós. Depois de duas semanas, plante nas falhas.
    .text = Plante só em terra húmida. { $layout ->
        [own] Cada um planta nos camalhões ou montículos da sua machamba.
        [mounds] Ponha { $on_mound } { $on_mound ->
            [one] rama
           *[other] ramas
         } em cada montículo, com os montículos a { MEASURE($between_cm, unit: "centimetre") } uns dos outros.
       *[ridges] Ponha uma rama a cada { MEASURE($along_cm, unit: "centimetre") }, em camalhões a { MEASURE($between_cm, unit: "centimetre") } uns dos outros.
     } Enterre dois ou três nós. { $kind ->
        [zone] De { $roots } batatas saem { $cuttings } ramas durante toda a época do canteiro.
       *[other] A machamba leva { $cuttings } ramas.
     } Duas semanas depois, volte a plantar nas falhas.
    .alt = Debaixo de uma nuvem de chuva, uma mão planta ramas em fila; os nós de baixo ficam dentro da terra.
    .show = Terra húmida até à fundura de um dedo, e uma rama com os nós na terra.
    .ask = Choveu uma vez: plantamos já? O que há a favor, e o que há contra?
    .sms = A partir de { BRIEF($first) }, quando a terra tiver humidade: plante { $cuttings_to_plant } ramas. As datas seguem a média de outros anos: olhe para o céu.
# doubt: "gorgulho" for the sweet potato weevil; farmers may just say "bicho da batata".
first-harvest = Procure as primeiras batatas
    .short = Apalpe à procura de batatas grandes. Cave todas até { DAY($last_harvest) }, por causa do gorgulho.
    .text = Apalpe a terra debaixo de algumas plantas, à procura de batatas de tamanho para comer. Não deixe batatas maduras muito tempo em terra seca: o gorgulho encontra-as. Cave as últimas até { DAY($last_harvest) }.
    .alt = Uma mão procura uma batata debaixo de uma planta; ao lado, uma panela ao lume.
    .show = Como apalpar uma batata sem arrancar a planta.
    .ask = O que acontece às batatas maduras que ficam na terra seca?
    .sms = A partir de { BRIEF($first) }: apalpe a terra e procure batatas maduras. Cave todas até { BRIEF($last_harvest) }, por causa do gorgulho.

## Tables: title, what it tells (.text), its picture in words (.alt)

# doubt: "segundo os dias de crescimento" where cuttings are counted by the days that the bed has grown.
table-cuts = Cortes do canteiro{ $plan_by ->
    [practice] , segundo a prática comum
   *[print] , segundo os dias de crescimento
 }
    .text = De cada corte esperam-se estas ramas. As dos cortes seguintes são para o resto da machamba e para as falhas.
# doubt: "reserva comum" for the common store of roots in sand.
table-shares = O que cada machamba traz
    .text = Cada um marca as plantas da sua própria machamba e traz as suas batatas para a reserva comum.
table-fields = Quantidades conforme o tamanho da machamba
    .text = Procure a sua machamba na primeira coluna. Se ela ficar entre duas linhas, as quantidades também ficam entre as dessas linhas.
# doubt: "falso início" for a false start of the rains; "chuva enganadora" may be plainer.
# doubt: days left are said as days until the rains end, as they are reckoned; the English could also mean days with rain.
table-planting-later = Se esperar para plantar
    .text = Quem planta com a primeira chuva forte pode perder as plantas novas, se a seguir vier muito tempo seco: é um falso início. Quem espera fica com menos dias até ao fim das chuvas. A tabela mostra como foram as duas coisas em anos passados; não é uma previsão. Na figura, as barras às riscas são os anos com falso início; as barras pretas são os dias que restam até ao fim das chuvas.
    .alt = Para cada dia a partir do qual se planta: uma barra às riscas para os anos com falso início, e uma barra preta para os dias que restam até ao fim das chuvas. Os números estão na tabela acima.
column-when = Quando
column-farm = Machamba
column-area = Machamba, m²
column-cuttings = Ramas
column-cut = Ramas
cut-value = { $low }–{ $high }
column-plants = Plantas a marcar
column-roots = Batatas a guardar
column-bed = Canteiro, m²
column-jerrycans = Bidões de água por dia
column-from = Primeira chuva a partir de
column-false-starts = Anos com falso início
# doubt: "num ano médio" for the median year (half the years had more days, half had fewer).
column-days-left = Dias até ao fim das chuvas, num ano médio
false-starts-value = { $false_starts } em { $years }

## Cautions: title, text (.text), picture in words (.alt); text message (.sms) where there is one

caution-rot = Batatas podres, com bolor ou furadas
    .short = Nunca as coma, nem a parte que parece boa. Nunca as dê aos animais. Enterre fundo ou queime.
    .text = Nunca as coma, nunca as dê aos animais, não as plante. Não corte a parte má para comer o resto: mesmo as partes que parecem boas podem ter veneno. Enterre-as fundo ou queime-as.
    .alt = Uma batata podre; por baixo, uma vaca e uma panela, ambas riscadas com uma cruz.
    .sms = Batatas podres ou com bolor: nunca coma nem use para alimentar animais, nem mesmo a parte que parece boa. Enterre-as fundo ou queime-as.
# doubt: "vírus" may be unknown; "doença das folhas" would be plainer but less exact.
caution-virus = Plantas doentes
    .short = Folhas com manchas, pequenas ou torcidas: não tire nada dessa planta.
    .text = Folhas com manchas, pequenas ou torcidas e ramas que não crescem são sinais de vírus. Nunca tire batatas nem ramas de uma planta assim.
    .alt = Uma mão com uma faca junto a uma planta de folhas manchadas e enrugadas, riscada com uma cruz.
# doubt: "rachas" for cracks in the soil; "fendas" in places.
caution-cracks = Rachas na terra
    .short = Puxe terra para cima das rachas: o gorgulho entra por elas.
    .text = O gorgulho chega às batatas pelas rachas da terra. Puxe terra para cima das rachas logo que as vir.
    .alt = Um gorgulho entra numa racha do camalhão; por baixo está uma batata cheia de buracos.
caution-heavy-sand = A areia é pesada
    .short = Carregue no máximo { MEASURE($load_kg, unit: "kilogram") }. Não levante o recipiente cheio.
    .text = Carregue no máximo { MEASURE($load_kg, unit: "kilogram") } de cada vez. Encha o recipiente no lugar onde vai ficar, e não o levante quando estiver cheio.
    .alt = Uma pessoa curvada debaixo de um grande saco, riscada com uma cruz; uma mulher direita com um balde pequeno, com um visto.
# doubt: "margem alta e a pique" for a steep bank; "barranco" is for many a gully, "ribanceira" is less known.
caution-riverbed = Areia do leito do rio
    .short = Só com o rio seco, nunca debaixo nem perto de uma margem a pique, e só onde as regras permitem.
    .text = Tire areia só quando o rio estiver seco. Nunca cave debaixo de uma margem alta e a pique, nem perto dela: a margem pode cair e enterrar quem lá estiver. Tire areia só onde as regras do lugar o permitem.
    .alt = A margem alta do rio a cair sobre uma pessoa que cava, riscada com uma cruz.
caution-water-children = Água, crianças e animais
    .short = Afaste as crianças. Tape a água; ponha vedação em poços, covas e canteiro.
    .text = Não deixe as crianças brincar perto de água, poços ou covas. Tape a água guardada, e ponha uma vedação à volta dos poços e das covas. Não deixe cabritos e galinhas entrar no canteiro.
    .alt = Um tambor de água tapado atrás de uma vedação; uma mulher segura uma criança do lado de fora.
caution-store-dry = Nunca regue as batatas guardadas
    .short = Nada de água na areia: as batatas apodrecem.
    .text = A areia tem de ficar seca do primeiro ao último dia. Em areia húmida as batatas ganham rebentos cedo demais ou apodrecem.
    .alt = Água de um bidão cai na bacia das batatas, riscada com uma cruz.
caution-forecast = As datas são médias, não são previsão
    .short = As chuvas podem vir mais cedo ou mais tarde. Plante só em terra húmida.
    .text = As datas vêm de anos passados. As chuvas podem vir mais cedo ou mais tarde. Olhe para o céu e para a terra, e plante só quando a terra estiver húmida.
    .alt = Uma mulher com ramas na mão olha para o sol, a nuvem e a chuva.
caution-try-first = Experimente primeiro com poucas batatas
    .short = É novo para si? Comece com poucas batatas, e guarde algumas ramas à maneira antiga.
    .text = Se isto é novo para si, comece com poucas batatas, e guarde também algumas ramas à maneira antiga.
    .alt = Uma mulher entre uma panela pequena com poucas batatas e uma planta que continua a crescer na terra.

## Drawings and formats: titles, what drawings show in words, the names and sizes that stand in them

month-year = { month } de { $year }
calendar-title = O trabalho, mês a mês
guide-title = Guia para uma reunião
card-fold = Dobre pelas linhas tracejadas. Corte pela linha grossa.
record-title = Verificação das batatas guardadas
record-how = De cada vez, tire todas as batatas. Enterre fundo ou queime as podres. Escreva o que encontrar, e mostre esta ficha ao seu extensionista.
record-planned = Previsto para
record-done = Feito em
record-healthy = Arrumadas de novo
record-thrown-away = Deitadas fora
record-sprouted = Com rebentos
record-remark = Notas
record-stored = Batatas guardadas
booklet-index = Machambas por nome
span-brief = { BRIEF($from) } – { BRIEF($to) }
size-cm = { MEASURE($cm, unit: "centimetre") }
size-m = { MEASURE($m, unit: "metre") }
drawing-season = A época
drawing-season-alt = Uma faixa de uma colheita à outra: batatas na areia, depois no canteiro, depois plantas na machamba, com as datas.
season-store = Na areia
season-bed = No canteiro
season-field = Na machamba
season-on-harvest = Colheita
season-on-sprout = Para o canteiro
season-on-rains = Chuvas
season-on-food = Primeiras batatas
drawing-store = O recipiente por dentro
drawing-store-alt = O recipiente cortado: camadas de batatas, com areia por baixo, entre elas e por cima.
drawing-layers = Cada camada, vista de cima
drawing-layers-alt = As camadas vistas de cima: o lugar de cada batata, sem tocar noutra nem na parede.
drawing-bed = O canteiro visto de cima
drawing-bed-alt = O canteiro visto de cima: as linhas de batatas, o comprimento e a largura.
drawing-rows = A machamba vista de cima
drawing-rows-alt = Uma parte da machamba vista de cima: a distância entre linhas, e as ramas plantadas.
## Words of the recording script

script-title = O que gravar
script-new-voice = uma voz nova
script-lines = Linhas para ler
script-time = Tempo, calculado pelo comprimento das palavras
script-time-measured = Tempo, ao ritmo desta voz
script-minutes = cerca de { $minutes } { $minutes ->
    [one] minuto
   *[other] minutos
 }
script-ready = Mensagens já completas
script-how = Antes de começar
script-how-room = Procure uma sala sossegada com panos: cortinas, uma cama, roupa. Feche as janelas e desligue ventoinhas, geleiras e telefones que possam tocar.
script-how-distance = Fique com a boca a um palmo do microfone ou do telefone, um pouco de lado. Mantenha esta distância até ao fim.
script-how-tone = Comece a gravar e fique cinco segundos em silêncio total: o som da sala também faz falta.
script-how-pause = Faça um segundo de silêncio antes de cada linha e um segundo depois.
script-how-order = Leia as linhas por ordem e marque cada uma. Não diga o número da linha.
script-how-slip = Se se enganar, faça uma pausa e diga outra vez a linha toda. Não pare a gravação.
script-how-grey = Diga em voz alta só as palavras a negrito. Leia em pensamento as palavras cinzentas à volta: elas dão à sua voz a melodia da frase.
script-how-brackets = Diga em voz alta só as palavras entre [ ]. Leia as outras em pensamento: elas dão à sua voz a melodia da frase.
script-how-medial = Onde está escrito “{ script-medial }”, não baixe a voz: ainda há mais.
script-how-final = Onde está escrito “{ script-final }”, baixe a voz, como no fim de uma frase.
script-medial = continua
script-final = acaba
script-part = Parte { $part }
script-part-lines = linhas { $first_line } a { $last_line }
script-rest = Para outras machambas e datas
script-opening = Início de cada mensagem
script-closing = Fim de cada mensagem
script-sentences = Frases inteiras
script-parts = Partes de frases
script-numbers = Números, forma { $form }
script-dates = Partes de datas
script-months = Meses
script-units = Medidas
script-unlocks = Mensagens que precisam dela
script-complete = Mensagens completas com esta linha
script-stale = A gravação antiga diz
script-other-ending = Há uma gravação, mas a voz acaba da outra maneira.
script-recorded = Já está gravada.
script-unsaid = Nenhuma frase conhecida a diz assim: pode ficar de fora.
script-nothing = Não falta gravar nada.
## The check of recordings

clips-title = As gravações, verificadas
clips-intro = O que é preciso gravar de novo vem primeiro. Cada imagem mostra a voz da esquerda para a direita: em cima, a sua força; em baixo, os seus sons, escuros onde são fortes.
clips-again = Gravar de novo
clips-usable = Pode ser usada
clips-good = Boa
clips-unused = Já não é precisa
clips-missing = Ainda por gravar
clips-picture = Imagem da gravação “{ $words }”
clips-length = Duração
clips-level = Força da voz
clips-noise = Voz acima do ruído
clips-hum = Voz acima do zumbido
clips-pace = Rapidez, comparada com o habitual
clip-clipped = A voz está forte demais para o microfone e soa áspera. Afaste o microfone ou baixe o nível.
clip-cut-start = O primeiro som está cortado. Comece a gravação, respire e só depois fale.
clip-cut-end = O último som está cortado. Respire antes de parar a gravação.
clip-noise = Há ruído por trás da voz. Procure um lugar mais calmo e aproxime o microfone.
clip-hum = Ouve-se um zumbido de electricidade. Desligue o carregador e afaste-se de fios e máquinas.
clip-room = A sala faz eco. Grave num quarto pequeno com panos, esteiras ou um colchão, e aproxime o microfone.
clip-quiet = A voz está mais fraca do que nas outras gravações. Fique sempre à mesma distância do microfone.
clip-loud = A voz está mais forte do que nas outras gravações. Fique sempre à mesma distância do microfone.
clip-fast = Foi dito mais depressa do que nas outras gravações. Fale com a sua rapidez habitual.
clip-slow = Foi dito mais devagar do que nas outras gravações. Fale com a sua rapidez habitual.
clip-offset = O gravador desviou um pouco o som. Não precisa de fazer nada: isso corrige-se sozinho.
clip-broken = Não se consegue abrir a gravação. Grave de novo.
clip-stale = As palavras mudaram. Grave-as como são agora: “{ $words }”
clip-unused = Já nenhuma mensagem usa estas palavras.
## Radio segments: script for the presenter, plan of the season

# doubt: "rubrica" for a segment of a programme.
segment-title = Rubrica de rádio
segment-season = Rubricas de rádio da época
segment-week = Semana
segment-topics = O que se diz
segment-nothing = Nada a dizer nesta semana
segment-due = Esta semana
segment-past = Continua a valer
segment-soon = Em breve
# doubt: "indicativo" for a station's signature tune.
segment-opening = Indicativo de abertura
segment-closing = Indicativo de fecho
segment-bed = Música por baixo da voz
segment-bed-value = { $decibels } dB abaixo da voz
segment-said = O que se ouve
segment-read-before = Ler em directo antes
segment-read-after = Ler em directo depois
segment-intro = Bom dia a todos os que cultivam batata-doce em { $place }. Ouçam agora quais são os trabalhos de { DAY($first) } a { DAY($last) }.
segment-outro = Foram estes os trabalhos de { DAY($first) } a { DAY($last) }. Se algo não ficou claro, perguntem ao extensionista.
segment-reading-time = Tempo de leitura, estimado
segment-read-live = Para ler em voz alta. Os tempos são estimados, a { $rate } sílabas por segundo.
segment-pauses = Uma barra (/) é uma pausa curta, duas barras (//) uma pausa mais longa. Entre as partes, espere ainda um pouco mais.
segment-no-sound = Não foi produzido nenhum som: algumas frases não têm gravação. Estão na lista abaixo.
segment-no-voice = Não foi produzido nenhum som: esta língua ainda não tem voz gravada.
segment-left-out = Não houve tempo para
segment-missing = Frases sem gravação
## Questions for a meeting, as they are spoken

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

## Channels: cue sheets for phones and meetings

# doubt: "nível da fala" for active speech level, a figure for sound technicians.
cue-active-level = Nível da fala
cue-chapter = Capítulo
cue-talk = tempo para conversar, { $seconds } s

## The guide for a meeting

guide-show = O que mostrar
guide-ask = Pergunte
