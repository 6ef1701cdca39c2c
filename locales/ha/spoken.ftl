### Hausa, daftari: kalmomin rediyo da waya. Babu ƙwararre a Hausa da ya karanta su tukuna.
### Draft. Every literal text is recorded as it stands here, cut at the { … }.
### No digits, no abbreviations. Numbers: SAY, days: DAY and SPAN, measures: MEASURE.
### Register: "ku" with the subjunctive, as on the sheet. Numbers stand right behind their noun and never change, so one form
### serves all. "guda" (pieces) is left out before them: a pause after it would say "one".

## What must never be lost. The messages below refer to these sentences.

# doubt: "funfuna" for mould; some say "hunhuna" or "fumfuna".
-bad-roots = Idan dankali ya ruɓe, ko ya yi funfuna, ko yana da ramukan ƙwari, kada ku taɓa cin sa. Kada ku taɓa bai wa dabbobi shi, kada ku taɓa shuka shi. Ku binne shi a rami mai zurfi, ko ku ƙone shi.
-take-nothing = Kada ku ɗauki dankali ko yaɗo daga irin wannan shuka.
# doubt: "gaɓar kogi wadda take tsaye kamar bango" (upright as a wall) for a steep bank.
-dry-riverbed = Sai a inda dokokin wuri suka yarda za ku ɗebi yashi, a kogi kuma sai idan kogin ya ƙafe. Kada ku taɓa tona kusa da gaɓar kogi wadda take tsaye kamar bango, domin tana iya rushewa ta binne ku.
-children-water = Ku rufe ruwan da kuka ajiye, ku hana yara zuwa kusa da shi.
-keep-dry = Kada ku taɓa zuba ruwa a yashin, domin yashi mai danshi yana sa dankali ya ruɓe.
-moist-soil = Sai a ƙasa mai danshi za ku shuka gona, domin busasshiyar ƙasa tana kashe guntun yaɗo.

## Dates and units

date = { SAY($day, form: "cardinal") } ga watan { month }
week = { $week ->
    [1] makon farko
    [2] mako na biyu
    [3] mako na uku
    [4] mako na huɗu
   *[5] makon ƙarshe
 } na watan { month }
# "da ranar" (and the day) joins the two days, so that it is not heard as the "da" inside numbers.
span = tsakanin ranar { DAY($from) } da ranar { DAY($to) }
span-two-days = a ranar { DAY($from) } ko ranar { DAY($to) }
span-day = a ranar { DAY($from) }
unit-kilogram = kilo { SAY($n, form: "cardinal") }
unit-litre = lita { SAY($n, form: "cardinal") }
# Lengths and hands come in halves: $whole is the number below, $half says whether a half is added.
unit-metre = { $half ->
    [yes] { $whole ->
        [0] rabin mita
       *[other] mita { SAY($whole, form: "cardinal") } da rabi
     }
   *[no] mita { SAY($whole, form: "cardinal") }
 }
unit-centimetre = santimita { SAY($n, form: "cardinal") }
# doubt: "tafin hannu da yatsu" (palm and fingers) for a hand's length.
unit-hand = { $half ->
    [yes] { $whole ->
        [0] rabin tsawon tafin hannu da yatsu
       *[other] tsawon tafin hannu da yatsu sau { SAY($whole, form: "cardinal") } da rabi
     }
   *[no] { $whole ->
        [one] tsawon tafin hannu da yatsu
       *[other] tsawon tafin hannu da yatsu sau { SAY($whole, form: "cardinal") }
     }
 }
unit-thumb-joint = { $half ->
    [yes] { $whole ->
        [0] rabin gaɓar babban yatsa
       *[other] gaɓar babban yatsa { SAY($whole, form: "cardinal") } da rabi
     }
   *[no] gaɓar babban yatsa { SAY($whole, form: "cardinal") }
 }
unit-bucket = bokiti { SAY($n, form: "cardinal") }
unit-jerrycan = jarka { SAY($n, form: "cardinal") }
unit-bundle = dami { SAY($n, form: "cardinal") }

