### Chichewa, mawu oyeserera: mawu a pa pepala. Munthu wodziwa bwino Chichewa sanawawerengebe.
### Draft, as printed on sheets. Nouns: mbatata (root, 9/10), chomera/zomera (plant, 7/8), nthambi (vine, 9/10),
### chidutswa/zidutswa za nthambi (cutting, 7/8), mfundo (node, 9/10), tsinde/matsinde (foot of a stem, stub, 5/6),
### nsanjika (layer, 9/10), chiwiya/ziwiya (container, 7/8), ulendo/maulendo (load, counted as trips), chigubu/zigubu
### (jerrycan, 7/8), nazale (seedbed, 9), mzere/mizere (row, and ridge, 3/4), mulu/milu (mound, 3/4), mtolo/mitolo
### (bundle, 3/4), nankafumbwe (weevil, 1a), mphukira (sprout, 9/10).
### The reader is addressed with the polite imperative (-ni, musa-): it is right for one adult and for a group alike.
### A count stands behind its noun and adjective (mbatata zapakatikati 55), so that printed digits need no concord.
# doubt: ŵ is left out everywhere, as newspapers and schools now do, and as text messages need (ŵ halves their length). An older spelling writes aŵiri, ziŵiri, nthaŵi, ziŵeto, zoŵola, mbeŵu, loŵa, yeŵo.
# doubt: "mbatata" for the sweet potato, as in Malawi (the other potato is "kachewere"); elsewhere "mbatata ya kholowa".
# doubt: "nthambi" (branch) for vines; some say "kholowa", "zingwe" or "mphesi".
# doubt: "bzala", "dzala": both are written for planting.

## Words of the sheet itself

sheet-title = Mbatata: kuyambira zokolola zino mpaka mvula ikubwerayi
sheet-for = Kwa
sheet-place = Malo
sheet-rains = Mvula ikuyembekezeka kuyamba
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
amount-plants = Zomera zoti muike chizindikiro
amount-plants-each = Zomera zimene membala aliyense aike chizindikiro
amount-roots = Mbatata zosunga
# doubt: "zidutswa" (pieces) for cuttings; some say "mbewu" or "nthambi zobzala".
amount-cuttings = Zidutswa za nthambi zobzala m'munda
amount-first-cuttings = Zidutswa zoyembekezeka podula koyamba
amount-containers = Ziwiya
# doubt: "nsanjika" (storey) for a layer; some say "gawo".
amount-layers = Nsanjika za mbatata m'chiwiya
amount-roots-per-layer = { $layer_widths ->
    [uneven] Mbatata mu nsanjika ya pansi, zosapitirira
   *[even] Mbatata mu nsanjika iliyonse, zosapitirira
 }
amount-roots-top-layer = Mbatata mu nsanjika ya pamwamba, zosapitirira
amount-bundles = Mitolo ya zidutswa za nthambi
amount-lining = Mapepala oyala m'ziwiya
amount-water-total = Madzi a nazale, nyengo yonse
amount-sand = Mchenga wouma
# doubt: loads are counted as trips (maulendo), since "mtolo" is a bundle.
amount-loads = Maulendo otenga mchenga
# doubt: "nazale" for the seedbed; some say "bedi".
amount-bed = Nazale
amount-strips = Zigawo za nazale, ndi njira za { MEASURE($path_m, unit: "metre") } pakati pake
amount-water = Madzi a nazale, tsiku lililonse
# doubt: "chigubu" for a jerrycan, and whether its size should be named.
amount-jerrycans = Zigubu za madzi, tsiku lililonse

first-cuttings-value = { $first_cuttings_low } mpaka { $first_cuttings_high }{ $plan_by ->
    [practice] , malinga ndi chizolowezi
   *[print] , malinga ndi masiku okula
 }
sand-value = { MEASURE($sand_l, unit: "litre") }, pafupifupi { MEASURE($sand_kg, unit: "kilogram") }
bed-value = { MEASURE($bed_length_m, unit: "metre") } × { MEASURE($bed_width_m, unit: "metre") }
strips-value = { $strips }, chilichonse { MEASURE($strip_length_m, unit: "metre") } × { MEASURE($strip_width_m, unit: "metre") }
water-value = { MEASURE($water_l, unit: "litre") }
water-total-value = { MEASURE($water_total_l, unit: "litre") }
bundles-value = { MEASURE($bundles, unit: "bundle") }, mtolo uliwonse zidutswa { $bundle_size }
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
span-day = { WEEKDAY($from) }, { DAY($from) }
unit-kilogram = { $n ->
    [one] kilogalamu { $n }
   *[other] makilogalamu { $n }
 }
