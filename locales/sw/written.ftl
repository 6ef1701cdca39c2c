### Kiswahili, rasimu: maneno ya karatasi. Bado hayajasomwa na msemaji fasaha.
### Draft, as printed on sheets. glossary.toml holds the words of the trade, one for each thing.
### The reader is addressed as "wewe"; a group as "ninyi" where it works together.

## Words of the sheet itself

sheet-title = Viazi vitamu: kutoka mavuno haya hadi mvua zijazo
sheet-for = Kwa
sheet-place = Mahali
sheet-rains = Mvua zinatarajiwa kuanza
# doubt: "shamba la sasa" for the old field, which is still standing; "shamba la zamani" would sound abandoned.
sheet-harvest = Kuvuna shamba la sasa
sheet-amounts = Unachohitaji
sheet-steps = Cha kufanya, na lini
sheet-cautions = Tahadhari
sheet-when = Lini
# Between a label and its value, with the space before it that the language wants.
colon = :
semicolon = ;
sheet-page = Ukurasa
sheet-group = Kikundi
sheet-together = Pamoja
sheet-consequences = Kuhusu mpango wako
sheet-tip = Vizuri kujua
# The day the sheet was made, and that older ones hold no more.
sheet-made = Karatasi hii ni ya tarehe { DAY($today) }. Za awali za msimu huu hazitumiki tena.
step-done = Imefanyika
step-now = Sasa
step-next = Inayofuata
status-draft = Rasimu: maneno haya bado hayajasomwa na msemaji fasaha wa Kiswahili.
status-read = Maneno yamesomwa na msemaji fasaha, lakini bado hayajaidhinishwa.
status-approved = Maneno yameidhinishwa.

## Words of the cue sheet

cue-title = Ujumbe
cue-language = Lugha
cue-voice = Sauti
cue-rights = Haki za matumizi
cue-status = Hali ya sauti
cue-length = Urefu wa muda
cue-loudness = Ukubwa wa sauti
# doubt: "kilele halisi" for true peak, a term of sound engineers, who often use the English words.
cue-true-peak = Kilele halisi cha sauti
cue-from = Kuanzia
cue-to = Hadi
cue-words = Maneno
cue-clip = Kipande cha sauti
voice-stand-in = ya muda tu
voice-draft = imerekodiwa, bado haijaidhinishwa
voice-approved = imeidhinishwa
voice-stand-in-remark = Hii ni sauti ya muda iliyotengenezwa na mashine. Itabadilishwa na sauti ya mtu.

## Amounts

amount-plants = Mimea ya kuwekewa vijiti
amount-plants-each = Mimea ya kuwekewa vijiti na kila mwanachama
amount-roots = Viazi vya kuhifadhi
amount-cuttings = Vipando vya shamba
amount-first-cuttings = Vipando vinavyotarajiwa ukikata mara ya kwanza
amount-containers = Vyombo
amount-layers = Matabaka ya viazi katika kila chombo
amount-roots-per-layer = { $layer_widths ->
    [uneven] Viazi katika tabaka la chini kabisa, visizidi
   *[even] Viazi katika kila tabaka, visizidi
 }
amount-roots-top-layer = Viazi katika tabaka la juu kabisa, visizidi
amount-bundles = Mafungu ya vipando
amount-lining = Karatasi ya kutandika vyombo
amount-water-total = Maji ya kitalu, msimu wote
amount-sand = Mchanga mkavu
amount-loads = Mizigo ya mchanga ya kubeba
amount-bed = Kitalu
amount-strips = Sehemu za kitalu, zenye njia ya { MEASURE($path_m, unit: "metre") } kati yake
amount-water = Maji ya kitalu kikijaa majani, kwa siku
amount-jerrycans = Madumu ya maji kitalu kikijaa majani, kwa siku

first-cuttings-value = { $first_cuttings_low } hadi { $first_cuttings_high }{ $plan_by ->
    [practice] , kwa mazoea ya kawaida
   *[print] , kwa siku za ukuaji
 }
sand-value = { MEASURE($sand_l, unit: "litre") }, kama { MEASURE($sand_kg, unit: "kilogram") }
bed-value = { MEASURE($bed_length_m, unit: "metre") } × { MEASURE($bed_width_m, unit: "metre") }
strips-value = { $strips }, kila moja { MEASURE($strip_length_m, unit: "metre") } × { MEASURE($strip_width_m, unit: "metre") }
water-value = { MEASURE($water_l, unit: "litre") }
water-total-value = { MEASURE($water_total_l, unit: "litre") }
bundles-value = { MEASURE($bundles, unit: "bundle") } { $bundles ->
    [one] la
   *[other] ya
 } vipando { $bundle_size }
lining-value = m² { $lining_m2 }
roots-for-zone = { $roots } (idadi ya mfano; ongeza au punguza kwa ukubwa wa kila shamba)

## Dates and units

date = { $day } { month } { $year }
date-short = { $day } { month-short }
week = wiki ya { $week ->
    [1] kwanza
    [2] pili
    [3] tatu
    [4] nne
   *[5] mwisho
 } ya { month }
span = { DAY($from) } – { DAY($to) }
span-two-days = { DAY($from) } – { DAY($to) }
span-day = { WEEKDAY($from) }, { DAY($from) }
unit-kilogram = kilo { $n }
unit-litre = lita { $n }
unit-metre = mita { $n }
# doubt: "sm" for sentimita, as school books and the drawings have it; the columns of the sheet are narrow.
unit-centimetre = sm { $n }
# doubt: "kiganja pamoja na vidole" for a hand from wrist to fingertips as a measure; "kiganja" alone is the palm, too short.
unit-hand = { $n ->
    [one] kiganja { $n } pamoja na vidole
   *[other] viganja { $n } pamoja na vidole
 }
# doubt: "kipingili cha dole gumba" for the upper joint of a thumb (also "pingili", class 9/10); "kifundo" is kept for a vine.
unit-thumb-joint = { $n ->
    [one] kipingili { $n } cha dole gumba
   *[other] vipingili { $n } vya dole gumba
 }
unit-bucket = ndoo { $n }
unit-jerrycan = { $n ->
    [one] dumu { $n }
   *[other] madumu { $n }
 }
unit-bundle = { $n ->
    [one] fungu { $n }
   *[other] mafungu { $n }
 }
# Counted from a local event of the case, such as a feast; $event is its name, $days how far.
event-before = siku { $days } kabla ya { $event }
event-on = siku ya { $event }
event-after = siku { $days } baada ya { $event }

## What must never be lost. The messages below refer to these sentences, each length to one of them.

# doubt: "viteketeze" for burning roots up; "choma" alone also means to roast for eating.
-bad-roots = Kiazi kikiwa kimeoza, kikiwa na ukungu, au kikiwa na matundu ya wadudu, usikile kamwe. Usiwape wanyama kiazi hicho kamwe, na usikipande kamwe. Kifukie kwenye shimo refu, au ukiteketeze kwa moto.
-bad-roots-short = Kuoza, ukungu au matundu ya wadudu: kamwe usile, usiwape wanyama, usipande. Fukia chini sana au teketeza.
-bad-roots-sms = Viazi vitamu vilivyooza, vyenye ukungu au matundu ya wadudu: kamwe usile, usiwape wanyama, usipande, hata ukiona sehemu nzuri. Fukia chini sana au teketeza.
-take-nothing = Usichukue viazi wala marando kutoka kwenye mmea kama huo.
-take-nothing-short = Usichukue chochote kwenye mmea kama huo.
# doubt: "ukingo uliosimama wima" for a steep bank; a local word may be better.
-dry-riverbed = Chukua mchanga pale tu sheria za eneo lako zinaporuhusu. Mtoni, chukua mchanga ikiwa tu mto umekauka. Usichimbe kamwe karibu na ukingo uliosimama wima, kwa sababu unaweza kuporomoka na kukufukia.
-dry-riverbed-short = Kamwe usichimbe mtoni penye maji wala karibu na ukingo wima.
-children-water = Funika maji uliyohifadhi, na uwazuie watoto wasiyakaribie.
-children-water-short = Funika maji; watoto wakae mbali.
-keep-dry = Usimwagie mchanga maji kamwe, kwa sababu mchanga wenye unyevunyevu huozesha viazi.
-keep-dry-short = Kamwe usimwagie mchanga maji.
-moist-soil = Usipande shambani hadi udongo uwe na unyevu, kwa sababu vipando hufa kwenye udongo mkavu.
-moist-soil-short = Usipande shambani hadi udongo uwe na unyevu.

