### አማርኛ፣ ረቂቅ፦ በሬዲዮና በስልክ የሚነገሩ ቃላት። ቋንቋውን በደንብ የሚያውቅ ሰው ገና አላነበባቸውም።
### Draft. Every literal text is recorded as it stands here, cut at the { … }.
### No digits, no abbreviations. Numbers: SAY, days: DAY and SPAN, measures: MEASURE.
### One form of numbers (cardinal): Amharic numerals do not change before these nouns, and the noun stays in the singular.
### No preposition that is written together with its noun (በ, ከ, ለ, የ) stands before a { … }, since it cannot be recorded
### alone. Before a date it is recorded with the month: DAY($first, form: "from") says ከመስከረም …, form: "until" እስከ መስከረም ….
### Before a number the sentence does without: "at most" is ቢበዛ, "at least" ቢያንስ, "about" ያህል behind it.
### Address: the polite form (እርስዎ), the same for a woman and a man.
### "ስኳር ድንች" comes first in every message; the trade's words are in glossary.toml.

## What must never be lost. The messages below refer to these sentences.

# doubt: "በነፍሳት የተበሳ" (pierced by insects) for insect holes; many may say "ትል የበላው" (eaten by a worm).
-bad-roots = የበሰበሰ፣ የሻገተ ወይም በነፍሳት የተበሳ ስኳር ድንች በፍጹም አይብሉ። ለእንስሳም በፍጹም አይስጡት፣ በፍጹም አይትከሉት። በጥልቅ ጉድጓድ ይቅበሩት ወይም ያቃጥሉት።
-take-nothing = እንዲህ ካለ ተክል ስኳር ድንችም ሆነ ሐረግ አይውሰዱ።
# doubt: "ገደላማ የወንዝ ዳር" for a steep river bank.
-dry-riverbed = አሸዋ የአካባቢው ደንብ በሚፈቅድበት ቦታ ብቻ ይውሰዱ። ከወንዝ የሚወስዱት ወንዙ ሲደርቅ ብቻ ይሁን። ገደላማ በሆነ የወንዝ ዳር አጠገብ በፍጹም አይቆፍሩ፣ ተንዶ ሊቀብርዎት ይችላል።
-children-water = ያጠራቀሙትን ውሃ ይክደኑ፣ ልጆችም እንዳይቀርቡት ይጠብቁ።
-keep-dry = አሸዋው ላይ በፍጹም ውሃ አያፍስሱ፣ ምክንያቱም እርጥብ አሸዋ ስኳር ድንቹን ያበሰብሳል።
# doubt: "ደርቆ ይሞታል" (dries up and dies) said of a cutting; "የሐረግ ቁራጭ" (piece of vine), so that nobody plants cut pieces of root.
-moist-soil = ማሳው ላይ እርጥበት ባለው አፈር ብቻ ይትከሉ፣ ምክንያቱም በደረቅ አፈር የተተከለ የሐረግ ቁራጭ ደርቆ ይሞታል።

## Dates and units

# Months of the Ethiopian calendar; the Gregorian date is not said. "ቀን" follows in the sentence.
date = { ethiopic-month } { SAY($ethiopic_day, form: "cardinal") }
# Recorded whole with its "ከ".
month-from = { $ethiopic_month ->
    [1] ከመስከረም
    [2] ከጥቅምት
    [3] ከኅዳር
    [4] ከታኅሣሥ
    [5] ከጥር
    [6] ከየካቲት
    [7] ከመጋቢት
    [8] ከሚያዝያ
    [9] ከግንቦት
    [10] ከሰኔ
    [11] ከሐምሌ
    [12] ከነሐሴ
   *[13] ከጳጉሜን
 }
date-from = { month-from } { SAY($ethiopic_day, form: "cardinal") }
# Recorded whole with its "እስከ".
month-until = { $ethiopic_month ->
    [1] እስከ መስከረም
    [2] እስከ ጥቅምት
    [3] እስከ ኅዳር
    [4] እስከ ታኅሣሥ
    [5] እስከ ጥር
    [6] እስከ የካቲት
    [7] እስከ መጋቢት
    [8] እስከ ሚያዝያ
    [9] እስከ ግንቦት
    [10] እስከ ሰኔ
    [11] እስከ ሐምሌ
    [12] እስከ ነሐሴ
   *[13] እስከ ጳጉሜን
 }
date-until = { month-until } { SAY($ethiopic_day, form: "cardinal") }
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
span = { DAY($from, form: "from") } { DAY($to, form: "until") } ባለው ጊዜ ውስጥ
span-two-days = { DAY($from) } ወይም { DAY($to) } ቀን
span-day = { DAY($from) } ቀን
unit-kilogram = { SAY($n, form: "cardinal") } ኪሎ
unit-litre = { SAY($n, form: "cardinal") } ሊትር
# Lengths and hands come in halves: $whole is the number below, $half says whether a half is added.
unit-metre = { $half ->
    [yes] { $whole ->
        [0] ግማሽ ሜትር
       *[other] { SAY($whole, form: "cardinal") } ሜትር ተኩል
     }
   *[no] { SAY($whole, form: "cardinal") } ሜትር
 }
unit-centimetre = { SAY($n, form: "cardinal") } ሳንቲ ሜትር
# doubt: "መዳፍ ከነጣቶቹ" (the palm with its fingers) for a hand from the wrist to the fingertips: "መዳፍ" alone is the palm,
# "እጅ" is also the arm, "ስንዝር" (a span) is longer.
unit-hand = { $half ->
    [yes] { $whole ->
        [0] ግማሽ መዳፍ ከነጣቶቹ
       *[other] { SAY($whole, form: "cardinal") } ተኩል መዳፍ ከነጣቶቹ
     }
   *[no] { SAY($whole, form: "cardinal") } መዳፍ ከነጣቶቹ
 }
