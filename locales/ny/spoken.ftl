### Chichewa, mawu oyeserera: mawu a pa wailesi ndi pa foni. Munthu wodziwa bwino Chichewa sanawawerengebe.
### Draft. Every literal text is recorded as it stands here, cut at the { … }.
### No digits, no abbreviations. Numbers: SAY, days: DAY and SPAN, measures: MEASURE.
### Forms: radio-N says native numbers with the concord of class N to ten, and loan numbers above, as on the radio.
### mbatata, nsanjika, mfundo radio-10; zomera, zidutswa, ziwiya, zigubu radio-8; mizere, mitolo radio-4; manja and measures
### radio-6. Days of the month are loan numbers (form day). "Zokwana" (reaching to) leads to larger numbers, as in speech.
### The listener is addressed with the polite imperative (-ni, musa-), right for one adult and for a group.
### Words doubted in written.ftl (nthambi, zidutswa, nsanjika, chuku, mfundo, matsinde, mulu, nankafumbwe …) are so here too.

## Dates and units

# Month names as in written.ftl.
month = { $month ->
    [1] Januwale
    [2] Febuluwale
    [3] Malichi
    [4] Epulo
    [5] Meyi
    [6] Juni
    [7] Julayi
    [8] Ogasiti
    [9] Seputembala
    [10] Okutobala
    [11] Novembala
   *[12] Disembala
 }
# doubt: the day as a loan number (twente faifi Novembala); older speakers may say "tsiku la" and a native number, and some "fesiti" for the first.
date = { SAY($day, form: "day") } { month }
week = mlungu { $week ->
    [1] woyamba
    [2] wachiwiri
    [3] wachitatu
    [4] wachinayi
   *[5] womaliza
 } wa mwezi wa { month }
span = pakati pa { DAY($from) } ndi { DAY($to) }
span-day = pa { DAY($from) }
unit-kilogram = { $n ->
    [one] kilogalamu { SAY($n, form: "radio-10") }
   *[other] makilogalamu { SAY($n, form: "radio-6") }
 }
unit-litre = { $n ->
    [one] lita { SAY($n, form: "radio-10") }
   *[other] malita { SAY($n, form: "radio-6") }
 }
# doubt: a decimal is said as a loan number (mamita wani pointi faifi); many farmers would say "mita imodzi ndi theka".
unit-metre = { $n ->
    [one] mita { SAY($n, form: "radio-10") }
   *[other] mamita { SAY($n, form: "radio-6") }
 }
unit-centimetre = { $n ->
    [one] sentimita { SAY($n, form: "radio-10") }
   *[other] masentimita { SAY($n, form: "radio-6") }
 }
unit-hand = { $n ->
    [one] dzanja { SAY($n, form: "radio-6") }
   *[other] manja { SAY($n, form: "radio-6") }
 }
unit-thumb-joint = { $n ->
    [one] mfundo { SAY($n, form: "radio-10") } ya chala chachikulu
   *[other] mfundo { SAY($n, form: "radio-10") } za chala chachikulu
 }
unit-jerrycan = { $n ->
    [one] chigubu { SAY($n, form: "radio-8") }
   *[other] zigubu { SAY($n, form: "radio-8") }
 }
unit-bundle = { $n ->
    [one] mtolo { SAY($n, form: "radio-4") }
   *[other] mitolo { SAY($n, form: "radio-4") }
 }

## Opening and closing

opening = Mbatata, kuyambira zokolola zino mpaka mvula ikubwerayi. { $kind ->
    [zone] Mvula ikuyembekezeka kuyamba cha mu { WEEK($rains) }. Miyeso imene mumve ndi ya mbatata zokwana { SAY($roots, form: "radio-10") }. Onjezerani kapena chepetsani malinga ndi munda wanu.
   *[other] Mvula ikuyembekezeka kuyamba cha pa { DAY($rains) }.
 }
closing = Mlangizi wanu wa zaulimi akudziwa mitundu ya mbatata, masiku ndi malamulo a dera lanu. Akakuuzani zosiyana ndi za uthengawu, tsatirani malangizo akewo.

## Steps

