### Kiswahili, rasimu: maneno ya karatasi. Bado hayajasomwa na msemaji fasaha.
### Draft, as printed on sheets. Nouns: kiazi/viazi (root), mmea/mimea (plant), marando (vines), shina (stem),
### kipande/vipande vya marando (cutting), kifundo/vifundo (node), tabaka/matabaka (layer), chombo/vyombo (container),
### mzigo/mizigo (load), dumu/madumu (jerrycan), kitalu (seedbed), tuta/matuta (ridge; "tuta la duara" is a mound),
### fukusi (weevil). The reader is addressed as "wewe"; a group as "ninyi" where it is named.

## Words of the sheet itself

sheet-title = Viazi vitamu: kutoka mavuno haya hadi mvua zijazo
sheet-for = Kwa
sheet-place = Mahali
sheet-rains = Mvua zinatarajiwa
sheet-harvest = Kuvuna shamba la zamani
sheet-amounts = Unachohitaji
sheet-steps = Cha kufanya, na lini
sheet-cautions = Tahadhari
sheet-when = Lini
sheet-page = Ukurasa
status-draft = Rasimu: maneno haya bado hayajasomwa na msemaji fasaha wa Kiswahili.
status-read = Maneno yamesomwa na msemaji fasaha, lakini bado hayajaidhinishwa.
status-approved = Maneno yameidhinishwa.

## Words of the cue sheet

cue-title = Ujumbe
cue-language = Lugha
cue-voice = Sauti
cue-rights = Haki za matumizi
cue-status = Hali ya sauti
cue-length = Muda
cue-loudness = Ukubwa wa sauti
# doubt: "kilele halisi" for true peak, a term of sound engineers, who often use the English words.
cue-true-peak = Kilele halisi cha sauti
cue-from = Kuanzia
cue-to = Hadi
cue-words = Maneno
cue-clip = Kipande cha sauti
voice-stand-in = ya muda
voice-draft = imerekodiwa, bado haijaidhinishwa
voice-approved = imeidhinishwa
voice-stand-in-remark = Hii ni sauti ya muda iliyotengenezwa na mashine. Itabadilishwa na sauti ya mtu.

## Amounts

amount-plants = Mimea ya kuwekewa alama
amount-plants-each = Mimea ambayo kila mwanachama anaiwekea alama
amount-roots = Viazi vya kuhifadhi
amount-cuttings = Vipande vya marando kwa ajili ya shamba
amount-first-cuttings = Vipande vinavyotarajiwa ukikata mara ya kwanza
amount-containers = Vyombo
amount-layers = Matabaka ya viazi katika kila chombo
amount-roots-per-layer = Viazi katika kila tabaka
amount-sand = Mchanga mkavu
amount-loads = Mizigo ya mchanga ya kubeba
amount-bed = Kitalu
amount-water = Maji ya kitalu, kila siku
amount-jerrycans = Madumu ya maji, kila siku

sand-value = { MEASURE($sand_l, unit: "litre") }, kama { MEASURE($sand_kg, unit: "kilogram") }
bed-value = { MEASURE($bed_length_m, unit: "metre") } × { MEASURE($bed_width_m, unit: "metre") }
water-value = { MEASURE($water_l, unit: "litre") }
roots-for-zone = { $roots } (idadi ya mfano; ongeza au punguza kulingana na kila shamba)

## Dates and units

date = { $day } { $month ->
    [1] Januari
    [2] Februari
    [3] Machi
    [4] Aprili
    [5] Mei
    [6] Juni
    [7] Julai
    [8] Agosti
    [9] Septemba
    [10] Oktoba
    [11] Novemba
   *[12] Desemba
 } { $year }
span = { DAY($from) } – { DAY($to) }
span-day = { DAY($from) }
unit-kilogram = kilo { $n }
unit-litre = lita { $n }
unit-metre = mita { $n }
unit-centimetre = sentimita { $n }

## Opening and closing

opening = { $kind ->
    [zone] Mpango huu ni wa kila mkulima wa eneo hili. Kiasi kilichotajwa ni cha viazi { $roots }: ongeza au punguza kulingana na shamba lako.
   *[other] Tarehe za mpango huu zimehesabiwa kwenda nyuma, kutoka siku ambayo mvua zinatarajiwa kuanza: karibu na tarehe { DAY($rains) }.
 }