unit-litre = { $n ->
    [one] lita { $n }
   *[other] malita { $n }
 }
unit-metre = { $n ->
    [one] mita { $n }
   *[other] mamita { $n }
 }
unit-centimetre = { $n ->
    [one] sentimita { $n }
   *[other] masentimita { $n }
 }
# doubt: "dzanja" (hand, wrist to fingertips); some take it for the arm as well.
unit-hand = { $n ->
    [one] dzanja { $n }
   *[other] manja { $n }
 }
# doubt: "mfundo ya chala chachikulu" for a thumb joint; "mfundo" is the node of a vine as well.
unit-thumb-joint = { $n ->
    [one] mfundo { $n } ya chala chachikulu
   *[other] mfundo { $n } za chala chachikulu
 }
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

## Opening and closing

opening = { $kind ->
    [zone] Dongosolo ili ndi la mlimi aliyense wa m'dera lino. Miyeso yake yawerengedwera mbatata { $roots }: onjezerani kapena chepetsani malinga ndi kukula kwa munda wanu.
   *[other] Masiku a dongosolo ili awerengedwa mobwerera m'mbuyo kuchokera pa mvula yoyamba. Mvula ikuyembekezeka kuyamba cha pa { DAY($rains) }.
 }
closing = Mlangizi wanu wa zaulimi akudziwa mitundu ya mbatata, masiku ndi malamulo a dera lanu. Akakuuzani zosiyana ndi za pa pepala lino, tsatirani malangizo akewo.
    .sms = Mlangizi wanu wa zaulimi akanena zosiyana, tsatirani malangizo akewo.

## Steps: title, text (.text), picture in words (.alt), text message on a phone (.sms, 160 letters or less where it can be)

# doubt: "aukhondo" for clean leaves; some may hear only "washed".
mark-plants = Ikani chizindikiro pa zomera zathanzi { $plants }
    .short = Zomera zamphamvu, masamba aakulu aukhondo, opanda matenda. Kamtengo pambali pa chilichonse.
    .text = { $kind ->
        [group] Pamodzi sankhani zomera zamphamvu { $plants }; membala aliyense aike chizindikiro pa { $plants_each ->
            [one] chomera { $plants_each }
           *[other] zomera { $plants_each }
         }.
       *[other] Sankhani zomera zamphamvu { $plants }.
     } Zikani kamtengo pafupi ndi chomera chilichonse. Sankhani zokhazo za masamba aakulu ndi aukhondo, zosaonetsa matenda alionse. Mudzapezapo mbatata zosunga pafupifupi { $roots }.
    .alt = Dzanja likuzika kamtengo m'nthaka pafupi ndi chomera champhamvu.
    .show = Nthambi yathanzi ndi yodwala, ndi kamtengo.
    .ask = Mumasiyanitsa bwanji chomera chathanzi ndi chodwala?
    .sms = { BRIEF($first) }: zikani timitengo pa zomera zathanzi { $plants } za mbatata za mbewu. Masamba aakulu aukhondo, opanda matenda.
# doubt: "mchenga wa njere zazikulu" for coarse sand, "mchenga wosalala" for fine sand.
gather-sand = Bweretsani mchenga wouma
    .short = Wa njere zazikulu, waukhondo: { MEASURE($sand_l, unit: "litre") }. Uumitseni pansi pa denga, uzizire.
    .text = Bweretsani mchenga waukhondo wa njere zazikulu wokwana { MEASURE($sand_l, unit: "litre") }, wolemera pafupifupi { MEASURE($sand_kg, unit: "kilogram") }. Uumitseni pansi pa denga, kenako muusiye uzizire. Mchenga wosalala, wachinyontho kapena wofunda umachititsa mbatata kuwola. Musanyamule mchenga woposa { MEASURE($load_kg, unit: "kilogram") } nthawi imodzi: { $loads ->
        [one] ulendo ndi { $loads }
       *[other] maulendo ndi pafupifupi { $loads }
     }.
    .alt = Pansi pa denga, dzanja lokhala ndi mbale likuthira mchenga wouma wa pa mulu m'chidebe chaching'ono.
    .show = Mchenga wouma wa njere zazikulu, ndi mchenga wosalala wachinyontho.
    .ask = Mchenga wa njere zazikulu tidzaupeza kuti, ndipo kukumba kumeneko kulibe ngozi?
    .sms = Pofika { BRIEF($last) }: bweretsani mchenga wouma wa njere zazikulu, { MEASURE($sand_l, unit: "litre") }. Uumitseni pansi pa denga. Osaposa { MEASURE($load_kg, unit: "kilogram") } pa ulendo.
