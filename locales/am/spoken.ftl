### አማርኛ፣ ረቂቅ፦ በሬዲዮና በስልክ የሚነገሩ ቃላት። ቋንቋውን በደንብ የሚያውቅ ሰው ገና አላነበባቸውም።
### Draft. Every literal text is recorded as it stands here, cut at the { … }.
### No digits, no abbreviations. Numbers: SAY, days: DAY and SPAN, measures: MEASURE.
### One form of numbers (cardinal): Amharic numerals do not change before these nouns, and the noun stays in the singular.
### No preposition that is written together with its noun (በ, ከ, ለ, የ) stands before a { … }, since it cannot be recorded
### alone: "at most" is ቢበዛ, "at least" ቢያንስ, "about" ያህል or አካባቢ behind, and spans say "… ጀምረው እስከ … ድረስ".
### Address: the polite form (እርስዎ), the same for a woman and a man.

## Dates and units

# Months of the Ethiopian calendar; the Gregorian date is not said.
date = { ethiopic-month } { SAY($ethiopic_day, form: "cardinal") }
# Weeks of the Ethiopian month, from its day; the short thirteenth month is not parted into weeks.
# "የ" is said with the month, so that it is recorded as one phrase with each.
week = { $ethiopic_month ->
    [13] የጳጉሜን ወር
   *[other] { $ethiopic_month ->
        [1] የመስከረም ወር
        [2] የጥቅምት ወር
        [3] የኅዳር ወር
        [4] የታኅሣሥ ወር
        [5] የጥር ወር
        [6] የየካቲት ወር
        [7] የመጋቢት ወር
        [8] የሚያዝያ ወር
        [9] የግንቦት ወር
        [10] የሰኔ ወር
        [11] የሐምሌ ወር
       *[12] የነሐሴ ወር
     } { $ethiopic_day ->
        [1] መጀመሪያ ሳምንት
        [2] መጀመሪያ ሳምንት
        [3] መጀመሪያ ሳምንት
        [4] መጀመሪያ ሳምንት
        [5] መጀመሪያ ሳምንት
        [6] መጀመሪያ ሳምንት
        [7] መጀመሪያ ሳምንት
        [8] ሁለተኛ ሳምንት
        [9] ሁለተኛ ሳምንት
        [10] ሁለተኛ ሳምንት
        [11] ሁለተኛ ሳምንት
        [12] ሁለተኛ ሳምንት
        [13] ሁለተኛ ሳምንት
        [14] ሁለተኛ ሳምንት
        [15] ሦስተኛ ሳምንት
        [16] ሦስተኛ ሳምንት
        [17] ሦስተኛ ሳምንት
        [18] ሦስተኛ ሳምንት
        [19] ሦስተኛ ሳምንት
        [20] ሦስተኛ ሳምንት
        [21] ሦስተኛ ሳምንት
        [22] አራተኛ ሳምንት
        [23] አራተኛ ሳምንት
        [24] አራተኛ ሳምንት
        [25] አራተኛ ሳምንት
        [26] አራተኛ ሳምንት
        [27] አራተኛ ሳምንት
        [28] አራተኛ ሳምንት
       *[other] መጨረሻ ሳምንት
     }
 }
# doubt: "… ቀን ጀምረው" (you starting on the day …) instead of the usual "ከ… ጀምሮ", whose "ከ" cannot be recorded alone.
span = { DAY($from) } ቀን ጀምረው እስከ { DAY($to) } ድረስ
span-day = { DAY($from) } ቀን
unit-kilogram = { SAY($n, form: "cardinal") } ኪሎ
unit-litre = { SAY($n, form: "cardinal") } ሊትር
# doubt: a decimal is said with "ነጥብ"; many farmers would say "ሁለት ሜትር ተኩል".
unit-metre = { SAY($n, form: "cardinal") } ሜትር
unit-centimetre = { SAY($n, form: "cardinal") } ሳንቲ ሜትር
unit-hand = { SAY($n, form: "cardinal") } መዳፍ ከነጣቱ
unit-thumb-joint = { SAY($n, form: "cardinal") } የአውራ ጣት አንጓ
unit-jerrycan = { SAY($n, form: "cardinal") } ጀሪካን
unit-bundle = { SAY($n, form: "cardinal") } እስር