unit-thumb-joint = { $half ->
    [yes] { $whole ->
        [0] ግማሽ የአውራ ጣት አንጓ
       *[other] { SAY($whole, form: "cardinal") } ተኩል የአውራ ጣት አንጓ
     }
   *[no] { SAY($whole, form: "cardinal") } የአውራ ጣት አንጓ
 }
unit-bucket = { SAY($n, form: "cardinal") } ባልዲ
unit-jerrycan = { SAY($n, form: "cardinal") } ጀሪካን
unit-bundle = { SAY($n, form: "cardinal") } እስር

## Opening and closing. $season says how the day stands to the rains, $variant which of three ways to say it.

opening = { $season ->
    [before] { $variant ->
        [1] በዚህ አካባቢ ዝናብ አብዛኛውን ጊዜ የሚጀምረው { DAY($rains) } ቀን ገደማ ነው።
        [2] የስኳር ድንች አርሶ አደሮች፣ ዝናብ ከሚጀምርበት ቀን ወደ ኋላ አብረን እንቁጠር። አብዛኛውን ጊዜ የሚጀምረው { DAY($rains) } ቀን ገደማ ነው።
       *[3] ለስኳር ድንችዎ የሚቀጥለው ሥራ ይህ ነው። ዝናብ አብዛኛውን ጊዜ የሚጀምረው { DAY($rains) } ቀን ገደማ ነው።
     }
    [near] { $variant ->
        [1] የስኳር ድንች አርሶ አደሮች፣ ዝናቡ በማንኛውም ቀን ሊጀምር ይችላል።
        [2] ዝናቡ በቅርቡ ሊጀምር ይችላል። ሰማዩንና አፈሩን ይመልከቱ።
       *[3] የስኳር ድንች አርሶ አደሮች፣ ይዘጋጁ። ዝናቡ ቀርቧል።
     }
    [after] { $variant ->
        [1] የስኳር ድንች አርሶ አደሮች፣ ዝናቡ ጀምሯል።
        [2] ዝናቡ ገብቷል። ለስኳር ድንችዎ የሚቀጥለው ሥራ ይህ ነው።
       *[3] የስኳር ድንች አርሶ አደሮች፣ ዝናቡ መጥቷል። ቀጥሎ የሚሠራውን ያዳምጡ።
     }
   *[later] { $variant ->
        [1] የስኳር ድንች አርሶ አደሮች፣ ቀጥሎ የሚሠራው ሥራ ይህ ነው።
        [2] ለስኳር ድንችዎ የሚቀጥለው ሥራ ይህ ነው።
       *[3] አሁን ደግሞ ወደ ስኳር ድንችዎና ወደሚቀጥለው ሥራ እንሂድ።
     }
 } { $kind ->
    [zone] የሚሰሙት መጠን { SAY($roots, form: "cardinal") } ስኳር ድንች ለሚያስቀምጥ ሰው ነው። ማሳዎ ሰፋ ያለ ከሆነ መጠኑን ይጨምሩ፣ ጠበብ ያለ ከሆነ ይቀንሱ።{ $season ->
        [before] {" "}ስኳር ድንቹ ከመቆፈሩ በፊት ለሚሠሩ ሥራዎች የሚሰሙት ቀን ቀድመው ለሚቆፍሩ እርሻዎች ነው። ዘግይተው የሚቆፍሩ ከሆነ፣ እነዚህን ሥራዎች በዚያው ያህል ቀን አዘግይተው ይሥሩ።
       *[later] {""}
     }
   *[other] {""}
 }
# doubt: "የግብርና ባለሙያ" for the extension worker; "የልማት ሠራተኛ" in many places. Polite forms fit either gender.
closing = { $variant ->
    [1] የግብርና ባለሙያዎ ከዚህ የተለየ ምክር ከሰጡዎት የእሳቸውን ምክር ይከተሉ።
    [2] የግብርና ባለሙያዎንም ይጠይቁ፣ ከሁሉ በፊት የእሳቸውን ምክር ይከተሉ።
   *[3] የግብርና ባለሙያዎ ምክር ከዚህ መልእክት ይቀድማል።
 }

## Steps

# doubt: "ችካል" (a peg) for the stick beside a marked plant.
mark-plants = ለዘር የሚሆን ስኳር ድንች የሚሰጡ ጤናማ ተክሎችን ይምረጡ። ይህን ሥራ { SPAN($when) } ይሥሩ። { $kind ->
    [group] በጋራ { SAY($plants, form: "cardinal") } ተክል ላይ ምልክት ያድርጉ። እያንዳንዱ አባል { SAY($plants_each, form: "cardinal") } ተክል ላይ ምልክት ያድርግ።
   *[other] { SAY($plants, form: "cardinal") } ተክል ላይ ምልክት ያድርጉ።
 } ቅጠላቸው ትልቅና ንጹሕ የሆነ፣ ምንም የበሽታ ምልክት የሌለባቸውን ጠንካራ ተክሎች ብቻ ይምረጡ። በእያንዳንዱ ተክል አጠገብ አንድ ችካል አፈሩ ውስጥ ይትከሉ። ከእነዚህ ተክሎች { SAY($roots, form: "cardinal") } ያህል የሚቀመጥ ስኳር ድንች ያገኛሉ። ያስታውሱ፣ { SAY($plants, form: "cardinal") } ተክል፣ እያንዳንዱ ከነችካሉ።
