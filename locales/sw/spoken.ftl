### Kiswahili, rasimu: maneno ya redio na simu. Bado hayajasomwa na msemaji fasaha.
### Draft. Every literal text is recorded as it stands here, cut at the { … }.
### No digits, no abbreviations. Numbers: SAY, days: DAY and SPAN, measures: MEASURE.
### Forms: mmea and mimea class-4, viazi, vyombo, vipande and vifundo class-8, matabaka and madumu class-6.

## Dates and units

# doubt: many farmers say "mwezi wa kumi" rather than "Oktoba"; names are kept because a span would join
#   "mwezi wa kumi" and "na", which sounds like the start of a larger number.
date = tarehe { SAY($day, form: "date") } { month }
week = wiki ya { $week ->
    [1] kwanza
    [2] pili
    [3] tatu
    [4] nne
   *[5] mwisho
 } ya { month }
span = kati ya { DAY($from) } na { DAY($to) }
span-day = { DAY($from) }
unit-kilogram = kilo { SAY($n, form: "cardinal") }
unit-litre = lita { SAY($n, form: "cardinal") }
# doubt: a decimal is said with "nukta"; many farmers would say "mita moja na nusu".
unit-metre = mita { SAY($n, form: "cardinal") }
unit-centimetre = sentimita { SAY($n, form: "cardinal") }
unit-hand = { $n ->
    [one] kiganja { SAY($n, form: "class-8") }
   *[other] viganja { SAY($n, form: "class-8") }
 }
unit-thumb-joint = { $n ->
    [one] kipingili { SAY($n, form: "class-8") } cha dole gumba
   *[other] vipingili { SAY($n, form: "class-8") } vya dole gumba
 }
unit-jerrycan = { $n ->
    [one] dumu { SAY($n, form: "class-6") }
   *[other] madumu { SAY($n, form: "class-6") }
 }
unit-bundle = { $n ->
    [one] fungu { SAY($n, form: "class-6") }
   *[other] mafungu { SAY($n, form: "class-6") }
 }

## Opening and closing

opening = Viazi vitamu, kutoka mavuno haya hadi mvua zijazo. { $kind ->
    [zone] Mvua zinatarajiwa kuanza karibu na { WEEK($rains) }. Vipimo utakavyosikia vimehesabiwa kwa viazi { SAY($roots, form: "class-8") }. Ongeza au punguza kulingana na ukubwa wa shamba lako.
   *[other] Mvua zinatarajiwa kuanza karibu na { DAY($rains) }.
 }
closing = Afisa ugani wako anajua aina za viazi, tarehe na sheria za eneo lako. Akikuambia jambo tofauti na ujumbe huu, fuata ushauri wake.

## Steps

# doubt: dates stand first ("kati ya tarehe …, chagua …"), so that no number is heard as part of the noun before it.
# doubt: "viazi vya mbegu" for the roots kept as planting material.
mark-plants = { SPAN($when) }, chagua mimea itakayotoa viazi vya mbegu. Weka alama ya kijiti kwenye mimea { SAY($plants, form: "class-4") }. { $kind ->
    [group] { $plants_each ->
        [one] Kila mwanachama aweke alama kwenye mmea { SAY($plants_each, form: "class-4") }.
       *[other] Kila mwanachama aweke alama kwenye mimea { SAY($plants_each, form: "class-4") }.
     } Chomeka kijiti kando ya kila mmea.
   *[other] Chomeka kijiti kando ya kila mmea.
 } Chagua mimea yenye nguvu tu, yenye majani makubwa na safi. Isiwe na dalili yoyote ya ugonjwa. Mimea hiyo itatoa viazi kama { SAY($roots, form: "class-8") } vya kuhifadhi.
