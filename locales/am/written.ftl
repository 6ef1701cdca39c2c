### አማርኛ፣ ረቂቅ፦ በወረቀት ላይ የሚታተሙ ቃላት። ቋንቋውን በደንብ የሚያውቅ ሰው ገና አላነበባቸውም።
### Draft, as printed on sheets. Address: the polite form (እርስዎ: ይምረጡ, ይቁረጡ, አይብሉ), which is the same for a woman and
### a man, and serves a group as well. The numeral stands before its noun, and the noun stays in the singular.
### "ስኳር ድንች" comes first in every text message; the trade's words are in glossary.toml. Spelling keeps the letters of
### older use (ፀሐይ, ኅዳር, ሠንጠረዥ).

## Words of the sheet itself

# doubt: "ምርት" (produce) for the harvest; some would say "አዝመራ".
sheet-title = ስኳር ድንች፦ ከዚህ ምርት እስከ ቀጣዩ ዝናብ
sheet-for = ለማን
sheet-place = ቦታ
sheet-rains = ዝናብ የሚጠበቅበት ቀን
# doubt: "የአሁኑ ስኳር ድንች" (that which now stands) for that of the old field, which could sound abandoned.
sheet-harvest = የአሁኑ ስኳር ድንች የሚቆፈርበት ቀን
sheet-amounts = የሚያስፈልጉ ነገሮች
sheet-steps = የሚሠሩ ሥራዎችና ጊዜያቸው
sheet-cautions = ጥንቃቄ
sheet-when = መቼ
sheet-page = ገጽ
sheet-group = ቡድን
sheet-together = በጋራ
# Between a label and its value, with the space before it that the language wants: none.
colon = ፦
semicolon = ፤
sheet-consequences = ስለ ዕቅድዎ
sheet-tip = ጠቃሚ ምክር
# The day the sheet was made, and that older ones hold no more.
sheet-made = በ{ DAY($today) } ተዘጋጀ። የዚህን ወቅት የቀደሙ ወረቀቶችን ሁሉ ይተካል።
step-done = ተሠርቷል
step-now = አሁን
step-next = ቀጥሎ
status-draft = ረቂቅ፦ ቋንቋውን በደንብ የሚያውቅ ሰው ገና አላነበበውም።
status-read = ቋንቋውን በደንብ የሚያውቅ ሰው አንብቦታል፤ ገና አልጸደቀም።
status-approved = ጽሑፉ ጸድቋል።

## Words of the cue sheet

cue-title = መልእክት
cue-language = ቋንቋ
cue-voice = ድምፅ
cue-rights = የመጠቀም መብት
cue-status = የድምፁ ሁኔታ
cue-length = የጊዜ ርዝመት
# doubt: "የድምፅ ጉልህነት" for loudness; sound engineers often use the English word.
cue-loudness = የድምፅ ጉልህነት
# doubt: "ትክክለኛው የድምፅ ጫፍ" for true peak, made up here; sound engineers often use the English words.
cue-true-peak = ትክክለኛው የድምፅ ጫፍ
cue-from = መነሻ
cue-to = መድረሻ
cue-words = ቃላት
# doubt: "የድምፅ ቁራጭ" for a clip; "ቁራጭ" is also the vine cutting.
cue-clip = የድምፅ ቁራጭ
voice-stand-in = ጊዜያዊ
voice-draft = የተቀዳ፣ ገና ያልጸደቀ
voice-approved = የጸደቀ
voice-stand-in-remark = ይህ በማሽን የተሠራ ጊዜያዊ ድምፅ ነው። በሰው ድምፅ ይተካል።

## Amounts

amount-plants = ምልክት የሚደረግባቸው ተክሎች
amount-plants-each = እያንዳንዱ አባል ምልክት የሚያደርግባቸው ተክሎች
amount-roots = የሚቀመጡ ስኳር ድንቾች
amount-cuttings = ለማሳው የሚያስፈልጉ የሐረግ ቁራጮች
# doubt: "ቆረጣ" for one round of cutting vines from the bed.
amount-first-cuttings = ከመጀመሪያው ቆረጣ የሚጠበቁ ቁራጮች
# doubt: "ማስቀመጫ ዕቃ" (then "ዕቃ") for the container; some say "ማጠራቀሚያ".
amount-containers = ማስቀመጫ ዕቃዎች
# doubt: "ንጣፍ" for a layer; some would say "ደርብ" or "ረድፍ" (which is kept here for a row).
amount-layers = በአንድ ዕቃ የሚኖር ንጣፍ
amount-roots-per-layer = { $layer_widths ->
    [uneven] በመጀመሪያው (ታችኛው) ንጣፍ የሚደረደር ስኳር ድንች፣ ቢበዛ
   *[even] በእያንዳንዱ ንጣፍ የሚደረደር ስኳር ድንች፣ ቢበዛ
 }
amount-roots-top-layer = በመጨረሻው (ላይኛው) ንጣፍ የሚደረደር ስኳር ድንች፣ ቢበዛ
amount-bundles = የቁራጭ እስሮች
amount-lining = የዕቃዎቹ ማልበሻ ወረቀት
amount-water-total = የመደቡ ውሃ፣ በወቅቱ ሁሉ
amount-sand = ደረቅ አሸዋ
amount-loads = የአሸዋ ሸክም ብዛት
# doubt: "የችግኝ መደብ" (then "መደብ") for the bed where roots sprout.
amount-bed = የችግኝ መደብ
amount-strips = የችግኝ መደቡ ክፍሎች፣ በመካከላቸው የ{ MEASURE($path_m, unit: "metre") } መተላለፊያ
amount-water = ቅጠሉ መደቡን ሲሸፍን በቀን የሚያስፈልግ ውሃ
amount-jerrycans = ቅጠሉ መደቡን ሲሸፍን በቀን የሚያስፈልግ ውሃ በጀሪካን

first-cuttings-value = { $first_cuttings_low } እስከ { $first_cuttings_high }{ $plan_by ->
    [practice] ፣ በተለመደው አሠራር
   *[print] ፣ በእድገት ቀናት ብዛት
 }
sand-value = { MEASURE($sand_l, unit: "litre") }፣ { MEASURE($sand_kg, unit: "kilogram") } ያህል
bed-value = { MEASURE($bed_length_m, unit: "metre") } × { MEASURE($bed_width_m, unit: "metre") }
strips-value = { $strips }፣ እያንዳንዱ { MEASURE($strip_length_m, unit: "metre") } × { MEASURE($strip_width_m, unit: "metre") }
water-value = { MEASURE($water_l, unit: "litre") }
water-total-value = { MEASURE($water_total_l, unit: "litre") }
bundles-value = { MEASURE($bundles, unit: "bundle") }፣ በእያንዳንዱ { $bundle_size }
lining-value = { $lining_m2 } ካሬ ሜትር
roots-for-zone = { $roots } (ድፍን ቁጥር ነው፤ ለእያንዳንዱ ማሳ እንደ ስፋቱ ያስተካክሉ)

## Dates and units

# Ethiopian date first; the Gregorian one in brackets.
# doubt: the era sign "ዓ.ም." is left out behind both years, to keep spans short.
date = { ethiopic-month } { $ethiopic_day } ቀን { $ethiopic_year } ({ $day } { month } { $year })
# For text messages on phones: the Ethiopian day and month alone.
date-short = { ethiopic-month } { $ethiopic_day }
# Weeks of the Ethiopian month, from its day; the short thirteenth month is not parted into weeks.
week = { $ethiopic_month ->
    [13] የጳጉሜን ወር
   *[other] የ{ ethiopic-month } ወር { $ethiopic_day ->
        [1] መጀመሪያ
        [2] መጀመሪያ
        [3] መጀመሪያ
        [4] መጀመሪያ
        [5] መጀመሪያ
        [6] መጀመሪያ
        [7] መጀመሪያ
        [8] ሁለተኛ
        [9] ሁለተኛ
        [10] ሁለተኛ
        [11] ሁለተኛ
        [12] ሁለተኛ
        [13] ሁለተኛ
        [14] ሁለተኛ
        [15] ሦስተኛ
        [16] ሦስተኛ
        [17] ሦስተኛ
        [18] ሦስተኛ
        [19] ሦስተኛ
        [20] ሦስተኛ
        [21] ሦስተኛ
        [22] አራተኛ
        [23] አራተኛ
        [24] አራተኛ
        [25] አራተኛ
        [26] አራተኛ
        [27] አራተኛ
        [28] አራተኛ
       *[other] መጨረሻ
     } ሳምንት
 }
span = ከ{ DAY($from) } እስከ { DAY($to) } ባለው ጊዜ
span-two-days = { DAY($from) } ወይም { DAY($to) }
span-day = { WEEKDAY($from) }፣ { DAY($from) }
unit-kilogram = { $n } ኪሎ
unit-litre = { $n } ሊትር
unit-metre = { $n } ሜትር
# doubt: "ሳ.ሜ" as printed in farming handbooks; "ሳንቲ ሜትር" in full is plainer but makes text messages long.
unit-centimetre = { $n } ሳ.ሜ
# doubt: "መዳፍ ከነጣቶቹ" (the palm with its fingers) for a hand from the wrist to the fingertips: "መዳፍ" alone is the palm,
# "እጅ" is also the arm, "ስንዝር" (a span) is longer.
unit-hand = { $n } መዳፍ ከነጣቶቹ
unit-thumb-joint = { $n } የአውራ ጣት አንጓ
unit-bucket = { $n } ባልዲ
unit-jerrycan = { $n } ጀሪካን
unit-bundle = { $n } እስር
# Counted from a local event of the case, such as a feast; $event is its name, $days how far.
event-before = ከ{ $event } { $days } ቀን በፊት
event-on = በ{ $event } ዕለት
event-after = ከ{ $event } { $days } ቀን በኋላ

## What must never be lost. The messages below refer to these sentences, each length to one of them.