## Opening and closing

opening = ስኳር ድንች፣ ከዚህ ምርት እስከ ቀጣዩ ዝናብ። { $kind ->
    [zone] ዝናቡ { WEEK($rains) } አካባቢ ይጀምራል ተብሎ ይጠበቃል። የሚሰሙት መጠን { SAY($roots, form: "cardinal") } ስኳር ድንች ለሚያስቀምጥ ሰው ነው። እንደ ማሳዎ ስፋት ይጨምሩ ወይም ይቀንሱ።
   *[other] ዝናቡ { DAY($rains) } አካባቢ ይጀምራል ተብሎ ይጠበቃል።
 }
# doubt: "የግብርና ባለሙያ" for the extension worker; "የልማት ሠራተኛ" in many places. Polite "ያውቃሉ" fits either gender.
closing = የአካባቢዎን ዝርያዎች፣ ቀኖችና ደንቦች የግብርና ባለሙያዎ ያውቃሉ። ምክራቸው ከዚህ መልእክት የሚለይ ከሆነ የእሳቸውን ምክር ይከተሉ።

## Steps

# doubt: "እናት ተክል" for a mother plant; "ለዘር የሚሆን" explains it.
mark-plants = { SPAN($when) }፣ ለዘር የሚሆኑ እናት ተክሎችን ይምረጡ። { SAY($plants, form: "cardinal") } ጠንካራ ተክሎች ላይ ምልክት ያድርጉ። { $kind ->
    [group] እያንዳንዱ አባል { SAY($plants_each, form: "cardinal") } ተክል ላይ ምልክት ያድርግ።
   *[other] በእያንዳንዱ ተክል አጠገብ ትንሽ እንጨት ይትከሉ።
 } ቅጠላቸው ትልቅና ንጹሕ የሆነ፣ ምንም የበሽታ ምልክት የሌለባቸውን ብቻ ይምረጡ። ከእነዚህ ተክሎች { SAY($roots, form: "cardinal") } ያህል የሚቀመጥ ስኳር ድንች ያገኛሉ።