# doubt: "zopinimbira" for stunted; some say "zonyentchera".
# doubt: "chizindikiro cha zoona" for a tick, "miyezi yakumwamba" for moons, in the words for pictures.
check-plants = Onaninso zomera zimene munaika chizindikiro
    .short = Masamba ang'onoang'ono, opotana kapena a mawanga? Chotsani kamtengo, musatengeko kanthu.
    .text = Onani ngati masamba ali ang'onoang'ono, opotana kapena a mawanga, ngati nthambi zapinimbira, ndi ngati patsinde pali mabowo. Mukakayika, chotsani kamtengo, ndipo musatenge chilichonse pa chomeracho.
    .alt = Chomera chathanzi, chokhala ndi chizindikiro cha zoona, chili ndi kamtengo kake; dzanja likuzula kamtengo ka chomera chodwala cha masamba amawanga ndi okwinyika.
    .show = Masamba ang'onoang'ono, opotana ndi a mawanga.
    .ask = Mungatani ndi chomera cha kamtengo chimene chadwala?
    .sms = { BRIEF($first) }: onaninso zomera za mbatata za timitengo. Chotsani kamtengo pamene masamba ali ang'onoang'ono, opotana kapena a mawanga.
# doubt: "dzanja lotambasula" for the open hand in the words for pictures; some say "lotambasuka".
cut-vines = Dulani nthambi za zomera zimene munaika chizindikiro
    .short = Siyani tsinde la { MEASURE($stem_cm, unit: "centimetre") }: { MEASURE($stem_hands, unit: "hand") }.
    .text = Dulani nthambizo, ndipo siyani tsinde lotalika { MEASURE($stem_cm, unit: "centimetre") }, pafupifupi { MEASURE($stem_hands, unit: "hand") }. Khungu la mbatata lidzalimba, ndipo mbatata zidzakhala nthawi yaitali zosawonongeka.
    .alt = Mpeni ukudula nthambi; matsinde otsala ndi aatali ngati dzanja lotambasula limene lili pambali pake.
    .show = Dzanja lotambasula pambali pa tsinde.
    .ask = N'chifukwa chiyani khungu la mbatata limafuna nthawi kuti lilimbe?
    .sms = { BRIEF($first) }: dulani nthambi za mbatata za timitengo. Siyani tsinde lotalika ngati dzanja.
# doubt: "losasupuka" (not grazed) for whole skin.
harvest = Kumbani, ndipo sankhani mbatata { $roots }
    .short = M'nthaka youma mokha. Mbatata zapakatikati, zosavulala. Musazitsuke. Zikhale pamthunzi.
    .text = Kumbani m'nthaka youma mokha, ndipo tulutsani mbatata mosazivulaza. Sankhani mbatata zapakatikati { $roots }, zotalika ngati dzanja lanu, za khungu losasupuka. Mbatata zovulala ziphikeni, musazisunge. Pukutani dothi ndi manja, ndipo musazitsuke konse. Zisiyeni pamthunzi maola angapo, dzuwa lisazifike.
    .alt = Dzanja likukweza chomera ndi mbatata zosavulala kuchokera m'nthaka yofewa, ndi khasu pambali.
    .show = Mbatata yapakatikati yosavulala, ndi yovulala.
    .ask = Mbatata zosunga ndi ziti, nanga zopita kukhitchini ndi ziti?
    .sms = { BRIEF($first) }: kumbani m'nthaka youma. Sungani mbatata zapakatikati { $roots } zosavulala. Musazitsuke. Zikhale pamthunzi.
