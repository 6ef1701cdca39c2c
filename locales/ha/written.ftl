### Hausa, daftari: kalmomin takarda. Babu ƙwararre a Hausa da ya karanta su tukuna.
### Draft, as printed on sheets. Standard (Kano) spelling with ɓ ɗ ƙ and ƴ written 'y; straight apostrophe.
### Register: "ku" with the subjunctive (ku tona, kada ku wanke): plural, polite, for a man or a woman, for one farmer or many.
### Labels and table heads are nouns or the impersonal "da za a …".
### Nouns: dankali (root; m.), dankalin Hausa (sweet potato, in the title), shuka (plant; f.), yaɗo (vine; m.),
### guntun yaɗo, short guntu (cutting; m.), gaɓa (node, and joint of the thumb; f.), gindi (stem foot, stub; m.), tsiro (sprout; m.),
### hawa (layer; m.), layi (row; m.), mazubi (container; m.), jarka (jerrycan; f.), gadon reno (seedbed; m.),
### kunya (ridge; f.), tudu (mound; m.), dami (bundle; m.), ƙwaron dankali, plural ƙwarin dankali (weevil), damina (the rains; f.).
### A counted noun stands in the singular, the number behind it, "guda" (pieces) between: dankali guda 40. So nothing depends on
### plural categories.

## Words of the sheet itself

# doubt: "dankali" alone is also the Irish potato (dankalin Turawa) in towns; "dankalin Hausa" in the title says which. In Niger "kudaku" is said too.
sheet-title = Dankalin Hausa: daga wannan girbi zuwa damina mai zuwa
# doubt: "Domin" before the name of a farm or a group; "Na" or "Mai gona" may be better.
sheet-for = Domin
sheet-place = Wuri
sheet-rains = Lokacin da ake sa ran damina
sheet-harvest = Tonon dankalin tsohuwar gona
sheet-amounts = Abin da kuke buƙata
sheet-steps = Abin da za ku yi, da lokacinsa
sheet-cautions = Ku kula
sheet-when = Lokaci
# Between a label and its value; Hausa wants no space before it.
colon = :
semicolon = ;
sheet-page = Shafi
sheet-group = Ƙungiya
sheet-together = Tare
# doubt: "rubutun gwaji" for draft wording; "daftari" is more bookish.
status-draft = Rubutun gwaji: babu ƙwararre a Hausa da ya karanta shi tukuna.
status-read = Ƙwararre a Hausa ya karanta rubutun, amma ba a amince da shi ba tukuna.
status-approved = An amince da rubutun.

## Words of the cue sheet

cue-title = Saƙo
cue-language = Harshe
cue-voice = Murya
cue-rights = Haƙƙin mallaka
cue-status = Matsayin murya
cue-length = Tsawon lokaci
# doubt: the two technical words of sound, loudness and true peak, are made up here.
cue-loudness = Ƙarfin sauti
cue-true-peak = Ƙololuwar sauti ta gaske
cue-from = Daga
cue-to = Zuwa
cue-words = Kalmomi
# doubt: "guntun sauti" for a clip.
cue-clip = Guntun sauti
voice-stand-in = ta wucin gadi
voice-draft = an ɗauka, ba a amince da ita ba tukuna
voice-approved = an amince da ita
voice-stand-in-remark = Wannan muryar wucin gadi ce, na'ura ce ta yi ta. Za a maye gurbinta da muryar mutum.

## Amounts

amount-plants = Shukar da za a sa wa alama
amount-plants-each = Shukar da kowane ɗan ƙungiya zai sa wa alama
amount-roots = Dankalin da za a adana
amount-cuttings = Guntun yaɗo na gona
amount-first-cuttings = Guntun yaɗo da ake sa ran samu a yankan farko
amount-containers = Mazubai
# doubt: "hawa" (storey) for a layer; some may say "jeri" or "shimfiɗa".
amount-layers = Hawan dankali a kowane mazubi
amount-roots-per-layer = { $layer_widths ->
    [uneven] Dankali a hawa na ƙasa, kada ya wuce
   *[even] Dankali a kowane hawa, kada ya wuce
 }
amount-roots-top-layer = Dankali a hawa na sama, kada ya wuce
amount-bundles = Damin guntun yaɗo
amount-lining = Takardar da za a shimfiɗa a mazubai
amount-water-total = Ruwan gadon reno, daga farko har ƙarshe
amount-sand = Busasshen yashi
amount-loads = Sau nawa za a ɗauki yashi
# doubt: "gadon reno" (nursery bed) for the seedbed; spelt "raino" too; "fangalin raino" may be better known to those who irrigate.
amount-bed = Gadon reno
amount-strips = Sassan gadon reno, da hanyar { MEASURE($path_m, unit: "metre") } tsakaninsu
amount-water = Ruwan gadon reno, kowace rana
amount-jerrycans = Jarkar ruwa, kowace rana

first-cuttings-value = { $first_cuttings_low } zuwa { $first_cuttings_high }{ $plan_by ->
    [practice] , bisa ga yadda aka saba
   *[print] , bisa ga kwanakin girma
 }
sand-value = { MEASURE($sand_l, unit: "litre") }, kamar { MEASURE($sand_kg, unit: "kilogram") }
bed-value = { MEASURE($bed_length_m, unit: "metre") } × { MEASURE($bed_width_m, unit: "metre") }
strips-value = { $strips }, kowanne { MEASURE($strip_length_m, unit: "metre") } × { MEASURE($strip_width_m, unit: "metre") }
water-value = { MEASURE($water_l, unit: "litre") }
water-total-value = { MEASURE($water_total_l, unit: "litre") }
bundles-value = { MEASURE($bundles, unit: "bundle") }, kowane dami guntu { $bundle_size }
lining-value = murabba'in mita { $lining_m2 }
roots-for-zone = { $roots } (adadi ne na misali; ku ƙara ko ku rage gwargwadon kowace gona)