# doubt: "ሻካራ አሸዋ" for coarse sand and "ደቃቅ" for fine sand.
gather-sand = { SPAN($when) }፣ ደረቅ አሸዋ ያምጡ። { MEASURE($sand_l, unit: "litre") } አሸዋ ያስፈልጋል። ክብደቱ { MEASURE($sand_kg, unit: "kilogram") } ያህል ነው። ሻካራና ንጹሕ አሸዋ ይውሰዱ። ከጣሪያ ሥር ያድርቁት፣ እስኪቀዘቅዝም ይተዉት። ደቃቅ፣ እርጥብ ወይም ሙቅ አሸዋ ስኳር ድንቹን ያበሰብሰዋል።
check-plants = { SPAN($when) }፣ ምልክት ያለባቸውን ተክሎች እንደገና ይመልከቱ። ቅጠሉ ትንሽ፣ የተጠቀለለ ወይም ነጠብጣብ ያለበት እንደሆነ ይዩ። ሐረጉ የቀጨጨ፣ በግንዱ ግርጌም ቀዳዳ ያለበት እንደሆነ ይዩ። ከተጠራጠሩ እንጨቱን ይንቀሉ፣ ከዚያ ተክል ምንም አይውሰዱ።
# doubt: a hand is said in full as "from the wrist to the fingertips", since "እጅ" alone is also the arm.
cut-vines = { SPAN($when) }፣ ምልክት ያለባቸውን ተክሎች ሐረግ ይቁረጡ። ከእጅ አንጓ እስከ ጣት ጫፍ የሚያክል ግንድ ያስቀሩ። የስኳር ድንቹ ልጣጭ ይጠነክራል፣ ለረጅም ጊዜም ሳይበላሽ ይቆያል።
harvest = { SPAN($when) }፣ ስኳር ድንቹን ይቆፍሩ። አፈሩ ደረቅ ሲሆን ብቻ ይቆፍሩ፣ ሳያቆስሉም ያውጡ። { SAY($roots, form: "cardinal") } መካከለኛ ስኳር ድንች ይውሰዱ። ርዝመቱ ከእጅ አንጓ እስከ ጣት ጫፍ የሚያክል፣ ልጣጩ ያልተጎዳ ይሁን። ሲቆፈር የቆሰለው ለምግብ ነው እንጂ አይቀመጥም። አፈሩን በእጅ ያራግፉ፣ በፍጹም አይጠቡት። ጥላ ሥር ጥቂት ሰዓት ያቆዩት።
fill-container = { SPAN($when) }፣ ስኳር ድንቹን በአሸዋ ውስጥ ይደርድሩ። ሳፋ፣ የሸክላ ማሰሮ፣ ባልዲ ወይም ጥቅጥቅ ብሎ የተሠራ ቅርጫት ይጠቀሙ። ጆንያ አይጠቀሙ። ውስጡን በወረቀት ያልብሱ። ዕቃውን በሚቆይበት ቦታ አስቀምጠው ይሙሉት። ቦታው ቀዝቃዛ፣ ደረቅና ጥላ ያለው ይሁን። ከልጆች፣ ከእንስሳትና ከዝናብም የራቀ ይሁን። { SAY($containers, form: "cardinal") } ዕቃ ያስፈልጋል። መጀመሪያ { MEASURE($base_cm, unit: "centimetre") } አሸዋ ያድርጉ። { $layer_widths ->
    [uneven] በታችኛው ንጣፍ ቢበዛ { SAY($roots_per_layer, form: "cardinal") } ስኳር ድንች ይደርድሩ። በላይኛው ንጣፍ ቢበዛ { SAY($roots_top, form: "cardinal") } ስኳር ድንች ይደርድሩ።
   *[even] በአንድ ንጣፍ ቢበዛ { SAY($roots_per_layer, form: "cardinal") } ስኳር ድንች ይደርድሩ።
 } ስኳር ድንቾቹ እርስ በርስ እንዳይነካኩ፣ የዕቃውንም ጎን እንዳይነኩ ያድርጉ። { MEASURE($layer_cm, unit: "centimetre") } አሸዋ ያልብሷቸው። { $layers ->
    [one] { SAY($layers, form: "cardinal") } ንጣፍ ብቻ ይደርድሩ።
   *[other] ከዚያ ቀጣዩን ይደርድሩ። ጠቅላላው { SAY($layers, form: "cardinal") } ንጣፍ ይሁን።
 } በመጨረሻ { MEASURE($top_cm, unit: "centimetre") } አሸዋ ያልብሱ። ይህ አይጥን፣ ነፍሳትንና ዶሮን ይከላከላል። ክዳን አያድርጉበት።
# doubt: "ቡቃያ" for the sprouts of the root; some say "ጉንቁል".
monthly-check = ስኳር ድንቹን በየወሩ ይፈትሹ። { $turn ->
    [next] የሚቀጥለው ፍተሻ
   *[first] የመጀመሪያው ፍተሻ
 } { DAY($first) } ቀን ነው። ሁሉንም አውጥተው አንድ በአንድ ይመልከቱ። የበሰበሰውን፣ የሻገተውን ወይም የተበሳውን ሁሉ በጥልቅ ጉድጓድ ይቅበሩ ወይም ያቃጥሉ። ቡቃያውን አሽተው ያርግፉ። ደህናዎቹን እንደ በፊቱ መልሰው ይደርድሩ፣ ስንት እንደቀሩም ይጻፉ። እስከሚቀጥለው ፍተሻ አይንኳቸው።
