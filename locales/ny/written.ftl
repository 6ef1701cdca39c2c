### Chichewa, mawu oyeserera: mawu a pa pepala. Munthu wodziwa bwino Chichewa sanawawerengebe.
### Draft, as printed on sheets. Nouns: mbatata (root, 9/10), chomera/zomera (plant, 7/8), nthambi (vine, 9/10),
### chidutswa/zidutswa za nthambi (cutting, 7/8), mfundo (node, 9/10), tsinde/matsinde (stem left standing, its foot, 5/6),
### nsanjika (layer, 9/10), chiwiya/ziwiya (container, 7/8), ulendo/maulendo (load, counted as trips), chigubu/zigubu
### (jerrycan, 7/8), ndowa (bucket, 9/10), chikhato/zikhato (hand, 7/8), nazale (seedbed, 9), mmera (shoots in the bed, 3), mzere/mizere (row, and
### ridge, 3/4), mulu/milu (mound, 3/4), mtolo/mitolo (bundle, 3/4), nankafumbwe (weevil, 1a), mphukira (sprout, 9/10).
### The reader is addressed with the polite imperative (-ni, musa-): it is right for one adult and for a group alike.
### A count stands behind its noun (mbatata zosunga 55), so that printed digits need no concord.
### Damp, which is bad for sand, is "wonyowa"; moist, which is good for soil, is "yachinyontho".
# doubt: ŵ is left out everywhere, as newspapers and schools now do, and as text messages need (ŵ halves their length). An older spelling writes aŵiri, ziŵiri, nthaŵi, ziŵeto, zoŵola, mbeŵu, loŵa, yeŵo.
# doubt: "mbatata" for the sweet potato, as in Malawi (the other potato is "kachewere"); elsewhere "mbatata ya kholowa".
# doubt: "nthambi" (branch) for vines; some say "kholowa", "zingwe" or "mphesi".
# doubt: "bzala", "dzala": both are written for planting.

## Words of the sheet itself

sheet-title = Mbatata: kuyambira zokolola zino mpaka mvula ikubwerayi
sheet-for = Kwa
sheet-place = Malo
sheet-rains = Mvula yobzalira ikuyembekezeka
sheet-harvest = Kukolola munda wakale
sheet-amounts = Zofunika
sheet-steps = Zochita, ndi nthawi yake
sheet-cautions = Samalani
sheet-when = Nthawi
# Between a label and its value.
colon = :
semicolon = ;
sheet-page = Tsamba
sheet-group = Gulu
sheet-together = Pamodzi
sheet-consequences = Za dongosolo lanu
sheet-tip = Zothandiza kudziwa
# The day the sheet was made, and that older ones hold no more.
sheet-made = Pepalali lapangidwa pa { DAY($today) }. Likulowa m'malo mwa mapepala onse akale a nyengo ino.
step-done = Zachitika
step-now = Tsopano
step-next = Kenako
status-draft = Mawu oyeserera: munthu wodziwa bwino Chichewa sanawawerengebe.
status-read = Munthu wodziwa bwino Chichewa wawerenga mawu awa, koma sanavomerezedwebe.
status-approved = Mawu awa avomerezedwa.

## Words of the cue sheet

cue-title = Uthenga
cue-language = Chilankhulo
# doubt: "liwu" for the voice, so that "mawu" can be the words.
cue-voice = Liwu
cue-rights = Ufulu wa eni ake
cue-status = Momwe liwu lilili
cue-length = Kutalika kwa nthawi
# doubt: "mphamvu ya liwu" for loudness, "pachimake" for the true peak; studio people may say the English words.
cue-loudness = Mphamvu ya liwu
cue-true-peak = Pachimake penipeni pa mphamvu ya liwu
cue-from = Kuyambira
cue-to = Mpaka
cue-words = Mawu
cue-clip = Kachigawo
# doubt: "logwirizira" (acting for another, as of a chief) for a stand-in.
voice-stand-in = logwirizira
voice-draft = lojambulidwa, losavomerezedwabe
voice-approved = lovomerezedwa
voice-stand-in-remark = Liwu ili ndi logwirizira, lopangidwa ndi makina. M'malo mwake mudzabwera liwu la munthu.

## Amounts

# doubt: "chomera" for one plant; farmers may count "mapando" (planting stations).
amount-plants = Zomera zoikapo chizindikiro
amount-plants-each = Zomera zimene membala aliyense adzaikepo chizindikiro
amount-roots = Mbatata zosunga
# doubt: "zidutswa" (pieces) for cuttings; some say "mbewu" or "nthambi zobzala".
amount-cuttings = Zidutswa zobzala m'munda
amount-first-cuttings = Zidutswa zoyembekezeka podula koyamba
amount-containers = Ziwiya
# doubt: "nsanjika" (storey) for a layer; some say "gawo".
amount-layers = Nsanjika za mbatata m'chiwiya
amount-roots-per-layer = { $layer_widths ->
    [uneven] Mbatata m'nsanjika ya pansi, zosapitirira
   *[even] Mbatata m'nsanjika iliyonse, zosapitirira
 }
amount-roots-top-layer = Mbatata m'nsanjika ya pamwamba, zosapitirira
amount-bundles = Zidutswa
amount-lining = Mapepala oyala m'ziwiya
amount-water-total = Madzi onse a nazale
amount-sand = Mchenga wouma
# doubt: loads are counted as trips (maulendo), since "mtolo" is a bundle.
amount-loads = Maulendo otenga mchenga
# doubt: "nazale" for the seedbed; some say "bedi".
amount-bed = Nazale
amount-strips = Zigawo za nazale, ndi njira za { MEASURE($path_m, unit: "metre") } pakati pake
amount-water = Madzi masamba akaphimba nazale, pa tsiku
# doubt: "chigubu" for a jerrycan.
amount-jerrycans = Zigubu masamba akaphimba nazale, pa tsiku

first-cuttings-value = { $first_cuttings_low } mpaka { $first_cuttings_high }{ $plan_by ->
    [practice] , malinga ndi chizolowezi
   *[print] , malinga ndi masiku okula
 }
sand-value = { MEASURE($sand_l, unit: "litre") }, pafupifupi { MEASURE($sand_kg, unit: "kilogram") }
bed-value = { MEASURE($bed_length_m, unit: "metre") } × { MEASURE($bed_width_m, unit: "metre") }
strips-value = { $strips }, chilichonse { MEASURE($strip_length_m, unit: "metre") } × { MEASURE($strip_width_m, unit: "metre") }
water-value = { MEASURE($water_l, unit: "litre") }
water-total-value = { MEASURE($water_total_l, unit: "litre") }
bundles-value = { MEASURE($bundles, unit: "bundle") } { $bundles ->
    [one] wa
   *[other] ya
 } zidutswa { $bundle_size }
lining-value = { $lining_m2 } m²
roots-for-zone = { $roots } (nambala yongoyerekeza; onjezerani kapena chepetsani malinga ndi munda uliwonse)

## Dates and units

# CLDR has no month names for this language; these are the spellings met most often in public texts (also seen: Marichi, Julaye, Okotobala).
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
date = { $day } { month } { $year }
# doubt: these short forms are made up; the English ones (Jan, Apr, Aug, Oct) are as widely known.
month-short = { $month ->
    [1] Jan
    [2] Feb
    [3] Mal
    [4] Epu
    [5] Mey
    [6] Jun
    [7] Jul
    [8] Oga
    [9] Sep
    [10] Oku
    [11] Nov
   *[12] Dis
 }
date-short = { $day } { month-short }
weekday = { $weekday ->
    [1] Lolemba
    [2] Lachiwiri
    [3] Lachitatu
    [4] Lachinayi
    [5] Lachisanu
    [6] Loweruka
   *[7] Lamulungu
 }
# doubt: "mlungu" for a week; newspapers as often say "sabata".
week = mlungu { $week ->
    [1] woyamba
    [2] wachiwiri
    [3] wachitatu
    [4] wachinayi
   *[5] womaliza
 } wa mwezi wa { month }
span = { DAY($from) } – { DAY($to) }
span-two-days = { DAY($from) } – { DAY($to) }
span-day = { WEEKDAY($from) }, { DAY($from) }
# doubt: the signs kg, m and cm, as schools and shops write them; in full they would be makilogalamu, mamita, masentimita.
unit-kilogram = { $n } kg
unit-litre = { $n ->
    [one] lita { $n }
   *[other] malita { $n }
 }
unit-metre = { $n } m
unit-centimetre = { $n } cm
# doubt: "chikhato ndi zala" (the palm with the fingers) for a hand's length, because "dzanja" is the arm too; also written "chikhatho".
unit-hand = { $n ->
    [one] chikhato { $n } ndi zala
   *[other] zikhato { $n } ndi zala
 }
unit-thumb-joint = { $n ->
    [one] mfundo { $n } ya chala chachikulu
   *[other] mfundo { $n } za chala chachikulu
 }
