### Kiswahili, rasimu: maneno ya karatasi. Bado hayajasomwa na msemaji fasaha.
### Draft, as printed on sheets. Nouns: kiazi/viazi (root), mmea/mimea (plant), marando (vines), shina (stem),
### kipande/vipande vya marando (cutting), kifundo/vifundo (node), tabaka/matabaka (layer), chombo/vyombo (container),
### mzigo/mizigo (load), dumu/madumu (jerrycan), kitalu (seedbed), tuta/matuta (ridge; "tuta la duara" is a mound),
### fukusi (weevil). The reader is addressed as "wewe"; a group as "ninyi" where it is named.

## Words of the sheet itself

sheet-title = Viazi vitamu: kutoka mavuno haya hadi mvua zijazo
sheet-for = Kwa
sheet-place = Mahali
sheet-rains = Mvua zinatarajiwa kuanza
# doubt: "shamba la sasa" for the field now standing; "shamba la zamani" would sound abandoned.
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

amount-plants = Mimea ya kuwekewa alama
amount-plants-each = Mimea ya kuwekewa alama na kila mwanachama
amount-roots = Viazi vya kuhifadhi
amount-cuttings = Vipande vya marando kwa ajili ya shamba
amount-first-cuttings = Vipande vinavyotarajiwa ukikata mara ya kwanza
amount-containers = Vyombo
amount-layers = Matabaka ya viazi katika kila chombo
amount-roots-per-layer = { $layer_widths ->
    [uneven] Viazi katika tabaka la chini kabisa, visizidi
   *[even] Viazi katika kila tabaka, visizidi
 }
amount-roots-top-layer = Viazi katika tabaka la juu kabisa, visizidi
amount-bundles = Mafungu ya vipande vya marando
amount-lining = Karatasi ya kutandika ndani ya vyombo
amount-water-total = Maji ya kitalu, msimu wote
amount-sand = Mchanga mkavu
amount-loads = Mizigo ya mchanga ya kubeba
amount-bed = Kitalu
amount-strips = Vipande vya kitalu, na njia ya { MEASURE($path_m, unit: "metre") } kati yavyo
amount-water = Maji ya kitalu, kila siku
amount-jerrycans = Madumu ya maji, kila siku

first-cuttings-value = { $first_cuttings_low } hadi { $first_cuttings_high }{ $plan_by ->
    [practice] , kwa mazoea ya kawaida
   *[print] , kwa siku za ukuaji
 }
sand-value = { MEASURE($sand_l, unit: "litre") }, kama { MEASURE($sand_kg, unit: "kilogram") }
bed-value = { MEASURE($bed_length_m, unit: "metre") } × { MEASURE($bed_width_m, unit: "metre") }
strips-value = { $strips }, kila kimoja { MEASURE($strip_length_m, unit: "metre") } × { MEASURE($strip_width_m, unit: "metre") }
water-value = { MEASURE($water_l, unit: "litre") }
water-total-value = { MEASURE($water_total_l, unit: "litre") }
bundles-value = { MEASURE($bundles, unit: "bundle") }, kila fungu lina vipande { $bundle_size }
lining-value = mita za mraba { $lining_m2 }
roots-for-zone = { $roots } (mfano; ongeza au punguza kulingana na ukubwa wa shamba)

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
span-day = { WEEKDAY($from) }, { DAY($from) }
unit-kilogram = kilo { $n }
unit-litre = lita { $n }
unit-metre = mita { $n }
unit-centimetre = sentimita { $n }
# doubt: "kiganja pamoja na vidole" for a hand from wrist to fingertips as a measure; "kiganja" alone is the palm, too short.
unit-hand = { $n ->
    [one] kiganja { $n } pamoja na vidole
   *[other] viganja { $n } pamoja na vidole
 }
# doubt: "kipingili cha dole gumba" for the upper joint of a thumb (also "pingili", class 9/10); "kifundo" is kept for the node of a vine.
unit-thumb-joint = { $n ->
    [one] kipingili { $n } cha dole gumba
   *[other] vipingili { $n } vya dole gumba
 }
unit-jerrycan = { $n ->
    [one] dumu { $n }
   *[other] madumu { $n }
 }
unit-bundle = { $n ->
    [one] fungu { $n }
   *[other] mafungu { $n }
 }
event-before = siku { $days } kabla ya { $event }
event-on = siku ya { $event }
event-after = siku { $days } baada ya { $event }

## Opening and closing

