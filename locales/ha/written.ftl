### Hausa, daftari: kalmomin takarda. Babu ƙwararre a Hausa da ya karanta su tukuna.
### Draft, as printed on sheets. Standard (Kano) spelling with ɓ ɗ ƙ and ƴ written 'y; straight apostrophe.
### Register: "ku" with the subjunctive (ku tona, kada ku wanke): plural, polite, for a man or a woman, for one farmer or many.
### Labels and table heads are nouns or the impersonal "da za a …".
### The words of the trade stand in glossary.toml. Sweet potato is "dankalin Hausa" where it is named first, then "dankali".
### A counted noun stands in the singular, the number right behind it (dankali 40). So nothing depends on plural categories.

## Words of the sheet itself

# doubt: "dankali" alone is also the Irish potato (dankalin Turawa) in towns; "dankalin Hausa" says which. In Niger "kudaku" is said too.
sheet-title = Dankalin Hausa: daga wannan girbi zuwa damina mai zuwa
# doubt: "Domin" before the name of a farm or a group; "Na" or "Mai gona" may be better.
sheet-for = Domin
sheet-place = Wuri
sheet-rains = Ana sa ran damina
sheet-harvest = Girbin tsohuwar gona
sheet-amounts = Abin da kuke buƙata
sheet-steps = Abin da za ku yi, da lokacinsa
# "Ku yi hankali" (be careful) and not "ku kula", which with "da" is also "look after".
sheet-cautions = Ku yi hankali
sheet-when = Lokaci
# Between a label and its value; Hausa wants no space before it.
colon = :
semicolon = ;
sheet-page = Shafi
sheet-group = Ƙungiya
sheet-together = Tare
sheet-consequences = Game da tsarinku
sheet-tip = Yana da kyau ku sani
sheet-made = An yi wannan takarda a ranar { DAY($today) }. Ta maye gurbin duk tsofaffin takardun wannan kakar noma.
step-done = An gama
step-now = Yanzu
step-next = Na gaba
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
# doubt: "jeri" (things laid in order) for a layer; some may say "hawa" or "shimfiɗa". A row of the bed is "layi".
amount-layers = Jerin dankali a kowane mazubi
amount-roots-per-layer = { $layer_widths ->
    [uneven] Dankali a jeri na ƙasa, kada ya wuce
   *[even] Dankali a kowane jeri, kada ya wuce
 }
amount-roots-top-layer = Dankali a jeri na sama, kada ya wuce
amount-bundles = Damin guntu
amount-lining = Takardar da za a sa a mazubai
amount-water-total = Ruwan gadon reno duka
amount-sand = Busasshen yashi
amount-loads = Sau nawa za a ɗauki yashi
# doubt: "gadon reno" (nursery bed) for the bed; spelt "raino" too; "fangalin raino" may be better known to those who irrigate.
amount-bed = Gadon reno
amount-strips = Sassan gadon reno, da hanyar { MEASURE($path_m, unit: "metre") } tsakaninsu
amount-water = Ruwan gadon reno idan ganye ya rufe shi, a rana
amount-jerrycans = Jarkar ruwa idan ganye ya rufe gadon, a rana

first-cuttings-value = { $first_cuttings_low } zuwa { $first_cuttings_high }{ $plan_by ->
    [practice] , bisa ga yadda aka saba
   *[print] , bisa ga kwanakin girma
 }
sand-value = { MEASURE($sand_l, unit: "litre") }, kamar { MEASURE($sand_kg, unit: "kilogram") }
bed-value = { MEASURE($bed_length_m, unit: "metre") } × { MEASURE($bed_width_m, unit: "metre") }
strips-value = { $strips }, kowanne { MEASURE($strip_length_m, unit: "metre") } × { MEASURE($strip_width_m, unit: "metre") }
water-value = { MEASURE($water_l, unit: "litre") }
water-total-value = { MEASURE($water_total_l, unit: "litre") }
bundles-value = { MEASURE($bundles, unit: "bundle") }, kowanne { $bundle_size }
lining-value = { $lining_m2 } m²
roots-for-zone = { $roots } (adadin misali ne; ku lissafa na kowace gona gwargwadon girmanta)

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
span-two-days = { DAY($from) } – { DAY($to) }
span-day = { WEEKDAY($from) }, { DAY($from) }
# The singular "kilo, lita, mita" before any number, as in speech; CLDR has plurals (litoci 3). "cm" as on rulers and in the
# drawings, because columns are narrow; it is said "santimita".
unit-kilogram = kilo { $n }
unit-litre = lita { $n }
unit-metre = mita { $n }
unit-centimetre = cm { $n }
# doubt: "tafin hannu da yatsu" (palm and fingers) for a hand's length, because "hannu" alone is also the arm and "taƙi" is the wider span of spread fingers.
unit-hand = { $n ->
    [one] tsawon tafin hannu da yatsu
   *[other] tsawon tafin hannu da yatsu sau { $n }
 }
unit-thumb-joint = gaɓar babban yatsa { $n }
unit-bucket = bokiti { $n }
unit-jerrycan = jarka { $n }
unit-bundle = dami { $n }
event-before = kwana { $days } kafin { $event }
event-on = a ranar { $event }
event-after = kwana { $days } bayan { $event }

## What must never be lost. The messages below refer to these sentences, each length to one of them.

# doubt: "funfuna" for mould; some say "hunhuna" or "fumfuna".
# doubt: "kar a taɓa" (the short, impersonal "never") where there is little room; in full it is "kada ku taɓa".
# "ramukan ƙwari" (insects' holes) is said everywhere; what the hoe cuts is "wanda fartanya ta yanka": the two never sound alike.
# doubt: "ko sashensa mai kyau" (nor its good part) in text messages, short as it is.
-bad-roots = Idan dankali ya ruɓe, ko ya yi funfuna, ko yana da ramukan ƙwari, kada ku taɓa cin sa. Kada ku taɓa bai wa dabbobi shi, kada ku taɓa shuka shi. Ku binne shi a rami mai zurfi, ko ku ƙone shi.
-bad-roots-short = Ruɓaɓɓe, mai funfuna ko ramukan ƙwari: kar a taɓa ci, kar a taɓa ba dabbobi, kar a taɓa shukawa. A binne da zurfi ko a ƙone.
-bad-roots-sms = Kar a taɓa cin dankalin Hausa ruɓaɓɓe, mai funfuna ko ramukan ƙwari, ko sashensa mai kyau. Kar a taɓa ba dabbobi ko shukawa. A binne da zurfi ko a ƙone.
-take-nothing = Kada ku ɗauki dankali ko yaɗo daga irin wannan shuka.
-take-nothing-short = Kar a ɗauki komai daga irin wannan shuka.
# doubt: "gaɓar kogi wadda take tsaye kamar bango" (upright as a wall) for a steep bank.
-dry-riverbed = Sai a inda dokokin wuri suka yarda za ku ɗebi yashi, a kogi kuma sai idan kogin ya ƙafe. Kada ku taɓa tona kusa da gaɓar kogi wadda take tsaye kamar bango, domin tana iya rushewa ta binne ku.
-dry-riverbed-short = Kar a taɓa tona kogi mai ruwa ko kusa da gaɓar da take tsaye kamar bango.
-children-water = Ku rufe ruwan da kuka ajiye, ku hana yara zuwa kusa da shi.
-children-water-short = Ku rufe ruwa; ku hana yara zuwa kusa.
-keep-dry = Kada ku taɓa zuba ruwa a yashin, domin yashi mai danshi yana sa dankali ya ruɓe.
-keep-dry-short = Kada ku taɓa zuba ruwa a yashin.
-moist-soil = Sai a ƙasa mai danshi za ku shuka gona, domin busasshiyar ƙasa tana kashe guntun yaɗo.
-moist-soil-short = Sai a ƙasa mai danshi za ku shuka gona.

