### Kiswahili, rasimu: maneno ya redio na simu. Bado hayajasomwa na msemaji fasaha.
### Draft. Every literal text is recorded as it stands here, cut at the { … }.
### No digits, no abbreviations. Numbers: SAY, days: DAY and SPAN, measures: MEASURE.
### Forms: mmea/mimea, mstari/mistari and mwaka/miaka class-4; kiazi/viazi, chombo/vyombo, kipando/vipando, kiganja/viganja,
### kipingili/vipingili and kifundo/vifundo class-8; tabaka/matabaka, dumu/madumu and fungu/mafungu class-6.
### glossary.toml holds the words of the trade, one for each thing.

## What must never be lost. The messages below refer to these sentences.

# doubt: "viteketeze/ukiteketeze kwa moto" for burning roots up; "choma" alone also means to roast for eating.
-bad-roots = Kiazi kikiwa kimeoza, kikiwa na ukungu, au kikiwa na matundu ya wadudu, usikile kamwe. Usiwape wanyama kiazi hicho kamwe, na usikipande kamwe. Kifukie kwenye shimo refu, au ukiteketeze kwa moto.
-take-nothing = Usichukue viazi wala marando kutoka kwenye mmea kama huo.
# doubt: "ukingo uliosimama wima" for a steep bank; a local word may be better.
-dry-riverbed = Chukua mchanga pale tu sheria za eneo lako zinaporuhusu. Mtoni, chukua mchanga ikiwa tu mto umekauka. Usichimbe kamwe karibu na ukingo uliosimama wima, kwa sababu unaweza kuporomoka na kukufukia.
-children-water = Funika maji uliyohifadhi, na uwazuie watoto wasiyakaribie.
-keep-dry = Usimwagie mchanga maji kamwe, kwa sababu mchanga wenye unyevunyevu huozesha viazi.
-moist-soil = Usipande shambani hadi udongo uwe na unyevu, kwa sababu vipando hufa kwenye udongo mkavu.

## Dates and units

# doubt: many farmers say "mwezi wa kumi" rather than "Oktoba"; the names of months are kept.
date = tarehe { SAY($day, form: "date") } { month }
week = wiki ya { $week ->
    [1] kwanza
    [2] pili
    [3] tatu
    [4] nne
   *[5] mwisho
 } ya { month }
# "Kuanzia … hadi" and not "kati ya … na": that "na" would be heard as part of the numbers beside it.
span = siku yoyote kuanzia { DAY($from) } hadi { DAY($to) }
span-two-days = { DAY($from) } au { DAY($to) }
span-day = { DAY($from) }
unit-kilogram = kilo { SAY($n, form: "cardinal") }
unit-litre = lita { SAY($n, form: "cardinal") }
# Lengths and hands come in halves: $whole is the number below, $half says whether a half is added.
unit-metre = { $half ->
    [yes] { $whole ->
        [0] nusu mita
       *[other] mita { SAY($whole, form: "cardinal") } na nusu
     }
   *[no] mita { SAY($whole, form: "cardinal") }
 }
unit-centimetre = sentimita { SAY($n, form: "cardinal") }
# doubt: "kiganja pamoja na vidole" for a hand from wrist to fingertips; "kiganja" alone is the palm, "mkono" also the arm.
unit-hand = { $half ->
    [yes] { $whole ->
        [0] nusu ya kiganja pamoja na vidole
        [one] kiganja { SAY($whole, form: "class-8") } na nusu, pamoja na vidole
       *[other] viganja { SAY($whole, form: "class-8") } na nusu, pamoja na vidole
     }
   *[no] { $whole ->
        [one] kiganja { SAY($whole, form: "class-8") } pamoja na vidole
       *[other] viganja { SAY($whole, form: "class-8") } pamoja na vidole
     }
 }
unit-thumb-joint = { $half ->
    [yes] { $whole ->
        [0] nusu ya kipingili cha dole gumba
        [one] kipingili { SAY($whole, form: "class-8") } na nusu cha dole gumba
       *[other] vipingili { SAY($whole, form: "class-8") } na nusu vya dole gumba
     }
   *[no] { $whole ->
        [one] kipingili { SAY($whole, form: "class-8") } cha dole gumba
       *[other] vipingili { SAY($whole, form: "class-8") } vya dole gumba
     }
 }
unit-bucket = ndoo { SAY($n, form: "class-10") }
unit-jerrycan = { $n ->
    [one] dumu { SAY($n, form: "class-6") }
   *[other] madumu { SAY($n, form: "class-6") }
 }
