### አማርኛ፣ ረቂቅ፦ በወረቀት ላይ የሚታተሙ ቃላት። ቋንቋውን በደንብ የሚያውቅ ሰው ገና አላነበባቸውም።
### Draft, as printed on sheets. Address: the polite form (እርስዎ: ይምረጡ, ይቁረጡ, አይብሉ), which is the same for a woman and
### a man, and serves a group as well. The numeral stands before its noun, and the noun stays in the singular.
### Nouns: ስኳር ድንች (sweet potato: the root, and the crop), ተክል (plant), ሐረግ (vine), ቁራጭ (cutting), ቡቃያ (sprout, shoot),
### አንጓ (node), ግንድ (stem), ጉቶ (stub), ንጣፍ (layer), ዕቃ (container), ሸክም (load), እስር (bundle), መደብ (seedbed),
### ማሳ (field), ተረተር (ridge), ቁልል (mound), ነቀዝ (weevil). Spelling keeps the letters of older use (ፀሐይ, ኅዳር, ሠንጠረዥ).

## Words of the sheet itself

# doubt: "ምርት" (produce) for the harvest; some would say "አዝመራ".
sheet-title = ስኳር ድንች፦ ከዚህ ምርት እስከ ቀጣዩ ዝናብ
sheet-for = ለማን
sheet-place = ቦታ
sheet-rains = ዝናብ የሚጠበቅበት ቀን
# doubt: "የአሁኑ ማሳ" (the field now standing) for the old field, which could sound abandoned.
sheet-harvest = የአሁኑ ማሳ የሚቆፈርበት ቀን
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
amount-layers = በአንድ ዕቃ ውስጥ የሚኖረው የስኳር ድንች ንጣፍ ብዛት
amount-roots-per-layer = { $layer_widths ->
    [uneven] በታችኛው ንጣፍ የሚደረደር ስኳር ድንች፣ ቢበዛ
   *[even] በእያንዳንዱ ንጣፍ የሚደረደር ስኳር ድንች፣ ቢበዛ
 }
amount-roots-top-layer = በላይኛው ንጣፍ የሚደረደር ስኳር ድንች፣ ቢበዛ
amount-bundles = የሐረግ ቁራጭ እስሮች
amount-lining = ዕቃዎቹን ከውስጥ የሚያለብስ ወረቀት
amount-water-total = ለመደቡ ከመጀመሪያ እስከ መጨረሻ የሚያስፈልግ ውሃ በጠቅላላ
amount-sand = ደረቅ አሸዋ
amount-loads = የአሸዋ ሸክም ብዛት
# doubt: "የችግኝ መደብ" (then "መደብ") for the bed where roots sprout.
amount-bed = የችግኝ መደብ
amount-strips = የችግኝ መደቡ ክፍሎች፣ በመካከላቸው የ{ MEASURE($path_m, unit: "metre") } መተላለፊያ
amount-water = ለመደቡ በየቀኑ የሚያስፈልግ ውሃ
amount-jerrycans = በየቀኑ የሚያስፈልግ ውሃ በጀሪካን

first-cuttings-value = { $first_cuttings_low } እስከ { $first_cuttings_high }{ $plan_by ->
    [practice] ፣ በተለመደው አሠራር
   *[print] ፣ በእድገት ቀናት ብዛት
 }
sand-value = { MEASURE($sand_l, unit: "litre") }፣ { MEASURE($sand_kg, unit: "kilogram") } ያህል
bed-value = { MEASURE($bed_length_m, unit: "metre") } × { MEASURE($bed_width_m, unit: "metre") }
strips-value = { $strips }፣ እያንዳንዱ { MEASURE($strip_length_m, unit: "metre") } × { MEASURE($strip_width_m, unit: "metre") }
water-value = { MEASURE($water_l, unit: "litre") }
water-total-value = { MEASURE($water_total_l, unit: "litre") }
bundles-value = { MEASURE($bundles, unit: "bundle") }፣ በእያንዳንዱ { $bundle_size } ቁራጭ
lining-value = { $lining_m2 } ካሬ ሜትር
roots-for-zone = { $roots } (ድፍን ቁጥር ነው፤ እንደ ማሳው ስፋት ያስተካክሉ)

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
span = ከ{ DAY($from) } እስከ { DAY($to) }
span-day = { WEEKDAY($from) }፣ { DAY($from) }
unit-kilogram = { $n } ኪሎ
unit-litre = { $n } ሊትር
unit-metre = { $n } ሜትር
# doubt: "ሳ.ሜ" as printed in farming handbooks; "ሳንቲ ሜትር" in full is plainer but makes text messages long.
unit-centimetre = { $n } ሳ.ሜ
# doubt: "መዳፍ ከነጣቱ" (the palm with its fingers) for a hand from the wrist to the fingertips (15 cm); "መዳፍ" alone is the palm,
# "እጅ" is also the arm, "ስንዝር" (a span) is longer.
unit-hand = { $n } መዳፍ ከነጣቱ
unit-thumb-joint = { $n } የአውራ ጣት አንጓ
unit-jerrycan = { $n } ጀሪካን
unit-bundle = { $n } እስር
# Counted from a local event of the case, such as a feast; $event is its name, $days how far.
event-before = ከ{ $event } { $days } ቀን በፊት
event-on = በ{ $event } ዕለት
event-after = ከ{ $event } { $days } ቀን በኋላ

## Opening and closing

opening = { $kind ->
    [zone] ይህ ዕቅድ ለአካባቢው አርሶ አደር ሁሉ ነው። መጠኑ የተሰላው ለ{ $roots } ስኳር ድንች ነው፤ እንደ ማሳዎ ስፋት ይጨምሩ ወይም ይቀንሱ።
   *[other] የዚህ ዕቅድ ቀኖች ዝናብ ከሚጠበቅበት ቀን ወደ ኋላ ተቆጥረው የወጡ ናቸው። ዝናቡ የሚጠበቀው { DAY($rains) } አካባቢ ነው።
 }
