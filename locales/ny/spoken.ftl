### Chichewa, mawu oyeserera: mawu a pa wailesi ndi pa foni. Munthu wodziwa bwino Chichewa sanawawerengebe.
### Draft. Every literal text is recorded as it stands here, cut at the { … }.
### No digits, no abbreviations. Numbers: SAY, days: DAY and SPAN, measures: MEASURE.
### Forms: radio-N says native numbers with the concord of class N to ten, and loan numbers above, as on the radio.
### mbatata, nsanjika, mfundo, ndowa radio-10; zomera, zidutswa, ziwiya, zigubu, zikhato, zaka radio-8; mizere, mitolo,
### ulendo radio-4; masiku, maola, maulendo and measures radio-6.
### The listener is addressed with the polite imperative (-ni, musa-), right for one adult and for a group.
### Words doubted in written.ftl and glossary.toml (nthambi, zidutswa, nsanjika, chuku, mfundo, tsinde …) are so here too.

## What must never be lost. The messages below refer to these sentences.

# doubt: mould is said with both words, "chuku" and "nkhungu", because a listener may know only one of them.
# doubt: whether "konse" is heard as a firm "never".
# doubt: "itentheni … mpaka isanduke phulusa" (burn to ash). Not "iwotcheni": it also means roast it, and rotten roots must not sound like food.
-bad-roots = Mbatata ikawola, ikachita chuku kapena nkhungu, kapena ikakhala ndi mabowo a tizilombo, musaidye konse. Musaipatse ziweto konse, ndipo musaibzale konse. Ikwirireni m'dzenje lakuya, kapena itentheni pa moto mpaka isanduke phulusa.
-take-nothing = Pa chomera chotere musatengepo mbatata iliyonse, ndipo musatengepo nthambi iliyonse.
# "Pokhapokha" is avoided here and below: it means "only if" and "unless" alike.
# doubt: "gombe loimirira ngati khoma" (a bank that stands like a wall) for a steep bank.
-dry-riverbed = Tengani mchenga kokhako kumene malamulo a dera lanu amalola. Musatenge mchenga mumtsinje wa madzi, koma mumtsinje wouma mokha. Musakumbe konse pafupi ndi gombe loimirira ngati khoma, chifukwa likhoza kugumuka ndi kukukwirirani.
-children-water = Vundikirani madzi osungidwa, ndipo musalole ana kuwayandikira.
# doubt: "wonyowa, ngakhale pang'ono" (wet, even a little) for damp sand, so that only good moist soil is called "yachinyontho".
-keep-dry = Musathire madzi konse mumchenga, chifukwa mchenga wonyowa, ngakhale pang'ono, umawoletsa mbatata.
-moist-soil = Bzalani munda m'nthaka yachinyontho mokha, chifukwa zidutswa za nthambi zimafa m'nthaka youma.

## Dates and units

# Month names as in written.ftl.
month = { $month ->
    [1] Januwale
    [2] Febuluwale
    [3] Malichi
    [4] Epulo
    [5] Meyi
    [6] Juni
    [7] Julayi
    [8] Ogasiti
    [9] Seputembala
    [10] Okutobala
    [11] Novembala
   *[12] Disembala
 }
month-of = { $month ->
    [1] wa mwezi wa Januwale
    [2] wa mwezi wa Febuluwale
    [3] wa mwezi wa Malichi
    [4] wa mwezi wa Epulo
    [5] wa mwezi wa Meyi
    [6] wa mwezi wa Juni
    [7] wa mwezi wa Julayi
    [8] wa mwezi wa Ogasiti
    [9] wa mwezi wa Seputembala
    [10] wa mwezi wa Okutobala
    [11] wa mwezi wa Novembala
   *[12] wa mwezi wa Disembala
 }
# A day is recorded whole, with the word that is bound to it: "pa twente faifi", "pakati pa twente faifi", "ndi twente faifi".
# doubt: the day as a loan number (twente faifi Novembala); older speakers may say "tsiku la" and a native number, and some "fesiti" for the first.
# doubt: there is no fixed spelling of loan numbers; the speaker says them as usual.
date = { $day ->
    [1] pa wani
    [2] pa thu
    [3] pa thiri
    [4] pa folo
    [5] pa faifi
    [6] pa sikisi
    [7] pa seveni
    [8] pa eyiti
    [9] pa naini
    [10] pa teni
    [11] pa leveni
    [12] pa twelofu
    [13] pa satini
    [14] pa fotini
    [15] pa fifitini
    [16] pa sikisitini
    [17] pa seventini
    [18] pa eyitini
    [19] pa nayintini
    [20] pa twente
    [21] pa twente wani
    [22] pa twente thu
    [23] pa twente thiri
    [24] pa twente folo
    [25] pa twente faifi
    [26] pa twente sikisi
    [27] pa twente seveni
    [28] pa twente eyiti
    [29] pa twente naini
    [30] pa sate
   *[31] pa sate wani
 } { month }