# doubt: "ሻካራ አሸዋ" for coarse sand and "ደቃቅ" for fine sand; "ከጣሪያ ሥር" (under a roof) for under cover.
gather-sand = ለስኳር ድንችዎ ማስቀመጫ የሚሆን አሸዋ ያምጡ። ይህን ሥራ { SPAN($when) } ይሥሩ። { MEASURE($bucket_l, unit: "litre") } በሚይዝ ባልዲ፣ { MEASURE($buckets, unit: "bucket") } ያህል ያስፈልግዎታል። ቅንጣቱ በጣት ሲታሽ የሚታወቅ፣ ንጹሕና ሻካራ አሸዋ ይውሰዱ። እስኪደርቅ ድረስ ከጣሪያ ሥር ዘርግተው ያቆዩት፣ ከቀዘቀዘ በኋላ ብቻም ይጠቀሙበት። ደቃቅ፣ እርጥብ ወይም ሙቅ አሸዋ ስኳር ድንቹን ያበሰብሳል። ያስታውሱ፣ { MEASURE($buckets, unit: "bucket") } ያህል ሻካራ፣ ደረቅና የቀዘቀዘ አሸዋ።
check-plants = ምልክት ያደረጉባቸውን የስኳር ድንች ተክሎች እንደገና ይመልከቱ። ይህን ሥራ { SPAN($when) } ይሥሩ። ትንሽ፣ የተጠቀለለ ወይም ነጠብጣብ ያለበት ቅጠል፣ የቀጨጨ ሐረግ፣ ወይም በግንዱ ግርጌ ቀዳዳ መኖሩን ይመልከቱ። ከእነዚህ አንዱን እንኳ ካዩ፣ ወይም ከተጠራጠሩ፣ ችካሉን ይንቀሉ።
# doubt: "ልጣጭ" for the skin of the root (it is also peel); "ግንድ" for the stem of a vine (it is also a trunk).
cut-vines = ምልክት ያደረጉባቸውን የስኳር ድንች ተክሎች ሐረግ ይቁረጡ። ይህን ሥራ { SPAN($when) } ይሥሩ። { MEASURE($stem_cm, unit: "centimetre") } ግንድ ሳይቆርጡ ያስቀሩ፣ ይህም { MEASURE($stem_hands, unit: "hand") } ያህል ነው። ከዚህ በኋላ የስኳር ድንቹ ልጣጭ ይጠነክራል፣ ስኳር ድንቹም ረዘም ላለ ጊዜ ሳይበላሽ ይቆያል።
# doubt: "ዶማ" for the hoe; elsewhere another tool digs the roots.
harvest = ምልክት ያደረጉባቸውን የስኳር ድንች ተክሎች ቆፍረው ያውጡ። ይህን ሥራ { SPAN($when) } ይሥሩ። አፈሩ እርጥብ ከሆነ እስኪደርቅ ይጠብቁ። ዶማው ስኳር ድንቹን እንዳይቆርጠው በጥንቃቄ ያውጡ። ርዝመቱ መዳፍዎን ከነጣቶቹ የሚያህል፣ ልጣጩ ያልተጎዳ { SAY($roots, form: "cardinal") } ስኳር ድንች ይምረጡ። አፈሩን በእጅ ያራግፉ፣ ስኳር ድንቹን በፍጹም አይጠቡት። ለጥቂት ሰዓታት ጥላ ሥር ያቆዩት። በዶማ የተቆረጠውን አያስቀምጡ፣ ነገር ግን ቶሎ አብስለው ይብሉት። ያስታውሱ፣ { SAY($roots, form: "cardinal") } ያልተጎዳ ስኳር ድንች ያስቀምጡ።
# doubt: "ሳፋ" for a basin and "ማሰሮ" for a clay pot; names of vessels differ by area. "ንጣፍ" for a layer.
fill-container = ስኳር ድንችዎን በደረቅ አሸዋ ውስጥ ይደርድሩ። ይህን ሥራ { SPAN($when) } ይሥሩ። { $container_kinds ->
    [one] { $containers ->
        [1] { MEASURE($container_l, unit: "litre") } ያህል የሚይዝ { SAY($containers, form: "cardinal") } ዕቃ ያስፈልግዎታል።
       *[other] እያንዳንዱ { MEASURE($container_l, unit: "litre") } ያህል የሚይዝ { SAY($containers, form: "cardinal") } ዕቃ ያስፈልግዎታል።
     }
   *[several] { SAY($containers, form: "cardinal") } ዕቃ ያስፈልግዎታል።
 } ሳፋ፣ ማሰሮ፣ ባልዲ ወይም ጥቅጥቅ ብሎ የተሠራ ቅርጫት ይጠቀሙ፣ ጆንያ ግን በፍጹም አይጠቀሙ። ዕቃውን በሚቆይበት ቦታ አስቀምጠው ይሙሉት። ቦታው ቀዝቃዛ፣ ደረቅና ጥላ ያለው፣ ከልጆች፣ ከእንስሳትና ከዝናብ የራቀ ይሁን። የዕቃውን ሥርና ጎን በወረቀት ያልብሱ። ከሥር { MEASURE($base_cm, unit: "centimetre") } አሸዋ ያንጥፉ። { $layer_widths ->
    [uneven] ከሥር ባለው የመጀመሪያ ንጣፍ ቢበዛ { SAY($roots_per_layer, form: "cardinal") } ስኳር ድንች ይደርድሩ። ከላይ ባለው የመጨረሻ ንጣፍ ደግሞ ቢበዛ { SAY($roots_top, form: "cardinal") } ይደርድሩ። በመካከል ባሉት ንጣፎች ቦታ የሚበቃቸውን ያህል ይደርድሩ።
   *[even] በእያንዳንዱ ንጣፍ ቢበዛ { SAY($roots_per_layer, form: "cardinal") } ስኳር ድንች ይደርድሩ።
 } ስኳር ድንቾቹ እርስ በርስም ሆነ ከዕቃው ጎን ጋር እንዳይነካኩ ያድርጉ። { $layers ->
    [1] { MEASURE($top_cm, unit: "centimetre") } አሸዋ ያልብሷቸው።
   *[other] { MEASURE($layer_cm, unit: "centimetre") } አሸዋ ያልብሷቸውና ቀጣዮቹን ይደርድሩ። በዚህ መንገድ { SAY($layers, form: "cardinal") } የስኳር ድንች ንጣፍ ይሥሩ፣ የመጨረሻውን ግን { MEASURE($top_cm, unit: "centimetre") } አሸዋ ያልብሱት።
 } ከላይ ያለው ብዙ አሸዋ አይጥን፣ ነፍሳትንና ዶሮን ይከላከላል። ክዳን አያድርጉበት፣ ውሃም አያፍስሱበት።