# doubt: "chembe kubwa" for coarse sand; some say "punje".
gather-sand = { SPAN($when) }, leta mchanga mkavu. Unahitaji mchanga kiasi cha { MEASURE($sand_l, unit: "litre") }. Uzito wake ni kama { MEASURE($sand_kg, unit: "kilogram") }. Chagua mchanga safi wenye chembe kubwa. Ukaushe chini ya paa, kisha uuache upoe. Mchanga laini, wenye unyevu au wenye joto huozesha viazi.
# doubt: "marando" for vines is Tanzanian and coastal; a local word may be better.
check-plants = { SPAN($when) }, kagua tena mimea yenye alama. Je, majani ni madogo, yamejikunja au yana madoa? Je, marando yamedumaa? Je, shina lina matundu karibu na ardhi? Ukiona hivyo, au ukiwa na shaka, ondoa kijiti. Usichukue chochote kutoka kwenye mmea huo.
# doubt: "kiganja na vidole vyake" for a hand's length (wrist to fingertips), because "mkono" alone is also the arm.
cut-vines = { SPAN($when) }, kata marando ya mimea yenye alama. Acha shina lenye urefu wa kiganja na vidole vyake. Hivyo ganda la viazi litakuwa gumu, na viazi vitakaa muda mrefu bila kuharibika.
# doubt: whether "kwenye udongo mkavu tu" is heard as a firm "only"; the same in plant-field and caution-forecast.
harvest = { SPAN($when) }, chimba viazi. Chimba kwenye udongo mkavu tu. Toa viazi bila kuvikata wala kuvichubua. Chukua viazi { SAY($roots, form: "class-8") } vya ukubwa wa kati. Viwe na urefu kama wa kiganja na vidole vyake. Visiwe na jeraha lolote. Viazi vyenye majeraha ni vya kupika, si vya kuhifadhi. Pangusa udongo kwa mkono. Usivioshe viazi kamwe. Viache kivulini kwa saa kadhaa.
fill-container = { SPAN($when) }, panga viazi kwenye mchanga. Tumia beseni, chungu, ndoo au kikapu kilichosukwa bila mianya. Usitumie magunia. Tandika karatasi ndani. Jaza chombo kikiwa mahali kitakapokaa. Pawe pakavu, penye ubaridi na kivuli, mbali na watoto, wanyama na mvua. { $containers ->
    [one] Unahitaji chombo { SAY($containers, form: "class-8") }.
   *[other] Unahitaji vyombo { SAY($containers, form: "class-8") }.
 } Anza kwa mchanga wenye kina cha { MEASURE($base_cm, unit: "centimetre") }. { $layer_widths ->
    [uneven] Katika tabaka la chini panga viazi visivyozidi { SAY($roots_per_layer, form: "class-8") }, na katika tabaka la juu visivyozidi { SAY($roots_top, form: "class-8") }.
   *[even] Katika kila tabaka panga viazi visivyozidi { SAY($roots_per_layer, form: "class-8") }.
 } Visigusane wala visiguse kuta za chombo. Vifunike kwa mchanga wenye kina cha { MEASURE($layer_cm, unit: "centimetre") }. { $layers ->
    [one] Panga tabaka moja tu.
   *[other] Kisha panga viazi vingine, hadi yawe matabaka { SAY($layers, form: "class-6") }.
 } Malizia kwa mchanga wenye kina cha { MEASURE($top_cm, unit: "centimetre") }. Mchanga huo huzuia panya, wadudu na kuku. Usifunike chombo kwa kifuniko.
monthly-check = Kagua viazi kila mwezi. { $turn ->
    [next] Ukaguzi unaofuata uwe
   *[first] Ukaguzi wa kwanza uwe
 } { DAY($first) }. Toa viazi vyote, na utazame kimoja kimoja. Ondoa vilivyooza, vyenye ukungu au vilivyotobolewa na wadudu. Vifukie kwenye shimo refu au uviteketeze kwa moto. Usivitupe ovyo. Ondoa machipukizi kwa kuyasugua. Viazi vizuri vipange tena vilevile kama mwanzo, na uandike vimebaki vingapi. Hadi ukaguzi unaofuata, usiviguse.
prepare-bed = { SPAN($when) }, tengeneza kitalu. Urefu uwe { MEASURE($bed_length_m, unit: "metre") }, na upana { MEASURE($bed_width_m, unit: "metre") }. Kitalu kiwe karibu na maji. Tifua udongo vizuri. Weka uzio ili mbuzi na kuku wasiingie.
last-check = { DAY($first) }, kagua viazi kwa mara ya mwisho. Ondoa vilivyooza, vyenye ukungu au vilivyotobolewa na wadudu. Vifukie kwenye shimo refu au uviteketeze kwa moto. Usivitupe ovyo. Safari hii usiondoe machipukizi. Viazi vizuri sasa vitapandwa kitaluni.
plant-bed = { SPAN($when) }, panda viazi kitaluni. Vilaze katika { $bed_rows ->
    [one] mstari { SAY($bed_rows, form: "class-4") }.
   *[other] mistari { SAY($bed_rows, form: "class-4") }.
 } Acha kama { MEASURE($spacing_cm, unit: "centimetre") } kati ya mstari na mstari. Vifunike kwa udongo kidogo.
# doubt: "dumu" for a jerrycan ("mtungi" in parts of Kenya), and whether its size should be said.
water-bed = { SPAN($when) }, mwagilia kitalu. Kitalu kikijaa majani, mwagilia { MEASURE($water_l, unit: "litre") } kila siku. { $jerrycans ->
    [one] Ni sawa na dumu { SAY($jerrycans, form: "class-6") }.
   *[other] Ni sawa na madumu { SAY($jerrycans, form: "class-6") }.
 } Mimea ikiwa bado midogo, punguza maji. Siku za joto na upepo, ongeza maji. Mvua ikitosha, acha kumwagilia.