date-between = { $day ->
    [1] pakati pa wani
    [2] pakati pa thu
    [3] pakati pa thiri
    [4] pakati pa folo
    [5] pakati pa faifi
    [6] pakati pa sikisi
    [7] pakati pa seveni
    [8] pakati pa eyiti
    [9] pakati pa naini
    [10] pakati pa teni
    [11] pakati pa leveni
    [12] pakati pa twelofu
    [13] pakati pa satini
    [14] pakati pa fotini
    [15] pakati pa fifitini
    [16] pakati pa sikisitini
    [17] pakati pa seventini
    [18] pakati pa eyitini
    [19] pakati pa nayintini
    [20] pakati pa twente
    [21] pakati pa twente wani
    [22] pakati pa twente thu
    [23] pakati pa twente thiri
    [24] pakati pa twente folo
    [25] pakati pa twente faifi
    [26] pakati pa twente sikisi
    [27] pakati pa twente seveni
    [28] pakati pa twente eyiti
    [29] pakati pa twente naini
    [30] pakati pa sate
   *[31] pakati pa sate wani
 } { month }
date-and = { $day ->
    [1] ndi wani
    [2] ndi thu
    [3] ndi thiri
    [4] ndi folo
    [5] ndi faifi
    [6] ndi sikisi
    [7] ndi seveni
    [8] ndi eyiti
    [9] ndi naini
    [10] ndi teni
    [11] ndi leveni
    [12] ndi twelofu
    [13] ndi satini
    [14] ndi fotini
    [15] ndi fifitini
    [16] ndi sikisitini
    [17] ndi seventini
    [18] ndi eyitini
    [19] ndi nayintini
    [20] ndi twente
    [21] ndi twente wani
    [22] ndi twente thu
    [23] ndi twente thiri
    [24] ndi twente folo
    [25] ndi twente faifi
    [26] ndi twente sikisi
    [27] ndi twente seveni
    [28] ndi twente eyiti
    [29] ndi twente naini
    [30] ndi sate
   *[31] ndi sate wani
 } { month }
week = { $week ->
    [1] mlungu woyamba
    [2] mlungu wachiwiri
    [3] mlungu wachitatu
    [4] mlungu wachinayi
   *[5] mlungu womaliza
 } { month-of }
span = { DAY($from, form: "between") } { DAY($to, form: "and") }
span-two-days = { DAY($from) } kapena { DAY($to) }
span-day = { DAY($from) }
unit-kilogram = { $n ->
    [one] kilogalamu { SAY($n, form: "radio-10") }
   *[other] makilogalamu { SAY($n, form: "radio-6") }
 }
unit-litre = { $n ->
    [one] lita { SAY($n, form: "radio-10") }
   *[other] malita { SAY($n, form: "radio-6") }
 }
# Lengths and hands come in halves: $whole is the number below, $half says whether a half is added.
unit-metre = { $half ->
    [yes] { $whole ->
        [0] theka la mita
        [one] mita { SAY($whole, form: "radio-10") } ndi theka
       *[other] mamita { SAY($whole, form: "radio-6") } ndi theka
     }
   *[no] { $whole ->
        [one] mita { SAY($whole, form: "radio-10") }
       *[other] mamita { SAY($whole, form: "radio-6") }
     }
 }
unit-centimetre = { $n ->
    [one] sentimita { SAY($n, form: "radio-10") }
   *[other] masentimita { SAY($n, form: "radio-6") }
 }
# doubt: "chikhato ndi zala" (the palm with the fingers) for a hand's length, because "dzanja" is the arm too; also written "chikhatho".
unit-hand = { $half ->
    [yes] { $whole ->
        [0] theka la chikhato kuphatikiza zala
        [one] chikhato { SAY($whole, form: "radio-8") } ndi theka kuphatikiza zala
       *[other] zikhato { SAY($whole, form: "radio-8") } ndi theka kuphatikiza zala
     }
   *[no] { $whole ->
        [one] chikhato { SAY($whole, form: "radio-8") } ndi zala
       *[other] zikhato { SAY($whole, form: "radio-8") } ndi zala
     }
 }
unit-thumb-joint = { $half ->
    [yes] { $whole ->
        [0] theka la mfundo ya chala chachikulu
       *[other] mfundo { SAY($whole, form: "radio-10") } ndi theka za chala chachikulu
     }
   *[no] { $whole ->
        [one] mfundo { SAY($whole, form: "radio-10") } ya chala chachikulu
       *[other] mfundo { SAY($whole, form: "radio-10") } za chala chachikulu
     }
 }
unit-bucket = ndowa { SAY($n, form: "radio-10") }
unit-jerrycan = { $n ->
    [one] chigubu { SAY($n, form: "radio-8") }
   *[other] zigubu { SAY($n, form: "radio-8") }
 }
unit-bundle = { $n ->
    [one] mtolo { SAY($n, form: "radio-4") }
   *[other] mitolo { SAY($n, form: "radio-4") }
 }

## Opening and closing. $season says how the day stands to the rains, $variant which of three ways to say it.