## Opening and closing

opening = { $kind ->
    [zone] Wannan tsari na kowane manomi a yankin ne. An lissafa adadinsa don dankali { $roots }. Idan gonarku ta fi girma, ku ƙara; idan ta fi ƙanƙanta, ku rage. Ranakun aikin da ake yi kafin tono na gonakin da ake fara tonowa ne. Idan za ku yi tono bayansu, ku ƙirga kwanakin tsakani, ku jinkirta wannan aiki da yawansu.
   *[other] { $season ->
        [after] Damina ta sauka a ranar { DAY($rains) }. Daga wannan rana aka lissafa ranakun tsarin nan.
       *[before] An lissafa wannan tsari daga saukar damina, ana komawa baya. Yawanci damina tana sauka wajen { DAY($rains) }.
     }
 }
closing = Idan malamin gonarku ya faɗi abin da ya saɓa wa takardar nan, ku bi malamin gonar.
    .sms = Idan malamin gonarku ya faɗi wani abu dabam, ku bi abin da ya faɗa.

## Steps: title, text (.text), the same in a few words (.short), picture in words (.alt), meeting (.show, .ask), text message (.sms)
## Text messages go out with b d k for ɓ ɗ ƙ (pack.toml), so each letter costs seven bits.
## "gaɓa" (leaf joint, river bank) then reads "gaba" (front): its number or "tona" beside it must tell which.

# doubt: "dankalin iri" (seed potato) for seed roots; "sanda" for the marking stick may sound like a staff; "tsinke" is smaller.
mark-plants = Ku zaɓi lafiyayyar shuka { $plants }
    .short = Mai ƙarfi, manyan ganyaye masu tsabta. Alama: ku kafa sanda a gefen kowace.
    .text = Ku zaɓi lafiyayyar shukar dankalin Hausa don samun dankalin iri. { $kind ->
        [group] Ku duka tare, ku sa wa shuka { $plants } alama. Kowa a cikinku ya sa wa shuka { $plants_each } alama.
       *[other] Ku sa wa shuka { $plants } alama.
     } Ku zaɓi masu ƙarfi kaɗai, masu manyan ganyaye masu tsabta, marasa wata alamar ciwo. Ku kafa sanda a ƙasa a gefen kowace. Za su ba da dankalin ajiya kamar { $roots }.
    .alt = Hannu yana kafa sanda a ƙasa a gefen shuka mai ƙarfi.
    .show = Lafiyayyen yaɗo da mai ciwo, da sanda.
    .ask = Yaya kuke bambanta lafiyayyar shuka da mai ciwo?
    .sms = { BRIEF($first) }: ku sa alama a lafiyayyar shukar dankalin Hausa { $plants } don dankalin iri. Masu ƙarfi, manyan ganyaye masu tsabta, babu ciwo. Ku kafa sanda a gefen kowace.
# doubt: "yashi mai kaushi" (rough) for coarse sand, "mai laushi" (soft) for fine sand.
# doubt: "mai cin lita 10" (that eats ten litres) for what a bucket holds.
gather-sand = Ku kawo yashi, ku shanya
    .short = { MEASURE($buckets, unit: "bucket") } na { MEASURE($bucket_l, unit: "litre") }, mai kaushi, mai tsabta. A shanya a ƙarƙashin rufi, ya huce. { -dry-riverbed-short }
    .text = Ku kawo yashin adana dankalin Hausa. Kuna buƙatar kamar { MEASURE($buckets, unit: "bucket") }{ $buckets ->
        [1] , mai cin
       *[other] , kowanne mai cin
     } { MEASURE($bucket_l, unit: "litre") }, wato { MEASURE($sand_kg, unit: "kilogram") }. Ku ɗebi yashi mai tsabta, mai kaushi, wanda kuke jin ƙwayoyinsa da hannu. Ku shanya shi a ƙarƙashin rufi har ya bushe. Kada ku yi amfani da shi sai ya huce. Yashi mai laushi, ko mai danshi, ko mai ɗumi, yana ruɓar da dankali. Kada ku ɗauki fiye da { MEASURE($load_kg, unit: "kilogram") } a lokaci ɗaya, domin yashi yana da nauyi. { -dry-riverbed }
    .alt = A ƙarƙashin rufi, hannu mai kwano yana zuba busasshen yashi daga tari zuwa ƙaramin bokiti.
    .show = Busasshen yashi mai kaushi cike da hannu, da yashi mai laushi da danshi.
    .ask = A ina ake samun yashi mai kaushi a nan kusa, kuma babu hatsari a tona wurin?
    .sms = Kafin { BRIEF($last) }: ku kawo yashin adana dankalin Hausa, { MEASURE($buckets, unit: "bucket") } (mai cin { MEASURE($bucket_l, unit: "litre") }), mai kaushi, mai tsabta. Kada ku ɗauki fiye da { MEASURE($load_kg, unit: "kilogram") } a lokaci ɗaya. Ku shanya shi a ƙarƙashin rufi, ya huce. { -dry-riverbed-short }
# doubt: "yaɗo" for the vine; other areas may say "igiya" or "harawa". "tushe" for the foot of the stem and for the stem left standing.
# doubt: "alamar daidai" for a tick, "hoton wata sau uku" for three moons, in the words for pictures.
check-plants = Ku sake duba masu alama
    .short = Ganyaye ƙanana, murɗaɗɗu ko masu tabo, yaɗo marar ƙarfi, ko ramuka a tushe? Ku cire sandar. { -take-nothing-short }
    .text = Ku sake duba shukar dankalin Hausa da kuka sa wa alama. Ku duba ko ganyayenta ƙanana ne, ko sun murɗe, ko sun yi tabo. Ku duba ko yaɗo marar ƙarfi ne, ko akwai ramuka a tushen shuka. Idan kuka ga ɗaya daga cikin waɗannan, ko kuna shakka, ku cire sandar shukar. { -take-nothing }
    .alt = Lafiyayyar shuka mai alamar daidai tana da sandarta; hannu yana cire sandar shuka mai ciwo, mai ganyaye masu tabo, yamutsattsu.
    .show = Ganyaye ƙanana, murɗaɗɗu da masu tabo.
    .ask = Me za ku yi da shukar da aka sa wa alama idan ta yi ciwo?
    .sms = { BRIEF($first) }: ku sake duba shukar dankalin Hausa mai sanda. Idan ganyaye ƙanana ne, murɗaɗɗu ko masu tabo, ko yaɗo marar ƙarfi ne, ko akwai ramuka a tushe, ko kuna shakka, ku cire sandar. { -take-nothing-short }