## Opening and closing

opening = { $kind ->
    [zone] Mpango huu ni wa kila mkulima wa eneo hili. Vipimo vyake ni vya viazi { $roots }. Shamba likiwa kubwa zaidi, ongeza. Likiwa dogo zaidi, punguza. Tarehe za kazi za kabla ya mavuno ni za mashamba yanayochimbwa kwanza. Ukichimba baadaye, fanya kazi hizo baadaye pia, kwa idadi ileile ya siku.
   *[other] { $season ->
        [after] Mvua zilianza tarehe { DAY($rains) }. Tarehe za mpango huu zimehesabiwa kuanzia siku hiyo.
       *[before] Mpango huu umehesabiwa kurudi nyuma kutoka mwanzo wa mvua. Kwa kawaida mvua huanza karibu na tarehe { DAY($rains) }.
     }
 }
closing = Ushauri wa afisa ugani wako ukitofautiana na karatasi hii, fuata ushauri wa afisa ugani.
    .sms = Afisa ugani wako akikuambia tofauti, fuata anachosema afisa ugani.

## Steps: title, text (.text), the same in a few words (.short), picture in words (.alt), what a meeting is shown (.show) and asked (.ask), text message on a phone (.sms: two messages at most)

# doubt: "viazi vya mbegu" for the roots kept as planting material.
# doubt: "mimea yenye vijiti" (plants with sticks) for the marked plants: the stick is the mark.
mark-plants = { $plants ->
    [one] Chagua mmea { $plants } wenye afya
   *[other] Chagua mimea { $plants } yenye afya
 }
    .short = Yenye nguvu, majani makubwa na safi. Chomeka kijiti kando ya kila mmea.
    .text = { $kind ->
        [group] Chagueni mimea ya viazi vitamu yenye afya, itakayotoa viazi vya mbegu. { $plants ->
            [one] Pamoja, wekeni kijiti kwenye mmea { $plants }.
           *[other] Pamoja, wekeni vijiti kwenye mimea { $plants }.
         } { $plants_each ->
            [one] Kila mmoja wenu aweke kijiti kwenye mmea { $plants_each }.
           *[other] Kila mmoja wenu aweke vijiti kwenye mimea { $plants_each }.
         } Chagueni mimea yenye nguvu tu, yenye majani makubwa na safi, isiyo na dalili ya ugonjwa. Chomekeni kijiti ardhini kando ya kila mmea.
       *[other] Chagua mimea ya viazi vitamu yenye afya, itakayotoa viazi vya mbegu. { $plants ->
            [one] Weka kijiti kwenye mmea { $plants }.
           *[other] Weka vijiti kwenye mimea { $plants }.
         } Chagua mimea yenye nguvu tu, yenye majani makubwa na safi, isiyo na dalili ya ugonjwa. Chomeka kijiti ardhini kando ya kila mmea.
     } { $roots ->
        [one] Kwa jumla kitapatikana kama kiazi { $roots } cha kuhifadhi.
       *[other] Kwa jumla vitapatikana kama viazi { $roots } vya kuhifadhi.
     }
    .alt = Mkono unachomeka kijiti ardhini kando ya mmea wenye nguvu.
    .show = Rando lenye afya na lingine lenye ugonjwa, na kijiti.
    .ask = Unatofautishaje mmea wenye afya na mmea wenye ugonjwa?
    .sms = { BRIEF($first) }: { $plants ->
        [one] chagua mmea { $plants } wa viazi vitamu wenye afya na nguvu, kwa
       *[other] chagua mimea { $plants } ya viazi vitamu yenye afya na nguvu, kwa
     } viazi vya mbegu. Majani makubwa na safi, bila ugonjwa. Chomeka kijiti kando ya kila mmea.
# doubt: "mchanga wenye chembe kubwa" for coarse sand, "mchanga laini" for fine sand; some say "punje" or "chenga".
gather-sand = Leta mchanga, uukaushe
    .short = Safi, wenye chembe kubwa: { MEASURE($buckets, unit: "bucket") } { $buckets ->
        [one] ya
       *[other] za
     } { MEASURE($bucket_l, unit: "litre") }. Ukaushe chini ya paa, upoe. { -dry-riverbed-short }
    .text = Leta mchanga kwa ajili ya viazi vyako vitamu. Unahitaji kama { MEASURE($buckets, unit: "bucket") } { $buckets ->
        [one] ya
       *[other] za
     } { MEASURE($bucket_l, unit: "litre") }, uzito wa { MEASURE($sand_kg, unit: "kilogram") }. Chukua mchanga safi wenye chembe kubwa unazoweza kuzihisi kwa vidole. Utandaze chini ya paa hadi ukauke kabisa, na uutumie ukishapoa tu. Mchanga laini, wenye unyevunyevu, au wenye joto huozesha viazi. Usibebe zaidi ya { MEASURE($load_kg, unit: "kilogram") } kwa mara moja, kwa sababu mchanga ni mzito. { -dry-riverbed }
    .alt = Chini ya paa, mkono wenye bakuli unachota mchanga mkavu kutoka kwenye lundo na kuutia kwenye ndoo ndogo.
    .show = Mchanga mkavu wenye chembe kubwa, na mchanga laini wenye unyevunyevu.
    .ask = Mchanga wenye chembe kubwa uko wapi hapa karibu, na je, ni salama kuchimba pale?
    .sms = Kufikia { BRIEF($last) }: leta mchanga wa viazi vitamu, { MEASURE($buckets, unit: "bucket") } { $buckets ->
        [one] ya
       *[other] za
     } { MEASURE($bucket_l, unit: "litre") }, safi, wenye chembe kubwa. Usibebe zaidi ya { MEASURE($load_kg, unit: "kilogram") } kwa mara moja. Ukaushe chini ya paa, uache upoe. { -dry-riverbed-short }
# doubt: "alama ya vema" (tick) and "X ya kukataza" in the words for pictures.
check-plants = Kagua tena penye vijiti
    .short = Majani madogo, yaliyojikunja au yenye madoa, marando dhaifu, au matundu kwenye shina karibu na ardhi? Ng'oa kijiti. { -take-nothing-short }
    .text = Kagua tena mimea ya viazi vitamu yenye vijiti. Angalia kama kuna majani madogo, yaliyojikunja au yenye madoa. Angalia pia kama kuna marando dhaifu, au matundu kwenye shina karibu na ardhi. Ukiona dalili yoyote kati ya hizi, au kama huna uhakika, ng'oa kijiti cha mmea huo. { -take-nothing }
    .alt = Mmea wenye afya una alama ya vema na unabaki na kijiti chake; mkono unang'oa kijiti cha mmea wenye ugonjwa, wenye majani yenye madoa, yaliyokunjamana.
    .show = Majani madogo, yaliyojikunja na yenye madoa.
    .ask = Utafanya nini na mmea wenye kijiti ambao umeugua?
    .sms = { BRIEF($first) }: kagua mimea ya viazi vitamu yenye vijiti. Majani madogo, yaliyojikunja au yenye madoa, marando dhaifu, matundu kwenye shina karibu na ardhi, au huna uhakika? Ng'oa kijiti. { -take-nothing-short }
# doubt: "marando" for vines is Tanzanian and coastal; it is explained here once for those who say otherwise.
cut-vines = Kata marando penye vijiti
    .short = Acha shina la { MEASURE($stem_cm, unit: "centimetre") }: { MEASURE($stem_hands, unit: "hand") }.
    .text = Kata marando, yaani mashina yanayotambaa, ya mimea ya viazi vitamu yenye vijiti. Acha shina lenye urefu wa { MEASURE($stem_cm, unit: "centimetre") } juu ya ardhi, kama { MEASURE($stem_hands, unit: "hand") }. Hapo ganda la viazi huwa gumu, na viazi hukaa muda mrefu zaidi bila kuharibika.
    .alt = Kisu kinakata marando, na mashina yanayobaki yana urefu wa kiganja pamoja na vidole vilivyosimamishwa kando yake.
    .show = Kiganja pamoja na vidole, vikinyooshwa kando ya shina.
    .ask = Kwa nini ganda la viazi linahitaji muda ili liwe gumu?
    .sms = { BRIEF($first) }: kata marando ya mimea ya viazi vitamu yenye vijiti. Acha shina la { MEASURE($stem_cm, unit: "centimetre") } juu ya ardhi. Hapo ganda la viazi huwa gumu.