unit-bundle = { $n ->
    [one] fungu { SAY($n, form: "class-6") }
   *[other] mafungu { SAY($n, form: "class-6") }
 }

## Opening and closing. $season says how the day stands to the rains, $variant which of three ways to say it.

opening = { $season ->
    [before] { $variant ->
        [1] Hapa kwetu, mvua kwa kawaida huanza karibu na { DAY($rains) }.
        [2] Wakulima wa viazi vitamu, tuhesabu siku pamoja kabla ya mvua. Kwa kawaida mvua huanza karibu na { DAY($rains) }.
       *[3] Hii hapa kazi inayofuata ya viazi vyako vitamu. Kwa kawaida mvua huanza karibu na { DAY($rains) }.
     }
    [near] { $variant ->
        [1] Wakulima wa viazi vitamu, mvua zinaweza kuanza siku yoyote sasa.
        [2] Mvua zinaweza kuanza hivi karibuni. Tazama anga na udongo.
       *[3] Wakulima wa viazi vitamu, jiandaeni. Mvua zimekaribia.
     }
    [after] { $variant ->
        [1] Wakulima wa viazi vitamu, mvua zimeanza.
        [2] Mvua zimefika. Hii hapa kazi inayofuata ya viazi vyako vitamu.
       *[3] Wakulima wa viazi vitamu, mvua ndizo hizi. Sikilizeni cha kufanya sasa.
     }
   *[later] { $variant ->
        [1] Wakulima wa viazi vitamu, sikilizeni kazi inayofuata.
        [2] Hii hapa kazi inayofuata ya viazi vyako vitamu.
       *[3] Sasa tuje kwenye viazi vyako vitamu, na kazi inayofuata.
     }
 } { $kind ->
    [zone] Vipimo utakavyosikia ni vya viazi { SAY($roots, form: "class-8") }. Shamba likiwa kubwa zaidi, ongeza. Likiwa dogo zaidi, punguza.{ $season ->
        [before] {" "}Tarehe za kazi za kabla ya mavuno ni za mashamba yanayochimbwa kwanza. Ukichimba baadaye, fanya kazi hizo baadaye pia, kwa idadi ileile ya siku.
       *[later] {""}
     }
   *[other] {""}
 }
closing = { $variant ->
    [1] Afisa ugani wako akikuambia tofauti, fuata anachosema afisa ugani.
    [2] Muulize pia afisa ugani wako, na ufuate kwanza ushauri wake.
   *[3] Ushauri wa afisa ugani wako una uzito zaidi kuliko ujumbe huu.
 }

## Steps

# doubt: "viazi vya mbegu" for the roots kept as planting material.
# doubt: "mimea yenye vijiti" (plants with sticks) for the marked plants: the stick is the mark.
# doubt: a group is spoken to in the plural here, where it works together; in the other messages each hearer is "wewe".
mark-plants = { $kind ->
    [group] Chagueni mimea ya viazi vitamu yenye afya, itakayotoa viazi vya mbegu. Fanyeni kazi hii { SPAN($when) }. { $plants ->
        [one] Pamoja, wekeni kijiti kwenye mmea { SAY($plants, form: "class-4") }.
       *[other] Pamoja, wekeni vijiti kwenye mimea { SAY($plants, form: "class-4") }.
     } { $plants_each ->
        [one] Kila mmoja wenu aweke kijiti kwenye mmea { SAY($plants_each, form: "class-4") }.
       *[other] Kila mmoja wenu aweke vijiti kwenye mimea { SAY($plants_each, form: "class-4") }.
     } Chagueni mimea yenye nguvu tu, yenye majani makubwa na safi, isiyo na dalili ya ugonjwa. Chomekeni kijiti ardhini kando ya kila mmea.
   *[other] Chagua mimea ya viazi vitamu yenye afya, itakayotoa viazi vya mbegu. Fanya kazi hii { SPAN($when) }. { $plants ->
        [one] Weka kijiti kwenye mmea { SAY($plants, form: "class-4") }.
       *[other] Weka vijiti kwenye mimea { SAY($plants, form: "class-4") }.
     } Chagua mimea yenye nguvu tu, yenye majani makubwa na safi, isiyo na dalili ya ugonjwa. Chomeka kijiti ardhini kando ya kila mmea.
 } { $roots ->
    [one] Kwa jumla kitapatikana kama kiazi { SAY($roots, form: "class-8") } cha kuhifadhi.
   *[other] Kwa jumla vitapatikana kama viazi { SAY($roots, form: "class-8") } vya kuhifadhi.
 } { $plants ->
    [one] Kumbuka: mmea { SAY($plants, form: "class-4") }, wenye kijiti kando yake.
   *[other] Kumbuka: mimea { SAY($plants, form: "class-4") }, kila mmoja na kijiti chake.
 }