# doubt: "mvula yobzalira" (rain for planting) for the rains, because "mvula yoyamba" may be any first shower.
opening = { $season ->
    [before] { $variant ->
        [1] Kuno nthawi zambiri mvula yobzalira imayamba pafupifupi { DAY($rains) }.
        [2] Alimi a mbatata, werengani nafe masiku mobwerera m'mbuyo kuchokera pa mvula yobzalira. Nthawi zambiri imayamba pafupifupi { DAY($rains) }.
       *[3] Mverani ntchito yotsatira ya mbatata zanu. Nthawi zambiri mvula yobzalira imayamba pafupifupi { DAY($rains) }.
     }
    [near] { $variant ->
        [1] Alimi a mbatata, mvula yobzalira ikhoza kuyamba tsiku lililonse tsopano.
        [2] Mvula yobzalira ikhoza kuyamba posachedwa. Yang'anirani kumwamba ndi nthaka.
       *[3] Alimi a mbatata, khalani okonzeka. Mvula yobzalira yayandikira.
     }
    [after] { $variant ->
        [1] Alimi a mbatata, mvula yobzalira yayamba.
        [2] Mvula yobzalira yabwera. Mverani ntchito yotsatira ya mbatata zanu.
       *[3] Alimi a mbatata, mvula yobzalira yabwera. Mverani zoyenera kuchita tsopano.
     }
   *[later] { $variant ->
        [1] Alimi a mbatata, mverani zoyenera kuchita tsopano.
        [2] Mverani ntchito yotsatira ya mbatata zanu.
       *[3] Tsopano tiyeni tikambe za mbatata zanu, ndi ntchito imene ikutsatira.
     }
 } { $kind ->
    [zone] Miyeso imene mukumva ndi ya mbatata zokwana { SAY($roots, form: "radio-10") }. Munda wanu ukakhala wokulirapo, onjezerani. Ukakhala wocheperapo, chepetsani.{ $season ->
        [before] {" "}Ngati mudzakumba mbatata masiku angapo pambuyo pa alimi oyamba, ntchito zogwiridwa musanakumbe zichedwetseni ndi masiku ofanana ndi amenewo.
       *[later] {""}
     }
   *[other] {""}
 }
closing = { $variant ->
    [1] Mlangizi wanu wa zaulimi akanena zosiyana ndi izi, tsatirani malangizo ake.
    [2] Funsaninso mlangizi wanu wa zaulimi, ndipo koposa zonse tsatirani malangizo ake.
   *[3] Malangizo a mlangizi wanu wa zaulimi ndi ofunika kuposa uthenga uwu.
 }

## Steps

mark-plants = Sankhani zomera zathanzi za mbatata, zoti mudzapezepo mbatata za mbewu. Gwirani ntchito imeneyi { SPAN($when) }. { $kind ->
    [group] Pamodzi, { $plants ->
        [one] ikani chizindikiro pa chomera { SAY($plants, form: "radio-8") }.
       *[other] ikani chizindikiro pa zomera { SAY($plants, form: "radio-8") }.
     } { $plants_each ->
        [one] Aliyense wa inu aike chizindikiro pa chomera { SAY($plants_each, form: "radio-8") }.
       *[other] Aliyense wa inu aike chizindikiro pa zomera { SAY($plants_each, form: "radio-8") }.
     }
   *[other] { $plants ->
        [one] Ikani chizindikiro pa chomera { SAY($plants, form: "radio-8") }.
       *[other] Ikani chizindikiro pa zomera { SAY($plants, form: "radio-8") }.
     }
 } Tengani zomera zamphamvu zokha, za masamba aakulu opanda chilema, zosaonetsa matenda alionse. Zikani kamtengo m'nthaka pafupi ndi chomera chilichonse. { $roots ->
    [one] Mudzapezapo mbatata yosunga pafupifupi { SAY($roots, form: "radio-10") }.
   *[other] Zomerazi zidzakupatsani mbatata zosunga pafupifupi { SAY($roots, form: "radio-10") }.
 } { $plants ->
    [one] Kumbukirani: chomera { SAY($plants, form: "radio-8") }, ndi kamtengo kake.
   *[other] Kumbukirani: zomera { SAY($plants, form: "radio-8") }, chilichonse ndi kamtengo kake.
 }
# doubt: "mchenga wa njere zazikulu" for coarse sand, "mchenga wosalala" for fine sand; "ndowa" for a bucket, some say "chidebe".
gather-sand = Bweretsani mchenga wosungiramo mbatata zanu. Gwirani ntchito imeneyi { SPAN($when) }. Pakufunika mchenga wokwana pafupifupi { MEASURE($buckets, unit: "bucket") }{ $buckets ->
    [one] {" "}yolowa
   *[other] , iliyonse yolowa
 } { MEASURE($bucket_l, unit: "litre") }. Tengani mchenga waukhondo wa njere zazikulu, zoti mukhoza kuzimva ndi zala. Uyaleni pansi pa denga mpaka uume bwino, ndipo musaugwiritse ntchito usanazizire. Mchenga wosalala, wonyowa kapena wofunda umawoletsa mbatata. Kumbukirani: mchenga wa njere zazikulu, wouma ndi wozizira, wokwana pafupifupi { MEASURE($buckets, unit: "bucket") }.