# doubt: "vifundo" for the nodes of a vine; some say "macho" or "pingili".
# doubt: "visiki" for the stubs left in the bed.
cut-for-planting = { SPAN($when) }, mvua zikishaanza, kata marando ya kupanda. Mvua zikichelewa, subiri. Kata vipande vyenye urefu wa { MEASURE($cutting_cm, unit: "centimetre") }. Kila kipande kiwe na vifundo visivyopungua { SAY($nodes, form: "class-8") }. Kata kutoka kwenye marando yenye afya tu. { $plan_by ->
    [practice] Kwa mazoea ya kawaida, ukikata mara ya kwanza utapata kama vipande
   *[print] Ukikata mara ya kwanza utapata kama vipande
 } { SAY($first_cuttings_low, form: "class-8") } hadi { SAY($first_cuttings_high, form: "class-8") }. Acha visiki ardhini. Vitatoa vipande vingine baada ya wiki nne hadi sita. Weka vipande kivulini, na uvipande ndani ya siku mbili.
# doubt: "tuta la duara" for a mound; a local word may be better.
plant-field = { SPAN($when) }, panda shambani, lakini kwenye udongo wenye unyevu tu. { $layout ->
    [own] Kila shamba lipande kwenye matuta yake.
    [mounds] { $on_mound ->
        [one] Kwenye kila tuta la duara panda kipande { SAY($on_mound, form: "class-8") }.
       *[other] Kwenye kila tuta la duara panda vipande { SAY($on_mound, form: "class-8") }.
     }
   *[ridges] Kwenye tuta panda kipande kimoja kimoja, ukiacha { MEASURE($along_cm, unit: "centimetre") } kati ya kipande na kipande.
 } Fukia vifundo viwili au vitatu. Baada ya wiki mbili, panda tena penye mapengo.
first-harvest = { SPAN($when) }, angalia kama viazi vya kwanza vimekomaa. Papasa chini ya mimea michache utafute viazi vya ukubwa wa kula. Usiache viazi vilivyokomaa kwenye udongo mkavu kwa muda mrefu. Wadudu waitwao fukusi watavishambulia. Maliza kuchimba kufikia { DAY($last_harvest) }.

## Cautions

# doubt: whether "hata ukikata sehemu mbaya, usile iliyobaki" is plain to everyone.
caution-rot = Tahadhari. Usile kamwe viazi vilivyooza, vyenye ukungu au vilivyotobolewa na wadudu. Usiwape kamwe wanyama viazi hivyo, wala usivipande. Hata ukikata sehemu mbaya, usile iliyobaki. Hata sehemu inayoonekana nzuri inaweza kuwa na sumu. Vifukie kwenye shimo refu au uviteketeze kwa moto.
caution-virus = Tahadhari. Majani madogo, yenye madoa au yaliyojikunja ni dalili ya ugonjwa wa virusi. Pia marando yaliyodumaa. Usichukue kamwe viazi wala marando kutoka kwenye mmea kama huo.
# doubt: "fukusi" for the sweet potato weevil; explained here in plain words, since not everyone knows the name.
caution-cracks = Fukusi ni wadudu wanaotoboa viazi. Huingia kwenye viazi kupitia nyufa za udongo. Funika nyufa kwa kupandishia udongo mara tu unapoziona.
caution-heavy-sand = Tahadhari. Mchanga ni mzito. Usibebe zaidi ya { MEASURE($load_kg, unit: "kilogram") } kwa mara moja. Jaza chombo kikiwa mahali kitakapokaa. Usikiinue kikiwa kimejaa.
# doubt: "kingo zilizosimama wima" for steep banks; a local word may be better.
caution-riverbed = Jihadhari mtoni. Chukua mchanga kwenye mto uliokauka tu. Usichimbe kamwe chini ya kingo za mto zilizosimama wima, wala karibu nazo. Zinaweza kuporomoka na kukufukia. Chukua mchanga pale tu sheria za eneo lako zinaporuhusu.
caution-water-children = Walinde watoto. Usiwaache wacheze karibu na maji, visima au mashimo. Funika maji uliyohifadhi. Weka uzio kuzunguka visima na mashimo. Usiruhusu mbuzi na kuku waingie kitaluni.
caution-store-dry = Usivimwagie maji kamwe viazi vilivyohifadhiwa. Mchanga lazima ubaki mkavu kuanzia siku ya kwanza hadi siku ya mwisho.
caution-forecast = Tarehe hizi ni wastani wa miaka iliyopita, si utabiri wa mwaka huu. Mvua zinaweza kuja mapema au kuchelewa. Panda kwenye udongo wenye unyevu tu.
caution-try-first = Kama njia hii ni mpya kwako, anza na viazi vichache. Pia tunza baadhi ya marando yako kwa njia uliyozoea.

## Questions for a meeting, each after its step

# doubt: whether the short open questions sound natural at a village meeting, and not like an examination.
ask-mark-plants = Mimea ipi ina nguvu zaidi?
ask-gather-sand = Nani ana mchanga mkavu, na tutauchimba vipi salama?
ask-check-plants = Mimea yenye ugonjwa inaonekanaje?
# doubt: "Ukikata fupi mno" leaves the stem to be understood; "Ukiacha shina fupi mno" would be plainer.
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