# doubt: "chembe kubwa" for coarse sand; some say "punje" or "chenga".
gather-sand = Leta mchanga kwa ajili ya viazi vyako vitamu. Fanya kazi hii { SPAN($when) }. Unahitaji kama { MEASURE($buckets, unit: "bucket") } { $buckets ->
    [one] ya
   *[other] za
 } { MEASURE($bucket_l, unit: "litre") }. Chukua mchanga safi wenye chembe kubwa unazoweza kuzihisi kwa vidole. Utandaze chini ya paa hadi ukauke kabisa, na uutumie ukishapoa tu. Mchanga laini, wenye unyevunyevu, au wenye joto huozesha viazi. Kumbuka: mchanga wenye chembe kubwa, mkavu na uliopoa, kama { MEASURE($buckets, unit: "bucket") }.
check-plants = Kagua tena mimea ya viazi vitamu yenye vijiti. Fanya kazi hii { SPAN($when) }. Angalia kama kuna majani madogo, yaliyojikunja au yenye madoa. Angalia pia kama kuna marando dhaifu, au matundu kwenye shina karibu na ardhi. Ukiona dalili yoyote kati ya hizi, au kama huna uhakika, ng'oa kijiti cha mmea huo.
# doubt: "marando" for vines is Tanzanian and coastal; it is explained here once for those who say otherwise.
cut-vines = Kata marando, yaani mashina yanayotambaa, ya mimea ya viazi vitamu yenye vijiti. Fanya kazi hii { SPAN($when) }. Acha shina lenye urefu wa { MEASURE($stem_cm, unit: "centimetre") } juu ya ardhi, kama { MEASURE($stem_hands, unit: "hand") }. Hapo ganda la viazi huwa gumu, na viazi hukaa muda mrefu zaidi bila kuharibika.
harvest = Chimba viazi vitamu vya mimea yenye vijiti. Fanya kazi hii { SPAN($when) }. Udongo ukiwa umelowa, subiri hadi ukauke. Inua viazi taratibu, ili jembe lisikate kiazi chochote. Chagua viazi vyenye urefu kama wa kiganja pamoja na vidole, na ganda zima. Unahitaji { $roots ->
    [one] kiazi { SAY($roots, form: "class-8") }.
   *[other] viazi { SAY($roots, form: "class-8") }.
 } Pangusa udongo kwa mkono, na usivioshe kamwe. Viweke kivulini kwa saa kadhaa. Usihifadhi viazi vilivyokatwa na jembe, bali vipike mapema iwezekanavyo. { $roots ->
    [one] Kumbuka: hifadhi kiazi kizima { SAY($roots, form: "class-8") }.
   *[other] Kumbuka: hifadhi viazi vizima { SAY($roots, form: "class-8") }.
 }
fill-container = Panga viazi vyako vitamu kwenye mchanga mkavu. Fanya kazi hii { SPAN($when) }. { $containers ->
    [one] Unahitaji chombo { SAY($containers, form: "class-8") }{ $container_kinds ->
        [one] , chenye ujazo wa kama { MEASURE($container_l, unit: "litre") }.
       *[several] .
     }
   *[other] Unahitaji vyombo { SAY($containers, form: "class-8") }{ $container_kinds ->
        [one] , kila kimoja chenye ujazo wa kama { MEASURE($container_l, unit: "litre") }.
       *[several] .
     }
 } Tumia beseni, chungu, ndoo au kikapu kilichosukwa bila mianya. Usitumie gunia kamwe. Jaza chombo mahali kitakapokaa, penye ubaridi, pakavu na penye kivuli, mbali na watoto, wanyama na mvua. Tandika karatasi ndani yake, chini na pembeni. Tandaza mchanga wenye unene wa { MEASURE($base_cm, unit: "centimetre") }. { $layer_widths ->
    [uneven] Katika tabaka la kwanza, la chini kabisa, panga viazi visivyozidi { SAY($roots_per_layer, form: "class-8") }.
   *[even] Katika kila tabaka, panga viazi visivyozidi { SAY($roots_per_layer, form: "class-8") }.
 } Kiazi kisiguse kingine, wala kuta za chombo. { $layers ->
    [1] Vifunike kwa mchanga wenye unene wa { MEASURE($top_cm, unit: "centimetre") }.
   *[other] Vifunike kwa mchanga wenye unene wa { MEASURE($layer_cm, unit: "centimetre") }, kisha panga viazi vingine juu yake. Fanya hivyo hadi chombo kiwe na matabaka { SAY($layers, form: "class-6") } ya viazi.{ $layer_widths ->
        [uneven] {" "}{ $layers ->
            [2] Katika tabaka la mwisho, la juu kabisa, panga viazi visivyozidi { SAY($roots_top, form: "class-8") }.
           *[other] Katika matabaka ya katikati, panga viazi kadiri nafasi inavyoruhusu. Katika tabaka la mwisho, la juu kabisa, panga viazi visivyozidi { SAY($roots_top, form: "class-8") }.
         }
       *[even] {""}
     } Lakini tabaka la mwisho, lifunike kwa mchanga wenye unene wa { MEASURE($top_cm, unit: "centimetre") }.
 } Mchanga mwingi wa juu huzuia panya, wadudu na kuku. Usifunike chombo kwa kifuniko, wala usikimwagie maji.