check-plants = Onaninso zomera za mbatata zimene munaikapo chizindikiro. Gwirani ntchito imeneyi { SPAN($when) }. Onani ngati masamba ali ang'onoang'ono, opotana kapena a mawanga. Onaninso ngati nthambi zafooka, kapena ngati patsinde pali mabowo. Mukaona chimodzi mwa zimenezi, kapena mukakayika, zulani kamtengo ka chomeracho.
cut-vines = Dulani nthambi za zomera za mbatata zimene munaikapo chizindikiro. Gwirani ntchito imeneyi { SPAN($when) }. Siyani tsinde loimirira, lotalika { MEASURE($stem_cm, unit: "centimetre") }, pafupifupi { MEASURE($stem_hands, unit: "hand") }. Mukatero, khungu la mbatata limalimba, ndipo mbatata zimasungika nthawi yaitali.
# doubt: "losasupuka" (not grazed) for whole skin; "zotemedwa ndi khasu" for cut by the hoe.
harvest = Kumbani zomera za mbatata zimene munaikapo chizindikiro. Gwirani ntchito imeneyi { SPAN($when) }. Nthaka ikakhala yonyowa, dikirani mpaka iume. Tulutsani mbatata modekha, kuti khasu lisateme iliyonse. { $roots ->
    [one] Sankhani mbatata yosunga { SAY($roots, form: "radio-10") }.
   *[other] Sankhani mbatata zosunga { SAY($roots, form: "radio-10") }.
 } Utali wake ukhale pafupifupi ngati chikhato chanu ndi zala, ndipo khungu likhale losasupuka. Pukutani dothi ndi manja, ndipo musazitsuke konse. Zisiyeni pamthunzi maola angapo. Mbatata zotemedwa ndi khasu musazisunge, koma ziphikeni msanga. { $roots ->
    [one] Kumbukirani: sungani mbatata yosavulala { SAY($roots, form: "radio-10") }.
   *[other] Kumbukirani: sungani mbatata zosavulala { SAY($roots, form: "radio-10") }.
 }
# doubt: "mothina" for a tightly woven basket; "wochindikala" (thick) for the depth of sand.
fill-container = Ikani mbatata zanu mumchenga wouma. Gwirani ntchito imeneyi { SPAN($when) }. { $containers ->
    [one] Pakufunika chiwiya { SAY($containers, form: "radio-8") }{ $container_kinds ->
        [one] {" "}cholowa pafupifupi { MEASURE($container_l, unit: "litre") }.
       *[several] .
     }
   *[other] Pakufunika ziwiya { SAY($containers, form: "radio-8") }{ $container_kinds ->
        [one] , chilichonse cholowa pafupifupi { MEASURE($container_l, unit: "litre") }.
       *[several] .
     }
 } Gwiritsani ntchito beseni, mphika, ndowa kapena dengu lolukidwa mothina. Musagwiritse ntchito thumba konse. Dzazani chiwiya pomwe chidzakhala: pamalo pozizira, pouma ndi pamthunzi. Pakhale kutali ndi ana, ziweto ndi mvula. Mkati mwa chiwiya yalani mapepala pansi ndi m'mbali. Poyamba yalani mchenga wochindikala { MEASURE($base_cm, unit: "centimetre") }. { $layer_widths ->
    [uneven] M'nsanjika ya pansi ikani mbatata zosapitirira { SAY($roots_per_layer, form: "radio-10") }, ndipo m'nsanjika ya pamwamba zosapitirira { SAY($roots_top, form: "radio-10") }.{ $layers ->
        [2] {""}
        [3] {" "}M'nsanjika yapakati ikani mbatata zokwanira malo omwe alipo.
       *[other] {" "}M'nsanjika zapakati ikani mbatata zokwanira malo omwe alipo.
     }
   *[even] M'nsanjika iliyonse ikani mbatata zosapitirira { SAY($roots_per_layer, form: "radio-10") }.
 } Mbatata zisakhudzane, ndipo zisakhudze m'mbali mwa chiwiya. { $layers ->
    [1] Zikwirireni ndi mchenga wochindikala { MEASURE($top_cm, unit: "centimetre") }.
   *[other] Zikwirireni ndi mchenga wochindikala { MEASURE($layer_cm, unit: "centimetre") }, ndipo yalani mbatata zina. Pangani nsanjika { SAY($layers, form: "radio-10") } za mbatata motere, koma yomaliza ikwirireni ndi mchenga wochindikala { MEASURE($top_cm, unit: "centimetre") }.
 } Mchenga wochindikala umatchinga makoswe, tizilombo ndi nkhuku. Musaike chivundikiro, ndipo musathire madzi.
# doubt: "chuku" for mould, "mphukira" for the sprouts of the stored root.
monthly-check = Mwezi uliwonse muziyang'ana mbatata zanu zosungidwa. { $turn ->
    [next] Mudzayang'anenso
   *[first] Mudzayambe kuyang'ana
 } { DAY($first) }. Tulutsani mbatata zonse, ndipo onani iliyonse. { -bad-roots } Pa mbatata zabwino, chotsani mphukira ndi dzanja. Mbatatazo ziikeninso mumchenga wouma, monga poyamba. Lembani kuti zatsala zingati. Kenako musazikhudze mpaka kuyang'ana kotsatira.
# doubt: "zigawo" (parts) for the strips of the bed, "njira" for the paths between them.
prepare-bed = Konzani nazale ya mbatata zanu. Gwirani ntchito imeneyi { SPAN($when) }. Sankhani malo apafupi ndi madzi. M'litali mwa nazale mukhale { MEASURE($bed_length_m, unit: "metre") }, ndipo m'lifupi mukhale { MEASURE($bed_width_m, unit: "metre") }. { $bed_parts ->
    [strips] Igaweni m'zigawo { SAY($strips, form: "radio-8") }, ndi njira pakati pake. M'lifupi mwa chigawo chilichonse mukhale { MEASURE($strip_width_m, unit: "metre") }.
   *[one] {""}
 } Tipulani nthaka bwino. Mangani mpanda, kuti mbuzi ndi nkhuku zisalowe.