# doubt: "ቡቃያ" for the sprouts of the root; some say "ጉንቁል".
monthly-check = ያስቀመጡትን ስኳር ድንች በየወሩ ይፈትሹ። { $turn ->
    [next] የሚቀጥለው ፍተሻ
   *[first] የመጀመሪያው ፍተሻ
 } { DAY($first) } ቀን ነው። ሁሉንም አውጥተው አንድ በአንድ ይመልከቱ። { -bad-roots } ደህናዎቹ ላይ ያለውን ቡቃያ አሽተው ያርግፉ። እንደ በፊቱ አድርገው በደረቅ አሸዋ መልሰው ይደርድሯቸው። ስንት እንደቀሩ ይጻፉ። ከዚያ እስከሚቀጥለው ፍተሻ አይንኳቸው።
# doubt: "ክፍል" (a part) for a strip of the bed; "መተላለፊያ" for the path between.
prepare-bed = ለስኳር ድንችዎ የችግኝ መደብ ያዘጋጁ። ይህን ሥራ { SPAN($when) } ይሥሩ። ውሃ አጠገብ ያለ ቦታ ይምረጡ። የመደቡ ርዝመት { MEASURE($bed_length_m, unit: "metre") }፣ ወርዱ { MEASURE($bed_width_m, unit: "metre") } ይሁን። { $bed_parts ->
    [strips] መደቡን { SAY($strips, form: "cardinal") } ክፍል አድርገው ይሥሩ። የእያንዳንዱ ክፍል ወርድ { MEASURE($strip_width_m, unit: "metre") } ይሁን። በክፍሎቹ መካከል መተላለፊያ ይተዉ።
   *[one] {""}
 } አፈሩን በደንብ ያለስልሱት። ፍየልና ዶሮ እንዳይገቡ መደቡን በአጥር ይከልሉ።
last-check = ያስቀመጡትን ስኳር ድንች { DAY($first) } ቀን ለመጨረሻ ጊዜ ይፈትሹ። ሁሉንም አውጥተው አንድ በአንድ ይመልከቱ። { -bad-roots } አሁን ግን ቡቃያውን አያርግፉ። ደህናዎቹ አሁን መደቡ ላይ ይተከላሉ።
plant-bed = ስኳር ድንቹን በችግኝ መደቡ ላይ ይትከሉ። ይህን ሥራ { SPAN($when) } ይሥሩ። ዝናብ አይጠብቁ፣ ነገር ግን ከመትከልዎ በፊት መደቡ እርጥበት እስኪይዝ ውሃ ያጠጡ። { $bed_rows ->
    [1] የመደቡን ርዝመት ተከትለው { SAY($bed_rows, form: "cardinal") } ረድፍ ያውጡ።
   *[other] የመደቡን ርዝመት ተከትለው { SAY($bed_rows, form: "cardinal") } ረድፍ ያውጡ፣ ረድፎቹ { MEASURE($spacing_cm, unit: "centimetre") } ይራራቁ።
 } በእያንዳንዱ ረድፍ { SAY($row_roots, form: "cardinal") } ያህል ስኳር ድንች ይደርድሩ። ከአንዱ ስኳር ድንች እስከ ቀጣዩ { MEASURE($along_row_cm, unit: "centimetre") } ይሁን። ቡቃያውን አያርግፉ። { MEASURE($soil_cm, unit: "centimetre") } አፈር ያልብሷቸው። እንደገና ቀስ ብለው ውሃ ያጠጡ። አፈሩ እርጥበት ይኑረው እንጂ አይጨቅይ፣ ምክንያቱም የጨቀየ አፈር ስኳር ድንቹን ያበሰብሳል።