closing = Afisa ugani wako anajua aina za viazi, tarehe na kanuni za eneo lako. Akikuambia jambo tofauti na karatasi hii, fuata ushauri wake.

## Steps: title, text (.text), picture in words (.alt)

mark-plants = Weka alama kwenye mimea { $plants } yenye afya
    .text = { $kind ->
        [group] Chagueni pamoja mimea { $plants } yenye nguvu; kila mwanachama aweke alama kwenye { $plants_each ->
            [one] mmea { $plants_each }
           *[other] mimea { $plants_each }
         }.
       *[other] Chagua mimea { $plants } yenye nguvu.
     } Chomeka kijiti kando ya kila mmea. Chagua tu mimea yenye majani makubwa na safi, isiyo na dalili yoyote ya ugonjwa. Mimea hiyo itatoa viazi kama { $roots } vya kuhifadhi.
    .alt = Mkono unachomeka kijiti ardhini kando ya mmea wenye nguvu.
# doubt: "mchanga wenye chembe kubwa" for coarse sand, "mchanga laini" for fine sand; some say "punje" or "chenga".
gather-sand = Leta mchanga mkavu
    .text = Leta { MEASURE($sand_l, unit: "litre") } za mchanga safi wenye chembe kubwa, kama { MEASURE($sand_kg, unit: "kilogram") }. Ukaushe mahali penye paa, kisha uache upoe. Mchanga laini, wenye unyevu au wenye joto huozesha viazi. Usibebe zaidi ya { MEASURE($load_kg, unit: "kilogram") } kwa mara moja: itakuwa kama { $loads ->
        [one] mzigo { $loads }
       *[other] mizigo { $loads }
     }.
    .alt = Mikono inachota mchanga mkavu kutoka kwenye lundo na kuutia kwenye ndoo ndogo.
check-plants = Kagua tena mimea yenye alama
    .text = Tazama kama kuna majani madogo, yaliyojikunja au yenye madoa, marando yaliyodumaa, au matundu kwenye shina karibu na ardhi. Ukiwa na shaka, ondoa kijiti na usichukue chochote kutoka kwenye mmea huo.
    .alt = Mmea mgonjwa wenye majani yaliyojikunja, kando ya mmea wenye afya.
# doubt: "marando" for vines is Tanzanian; in parts of Kenya other words are used.
# doubt: "kiganja pamoja na vidole" for a hand's length, because "mkono" alone is also the arm.
cut-vines = Kata marando ya mimea yenye alama
    .text = Yakate na uache shina la { MEASURE($stem_cm, unit: "centimetre") }, urefu wa kiganja pamoja na vidole. Ganda la viazi litakuwa gumu, na viazi vitakaa muda mrefu bila kuharibika.
    .alt = Kisu kinakata marando na kuacha shina la urefu wa kiganja juu ya ardhi.
harvest = Chimba, kisha chagua viazi { $roots }
    .text = Chimba wakati tu udongo ni mkavu, na utoe viazi bila kuvikata wala kuvichubua. Chukua viazi { $roots } vya ukubwa wa kati, vyenye urefu kama wa kiganja pamoja na vidole, na ganda lisilo na jeraha. Viazi vyenye majeraha ni vya kupika, si vya kuhifadhi. Futa udongo kwa mkono, na usivioshe kamwe. Viache kivulini kwa saa kadhaa, jua lisivipige.
    .alt = Jembe linatoa viazi ardhini bila kuvikata.