# doubt: "mothina" for a tightly woven basket.
# doubt: "wochindikala" (thick) for the depth of a bed of sand.
fill-container = Ikani mbatata mumchenga
    .short = Mchenga: pansi { MEASURE($base_cm, unit: "centimetre") }, pakati { MEASURE($layer_cm, unit: "centimetre") }, pamwamba { MEASURE($top_cm, unit: "centimetre") }. Mbatata zisakhudzane. Osavundikira.
    .text = Gwiritsani ntchito { $containers ->
        [one] chiwiya { $containers } cholimba
       *[other] ziwiya { $containers } zolimba
     } m'mbali: beseni, mphika, chidebe kapena dengu lolukidwa mothina. Musagwiritse ntchito matumba. Yalani mapepala mkati. Dzazani chiwiya pamalo pomwe chidzakhala: pozizira bwino, pouma ndi pamthunzi, kutali ndi ana, ziweto ndi mvula. Yambani ndi mchenga wochindikala { MEASURE($base_cm, unit: "centimetre") }, pafupifupi { MEASURE($base_joints, unit: "thumb-joint") }. { $layer_widths ->
        [uneven] Mu nsanjika ya pansi ikani mbatata zosapitirira { $roots_per_layer }, ndipo mu nsanjika ya pamwamba zosapitirira { $roots_top },
       *[even] Mu nsanjika iliyonse ikani mbatata zosapitirira { $roots_per_layer },
     } zosakhudzana, ndiponso zosakhudza m'mbali mwa chiwiya. Zikwirireni ndi mchenga wochindikala { MEASURE($layer_cm, unit: "centimetre") }. { $layers ->
        [one] Pangani nsanjika { $layers } yokha.
       *[other] Kenako ikani zina pamwamba, mpaka nsanjika zikwane { $layers }.
     } Malizani ndi mchenga wochindikala { MEASURE($top_cm, unit: "centimetre") }: umatchinga makoswe, tizilombo ndi nkhuku. Musaike chivundikiro.
    .alt = Beseni lodulidwa poonetsa mkati: mchenga, mbatata zotalikirana, mchenga, mbatata, ndi mchenga wambiri pamwamba; dzanja likuwaza mchenga.
    .show = Beseni, mchenga wouma ndi mbatata zochepa: wina ayale nsanjika yoyamba.
    .ask = N'chifukwa chiyani mbatata siziyenera kukhudzana?
    .sms = { BRIEF($first) }: ikani mbatata mumchenga wouma, zosakhudzana. Mchenga { MEASURE($base_cm, unit: "centimetre") } pansi, { MEASURE($top_cm, unit: "centimetre") } pamwamba. Osavundikira, osathira madzi.
# doubt: "chuku" for mould; newspapers write "chukwu" of groundnuts; some say "nkhungu" or "nguwi".
# doubt: "zofumbwa" (eaten into by weevils, as a newspaper of Malawi says of mbatata) for bored; holes of other insects would be "za mabowo".
# doubt: "zitentheni … mpaka phulusa" (burn to ash). Not "ziwotcheni": it also means roast them, and rotten roots must not sound like food.
# doubt: "mphukira" for the sprouts of the stored root; the shoots cut in the bed are called "nthambi".
# doubt: "X yoletsa" (forbidding X) for a crossed-out picture.
monthly-check = Yang'anani mbatata mwezi uliwonse
    .short = Onani mbatata iliyonse. Zowola zikwirireni kapena zitentheni mpaka phulusa. Chotsani mphukira. Zabwino ziikeninso.
    .text = Tulutsani mbatata zonse, ndipo onani iliyonse. Zowola, za chuku kapena zofumbwa, zikwirireni m'dzenje lakuya, kapena zitentheni pa moto mpaka phulusa. Chotsani mphukira ndi dzanja. Mbatata zabwino ziikeninso mumchenga monga poyamba, ndipo lembani kuti zatsala zingati. Mpaka kuyang'ana kwina, musazikhudze.
    .alt = Miyezi itatu yakumwamba yosonyeza kuti mwezi wadutsa; dzanja likutulutsa mbatata m'beseni; mbatata yowola ili pambali, ndi X yoletsa.
    .show = Mbatata yowola ngati ilipo, ndi kuikanso zabwino.
    .ask = Mungatani ndi mbatata yowola, ndipo n'chifukwa chiyani sitipatsa ziweto?
    .sms = { BRIEF($first) }: tulutsani mbatata zonse. Zowola zikwirireni kapena zitentheni mpaka phulusa, musazipatse ziweto konse. Chotsani mphukira. Zabwino ziikeninso mumchenga.
prepare-bed = Konzani nazale
    .short = M'litali { MEASURE($bed_length_m, unit: "metre") }, m'lifupi { MEASURE($bed_width_m, unit: "metre") }, pafupi ndi madzi. Tipulani nthaka. Mangani mpanda.
    .text = Konzani nazale pafupi ndi madzi: m'litali { MEASURE($bed_length_m, unit: "metre") }, m'lifupi { MEASURE($bed_width_m, unit: "metre") }. Tipulani nthaka bwino. Mangani mpanda kuti mbuzi ndi nkhuku zisalowe.
    .alt = Bambo akufewetsa nthaka ya nazale ndi khasu; kumbuyo kwake kuli mpanda.
    .show = Malo a pafupi ndi madzi, ndi kukula kwa nazale poyesa ndi mapazi.
    .ask = N'chiyani chidzaletsa mbuzi ndi nkhuku kulowa?
    .sms = Pofika { BRIEF($last) }: konzani nazale ya mbatata pafupi ndi madzi, m'litali { MEASURE($bed_length_m, unit: "metre") }, m'lifupi { MEASURE($bed_width_m, unit: "metre") }. Mangani mpanda.
