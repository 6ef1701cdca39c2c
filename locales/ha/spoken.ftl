### Hausa, daftari: kalmomin rediyo da waya. Babu ƙwararre a Hausa da ya karanta su tukuna.
### Draft. Every literal text is recorded as it stands here, cut at the { … }.
### No digits, no abbreviations. Numbers: SAY, days: DAY and SPAN, measures: MEASURE.
### Register: "ku" with the subjunctive, as on the sheet. Numbers follow their noun and never change, so one form serves all.
### The span stands first: no number of a date is then heard as part of a noun before it.

## Dates and units

date = { SAY($day, form: "cardinal") } ga watan { month }
week = { $week ->
    [1] makon farko
    [2] mako na biyu
    [3] mako na uku
    [4] mako na huɗu
   *[5] makon ƙarshe
 } na watan { month }
# doubt: "daga … zuwa …" (from … to …) and not "tsakanin … da …" (between), because "da" is also the "and" inside numbers.
span = daga { DAY($from) } zuwa { DAY($to) }
span-day = ranar { DAY($from) }
unit-kilogram = kilo { SAY($n, form: "cardinal") }
unit-litre = lita { SAY($n, form: "cardinal") }
# doubt: decimals are said with "ɗigo"; many farmers would say "mita ɗaya da rabi".
unit-metre = mita { SAY($n, form: "cardinal") }
unit-centimetre = santimita { SAY($n, form: "cardinal") }
unit-hand = { $n ->
    [one] tsawon tafin hannu da yatsu
   *[other] tsawon tafin hannu da yatsu sau { SAY($n, form: "cardinal") }
 }
unit-thumb-joint = gaɓar babban yatsa { SAY($n, form: "cardinal") }
unit-jerrycan = jarka { SAY($n, form: "cardinal") }
unit-bundle = dami { SAY($n, form: "cardinal") }

## Opening and closing

opening = Dankalin Hausa, daga wannan girbi zuwa damina mai zuwa. { $kind ->
    [zone] Ana sa ran saukar damina wajen { WEEK($rains) }. Adadin da za ku ji, an lissafa shi don dankali guda { SAY($roots, form: "cardinal") }. Ku ƙara ko ku rage gwargwadon gonarku.
   *[other] Ana sa ran saukar damina wajen { DAY($rains) }.
 }
closing = Malamin gona na yankinku ya san nau'o'in dankali, da lokuta, da dokokin wurin. Idan ya faɗi abin da ya saɓa wa wannan saƙo, ku bi shawararsa.

## Steps

# doubt: "shukar da za ta ba da iri" (plants that will give seed) for mother plants.
mark-plants = { SPAN($when) }, ku zaɓi shukar da za ta ba da iri. Ku sa alama a shuka mai ƙarfi guda { SAY($plants, form: "cardinal") }. { $kind ->
    [group] Kowane ɗan ƙungiya ya sa alama a shuka guda { SAY($plants_each, form: "cardinal") }. Ku kafa sanda a gefen kowace.
   *[other] Ku kafa sanda a gefen kowace.
 } Ku zaɓi masu manyan ganye masu tsabta kaɗai, waɗanda ba su da wata alamar ciwo. Za su ba da dankalin ajiya kamar guda { SAY($roots, form: "cardinal") }.