# doubt: "ndowa" for a bucket; some say "chidebe", which may be a small tin.
unit-bucket = ndowa { $n }
unit-jerrycan = { $n ->
    [one] chigubu { $n }
   *[other] zigubu { $n }
 }
unit-bundle = { $n ->
    [one] mtolo { $n }
   *[other] mitolo { $n }
 }
# "With so many days left until …", so that the event's name needs no concord.
event-before = { $days ->
    [one] kutatsala tsiku { $days }
   *[other] kutatsala masiku { $days }
 } kufika pa { $event }
event-on = pa { $event }
event-after = { $days ->
    [one] patapita tsiku { $days }
   *[other] patapita masiku { $days }
 } kuchokera pa { $event }

## What must never be lost. The messages below refer to these sentences, each length to one of them.

# doubt: whether "konse" is heard as a firm "never", and, in the short forms, for all three (eat, feed, plant) behind the last.
# doubt: "ziweto" for animals: whether poultry, pigs and dogs are heard in it.
# doubt: mould: "chuku" (newspapers write "chukwu" of groundnuts) and "nkhungu" stand together in full texts, because a listener may know only one; short texts have "chuku" alone. "Nkhungu" is also mist; some say "nguwi". Which one is enough?
# doubt: "itentheni … mpaka isanduke phulusa" (burn to ash). Not "iwotcheni": it also means roast it, and rotten roots must not sound like food.
-bad-roots = Mbatata ikawola, ikachita chuku kapena nkhungu, kapena ikakhala ndi mabowo a tizilombo, musaidye konse. Musaipatse ziweto konse, ndipo musaibzale konse. Ikwirireni m'dzenje lakuya, kapena itentheni pa moto mpaka isanduke phulusa.
-bad-roots-short = Zowola, za chuku kapena za mabowo a tizilombo: musadye, musapatse ziweto, musabzale konse. Kwirirani mozama kapena tenthani.
-bad-roots-sms = Mbatata zowola, za chuku kapena za mabowo a tizilombo: musadye, musapatse ziweto, musabzale konse, ngakhale mbali yabwino. Kwirirani mozama kapena tenthani.
-take-nothing = Pa chomera chotere musatengepo mbatata iliyonse, ndipo musatengepo nthambi iliyonse.
-take-nothing-short = Musatenge kanthu pa chomera chotere.
# "Pokhapokha" is avoided here and below: it means "only if" and "unless" alike.
# doubt: "gombe loimirira ngati khoma" (a bank that stands like a wall) for a steep bank.
-dry-riverbed = Tengani mchenga kokhako kumene malamulo a dera lanu amalola. Musatenge mchenga mumtsinje wa madzi, koma mumtsinje wouma mokha. Musakumbe konse pafupi ndi gombe loimirira ngati khoma, chifukwa likhoza kugumuka ndi kukukwirirani.
-dry-riverbed-short = Musakumbe konse mumtsinje wa madzi kapena pafupi ndi gombe loimirira.
-children-water = Vundikirani madzi osungidwa, ndipo musalole ana kuwayandikira.
-children-water-short = Vundikirani madzi; ana asayandikire.
# doubt: "wonyowa, ngakhale pang'ono" (wet, even a little) for damp sand, so that only good moist soil is called "yachinyontho".
-keep-dry = Musathire madzi konse mumchenga, chifukwa mchenga wonyowa, ngakhale pang'ono, umawoletsa mbatata.
-keep-dry-short = Musathire madzi konse mumchenga.
-moist-soil = Bzalani munda m'nthaka yachinyontho mokha, chifukwa zidutswa za nthambi zimafa m'nthaka youma.
-moist-soil-short = Bzalani m'nthaka yachinyontho mokha.

## Opening and closing

# doubt: "mvula yobzalira" (rain for planting) for the rains, because "mvula yoyamba" may be any first shower.
opening = { $kind ->
    [zone] Dongosolo ili ndi la mlimi aliyense wa m'dera lino. Miyeso yake ndi ya mbatata { $roots }. Munda wanu ukakhala wokulirapo, onjezerani; ukakhala wocheperapo, chepetsani. Masiku a ntchito zogwiridwa musanakumbe ndi a minda yoyamba kukumbidwa. Ngati inu mudzakumba pambuyo pake, ntchito zimenezi zichedwetseni ndi masiku ofanana.
   *[other] { $season ->
        [after] Mvula yobzalira inayamba pa { DAY($rains) }. Masiku a dongosolo ili awerengedwa kuchokera tsiku limenelo.
       *[before] Masiku a dongosolo ili awerengedwa mobwerera m'mbuyo kuchokera pa mvula yobzalira. Nthawi zambiri imayamba pafupifupi pa { DAY($rains) }.
     }
 }
closing = Mlangizi wanu wa zaulimi akanena zosiyana ndi za pepala lino, tsatirani malangizo ake.
    .sms = Mlangizi wanu wa zaulimi akanena zosiyana ndi izi, tsatirani malangizo ake.

## Steps: title, text (.text), the same in a few words (.short), picture in words (.alt), what a meeting is shown (.show) and asked (.ask), text message on a phone (.sms: 160 letters or less where it can be, two messages where it must be)

mark-plants = Sankhani zomera zathanzi { $plants }
    .short = Zomera zamphamvu, masamba aakulu opanda chilema. Zikani kamtengo pafupi ndi chilichonse.
    .text = Sankhani zomera zathanzi za mbatata, zoti mudzapezepo mbatata za mbewu. { $kind ->
        [group] Pamodzi, ikani chizindikiro pa zomera { $plants }. Aliyense wa inu aike chizindikiro pa { $plants_each ->
            [one] chomera { $plants_each }
           *[other] zomera { $plants_each }
         }.
       *[other] Ikani chizindikiro pa zomera { $plants }.
     } Tengani zomera zamphamvu zokha, za masamba aakulu opanda chilema, zosaonetsa matenda alionse. Zikani kamtengo m'nthaka pafupi ndi chomera chilichonse. Zomerazi zidzakupatsani mbatata zosunga pafupifupi { $roots }.
    .alt = Dzanja likuzika kamtengo m'nthaka pafupi ndi chomera champhamvu.
    .show = Nthambi yathanzi ndi yodwala, ndi kamtengo.
    .ask = Mumasiyanitsa bwanji chomera chathanzi ndi chodwala?
    .sms = { BRIEF($first) }: ikani chizindikiro pa zomera zathanzi { $plants } za mbatata za mbewu: zamphamvu, za masamba aakulu opanda chilema, zosaonetsa matenda. Zikani kamtengo pafupi ndi chilichonse.
# doubt: "mchenga wa njere zazikulu" for coarse sand, "mchenga wosalala" for fine sand.
gather-sand = Bweretsani mchenga, ndipo uumitseni
    .short = Ukwane { MEASURE($buckets, unit: "bucket") } ({ MEASURE($bucket_l, unit: "litre") }), wa njere zazikulu, waukhondo. Uumitseni pansi pa denga, uzizire. { -dry-riverbed-short }
    .text = Bweretsani mchenga wosungiramo mbatata zanu. Pakufunika mchenga wokwana pafupifupi { MEASURE($buckets, unit: "bucket") }{ $buckets ->
        [one] {" "}yolowa
       *[other] , iliyonse yolowa
     } { MEASURE($bucket_l, unit: "litre") }, wolemera { MEASURE($sand_kg, unit: "kilogram") } wonse pamodzi. Tengani mchenga waukhondo wa njere zazikulu, zoti mukhoza kuzimva ndi zala. Uyaleni pansi pa denga mpaka uume bwino, ndipo musaugwiritse ntchito usanazizire. Mchenga wosalala, wonyowa kapena wofunda umawoletsa mbatata. Nthawi imodzi musanyamule mchenga woposa { MEASURE($load_kg, unit: "kilogram") }, chifukwa mchenga ndi wolemera. { -dry-riverbed }
    .alt = Pansi pa denga, dzanja lokhala ndi mbale likuthira mchenga wouma wa pa mulu m'ndowa yaing'ono.
    .show = Mchenga wouma wa njere zazikulu, ndi mchenga wosalala wonyowa.
    .ask = Mchenga wa njere zazikulu tidzaupeza kuti, ndipo kukumba kumeneko kulibe ngozi?
    .sms = Pofika { BRIEF($last) }: bweretsani mchenga waukhondo wa njere zazikulu wa mbatata, { MEASURE($buckets, unit: "bucket") } ({ MEASURE($bucket_l, unit: "litre") }). Nthawi imodzi musanyamule woposa { MEASURE($load_kg, unit: "kilogram") }. Uumitseni pansi pa denga, uzizire. { -dry-riverbed-short }