# doubt: "የግብርና ባለሙያ" for the extension worker; "የልማት ሠራተኛ" in many places. Polite "ያውቃሉ" fits either gender.
closing = የአካባቢዎን ዝርያዎች፣ ቀኖችና ደንቦች የግብርና ባለሙያዎ ያውቃሉ። ምክራቸው ከዚህ ወረቀት የሚለይ ከሆነ የእሳቸውን ምክር ይከተሉ።
    .sms = የግብርና ባለሙያዎ ምክር ይቀድማል።

## Steps: title, text (.text), picture in words (.alt), text message on a phone (.sms, 70 letters where it can be: Ethiopic letters leave no more in one message)

# doubt: "ትንሽ እንጨት" for the marking stick; "ችካል" is a peg and may be plainer.
mark-plants = በ{ $plants } ጤናማ ተክሎች ላይ ምልክት ያድርጉ
    .short = ጠንካራ ተክል፣ ትልቅና ንጹሕ ቅጠል፣ ያለ በሽታ። በእያንዳንዱ አጠገብ እንጨት ይትከሉ።
    .text = { $kind ->
        [group] በጋራ { $plants } ጠንካራ ተክሎችን ይምረጡ፤ እያንዳንዱ አባል በ{ $plants_each } ተክል ላይ ምልክት ያድርግ።
       *[other] { $plants } ጠንካራ ተክሎችን ይምረጡ።
     } በእያንዳንዱ ተክል አጠገብ ትንሽ እንጨት ይትከሉ። ቅጠላቸው ትልቅና ንጹሕ የሆነ፣ ምንም የበሽታ ምልክት የሌለባቸውን ብቻ ይምረጡ። ከእነዚህ ተክሎች { $roots } ያህል የሚቀመጥ ስኳር ድንች ያገኛሉ።
    .alt = እጅ በጠንካራ ተክል አጠገብ ትንሽ እንጨት ሲተክል።
    .show = ጤናማና የታመመ ሐረግ፣ እንዲሁም እንጨት።
    .ask = ጤናማውን ተክል ከታመመው እንዴት ይለያሉ?
    .sms = { BRIEF($first) }፦ ለዘር { $plants } ጤናማ ተክል ላይ በእንጨት ምልክት ያድርጉ። ቅጠሉ ትልቅና ንጹሕ፣ ያለ በሽታ ይሁን።
# doubt: "ሻካራ አሸዋ" for coarse sand and "ደቃቅ" for fine sand.
# doubt: "ከጣሪያ ሥር" (under a roof) for under cover.
gather-sand = ደረቅ አሸዋ ያምጡ
    .short = ሻካራና ንጹሕ፦ { MEASURE($sand_l, unit: "litre") }። ከጣሪያ ሥር ያድርቁት፤ ይቀዝቅዝ።
    .text = { MEASURE($sand_l, unit: "litre") } ሻካራና ንጹሕ አሸዋ ያምጡ፤ ክብደቱ { MEASURE($sand_kg, unit: "kilogram") } ያህል ነው። ከጣሪያ ሥር ያድርቁት፤ እስኪቀዘቅዝም ይተዉት። ደቃቅ፣ እርጥብ ወይም ሙቅ አሸዋ ስኳር ድንቹን ያበሰብሰዋል። በአንድ ጊዜ ከ{ MEASURE($load_kg, unit: "kilogram") } በላይ አይሸከሙ፤ ጠቅላላው { $loads } ሸክም ያህል ይሆናል።
    .alt = ከጣሪያ ሥር፣ ሳህን የያዘ እጅ ከደረቅ አሸዋ ክምር እየዛቀ ወደ ትንሽ ባልዲ ሲጨምር።
    .show = ሻካራና ደረቅ አሸዋ፣ እንዲሁም ደቃቅና እርጥብ አሸዋ።
    .ask = ሻካራ አሸዋ የት እናገኛለን? እዚያ መቆፈርስ አደጋ የለውም?
    .sms = እስከ { BRIEF($last) }፦ { MEASURE($sand_l, unit: "litre") } ሻካራ አሸዋ ያምጡ። ከጣሪያ ሥር ደርቆ ይቀዝቅዝ። አንድ ሸክም ቢበዛ { MEASURE($load_kg, unit: "kilogram") }።
# doubt: "የትክክል ምልክት" for a tick, in the words for pictures.
check-plants = ምልክት ያለባቸውን ተክሎች እንደገና ይመልከቱ
    .short = ቅጠሉ ትንሽ፣ የተጠቀለለ ወይም ነጠብጣብ ያለበት ነው? እንጨቱን ይንቀሉ፤ ምንም አይውሰዱ።
    .text = ቅጠሉ ትንሽ፣ የተጠቀለለ ወይም ነጠብጣብ ያለበት እንደሆነ ይዩ። ሐረጉ የቀጨጨ፣ በግንዱ ግርጌም ቀዳዳ ያለበት እንደሆነ ይዩ። ከተጠራጠሩ እንጨቱን ይንቀሉ፤ ከዚያ ተክል ምንም አይውሰዱ።
    .alt = የትክክል ምልክት ያለበት ጤናማ ተክል ከነእንጨቱ፤ እጅ ቅጠሉ ነጠብጣብ ካለበትና ከተጨማደደ የታመመ ተክል እንጨቱን ሲነቅል።
    .show = ትንሽ፣ የተጠቀለለና ነጠብጣብ ያለበት ቅጠል።
    .ask = ምልክት የተደረገበት ተክል ቢታመም ምን ያደርጋሉ?
    .sms = { BRIEF($first) }፦ ምልክት ያለበትን ተክል እንደገና ይዩ። ቅጠሉ ትንሽ፣ የተጠቀለለ ወይም ነጠብጣብ ያለበት ከሆነ እንጨቱን ይንቀሉ፤ ምንም አይውሰዱ።