## Opening and closing. $season says how the day stands to the rains, $variant which of three ways to say it.

opening = { $season ->
    [before] { $variant ->
        [1] Yawanci damina tana sauka a nan wajen ranar { DAY($rains) }.
        [2] Manoman dankalin Hausa, mu ƙirga kwanaki tare, daga saukar damina zuwa baya. Yawanci tana sauka wajen ranar { DAY($rains) }.
       *[3] Ga aiki na gaba a kan dankalinku na Hausa. Yawanci damina tana sauka wajen ranar { DAY($rains) }.
     }
    [near] { $variant ->
        [1] Manoman dankalin Hausa, damina tana iya sauka a kowane lokaci daga yanzu.
        [2] Damina tana iya sauka nan ba da daɗewa ba. Ku lura da sararin sama da ƙasa.
       *[3] Manoman dankalin Hausa, ku shirya. Damina ta kusa.
     }
    [after] { $variant ->
        [1] Manoman dankalin Hausa, damina ta sauka.
        [2] Damina ta sauka. Ga aiki na gaba a kan dankalinku na Hausa.
       *[3] Manoman dankalin Hausa, ga damina ta zo. Ku ji abin da za ku yi yanzu.
     }
   *[later] { $variant ->
        [1] Manoman dankalin Hausa, ga abin da za ku yi na gaba.
        [2] Ga aiki na gaba a kan dankalinku na Hausa.
       *[3] Yanzu sai batun dankalinku na Hausa, da aikin da zai biyo baya.
     }
 } { $kind ->
    [zone] Adadin da za ku ji, an lissafa shi don dankali { SAY($roots, form: "cardinal") }. Idan gonarku ta fi girma, ku ƙara. Idan ta fi ƙanƙanta, ku rage.{ $season ->
        [before] {" "}Idan za ku yi tono bayan masu fara tono, ku ƙirga kwanakin tsakani. Da yawan kwanakin nan za ku jinkirta aikin da ake yi kafin tono.
       *[later] {""}
     }
   *[other] {""}
 }
closing = { $variant ->
    [1] Idan malamin gonarku ya faɗi wani abu dabam, ku bi abin da ya faɗa.
    [2] Ku tambayi malamin gonarku ma, ku fifita shawararsa.
   *[3] Shawarar malamin gonarku ta fi wannan saƙo ƙarfi.
 }

## Steps

# doubt: "dankalin iri" (seed potato) for seed roots; "sanda" for the marking stick may sound like a staff; "tsinke" is smaller.
mark-plants = Ku zaɓi lafiyayyar shukar dankalin Hausa don samun dankalin iri. Ku yi wannan aiki { SPAN($when) }. { $kind ->
    [group] Ku duka tare, ku sa alama a shuka { SAY($plants, form: "cardinal") }. Kowa a cikinku ya sa alama a shuka { SAY($plants_each, form: "cardinal") }.
   *[other] Ku sa alama a shuka { SAY($plants, form: "cardinal") }.
 } Ku zaɓi masu ƙarfi kaɗai, masu manyan ganyaye masu tsabta, marasa wata alamar ciwo. Ku kafa sanda a ƙasa a gefen kowace. Za su ba da dankalin ajiya kamar { SAY($roots, form: "cardinal") }. Ku tuna: shuka { SAY($plants, form: "cardinal") }, kowace da sandarta.
# doubt: "yashi mai kaushi" for coarse sand, "mai laushi" for fine sand; "mai cin lita goma" for what a bucket holds.
gather-sand = Ku kawo yashin adana dankalin Hausa. Ku yi wannan aiki { SPAN($when) }. Kuna buƙatar kamar { MEASURE($buckets, unit: "bucket") }{ $buckets ->
    [1] , mai cin
   *[other] , kowanne mai cin
 } { MEASURE($bucket_l, unit: "litre") }. Ku ɗebi yashi mai tsabta, mai kaushi, wanda kuke jin ƙwayoyinsa da hannu. Ku shanya shi a ƙarƙashin rufi har ya bushe. Kada ku yi amfani da shi sai ya huce. Yashi mai laushi, ko mai danshi, ko mai ɗumi, yana ruɓar da dankali. Ku tuna: yashi kamar { MEASURE($buckets, unit: "bucket") }, mai kaushi, busasshe, wanda ya huce.