# doubt: "chizindikiro cha zoona" for a tick, "miyezi yakumwamba" for moons, in the words for pictures.
check-plants = Onaninso zomera zosankhidwa
    .short = Masamba ang'onoang'ono, opotana, a mawanga, nthambi zofooka, kapena mabowo patsinde? Zulani kamtengo. { -take-nothing-short }
    .text = Onaninso zomera za mbatata zimene munaikapo chizindikiro. Onani ngati masamba ali ang'onoang'ono, opotana kapena a mawanga. Onaninso ngati nthambi zafooka, kapena ngati patsinde pali mabowo. Mukaona chimodzi mwa zimenezi, kapena mukakayika, zulani kamtengo ka chomeracho. { -take-nothing }
    .alt = Chomera chathanzi, chokhala ndi chizindikiro cha zoona, chili ndi kamtengo kake; dzanja likuzula kamtengo ka chomera chodwala cha masamba a mawanga ndi okwinyika.
    .show = Masamba ang'onoang'ono, opotana ndi a mawanga.
    .ask = Mungatani ndi chomera cha kamtengo chimene chadwala?
    .sms = { BRIEF($first) }: onaninso zomera za mbatata za chizindikiro. Masamba ang'onoang'ono, opotana kapena a mawanga, nthambi zofooka, mabowo patsinde, kapena mukukayika? Zulani kamtengo. { -take-nothing-short }
cut-vines = Dulani nthambi, siyani tsinde
    .short = Siyani tsinde loimirira la { MEASURE($stem_cm, unit: "centimetre") }: { MEASURE($stem_hands, unit: "hand") }.
    .text = Dulani nthambi za zomera za mbatata zimene munaikapo chizindikiro. Siyani tsinde loimirira, lotalika { MEASURE($stem_cm, unit: "centimetre") }, pafupifupi { MEASURE($stem_hands, unit: "hand") }. Mukatero, khungu la mbatata limalimba, ndipo mbatata zimasungika nthawi yaitali.
    .alt = Mpeni ukudula nthambi; matsinde otsala ndi aatali ngati chikhato chotambasula limodzi ndi zala zake, chimene chili pambali pake.
    .show = Chikhato chotambasula ndi zala, pambali pa tsinde.
    .ask = N'chifukwa chiyani khungu la mbatata limafuna nthawi kuti lilimbe?
    .sms = { BRIEF($first) }: dulani nthambi za zomera za mbatata za chizindikiro. Siyani tsinde loimirira la { MEASURE($stem_cm, unit: "centimetre") }. Khungu la mbatata lidzalimba.
# doubt: "losasupuka" (not grazed) for whole skin; "zotemedwa ndi khasu" for cut by the hoe.
harvest = Kumbani, sungani mbatata { $roots }
    .short = Kumbani m'nthaka youma mokha. Zosavulala, zautali ngati chikhato ndi zala. Musazitsuke. Zotemedwa ndi khasu phikani msanga. { -bad-roots-short }
    .text = Kumbani zomera za mbatata zimene munaikapo chizindikiro. Nthaka ikakhala yonyowa, dikirani mpaka iume. Tulutsani mbatata modekha, kuti khasu lisateme iliyonse. Sankhani mbatata zosunga { $roots }. Utali wake ukhale pafupifupi ngati chikhato chanu ndi zala, ndipo khungu likhale losasupuka. Pukutani dothi ndi manja, ndipo musazitsuke konse. Zisiyeni pamthunzi maola angapo. Mbatata zotemedwa ndi khasu musazisunge, koma ziphikeni msanga. { -bad-roots }
    .alt = Dzanja likukweza chomera ndi mbatata zosavulala kuchokera m'nthaka yofewa, ndi khasu pambali.
    .show = Mbatata yapakatikati ya khungu losasupuka, ndi yotemedwa ndi khasu.
    .ask = Pa mbatata izi tisunga ziti, nanga tiphika ziti msanga?
    .sms = { BRIEF($first) }: nthaka ikauma, kumbani mbatata za chizindikiro. Sungani zosavulala { $roots }, osatsuka, pamthunzi kaye maola angapo. Zotemedwa phikani msanga. { -bad-roots-sms }
# doubt: "mothina" for a tightly woven basket.
# doubt: "wochindikala" (thick) for the depth of a bed of sand.
fill-container = Ikani mbatata mumchenga
    .short = Mchenga: pansi { MEASURE($base_cm, unit: "centimetre") }, { $layers ->
        [1] {""}
       *[other] pakati { MEASURE($layer_cm, unit: "centimetre") },{" "}
     }pamwamba { MEASURE($top_cm, unit: "centimetre") }. Mbatata zisakhudzane, osavundikira. { -keep-dry-short }
    .text = Ikani mbatata zanu mumchenga wouma. { $containers ->
        [one] Pakufunika chiwiya { $containers }{ $container_kinds ->
            [one] {" "}cholowa pafupifupi { MEASURE($container_l, unit: "litre") }.
           *[several] .
         }
       *[other] Pakufunika ziwiya { $containers }{ $container_kinds ->
            [one] , chilichonse cholowa pafupifupi { MEASURE($container_l, unit: "litre") }.
           *[several] .
         }
     } Gwiritsani ntchito beseni, mphika, ndowa kapena dengu lolukidwa mothina. Musagwiritse ntchito thumba konse. Dzazani chiwiya pomwe chidzakhala: pamalo pozizira, pouma ndi pamthunzi, kutali ndi ana, ziweto ndi mvula. Mkati mwa chiwiya yalani mapepala pansi ndi m'mbali. Poyamba yalani mchenga wochindikala { MEASURE($base_cm, unit: "centimetre") }, pafupifupi { MEASURE($base_joints, unit: "thumb-joint") }. { $layer_widths ->
        [uneven] M'nsanjika ya pansi ikani mbatata zosapitirira { $roots_per_layer }, ndipo m'nsanjika ya pamwamba zosapitirira { $roots_top }.{ $layers ->
            [2] {""}
            [3] {" "}M'nsanjika yapakati ikani mbatata zokwanira malo omwe alipo.
           *[other] {" "}M'nsanjika zapakati ikani mbatata zokwanira malo omwe alipo.
         }
       *[even] M'nsanjika iliyonse ikani mbatata zosapitirira { $roots_per_layer }.
     } Mbatata zisakhudzane, ndipo zisakhudze m'mbali mwa chiwiya. { $layers ->
        [1] Zikwirireni ndi mchenga wochindikala { MEASURE($top_cm, unit: "centimetre") }.
       *[other] Zikwirireni ndi mchenga wochindikala { MEASURE($layer_cm, unit: "centimetre") }, ndipo yalani mbatata zina. Pangani nsanjika { $layers } za mbatata motere, koma yomaliza ikwirireni ndi mchenga wochindikala { MEASURE($top_cm, unit: "centimetre") }.
     } Mchenga wochindikala umatchinga makoswe, tizilombo ndi nkhuku. Musaike chivundikiro. { -keep-dry }
    .alt = Beseni lodulidwa poonetsa mkati: mchenga, mbatata zotalikirana, mchenga, mbatata, ndi mchenga wambiri pamwamba; dzanja likuwaza mchenga.
    .show = Beseni, mchenga wouma ndi mbatata zochepa: wina ayale nsanjika yoyamba.
    .ask = N'chifukwa chiyani mbatata siziyenera kukhudzana?
    .sms = { BRIEF($first) }: ikani mbatata mumchenga wouma, zosakhudzana. Mchenga: pansi { MEASURE($base_cm, unit: "centimetre") }, { $layers ->
        [1] {""}
       *[other] pakati pa nsanjika { MEASURE($layer_cm, unit: "centimetre") },{" "}
     }pamwamba { MEASURE($top_cm, unit: "centimetre") }. Osavundikira. Zikhale kutali ndi mvula, ana ndi ziweto. Musanyamule konse chiwiya chodzaza. { -keep-dry-short }
# doubt: "mphukira" for the sprouts of the stored root; what comes up in the bed is "mmera", what is cut there "nthambi".
# doubt: "X yoletsa" (forbidding X) for a crossed-out picture.
monthly-check = Yang'anani mbatata iliyonse
    .short = Chotsani mphukira. Zabwino ziikeninso mumchenga wouma. { -bad-roots-short }
    .text = Tulutsani mbatata zonse, ndipo onani iliyonse. { -bad-roots } Pa mbatata zabwino, chotsani mphukira ndi dzanja. Mbatatazo ziikeninso mumchenga wouma, monga poyamba. Lembani kuti zatsala zingati. Kenako musazikhudze mpaka kuyang'ana kotsatira.
    .alt = Miyezi itatu yakumwamba yosonyeza kuti mwezi wadutsa; dzanja likutulutsa mbatata m'beseni; mbatata yowola ili pambali, ndi X yoletsa.
    .show = Mbatata yowola ngati ilipo, ndi kuikanso zabwino.
    .ask = Mungatani ndi mbatata yowola, ndipo n'chifukwa chiyani sitiipatsa ziweto?
    .sms = { BRIEF($first) }: tulutsani mbatata zonse zosungidwa, onani iliyonse. Chotsani mphukira. Zabwino ziikeninso mumchenga wouma, lembani kuti zatsala zingati. { -bad-roots-sms }