cut-vines = Ku yanke yaɗon masu alama
    .short = Ku bar tushe { MEASURE($stem_cm, unit: "centimetre") } a tsaye: { MEASURE($stem_hands, unit: "hand") }.
    .text = Ku yanke yaɗon shukar dankalin Hausa da kuka sa wa alama. Ku bar tushe mai tsawon { MEASURE($stem_cm, unit: "centimetre") } a tsaye, kamar { MEASURE($stem_hands, unit: "hand") }. Bayan haka ɓawon dankali zai yi tauri, dankalin kuma zai daɗe bai lalace ba.
    .alt = Wuƙa tana yanke yaɗo; tushen da ya rage ya kai tsawon hannun da yake tsaye a gefensa.
    .show = Tafin hannu a buɗe a gefen tushe.
    .ask = Me ya sa ɓawon dankali yake buƙatar lokaci kafin ya yi tauri?
    .sms = { BRIEF($first) }: ku yanke yaɗon shukar dankalin Hausa mai sanda. Ku bar tushe mai tsawon { MEASURE($stem_cm, unit: "centimetre") } a tsaye. Sai ɓawon dankali ya yi tauri.
harvest = Ku tona, ku zaɓi dankali { $roots }
    .short = Sai ƙasa ta bushe. Tsawon tafin hannu da yatsu, babu rauni, ba wanki. Wanda fartanya ta yanka, a dafa da wuri. { -bad-roots-short }
    .text = Ku tona shukar dankalin Hausa da kuka sa wa alama. Idan ƙasa ta jiƙe, ku jira sai ta bushe. Ku ɗaga a hankali, don kada fartanya ta yanka dankali. Ku zaɓi dankali { $roots }, tsawonsa kamar tafin hannu da yatsu, ɓawonsa babu rauni. Ku kakkaɓe ƙasar jikinsa da hannu, kada ku taɓa wanke shi. Ku bar shi a inuwa na 'yan awoyi. Dankalin da fartanya ta yanka, kada ku adana shi. Ku dafa shi da wuri. { -bad-roots }
    .alt = Hannu yana ɗaga shuka da dankalinta lafiyayye daga ƙasar da aka sassauta, ga fartanya a gefe.
    .show = Dankali tsaka-tsaki wanda ɓawonsa babu rauni, da wanda fartanya ta yanka.
    .ask = Cikin dankalin nan, wanne za mu adana, wanne za mu dafa da wuri?
    .sms = { BRIEF($first) }: in ƙasa ta bushe, a tona dankalin Hausa mai sanda. Bayan awoyi a inuwa a adana { $roots } lafiyayyu, ba wanki. Wanda fartanya ta yanka, a dafa da wuri. { -bad-roots-sms }
# doubt: "baho" for a basin; "daro" is the old word. "kwando mai matsattsiyar saƙa" for a tight basket.
fill-container = Ku jera dankali a busasshen yashi
    .short = Yashi: a ƙasa { MEASURE($base_cm, unit: "centimetre") }, { $layers ->
        [1] {""}
       *[other] a tsakani { MEASURE($layer_cm, unit: "centimetre") },{" "}
     }a sama { MEASURE($top_cm, unit: "centimetre") }. Kada su taɓa juna. Babu murfi. { -keep-dry-short }
    .text = Ku jera dankalin Hausa a cikin busasshen yashi. Kuna buƙatar mazubi { $containers }{ $container_kinds ->
        [one] { $containers ->
            [1] , mai cin kamar
           *[other] , kowanne mai cin kamar
         } { MEASURE($container_l, unit: "litre") }.
       *[several] .
     } Ku yi amfani da baho, tukunya, bokiti ko kwando mai matsattsiyar saƙa, amma kada ku taɓa amfani da buhu. Ku cika mazubin a inda zai zauna: wuri mai sanyi, busasshe, mai inuwa, nesa da yara, dabbobi da ruwan sama. Ku shimfiɗa takarda a ƙasansa da gefensa na ciki. Ku zuba yashi mai kaurin { MEASURE($base_cm, unit: "centimetre") }, kamar { MEASURE($base_joints, unit: "thumb-joint") }. { $layer_widths ->
        [uneven] Dankalin jeri na ƙasa kada ya wuce { $roots_per_layer }, na jeri na sama kuma kada ya wuce { $roots_top }.{ $layers ->
            [2] {""}
           *[other] {" "}A jerin tsakani kuma, ku sa dankali gwargwadon faɗin mazubi.
         }
       *[even] Dankalin kowane jeri kada ya wuce { $roots_per_layer }.
     } Kada dankali su taɓa juna, kada su taɓa gefen mazubi. { $layers ->
        [1] Ku rufe su da yashi mai kaurin { MEASURE($top_cm, unit: "centimetre") }.
       *[other] Ku rufe su da yashi mai kaurin { MEASURE($layer_cm, unit: "centimetre") }, sannan ku jera na gaba. Haka za ku jera dankali har jeri { $layers }, amma jeri na ƙarshe ku rufe shi da yashi mai kaurin { MEASURE($top_cm, unit: "centimetre") }.
     } Yashi mai kauri yana hana ɓeraye, ƙwari da kaji shiga. Kada ku sa murfi. { -keep-dry }
    .alt = An yanka baho, an nuna cikinsa: yashi, dankali a rarrabe, yashi, dankali, sai yashi mai kauri a sama; hannu yana barbaɗa yashi.
    .show = Baho, busasshen yashi da dankali kaɗan: wani ya jera na farko.
    .ask = Me ya sa ba a barin dankali su taɓa juna?
    .sms = { BRIEF($first) }: ku jera dankalin Hausa a busasshen yashi, kada su taɓa juna. Yashi: a ƙasa { MEASURE($base_cm, unit: "centimetre") }, { $layers ->
        [1] {""}
       *[other] tsakanin jeri da jeri { MEASURE($layer_cm, unit: "centimetre") },{" "}
     }a sama { MEASURE($top_cm, unit: "centimetre") }. Babu murfi. Nesa da ruwan sama, yara da dabbobi. Kar a taɓa ɗaga cikakken mazubi. { -keep-dry-short }
# doubt: "tsiro" for a sprout on the stored root, "toho" for a shoot that comes out of the bed; some say them the other way round.
# doubt: "an soke shi" for crossed out in a picture.
monthly-check = Ku duba kowane dankali
    .short = Ku murje tsiro, ku sake jerawa a busasshen yashi. { -bad-roots-short }
    .text = Ku fitar da kowane dankali, ku duba shi. { -bad-roots } Masu kyau kuma, ku murje tsironsu har ya fita. Ku sake jera su a busasshen yashi kamar da. Ku rubuta nawa suka rage. Sannan ku ƙyale su har zuwa dubawa ta gaba.
    .alt = Hoton wata sau uku, alamar cewa wata guda ya wuce; hannu yana ciro dankali daga baho; ruɓaɓɓen dankali yana gefe, an soke shi.
    .show = Ruɓaɓɓen dankali idan akwai, da yadda ake sake jerawa.
    .ask = Me za ku yi da ruɓaɓɓen dankali, kuma me ya sa ba a bai wa dabbobi shi?
    .sms = { BRIEF($first) }: a fitar da duk dankalin Hausa na ajiya, a duba kowanne. A murje tsiron masu kyau, a sake jerawa a busasshen yashi. A rubuta nawa suka rage. { -bad-roots-sms }