# doubt: "yaɗo" for the vine; "tushe" for the foot of the stem.
check-plants = Ku sake duba shukar dankalin Hausa da kuka sa wa alama. Ku yi wannan aiki { SPAN($when) }. Ku duba ko ganyayenta ƙanana ne, ko sun murɗe, ko sun yi tabo. Ku duba ko yaɗo marar ƙarfi ne, ko akwai ramuka a tushen shuka. Idan kuka ga ɗaya daga cikin waɗannan, ko idan kuna shakka, ku cire sandar shukar.
cut-vines = Ku yanke yaɗon shukar dankalin Hausa da kuka sa wa alama. Ku yi wannan aiki { SPAN($when) }. Ku bar tushe a tsaye, mai tsawon { MEASURE($stem_cm, unit: "centimetre") }, kamar { MEASURE($stem_hands, unit: "hand") }. Bayan haka ɓawon dankali zai yi tauri, dankalin kuma zai daɗe bai lalace ba.
harvest = Ku tona shukar dankalin Hausa da kuka sa wa alama. Ku yi wannan aiki { SPAN($when) }. Idan ƙasa ta jiƙe, ku jira sai ta bushe. Ku ɗaga a hankali, don kada fartanya ta yanka dankali. Ku zaɓi dankali { SAY($roots, form: "cardinal") }, tsawonsa kamar tafin hannu da yatsu, ɓawonsa babu rauni. Ku kakkaɓe ƙasar jikinsa da hannu, kada ku taɓa wanke shi. Ku bar shi a inuwa na 'yan awoyi. Dankalin da fartanya ta yanka, kada ku adana shi. Ku dafa shi da wuri. Ku tuna: ku adana dankali { SAY($roots, form: "cardinal") }, marasa rauni.
# doubt: "jeri" for a layer, "baho" for a basin.
# doubt: plural agreement with "dankali" (su, suna) where many roots are meant; "ya, yana" may be better to some ears.
fill-container = Ku jera dankalin Hausa a cikin busasshen yashi. Ku yi wannan aiki { SPAN($when) }. Kuna buƙatar mazubi { SAY($containers, form: "cardinal") }{ $container_kinds ->
    [one] { $containers ->
        [1] , mai cin kamar
       *[other] , kowanne mai cin kamar
     } { MEASURE($container_l, unit: "litre") }.
   *[several] .
 } Ku yi amfani da baho, tukunya, bokiti ko kwando mai matsattsiyar saƙa. Kada ku taɓa amfani da buhu. Ku cika mazubin a inda zai zauna. Wurin ya zama mai sanyi, busasshe, mai inuwa, nesa da yara, dabbobi da ruwan sama. Ku shimfiɗa takarda a ƙasansa da gefensa na ciki. Ku zuba yashi mai kaurin { MEASURE($base_cm, unit: "centimetre") }. { $layer_widths ->
    [uneven] Dankalin jeri na ƙasa kada ya wuce { SAY($roots_per_layer, form: "cardinal") }. Dankalin jeri na sama kada ya wuce { SAY($roots_top, form: "cardinal") }.{ $layers ->
        [2] {""}
       *[other] {" "}A jerin tsakani kuma, ku sa dankali gwargwadon faɗin mazubi.
     }
   *[even] Dankalin kowane jeri kada ya wuce { SAY($roots_per_layer, form: "cardinal") }.
 } Kada dankali su taɓa juna, kada su taɓa gefen mazubi. { $layers ->
    [1] Ku rufe su da yashi mai kaurin { MEASURE($top_cm, unit: "centimetre") }.
   *[other] Ku rufe su da yashi mai kaurin { MEASURE($layer_cm, unit: "centimetre") }, sannan ku jera na gaba. Haka za ku jera dankali har jeri { SAY($layers, form: "cardinal") }. Amma jeri na ƙarshe, ku rufe shi da yashi mai kaurin { MEASURE($top_cm, unit: "centimetre") }.
 } Yashi mai kauri yana hana ɓeraye, ƙwari da kaji shiga. Kada ku sa murfi, kada ku zuba ruwa.