opening = { $kind ->
    [zone] Mpango huu ni wa kila mkulima wa eneo hili. Vipimo vilivyotajwa vimehesabiwa kwa viazi { $roots }: ongeza au punguza kulingana na ukubwa wa shamba lako.
   *[other] Tarehe za mpango huu zimehesabiwa kurudi nyuma kutoka siku mvua zinapotarajiwa kuanza. Siku hiyo ni karibu na tarehe { DAY($rains) }.
 }
closing = Afisa ugani wako anajua aina za viazi, tarehe na sheria za eneo lako. Akikuambia jambo tofauti na karatasi hii, fuata ushauri wake.
    .sms = Afisa ugani wako akikuambia jambo tofauti na ujumbe huu, fuata ushauri wake.

## Steps: title, text (.text), picture in words (.alt)

mark-plants = Weka alama ya kijiti kwenye mimea { $plants } yenye afya
    .short = Mimea yenye nguvu na majani makubwa, safi, bila ugonjwa. Kijiti kando ya kila mmea.
    .text = { $kind ->
        [group] Chagueni pamoja mimea { $plants } yenye nguvu; kila mwanachama aweke alama kwenye { $plants_each ->
            [one] mmea { $plants_each }
           *[other] mimea { $plants_each }
         }. Chomekeni kijiti kando ya kila mmea. Chagueni
       *[other] Chagua mimea { $plants } yenye nguvu. Chomeka kijiti kando ya kila mmea. Chagua
     } mimea yenye majani makubwa na safi tu, isiyo na dalili yoyote ya ugonjwa. Mimea hiyo itatoa viazi kama { $roots } vya kuhifadhi.
    .alt = Mkono unachomeka kijiti ardhini kando ya mmea wenye nguvu.
    .show = Rando lenye afya na lingine lenye ugonjwa, na kijiti.
    .ask = Unatofautishaje mmea wenye afya na wenye ugonjwa?
    .sms = { BRIEF($first) }: weka vijiti kando ya mimea { $plants } yenye afya, itakayotoa viazi vya mbegu. Majani yawe makubwa na safi, bila ugonjwa.
# doubt: "mchanga wenye chembe kubwa" for coarse sand, "mchanga laini" for fine sand; some say "punje" or "chenga".
gather-sand = Leta mchanga mkavu
    .short = Wenye chembe kubwa, safi: { MEASURE($sand_l, unit: "litre") }. Ukaushe chini ya paa, uache upoe.
    .text = Leta mchanga safi wenye chembe kubwa, kiasi cha { MEASURE($sand_l, unit: "litre") }, uzito kama { MEASURE($sand_kg, unit: "kilogram") }. Ukaushe chini ya paa, kisha uuache upoe. Mchanga laini, wenye unyevu au wenye joto huozesha viazi. Usibebe zaidi ya { MEASURE($load_kg, unit: "kilogram") } kwa mara moja. Mchanga wote ni kama { $loads ->
        [one] mzigo { $loads }
       *[other] mizigo { $loads }
     }.
    .alt = Chini ya paa, mkono wenye bakuli unachota mchanga mkavu kutoka kwenye lundo na kuutia kwenye ndoo ndogo.
    .show = Mchanga mkavu wenye chembe kubwa, na mchanga laini wenye unyevu.
    .ask = Mchanga wenye chembe kubwa tutaupata wapi, na je, ni salama kuchimba pale?
    .sms = Kufikia { BRIEF($last) }: leta mchanga wa chembe kubwa, { MEASURE($sand_l, unit: "litre") }. Ukaushe chini ya paa na uuache upoe. Usibebe zaidi ya { MEASURE($load_kg, unit: "kilogram") } kwa mara moja.
# doubt: "marando" for vines is Tanzanian and coastal; in parts of Kenya other words are used. Not explained here, to keep the sheet short.
# doubt: "alama ya vema" (tick) and "X ya kukataza" in the words for pictures.
check-plants = Kagua tena mimea yenye alama
    .short = Majani madogo, yaliyojikunja au yenye madoa? Ondoa kijiti, usichukue chochote.
    .text = Je, majani ni madogo, yamejikunja au yana madoa? Je, marando yamedumaa? Je, shina lina matundu karibu na ardhi? Ukiona hivyo, au ukiwa na shaka, ondoa kijiti na usichukue chochote kwenye mmea huo.
    .alt = Mmea wenye afya una alama ya vema na unabaki na kijiti chake; mkono unang'oa kijiti cha mmea wenye ugonjwa, wenye majani yenye madoa, yaliyokunjamana.
    .show = Majani madogo, yaliyojikunja na yenye madoa.
    .ask = Utafanya nini na mmea wenye kijiti ambao umeugua?
    .sms = { BRIEF($first) }: kagua tena mimea yenye vijiti. Mmea ukiwa na majani madogo, yaliyojikunja au yenye madoa, ondoa kijiti na usichukue chochote.
