### Kiswahili, rasimu: maneno ya redio na simu. Bado hayajasomwa na msemaji fasaha.
### Draft. Every literal text is recorded as it stands here, cut at the { … }.
### No digits, no abbreviations. Numbers: SAY, days: DAY and SPAN, measures: MEASURE.
### Forms: mimea class-4, viazi, vyombo, vipande and vifundo class-8, matabaka and madumu class-6.

## Dates and units

# doubt: many farmers say "mwezi wa kumi" rather than "Oktoba"; names are kept because a span would join
#   "mwezi wa kumi" and "na", which sounds like the start of a larger number.
date = tarehe { SAY($day, form: "date") } { $month ->
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
 }
span = kati ya { DAY($from) } na { DAY($to) }
span-day = { DAY($from) }
unit-kilogram = kilo { SAY($n, form: "cardinal") }
unit-litre = lita { SAY($n, form: "cardinal") }
unit-metre = mita { SAY($n, form: "cardinal") }
unit-centimetre = sentimita { SAY($n, form: "cardinal") }

## Opening and closing

opening = Viazi vitamu, kutoka mavuno haya hadi mvua zijazo. { $kind ->
    [zone] Kiasi utakachosikia ni cha viazi { SAY($roots, form: "class-8") }. Ongeza au punguza kulingana na shamba lako.
   *[other] Mvua zinatarajiwa kuanza karibu na { DAY($rains) }.
 }
closing = Afisa ugani wako anajua aina za viazi, tarehe na kanuni za eneo lako. Akikuambia jambo tofauti na ujumbe huu, fuata ushauri wake.

## Steps

mark-plants = Chagua mimea ya kutoa viazi vya mbegu { SPAN($when) }. Weka alama kwenye mimea { SAY($plants, form: "class-4") }. { $kind ->
    [group] { $plants_each ->
        [one] Kila mwanachama aweke alama kwenye mmea { SAY($plants_each, form: "class-4") }.
       *[other] Kila mwanachama aweke alama kwenye mimea { SAY($plants_each, form: "class-4") }.
     } Chomekeni kijiti kando ya kila mmea.
   *[other] Chomeka kijiti kando ya kila mmea.
 } Chagua tu mimea yenye nguvu, yenye majani makubwa na safi, isiyo na dalili yoyote ya ugonjwa. Mimea hiyo itatoa viazi vya kuhifadhi kama { SAY($roots, form: "class-8") }.
gather-sand = Leta mchanga mkavu { SPAN($when) }. Unahitaji mchanga wa { MEASURE($sand_l, unit: "litre") }. Uzito wake ni kama { MEASURE($sand_kg, unit: "kilogram") }. Chagua mchanga safi wenye chembe kubwa. Ukaushe mahali penye paa, kisha uache upoe. Mchanga laini, wenye unyevu au wenye joto huozesha viazi.
check-plants = Kagua tena mimea yenye alama { SPAN($when) }. Tazama kama kuna majani madogo, yaliyojikunja au yenye madoa, marando yaliyodumaa, au matundu kwenye shina karibu na ardhi. Ukiwa na shaka, ondoa kijiti na usichukue chochote kutoka kwenye mmea huo.
# doubt: "kiganja pamoja na vidole" for a hand's length, because "mkono" alone is also the arm.
cut-vines = Kata marando ya mimea yenye alama { SPAN($when) }. Acha shina la urefu wa kiganja pamoja na vidole. Ganda la viazi litakuwa gumu, na viazi vitakaa muda mrefu bila kuharibika.
harvest = Chimba viazi { SPAN($when) }. Chimba wakati tu udongo ni mkavu, na utoe viazi bila kuvikata wala kuvichubua. Chukua viazi { SAY($roots, form: "class-8") } vya ukubwa wa kati, vyenye urefu kama wa kiganja pamoja na vidole, na ganda lisilo na jeraha. Viazi vyenye majeraha ni vya kupika, si vya kuhifadhi. Futa udongo kwa mkono, na usivioshe kamwe. Viache kivulini kwa saa kadhaa.
fill-container = Panga viazi kwenye mchanga { SPAN($when) }. Tumia beseni, chungu, ndoo au kikapu kilichosukwa kwa kubana. Usitumie magunia. Tandika karatasi ndani. Jaza chombo pale kitakapokaa: mahali penye ubaridi, pakavu na penye kivuli, mbali na watoto, wanyama na mvua. { $containers ->
    [one] Unahitaji chombo { SAY($containers, form: "class-8") }.
   *[other] Unahitaji vyombo { SAY($containers, form: "class-8") }.
 } Anza na mchanga wa kina cha { MEASURE($base_cm, unit: "centimetre") }. Katika kila tabaka panga viazi visivyozidi { SAY($roots_per_layer, form: "class-8") }. Visigusane wala visiguse ukuta wa chombo. Vifunike kwa mchanga wa kina cha { MEASURE($layer_cm, unit: "centimetre") }. { $layers ->
    [one] Panga tabaka moja tu.
   *[other] Kisha panga tabaka linalofuata, hadi yafike matabaka { SAY($layers, form: "class-6") }.
 } Malizia na mchanga wa kina cha { MEASURE($top_cm, unit: "centimetre") }. Mchanga huo huzuia panya, wadudu na kuku. Usiweke kifuniko juu ya chombo.