harvest = { $roots ->
    [one] Chimba, chagua kiazi { $roots }
   *[other] Chimba, chagua viazi { $roots }
 }
    .short = Udongo mkavu tu. Vizima, kama kiganja pamoja na vidole. Kamwe usioshe. Vilivyokatwa na jembe pika mapema. { -bad-roots-short }
    .text = Chimba viazi vitamu vya mimea yenye vijiti. Udongo ukiwa umelowa, subiri hadi ukauke. Inua viazi taratibu, ili jembe lisikate kiazi chochote. Chagua viazi vyenye urefu kama wa kiganja pamoja na vidole, na ganda zima. Unahitaji { $roots ->
        [one] kiazi
       *[other] viazi
     } { $roots }. Pangusa udongo kwa mkono, na usivioshe kamwe. Viweke kivulini kwa saa kadhaa. Usihifadhi viazi vilivyokatwa na jembe, bali vipike mapema iwezekanavyo. { -bad-roots }
    .alt = Mkono unainua mmea wenye viazi vizima kutoka kwenye udongo uliolegezwa, na jembe kando yake.
    .show = Kiazi cha ukubwa wa kati chenye ganda zima, na kingine kilichokatwa na jembe.
    .ask = Viazi vipi hapa ni vya kuhifadhi, na vipi ni vya kupika mapema?
    .sms = { BRIEF($first) }: udongo ukikauka, chimba viazi vitamu penye vijiti. Kivulini saa kadhaa; hifadhi { $roots ->
        [one] { $roots } kizima, usikioshe.
       *[other] { $roots } vizima, usivioshe.
     } Vilivyokatwa na jembe pika mapema. { -bad-roots-sms }
fill-container = Panga viazi mchangani
    .short = Mchanga mkavu: chini { MEASURE($base_cm, unit: "centimetre") }, { $layers ->
        [1] {""}
       *[other] katikati { MEASURE($layer_cm, unit: "centimetre") },{" "}
     }juu { MEASURE($top_cm, unit: "centimetre") }. Viazi visigusane. Bila kifuniko. { -keep-dry-short }
    .text = Panga viazi vyako vitamu kwenye mchanga mkavu. { $containers ->
        [one] Unahitaji chombo { $containers }{ $container_kinds ->
            [one] , chenye ujazo wa kama { MEASURE($container_l, unit: "litre") }.
           *[several] .
         }
       *[other] Unahitaji vyombo { $containers }{ $container_kinds ->
            [one] , kila kimoja chenye ujazo wa kama { MEASURE($container_l, unit: "litre") }.
           *[several] .
         }
     } Tumia beseni, chungu, ndoo au kikapu kilichosukwa bila mianya. Usitumie gunia kamwe. Jaza chombo mahali kitakapokaa, penye ubaridi, pakavu na penye kivuli, mbali na watoto, wanyama na mvua. Tandika karatasi ndani yake, chini na pembeni. Tandaza mchanga wenye unene wa { MEASURE($base_cm, unit: "centimetre") }, kama { MEASURE($base_joints, unit: "thumb-joint") }. { $layer_widths ->
        [uneven] Katika tabaka la kwanza, la chini kabisa, panga viazi visivyozidi { $roots_per_layer }.
       *[even] Katika kila tabaka, panga viazi visivyozidi { $roots_per_layer }.
     } Kiazi kisiguse kingine, wala kuta za chombo. { $layers ->
        [1] Vifunike kwa mchanga wenye unene wa { MEASURE($top_cm, unit: "centimetre") }.
       *[other] Vifunike kwa mchanga wenye unene wa { MEASURE($layer_cm, unit: "centimetre") }, kisha panga viazi vingine juu yake. Fanya hivyo hadi chombo kiwe na matabaka { $layers } ya viazi.{ $layer_widths ->
            [uneven] {" "}{ $layers ->
                [2] Katika tabaka la mwisho, la juu kabisa, panga viazi visivyozidi { $roots_top }.
               *[other] Katika matabaka ya katikati, panga viazi kadiri nafasi inavyoruhusu. Katika tabaka la mwisho, la juu kabisa, panga viazi visivyozidi { $roots_top }.
             }
           *[even] {""}
         } Lakini tabaka la mwisho, lifunike kwa mchanga wenye unene wa { MEASURE($top_cm, unit: "centimetre") }.
     } Mchanga mwingi wa juu huzuia panya, wadudu na kuku. Usifunike chombo kwa kifuniko. { -keep-dry }
    .alt = Beseni lililokatwa kuonyesha ndani: mchanga, viazi visivyogusana, mchanga, viazi, na mchanga mwingi juu; mkono unanyunyiza mchanga.
    .show = Beseni, mchanga mkavu na viazi vichache: mtu mmoja apange tabaka la kwanza.
    .ask = Kwa nini viazi visigusane?
    .sms = { BRIEF($first) }: panga viazi vitamu kwenye mchanga mkavu, visigusane. Mchanga: chini { MEASURE($base_cm, unit: "centimetre") }, { $layers ->
        [1] {""}
       *[other] kati ya matabaka { MEASURE($layer_cm, unit: "centimetre") },{" "}
     }juu { MEASURE($top_cm, unit: "centimetre") }. Bila kifuniko. Mbali na mvua, watoto na wanyama. Usiinue kamwe chombo kilichojaa. { -keep-dry-short }
# doubt: "machipukizi" for the sprouts on a root; what grows in the bed is "mimea".
# doubt: "X ya kukataza" for a crossed-out picture; "alama" is kept for the tick.
monthly-check = Kagua kila kiazi
    .short = Sugua machipukizi yatoke, panga tena kwenye mchanga mkavu. { -bad-roots-short }
    .text = Toa viazi vitamu vyote ulivyohifadhi, na utazame kimoja kimoja. { -bad-roots } Viazi vizuri, viondolee machipukizi kwa kuyasugua. Vipange tena kwenye mchanga mkavu, kwa njia ileile. Andika vimebaki vingapi. Kisha usiviguse hadi ukaguzi unaofuata.
    .alt = Mwezi wa angani mara tatu, ishara kwamba mwezi mmoja umepita; mkono unatoa kiazi kwenye beseni; kiazi kilichooza kiko kando, kina X ya kukataza.
    .show = Kiazi kilichooza, kama kipo, na jinsi ya kupanga tena.
    .ask = Utafanya nini na kiazi kilichooza, na kwa nini wanyama wasipewe?
    .sms = { BRIEF($first) }: toa viazi vitamu vyote mchangani, kagua kimoja kimoja. Viazi vizuri: ondoa machipukizi, panga tena kwenye mchanga mkavu, andika vilivyobaki. { -bad-roots-sms }
# doubt: "sehemu ndefu" for the strips of a bed that has paths between them; a local word may be better.
prepare-bed = Tengeneza kitalu
    .short = Karibu na maji: { MEASURE($bed_length_m, unit: "metre") } kwa { MEASURE($bed_width_m, unit: "metre") }. Tifua, weka uzio. { -children-water-short }
    .text = Tengeneza kitalu cha viazi vyako vitamu. Chagua mahali karibu na maji. Urefu wa kitalu uwe { MEASURE($bed_length_m, unit: "metre") }, na upana wake { MEASURE($bed_width_m, unit: "metre") }. { $bed_parts ->
        [strips] Kitalu kiwe na sehemu ndefu { $strips }, kila moja yenye upana wa { MEASURE($strip_width_m, unit: "metre") }. Acha njia za kupita kati ya sehemu hizo.{" "}
       *[one] {""}
     }Tifua udongo vizuri. Zungushia kitalu uzio, ili mbuzi na kuku wasiingie. { -children-water }
    .alt = Mwanamume anatifua udongo wa kitalu kwa jembe; nyuma yake kuna uzio.
    .show = Mahali karibu na maji, na ukubwa wa kitalu kwa hatua.
    .ask = Ni nini kitazuia mbuzi na kuku?
    .sms = Kufikia { BRIEF($last) }: tengeneza kitalu cha viazi vitamu, { MEASURE($bed_length_m, unit: "metre") } kwa { MEASURE($bed_width_m, unit: "metre") }, karibu na maji. Weka uzio. { -children-water-short }
last-check = Kagua mara ya mwisho
    .short = Machipukizi yabaki; vizuri kitaluni. { -bad-roots-short }
    .text = Toa viazi vitamu vyote ulivyohifadhi, na utazame kimoja kimoja. { -bad-roots } Safari hii, acha machipukizi yabaki. Sasa peleka viazi vizuri kitaluni.
    .alt = Mkono unatoa kiazi chenye machipukizi kwenye beseni; mshale unaelekea kwenye kitalu.
    .show = Kiazi chenye machipukizi.
    .ask = Kwa nini safari hii machipukizi hayaondolewi?
    .sms = { BRIEF($first) }: ukaguzi wa mwisho wa viazi vitamu ulivyohifadhi. Machipukizi yabaki: vizuri viende kitaluni sasa. { -bad-roots-sms }