# The days stand first (pakati pa …), so that no number is heard as part of the noun before it.
# doubt: "zomera zobereka mbatata za mbewu" for mother plants.
# doubt: "aukhondo" for clean leaves; some may hear only "washed".
mark-plants = { SPAN($when) }, sankhani zomera zobereka mbatata za mbewu. Ikani chizindikiro pa zomera zamphamvu zokwana { SAY($plants, form: "radio-8") }. { $kind ->
    [group] { $plants_each ->
        [one] Membala aliyense aike chizindikiro pa chomera { SAY($plants_each, form: "radio-8") }.
       *[other] Membala aliyense aike chizindikiro pa zomera { SAY($plants_each, form: "radio-8") }.
     } Zikani kamtengo pafupi ndi chomera chilichonse.
   *[other] Zikani kamtengo pafupi ndi chomera chilichonse.
 } Sankhani zokhazo za masamba aakulu ndi aukhondo. Zisaonetse matenda alionse. Mudzapezapo mbatata zosunga pafupifupi { SAY($roots, form: "radio-10") }.
# doubt: "mchenga wa njere zazikulu" for coarse sand, "mchenga wosalala" for fine sand.
gather-sand = { SPAN($when) }, bweretsani mchenga wouma. Mukufuna mchenga wokwana { MEASURE($sand_l, unit: "litre") }. Kulemera kwake ndi pafupifupi { MEASURE($sand_kg, unit: "kilogram") }. Tengani mchenga waukhondo wa njere zazikulu. Uumitseni pansi pa denga, kenako muusiye uzizire. Mchenga wosalala, wachinyontho kapena wofunda umachititsa mbatata kuwola.
check-plants = { SPAN($when) }, onaninso zomera zimene munaika chizindikiro. Kodi masamba ndi ang'onoang'ono, opotana kapena a mawanga? Kodi nthambi zapinimbira? Kodi patsinde pali mabowo? Mukakayika, chotsani kamtengo. Musatenge chilichonse pa chomeracho.
# doubt: "dzanja" for a hand's length (wrist to fingertips); some take it for the arm as well.
cut-vines = { SPAN($when) }, dulani nthambi za zomera zimene munaika chizindikiro. Siyani tsinde lotalika ngati dzanja. Khungu la mbatata lidzalimba, ndipo mbatata zidzakhala nthawi yaitali zosawonongeka.
# doubt: "losasupuka" (not grazed) for whole skin.
harvest = { SPAN($when) }, kumbani mbatata. Kumbani m'nthaka youma mokha, ndipo tulutsani mbatata mosazivulaza. Sankhani mbatata zapakatikati zokwana { SAY($roots, form: "radio-10") }. Zikhale zotalika ngati dzanja lanu, za khungu losasupuka. Mbatata zovulala ziphikeni, musazisunge. Pukutani dothi ndi manja, ndipo musazitsuke konse. Zisiyeni pamthunzi maola angapo.
# doubt: "mothina" for a tightly woven basket; "wochindikala" (thick) for the depth of sand.
fill-container = { SPAN($when) }, ikani mbatata mumchenga. Gwiritsani ntchito beseni, mphika, chidebe kapena dengu lolukidwa mothina. Musagwiritse ntchito matumba. Yalani mapepala mkati. Dzazani chiwiya pamalo pomwe chidzakhala. Pakhale pozizira bwino, pouma ndi pamthunzi. Pakhale kutali ndi ana, ziweto ndi mvula. { $containers ->
    [one] Mukufuna chiwiya { SAY($containers, form: "radio-8") }.
   *[other] Mukufuna ziwiya { SAY($containers, form: "radio-8") }.
 } Yambani ndi mchenga wochindikala { MEASURE($base_cm, unit: "centimetre") }. { $layer_widths ->
    [uneven] Mu nsanjika ya pansi ikani mbatata zosapitirira { SAY($roots_per_layer, form: "radio-10") }, ndipo mu nsanjika ya pamwamba zosapitirira { SAY($roots_top, form: "radio-10") }.
   *[even] Mu nsanjika iliyonse ikani mbatata zosapitirira { SAY($roots_per_layer, form: "radio-10") }.
 } Zisakhudzane, ndipo zisakhudze m'mbali mwa chiwiya. Zikwirireni ndi mchenga wochindikala { MEASURE($layer_cm, unit: "centimetre") }. { $layers ->
    [one] Pangani nsanjika { SAY($layers, form: "radio-10") } yokha.
   *[other] Kenako ikani zina pamwamba, mpaka nsanjika zikwane { SAY($layers, form: "radio-10") }.
 } Malizani ndi mchenga wochindikala { MEASURE($top_cm, unit: "centimetre") }. Umatchinga makoswe, tizilombo ndi nkhuku. Musaike chivundikiro.