# doubt: "taku" for paces, with which the bed is measured at a meeting.
prepare-bed = Ku yi gadon reno
    .short = Tsawo { MEASURE($bed_length_m, unit: "metre") }, faɗi { MEASURE($bed_width_m, unit: "metre") }, kusa da ruwa. Ku noma ƙasar, ku yi shinge. { -children-water-short }
    .text = Ku yi gadon renon dankalin Hausa. Ku zaɓi wuri kusa da ruwa. Tsawon gadon ya zama { MEASURE($bed_length_m, unit: "metre") }, faɗinsa { MEASURE($bed_width_m, unit: "metre") }. { $bed_parts ->
        [strips] Ku raba gadon zuwa sassa { $strips }, faɗin kowane sashe { MEASURE($strip_width_m, unit: "metre") }. Ku bar hanya tsakanin sashe da sashe.{" "}
       *[one] {""}
     }Ku noma ƙasarsa sosai har ta yi laushi. Ku kewaye gadon da shinge don hana awaki da kaji shiga. { -children-water }
    .alt = Wani mutum yana sassauta ƙasar gadon reno da fartanya; a bayansa akwai shinge.
    .show = Wurin da yake kusa da ruwa, da girman gadon reno, an auna da taku.
    .ask = Me zai hana awaki da kaji shiga?
    .sms = Kafin { BRIEF($last) }: ku yi gadon renon dankalin Hausa kusa da ruwa, tsawo { MEASURE($bed_length_m, unit: "metre") }, faɗi { MEASURE($bed_width_m, unit: "metre") }. Ku yi masa shinge. { -children-water-short }
last-check = Dubawar ƙarshe: a bar tsiro
    .short = Masu kyau su shiga gado da tsironsu. { -bad-roots-short }
    .text = Ku fitar da kowane dankali, ku duba shi. { -bad-roots } A wannan karon, ku bar tsiron. Yanzu masu kyau za su shiga gadon reno.
    .alt = Hannu yana ciro dankali mai tsiro daga baho; kibiya tana nuna gadon reno.
    .show = Dankali mai tsiro.
    .ask = Me ya sa a wannan karon ake barin tsiron?
    .sms = { BRIEF($first) }: dubawar ƙarshe ta dankalin Hausa na ajiya. Ku bar tsiron: yanzu masu kyau za su shiga gadon reno. { -bad-roots-sms }
plant-bed = Ku sa dankali a gadon reno
    .short = Ku ba gadon ruwa. Layi { $bed_rows }{ $bed_rows ->
        [one] {""}
       *[other] , tazarar layi da layi { MEASURE($spacing_cm, unit: "centimetre") }
     }, dankali { $row_roots } a kowanne, zurfi { MEASURE($soil_cm, unit: "centimetre") }. Ƙasa da danshi kullum, kada ta jiƙe.
    .text = Kada ku jira ruwan sama. Ku ba gadon ruwa har ƙasarsa ta yi danshi. Ku bi tsawon gadon, ku yi layi { $bed_rows }{ $bed_rows ->
        [one] .
       *[other] , tazarar layi da layi { MEASURE($spacing_cm, unit: "centimetre") }.
     } A kowane layi ku jera dankali kamar { $row_roots }, tazarar dankali da dankali { MEASURE($along_row_cm, unit: "centimetre") }. Ku bar su da tsironsu. Ku rufe dankalin da ƙasa mai kaurin { MEASURE($soil_cm, unit: "centimetre") }. Ku sake ba da ruwa a hankali. Kullum ƙasar ta kasance da danshi, amma kada ta jiƙe, domin jiƙaƙƙiyar ƙasa tana ruɓar da dankali.
    .alt = Dankali a kwance a layi; hannu yana rufe su da ƙasa.
    .show = Tazarar layuka da sandar da tsawonta ya dace.
    .ask = Shin muna jiran ruwan sama kafin mu shuka gadon reno?
    .sms = Daga { BRIEF($first) }: ku ba gadon reno ruwa, kada ku jira ruwan sama. Ku kwantar da dankalin Hausa a layi { $bed_rows }{ $bed_rows ->
        [one] {""}
       *[other] , tazarar layuka { MEASURE($spacing_cm, unit: "centimetre") }
     }, zurfi { MEASURE($soil_cm, unit: "centimetre") }. Ƙasa ta yi danshi, kada ta jiƙe.
water-bed = Ku ba gadon reno ruwa
    .short = { $shoots ->
        [before] Kafin toho ya fito: { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
            [1] a rana
           *[other] duk kwana { $water_every_days }
         }.{" "}
       *[after] {""}
     }Idan ganye ya rufe gado: kamar { MEASURE($water_l, unit: "litre") } a rana, { MEASURE($jerrycans, unit: "jerrycan") }. Ƙasa da danshi, kada ta jiƙe. { -children-water-short }
    .text = Ku riƙa ba gadon renon dankalin Hausa ruwa daga { DAY($first) }. { $shoots ->
        [before] Kafin toho ya fito, ku ba gadon ruwa kamar { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
            [1] kowace rana
           *[other] sau ɗaya cikin kwana { $water_every_days }
         }, wato kamar { MEASURE($jerrycans_young, unit: "jerrycan") }{ $jerrycans_young ->
            [1] , mai cin
           *[other] , kowacce mai cin
         } { MEASURE($jerrycan_l, unit: "litre") }. Kullum ƙasar ta kasance da danshi, amma kada ta jiƙe, domin jiƙaƙƙiyar ƙasa tana ruɓar da dankali. Yayin da ganye yake girma, ku ba gadon ruwa kowace rana, ku riƙa ɗan ƙarawa kowane mako.{" "}
       *[after] {""}
     }Idan ganye ya rufe gadon, ku ba shi ruwa kamar { MEASURE($water_l, unit: "litre") } kowace rana, wato kamar { MEASURE($jerrycans, unit: "jerrycan") }{ $jerrycans ->
        [1] , mai cin
       *[other] , kowacce mai cin
     } { MEASURE($jerrycan_l, unit: "litre") }. A ranakun zafi da iska, ku ba shi ruwa fiye da haka. Idan ruwan sama ya ishi ƙasa har tana da danshi kullum, ku daina ba da ruwa. { -children-water }
    .alt = Hannu yana zuba ruwa daga jarka a gadon reno mai toho.
    .show = Jarka, da ɗan ruwan da ƙananan shuke-shuke suke buƙata.
    .ask = Wa zai kawo ruwa, wa kuma zai kula da yara a wurin?
    .sms = Daga { BRIEF($first) }: ku ba gadon renon dankalin Hausa ruwa. { $shoots ->
        [before] Kafin toho ya fito { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
            [1] a rana
           *[other] sau ɗaya cikin kwana { $water_every_days }
         }, idan ganye ya rufe gadon { MEASURE($water_l, unit: "litre") } a rana.
       *[after] Idan ganye ya rufe gadon, { MEASURE($water_l, unit: "litre") } a rana.
     } A ranakun zafi ku ƙara. Ku daina idan ruwan sama ya ishi ƙasa har tana da danshi kullum. { -children-water-short }