# doubt: "ልጣጭ" for the skin of the root (it is also peel).
cut-vines = ምልክት ያለባቸውን ተክሎች ሐረግ ይቁረጡ
    .short = { MEASURE($stem_cm, unit: "centimetre") } ግንድ ያስቀሩ፦ { MEASURE($stem_hands, unit: "hand") }።
    .text = ሐረጉን ሲቆርጡ { MEASURE($stem_cm, unit: "centimetre") } ግንድ ያስቀሩ፤ ይህም { MEASURE($stem_hands, unit: "hand") } ያህል ነው። የስኳር ድንቹ ልጣጭ ይጠነክራል፤ ለረጅም ጊዜም ሳይበላሽ ይቆያል።
    .alt = ቢላዋ ሐረግ ሲቆርጥ፤ የሚቀረው ግንድ አጠገቡ ካለው የተዘረጋ እጅ ጋር እኩል ነው።
    .show = በግንድ አጠገብ የተዘረጋ መዳፍ።
    .ask = የስኳር ድንቹ ልጣጭ እስኪጠነክር ጊዜ የሚያስፈልገው ለምንድን ነው?
    .sms = { BRIEF($first) }፦ ምልክት ያለባቸውን ተክሎች ሐረግ ይቁረጡ። መዳፍ ከነጣቱ ያህል ግንድ ያስቀሩ።
# doubt: "ሳያቆስሉ" and "የቆሰለ" (wound, wounded) said of roots.
harvest = ቆፍረው { $roots } ስኳር ድንች ይምረጡ
    .short = በደረቅ አፈር ብቻ። መካከለኛ፣ ልጣጩ ያልተጎዳ። አይጠቡት። በጥላ ያቆዩት።
    .text = አፈሩ ደረቅ ሲሆን ብቻ ይቆፍሩ፤ ስኳር ድንቹን ሳያቆስሉ ያውጡ። { $roots } መካከለኛ ስኳር ድንች ይውሰዱ፤ ርዝመቱ መዳፍዎን ከነጣቶቹ የሚያክል፣ ልጣጩ ያልተጎዳ ይሁን። ሲቆፈር የቆሰለው ለምግብ ነው እንጂ አይቀመጥም። አፈሩን በእጅ ያራግፉ፤ በፍጹም አይጠቡት። ፀሐይ በማይነካው ጥላ ሥር ጥቂት ሰዓት ያቆዩት።
    .alt = እጅ ከለሰለሰ አፈር ውስጥ ተክሉን ካልተቆረጡ ስኳር ድንቾቹ ጋር ሲያነሳ፤ አጠገቡ ዶማ።
    .show = ልጣጩ ያልተጎዳ መካከለኛ ስኳር ድንች፣ እንዲሁም የቆሰለ።
    .ask = ከእነዚህ የትኞቹ ይቀመጣሉ? የትኞቹስ ለምግብ ይሆናሉ?
    .sms = { BRIEF($first) }፦ በደረቅ አፈር ይቆፍሩ። { $roots } ያልተጎዳ መካከለኛ ስኳር ድንች ያስቀምጡ። አይጠቡት፤ በጥላ ያቆዩት።
# doubt: "ሳፋ" for a basin and "ማሰሮ" for a wide clay pot; names of vessels differ by area.
fill-container = ስኳር ድንቹን በአሸዋ ውስጥ ይደርድሩ
    .short = አሸዋ፦ ከታች { MEASURE($base_cm, unit: "centimetre") }፣ በመካከል { MEASURE($layer_cm, unit: "centimetre") }፣ ከላይ { MEASURE($top_cm, unit: "centimetre") }። እንዳይነካኩ። አይክደኑት።
    .text = ጎኑ ጠንካራ የሆነ { $containers } ዕቃ ይጠቀሙ፦ ሳፋ፣ የሸክላ ማሰሮ፣ ባልዲ ወይም ጥቅጥቅ ብሎ የተሠራ ቅርጫት። ጆንያ አይጠቀሙ። ውስጡን በወረቀት ያልብሱ። ዕቃውን በሚቆይበት ቦታ አስቀምጠው ይሙሉት። ቦታው ቀዝቃዛ፣ ደረቅና ጥላ ያለው ይሁን፤ ከልጆች፣ ከእንስሳትና ከዝናብም የራቀ ይሁን። መጀመሪያ { MEASURE($base_cm, unit: "centimetre") } አሸዋ ያድርጉ፤ ይህም { MEASURE($base_joints, unit: "thumb-joint") } ያህል ነው። { $layer_widths ->
        [uneven] በታችኛው ንጣፍ ቢበዛ { $roots_per_layer }፣ በላይኛው ንጣፍ ቢበዛ { $roots_top } ስኳር ድንች ይደርድሩ።
       *[even] በአንድ ንጣፍ ቢበዛ { $roots_per_layer } ስኳር ድንች ይደርድሩ።
     } ስኳር ድንቾቹ እርስ በርስ እንዳይነካኩ፣ የዕቃውንም ጎን እንዳይነኩ ያድርጉ። በ{ MEASURE($layer_cm, unit: "centimetre") } አሸዋ ይሸፍኗቸው። { $layers ->
        [one] { $layers } ንጣፍ ብቻ ይደርድሩ።
       *[other] ከዚያ ቀጣዩን ይደርድሩ፤ ጠቅላላው { $layers } ንጣፍ ይሁን።
     } በመጨረሻ { MEASURE($top_cm, unit: "centimetre") } አሸዋ ያልብሱ፤ ይህ አይጥን፣ ነፍሳትንና ዶሮን ይከላከላል። ክዳን አያድርጉበት።
    .alt = ጎኑ ተቆርጦ ውስጡ የሚታይ ሳፋ፦ አሸዋ፣ ተራርቀው የተደረደሩ ስኳር ድንቾች፣ አሸዋ፣ ስኳር ድንቾች፣ ከላይ ብዙ አሸዋ፤ እጅ አሸዋ ሲበትን።
    .show = ሳፋ፣ ደረቅ አሸዋና ጥቂት ስኳር ድንች፦ አንድ ሰው የመጀመሪያውን ንጣፍ ይደርድር።
    .ask = ስኳር ድንቾቹ መነካካት የሌለባቸው ለምንድን ነው?
    .sms = { BRIEF($first) }፦ ስኳር ድንቹን እንዳይነካኩ አራርቀው በደረቅ አሸዋ ይደርድሩ፤ አሸዋው ከታች { MEASURE($base_cm, unit: "centimetre") }፣ ከላይ { MEASURE($top_cm, unit: "centimetre") }። አይክደኑት፤ ውሃ አያጠጡት።