# doubt: "machipukizi" for the sprouts on a root; what grows in the bed is "mimea".
monthly-check = Kila mwezi, kagua viazi vitamu ulivyohifadhi. { $turn ->
    [next] Ukaguzi unaofuata ni
   *[first] Ukaguzi wa kwanza ni
 } { DAY($first) }. Toa viazi vyote, na utazame kimoja kimoja. { -bad-roots } Viazi vizuri, viondolee machipukizi kwa kuyasugua. Vipange tena kwenye mchanga mkavu, kwa njia ileile. Andika vimebaki vingapi. Kisha usiviguse hadi ukaguzi unaofuata.
# doubt: "sehemu ndefu" for the strips of a bed that has paths between them; a local word may be better.
prepare-bed = Tengeneza kitalu cha viazi vyako vitamu. Fanya kazi hii { SPAN($when) }. Chagua mahali karibu na maji. Urefu wa kitalu uwe { MEASURE($bed_length_m, unit: "metre") }. Upana wake uwe { MEASURE($bed_width_m, unit: "metre") }. { $bed_parts ->
    [strips] Kitalu kiwe na sehemu ndefu { SAY($strips, form: "class-10") }, kila moja yenye upana wa { MEASURE($strip_width_m, unit: "metre") }. Acha njia za kupita kati ya sehemu hizo.
   *[one] {""}
 } Tifua udongo vizuri. Zungushia kitalu uzio, ili mbuzi na kuku wasiingie.
last-check = Kagua kwa mara ya mwisho viazi vitamu ulivyohifadhi. Fanya kazi hii { DAY($first) }. Toa viazi vyote, na utazame kimoja kimoja. { -bad-roots } Safari hii, acha machipukizi yabaki. Sasa peleka viazi vizuri kitaluni.
# doubt: "chepechepe" for soil that is too wet; "majimaji" in some places.
plant-bed = Panda viazi vitamu kitaluni. Fanya kazi hii { SPAN($when) }. Usisubiri mvua, bali mwagilia kitalu hadi kiwe na unyevu. { $bed_rows ->
    [one] Tengeneza mstari { SAY($bed_rows, form: "class-4") }, kufuata urefu wa kitalu.
   *[other] Tengeneza mistari { SAY($bed_rows, form: "class-4") }, kufuata urefu wa kitalu. Acha { MEASURE($spacing_cm, unit: "centimetre") } kati ya mstari na mstari.
 } { $row_roots ->
    [one] Katika kila mstari, weka kiazi { SAY($row_roots, form: "class-8") }, na uache machipukizi yabaki.
   *[other] Katika kila mstari, panga viazi kama { SAY($row_roots, form: "class-8") }. Umbali kutoka kiazi kimoja hadi kingine uwe { MEASURE($along_row_cm, unit: "centimetre") }. Acha machipukizi yabaki.
 } Vifunike kwa udongo wenye unene wa { MEASURE($soil_cm, unit: "centimetre") }. Mwagilia tena taratibu. Udongo uwe na unyevu, usiwe chepechepe, kwa sababu udongo chepechepe huozesha viazi.