last-check = Yang'anani komaliza, ndipo musachotse mphukira
    .short = Zowola zikwirireni kapena zitentheni mpaka phulusa. Musachotse mphukira.
    .text = Tulutsani mbatata zonse. Zowola, za chuku kapena zofumbwa, zikwirireni m'dzenje lakuya, kapena zitentheni pa moto mpaka phulusa. Ulendo uno musachotse mphukira: mbatata zabwino zikupita ku nazale tsopano.
    .alt = Dzanja likutulutsa mbatata ya mphukira m'beseni; muvi ukuloza ku nazale.
    .show = Mbatata ya mphukira.
    .ask = N'chifukwa chiyani ulendo uno tikusiya mphukira?
    .sms = { BRIEF($first) }: yang'anani mbatata komaliza. Musachotse mphukira. Zowola zikwirireni kapena zitentheni mpaka phulusa, musazipatse ziweto konse.
plant-bed = Bzalani mbatata pa nazale
    .short = Mizere: { $bed_rows }, yotalikirana { MEASURE($spacing_cm, unit: "centimetre") }, mbatata pafupifupi { $row_roots } pa uliwonse. Kwirirani pang'ono.
    .text = Gonekani mbatata m'mizere, motalikirana pafupifupi { MEASURE($spacing_cm, unit: "centimetre") }: { $bed_rows ->
        [one] mzere { $bed_rows }
       *[other] mizere { $bed_rows }
     }, ndi mbatata pafupifupi { $row_roots } mu mzere uliwonse. Zikwirireni pang'ono ndi dothi.
    .alt = Mbatata zagonekedwa mu mzere; dzanja likuzikwirira ndi dothi.
    .show = Mpata wa pakati pa mizere, poyesa ndi kamtengo koyenera.
    .ask = Mbatata imagona mozama bwanji mu nazale?
    .sms = Kuyambira { BRIEF($first) }: bzalani mbatata m'mizere, motalikirana { MEASURE($spacing_cm, unit: "centimetre") }. Kwirirani pang'ono ndi dothi, ndipo thirirani.
water-bed = Thirirani nazale
    .short = Mpaka { MEASURE($water_l, unit: "litre") } pa tsiku ({ MEASURE($jerrycans, unit: "jerrycan") }); zomera zanthete, ochepa.
    .text = Nazale ikadzaza masamba, thirani pafupifupi { MEASURE($water_l, unit: "litre") } tsiku lililonse, ndiye kuti { MEASURE($jerrycans, unit: "jerrycan") }. Zomera zanthete zimafuna madzi ochepa; masiku otentha ndi a mphepo amafuna madzi ambiri. Siyani kuthirira mvula ikamagwa mokwanira.
    .alt = Dzanja likuthira madzi a m'chigubu pa nazale ya mphukira.
    .show = Chigubu, ndi madzi ochepa amene zomera zanthete zimafuna.
    .ask = Ndani adzabweretsa madzi, ndipo ndani adzayang'anira ana kumeneko?
    .sms = Kuyambira { BRIEF($first) }: thirirani nazale ya mbatata tsiku lililonse, mpaka { MEASURE($water_l, unit: "litre") }. Ana asayandikire madzi osavundikiridwa.
# doubt: "mfundo" for the nodes of a vine; some say "maso".
# doubt: "matsinde" for the stubs left in the bed; some say "zitsa".
cut-for-planting = Dulani nthambi zobzala
    .short = Mvula ikayamba: { MEASURE($cutting_cm, unit: "centimetre") }, mfundo { $nodes }, nthambi zathanzi. Siyani matsinde.
    .text = Mvula ikayamba, dulani zidutswa zotalika { MEASURE($cutting_cm, unit: "centimetre") }, pafupifupi { MEASURE($cutting_hands, unit: "hand") }. Chidutswa chilichonse chikhale ndi mfundo zosachepera { $nodes }. Dulani pa nthambi zathanzi zokha. { $plan_by ->
        [practice] Malinga ndi chizolowezi, podula koyamba mudzapeza zidutswa pafupifupi
       *[print] Podula koyamba mudzapeza zidutswa pafupifupi
     } { $first_cuttings_low } mpaka { $first_cuttings_high }. Siyani matsinde: mudzadulaponso zidutswa zina pakatha milungu inayi mpaka isanu ndi umodzi. Sungani zidutswa pamthunzi, ndipo zibzaleni pasanathe masiku awiri.
    .alt = Dzanja lina lagwira nthambi ya pa nazale, lina likuidula ndi mpeni; matsinde akutsala.
    .show = Chidutswa cha utali woyenera pambali pa dzanja: werengani mfundo.
    .ask = Ndi zomera ziti zimene sitidulako nthambi?
    .sms = Mvula ikayamba: dulani nthambi zathanzi za mbatata: chidutswa { MEASURE($cutting_cm, unit: "centimetre") }, mfundo { $nodes }. Siyani matsinde.