# doubt: "ቡቃያ" for the sprouts of the root; some say "ጉንቁል".
# doubt: "የክልክል ምልክት" (sign of prohibition) for a crossed-out picture, here and in the cautions.
monthly-check = ስኳር ድንቹን በየወሩ ይፈትሹ
    .short = አንድ በአንድ ይመልከቱ። የበሰበሰውን ይቅበሩ ወይም ያቃጥሉ። ቡቃያውን ያርግፉ። መልሰው ይደርድሩ።
    .text = ሁሉንም አውጥተው አንድ በአንድ ይመልከቱ። የበሰበሰውን፣ የሻገተውን ወይም የተበሳውን ሁሉ በጥልቅ ጉድጓድ ይቅበሩ ወይም ያቃጥሉ። ቡቃያውን አሽተው ያርግፉ። ደህናዎቹን እንደ በፊቱ መልሰው ይደርድሩ፤ ስንት እንደቀሩም ይጻፉ። እስከሚቀጥለው ፍተሻ አይንኳቸው።
    .alt = ወር ማለፉን የሚያሳዩ ሦስት ጨረቃዎች፤ እጅ ከሳፋው ስኳር ድንች ሲያወጣ፤ ከጎኑ የክልክል ምልክት ያለበት የበሰበሰ ስኳር ድንች።
    .show = የበሰበሰ ስኳር ድንች ካለ፣ እንዲሁም መልሶ እንዴት እንደሚደረደር።
    .ask = የበሰበሰውን ምን ያደርጋሉ? ለእንስሳትስ ለምን አይሰጥም?
    .sms = { BRIEF($first) }፦ ስኳር ድንቹን ሁሉ አውጥተው ይዩ። የበሰበሰውን፣ የሻገተውን፣ የተበሳውን በጥልቅ ይቅበሩ ወይም ያቃጥሉ፤ ለእንስሳ በፍጹም አይስጡ። ቡቃያውን ያርግፉ። መልሰው ይደርድሩ።
prepare-bed = የችግኝ መደብ ያዘጋጁ
    .short = { MEASURE($bed_length_m, unit: "metre") } በ{ MEASURE($bed_width_m, unit: "metre") }፣ ውሃ አጠገብ። አፈሩን ያለስልሱ። በአጥር ይከልሉ።
    .text = ውሃ አጠገብ { MEASURE($bed_length_m, unit: "metre") } በ{ MEASURE($bed_width_m, unit: "metre") } የሆነ መደብ ያዘጋጁ። አፈሩን በደንብ ያለስልሱት። ፍየልና ዶሮ እንዳይገቡ በአጥር ይከልሉት።
    .alt = ሰው የመደቡን አፈር በዶማ ሲያለሰልስ፤ ከኋላው አጥር።
    .show = ከውሃ አጠገብ ያለውን ቦታ፣ የመደቡንም ስፋት በእርምጃ።
    .ask = ፍየልና ዶሮ እንዳይገቡ ምን ይከለክላቸዋል?
    .sms = እስከ { BRIEF($last) }፦ ውሃ አጠገብ { MEASURE($bed_length_m, unit: "metre") } በ{ MEASURE($bed_width_m, unit: "metre") } መደብ ያዘጋጁ። በአጥር ይከልሉት።
last-check = ለመጨረሻ ጊዜ ይፈትሹ፤ ቡቃያውን አያርግፉ
    .short = የበሰበሰውን ይቅበሩ ወይም ያቃጥሉ። ቡቃያውን አያርግፉ።
    .text = ሁሉንም ያውጡ። የበሰበሰውን፣ የሻገተውን ወይም የተበሳውን ሁሉ በጥልቅ ጉድጓድ ይቅበሩ ወይም ያቃጥሉ። በዚህ ጊዜ ቡቃያውን አያርግፉ፤ ደህናዎቹ አሁን መደቡ ላይ ይተከላሉ።
    .alt = እጅ ቡቃያ ያወጣ ስኳር ድንች ከሳፋው ሲያወጣ፤ ቀስት ወደ መደቡ ያመለክታል።
    .show = ቡቃያ ያለው ስኳር ድንች።
    .ask = በዚህ ጊዜ ቡቃያውን የማናረግፈው ለምንድን ነው?
    .sms = { BRIEF($first) }፦ የመጨረሻ ፍተሻ። ቡቃያውን አያርግፉ። የበሰበሰውን፣ የሻገተውን፣ የተበሳውን በጥልቅ ይቅበሩ ወይም ያቃጥሉ፤ ለእንስሳ በፍጹም አይስጡ።