# doubt: "በነፍሳት የተበሳ" (pierced by insects) for insect holes; many may say "ትል የበላው" (eaten by a worm).
-bad-roots = የበሰበሰ፣ የሻገተ ወይም በነፍሳት የተበሳ ስኳር ድንች በፍጹም አይብሉ። ለእንስሳም በፍጹም አይስጡት፤ በፍጹም አይትከሉት። በጥልቅ ጉድጓድ ይቅበሩት ወይም ያቃጥሉት።
# As short as can be: three steps' text messages have it too, since two messages hold no more of Ethiopic letters.
-bad-roots-short = የበሰበሰ/የሻገተ/በነፍሳት የተበሳ በፍጹም አይብሉ፣ ለእንስሳ አይስጡ፣ አይትከሉ። በጥልቅ ይቅበሩ/ያቃጥሉ።
-bad-roots-sms = የበሰበሰ፣ የሻገተ ወይም በነፍሳት የተበሳ ስኳር ድንች፣ ደህና የሚመስለውም ክፍል፦ በፍጹም አይብሉ፣ ለእንስሳ በፍጹም አይስጡ፣ በፍጹም አይትከሉ። በጥልቀት ይቅበሩ ወይም ያቃጥሉ።
-take-nothing = እንዲህ ካለ ተክል ስኳር ድንችም ሆነ ሐረግ አይውሰዱ።
-take-nothing-short = እንዲህ ካለ ተክል ምንም አይውሰዱ።
# doubt: "ገደላማ የወንዝ ዳር" for a steep river bank.
-dry-riverbed = አሸዋ የአካባቢው ደንብ በሚፈቅድበት ቦታ ብቻ ይውሰዱ። ከወንዝ የሚወስዱት ወንዙ ሲደርቅ ብቻ ይሁን። ገደላማ በሆነ የወንዝ ዳር አጠገብ በፍጹም አይቆፍሩ፤ ተንዶ ሊቀብርዎት ይችላል።
# doubt: "ገደላማ ዳር" alone (a steep edge) for a steep bank, short for the text message.
-dry-riverbed-short = ውሃ ባለው ወንዝ ወይም ገደላማ ዳር አጠገብ በፍጹም አይቆፍሩ።
-children-water = ያጠራቀሙትን ውሃ ይክደኑ፤ ልጆችም እንዳይቀርቡት ይጠብቁ።
-children-water-short = ውሃ ይክደኑ፤ ልጆችን ያርቁ።
-keep-dry = አሸዋው ላይ በፍጹም ውሃ አያፍስሱ፤ ምክንያቱም እርጥብ አሸዋ ስኳር ድንቹን ያበሰብሳል።
-keep-dry-short = አሸዋውን በፍጹም አያርጥቡ።
# doubt: "ደርቆ ይሞታል" (dries up and dies) said of a cutting.
-moist-soil = ማሳው ላይ እርጥበት ባለው አፈር ብቻ ይትከሉ፤ ምክንያቱም በደረቅ አፈር የተተከለ የሐረግ ቁራጭ ደርቆ ይሞታል።
-moist-soil-short = እርጥበት ባለው አፈር ብቻ ይትከሉ።

## Opening and closing

opening = { $kind ->
    [zone] ይህ ዕቅድ ለአካባቢው አርሶ አደር ሁሉ ነው። መጠኑ የተሰላው ለ{ $roots } ስኳር ድንች ነው። ማሳዎ ሰፋ ያለ ከሆነ መጠኑን ይጨምሩ፤ ጠበብ ያለ ከሆነ ይቀንሱ። ስኳር ድንቹ ከመቆፈሩ በፊት ለሚሠሩ ሥራዎች የተጻፉት ቀኖች ቀድመው ለሚቆፍሩ እርሻዎች ናቸው። ዘግይተው የሚቆፍሩ ከሆነ፣ እነዚህን ሥራዎች በዚያው ያህል ቀን አዘግይተው ይሥሩ።
   *[other] { $season ->
        [after] ዝናቡ { DAY($rains) } ጀምሯል። የዚህ ዕቅድ ቀኖች ከዚያ ቀን ተነሥተው የተቆጠሩ ናቸው።
       *[before] የዚህ ዕቅድ ቀኖች ዝናቡ ከሚጀምርበት ቀን ወደ ኋላ የተቆጠሩ ናቸው። ዝናቡ አብዛኛውን ጊዜ የሚጀምረው { DAY($rains) } ገደማ ነው።
     }
 }
# doubt: "የግብርና ባለሙያ" for the extension worker; "የልማት ሠራተኛ" in many places. Polite forms fit either gender.
closing = የግብርና ባለሙያዎ ምክር ከዚህ ወረቀት የሚለይ ከሆነ የባለሙያዎን ምክር ይከተሉ።
    .sms = የግብርና ባለሙያዎ የተለየ ምክር ከሰጡዎት የእሳቸውን ይከተሉ።

## Steps: title, text (.text), the same in a few words (.short), picture in words (.alt), what a meeting is shown (.show) and asked (.ask), text message on a phone (.sms: two messages of 67 letters each, since Ethiopic letters leave no more)

# doubt: "ችካል" (a peg) for the stick beside a marked plant.
mark-plants = { $plants } ጤናማ ተክል ላይ ምልክት ያድርጉ
    .short = ጠንካራ ተክል፣ ትልቅና ንጹሕ ቅጠል። በእያንዳንዱ አጠገብ ችካል ይትከሉ።
    .text = ለዘር የሚሆን ስኳር ድንች የሚሰጡ ጤናማ ተክሎችን ይምረጡ። { $kind ->
        [group] በጋራ { $plants } ተክል ላይ ምልክት ያድርጉ። እያንዳንዱ አባል { $plants_each } ተክል ላይ ምልክት ያድርግ።
       *[other] { $plants } ተክል ላይ ምልክት ያድርጉ።
     } ቅጠላቸው ትልቅና ንጹሕ የሆነ፣ ምንም የበሽታ ምልክት የሌለባቸውን ጠንካራ ተክሎች ብቻ ይምረጡ። በእያንዳንዱ ተክል አጠገብ አንድ ችካል አፈሩ ውስጥ ይትከሉ። ከእነዚህ ተክሎች { $roots } ያህል የሚቀመጥ ስኳር ድንች ያገኛሉ።
    .alt = እጅ በጠንካራ ተክል አጠገብ አፈሩ ውስጥ ችካል ሲተክል።
    .show = ጤናማና የታመመ ሐረግ፣ እንዲሁም ችካል።
    .ask = ጤናማውን ተክል ከታመመው እንዴት ይለያሉ?
    .sms = { BRIEF($first) }፦ ለዘር { $plants } ጠንካራ፣ ጤናማ የስኳር ድንች ተክል ይምረጡ፤ ቅጠሉ ትልቅና ንጹሕ፣ ምንም የበሽታ ምልክት የሌለበት ይሁን። በእያንዳንዱ አጠገብ ችካል ይትከሉ።
# doubt: "ሻካራ አሸዋ" for coarse sand and "ደቃቅ" for fine sand; "ከጣሪያ ሥር" (under a roof) for under cover;
# "ሸክም ቢበዛ" (a load, at most) in the text message for what one carries at a time.
gather-sand = አሸዋ ያምጡና ያድርቁ
    .short = { MEASURE($buckets, unit: "bucket") } (ባለ{ MEASURE($bucket_l, unit: "litre") })፣ ሻካራና ንጹሕ። ከጣሪያ ሥር ያድርቁት፤ ይቀዝቅዝ። { -dry-riverbed-short }
    .text = ለስኳር ድንችዎ ማስቀመጫ የሚሆን አሸዋ ያምጡ። { MEASURE($bucket_l, unit: "litre") } በሚይዝ ባልዲ { MEASURE($buckets, unit: "bucket") } ያህል፣ ወይም { MEASURE($sand_kg, unit: "kilogram") } ያስፈልግዎታል። ቅንጣቱ በጣት ሲታሽ የሚታወቅ፣ ንጹሕና ሻካራ አሸዋ ይውሰዱ። እስኪደርቅ ድረስ ከጣሪያ ሥር ዘርግተው ያቆዩት፤ ከቀዘቀዘ በኋላ ብቻም ይጠቀሙበት። ደቃቅ፣ እርጥብ ወይም ሙቅ አሸዋ ስኳር ድንቹን ያበሰብሳል። አሸዋ ከባድ ስለሆነ በአንድ ጊዜ ከ{ MEASURE($load_kg, unit: "kilogram") } በላይ አይሸከሙ። { -dry-riverbed }
    .alt = ከጣሪያ ሥር፣ ሳህን የያዘ እጅ ከደረቅ አሸዋ ክምር እየዛቀ ወደ ትንሽ ባልዲ ሲጨምር።
    .show = አንድ እፍኝ ሻካራና ደረቅ አሸዋ፣ እንዲሁም አንድ እፍኝ ደቃቅና እርጥብ አሸዋ።
    .ask = በአቅራቢያ ሻካራ አሸዋ የት አለ? እዚያ መቆፈርስ አደጋ የለውም?
    .sms = እስከ { BRIEF($last) }፦ ለስኳር ድንች { MEASURE($buckets, unit: "bucket") } (ባለ{ MEASURE($bucket_l, unit: "litre") }) ሻካራ፣ ንጹሕ አሸዋ ያምጡ፤ ሸክም ቢበዛ { MEASURE($load_kg, unit: "kilogram") }። ከጣሪያ ሥር ደርቆ ይቀዝቅዝ። { -dry-riverbed-short }
# doubt: "የትክክል ምልክት" for a tick, in the words for pictures.
check-plants = ምልክት ያለባቸውን እንደገና ይዩ
    .short = ትንሽ፣ የተጠቀለለ፣ ነጠብጣብ ያለበት ቅጠል፣ የቀጨጨ ሐረግ ወይም በግንዱ ግርጌ ቀዳዳ? ችካሉን ይንቀሉ። { -take-nothing-short }
    .text = ምልክት ያደረጉባቸውን የስኳር ድንች ተክሎች እንደገና ይመልከቱ። ትንሽ፣ የተጠቀለለ ወይም ነጠብጣብ ያለበት ቅጠል፣ የቀጨጨ ሐረግ፣ ወይም በግንዱ ግርጌ ቀዳዳ መኖሩን ይመልከቱ። ከእነዚህ አንዱን እንኳ ካዩ፣ ወይም ከተጠራጠሩ፣ ችካሉን ይንቀሉ። { -take-nothing }
    .alt = የትክክል ምልክት ያለበት ጤናማ ተክል ከነችካሉ፤ እጅ ቅጠሉ ነጠብጣብ ካለበትና ከተጨማደደ የታመመ ተክል ችካሉን ሲነቅል።
    .show = ትንሽ፣ የተጠቀለለና ነጠብጣብ ያለበት ቅጠል።
    .ask = ምልክት ያደረጉበት ተክል ቢታመም ምን ያደርጋሉ?
    .sms = { BRIEF($first) }፦ ምልክት ያለበትን የስኳር ድንች ተክል ይዩ። ትንሽ/የተጠቀለለ/ነጠብጣብ ያለበት ቅጠል፣ የቀጨጨ ሐረግ፣ በግንዱ ግርጌ ቀዳዳ ወይም ጥርጣሬ ካለ ችካሉን ይንቀሉ። { -take-nothing-short }
# doubt: "ልጣጭ" for the skin of the root (it is also peel); "ግንድ" for the stem of a vine (it is also a trunk).
cut-vines = ምልክት ያለበትን ተክል ሐረግ ይቁረጡ
    .short = { MEASURE($stem_cm, unit: "centimetre") } ግንድ ሳይቆርጡ ያስቀሩ፦ { MEASURE($stem_hands, unit: "hand") }።
    .text = ምልክት ያደረጉባቸውን የስኳር ድንች ተክሎች ሐረግ ይቁረጡ። { MEASURE($stem_cm, unit: "centimetre") } ግንድ ሳይቆርጡ ያስቀሩ፤ ይህም { MEASURE($stem_hands, unit: "hand") } ያህል ነው። ከዚህ በኋላ የስኳር ድንቹ ልጣጭ ይጠነክራል፤ ስኳር ድንቹም ረዘም ላለ ጊዜ ሳይበላሽ ይቆያል።
    .alt = ቢላዋ ሐረግ ሲቆርጥ፤ የሚቀረው ግንድ አጠገቡ ካለው የተዘረጋ እጅ ጋር እኩል ነው።
    .show = በግንድ አጠገብ የተዘረጋ መዳፍ።
    .ask = የስኳር ድንቹ ልጣጭ እስኪጠነክር ጊዜ የሚያስፈልገው ለምንድን ነው?
    .sms = { BRIEF($first) }፦ ምልክት ያለባቸውን የስኳር ድንች ተክሎች ሐረግ ይቁረጡ። { MEASURE($stem_cm, unit: "centimetre") } ግንድ ያስቀሩ። ከዚያ የስኳር ድንቹ ልጣጭ ይጠነክራል።