# doubt: "gaɓa" (joint) for a leaf joint of the vine; some may say "ido" or "ƙulli".
# doubt: "danshi, zurfinsa kamar tsawon yatsa" (as deep as a finger is long) for moist a finger deep.
cut-for-planting = Idan ƙasa ta sha ruwa, ku yanki yaɗo
    .short = Gona ta yi danshi har zurfin tsawon yatsa: lafiyayyen yaɗo, { MEASURE($cutting_cm, unit: "centimetre") }, gaɓa { $nodes }. Ku bar tushe { MEASURE($stub_cm, unit: "centimetre") }. A shuka a ranar yankan ko washegari.
    .text = Kafin ku yanki yaɗon dankalin Hausa, ku jira sai ruwan sama ya ba ƙasar gona danshi, zurfinsa kamar tsawon yatsa. Sannan ku yanki yaɗon daga gadon reno. Ku ɗauki lafiyayyen yaɗo kaɗai, wanda ba shi da ganyaye masu tabo, ko murɗaɗɗu, ko ƙanana ƙwarai. Ku yi kowane guntu mai tsawon { MEASURE($cutting_cm, unit: "centimetre") }, kamar { MEASURE($cutting_hands, unit: "hand") }, gaɓoɓinsa kada su gaza { $nodes }. Ku bar tushe mai tsawon { MEASURE($stub_cm, unit: "centimetre") } a tsaye, don ya sake girma. { $plan_by ->
        [practice] Bisa ga yadda aka saba, ku sa rai da guntu kamar
       *[print] Ku sa rai da guntu kamar
     } { $first_cuttings_low } zuwa { $first_cuttings_high } daga yankan farko. Ku ajiye guntun a inuwa, ku shuka su a ranar da kuka yanke su ko washegari.
    .alt = Hannu ɗaya yana riƙe da yaɗo a gadon reno, ɗayan yana yanke shi da wuƙa; tushen yana nan.
    .show = Guntun yaɗo mai tsawon da ya dace a gefen hannu: ku ƙirga gaɓoɓi.
    .ask = Daga wace shuka ba za mu yanki yaɗo ba?
    .sms = Idan ruwan sama ya ba gona danshi har zurfin tsawon yatsa: ku yanki lafiyayyen yaɗon dankalin Hausa, { MEASURE($cutting_cm, unit: "centimetre") }, gaɓa { $nodes }. Ku bar tushe { MEASURE($stub_cm, unit: "centimetre") }. Ku ajiye a inuwa, ku shuka a ranar yankan ko washegari.
# doubt: "tudu" for a mound; a local word may be better. "kai" (head) for the tip of a cutting.
plant-field = Ku shuka gona
    .short = { -moist-soil-short } Ku binne gaɓa biyu ko uku. Bayan mako biyu, ku sake shuka inda guntu ya mutu.
    .text = Ku shuka gonar dankalin Hausa idan ruwan sama ya ba ƙasa danshi, zurfinsa kamar tsawon yatsa. { $layout ->
        [own] Kowace gona za a shuka ta a kan kunyoyinta ko tuddanta.
        [mounds] A kowane tudu ku sa guntu { $on_mound }, tazarar tudu da tudu { MEASURE($between_cm, unit: "centimetre") }.
       *[ridges] Ku sa guntu ɗaya-ɗaya a kan kunya, tazarar guntu da guntu { MEASURE($along_cm, unit: "centimetre") }, tazarar kunya da kunya { MEASURE($between_cm, unit: "centimetre") }.
     } Ku binne gaɓa biyu ko uku na kowane guntu, ku bar kan guntun ya fito a saman ƙasa. { $kind ->
        [zone] A duk tsawon lokacin gadon reno, dankali { $roots } yana ba da guntu kamar { $cuttings }.
       *[other] Gonar duka tana buƙatar guntu { $cuttings }.
     } Bayan mako biyu, ku sake shuka inda guntu ya mutu. { -moist-soil }
    .alt = A ƙarƙashin girgijen ruwa, hannu yana dasa guntun yaɗo a layi; an binne gaɓoɓinsa na ƙasa.
    .show = Ƙasa mai danshi har zurfin tsawon yatsa, da guntun yaɗo da aka binne gaɓoɓinsa na ƙasa.
    .ask = An yi ruwa sau ɗaya. Mu shuka yanzu? Wace matsala za ta iya faruwa?
    .sms = Daga { BRIEF($first) }, idan ƙasa ta sha ruwa: ku shuka guntun yaɗon dankalin Hausa kamar { $cuttings_to_plant }. Ku binne gaɓa biyu ko uku na kowane guntu. { -moist-soil-short }
# doubt: "ƙwarin dankali" (insects of the potato) for weevils.
first-harvest = Ku gwada dankalin farko
    .short = Ku lalubi dankalin da ya isa ci. Kada tonon ƙarshe ya wuce { DAY($last_harvest) }, domin ƙwari suna samun wanda ya ƙosa.
    .text = Ku lalubi ƙarƙashin wasu daga cikin shukar, ku ji ko akwai dankalin da ya isa ci. Kada ku bar dankalin da ya ƙosa ya daɗe a busasshiyar ƙasa, domin ƙwarin dankali sukan same shi. Kada tonon ƙarshe ya wuce { DAY($last_harvest) }.
    .alt = Hannu yana laluben dankali a ƙarƙashin shuka; a gefe ga tukunya a kan wuta.
    .show = Yadda ake laluben dankali ba tare da tumɓuke shukar ba.
    .ask = Me yake faruwa da dankalin da ya ƙosa ya zauna a busasshiyar ƙasa?
    .sms = Daga { BRIEF($first) }: ku lalubi dankalin Hausa da ya ƙosa. Kada tonon ƙarshe ya wuce { BRIEF($last_harvest) }, domin ƙwarin dankali suna zuwa ga wanda ya ƙosa a busasshiyar ƙasa.

## Tables: title, what it tells (.text), its picture in words (.alt)

# doubt: "bisa ga kwanakin girma" where cuttings are counted by the days that the bed has grown.
table-cuts = Yankan yaɗo daga gadon reno{ $plan_by ->
    [practice] , bisa ga yadda aka saba
   *[print] , bisa ga kwanakin girma
 }
    .text = { $cuts ->
        [1] Kowace kakar noma da yadda take, don haka ku sa rai da guntu tsakanin ƙaramin adadi da babban adadi.
       *[other] Kowace kakar noma da yadda take, don haka ku sa rai da guntu tsakanin ƙaramin adadi da babban adadi. Yankan da za a yi daga baya na shuka sauran gonar ne, da cike gibi.
     }
# doubt: "shekara matsakaiciya" for a middling season, "lambu" for a small watered plot.
table-ways = Hanyoyin da za ku iya bi, a jere
    .text = An lissafa abin da kowace hanya take bayarwa idan damina ta sauka, a shekara matsakaiciya. Babu wadda take tabbas. An faɗi abin da kowace take buƙata, ko kuna da shi ko ba ku da shi.