plant-bed = ስኳር ድንቹን መደቡ ላይ ይትከሉ
    .short = { $bed_rows } ረድፍ፣ { MEASURE($spacing_cm, unit: "centimetre") } ተራርቆ፣ በእያንዳንዱ { $row_roots } ያህል። በስሱ አፈር ያልብሱ።
    .text = ስኳር ድንቹን በረድፍ፣ { MEASURE($spacing_cm, unit: "centimetre") } ያህል አራርቀው ያጋድሙት፦ { $bed_rows } ረድፍ፣ በእያንዳንዱ { $row_roots } ያህል። በስሱ አፈር ያልብሱ።
    .alt = በረድፍ የተጋደሙ ስኳር ድንቾች፤ እጅ አፈር ሲያለብሳቸው።
    .show = በልኩ በተቆረጠ እንጨት የረድፎቹን ርቀት።
    .ask = ስኳር ድንቹ በመደቡ ውስጥ ምን ያህል ጠልቆ ይቀመጣል?
    .sms = ከ{ BRIEF($first) } ጀምሮ፦ ስኳር ድንቹን { MEASURE($spacing_cm, unit: "centimetre") } አራርቀው በረድፍ ይትከሉ። በስሱ አፈር ያልብሱ፤ ውሃ ያጠጡ።
water-bed = መደቡን ውሃ ያጠጡ
    .short = በቀን እስከ { MEASURE($water_l, unit: "litre") } ({ MEASURE($jerrycans, unit: "jerrycan") })፤ ለለጋ ተክል ይቀንሱ።
    .text = መደቡ በቅጠል ሲሞላ በየቀኑ { MEASURE($water_l, unit: "litre") } ያህል ያጠጡ፤ ይህም { MEASURE($jerrycans, unit: "jerrycan") } ነው። ተክሎቹ ገና ለጋ ሲሆኑ ይቀንሱ፤ ሙቀትና ነፋስ ባለበት ቀን ይጨምሩ። ዝናቡ በቂ ሲሆን ማጠጣቱን ያቁሙ።
    .alt = እጅ ቡቃያ ባለው መደብ ላይ ከጀሪካን ውሃ ሲያፈስ።
    .show = ጀሪካን፣ እንዲሁም ለጋ ተክል የሚያስፈልገው ጥቂት ውሃ።
    .ask = ውሃውን ማን ያመጣል? እዚያስ ልጆችን ማን ይጠብቃል?
    .sms = ከ{ BRIEF($first) } ጀምሮ፦ መደቡን በየቀኑ እስከ { MEASURE($water_l, unit: "litre") } ያጠጡ። ልጆችን ካልተከደነ ውሃ ያርቁ።
# doubt: "አንጓ" for a node of the vine, and "ጉቶ" for the stub left in the bed.
cut-for-planting = ለተከላ ሐረግ ይቁረጡ
    .short = ዝናቡ ሲጀምር፦ { MEASURE($cutting_cm, unit: "centimetre") }፣ { $nodes } አንጓ፣ ከጤናማ ቡቃያ። ጉቶውን አይንቀሉ።
    .text = ዝናቡ ከጀመረ በኋላ፣ ከጤናማ ቡቃያ ብቻ ይቁረጡ። የቁራጩ ርዝመት { MEASURE($cutting_cm, unit: "centimetre") } ይሁን፤ ይህም { MEASURE($cutting_hands, unit: "hand") } ያህል ነው። ቢያንስ { $nodes } አንጓ ይኑረው። { $plan_by ->
        [practice] በተለመደው አሠራር ከመጀመሪያው ቆረጣ
       *[print] ከመጀመሪያው ቆረጣ
     } { $first_cuttings_low } እስከ { $first_cuttings_high } ያህል ቁራጭ ያገኛሉ። ጉቶውን ሳይነቅሉ ይተዉት፤ ከአራት እስከ ስድስት ሳምንት ውስጥ ሌላ ሐረግ ይሰጣል። ቁራጮቹን በጥላ ያቆዩ፤ በሁለት ቀን ውስጥ ይትከሏቸው።
    .alt = አንድ እጅ የመደቡን ሐረግ ይዞ፣ ሌላው በቢላዋ ሲቆርጥ፤ ጉቶው ይቀራል።
    .show = በመዳፍ አጠገብ ልኩ የሆነ ቁራጭ፦ አንጓዎቹን ይቁጠሩ።
    .ask = ከየትኞቹ ተክሎች ቁራጭ አንወስድም?
    .sms = ዝናቡ ሲጀምር፦ ከጤናማ ተክል { $nodes } አንጓ ያለው { MEASURE($cutting_cm, unit: "centimetre") } ሐረግ ይቁረጡ። ጉቶውን አይንቀሉ።