# doubt: "chuku" for mould, "mphukira" for the sprouts of the stored root.
# doubt: "zofumbwa" (eaten into by weevils, as a newspaper of Malawi says of mbatata) for bored; holes of other insects would be "za mabowo".
# doubt: "zitentheni … mpaka phulusa" (burn to ash). Not "ziwotcheni": it also means roast them, and rotten roots must not sound like food.
monthly-check = Yang'anani mbatata mwezi uliwonse. { $turn ->
    [next] Kenako yang'anani pa
   *[first] Koyamba yang'anani pa
 } { DAY($first) }. Tulutsani mbatata zonse, ndipo onani iliyonse. Chotsani zowola, za chuku kapena zofumbwa. Zikwirireni m'dzenje lakuya, kapena zitentheni pa moto mpaka phulusa. Chotsani mphukira ndi dzanja. Mbatata zabwino ziikeninso mumchenga monga poyamba, ndipo lembani kuti zatsala zingati. Mpaka kuyang'ana kwina, musazikhudze.
prepare-bed = { SPAN($when) }, konzani nazale. M'litali mukhale { MEASURE($bed_length_m, unit: "metre") }, ndipo m'lifupi { MEASURE($bed_width_m, unit: "metre") }. Ikhale pafupi ndi madzi. Tipulani nthaka bwino. Mangani mpanda kuti mbuzi ndi nkhuku zisalowe.
last-check = Pa { DAY($first) }, yang'anani mbatata komaliza. Chotsani zowola, za chuku kapena zofumbwa. Zikwirireni m'dzenje lakuya, kapena zitentheni pa moto mpaka phulusa. Ulendo uno musachotse mphukira. Mbatata zabwino zikupita ku nazale tsopano.
plant-bed = { SPAN($when) }, bzalani mbatata pa nazale. Zigonekeni m'mizere, motalikirana pafupifupi { MEASURE($spacing_cm, unit: "centimetre") }. { $bed_rows ->
    [one] Pakhale mzere { SAY($bed_rows, form: "radio-4") }.
   *[other] Pakhale mizere { SAY($bed_rows, form: "radio-4") }.
 } Zikwirireni pang'ono ndi dothi.
# doubt: "chigubu" for a jerrycan, and whether its size should be said.
water-bed = { SPAN($when) }, thirirani nazale. Nazale ikadzaza masamba, thirani { MEASURE($water_l, unit: "litre") } tsiku lililonse. Amenewo ndi madzi okwana { MEASURE($jerrycans, unit: "jerrycan") }. Zomera zanthete zimafuna madzi ochepa. Masiku otentha ndi a mphepo amafuna madzi ambiri. Siyani kuthirira mvula ikamagwa mokwanira.
# doubt: "mfundo" for nodes, "matsinde" for stubs.
cut-for-planting = { SPAN($when) }, mvula ikayamba, dulani nthambi zobzala. Dulani zidutswa zotalika { MEASURE($cutting_cm, unit: "centimetre") }. Chidutswa chilichonse chikhale ndi mfundo zosachepera { SAY($nodes, form: "radio-10") }. Dulani pa nthambi zathanzi zokha. { $plan_by ->
    [practice] Malinga ndi chizolowezi, podula koyamba mudzapeza zidutswa pafupifupi
   *[print] Podula koyamba mudzapeza zidutswa pafupifupi
 } { SAY($first_cuttings_low, form: "radio-8") } mpaka { SAY($first_cuttings_high, form: "radio-8") }. Siyani matsinde. Mudzadulaponso zidutswa zina pakatha milungu inayi mpaka isanu ndi umodzi. Sungani zidutswa pamthunzi, ndipo zibzaleni pasanathe masiku awiri.
# doubt: "mzere" for a ridge (and a row), "mulu" for a mound.
plant-field = { SPAN($when) }, bzalani m'munda, koma m'nthaka yachinyontho mokha. { $layout ->
    [own] Munda uliwonse ubzalidwe pa mizere kapena milu yake.
    [mounds] { $on_mound ->
        [one] Pa mulu uliwonse bzalani chidutswa { SAY($on_mound, form: "radio-8") }.
       *[other] Pa mulu uliwonse bzalani zidutswa { SAY($on_mound, form: "radio-8") }.
     }
   *[ridges] Pa mzere bzalani chidutswa chimodzichimodzi, motalikirana { MEASURE($along_cm, unit: "centimetre") }.
 } Kwirirani mfundo ziwiri kapena zitatu. Pakatha milungu iwiri, bzalaninso m'mipata.