last-check = Yang'anani komaliza mbatata zanu zosungidwa. Gwirani ntchito imeneyi { DAY($first) }. Tulutsani mbatata zonse, ndipo onani iliyonse. { -bad-roots } Koma ulendo uno musachotse mphukira. Mbatata zabwino zipite ku nazale tsopano.
plant-bed = Bzalani mbatata pa nazale. Gwirani ntchito imeneyi { SPAN($when) }. Musadikire mvula, koma thirirani nazale mpaka nthaka ikhale yachinyontho. { $bed_rows ->
    [one] Pangani mzere { SAY($bed_rows, form: "radio-4") }.
   *[other] Pangani mizere { SAY($bed_rows, form: "radio-4") } m'litali mwa nazale, yotalikirana { MEASURE($spacing_cm, unit: "centimetre") }.
 } Mumzere uliwonse yalani mbatata pafupifupi { SAY($row_roots, form: "radio-10") }. Kuchokera pa mbatata ina kufika pa inzake pakhale { MEASURE($along_row_cm, unit: "centimetre") }. Musachotse mphukira. Kwirirani mbatata ndi dothi lochindikala { MEASURE($soil_cm, unit: "centimetre") }. Thiriraninso modekha. Nthaka ikhale yachinyontho, koma osati ya madzi ambiri, chifukwa madzi ambiri amawoletsa mbatata.
# doubt: "chinyontho" for moisture; officials also say "chinyezi".
# doubt: "chigubu" for a jerrycan; "mmera" for the shoots in the bed.
water-bed = Thirirani nazale ya mbatata kuyambira { DAY($first) }. { $shoots ->
    [before] { $water_every_days ->
        [1] Mmera usanatuluke m'nthaka, tsiku lililonse thirani pafupifupi
       *[other] Mmera usanatuluke m'nthaka, kamodzi pa masiku { SAY($water_every_days, form: "radio-6") } alionse thirani pafupifupi
     } { MEASURE($water_l_young, unit: "litre") }. Madzi amenewa amadzaza pafupifupi { MEASURE($jerrycans_young, unit: "jerrycan") }{ $jerrycans_young ->
        [one] {" "}cholowa
       *[other] , chilichonse cholowa
     } { MEASURE($jerrycan_l, unit: "litre") }. Nthaka ikhale yachinyontho, koma osati ya madzi ambiri, chifukwa madzi ambiri amawoletsa mbatata. Masamba akamakula, thirirani tsiku lililonse, ndipo mlungu uliwonse onjezerani madzi pang'ono.
   *[after] {""}
 } Masamba akaphimba nazale, tsiku lililonse thirani pafupifupi { MEASURE($water_l, unit: "litre") }. Madzi amenewa amadzaza pafupifupi { MEASURE($jerrycans, unit: "jerrycan") }{ $jerrycans ->
    [one] {" "}cholowa
   *[other] , chilichonse cholowa
 } { MEASURE($jerrycan_l, unit: "litre") }. Pa masiku otentha ndi a mphepo, onjezerani madzi. Mvula ikamasunga chinyontho m'nthaka, siyani kuthirira.
# doubt: "mfundo za masamba" for leaf joints, "tsinde" for the stem left standing.
cut-for-planting = Dikirani mpaka mvula inyowetse munda wa mbatata mozama ngati utali wa chala. Kuti mudziwe, lowetsani chala m'nthaka. Zimenezi nthawi zambiri zimachitika { SPAN($when) }. Kenako dulani nthambi za mbatata pa nazale. Tengani nthambi zathanzi zokha, zopanda masamba a mawanga, opotana kapena ang'onoang'ono kwambiri. Dulani zidutswa zotalika { MEASURE($cutting_cm, unit: "centimetre") }. Chidutswa chilichonse chikhale ndi mfundo za masamba zosachepera { SAY($nodes, form: "radio-10") }. Siyani tsinde loimirira, lotalika { MEASURE($stub_cm, unit: "centimetre") }, kuti liphukenso. { $plan_by ->
    [practice] Malinga ndi chizolowezi, podula koyamba mungapeze zidutswa pafupifupi
   *[print] Podula koyamba mungapeze zidutswa pafupifupi
 } { SAY($first_cuttings_low, form: "radio-8") } mpaka { SAY($first_cuttings_high, form: "radio-8") }. Zisungeni pamthunzi, ndipo zibzaleni tsiku lomwelo kapena mawa lake.
# doubt: "mzere" for a ridge (and a row), "mulu" for a mound; "pakizani" for planting again in gaps; "nsonga" for the tip of a cutting.
plant-field = Bzalani munda wa mbatata mvula ikanyowetsa nthaka mozama ngati utali wa chala. Zimenezi nthawi zambiri zimachitika { SPAN($when) }. { $layout ->
    [own] Aliyense wa inu abzale pa mizere yake kapena pa milu yake.
    [mounds] { $on_mound ->
        [one] Pa mulu uliwonse bzalani chidutswa { SAY($on_mound, form: "radio-8") }.
       *[other] Pa mulu uliwonse bzalani zidutswa { SAY($on_mound, form: "radio-8") }.
     } Milu italikirane { MEASURE($between_cm, unit: "centimetre") }.
   *[ridges] Pa mzere bzalani chidutswa chimodzichimodzi, motalikirana { MEASURE($along_cm, unit: "centimetre") }. Mizere italikirane { MEASURE($between_cm, unit: "centimetre") }.
 } Pa chidutswa chilichonse kwirirani mfundo za masamba ziwiri kapena zitatu, koma nsonga yake ikhale pamwamba pa nthaka. Pakatha milungu iwiri, pakizani pomwe zidutswa zafa.