# doubt: "dumu" for a jerrycan ("mtungi" in parts of Kenya).
water-bed = Mwagilia kitalu chako cha viazi vitamu kuanzia { DAY($first) }. { $shoots ->
    [before] Hadi mimea ichomoze, mwagilia kama { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
        [1] kila siku.
       *[other] kila baada ya siku { SAY($water_every_days, form: "class-10") }.
     } Hayo ni kama { MEASURE($jerrycans_young, unit: "jerrycan") } { $jerrycans_young ->
        [one] la
       *[other] ya
     } { MEASURE($jerrycan_l, unit: "litre") }. Udongo uwe na unyevu, usiwe chepechepe, kwa sababu udongo chepechepe huozesha viazi. Majani yakiendelea kukua, mwagilia kila siku, na uongeze maji kidogo kila wiki.
   *[after] {""}
 } Majani ya viazi yakifunika kitalu, mwagilia kama { MEASURE($water_l, unit: "litre") } kila siku. Hayo ni kama { MEASURE($jerrycans, unit: "jerrycan") } { $jerrycans ->
    [one] la
   *[other] ya
 } { MEASURE($jerrycan_l, unit: "litre") }. Siku za joto na upepo, ongeza maji. Mvua ikitosha kuupa udongo unyevu, acha kumwagilia.
# doubt: "kina cha kidole kizima" for a finger deep: the length of a finger is meant, not its thickness.
# doubt: "vifundo vya majani" for the joints of a vine where leaves come out; some say "macho" or "pingili".
# doubt: "vipando" for cuttings ("vipandikizi" is heard too); "vipande" would sound like the verb "uvipande" beside it.
cut-for-planting = Kabla ya kukata marando ya viazi vitamu, subiri mvua iupe udongo wa shamba unyevu, hadi kina cha kidole kizima. Kwa kawaida huwa { SPAN($when) }. Kisha kata marando kitaluni. Chukua marando yenye afya tu, yasiyo na majani yenye madoa, yaliyojikunja au madogo sana. Vipande vya kupanda, yaani vipando, viwe na urefu wa { MEASURE($cutting_cm, unit: "centimetre") }, na vifundo vya majani visivyopungua { SAY($nodes, form: "class-8") }. Acha shina lenye urefu wa { MEASURE($stub_cm, unit: "centimetre") } juu ya ardhi, ili lichipue tena. { $plan_by ->
    [practice] Kwa mazoea ya kawaida, ukikata mara ya kwanza tarajia kama vipando
   *[print] Ukikata mara ya kwanza, tarajia kama vipando
 } { SAY($first_cuttings_low, form: "class-8") } hadi { SAY($first_cuttings_high, form: "class-8") }. Viweke kivulini, na uvipande siku hiyohiyo, au siku inayofuata.
# doubt: "tuta la duara" for a mound; a local word may be better.
plant-field = Panda shamba la viazi vitamu mvua ikishaupa udongo unyevu, hadi kina cha kidole kizima. Kwa kawaida huwa { SPAN($when) }. { $layout ->
    [own] Kila mmoja wenu apande kwenye matuta yake, marefu au ya duara.
    [mounds] { $on_mound ->
        [one] Kwenye kila tuta la duara, panda kipando { SAY($on_mound, form: "class-8") }.
       *[other] Kwenye kila tuta la duara, panda vipando { SAY($on_mound, form: "class-8") }.
     } Kati ya tuta na tuta, acha { MEASURE($between_cm, unit: "centimetre") }.
   *[ridges] Kwenye tuta, panda kipando kimoja kila baada ya { MEASURE($along_cm, unit: "centimetre") }. Kati ya tuta na tuta, acha { MEASURE($between_cm, unit: "centimetre") }.
 } Fukia vifundo viwili au vitatu vya kila kipando, na ncha yake ibaki juu ya udongo. Baada ya wiki mbili, panda tena pale vipando vilipokufa.
# doubt: "fukusi" for the sweet potato weevil; explained in plain words, since not everyone knows the name.
first-harvest = Jaribu viazi vitamu vya kwanza. Fanya kazi hii { SPAN($when) }. Papasa udongo chini ya mimea michache, utafute viazi vikubwa vya kutosha kula. Viazi vilivyokomaa, usiviache muda mrefu kwenye udongo mkavu, kwa sababu wadudu waitwao fukusi huvivamia. Maliza kuchimba kufikia { DAY($last_harvest) }.

## Cautions