# doubt: "tsiro" for a sprout on the stored root, "toho" for a shoot that comes out of the bed.
monthly-check = Kowane wata, ku duba dankalin Hausa da kuka adana. { $turn ->
    [next] Za ku sake dubawa a ranar
   *[first] Za ku fara dubawa a ranar
 } { DAY($first) }. Ku fitar da kowane dankali, ku duba shi. { -bad-roots } Masu kyau kuma, ku murje tsironsu har ya fita. Ku sake jera su a busasshen yashi kamar da. Ku rubuta nawa suka rage. Sannan ku ƙyale su har zuwa dubawa ta gaba.
# doubt: "gadon reno" for the bed.
prepare-bed = Ku yi gadon renon dankalin Hausa. Ku yi wannan aiki { SPAN($when) }. Ku zaɓi wuri kusa da ruwa. Tsawon gadon ya zama { MEASURE($bed_length_m, unit: "metre") }, faɗinsa { MEASURE($bed_width_m, unit: "metre") }. { $bed_parts ->
    [strips] Ku raba gadon zuwa sassa { SAY($strips, form: "cardinal") }, faɗin kowane sashe { MEASURE($strip_width_m, unit: "metre") }. Ku bar hanya tsakanin sashe da sashe.
   *[one] {""}
 } Ku noma ƙasarsa sosai har ta yi laushi. Ku kewaye gadon da shinge don hana awaki da kaji shiga.
last-check = Ku duba dankalin Hausa da kuka adana a karo na ƙarshe, a ranar { DAY($first) }. Ku fitar da kowane dankali, ku duba shi. { -bad-roots } A wannan karon, ku bar tsiron. Yanzu masu kyau za su shiga gadon reno.
# doubt: "kullum ƙasar ta kasance da danshi, amma kada ta jiƙe" for moist, not wet: whether danshi and jiƙewa are far enough apart everywhere.
plant-bed = Ku shuka dankalin Hausa a gadon reno. Ku yi wannan aiki { SPAN($when) }. Kada ku jira ruwan sama. Ku ba gadon ruwa har ƙasarsa ta yi danshi. Ku bi tsawon gadon, ku yi layi { SAY($bed_rows, form: "cardinal") }{ $bed_rows ->
    [one] .
   *[other] , tazarar layi da layi { MEASURE($spacing_cm, unit: "centimetre") }.
 } A kowane layi ku jera dankali kamar { SAY($row_roots, form: "cardinal") }, tazarar dankali da dankali { MEASURE($along_row_cm, unit: "centimetre") }. Ku bar su da tsironsu. Ku rufe dankalin da ƙasa mai kaurin { MEASURE($soil_cm, unit: "centimetre") }. Ku sake ba da ruwa a hankali. Kullum ƙasar ta kasance da danshi, amma kada ta jiƙe, domin jiƙaƙƙiyar ƙasa tana ruɓar da dankali.
water-bed = Ku riƙa ba gadon renon dankalin Hausa ruwa daga ranar { DAY($first) }. { $shoots ->
    [before] Kafin toho ya fito, ku ba gadon ruwa kamar { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
        [1] kowace rana.
       *[other] sau ɗaya cikin kwana { SAY($water_every_days, form: "cardinal") }.
     } Wato kamar { MEASURE($jerrycans_young, unit: "jerrycan") }{ $jerrycans_young ->
        [1] , mai cin
       *[other] , kowacce mai cin
     } { MEASURE($jerrycan_l, unit: "litre") }. Kullum ƙasar ta kasance da danshi, amma kada ta jiƙe, domin jiƙaƙƙiyar ƙasa tana ruɓar da dankali. Yayin da ganye yake girma, ku ba gadon ruwa kowace rana, ku riƙa ɗan ƙarawa kowane mako.
   *[after] {""}
 } Idan ganye ya rufe gadon, ku ba shi ruwa kamar { MEASURE($water_l, unit: "litre") } kowace rana. Wato kamar { MEASURE($jerrycans, unit: "jerrycan") }{ $jerrycans ->
    [1] , mai cin
   *[other] , kowacce mai cin
 } { MEASURE($jerrycan_l, unit: "litre") }. A ranakun zafi da iska, ku ba shi ruwa fiye da haka. Idan ruwan sama ya ishi ƙasa har tana da danshi kullum, ku daina ba da ruwa.