# doubt: "ተረተር" for a ridge and "የአፈር ቁልል" for a mound; local words may be better.
plant-field = ማሳው ላይ ይትከሉ
    .short = በእርጥብ አፈር ብቻ። ሁለት ወይም ሦስት አንጓ ይቅበሩ። ከሁለት ሳምንት በኋላ በክፍት ቦታዎች ይትከሉ።
    .text = እርጥብ አፈር ላይ ብቻ ይትከሉ። { $layout ->
        [own] በእያንዳንዱ እርሻ፣ በራሱ ተረተር ወይም የአፈር ቁልል ላይ ይተከላል።
        [mounds] በእያንዳንዱ የአፈር ቁልል ላይ { $on_mound } ቁራጭ ይትከሉ፤ ቁልሎቹ { MEASURE($between_cm, unit: "centimetre") } ይራራቁ።
       *[ridges] ተረተሩ ላይ በየ{ MEASURE($along_cm, unit: "centimetre") } አንድ ቁራጭ ይትከሉ፤ ተረተሮቹ { MEASURE($between_cm, unit: "centimetre") } ይራራቁ።
     } ሁለት ወይም ሦስት አንጓ ይቅበሩ። { $kind ->
        [zone] ከመጀመሪያው እስከ መጨረሻው ቆረጣ፣ ከ{ $roots } ስኳር ድንች በጠቅላላው { $cuttings } ቁራጭ ይገኛል።
       *[other] ለማሳው { $cuttings } ቁራጭ ያስፈልጋል።
     } ከሁለት ሳምንት በኋላ ክፍት በቀሩ ቦታዎች ላይ እንደገና ይትከሉ።
    .alt = በዝናብ ደመና ሥር፣ እጅ ቁራጮችን በመስመር ሲተክል፤ የታችኞቹ አንጓዎች አፈር ውስጥ ናቸው።
    .show = እስከ ጣት ጥልቀት የረጠበ አፈር፣ እንዲሁም አንጓዎቹ የተቀበሩ ቁራጭ።
    .ask = አንድ ጊዜ ዘንቧል፤ አሁን እንትከል? ጥቅሙ ምንድን ነው? ጉዳቱስ?
    .sms = ከ{ BRIEF($first) } ጀምሮ፦ አፈሩ ሲርስ { $cuttings_to_plant } ቁራጭ ይትከሉ። ቀኑ አማካይ ነው፤ ሰማዩን ይመልከቱ።
# doubt: "ነቀዝ" (weevil, best known from stored grain) for the sweet potato weevil.
first-harvest = የመጀመሪያዎቹን ስኳር ድንቾች ይሞክሩ
    .short = ትልልቅ ስኳር ድንች በእጅ ይዳስሱ። ሁሉንም እስከ { DAY($last_harvest) } ይቆፍሩ፤ ነቀዝ ይመጣል።
    .text = በአንዳንድ ተክሎች ሥር ያለውን አፈር በእጅ ይዳስሱ፤ ለመብል የደረሰ ስኳር ድንች እንዳለ ይዩ። የደረሰውን በደረቅ አፈር ውስጥ ለረጅም ጊዜ አይተዉት፤ ነቀዝ ያጠቃዋል። የመጨረሻዎቹን እስከ { DAY($last_harvest) } ድረስ ቆፍረው ይጨርሱ።
    .alt = እጅ ከተክል ሥር ስኳር ድንች ሲዳስስ፤ አጠገቡ እሳት ላይ የተጣደ ማሰሮ።
    .show = ተክሉን ሳይነቅሉ ስኳር ድንቹን እንዴት እንደሚዳስሱ።
    .ask = የደረሰ ስኳር ድንች በደረቅ መሬት ውስጥ ቢቆይ ምን ይሆናል?
    .sms = ከ{ BRIEF($first) } ጀምሮ፦ የደረሰ ስኳር ድንች በእጅ ይዳስሱ። ሁሉንም እስከ { BRIEF($last_harvest) } ይቆፍሩ፤ ነቀዝ ይመጣል።

## Tables: title, what it tells (.text), its picture in words (.alt)

# doubt: "በእድገት ቀናት ብዛት" where cuttings are counted by the days that the bed has grown.
table-cuts = ከመደቡ የሚቆረጡ ሐረጎች{ $plan_by ->
    [practice] ፣ በተለመደው አሠራር
   *[print] ፣ በእድገት ቀናት ብዛት
 }
    .text = ከእያንዳንዱ ቆረጣ ይህን ያህል ቁራጭ ይጠበቃል። የኋለኞቹ ለቀሪው ማሳና ለክፍት ቦታዎች ናቸው።
table-shares = ከእያንዳንዱ እርሻ የሚመጣው
    .text = በእያንዳንዱ እርሻ፣ በራሱ ተክሎች ላይ ምልክት ይደረጋል፤ ስኳር ድንቹም በጋራ ወደሚቀመጥበት ቦታ ይመጣል።
table-fields = መጠን በማሳ ስፋት
    .text = የማሳዎን ስፋት በመጀመሪያው ዓምድ ይፈልጉ። በሁለት መስመሮች መካከል ከሆነ፣ መጠኑም በእነሱ መካከል ነው።
# doubt: "ሐሰተኛ ጅምር" for a false start of the rains.
# doubt: "አሞሌ" (a bar, as of salt) for the bars of a chart; "መካከለኛው ዓመት" in the columns for the middle (median) year.
table-planting-later = ተከላውን ቢያዘገዩ
    .text = በመጀመሪያው ከባድ ዝናብ የሚተክል ሰው፣ ረጅም ደረቅ ጊዜ ከተከተለ ለጋ ተክሎችን ሊያጣ ይችላል። ይህ ሐሰተኛ ጅምር ነው። ማዘግየት ደግሞ ዝናቡ እስኪያበቃ የሚቀሩትን ቀኖች ይቀንሳል። ሠንጠረዡ ሁለቱም ባለፉት ዓመታት እንዴት እንደነበሩ ያሳያል፤ ትንበያ አይደለም። በሥዕሉ ላይ ባለመስመር አሞሌዎች ሐሰተኛ ጅምር የነበረባቸው ዓመታት ናቸው፤ ጥቁር አሞሌዎች ዝናቡ እስኪያበቃ የሚቀሩ ቀኖች ናቸው።
    .alt = ተከላ ለሚጀመርበት ለእያንዳንዱ ቀን፦ ሐሰተኛ ጅምር ለነበረባቸው ዓመታት ባለመስመር አሞሌ፣ ዝናቡ እስኪያበቃ ለሚቀሩ ቀኖች ጥቁር አሞሌ። ቁጥሮቹ ከላይ ባለው ሠንጠረዥ ውስጥ አሉ።