first-harvest = Yesani mbatata zoyamba. Gwirani ntchito imeneyi { SPAN($when) }. Papasani pansi pa zomera zingapo, kuti mupeze mbatata zokula mokwanira kudya. Musasiye mbatata zokhwima nthawi yaitali m'nthaka youma, chifukwa nankafumbwe amazipeza. Malizani kukumba pofika { DAY($last_harvest) }.

## Cautions

caution-rot = Samalani ndi mbatata zoipa. { -bad-roots } Musaidule, musaisende, ndipo musaiphike kuti mudyeko mbali ina. Ngakhale mbali yooneka ngati yabwino ikhoza kukhala ndi poizoni. Mukakayikira mbatata, ichitireni monga mbatata yoipa.
caution-virus = Chomera cha mbatata chikakhala ndi masamba ang'onoang'ono, opotana kapena a mawanga, ndiye kuti chikudwala. Nthambi zofooka zimaonetsanso matenda. { -take-nothing }
caution-cracks = Nankafumbwe amafika pa mbatata kudzera m'ming'alu ya nthaka. Mukaona mng'alu, ukwirireni ndi dothi.
caution-heavy-sand = Samalani, mchenga ndi wolemera. Nthawi imodzi musanyamule mchenga woposa { MEASURE($load_kg, unit: "kilogram") }. Dzazani chiwiya cha mbatata pamalo pomwe chidzakhala. Chikadzaza, musachinyamule konse.
caution-riverbed = Samalani potenga mchenga kumtsinje. { -dry-riverbed }
caution-water-children = Samalirani ana pafupi ndi madzi. { -children-water } Mangani mpanda kuzungulira zitsime ndi maenje. Musalole mbuzi ndi nkhuku kulowa pa nazale.
caution-store-dry = Mchenga wa mbatata zosungidwa uyenera kukhala wouma, kuyambira tsiku loyamba mpaka tsiku lomaliza. { -keep-dry }
# doubt: "kulosera" for a forecast.
caution-forecast = Masiku amenewa ndi ongoyerekeza kuchokera pa zaka zapitazo, si kulosera za chaka chino. Mvula ikhoza kubwera msanga kapena mochedwa chaka chino. Yang'anirani kumwamba ndi nthaka. { -moist-soil }
caution-try-first = Ngati kusunga mbatata motere ndi kwachilendo kwa inu, yambani ndi mbatata zochepa. Sunganinso nthambi zanu zina mwa njira yakale.

## What the plan leads to

remark-late-work = Ntchito zina za mbatata sizinagwiridwe pa nthawi yake, choncho masiku awerengedwanso. Chitani msanga zimene zingathekebe. Munda ukhoza kubzalidwa kuyambira { DAY($field_from) }.{ $fewer ->
    [0] {""}
   *[other] {" "}Podula koyamba zidutswa za nthambi zidzachepa ndi pafupifupi { SAY($fewer, form: "radio-8") }.
 }
remark-fast-loss = Poyang'ana { DAY($day) }, pa mbatata { SAY($roots, form: "radio-10") }, { $healthy ->
    [0] panalibe yabwino ngakhale imodzi.
    [one] yabwino inali { SAY($healthy, form: "radio-10") } yokha.
   *[other] zabwino zinali { SAY($healthy, form: "radio-10") } zokha.
 } { $next ->
    [bed] Bzalani mbatata zabwinozo pa nazale tsopano, ndipo fufuzani nthambi zina zobzala.
   *[check] Fufuzani chifukwa chake: mchenga wonyowa kapena wofunda, mbatata zotemedwa, mbatata zokhudzana, kapena nankafumbwe. Gwiritsani ntchito mchenga watsopano, wouma. Yang'ananinso pakatha milungu iwiri. Zina zambiri zikawola, bzalani zabwinozo msanga pa nazale yothirira.
 }
remark-limited-at-hand = { $limit ->
    [roots] { $roots ->
        [one] Muli ndi mbatata yosunga { SAY($roots, form: "radio-10") } yokha.
       *[other] Muli ndi mbatata zosunga { SAY($roots, form: "radio-10") }.
     }
    [plants] { $roots ->
        [one] Zomera zanu zidzapereka mbatata yosunga pafupifupi { SAY($roots, form: "radio-10") }.
       *[other] Zomera zanu zidzapereka mbatata zosunga pafupifupi { SAY($roots, form: "radio-10") }.
     }
   *[bed] Malo a nazale akukwana mbatata { SAY($roots, form: "radio-10") }.
 } Munda wonse ukufuna mbatata { SAY($wanted, form: "radio-10") }. Mbatata zanu zikukwana kubzala masikweya mita pafupifupi { SAY($area_m2, form: "radio-6") }. Munda wonse ndi masikweya mita { SAY($field_m2, form: "radio-6") }. Bzalani munda wocheperapo, kapena pemphani zidutswa za nthambi kwa anansi.