prepare-bed = Konzani nazale
    .short = M'litali { MEASURE($bed_length_m, unit: "metre") }, m'lifupi { MEASURE($bed_width_m, unit: "metre") }, pafupi ndi madzi. Tipulani, mangani mpanda. { -children-water-short }
    .text = Konzani nazale ya mbatata zanu. Sankhani malo apafupi ndi madzi. M'litali mwa nazale mukhale { MEASURE($bed_length_m, unit: "metre") }, ndipo m'lifupi mukhale { MEASURE($bed_width_m, unit: "metre") }. { $bed_parts ->
        [strips] Igaweni m'zigawo { $strips }, ndi njira pakati pake. M'lifupi mwa chigawo chilichonse mukhale { MEASURE($strip_width_m, unit: "metre") }.{" "}
       *[one] {""}
     }Tipulani nthaka bwino. Mangani mpanda, kuti mbuzi ndi nkhuku zisalowe. { -children-water }
    .alt = Bambo akufewetsa nthaka ya nazale ndi khasu; kumbuyo kwake kuli mpanda.
    .show = Malo a pafupi ndi madzi, ndi kukula kwa nazale poyesa ndi mapazi.
    .ask = N'chiyani chidzaletsa mbuzi ndi nkhuku kulowa?
    .sms = Pofika { BRIEF($last) }: konzani nazale ya mbatata pafupi ndi madzi, m'litali { MEASURE($bed_length_m, unit: "metre") }, m'lifupi { MEASURE($bed_width_m, unit: "metre") }. Mangani mpanda. { -children-water-short }
last-check = Yang'anani komaliza
    .short = Musachotse mphukira: zabwino zipite ku nazale. { -bad-roots-short }
    .text = Tulutsani mbatata zonse, ndipo onani iliyonse. { -bad-roots } Koma ulendo uno musachotse mphukira. Mbatata zabwino zipite ku nazale tsopano.
    .alt = Dzanja likutulutsa mbatata ya mphukira m'beseni; muvi ukuloza ku nazale.
    .show = Mbatata ya mphukira.
    .ask = N'chifukwa chiyani ulendo uno tikusiya mphukira?
    .sms = { BRIEF($first) }: yang'anani komaliza mbatata zosungidwa. Musachotse mphukira: zabwino zipite ku nazale. { -bad-roots-sms }
plant-bed = Bzalani mbatata pa nazale
    .short = Nyowetsani nazale. { $bed_rows ->
        [one] Mzere { $bed_rows }
       *[other] Mizere { $bed_rows }, mpata { MEASURE($spacing_cm, unit: "centimetre") }
     }; pa mzere mbatata { $row_roots }, pamwamba dothi { MEASURE($soil_cm, unit: "centimetre") }. Yachinyontho, osati yamadzi.
    .text = Musadikire mvula, koma thirirani nazale mpaka nthaka ikhale yachinyontho. { $bed_rows ->
        [one] Pangani mzere { $bed_rows }.
       *[other] Pangani mizere { $bed_rows } m'litali mwa nazale, yotalikirana { MEASURE($spacing_cm, unit: "centimetre") }.
     } Mumzere uliwonse yalani mbatata pafupifupi { $row_roots }. Kuchokera pa mbatata ina kufika pa inzake pakhale { MEASURE($along_row_cm, unit: "centimetre") }. Musachotse mphukira. Kwirirani mbatata ndi dothi lochindikala { MEASURE($soil_cm, unit: "centimetre") }. Thiriraninso modekha. Nthaka ikhale yachinyontho, koma osati ya madzi ambiri, chifukwa madzi ambiri amawoletsa mbatata.
    .alt = Mbatata zagonekedwa mumzere; dzanja likuzikwirira ndi dothi.
    .show = Mpata wa pakati pa mizere, poyesa ndi kamtengo koyenera.
    .ask = Kodi timadikira mvula tisanabzale pa nazale?
    .sms = Kuyambira { BRIEF($first) }: musadikire mvula, thirirani nazale ya mbatata. Yalani mbatata { $bed_rows ->
        [one] mumzere { $bed_rows }
       *[other] m'mizere { $bed_rows } yotalikirana { MEASURE($spacing_cm, unit: "centimetre") }
     }, pansi pa dothi la { MEASURE($soil_cm, unit: "centimetre") }. Nthaka ikhale yachinyontho, koma madzi asachuluke.
# doubt: "chinyontho" for moisture; officials also say "chinyezi".
# doubt: "mmera" for the shoots in the bed.
water-bed = Thirirani nazale
    .short = { $shoots ->
        [before] Mmera usanatuluke: { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
            [1] pa tsiku
           *[other] kamodzi pa masiku { $water_every_days }
         }.{" "}
       *[after] {""}
     }Masamba akaphimba: pafupifupi { MEASURE($water_l, unit: "litre") } pa tsiku, { MEASURE($jerrycans, unit: "jerrycan") }. Yachinyontho, osati yamadzi. { -children-water-short }
    .text = Thirirani nazale ya mbatata kuyambira pa { DAY($first) }. { $shoots ->
        [before] Mmera usanatuluke m'nthaka, { $water_every_days ->
            [1] tsiku lililonse
           *[other] kamodzi pa masiku { $water_every_days } alionse
         } thirani pafupifupi { MEASURE($water_l_young, unit: "litre") }. Madzi amenewa amadzaza pafupifupi { MEASURE($jerrycans_young, unit: "jerrycan") }{ $jerrycans_young ->
            [one] {" "}cholowa
           *[other] , chilichonse cholowa
         } { MEASURE($jerrycan_l, unit: "litre") }. Nthaka ikhale yachinyontho, koma osati ya madzi ambiri, chifukwa madzi ambiri amawoletsa mbatata. Masamba akamakula, thirirani tsiku lililonse, ndipo mlungu uliwonse onjezerani madzi pang'ono.{" "}
       *[after] {""}
     }Masamba akaphimba nazale, tsiku lililonse thirani pafupifupi { MEASURE($water_l, unit: "litre") }. Madzi amenewa amadzaza pafupifupi { MEASURE($jerrycans, unit: "jerrycan") }{ $jerrycans ->
        [one] {" "}cholowa
       *[other] , chilichonse cholowa
     } { MEASURE($jerrycan_l, unit: "litre") }. Pa masiku otentha ndi a mphepo, onjezerani madzi. Mvula ikamasunga chinyontho m'nthaka, siyani kuthirira. { -children-water }
    .alt = Dzanja likuthira madzi a m'chigubu pa nazale ya mphukira.
    .show = Chigubu, ndi madzi ochepa amene zomera zanthete zimafuna.
    .ask = Ndani adzabweretsa madzi, ndipo ndani adzayang'anira ana kumeneko?
    .sms = Kuyambira { BRIEF($first) }: thirirani nazale ya mbatata. { $shoots ->
        [before] Mmera usanatuluke { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
            [1] pa tsiku
           *[other] kamodzi pa masiku { $water_every_days }
         }, masamba akaphimba { MEASURE($water_l, unit: "litre") } pa tsiku.
       *[after] Masamba akaphimba, { MEASURE($water_l, unit: "litre") } pa tsiku.
     } Kukatentha onjezerani. Mvula ikamasunga chinyontho, siyani kuthirira. { -children-water-short }
# doubt: "mfundo za masamba" for the leaf joints of a vine; some say "maso".
# doubt: "tsinde" for the stem left standing; some say "chitsa".
cut-for-planting = Mvula ikanyowetsa munda bwino, dulani nthambi
    .short = Munda ukanyowa mozama ngati chala: dulani zidutswa za { MEASURE($cutting_cm, unit: "centimetre") }, mfundo za masamba { $nodes }, nthambi zathanzi. Siyani tsinde la { MEASURE($stub_cm, unit: "centimetre") }. Bzalani pofika mawa lake.
    .text = Dikirani mpaka mvula inyowetse munda wa mbatata mozama ngati utali wa chala. Kuti mudziwe, lowetsani chala m'nthaka. Kenako dulani nthambi za mbatata pa nazale. Tengani nthambi zathanzi zokha, zopanda masamba a mawanga, opotana kapena ang'onoang'ono kwambiri. Dulani zidutswa zotalika { MEASURE($cutting_cm, unit: "centimetre") }, pafupifupi { MEASURE($cutting_hands, unit: "hand") }. Chidutswa chilichonse chikhale ndi mfundo za masamba zosachepera { $nodes }. Siyani tsinde loimirira, lotalika { MEASURE($stub_cm, unit: "centimetre") }, kuti liphukenso. { $plan_by ->
        [practice] Malinga ndi chizolowezi, podula koyamba mungapeze zidutswa pafupifupi
       *[print] Podula koyamba mungapeze zidutswa pafupifupi
     } { $first_cuttings_low } mpaka { $first_cuttings_high }. Zisungeni pamthunzi, ndipo zibzaleni tsiku lomwelo kapena mawa lake.
    .alt = Dzanja lina lagwira nthambi ya pa nazale, lina likuidula ndi mpeni; matsinde akutsala.
    .show = Chidutswa cha utali woyenera pambali pa dzanja: werengani mfundo za masamba.
    .ask = Ndi zomera ziti zimene sitidulako zidutswa?
    .sms = Mvula ikanyowetsa munda mozama ngati chala: dulani nthambi zathanzi za mbatata, zidutswa za { MEASURE($cutting_cm, unit: "centimetre") }, mfundo za masamba { $nodes }. Siyani tsinde la { MEASURE($stub_cm, unit: "centimetre") }. Zikhale pamthunzi, bzalani pofika mawa lake.