# doubt: "chepechepe" for soil that is too wet; "majimaji" in some places.
plant-bed = Panda viazi kitaluni
    .short = Mwagilia kitalu. { $bed_rows ->
        [one] Mstari { $bed_rows },
       *[other] Mistari { $bed_rows } kila { MEASURE($spacing_cm, unit: "centimetre") },
     } { $row_roots ->
        [one] kiazi { $row_roots } kila mstari,
       *[other] viazi { $row_roots } kila mstari,
     } udongo { MEASURE($soil_cm, unit: "centimetre") } juu. Unyevu, si chepechepe.
    .text = Panda viazi vitamu kitaluni. Usisubiri mvua, bali mwagilia kitalu hadi kiwe na unyevu. { $bed_rows ->
        [one] Tengeneza mstari { $bed_rows }, kufuata urefu wa kitalu.
       *[other] Tengeneza mistari { $bed_rows }, kufuata urefu wa kitalu. Acha { MEASURE($spacing_cm, unit: "centimetre") } kati ya mstari na mstari.
     } { $row_roots ->
        [one] Katika kila mstari, weka kiazi { $row_roots }, na uache machipukizi yabaki.
       *[other] Katika kila mstari, panga viazi kama { $row_roots }. Umbali kutoka kiazi kimoja hadi kingine uwe { MEASURE($along_row_cm, unit: "centimetre") }. Acha machipukizi yabaki.
     } Vifunike kwa udongo wenye unene wa { MEASURE($soil_cm, unit: "centimetre") }. Mwagilia tena taratibu. Udongo uwe na unyevu, usiwe chepechepe, kwa sababu udongo chepechepe huozesha viazi.
    .alt = Viazi vimelazwa katika mstari; mkono unavifunika kwa udongo.
    .show = Nafasi kati ya mistari, kwa kijiti chenye urefu unaofaa.
    .ask = Je, tusubiri mvua kabla ya kupanda kitalu?
    .sms = Kuanzia { BRIEF($first) }: mwagilia kitalu cha viazi vitamu, usisubiri mvua. Laza viazi katika { $bed_rows ->
        [one] mstari { $bed_rows },
       *[other] mistari { $bed_rows }, { MEASURE($spacing_cm, unit: "centimetre") } kati yake,
     } udongo { MEASURE($soil_cm, unit: "centimetre") } juu. Unyevu, si chepechepe.
# doubt: "dumu" for a jerrycan; "mtungi" in parts of Kenya.
water-bed = Mwagilia kitalu
    .short = { $shoots ->
        [before] Hadi mimea ichomoze: { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
            [1] kila siku
           *[other] kila baada ya siku { $water_every_days }
         }.{" "}
       *[after] {""}
     }Kikijaa majani: kama { MEASURE($water_l, unit: "litre") } kwa siku, { MEASURE($jerrycans, unit: "jerrycan") }. Unyevu, si chepechepe. { -children-water-short }
    .text = Mwagilia kitalu chako cha viazi vitamu kuanzia tarehe { DAY($first) }. { $shoots ->
        [before] Hadi mimea ichomoze, mwagilia kama { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
            [1] kila siku
           *[other] kila baada ya siku { $water_every_days }
         }, yaani kama { MEASURE($jerrycans_young, unit: "jerrycan") } { $jerrycans_young ->
            [one] la
           *[other] ya
         } { MEASURE($jerrycan_l, unit: "litre") }. Udongo uwe na unyevu, usiwe chepechepe, kwa sababu udongo chepechepe huozesha viazi. Majani yakiendelea kukua, mwagilia kila siku, na uongeze maji kidogo kila wiki.{" "}
       *[after] {""}
     }Majani ya viazi yakifunika kitalu, mwagilia kama { MEASURE($water_l, unit: "litre") } kila siku, yaani kama { MEASURE($jerrycans, unit: "jerrycan") } { $jerrycans ->
        [one] la
       *[other] ya
     } { MEASURE($jerrycan_l, unit: "litre") }. Siku za joto na upepo, ongeza maji. Mvua ikitosha kuupa udongo unyevu, acha kumwagilia. { -children-water }
    .alt = Mkono unamwaga maji ya dumu kwenye kitalu chenye machipukizi.
    .show = Dumu la maji, na jinsi mimea michanga inavyohitaji maji kidogo.
    .ask = Nani ataleta maji, na nani atawaangalia watoto pale?
    .sms = Kuanzia { BRIEF($first) }: mwagilia kitalu cha viazi vitamu. { $shoots ->
        [before] Hadi mimea ichomoze { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
            [1] kila siku
           *[other] kila baada ya siku { $water_every_days }
         }, majani yakifunika kitalu { MEASURE($water_l, unit: "litre") } kwa siku.
       *[after] Majani yakifunika kitalu { MEASURE($water_l, unit: "litre") } kwa siku.
     } Siku za joto ongeza. Mvua ikitosha kuupa udongo unyevu, acha. { -children-water-short }
# doubt: "vifundo vya majani" for the joints of a vine where leaves come out; some say "macho" or "pingili".
# doubt: "vipando" for cuttings ("vipandikizi" is heard too).
cut-for-planting = Mvua ikishazama ardhini, kata marando
    .short = Shamba likiwa na unyevu hadi kina cha kidole kizima: kata marando yenye afya, { MEASURE($cutting_cm, unit: "centimetre") }, vifundo { $nodes }. Acha shina la { MEASURE($stub_cm, unit: "centimetre") }. Panda kufikia kesho yake.
    .text = Kabla ya kukata marando ya viazi vitamu, subiri mvua iupe udongo wa shamba unyevu, hadi kina cha kidole kizima. Kisha kata marando kitaluni. Chukua marando yenye afya tu, yasiyo na majani yenye madoa, yaliyojikunja au madogo sana. Vipande vya kupanda, yaani vipando, viwe na urefu wa { MEASURE($cutting_cm, unit: "centimetre") }, kama { MEASURE($cutting_hands, unit: "hand") }, na vifundo vya majani visivyopungua { $nodes }. Acha shina lenye urefu wa { MEASURE($stub_cm, unit: "centimetre") } juu ya ardhi, ili lichipue tena. { $plan_by ->
        [practice] Kwa mazoea ya kawaida, ukikata mara ya kwanza tarajia kama vipando
       *[print] Ukikata mara ya kwanza, tarajia kama vipando
     } { $first_cuttings_low } hadi { $first_cuttings_high }. Viweke kivulini, na uvipande siku hiyohiyo, au siku inayofuata.
    .alt = Mkono mmoja unashika rando la kitalu, mwingine unalikata kwa kisu; mashina mafupi yanabaki.
    .show = Kipando chenye urefu unaofaa kando ya kiganja pamoja na vidole: hesabu vifundo vyake.
    .ask = Ni kwenye mimea gani tusikate vipando?
    .sms = Shamba la viazi vitamu likiwa na unyevu wa mvua hadi kina cha kidole kizima: kata marando yenye afya, { MEASURE($cutting_cm, unit: "centimetre") }, { $nodes ->
        [one] kifundo { $nodes } cha jani
       *[other] vifundo { $nodes } vya majani
     }. Acha shina la { MEASURE($stub_cm, unit: "centimetre") }. Weka kivulini, panda kufikia kesho yake.