# doubt: "kiganja na vidole vyake" for a hand's length (wrist to fingertips), because "mkono" alone is also the arm.
cut-vines = Kata marando ya mimea yenye alama
    .short = Acha shina la { MEASURE($stem_cm, unit: "centimetre") }: { MEASURE($stem_hands, unit: "hand") }.
    .text = Kata marando, na kwenye kila mmea uache shina lenye urefu wa { MEASURE($stem_cm, unit: "centimetre") }, kama { MEASURE($stem_hands, unit: "hand") }. Hivyo ganda la viazi litakuwa gumu, na viazi vitakaa muda mrefu bila kuharibika.
    .alt = Kisu kinakata marando, na mashina yanayobaki yana urefu wa kiganja na vidole vilivyosimamishwa kando yake.
    .show = Kiganja na vidole vilivyonyooshwa kando ya shina.
    .ask = Kwa nini ganda la viazi linahitaji muda ili liwe gumu?
    .sms = { BRIEF($first) }: kata marando ya mimea yenye vijiti. Acha shina lenye urefu wa kiganja pamoja na vidole.
harvest = Chimba, kisha chagua viazi { $roots }
    .short = Udongo ukiwa mkavu tu. Viazi vya ukubwa wa kati, bila jeraha. Usivioshe. Viweke kivulini.
    .text = Chimba kwenye udongo mkavu tu. Toa viazi bila kuvikata wala kuvichubua. Chukua viazi { $roots } vya ukubwa wa kati. Viwe na urefu kama wa kiganja na vidole, na visiwe na jeraha lolote. Viazi vyenye majeraha ni vya kupika, si vya kuhifadhi. Pangusa udongo kwa mkono. Usivioshe viazi kamwe. Viache kivulini kwa saa kadhaa, jua lisivipige.
    .alt = Mkono unainua mmea wenye viazi vizima kutoka kwenye udongo uliolegezwa, na jembe kando yake.
    .show = Kiazi cha ukubwa wa kati chenye ganda zima, na kingine chenye jeraha.
    .ask = Ni viazi gani vya kuhifadhi, na vipi vya jikoni?
    .sms = { BRIEF($first) }: chimba viazi udongo ukiwa mkavu. Hifadhi viazi { $roots } vya ukubwa wa kati, visivyo na jeraha. Usivioshe. Viweke kivulini.
fill-container = Panga viazi kwenye mchanga
    .short = Mchanga: chini { MEASURE($base_cm, unit: "centimetre") }, katikati { MEASURE($layer_cm, unit: "centimetre") }, juu { MEASURE($top_cm, unit: "centimetre") }. Viazi visigusane. Bila kifuniko.
    .text = Tumia { $containers ->
        [one] chombo { $containers } chenye
       *[other] vyombo { $containers } vyenye
     } kuta imara: beseni, chungu, ndoo au kikapu kilichosukwa bila mianya. Usitumie magunia. Tandika karatasi ndani ya chombo, chini na pembeni. Jaza kila chombo kikiwa mahali kitakapokaa. Pawe pakavu, penye ubaridi na kivuli, mbali na watoto, wanyama na mvua. Anza kwa mchanga wenye kina cha { MEASURE($base_cm, unit: "centimetre") }, kama { MEASURE($base_joints, unit: "thumb-joint") }. { $layer_widths ->
        [uneven] Katika tabaka la chini kabisa panga viazi visivyozidi { $roots_per_layer }, na katika tabaka la juu kabisa visivyozidi { $roots_top },
       *[even] Katika kila tabaka panga viazi visivyozidi { $roots_per_layer },
     } visigusane wala visiguse kuta za chombo. Vifunike kwa mchanga wenye kina cha { MEASURE($layer_cm, unit: "centimetre") }. { $layers ->
        [one] Panga tabaka { $layers } tu la viazi.
       *[other] Kisha panga viazi vingine juu yake na uvifunike vilevile, hadi yawe matabaka { $layers } ya viazi.
     } Malizia kwa mchanga wenye kina cha { MEASURE($top_cm, unit: "centimetre") }: mchanga huo huzuia panya, wadudu na kuku. Usifunike chombo kwa kifuniko.
    .alt = Beseni lililokatwa kuonyesha ndani: mchanga, viazi visivyogusana, mchanga, viazi, na mchanga mwingi juu; mkono unanyunyiza mchanga.
    .show = Beseni, mchanga mkavu na viazi vichache: mtu mmoja apange tabaka la kwanza.
    .ask = Kwa nini viazi visigusane?
    .sms = { BRIEF($first) }: panga viazi kwenye mchanga mkavu, visigusane. Mchanga wa chini { MEASURE($base_cm, unit: "centimetre") }, wa juu { MEASURE($top_cm, unit: "centimetre") }. Usiweke kifuniko, wala usimwagie maji.