# doubt: "mzere" for a ridge (and a row), "mulu" for a mound; some say "mtumbira". "Pakizani" for planting again in gaps.
plant-field = Bzalani munda
    .short = { -moist-soil-short } Kwirirani mfundo za masamba 2 kapena 3. Pakatha milungu iwiri pakizani pomwe zidutswa zafa.
    .text = Bzalani munda wa mbatata mvula ikanyowetsa nthaka mozama ngati utali wa chala. { $layout ->
        [own] Munda uliwonse uli ndi mizere kapena milu yake: bzalani pamenepo.
        [mounds] Pa mulu uliwonse bzalani { $on_mound ->
            [one] chidutswa { $on_mound }
           *[other] zidutswa { $on_mound }
         }. Milu italikirane { MEASURE($between_cm, unit: "centimetre") }.
       *[ridges] Pa mzere bzalani chidutswa chimodzichimodzi, motalikirana { MEASURE($along_cm, unit: "centimetre") }. Mizere italikirane { MEASURE($between_cm, unit: "centimetre") }.
     } Pa chidutswa chilichonse kwirirani mfundo za masamba ziwiri kapena zitatu, koma nsonga yake ikhale pamwamba pa nthaka. { $kind ->
        [zone] Mbatata { $roots } zimapereka zidutswa pafupifupi { $cuttings } nyengo yonse ya nazale.
       *[other] Munda wonse ukufuna zidutswa { $cuttings }.
     } Pakatha milungu iwiri, pakizani pomwe zidutswa zafa. { -moist-soil }
    .alt = Pansi pa mtambo wa mvula, dzanja likubzala zidutswa za nthambi mumzere; mfundo zakumunsi zili m'nthaka.
    .show = Nthaka yachinyontho mozama ngati chala, ndi chidutswa chimene mfundo zake zapansi zakwiriridwa.
    .ask = Mvula yagwa kamodzi: kodi tibzale tsopano? Chingavute n'chiyani?
    .sms = Kuyambira { BRIEF($first) }, mvula ikanyowetsa nthaka bwino: bzalani zidutswa za nthambi za mbatata pafupifupi { $cuttings_to_plant }, kwirirani mfundo za masamba 2 kapena 3. { -moist-soil-short }
first-harvest = Yesani mbatata zoyamba
    .short = Papasani mbatata zokula. Kumbani zonse pofika { DAY($last_harvest) }, chifukwa nankafumbwe amapeza zokhwima.
    .text = Papasani pansi pa zomera zingapo, kuti mupeze mbatata zokula mokwanira kudya. Musasiye mbatata zokhwima nthawi yaitali m'nthaka youma, chifukwa nankafumbwe amazipeza. Malizani kukumba pofika pa { DAY($last_harvest) }.
    .alt = Dzanja likufufuza mbatata pansi pa chomera; pambali pali mphika pa moto.
    .show = Momwe mungapapasire mbatata osazula chomera.
    .ask = Chimachitika n'chiyani ndi mbatata zokhwima zokhala m'nthaka youma?
    .sms = Kuyambira { BRIEF($first) }: papasani mbatata zokhwima. Kumbani zonse pofika { BRIEF($last_harvest) }, chifukwa nankafumbwe amapeza zokhwima m'nthaka youma.

## Tables: title, what it tells (.text), its picture in words (.alt)

# doubt: "malinga ndi masiku okula" where cuttings are counted by the days that the bed has grown.
table-cuts = Kudula nthambi pa nazale{ $plan_by ->
    [practice] , malinga ndi chizolowezi
   *[print] , malinga ndi masiku okula
 }
    .text = { $cuts ->
        [1] Nyengo zimasiyana, choncho yembekezerani zidutswa za pakati pa nambala yaing'ono ndi yaikulu.
       *[other] Nyengo zimasiyana, choncho yembekezerani zidutswa za pakati pa nambala yaing'ono ndi yaikulu. Zodula pambuyo pake ndi za malo otsala a munda, ndi zopakizira.
     }
table-ways = Njira zimene mungatsate, pamodzi
    .text = Tebulo likuonetsa zimene njira iliyonse ingapereke pofika mvula yobzalira, m'nyengo yapakatikati. Palibe yotsimikizika. Likuonetsanso zimene njira iliyonse imafuna, ngakhale zitaposa zimene muli nazo.
way-value = { $way ->
    [one-bed] Nazale imodzi, kudula nthambi mvula yobzalira ikayamba
    [second-bed] Nazale yaing'ono yoyambirira; zidutswa zake zikulire pa kadimba kothirira
    [vine-plot] Nthambi za munda wakale pa kadimba kothirira; osasunga mbatata
    [as-planned] Siyani mbatata mumchenga, monga mwa dongosolo
    [bed-now] Bzalani mbatata zabwino pa nazale tsopano
    [bed-now-second-bed] Pa nazale tsopano; zidutswa zake zikulire pa kadimba kothirira
   *[buy] Pezani nthambi zosowazo kwa munthu wina
 }
table-shares = Zimene munda uliwonse ubweretse
    .text = Mwini munda aliyense aike chizindikiro pa zomera zake, ndipo abweretse mbatata zake kosungira pamodzi.
# doubt: "danga" for a column of a table.
table-fields = Miyeso malinga ndi kukula kwa munda
    .text = Pezani kukula kwa munda wanu m'danga loyamba. Ngati kuli pakati pa mizere iwiri, miyeso yanunso ili pakati pa mizereyo.
# doubt: "mvula yonyenga" (deceiving rain) for a false start; some say "chizimalupsa", which may also be any early rain.
# doubt: "mpiringidzo" for a bar of a diagram.
table-planting-later = Mukadikira kubzala
    .text = Mukabzala pa mvula yaikulu yoyamba, ndipo ng'amba yaitali ikatsatira, mmera ukhoza kufa. Imeneyo ndi mvula yonyenga. Mukadikira, masiku otsala mvula isanathe amachepa. Tebulo likuonetsa mmene zonse ziwiri zinalili zaka zapitazo. Si kulosera. Pachithunzi, mipiringidzo ya mizeremizere ndi zaka za mvula yonyenga, ndipo mipiringidzo yakuda ndi masiku otsala mvula isanathe.
    .alt = Pa tsiku lililonse loyambira kubzala: mpiringidzo wa mizeremizere wa zaka za mvula yonyenga, ndi mpiringidzo wakuda wa masiku otsala mvula isanathe. Manambala ali patebulo lili pamwambapa.
column-when = Nthawi
column-way = Zochita
column-farm = Munda
column-area = Kukula kwa munda, m²
column-cuttings = Zidutswa
column-cut = Zidutswa
cut-value = { $low }–{ $high }
column-plants = Zomera zoikapo chizindikiro
column-roots = Mbatata zosunga
column-bed = Nazale, m²
column-jerrycans = Zigubu za madzi pa tsiku
column-water = Madzi onse, malita
column-trips = Maulendo otunga madzi
column-from = Mvula yoyamba kuyambira
column-false-starts = Zaka za mvula yonyenga
column-days-left = Masiku otsala mvula isanathe, pa theka la zaka
false-starts-value = { $false_starts } mwa { $years }

## Cautions: title, text (.text), the same in a few words (.short), picture in words (.alt); text message (.sms) where there is one

caution-rot = Mbatata zoipa zili ndi poizoni, ngakhale mbali yooneka bwino
    .short = { -bad-roots-short }
    .text = { -bad-roots } Musaidule, musaisende, ndipo musaiphike kuti mudyeko mbali ina. Ngakhale mbali yooneka ngati yabwino ikhoza kukhala ndi poizoni. Mukakayikira mbatata, ichitireni monga mbatata yoipa.
    .alt = Mbatata yowola; pansi pake pali ng'ombe ndi mphika wophikira, zonse ndi X yoletsa.
    .sms = { -bad-roots-sms }
caution-virus = Zomera zodwala
    .short = Masamba ang'onoang'ono, opotana kapena a mawanga, nthambi zofooka? { -take-nothing-short }
    .text = Chomera cha mbatata chikakhala ndi masamba ang'onoang'ono, opotana kapena a mawanga, ndiye kuti chikudwala. Nthambi zofooka zimaonetsanso matenda. { -take-nothing }
    .alt = Dzanja lokhala ndi mpeni pa chomera cha masamba a mawanga ndi okwinyika, ndi X yoletsa.