caution-rot = Jihadhari na viazi vitamu vibovu. { -bad-roots } Usikikate, usikimenye wala usikipike ili kuokoa sehemu yake. Hata sehemu inayoonekana nzuri inaweza kuwa na sumu. Kama huna uhakika kuhusu kiazi, kihesabu kuwa kibovu.
caution-virus = Majani madogo, yaliyojikunja au yenye madoa, na marando dhaifu, ni dalili kwamba mmea wa viazi vitamu ni mgonjwa. { -take-nothing }
caution-cracks = Wadudu waitwao fukusi hufikia viazi vitamu kupitia nyufa za udongo. Ukiona ufa, pandishia udongo juu yake.
caution-heavy-sand = Jihadhari, mchanga ni mzito. Usibebe zaidi ya { MEASURE($load_kg, unit: "kilogram") } kwa mara moja. Chombo cha kuhifadhia viazi vitamu, kijaze mahali kitakapokaa. Usikiinue kamwe kikiwa kimejaa.
caution-riverbed = Jihadhari unapochukua mchanga mtoni. { -dry-riverbed }
caution-water-children = Waangalie watoto wanapokuwa karibu na maji. { -children-water } Weka uzio kuzunguka visima na mashimo. Zuia mbuzi na kuku wasiingie kitaluni.
caution-store-dry = Mchanga wa kuhifadhia viazi vitamu lazima ubaki mkavu, kuanzia siku ya kwanza hadi siku ya mwisho. { -keep-dry }
caution-forecast = Tarehe hizi zinatokana na miaka iliyopita, wala si utabiri. Mwaka huu mvua inaweza kuwahi au kuchelewa. Tazama anga na udongo. { -moist-soil }
caution-try-first = Kama njia hii ni mpya kwako, anza na viazi vitamu vichache. Pia tunza baadhi ya marando yako kwa njia uliyozoea.

## What the plan leads to

# doubt: "mvua ikishazama ardhini" (here and below) for rain that has soaked in; "mvua ikishaingia ardhini" may be plainer.
remark-late-work = Baadhi ya kazi za viazi vitamu hazikufanywa kwa wakati, kwa hiyo tarehe zimehesabiwa upya. Fanya mara moja kile ambacho bado kinawezekana. Shamba linaweza kupandwa kuanzia { DAY($field_from) }.{ $fewer ->
    [0] {""}
    [one] {" "}Ukikata mara ya kwanza, tarajia upungufu wa kama kipando { SAY($fewer, form: "class-8") }.
   *[other] {" "}Ukikata mara ya kwanza, tarajia upungufu wa kama vipando { SAY($fewer, form: "class-8") }.
 }
remark-fast-loss = { $healthy ->
    [one] Katika ukaguzi wa { DAY($day) }, kiazi kitamu kizuri kilikuwa { SAY($healthy, form: "class-8") } tu. Vilivyokaguliwa kwa jumla ni { SAY($roots, form: "class-8") }.
   *[other] Katika ukaguzi wa { DAY($day) }, viazi vitamu vizuri vilikuwa { SAY($healthy, form: "class-8") } tu. Vilivyokaguliwa kwa jumla ni { SAY($roots, form: "class-8") }.
 } { $next ->
    [bed] Viazi vilivyo vizuri, viweke kitaluni sasa, na utafute marando zaidi ya kupanda.
   *[check] Tafuta sababu: mchanga wenye unyevunyevu au joto, viazi kukatwa, viazi kugusana, au fukusi. Tumia mchanga mpya, mkavu. Kagua tena baada ya wiki mbili. Vingi zaidi vikioza, vilivyo vizuri viweke mara moja kwenye kitalu kilichomwagiliwa.
 }
# doubt: "katika shamba la …" for "of … square metres"; with "kati ya", "na" inside the number was heard as "between … and".
remark-limited-at-hand = { $limit ->
    [roots] Viazi vitamu ulivyo navyo vya kuhifadhi ni { SAY($roots, form: "class-8") }.
    [plants] Viazi vitamu vya kuhifadhi kutoka kwenye mimea yako ni kama { SAY($roots, form: "class-8") }.
   *[bed] Nafasi ya kitalu inatosha viazi vitamu visivyozidi { SAY($roots, form: "class-8") }.
 } Shamba zima lingehitaji viazi { SAY($wanted, form: "class-8") }. Viazi vyako vinatosha kupanda kama { $area_m2 ->
    [one] mita { SAY($area_m2, form: "class-10") } ya mraba
   *[other] mita za mraba { SAY($area_m2, form: "class-10") }
 }, katika shamba la { SAY($field_m2, form: "class-10") }. Panda eneo dogo zaidi, au waombe majirani vipando.