fill-container = Panga viazi kwenye mchanga
    .text = Tumia { $containers ->
        [one] chombo { $containers } chenye
       *[other] vyombo { $containers } vyenye
     } kuta imara: beseni, chungu, ndoo au kikapu kilichosukwa kwa kubana. Usitumie magunia. Tandika karatasi ndani, chini na pembeni. Jaza chombo pale kitakapokaa: mahali penye ubaridi, pakavu na penye kivuli, mbali na watoto, wanyama na mvua. Anza na mchanga wa kina cha { MEASURE($base_cm, unit: "centimetre") }. Katika kila tabaka panga viazi visivyozidi { $roots_per_layer }, visigusane wala visiguse ukuta wa chombo. Vifunike kwa mchanga wa kina cha { MEASURE($layer_cm, unit: "centimetre") }. { $layers ->
        [one] Panga tabaka { $layers } tu.
       *[other] Kisha panga tabaka linalofuata, hadi yafike matabaka { $layers }.
     } Malizia na mchanga wa kina cha { MEASURE($top_cm, unit: "centimetre") }: mchanga huo huzuia panya, wadudu na kuku. Usiweke kifuniko juu ya chombo.
    .alt = Beseni lililokatwa kuonyesha ndani: mchanga, viazi visivyogusana, mchanga, viazi, na mchanga mwingi juu.
# doubt: "machipukizi" for sprouts on the root; the shoots cut in the bed are called "marando".
monthly-check = Kagua viazi kila mwezi
    .text = Toa kila kiazi ukitazame. Tupa vilivyooza au vilivyotobolewa na wadudu. Ondoa machipukizi kwa kuyasugua. Viazi vizuri vipange tena vilevile kama mwanzo, na uandike vimebaki vingapi. Hadi ukaguzi unaofuata, usiviguse.
    .alt = Mkono unatoa kiazi kwenye beseni; kiazi kilichooza kiko kando, kina alama ya X.
prepare-bed = Tengeneza kitalu
    .text = Tengeneza kitalu cha { MEASURE($bed_length_m, unit: "metre") } kwa { MEASURE($bed_width_m, unit: "metre") } karibu na maji. Tifua udongo vizuri. Weka uzio ili mbuzi na kuku wasiingie.
    .alt = Kitalu chenye mistari, kimezungushiwa uzio, na jembe kando yake.
last-check = Kagua kwa mara ya mwisho na uache machipukizi
    .text = Toa kila kiazi. Tupa vilivyooza au vilivyotobolewa na wadudu. Safari hii usiondoe machipukizi: viazi hivi sasa vinaenda kitaluni.
    .alt = Kiazi chenye machipukizi, tayari kwa kitalu.
plant-bed = Panda viazi kitaluni
    .text = Laza viazi kwa mistari, kama { MEASURE($spacing_cm, unit: "centimetre") } kutoka kiazi hadi kiazi, na uvifunike kwa udongo kidogo.
    .alt = Viazi vimelazwa kwa mstari; mkono unavifunika kwa udongo.
# doubt: "dumu" for a jerrycan; "mtungi" in parts of Kenya.
water-bed = Mwagilia kitalu
    .text = Kitalu kikijaa majani, mwagilia kama { MEASURE($water_l, unit: "litre") } kwa siku, yaani { $jerrycans ->
        [one] dumu { $jerrycans }
       *[other] madumu { $jerrycans }
     }. Mimea ikiwa bado midogo, punguza maji; siku za joto na upepo, ongeza. Mvua ikitosha, acha kumwagilia.
    .alt = Maji yanamwagwa kwenye kitalu chenye machipukizi.
# doubt: "vifundo" for the nodes of a vine; some say "macho" or "pingili".
# doubt: "visiki" for the stubs left in the bed.
cut-for-planting = Kata marando ya kupanda
    .text = Mvua zikishaanza, kata vipande vya { MEASURE($cutting_cm, unit: "centimetre") } vyenye vifundo visivyopungua { $nodes }, kutoka kwenye marando yenye afya tu. Ukikata mara ya kwanza utapata vipande kama { $first_cuttings }. Acha visiki: vitatoa vipande vingine baada ya wiki nne hadi sita. Weka vipande kivulini, na uvipande ndani ya siku mbili.
    .alt = Mkono unakata marando kitaluni na kuacha visiki.
# doubt: "tuta la duara" for a mound; a local word may be better.
plant-field = Panda shambani
    .text = Panda kwenye udongo wenye unyevu tu. { $layout ->
        [mounds] Kwenye kila tuta la duara panda { $on_mound ->
            [one] kipande { $on_mound }
           *[other] vipande { $on_mound }
         }; kati ya tuta na tuta acha { MEASURE($between_cm, unit: "centimetre") }.
       *[ridges] Kwenye tuta panda kipande kimoja kila baada ya { MEASURE($along_cm, unit: "centimetre") }; kati ya tuta na tuta acha { MEASURE($between_cm, unit: "centimetre") }.
     } Fukia vifundo viwili au vitatu. { $kind ->
        [zone] Viazi { $roots } hutoa vipande { $cuttings } katika msimu wote wa kitalu.
       *[other] Shamba linahitaji vipande { $cuttings }.
     } Baada ya wiki mbili, panda tena penye mapengo.
    .alt = Vipande vya marando vimesimama kwa mstari juu ya tuta, chini ya wingu la mvua.