# doubt: "ዶማ" for the hoe; elsewhere another tool digs the roots.
harvest = ቆፍረው { $roots } ያልተጎዳ ይምረጡ
    .short = በደረቅ አፈር ብቻ። መዳፍዎን ከነጣቶቹ የሚያህል፣ ልጣጩ ያልተጎዳ። በፍጹም አይጠቡት። በዶማ የተቆረጠውን ቶሎ አብስለው ይብሉ። { -bad-roots-short }
    .text = ምልክት ያደረጉባቸውን የስኳር ድንች ተክሎች ቆፍረው ያውጡ። አፈሩ እርጥብ ከሆነ እስኪደርቅ ይጠብቁ። ዶማው ስኳር ድንቹን እንዳይቆርጠው በጥንቃቄ ያውጡ። ርዝመቱ መዳፍዎን ከነጣቶቹ የሚያህል፣ ልጣጩ ያልተጎዳ { $roots } ስኳር ድንች ይምረጡ። አፈሩን በእጅ ያራግፉ፤ ስኳር ድንቹን በፍጹም አይጠቡት። ለጥቂት ሰዓታት ጥላ ሥር ያቆዩት። በዶማ የተቆረጠውን አያስቀምጡ፤ ነገር ግን ቶሎ አብስለው ይብሉት። { -bad-roots }
    .alt = እጅ ከለሰለሰ አፈር ውስጥ ተክሉን ካልተቆረጡ ስኳር ድንቾቹ ጋር ሲያነሳ፤ አጠገቡ ዶማ።
    .show = ልጣጩ ያልተጎዳ መካከለኛ ስኳር ድንች፣ እንዲሁም በዶማ የተቆረጠ።
    .ask = ከእነዚህ ውስጥ የትኞቹን እናስቀምጣለን? የትኞቹንስ ቶሎ አብስለን እንበላለን?
    .sms = { BRIEF($first) }፦ ስኳር ድንች በደረቅ አፈር ቆፍረው { $roots } ሳያጥቡ ያኑሩ፤ በዶማ የተቆረጠ ቶሎ ያብስሉ። { -bad-roots-short }
# doubt: "ሳፋ" for a basin and "ማሰሮ" for a clay pot; names of vessels differ by area. "ንጣፍ" for a layer.
fill-container = ስኳር ድንቹን በደረቅ አሸዋ ይደርድሩ
    .short = አሸዋ፦ ከሥር { MEASURE($base_cm, unit: "centimetre") }፣ { $layers ->
        [1] {""}
       *[other] በመካከል { MEASURE($layer_cm, unit: "centimetre") }፣{" "}
     }ከላይ { MEASURE($top_cm, unit: "centimetre") }። እንዳይነካኩ፤ ክዳን አያድርጉ። { -keep-dry-short }
    .text = ስኳር ድንችዎን በደረቅ አሸዋ ውስጥ ይደርድሩ። { $container_kinds ->
        [one] { $containers ->
            [1] { MEASURE($container_l, unit: "litre") } ያህል የሚይዝ { $containers } ዕቃ ያስፈልግዎታል።
           *[other] እያንዳንዱ { MEASURE($container_l, unit: "litre") } ያህል የሚይዝ { $containers } ዕቃ ያስፈልግዎታል።
         }
       *[several] { $containers } ዕቃ ያስፈልግዎታል።
     } ሳፋ፣ ማሰሮ፣ ባልዲ ወይም ጥቅጥቅ ብሎ የተሠራ ቅርጫት ይጠቀሙ፤ ጆንያ ግን በፍጹም አይጠቀሙ። ዕቃውን በሚቆይበት ቦታ አስቀምጠው ይሙሉት። ቦታው ቀዝቃዛ፣ ደረቅና ጥላ ያለው፣ ከልጆች፣ ከእንስሳትና ከዝናብ የራቀ ይሁን። የዕቃውን ሥርና ጎን በወረቀት ያልብሱ። ከሥር { MEASURE($base_cm, unit: "centimetre") } አሸዋ ያንጥፉ፤ ይህም { MEASURE($base_joints, unit: "thumb-joint") } ያህል ነው። { $layer_widths ->
        [uneven] ከሥር ባለው የመጀመሪያ ንጣፍ ቢበዛ { $roots_per_layer } ስኳር ድንች ይደርድሩ። ከላይ ባለው የመጨረሻ ንጣፍ ደግሞ ቢበዛ { $roots_top } ይደርድሩ። በመካከል ባሉት ንጣፎች ቦታ የሚበቃቸውን ያህል ይደርድሩ።
       *[even] በእያንዳንዱ ንጣፍ ቢበዛ { $roots_per_layer } ስኳር ድንች ይደርድሩ።
     } ስኳር ድንቾቹ እርስ በርስም ሆነ ከዕቃው ጎን ጋር እንዳይነካኩ ያድርጉ። { $layers ->
        [1] { MEASURE($top_cm, unit: "centimetre") } አሸዋ ያልብሷቸው።
       *[other] { MEASURE($layer_cm, unit: "centimetre") } አሸዋ ያልብሷቸውና ቀጣዮቹን ይደርድሩ። በዚህ መንገድ { $layers } የስኳር ድንች ንጣፍ ይሥሩ፤ የመጨረሻውን ግን { MEASURE($top_cm, unit: "centimetre") } አሸዋ ያልብሱት።
     } ከላይ ያለው ብዙ አሸዋ አይጥን፣ ነፍሳትንና ዶሮን ይከላከላል። ክዳን አያድርጉበት። { -keep-dry }
    .alt = ጎኑ ተቆርጦ ውስጡ የሚታይ ሳፋ፦ አሸዋ፣ ተራርቀው የተደረደሩ ስኳር ድንቾች፣ አሸዋ፣ ስኳር ድንቾች፣ ከላይ ብዙ አሸዋ፤ እጅ አሸዋ ሲበትን።
    .show = ሳፋ፣ ደረቅ አሸዋና ጥቂት ስኳር ድንች፦ አንድ ሰው የመጀመሪያውን ንጣፍ ይደርድር።
    .ask = ስኳር ድንቾቹ መነካካት የሌለባቸው ለምንድን ነው?
    .sms = { BRIEF($first) }፦ ስኳር ድንች ሳይነካካ በደረቅ አሸዋ ይደርድሩ፤ አሸዋ ከሥር { $base_cm }፣ { $layers ->
        [1] {""}
       *[other] መካከል { $layer_cm }፣{" "}
     }ከላይ { MEASURE($top_cm, unit: "centimetre") }። ያለ ክዳን። ከዝናብ/ልጆች/እንስሳት ያርቁ። የሞላውን በፍጹም አያንሱ። { -keep-dry-short }
# doubt: "ቡቃያ" for the sprouts of the root; some say "ጉንቁል".
# doubt: "የክልክል ምልክት" (sign of prohibition) for a crossed-out picture, here and in the cautions.
monthly-check = ሁሉንም ይፈትሹ፤ መልሰው ይደርድሩ
    .short = ቡቃያውን ያርግፉ። በደረቅ አሸዋ መልሰው ይደርድሩ። { -bad-roots-short }
    .text = ያስቀመጡትን ስኳር ድንች ሁሉ አውጥተው አንድ በአንድ ይመልከቱ። { -bad-roots } ደህናዎቹ ላይ ያለውን ቡቃያ አሽተው ያርግፉ። እንደ በፊቱ አድርገው በደረቅ አሸዋ መልሰው ይደርድሯቸው። ስንት እንደቀሩ ይጻፉ። ከዚያ እስከሚቀጥለው ፍተሻ አይንኳቸው።
    .alt = ወር ማለፉን የሚያሳዩ ሦስት ጨረቃዎች፤ እጅ ከሳፋው ስኳር ድንች ሲያወጣ፤ ከጎኑ የክልክል ምልክት ያለበት የበሰበሰ ስኳር ድንች።
    .show = የበሰበሰ ስኳር ድንች ካለ፣ እንዲሁም መልሶ እንዴት እንደሚደረደር።
    .ask = የበሰበሰውን ምን ያደርጋሉ? ለእንስሳትስ ለምን አይሰጥም?
    .sms = { BRIEF($first) }፦ ስኳር ድንቹን ሁሉ አውጥተው ይዩ። ቡቃያ ያርግፉ፤ በደረቅ አሸዋ ይመልሱ፤ ቁጥሩን ይጻፉ። { -bad-roots-short }
# doubt: "ክፍል" (a part) for a strip of the bed; "መተላለፊያ" for the path between.
prepare-bed = የችግኝ መደብ ያዘጋጁ
    .short = { MEASURE($bed_length_m, unit: "metre") } በ{ MEASURE($bed_width_m, unit: "metre") }፣ ውሃ አጠገብ። አፈሩን ያለስልሱ፤ በአጥር ይከልሉ። { -children-water-short }
    .text = ለስኳር ድንችዎ የችግኝ መደብ ያዘጋጁ። ውሃ አጠገብ ያለ ቦታ ይምረጡ። የመደቡ ርዝመት { MEASURE($bed_length_m, unit: "metre") }፣ ወርዱ { MEASURE($bed_width_m, unit: "metre") } ይሁን። { $bed_parts ->
        [strips] መደቡን { $strips } ክፍል አድርገው ይሥሩ፤ የእያንዳንዱ ክፍል ወርድ { MEASURE($strip_width_m, unit: "metre") } ይሁን። በክፍሎቹ መካከል መተላለፊያ ይተዉ።{" "}
       *[one] {""}
     }አፈሩን በደንብ ያለስልሱት። ፍየልና ዶሮ እንዳይገቡ መደቡን በአጥር ይከልሉ። { -children-water }
    .alt = ሰው የመደቡን አፈር በዶማ ሲያለሰልስ፤ ከኋላው አጥር።
    .show = ከውሃ አጠገብ ያለውን ቦታ፣ የመደቡንም ስፋት በእርምጃ።
    .ask = ፍየልና ዶሮ እንዳይገቡ ምን ይከለክላቸዋል?
    .sms = እስከ { BRIEF($last) }፦ ውሃ አጠገብ { MEASURE($bed_length_m, unit: "metre") } በ{ MEASURE($bed_width_m, unit: "metre") } የስኳር ድንች ችግኝ መደብ ያዘጋጁ። በአጥር ይከልሉ። { -children-water-short }