caution-cracks = Ming'alu ya m'nthaka
    .short = Nankafumbwe amalowera m'ming'alu. Ikwirireni ndi dothi.
    .text = Nankafumbwe amafika pa mbatata kudzera m'ming'alu ya nthaka. Mukaona mng'alu, ukwirireni ndi dothi.
    .alt = Nankafumbwe akulowa mu mng'alu wa mzere; pansi pake pali mbatata ya mabowo ambiri.
caution-heavy-sand = Mchenga ndi wolemera
    .short = Musanyamule woposa { MEASURE($load_kg, unit: "kilogram") }. Musanyamule konse chiwiya chodzaza.
    .text = Nthawi imodzi musanyamule mchenga woposa { MEASURE($load_kg, unit: "kilogram") }. Dzazani chiwiya cha mbatata pamalo pomwe chidzakhala. Chikadzaza, musachinyamule konse.
    .alt = Munthu wowerama ndi thumba lalikulu, ndi X yoletsa; mayi woimirira bwino ndi ndowa yaing'ono, ndi chizindikiro cha zoona.
caution-riverbed = Mchenga wa mumtsinje
    .short = Kokhako kumene malamulo amalola. { -dry-riverbed-short }
    .text = { -dry-riverbed }
    .alt = Gombe loimirira la mtsinje likugumukira munthu wokumba, ndi X yoletsa.
caution-water-children = Madzi, ana ndi ziweto
    .short = { -children-water-short } Mangani mpanda ku zitsime, maenje ndi nazale.
    .text = { -children-water } Mangani mpanda kuzungulira zitsime ndi maenje. Musalole mbuzi ndi nkhuku kulowa pa nazale.
    .alt = Mgolo wamadzi wovundikiridwa kuseri kwa mpanda; mayi akuletsa mwana kulowa mumpandawo.
caution-store-dry = Mchenga ukhale wouma
    .short = { -keep-dry-short } Wonyowa umawoletsa mbatata.
    .text = Mchenga wa mbatata zosungidwa uyenera kukhala wouma, kuyambira tsiku loyamba mpaka tsiku lomaliza. { -keep-dry }
    .alt = Madzi a m'chigubu akugwera pa beseni la mbatata, ndi X yoletsa.
# doubt: "ongoyerekeza" for averages, "kulosera" for a forecast.
caution-forecast = Masikuwa ndi ongoyerekeza
    .short = Si kulosera: mvula ikhoza kubwera msanga kapena mochedwa. { -moist-soil-short }
    .text = Masiku amenewa ndi ongoyerekeza kuchokera pa zaka zapitazo, si kulosera za chaka chino. Mvula ikhoza kubwera msanga kapena mochedwa chaka chino. Yang'anirani kumwamba ndi nthaka. { -moist-soil }
    .alt = Mayi wanyamula zidutswa za nthambi ndipo akuyang'ana kumwamba: dzuwa, mtambo ndi mvula.
caution-try-first = Yambani ndi mbatata zochepa
    .short = Ngati ndi zachilendo, yambani ndi zochepa, ndipo sungani nthambi zina mwa njira yakale.
    .text = Ngati kusunga mbatata motere ndi kwachilendo kwa inu, yambani ndi mbatata zochepa. Sunganinso nthambi zanu zina mwa njira yakale.
    .alt = Mayi ali pakati pa mphika waung'ono wa mbatata zochepa ndi chomera chimene chikupitiriza kukula m'nthaka.

## Drawings and formats: titles, what drawings show in words, the names and sizes that stand in them

month-year = { month } { $year }
calendar-title = Ntchito za mwezi uliwonse
guide-title = Chitsogozo cha msonkhano
card-fold = Pindani pa mizere yodukaduka. Dulani pa mzere wokhuthala.
record-title = Kuyang'ana mbatata zosungidwa
record-how = Poyang'ana kulikonse tulutsani mbatata zonse. Zowola, za chuku kapena za mabowo a tizilombo zikwirireni m'dzenje lakuya, kapena zitentheni mpaka zisanduke phulusa. Lembani zimene mwapeza, ndipo onetsani khadi ili kwa mlangizi wanu wa zaulimi.
record-planned = Tsiku lokonzedwa
record-done = Tsiku loyang'ana
record-healthy = Zoikidwanso
record-thrown-away = Zotayidwa
record-sprouted = Za mphukira
record-remark = Ndemanga
record-stored = Mbatata zosungidwa
booklet-index = Minda ndi maina ake
span-brief = { BRIEF($from) } – { BRIEF($to) }
# In a drawing there is room for the sign only.
size-cm = { $cm } cm
size-m = { $m } m
drawing-season = Nyengo
drawing-season-alt = Mzere kuyambira kukolola mpaka kukolola: mbatata mumchenga, kenako pa nazale, kenako zomera m'munda, ndi masiku ake.
season-store = Mumchenga
season-bed = Pa nazale
season-field = M'munda
season-on-harvest = Kukolola
season-on-sprout = Ku nazale
season-on-rains = Mvula
season-on-food = Mbatata zoyamba
drawing-store = M'kati mwa chiwiya
drawing-store-alt = Chiwiya chodulidwa: nsanjika za mbatata, ndi mchenga pansi, pakati ndi pamwamba pake.
drawing-layers = Nsanjika iliyonse kuchokera pamwamba
drawing-layers-alt = Nsanjika kuchokera pamwamba: malo a mbatata iliyonse; sizikukhudzana kapena kukhudza mbali ya chiwiya.
drawing-bed = Nazale kuchokera pamwamba
drawing-bed-alt = Nazale kuchokera pamwamba: mizere ya mbatata, m'litali ndi m'lifupi mwake.
drawing-rows = Munda kuchokera pamwamba
drawing-rows-alt = Gawo la munda kuchokera pamwamba: kutalikirana kwa mizere, ndi zidutswa zobzalidwa.
## Words of the recording script

# doubt: "kujambula" for recording; also "kutepa" in speech.
script-title = Mawu ojambula
script-new-voice = liwu latsopano
script-lines = Mizere yowerenga
script-time = Nthawi yoyerekeza, potengera kutalika kwa mawu
script-time-measured = Nthawi, malinga ndi liwiro la liwu ili
script-minutes = pafupifupi mphindi { $minutes }
script-ready = Mauthenga amene akwanira kale
script-how = Musanayambe
script-how-room = Pezani chipinda chabata chimene muli nsalu: makatani, bedi, zovala. Tsekani mawindo, ndipo zimitsani mafani, mafiriji ndi mafoni amene angalire.
# doubt: "kutalika kwa dzanja" for a hand's length; whoever hears the arm in it stands too far from the microphone.
script-how-distance = Pakati pa kamwa lanu ndi maikolofoni kapena foni pakhale kutalika kwa dzanja, cham'mbali pang'ono. Musasinthe mtunda umenewu mpaka kumapeto.
script-how-tone = Yambani kujambula, kenako khalani chete kwa masekondi asanu: kamvekedwe ka m'chipindamo nakonso n'kofunika.
script-how-pause = Khalani chete kwa sekondi imodzi musanawerenge mzere uliwonse, ndi sekondi imodzi mutawerenga.
script-how-order = Werengani mizere motsatira dongosolo lake, ndipo chongani uliwonse. Musatchule manambala ake.
script-how-slip = Mukalakwitsa, khalani chete pang'ono, kenako nenaninso mzere wonse. Musaimitse kujambula.
# doubt: "mawu akuda kwambiri" for bold type, "mayimbidwe" for the melody of a sentence.
script-how-grey = Nenani mokweza mawu akuda kwambiri okha. Mawu otuwa amene ayandikana nawo awerengeni mumtima: amapatsa liwu lanu mayimbidwe a chiganizo.
script-how-brackets = Nenani mokweza mawu amene ali mkati mwa [ ] okha. Enawo awerengeni mumtima: amapatsa liwu lanu mayimbidwe a chiganizo.
script-how-medial = Pamene palembedwa “{ script-medial }”, musatsitse liwu: pakubwera mawu ena.
script-how-final = Pamene palembedwa “{ script-final }”, tsitsani liwu, monga kumapeto kwa chiganizo.
script-medial = chikupitirira
script-final = chatha
script-part = Gawo { $part }
script-part-lines = mizere { $first_line } mpaka { $last_line }
script-rest = Za minda ina ndi masiku ena
script-opening = Chiyambi cha uthenga uliwonse
script-closing = Mapeto a uthenga uliwonse
script-sentences = Ziganizo zathunthu
script-parts = Zigawo za ziganizo
script-numbers = Manambala, mtundu { $form }
script-dates = Zigawo za masiku
script-months = Miyezi
script-units = Miyeso
script-unlocks = Mauthenga amene akufuna mawuwa
script-complete = Mzere uwu ukukwaniritsa
script-stale = Mawu ojambulidwa kale akuti
script-other-ending = Alipo ojambulidwa, koma liwu limatha mwa njira ina.
script-recorded = Ajambulidwa kale.
script-unsaid = Palibe chiganizo chodziwika chonena motere: mukhoza kudumpha.
script-nothing = Palibe chotsala chojambula.
## The check of recordings