# doubt: "gaɓa" for a leaf joint, "guntu" for a cutting, "tushe" for the stem left standing; "danshi, zurfinsa kamar tsawon yatsa" (as deep as a finger is long) for moist a finger deep: "zurfin yatsa" alone may be heard as a finger's thickness.
# doubt: "yanka" is also slaughter; "yankan da za a yi daga baya" for later cuts, because "yankan gaba" has another meaning.
cut-for-planting = Kafin ku yanki yaɗon dankalin Hausa, ku jira sai ruwan sama ya ba gona danshi, zurfinsa kamar tsawon yatsa. Yawanci hakan yana faruwa { SPAN($when) }. Ku tura yatsa cikin ƙasa, ku tabbatar. Sannan ku yanki yaɗon daga gadon reno. Ku ɗauki lafiyayyen yaɗo kaɗai, wanda ba shi da ganyaye masu tabo, ko murɗaɗɗu, ko ƙanana ƙwarai. Ku yi kowane guntu mai tsawon { MEASURE($cutting_cm, unit: "centimetre") }, gaɓoɓinsa kada su gaza { SAY($nodes, form: "cardinal") }. Ku bar tushe a tsaye, mai tsawon { MEASURE($stub_cm, unit: "centimetre") }, don ya sake girma. { $plan_by ->
    [practice] Ga abin da aka saba samu daga yankan farko. Guntu ne kamar
   *[print] Daga yankan farko, ku sa rai da guntu kamar
 } { SAY($first_cuttings_low, form: "cardinal") } zuwa { SAY($first_cuttings_high, form: "cardinal") }. Ku ajiye guntun a inuwa, ku shuka su a ranar da kuka yanke su ko washegari.
# doubt: "tudu" for a mound; a local word may be better. "kai" (head) for the tip of a cutting.
plant-field = Ku shuka gonar dankalin Hausa idan ruwan sama ya ba ƙasa danshi, zurfinsa kamar tsawon yatsa. Yawanci hakan yana faruwa { SPAN($when) }. Ku tura yatsa cikin ƙasa, ku tabbatar. { $layout ->
    [own] Kowa a cikinku ya shuka a kan kunyoyinsa ko tuddansa.
    [mounds] A kowane tudu ku sa guntu { SAY($on_mound, form: "cardinal") }, tazarar tudu da tudu { MEASURE($between_cm, unit: "centimetre") }.
   *[ridges] Ku sa guntu ɗaya ɗaya a kan kunya, tazarar guntu da guntu { MEASURE($along_cm, unit: "centimetre") }. Tazarar kunya da kunya ta zama { MEASURE($between_cm, unit: "centimetre") }.
 } Ku binne gaɓa biyu ko uku na kowane guntu, ku bar kan guntun ya fito a saman ƙasa. Bayan mako biyu, ku sake shuka inda guntu ya mutu.
# doubt: "ƙwarin dankali" (insects of the potato) for weevils.
first-harvest = Ku gwada dankalin Hausa na farko a sabuwar gona. Ku yi wannan aiki { SPAN($when) }. Ku lalubi ƙarƙashin wasu daga cikin shukar, ku ji ko akwai dankalin da ya isa ci. Kada ku bar dankalin da ya ƙosa ya daɗe a busasshiyar ƙasa, domin ƙwarin dankali sukan same shi. Kada tonon ƙarshe na wannan gona ya wuce ranar { DAY($last_harvest) }.

## Cautions