## Dates and units

# "ga" (20 ga Mayu) as newspapers write it; CLDR has the bare "20 Mayu".
date = { $day } ga { month }, { $year }
# Mayu, Yuni and Yuli are short enough whole; CLDR has May, Yun, Yul.
month-short = { $month ->
    [1] Jan
    [2] Fab
    [3] Mar
    [4] Afi
    [5] Mayu
    [6] Yuni
    [7] Yuli
    [8] Agu
    [9] Sat
    [10] Okt
    [11] Nuw
   *[12] Dis
 }
date-short = { $day } { month-short }
# As in CLDR, but with a straight apostrophe in Jumma'a.
weekday = { $weekday ->
    [1] Litinin
    [2] Talata
    [3] Laraba
    [4] Alhamis
    [5] Jumma'a
    [6] Asabar
   *[7] Lahadi
 }
week = { $week ->
    [1] makon farko
    [2] mako na biyu
    [3] mako na uku
    [4] mako na huɗu
   *[5] makon ƙarshe
 } na { month }
span = { DAY($from) } – { DAY($to) }
span-day = { WEEKDAY($from) }, { DAY($from) }
# The singular "kilo, lita, mita, santimita" before any number, as in speech; CLDR has plurals (litoci 3) and "senti-".
unit-kilogram = kilo { $n }
unit-litre = lita { $n }
unit-metre = mita { $n }
unit-centimetre = santimita { $n }
# doubt: "tafin hannu da yatsu" (palm and fingers) for a hand's length, because "hannu" alone is also the arm and "taƙi" is the wider span of spread fingers.
unit-hand = { $n ->
    [one] tsawon tafin hannu da yatsu
   *[other] tsawon tafin hannu da yatsu sau { $n }
 }
unit-thumb-joint = gaɓar babban yatsa { $n }
unit-jerrycan = jarka { $n }
unit-bundle = dami { $n }
event-before = kwana { $days } kafin { $event }
event-on = a ranar { $event }
event-after = kwana { $days } bayan { $event }

## Opening and closing

opening = { $kind ->
    [zone] Wannan tsari na kowane manomi a yankin nan ne. Adadin da ke ciki na dankali guda { $roots } ne: ku ƙara ko ku rage gwargwadon gonarku.
   *[other] An lissafa ranakun wannan tsari daga lokacin damina, ana komawa baya. Ana sa ran saukar damina wajen { DAY($rains) }.
 }
closing = Malamin gona na yankinku ya san nau'o'in dankali, da lokuta, da dokokin wurin. Idan ya faɗi abin da ya saɓa wa wannan takarda, ku bi shawararsa.
    .sms = Shawarar malamin gonarku ita ce gaba da komai.

## Steps: title, text (.text), picture in words (.alt), text message on a phone (.sms)
## A text message with none of ɓ ɗ ƙ holds 160 letters, one with them 70: where plain words without them were at hand, they were taken.

# doubt: "dankalin iri" for seed roots, in the text message.
mark-plants = Ku sa wa lafiyayyar shuka guda { $plants } alama
    .short = Shuka mai ƙarfi, manyan ganye masu tsabta, babu ciwo. Ku kafa sanda a gefen kowace.
    .text = { $kind ->
        [group] Ku zaɓi shuka mai ƙarfi guda { $plants } tare; kowane ɗan ƙungiya ya sa wa guda { $plants_each } alama.
       *[other] Ku zaɓi shuka mai ƙarfi guda { $plants }.
     } Ku kafa sanda a gefen kowace. Ku zaɓi masu manyan ganye masu tsabta kaɗai, waɗanda ba su da wata alamar ciwo. Za su ba da dankalin ajiya kamar guda { $roots }.
    .alt = Hannu yana kafa sanda a ƙasa a gefen shuka mai ƙarfi.
    .show = Lafiyayyen yaɗo da mai ciwo, da sanda.
    .ask = Yaya kuke bambanta lafiyayyar shuka da mai ciwo?
    .sms = { BRIEF($first) }: ku kafa sanda a gefen lafiyayyar shuka guda { $plants } don dankalin iri. Manyan ganye masu tsabta, babu ciwo.
# doubt: "yashi mai kaushi" (rough) for coarse sand, "mai laushi" (soft) for fine sand.
# doubt: "zuwa" before a day for "by" in the text messages.
# doubt: "rumfa" (open shed) in the text message for "under cover".
gather-sand = Ku kawo busasshen yashi
    .short = Mai kaushi, mai tsabta: { MEASURE($sand_l, unit: "litre") }. Ku shanya shi a ƙarƙashin rufi, ya huce.
    .text = Ku kawo yashi mai kaushi, mai tsabta, { MEASURE($sand_l, unit: "litre") }, nauyinsa kamar { MEASURE($sand_kg, unit: "kilogram") }. Ku shanya shi a ƙarƙashin rufi, ku bar shi ya huce. Yashi mai laushi, ko mai danshi, ko mai ɗumi, yana ruɓar da dankali. A lokaci ɗaya kada ku ɗauki fiye da { MEASURE($load_kg, unit: "kilogram") }: za ku ɗauka kamar sau { $loads }.
    .alt = A ƙarƙashin rumfa, hannu mai kwano yana zuba busasshen yashi daga tari zuwa ƙaramin bokiti.
    .show = Busasshen yashi mai kaushi, da yashi mai laushi da danshi.
    .ask = A ina za mu samu yashi mai kaushi, kuma babu hatsari a tona wurin?
    .sms = Zuwa { BRIEF($last) }: ku kawo busasshen yashi mai kaushi, { MEASURE($sand_l, unit: "litre") }. Ku shanya shi a rumfa. Kada kaya guda ya wuce { MEASURE($load_kg, unit: "kilogram") }.