prepare-bed = { SPAN($when) }፣ የችግኝ መደብ ያዘጋጁ። ርዝመቱ { MEASURE($bed_length_m, unit: "metre") }፣ ወርዱ { MEASURE($bed_width_m, unit: "metre") }፣ ውሃ አጠገብ ይሁን። አፈሩን በደንብ ያለስልሱት። ፍየልና ዶሮ እንዳይገቡ በአጥር ይከልሉት።
last-check = { DAY($first) } ቀን፣ ስኳር ድንቹን ለመጨረሻ ጊዜ ይፈትሹ። የበሰበሰውን፣ የሻገተውን ወይም የተበሳውን ሁሉ በጥልቅ ጉድጓድ ይቅበሩ ወይም ያቃጥሉ። በዚህ ጊዜ ቡቃያውን አያርግፉ። ደህናዎቹ አሁን መደቡ ላይ ይተከላሉ።
plant-bed = { SPAN($when) }፣ ስኳር ድንቹን መደቡ ላይ ይትከሉ። በረድፍ፣ { MEASURE($spacing_cm, unit: "centimetre") } ያህል አራርቀው ያጋድሙት። { SAY($bed_rows, form: "cardinal") } ረድፍ ይሁን። በስሱ አፈር ያልብሱ።
water-bed = { SPAN($when) }፣ መደቡን ውሃ ያጠጡ። መደቡ በቅጠል ሲሞላ በየቀኑ { MEASURE($water_l, unit: "litre") } ያጠጡ። ይህም { MEASURE($jerrycans, unit: "jerrycan") } ነው። ተክሎቹ ገና ለጋ ሲሆኑ ይቀንሱ። ሙቀትና ነፋስ ባለበት ቀን ይጨምሩ። ዝናቡ በቂ ሲሆን ማጠጣቱን ያቁሙ።
# doubt: "አንጓ" for a node of the vine, and "ጉቶ" for the stub left in the bed.
cut-for-planting = ዝናቡ ከጀመረ በኋላ፣ { SPAN($when) }፣ ለተከላ ሐረግ ይቁረጡ። የቁራጩ ርዝመት { MEASURE($cutting_cm, unit: "centimetre") } ይሁን። ቢያንስ { SAY($nodes, form: "cardinal") } አንጓ ይኑረው። ከጤናማ ቡቃያ ብቻ ይቁረጡ። { $plan_by ->
    [practice] በተለመደው አሠራር ከመጀመሪያው ቆረጣ
   *[print] ከመጀመሪያው ቆረጣ
 } { SAY($first_cuttings_low, form: "cardinal") } እስከ { SAY($first_cuttings_high, form: "cardinal") } ያህል ቁራጭ ያገኛሉ። ጉቶውን ሳይነቅሉ ይተዉት። ከአራት እስከ ስድስት ሳምንት ውስጥ ሌላ ሐረግ ይሰጣል። ቁራጮቹን በጥላ ያቆዩ፣ በሁለት ቀን ውስጥ ይትከሏቸው።
# doubt: "ተረተር" for a ridge and "የአፈር ቁልል" for a mound; local words may be better.
plant-field = { SPAN($when) }፣ ማሳው ላይ ይትከሉ፣ ነገር ግን አፈሩ እርጥብ ሲሆን ብቻ ይሁን። { $layout ->
    [own] በእያንዳንዱ እርሻ፣ በራሱ ተረተር ወይም የአፈር ቁልል ላይ ይተከላል።
    [mounds] በእያንዳንዱ የአፈር ቁልል ላይ { SAY($on_mound, form: "cardinal") } ቁራጭ ይትከሉ።
   *[ridges] ተረተሩ ላይ { MEASURE($along_cm, unit: "centimetre") } እያራራቁ አንድ አንድ ቁራጭ ይትከሉ።
 } ሁለት ወይም ሦስት አንጓ ይቅበሩ። ከሁለት ሳምንት በኋላ ክፍት በቀሩ ቦታዎች ላይ እንደገና ይትከሉ።