remark-containers-too-small = Ziwiya zanu zikukwana mbatata { SAY($fit, form: "radio-10") }, osati { SAY($roots, form: "radio-10") }. Musapanikize zina, chifukwa mbatata zokhudzana zimawola. Zimenezi zikukwana kubzala masikweya mita pafupifupi { SAY($area_m2, form: "radio-6") }. Munda wonse ndi masikweya mita { SAY($field_m2, form: "radio-6") }. { $more ->
    [0] Pezani chiwiya china kuti musunge zambiri, kapena bzalani munda wocheperapo.
    [one] Pezani chiwiya chimodzi china kuti musunge zambiri, kapena bzalani munda wocheperapo.
   *[other] Pezani ziwiya zina { SAY($more, form: "radio-8") } kuti musunge zambiri, kapena bzalani munda wocheperapo.
 }
remark-sand-short = Mchenga wanu ukukwana kukwirira mbatata { SAY($fit, form: "radio-10") }, osati { SAY($roots, form: "radio-10") }. Musasunge mbatata zimene mchenga sungazikwirire. Zimenezi zikukwana kubzala masikweya mita pafupifupi { SAY($area_m2, form: "radio-6") }. Munda wonse ndi masikweya mita { SAY($field_m2, form: "radio-6") }. Bweretsani mchenga wina wokwana { MEASURE($more_l, unit: "litre") }, kapena bzalani munda wocheperapo.
remark-water-limits = Madzi anu akukwana nazale ya mbatata { SAY($fit, form: "radio-10") }, osati { SAY($roots, form: "radio-10") }. Nazale isapose muyeso umene mwauzidwa, ndipo nthaka yake ikhale yachinyontho nthawi zonse. Zimenezi zikukwana kubzala masikweya mita pafupifupi { SAY($area_m2, form: "radio-6") }. Munda wonse ndi masikweya mita { SAY($field_m2, form: "radio-6") }. Kuti mubzale munda wonse, pezani madzi ena okwana { MEASURE($more_l, unit: "litre") } { $per ->
    [all] onse pamodzi.
   *[day] tsiku lililonse.
 }
remark-hands-short = Anthu otunga madzi akhoza kuthirira nazale ya mbatata { SAY($fit, form: "radio-10") }, osati { SAY($roots, form: "radio-10") }. Nazale isapose muyeso umene mwauzidwa, ndipo nthaka yake ikhale yachinyontho nthawi zonse. Zimenezi zikukwana kubzala masikweya mita pafupifupi { SAY($area_m2, form: "radio-6") }. Munda wonse ndi masikweya mita { SAY($field_m2, form: "radio-6") }. Kuti mubzale munda wonse, anthu ena athandize kutunga, kapena konzani nazale pafupi ndi madzi.
remark-water-short = Kuyambira { DAY($from) }, madzi a nazale ya mbatata akhoza kuchepa. Fufuzani madzi ena. Kuphimba nthaka ndi udzu wouma, ndi kuika mthunzi, kumapulumutsa madzi. Izi zikapanda kutheka, pangani nazale yocheperapo, ndipo bzalani munda wocheperapo.
remark-water-heavy = Pa tsiku louma, { $trips ->
    [one] nazale ya mbatata imafuna ulendo { SAY($trips, form: "radio-4") } wotunga madzi.
   *[other] nazale ya mbatata imafuna maulendo { SAY($trips, form: "radio-6") } otunga madzi.
 } { $hours ->
    [one] Ntchito yotungayi imatenga pafupifupi ola { SAY($hours, form: "radio-6") } pa tsiku.
   *[other] Ntchito yotungayi imatenga pafupifupi maola { SAY($hours, form: "radio-6") } pa tsiku.
 } Konzani tsopano amene azitunga, kapena pangani nazale yocheperapo.
remark-rains-too-soon = Mvula yobzalira ikhoza kuyamba pafupifupi { DAY($rains) }. Imeneyo ndi nthawi yochepa kwambiri mutakolola, choncho musasunge mbatata. M'malo mwake bzalani nthambi za m'munda wakale, kapena bzalani mbatata msanga pa nazale.
remark-storing-not-needed = Kuno, zaka zambiri, nthawi youma imatenga pafupifupi masiku { SAY($days, form: "radio-6") }. Nthambi za mbatata zikhoza kukhala zamoyo nthawi yonseyo, choncho palibe chifukwa chosungira mbatata. Siyani mbali ina ya munda wakale osakumba, kapena sungani nthambi pa kadimba kothirira.
remark-long-in-sand = Mbatata zanu ziyenera kukhala mumchenga masiku { SAY($days, form: "radio-6") }. Palibe amene anawerengapo kuti ndi zingati zimene zimapulumuka nthawi yaitali chonchi. Sunganinso nthambi zina zikukula pafupi ndi madzi, ndipo funsani mlangizi wanu wa zaulimi.
remark-bed-late = Nazale ya mbatata idzapereka zidutswa zoyamba pafupifupi { DAY($cut) }, mvula yobzalira itayamba kale. Mvula ikanyowetsa nthaka bwino, bzalani nthambi zimene muli nazo. Malo otsala a m'munda mudzabzalapo nthambi za pa nazale pambuyo pake.
remark-field-waits = Nthambi za mbatata zodula koyamba zidzakwana masikweya mita pafupifupi { SAY($area_m2, form: "radio-6") }. Munda wonse ndi masikweya mita { SAY($field_m2, form: "radio-6") }. Zodula pambuyo pake zidzabzalidwa pa malo otsala. Mukadula, nthawi zonse dikirani masiku { SAY($least_days, form: "radio-6") } mpaka { SAY($most_days, form: "radio-6") } musanadulenso.
remark-cuttings-short = Podula nthambi za mbatata koyamba, mudzaperewera zidutswa pafupifupi { SAY($short, form: "radio-8") }. Mvula ikanyowetsa nthaka bwino, bzalani masikweya mita pafupifupi { SAY($area_m2, form: "radio-6") }. Munda wonse ndi masikweya mita { SAY($field_m2, form: "radio-6") }. { $later_cuts ->
    [0] Zodula pambuyo pake zidzachedwa kukhwima, choncho pemphani nthambi kwa anansi nthawi idakalipo.
   *[other] Zodula pambuyo pake zidzabzalidwa pa malo ena a munda. Mukhozanso kupempha nthambi kwa anansi nthawi idakalipo.
 }