# doubt: "yaɗo" for the vine; other areas may say "igiya" or "harawa".
# "ƙananan ramuka" for holes: "huda" is also blossom, and ridging.
# doubt: "alamar daidai" for a tick, "hoton wata sau uku" for three moons, in the words for pictures.
check-plants = Ku sake duba shukar da kuka sa wa alama
    .short = Ganye ƙanana, murɗaɗɗu ko masu tabo? Ku cire sandar, kada ku ɗauki komai.
    .text = Ku duba ko ganyaye ƙanana ne, ko sun murɗe, ko sun yi tabo; ko yaɗo ya tsumbure; ko akwai ƙananan ramuka a gindin shuka. Idan kuna shakka, ku cire sandar, kada ku ɗauki komai daga wannan shuka.
    .alt = Lafiyayyar shuka mai alamar daidai tana da sandarta; hannu yana cire sandar shuka mai ciwo, mai ganyaye masu tabo, yamutsattsu.
    .show = Ganye ƙanana, murɗaɗɗu da masu tabo.
    .ask = Me za ku yi da shukar da aka sa wa sanda idan ta yi ciwo?
    .sms = { BRIEF($first) }: ku sake duba shuka mai sanda. Ku cire sandar inda ganye ƙanƙane ne, ya murɗe ko ya yi tabo.
cut-vines = Ku yanke yaɗon shukar da kuka sa wa alama
    .short = Ku bar gindi mai tsawon { MEASURE($stem_cm, unit: "centimetre") }: { MEASURE($stem_hands, unit: "hand") }.
    .text = Ku yanke yaɗon, ku bar gindinsa mai tsawon { MEASURE($stem_cm, unit: "centimetre") }, kamar { MEASURE($stem_hands, unit: "hand") }. Ɓawon dankali zai yi tauri, kuma dankalin zai daɗe bai lalace ba.
    .alt = Wuƙa tana yanke yaɗo; gindin da ya rage ya kai tsawon hannun da yake tsaye a gefensa.
    .show = Tafin hannu a buɗe a gefen gindi.
    .ask = Me ya sa ɓawon dankali yake buƙatar lokaci kafin ya yi tauri?
    .sms = { BRIEF($first) }: ku yanke yaɗon shuka mai sanda. Ku bar gindinsa mai tsawon tafin hannu da yatsu.
# doubt: "idan gona ta bushe" (when the field is dry) in the text message for dry soil.
# doubt: "matsakaici" serves both for a medium root here and for an average in caution-forecast.
harvest = Ku tona, ku zaɓi dankali guda { $roots }
    .short = Sai ƙasa ta bushe. Matsakaicin dankali marar rauni. Kada ku wanke. Ku bar shi a inuwa.
    .text = Kada ku tona sai idan ƙasa ta bushe. Ku ciro dankali ba tare da ji masa rauni ba. Ku ɗauki matsakaicin dankali guda { $roots }, mai tsawo kamar tafin hannu da yatsu, ɓawonsa babu rauni. Mai rauni na dafawa ne, ba na ajiya ba. Ku kakkaɓe ƙasar jikinsa da hannu, kada ku taɓa wanke shi. Ku bar shi a inuwa na 'yan awoyi, inda rana ba ta kaiwa.
    .alt = Hannu yana ɗaga shuka da dankalinta lafiyayye daga ƙasar da aka sassauta, ga fartanya a gefe.
    .show = Matsakaicin dankali wanda ɓawonsa babu rauni, da mai rauni.
    .ask = Wane dankali ne za a adana, wane ne za a dafa?
    .sms = { BRIEF($first) }: idan gona ta bushe, ku tona. Ku adana matsakaicin dankali guda { $roots } marar rauni. Kada ku wanke. Ku bar shi a inuwa.
# doubt: "baho" for a basin; "daro" is the old word. "kwando mai matsattsiyar saƙa" for a tight basket.
fill-container = Ku jera dankali a cikin yashi
    .short = Yashi: a gindi { MEASURE($base_cm, unit: "centimetre") }, a tsakani { MEASURE($layer_cm, unit: "centimetre") }, a sama { MEASURE($top_cm, unit: "centimetre") }. Kada su gogi juna. Babu murfi.
    .text = Ku nemi mazubi guda { $containers } mai gefe mai tauri: baho, tukunya, bokiti ko kwando mai matsattsiyar saƙa. Kada ku yi amfani da buhu. Ku shimfiɗa takarda a ciki, ku cika shi a inda zai zauna: wuri busasshe, mai sanyi da inuwa, nesa da yara, dabbobi da ruwan sama. Ku fara da yashi mai kaurin { MEASURE($base_cm, unit: "centimetre") }, kamar { MEASURE($base_joints, unit: "thumb-joint") }. Ku jera dankali a kai. { $layer_widths ->
        [uneven] Dankalin hawa na ƙasa kada ya wuce guda { $roots_per_layer }, na hawa na sama kuma kada ya wuce guda { $roots_top }.
       *[even] Dankalin kowane hawa kada ya wuce guda { $roots_per_layer }.
     } Kada su taɓa juna, kada su taɓa gefen mazubi. Ku rufe su da yashi mai kaurin { MEASURE($layer_cm, unit: "centimetre") }. { $layers ->
        [one] Dankalin hawa { $layers } ne kawai.
       *[other] Sannan ku jera wani hawa, har su kai hawa { $layers }.
     } Ku ƙare da yashi mai kaurin { MEASURE($top_cm, unit: "centimetre") }: yana hana ɓeraye, ƙwari da kaji shiga. Kada ku sa masa murfi.
    .alt = An yanka baho, an nuna cikinsa: yashi, dankali a rarrabe, yashi, dankali, sai yashi mai kauri a sama; hannu yana barbaɗa yashi.
    .show = Baho, busasshen yashi da dankali kaɗan: wani ya jera hawan farko.
    .ask = Me ya sa ba a barin dankali su taɓa juna?
    .sms = { BRIEF($first) }: ku jera dankali a busasshen yashi, kada su gogi juna. A gindi yashi { MEASURE($base_cm, unit: "centimetre") }, a sama { MEASURE($top_cm, unit: "centimetre") }. Babu murfi, babu ruwa.
