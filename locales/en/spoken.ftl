### English, as spoken on radio and phones.
### Every literal text is recorded as it stands here, cut at the { … }.
### No digits, no abbreviations. Numbers: SAY, days: DAY and SPAN, measures: MEASURE.

## Dates and units

date = the { SAY($day, form: "day") } of { month }
week = the { $week ->
    [1] first
    [2] second
    [3] third
    [4] fourth
   *[5] last
 } week of { month }
span = between { DAY($from) } and { DAY($to) }
span-day = on { DAY($from) }
unit-kilogram = { SAY($n, form: "cardinal") } { $n ->
    [one] kilogram
   *[other] kilograms
 }
unit-litre = { SAY($n, form: "cardinal") } { $n ->
    [one] litre
   *[other] litres
 }
unit-metre = { SAY($n, form: "cardinal") } { $n ->
    [one] metre
   *[other] metres
 }
unit-centimetre = { SAY($n, form: "cardinal") } { $n ->
    [one] centimetre
   *[other] centimetres
 }
unit-hand = { SAY($n, form: "cardinal") } { $n ->
    [one] hand
   *[other] hands
 }
unit-thumb-joint = { SAY($n, form: "cardinal") } { $n ->
    [one] thumb joint
   *[other] thumb joints
 }
unit-jerrycan = { SAY($n, form: "cardinal") } { $n ->
    [one] jerrycan
   *[other] jerrycans
 }
unit-bundle = { SAY($n, form: "cardinal") } { $n ->
    [one] bundle
   *[other] bundles
 }

## Opening and closing

opening = Sweet potatoes, from this harvest to the next rains. { $kind ->
    [zone] The rains are expected about { WEEK($rains) }. The amounts you hear are for { SAY($roots, form: "cardinal") } roots. Take more or fewer for your field.
   *[other] The rains are expected about { DAY($rains) }.
 }
closing = Your extension worker knows the varieties, dates and rules of your area. Where this message says otherwise, follow that advice.

## Steps

mark-plants = Choose your mother plants { SPAN($when) }. Mark { SAY($plants, form: "cardinal") } strong plants. { $kind ->
    [group] Each member marks { SAY($plants_each, form: "cardinal") }.
   *[other] Put a stick beside each one.
 } Take only plants with big, clean leaves and no sign of sickness. They will give about { SAY($roots, form: "cardinal") } roots to store.
gather-sand = Bring dry sand { SPAN($when) }. You need { MEASURE($sand_l, unit: "litre") }, about { MEASURE($sand_kg, unit: "kilogram") }. Take coarse, clean sand. Dry it under cover and let it cool. Fine, damp or warm sand makes roots rot.
check-plants = Look at the marked plants again { SPAN($when) }. Look for small, curled or spotted leaves, stunted vines, and holes at the foot of the stem. Where you doubt, pull the stick out and take nothing from that plant.
cut-vines = Cut the vines of the marked plants { SPAN($when) }. Leave a hand's length of stem. The skin of the roots toughens, and they keep longer.
harvest = Dig the roots { SPAN($when) }. Dig only in dry soil, and lift without wounding. Take { SAY($roots, form: "cardinal") } medium roots, about as long as your hand, with whole skin. Wounded roots go to the kitchen, not to the store. Brush the soil off by hand and never wash them. Leave them some hours in the shade.
fill-container = Lay the roots in sand { SPAN($when) }. Use a basin, a pot, a bucket or a tight basket. No sacks. Line it with paper, and fill it where it will stay: cool, dry and shaded, away from children, animals and rain. You need { SAY($containers, form: "cardinal") } { $containers ->
    [one] container.
   *[other] containers.
 } Start with { MEASURE($base_cm, unit: "centimetre") } of sand. { $layer_widths ->
    [uneven] Lay at most { SAY($roots_per_layer, form: "cardinal") } roots in the lowest layer, and at most { SAY($roots_top, form: "cardinal") } in the highest.
   *[even] Lay at most { SAY($roots_per_layer, form: "cardinal") } roots in a layer.
 } They must not touch each other or the side. Cover them with { MEASURE($layer_cm, unit: "centimetre") } of sand, and lay the next. Make { SAY($layers, form: "cardinal") } { $layers ->
    [one] layer.
   *[other] layers.
 } End with { MEASURE($top_cm, unit: "centimetre") } of sand. It keeps out rats, insects and fowl. Put no lid on it.
monthly-check = Check the roots every month, { $turn ->
    [next] next on
   *[first] first on
 } { DAY($first) }. Take out every root and look at it. Bury deep, or burn, every root that is rotten, mouldy or bored. Rub off the sprouts. Pack the good roots again in the same way, and write down how many are left. Between checks leave them alone.
prepare-bed = Make the seedbed { SPAN($when) }. Make it { MEASURE($bed_length_m, unit: "metre") } long and { MEASURE($bed_width_m, unit: "metre") } wide, close to water. Loosen the soil well. Fence it against goats and chickens.
last-check = Check the roots for the last time on { DAY($first) }. Bury deep, or burn, every root that is rotten, mouldy or bored. This time leave the sprouts on. The good roots go to the bed now.
plant-bed = Plant the roots in the bed { SPAN($when) }. Lay them in rows, about { MEASURE($spacing_cm, unit: "centimetre") } apart. Make { SAY($bed_rows, form: "cardinal") } { $bed_rows ->
    [one] row.
   *[other] rows.
 } Cover them lightly with soil.