# doubt: "mzere" for a ridge (and a row), "mulu" for a mound; some say "mtumbira".
plant-field = Bzalani m'munda
    .short = M'nthaka yachinyontho mokha. Kwirirani mfundo ziwiri kapena zitatu. Pakatha milungu iwiri bzalani m'mipata.
    .text = Bzalani m'nthaka yachinyontho mokha. { $layout ->
        [own] Munda uliwonse ubzalidwe pa mizere kapena milu yake.
        [mounds] Pa mulu uliwonse bzalani { $on_mound ->
            [one] chidutswa { $on_mound }
           *[other] zidutswa { $on_mound }
         }; milu italikirane { MEASURE($between_cm, unit: "centimetre") }.
       *[ridges] Pa mzere bzalani chidutswa chimodzichimodzi, motalikirana { MEASURE($along_cm, unit: "centimetre") }; mizere italikirane { MEASURE($between_cm, unit: "centimetre") }.
     } Kwirirani mfundo ziwiri kapena zitatu. { $kind ->
        [zone] Mbatata { $roots } zimapereka zidutswa { $cuttings } nyengo yonse ya nazale.
       *[other] Munda ukufuna zidutswa { $cuttings }.
     } Pakatha milungu iwiri, bzalaninso m'mipata.
    .alt = Pansi pa mtambo wa mvula, dzanja likubzala zidutswa za nthambi mu mzere; mfundo zakumunsi zili m'nthaka.
    .show = Nthaka yachinyontho mpaka kuzama kwa chala, ndi chidutswa chimene mfundo zake zakwiriridwa.
    .ask = Mvula yagwa kamodzi: kodi tibzale tsopano? Ubwino wake ndi wotani, nanga kuipa kwake?
    .sms = Kuyambira { BRIEF($first) }, nthaka ikakhala yachinyontho: bzalani zidutswa { $cuttings_to_plant }. Masiku ndi apakatikati: yang'anirani kumwamba.
first-harvest = Yesani mbatata zoyamba
    .short = Papasani mbatata zazikulu. Kumbani zonse pofika { DAY($last_harvest) }: nankafumbwe amabwera.
    .text = Papasani pansi pa zomera zingapo, kuti mupeze mbatata zokula zokwanira kudya. Musasiye mbatata zokhwima m'nthaka youma nthawi yaitali: nankafumbwe amazipeza. Malizani kukumba pofika { DAY($last_harvest) }.
    .alt = Dzanja likufufuza mbatata pansi pa chomera; pambali pali mphika pa moto.
    .show = Momwe mungapapasire mbatata osazula chomera.
    .ask = Chimachitika n'chiyani ndi mbatata zokhwima zokhala m'nthaka youma?
    .sms = Kuyambira { BRIEF($first) }: papasani mbatata zokhwima. Kumbani zonse pofika { BRIEF($last_harvest) }: nankafumbwe amabwera.

## Tables: title, what it tells (.text), its picture in words (.alt)

# doubt: "malinga ndi masiku okula" where cuttings are counted by the days that the bed has grown.
table-cuts = Kudula nthambi pa nazale{ $plan_by ->
    [practice] , malinga ndi chizolowezi
   *[print] , malinga ndi masiku okula
 }
    .text = Podula kulikonse mungayembekezere zidutswa izi. Za pambuyo pake ndi za malo otsala a munda, ndi zobzala m'mipata.
table-shares = Zimene munda uliwonse ubweretse
    .text = Mwini munda aliyense aike chizindikiro pa zomera zake, ndipo abweretse mbatata zake kosungira pamodzi.
# doubt: "danga" for a column of a table.
table-fields = Miyeso malinga ndi kukula kwa munda
    .text = Pezani kukula kwa munda wanu m'danga loyamba. Ngati kuli pakati pa mizere iwiri, miyeso yanunso ili pakati pa mizereyo.
# doubt: "mvula yonyenga" (deceiving rain) for a false start; some say "chizimalupsa", which may also be any early rain.
# doubt: "mpiringidzo" for a bar of a diagram.
table-planting-later = Mukadikira kubzala
    .text = Wobzala pa mvula yaikulu yoyamba angataye mmera wanthete ngati ng'amba yaitali itsatira: imeneyo ndi mvula yonyenga. Wodikira amatsala ndi masiku a mvula ocheperapo. Tebulo ili likuonetsa mmene zonse ziwiri zinalili zaka zapitazo; si kulosera. Pachithunzi, mipiringidzo ya mizeremizere ndi zaka za mvula yonyenga, ndipo mipiringidzo yakuda ndi masiku a mvula otsala.
    .alt = Pa tsiku lililonse loyambira kubzala: mpiringidzo wa mizeremizere wa zaka za mvula yonyenga, ndi mpiringidzo wakuda wa masiku a mvula otsala. Manambala ali patebulo lili pamwambapa.