# doubt: "funfuna" for mould; some say "hunhuna" or "fumfuna". "tsiro" for a sprout on the root; some say "toho".
# doubt: "an soke shi" for crossed out in a picture.
monthly-check = Ku duba dankali kowane wata
    .short = Ku duba kowane dankali. Ku binne ko ku ƙone ruɓaɓɓe. Ku murje tsiro. Ku sake jerawa.
    .text = Ku fitar da kowane dankali, ku duba shi. Ku ware wanda ya ruɓe, ko ya yi funfuna, ko ƙwari suka huda shi. Ku binne shi a rami mai zurfi, ko ku ƙone shi. Ku murje tsiro har ya fita. Ku sake jera masu kyau kamar da, ku rubuta guda nawa suka rage. Tsakanin dubawa da dubawa, ku ƙyale su.
    .alt = Hoton wata sau uku, alamar cewa wata guda ya wuce; hannu yana ciro dankali daga baho; ruɓaɓɓen dankali yana gefe, an soke shi.
    .show = Ruɓaɓɓen dankali idan akwai, da yadda ake sake jerawa.
    .ask = Me za ku yi da ruɓaɓɓe, kuma me ya sa ba a bai wa dabbobi shi?
    .sms = { BRIEF($first) }: ku fitar da dankali duka. Ku binne ko ku ƙone ruɓaɓɓe, kada ku taɓa bai wa dabbobi. Ku murje tsiro. Ku sake jerawa.
# doubt: "mita … da mita …" in the text message for length by width.
# doubt: "taku" for paces, with which the bed is measured at a meeting.
prepare-bed = Ku yi gadon reno
    .short = { MEASURE($bed_length_m, unit: "metre") } da { MEASURE($bed_width_m, unit: "metre") }, kusa da ruwa. Ku noma ƙasar. Ku yi shinge.
    .text = Ku yi gado mai tsawon { MEASURE($bed_length_m, unit: "metre") } da faɗin { MEASURE($bed_width_m, unit: "metre") } kusa da ruwa. Ku noma ƙasarsa sosai har ta yi laushi. Ku kewaye shi da shinge don hana awaki da kaji shiga.
    .alt = Wani mutum yana sassauta ƙasar gadon reno da fartanya; a bayansa akwai shinge.
    .show = Wurin da yake kusa da ruwa, da girman gadon reno, an auna da taku.
    .ask = Me zai hana awaki da kaji shiga?
    .sms = Zuwa { BRIEF($last) }: ku yi gadon reno na { MEASURE($bed_length_m, unit: "metre") } da { MEASURE($bed_width_m, unit: "metre") } kusa da ruwa. Ku yi masa shinge.
last-check = Ku duba a karo na ƙarshe, ku bar tsiron
    .short = Ku binne ko ku ƙone ruɓaɓɓe. Ku bar tsiron.
    .text = Ku fitar da kowane dankali. Ku ware wanda ya ruɓe, ko ya yi funfuna, ko ƙwari suka huda shi. Ku binne shi a rami mai zurfi, ko ku ƙone shi. A wannan karon ku bar tsiron: yanzu masu kyau za su tafi gadon reno.
    .alt = Hannu yana ciro dankali mai tsiro daga baho; kibiya tana nuna gadon reno.
    .show = Dankali mai tsiro.
    .ask = Me ya sa a wannan karon ake barin tsiron?
    .sms = { BRIEF($first) }: dubawar ƙarshe. Ku bar tsiro. Ku binne ko ku ƙone ruɓaɓɓe, kada ku taɓa bai wa dabbobi.
plant-bed = Ku shuka dankali a gadon reno
    .short = Layi guda { $bed_rows }, tazara { MEASURE($spacing_cm, unit: "centimetre") }, kamar dankali guda { $row_roots } a kowanne. Ku rufe da ƙasa kaɗan.
    .text = Ku kwantar da dankali a layi guda { $bed_rows }, kowane layi kamar guda { $row_roots }, tazararsu kamar { MEASURE($spacing_cm, unit: "centimetre") }. Ku rufe su da ƙasa kaɗan.
    .alt = Dankali a kwance a layi; hannu yana rufe su da ƙasa.
    .show = Tazarar layuka da sandar da tsawonta ya dace.
    .ask = Yaya zurfin dankali yake a gadon reno?
    .sms = Daga { BRIEF($first) }: ku shuka dankali a layi, tazara { MEASURE($spacing_cm, unit: "centimetre") }. Ku rufe da ƙasa kaɗan, ku ba su ruwa.
# doubt: whether the size of the "jarka" should be named.
water-bed = Ku ba gadon reno ruwa
    .short = Har zuwa { MEASURE($water_l, unit: "litre") } a rana ({ MEASURE($jerrycans, unit: "jerrycan") }); ga ƙananan shuka, ku rage.
    .text = Idan ganyen shuka ya rufe gadon, kowace rana ku ba shi ruwa kamar { MEASURE($water_l, unit: "litre") }, wato { MEASURE($jerrycans, unit: "jerrycan") }. Ga ƙananan shuka, ku rage; a ranakun zafi da iska, ku ƙara. Ku daina idan ruwan sama ya wadatar.
    .alt = Hannu yana zuba ruwa daga jarka a gadon reno mai tsiro.
    .show = Jarka, da ɗan ruwan da ƙananan shuka suke buƙata.
    .ask = Wa zai kawo ruwa, wa kuma zai kula da yara a wurin?
    .sms = Daga { BRIEF($first) }: ku ba gadon reno ruwa kowace rana, har zuwa { MEASURE($water_l, unit: "litre") }. Ku hana yara zuwa kusa da ruwan da ba a rufe ba.