last-check = የመጨረሻ ፍተሻ፤ ቡቃያውን አያርግፉ
    .short = ደህናዎቹ ከነቡቃያቸው መደቡ ላይ ይተከላሉ። { -bad-roots-short }
    .text = ያስቀመጡትን ስኳር ድንች ሁሉ አውጥተው አንድ በአንድ ይመልከቱ። { -bad-roots } አሁን ግን ቡቃያውን አያርግፉ። ደህናዎቹ አሁን መደቡ ላይ ይተከላሉ።
    .alt = እጅ ቡቃያ ያወጣ ስኳር ድንች ከሳፋው ሲያወጣ፤ ቀስት ወደ መደቡ ያመለክታል።
    .show = ቡቃያ ያለው ስኳር ድንች።
    .ask = አሁን ቡቃያውን የማናረግፈው ለምንድን ነው?
    .sms = { BRIEF($first) }፦ የስኳር ድንች የመጨረሻ ፍተሻ። ቡቃያ አያርግፉ፤ ደህናውን መደብ ላይ ይትከሉ። { -bad-roots-short }
plant-bed = ስኳር ድንቹን መደቡ ላይ ይትከሉ
    .short = መደቡን ያርጥቡ። { $bed_rows } ረድፍ{ $bed_rows ->
        [1] ፣{" "}
       *[other] {" "}በየ{ MEASURE($spacing_cm, unit: "centimetre") }፣{" "}
     }በእያንዳንዱ { $row_roots }፤ { MEASURE($soil_cm, unit: "centimetre") } አፈር ያልብሱ። እርጥበት ይኑረው እንጂ አይጨቅይ።
    .text = ስኳር ድንቹን በችግኝ መደቡ ላይ ይትከሉ። ዝናብ አይጠብቁ፤ ነገር ግን ከመትከልዎ በፊት መደቡ እርጥበት እስኪይዝ ውሃ ያጠጡ። { $bed_rows ->
        [1] የመደቡን ርዝመት ተከትለው { $bed_rows } ረድፍ ያውጡ።
       *[other] የመደቡን ርዝመት ተከትለው { $bed_rows } ረድፍ ያውጡ፤ ረድፎቹ { MEASURE($spacing_cm, unit: "centimetre") } ይራራቁ።
     } በእያንዳንዱ ረድፍ { $row_roots } ያህል ስኳር ድንች ይደርድሩ፤ ከአንዱ ስኳር ድንች እስከ ቀጣዩ { MEASURE($along_row_cm, unit: "centimetre") } ይሁን። ቡቃያውን አያርግፉ። { MEASURE($soil_cm, unit: "centimetre") } አፈር ያልብሷቸው። እንደገና ቀስ ብለው ውሃ ያጠጡ። አፈሩ እርጥበት ይኑረው እንጂ አይጨቅይ፤ ምክንያቱም የጨቀየ አፈር ስኳር ድንቹን ያበሰብሳል።
    .alt = በረድፍ የተደረደሩ ስኳር ድንቾች፤ እጅ አፈር ሲያለብሳቸው።
    .show = በልኩ በተቆረጠ እንጨት የረድፎቹን ርቀት።
    .ask = መደቡ ላይ ለመትከል ዝናብ እንጠብቃለን?
    .sms = ከ{ BRIEF($first) } ጀምሮ፦ የስኳር ድንች መደቡን ውሃ ያጠጡ፤ ዝናብ አይጠብቁ። ስኳር ድንቹን በ{ $bed_rows } ረድፍ{ $bed_rows ->
        [1] {" "}
       *[other] ፣ ረድፎቹን { MEASURE($spacing_cm, unit: "centimetre") } አራርቀው{" "}
     }ይደርድሩ፤ { MEASURE($soil_cm, unit: "centimetre") } አፈር ያልብሱ። እርጥበት ይኑረው እንጂ አይጨቅይ።
water-bed = መደቡን ውሃ ያጠጡ
    .short = { $shoots ->
        [before] ቡቃያ እስኪወጣ፦ { $water_every_days ->
            [1] በየቀኑ
           *[other] በየ{ $water_every_days } ቀኑ
         } { MEASURE($water_l_young, unit: "litre") }።{" "}
       *[after] {""}
     }ቅጠሉ ሲሸፍን፦ በቀን { MEASURE($water_l, unit: "litre") } ያህል፣ { MEASURE($jerrycans, unit: "jerrycan") }። እርጥበት ይኑረው፤ በፍጹም አይጨቅይ። { -children-water-short }
    .text = የስኳር ድንቹን የችግኝ መደብ ከ{ DAY($first) } ጀምሮ ውሃ ያጠጡ። { $shoots ->
        [before] ቡቃያው ከአፈር ብቅ እስኪል ድረስ { $water_every_days ->
            [1] በየቀኑ
           *[other] በየ{ $water_every_days } ቀኑ
         } { MEASURE($water_l_young, unit: "litre") } ያህል ያጠጡ፤ ይህም { MEASURE($jerrycan_l, unit: "litre") } በሚይዝ ጀሪካን { MEASURE($jerrycans_young, unit: "jerrycan") } ያህል ነው። አፈሩ እርጥበት ይኑረው እንጂ አይጨቅይ፤ ምክንያቱም የጨቀየ አፈር ስኳር ድንቹን ያበሰብሳል። ቅጠሉ እያደገ ሲሄድ በየቀኑ ያጠጡ፤ ውሃውንም በየሳምንቱ ትንሽ ትንሽ ይጨምሩ።{" "}
       *[after] {""}
     }ቅጠሉ መደቡን ሲሸፍን በየቀኑ { MEASURE($water_l, unit: "litre") } ያህል ያጠጡ፤ ይህም { MEASURE($jerrycan_l, unit: "litre") } በሚይዝ ጀሪካን { MEASURE($jerrycans, unit: "jerrycan") } ያህል ነው። ሙቀትና ነፋስ ባለበት ቀን ውሃውን ይጨምሩ። ዝናቡ ብቻውን የአፈሩን እርጥበት ሲጠብቅ ማጠጣቱን ያቁሙ። { -children-water }
    .alt = እጅ ቡቃያ ባለው መደብ ላይ ከጀሪካን ውሃ ሲያፈስ።
    .show = ጀሪካን፣ እንዲሁም ለጋ ተክል የሚያስፈልገው ጥቂት ውሃ።
    .ask = ውሃውን ማን ያመጣል? እዚያስ ልጆችን ማን ይጠብቃል?
    .sms = ከ{ BRIEF($first) } ጀምሮ፦ የስኳር ድንች መደብ ያጠጡ። { $shoots ->
        [before] ቡቃያ እስኪወጣ { $water_every_days ->
            [1] በየቀኑ
           *[other] በየ{ $water_every_days } ቀኑ
         } { MEASURE($water_l_young, unit: "litre") }፣ ቅጠሉ ሲሸፍን በቀን { MEASURE($water_l, unit: "litre") }፤
       *[after] ቅጠሉ ሲሸፍን በቀን { MEASURE($water_l, unit: "litre") }፤
     } ሲሞቅ ይጨምሩ። ዝናቡ እርጥበቱን ሲጠብቅ ያቁሙ። { -children-water-short }
# doubt: "ሲርስ" (when it is soaked) for soil that rain has soaked; "ሲያርሰው" would also be heard as ploughing.
# doubt: "አንጓ" for a leaf joint of the vine; "ቆረጣ" for one round of cutting vines from the bed; "አንድ ጣት ርዝመት" for a finger deep.
cut-for-planting = አፈሩ በዝናብ ሲርስ ሐረግ ይቁረጡ
    .short = ማሳው አንድ ጣት ርዝመት ሲርስ፦ ጤናማ ሐረግ፣ { MEASURE($cutting_cm, unit: "centimetre") }፣ { $nodes } አንጓ ይቁረጡ። { MEASURE($stub_cm, unit: "centimetre") } ግንድ ያስቀሩ። እስከ ማግስቱ ይትከሉ።
    .text = የስኳር ድንች ማሳዎ በዝናብ አንድ ጣት ርዝመት ወደ ታች እስኪርስ ይጠብቁ። ከዚያ ከችግኝ መደቡ የስኳር ድንች ሐረግ ይቁረጡ። ጤናማ ሐረግ ብቻ ይቁረጡ፤ ቅጠሉ ነጠብጣብ ያለበት፣ የተጠቀለለ ወይም በጣም ትንሽ የሆነውን አይውሰዱ። የእያንዳንዱ ቁራጭ ርዝመት { MEASURE($cutting_cm, unit: "centimetre") }፣ ማለትም { MEASURE($cutting_hands, unit: "hand") } ያህል ይሁን፤ ቢያንስ { $nodes } አንጓ ይኑረው። ተክሉ እንደገና እንዲያቆጠቁጥ፣ መደቡ ላይ { MEASURE($stub_cm, unit: "centimetre") } ግንድ ሳይቆርጡ ያስቀሩ። { $plan_by ->
        [practice] በተለመደው አሠራር፣ በመጀመሪያው ቆረጣ
       *[print] በመጀመሪያው ቆረጣ
     } ከ{ $first_cuttings_low } እስከ { $first_cuttings_high } ያህል ቁራጭ ሊገኝ ይችላል። ቁራጮቹን ጥላ ሥር ያቆዩ፤ በዚያው ቀን ወይም በማግስቱ ይትከሏቸው።
    .alt = አንድ እጅ የመደቡን ሐረግ ይዞ፣ ሌላው በቢላዋ ሲቆርጥ፤ ከሥር ግንዱ ይቀራል።
    .show = በእጅ አጠገብ ልኩን የጠበቀ ቁራጭ፦ አንጓዎቹን ይቁጠሩ።
    .ask = ከየትኞቹ ተክሎች ቁራጭ አንወስድም?
    .sms = የስኳር ድንች ማሳው በዝናብ አንድ ጣት ርዝመት ሲርስ፦ ጤናማ ሐረግ { MEASURE($cutting_cm, unit: "centimetre") }፣ { $nodes } አንጓ ይቁረጡ። { MEASURE($stub_cm, unit: "centimetre") } ግንድ ያስቀሩ። ጥላ ሥር ያቆዩ፤ እስከ ማግስቱ ይትከሉ።