# doubt: "ነቀዝ" (weevil, best known from stored grain) for the sweet potato weevil.
first-harvest = { SPAN($when) }፣ የመጀመሪያዎቹን ስኳር ድንቾች ይሞክሩ። በአንዳንድ ተክሎች ሥር ያለውን አፈር በእጅ ይዳስሱ፣ ለመብል የደረሰ ስኳር ድንች እንዳለ ይዩ። የደረሰውን በደረቅ አፈር ውስጥ ለረጅም ጊዜ አይተዉት። ነቀዝ ያጠቃዋል። የመጨረሻዎቹን እስከ { DAY($last_harvest) } ድረስ ቆፍረው ይጨርሱ።

## Cautions

caution-rot = ጥንቃቄ። የበሰበሰ፣ የሻገተ ወይም የተበሳ ስኳር ድንች በፍጹም አይብሉ። ለእንስሳም በፍጹም አይስጡት፣ አይትከሉት። መጥፎውን ክፍል ቆርጠው ቢጥሉም ቀሪውን አይብሉ። ደህና የሚመስለው ክፍል እንኳ መርዝ ሊኖረው ይችላል። እንዲህ ያለውን በጥልቅ ጉድጓድ ይቅበሩት ወይም ያቃጥሉት።
caution-virus = ጥንቃቄ። ቅጠሉ ነጠብጣብ ያለበት፣ ትንሽ ወይም የተጣመመ ከሆነ፣ ወይም ሐረጉ ከቀጨጨ፣ ይህ የቫይረስ ምልክት ነው። ከእንዲህ ያለ ተክል ስኳር ድንችም ሆነ ሐረግ በፍጹም አይውሰዱ።
caution-cracks = ነቀዝ በአፈር ስንጥቅ በኩል ወደ ስኳር ድንቹ ይደርሳል። ስንጥቅ እንዳዩ ወዲያውኑ አፈር ቆልለው ይሸፍኑት።
caution-heavy-sand = ጥንቃቄ፣ አሸዋ ከባድ ነው። በአንድ ጊዜ ቢበዛ { MEASURE($load_kg, unit: "kilogram") } ብቻ ይሸከሙ። ከዚያ በላይ አይሸከሙ። ዕቃውን በሚቆይበት ቦታ አስቀምጠው ይሙሉት፣ ከሞላ በኋላ አያንሱት።
# doubt: "ገደላማ የወንዝ ዳር" for a steep river bank.
caution-riverbed = ወንዝ ውስጥ ይጠንቀቁ። ከወንዝ አሸዋ የሚወስዱት ወንዙ ደረቅ ሲሆን ብቻ ይሁን። ከገደላማ የወንዝ ዳር ሥርም ሆነ አጠገቡ በፍጹም አይቆፍሩ። ተንዶ ሊቀብርዎት ይችላል። የአካባቢው ደንብ በሚፈቅድበት ቦታ ብቻ ይውሰዱ።
caution-water-children = ለልጆች ይጠንቀቁ። ውሃ፣ የውሃ ጉድጓድ ወይም ሌላ ጉድጓድ አጠገብ እንዲጫወቱ አይፍቀዱ። ያጠራቀሙትን ውሃ ይክደኑ፣ የውሃ ጉድጓድንና ሌላ ጉድጓድን በአጥር ይከልሉ። ፍየልና ዶሮ ወደ መደቡ አያስገቡ።
caution-store-dry = ያስቀመጡትን ስኳር ድንች በፍጹም ውሃ አያጠጡ። አሸዋው ከመጀመሪያው ቀን እስከ መጨረሻው ቀን ደረቅ መሆን አለበት።
caution-forecast = እነዚህ ቀኖች ያለፉት ዓመታት አማካይ ናቸው እንጂ የዚህ ዓመት ትንበያ አይደሉም። ዝናቡ ሊቀድም ወይም ሊዘገይ ይችላል። አፈሩ እርጥብ ሲሆን ብቻ ይትከሉ።
caution-try-first = ይህ ለእርስዎ አዲስ ከሆነ በጥቂት ስኳር ድንች ይጀምሩ። ከሐረግዎም የተወሰነውን በለመዱት መንገድ ያቆዩ።

## Questions for a meeting, each after its step

# doubt: "አቆጥቁጧል" for has sprouted; the steps say "ቡቃያ" for the sprout.
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