# doubt: "tuta la duara" for a mound; a local word may be better.
plant-field = Panda shambani
    .short = { -moist-soil-short } Fukia vifundo viwili au vitatu. Baada ya wiki mbili, panda tena vilipokufa.
    .text = Panda shamba la viazi vitamu mvua ikishaupa udongo unyevu, hadi kina cha kidole kizima. { $layout ->
        [own] Kila mkulima apande kwenye matuta yake, marefu au ya duara.
        [mounds] Kwenye kila tuta la duara, panda { $on_mound ->
            [one] kipando
           *[other] vipando
         } { $on_mound }. Kati ya tuta na tuta, acha { MEASURE($between_cm, unit: "centimetre") }.
       *[ridges] Kwenye tuta, panda kipando kimoja kila baada ya { MEASURE($along_cm, unit: "centimetre") }. Kati ya tuta na tuta, acha { MEASURE($between_cm, unit: "centimetre") }.
     } Fukia vifundo viwili au vitatu vya kila kipando, na ncha yake ibaki juu ya udongo. { $kind ->
        [zone] Katika msimu wote wa kitalu, viazi { $roots } hutoa kama vipando { $cuttings }.
       *[other] Shamba zima linahitaji vipando { $cuttings }.
     } Baada ya wiki mbili, panda tena pale vipando vilipokufa. { -moist-soil }
    .alt = Chini ya wingu la mvua, mkono unapanda vipando kwa mstari; vifundo vya chini vimo ndani ya udongo.
    .show = Udongo wenye unyevu hadi kina cha kidole kizima, na kipando ambacho vifundo vyake vya chini vimefukiwa.
    .ask = Mvua imenyesha mara moja: je, tupande sasa? Nini kinaweza kuharibika?
    .sms = Kuanzia { BRIEF($first) }, mvua ikishazama ardhini: panda { $cuttings_to_plant ->
        [one] kama kipando { $cuttings_to_plant } cha
       *[other] kama vipando { $cuttings_to_plant } vya
     } viazi vitamu. Fukia vifundo viwili au vitatu vya kila kipando. { -moist-soil-short }
# doubt: "fukusi" for the sweet potato weevil; explained as "wadudu (fukusi)", since not everyone knows the name.
first-harvest = Jaribu viazi vya kwanza
    .short = Papasa, tafuta vikubwa vya kutosha kula. Chimba vyote kufikia { DAY($last_harvest) }: fukusi huvivamia.
    .text = Papasa udongo chini ya mimea michache, utafute viazi vitamu vikubwa vya kutosha kula. Viazi vilivyokomaa, usiviache muda mrefu kwenye udongo mkavu, kwa sababu wadudu waitwao fukusi huvivamia. Maliza kuchimba kufikia tarehe { DAY($last_harvest) }.
    .alt = Mkono unapapasa kiazi chini ya mmea; kando yake kuna chungu kwenye moto.
    .show = Jinsi ya kupapasa kiazi bila kung'oa mmea.
    .ask = Viazi vilivyokomaa vikibaki kwenye udongo mkavu, nini hutokea?
    .sms = Kuanzia { BRIEF($first) }: papasa udongo, tafuta viazi vitamu vilivyokomaa. Chimba vyote kufikia { BRIEF($last_harvest) }: wadudu (fukusi) huvivamia kwenye udongo mkavu.

## Tables: title, what it tells (.text), its picture in words (.alt)

# doubt: "kwa siku za ukuaji" where cuttings are counted by the days that the bed has grown.
table-cuts = Kukata marando kitaluni{ $plan_by ->
    [practice] , kwa mazoea ya kawaida
   *[print] , kwa siku za ukuaji
 }
    .text = { $cuts ->
        [1] Misimu hutofautiana, kwa hiyo tarajia vipando kati ya idadi ndogo na idadi kubwa.
       *[other] Misimu hutofautiana, kwa hiyo tarajia vipando kati ya idadi ndogo na idadi kubwa. Vipando vya baadaye ni vya sehemu iliyobaki ya shamba, na vya kujaza mapengo.
     }
table-ways = Unachoweza kufanya, kwa kulinganisha
    .text = Jedwali linaonyesha kila njia hutoa nini katika msimu wa kawaida, kufikia wakati mvua zinapokuja. Hakuna njia ya uhakika. Pia linaonyesha kila njia inahitaji nini, hata kama huna kiasi hicho.
way-value = { $way ->
    [one-bed] Kitalu kimoja, kikatwe mvua zikija
    [second-bed] Kitalu kidogo cha mapema; vipando vyake vikue kwenye bustani ya kumwagilia
    [vine-plot] Marando ya shamba la sasa kwenye bustani ya kumwagilia; usihifadhi viazi
    [as-planned] Acha viazi kwenye mchanga, kama ilivyopangwa
    [bed-now] Viazi vilivyo vizuri viende kitaluni sasa
    [bed-now-second-bed] Kitaluni sasa; vipando vyake vikue kwenye bustani ya kumwagilia
   *[buy] Pata marando yanayokosekana kwa mtu mwingine
 }
table-shares = Kila shamba linaleta nini
    .text = Kila mwenye shamba anaweka vijiti kwenye mimea yake, na kuleta viazi vyake kwenye hifadhi ya pamoja.
table-fields = Vipimo kwa ukubwa wa shamba
    .text = Tafuta shamba lako katika safu ya kwanza. Likiwa kati ya mistari miwili ya jedwali, vipimo vyake pia viko kati ya mistari hiyo.
# doubt: "mwanzo wa uongo" for a false start of the rains; some may say "mvua za kudanganya".
# doubt: "upau, pau" for the bars of a picture and "milia" for stripes; whether farmers know "upau".
table-planting-later = Ukisubiri kupanda
    .text = Ukipanda mvua kubwa ya kwanza inaponyesha, na kipindi kirefu cha ukavu kikifuata, mimea michanga inaweza kufa. Huo ni mwanzo wa uongo. Ukisubiri, zinabaki siku chache zaidi hadi mvua ziishe. Jedwali linaonyesha jinsi yote mawili yalivyokuwa katika miaka iliyopita. Si utabiri. Katika picha, pau zenye milia ni miaka yenye mwanzo wa uongo, na pau nyeusi ni siku hadi mvua ziishe.
    .alt = Kwa kila siku ya kuanza kupanda: upau wenye milia wa miaka yenye mwanzo wa uongo, na upau mweusi wa siku hadi mvua ziishe. Namba zimo katika jedwali lililo juu.
column-when = Lini
column-way = Unachofanya
column-farm = Shamba
column-area = Shamba, m²
column-cuttings = Vipando
column-cut = Vipando
cut-value = { $low }–{ $high }
column-plants = Mimea ya kuwekewa vijiti
column-roots = Viazi vya kuhifadhi
column-bed = Kitalu, m²
column-jerrycans = Madumu ya maji kwa siku
column-water = Maji kwa jumla, lita
column-trips = Safari za maji
column-from = Mvua ya kwanza kuanzia tarehe
column-false-starts = Miaka yenye mwanzo wa uongo
column-days-left = Siku hadi mvua ziishe, katika nusu ya miaka
false-starts-value = { $false_starts } kati ya { $years }

## Cautions: title, text (.text), the same in a few words (.short), picture in words (.alt); text message (.sms) where there is one

caution-rot = Viazi vibovu vina sumu, hata sehemu inayoonekana nzuri
    .short = { -bad-roots-short }
    .text = { -bad-roots } Usikikate, usikimenye wala usikipike ili kuokoa sehemu yake. Hata sehemu inayoonekana nzuri inaweza kuwa na sumu. Kama huna uhakika kuhusu kiazi, kihesabu kuwa kibovu.
    .alt = Kiazi kilichooza; chini yake kuna ng'ombe na chungu cha kupikia, vyote vina X ya kukataza.
    .sms = { -bad-roots-sms }
caution-virus = Mimea yenye ugonjwa
    .short = Majani madogo, yaliyojikunja au yenye madoa, marando dhaifu: { -take-nothing-short }
    .text = Majani madogo, yaliyojikunja au yenye madoa, na marando dhaifu, ni dalili kwamba mmea wa viazi vitamu ni mgonjwa. { -take-nothing }
    .alt = Mkono wenye kisu kwenye mmea wenye majani yenye madoa, yaliyokunjamana; picha ina X ya kukataza.
caution-cracks = Nyufa kwenye udongo
    .short = Wadudu (fukusi) huingia humo. Pandishia udongo juu.
    .text = Wadudu waitwao fukusi hufikia viazi vitamu kupitia nyufa za udongo. Ukiona ufa, pandishia udongo juu yake.
    .alt = Fukusi anaingia kwenye ufa wa tuta; chini yake kuna kiazi chenye matundu mengi.
caution-heavy-sand = Mchanga ni mzito
    .short = Usibebe zaidi ya { MEASURE($load_kg, unit: "kilogram") }. Usiinue kamwe chombo kilichojaa.
    .text = Usibebe zaidi ya { MEASURE($load_kg, unit: "kilogram") } kwa mara moja. Chombo cha kuhifadhia viazi vitamu, kijaze mahali kitakapokaa. Usikiinue kamwe kikiwa kimejaa.
    .alt = Mtu ameinama chini ya gunia kubwa, lenye X ya kukataza; mwanamke amesimama wima na ndoo ndogo, ana alama ya vema.
caution-riverbed = Mchanga wa mtoni
    .short = Pale tu sheria zinaporuhusu. { -dry-riverbed-short }
    .text = { -dry-riverbed }
    .alt = Ukingo wa mto uliosimama wima unamwangukia mtu anayechimba, picha ina X ya kukataza.