# doubt: "zojambula mawu" for recordings.
clips-title = Zojambula mawu, zoyesedwa
clips-intro = Zofunika kujambulanso zili poyamba. Chithunzi chilichonse chimasonyeza mawu kuchokera kumanzere kupita kumanja: pamwamba, mphamvu ya mawu; pansi, maliridwe ake, akuda pamene ali ndi mphamvu.
clips-again = Jambulaninso
clips-usable = Zingagwiritsidwe ntchito
clips-good = Zabwino
clips-unused = Sizikufunikanso
clips-missing = Sizinajambulidwe
clips-picture = Chithunzi cha mawu “{ $words }”
clips-length = Kutalika
clips-level = Mphamvu ya mawu
clips-noise = Mawu kuposa phokoso
# doubt: "kung'ung'udza" for an electric hum.
clips-hum = Mawu kuposa kung'ung'udza
clips-pace = Liwiro, poyerekeza ndi la nthawi zonse
clip-clipped = Mawu akukulira maikolofoni ndipo akukwakwaza. Ikani maikolofoni patali pang'ono, kapena chepetsani mphamvu yake.
clip-cut-start = Poyamba pa mawu padulidwa. Yambani kujambula, pumani kamodzi, kenako lankhulani.
clip-cut-end = Pomaliza pa mawu padulidwa. Pumani kamodzi musanaimitse kujambula.
clip-noise = Pali phokoso kumbuyo kwa mawu. Pezani malo abata, ndipo yandikitsani maikolofoni.
clip-hum = Pali kung'ung'udza kwa magetsi. Chotsani chaja, ndipo khalani patali ndi mawaya ndi makina.
# doubt: "mng'oma" for echoes.
clip-room = Chipinda chikuchita mng'oma. Jambulani m'chipinda chaching'ono cha nsalu, mphasa kapena matiresi, ndipo yandikitsani maikolofoni.
clip-quiet = Mawu ndi ochepa mphamvu kuposa ena. Khalani pa mtunda womwewo ndi maikolofoni nthawi zonse.
clip-loud = Mawu ndi amphamvu kuposa ena. Khalani pa mtunda womwewo ndi maikolofoni nthawi zonse.
clip-fast = Mwalankhula mofulumira kuposa ena. Lankhulani ndi liwiro lanu la nthawi zonse.
clip-slow = Mwalankhula pang'onopang'ono kuposa ena. Lankhulani ndi liwiro lanu la nthawi zonse.
clip-offset = Chojambulira chasuntha mawu pang'ono. Palibe choti muchite: zimakonzeka zokha.
clip-broken = Zojambulazi sizikutseguka. Jambulaninso.
clip-stale = Mawu asintha. Jambulani monga alili tsopano: “{ $words }”
clip-unused = Palibe uthenga umene ukugwiritsanso ntchito mawu awa.
## Radio segments: script for the presenter, plan of the season

# doubt: "kagawo" for a segment of a programme.
segment-title = Kagawo ka pa wailesi
segment-season = Tigawo ta pa wailesi ta nyengo yonse
segment-week = Mlungu
segment-topics = Zonenedwa
segment-nothing = Palibe chonena mlungu uno
segment-due = Mlungu uno
segment-past = Kumbukiranibe
segment-soon = Posachedwa
segment-opening = Nyimbo yotsegulira
segment-closing = Nyimbo yotsekera
segment-bed = Nyimbo pansi pa liwu
segment-bed-value = dB { $decibels } pansi pa liwu
segment-said = Zomveka
# doubt: "pompopompo" for live.
segment-read-before = Werengani pompopompo kagawoka kasanayambe
segment-read-after = Werengani pompopompo kagawoka katatha
segment-intro = Moni nonse olima mbatata ku { $place }. Mverani tsopano za ntchito zoyambira { DAY($first) } mpaka { DAY($last) }.
segment-outro = Zimenezi ndi ntchito zoyambira { DAY($first) } mpaka { DAY($last) }. Ngati china sichinamveke bwino, funsani mlangizi wanu wa zaulimi.
segment-reading-time = Nthawi yowerenga, moyerekeza
# doubt: "masilabo" for syllables.
segment-read-live = Awerengedwe mokweza. Nthawi ndi yoyerekeza, masilabo { $rate } pa sekondi.
segment-pauses = Mzere umodzi (/) ndi kupuma pang'ono, mizere iwiri (//) ndi kupuma kotalikirapo. Pakati pa zigawo, dikirani pang'ono powonjezera.
# doubt: "mawu" for sound made.
segment-no-sound = Palibe mawu amene apangidwa: mawu ena sanajambulidwe. Ali m'munsimu.
segment-no-voice = Palibe mawu amene apangidwa: chilankhulochi chilibebe liwu lojambulidwa.
segment-left-out = Nthawi sinakwane ya
segment-missing = Mawu osajambulidwa
## Questions for a meeting, as they are spoken

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

## Channels: cue sheets for phones and meetings

# doubt: the term for active speech level, a figure for sound technicians.
cue-active-level = Mphamvu ya mawu oyankhulidwa
cue-chapter = Mutu
cue-talk = nthawi yokambirana, masekondi { $seconds }

## The guide for a meeting

# doubt: "Zoonetsa" for what is shown, as a heading.
guide-show = Zoonetsa
guide-ask = Funsani

## Good to know

advice-roots-not-chosen = Mbatata zazing'ono, zopindika kapena zotemedwa ndi khasu ndi zodya. Idyani kapena gulitsani msanga, kuyambira zotemedwa, chifukwa sizikhalitsa. { -bad-roots }
advice-storage-place = Ikani ziwiya za mbatata m'chipinda chozizira, chouma ndi chamthunzi, momwe mphepo imalowa koma mvula siilowa. Zikhale kutali ndi ana, makoswe, nkhuku ndi mbuzi.
advice-clean-vines = Yambani kudula kunsonga kwa nthambi za mbatata, chifukwa kumeneko nankafumbwe ndi wochepa. Musatenge nthambi pa chomera cha mabowo patsinde kapena chodwala.
advice-clean-field = Bzalani mbatata pa mtunda wosachepera { $metres } m kuchokera ku minda yakale ya mbatata, chifukwa nankafumbwe amachokera kumeneko. Chotsani nthambi ndi mbatata zakale. Ambiri amalangiza kubzala mbatata pamalo amodzi kamodzi kokha pa zaka { $years }.
advice-deep-planting = Bzalani zidutswa za nthambi za mbatata mozama pafupifupi { $deep_cm } cm. Pa kafukufuku wina zinachita bwino pamenepo kuposa pa { $shallow_cm } cm.
# doubt: "ng'amba" (dry spell in the rains) for a dry week or fortnight after planting.
advice-dry-after-planting = Mvula yoyamba ikhoza kuduka. Pa zidutswa 100 za mbatata, pafupifupi { $week_least } mpaka { $week_most } zimapulumuka mlungu wouma mutabzala, ndipo { $fortnight_least } mpaka { $fortnight_most } milungu iwiri youma. Thirirani nazale mpaka munda utagwira, sungani nthambi zina, ndipo pakizani pomwe zidutswa zafa.
advice-feed-and-weed = Musanabzale mbatata, sakanizani manyowa akale owola m'mizere. Manyowa aawisi, kapena ochuluka, amabweretsa masamba ambiri ndi mbatata zochepa. Palirani mpaka nthambi ziphimbe nthaka.
# doubt: "za mtundu wa lalanje mkati mwake" (orange inside) for orange-fleshed roots; some say "zachikasu".
advice-children = Ana aang'ono azidya kawirikawiri mbatata za mtundu wa lalanje mkati mwake. Pa kafukufuku wina, ana amene ankadya magalamu { $serving_g } tsiku lililonse kwa masiku { $days } anali ndi vitamini A wochuluka m'thupi. Mbatata zoyera zimakhala ndi wochepa kwambiri, ndipo palibe pepala limene lingalonjeze zotere kwa mwana mmodzi.

## What the plan leads to, for the farmer; it goes out as text message too. For who plans, plans are told in English.

remark-containers-too-small =
    .text = Ziwiya zanu zikukwana mbatata { $fit }, osati { $roots }. Musapanikize zina, chifukwa mbatata zokhudzana zimawola. Zimenezi zikukwana kubzala pafupifupi { $area_m2 } m² mwa { $field_m2 } m² za munda wanu. { $more ->
        [0] Pezani chiwiya china kuti musunge zambiri, kapena bzalani munda wocheperapo.
        [one] Pezani chiwiya chimodzi china kuti musunge zambiri, kapena bzalani munda wocheperapo.
       *[other] Pezani ziwiya zina { $more } kuti musunge zambiri, kapena bzalani munda wocheperapo.
     }