remark-containers-too-small = Nafasi ya vyombo inatosha viazi vitamu visivyozidi { SAY($fit, form: "class-8") }, si { SAY($roots, form: "class-8") }. Usivisongamanishe, kwa sababu viazi huoza vinapogusana. Utaweza kupanda kama { $area_m2 ->
    [one] mita { SAY($area_m2, form: "class-10") } ya mraba
   *[other] mita za mraba { SAY($area_m2, form: "class-10") }
 }, katika shamba la { SAY($field_m2, form: "class-10") }. { $more ->
    [0] Ili kuhifadhi viazi zaidi, tafuta chombo kingine. La sivyo, panda eneo dogo zaidi.
    [one] Ili kuhifadhi viazi zaidi, tafuta chombo kimoja zaidi. La sivyo, panda eneo dogo zaidi.
   *[other] Ili kuhifadhi viazi zaidi, tafuta vyombo { SAY($more, form: "class-8") } zaidi. La sivyo, panda eneo dogo zaidi.
 }
remark-sand-short = Mchanga wako unatosha kufunika viazi vitamu visivyozidi { SAY($fit, form: "class-8") }, si { SAY($roots, form: "class-8") }. Usihifadhi viazi ambavyo mchanga haufuniki. Utaweza kupanda kama { $area_m2 ->
    [one] mita { SAY($area_m2, form: "class-10") } ya mraba
   *[other] mita za mraba { SAY($area_m2, form: "class-10") }
 }, katika shamba la { SAY($field_m2, form: "class-10") }. Leta mchanga zaidi, { MEASURE($more_l, unit: "litre") }, au panda eneo dogo zaidi.
remark-water-limits = Maji yako yanatosha kitalu cha viazi vitamu visivyozidi { SAY($fit, form: "class-8") }, si { SAY($roots, form: "class-8") }. Kitalu kisiwe kikubwa kuliko ilivyoelezwa hapa, na kibaki na unyevu. Utaweza kupanda kama { $area_m2 ->
    [one] mita { SAY($area_m2, form: "class-10") } ya mraba
   *[other] mita za mraba { SAY($area_m2, form: "class-10") }
 }, katika shamba la { SAY($field_m2, form: "class-10") }. Kwa shamba zima, tafuta maji zaidi, { MEASURE($more_l, unit: "litre") } { $per ->
    [all] kwa jumla.
   *[day] kila siku.
 }
remark-hands-short = Wanaobeba maji wanaweza kumwagilia kitalu cha viazi vitamu visivyozidi { SAY($fit, form: "class-8") }, si { SAY($roots, form: "class-8") }. Kitalu kisiwe kikubwa kuliko ilivyoelezwa hapa, na kibaki na unyevu. Utaweza kupanda kama { $area_m2 ->
    [one] mita { SAY($area_m2, form: "class-10") } ya mraba
   *[other] mita za mraba { SAY($area_m2, form: "class-10") }
 }, katika shamba la { SAY($field_m2, form: "class-10") }. Kwa shamba zima, watu zaidi wabebe maji, au tengeneza kitalu karibu zaidi na maji.
# doubt: "matandazo" for mulch; "majani makavu ya kufunika udongo" is plainer and longer.
remark-water-short = Kuanzia { DAY($from) }, huenda maji ya kitalu cha viazi vitamu yasitoshe. Tafuta maji zaidi. Matandazo na kivuli huokoa maji. Bila hivyo, tengeneza kitalu kidogo zaidi, na panda eneo dogo zaidi.
# doubt: "saa tano" is also eleven o'clock; "muda wa kama" before it should make it hours.
remark-water-heavy = Siku isiyo na mvua, kitalu cha viazi vitamu kinahitaji safari { SAY($trips, form: "class-10") } { $trips ->
    [one] ya
   *[other] za
 } kuchota maji. Kubeba maji kutachukua muda wa kama saa { SAY($hours, form: "class-10") } kila siku. Panga sasa nani atabeba, au tengeneza kitalu kidogo zaidi.