column-when = መቼ
column-farm = እርሻ
column-area = ማሳ፣ ካሬ ሜትር
column-cuttings = ቁራጭ
column-cut = ቁራጭ
cut-value = { $low }–{ $high }
column-plants = ምልክት የሚደረግበት ተክል
column-roots = የሚቀመጥ ስኳር ድንች
column-bed = መደብ፣ ካሬ ሜትር
column-jerrycans = ውሃ በቀን፣ በጀሪካን
column-from = ከዚህ ቀን ጀምሮ የመጀመሪያው ዝናብ
column-false-starts = ሐሰተኛ ጅምር የነበረባቸው ዓመታት
column-days-left = ዝናቡ እስኪያበቃ የሚቀሩ ቀኖች፣ በመካከለኛው ዓመት
false-starts-value = ከ{ $years } ዓመት { $false_starts }

## Cautions: title, text (.text), picture in words (.alt); text message (.sms) where there is one

caution-rot = የበሰበሰ፣ የሻገተ ወይም የተበሳ ስኳር ድንች
    .short = ደህና የሚመስለውን ክፍልም በፍጹም አይብሉ። ለእንስሳ በፍጹም አይስጡ። በጥልቅ ይቅበሩ ወይም ያቃጥሉ።
    .text = በፍጹም አይብሉት፤ ለእንስሳም በፍጹም አይስጡት፤ አይትከሉት። መጥፎውን ክፍል ቆርጠው ቢጥሉም ቀሪውን አይብሉ፤ ደህና የሚመስለው ክፍል እንኳ መርዝ ሊኖረው ይችላል። በጥልቅ ጉድጓድ ይቅበሩት ወይም ያቃጥሉት።
    .alt = የበሰበሰ ስኳር ድንች፤ ከሥሩ የክልክል ምልክት ያለባቸው ላምና የማብሰያ ማሰሮ።
    .sms = የበሰበሰ፣ የሻገተ ወይም የተበሳ ስኳር ድንች፣ ደህና የሚመስለውን ክፍልም፣ በፍጹም አይብሉ፤ ለእንስሳም በፍጹም አይስጡ። በጥልቅ ይቅበሩት ወይም ያቃጥሉት።
caution-virus = የታመሙ ተክሎች
    .short = ቅጠሉ ነጠብጣብ ያለበት፣ ትንሽ ወይም የተጣመመ ከሆነ፦ ከዚያ ተክል ምንም አይውሰዱ።
    .text = ቅጠሉ ነጠብጣብ ያለበት፣ ትንሽ ወይም የተጣመመ ከሆነ፣ ወይም ሐረጉ ከቀጨጨ፣ ይህ የቫይረስ ምልክት ነው። ከእንዲህ ያለ ተክል ስኳር ድንችም ሆነ ሐረግ በፍጹም አይውሰዱ።
    .alt = ቅጠሉ ነጠብጣብ ባለበትና በተጨማደደ ተክል አጠገብ ቢላዋ የያዘ እጅ፣ የክልክል ምልክት ያለበት።
caution-cracks = የአፈር ስንጥቅ
    .short = ስንጥቅን በአፈር ይሸፍኑ፤ ነቀዝ በዚያ ይገባል።
    .text = ነቀዝ በአፈር ስንጥቅ በኩል ወደ ስኳር ድንቹ ይደርሳል። ስንጥቅ እንዳዩ ወዲያውኑ አፈር ቆልለው ይሸፍኑት።
    .alt = ነቀዝ በተረተሩ ስንጥቅ ሲገባ፤ ከሥሩ ብዙ ቀዳዳ ያለበት ስኳር ድንች።
caution-heavy-sand = አሸዋ ከባድ ነው
    .short = ቢበዛ { MEASURE($load_kg, unit: "kilogram") } ይሸከሙ። የሞላውን ዕቃ አያንሱ።
    .text = በአንድ ጊዜ ከ{ MEASURE($load_kg, unit: "kilogram") } በላይ አይሸከሙ። ዕቃውን በሚቆይበት ቦታ አስቀምጠው ይሙሉት፤ ከሞላ በኋላ አያንሱት።
    .alt = ከትልቅ ከረጢት ሥር የጎበጠ ሰው፣ የክልክል ምልክት ያለበት፤ ትንሽ ባልዲ ይዛ ቀጥ ብላ የቆመች ሴት፣ የትክክል ምልክት ያለባት።
# doubt: "ገደላማ የወንዝ ዳር" for a steep river bank.
caution-riverbed = ከወንዝ የሚወሰድ አሸዋ
    .short = ወንዙ ደረቅ ሲሆን ብቻ፤ ከገደላማ ዳር ሥርና አጠገብ በፍጹም አይቆፍሩ፤ ደንቡ በሚፈቅድበት ብቻ።
    .text = አሸዋ የሚወስዱት ወንዙ ደረቅ ሲሆን ብቻ ይሁን። ከገደላማ የወንዝ ዳር ሥርም ሆነ አጠገቡ በፍጹም አይቆፍሩ፤ ተንዶ ሊቀብርዎት ይችላል። የአካባቢው ደንብ በሚፈቅድበት ቦታ ብቻ ይውሰዱ።
    .alt = ገደላማ የወንዝ ዳር በሚቆፍር ሰው ላይ ሲናድ፣ የክልክል ምልክት ያለበት።
