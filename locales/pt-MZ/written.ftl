### Português de Moçambique, rascunho: as palavras da folha impressa. Ainda não foi lido por quem fala bem a língua.
### Draft, as printed on sheets. One reader is addressed with the imperative of "você", the pronoun left out ("marque",
### "ponha"), also in a group ("cada pessoa marca"). Spelling is the one used before the agreement of 1990, which Mozambique
### still uses in schools and offices ("insectos", "actual", months with a capital).
### The trade's words are in glossary.toml: one word for one thing. "Batata-doce" comes first in every message, since
### "batata" alone is the other potato (batata-reno). "Cortada pela enxada" (food) and "com buracos de bicho" (never food)
### share no word. Damp sand and moist soil are both "húmida"; what is too wet is "encharcada".
### Text messages lose their accents on the phone (see [sms] in pack.toml): each must read well without them, too.
### Values a message may use are listed in docs/translate.md.

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
sheet-consequences = Sobre o seu plano
sheet-tip = Bom saber
# The day the sheet was made, and that older ones hold no more.
sheet-made = Feita em { DAY($today) }. Substitui todas as folhas anteriores desta época.
step-done = Feito
step-now = Agora
step-next = A seguir
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
amount-water-total = Água para o canteiro, ao todo
amount-sand = Areia seca
# doubt: "carga" for one load carried; "viagem" may be plainer.
amount-loads = Cargas de areia a transportar
# doubt: "canteiro" for the bed; "viveiro" or "alfobre" in places.
amount-bed = Canteiro
amount-strips = Faixas do canteiro, com caminhos de { MEASURE($path_m, unit: "metre") } entre elas
# doubt: "cheio de folhas" for a bed in full leaf.
amount-water = Água para o canteiro cheio de folhas, por dia
# doubt: "bidão" for the jerrycan; "galão" or "lata" in places.
amount-jerrycans = Bidões de água para o canteiro cheio de folhas, por dia

first-cuttings-value = { $first_cuttings_low } a { $first_cuttings_high }{ $plan_by ->
    [practice] , segundo a prática comum
   *[print] , por dias de crescimento
 }
sand-value = { MEASURE($sand_l, unit: "litre") }, cerca de { MEASURE($sand_kg, unit: "kilogram") }
bed-value = { MEASURE($bed_length_m, unit: "metre") } × { MEASURE($bed_width_m, unit: "metre") }
strips-value = { $strips }, cada uma de { MEASURE($strip_length_m, unit: "metre") } × { MEASURE($strip_width_m, unit: "metre") }
water-value = { MEASURE($water_l, unit: "litre") }
water-total-value = { MEASURE($water_total_l, unit: "litre") }
bundles-value = { MEASURE($bundles, unit: "bundle") } de { $bundle_size }
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
span-two-days = { DAY($from) } ou { DAY($to) }
span-day = { WEEKDAY($from) }, { DAY($from) }
unit-kilogram = { $n } kg
unit-litre = { $n } L
unit-metre = { $n } m
unit-centimetre = { $n } cm
# doubt: "mão" as a measure is from the wrist to the fingertips; "palmo" is the better known measure, but it is longer.
unit-hand = { $n } { $n ->
    [one] mão
   *[other] mãos
 }
# doubt: "dobra do polegar" for the upper joint of the thumb (two and a half centimetres) as a measure.
unit-thumb-joint = { $n } { $n ->
    [one] dobra do polegar
   *[other] dobras do polegar
 }