# doubt: "ተረተር" for a ridge and "የአፈር ቁልል" for a mound; local words may be better.
plant-field = ሐረጉን ማሳው ላይ ይትከሉ
    .short = { -moist-soil-short } ሁለት ወይም ሦስት አንጓ ይቅበሩ። ከሁለት ሳምንት በኋላ፣ ቁራጭ በሞተበት ቦታ እንደገና ይትከሉ።
    .text = የስኳር ድንች ማሳዎ በዝናብ አንድ ጣት ርዝመት ወደ ታች ሲርስ ሐረጉን ይትከሉ። { $layout ->
        [own] እያንዳንዱ አርሶ አደር በራሱ ተረተር ወይም የአፈር ቁልል ላይ ይትከል።
        [mounds] በእያንዳንዱ የአፈር ቁልል ላይ { $on_mound } የሐረግ ቁራጭ ይትከሉ፤ ቁልሎቹም { MEASURE($between_cm, unit: "centimetre") } ይራራቁ።
       *[ridges] ተረተሩ ላይ በየ{ MEASURE($along_cm, unit: "centimetre") } አንድ የሐረግ ቁራጭ ይትከሉ፤ ተረተሮቹም { MEASURE($between_cm, unit: "centimetre") } ይራራቁ።
     } ከእያንዳንዱ የሐረግ ቁራጭ ሁለት ወይም ሦስት አንጓ ይቅበሩ፤ ጫፉን ግን ከአፈሩ በላይ ያስቀሩ። { $kind ->
        [zone] መደቡ በሚሰጥበት ወቅት ሁሉ፣ ከ{ $roots } ስኳር ድንች { $cuttings } ያህል ቁራጭ ይገኛል።
       *[other] ለማሳው በሙሉ { $cuttings } ቁራጭ ያስፈልጋል።
     } ከሁለት ሳምንት በኋላ፣ ቁራጭ በሞተበት ቦታ ላይ እንደገና ይትከሉ። { -moist-soil }
    .alt = በዝናብ ደመና ሥር፣ እጅ ቁራጮችን በመስመር ሲተክል፤ የታችኞቹ አንጓዎች አፈር ውስጥ ናቸው።
    .show = እስከ ጣት ርዝመት የረጠበ አፈር፣ እንዲሁም የታችኞቹ አንጓዎቹ የተቀበሩ ቁራጭ።
    .ask = አንድ ጊዜ ዘንቧል። አሁን እንትከል? ምን ችግር ሊመጣ ይችላል?
    .sms = ከ{ BRIEF($first) } ጀምሮ፣ አፈሩ በዝናብ በደንብ ሲርስ፦ { $cuttings_to_plant } ያህል የስኳር ድንች ሐረግ ቁራጭ ይትከሉ፤ ሁለት ወይም ሦስት አንጓ ይቅበሩ። { -moist-soil-short }
# doubt: "ነቀዝ" (weevil, best known from stored grain) for the sweet potato weevil.
first-harvest = የመጀመሪያውን ስኳር ድንች ይሞክሩ
    .short = ለመብል የሚበቃውን በእጅ ይዳስሱ። ሁሉንም እስከ { BRIEF($last_harvest) } ይቆፍሩ፤ የደረሰውን ነቀዝ ያጠቃዋል።
    .text = በአንዳንድ ተክሎች ሥር በእጅ ዳስሰው ለመብል የሚበቃ ትልቅ ስኳር ድንች ይፈልጉ። የደረሰውን በደረቅ አፈር ውስጥ ለረጅም ጊዜ አይተዉት፤ ምክንያቱም ነቀዝ ያጠቃዋል። የመጨረሻዎቹን እስከ { DAY($last_harvest) } ድረስ ቆፍረው ይጨርሱ።
    .alt = እጅ ከተክል ሥር ስኳር ድንች ሲዳስስ፤ አጠገቡ እሳት ላይ የተጣደ ማሰሮ።
    .show = ተክሉን ሳይነቅሉ ስኳር ድንቹን እንዴት እንደሚዳስሱ።
    .ask = የደረሰ ስኳር ድንች በደረቅ መሬት ውስጥ ቢቆይ ምን ይሆናል?
    .sms = ከ{ BRIEF($first) } ጀምሮ፦ የደረሰ ስኳር ድንች በእጅ ዳስሰው ይፈልጉ። ሁሉንም እስከ { BRIEF($last_harvest) } ይቆፍሩ፤ በደረቅ አፈር የቀረውን ነቀዝ ያጠቃዋል።

## Tables: title, what it tells (.text), its picture in words (.alt)

# doubt: "በእድገት ቀናት ብዛት" where cuttings are counted by the days that the bed has grown.
table-cuts = ከመደቡ የሚቆረጡ ሐረጎች{ $plan_by ->
    [practice] ፣ በተለመደው አሠራር
   *[print] ፣ በእድገት ቀናት ብዛት
 }
    .text = { $cuts ->
        [1] ወቅት ከወቅት ይለያያል፤ የቁራጮቹ ብዛት በትንሹና በትልቁ ቁጥር መካከል እንደሚሆን ይገምቱ።
       *[other] ወቅት ከወቅት ይለያያል፤ የቁራጮቹ ብዛት በትንሹና በትልቁ ቁጥር መካከል እንደሚሆን ይገምቱ። የኋለኞቹ ቆረጣዎች ለቀሪው ማሳና ቁራጭ ለሞተባቸው ቦታዎች ናቸው።
     }
table-ways = ሊያደርጉ የሚችሉት፣ ጎን ለጎን
    .text = ሠንጠረዡ እያንዳንዱ መንገድ በተለመደ ወቅት ዝናቡ እስኪገባ የሚሰጠውን ያሳያል። አንዱም እርግጠኛ አይደለም። ያን ያህል ባይኖርዎትም፣ እያንዳንዱ መንገድ የሚጠይቀውንም ያሳያል።
way-value = { $way ->
    [one-bed] አንድ መደብ፤ ዝናቡ ሲገባ የሚቆረጥ
    [second-bed] ቀደም ብሎ የሚሠራ ትንሽ መደብ፤ ቁራጮቹ ውሃ በሚጠጣ ቦታ ያድጋሉ
    [vine-plot] የአሁኑ ማሳ ሐረግ ውሃ በሚጠጣ ቦታ፤ ስኳር ድንች አይቀመጥም
    [as-planned] እንደታቀደው ስኳር ድንቹ በአሸዋ ውስጥ ይቆያል
    [bed-now] ደህናዎቹን ስኳር ድንቾች አሁን መደቡ ላይ መትከል
    [bed-now-second-bed] አሁን መደቡ ላይ መትከል፤ ቁራጮቹ ውሃ በሚጠጣ ቦታ ያድጋሉ
   *[buy] የጎደለውን ሐረግ ከሌላ ሰው ማግኘት
 }
table-shares = ከእያንዳንዱ እርሻ የሚመጣው
    .text = እያንዳንዱ አርሶ አደር በራሱ ተክሎች ላይ ምልክት ያደርጋል፤ ስኳር ድንቹንም በጋራ ወደሚቀመጥበት ቦታ ያመጣል።
table-fields = መጠን በማሳ ስፋት
    .text = የማሳዎን ስፋት በመጀመሪያው ዓምድ ይፈልጉ። በሁለት መስመሮች መካከል ከሆነ፣ መጠኑም በእነሱ መካከል ነው።
# doubt: "ሐሰተኛ ጅምር" for a false start of the rains.
# doubt: "አሞሌ" (a bar, as of salt) for the bars of a chart.
table-planting-later = ተከላውን ቢያዘገዩ
    .text = በመጀመሪያው ከባድ ዝናብ ቢተክሉና ከዚያ ረጅም ደረቅ ጊዜ ቢመጣ፣ ለጋ ተክሎች ሊሞቱ ይችላሉ። ይህ ሐሰተኛ ጅምር ነው። ቢያዘገዩ ደግሞ ዝናቡ እስኪያበቃ የሚቀሩት ቀኖች ያንሳሉ። ሠንጠረዡ ሁለቱም ባለፉት ዓመታት እንዴት እንደነበሩ ያሳያል፤ ትንበያ አይደለም። በሥዕሉ ላይ ባለመስመር አሞሌዎች ሐሰተኛ ጅምር የነበረባቸው ዓመታት ናቸው፤ ጥቁር አሞሌዎች ዝናቡ እስኪያበቃ የሚቀሩ ቀኖች ናቸው።
    .alt = ተከላ ለሚጀመርበት ለእያንዳንዱ ቀን፦ ሐሰተኛ ጅምር ለነበረባቸው ዓመታት ባለመስመር አሞሌ፣ ዝናቡ እስኪያበቃ ለሚቀሩ ቀኖች ጥቁር አሞሌ። ቁጥሮቹ ከላይ ባለው ሠንጠረዥ ውስጥ አሉ።
column-when = መቼ
column-way = የሚያደርጉት
column-farm = እርሻ
column-area = ማሳ፣ ካሬ ሜትር
column-cuttings = ቁራጭ
column-cut = ቁራጭ
cut-value = { $low }–{ $high }
column-plants = ምልክት የሚደረግበት ተክል
column-roots = የሚቀመጥ ስኳር ድንች
column-bed = መደብ፣ ካሬ ሜትር
column-jerrycans = ውሃ በቀን፣ በጀሪካን
column-water = ውሃ በጠቅላላ፣ ሊትር
column-trips = ወደ ውሃ ምልልስ
column-from = ከዚህ ቀን ጀምሮ የመጀመሪያው ዝናብ
column-false-starts = ሐሰተኛ ጅምር የነበረባቸው ዓመታት
column-days-left = ዝናቡ እስኪያበቃ የሚቀሩ ቀኖች፣ በግማሾቹ ዓመታት
false-starts-value = ከ{ $years } ዓመት { $false_starts }

## Cautions: title, text (.text), the same in a few words (.short), picture in words (.alt); text message (.sms) where there is one

caution-rot = የተበላሸ ስኳር ድንች፣ ደህና የሚመስለው ክፍልም፣ ሊመርዝ ይችላል
    .short = { -bad-roots-short }
    .text = { -bad-roots } ደህናውን ክፍል ለማትረፍ ብለው አይቁረጡት፣ አይላጡት፣ አያብስሉትም። ደህና የሚመስለው ክፍል እንኳ መርዝ ሊኖረው ይችላል። ከተጠራጠሩ እንደ ተበላሸ ይቁጠሩት።
    .alt = የበሰበሰ ስኳር ድንች፤ ከሥሩ የክልክል ምልክት ያለባቸው ላምና የማብሰያ ማሰሮ።
    .sms = { -bad-roots-sms }
caution-virus = የታመሙ ተክሎች
    .short = ቅጠሉ ትንሽ፣ የተጠቀለለ ወይም ነጠብጣብ ያለበት፣ ሐረጉም የቀጨጨ ከሆነ፦ { -take-nothing-short }
    .text = በስኳር ድንች ተክል ላይ ትንሽ፣ የተጠቀለለ ወይም ነጠብጣብ ያለበት ቅጠል የበሽታ ምልክት ነው። የቀጨጨ ሐረግም እንዲሁ የበሽታ ምልክት ነው። { -take-nothing }
    .alt = ቅጠሉ ነጠብጣብ ባለበትና በተጨማደደ ተክል አጠገብ ቢላዋ የያዘ እጅ፣ የክልክል ምልክት ያለበት።
caution-cracks = የአፈር ስንጥቅ
    .short = ነቀዝ በስንጥቅ ይገባል። ስንጥቁን አፈር ቆልለው ይሸፍኑ።
    .text = ነቀዝ በአፈር ስንጥቅ በኩል ወደ ስኳር ድንቹ ይደርሳል። ስንጥቅ ሲያዩ አፈር ቆልለው ይሸፍኑት።
    .alt = ነቀዝ በተረተሩ ስንጥቅ ሲገባ፤ ከሥሩ ብዙ ቀዳዳ ያለበት ስኳር ድንች።