remark-rains-too-short = Kuno nyengo ya mvula ndi yaifupi kwa mbatata. { $known ->
    [case] Zimene mudzabzale mwina sizidzakhwima mvula isanathe.
    [open] Palibe amene akudziwa kuti ndi kangati pamene zimakhwima mvula isanathe.
   *[record] { $of_100 ->
        [0] Pa zaka zana limodzi, palibe chaka chimene mbatata zimakhwima mvula isanathe.
        [one] Pa zaka zana limodzi, ndi chaka { SAY($of_100, form: "radio-8") } chokha pamene mbatata zimakhwima mvula isanathe.
       *[other] Pa zaka zana limodzi, ndi zaka { SAY($of_100, form: "radio-8") } zokha pamene mbatata zimakhwima mvula isanathe.
     }
 } { $helps ->
    [on-time] Konzani nazale msanga, kuti mudzabzale mvula ikangonyowetsa nthaka bwino.
    [quicker] Bzalani mvula ikangonyowetsa nthaka bwino, ndipo fufuzani mtundu wa mbatata wokhwima msanga.
   *[neither] Bzalani mvula ikangonyowetsa nthaka bwino, koma yembekezerani mbatata zazing'ono ndi zochepa.
 }
remark-cuts-too-late = Nthambi za mbatata zodula pambuyo pake zidzachedwa, ngati zibzalidwa kuyambira { DAY($from) }. Mbatata zake zidzakhwima pafupifupi { DAY($ripe) }. Zaka zambiri mvula imatha nthawiyo isanafike. Nthambi zotere musazisungire malo m'munda. Dyetsani nazo ziweto, kapena zisiyeni zikule pamalo pomwe pali madzi.
remark-rains-may-be-late = Mvula yobzalira ikhoza kuchedwa mpaka { DAY($late) }. Thirirani nazale ya mbatata mpaka mvulayo ibwere. { -moist-soil }
remark-years-without-rains = Pa zaka { SAY($judged, form: "radio-8") } zapitazo, { $count ->
    [one] panali chaka { SAY($count, form: "radio-8") } chimene mvula yobzalira sinayambe bwino.
   *[other] panali zaka { SAY($count, form: "radio-8") } zimene mvula yobzalira sinayambe bwino.
 } M'chaka chotere, nthambi za mbatata zobzalidwa pa mvula yoyamba zikhoza kufa. Sungani padera mbatata zina, kapena pitirizani kuthirira mbali ina ya nazale.

## Questions for a meeting, each after its step

# doubt: whether the questions sound natural at a meeting.
ask-mark-plants = M'munda mwanu wa mbatata, zomera zamphamvu kwambiri ndi ziti?
ask-gather-sand = Mchenga wa njere zazikulu uli kuti kufupi kuno, ndipo tingaukumbe bwanji mopanda ngozi?
ask-check-plants = Kuno, zomera zodwala za mbatata zimaoneka bwanji?
ask-cut-vines = N'chifukwa chiyani khungu la mbatata limafuna nthawi kuti lilimbe?
ask-harvest = Mudzakumba bwanji kuti khasu lisateme mbatata?
ask-fill-container = Kunyumba kwanu, malo ozizira ndi ouma, kutali ndi ana ndi ziweto, ali kuti?
ask-monthly-check = Mbatata zoipa zimaoneka bwanji, ndipo mudzazikwirira kuti?
ask-prepare-bed = Madzi ali kuti kufupi kuno, ndipo ndani aziteteza ana?
ask-last-check = Ndi mbatata zanu zingati zimene zili ndi mphukira?
ask-plant-bed = N'chiyani chingakulepheretseni kubzala pa nazale nthawi yake?
ask-water-bed = Mukachokapo, ndani azithirira?
ask-cut-for-planting = Mumadziwa bwanji kuti mvula yagwa mokwanira?
ask-plant-field = Mudzayamba kubzala mbali iti ya munda?
ask-first-harvest = Mudzasunga nthambi ziti za nyengo ikubwerayi?