column-when = Nthawi
column-farm = Munda
column-area = Kukula kwa munda, m²
column-cuttings = Zidutswa
column-cut = Zidutswa
cut-value = { $low }–{ $high }
column-plants = Zomera zoti muike chizindikiro
column-roots = Mbatata zosunga
column-bed = Nazale, m²
column-jerrycans = Zigubu za madzi pa tsiku
column-from = Mvula yoyamba kuyambira
column-false-starts = Zaka za mvula yonyenga
column-days-left = Masiku a mvula otsala, m'chaka chapakatikati
false-starts-value = { $false_starts } mwa { $years }

## Cautions: title, text (.text), picture in words (.alt); text message (.sms) where there is one

# doubt: whether "konse" is heard as a firm "never"; the same in the other cautions.
# doubt: "ziweto" for animals: whether poultry and pigs are heard in it.
caution-rot = Mbatata zowola, za chuku kapena zofumbwa
    .short = Musazidye konse, ngakhale mbali yabwino. Musazipatse ziweto konse. Zikwirireni mozama kapena zitentheni mpaka phulusa.
    .text = Musazidye konse. Musazipatse ziweto konse, ndipo musazibzale. Musadule mbali yoipa kuti mudye yotsala: ngakhale mbali yooneka ngati yabwino ikhoza kukhala ndi poizoni. Zikwirireni m'dzenje lakuya, kapena zitentheni pa moto mpaka phulusa.
    .alt = Mbatata yowola; pansi pake pali ng'ombe ndi mphika wophikira, zonse ndi X yoletsa.
    .sms = Musadye konse mbatata zowola kapena za chuku, ngakhale mbali yabwino, ndipo musazipatse ziweto konse. Zikwirireni mozama kapena zitentheni mpaka phulusa.
# doubt: "matenda a vairasi" for virus disease.
caution-virus = Zomera zodwala
    .short = Masamba a mawanga, ang'onoang'ono kapena opotana: musatenge chilichonse pa chomeracho.
    .text = Masamba a mawanga, ang'onoang'ono kapena opotana, ndi nthambi zopinimbira, ndi zizindikiro za matenda a vairasi. Musatenge konse mbatata kapena nthambi pa chomera chotere.
    .alt = Dzanja lokhala ndi mpeni pa chomera cha masamba amawanga ndi okwinyika, ndi X yoletsa.
caution-cracks = Ming'alu ya m'nthaka
    .short = Kwirirani ming'alu ndi dothi: nankafumbwe amalowera momwemo.
    .text = Nankafumbwe amafika pa mbatata kudzera m'ming'alu ya nthaka. Kwirirani ming'alu ndi dothi mukangoiona.
    .alt = Nankafumbwe akulowa mu mng'alu wa mzere; pansi pake pali mbatata ya mabowo ambiri.
caution-heavy-sand = Mchenga ndi wolemera
    .short = Musanyamule woposa { MEASURE($load_kg, unit: "kilogram") }. Musanyamule chiwiya chodzaza.
    .text = Musanyamule mchenga woposa { MEASURE($load_kg, unit: "kilogram") } nthawi imodzi. Dzazani chiwiya pamalo pomwe chidzakhala. Chikadzaza, musachinyamule.
    .alt = Munthu wowerama ndi thumba lalikulu, ndi X yoletsa; mayi woimirira bwino ndi chidebe chaching'ono, ndi chizindikiro cha zoona.
# doubt: "gombe lotsetsereka kwambiri" (a bank that slopes very much) for a steep bank; some would say "loimirira" (upright).
caution-riverbed = Mchenga wa mumtsinje
    .short = Dikirani mpaka mtsinje uume. Tengani kokhako kumene malamulo amalola. Musakumbe konse m'munsi mwa gombe lotsetsereka kapena pafupi nalo.
    .text = Musatenge mchenga mumtsinje ukakhala ndi madzi: dikirani mpaka uume. Musakumbe konse m'munsi mwa gombe lotsetsereka kwambiri, kapena pafupi nalo: likhoza kugumuka ndi kukukwirirani. Tengani mchenga kokhako kumene malamulo a dera lanu amalola.
    .alt = Gombe lotsetsereka la mtsinje likugumukira munthu wokumba, ndi X yoletsa.