caution-water-children = Maji, watoto na wanyama
    .short = { -children-water-short } Weka uzio kwenye visima, mashimo na kitalu.
    .text = { -children-water } Weka uzio kuzunguka visima na mashimo. Zuia mbuzi na kuku wasiingie kitaluni.
    .alt = Pipa la maji lililofunikwa, nyuma ya uzio; mwanamke anamzuia mtoto nje yake.
caution-store-dry = Mchanga ubaki mkavu
    .short = { -keep-dry-short } Mchanga wenye unyevunyevu huozesha viazi.
    .text = Mchanga wa kuhifadhia viazi vitamu lazima ubaki mkavu, kuanzia siku ya kwanza hadi siku ya mwisho. { -keep-dry }
    .alt = Maji ya dumu yanaanguka juu ya beseni la viazi, picha ina X ya kukataza.
# doubt: "wastani" for averages of past years.
caution-forecast = Tarehe ni wastani, si utabiri
    .short = Mvua inaweza kuwahi au kuchelewa. { -moist-soil-short }
    .text = Tarehe hizi zinatokana na miaka iliyopita, wala si utabiri. Mwaka huu mvua inaweza kuwahi au kuchelewa. Tazama anga na udongo. { -moist-soil }
    .alt = Mwanamke mwenye vipando mkononi anatazama juu: jua, wingu na mvua.
caution-try-first = Anza na viazi vichache
    .short = Ni mpya kwako? Jaribu vichache, na utunze baadhi ya marando kwa njia uliyozoea.
    .text = Kama njia hii ni mpya kwako, anza na viazi vitamu vichache. Pia tunza baadhi ya marando yako kwa njia uliyozoea.
    .alt = Mwanamke kati ya chungu kidogo chenye viazi vichache na mmea unaoendelea kukua ardhini.

## What the plan leads to (.text: a sheet or a text message)

remark-late-work =
    .text = Baadhi ya kazi za viazi vitamu hazikufanywa kwa wakati, kwa hiyo tarehe zimehesabiwa upya. Fanya mara moja kile ambacho bado kinawezekana. Shamba linaweza kupandwa kuanzia { BRIEF($field_from) }.{ $fewer ->
        [0] {""}
        [one] {" "}Ukikata mara ya kwanza, tarajia upungufu wa kama kipando { $fewer }.
       *[other] {" "}Ukikata mara ya kwanza, tarajia upungufu wa kama vipando { $fewer }.
     }
remark-fast-loss =
    .text = Ukaguzi wa { BRIEF($day) } ulionyesha { $healthy ->
        [one] kiazi kitamu kizuri
       *[other] viazi vitamu vizuri
     } { $healthy } tu kati ya { $roots }. { $next ->
        [bed] Viazi vilivyo vizuri, viweke kitaluni sasa, na utafute marando zaidi ya kupanda.
       *[check] Tafuta sababu: mchanga wenye unyevunyevu au joto, viazi kukatwa au kugusana, au fukusi. Tumia mchanga mpya, mkavu. Kagua tena baada ya wiki mbili. Vingi zaidi vikioza, vilivyo vizuri viweke mara moja kwenye kitalu kilichomwagiliwa.
     }
remark-limited-at-hand =
    .text = { $limit ->
        [roots] Viazi vitamu ulivyo navyo vya kuhifadhi ni { $roots }.
        [plants] Viazi vitamu vya kuhifadhi kutoka kwenye mimea yako ni kama { $roots }.
       *[bed] Nafasi ya kitalu inatosha viazi vitamu visivyozidi { $roots }.
     } Shamba zima lingehitaji viazi { $wanted }. Viazi vyako vinatosha kupanda kama mita za mraba { $area_m2 } kati ya { $field_m2 }. Panda eneo dogo zaidi, au waombe majirani vipando.
remark-containers-too-small =
    .text = Nafasi ya vyombo inatosha viazi vitamu visivyozidi { $fit }, si { $roots }. Usivisongamanishe, kwa sababu viazi huoza vinapogusana. Utaweza kupanda kama mita za mraba { $area_m2 } kati ya { $field_m2 }. { $more ->
        [0] Ili kuhifadhi viazi zaidi, tafuta chombo kingine. La sivyo, panda eneo dogo zaidi.
        [one] Ili kuhifadhi viazi zaidi, tafuta chombo kimoja zaidi. La sivyo, panda eneo dogo zaidi.
       *[other] Ili kuhifadhi viazi zaidi, tafuta vyombo { $more } zaidi. La sivyo, panda eneo dogo zaidi.
     }
remark-sand-short =
    .text = Mchanga wako unatosha kufunika viazi vitamu visivyozidi { $fit }, si { $roots }. Usihifadhi viazi ambavyo mchanga haufuniki. Utaweza kupanda kama mita za mraba { $area_m2 } kati ya { $field_m2 }. Leta mchanga zaidi, { MEASURE($more_l, unit: "litre") }, au panda eneo dogo zaidi.
remark-water-limits =
    .text = Maji yako yanatosha kitalu cha viazi vitamu visivyozidi { $fit }, si { $roots }. Kitalu kisiwe kikubwa kuliko ilivyoelezwa hapa, na kibaki na unyevu. Utaweza kupanda kama mita za mraba { $area_m2 } kati ya { $field_m2 }. Kwa shamba zima, tafuta maji zaidi, { MEASURE($more_l, unit: "litre") } { $per ->
        [all] kwa jumla.
       *[day] kila siku.
     }
remark-hands-short =
    .text = Wanaobeba maji wanaweza kumwagilia kitalu cha viazi vitamu visivyozidi { $fit }, si { $roots }. Kitalu kisiwe kikubwa kuliko ilivyoelezwa hapa, na kibaki na unyevu. Utaweza kupanda kama mita za mraba { $area_m2 } kati ya { $field_m2 }. Kwa shamba zima, watu zaidi wabebe maji, au tengeneza kitalu karibu zaidi na maji.
# doubt: "matandazo" for mulch; "majani makavu ya kufunika udongo" is plainer and longer.
remark-water-short =
    .text = Kuanzia { BRIEF($from) }, huenda maji ya kitalu cha viazi vitamu yasitoshe. Tafuta maji zaidi. Matandazo na kivuli huokoa maji. Bila hivyo, tengeneza kitalu kidogo zaidi, na panda eneo dogo zaidi.
remark-water-heavy =
    .text = Siku isiyo na mvua, kitalu cha viazi vitamu kinahitaji { $trips ->
        [one] safari { $trips } ya
       *[other] safari { $trips } za
     } kuchota maji. Kubeba maji kutachukua muda wa kama saa { $hours } kila siku. Panga sasa nani atabeba, au tengeneza kitalu kidogo zaidi.
remark-rains-too-soon =
    .text = Mvua zinaweza kuanza karibu na { BRIEF($rains) }. Hiyo ni mapema mno baada ya mavuno, kwa hiyo usihifadhi viazi vitamu. Badala yake, panda marando ya shamba la sasa, au weka viazi kitaluni mara moja.
remark-storing-not-needed =
    .text = Miaka mingi, kiangazi hapa hudumu kama siku { $days }. Marando ya viazi vitamu yanaweza kutunzwa muda huo wote, kwa hiyo si lazima kuhifadhi viazi. Acha sehemu ya shamba la sasa bila kuvuna, au tunza marando kwenye bustani ndogo ya kumwagilia.
remark-long-in-sand =
    .text = Viazi vyako vitamu lazima vikae kwenye mchanga kwa siku { $days }. Hakuna aliyehesabu vingapi hubaki vizuri muda mrefu hivyo. Pia tunza marando karibu na maji, na umuulize afisa ugani wako.
remark-bed-late =
    .text = Kitalu cha viazi vitamu kitatoa vipando vya kwanza karibu na { BRIEF($cut) }, baada ya mvua kuanza. Mvua ikishazama ardhini, panda marando uliyo nayo. Baadaye kitalu kitatoa vipando vya sehemu iliyobaki ya shamba.
remark-field-waits =
    .text = Vipando vya kwanza vya viazi vitamu vinatosha kupanda kama mita za mraba { $area_m2 } kati ya { $field_m2 }. Sehemu iliyobaki itapandwa ukikata tena, kila baada ya siku { $least_days } hadi { $most_days }.