remark-sand-short =
    .text = Mchenga wanu ukukwana kukwirira mbatata { $fit }, osati { $roots }. Musasunge mbatata zimene mchenga sungazikwirire. Zimenezi zikukwana kubzala pafupifupi { $area_m2 } m² mwa { $field_m2 } m² za munda wanu. Bweretsani mchenga wina wokwana { MEASURE($more_l, unit: "litre") }, kapena bzalani munda wocheperapo.
remark-water-limits =
    .text = Madzi anu akukwana nazale ya mbatata { $fit }, osati { $roots }. Nazale isapose muyeso umene mwauzidwa, ndipo nthaka yake ikhale yachinyontho nthawi zonse. Zimenezi zikukwana kubzala pafupifupi { $area_m2 } m² mwa { $field_m2 } m² za munda wanu. Kuti mubzale munda wonse, pezani madzi ena okwana { MEASURE($more_l, unit: "litre") } { $per ->
        [all] onse pamodzi.
       *[day] tsiku lililonse.
     }
remark-hands-short =
    .text = Anthu otunga madzi akhoza kuthirira nazale ya mbatata { $fit }, osati { $roots }. Nazale isapose muyeso umene mwauzidwa, ndipo ikhale yachinyontho. Zimenezi zikukwana kubzala pafupifupi { $area_m2 } m² mwa { $field_m2 } m² za munda wanu. Kuti mubzale wonse, anthu ena athandize kutunga, kapena konzani nazale pafupi ndi madzi.
remark-water-heavy =
    .text = Pa tsiku louma, nazale ya mbatata imafuna { $trips ->
        [one] ulendo { $trips } wotunga
       *[other] maulendo { $trips } otunga
     } madzi. Ntchito yotungayi imatenga pafupifupi { $hours ->
        [one] ola { $hours }
       *[other] maola { $hours }
     } pa tsiku. Konzani tsopano amene azitunga, kapena pangani nazale yocheperapo.
remark-limited-at-hand =
    .text = { $limit ->
        [roots] Muli ndi mbatata zosunga { $roots }.
        [plants] Zomera zanu zidzapereka mbatata zosunga pafupifupi { $roots }.
       *[bed] Malo a nazale akukwana mbatata { $roots }.
     } Munda wonse ukufuna mbatata { $wanted }. Mbatata zanu zikukwana kubzala pafupifupi { $area_m2 } m² mwa { $field_m2 } m² za munda wanu. Bzalani munda wocheperapo, kapena pemphani zidutswa za nthambi kwa anansi.
remark-field-waits =
    .text = Nthambi za mbatata zodula koyamba zidzakwana pafupifupi { $area_m2 } m² mwa { $field_m2 } m² za munda wanu. Zodula pambuyo pake zidzabzalidwa pa malo otsala. Mukadula, nthawi zonse dikirani masiku { $least_days } mpaka { $most_days } musanadulenso.
remark-rains-too-soon =
    .text = Mvula yobzalira ikhoza kuyamba pafupifupi pa { BRIEF($rains) }. Imeneyo ndi nthawi yochepa kwambiri mutakolola, choncho musasunge mbatata. M'malo mwake bzalani nthambi za m'munda wakale, kapena bzalani mbatata msanga pa nazale.
remark-storing-not-needed =
    .text = Kuno, zaka zambiri, nthawi youma imatenga pafupifupi masiku { $days }. Nthambi za mbatata zikhoza kukhala zamoyo nthawi yonseyo, choncho palibe chifukwa chosungira mbatata. Siyani mbali ina ya munda wakale osakumba, kapena sungani nthambi pa kadimba kothirira.
remark-rains-too-short =
    .text = Kuno nyengo ya mvula ndi yaifupi kwa mbatata. { $known ->
        [case] Zimene mudzabzale mwina sizidzakhwima mvula isanathe.
        [open] Palibe amene akudziwa kuti ndi kangati pamene zimakhwima mvula isanathe.
       *[record] Pa zaka 100, { $of_100 ->
            [0] palibe chaka chimene mbatata zimakhwima
            [one] ndi chaka { $of_100 } chokha pamene mbatata zimakhwima
           *[other] ndi zaka { $of_100 } zokha pamene mbatata zimakhwima
         } mvula isanathe.
     } { $helps ->
        [on-time] Konzani nazale msanga, kuti mudzabzale mvula ikangonyowetsa nthaka bwino.
        [quicker] Bzalani mvula ikangonyowetsa nthaka bwino, ndipo fufuzani mtundu wa mbatata wokhwima msanga.
       *[neither] Bzalani mvula ikangonyowetsa nthaka bwino, koma yembekezerani mbatata zazing'ono ndi zochepa.
     }
remark-cuts-too-late =
    .text = Nthambi za mbatata zodula pambuyo pake zidzachedwa, ngati zibzalidwa kuyambira pa { BRIEF($from) }. Mbatata zake zidzakhwima pafupifupi pa { BRIEF($ripe) }. Zaka zambiri mvula imatha nthawiyo isanafike. Nthambi zotere musazisungire malo m'munda. Dyetsani nazo ziweto, kapena zisiyeni zikule pamalo pomwe pali madzi.
remark-bed-late =
    .text = Nazale ya mbatata idzapereka zidutswa zoyamba pafupifupi pa { BRIEF($cut) }, mvula yobzalira itayamba kale. Mvula ikanyowetsa nthaka bwino, bzalani nthambi zimene muli nazo. Malo otsala a m'munda mudzabzalapo nthambi za pa nazale pambuyo pake.
remark-long-in-sand =
    .text = Mbatata zanu ziyenera kukhala mumchenga masiku { $days }. Palibe amene anawerengapo kuti ndi zingati zimene zimapulumuka nthawi yaitali chonchi. Sunganinso nthambi zina zikukula pafupi ndi madzi, ndipo funsani mlangizi wanu wa zaulimi.
remark-late-work =
    .text = Ntchito zina za mbatata sizinagwiridwe pa nthawi yake, choncho masiku awerengedwanso. Chitani msanga zimene zingathekebe. Munda ukhoza kubzalidwa kuyambira pa { BRIEF($field_from) }.{ $fewer ->
        [0] {""}
       *[other] {" "}Podula koyamba zidutswa za nthambi zidzachepa ndi pafupifupi { $fewer }.
     }
remark-fast-loss =
    .text = Poyang'ana pa { BRIEF($day) }, pa mbatata { $roots }, { $healthy ->
        [0] panalibe yabwino ngakhale imodzi.
        [one] yabwino inali { $healthy } yokha.
       *[other] zabwino zinali { $healthy } zokha.
     } { $next ->
        [bed] Bzalani mbatata zabwinozo pa nazale tsopano, ndipo fufuzani nthambi zina zobzala.
       *[check] Fufuzani chifukwa: mchenga wonyowa kapena wofunda, mbatata zotemedwa kapena zokhudzana, nankafumbwe. Ikani mchenga watsopano, wouma. Yang'ananinso pakatha milungu iwiri. Zina zambiri zikawola, bzalani zabwinozo msanga pa nazale yothirira.
     }
remark-cuttings-short =
    .text = Podula nthambi za mbatata koyamba, mudzaperewera zidutswa pafupifupi { $short }. Mvula ikanyowetsa nthaka bwino, bzalani pafupifupi { $area_m2 } m² mwa { $field_m2 } m² za munda wanu. { $later_cuts ->
        [0] Zodula pambuyo pake zidzachedwa kukhwima, choncho pemphani nthambi kwa anansi nthawi idakalipo.
       *[other] Zodula pambuyo pake zidzabzalidwa pa malo ena a munda. Mukhozanso kupempha nthambi kwa anansi nthawi idakalipo.
     }
remark-water-short =
    .text = Kuyambira pa { BRIEF($from) }, madzi a nazale ya mbatata akhoza kuchepa. Fufuzani madzi ena. Kuphimba nthaka ndi udzu wouma, ndi kuika mthunzi, kumapulumutsa madzi. Izi zikapanda kutheka, pangani nazale yocheperapo, ndipo bzalani munda wocheperapo.
remark-rains-may-be-late =
    .text = Mvula yobzalira ikhoza kuchedwa mpaka pa { BRIEF($late) }. Thirirani nazale ya mbatata mpaka mvulayo ibwere. { -moist-soil }
remark-years-without-rains =
    .text = Pa zaka { $judged } zapitazo, { $count ->
        [one] panali chaka { $count } chimene
       *[other] panali zaka { $count } zimene
     } mvula yobzalira sinayambe bwino. M'chaka chotere, nthambi za mbatata zobzalidwa pa mvula yoyamba zikhoza kufa. Sungani padera mbatata zina, kapena pitirizani kuthirira mbali ina ya nazale.