first-harvest = { SPAN($when) }, yesani mbatata zoyamba. Papasani pansi pa zomera zingapo, kuti mupeze mbatata zokula zokwanira kudya. Musasiye mbatata zokhwima m'nthaka youma nthawi yaitali. Nankafumbwe amazipeza. Malizani kukumba pofika { DAY($last_harvest) }.

## Cautions

# doubt: whether "konse" is heard as a firm "never"; the same in the other cautions.
caution-rot = Samalani. Musadye konse mbatata zowola, za chuku kapena zofumbwa. Musazipatse ziweto konse, ndipo musazibzale. Musadule mbali yoipa kuti mudye yotsala. Ngakhale mbali yooneka ngati yabwino ikhoza kukhala ndi poizoni. Zikwirireni m'dzenje lakuya, kapena zitentheni pa moto mpaka phulusa.
# doubt: "matenda a vairasi" for virus disease.
caution-virus = Samalani. Masamba a mawanga, ang'onoang'ono kapena opotana, ndi zizindikiro za matenda a vairasi. Chimodzimodzi nthambi zopinimbira. Musatenge konse mbatata kapena nthambi pa chomera chotere.
caution-cracks = Nankafumbwe amafika pa mbatata kudzera m'ming'alu ya nthaka. Kwirirani ming'alu ndi dothi mukangoiona.
caution-heavy-sand = Samalani, mchenga ndi wolemera. Nthawi imodzi musanyamule mchenga woposa { MEASURE($load_kg, unit: "kilogram") }. Dzazani chiwiya pamalo pomwe chidzakhala. Chikadzaza, musachinyamule.
# doubt: "gombe lotsetsereka kwambiri" (a bank that slopes very much) for a steep bank; some would say "loimirira" (upright).
caution-riverbed = Musatenge mchenga mumtsinje ukakhala ndi madzi. Dikirani mpaka uume. Musakumbe konse m'munsi mwa gombe lotsetsereka kwambiri, kapena pafupi nalo. Likhoza kugumuka ndi kukukwirirani. Tengani mchenga kokhako kumene malamulo a dera lanu amalola.
caution-water-children = Samalani ana. Musawalole kusewera pafupi ndi madzi, zitsime kapena maenje. Vundikirani madzi osungidwa. Mangani mpanda kuzungulira zitsime ndi maenje. Musalole mbuzi ndi nkhuku kulowa mu nazale.
caution-store-dry = Musathire madzi konse pa mbatata zosungidwa. Mchenga uyenera kukhala wouma kuyambira tsiku loyamba mpaka tsiku lomaliza.
# doubt: "apakatikati" for averages, "kulosera" for a forecast.
caution-forecast = Masikuwa ndi apakatikati pa zaka zapitazo, si kulosera kwa chaka chino. Mvula ikhoza kubwera msanga kapena mochedwa. Bzalani m'nthaka yachinyontho mokha.
caution-try-first = Ngati njirayi ndi yachilendo kwa inu, yambani ndi mbatata zochepa. Sunganinso nthambi zanu zina mwa njira yakale.

## Questions for a meeting, each after its step

# doubt: "zaphukira" for have sprouted; and whether the questions sound natural at a meeting.
ask-mark-plants = M'munda mwanu, zomera zamphamvu kwambiri ndi ziti?
ask-gather-sand = Ndani ali ndi mchenga wouma pafupi? Tingaukumbe bwanji mosamala?
ask-check-plants = Kuno, chomera chodwala chimaoneka bwanji?
ask-cut-vines = Mukasiya tsinde lalifupi kwambiri, chingachitike n'chiyani?
ask-harvest = Mudzakumba bwanji osavulaza mbatata?
ask-fill-container = Kunyumba kwanu, malo ozizira ndi ouma, kutali ndi ana ndi ziweto, ali kuti?
ask-monthly-check = Mbatata zikawonongeka mumaona chiyani? Mudzazikwirira kuti?
ask-prepare-bed = Madzi ali kuti? Ndani aziyang'anira ana?
ask-last-check = Mbatata zanu zingati zaphukira?
ask-plant-bed = N'chiyani chingakuchedwetseni kubzala?
ask-water-bed = Mukachokapo, ndani azithirira?
ask-cut-for-planting = Mumadziwa bwanji kuti mvula yayambadi?
ask-plant-field = Mudzayambira kubzala mbali iti ya munda?
ask-first-harvest = Mudzasunga nthambi ziti za nyengo ikubwerayi?