way-value = { $way ->
    [one-bed] Gadon reno ɗaya, a yanke shi idan damina ta sauka
    [second-bed] Ƙaramin gadon reno da wuri; guntunsa su yi ta girma a lambun da ake ba ruwa
    [vine-plot] Yaɗon tsohuwar gona a lambun da ake ba ruwa; ba a adana dankali
    [as-planned] Ku bar dankali a yashi, kamar yadda aka tsara
    [bed-now] Ku sa lafiyayyen dankali a gadon reno yanzu
    [bed-now-second-bed] A gadon reno yanzu; guntunsa su yi ta girma a lambun da ake ba ruwa
   *[buy] Ku samo cikon yaɗo daga wajen wasu
 }
table-shares = Abin da kowace gona za ta kawo
    .text = Kowace gona tana sa wa shukarta alama, ta kuma kawo dankalinta wurin ajiyar kowa da kowa.
table-fields = Adadi gwargwadon girman gona
    .text = Ku nemi gonarku a ginshiƙi na farko. Idan girmanta yana tsakanin layi biyu, adadinta ma yana tsakanin nasu.
# doubt: "saukar ƙarya" (false coming-down) for a false start of the rains; a local word for rain that deceives may be better.
table-planting-later = Idan kuka jinkirta shuka
    .text = Idan kuka shuka a babban ruwan farko, sai dogon fari ya biyo baya, ƙananan shuke-shuke suna iya mutuwa. Wannan ita ce saukar ƙarya. Idan kuka jinkirta, kwanakin da suka rage kafin damina ta ƙare suna raguwa. Jadawalin yana nuna yadda duka biyu suka kasance a shekarun baya. Ba hasashe ba ne. A hoton, sanduna masu ratsi shekarun saukar ƙarya ne, baƙaƙen sanduna kuma kwanakin da suka rage kafin damina ta ƙare.
    .alt = Ga kowace ranar fara shuka: sanda mai ratsi ta shekarun saukar ƙarya, da baƙar sanda ta kwanakin da suka rage kafin damina ta ƙare. Adadin yana cikin jadawalin da ke sama.
column-when = Lokaci
column-way = Abin da za ku yi
column-farm = Gona
column-area = Gona, m²
column-cuttings = Guntun yaɗo
column-cut = Guntun yaɗo
cut-value = { $low }–{ $high }
column-plants = Shukar da za a sa wa alama
column-roots = Dankalin da za a adana
column-bed = Gadon reno, m²
column-jerrycans = Jarkar ruwa a rana
column-water = Ruwa gaba ɗaya, lita
column-trips = Sau nawa za a je ɗebo ruwa
column-from = Ruwan farko daga
column-false-starts = Shekarun saukar ƙarya
column-days-left = Kwanakin da suka rage kafin damina ta ƙare, a rabin shekarun
false-starts-value = { $false_starts } cikin { $years }

## Cautions: title, text (.text), picture in words (.alt); text message (.sms) where there is one

# "lalatacce" (spoilt) stands for all three at once: rotten, mouldy, with insect holes.
caution-rot = Lalataccen dankali yana iya zama guba, ko da sashensa mai kyau
    .short = { -bad-roots-short }
    .text = { -bad-roots } Kada ku yanke shi, kada ku fere shi, kada ku dafa shi, don ku ci sauran. Ko da sashen da ake ganin mai kyau ne yana iya zama guba. Idan kuna shakkar wani dankali, ku ɗauka cewa ya lalace.
    .alt = Ruɓaɓɓen dankali; a ƙarƙashinsa akwai saniya da tukunyar girki, an soke su duka.
    .sms = { -bad-roots-sms }
caution-virus = Shuka mai ciwo
    .short = Ganyaye ƙanana, murɗaɗɗu ko masu tabo, yaɗo marar ƙarfi: { -take-nothing-short }
    .text = Ganyaye ƙanana, murɗaɗɗu ko masu tabo, da yaɗo marar ƙarfi, alamun ciwo ne. { -take-nothing }
    .alt = Hannu mai wuƙa a wajen shuka mai ganyaye masu tabo, yamutsattsu, an soke hoton.
caution-cracks = Tsagewar ƙasa
    .short = Ƙwarin dankali suna shiga ta tsaga. Ku tula ƙasa a kanta.
    .text = Ƙwarin dankali suna bi ta tsagar ƙasa su isa ga dankalin Hausa. Da zarar kun ga tsaga, ku tula ƙasa a kanta.
    .alt = Ƙwaron dankali yana shiga tsagar kunya; a ƙasanta akwai dankali mai ramuka da yawa.
caution-heavy-sand = Yashi yana da nauyi
    .short = Kada ku ɗauki fiye da { MEASURE($load_kg, unit: "kilogram") }. Kar a taɓa ɗaga cikakken mazubi.
    .text = Kada ku ɗauki fiye da { MEASURE($load_kg, unit: "kilogram") } a lokaci ɗaya. Ku cika mazubi a inda zai zauna. Kada ku taɓa ɗaga shi idan ya cika.
    .alt = Mutum ya sunkuya a ƙarƙashin babban buhu, an soke shi; mace tana tsaye a miƙe da ƙaramin bokiti, da alamar daidai.
caution-riverbed = Yashin kogi
    .short = Sai inda dokoki suka yarda. { -dry-riverbed-short }
    .text = { -dry-riverbed }
    .alt = Gaɓar kogi wadda take tsaye kamar bango tana rushewa a kan mutum mai tona, an soke hoton.
caution-water-children = Ruwa, yara da dabbobi
    .short = { -children-water-short } Shinge ga rijiya, rami da gado.
    .text = { -children-water } Ku yi wa rijiyoyi da ramuka shinge. Ku hana awaki da kaji shiga gadon reno.
    .alt = Gangar ruwa mai murfi a bayan shinge; mace tana riƙe da yaro a waje.
caution-store-dry = Kar a taɓa ba dankalin ajiya ruwa
    .short = { -keep-dry-short } Danshi yana sa ruɓewa.
    .text = Dole yashin da aka adana dankalin Hausa a ciki ya kasance busasshe, daga ranar farko har ta ƙarshe. { -keep-dry }
    .alt = Ruwa daga jarka yana zuba a kan bahon dankali, an soke hoton.
caution-forecast = Ranakun ba hasashe ba ne
    .short = Kiyasi ne: bana ruwa yana iya zuwa da wuri ko ya makara. { -moist-soil-short }
    .text = Daga shekarun baya aka samo ranakun nan, ba hasashen yanayi ba ne. A bana ruwan sama yana iya zuwa da wuri ko ya makara. Ku lura da sararin sama da ƙasa. { -moist-soil }
    .alt = Mace da guntun yaɗo a hannu tana kallon sama: rana, girgije da ruwa.
caution-try-first = Ku fara da dankali kaɗan
    .short = Sabon abu ne? Dankali kaɗan, da wani yaɗo ta tsohuwar hanya.
    .text = Idan wannan sabon abu ne a gare ku, ku fara da dankali kaɗan. Ku kuma ci gaba da kula da wani yaɗonku ta tsohuwar hanya.
    .alt = Mace a tsakanin ƙaramar tukunya mai dankali kaɗan da shukar da take ci gaba da girma a ƙasa.

## Drawings and formats: titles, what drawings show in words, the names and sizes that stand in them