# doubt: "yashi mai kaushi" for coarse sand, "mai laushi" for fine sand.
gather-sand = { SPAN($when) }, ku kawo busasshen yashi. Kuna buƙatar { MEASURE($sand_l, unit: "litre") }, nauyinsa kamar { MEASURE($sand_kg, unit: "kilogram") }. Ku ɗebi yashi mai kaushi, mai tsabta. Ku shanya shi a ƙarƙashin rufi, ku bar shi ya huce. Yashi mai laushi, ko mai danshi, ko mai ɗumi, yana ruɓar da dankali.
# doubt: "yaɗo" for the vine.
check-plants = { SPAN($when) }, ku sake duba shukar da kuka sa wa alama. Ku duba ko ganyaye ƙanana ne, ko sun murɗe, ko sun yi tabo. Ku duba ko yaɗo ya tsumbure. Ku duba ko akwai ƙananan ramuka a gindin shuka. Idan kuna shakka, ku cire sandar, kada ku ɗauki komai daga wannan shuka.
# doubt: "tafin hannu da yatsu" (palm and fingers) for a hand's length.
cut-vines = { SPAN($when) }, ku yanke yaɗon shukar da kuka sa wa alama. Ku bar gindinsa mai tsawon tafin hannu da yatsu. Ɓawon dankali zai yi tauri, kuma dankalin zai daɗe bai lalace ba.
harvest = { SPAN($when) }, ku tona dankali. Kada ku tona sai idan ƙasa ta bushe. Ku ciro shi ba tare da ji masa rauni ba. Ku ɗauki matsakaicin dankali guda { SAY($roots, form: "cardinal") }. Tsawonsa ya zama kamar tafin hannu da yatsu, ɓawonsa babu rauni. Mai rauni na dafawa ne, ba na ajiya ba. Ku kakkaɓe ƙasar jikinsa da hannu, kada ku taɓa wanke shi. Ku bar shi a inuwa na 'yan awoyi.
# doubt: "hawa" for a layer, "baho" for a basin.
fill-container = { SPAN($when) }, ku jera dankali a cikin yashi. Ku yi amfani da baho, ko tukunya, ko bokiti, ko kwando mai matsattsiyar saƙa. Kada ku yi amfani da buhu. Ku shimfiɗa takarda a ciki. Ku cika shi a inda zai zauna. Wurin ya zama busasshe, mai sanyi da inuwa, nesa da yara, dabbobi da ruwan sama. Kuna buƙatar mazubi guda { SAY($containers, form: "cardinal") }. Ku fara da yashi mai kaurin { MEASURE($base_cm, unit: "centimetre") }. { $layer_widths ->
    [uneven] Ku jera dankali a kai. Dankalin hawa na ƙasa kada ya wuce guda { SAY($roots_per_layer, form: "cardinal") }. Dankalin hawa na sama kada ya wuce guda { SAY($roots_top, form: "cardinal") }.
   *[even] Ku jera dankali a kai. Dankalin kowane hawa kada ya wuce guda { SAY($roots_per_layer, form: "cardinal") }.
 } Kada su taɓa juna, kada su taɓa gefen mazubi. Ku rufe su da yashi mai kaurin { MEASURE($layer_cm, unit: "centimetre") }. { $layers ->
    [one] Hawa ɗaya ne kawai.
   *[other] Sannan ku jera wani hawa, har su kai hawa { SAY($layers, form: "cardinal") }.
 } Ku ƙare da yashi mai kaurin { MEASURE($top_cm, unit: "centimetre") }. Yana hana ɓeraye, ƙwari da kaji shiga. Kada ku sa masa murfi.
# doubt: "funfuna" for mould, "tsiro" for a sprout.
monthly-check = Ku duba dankali kowane wata. { $turn ->
    [next] Ku sake dubawa a ranar
   *[first] Ku fara a ranar
 } { DAY($first) }. Ku fitar da kowane dankali, ku duba shi. Ku ware wanda ya ruɓe, ko ya yi funfuna, ko ƙwari suka huda shi. Ku binne shi a rami mai zurfi, ko ku ƙone shi. Ku murje tsiro har ya fita. Ku sake jera masu kyau kamar da, ku rubuta guda nawa suka rage. Tsakanin dubawa da dubawa, ku ƙyale su.
# doubt: "gadon reno" for the seedbed.
prepare-bed = { SPAN($when) }, ku yi gadon reno kusa da ruwa. Tsawonsa { MEASURE($bed_length_m, unit: "metre") }, faɗinsa { MEASURE($bed_width_m, unit: "metre") }. Ku noma ƙasarsa sosai har ta yi laushi. Ku kewaye shi da shinge don hana awaki da kaji shiga.
last-check = Ranar { DAY($first) }, ku duba dankali a karo na ƙarshe. Ku ware wanda ya ruɓe, ko ya yi funfuna, ko ƙwari suka huda shi. Ku binne shi a rami mai zurfi, ko ku ƙone shi. A wannan karon ku bar tsiron. Yanzu masu kyau za su tafi gadon reno.
plant-bed = { SPAN($when) }, ku shuka dankali a gadon reno. Ku kwantar da su a layi guda { SAY($bed_rows, form: "cardinal") }. Tazararsu ta zama kamar { MEASURE($spacing_cm, unit: "centimetre") }. Ku rufe su da ƙasa kaɗan.
# doubt: whether the size of the "jarka" should be said.
water-bed = { SPAN($when) }, ku ba gadon reno ruwa. Idan ganyen shuka ya rufe gadon, kowace rana ku ba shi { MEASURE($water_l, unit: "litre") }. Wato { MEASURE($jerrycans, unit: "jerrycan") }. Ga ƙananan shuka, ku rage. A ranakun zafi da iska, ku ƙara. Ku daina idan ruwan sama ya wadatar.
# doubt: "gaɓa" for a node, "guntu" for a cutting, "gindi" for the stub.
cut-for-planting = Idan damina ta sauka, { SPAN($when) }, ku yanki yaɗon da za a shuka. Ku yanki guntu mai tsawon { MEASURE($cutting_cm, unit: "centimetre") }, gaɓoɓinsa kada su gaza { SAY($nodes, form: "cardinal") }. Ku yanka daga lafiyayyen yaɗo kaɗai. { $plan_by ->
    [practice] Bisa ga yadda aka saba, yankan farko zai ba da guntu kamar
   *[print] Yankan farko zai ba da guntu kamar
 } { SAY($first_cuttings_low, form: "cardinal") } zuwa { SAY($first_cuttings_high, form: "cardinal") }. Ku bar gindin yaɗon. Zai sake ba da wasu guntu cikin mako huɗu zuwa shida. Ku ajiye guntun a inuwa, ku shuka su cikin kwana biyu.