# doubt: "shamba la sasa" for the old field, the one that is dug; "shamba la zamani" would sound abandoned.
remark-rains-too-soon = Mvua zinaweza kuanza karibu na { DAY($rains) }. Hiyo ni mapema mno baada ya mavuno, kwa hiyo usihifadhi viazi vitamu. Badala yake, panda marando ya shamba la sasa, au weka viazi kitaluni mara moja.
remark-storing-not-needed = Miaka mingi, kiangazi hapa hudumu kama siku { SAY($days, form: "class-10") }. Marando ya viazi vitamu yanaweza kutunzwa muda huo wote, kwa hiyo si lazima kuhifadhi viazi. Acha sehemu ya shamba la sasa bila kuvuna, au tunza marando kwenye bustani ndogo ya kumwagilia.
remark-long-in-sand = Viazi vyako vitamu lazima vikae kwenye mchanga kwa siku { SAY($days, form: "class-10") }. Hakuna aliyehesabu vingapi hubaki vizuri muda mrefu hivyo. Pia tunza marando karibu na maji, na umuulize afisa ugani wako.
remark-bed-late = Kitalu cha viazi vitamu kitatoa vipando vya kwanza karibu na { DAY($cut) }, baada ya mvua kuanza. Mvua ikishazama ardhini, panda marando uliyo nayo. Baadaye kitalu kitatoa vipando vya sehemu iliyobaki ya shamba.
remark-field-waits = Vipando vya kwanza vya viazi vitamu vinatosha kupanda kama { $area_m2 ->
    [one] mita { SAY($area_m2, form: "class-10") } ya mraba
   *[other] mita za mraba { SAY($area_m2, form: "class-10") }
 }. Shamba zima ni mita za mraba { SAY($field_m2, form: "class-10") }. Sehemu iliyobaki itapandwa ukikata tena, kila baada ya siku { SAY($least_days, form: "class-10") } hadi { SAY($most_days, form: "class-10") }.
remark-cuttings-short = Ukikata mara ya kwanza, kutakuwa na upungufu wa kama { $short ->
    [one] kipando { SAY($short, form: "class-8") } cha viazi vitamu.
   *[other] vipando { SAY($short, form: "class-8") } vya viazi vitamu.
 } Mvua ikishazama ardhini, panda kama { $area_m2 ->
    [one] mita { SAY($area_m2, form: "class-10") } ya mraba
   *[other] mita za mraba { SAY($area_m2, form: "class-10") }
 }, katika shamba la { SAY($field_m2, form: "class-10") }. { $later_cuts ->
    [0] Vipando vya baadaye vitachelewa mno kukomaa, kwa hiyo waombe majirani marando mapema.
   *[other] Vipando vya baadaye vitatosha sehemu nyingine ya shamba. Unaweza pia kuwaomba majirani marando mapema.
 }
remark-rains-too-short = Hapa mvua huwa za muda mfupi mno kwa viazi vitamu. { $known ->
    [case] Utakavyopanda huenda visikomae kabla ya mvua kuisha.
    [open] Hakuna anayejua ni mara ngapi viazi hukomaa kabla ya mvua kuisha.
   *[record] { $of_100 ->
        [one] Viazi hukomaa kabla ya mvua kuisha katika mwaka { SAY($of_100, form: "class-4") } tu kati ya mia.
       *[other] Viazi hukomaa kabla ya mvua kuisha katika miaka { SAY($of_100, form: "class-4") } tu kati ya mia.
     }
 } { $helps ->
    [on-time] Tengeneza kitalu mapema, ili uweze kupanda mara tu mvua ikishazama ardhini.
    [quicker] Panda mara tu mvua ikishazama ardhini, na utafute aina inayokomaa mapema zaidi.
   *[neither] Panda mara tu mvua ikishazama ardhini, na utarajie viazi vidogo na vichache.
 }
remark-cuts-too-late = Vipando vya viazi vitamu utakavyokata baadaye huenda vikachelewa mno. Vikipandwa kuanzia { DAY($from) }, viazi havitakomaa hadi karibu na { DAY($ripe) }. Miaka mingi mvua huisha kabla ya hapo. Usiviachie vipando hivyo sehemu ya shamba. Marando ya wakati huo yatumie kama malisho ya mifugo, au yaache yakue penye maji.
remark-rains-may-be-late = Mvua zinaweza kuchelewa hadi { DAY($late) }. Mwagilia kitalu chako cha viazi vitamu hadi zije. { -moist-soil }
remark-years-without-rains = Kati ya miaka { SAY($judged, form: "class-4") } iliyopita, { $count ->
    [one] kuna mwaka { SAY($count, form: "class-4") } ambao mvua hazikuwahi kuanza vizuri.
   *[other] kuna miaka { SAY($count, form: "class-4") } ambayo mvua hazikuwahi kuanza vizuri.
 } Katika mwaka kama huo, marando ya viazi vitamu yaliyopandwa kwa mvua ya kwanza yanaweza kufa. Bakiza baadhi ya viazi, au endelea kumwagilia sehemu ya kitalu.

## Questions for a meeting, each after its step

# doubt: whether the short open questions sound natural at a village meeting, and not like an examination.
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