# doubt: "sashen da ake ganin mai kyau ne" for the part that looks good, "guba" for poison.
caution-rot = Ku yi hankali da lalataccen dankalin Hausa. { -bad-roots } Kada ku yanke shi, kada ku fere shi, kada ku dafa shi, don ku ci sauran. Ko da sashen da ake ganin mai kyau ne yana iya zama guba. Idan kuna shakkar wani dankali, ku ɗauka cewa ya lalace.
caution-virus = A shukar dankalin Hausa, ganyaye ƙanana, murɗaɗɗu ko masu tabo, da yaɗo marar ƙarfi, alamun ciwo ne. { -take-nothing }
caution-cracks = Ƙwarin dankali suna bi ta tsagar ƙasa su isa ga dankalin Hausa. Da zarar kun ga tsaga, ku tula ƙasa a kanta.
caution-heavy-sand = Ku yi hankali, yashi yana da nauyi. Kada ku ɗauki fiye da { MEASURE($load_kg, unit: "kilogram") } a lokaci ɗaya. Ku cika mazubin dankalin Hausa a inda zai zauna. Kada ku taɓa ɗaga shi idan ya cika.
caution-riverbed = Ku yi hankali a wajen kogi. { -dry-riverbed }
caution-water-children = Ku kula da yara a inda akwai ruwa. { -children-water } Ku yi wa rijiyoyi da ramuka shinge. Ku hana awaki da kaji shiga gadon reno.
caution-store-dry = Dole yashin da aka adana dankalin Hausa a ciki ya kasance busasshe, daga ranar farko har ta ƙarshe. { -keep-dry }
caution-forecast = Daga shekarun baya aka samo ranakun nan, ba hasashen yanayi ba ne. A bana ruwan sama yana iya zuwa da wuri ko ya makara. Ku lura da sararin sama da ƙasa. { -moist-soil }
caution-try-first = Idan wannan sabon abu ne a gare ku, ku fara da dankalin Hausa kaɗan. Ku kuma ci gaba da kula da wani yaɗonku ta tsohuwar hanya.

## What the plan leads to

remark-late-work = Wani aikin dankalin Hausa ba a yi shi a kan lokaci ba, don haka an sake lissafa ranaku. Duk abin da har yanzu za a iya yi, ku yi shi nan take. Za a iya shuka gona daga ranar { DAY($field_from) }.{ $fewer ->
    [0] {""}
   *[other] {" "}Ku sa rai yankan farko zai ragu da guntu kamar { SAY($fewer, form: "cardinal") }.
 }
remark-fast-loss = A dubawar ranar { DAY($day) }, cikin dankalin Hausa { SAY($roots, form: "cardinal") }, lafiyayyu { SAY($healthy, form: "cardinal") } kaɗai ne. { $next ->
    [bed] Ku sa lafiyayyu a gadon reno yanzu, ku nemi ƙarin yaɗon shukawa.
   *[check] Ku nemi dalili: yashi mai danshi ko mai ɗumi, dankali yankakke, dankali masu taɓa juna, ko ƙwarin dankali. Ku sa sabon busasshen yashi. Ku sake dubawa bayan mako biyu. Idan da yawa suka sake ruɓewa, nan take ku sa lafiyayyu a gadon reno da ake ba ruwa.
 }
remark-limited-at-hand = { $limit ->
    [roots] Kuna da dankalin Hausa { SAY($roots, form: "cardinal") } da za ku adana.
    [plants] Shukarku za ta ba da dankalin Hausa na ajiya kamar { SAY($roots, form: "cardinal") }.
   *[bed] Gadon reno yana da wurin dankalin Hausa { SAY($roots, form: "cardinal") }.
 } Gonar duka tana buƙatar dankali { SAY($wanted, form: "cardinal") }. Dankalinku zai isa shuka fili kamar murabba'in mita { SAY($area_m2, form: "cardinal") }, cikin { SAY($field_m2, form: "cardinal") }. Ku shuka ƙaramar gona, ko ku nemi guntun yaɗo daga maƙwabta.