# doubt: "viteketeze kwa moto" for burning roots up; "choma" alone also means to roast for eating.
# doubt: "machipukizi" for sprouts on the root; the shoots cut in the bed are called "marando".
# doubt: "X ya kukataza" for a crossed-out picture; "alama" is kept for the stick beside a good plant.
monthly-check = Kagua viazi kila mwezi
    .short = Tazama kila kiazi. Vilivyooza vifukie au uviteketeze. Ondoa machipukizi. Vizuri vipange tena.
    .text = Toa viazi vyote, na utazame kimoja kimoja. Ondoa vilivyooza, vyenye ukungu au vilivyotobolewa na wadudu. Vifukie kwenye shimo refu au uviteketeze kwa moto. Usivitupe ovyo. Ondoa machipukizi kwa kuyasugua. Viazi vizuri vipange tena vilevile kama mwanzo, na uandike vimebaki vingapi. Hadi ukaguzi unaofuata, usiviguse.
    .alt = Mwezi wa angani mara tatu, ishara kwamba mwezi mmoja umepita; mkono unatoa kiazi kwenye beseni; kiazi kilichooza kiko kando, kina X ya kukataza.
    .show = Kiazi kilichooza, kama kipo, na jinsi ya kupanga tena.
    .ask = Utafanya nini na kiazi kilichooza, na kwa nini wanyama wasipewe?
    .sms = { BRIEF($first) }: toa viazi vyote. Vilivyooza usivile wala usiwape wanyama kamwe: vifukie au uviteketeze kwa moto. Ondoa machipukizi. Vizuri vipange tena.
prepare-bed = Tengeneza kitalu
    .short = { MEASURE($bed_length_m, unit: "metre") } kwa { MEASURE($bed_width_m, unit: "metre") }, karibu na maji. Tifua udongo. Weka uzio.
    .text = Tengeneza kitalu cha { MEASURE($bed_length_m, unit: "metre") } kwa { MEASURE($bed_width_m, unit: "metre") } karibu na maji. Tifua udongo vizuri. Weka uzio ili mbuzi na kuku wasiingie.
    .alt = Mwanamume anatifua udongo wa kitalu kwa jembe; nyuma yake kuna uzio.
    .show = Mahali karibu na maji, na ukubwa wa kitalu kwa hatua.
    .ask = Ni nini kitazuia mbuzi na kuku?
    .sms = Kufikia { BRIEF($last) }: tengeneza kitalu cha { MEASURE($bed_length_m, unit: "metre") } kwa { MEASURE($bed_width_m, unit: "metre") } karibu na maji. Kizungushie uzio.
last-check = Kagua kwa mara ya mwisho na uache machipukizi
    .short = Vilivyooza vifukie au uviteketeze. Acha machipukizi.
    .text = Toa viazi vyote. Ondoa vilivyooza, vyenye ukungu au vilivyotobolewa na wadudu. Vifukie kwenye shimo refu au uviteketeze kwa moto. Usivitupe ovyo. Safari hii usiondoe machipukizi: viazi vizuri sasa vitapandwa kitaluni.
    .alt = Mkono unatoa kiazi chenye machipukizi kwenye beseni; mshale unaelekea kwenye kitalu.
    .show = Kiazi chenye machipukizi.
    .ask = Kwa nini safari hii machipukizi yanaachwa?
    .sms = { BRIEF($first) }: ukaguzi wa mwisho. Usiondoe machipukizi. Viazi vilivyooza usivile wala usiwape wanyama kamwe: vifukie au uviteketeze kwa moto.