caution-heavy-sand = አሸዋ ከባድ ነው
    .short = ቢበዛ { MEASURE($load_kg, unit: "kilogram") } ይሸከሙ። የሞላውን ዕቃ በፍጹም አያንሱ።
    .text = በአንድ ጊዜ ከ{ MEASURE($load_kg, unit: "kilogram") } በላይ አይሸከሙ። የስኳር ድንቹን ማስቀመጫ ዕቃ በሚቆይበት ቦታ አስቀምጠው ይሙሉት። ከሞላ በኋላ በፍጹም አያንሱት።
    .alt = ከትልቅ ከረጢት ሥር የጎበጠ ሰው፣ የክልክል ምልክት ያለበት፤ ትንሽ ባልዲ ይዛ ቀጥ ብላ የቆመች ሴት፣ የትክክል ምልክት ያለባት።
caution-riverbed = ከወንዝ የሚወሰድ አሸዋ
    .short = ደንቡ በሚፈቅድበት ብቻ። { -dry-riverbed-short }
    .text = { -dry-riverbed }
    .alt = ገደላማ የወንዝ ዳር በሚቆፍር ሰው ላይ ሲናድ፣ የክልክል ምልክት ያለበት።
caution-water-children = ውሃ፣ ልጆችና እንስሳት
    .short = { -children-water-short } የውሃና ሌሎች ጉድጓዶችን፣ መደቡንም በአጥር ይከልሉ።
    .text = { -children-water } የውሃ ጉድጓድንና ሌላ ጉድጓድን በአጥር ይከልሉ። ፍየልና ዶሮ ወደ መደቡ አያስገቡ።
    .alt = ከአጥር ጀርባ የተከደነ የውሃ በርሜል፤ እናት ልጇን ከአጥሩ ውጭ ይዛ።
caution-store-dry = የተቀመጠውን በፍጹም ውሃ አያጠጡ
    .short = { -keep-dry-short } እርጥብ አሸዋ ስኳር ድንቹን ያበሰብሳል።
    .text = የተቀመጠው ስኳር ድንች ያለበት አሸዋ ከመጀመሪያው ቀን እስከ መጨረሻው ቀን ደረቅ መሆን አለበት። { -keep-dry }
    .alt = ከጀሪካን ውሃ ስኳር ድንች ባለበት ሳፋ ላይ ሲፈስ፣ የክልክል ምልክት ያለበት።
# doubt: "አማካይ" for an average; "ትንበያ" for a forecast.
caution-forecast = ቀኖቹ አማካይ እንጂ ትንበያ አይደሉም
    .short = ዘንድሮ ዝናቡ ሊቀድም ወይም ሊዘገይ ይችላል። { -moist-soil-short }
    .text = እነዚህ ቀኖች ካለፉት ዓመታት የተገኙ ናቸው እንጂ ትንበያ አይደሉም። ዘንድሮ ዝናቡ ሊቀድም ወይም ሊዘገይ ይችላል። ሰማዩንና አፈሩን ይመልከቱ። { -moist-soil }
    .alt = የሐረግ ቁራጮች የያዘች ሴት ወደ ፀሐይ፣ ደመናና ዝናብ ቀና ብላ ስታይ።
caution-try-first = መጀመሪያ በጥቂት ስኳር ድንች ይሞክሩ
    .short = ለእርስዎ አዲስ ነው? በጥቂት ስኳር ድንች ይጀምሩ፤ ከሐረግዎም የተወሰነውን በለመዱት መንገድ ያቆዩ።
    .text = ይህ ለእርስዎ አዲስ ከሆነ በጥቂት ስኳር ድንች ይጀምሩ። ከሐረግዎም የተወሰነውን በለመዱት መንገድ ያቆዩ።
    .alt = ጥቂት ስኳር ድንቾች ባሉበት ትንሽ ማሰሮና በአፈር ውስጥ ማደጉን በሚቀጥል ተክል መካከል የቆመች ሴት።

## Drawings and formats: titles, what drawings show in words, the names and sizes that stand in them

# The calendar goes by Ethiopian months.
month-year = { ethiopic-month } { $ethiopic_year }
calendar-title = በየወሩ የሚሠራው
guide-title = የስብሰባ መመሪያ
# doubt: "የተቆራረጠ መስመር" for a broken (dashed) line, "እጥፍ ያድርጉ" for to fold.
card-fold = በተቆራረጡት መስመሮች ላይ እጥፍ ያድርጉ። ወፍራሙን መስመር ተከትለው ይቁረጡ።
record-title = የተቀመጠው ስኳር ድንች ፍተሻ
record-how = በእያንዳንዱ ፍተሻ ሁሉንም ያውጡ። የበሰበሰውን፣ የሻገተውን ወይም በነፍሳት የተበሳውን በጥልቀት ይቅበሩ ወይም ያቃጥሉ። ያገኙትን ይጻፉ፤ ይህን ካርድ ለግብርና ባለሙያዎ ያሳዩ።
record-planned = የታቀደበት ቀን
record-done = የተሠራበት ቀን
record-healthy = ተመልሶ የተደረደረ
record-thrown-away = የተወገደ
record-sprouted = ቡቃያ ያለው
record-remark = ማስታወሻ
record-stored = የተቀመጠ ስኳር ድንች
booklet-index = እርሻዎች በስም
span-brief = { BRIEF($from) } – { BRIEF($to) }
size-cm = { MEASURE($cm, unit: "centimetre") }
size-m = { MEASURE($m, unit: "metre") }
drawing-season = ወቅቱ
drawing-season-alt = ከአንድ ምርት እስከ ቀጣዩ ምርት የሚሄድ መስመር፦ ስኳር ድንች በአሸዋ፣ ከዚያ በመደብ፣ ከዚያ ተክል በማሳ፣ እያንዳንዱ ከነቀኖቹ።
season-store = በአሸዋ ውስጥ
season-bed = በመደብ
season-field = በማሳ
season-on-harvest = ምርት መሰብሰብ
season-on-sprout = ወደ መደብ
season-on-rains = ዝናብ
season-on-food = የመጀመሪያው ስኳር ድንች
drawing-store = ዕቃው ከውስጥ
drawing-store-alt = የተቆረጠ ዕቃ፦ የስኳር ድንች ንጣፎች፣ ከሥራቸው፣ በመካከላቸውና ከላያቸው አሸዋ።
drawing-layers = እያንዳንዱ ንጣፍ ከላይ ሲታይ
drawing-layers-alt = ንጣፎቹ ከላይ ሲታዩ፦ የእያንዳንዱ ስኳር ድንች ቦታ፤ እርስ በርስም ሆነ ከዕቃው ጎን ጋር አይነካኩም።
drawing-bed = መደቡ ከላይ ሲታይ
drawing-bed-alt = መደቡ ከላይ ሲታይ፦ የስኳር ድንች ረድፎች፣ ርዝመቱና ስፋቱ።
drawing-rows = ማሳው ከላይ ሲታይ
drawing-rows-alt = የማሳው ክፍል ከላይ ሲታይ፦ የረድፎች ርቀትና የተተከሉ ቁራጮች።
## Words of the recording script

script-title = የሚቀዱ ቃላት
script-new-voice = አዲስ ድምፅ
script-lines = የሚነበቡ መስመሮች
script-time = ጊዜ፣ በቃላቱ ርዝመት ሲገመት
script-time-measured = ጊዜ፣ በዚህ ድምፅ ፍጥነት
script-minutes = { $minutes } ደቂቃ ያህል
script-ready = አሁን የተሟሉ መልእክቶች
script-how = ከመጀመርዎ በፊት
script-how-room = ጸጥ ያለና ጨርቅ ያለበት ክፍል ይፈልጉ፦ መጋረጃ፣ አልጋ፣ ልብስ። መስኮቶችን ይዝጉ፤ ማራገቢያ፣ ማቀዝቀዣና የሚጮህ ስልክ ያጥፉ።
script-how-distance = አፍዎ ከማይክሮፎኑ ወይም ከስልኩ አንድ መዳፍ ከነጣቶቹ ያህል ርቆ፣ ትንሽ ወደ ጎን ይሁን። ይህን ርቀት እስከ መጨረሻው አይለውጡ።
script-how-tone = መቅዳት ይጀምሩና ለአምስት ሰከንድ ፍጹም ጸጥ ይበሉ፤ የክፍሉም ድምፅ ያስፈልጋል።
script-how-pause = ከእያንዳንዱ መስመር በፊት አንድ ሰከንድ፣ ከእሱም በኋላ አንድ ሰከንድ ዝም ይበሉ።
script-how-order = መስመሮቹን በቅደም ተከተላቸው ያንብቡ፤ ባነበቡት ሁሉ ላይ ምልክት ያድርጉ። ቁጥራቸውን አይናገሩ።
script-how-slip = ከተሳሳቱ ትንሽ ዝም ብለው መስመሩን በሙሉ እንደገና ይናገሩ። መቅዳቱን አያቁሙ።
# doubt: "በደማቅ" for bold type, "ዜማ" for the melody of a sentence.
script-how-grey = በደማቅ የተጻፉትን ቃላት ብቻ ጮክ ብለው ይናገሩ። በዙሪያቸው ያሉትን ግራጫ ቃላት በልብዎ ያንብቡ፤ ለድምፅዎ የዓረፍተ ነገሩን ዜማ ይሰጡታል።
script-how-brackets = በ[ ] ውስጥ ያሉትን ቃላት ብቻ ጮክ ብለው ይናገሩ። ሌሎቹን በልብዎ ያንብቡ፤ ለድምፅዎ የዓረፍተ ነገሩን ዜማ ይሰጡታል።
script-how-medial = “{ script-medial }” የሚል ባለበት ድምፅዎን ዝቅ አያድርጉ፤ ዓረፍተ ነገሩ ይቀጥላል።
script-how-final = “{ script-final }” የሚል ባለበት እንደ ዓረፍተ ነገር መጨረሻ ድምፅዎን ዝቅ ያድርጉ።
script-medial = ይቀጥላል
script-final = ያበቃል
script-part = ክፍል { $part }
script-part-lines = ከመስመር { $first_line } እስከ { $last_line }
script-rest = ለሌሎች እርሻዎችና ቀኖች
script-opening = የእያንዳንዱ መልእክት መጀመሪያ
script-closing = የእያንዳንዱ መልእክት መጨረሻ
script-sentences = ሙሉ ዓረፍተ ነገሮች
script-parts = የዓረፍተ ነገር ክፍሎች
script-numbers = ቁጥሮች፣ ዓይነት { $form }
script-dates = የቀን ክፍሎች
script-months = ወሮች
script-units = መለኪያዎች
script-unlocks = የሚያስፈልጋቸው መልእክቶች
script-complete = በዚህ መስመር የሚሟሉ
# doubt: "ቅጂ" for a recording; it is also a copy.
script-stale = የድሮው ቅጂ የሚለው
script-other-ending = ቅጂ አለ፤ ግን የድምፁ አጨራረስ ሌላ ነው።
script-recorded = አስቀድሞ ተቀድቷል።
script-unsaid = እንዲህ የሚለው የታወቀ ዓረፍተ ነገር የለም፤ ሊታለፍ ይችላል።
script-nothing = የሚቀዳ ነገር አልቀረም።
## The check of recordings