# doubt: "gaɓa" (joint) for a node of the vine; some may say "ido" or "ƙulli". "guntu" for a cutting. "gindi" for the stub.
cut-for-planting = Ku yanki yaɗon da za a shuka
    .short = Idan damina ta sauka: { MEASURE($cutting_cm, unit: "centimetre") }, gaɓa { $nodes }, lafiyayyen yaɗo. Ku bar gindinsa.
    .text = Idan damina ta sauka, ku yanki guntun yaɗo mai tsawon { MEASURE($cutting_cm, unit: "centimetre") }, kamar { MEASURE($cutting_hands, unit: "hand") }, gaɓoɓinsa kada su gaza { $nodes }. Ku yanka daga lafiyayyen yaɗo kaɗai. { $plan_by ->
        [practice] Bisa ga yadda aka saba, yankan farko zai ba da guntu kamar
       *[print] Yankan farko zai ba da guntu kamar
     } { $first_cuttings_low } zuwa { $first_cuttings_high }. Ku bar gindin yaɗon: zai sake ba da wasu guntu cikin mako huɗu zuwa shida. Ku ajiye guntun a inuwa, ku shuka su cikin kwana biyu.
    .alt = Hannu ɗaya yana riƙe da yaɗo a gadon reno, ɗayan yana yanke shi da wuƙa; gindin yana nan.
    .show = Guntun yaɗo mai tsawon da ya dace a gefen hannu: ku ƙirga gaɓoɓi.
    .ask = Daga wace shuka ba za mu yanki yaɗo ba?
    .sms = Idan damina ta sauka: ku yanki yaɗo mai tsawon { MEASURE($cutting_cm, unit: "centimetre") } da gaɓa { $nodes } daga lafiyayyar shuka. Ku bar gindinsa.
# doubt: "tudu" for a mound; a local word may be better.
plant-field = Ku shuka gona
    .short = Sai a ƙasa mai danshi. Ku binne gaɓa biyu ko uku. Bayan mako biyu ku cike gibi.
    .text = Kada ku shuka sai idan ƙasa tana da danshi. { $layout ->
        [own] Kowace gona ta shuka a kan kunyoyinta ko tuddanta.
        [mounds] A kowane tudu ku sa guntu { $on_mound }, tazarar tudu da tudu { MEASURE($between_cm, unit: "centimetre") }.
       *[ridges] Ku sa guntu ɗaya-ɗaya a kan kunya, tazarar guntu da guntu { MEASURE($along_cm, unit: "centimetre") }, tazarar kunya da kunya { MEASURE($between_cm, unit: "centimetre") }.
     } Ku binne gaɓar yaɗo biyu ko uku. { $kind ->
        [zone] Dankali guda { $roots } yana ba da guntu { $cuttings } a duk tsawon lokacin gadon reno.
       *[other] Gonar tana buƙatar guntu { $cuttings }.
     } Bayan mako biyu, ku sake shuka inda akwai gibi.
    .alt = A ƙarƙashin girgijen ruwa, hannu yana dasa guntun yaɗo a layi; an binne gaɓoɓinsa na ƙasa.
    .show = Ƙasa mai danshi har zurfin yatsa, da guntun yaɗo da aka binne gaɓoɓinsa.
    .ask = An yi ruwa sau ɗaya: mu shuka yanzu? Mece ce riba, mece ce illa?
    .sms = Daga { BRIEF($first) }, idan ƙasa tana da danshi: ku shuka guntun yaɗo { $cuttings_to_plant }. Ranar kiyasi ce: ku lura da sararin sama.
# doubt: "ƙwarin dankali" for weevils, explained as insects that bore the root where space allows.
first-harvest = Ku gwada dankalin farko
    .short = Ku lalubi manyan dankali. Ku gama tonawa zuwa { DAY($last_harvest) }: ƙwarin dankali suna zuwa.
    .text = Ku lalubi ƙarƙashin wasu shuka ku ji ko dankali ya kai girman da za a ci. Kada ku bar nunannen dankali a busasshiyar ƙasa na dogon lokaci: ƙwarin dankali za su same shi. Kada tonon ƙarshe ya wuce { DAY($last_harvest) }.
    .alt = Hannu yana laluben dankali a ƙarƙashin shuka; a gefe ga tukunya a kan wuta.
    .show = Yadda ake laluben dankali ba tare da tumɓuke shukar ba.
    .ask = Me yake faruwa da dankalin da ya nuna ya zauna a busasshiyar ƙasa?
    .sms = Daga { BRIEF($first) }: ku laluba ko dankali ya nuna. Ku gama tonawa zuwa { BRIEF($last_harvest) }: ƙwarin dankali suna zuwa.

## Tables: title, what it tells (.text), its picture in words (.alt)

# doubt: "bisa ga kwanakin girma" where cuttings are counted by the days that the bed has grown.
table-cuts = Yankan yaɗo daga gadon reno{ $plan_by ->
    [practice] , bisa ga yadda aka saba
   *[print] , bisa ga kwanakin girma
 }
    .text = Ga yawan guntun da ake sa ran samu a kowane yanka. Na baya-baya na sauran gonar ne, da na cike gibi.
table-shares = Abin da kowace gona za ta kawo
    .text = Kowace gona tana sa wa shukarta alama, ta kuma kawo dankalinta wurin ajiyar kowa da kowa.
table-fields = Adadi gwargwadon girman gona
    .text = Ku nemi gonarku a ginshiƙi na farko. Idan girmanta yana tsakanin layi biyu, adadinta ma yana tsakanin nasu.