plant-bed = Panda viazi kitaluni
    .short = { $bed_rows ->
        [one] Mstari { $bed_rows }, viazi
       *[other] Mistari { $bed_rows }, kila mmoja viazi
     } kama { $row_roots }. Kati ya mistari { MEASURE($spacing_cm, unit: "centimetre") }. Vifunike kwa udongo kidogo.
    .text = Laza viazi katika { $bed_rows ->
        [one] mstari { $bed_rows }
       *[other] mistari { $bed_rows }
     }. Kila mstari uwe na viazi kama { $row_roots }. Acha kama { MEASURE($spacing_cm, unit: "centimetre") } kati ya mstari na mstari. Vifunike viazi vyote kwa udongo kidogo.
    .alt = Viazi vimelazwa katika mstari; mkono unavifunika kwa udongo.
    .show = Nafasi kati ya mistari kwa kijiti chenye urefu unaofaa.
    .ask = Kiazi kinalazwa kwa kina gani kwenye kitalu?
    .sms = Kuanzia { BRIEF($first) }: panda viazi kwa mistari, na uache { MEASURE($spacing_cm, unit: "centimetre") } kati ya mstari na mstari. Vifunike kwa udongo kidogo, kisha umwagilie.
# doubt: "dumu" for a jerrycan; "mtungi" in parts of Kenya. Whether its size should be named.
water-bed = Mwagilia kitalu
    .short = Hadi { MEASURE($water_l, unit: "litre") } kwa siku ({ MEASURE($jerrycans, unit: "jerrycan") }); mimea ikiwa midogo, punguza maji.
    .text = Kitalu kikijaa majani, mwagilia kama { MEASURE($water_l, unit: "litre") } kila siku, karibu { $jerrycans ->
        [one] dumu { $jerrycans }
       *[other] madumu { $jerrycans }
     }. Mimea ikiwa bado midogo, punguza maji; siku za joto na upepo, ongeza maji. Mvua ikitosha, acha kumwagilia.
    .alt = Mkono unamwaga maji ya dumu kwenye kitalu chenye machipukizi.
    .show = Dumu la maji, na jinsi mimea midogo inavyohitaji maji kidogo.
    .ask = Nani ataleta maji, na nani atawaangalia watoto pale?
    .sms = Kuanzia { BRIEF($first) }: mwagilia kitalu kila siku kwa maji yasiyozidi { MEASURE($water_l, unit: "litre") }. Usiwaache watoto wakaribie maji yasiyofunikwa.
# doubt: "vifundo" for the nodes of a vine; some say "macho" or "pingili".
# doubt: "visiki" for the stubs left in the bed.
cut-for-planting = Kata marando ya kupanda
    .short = Mvua zikishaanza: { MEASURE($cutting_cm, unit: "centimetre") }, vifundo { $nodes }, marando yenye afya. Acha visiki.
    .text = Mvua zikishaanza, kata vipande vyenye urefu wa { MEASURE($cutting_cm, unit: "centimetre") }, kama { MEASURE($cutting_hands, unit: "hand") }. Kila kipande kiwe na vifundo visivyopungua { $nodes }. Kata kutoka kwenye marando yenye afya tu. { $plan_by ->
        [practice] Kwa mazoea ya kawaida, ukikata mara ya kwanza utapata kama vipande
       *[print] Ukikata mara ya kwanza utapata kama vipande
     } { $first_cuttings_low } hadi { $first_cuttings_high }. Acha visiki ardhini: vitatoa vipande vingine baada ya wiki nne hadi sita. Weka vipande kivulini, na uvipande ndani ya siku mbili.
    .alt = Mkono mmoja unashika rando la kitalu, mwingine unalikata kwa kisu; visiki vinabaki.
    .show = Kipande cha rando chenye urefu unaofaa kando ya kiganja na vidole: hesabu vifundo vyake.
    .ask = Ni kwenye mimea gani tusikate vipande?
    .sms = Mvua zikishaanza: kata vipande vya marando vya { MEASURE($cutting_cm, unit: "centimetre") }, vyenye vifundo { $nodes } au zaidi, kwenye mimea yenye afya tu. Acha visiki ardhini.