clips-title = የተመረመሩ ቅጂዎች
# doubt: "ቃና" for the tones of a voice in its picture.
clips-intro = እንደገና መቀዳት ያለባቸው መጀመሪያ ላይ ናቸው። እያንዳንዱ ሥዕል ድምፁን ከግራ ወደ ቀኝ ያሳያል፦ ከላይ የድምፁ ኃይል፣ ከታች የድምፁ ቃናዎች፤ ቃናው ኃይለኛ የሆነበት ጠቆር ይላል።
clips-again = እንደገና ይቀዳ
clips-usable = ይሠራል
clips-good = ጥሩ
clips-unused = ከእንግዲህ አያስፈልግም
clips-missing = ገና ያልተቀዳ
clips-picture = የቅጂው ሥዕል “{ $words }”
clips-length = ርዝመት
clips-level = የድምፅ ኃይል
clips-noise = ድምፁ ከጫጫታው በላይ
# doubt: "እምምታ" for an electric hum.
clips-hum = ድምፁ ከእምምታው በላይ
clips-pace = ፍጥነት፣ ከተለመደው ጋር ሲነጻጸር
# doubt: "ይሻክራል" for sounding harsh.
clip-clipped = ድምፁ ለማይክሮፎኑ በጣም ኃይለኛ ነው፣ ይሻክራል። ማይክሮፎኑን አርቀው ይያዙ ወይም ይቀንሱት።
clip-cut-start = የመጀመሪያው ድምፅ ተቆርጧል። መቅዳት ይጀምሩ፣ ይተንፍሱ፣ ከዚያ ይናገሩ።
clip-cut-end = የመጨረሻው ድምፅ ተቆርጧል። መቅዳቱን ከማቆምዎ በፊት ይተንፍሱ።
clip-noise = ከድምፁ በስተጀርባ ጫጫታ አለ። ጸጥ ያለ ቦታ ይፈልጉ፣ ማይክሮፎኑን ያቅርቡ።
clip-hum = የኤሌክትሪክ እምምታ ይሰማል። ቻርጀሩን ይንቀሉ፣ ከሽቦና ከማሽን ይራቁ።
clip-room = ክፍሉ ያስተጋባል። ጨርቅ፣ ምንጣፍ ወይም ፍራሽ ባለበት ትንሽ ክፍል ይቅዱ፣ ማይክሮፎኑን ያቅርቡ።
clip-quiet = ድምፁ ከሌሎቹ ቅጂዎች ዝቅ ያለ ነው። ሁልጊዜ ከማይክሮፎኑ እኩል ርቀት ይጠብቁ።
clip-loud = ድምፁ ከሌሎቹ ቅጂዎች ከፍ ያለ ነው። ሁልጊዜ ከማይክሮፎኑ እኩል ርቀት ይጠብቁ።
clip-fast = ከሌሎቹ ቅጂዎች ይልቅ በፍጥነት ተነግሯል። በተለመደው ፍጥነትዎ ይናገሩ።
clip-slow = ከሌሎቹ ቅጂዎች ይልቅ በዝግታ ተነግሯል። በተለመደው ፍጥነትዎ ይናገሩ።
# doubt: "አንሸራቶታል" (has made it slide) for sound that the recorder has shifted.
clip-offset = መቅጃው የድምፁን ሞገድ ትንሽ አንሸራቶታል። ምንም ማድረግ አያስፈልግም፤ በራሱ ይስተካከላል።
clip-broken = ቅጂው አይከፈትም። እንደገና ይቅዱት።
clip-stale = ቃላቱ ተቀይረዋል። አሁን እንዲህ ብለው ይቅዱ፦ “{ $words }”
clip-unused = እነዚህን ቃላት የሚጠቀም መልእክት የለም።
## Radio segments: script for the presenter, plan of the season