water-bed = Water the bed { SPAN($when) }. When it is full of leaves, give { MEASURE($water_l, unit: "litre") } every day. That is { MEASURE($jerrycans, unit: "jerrycan") }. Young plants need less. Hot, windy days need more. Stop when the rain does the work.
cut-for-planting = When the rains have come, { SPAN($when) }, cut vines to plant. Cut pieces of { MEASURE($cutting_cm, unit: "centimetre") }, with at least { SAY($nodes, form: "cardinal") } nodes, only from healthy shoots. { $plan_by ->
    [practice] By common practice, the first cut gives about
   *[print] The first cut gives about
 } { SAY($first_cuttings_low, form: "cardinal") } to { SAY($first_cuttings_high, form: "cardinal") } cuttings. Leave stubs. They give more in four to six weeks. Keep cuttings in the shade, and plant them within two days.
plant-field = Plant the field { SPAN($when) }, but only when the soil is moist. { $layout ->
    [own] Each farm plants on its own ridges or mounds.
    [mounds] Put { SAY($on_mound, form: "cardinal") } cuttings on each mound.
   *[ridges] Put a cutting every { MEASURE($along_cm, unit: "centimetre") } on the ridge.
 } Bury two or three nodes. After two weeks plant the gaps again.
first-harvest = Try the first roots { SPAN($when) }. Feel under some plants for roots of eating size. Do not leave ripe roots in dry ground for long. Weevils find them. Dig the last ones by { DAY($last_harvest) }.

## Cautions

caution-rot = Take care. Never eat rotten, mouldy or bored roots. Never feed them to animals, and do not plant them. Do not cut off the bad part and eat the rest. Even parts that look sound can be poisonous. Bury such roots deep or burn them.
caution-virus = Take care. Spotted, small or twisted leaves and stunted vines are signs of virus. Never take roots or vines from such a plant.
caution-cracks = Weevils reach the roots through cracks in the soil. Heap soil over cracks as soon as you see them.
caution-heavy-sand = Take care, sand is heavy. Carry at most { MEASURE($load_kg, unit: "kilogram") } at a time. Fill the container where it will stay, and do not lift it when it is full.
caution-riverbed = Take care at a riverbed. Take sand from a riverbed only when it is dry. Never dig under a steep bank or near it. It can fall and bury you. Take sand only where local rules allow it.
caution-water-children = Take care of children. Do not let them play near water, wells or pits. Cover stored water, and fence wells and pits. Keep goats and chickens out of the bed.
caution-store-dry = Never water the store. The sand must stay dry from the first day to the last.
caution-forecast = These dates are averages of past years, not a forecast for this one. Rains may come earlier or later. Plant only when the soil is moist.
caution-try-first = If this is new to you, begin with a few roots, and keep some of your vines in the old way as well.

## Questions for a meeting, each after its step

ask-mark-plants = Which plants in your field are the strongest?
ask-gather-sand = Who has dry sand nearby, and how do we dig it safely?
ask-check-plants = What do sick plants look like here?
ask-cut-vines = What could go wrong if you cut too short?
ask-harvest = How will you keep the roots from being wounded?
ask-fill-container = Where in your home is it cool and dry, away from children and animals?
ask-monthly-check = What do you see when roots go bad, and where do you bury them?
ask-prepare-bed = Where is there water, and who keeps the children safe?
ask-last-check = How many of your roots have sprouted?
ask-plant-bed = What could keep you from planting in time?
ask-water-bed = Who will water when you are away?
ask-cut-for-planting = How do you know that the rains have come?
ask-plant-field = Which part of the field will you plant first?
ask-first-harvest = Which vines will you keep for the next season?

## Remarks on a plan. A pack may still lack them: they are then not spoken.

remark-containers-too-small = The containers at hand are too small: { SAY($left_over, form: "cardinal") } roots have no room. Find more containers before the harvest, or plant less field.
remark-limited-at-hand = What is at hand allows { SAY($roots, form: "cardinal") } roots to be stored, but the field wants { SAY($wanted, form: "cardinal") }. Plant less field, find more plants or roots, or ask neighbours for cuttings.
remark-nothing-at-hand = What is at hand allows no root to be stored. Find more plants or more room, or get vines from neighbours when the rains begin.
remark-rains-too-soon = The rains are expected about { DAY($rains) }. That is too soon after the harvest to store roots. Plant vines from the old field instead, or sprout the roots at once and plant late.
remark-bed-late = The bed gives its first cuttings about { DAY($cut) }, when the rains have begun already. Plant what vines you have when the rains begin. The bed fills the rest.
remark-long-in-sand = The roots must stay in the sand for { SAY($days, form: "cardinal") } days. Nobody has counted how many survive for so long. Store more roots, and ask your extension worker.
remark-late-work = Some work was not done when it was due. The dates you hear are counted anew. Do at once what can still be done. The field can then be planted from { DAY($field_from) }.
remark-fast-loss = Many roots were lost by { DAY($day) }. { SAY($healthy, form: "cardinal") } healthy roots are left of { SAY($roots, form: "cardinal") }. Look for the reason: damp or warm sand, wounded roots, roots that touch, or weevils. Change the sand, and check again in two weeks.
remark-cuttings-short = The first cut will be about { SAY($short, form: "cardinal") } cuttings short. It is enough for { SAY($area_m2, form: "cardinal") } square metres when the rains begin. Wait for the later cuts, or get vines from neighbours or a vine grower.
remark-years-without-rains = The rains of { SAY($judged, form: "cardinal") } past years are known. They never began well in { SAY($count, form: "cardinal") } of these years. In such a year vines planted on the first rain may die. Keep some roots or a watered bed back.