# doubt: "tuta la duara" for a mound; a local word may be better.
plant-field = Panda shambani
    .short = Udongo wenye unyevu tu. Fukia vifundo viwili au vitatu. Baada ya wiki mbili jaza mapengo.
    .text = Panda kwenye udongo wenye unyevu tu. { $layout ->
        [own] Kila shamba lipande kwenye matuta yake.
        [mounds] Kwenye kila tuta la duara panda { $on_mound ->
            [one] kipande { $on_mound }
           *[other] vipande { $on_mound }
         }; kati ya tuta na tuta acha { MEASURE($between_cm, unit: "centimetre") }.
       *[ridges] Kwenye tuta panda kipande kimoja kimoja, ukiacha { MEASURE($along_cm, unit: "centimetre") } kati ya kipande na kipande; kati ya tuta na tuta acha { MEASURE($between_cm, unit: "centimetre") }.
     } Fukia vifundo viwili au vitatu. { $kind ->
        [zone] Viazi { $roots } hutoa vipande { $cuttings } katika msimu wote wa kitalu.
       *[other] Shamba linahitaji vipande { $cuttings }.
     } Baada ya wiki mbili, panda tena penye mapengo.
    .alt = Chini ya wingu la mvua, mkono unapanda vipande vya marando kwa mstari; vifundo vya chini vimo ndani ya udongo.
    .show = Udongo wenye unyevu hadi kina cha kidole, na kipande ambacho vifundo vyake vimefukiwa.
    .ask = Mvua imenyesha mara moja: je, tupande sasa? Faida yake ni nini, na hatari yake?
    .sms = Kuanzia { BRIEF($first) }, udongo ukiwa na unyevu: panda vipande { $cuttings_to_plant } vya marando. Tarehe ni wastani wa miaka iliyopita: tazama anga.
first-harvest = Angalia viazi vya kwanza
    .short = Papasa utafute viazi vikubwa. Chimba vyote kufikia { DAY($last_harvest) }: fukusi huja.
    .text = Papasa udongo chini ya mimea michache utafute viazi vya ukubwa wa kula. Usiache viazi vilivyokomaa kwenye udongo mkavu kwa muda mrefu: wadudu waitwao fukusi watavishambulia. Maliza kuchimba kufikia tarehe { DAY($last_harvest) }.
    .alt = Mkono unapapasa kiazi chini ya mmea; kando yake kuna chungu kwenye moto.
    .show = Jinsi ya kupapasa kiazi bila kung'oa mmea.
    .ask = Viazi vilivyokomaa vikibaki kwenye udongo mkavu, nini hutokea?
    .sms = Kuanzia { BRIEF($first) }: papasa udongo uone kama viazi vimekomaa. Chimba vyote kufikia { BRIEF($last_harvest) }: wadudu waitwao fukusi huja.

## Tables: title, what it tells (.text), its picture in words (.alt)

# doubt: "kwa siku za ukuaji" where cuttings are counted by the days that the bed has grown.
table-cuts = Kukata marando kitaluni{ $plan_by ->
    [practice] , kwa mazoea ya kawaida
   *[print] , kwa siku za ukuaji
 }
    .text = Jedwali linaonyesha vipande unavyoweza kutarajia kila unapokata. Vipande vya baadaye ni vya sehemu iliyobaki ya shamba na vya kujaza mapengo.
table-shares = Kila shamba linaleta nini
    .text = Kila mwenye shamba anaweka alama kwenye mimea yake, na kuleta viazi vyake kwenye hifadhi ya pamoja.
table-fields = Vipimo kulingana na ukubwa wa shamba
    .text = Tafuta ukubwa wa shamba lako katika safu ya kwanza. Ukubwa wa shamba lako ukiwa kati ya mistari miwili ya jedwali, vipimo vyako pia viko kati ya vile vya mistari hiyo.
# doubt: "mwanzo wa uongo" for a false start of the rains; some may say "mvua za kudanganya".
# doubt: "upau, pau" for the bars of a picture and "milia" for stripes; whether farmers know "upau".
table-planting-later = Ukisubiri kupanda
    .text = Anayepanda mvua kubwa ya kwanza inaponyesha anaweza kupoteza mimea michanga, kipindi kirefu bila mvua kikifuata. Huo ni mwanzo wa uongo. Kadiri unavyosubiri, ndivyo siku zinazobaki hadi mwisho wa mvua zinavyopungua. Jedwali linaonyesha jinsi yote mawili yalivyokuwa katika miaka iliyopita; si utabiri. Katika picha, pau zenye milia ni miaka yenye mwanzo wa uongo, na pau nyeusi ni siku hadi mwisho wa mvua.
    .alt = Kwa kila siku ya kuanza kupanda: upau wenye milia wa miaka yenye mwanzo wa uongo, na upau mweusi wa siku hadi mwisho wa mvua. Nambari zimo katika jedwali lililo juu.