month-year = { month } { $year }
calendar-title = Aikin kowane wata
guide-title = Jagorar taro
# doubt: "layuka masu gutsure-gutsure" (lines in pieces) for broken (dashed) lines.
card-fold = Ku ninka a kan layuka masu gutsure-gutsure. Ku yanke ta kan layi mai kauri.
record-title = Dubawar dankalin da aka adana
record-how = A kowace dubawa, ku fitar da kowane dankali. Duk wanda ya ruɓe, ko ya yi funfuna, ko yana da ramukan ƙwari, ku binne shi a rami mai zurfi ko ku ƙone shi. Ku rubuta abin da kuka gani, ku nuna wa malamin gona wannan katin.
record-planned = Ranar da aka tsara
record-done = Ranar da aka yi
record-healthy = An sake jerawa
record-thrown-away = An binne ko an ƙone
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
drawing-store-alt = Mazubi da aka yanka don a ga ciki: jeri-jeri na dankali, da yashi a ƙasansu, a tsakaninsu da a samansu.
drawing-layers = Kowane jeri daga sama
drawing-layers-alt = Jeri-jeri daga sama: wurin kowane dankali; ba sa taɓa juna ko gefen mazubi.
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
ask-gather-sand = A ina ake samun yashi mai kaushi a nan kusa, kuma ta yaya za mu tona shi lafiya?
ask-check-plants = A nan, yaya shukar dankalin Hausa mai ciwo take?
ask-cut-vines = Me ya sa ɓawon dankali yake buƙatar lokaci kafin ya yi tauri?
ask-harvest = Ta yaya za ku tona, don kada fartanya ta yanka dankali?
ask-fill-container = A gidanku, ina ne wuri mai sanyi, busasshe, nesa da yara da dabbobi?
ask-monthly-check = Yaya lalataccen dankali yake, kuma a ina za ku binne shi?
ask-prepare-bed = A ina ruwa yake a nan kusa, kuma wa zai kula da yara?
ask-last-check = Dankalinku nawa ne suke da tsiro?
ask-plant-bed = Me zai iya hana ku shuka gadon reno a kan lokaci?
ask-water-bed = Idan ba ku nan, wa zai ba gadon reno ruwa?
ask-cut-for-planting = Ta yaya kuke sanin ruwan sama ya isa?
ask-plant-field = Wane ɓangaren gona za ku fara shukawa?
ask-first-harvest = Wane yaɗo za ku ajiye don kakar noma mai zuwa?

## Channels: cue sheets for phones and meetings

# doubt: the term for active speech level, a figure for sound technicians.
cue-active-level = Ƙarfin sautin magana
cue-chapter = Babi
cue-talk = lokacin tattaunawa, daƙiƙa { $seconds }

## The guide for a meeting

# doubt: "Abin da za a nuna" as a heading, short as it is.
guide-show = Abin da za a nuna
guide-ask = Ku tambaya

## Good to know

advice-roots-not-chosen = Ƙananan dankalin Hausa, da karkatattu, da waɗanda fartanya ta yanka, abinci ne. Ku ci su ko ku sayar da wuri, ku fara da yankakkun, domin ba sa daɗewa. { -bad-roots }
advice-storage-place = Ku ajiye mazubai a ɗaki mai sanyi, busasshe, mai inuwa, inda iska take shiga, ruwan sama kuma ba ya shiga. Ku ajiye su inda yara, ɓeraye, kaji da awaki ba za su kai ba.
advice-clean-vines = Ku fara yanka daga kan yaɗo, domin ƙwarin dankali ba su da yawa a can. Kada ku ɗauki yaɗo daga shukar da take da ramuka a tushe ko alamun ciwo.
advice-clean-field = Ku shuka nesa da tsofaffin gonakin dankalin Hausa, aƙalla mita { $metres }, domin daga can ƙwarin dankali suke zuwa. Ku kwashe tsohon yaɗo da dankali. Mutane da yawa suna ba da shawarar a shuka wuri ɗaya sau ɗaya kawai cikin shekara { $years }.
advice-deep-planting = Ku dasa guntun yaɗo da zurfin kamar santimita { $deep_cm }. A wani gwaji sun fi yin kyau haka, fiye da zurfin santimita { $shallow_cm }.
advice-dry-after-planting = Ruwan farko yana iya ɗaukewa. Cikin guntu 100, kamar { $week_least } zuwa { $week_most } suke rayuwa idan aka yi mako ɗaya babu ruwa bayan shuka. Idan aka yi mako biyu, kamar { $fortnight_least } zuwa { $fortnight_most } ne. Ku ba gadon reno ruwa har sai shukar gona ta kama, ku bar wani yaɗo yana girma, ku sake shuka inda guntu ya mutu.
# doubt: "takin gida" for manure, "takin juji" for compost.
advice-feed-and-weed = Kafin ku shuka, ku haɗa tsohon takin gida da ya ruɓe, ko takin juji, da ƙasar kunya. Ɗanyen taki, ko taki mai yawa, yana kawo ganye amma dankali kaɗan. Ku yi noman ciyawa har sai yaɗo ya rufe ƙasa.
# doubt: "mai ruwan lemu" for orange flesh; "bitamin A" as health workers say it.
advice-children = Ku riƙa ba ƙananan yara dankalin Hausa mai ruwan lemu a kai a kai. A wani gwaji, yaran da suka ci gram { $serving_g } a rana har kwana { $days } sun fi samun bitamin A a jikinsu. Farin dankali yana da kaɗan ƙwarai, kuma babu takardar da za ta yi wa wani yaro alkawarin haka.

## What the plan leads to: on the sheet and in text messages

remark-containers-too-small =
    .text = Wuri ya isa dankalin Hausa { $fit } kaɗai, cikin { $roots }. Kada ku matsa ƙari, domin dankali suna ruɓewa inda suka taɓa juna. Wannan zai isa shuka fili kamar { $area_m2 } cikin { $field_m2 } m². { $more ->
        [0] Idan kuna so ku adana fiye da haka, ku nemi wani mazubi. Idan ba haka ba, ku shuka ƙaramar gona.
        [one] Idan kuna so ku adana fiye da haka, ku nemi ƙarin mazubi ɗaya. Idan ba haka ba, ku shuka ƙaramar gona.
       *[other] Idan kuna so ku adana fiye da haka, ku nemi ƙarin mazubi { $more }. Idan ba haka ba, ku shuka ƙaramar gona.
     }
remark-sand-short =
    .text = Yashinku zai rufe dankalin Hausa { $fit } kaɗai, cikin { $roots }. Kada ku adana dankalin da yashi bai rufe ba. Wannan zai isa shuka fili kamar { $area_m2 } cikin { $field_m2 } m². Ku kawo ƙarin yashi { MEASURE($more_l, unit: "litre") }, ko ku shuka ƙaramar gona.
remark-water-limits =
    .text = Ruwanku zai isa gadon reno mai dankalin Hausa { $fit } kaɗai, cikin { $roots }. Kada gadon ya wuce girman da aka faɗa muku, ƙasarsa kuma kullum ta kasance da danshi. Wannan zai isa shuka fili kamar { $area_m2 } cikin { $field_m2 } m². Don gonar duka, ku nemi ƙarin ruwa { MEASURE($more_l, unit: "litre") } { $per ->
        [all] gaba ɗaya.
       *[day] a kowace rana.
     }