# "በየ" is written together with its number, so the usual numbers of days are recorded whole.
water-bed = የስኳር ድንቹን የችግኝ መደብ { DAY($first, form: "from") } ጀምሮ ውሃ ያጠጡ። { $shoots ->
    [before] ቡቃያው ከአፈር ብቅ እስኪል ድረስ { $water_every_days ->
        [1] በየቀኑ
        [2] በየሁለት ቀኑ
        [3] በየሦስት ቀኑ
        [4] በየአራት ቀኑ
        [5] በየአምስት ቀኑ
        [6] በየስድስት ቀኑ
        [7] በየሰባት ቀኑ
       *[other] { SAY($water_every_days, form: "cardinal") } ቀን በሞላ ቁጥር
     } { MEASURE($water_l_young, unit: "litre") } ያህል ያጠጡ። ይህም { MEASURE($jerrycan_l, unit: "litre") } በሚይዝ ጀሪካን፣ { MEASURE($jerrycans_young, unit: "jerrycan") } ያህል ነው። አፈሩ እርጥበት ይኑረው እንጂ አይጨቅይ፣ ምክንያቱም የጨቀየ አፈር ስኳር ድንቹን ያበሰብሳል። ቅጠሉ እያደገ ሲሄድ በየቀኑ ያጠጡ፣ ውሃውንም በየሳምንቱ ትንሽ ትንሽ ይጨምሩ።
   *[after] {""}
 } ቅጠሉ መደቡን ሲሸፍን በየቀኑ { MEASURE($water_l, unit: "litre") } ያህል ያጠጡ። ይህም { MEASURE($jerrycan_l, unit: "litre") } በሚይዝ ጀሪካን፣ { MEASURE($jerrycans, unit: "jerrycan") } ያህል ነው። ሙቀትና ነፋስ ባለበት ቀን ውሃውን ይጨምሩ። ዝናቡ ብቻውን የአፈሩን እርጥበት ሲጠብቅ ማጠጣቱን ያቁሙ።
# doubt: "ሲርስ" (when it is soaked) for soil that rain has soaked; "ሲያርሰው" would also be heard as ploughing.
# doubt: "አንጓ" for a leaf joint of the vine; "ቆረጣ" for one round of cutting vines from the bed; "አንድ ጣት ርዝመት" for a finger deep.
cut-for-planting = የስኳር ድንች ማሳዎ በዝናብ አንድ ጣት ርዝመት ወደ ታች እስኪርስ ይጠብቁ። ይህ የሚሆነው አብዛኛውን ጊዜ { SPAN($when) } ነው። ከዚያ ከችግኝ መደቡ የስኳር ድንች ሐረግ ይቁረጡ። ጤናማ ሐረግ ብቻ ይቁረጡ፣ ቅጠሉ ነጠብጣብ ያለበት፣ የተጠቀለለ ወይም በጣም ትንሽ የሆነውን አይውሰዱ። የእያንዳንዱ ቁራጭ ርዝመት { MEASURE($cutting_cm, unit: "centimetre") } ይሁን፣ ቢያንስ { SAY($nodes, form: "cardinal") } አንጓ ይኑረው። ተክሉ እንደገና እንዲያቆጠቁጥ፣ መደቡ ላይ { MEASURE($stub_cm, unit: "centimetre") } ግንድ ሳይቆርጡ ያስቀሩ። { $plan_by ->
    [practice] በተለመደው አሠራር፣ በመጀመሪያው ቆረጣ
   *[print] በመጀመሪያው ቆረጣ
 } { SAY($first_cuttings_low, form: "cardinal") } እስከ { SAY($first_cuttings_high, form: "cardinal") } ያህል ቁራጭ ይገኝ ይሆናል። ቁራጮቹን ጥላ ሥር ያቆዩ፣ በዚያው ቀን ወይም በማግስቱ ይትከሏቸው።
# doubt: "ተረተር" for a ridge and "የአፈር ቁልል" for a mound; local words may be better.
plant-field = የስኳር ድንች ማሳዎ በዝናብ አንድ ጣት ርዝመት ወደ ታች ሲርስ ሐረጉን ይትከሉ። ይህ የሚሆነው አብዛኛውን ጊዜ { SPAN($when) } ነው። { $layout ->
    [own] እያንዳንዱ አርሶ አደር በራሱ ተረተር ወይም የአፈር ቁልል ላይ ይትከል።
    [mounds] በእያንዳንዱ የአፈር ቁልል ላይ { SAY($on_mound, form: "cardinal") } የሐረግ ቁራጭ ይትከሉ፣ ቁልሎቹም { MEASURE($between_cm, unit: "centimetre") } ይራራቁ።
   *[ridges] ተረተሩ ላይ { MEASURE($along_cm, unit: "centimetre") } እያራራቁ አንድ አንድ የሐረግ ቁራጭ ይትከሉ፣ ተረተሮቹም { MEASURE($between_cm, unit: "centimetre") } ይራራቁ።
 } ከእያንዳንዱ የሐረግ ቁራጭ ሁለት ወይም ሦስት አንጓ ይቅበሩ፣ ጫፉን ግን ከአፈሩ በላይ ያስቀሩ። ከሁለት ሳምንት በኋላ፣ ቁራጭ በሞተበት ቦታ ላይ እንደገና ይትከሉ።
# doubt: "ነቀዝ" (weevil, best known from stored grain) for the sweet potato weevil.
first-harvest = የመጀመሪያዎቹን ስኳር ድንቾች ይሞክሩ። ይህን ሥራ { SPAN($when) } ይሥሩ። በአንዳንድ ተክሎች ሥር በእጅ ዳስሰው ለመብል የሚበቃ ትልቅ ስኳር ድንች ይፈልጉ። የደረሰውን በደረቅ አፈር ውስጥ ለረጅም ጊዜ አይተዉት፣ ምክንያቱም ነቀዝ ያጠቃዋል። የመጨረሻዎቹን { DAY($last_harvest, form: "until") } ድረስ ቆፍረው ይጨርሱ።