remark-containers-too-small = Wuri ya isa dankalin Hausa { SAY($fit, form: "cardinal") } kaɗai, cikin { SAY($roots, form: "cardinal") }. Kada ku matsa ƙari, domin dankali suna ruɓewa inda suka taɓa juna. Wannan zai isa shuka fili kamar murabba'in mita { SAY($area_m2, form: "cardinal") }, cikin { SAY($field_m2, form: "cardinal") }. { $more ->
    [0] Idan kuna so ku adana fiye da haka, ku nemi wani mazubi. Idan ba haka ba, ku shuka ƙaramar gona.
    [one] Idan kuna so ku adana fiye da haka, ku nemi ƙarin mazubi ɗaya. Idan ba haka ba, ku shuka ƙaramar gona.
   *[other] Idan kuna so ku adana fiye da haka, ku nemi ƙarin mazubi { SAY($more, form: "cardinal") }. Idan ba haka ba, ku shuka ƙaramar gona.
 }
remark-sand-short = Yashinku zai rufe dankalin Hausa { SAY($fit, form: "cardinal") } kaɗai, cikin { SAY($roots, form: "cardinal") }. Kada ku adana dankalin da yashi bai rufe ba. Wannan zai isa shuka fili kamar murabba'in mita { SAY($area_m2, form: "cardinal") }, cikin { SAY($field_m2, form: "cardinal") }. Ku kawo ƙarin yashi { MEASURE($more_l, unit: "litre") }, ko ku shuka ƙaramar gona.
remark-water-limits = Ruwanku zai isa gadon reno mai dankalin Hausa { SAY($fit, form: "cardinal") } kaɗai, cikin { SAY($roots, form: "cardinal") }. Kada gadon ya wuce girman da aka faɗa muku, ƙasarsa kuma kullum ta kasance da danshi. Wannan zai isa shuka fili kamar murabba'in mita { SAY($area_m2, form: "cardinal") }, cikin { SAY($field_m2, form: "cardinal") }. Don gonar duka, ku nemi ƙarin ruwa { MEASURE($more_l, unit: "litre") } { $per ->
    [all] gaba ɗaya.
   *[day] a kowace rana.
 }
remark-hands-short = Ruwan da masu ɗebowa suke kawowa zai isa gadon renon dankalin Hausa { SAY($fit, form: "cardinal") } kaɗai, cikin { SAY($roots, form: "cardinal") }. Kada gadon ya wuce girman da aka faɗa muku, ƙasarsa kuma kullum ta kasance da danshi. Wannan zai isa shuka fili kamar murabba'in mita { SAY($area_m2, form: "cardinal") }, cikin { SAY($field_m2, form: "cardinal") }. Don gonar duka, ku ƙara masu ɗebo ruwa, ko ku matso da gadon kusa da ruwa.
# doubt: "rufe ƙasa da ciyawa" (cover the soil with grass) for mulch.
remark-water-short = Daga ranar { DAY($from) }, ruwan gadon renon dankalin Hausa yana iya gazawa. Ku nemi ƙarin ruwa. Rufe ƙasa da ciyawa da yi wa gado inuwa suna rage shan ruwa. Idan babu su, ku yi ƙaramin gado, ku shuka ƙaramar gona.
remark-water-heavy = A kowace rana marar ruwan sama, za a je ɗebo ruwan gadon renon dankalin Hausa sau { SAY($trips, form: "cardinal") }. Wannan aiki zai ɗauki kamar awa { SAY($hours, form: "cardinal") } a rana. Ku tsara yanzu wa zai ɗebo ruwa, ko ku yi ƙaramin gado.
remark-rains-too-soon = Damina tana iya sauka wajen ranar { DAY($rains) }. Wannan ya yi kusa da girbi ƙwarai, ba za a iya adana dankalin Hausa ba. Maimakon haka, ku shuka yaɗo daga tsohuwar gona, ko ku sa dankalin a gadon reno nan take.
# doubt: "lambun da ake ba ruwa" (garden that is given water) for a watered plot.
remark-storing-not-needed = A nan, a yawancin shekaru, rani yana kai kamar kwana { SAY($days, form: "cardinal") }. Yaɗon dankalin Hausa yana iya rayuwa har tsawon haka, don haka ba sai kun adana dankali ba. Ku bar wani sashe na tsohuwar gona a tsaye, ko ku dasa yaɗo a ƙaramin lambun da ake ba ruwa.
remark-long-in-sand = Dole dankalinku na Hausa ya zauna a yashi kwana { SAY($days, form: "cardinal") }. Babu wanda ya taɓa ƙirga nawa ne suke rayuwa har tsawon haka. Ku kuma bar wani yaɗo yana girma kusa da ruwa, ku tambayi malamin gonarku.
remark-bed-late = Gadon renon dankalin Hausa zai fara ba da guntun yaɗo wajen ranar { DAY($cut) }, bayan saukar damina. Idan ƙasa ta sha ruwa, ku shuka yaɗon da kuke da shi. Gadon zai cike sauran gonar daga baya.
remark-field-waits = Yaɗon dankalin Hausa na yankan farko zai isa shuka fili kamar murabba'in mita { SAY($area_m2, form: "cardinal") }, cikin { SAY($field_m2, form: "cardinal") }. Sauran fili za a shuka shi da yankan da za a yi daga baya. Tsakanin yanka da yanka akwai kwana { SAY($least_days, form: "cardinal") } zuwa { SAY($most_days, form: "cardinal") }.
remark-cuttings-short = Yankan farko na yaɗon dankalin Hausa zai gaza da guntu kamar { SAY($short, form: "cardinal") }. Idan ƙasa ta sha ruwa, ku shuka fili kamar murabba'in mita { SAY($area_m2, form: "cardinal") }, cikin { SAY($field_m2, form: "cardinal") }. { $later_cuts ->
    [0] Yankan da za a yi daga baya zai makara, dankalinsa ba zai ƙosa ba. Don haka ku nemi yaɗo daga maƙwabta tun da wuri.
   *[other] Da yankan da za a yi daga baya, za ku ƙara shuka gonar. Kuna kuma iya neman yaɗo daga maƙwabta tun da wuri.
 }