remark-hands-short =
    .text = Ruwan da masu ɗebowa suke kawowa zai isa gadon renon dankalin Hausa { $fit } kaɗai, cikin { $roots }. Kada gadon ya wuce girman da aka faɗa muku, ƙasarsa kuma kullum ta kasance da danshi. Wannan zai isa shuka fili kamar { $area_m2 } cikin { $field_m2 } m². Don gonar duka, ku ƙara masu ɗebo ruwa, ko ku matso da gadon kusa da ruwa.
remark-water-heavy =
    .text = A kowace rana marar ruwan sama, za a je ɗebo ruwan gadon renon dankalin Hausa sau { $trips }. Wannan aiki zai ɗauki kamar awa { $hours } a rana. Ku tsara yanzu wa zai ɗebo ruwa, ko ku yi ƙaramin gado.
remark-limited-at-hand =
    .text = { $limit ->
        [roots] Kuna da dankalin Hausa { $roots } da za ku adana.
        [plants] Shukarku za ta ba da dankalin Hausa kamar { $roots } da za ku adana.
       *[bed] Gadon reno yana da wurin dankalin Hausa { $roots }.
     } Gonar duka tana buƙatar dankali { $wanted }. Dankalinku zai isa shuka fili kamar { $area_m2 } cikin { $field_m2 } m². Ku shuka ƙaramar gona, ko ku nemi guntun yaɗo daga maƙwabta.
remark-field-waits =
    .text = Yaɗon dankalin Hausa na yankan farko zai isa shuka fili kamar { $area_m2 } cikin { $field_m2 } m². Sauran fili za a shuka shi da yankan da za a yi daga baya. Tsakanin yanka da yanka akwai kwana { $least_days } zuwa { $most_days }.
remark-rains-too-soon =
    .text = Damina tana iya sauka wajen { BRIEF($rains) }. Wannan ya yi kusa da girbi ƙwarai, ba za a iya adana dankalin Hausa ba. Maimakon haka, ku shuka yaɗo daga tsohuwar gona, ko ku sa dankalin a gadon reno nan take.
remark-storing-not-needed =
    .text = A nan, a yawancin shekaru, rani yana kai kamar kwana { $days }. Yaɗon dankalin Hausa yana iya rayuwa har tsawon haka, don haka ba sai kun adana dankali ba. Ku bar wani sashe na tsohuwar gona a tsaye, ko ku dasa yaɗo a ƙaramin lambun da ake ba ruwa.
remark-rains-too-short =
    .text = A nan damina gajeriya ce ga dankalin Hausa. { $known ->
        [case] Abin da kuka shuka yana iya ƙin ƙosawa kafin damina ta ƙare.
        [open] Babu wanda ya san sau nawa yake ƙosawa kafin damina ta ƙare.
       *[record] Cikin shekara 100, sau { $of_100 } kaɗai yake ƙosawa kafin damina ta ƙare.
     } { $helps ->
        [on-time] Ku yi gadon reno da wuri, don ku iya shuka da zarar ƙasa ta sha ruwa.
        [quicker] Ku shuka da zarar ƙasa ta sha ruwa, ku nemi irin da yake ƙosawa da wuri.
       *[neither] Ku shuka da zarar ƙasa ta sha ruwa, ku sa rai da dankali ƙanana kuma kaɗan.
     }
remark-cuts-too-late =
    .text = Yaɗon dankalin Hausa da za a yanka daga baya, a shuka daga { BRIEF($from) } zuwa gaba, sai wajen { BRIEF($ripe) } dankalinsa zai ƙosa. A yawancin shekaru damina tana ƙarewa kafin nan. Kada ku ajiye wani sashe na gona don irin wannan yanka. Ku mai da yaɗon abincin dabbobi, ko ku bar shi ya yi ta girma inda akwai ruwa.
remark-bed-late =
    .text = Gadon renon dankalin Hausa zai fara ba da guntun yaɗo wajen { BRIEF($cut) }, bayan saukar damina. Idan ƙasa ta sha ruwa, ku shuka yaɗon da kuke da shi. Gadon zai cike sauran gonar daga baya.
remark-long-in-sand =
    .text = Dole dankalinku na Hausa ya zauna a yashi kwana { $days }. Babu wanda ya taɓa ƙirga nawa ne suke rayuwa har tsawon haka. Ku kuma bar wani yaɗo yana girma kusa da ruwa, ku tambayi malamin gonarku.
remark-late-work =
    .text = Wani aikin dankalin Hausa ba a yi shi a kan lokaci ba, don haka an sake lissafa ranaku. Duk abin da har yanzu za a iya yi, ku yi shi nan take. Za a iya shuka gona daga { BRIEF($field_from) }.{ $fewer ->
        [0] {""}
       *[other] {" "}Ku sa rai yankan farko zai ragu da guntu kamar { $fewer }.
     }
remark-fast-loss =
    .text = A dubawar { BRIEF($day) }, cikin dankalin Hausa { $roots }, { $healthy } kaɗai ne lafiyayyu. { $next ->
        [bed] Ku sa lafiyayyu a gadon reno yanzu, ku nemi ƙarin yaɗon shukawa.
       *[check] Ku nemi dalili: yashi mai danshi ko ɗumi, dankali yankakke ko masu taɓa juna, ko ƙwarin dankali. Ku sa sabon busasshen yashi. A sake dubawa bayan mako biyu. Idan da yawa suka ruɓe, nan take ku sa lafiyayyu a gadon reno da ake ba ruwa.
     }
remark-cuttings-short =
    .text = Yankan farko na yaɗon dankalin Hausa zai gaza da guntu kamar { $short }. Idan ƙasa ta sha ruwa, ku shuka fili kamar { $area_m2 } cikin { $field_m2 } m². { $later_cuts ->
        [0] Yankan da za a yi daga baya zai makara, dankalinsa ba zai ƙosa ba. Don haka ku nemi yaɗo daga maƙwabta tun da wuri.
       *[other] Da yankan da za a yi daga baya, za ku ƙara shuka gonar. Kuna kuma iya neman yaɗo daga maƙwabta tun da wuri.
     }
# doubt: "rufe ƙasa da ciyawa" (cover the soil with grass) for mulch.
remark-water-short =
    .text = Daga { BRIEF($from) }, ruwan gadon renon dankalin Hausa yana iya gazawa. Ku nemi ƙarin ruwa. Rufe ƙasa da ciyawa da yi wa gado inuwa suna rage shan ruwa. Idan babu su, ku yi ƙaramin gado, ku shuka ƙaramar gona.
remark-rains-may-be-late =
    .text = Damina tana iya makara har { BRIEF($late) }. Ku riƙa ba gadon renon dankalin Hausa ruwa har sai ta sauka. { -moist-soil }
remark-years-without-rains =
    .text = Cikin shekara { $judged } da suka wuce, sau { $count } damina ba ta sauka sosai ba. A irin wannan shekara, yaɗon dankalin Hausa da aka shuka a ruwan farko yana iya mutuwa. Ku bar wani dankali a ajiye, ko ku ci gaba da ba wani sashe na gadon reno ruwa.