## Cautions

caution-rot = ከተበላሸ ስኳር ድንች ይጠንቀቁ። { -bad-roots } ደህናውን ክፍል ለማትረፍ ብለው አይቁረጡት፣ አይላጡት፣ አያብስሉትም። ደህና የሚመስለው ክፍል እንኳ መርዝ ሊኖረው ይችላል። ከተጠራጠሩ እንደ ተበላሸ ይቁጠሩት።
caution-virus = በስኳር ድንች ተክል ላይ ትንሽ፣ የተጠቀለለ ወይም ነጠብጣብ ያለበት ቅጠል የበሽታ ምልክት ነው። የቀጨጨ ሐረግም እንዲሁ የበሽታ ምልክት ነው። { -take-nothing }
caution-cracks = ነቀዝ በአፈር ስንጥቅ በኩል ወደ ስኳር ድንቹ ይደርሳል። ስንጥቅ ሲያዩ አፈር ቆልለው ይሸፍኑት።
caution-heavy-sand = ጥንቃቄ ያድርጉ፣ አሸዋ ከባድ ነው። በአንድ ጊዜ ቢበዛ { MEASURE($load_kg, unit: "kilogram") } ብቻ ይሸከሙ። የስኳር ድንቹን ማስቀመጫ ዕቃ በሚቆይበት ቦታ አስቀምጠው ይሙሉት። ከሞላ በኋላ በፍጹም አያንሱት።
caution-riverbed = ከወንዝ አሸዋ ሲወስዱ ይጠንቀቁ። { -dry-riverbed }
caution-water-children = ውሃ ባለበት ቦታ ለልጆች ይጠንቀቁ። { -children-water } የውሃ ጉድጓድንና ሌላ ጉድጓድን በአጥር ይከልሉ። ፍየልና ዶሮ ወደ መደቡ አያስገቡ።
caution-store-dry = የተቀመጠው ስኳር ድንች ያለበት አሸዋ ከመጀመሪያው ቀን እስከ መጨረሻው ቀን ደረቅ መሆን አለበት። { -keep-dry }
# doubt: "ትንበያ" for a forecast.
caution-forecast = እነዚህ ቀኖች ካለፉት ዓመታት የተገኙ ናቸው እንጂ ትንበያ አይደሉም። ዘንድሮ ዝናቡ ሊቀድም ወይም ሊዘገይ ይችላል። ሰማዩንና አፈሩን ይመልከቱ። { -moist-soil }
caution-try-first = ይህ ለእርስዎ አዲስ ከሆነ በጥቂት ስኳር ድንች ይጀምሩ። ከሐረግዎም የተወሰነውን በለመዱት መንገድ ያቆዩ።

## What the plan leads to

remark-late-work = የስኳር ድንች ሥራው በከፊል በጊዜው ስላልተሠራ፣ ቀኖቹ እንደገና ተቆጥረዋል። አሁንም ሊሠራ የሚችለውን ሁሉ ወዲያውኑ ይሥሩ። ማሳው ላይ { DAY($field_from, form: "from") } ጀምሮ መትከል ይቻላል።{ $fewer ->
    [0] {""}
   *[other] {" "}በመጀመሪያው ቆረጣ { SAY($fewer, form: "cardinal") } ያህል የሐረግ ቁራጭ ይጎድላል።
 }
remark-fast-loss = { DAY($day) } ቀን በተደረገው ፍተሻ { SAY($roots, form: "cardinal") } ስኳር ድንች ታይቶ ደህና የተገኘው { SAY($healthy, form: "cardinal") } ብቻ ነው። { $next ->
    [bed] ደህናዎቹን አሁኑኑ መደቡ ላይ ይትከሉ፣ ለተከላ የሚሆን ተጨማሪ ሐረግም ይፈልጉ።
   *[check] ምክንያቱን ይፈልጉ። አሸዋው እርጥብ ወይም ሙቅ፣ ስኳር ድንቹ የተቆረጠ፣ የተነካካ ወይም ነቀዝ ያለበት ሊሆን ይችላል። ሌላ ደረቅ አሸዋ ይጠቀሙ። ከሁለት ሳምንት በኋላ እንደገና ይፈትሹ። ሌላም ብዙ ከበሰበሰ፣ ደህናዎቹን ወዲያውኑ ውሃ በሚጠጣ መደብ ላይ ይትከሉ።
 }
remark-limited-at-hand = { $limit ->
    [roots] የሚያስቀምጡት { SAY($roots, form: "cardinal") } ስኳር ድንች አለዎት።
    [plants] ተክሎችዎ { SAY($roots, form: "cardinal") } ያህል የሚቀመጥ ስኳር ድንች ይሰጣሉ።
   *[bed] መደቡ { SAY($roots, form: "cardinal") } ስኳር ድንች ይይዛል።
 } ለማሳው በሙሉ { SAY($wanted, form: "cardinal") } ያስፈልጋል። ማሳዎ { SAY($field_m2, form: "cardinal") } ካሬ ሜትር ነው። ያለዎት ስኳር ድንች ግን የሚበቃው { SAY($area_m2, form: "cardinal") } ካሬ ሜትር ያህል ለመትከል ነው። ጠበብ ባለ ማሳ ላይ ይትከሉ፣ ወይም ጎረቤቶችን የሐረግ ቁራጭ ይጠይቁ።