# doubt: "ዝግጅት" for a segment; "ክፍል" would do as well.
segment-title = የሬዲዮ ዝግጅት
segment-season = የወቅቱ የሬዲዮ ዝግጅቶች
segment-week = ሳምንት
segment-topics = የሚነገረው
segment-nothing = በዚህ ሳምንት የሚነገር የለም
segment-due = በዚህ ሳምንት
segment-past = አሁንም ያስታውሱ
segment-soon = በቅርቡ
segment-opening = የመክፈቻ ዜማ
segment-closing = የመዝጊያ ዜማ
segment-bed = ከድምፁ ሥር ያለ ሙዚቃ
# doubt: "ዲቢ" for dB.
segment-bed-value = ከድምፁ በ{ $decibels } ዲቢ ዝቅ ያለ
segment-said = የሚሰማው
segment-read-before = ከእሱ በፊት በቀጥታ ይነበብ
segment-read-after = ከእሱ በኋላ በቀጥታ ይነበብ
# doubt: the prefix በ joins the place's name as it stands; and whether a presenter would rather say the plural (እናንተ) to all listeners.
segment-intro = በ{ $place } ስኳር ድንች ለሚያመርቱ ሁሉ ጤና ይስጥልን። አሁን ከ{ DAY($first) } እስከ { DAY($last) } የሚሠሩ ሥራዎችን ያዳምጡ።
segment-outro = ከ{ DAY($first) } እስከ { DAY($last) } የሚሠሩ ሥራዎች እነዚህ ነበሩ። ያልገባዎት ነገር ካለ የግብርና ባለሙያዎን ይጠይቁ።
segment-reading-time = የማንበቢያ ጊዜ፣ ግምት
segment-read-live = ጮክ ብሎ ይነበብ። ጊዜው በሰከንድ { $rate } ክፍለ ቃል ተብሎ ተገምቷል።
segment-pauses = አንድ ጭረት (/) አጭር ማረፊያ ነው፣ ሁለት ጭረት (//) ረዘም ያለ ማረፊያ ነው። በክፍሎች መካከል ከዚያም ትንሽ በላይ ይቆዩ።
segment-no-sound = ድምፅ አልተሠራም፦ አንዳንድ ቃላት አልተቀዱም። ከታች ተዘርዝረዋል።
segment-no-voice = ድምፅ አልተሠራም፦ ይህ ቋንቋ ገና የተቀዳ ድምፅ የለውም።
segment-left-out = ጊዜ ያልበቃው
segment-missing = ያልተቀዱ ቃላት
## Questions for a meeting, as they are spoken

ask-mark-plants = በማሳዎ ላይ በጣም ጠንካራ የሆኑት የስኳር ድንች ተክሎች የትኞቹ ናቸው?
ask-gather-sand = በአቅራቢያ ሻካራ አሸዋ የት አለ? አደጋ ሳይደርስብን እንዴት እንቆፍረዋለን?
ask-check-plants = በዚህ አካባቢ የታመመ የስኳር ድንች ተክል ምን ይመስላል?
ask-cut-vines = የስኳር ድንቹ ልጣጭ እስኪጠነክር ጊዜ የሚያስፈልገው ለምንድን ነው?
ask-harvest = ዶማው ስኳር ድንቹን እንዳይቆርጠው እንዴት ይቆፍራሉ?
ask-fill-container = በቤትዎ ከልጆችና ከእንስሳት የራቀ፣ ቀዝቃዛና ደረቅ ቦታ የት ነው?
ask-monthly-check = የተበላሸ ስኳር ድንች ምን ይመስላል? የት ይቀብሩታል?
ask-prepare-bed = በአቅራቢያ ውሃ የት አለ? ልጆችን ከአደጋ ማን ይጠብቃል?
ask-last-check = ከስኳር ድንችዎ ስንቱ ቡቃያ አውጥቷል?
ask-plant-bed = በመደቡ ላይ በጊዜው እንዳይተክሉ ምን ሊያግድዎት ይችላል?
ask-water-bed = እርስዎ በማይኖሩበት ጊዜ ውሃ ማን ያጠጣል?
ask-cut-for-planting = በቂ ዝናብ መዝነቡን እንዴት ያውቃሉ?
ask-plant-field = ከማሳው የትኛውን ክፍል መጀመሪያ ይተክላሉ?
ask-first-harvest = ለሚቀጥለው ወቅት የትኛውን ሐረግ ያቆያሉ?

## Channels: cue sheets for phones and meetings

# doubt: the term for active speech level, a figure for sound technicians.
cue-active-level = የንግግር ድምፅ መጠን
cue-chapter = ክፍል
cue-talk = የውይይት ጊዜ፣ { $seconds } ሰከንድ

## The guide for a meeting

# doubt: "የሚያሳዩት" as a heading, short as it is.
guide-show = የሚያሳዩት
guide-ask = ይጠይቁ

## Tips: what is good to know beside a step

advice-roots-not-chosen = ትንሽና የተጣመመ ስኳር ድንች፣ እንዲሁም በዶማ የተቆረጠ ስኳር ድንች ምግብ ነው። ስለማይቆይ የተቆረጠውን በቅድሚያ፣ ሌላውንም ቶሎ ይብሉት ወይም ይሽጡት። { -bad-roots }
advice-storage-place = ማስቀመጫ ዕቃዎቹን ቀዝቃዛ፣ ደረቅ፣ ጥላና ነፋሻ በሆነ፣ ዝናብ በማይገባበት ክፍል ያስቀምጡ። ልጆች፣ አይጥ፣ ዶሮና ፍየል እንዳይደርሱባቸው ያድርጉ።
advice-clean-vines = በመጀመሪያ ከሐረጉ ጫፍ ይቁረጡ፤ ምክንያቱም ጫፉ ላይ ያለው ነቀዝ ያነሰ ነው። በግንዱ ግርጌ ቀዳዳ ወይም የበሽታ ምልክት ካለበት ተክል ሐረግ አይውሰዱ።
advice-clean-field = ከቀድሞ የስኳር ድንች ማሳ ቢያንስ { $metres } ሜትር ርቀው ይትከሉ፤ ምክንያቱም ነቀዝ ከዚያ ይመጣል። የቀድሞ ሐረግና ስኳር ድንች ያስወግዱ። በአንድ ቦታ ላይ በ{ $years } ዓመት አንድ ጊዜ ብቻ እንዲተከል ብዙዎች ይመክራሉ።
advice-deep-planting = የሐረግ ቁራጮቹን በ{ $deep_cm } ሳ.ሜ ያህል ጥልቀት ይትከሉ። በአንድ ሙከራ፣ በ{ $shallow_cm } ሳ.ሜ ጥልቀት ከተተከሉት ይልቅ በዚህ ጥልቀት የተተከሉት የተሻሉ ነበሩ።
advice-dry-after-planting = የመጀመሪያው ዝናብ ሊቆም ይችላል። ከተከላ በኋላ አንድ ሳምንት ሳይዘንብ ቢቆይ ከ100 ቁራጭ ከ{ $week_least } እስከ { $week_most } ያህሉ ይተርፋል። ሁለት ሳምንት ቢቆይ ከ{ $fortnight_least } እስከ { $fortnight_most } ያህሉ ይተርፋል። ተክሉ ማሳው ላይ እስኪይዝ ድረስ መደቡን ውሃ ያጠጡ፤ የተወሰነ ሐረግ በመጠባበቂያ ያቆዩ፤ ቁራጭ በሞተበት ቦታ እንደገና ይትከሉ።
advice-feed-and-weed = ከመትከልዎ በፊት በደንብ የበሰበሰ ፍግ ወይም ኮምፖስት ከተረተሩ አፈር ጋር ይቀላቅሉ። ያልበሰበሰ ወይም ብዙ ፍግ ቅጠል ያበዛል፤ ስኳር ድንቹን ግን ያሳንሳል። ሐረጉ መሬቱን እስኪሸፍን አረም ይንቀሉ።
# doubt: "ቫይታሚን ኤ" for vitamin A.
advice-children = ትንንሽ ልጆች ብርቱካናማ ስኳር ድንች ቶሎ ቶሎ እንዲበሉ ያድርጉ። በአንድ ሙከራ፣ ለ{ $days } ቀን በየቀኑ { $serving_g } ግራም የበሉ ልጆች በሰውነታቸው የተሻለ የቫይታሚን ኤ ክምችት ነበራቸው። ነጣ ባለው ስኳር ድንች ውስጥ ያለው ቫይታሚን ኤ በጣም ያነሰ ነው፤ ለአንድ ልጅ ይህን ያህል ተስፋ መስጠት የሚችል ወረቀት የለም።

## What the plan leads to, as farmers read it

remark-containers-too-small =
    .text = ዕቃው { $fit } እንጂ { $roots } ስኳር ድንች አይይዝም። አጭቀው አያስገቡ፤ ሲነካካ ይበሰብሳል። በዚህ ከ{ $field_m2 } ካሬ ሜትር { $area_m2 } ያህሉ ይተከላል። { $more ->
        [0] ሌላ ዕቃ ይፈልጉ ወይም ጠበብ ባለ ማሳ ይትከሉ።
        [1] አንድ ተጨማሪ ዕቃ ይፈልጉ ወይም ጠበብ ባለ ማሳ ይትከሉ።
       *[other] { $more } ተጨማሪ ዕቃ ይፈልጉ ወይም ጠበብ ባለ ማሳ ይትከሉ።
     }
remark-sand-short =
    .text = አሸዋዎ { $fit } እንጂ { $roots } ስኳር ድንች አይሸፍንም። አሸዋ የማይሸፍነውን አያስቀምጡ። በዚህ ከ{ $field_m2 } ካሬ ሜትር { $area_m2 } ያህሉ ይተከላል። ተጨማሪ { MEASURE($more_l, unit: "litre") } አሸዋ ያምጡ ወይም ጠበብ ባለ ማሳ ይትከሉ።
remark-water-limits =
    .text = ውሃዎ ለ{ $fit } እንጂ ለ{ $roots } ስኳር ድንች መደብ አይበቃም። መደቡ ከ{ $fit } አይብለጥ፤ እርጥበቱን ይጠብቁ። በዚህ ከ{ $field_m2 } ካሬ ሜትር { $area_m2 } ያህሉ ይተከላል። ለሙሉው { $per ->
        [all] በድምሩ
       *[day] በቀን
     } ተጨማሪ { MEASURE($more_l, unit: "litre") } ይፈልጉ።
remark-hands-short =
    .text = የሚሸከሙት ውሃ ለ{ $fit } እንጂ ለ{ $roots } ስኳር ድንች አይበቃም። መደቡ ከ{ $fit } አይብለጥ፤ እርጥበት ይጠብቁ። በዚህ ከ{ $field_m2 } ካሬ ሜትር { $area_m2 } ያህሉ ይተከላል። ለሙሉው ሸካሚ ያክሉ ወይም መደቡ ለውሃ ይቅረብ።
remark-water-heavy =
    .text = ደረቅ በሆኑ ቀኖች ለስኳር ድንቹ መደብ በቀን { $trips } ጊዜ ወደ ውሃ መመላለስ ያስፈልጋል። ውሃ መሸከሙም በቀን { $hours } ሰዓት ያህል ይወስዳል። ማን እንደሚሸከም ከአሁኑ ያቅዱ፣ ወይም አነስ ያለ መደብ ይሥሩ።
remark-limited-at-hand =
    .text = { $limit ->
        [roots] የሚያስቀምጡት { $roots } ስኳር ድንች አለዎት።
        [plants] ተክሎችዎ { $roots } ያህል የሚቀመጥ ስኳር ድንች ይሰጣሉ።
       *[bed] መደቡ { $roots } ስኳር ድንች ይይዛል።
     } ለማሳው በሙሉ { $wanted } ያስፈልጋል። በዚህ ከ{ $field_m2 } ካሬ ሜትር { $area_m2 } ያህሉ ይተከላል። ጠበብ ባለ ማሳ ይትከሉ ወይም ጎረቤቶችን ሐረግ ይጠይቁ።
remark-field-waits =
    .text = የስኳር ድንች የመጀመሪያ ቆረጣ ከ{ $field_m2 } ካሬ ሜትር ማሳ { $area_m2 } ያህሉን ለመትከል ይበቃል። ቀሪውን የኋለኞቹ ቆረጣዎች ይሸፍኑታል፤ እያንዳንዳቸው ከ{ $least_days } እስከ { $most_days } ቀን ቆይተው ይደርሳሉ።
remark-rains-too-soon =
    .text = ዝናቡ { BRIEF($rains) } ገደማ ሊጀምር ይችላል፤ ስኳር ድንች ለማስቀመጥ ጊዜው በጣም አጭር ነው። ከአሁኑ ማሳ ሐረግ ወስደው ይትከሉ፣ ወይም ስኳር ድንቹን አሁኑኑ መደቡ ላይ ይትከሉ።
remark-storing-not-needed =
    .text = በአብዛኛው ደረቁ ጊዜ { $days } ቀን ያህል ነው። የስኳር ድንች ሐረግ ይህን ያህል ስለሚቆይ ስኳር ድንቹን ማስቀመጥ አያስፈልግም። ከማሳው ከፊሉን አይቆፍሩ፣ ወይም ሐረግ በትንሽ ቦታ እያጠጡ ያቆዩ።
remark-rains-too-short =
    .text = እዚህ የዝናቡ ጊዜ ለስኳር ድንች አጭር ነው። { $known ->
        [case] የሚተክሉት ዝናቡ ከማብቃቱ በፊት ላይደርስ ይችላል።
        [open] ዝናቡ ከማብቃቱ በፊት ስንት ጊዜ እንደሚደርስ የሚያውቅ የለም።
       *[record] ከ100 ዓመታት ውስጥ ዝናቡ ሳያበቃ የሚደርስባቸው { $of_100 } ብቻ ናቸው።
     } { $helps ->
        [on-time] አፈሩ በዝናብ በደንብ እንደራሰ መትከል እንዲችሉ መደቡን ቀደም ብለው ይሥሩ።
        [quicker] አፈሩ በዝናብ በደንብ እንደራሰ ይትከሉ፤ ቶሎ የሚደርስ ዝርያም ይፈልጉ።
       *[neither] አፈሩ በዝናብ በደንብ እንደራሰ ይትከሉ፤ ስኳር ድንቹ ግን ትንንሽና ጥቂት እንደሚሆን ይወቁ።
     }
remark-cuts-too-late =
    .text = በኋለኛ ቆረጣ ከ{ BRIEF($from) } ጀምሮ የሚተከል ስኳር ድንች የሚደርሰው { BRIEF($ripe) } ገደማ ነው። በአብዛኛው ዝናቡ ቀድሞ ያበቃል። ለእሱ ብለው ማሳ ባዶ አይተዉ። ሐረጉን ለመኖ ያውሉት ወይም ውሃ ባለበት ያሳድጉት።
remark-bed-late =
    .text = የስኳር ድንቹ መደብ የመጀመሪያዎቹን ቁራጮች የሚሰጠው ዝናቡ ከጀመረ በኋላ፣ { BRIEF($cut) } ገደማ ነው። አፈሩ በዝናብ በደንብ ሲርስ ያለዎትን ሐረግ ይትከሉ። የቀረውን ማሳ በኋላ ከመደቡ ይሞሉታል።
remark-long-in-sand =
    .text = ስኳር ድንችዎ { $days } ቀን በአሸዋ ውስጥ መቆየት አለበት። ይህን ያህል ጊዜ ቆይቶ ምን ያህሉ እንደሚተርፍ የቆጠረ የለም። ውሃ አጠገብ የተወሰነ ሐረግም ያሳድጉ፤ የግብርና ባለሙያዎንም ይጠይቁ።
remark-late-work =
    .text = የስኳር ድንች ሥራው በከፊል ስለዘገየ ቀኖቹ እንደገና ተቆጥረዋል። አሁን ሊሠራ የሚችለውን ወዲያውኑ ይሥሩ። ማሳው ላይ ከ{ BRIEF($field_from) } ጀምሮ መትከል ይቻላል።{ $fewer ->
        [0] {""}
       *[other] {" "}በመጀመሪያው ቆረጣ { $fewer } ያህል ሐረግ ይጎድላል።
     }
remark-fast-loss =
    .text = { BRIEF($day) }፦ ከ{ $roots } ስኳር ድንች ደህናው { $healthy } ብቻ ነው። { $next ->
        [bed] ደህናዎቹን አሁኑኑ መደቡ ላይ ይትከሉ፤ ተጨማሪ ሐረግም ይፈልጉ።
       *[check] እርጥብ/ሙቅ አሸዋ፣ መቆረጥ፣ መነካካት፣ ነቀዝ? በደረቅ አሸዋ ይተኩ። ከ2 ሳምንት በኋላ ይዩ፤ ብዙ ከበሰበሰ ደህናውን መደብ ላይ ተክለው ያጠጡ።
     }
remark-cuttings-short =
    .text = በመጀመሪያው ቆረጣ { $short } ያህል የስኳር ድንች ሐረግ ይጎድላል። አፈሩ በዝናብ በደንብ ሲርስ ከ{ $field_m2 } ካሬ ሜትር { $area_m2 } ያህሉን ይትከሉ። { $later_cuts ->
        [0] የኋለኛው ቆረጣ አይደርስም፤ ጎረቤቶችን በጊዜ ሐረግ ይጠይቁ።
       *[other] የኋለኞቹ ቆረጣዎች ይጨምራሉ። ጎረቤቶችንም በጊዜ ሐረግ ይጠይቁ።
     }
remark-water-short =
    .text = ከ{ BRIEF($from) } ጀምሮ ለስኳር ድንቹ መደብ ውሃ ሊያንስ ይችላል። ተጨማሪ ውሃ ይፈልጉ። አፈሩን በደረቅ ሣር መሸፈንና ጥላ ውሃ ይቆጥባሉ። እነዚህ ከሌሉ አነስ ያለ መደብ ይሥሩ፤ ጠበብ ባለ ማሳ ይትከሉ።
remark-rains-may-be-late =
    .text = ዝናቡ እስከ { BRIEF($late) } ሊዘገይ ይችላል። እስኪመጣ ድረስ የስኳር ድንቹን መደብ ውሃ ያጠጡ። { -moist-soil }
remark-years-without-rains =
    .text = ካለፉት { $judged } ዓመታት በ{ $count } ዝናቡ በደንብ አልጀመረም። በእንዲህ ያለ ዓመት በመጀመሪያ ዝናብ የተተከለ የስኳር ድንች ሐረግ ሊሞት ይችላል። ጥቂት ስኳር ድንች ያስቀሩ ወይም የመደቡን ክፍል ማጠጣት ይቀጥሉ።