# doubt: "tudu" for a mound; a local word may be better.
plant-field = { SPAN($when) }, ku shuka gona, amma kada ku shuka sai idan ƙasa tana da danshi. { $layout ->
    [own] Kowace gona ta shuka a kan kunyoyinta ko tuddanta.
    [mounds] A kowane tudu, ku sa guntu { SAY($on_mound, form: "cardinal") }.
   *[ridges] Ku sa guntu ɗaya ɗaya a kan kunya, tazarar guntu da guntu { MEASURE($along_cm, unit: "centimetre") }.
 } Ku binne gaɓar yaɗo biyu ko uku. Bayan mako biyu, ku sake shuka inda akwai gibi.
first-harvest = { SPAN($when) }, ku gwada dankalin farko. Ku lalubi ƙarƙashin wasu shuka, ku ji ko dankali ya kai girman da za a ci. Kada ku bar nunannen dankali a busasshiyar ƙasa na dogon lokaci. Ƙwarin dankali za su same shi. Kada tonon ƙarshe ya wuce { DAY($last_harvest) }.

## Cautions

caution-rot = Ku kula. Kada ku taɓa cin dankalin da ya ruɓe, ko ya yi funfuna, ko ƙwari suka huda shi. Kada ku taɓa bai wa dabbobi shi, kada ku shuka shi. Kada ku yanke wurin da ya lalace ku ci sauran. Ko da wurin da ya yi kama da lafiyayye yana iya zama mai guba. Ku binne irin wannan dankali a rami mai zurfi, ko ku ƙone shi.
# doubt: "cutar bairus" for virus disease.
caution-virus = Ku kula. Ganye mai tabo, ƙanƙane ko murɗaɗɗe, da yaɗon da ya tsumbure, alamun cutar bairus ne. Kada ku taɓa ɗaukar dankali ko yaɗo daga irin wannan shuka.
# doubt: "ƙwarin dankali" for weevils, explained here as insects that bore the root.
caution-cracks = Ƙwarin dankali masu huda shi suna bi ta tsagar ƙasa su isa gare shi. Da kun ga tsaga, nan take ku tula mata ƙasa.
caution-heavy-sand = Ku kula, yashi yana da nauyi. A lokaci ɗaya, kada ku ɗauki fiye da { MEASURE($load_kg, unit: "kilogram") }. Ku cika mazubi a inda zai zauna, kada ku ɗaga shi idan ya cika.
# doubt: "gaɓar kogi wadda take tsaye kamar bango" for a steep bank.
caution-riverbed = Kada ku ɗebi yashi a kogi sai idan kogin ya ƙafe. Kada ku taɓa tona ƙarƙashin gaɓar kogi wadda take tsaye kamar bango, ko kusa da ita. Tana iya rushewa ta binne ku. Kada ku ɗebi yashi sai a inda dokokin wurin suka yarda.
caution-water-children = Ku kula da yara. Kada ku bar su su yi wasa kusa da ruwa, rijiyoyi ko ramuka. Ku rufe ruwan da kuka ajiye, ku kewaye rijiyoyi da ramuka da shinge. Ku hana awaki da kaji shiga gadon reno.
caution-store-dry = Kada ku taɓa zuba ruwa a ajiyar. Dole yashi ya kasance a bushe daga ranar farko har ta ƙarshe.
caution-forecast = Waɗannan ranaku matsakaici ne na shekarun baya, ba hasashen wannan shekara ba. Damina tana iya zuwa da wuri ko ta makara. Kada ku shuka sai idan ƙasa tana da danshi.
caution-try-first = Idan wannan sabon abu ne a gare ku, ku fara da dankali kaɗan. Ku kuma adana wani ɓangare na yaɗonku ta tsohuwar hanya.

## Questions for a meeting, each after its step

# doubt: "yi tsiro" for to sprout; and whether the questions sound natural at a meeting.
ask-mark-plants = Wace shuka ce ta fi ƙarfi a gonarku?
ask-gather-sand = Wa yake da busasshen yashi a kusa? Ta yaya za mu tona shi lafiya?
ask-check-plants = A nan, yaya shuka mai cuta take?
ask-cut-vines = Idan kuka bar gindi gajere sosai, me zai faru?
ask-harvest = Ta yaya za ku tona dankali ba tare da ji masa rauni ba?
ask-fill-container = A gidanku, ina ne wuri mai sanyi, busasshe, nesa da yara da dabbobi?
ask-monthly-check = Me kuke gani idan dankali ya lalace? A ina za ku binne shi?
ask-prepare-bed = Ina ruwa yake? Wa zai kula da yara?
ask-last-check = Dankalinku nawa ne suka yi tsiro?
ask-plant-bed = Me zai iya hana ku shuka a kan lokaci?
ask-water-bed = Idan ba ku nan, wa zai ba gadon reno ruwa?
ask-cut-for-planting = Ta yaya kuke sanin damina ta sauka da gaske?
ask-plant-field = Wane ɓangaren gona za ku fara shukawa?
ask-first-harvest = Wane yaɗo za ku ajiye don damina mai zuwa?