remark-containers-too-small = ሊያስቀምጡ ያሰቡት { SAY($roots, form: "cardinal") } ስኳር ድንች ነው። ዕቃው የሚይዘው ግን { SAY($fit, form: "cardinal") } ብቻ ነው። ከዚያ በላይ አጭቀው አያስገቡ፣ ምክንያቱም ስኳር ድንች ሲነካካ ይበሰብሳል። ማሳዎ { SAY($field_m2, form: "cardinal") } ካሬ ሜትር ነው። ይህ ግን የሚበቃው { SAY($area_m2, form: "cardinal") } ካሬ ሜትር ያህል ለመትከል ነው። { $more ->
    [0] ተጨማሪ ስኳር ድንች ለማስቀመጥ ሌላ ዕቃ ይፈልጉ፣ ወይም ጠበብ ባለ ማሳ ላይ ይትከሉ።
    [1] ተጨማሪ ስኳር ድንች ለማስቀመጥ አንድ ሌላ ዕቃ ይፈልጉ፣ ወይም ጠበብ ባለ ማሳ ላይ ይትከሉ።
   *[other] ተጨማሪ ስኳር ድንች ለማስቀመጥ { SAY($more, form: "cardinal") } ሌላ ዕቃ ይፈልጉ፣ ወይም ጠበብ ባለ ማሳ ላይ ይትከሉ።
 }
remark-sand-short = ሊያስቀምጡ ያሰቡት { SAY($roots, form: "cardinal") } ስኳር ድንች ነው። አሸዋዎ የሚሸፍነው ግን { SAY($fit, form: "cardinal") } ብቻ ነው። አሸዋ የማይሸፍነውን ስኳር ድንች አያስቀምጡ። ማሳዎ { SAY($field_m2, form: "cardinal") } ካሬ ሜትር ነው። ይህ ግን የሚበቃው { SAY($area_m2, form: "cardinal") } ካሬ ሜትር ያህል ለመትከል ነው። ተጨማሪ { MEASURE($more_l, unit: "litre") } አሸዋ ያምጡ፣ ወይም ጠበብ ባለ ማሳ ላይ ይትከሉ።
remark-water-limits = መደቡ ላይ ሊተክሉ ያሰቡት { SAY($roots, form: "cardinal") } ስኳር ድንች ነው። ውሃዎ የሚበቃው ግን { SAY($fit, form: "cardinal") } ለሚይዝ መደብ ብቻ ነው። መደቡ እዚህ ከተነገረው መጠን አይብለጥ፣ እርጥበቱንም ይጠብቁ። ማሳዎ { SAY($field_m2, form: "cardinal") } ካሬ ሜትር ነው። ይህ ግን የሚበቃው { SAY($area_m2, form: "cardinal") } ካሬ ሜትር ያህል ለመትከል ነው። ማሳውን በሙሉ ለመትከል { $per ->
    [all] በጠቅላላው
   *[day] በየቀኑ
 } ተጨማሪ { MEASURE($more_l, unit: "litre") } ውሃ ይፈልጉ።