column-when = Lini
column-farm = Shamba
column-area = Ukubwa wa shamba, m²
column-cuttings = Vipande
column-cut = Vipande
cut-value = { $low }–{ $high }
column-plants = Mimea ya kuwekewa alama
column-roots = Viazi vya kuhifadhi
column-bed = Kitalu, m²
column-jerrycans = Madumu ya maji kwa siku
column-from = Mvua ya kwanza kuanzia tarehe
column-false-starts = Miaka yenye mwanzo wa uongo
# doubt: "mwaka wa kawaida" (an ordinary year) for the middle year, the median; "mwaka wa kati" was not plain.
column-days-left = Siku hadi mwisho wa mvua, katika mwaka wa kawaida
false-starts-value = { $false_starts } kati ya { $years }

## Cautions: title, text (.text), picture in words (.alt)

caution-rot = Viazi vilivyooza, vyenye ukungu au matundu
    .short = Usivile, hata sehemu nzuri. Usiwape wanyama kamwe. Vifukie kwenye shimo refu au uviteketeze.
    .text = Usivile kamwe, usiwape wanyama kamwe, wala usivipande. Hata ukikata sehemu mbaya, usile iliyobaki: hata sehemu inayoonekana nzuri inaweza kuwa na sumu. Vifukie kwenye shimo refu au uviteketeze kwa moto.
    .alt = Kiazi kilichooza; chini yake kuna ng'ombe na chungu cha kupikia, vyote vina X ya kukataza.
    .sms = Usile kamwe viazi vilivyooza, vyenye ukungu au matundu, hata sehemu iliyo nzuri. Usiwape wanyama kamwe. Vifukie kwenye shimo refu au uviteketeze kwa moto.
caution-virus = Mimea yenye ugonjwa
    .short = Majani yenye madoa, madogo au yaliyojikunja: usichukue chochote kwenye mmea huo.
    .text = Majani madogo, yenye madoa au yaliyojikunja ni dalili ya ugonjwa wa virusi. Pia marando yaliyodumaa. Usichukue kamwe viazi wala marando kutoka kwenye mmea kama huo.
    .alt = Mkono wenye kisu kwenye mmea wenye majani yenye madoa, yaliyokunjamana; picha ina X ya kukataza.
# doubt: "fukusi" for the sweet potato weevil; explained here in plain words, since not everyone knows the name.
caution-cracks = Nyufa kwenye udongo
    .short = Funika nyufa kwa udongo: wadudu (fukusi) huingia humo.
    .text = Fukusi ni wadudu wanaotoboa viazi. Huingia kwenye viazi kupitia nyufa za udongo. Funika nyufa kwa kupandishia udongo mara tu unapoziona.
    .alt = Fukusi anaingia kwenye ufa wa tuta; chini yake kuna kiazi chenye matundu mengi.
caution-heavy-sand = Mchanga ni mzito
    .short = Usibebe zaidi ya { MEASURE($load_kg, unit: "kilogram") }. Usiinue chombo kilichojaa.
    .text = Usibebe zaidi ya { MEASURE($load_kg, unit: "kilogram") } kwa mara moja. Jaza chombo kikiwa mahali kitakapokaa. Usikiinue kikiwa kimejaa.
    .alt = Mtu ameinama chini ya gunia kubwa, lenye X ya kukataza; mwanamke amesimama wima na ndoo ndogo, ana alama ya vema.
# doubt: "kingo zilizosimama wima" for steep banks; a local word may be better.
caution-riverbed = Mchanga wa mtoni
    .short = Mto uliokauka tu, sheria zikiruhusu. Usichimbe kamwe chini ya kingo zilizosimama wima, wala karibu nazo.
    .text = Chukua mchanga kwenye mto uliokauka tu. Usichimbe kamwe chini ya kingo zilizosimama wima, wala karibu nazo: zinaweza kuporomoka na kukufukia. Chukua mchanga pale tu sheria za eneo lako zinaporuhusu.
    .alt = Ukingo wa mto uliosimama wima unamwangukia mtu anayechimba, picha ina X ya kukataza.
caution-water-children = Maji, watoto na wanyama
    .short = Watoto wasikaribie. Funika maji; weka uzio kwenye visima, mashimo na kitalu.
    .text = Usiwaache watoto wacheze karibu na maji, visima au mashimo. Funika maji uliyohifadhi. Weka uzio kuzunguka visima na mashimo ili mtoto yeyote asitumbukie. Usiruhusu mbuzi na kuku waingie kitaluni.
    .alt = Pipa la maji lililofunikwa, nyuma ya uzio; mwanamke anamzuia mtoto nje yake.