caution-water-children = ውሃ፣ ልጆችና እንስሳት
    .short = ልጆችን ያርቁ። ውሃውን ይክደኑ፤ የውሃና ሌሎች ጉድጓዶችን፣ መደቡንም በአጥር ይከልሉ።
    .text = ልጆች ውሃ፣ የውሃ ጉድጓድ ወይም ሌላ ጉድጓድ አጠገብ እንዲጫወቱ አይፍቀዱ። ያጠራቀሙትን ውሃ ይክደኑ፤ የውሃ ጉድጓድንና ሌላ ጉድጓድን በአጥር ይከልሉ። ፍየልና ዶሮ ወደ መደቡ አያስገቡ።
    .alt = ከአጥር ጀርባ የተከደነ የውሃ በርሜል፤ እናት ልጇን ከአጥሩ ውጭ ይዛ።
caution-store-dry = ያስቀመጡትን ስኳር ድንች በፍጹም ውሃ አያጠጡ
    .short = አሸዋው ላይ ውሃ አያፍስሱ፤ ስኳር ድንቹ ይበሰብሳል።
    .text = አሸዋው ከመጀመሪያው ቀን እስከ መጨረሻው ቀን ደረቅ መሆን አለበት። እርጥብ አሸዋ ስኳር ድንቹ ያለጊዜው እንዲበቅል ወይም እንዲበሰብስ ያደርጋል።
    .alt = ከጀሪካን ውሃ ስኳር ድንች ባለበት ሳፋ ላይ ሲፈስ፣ የክልክል ምልክት ያለበት።
# doubt: "አማካይ" for an average; "ትንበያ" for a forecast.
caution-forecast = ቀኖቹ አማካይ ናቸው እንጂ ትንበያ አይደሉም
    .short = ዝናቡ ሊቀድም ወይም ሊዘገይ ይችላል። አፈሩ እርጥብ ሲሆን ብቻ ይትከሉ።
    .text = ቀኖቹ ካለፉት ዓመታት የተገኙ ናቸው። ዝናቡ ሊቀድም ወይም ሊዘገይ ይችላል። ሰማዩንና አፈሩን ይመልከቱ፤ አፈሩ እርጥብ ሲሆን ብቻ ይትከሉ።
    .alt = የሐረግ ቁራጮች የያዘች ሴት ወደ ፀሐይ፣ ደመናና ዝናብ ቀና ብላ ስታይ።
caution-try-first = መጀመሪያ በጥቂት ስኳር ድንች ይሞክሩ
    .short = ለእርስዎ አዲስ ነው? በጥቂት ስኳር ድንች ይጀምሩ፤ ከሐረግዎም የተወሰነውን በለመዱት መንገድ ያቆዩ።
    .text = ይህ ለእርስዎ አዲስ ከሆነ በጥቂት ስኳር ድንች ይጀምሩ፤ ከሐረግዎም የተወሰነውን በለመዱት መንገድ ያቆዩ።
    .alt = ጥቂት ስኳር ድንቾች ባሉበት ትንሽ ማሰሮና በአፈር ውስጥ ማደጉን በሚቀጥል ተክል መካከል የቆመች ሴት።

## Drawings and formats: titles, what drawings show in words, the names and sizes that stand in them

month-year = { month } { $ethiopic_year }
calendar-title = በየወሩ የሚሠራው
guide-title = የስብሰባ መመሪያ
# doubt: "የተቆራረጠ መስመር" for a broken (dashed) line, "እጥፍ ያድርጉ" for to fold.
card-fold = በተቆራረጡት መስመሮች ላይ እጥፍ ያድርጉ። ወፍራሙን መስመር ተከትለው ይቁረጡ።
record-title = የተቀመጠው ስኳር ድንች ፍተሻ
record-how = በእያንዳንዱ ፍተሻ ሁሉንም ያውጡ። የበሰበሰውን በጥልቅ ይቅበሩ ወይም ያቃጥሉ። ያገኙትን ይጻፉ፤ ይህን ካርድ ለግብርና ባለሙያዎ ያሳዩ።
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
season-on-harvest = ቁፋሮ
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
script-how-distance = አፍዎ ከማይክሮፎኑ ወይም ከስልኩ አንድ መዳፍ ከነጣቱ ያህል ርቆ፣ ትንሽ ወደ ጎን ይሁን። ይህን ርቀት እስከ መጨረሻው አይለውጡ።
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

ask-mark-plants = በማሳዎ ላይ የትኞቹ ተክሎች ጠንካራ ናቸው?
ask-gather-sand = በአቅራቢያ ደረቅ አሸዋ ያለው ማን ነው? በደኅና እንዴት እንቆፍረዋለን?
ask-check-plants = በዚህ አካባቢ የታመመ ተክል ምን ይመስላል?
ask-cut-vines = ግንዱን በጣም ካሳጠሩት ምን ይሆናል?
ask-harvest = ስኳር ድንቹን ሳያቆስሉ እንዴት ይቆፍራሉ?
ask-fill-container = በቤትዎ ከልጆችና ከእንስሳት የራቀ ቀዝቃዛና ደረቅ ቦታ የት ነው?
ask-monthly-check = ስኳር ድንች ሲበላሽ ምን ያያሉ? የት ይቀብሩታል?
ask-prepare-bed = ውሃ የት አለ? ልጆችን ማን ይጠብቃል?
ask-last-check = ከስኳር ድንችዎ ስንቱ አቆጥቁጧል?
ask-plant-bed = በጊዜው እንዳይተክሉ ምን ሊያግድዎት ይችላል?
ask-water-bed = እርስዎ ከሌሉ ውሃ ማን ያጠጣል?
ask-cut-for-planting = ዝናቡ በእርግጥ መጀመሩን እንዴት ያውቃሉ?
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