remark-hands-short = መደቡ ላይ ሊተክሉ ያሰቡት { SAY($roots, form: "cardinal") } ስኳር ድንች ነው። ውሃ የሚሸከሙት ሰዎች ማጠጣት የሚችሉት ግን { SAY($fit, form: "cardinal") } የሚይዝ መደብ ብቻ ነው። መደቡ እዚህ ከተነገረው መጠን አይብለጥ፣ እርጥበቱንም ይጠብቁ። ማሳዎ { SAY($field_m2, form: "cardinal") } ካሬ ሜትር ነው። ይህ ግን የሚበቃው { SAY($area_m2, form: "cardinal") } ካሬ ሜትር ያህል ለመትከል ነው። ማሳውን በሙሉ ለመትከል ውሃ የሚሸከሙ ሰዎች ይጨምሩ፣ ወይም መደቡን ወደ ውሃው አቅርበው ይሥሩ።
remark-water-short = { DAY($from, form: "from") } ጀምሮ ለስኳር ድንቹ መደብ ውሃ ሊያንስ ይችላል። ተጨማሪ ውሃ ይፈልጉ። አፈሩን በደረቅ ሣር መሸፈንና ጥላ ማድረግ ውሃ ይቆጥባል። እነዚህ ከሌሉ አነስ ያለ መደብ ይሥሩ፣ ጠበብ ባለ ማሳ ላይም ይትከሉ።
remark-water-heavy = ደረቅ በሆኑ ቀኖች ለስኳር ድንቹ መደብ በቀን { SAY($trips, form: "cardinal") } ጊዜ ወደ ውሃ መመላለስ ያስፈልጋል። ውሃ መሸከሙም በቀን { SAY($hours, form: "cardinal") } ሰዓት ያህል ይወስዳል። ማን እንደሚሸከም ከአሁኑ ያቅዱ፣ ወይም አነስ ያለ መደብ ይሥሩ።
remark-rains-too-soon = ዝናቡ { DAY($rains) } ቀን ገደማ ሊጀምር ይችላል። ከምርቱ እስከ ዝናቡ ያለው ጊዜ ስኳር ድንች ለማስቀመጥ በጣም አጭር ነው። ከማስቀመጥ ይልቅ ከአሁኑ ማሳ ሐረግ ወስደው ይትከሉ፣ ወይም ስኳር ድንቹን ወዲያውኑ መደቡ ላይ ይትከሉ።
remark-storing-not-needed = እዚህ ደረቁ ጊዜ በአብዛኛዎቹ ዓመታት { SAY($days, form: "cardinal") } ቀን ያህል ይቆያል። የስኳር ድንች ሐረግ ይህን ያህል ጊዜ በሕይወት ሊቆይ ስለሚችል፣ ስኳር ድንቹን ማስቀመጥ አያስፈልግዎትም። ከአሁኑ ማሳ የተወሰነውን ሳይቆፍሩ ይተዉ፣ ወይም ሐረግ ውሃ በሚጠጣ ትንሽ ቦታ ያቆዩ።
remark-long-in-sand = ስኳር ድንችዎ { SAY($days, form: "cardinal") } ቀን በአሸዋ ውስጥ መቆየት አለበት። ይህን ያህል ጊዜ ቆይቶ ምን ያህሉ እንደሚተርፍ የቆጠረ የለም። ስለዚህ ውሃ አጠገብ የተወሰነ ሐረግም ያሳድጉ፣ የግብርና ባለሙያዎንም ይጠይቁ።
remark-bed-late = የስኳር ድንቹ መደብ የመጀመሪያዎቹን ቁራጮች የሚሰጠው ዝናቡ ከጀመረ በኋላ፣ { DAY($cut) } ቀን ገደማ ነው። አፈሩ በዝናብ በደንብ ሲርስ ያለዎትን ሐረግ ይትከሉ። የቀረውን ማሳ በኋላ ከመደቡ በሚቆርጡት ይሞሉታል።
remark-field-waits = የስኳር ድንች ማሳዎ { SAY($field_m2, form: "cardinal") } ካሬ ሜትር ነው። የመጀመሪያው ቆረጣ የሚሸፍነው { SAY($area_m2, form: "cardinal") } ካሬ ሜትር ያህል ነው። ቀሪውን የኋለኞቹ ቆረጣዎች ይሸፍኑታል፣ እያንዳንዳቸው { SAY($least_days, form: "cardinal") } እስከ { SAY($most_days, form: "cardinal") } ቀን ቆይተው ይደርሳሉ።
remark-cuttings-short = በመጀመሪያው ቆረጣ { SAY($short, form: "cardinal") } ያህል የስኳር ድንች ሐረግ ቁራጭ ይጎድላል። ማሳዎ { SAY($field_m2, form: "cardinal") } ካሬ ሜትር ነው። አፈሩ በዝናብ በደንብ ሲርስ { SAY($area_m2, form: "cardinal") } ካሬ ሜትር ያህሉን ይትከሉ። { $later_cuts ->
    [0] በኋላ የሚቆረጠው ለመድረስ ጊዜ ስለማይበቃው፣ ጎረቤቶችን ቀደም ብለው ሐረግ ይጠይቁ።
   *[other] በኋለኞቹ ቆረጣዎች ከማሳው ተጨማሪ ይተከላል። ጎረቤቶችንም ቀደም ብለው ሐረግ መጠየቅ ይችላሉ።
 }
remark-rains-too-short = እዚህ የዝናቡ ጊዜ ለስኳር ድንች አጭር ነው። { $known ->
    [case] የሚተክሉት ዝናቡ ከማብቃቱ በፊት ላይደርስ ይችላል።
    [open] ስኳር ድንቹ ዝናቡ ከማብቃቱ በፊት ስንት ጊዜ እንደሚደርስ የሚያውቅ የለም።
   *[record] ከመቶ ዓመታት ውስጥ ዝናቡ ሳያበቃ ስኳር ድንቹ የሚደርስባቸው { SAY($of_100, form: "cardinal") } ብቻ ናቸው።
 } { $helps ->
    [on-time] አፈሩ በዝናብ በደንብ እንደራሰ መትከል እንዲችሉ መደቡን ቀደም ብለው ይሥሩ።
    [quicker] አፈሩ በዝናብ በደንብ እንደራሰ ይትከሉ፣ ቶሎ የሚደርስ ዝርያም ይፈልጉ።
   *[neither] አፈሩ በዝናብ በደንብ እንደራሰ ይትከሉ፣ ስኳር ድንቹ ግን ትንንሽና ጥቂት እንደሚሆን ይወቁ።
 }
remark-cuts-too-late = በኋለኞቹ ቆረጣዎች ተቆርጦ { DAY($from, form: "from") } ጀምሮ የሚተከል ስኳር ድንች የሚደርሰው { DAY($ripe) } ቀን ገደማ ነው። በአብዛኛዎቹ ዓመታት ዝናቡ ከዚያ በፊት ያበቃል። ለኋለኞቹ ቆረጣዎች ብለው የማሳውን ክፍል ባዶ አይተዉ። ያንን ሐረግ ለከብት መኖ ያውሉት፣ ወይም ውሃ ባለበት ቦታ ያሳድጉት።
remark-rains-may-be-late = ዝናቡ { DAY($late, form: "until") } ድረስ ሊዘገይ ይችላል። እስኪመጣ ድረስ የስኳር ድንቹን መደብ ውሃ ያጠጡ። { -moist-soil }
remark-years-without-rains = ካለፉት { SAY($judged, form: "cardinal") } ዓመታት ውስጥ ዝናቡ በደንብ ያልጀመረባቸው { SAY($count, form: "cardinal") } ናቸው። በእንዲህ ያለ ዓመት በመጀመሪያው ዝናብ የተተከለ የስኳር ድንች ሐረግ ሊሞት ይችላል። የተወሰነ ስኳር ድንች በመጠባበቂያ ያቆዩ፣ ወይም ከመደቡ የተወሰነውን ክፍል ማጠጣትዎን ይቀጥሉ።

## Questions for a meeting, each after its step

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