# doubt: "saukar ƙarya" (false coming-down) for a false start of the rains; a local word for rain that deceives may be better.
table-planting-later = Idan kuka jinkirta shuka
    .text = Wanda ya shuka a babban ruwan farko zai iya rasa ƙananan shuka idan dogon fari ya biyo baya: wannan ita ce saukar ƙarya. Jinkiri yana rage yawan kwanakin ruwan sama. Jadawalin yana nuna yadda duka biyu suka kasance a shekarun baya; ba hasashe ba ne. A hoton, sanduna masu ratsi su ne shekarun saukar ƙarya. Baƙaƙen sanduna su ne kwanakin ruwan sama da suka rage.
    .alt = Ga kowace ranar fara shuka: sanda mai ratsi ta shekarun saukar ƙarya, da baƙar sanda ta kwanakin ruwan sama da suka rage. Adadin yana cikin jadawalin da ke sama.
column-when = Lokaci
column-farm = Gona
column-area = Girman gona, m²
column-cuttings = Guntun yaɗo
column-cut = Guntun yaɗo
cut-value = { $low }–{ $high }
column-plants = Shukar da za a sa wa alama
column-roots = Dankalin da za a adana
column-bed = Gadon reno, m²
column-jerrycans = Jarkar ruwa a rana
column-from = Ruwan farko daga
column-false-starts = Shekarun saukar ƙarya
# doubt: "a shekarar tsakiya" for the middle year.
column-days-left = Kwanakin ruwan sama da suka rage, a shekarar tsakiya
false-starts-value = { $false_starts } cikin { $years }

## Cautions: title, text (.text), picture in words (.alt); text message (.sms) where there is one

caution-rot = Dankali ruɓaɓɓe, ko mai funfuna, ko wanda ƙwari suka huda
    .short = Kada ku taɓa cin sa, ko da wurin da ya yi kyau. Kada ku taɓa bai wa dabbobi. Ku binne da zurfi ko ku ƙone.
    .text = Kada ku taɓa cin sa, kada ku taɓa bai wa dabbobi shi, kada ku shuka shi. Kada ku yanke wurin da ya lalace ku ci sauran: ko da wurin da ya yi kama da lafiyayye yana iya zama mai guba. Ku binne shi a rami mai zurfi ko ku ƙone shi.
    .alt = Ruɓaɓɓen dankali; a ƙarƙashinsa akwai saniya da tukunyar girki, an soke su duka.
    .sms = Kada ku taɓa cin ruɓaɓɓen dankali ko mai funfuna, kada ku bai wa dabbobi, ko da wurin da ya yi kyau. Ku binne da zurfi ko ku ƙone.
# doubt: "cutar bairus" for virus disease.
caution-virus = Shuka mai ciwo
    .short = Ganye mai tabo, ƙanƙane ko murɗaɗɗe: kada ku ɗauki komai daga wannan shuka.
    .text = Ganye mai tabo, ƙanƙane ko murɗaɗɗe, da yaɗon da ya tsumbure, alamun cutar bairus ne. Kada ku taɓa ɗaukar dankali ko yaɗo daga irin wannan shuka.
    .alt = Hannu mai wuƙa a wajen shuka mai ganyaye masu tabo, yamutsattsu, an soke hoton.
caution-cracks = Tsagewar ƙasa
    .short = Ku tula ƙasa a kan tsaga: ƙwarin dankali suna shiga ta nan.
    .text = Ƙwarin dankali suna bi ta tsagar ƙasa su isa ga dankali. Da kun ga tsaga, nan take ku tula mata ƙasa.
    .alt = Ƙwaron dankali yana shiga tsagar kunya; a ƙasanta akwai dankali mai ramuka da yawa.
caution-heavy-sand = Yashi yana da nauyi
    .short = Kada ku ɗauki fiye da { MEASURE($load_kg, unit: "kilogram") }. Kada ku ɗaga mazubin da ya cika.
    .text = A lokaci ɗaya kada ku ɗauki fiye da { MEASURE($load_kg, unit: "kilogram") }. Ku cika mazubi a inda zai zauna, kada ku ɗaga shi idan ya cika.
    .alt = Mutum ya sunkuya a ƙarƙashin babban buhu, an soke shi; mace tana tsaye a miƙe da ƙaramin bokiti, da alamar daidai.
# doubt: "gaɓar kogi wadda take tsaye kamar bango" (upright as a wall) for a steep bank.
caution-riverbed = Yashin kogi
    .short = Sai idan kogi ya ƙafe; kada ku taɓa tona ƙarƙashin gaɓarsa mai tsaye ko kusa da ita; sai inda doka ta yarda.
    .text = Kada ku ɗebi yashi a kogi sai idan kogin ya ƙafe. Kada ku taɓa tona ƙarƙashin gaɓar kogi wadda take tsaye kamar bango, ko kusa da ita: tana iya rushewa ta binne ku. Kada ku ɗebi yashi sai a inda dokokin wurin suka yarda.
    .alt = Gaɓar kogi wadda take tsaye kamar bango tana rushewa a kan mutum mai tona, an soke hoton.
caution-water-children = Ruwa, yara da dabbobi
    .short = Ku nisanta yara. Ku rufe ruwa; ku yi wa rijiyoyi, ramuka da gadon reno shinge.
    .text = Kada ku bar yara su yi wasa kusa da ruwa, rijiyoyi ko ramuka. Ku rufe ruwan da kuka ajiye, ku kewaye rijiyoyi da ramuka da shinge. Ku hana awaki da kaji shiga gadon reno.
    .alt = Gangar ruwa mai murfi a bayan shinge; mace tana riƙe da yaro a waje.
caution-store-dry = Kada ku taɓa zuba ruwa a ajiyar
    .short = Kada ku zuba ruwa a yashin: dankali zai ruɓe.
    .text = Dole yashi ya kasance a bushe daga ranar farko har ta ƙarshe. Yashi mai danshi yana sa dankali ya yi tsiro da wuri ko ya ruɓe.
    .alt = Ruwa daga jarka yana zuba a kan bahon dankali, an soke hoton.