caution-store-dry = Usivimwagie maji kamwe viazi vilivyohifadhiwa
    .short = Usitie maji kwenye mchanga: viazi huoza.
    .text = Mchanga lazima ubaki mkavu kuanzia siku ya kwanza hadi ya mwisho. Mchanga wenye unyevu hufanya viazi vichipue mapema au vioze.
    .alt = Maji ya dumu yanaanguka juu ya beseni la viazi, picha ina X ya kukataza.
# doubt: "makadirio" in the title, "wastani" in the text, for averages of past years.
caution-forecast = Tarehe hizi ni makadirio, si utabiri
    .short = Mvua zinaweza kuwahi au kuchelewa. Panda penye udongo wenye unyevu tu.
    .text = Ni wastani wa miaka iliyopita. Mvua zinaweza kuwahi au kuchelewa. Tazama anga na udongo. Panda penye udongo wenye unyevu tu.
    .alt = Mwanamke mwenye vipande vya marando mkononi anatazama juu: jua, wingu na mvua.
caution-try-first = Jaribu kwanza kwa viazi vichache
    .short = Ni mpya kwako? Anza na viazi vichache, na utunze baadhi ya marando kwa njia uliyozoea.
    .text = Kama njia hii ni mpya kwako, anza na viazi vichache. Pia tunza baadhi ya marando yako kwa njia uliyozoea.
    .alt = Mwanamke kati ya chungu kidogo chenye viazi vichache na mmea unaoendelea kukua ardhini.

## Drawings and formats: titles, what drawings show in words, the names and sizes that stand in them

month-year = { month } { $year }
calendar-title = Cha kufanya, mwezi kwa mwezi
guide-title = Mwongozo wa mkutano
card-fold = Kunja kwenye mistari iliyokatikakatika. Kata mstari mnene.
record-title = Ukaguzi wa viazi vilivyohifadhiwa
record-how = Kila unapokagua, toa viazi vyote. Vilivyooza vifukie kwenye shimo refu au uviteketeze kwa moto. Andika ulichokuta, na umwonyeshe afisa ugani wako kadi hii.
record-planned = Siku kwenye mpango
record-done = Siku halisi ya ukaguzi
record-healthy = Vizuri, vya kupanga tena
# doubt: "vibovu" (the bad ones) for all that is thrown away, be it rotten, mouldy or bored; "vilivyotupwa" is too long for its column.
record-thrown-away = Vibovu
record-sprouted = Vyenye chipukizi
record-remark = Maelezo
record-stored = Viazi vilivyohifadhiwa
booklet-index = Mashamba kwa majina
span-brief = { BRIEF($from) } – { BRIEF($to) }
# doubt: "sm" for sentimita, where a drawing has little room.
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
drawing-bed = Kitalu kutoka juu
drawing-bed-alt = Kitalu kutoka juu: mistari ya viazi, urefu wake na upana wake.
drawing-rows = Shamba kutoka juu
drawing-rows-alt = Sehemu ya shamba kutoka juu: umbali kati ya matuta, na vipande vilivyopandwa.
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
script-how-distance = Mdomo uwe umbali wa kiganja na vidole vyake kutoka kwenye kipaza sauti au simu, kando yake kidogo. Usibadilishe umbali huo hadi mwisho.
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

ask-mark-plants = Mimea ipi ina nguvu zaidi?
ask-gather-sand = Nani ana mchanga mkavu, na tutauchimba vipi salama?
ask-check-plants = Mimea yenye ugonjwa inaonekanaje?
ask-cut-vines = Ukikata fupi mno, nini kitatokea?
ask-harvest = Utachimbaje bila kuumiza viazi?
ask-fill-container = Nyumbani, wapi ni pakavu na penye ubaridi, mbali na watoto na wanyama?
ask-monthly-check = Ukiona viazi vibovu, utavifukia wapi?
ask-prepare-bed = Maji yako wapi, na nani atawalinda watoto?
ask-last-check = Viazi vyako vingapi vimechipua?
ask-plant-bed = Nini kinaweza kukuchelewesha?
ask-water-bed = Usipokuwepo, nani atamwagilia?
ask-cut-for-planting = Unajuaje kuwa mvua zimeanza kweli?
ask-plant-field = Utaanza kupanda sehemu ipi?
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