monthly-check = Kagua viazi kila mwezi, mara ya kwanza { DAY($first) }. Toa kila kiazi ukitazame. Tupa vilivyooza au vilivyotobolewa na wadudu. Ondoa machipukizi kwa kuyasugua. Viazi vizuri vipange tena vilevile kama mwanzo, na uandike vimebaki vingapi. Hadi ukaguzi unaofuata, usiviguse.
prepare-bed = Tengeneza kitalu { SPAN($when) }. Urefu uwe { MEASURE($bed_length_m, unit: "metre") }, na upana { MEASURE($bed_width_m, unit: "metre") }. Kiwe karibu na maji. Tifua udongo vizuri. Weka uzio ili mbuzi na kuku wasiingie.
last-check = Kagua viazi kwa mara ya mwisho { DAY($first) }. Tupa vilivyooza au vilivyotobolewa na wadudu. Safari hii usiondoe machipukizi. Viazi hivi sasa vinaenda kitaluni.
plant-bed = Panda viazi kitaluni { SPAN($when) }. Vilaze kwa mistari, kama { MEASURE($spacing_cm, unit: "centimetre") } kutoka kiazi hadi kiazi, na uvifunike kwa udongo kidogo.
water-bed = Mwagilia kitalu { SPAN($when) }. Kitalu kikijaa majani, mwagilia kila siku { MEASURE($water_l, unit: "litre") }. { $jerrycans ->
    [one] Hilo ni dumu { SAY($jerrycans, form: "class-6") }.
   *[other] Hayo ni madumu { SAY($jerrycans, form: "class-6") }.
 } Mimea ikiwa bado midogo, punguza maji. Siku za joto na upepo, ongeza maji. Mvua ikitosha, acha kumwagilia.
# doubt: "vifundo" for the nodes of a vine; some say "macho" or "pingili".
cut-for-planting = Mvua zikishaanza, { SPAN($when) }, kata marando ya kupanda. Kata vipande vya { MEASURE($cutting_cm, unit: "centimetre") }, vyenye vifundo visivyopungua { SAY($nodes, form: "class-8") }, kutoka kwenye marando yenye afya tu. Ukikata mara ya kwanza utapata vipande kama { SAY($first_cuttings, form: "class-8") }. Acha visiki. Vitatoa vipande vingine baada ya wiki nne hadi sita. Weka vipande kivulini, na uvipande ndani ya siku mbili.
# doubt: "tuta la duara" for a mound; a local word may be better.
plant-field = Panda shambani udongo ukiwa na unyevu, { SPAN($when) }. { $layout ->
    [mounds] { $on_mound ->
        [one] Kwenye kila tuta la duara panda kipande { SAY($on_mound, form: "class-8") }.
       *[other] Kwenye kila tuta la duara panda vipande { SAY($on_mound, form: "class-8") }.
     }
   *[ridges] Kwenye tuta panda kipande kimoja kila baada ya { MEASURE($along_cm, unit: "centimetre") }.
 } Fukia vifundo viwili au vitatu. Baada ya wiki mbili, panda tena penye mapengo.
first-harvest = Jaribu viazi vya kwanza { SPAN($when) }. Papasa chini ya mimea michache uone kama kuna viazi vilivyofikia ukubwa wa kula. Usiache viazi vilivyokomaa kwenye udongo mkavu kwa muda mrefu. Fukusi wa viazi watavishambulia.

## Cautions

caution-rot = Tahadhari. Usile viazi vilivyooza, vyenye ukungu au vilivyotobolewa na wadudu. Usiwape wanyama viazi hivyo, wala usivipande. Hata sehemu zake zinazoonekana nzuri zinaweza kuwa na sumu. Vifukie kwenye shimo refu au uvichome moto.
caution-virus = Tahadhari. Majani yenye madoa, majani madogo au yaliyojipinda, na marando yaliyodumaa ni dalili za virusi. Usichukue kamwe viazi wala marando kutoka kwenye mmea kama huo.
# doubt: "fukusi" for the sweet potato weevil; explained here in plain words, since not everyone knows the name.
caution-cracks = Fukusi ni wadudu wanaotoboa viazi. Huingia kwenye viazi kupitia nyufa za udongo. Zifunike kwa kupandishia udongo mara tu unapoziona.
caution-heavy-sand = Tahadhari, mchanga ni mzito. Beba mizigo midogo. Jaza chombo pale kitakapokaa, na usikiinue kikiwa kimejaa.
caution-riverbed = Chukua mchanga wa mtoni wakati tu mto umekauka, mbali na kingo zenye mwinuko mkali zinazoweza kuporomoka, na pale tu kanuni za eneo lako zinaporuhusu.
caution-water-children = Walinde watoto. Funika maji uliyohifadhi. Weka uzio kuzunguka visima na mashimo. Usiruhusu mbuzi na kuku waingie kitaluni.
caution-store-dry = Usimwagilie kamwe viazi vilivyohifadhiwa. Mchanga lazima ubaki mkavu kuanzia siku ya kwanza hadi siku ya mwisho.
caution-forecast = Tarehe hizi ni za wastani, si utabiri. Mvua zinaweza kuja mapema au kuchelewa. Panda wakati tu udongo una unyevu.
caution-try-first = Ikiwa jambo hili ni jipya kwako, anza na viazi vichache, na utunze baadhi ya marando yako kwa njia ya zamani pia.