caution-forecast = Waɗannan ranaku matsakaici ne, ba hasashe ba
    .short = Damina tana iya zuwa da wuri ko ta makara. Kada ku shuka sai idan ƙasa tana da danshi.
    .text = An samo ranakun daga shekarun baya. Damina tana iya zuwa da wuri ko ta makara. Ku lura da sararin sama da ƙasa. Kada ku shuka sai idan ƙasa tana da danshi.
    .alt = Mace da guntun yaɗo a hannu tana kallon sama: rana, girgije da ruwa.
caution-try-first = Ku fara gwadawa da dankali kaɗan
    .short = Sabon abu ne? Ku fara da dankali kaɗan, ku adana wani yaɗo ta tsohuwar hanya.
    .text = Idan wannan sabon abu ne a gare ku, ku fara da dankali kaɗan, ku kuma adana wani ɓangare na yaɗonku ta tsohuwar hanya.
    .alt = Mace a tsakanin ƙaramar tukunya mai dankali kaɗan da shukar da take ci gaba da girma a ƙasa.

## Drawings and formats: titles, what drawings show in words, the names and sizes that stand in them

month-year = { month } { $year }
calendar-title = Aikin kowane wata
guide-title = Jagorar taro
# doubt: "layuka masu gutsure-gutsure" (lines in pieces) for broken (dashed) lines.
card-fold = Ku ninka a kan layuka masu gutsure-gutsure. Ku yanke ta kan layi mai kauri.
record-title = Dubawar dankalin da aka adana
record-how = A kowace dubawa ku fitar da dankali duka. Ku binne ruɓaɓɓe a rami mai zurfi ko ku ƙone shi. Ku rubuta abin da kuka gani, ku nuna wa malamin gona wannan katin.
record-planned = Ranar da aka tsara
record-done = Ranar da aka yi
record-healthy = Waɗanda aka sake jerawa
record-thrown-away = Waɗanda aka zubar
record-sprouted = Masu tsiro
record-remark = Bayani
record-stored = Dankalin da aka adana
booklet-index = Gonaki da sunayensu
span-brief = { BRIEF($from) } – { BRIEF($to) }
# In a drawing there is room for the sign only.
size-cm = cm { $cm }
size-m = m { $m }
drawing-season = Lokacin aiki
drawing-season-alt = Layi daga girbi zuwa girbi: dankali a yashi, sannan a gadon reno, sannan shuka a gona, tare da ranaku.
season-store = A cikin yashi
season-bed = A gadon reno
season-field = A gona
season-on-harvest = Girbi
season-on-sprout = Zuwa gadon reno
season-on-rains = Damina
season-on-food = Dankalin farko
drawing-store = Cikin mazubi
drawing-store-alt = Mazubi da aka yanka don a ga ciki: hawa-hawa na dankali, da yashi a ƙasansu, a tsakaninsu da a samansu.
drawing-layers = Kowane hawa daga sama
drawing-layers-alt = Hawa-hawa daga sama: wurin kowane dankali; ba sa gogar juna ko gefen mazubi.
drawing-bed = Gadon reno daga sama
drawing-bed-alt = Gadon reno daga sama: layukan dankali, tsawonsa da faɗinsa.
drawing-rows = Gona daga sama
drawing-rows-alt = Wani ɓangare na gona daga sama: tazarar layuka, da guntun yaɗon da aka shuka.
## Words of the recording script

# doubt: "ɗauka" for recording ("ɗaukar murya"); radio people also say "naɗa".
script-title = Abin da za a ɗauka
script-new-voice = sabuwar murya
script-lines = Layukan da za a karanta
script-time = Lokaci, bisa kimanta tsawon kalmomi
script-time-measured = Lokaci, bisa saurin wannan murya
script-minutes = kamar minti { $minutes }
script-ready = Saƙonnin da suka cika yanzu
script-how = Kafin ku fara
script-how-room = Ku nemi ɗaki mai shiru da ke da yadudduka: labule, gado, tufafi. Ku rufe tagogi, ku kashe fanka, firiji da wayar da za ta iya ƙara.
script-how-distance = Ku bar tsawon tafin hannu da yatsu tsakanin bakinku da makirufo ko waya, ku ɗan karkata gefe. Kada ku canja wannan nisa har ƙarshe.
script-how-tone = Ku fara ɗauka, sai ku yi shiru ƙwarai na daƙiƙa biyar: ana buƙatar sautin ɗakin ma.
script-how-pause = Ku yi shiru na daƙiƙa ɗaya kafin kowane layi, da daƙiƙa ɗaya bayansa.
script-how-order = Ku karanta layukan bisa jerinsu, ku sa alama a kan kowanne. Kada ku faɗi lambobinsu.
script-how-slip = Idan kun yi kuskure, ku ɗan yi shiru, sai ku sake faɗar layin gaba ɗaya. Kada ku tsai da ɗauka.
# doubt: "kalmomi masu kauri" for bold type, "karin jimla" for the melody of a sentence.
script-how-grey = Ku faɗi kalmomi masu kauri kaɗai da murya. Kalmomi masu launin toka da ke kewaye da su, ku karanta su a zuci: su ne suke ba muryarku karin jimlar.
script-how-brackets = Ku faɗi kalmomin da ke cikin [ ] kaɗai da murya. Sauran ku karanta su a zuci: su ne suke ba muryarku karin jimlar.
script-how-medial = Inda aka rubuta “{ script-medial }”, kada ku sauke murya: akwai sauran magana.
script-how-final = Inda aka rubuta “{ script-final }”, ku sauke murya kamar a ƙarshen jimla.
script-medial = tana ci gaba
script-final = ta ƙare
script-part = Kashi na { $part }
script-part-lines = layi na { $first_line } zuwa { $last_line }
script-rest = Don wasu gonaki da ranaku
script-opening = Farkon kowane saƙo
script-closing = Ƙarshen kowane saƙo
script-sentences = Cikakkun jimloli
script-parts = Sassan jimla
script-numbers = Lambobi, iri na { $form }
script-dates = Sassan kwanan wata
script-months = Watanni
script-units = Awo
script-unlocks = Saƙonnin da ke buƙatarsa
script-complete = Saƙonnin da suka cika da wannan layi
script-stale = Tsohon rikodi yana cewa
script-other-ending = An taɓa ɗauka, amma murya ta ƙare ta ɗayar hanya.
script-recorded = An riga an ɗauka.
script-unsaid = Babu jimlar da aka sani da ke faɗarsa haka: ana iya tsallake shi.
script-nothing = Babu abin da ya rage a ɗauka.
## The check of recordings