remark-rains-too-short = A nan damina gajeriya ce ga dankalin Hausa. { $known ->
    [case] Abin da kuka shuka yana iya ƙin ƙosawa kafin damina ta ƙare.
    [open] Babu wanda ya san sau nawa yake ƙosawa kafin damina ta ƙare.
   *[record] Cikin shekara ɗari, sau { SAY($of_100, form: "cardinal") } kaɗai yake ƙosawa kafin damina ta ƙare.
 } { $helps ->
    [on-time] Ku yi gadon reno da wuri, don ku iya shuka da zarar ƙasa ta sha ruwa.
    [quicker] Ku shuka da zarar ƙasa ta sha ruwa, ku nemi irin da yake ƙosawa da wuri.
   *[neither] Ku shuka da zarar ƙasa ta sha ruwa, ku sa rai da dankali ƙanana kuma kaɗan.
 }
remark-cuts-too-late = Yaɗon dankalin Hausa da za a yanka daga baya yana iya makara. Wanda aka shuka daga ranar { DAY($from) } zuwa gaba, ya makara. Sai wajen ranar { DAY($ripe) } dankalinsa zai ƙosa. A yawancin shekaru damina tana ƙarewa kafin wannan lokaci. Kada ku ajiye wani sashe na gona don yankan da za a yi daga baya. Ku mai da wannan yaɗo abincin dabbobi, ko ku bar shi ya yi ta girma inda akwai ruwa.
remark-rains-may-be-late = Damina tana iya makara har ranar { DAY($late) }. Ku riƙa ba gadon renon dankalin Hausa ruwa har sai ta sauka. { -moist-soil }
remark-years-without-rains = Cikin shekara { SAY($judged, form: "cardinal") } da suka wuce, sau { SAY($count, form: "cardinal") } damina ba ta sauka sosai ba. A irin wannan shekara, yaɗon dankalin Hausa da aka shuka a ruwan farko yana iya mutuwa. Ku bar wani dankali a ajiye, ko ku ci gaba da ba wani sashe na gadon reno ruwa.

## Questions for a meeting, each after its step

# doubt: whether the questions sound natural at a meeting.
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