remark-cuttings-short =
    .text = Ukikata mara ya kwanza, kutakuwa na upungufu wa kama { $short ->
        [one] kipando { $short } cha viazi vitamu.
       *[other] vipando { $short } vya viazi vitamu.
     } Mvua ikishazama ardhini, panda kama mita za mraba { $area_m2 } kati ya { $field_m2 }. { $later_cuts ->
        [0] Vipando vya baadaye vitachelewa mno kukomaa, kwa hiyo waombe majirani marando mapema.
       *[other] Vipando vya baadaye vitatosha sehemu nyingine ya shamba. Unaweza pia kuwaomba majirani marando mapema.
     }
remark-rains-too-short =
    .text = Hapa mvua huwa za muda mfupi mno kwa viazi vitamu. { $known ->
        [case] Utakavyopanda huenda visikomae kabla ya mvua kuisha.
        [open] Hakuna anayejua ni mara ngapi viazi hukomaa kabla ya mvua kuisha.
       *[record] Viazi hukomaa kabla ya mvua kuisha katika { $of_100 ->
            [one] mwaka
           *[other] miaka
         } { $of_100 } tu kati ya 100.
     } { $helps ->
        [on-time] Tengeneza kitalu mapema, ili uweze kupanda mara tu mvua ikishazama ardhini.
        [quicker] Panda mara tu mvua ikishazama ardhini, na utafute aina inayokomaa mapema zaidi.
       *[neither] Panda mara tu mvua ikishazama ardhini, na utarajie viazi vidogo na vichache.
     }
remark-cuts-too-late =
    .text = Vipando vya viazi vitamu utakavyokata baadaye huenda vikachelewa mno. Vikipandwa kuanzia { BRIEF($from) }, viazi havitakomaa hadi karibu na { BRIEF($ripe) }. Miaka mingi mvua huisha kabla ya hapo. Usiviachie vipando hivyo sehemu ya shamba. Marando ya wakati huo yatumie kama malisho ya mifugo, au yaache yakue penye maji.
remark-rains-may-be-late =
    .text = Mvua zinaweza kuchelewa hadi { BRIEF($late) }. Mwagilia kitalu chako cha viazi vitamu hadi zije. { -moist-soil }
remark-years-without-rains =
    .text = Kati ya miaka { $judged } iliyopita, { $count ->
        [one] kuna mwaka { $count } ambao
       *[other] kuna miaka { $count } ambayo
     } mvua hazikuwahi kuanza vizuri. Katika mwaka kama huo, marando ya viazi vitamu yaliyopandwa kwa mvua ya kwanza yanaweza kufa. Bakiza baadhi ya viazi, au endelea kumwagilia sehemu ya kitalu.

## Good to know: one tip for each step that has one

advice-roots-not-chosen = Viazi vitamu vidogo, vilivyopinda na vilivyokatwa na jembe ni chakula. Vipike au uviuze mapema, kwanza vilivyokatwa, kwa sababu havidumu. { -bad-roots }
advice-storage-place = Weka vyombo vya viazi vitamu kwenye chumba chenye ubaridi, kikavu, chenye kivuli na hewa inayozunguka, pasipoingia mvua. Watoto, panya, kuku na mbuzi wasivifikie.
advice-clean-vines = Kata kwanza kwenye ncha za marando ya viazi vitamu, kwa sababu zina fukusi wachache zaidi. Usichukue rando kwenye mmea wenye matundu kwenye shina karibu na ardhi, au dalili za ugonjwa.
advice-clean-field = Panda angalau mita { $metres } kutoka kwenye mashamba ya zamani ya viazi vitamu, kwa sababu fukusi hutoka huko. Ondoa marando na viazi vya zamani. Wengi hushauri kupanda viazi vitamu katika ardhi ileile mara moja tu kila miaka { $years }.
advice-deep-planting = Vipando vya viazi vitamu vifike kama sm { $deep_cm } ndani ya udongo. Katika jaribio moja vilistawi zaidi hapo kuliko kwenye sm { $shallow_cm }.
advice-dry-after-planting = Mvua za kwanza zinaweza kukatika. Kati ya vipando 100 vya viazi vitamu, kama { $week_least } hadi { $week_most } hubaki hai baada ya wiki moja ya ukavu tangu kupandwa, na { $fortnight_least } hadi { $fortnight_most } baada ya wiki mbili za ukavu. Mwagilia kitalu hadi vipando vya shambani vishike, bakiza marando kadhaa, na upande tena pale vipando vilipokufa.
advice-feed-and-weed = Kabla ya kupanda viazi vitamu, changanya samadi ya zamani iliyooza au mboji kwenye matuta. Samadi mbichi, au nyingi, huleta majani mengi na viazi vichache. Palilia hadi marando yafunike ardhi.
advice-children = Wape watoto wadogo viazi vitamu vya rangi ya chungwa mara kwa mara. Katika jaribio moja, watoto waliokula gramu { $serving_g } kwa siku, kwa siku { $days }, walikuwa na akiba bora ya vitamini A. Viazi vyeupe vina vitamini hiyo kidogo sana. Karatasi haiwezi kuahidi matokeo hayo kwa mtoto mmoja mmoja.

## Drawings: title, and what it shows in words; the names and sizes that stand in them

month-year = { month } { $year }
calendar-title = Cha kufanya, mwezi kwa mwezi
guide-title = Mwongozo wa mkutano
card-fold = Kunja kwenye mistari iliyokatikakatika. Kata mstari mnene.
record-title = Ukaguzi wa viazi vilivyohifadhiwa
record-how = Kila unapokagua, toa viazi vitamu vyote. Vilivyooza, vyenye ukungu au matundu ya wadudu, vifukie kwenye shimo refu au uviteketeze kwa moto. Andika ulichokuta, na umwonyeshe afisa ugani wako kadi hii.
record-planned = Siku kwenye mpango
record-done = Siku halisi ya ukaguzi
record-healthy = Vizuri, vya kupanga tena
# doubt: "vibovu" (the bad ones) for all that is thrown away, be it rotten, mouldy or holed; "vilivyotupwa" is too long for its column.
record-thrown-away = Vibovu
# doubt: "chipukizi" (one of the "machipukizi") because the column is narrow.
record-sprouted = Vina chipukizi
record-remark = Maelezo
record-stored = Viazi vilivyohifadhiwa
booklet-index = Mashamba kwa majina
span-brief = { BRIEF($from) } – { BRIEF($to) }
# doubt: "m" for mita, where a drawing has little room.
size-cm = sm { $cm }
size-m = m { $m }
drawing-season = Msimu
drawing-season-alt = Ukanda kutoka mavuno hadi mavuno: viazi kwenye mchanga, kisha kitaluni, kisha mimea shambani, pamoja na tarehe zake.
season-store = Kwenye mchanga
season-bed = Kitaluni
season-field = Shambani
season-on-harvest = Mavuno
season-on-sprout = Kwenda kitaluni
season-on-rains = Mvua
season-on-food = Viazi vya kwanza
drawing-store = Ndani ya chombo
drawing-store-alt = Chombo kilichokatwa kuonyesha ndani: matabaka ya viazi, na mchanga chini, katikati na juu yake.
drawing-layers = Kila tabaka, likionekana kutoka juu
drawing-layers-alt = Matabaka yakionekana kutoka juu: kila kiazi mahali pake, hakigusi kingine wala kuta za chombo.
drawing-bed = Kitalu toka juu
drawing-bed-alt = Kitalu kutoka juu: mistari ya viazi, urefu wake na upana wake.
drawing-rows = Shamba toka juu
drawing-rows-alt = Sehemu ya shamba kutoka juu: umbali kati ya matuta, na vipando vilivyopandwa.
## Words of the recording script