first-harvest = Jaribu viazi vya kwanza
    .text = Papasa chini ya mimea michache uone kama kuna viazi vilivyofikia ukubwa wa kula. Usiache viazi vilivyokomaa kwenye udongo mkavu kwa muda mrefu: fukusi wa viazi watavishambulia.
    .alt = Mmea umeng'olewa ukiwa na viazi vikubwa, na kikapu kilichojaa.

## Cautions: title, text (.text), picture in words (.alt)

caution-rot = Viazi vilivyooza, vyenye ukungu au vilivyotobolewa na wadudu
    .text = Usivile, usiwape wanyama, wala usivipande. Hata sehemu zake zinazoonekana nzuri zinaweza kuwa na sumu. Vifukie kwenye shimo refu au uvichome moto.
    .alt = Kiazi kilichooza chenye alama ya X, kando ya mnyama.
caution-virus = Mimea migonjwa
    .text = Majani yenye madoa, majani madogo au yaliyojipinda, na marando yaliyodumaa ni dalili za virusi. Usichukue kamwe viazi wala marando kutoka kwenye mmea kama huo.
    .alt = Mmea mdogo wenye majani yaliyojipinda, una alama ya X.
# doubt: "fukusi" for the sweet potato weevil; explained here in plain words, since not everyone knows the name.
caution-cracks = Nyufa kwenye udongo
    .text = Fukusi ni wadudu wanaotoboa viazi. Huingia kwenye viazi kupitia nyufa. Zifunike kwa kupandishia udongo mara tu unapoziona.
    .alt = Tuta lenye ufa, na fukusi kwenye ufa huo.
caution-heavy-sand = Mchanga ni mzito
    .text = Beba mizigo midogo. Jaza chombo pale kitakapokaa, na usikiinue kikiwa kimejaa.
    .alt = Mtu ameinama chini ya gunia kubwa, picha ina alama ya X; kando yake kuna ndoo ndogo.
caution-riverbed = Mchanga wa mtoni
    .text = Chukua mchanga wakati tu mto umekauka, mbali na kingo zenye mwinuko mkali zinazoweza kuporomoka, na pale tu kanuni za eneo lako zinaporuhusu.
    .alt = Ukingo wa mto wenye mwinuko mkali unamwangukia mtu anayechimba, picha ina alama ya X.
caution-water-children = Maji, watoto na wanyama
    .text = Funika maji uliyohifadhi. Weka uzio kuzunguka visima na mashimo ili mtoto yeyote asitumbukie. Usiruhusu mbuzi na kuku waingie kitaluni.
    .alt = Pipa lililofunikwa, na uzio unaomzuia mtoto asifike kwenye maji.
caution-store-dry = Usimwagilie kamwe viazi vilivyohifadhiwa
    .text = Mchanga lazima ubaki mkavu kuanzia siku ya kwanza hadi siku ya mwisho. Mchanga wenye unyevu hufanya viazi vichipue mapema au vioze.
    .alt = Chombo cha kumwagilia juu ya beseni, picha ina alama ya X.
caution-forecast = Tarehe hizi ni za wastani, si utabiri
    .text = Mvua zinaweza kuja mapema au kuchelewa kuliko tarehe zilizoandikwa hapa. Tazama anga na udongo. Panda wakati tu udongo una unyevu.
    .alt = Wingu, nusu yake ina mvua na nusu haina.
caution-try-first = Jaribu kwanza kwa viazi vichache
    .text = Ikiwa jambo hili ni jipya kwako, anza na viazi vichache, na utunze baadhi ya marando yako kwa njia ya zamani pia.
    .alt = Viazi vichache kwenye chungu kidogo; watu wawili wanazungumza kando yake.