unit-bucket = { $n } { $n ->
    [one] balde
   *[other] baldes
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
# The name stands first and alone, so that no "de" or "em" must join with its article ("da festa", "do mercado").
event-before = { $event }: { $days } { $days ->
    [one] dia
   *[other] dias
 } antes
event-on = { $event }: no próprio dia
event-after = { $event }: { $days } { $days ->
    [one] dia
   *[other] dias
 } depois

## What must never be lost. The messages below refer to these sentences, each length to one of them.

# doubt: "buracos de bicho" for insect holes; "bicho" is any small creature that eats crops, plainer than "insecto".
-bad-roots = Se uma batata-doce estiver podre, com bolor ou com buracos de bicho, nunca a coma. Nunca a dê aos animais e nunca a plante. Enterre-a bem fundo ou queime-a.
-bad-roots-short = Podre, com bolor ou buracos de bicho: nunca coma, nunca dê a animais, nunca plante. Enterre fundo ou queime.
-bad-roots-sms = Batata-doce podre, com bolor ou buracos de bicho: nunca coma, nunca deixe animais comer, nunca plante, mesmo que parte pareça boa. Enterre fundo ou queime.
-take-nothing = Não aproveite nada de uma planta assim: nem batatas, nem ramas.
-take-nothing-short = Não aproveite nada dessas plantas.
# doubt: "margem alta e a pique" for a steep bank; "barranco" and "ravina" are for many a gully, "ribanceira" is less known.
-dry-riverbed = Tire areia só onde as regras do lugar o permitem, e de um rio só quando o rio estiver seco. Nunca cave perto de uma margem alta e a pique, porque a terra pode cair e enterrar quem lá estiver.
-dry-riverbed-short = Nunca cave em rio com água nem junto a margem a pique.
-children-water = Tape a água guardada, e não deixe as crianças chegar perto dela.
-children-water-short = Tape a água; crianças longe dela.
-keep-dry = Nunca regue a areia, porque areia húmida faz apodrecer as batatas.
-keep-dry-short = Nunca regue a areia.
# doubt: "só em terra húmida" could be heard as a place (the low, wet land), so the sentence says when.
-moist-soil = Plante a machamba só quando a terra estiver húmida, porque a terra seca mata as ramas.
-moist-soil-short = Plante só com a terra húmida.

## Opening and closing

# doubt: "produtores" for the farmers; "camponeses" or "agricultores" may be the word of the place.
opening = { $kind ->
    [zone] Este plano serve para todos os produtores da zona. As quantidades são para { $roots } batatas-doces. Para uma machamba maior use mais, e para uma mais pequena use menos. As datas dos trabalhos antes da colheita são para quem colhe primeiro. Se colher mais tarde, atrase esses trabalhos o mesmo número de dias.
   *[other] { $season ->
        [after] As chuvas começaram em { DAY($rains) }. As datas deste plano contam-se a partir desse dia.
       *[before] Este plano conta os dias para trás, a partir das chuvas. Elas costumam começar por volta de { DAY($rains) }.
     }
 }
closing = Se o seu extensionista disser outra coisa, siga o conselho dele.
    .sms = Se o seu extensionista disser outra coisa, siga o conselho dele.

## Steps: title, text (.text), the same in a few words (.short), picture in words (.alt), what a meeting is shown (.show) and asked (.ask), text message on a phone (.sms: 160 letters or less where it can be, two messages where it must be)

# doubt: "batatas de semente" for the roots kept to sprout.
mark-plants = Marque { $plants } { $plants ->
    [one] planta forte
   *[other] plantas fortes
 }
    .short = Saudáveis, de folhas grandes e limpas. Espete um pau ao lado.
    .text = Escolha plantas saudáveis de batata-doce, para tirar batatas de semente. { $kind ->
        [group] O grupo marca { $plants } plantas ao todo. Cada pessoa marca { $plants_each }.
       *[other] Marque { $plants } { $plants ->
            [one] planta.
           *[other] plantas.
         }
     } Escolha só plantas fortes, com folhas grandes e limpas, sem nenhum sinal de doença. Espete um pau na terra ao lado de cada uma. Elas vão dar cerca de { $roots } batatas para guardar.
    .alt = Uma mão espeta um pau na terra ao lado de uma planta forte.
    .show = Uma rama saudável e uma doente, e um pau.
    .ask = Como distingue uma planta saudável de uma doente?
    .sms = { BRIEF($first) }: marque { $plants } { $plants ->
        [one] planta saudável
       *[other] plantas saudáveis
     } de batata-doce para semente: fortes, de folhas grandes e limpas, sem sinal de doença. Espete um pau ao lado de cada uma.
# doubt: "debaixo de um telhado" for under cover.
gather-sand = Traga areia e seque-a
    .short = { MEASURE($buckets, unit: "bucket") } de { MEASURE($bucket_l, unit: "litre") }. Grossa e limpa. Seque debaixo de telhado, deixe arrefecer. { -dry-riverbed-short }
    .text = Traga areia para guardar as suas batatas-doces. Precisa de cerca de { MEASURE($buckets, unit: "bucket") } de { MEASURE($bucket_l, unit: "litre") }, ou { MEASURE($sand_kg, unit: "kilogram") }. Escolha areia limpa e grossa, com grãos que se sentem nos dedos. Espalhe-a debaixo de um telhado até ficar bem seca, e use-a só quando estiver fria. Areia fina, húmida ou quente faz apodrecer as batatas. Carregue no máximo { MEASURE($load_kg, unit: "kilogram") } de cada vez, porque a areia é pesada. { -dry-riverbed }
    .alt = Debaixo de um telhado, uma mão com uma tigela passa areia seca de um monte para um balde pequeno.
    .show = Um punhado de areia grossa e seca, e um de areia fina e húmida.
    .ask = Onde há areia grossa aqui perto, e será seguro cavar lá?
    .sms = Até { BRIEF($last) }: traga { MEASURE($buckets, unit: "bucket") } ({ MEASURE($bucket_l, unit: "litre") }) de areia grossa e limpa para guardar batata-doce, no máximo { MEASURE($load_kg, unit: "kilogram") } de cada vez. Seque debaixo de um telhado e deixe arrefecer. { -dry-riverbed-short }
# doubt: "pé do caule" for the foot of the stem; "furado" (with holes) where room is short.
# doubt: "visto" for a tick, in the words for pictures.
check-plants = Reveja as plantas marcadas
    .short = Folhas pequenas, enroladas ou manchadas, ramas fracas, pé do caule furado? Tire o pau. { -take-nothing-short }
    .text = Volte a ver as plantas de batata-doce que marcou. Procure folhas pequenas, enroladas ou com manchas, ramas fracas, ou buracos no pé do caule. Se vir algum destes sinais numa planta, ou se tiver dúvida, tire o pau que a marca. { -take-nothing }
    .alt = Uma planta saudável, com um visto, fica com o seu pau; uma mão tira o pau de uma planta doente, com folhas manchadas e enrugadas.
    .show = Folhas pequenas, enroladas e com manchas.
    .ask = O que faz com uma planta marcada que ficou doente?
    .sms = { BRIEF($first) }: volte a ver as plantas marcadas de batata-doce. Folhas pequenas, enroladas ou com manchas, ramas fracas, buracos no pé do caule, ou tem dúvida? Tire o pau. { -take-nothing-short }
cut-vines = Corte as ramas das plantas marcadas
    .short = Deixe { MEASURE($stem_cm, unit: "centimetre") } de caule: { MEASURE($stem_hands, unit: "hand") }.
    .text = Corte as ramas das plantas de batata-doce que marcou. Deixe de pé { MEASURE($stem_cm, unit: "centimetre") } de caule, mais ou menos o comprimento de { MEASURE($stem_hands, unit: "hand") }. Assim a casca das batatas fica rija, e elas duram mais tempo.
    .alt = Uma faca corta ramas, e os caules que ficam têm a altura da mão aberta que está ao lado.
    .show = A mão aberta ao longo de um caule.
    .ask = Porque é que a casca das batatas precisa de tempo para ficar rija?
    .sms = { BRIEF($first) }: corte as ramas das plantas marcadas de batata-doce. Deixe de pé { MEASURE($stem_cm, unit: "centimetre") } de caule. Assim a casca das batatas fica rija.
# doubt: "logo" for soon; in places it means later the same day.
# doubt: "colha" for digging out the roots; "arranque" or "cave" may be more usual.
harvest = Colha e escolha { $roots } { $roots ->
    [one] batata
   *[other] batatas
 }
    .short = Só com a terra seca. Do tamanho da mão, casca inteira, sem lavar. Cozinhe logo as cortadas pela enxada. { -bad-roots-short }
    .text = Colha as batatas-doces das plantas que marcou. Se a terra estiver molhada, espere até ela secar. Levante as plantas devagar, para a enxada não cortar nenhuma batata. Escolha { $roots } { $roots ->
        [one] batata com a casca inteira,
       *[other] batatas com a casca inteira,
     } mais ou menos do comprimento da sua mão. Tire a terra com a mão, e nunca lave as batatas. Deixe-as algumas horas à sombra. Não guarde as batatas cortadas pela enxada. Cozinhe-as logo. { -bad-roots }
    .alt = Uma mão levanta da terra solta uma planta com batatas inteiras; ao lado, uma enxada.
    .show = Uma batata média com a casca inteira, e uma cortada pela enxada.
    .ask = Quais destas batatas se guardam, e quais se cozinham logo?
    .sms = { BRIEF($first) }: com terra seca, colha a batata-doce marcada. Deixe umas horas à sombra. Guarde { $roots } { $roots ->
        [one] inteira, sem lavar.
       *[other] inteiras, sem lavar.
     } Cozinhe logo as cortadas pela enxada. { -bad-roots-sms }
# doubt: "malha apertada" for a tight basket; "panela" for a pot ("pote" in places).
fill-container = Guarde em areia seca
    .short = Areia: { MEASURE($base_cm, unit: "centimetre") } em baixo, { $layers ->
        [1] {""}
       *[other] { MEASURE($layer_cm, unit: "centimetre") } entre camadas,{" "}
     }{ MEASURE($top_cm, unit: "centimetre") } em cima. Batatas separadas, sem tampa. { -keep-dry-short }
    .text = Ponha as suas batatas-doces em areia seca. Precisa de { $containers } { $containers ->
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
     } Esse lugar deve ser fresco, seco e à sombra, longe de crianças, animais e chuva. Forre o fundo e os lados com papel. Deite no fundo { MEASURE($base_cm, unit: "centimetre") } de areia, a altura de cerca de { MEASURE($base_joints, unit: "thumb-joint") }. { $layer_widths ->
        [uneven] Na camada de baixo ponha no máximo { $roots_per_layer } { $roots_per_layer ->
            [one] batata, e na camada de cima no máximo { $roots_top }.
           *[other] batatas, e na camada de cima no máximo { $roots_top }.
         }{ $layers ->
            [1] {""}
            [2] {""}
            [3] {" "}Na camada do meio ponha as que couberem.
           *[other] {" "}Nas camadas do meio ponha as que couberem.
         }
       *[even] Em cada camada ponha no máximo { $roots_per_layer } { $roots_per_layer ->
            [one] batata.
           *[other] batatas.
         }
     } Nenhuma batata pode tocar noutra, nem nos lados. { $layers ->
        [1] Cubra as batatas com { MEASURE($top_cm, unit: "centimetre") } de areia.
       *[other] Cubra as batatas com { MEASURE($layer_cm, unit: "centimetre") } de areia, e ponha as seguintes. Faça assim, ao todo, { $layers } camadas de batatas, mas cubra a última com { MEASURE($top_cm, unit: "centimetre") } de areia.
     } Muita areia por cima afasta ratos, insectos e galinhas. Não ponha tampa. { -keep-dry }
    .alt = Uma bacia cortada ao meio: areia, batatas separadas, areia, batatas, muita areia por cima; uma mão espalha areia.
    .show = Uma bacia, areia seca e algumas batatas: alguém arruma a primeira camada.
    .ask = Porque é que as batatas não se podem tocar?
    .sms = { BRIEF($first) }: ponha a batata-doce em areia seca, sem as batatas se tocarem. Areia: { MEASURE($base_cm, unit: "centimetre") } em baixo, { $layers ->
        [1] {""}
       *[other] { MEASURE($layer_cm, unit: "centimetre") } entre camadas,{" "}
     }{ MEASURE($top_cm, unit: "centimetre") } em cima. Sem tampa. Longe de chuva, crianças e animais. Nunca levante o recipiente cheio. { -keep-dry-short }
monthly-check = Verifique cada batata
    .short = Tire os rebentos. Arrume de novo em areia seca. { -bad-roots-short }
    .text = Tire todas as batatas-doces, e olhe bem para cada uma. { -bad-roots } Tire os rebentos das batatas boas, esfregando com a mão. Arrume-as de novo em areia seca, da mesma maneira. Escreva quantas restam. Depois não mexa nelas até à próxima verificação.
    .alt = Três luas, sinal de que passou um mês; uma mão tira uma batata da bacia; ao lado há uma batata podre, riscada com uma cruz.
    .show = Uma batata podre, se houver, e como arrumar de novo.
    .ask = O que faz com uma batata podre, e porque não se dá aos animais?
    .sms = { BRIEF($first) }: tire toda a batata-doce guardada, e olhe para cada uma. Tire os rebentos das boas. Arrume-as de novo em areia seca. Escreva quantas restam. { -bad-roots-sms }
prepare-bed = Prepare o canteiro
    .short = { MEASURE($bed_length_m, unit: "metre") } por { MEASURE($bed_width_m, unit: "metre") }, perto de água. Solte a terra, ponha vedação. { -children-water-short }
    .text = Prepare o canteiro para as suas batatas-doces. Escolha um lugar perto de água. Faça o canteiro com { MEASURE($bed_length_m, unit: "metre") } de comprimento e { MEASURE($bed_width_m, unit: "metre") } de largura. { $bed_parts ->
        [strips] Faça-o em { $strips } faixas, cada uma com { MEASURE($strip_width_m, unit: "metre") } de largura, e deixe caminhos entre elas.{" "}
       *[one] {""}
     }Solte bem a terra. Ponha uma vedação contra cabritos e galinhas. { -children-water }
    .alt = Um homem solta a terra do canteiro com uma enxada; atrás dele, uma vedação.
    .show = O lugar perto de água, e o tamanho do canteiro em passos.
    .ask = O que impede os cabritos e as galinhas de entrar?
    .sms = Até { BRIEF($last) }: prepare um canteiro de { MEASURE($bed_length_m, unit: "metre") } por { MEASURE($bed_width_m, unit: "metre") } para a batata-doce, perto de água. Ponha vedação. { -children-water-short }
last-check = Última verificação: os rebentos ficam
    .short = As boas vão para o canteiro com os rebentos. { -bad-roots-short }
    .text = Tire todas as batatas-doces, e olhe bem para cada uma. { -bad-roots } Desta vez, deixe ficar os rebentos. As batatas boas vão agora para o canteiro.
    .alt = Uma mão tira da bacia uma batata com rebentos; uma seta aponta para o canteiro.
    .show = Uma batata com rebentos.
    .ask = Porque é que desta vez os rebentos ficam?
    .sms = { BRIEF($first) }: última verificação da batata-doce guardada. Deixe ficar os rebentos: as batatas boas vão agora para o canteiro. { -bad-roots-sms }
# doubt: "encharcada" for soil that is too wet; it may sound wetter than the English "wet".
plant-bed = Plante no canteiro
    .short = Regue primeiro. { $bed_rows } { $bed_rows ->
        [one] linha
       *[other] linhas, com { MEASURE($spacing_cm, unit: "centimetre") } entre elas
     }; { $row_roots } { $row_roots ->
        [one] batata
       *[other] batatas
     } por linha, a { MEASURE($soil_cm, unit: "centimetre") } de fundura. Terra húmida, não encharcada.
    .text = Não espere pela chuva para plantar a batata-doce no canteiro: regue-o até a terra ficar húmida. Faça { $bed_rows } { $bed_rows ->
        [one] linha ao comprido do canteiro.
       *[other] linhas ao comprido do canteiro, com { MEASURE($spacing_cm, unit: "centimetre") } entre elas.
     } { $row_roots ->
        [one] Ponha { $row_roots } batata em cada linha.
       *[other] Ponha cerca de { $row_roots } batatas em cada linha, a { MEASURE($along_row_cm, unit: "centimetre") } umas das outras.
     } Deixe ficar os rebentos. Cubra as batatas com { MEASURE($soil_cm, unit: "centimetre") } de terra. Volte a regar, devagar. Mantenha a terra húmida, mas não encharcada, porque terra encharcada faz apodrecer as batatas.
    .alt = Batatas deitadas em linha; uma mão cobre-as com terra.
    .show = A distância entre linhas, medida com um pau do tamanho certo.
    .ask = Esperamos pela chuva antes de plantar o canteiro?
    .sms = A partir de { BRIEF($first) }: regue o canteiro, não espere pela chuva. Ponha a batata-doce em { $bed_rows } { $bed_rows ->
        [one] linha,
       *[other] linhas a { MEASURE($spacing_cm, unit: "centimetre") } umas das outras,
     } a { MEASURE($soil_cm, unit: "centimetre") } de fundura. Terra húmida, não encharcada.
# doubt: "plantas novas" for the shoots that come up in the bed; "rebentos" is kept for the sprouts on stored roots.
water-bed = Regue o canteiro
    .short = { $shoots ->
        [before] Até nascer: { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
            [1] por dia
           *[other] a cada { $water_every_days } dias
         }.{" "}
       *[after] {""}
     }Cheio de folhas: cerca de { MEASURE($water_l, unit: "litre") } por dia, { MEASURE($jerrycans, unit: "jerrycan") }. Terra húmida, nunca encharcada. { -children-water-short }
    .text = Regue o canteiro de batata-doce a partir de { DAY($first) }. { $shoots ->
        [before] Até nascerem as plantas novas, dê cerca de { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
            [1] todos os dias
           *[other] a cada { $water_every_days } dias
         }, ou seja, cerca de { MEASURE($jerrycans_young, unit: "jerrycan") } de { MEASURE($jerrycan_l, unit: "litre") }. Mantenha a terra húmida, mas não encharcada, porque terra encharcada faz apodrecer as batatas. À medida que as folhas crescem, regue todos os dias, e dê um pouco mais cada semana.{" "}
       *[after] {""}
     }Quando as folhas cobrirem o canteiro, dê cerca de { MEASURE($water_l, unit: "litre") } todos os dias, ou seja, cerca de { MEASURE($jerrycans, unit: "jerrycan") } de { MEASURE($jerrycan_l, unit: "litre") }. Em dias quentes ou de vento, dê mais. Quando a chuva mantiver a terra húmida, pare de regar. { -children-water }
    .alt = Uma mão deita água de um bidão no canteiro com plantas novas.
    .show = Um bidão, e a pouca água de que as plantas novas precisam.
    .ask = Quem traz a água, e quem toma conta das crianças ali?
    .sms = A partir de { BRIEF($first) }: regue o canteiro de batata-doce. { $shoots ->
        [before] Até nascerem as plantas novas, { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
            [1] por dia;
           *[other] a cada { $water_every_days } dias;
         } cheio de folhas, { MEASURE($water_l, unit: "litre") } por dia.
       *[after] Cheio de folhas, { MEASURE($water_l, unit: "litre") } por dia.
     } Mais em dias quentes. Pare quando a chuva mantiver a terra húmida. { -children-water-short }
# doubt: "nó" for a leaf joint; farmers may say "olho".
# doubt: "húmida da chuva" for soil that rain, not dew or a bucket, has made moist.
# doubt: "um dedo inteiro" for a finger deep; "um dedo" alone is the width of a finger.
cut-for-planting = Corte ramas depois de a chuva entrar bem na terra
    .short = Machamba húmida até um dedo inteiro: ramas saudáveis de { MEASURE($cutting_cm, unit: "centimetre") }, { $nodes } nós. Deixe { MEASURE($stub_cm, unit: "centimetre") } de caule. Plante até ao dia seguinte.
    .text = Espere até a terra da machamba ficar húmida da chuva, até à fundura de um dedo inteiro. Depois corte ramas de batata-doce no canteiro. Tire só ramas saudáveis, sem folhas com manchas, enroladas ou muito pequenas. Cada rama deve ter { MEASURE($cutting_cm, unit: "centimetre") }, o comprimento de cerca de { MEASURE($cutting_hands, unit: "hand") }, e pelo menos { $nodes } { $nodes ->
        [one] nó, de onde saem as folhas.
       *[other] nós, de onde saem as folhas.
     } Deixe de pé { MEASURE($stub_cm, unit: "centimetre") } de caule, para voltar a crescer. { $plan_by ->
        [practice] A conta segue a prática comum. No primeiro corte, conte com cerca de
       *[print] No primeiro corte, conte com cerca de
     } { $first_cuttings_low } a { $first_cuttings_high } ramas. Guarde as ramas à sombra, e plante-as no mesmo dia ou no dia seguinte.
    .alt = Uma mão segura uma rama do canteiro, a outra corta-a com uma faca; ficam de pé pedaços de caule.
    .show = Uma rama do tamanho certo ao lado da mão: conte os nós.
    .ask = De que plantas não tiramos ramas?
    .sms = Quando a machamba estiver húmida da chuva até um dedo inteiro de fundura: corte ramas saudáveis de batata-doce, { MEASURE($cutting_cm, unit: "centimetre") }, { $nodes } { $nodes ->
        [one] nó.
       *[other] nós.
     } Deixe de pé { MEASURE($stub_cm, unit: "centimetre") } de caule. Guarde à sombra, plante até ao dia seguinte.
# doubt: "camalhão" for a ridge and "montículo" for a mound; "matuto" is said in parts of the north.
plant-field = Plante a machamba
    .short = { -moist-soil-short } Enterre dois ou três nós. Duas semanas depois, plante nas falhas.
    .text = Plante a machamba de batata-doce quando a terra estiver húmida da chuva, até à fundura de um dedo inteiro. { $layout ->
        [own] Cada um planta nos camalhões ou montículos da sua machamba.
        [mounds] Ponha { $on_mound } { $on_mound ->
            [one] rama
           *[other] ramas
         } em cada montículo, com os montículos a { MEASURE($between_cm, unit: "centimetre") } uns dos outros.
       *[ridges] Ponha uma rama a cada { MEASURE($along_cm, unit: "centimetre") } no camalhão, com os camalhões a { MEASURE($between_cm, unit: "centimetre") } uns dos outros.
     } Enterre dois ou três nós de cada rama, e deixe a ponta dela fora da terra. { $kind ->
        [zone] Durante toda a época do canteiro, { $roots } batatas dão cerca de { $cuttings } ramas.
       *[other] A machamba inteira leva { $cuttings } ramas.
     } Duas semanas depois, volte a plantar onde as ramas morreram. { -moist-soil }
    .alt = Debaixo de uma nuvem de chuva, uma mão planta ramas em fila; os nós de baixo ficam dentro da terra.
    .show = Terra húmida até à fundura de um dedo inteiro, e uma rama com os nós de baixo na terra.
    .ask = Choveu uma vez. Plantamos já? O que pode correr mal?
    .sms = A partir de { BRIEF($first) }, depois de a chuva entrar bem na terra: plante cerca de { $cuttings_to_plant } ramas de batata-doce. Enterre dois ou três nós de cada uma. { -moist-soil-short }
# doubt: "gorgulho" for the sweet potato weevil; farmers may just say "bicho da batata".
first-harvest = As primeiras batatas
    .short = Procure batatas já boas de comer. Colha todas até { DAY($last_harvest) }, por causa do gorgulho.
    .text = Apalpe a terra debaixo de algumas plantas, à procura de batatas-doces já grandes para comer. Não deixe batatas maduras muito tempo em terra seca, porque o gorgulho as encontra. Colha as últimas até { DAY($last_harvest) }.
    .alt = Uma mão procura uma batata debaixo de uma planta; ao lado, uma panela ao lume.
    .show = Como apalpar uma batata sem arrancar a planta.
    .ask = O que acontece às batatas maduras que ficam na terra seca?
    .sms = A partir de { BRIEF($first) }: apalpe a terra e procure batata-doce madura. Colha toda até { BRIEF($last_harvest) }, porque o gorgulho encontra a batata madura em terra seca.

## Tables: title, what it tells (.text), its picture in words (.alt)

# doubt: "por dias de crescimento" where cuttings are counted by the days that the bed has grown.
table-cuts = Cortes{ $plan_by ->
    [practice] , segundo a prática comum
   *[print] , por dias de crescimento
 }
    .text = { $cuts ->
        [1] As épocas são diferentes: conte com um número de ramas entre o mais baixo e o mais alto.
       *[other] As épocas são diferentes: conte com um número de ramas entre o mais baixo e o mais alto. Os cortes seguintes dão para o resto da machamba e enchem as falhas.
     }
# doubt: "talhão" for a small plot kept watered.
table-ways = O que pode fazer, lado a lado
    .text = A tabela mostra o que cada maneira dá numa época normal, até à chegada das chuvas. Nenhuma é certa. Mostra também o que cada maneira exige, mesmo que não tenha tanto.
way-value = { $way ->
    [one-bed] Um canteiro, cortado quando as chuvas chegam
    [second-bed] Um canteiro pequeno mais cedo; as ramas dele crescem num talhão regado
    [vine-plot] Ramas da machamba actual num talhão regado; não guardar batatas
    [as-planned] Deixar as batatas na areia, como planeado
    [bed-now] Pôr já as batatas boas no canteiro
    [bed-now-second-bed] Já para o canteiro; as ramas dele crescem num talhão regado
   *[buy] Arranjar com outra pessoa as ramas que faltam
 }
# doubt: "reserva comum" for the common store of roots in sand.
table-shares = O que cada machamba traz
    .text = Cada um marca as plantas da sua própria machamba e traz as suas batatas para a reserva comum.
table-fields = Quantidades conforme o tamanho da machamba
    .text = Procure a sua machamba na primeira coluna. Se ela ficar entre duas linhas, as quantidades também ficam entre as dessas linhas.
# doubt: "falso início" for a false start of the rains; "chuva enganadora" may be plainer.
table-planting-later = Se esperar para plantar
    .text = Se plantar com a primeira chuva forte e a seguir vier muito tempo seco, as plantas novas podem morrer. É um falso início. Se esperar, ficam menos dias até ao fim das chuvas. A tabela mostra como foram as duas coisas em anos passados. Não é uma previsão. Na figura, as barras às riscas são os anos com falso início, e as barras pretas são os dias até ao fim das chuvas.
    .alt = Para cada dia a partir do qual se planta: uma barra às riscas para os anos com falso início, e uma barra preta para os dias até ao fim das chuvas. Os números estão na tabela acima.
column-when = Quando
column-way = O que se faz
column-farm = Machamba
column-area = Machamba, m²
column-cuttings = Ramas
column-cut = Ramas
cut-value = { $low }–{ $high }
column-plants = Plantas a marcar
column-roots = Batatas a guardar
column-bed = Canteiro, m²
column-jerrycans = Bidões de água por dia
column-water = Água ao todo, L
column-trips = Idas à água
column-from = Primeira chuva a partir de
column-false-starts = Anos com falso início
column-days-left = Dias até ao fim das chuvas, em metade dos anos
false-starts-value = { $false_starts } em { $years }

## Cautions: title, text (.text), the same in a few words (.short), picture in words (.alt); text message (.sms) where there is one

caution-rot = Batata estragada: até a parte boa pode ter veneno
    .short = { -bad-roots-short }
    .text = { -bad-roots } Não a corte, não a descasque nem a cozinhe para aproveitar uma parte. Mesmo a parte que parece boa pode ter veneno. Se tiver dúvida sobre uma batata, trate-a como estragada.
    .alt = Uma batata podre; por baixo, uma vaca e uma panela, ambas riscadas com uma cruz.
    .sms = { -bad-roots-sms }
caution-virus = Plantas doentes
    .short = Folhas pequenas, enroladas ou com manchas, ramas fracas? { -take-nothing-short }
    .text = Numa planta de batata-doce, ramas fracas são sinal de doença. Folhas pequenas, enroladas ou com manchas também são. { -take-nothing }
    .alt = Uma mão com uma faca junto a uma planta de folhas manchadas e enrugadas, riscada com uma cruz.
# doubt: "rachas" for cracks in the soil; "fendas" in places.
caution-cracks = Rachas na terra
    .short = O gorgulho entra pelas rachas. Puxe terra para cima delas.
    .text = O gorgulho chega às batatas-doces pelas rachas da terra. Quando vir uma racha, puxe terra para cima dela.
    .alt = Um gorgulho entra numa racha do camalhão; por baixo está uma batata cheia de buracos.
caution-heavy-sand = A areia é pesada
    .short = Carregue no máximo { MEASURE($load_kg, unit: "kilogram") }. Nunca levante o recipiente cheio.
    .text = Carregue no máximo { MEASURE($load_kg, unit: "kilogram") } de cada vez. Encha o recipiente no lugar onde vai ficar. Nunca o levante quando estiver cheio.
    .alt = Uma pessoa curvada debaixo de um grande saco, riscada com uma cruz; uma mulher direita com um balde pequeno, com um visto.
caution-riverbed = Areia do rio
    .short = Só onde as regras o permitem. { -dry-riverbed-short }
    .text = { -dry-riverbed }
    .alt = A margem alta do rio a cair sobre uma pessoa que cava, riscada com uma cruz.
caution-water-children = Água, crianças e animais
    .short = { -children-water-short } Ponha vedação nos poços, nas covas e no canteiro.
    .text = { -children-water } Ponha vedação à volta dos poços e das covas. Não deixe cabritos nem galinhas entrar no canteiro.
    .alt = Um tambor de água tapado atrás de uma vedação; uma mulher segura uma criança do lado de fora.
caution-store-dry = Mantenha a areia seca
    .short = { -keep-dry-short } Areia húmida apodrece as batatas.
    .text = A areia das batatas-doces guardadas tem de estar sempre seca, do primeiro ao último dia. { -keep-dry }
    .alt = Água de um bidão cai na bacia das batatas, riscada com uma cruz.
caution-forecast = As datas não são previsão
    .short = Este ano a chuva pode vir mais cedo ou mais tarde. { -moist-soil-short }
    .text = Estas datas vêm de anos passados, e não são uma previsão. Este ano a chuva pode vir mais cedo ou mais tarde. Observe o céu e a terra. { -moist-soil }
    .alt = Uma mulher com ramas na mão olha para o sol, a nuvem e a chuva.
caution-try-first = Comece com poucas batatas
    .short = É novo para si? Comece com poucas, e guarde algumas ramas à maneira antiga.
    .text = Se isto é novo para si, comece com poucas batatas-doces. Guarde também algumas das suas ramas à maneira antiga.
    .alt = Uma mulher entre uma panela pequena com poucas batatas e uma planta que continua a crescer na terra.

## Drawings and formats: titles, what drawings show in words, the names and sizes that stand in them

month-year = { month } de { $year }
calendar-title = O trabalho, mês a mês
guide-title = Guia para uma reunião
card-fold = Dobre pelas linhas tracejadas. Corte pela linha grossa.
record-title = Verificação das batatas guardadas
record-how = Em cada verificação, tire todas as batatas-doces. Enterre bem fundo ou queime as podres, as que têm bolor e as que têm buracos de bicho. Escreva o que encontrar, e mostre esta ficha ao seu extensionista.
record-planned = Previsto para
record-done = Feito em
record-healthy = Repostas na areia
# Not "deitadas fora": they are buried or burnt, and on a heap animals and children find them.
record-thrown-away = Não prestam
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
drawing-bed = O canteiro
drawing-bed-alt = O canteiro visto de cima: as linhas de batatas, o comprimento e a largura.
drawing-rows = A machamba
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

## Channels: cue sheets for phones and meetings

# doubt: "nível da fala" for active speech level, a figure for sound technicians.
cue-active-level = Nível da fala
cue-chapter = Capítulo
cue-talk = tempo para conversar, { $seconds } s

## The guide for a meeting

guide-show = O que mostrar
guide-ask = Pergunte

## Good to know: tips for the season

# doubt: "não se conservam" for roots that do not keep.
advice-roots-not-chosen = Batatas-doces pequenas ou tortas, e as cortadas pela enxada, são comida. Coma-as ou venda-as logo, primeiro as cortadas, porque não se conservam. { -bad-roots }
advice-storage-place = Guarde os recipientes num quarto fresco, seco e à sombra, onde o ar circula e a chuva não entra. Ponha-os fora do alcance de crianças, ratos, galinhas e cabritos.
advice-clean-vines = Para plantar, prefira as pontas das ramas, porque têm menos gorgulhos. Não tire ramas de plantas com buracos no pé ou sinais de doença.
advice-clean-field = Plante a pelo menos { $metres } m de machambas antigas de batata-doce, porque é de lá que vem o gorgulho. Tire do terreno as ramas e as batatas velhas. Muitos aconselham a plantar batata-doce no mesmo terreno só uma vez em cada { $years } anos.
advice-deep-planting = Ponha as ramas a cerca de { $deep_cm } cm de fundura. Num ensaio, deram-se melhor assim do que a { $shallow_cm } cm.
advice-dry-after-planting = As primeiras chuvas podem parar. De 100 ramas plantadas, cerca de { $week_least } a { $week_most } aguentam uma semana seca, e { $fortnight_least } a { $fortnight_most } aguentam duas. Regue o canteiro até a machamba pegar, guarde algumas ramas, e volte a plantar onde morreram.
# doubt: "estrume curtido" for rotted manure, and "sachar" for weeding.
advice-feed-and-weed = Antes de plantar, misture estrume velho e curtido, ou composto, na terra dos camalhões. Estrume fresco, ou muito estrume, dá folhas e poucas batatas. Sache até as ramas cobrirem a terra.
# doubt: "batata-doce de polpa alaranjada" for orange roots.
advice-children = Dê muitas vezes batata-doce de polpa alaranjada às crianças pequenas. Num ensaio, crianças que comeram { $serving_g } g por dia durante { $days } dias ficaram com melhores reservas de vitamina A. A batata-doce de polpa clara tem muito menos. Nenhum conselho pode prometer o mesmo para cada criança.

## What the plan leads to: on the sheet, and as a text message

remark-containers-too-small =
    .text = Há lugar para { $fit } { $fit ->
        [one] batata-doce,
       *[other] batatas-doces,
     } não para { $roots }. Não meta mais do que cabe, porque as batatas apodrecem onde se tocam. Isto chega para plantar cerca de { $area_m2 } dos { $field_m2 } m² da machamba. { $more ->
        [0] Para guardar mais, arranje outro recipiente, ou então plante uma machamba mais pequena.
        [one] Para guardar mais, arranje mais um recipiente, ou então plante uma machamba mais pequena.
       *[other] Para guardar mais, arranje mais { $more } recipientes, ou então plante uma machamba mais pequena.
     }
remark-sand-short =
    .text = A sua areia cobre { $fit } { $fit ->
        [one] batata-doce,
       *[other] batatas-doces,
     } não { $roots }. Não guarde as batatas que a areia não cobrir. Isto chega para plantar cerca de { $area_m2 } dos { $field_m2 } m² da machamba. Traga mais { MEASURE($more_l, unit: "litre") } de areia, ou plante uma machamba mais pequena.
remark-water-limits =
    .text = A sua água chega para um canteiro com { $fit } { $fit ->
        [one] batata-doce,
       *[other] batatas-doces,
     } não com { $roots }. Não faça o canteiro maior do que aqui se diz, e mantenha-o húmido. Isto chega para plantar cerca de { $area_m2 } dos { $field_m2 } m² da machamba. Para a machamba inteira, arranje mais { MEASURE($more_l, unit: "litre") } { $per ->
        [all] ao todo.
       *[day] por dia.
     }
remark-hands-short =
    .text = Quem carrega água consegue regar um canteiro com { $fit } { $fit ->
        [one] batata-doce,
       *[other] batatas-doces,
     } não com { $roots }. Não faça o canteiro maior do que aqui se diz, e mantenha-o húmido. Isto chega para cerca de { $area_m2 } dos { $field_m2 } m² da machamba. Para a machamba inteira, ponha mais gente a carregar, ou faça o canteiro mais perto da água.
remark-water-heavy =
    .text = Nos dias secos, o canteiro de batata-doce precisa de { $trips } { $trips ->
        [one] ida à água.
       *[other] idas à água.
     } Isso leva cerca de { $hours } { $hours ->
        [one] hora por dia a carregar água.
       *[other] horas por dia a carregar água.
     } Combine já quem vai carregar, ou prepare um canteiro mais pequeno.
remark-limited-at-hand =
    .text = { $limit ->
        [roots] Tem { $roots } { $roots ->
            [one] batata-doce para guardar.
           *[other] batatas-doces para guardar.
         }
        [plants] As suas plantas dão cerca de { $roots } { $roots ->
            [one] batata-doce para guardar.
           *[other] batatas-doces para guardar.
         }
       *[bed] O canteiro tem lugar para { $roots } { $roots ->
            [one] batata-doce.
           *[other] batatas-doces.
         }
     } Para a machamba inteira são precisas { $wanted }. As suas batatas chegam para plantar cerca de { $area_m2 } dos { $field_m2 } m² da machamba. Plante uma machamba mais pequena, ou peça ramas aos vizinhos.
remark-field-waits =
    .text = O primeiro corte de ramas de batata-doce chega para cerca de { $area_m2 } dos { $field_m2 } m² da machamba. Os cortes seguintes dão para o resto, cada um depois de mais { $least_days } a { $most_days } dias.
remark-rains-too-soon =
    .text = As chuvas podem começar por volta de { BRIEF($rains) }. É cedo demais depois da colheita para guardar batata-doce. Em vez disso, plante ramas da machamba actual, ou ponha já as batatas no canteiro.
remark-storing-not-needed =
    .text = Aqui o tempo seco dura cerca de { $days } dias na maioria dos anos. É possível manter vivas as ramas de batata-doce durante esse tempo: não precisa de guardar batatas. Deixe de pé uma parte da machamba actual, ou guarde ramas num pequeno talhão regado.
remark-rains-too-short =
    .text = Aqui as chuvas são curtas para a batata-doce. { $known ->
        [case] O que plantar pode não amadurecer antes do fim das chuvas.
        [open] Ninguém sabe em quantos anos amadurece antes do fim das chuvas.
       *[record] Em cada 100 anos, só em { $of_100 } amadurece antes do fim das chuvas.
     } { $helps ->
        [on-time] Prepare o canteiro cedo, para poder plantar logo que a chuva entrar bem na terra.
        [quicker] Plante logo que a chuva entrar bem na terra, e procure uma variedade que amadureça mais cedo.
       *[neither] Plante logo que a chuva entrar bem na terra, e conte com poucas batatas, e pequenas.
     }
remark-cuts-too-late =
    .text = A batata-doce dos cortes mais tardios, plantada a partir de { BRIEF($from) }, vem tarde demais. Só está madura por volta de { BRIEF($ripe) }. Na maioria dos anos, as chuvas acabam antes. Não reserve uma parte da machamba para esses cortes. Use essas ramas para o gado, ou deixe-as crescer onde há água.
remark-bed-late =
    .text = O canteiro de batata-doce dá as primeiras ramas por volta de { BRIEF($cut) }, depois de as chuvas começarem. Quando a chuva entrar bem na terra, plante as ramas que tiver. O resto planta-se mais tarde, com outras ramas do canteiro.
remark-long-in-sand =
    .text = As suas batatas-doces têm de ficar { $days } dias na areia. Ninguém contou quantas aguentam tanto tempo. Mantenha também algumas ramas a crescer perto de água, e fale com o seu extensionista.
remark-late-work =
    .text = Algum trabalho da batata-doce não se fez a tempo: as datas foram contadas de novo. Faça já o que ainda se pode fazer. A machamba pode ser plantada a partir de { BRIEF($field_from) }.{ $fewer ->
        [0] {""}
        [one] {" "}Conte com cerca de { $fewer } rama a menos no primeiro corte.
       *[other] {" "}Conte com cerca de { $fewer } ramas a menos no primeiro corte.
     }
remark-fast-loss =
    .text = Na verificação de { BRIEF($day) }, de { $roots } batatas-doces só { $healthy ->
        [one] { $healthy } estava boa.
       *[other] { $healthy } estavam boas.
     } { $next ->
        [bed] Ponha já as batatas boas no canteiro, e procure mais ramas para plantar.
       *[check] Procure a causa: areia húmida ou quente, batatas cortadas, batatas que se tocam, ou gorgulho. Use areia nova e seca. Volte a verificar daqui a duas semanas. Se apodrecerem muitas mais, ponha já as boas num canteiro regado.
     }
remark-cuttings-short =
    .text = No primeiro corte { $short ->
        [one] vai faltar cerca de
       *[other] vão faltar cerca de
     } { $short } { $short ->
        [one] rama de batata-doce.
       *[other] ramas de batata-doce.
     } Plante cerca de { $area_m2 } dos { $field_m2 } m² da machamba quando a chuva entrar bem na terra. { $later_cuts ->
        [0] Os cortes seguintes vêm tarde demais para dar batatas maduras: peça cedo ramas aos vizinhos.
       *[other] Os cortes seguintes dão para mais uma parte da machamba. Pode também pedir cedo ramas aos vizinhos.
     }
remark-water-short =
    .text = A partir de { BRIEF($from) }, pode faltar água para o canteiro de batata-doce. Procure mais água. Capim seco por cima da terra e sombra poupam água. Sem isso, prepare um canteiro mais pequeno, e plante uma machamba mais pequena.
remark-rains-may-be-late =
    .text = As chuvas podem tardar até { BRIEF($late) }. Regue o canteiro de batata-doce até elas virem. { -moist-soil }
remark-years-without-rains =
    .text = Em { $count } de { $judged } anos passados, as chuvas não chegaram a começar bem. Num ano assim, ramas de batata-doce plantadas com a primeira chuva podem morrer. Guarde de reserva algumas batatas, ou continue a regar uma parte do canteiro.