script-title = Maneno ya kurekodi
script-new-voice = sauti mpya
script-lines = Mistari ya kusoma
script-time = Muda, kwa kukadiria urefu wa maneno
script-time-measured = Muda, kwa kasi ya sauti hii
script-minutes = kama dakika { $minutes }
# doubt: "ujumbe" is kept in the singular for many messages; some write "jumbe".
script-ready = Idadi ya ujumbe uliokamilika tayari
script-how = Kabla ya kuanza
script-how-room = Tafuta chumba tulivu chenye vitambaa: mapazia, kitanda, nguo. Funga madirisha, na uzime feni, friji na simu zinazoweza kulia.
script-how-distance = Mdomo uwe umbali wa kiganja pamoja na vidole kutoka kwenye kipaza sauti au simu, kando yake kidogo. Usibadilishe umbali huo hadi mwisho.
script-how-tone = Anza kurekodi, kisha kaa kimya kabisa kwa sekunde tano: sauti ya chumba nayo inahitajika.
script-how-pause = Nyamaza sekunde moja kabla ya kila mstari, na sekunde moja baada yake.
script-how-order = Soma mistari kwa mpangilio wake, na uweke alama ya vema kwenye kila mmoja. Usiseme namba zake.
script-how-slip = Ukikosea, nyamaza kidogo, kisha sema mstari wote tena. Usisimamishe kurekodi.
# doubt: "kiimbo cha sentensi" for the melody of the sentence.
script-how-grey = Sema kwa sauti maneno ya herufi nzito tu. Maneno ya kijivu yanayoyazunguka yasome kimoyomoyo: yanaipa sauti yako kiimbo cha sentensi.
script-how-brackets = Sema kwa sauti maneno yaliyo ndani ya [ ] tu. Mengine yasome kimoyomoyo: yanaipa sauti yako kiimbo cha sentensi.
script-how-medial = Palipoandikwa “{ script-medial }”, usishushe sauti: maneno mengine yanafuata.
script-how-final = Palipoandikwa “{ script-final }”, shusha sauti, kama mwishoni mwa sentensi.
script-medial = inaendelea
script-final = inaisha
script-part = Sehemu ya { $part }
script-part-lines = mstari { $first_line } hadi { $last_line }
script-rest = Kwa mashamba mengine na tarehe nyingine
script-opening = Mwanzo wa kila ujumbe
script-closing = Mwisho wa kila ujumbe
script-sentences = Sentensi kamili
script-parts = Vipande vya sentensi
script-numbers = Namba, aina ya { $form }
script-dates = Vipande vya tarehe
script-months = Miezi
script-units = Vipimo
script-unlocks = Idadi ya ujumbe unaohitaji maneno haya
script-complete = Mstari huu unakamilisha
script-stale = Rekodi ya zamani inasema
script-other-ending = Rekodi ipo, lakini sauti inaishia kwa namna nyingine.
script-recorded = Imesharekodiwa.
script-unsaid = Hakuna sentensi inayojulikana yenye maneno haya hivi: unaweza kuyaruka.
script-nothing = Hakuna kilichobaki cha kurekodi.
## The check of recordings

clips-title = Rekodi zilizokaguliwa
clips-intro = Zinazohitaji kurekodiwa tena ziko mwanzoni. Kila picha inaonyesha sauti kutoka kushoto kwenda kulia: juu ni nguvu ya sauti; chini ni milio yake, myeusi pale ilipo na nguvu.
clips-again = Rekodi tena
clips-usable = Inafaa kutumika
clips-good = Nzuri
clips-unused = Haihitajiki tena
clips-missing = Bado haijarekodiwa
clips-picture = Picha ya rekodi “{ $words }”
clips-length = Urefu
clips-level = Nguvu ya sauti
clips-noise = Sauti juu ya kelele
# doubt: "mvumo" for an electric hum.
clips-hum = Sauti juu ya mvumo
clips-pace = Kasi, ikilinganishwa na ya kawaida
clip-clipped = Sauti ina nguvu kupita kiasi kwa kipaza sauti, inakwaruza. Weka kipaza sauti mbali zaidi, au punguza nguvu yake ya kupokea sauti.
clip-cut-start = Mwanzo wa maneno umekatika. Anza kurekodi, vuta pumzi, kisha sema.
clip-cut-end = Mwisho wa maneno umekatika. Vuta pumzi kabla ya kuzima.
clip-noise = Kuna kelele nyuma ya sauti. Tafuta mahali patulivu, na sogeza kipaza sauti karibu.
clip-hum = Kuna mvumo wa umeme. Chomoa chaja, na kaa mbali na nyaya na mashine.
clip-room = Chumba kinatoa mwangwi. Rekodi katika chumba kidogo chenye nguo, mikeka au godoro, na sogeza kipaza sauti karibu.
clip-quiet = Sauti ni ndogo kuliko katika rekodi nyingine. Kaa umbali uleule kutoka kwenye kipaza sauti kila mara.
clip-loud = Sauti ni kubwa kuliko katika rekodi nyingine. Kaa umbali uleule kutoka kwenye kipaza sauti kila mara.
clip-fast = Imesemwa haraka kuliko rekodi nyingine. Sema kwa kasi yako ya kawaida.
clip-slow = Imesemwa polepole kuliko rekodi nyingine. Sema kwa kasi yako ya kawaida.
clip-offset = Kifaa kimesogeza sauti kidogo. Huhitaji kufanya lolote: itajirekebisha yenyewe.
clip-broken = Rekodi haifunguki. Rekodi tena.
clip-stale = Maneno yamebadilika. Yarekodi kama yalivyo sasa: “{ $words }”
clip-unused = Hakuna ujumbe unaotumia maneno haya tena.
## Radio segments: script for the presenter, plan of the season

segment-title = Kipindi cha redio
segment-season = Vipindi vya redio vya msimu
segment-week = Wiki
segment-topics = Yatakayosemwa
segment-nothing = Hakuna la kusema wiki hii
segment-due = Wiki hii
segment-past = Endelea kukumbuka
segment-soon = Hivi karibuni
# doubt: "kiashiria" for a station's signature tune.
segment-opening = Kiashiria cha kufungua
segment-closing = Kiashiria cha kufunga
segment-bed = Muziki chini ya sauti
segment-bed-value = dB { $decibels } chini ya sauti
segment-said = Kinachosikika
segment-read-before = Soma moja kwa moja hewani, kabla yake
segment-read-after = Soma moja kwa moja hewani, baada yake
segment-intro = Habari zenu nyote mnaolima viazi vitamu huko { $place }. Sikilizeni sasa kazi za kuanzia tarehe { DAY($first) } hadi tarehe { DAY($last) }.
segment-outro = Hizo zilikuwa kazi za kuanzia tarehe { DAY($first) } hadi tarehe { DAY($last) }. Kama kuna jambo ambalo hamkulielewa, muulizeni afisa ugani wenu.
segment-reading-time = Muda wa kusoma, makadirio
segment-read-live = Isomwe kwa sauti. Muda umekadiriwa, silabi { $rate } kwa sekunde.
# doubt: "mkwaju" for a stroke (/).
segment-pauses = Mkwaju mmoja (/) ni kituo kifupi, mikwaju miwili (//) ni kituo kirefu zaidi. Kati ya sehemu, subiri kidogo zaidi.
segment-no-sound = Hakuna sauti iliyotengenezwa: baadhi ya maneno hayajarekodiwa. Yameorodheshwa hapa chini.
segment-no-voice = Hakuna sauti iliyotengenezwa: lugha hii bado haina sauti iliyorekodiwa.
segment-left-out = Muda haukutosha kwa
segment-missing = Maneno ambayo hayajarekodiwa
## Questions for a meeting, as they are spoken

ask-mark-plants = Ni mimea ipi shambani mwako yenye nguvu zaidi?
ask-gather-sand = Mchanga wenye chembe kubwa uko wapi hapa karibu, na tutauchimbaje kwa usalama?
ask-check-plants = Hapa kwetu, mimea ya viazi vitamu yenye ugonjwa inaonekanaje?
ask-cut-vines = Kwa nini ganda la viazi linahitaji muda ili liwe gumu?
ask-harvest = Utachimbaje ili jembe lisikate kiazi chochote?
ask-fill-container = Nyumbani kwako, ni wapi pakavu na penye ubaridi, mbali na watoto na wanyama?
ask-monthly-check = Viazi vibovu vinaonekanaje, na utavifukia wapi?
ask-prepare-bed = Maji yako wapi hapa karibu, na nani atawalinda watoto?
ask-last-check = Viazi vyako vingapi vina machipukizi?
ask-plant-bed = Nini kinaweza kukuchelewesha kupanda kitalu?
ask-water-bed = Usipokuwepo, nani atamwagilia?
ask-cut-for-planting = Utajuaje kwamba mvua iliyonyesha inatosha?
ask-plant-field = Utaanza kupanda sehemu ipi ya shamba?
ask-first-harvest = Utatunza marando yapi kwa msimu ujao?

## Channels: cue sheets for phones and meetings

# doubt: "kiwango cha sauti ya maneno" for active speech level (a figure for sound technicians); "sura" for a chapter of a recording.
cue-active-level = Kiwango cha sauti ya maneno
cue-chapter = Sura
cue-talk = muda wa mazungumzo, sekunde { $seconds }

## The guide for a meeting

# doubt: "Cha kuonyesha" as a heading, short as it is.
guide-show = Cha kuonyesha
guide-ask = Uliza