caution-water-children = Madzi, ana ndi ziweto
    .short = Ana asayandikire. Vundikirani madzi; mangani mpanda ku zitsime, maenje ndi nazale.
    .text = Musalole ana kusewera pafupi ndi madzi, zitsime kapena maenje. Vundikirani madzi osungidwa. Mangani mpanda kuzungulira zitsime ndi maenje. Musalole mbuzi ndi nkhuku kulowa mu nazale.
    .alt = Mgolo wamadzi wovundikiridwa kuseri kwa mpanda; mayi akuletsa mwana kulowa mumpandawo.
# doubt: "kheni" for a watering can.
caution-store-dry = Musathire madzi konse pa mbatata zosungidwa
    .short = Musathire madzi mumchenga: mbatata zimawola.
    .text = Mchenga uyenera kukhala wouma kuyambira tsiku loyamba mpaka tsiku lomaliza. Mchenga wachinyontho umachititsa mbatata kuphuka msanga kapena kuwola.
    .alt = Madzi a m'chigubu akugwera pa beseni la mbatata, ndi X yoletsa.
# doubt: "apakatikati" for averages, "kulosera" for a forecast.
caution-forecast = Masiku ndi apakatikati, si kulosera
    .short = Mvula ikhoza kubwera msanga kapena mochedwa. Bzalani m'nthaka yachinyontho mokha.
    .text = Masikuwa achokera pa zaka zapitazo. Mvula ikhoza kubwera msanga kapena mochedwa. Yang'anirani kumwamba ndi nthaka, ndipo bzalani m'nthaka yachinyontho mokha.
    .alt = Mayi wanyamula zidutswa za nthambi ndipo akuyang'ana kumwamba: dzuwa, mtambo ndi mvula.
caution-try-first = Yesani ndi mbatata zochepa poyamba
    .short = Ndi zachilendo? Yambani ndi mbatata zochepa, ndipo sungani nthambi zina mwa njira yakale.
    .text = Ngati njirayi ndi yachilendo kwa inu, yambani ndi mbatata zochepa, ndipo sunganinso nthambi zanu zina mwa njira yakale.
    .alt = Mayi ali pakati pa mphika waung'ono wa mbatata zochepa ndi chomera chimene chikupitiriza kukula m'nthaka.

## Drawings and formats: titles, what drawings show in words, the names and sizes that stand in them

month-year = { month } { $year }
calendar-title = Ntchito za mwezi uliwonse
guide-title = Chitsogozo cha msonkhano
card-fold = Pindani pa mizere yodukaduka. Dulani pa mzere wokhuthala.
record-title = Kuyang'ana mbatata zosungidwa
record-how = Poyang'ana kulikonse tulutsani mbatata zonse. Zowola zikwirireni m'dzenje lakuya kapena zitentheni mpaka phulusa. Lembani zimene mwapeza, ndipo onetsani khadi ili kwa mlangizi wanu wa zaulimi.
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

ask-mark-plants = M'munda mwanu, zomera zamphamvu kwambiri ndi ziti?
ask-gather-sand = Ndani ali ndi mchenga wouma pafupi? Tingaukumbe bwanji mosamala?
ask-check-plants = Kuno, chomera chodwala chimaoneka bwanji?
ask-cut-vines = Mukasiya tsinde lalifupi kwambiri, chingachitike n'chiyani?
ask-harvest = Mudzakumba bwanji osavulaza mbatata?
ask-fill-container = Kunyumba kwanu, malo ozizira ndi ouma, kutali ndi ana ndi ziweto, ali kuti?
ask-monthly-check = Mbatata zikawonongeka mumaona chiyani? Mudzazikwirira kuti?
ask-prepare-bed = Madzi ali kuti? Ndani aziyang'anira ana?
ask-last-check = Mbatata zanu zingati zaphukira?
ask-plant-bed = N'chiyani chingakuchedwetseni kubzala?
ask-water-bed = Mukachokapo, ndani azithirira?
ask-cut-for-planting = Mumadziwa bwanji kuti mvula yayambadi?
ask-plant-field = Mudzayambira kubzala mbali iti ya munda?
ask-first-harvest = Mudzasunga nthambi ziti za nyengo ikubwerayi?

## Channels: cue sheets for phones and meetings

# doubt: the term for active speech level, a figure for sound technicians.
cue-active-level = Mphamvu ya mawu oyankhulidwa
cue-chapter = Mutu
cue-talk = nthawi yokambirana, masekondi { $seconds }

## The guide for a meeting

# doubt: "Zoonetsa"; "mapazi" for steps as a heading, short as it is.
guide-show = Zoonetsa
guide-ask = Funsani