clips-title = Rikodin da aka duba
clips-intro = Abin da za a sake ɗauka yana farko. Kowane hoto yana nuna murya daga hagu zuwa dama: a sama, ƙarfinta; a ƙasa, sautunanta, baƙi inda suke da ƙarfi.
clips-again = A sake ɗauka
clips-usable = Za a iya amfani da shi
clips-good = Mai kyau
clips-unused = Ba a buƙatarsa kuma
clips-missing = Ba a ɗauka ba tukuna
clips-picture = Hoton rikodi “{ $words }”
clips-length = Tsawo
clips-level = Ƙarfin murya
clips-noise = Murya fiye da hayaniya
# doubt: "gurnani" for an electric hum.
clips-hum = Murya fiye da gurnani
clips-pace = Sauri, idan aka kwatanta da na kullum
# doubt: "tana fita da kaushi" (comes out rough) for the harsh sound of a voice too loud.
clip-clipped = Muryar ta fi ƙarfin makirufo, tana fita da kaushi. Ku nisantar da makirufo, ko ku rage ƙarfinsa.
clip-cut-start = An yanke farkon magana. Ku fara ɗauka, ku ja numfashi, sannan ku yi magana.
clip-cut-end = An yanke ƙarshen magana. Ku ja numfashi kafin ku tsai da ɗauka.
clip-noise = Akwai hayaniya a bayan murya. Ku nemi wuri mai shiru, ku kuma matso da makirufo kusa.
clip-hum = Ana jin gurnanin wutar lantarki. Ku cire caja, ku kuma nisanci wayoyin wuta da injina.
# doubt: "yana amsa kuwwa" for echoes.
clip-room = Ɗakin yana amsa kuwwa. Ku yi ɗauka a ƙaramin ɗaki mai yadudduka, tabarmi ko katifa, ku kuma matso da makirufo kusa.
clip-quiet = Muryar ta fi ta sauran rikodi rauni. Ku tsaya a nisa ɗaya da makirufo kullum.
clip-loud = Muryar ta fi ta sauran rikodi ƙarfi. Ku tsaya a nisa ɗaya da makirufo kullum.
clip-fast = An faɗe shi da sauri fiye da sauran. Ku yi magana da saurinku na kullum.
clip-slow = An faɗe shi a hankali fiye da sauran. Ku yi magana da saurinku na kullum.
clip-offset = Na'urar ta ɗan karkatar da sauti. Ba sai kun yi komai ba: zai gyaru da kansa.
clip-broken = Ba a iya buɗe rikodin ba. A sake ɗauka.
clip-stale = Kalmomin sun canja. Ku ɗauki yadda suke yanzu: “{ $words }”
clip-unused = Babu saƙon da yake amfani da waɗannan kalmomi kuma.
## Radio segments: script for the presenter, plan of the season

# doubt: "shiri" for a segment of a programme.
segment-title = Shirin rediyo
# doubt: "kakar noma" for the season of the whole plan; "kaka" alone is the time of harvest.
segment-season = Shirye-shiryen rediyo na kakar noma
segment-week = Mako
segment-topics = Abin da za a faɗa
segment-nothing = Babu abin faɗa a wannan mako
segment-due = Wannan mako
segment-past = A ci gaba da tunawa
segment-soon = Nan ba da daɗewa ba
segment-opening = Kiɗan buɗewa
segment-closing = Kiɗan rufewa
segment-bed = Kiɗa a ƙarƙashin murya
segment-bed-value = dB { $decibels } ƙasa da murya
segment-said = Abin da ake ji
segment-read-before = A karanta kai tsaye kafin shi
segment-read-after = A karanta kai tsaye bayan shi
segment-intro = Barkanku dukan masu noman dankalin Hausa a { $place }. Yanzu ku saurari aikin da za a yi daga { DAY($first) } zuwa { DAY($last) }.
segment-outro = Wannan shi ne aikin da za a yi daga { DAY($first) } zuwa { DAY($last) }. Idan akwai abin da ba ku gane ba, ku tambayi malamin gona.
segment-reading-time = Lokacin karantawa, a kimance
# doubt: "gaɓa" for a syllable.
segment-read-live = A karanta da murya. An kimanta lokaci da gaɓa { $rate } a kowace daƙiƙa.
segment-pauses = Layi ɗaya (/) ɗan tsayawa ne, layi biyu (//) tsayawa mai tsawo ne. Tsakanin sassa, a ƙara jira kaɗan.
segment-no-sound = Ba a yi sauti ba: ba a ɗauki wasu jimloli ba. An jera su a ƙasa.
segment-no-voice = Ba a yi sauti ba: har yanzu babu muryar da aka ɗauka a wannan harshe.
segment-left-out = Lokaci bai isa ba don
segment-missing = Jimlolin da ba a ɗauka ba
## Questions for a meeting, as they are spoken

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

## Channels: cue sheets for phones and meetings

# doubt: the term for active speech level, a figure for sound technicians.
cue-active-level = Ƙarfin sautin magana
cue-chapter = Babi
cue-talk = lokacin tattaunawa, daƙiƙa { $seconds }

## The guide for a meeting

# doubt: "Abin da za a nuna" as a heading, short as it is.
guide-show = Abin da za a nuna
guide-ask = Ku tambaya
