### English, as printed on sheets.
### Values a message may use are listed in the README, "If you translate".

## Words of the sheet itself

sheet-title = Sweet potatoes: from this harvest to the next rains
sheet-for = For
sheet-place = Place
sheet-rains = Rains expected
sheet-harvest = Harvest of the old field
sheet-amounts = What you need
sheet-steps = What to do, and when
sheet-cautions = Take care
sheet-when = When
# Between a label and its value, with the space before it that the language wants.
colon = :
semicolon = ;
sheet-page = Page
sheet-group = Group
sheet-together = Together
status-draft = Draft wording: no fluent speaker has read it yet.
status-read = Wording read by a fluent speaker, not yet approved.
status-approved = Wording approved.

## Words of the cue sheet

cue-title = Message
cue-language = Language
cue-voice = Voice
cue-rights = Rights
cue-status = State of the voice
cue-length = Length
cue-loudness = Loudness
cue-true-peak = True peak
cue-from = From
cue-to = To
cue-words = Words
cue-clip = Clip
voice-stand-in = stand-in
voice-draft = recorded, not yet approved
voice-approved = approved
voice-stand-in-remark = This is a stand-in voice made by a machine. It is to be replaced by a person.

## Amounts

amount-plants = Plants to mark
amount-plants-each = Plants each member marks
amount-roots = Roots to store
amount-cuttings = Cuttings for the field
amount-first-cuttings = Cuttings expected at the first cut
amount-containers = Containers
amount-layers = Layers of roots in a container
amount-roots-per-layer = { $layer_widths ->
    [uneven] Roots in the lowest layer, at most
   *[even] Roots in each layer, at most
 }
amount-roots-top-layer = Roots in the highest layer, at most
amount-bundles = Bundles of cuttings
amount-lining = Paper to line the containers
amount-water-total = Water for the bed, all season
amount-sand = Dry sand
amount-loads = Loads of sand to carry
amount-bed = Seedbed
amount-strips = Strips of the seedbed, with paths of { MEASURE($path_m, unit: "metre") } between them
amount-water = Water for the bed, each day
amount-jerrycans = Jerrycans of water, each day

first-cuttings-value = { $first_cuttings_low } to { $first_cuttings_high }{ $plan_by ->
    [practice] , by common practice
   *[print] , by days of growth
 }
sand-value = { MEASURE($sand_l, unit: "litre") }, about { MEASURE($sand_kg, unit: "kilogram") }
bed-value = { MEASURE($bed_length_m, unit: "metre") } × { MEASURE($bed_width_m, unit: "metre") }
strips-value = { $strips }, each { MEASURE($strip_length_m, unit: "metre") } × { MEASURE($strip_width_m, unit: "metre") }
water-value = { MEASURE($water_l, unit: "litre") }
water-total-value = { MEASURE($water_total_l, unit: "litre") }
bundles-value = { MEASURE($bundles, unit: "bundle") }, each of { $bundle_size }
lining-value = { $lining_m2 } m²
roots-for-zone = { $roots } (a round number; scale it to each field)

## Dates and units

# Names of months and weekdays come from Unicode CLDR: month, month-short, weekday, ethiopic-month.
# In date, date-short and week: $day, $month, $year, $weekday (1 is Monday), $week (of the month, 1 to 5), and
# $ethiopic_day, $ethiopic_month, $ethiopic_year of the Ethiopian calendar.
date = { $day } { month } { $year }
# For text messages on phones: as short as can be understood.
date-short = { $day } { month-short }
week = the { $week ->
    [1] first
    [2] second
    [3] third
    [4] fourth
   *[5] last
 } week of { month }
span = { DAY($from) } – { DAY($to) }
span-day = { WEEKDAY($from) }, { DAY($from) }
unit-kilogram = { $n } kg
unit-litre = { $n } L
unit-metre = { $n } m
unit-centimetre = { $n } cm
unit-hand = { $n } { $n ->
    [one] hand
   *[other] hands
 }
unit-thumb-joint = { $n } { $n ->
    [one] thumb joint
   *[other] thumb joints
 }
unit-jerrycan = { $n } { $n ->
    [one] jerrycan
   *[other] jerrycans
 }
unit-bundle = { $n } { $n ->
    [one] bundle
   *[other] bundles
 }
# Counted from a local event of the case, such as a feast; $event is its name, $days how far.
event-before = { $days } { $days ->
    [one] day
   *[other] days
 } before { $event }
event-on = on { $event }
event-after = { $days } { $days ->
    [one] day
   *[other] days
 } after { $event }

## Opening and closing

opening = { $kind ->
    [zone] This plan is for every farmer in the area. Its amounts are for { $roots } roots: take more or fewer for your field.
   *[other] This plan is counted back from the rains. They are expected about { DAY($rains) }.
 }
closing = Your extension worker knows the varieties, dates and rules of your area. Where this sheet says otherwise, follow that advice.
    .sms = The advice of your extension worker comes first.

## Steps: title, text (.text), picture in words (.alt), text message on a phone (.sms, 160 letters or less where it can be)

mark-plants = Mark { $plants } healthy plants
    .short = Strong plants with big, clean leaves, no sickness. A stick beside each.
    .text = { $kind ->
        [group] Together choose { $plants } strong plants; each member marks { $plants_each }.
       *[other] Choose { $plants } strong plants.
     } Put a stick beside each one. Take only plants with big, clean leaves and no sign of sickness. They will give about { $roots } roots to store.
    .alt = A hand pushes a stick into the soil beside a strong plant.
    .show = A healthy vine and a sick one, and a stick.
    .ask = How do you tell a healthy plant from a sick one?
    .sms = { BRIEF($first) }: mark { $plants } healthy plants with sticks for seed roots. Big clean leaves, no sickness.
gather-sand = Bring dry sand
    .short = Coarse and clean: { MEASURE($sand_l, unit: "litre") }. Dry it under cover and let it cool.
    .text = Bring { MEASURE($sand_l, unit: "litre") } of coarse, clean sand, about { MEASURE($sand_kg, unit: "kilogram") }. Dry it under cover and let it cool. Fine, damp or warm sand makes roots rot. Carry at most { MEASURE($load_kg, unit: "kilogram") } at a time: about { $loads } { $loads ->
        [one] load
       *[other] loads
     }.
    .alt = Under a roof, a hand with a bowl puts dry sand from a heap into a small bucket.
    .show = A handful of coarse dry sand, and one of fine damp sand.
    .ask = Where do we find coarse sand, and is it safe to dig there?
    .sms = By { BRIEF($last) }: bring { MEASURE($sand_l, unit: "litre") } of coarse sand. Let it dry and cool under cover. At most { MEASURE($load_kg, unit: "kilogram") } a load.
check-plants = Look at the marked plants again
    .short = Small, curled or spotted leaves? Pull the stick out and take nothing there.
    .text = Look for small, curled or spotted leaves, stunted vines, and holes at the foot of the stem. Where you doubt, pull the stick out and take nothing from that plant.
    .alt = A healthy plant with a tick keeps its stick; a hand pulls the stick away from a sick plant with spotted, crumpled leaves.
    .show = Small, curled and spotted leaves.
    .ask = What do you do with a marked plant that has become sick?
    .sms = { BRIEF($first) }: look at the marked plants again. Take nothing from plants with small, curled or spotted leaves: pull out their stick.
cut-vines = Cut the vines of the marked plants
    .short = Leave { MEASURE($stem_cm, unit: "centimetre") } of stem: { MEASURE($stem_hands, unit: "hand") }.
    .text = Cut them off and leave { MEASURE($stem_cm, unit: "centimetre") } of stem, about { MEASURE($stem_hands, unit: "hand") }. The skin of the roots toughens, and they keep longer.
    .alt = A knife cuts vines as high above the soil as the open hand beside them.
    .show = An open hand laid along a stem.
    .ask = Why does the skin of the roots need time to toughen?
    .sms = { BRIEF($first) }: cut the vines of the marked plants. Leave a hand's length of stem.
harvest = Dig, and choose { $roots } roots
    .short = Only in dry soil. Medium roots, whole skin. Do not wash them. Keep them in the shade.
    .text = Dig only in dry soil, and lift without wounding. Take { $roots } medium roots, about as long as your hand, with whole skin. Wounded roots go to the kitchen, not to the store. Brush the soil off by hand and never wash them. Leave them some hours in the shade, out of the sun.
    .alt = A hand lifts a plant with whole roots out of loose soil, a hoe beside it.
    .show = A medium root with whole skin, and a wounded one.
    .ask = Which of these roots keep, and which go to the kitchen?
    .sms = { BRIEF($first) }: dig in dry soil. Store { $roots } whole medium roots. Do not wash them. Keep them in the shade.
fill-container = Lay the roots in sand
    .short = Sand { MEASURE($base_cm, unit: "centimetre") } below, { MEASURE($layer_cm, unit: "centimetre") } between, { MEASURE($top_cm, unit: "centimetre") } on top. No root touches another. No lid.
    .text = Use { $containers } { $containers ->
        [one] container
       *[other] containers
     } with solid sides: a basin, pot, bucket or tight basket. No sacks. Line it with paper, and fill it where it will stay: cool, dry and shaded, away from children, animals and rain. Start with { MEASURE($base_cm, unit: "centimetre") } of sand, about { MEASURE($base_joints, unit: "thumb-joint") }. { $layer_widths ->
        [uneven] Lay at most { $roots_per_layer } roots in the lowest layer and { $roots_top } in the highest,
       *[even] Lay at most { $roots_per_layer } roots in a layer,
     } not touching each other or the side. Cover them with { MEASURE($layer_cm, unit: "centimetre") } of sand and lay the next, { $layers } { $layers ->
        [one] layer
       *[other] layers
     } in all. End with { MEASURE($top_cm, unit: "centimetre") } of sand: it keeps out rats, insects and fowl. Put no lid on it.
    .alt = A basin cut open: sand, roots lying apart, sand, roots, thick sand on top; a hand strews sand.
    .show = A basin, dry sand and some roots: let somebody lay the first layer.
    .ask = Why must no root touch another?
    .sms = { BRIEF($first) }: lay the roots in dry sand, not touching. { MEASURE($base_cm, unit: "centimetre") } of sand below, { MEASURE($top_cm, unit: "centimetre") } on top. No lid, no water.
monthly-check = Check the roots every month
    .short = Look at every root. Bury or burn the rotten ones. Rub off sprouts. Pack again.
    .text = Take out every root and look at it. Bury deep, or burn, every root that is rotten, mouldy or bored. Rub off the sprouts. Pack the good roots again in the same way, and write down how many are left. Between checks leave them alone.
    .alt = Three moons for a month gone by; a hand takes a root out of the basin; a rotten root lies aside, crossed out.
    .show = A rotten root, if there is one, and how to pack again.
    .ask = What do you do with a rotten root, and why do animals not get it?
    .sms = { BRIEF($first) }: take out all roots. Bury or burn rotten ones, never feed them to animals. Rub off sprouts. Pack again.
prepare-bed = Make the seedbed
    .short = { MEASURE($bed_length_m, unit: "metre") } by { MEASURE($bed_width_m, unit: "metre") }, close to water. Loosen the soil. Fence it.
    .text = Make a bed of { MEASURE($bed_length_m, unit: "metre") } by { MEASURE($bed_width_m, unit: "metre") } close to water. Loosen the soil well. Fence it against goats and chickens.
    .alt = A man loosens the soil of the bed with a hoe; behind him a fence.
    .show = The place near water, and the size of the bed in steps.
    .ask = What keeps goats and chickens out?
    .sms = By { BRIEF($last) }: make a bed of { MEASURE($bed_length_m, unit: "metre") } by { MEASURE($bed_width_m, unit: "metre") } near water. Fence it.
last-check = Check for the last time and keep the sprouts
    .short = Bury or burn rotten roots. Leave the sprouts on.
    .text = Take out every root. Bury deep, or burn, every root that is rotten, mouldy or bored. This time leave the sprouts on: the good roots go to the bed now.
    .alt = A hand takes a root with sprouts out of the basin; an arrow leads to the bed.
    .show = A root with sprouts.
    .ask = Why do the sprouts stay on this time?
    .sms = { BRIEF($first) }: last check. Keep the sprouts. Bury or burn rotten roots, never feed them to animals.
plant-bed = Plant the roots in the bed
    .short = { $bed_rows } { $bed_rows ->
        [one] row
       *[other] rows
    }, { MEASURE($spacing_cm, unit: "centimetre") } apart, about { $row_roots } in each. Cover them lightly.
    .text = Lay the roots in rows, about { MEASURE($spacing_cm, unit: "centimetre") } apart: { $bed_rows } { $bed_rows ->
        [one] row
       *[other] rows
     } with about { $row_roots } in each. Cover them lightly with soil.
    .alt = Roots laid in a row; a hand covers them with soil.
    .show = The distance between rows with a stick of the right length.
    .ask = How deep does a root lie in the bed?
    .sms = From { BRIEF($first) }: plant the roots in rows { MEASURE($spacing_cm, unit: "centimetre") } apart. Cover them lightly, and water.
water-bed = Water the bed
    .short = Up to { MEASURE($water_l, unit: "litre") } a day ({ MEASURE($jerrycans, unit: "jerrycan") }); young plants need less.
    .text = Give about { MEASURE($water_l, unit: "litre") } every day, { MEASURE($jerrycans, unit: "jerrycan") }, when the bed is full of leaves. Young plants need less; hot, windy days need more. Stop when the rain does the work.
    .alt = A hand pours water from a jerrycan over the bed with sprouts.
    .show = A jerrycan, and how little water young plants need.
    .ask = Who brings the water, and who looks after the children there?
    .sms = From { BRIEF($first) }: water the bed every day, up to { MEASURE($water_l, unit: "litre") }. Keep children away from open water.
cut-for-planting = Cut vines to plant
    .short = When rain has come: { MEASURE($cutting_cm, unit: "centimetre") }, { $nodes } nodes, healthy shoots. Leave stubs.
    .text = When the rains have come, cut pieces of { MEASURE($cutting_cm, unit: "centimetre") }, about { MEASURE($cutting_hands, unit: "hand") }, with at least { $nodes } nodes, only from healthy shoots. { $plan_by ->
        [practice] By common practice, the first cut gives about
       *[print] The first cut gives about
     } { $first_cuttings_low } to { $first_cuttings_high } cuttings. Leave stubs: they give more in four to six weeks. Keep cuttings in the shade and plant them within two days.
    .alt = One hand holds a vine of the bed, the other cuts it with a knife; stubs stay.
    .show = A cutting of the right length beside the hand: count its nodes.
    .ask = From which plants do we take no cuttings?
    .sms = When the rains have come: cut vines of { MEASURE($cutting_cm, unit: "centimetre") } with { $nodes } nodes from healthy plants. Leave stubs.
plant-field = Plant the field
    .short = Only in moist soil. Bury two or three nodes. Plant gaps after two weeks.
    .text = Plant only in moist soil. { $layout ->
        [own] Each farm plants on its own ridges or mounds.
        [mounds] Put { $on_mound } cuttings on each mound, mounds { MEASURE($between_cm, unit: "centimetre") } apart.
       *[ridges] Put a cutting every { MEASURE($along_cm, unit: "centimetre") } on ridges { MEASURE($between_cm, unit: "centimetre") } apart.
     } Bury two or three nodes. { $kind ->
        [zone] { $cuttings } cuttings come from { $roots } roots over the whole season of the bed.
       *[other] The field takes { $cuttings } cuttings.
     } After two weeks plant the gaps again.
    .alt = Under a rain cloud, a hand plants cuttings in a row; their lower nodes are in the soil.
    .show = Soil that is moist as deep as a finger, and a cutting with its nodes in the soil.
    .ask = It has rained once: do we plant now? What speaks for it, what against?
    .sms = From { BRIEF($first) }, when the soil is moist: plant { $cuttings_to_plant } cuttings. Dates are averages: watch the sky.
first-harvest = Try the first roots
    .short = Feel for big roots. Dig all by { DAY($last_harvest) }: weevils come.
    .text = Feel under some plants for roots of eating size. Do not leave ripe roots in dry ground for long: weevils find them. Dig the last ones by { DAY($last_harvest) }.
    .alt = A hand feels for a root under a plant; beside it a pot on the fire.
    .show = How to feel for a root without pulling out the plant.
    .ask = What happens to ripe roots that stay in dry ground?
    .sms = From { BRIEF($first) }: feel for ripe roots. Dig all by { BRIEF($last_harvest) }: weevils come.

## Tables: title, what it tells (.text), its picture in words (.alt)

table-cuts = Cuts from the bed{ $plan_by ->
    [practice] , by common practice
   *[print] , by days of growth
 }
    .text = So many cuttings may be expected of each cut. The later ones are for the rest of the field and for gaps.
table-shares = What each farm brings
    .text = Each farm marks its own plants and brings its roots to the common store.
table-fields = Amounts by size of field
    .text = Find your field in the first column. Between two lines, amounts lie between theirs.
table-planting-later = If you wait with planting
    .text = Who plants on the first heavy rain may lose young plants when a long dry time follows: a false start. Waiting leaves fewer days until the rains end. The table tells how both were in past years; it is no forecast. In the picture, striped bars are years with a false start, black bars are the days until the rains end.
    .alt = For each day from which one plants: a striped bar for years with a false start, and a black bar for the days until the rains end. The numbers stand in the table above.
column-when = When
column-farm = Farm
column-area = Field, m²
column-cuttings = Cuttings
column-cut = Cuttings
cut-value = { $low }–{ $high }
column-plants = Plants to mark
column-roots = Roots to store
column-bed = Seedbed, m²
column-jerrycans = Jerrycans of water a day
column-from = First rain from
column-false-starts = Years with a false start
column-days-left = Days until the rains end, in a middle year
false-starts-value = { $false_starts } of { $years }

## Cautions: title, text (.text), picture in words (.alt); text message (.sms) where there is one

caution-rot = Rotten, mouldy or bored roots
    .short = Never eat them or their good parts. Never feed them to animals. Bury deep or burn.
    .text = Never eat them, never feed them to animals, do not plant them. Do not cut off the bad part and eat the rest: even parts that look sound can be poisonous. Bury them deep or burn them.
    .alt = A rotten root; below it a cow and a cooking pot, both crossed out.
    .sms = Never eat rotten, mouldy or bored roots, nor their good parts. Never feed them to animals. Bury them deep or burn them.
caution-virus = Sick plants
    .short = Spotted, small, twisted leaves: take nothing from that plant.
    .text = Spotted, small or twisted leaves and stunted vines are signs of virus. Never take roots or vines from such a plant.
    .alt = A hand with a knife at a plant with spotted, crumpled leaves, crossed out.
caution-cracks = Cracks in the soil
    .short = Heap soil over cracks: weevils get in there.
    .text = Weevils reach the roots through cracks. Heap soil over cracks as soon as you see them.
    .alt = A weevil goes into a crack in the ridge; beneath it lies a root full of holes.
caution-heavy-sand = Sand is heavy
    .short = Carry at most { MEASURE($load_kg, unit: "kilogram") }. Never lift the full container.
    .text = Carry at most { MEASURE($load_kg, unit: "kilogram") } at a time. Fill the container where it will stay, and do not lift it when it is full.
    .alt = A person bent under a great sack, crossed out; a woman upright with a small bucket, with a tick.
caution-riverbed = Sand from a riverbed
    .short = Only when it is dry, never under or near a steep bank, and where rules allow it.
    .text = Take sand only when the riverbed is dry. Never dig under a steep bank or near it: it can fall and bury you. Take sand only where local rules allow it.
    .alt = A steep river bank falling on a digging person, crossed out.
caution-water-children = Water, children and animals
    .short = Keep children away. Cover water; fence wells, pits and the bed.
    .text = Do not let children play near water, wells or pits. Cover stored water, and fence wells and pits. Keep goats and chickens out of the bed.
    .alt = A covered drum of water behind a fence; a woman keeps a child outside.
caution-store-dry = Never water the store
    .short = No water in the sand: roots rot.
    .text = The sand must stay dry from the first day to the last. Damp sand makes roots sprout early or rot.
    .alt = Water from a jerrycan falls on the basin of roots, crossed out.
caution-forecast = Dates are averages, not a forecast
    .short = Rain may come earlier or later. Plant only when the soil is moist.
    .text = The dates come from past years. Rains may come earlier or later. Watch the sky and the soil, and plant only when the soil is moist.
    .alt = A woman with cuttings in her hand looks up at sun, cloud and rain.
caution-try-first = Try a few roots first
    .short = New to you? Begin with a few roots, and keep some vines in the old way.
    .text = If this is new to you, begin with a few roots, and keep some of your vines in the old way as well.
    .alt = A woman between a small pot with a few roots and a plant that goes on growing in the soil.

## Drawings: title, and what it shows in words; the names and sizes that stand in them

month-year = { month } { $year }
calendar-title = What to do, month by month
guide-title = Guide for a meeting
card-fold = Fold on the broken lines. Cut the thick line.
record-title = Checks of the stored roots
record-how = At each check take out every root. Bury deep or burn the rotten ones. Write down what you find, and show this card to your extension worker.
record-planned = Planned for
record-done = Done on
record-healthy = Packed again
record-thrown-away = Thrown away
record-sprouted = With sprouts
record-remark = Remark
record-stored = Roots stored
booklet-index = Farms by name
span-brief = { BRIEF($from) } – { BRIEF($to) }
size-cm = { MEASURE($cm, unit: "centimetre") }
size-m = { MEASURE($m, unit: "metre") }
drawing-season = The season
drawing-season-alt = A band from one harvest to the next: roots in sand, then in the bed, then plants in the field, each with its dates.
season-store = In sand
season-bed = In the bed
season-field = In the field
season-on-harvest = Harvest
season-on-sprout = To the bed
season-on-rains = Rains
season-on-food = First roots
drawing-store = The container, cut open
drawing-store-alt = A cut through the container: layers of roots with sand below, between and above them.
drawing-layers = Each layer from above
drawing-layers-alt = The layers from above: where each root lies, none touching another or the side.
drawing-bed = The bed from above
drawing-bed-alt = The bed from above, with its rows of roots, its length and its width.
drawing-rows = The field from above
drawing-rows-alt = A part of the field from above: how far apart the rows are, and the cuttings in them.
## Words of the recording script

script-title = What to record
script-new-voice = a new voice
script-lines = Lines to read
script-time = Time, guessed from the length of the words
script-time-measured = Time, at the pace of this voice
script-minutes = about { $minutes } { $minutes ->
    [one] minute
   *[other] minutes
 }
script-ready = Messages complete already
script-how = Before you begin
script-how-room = Find a quiet room with cloth in it: curtains, a bed, clothes. Shut the windows, and switch off fans, fridges and phones that may ring.
script-how-distance = Keep your mouth a hand's length from the microphone or phone, and a little to its side. Do not change this distance until the end.
script-how-tone = Start the recording, then keep quite still for five seconds: the sound of the room is needed too.
script-how-pause = Be silent for one second before each line, and for one second after it.
script-how-order = Read the lines in their order, and tick each one off. Do not say their numbers.
script-how-slip = If you slip, pause, and say the whole line again. Let the recording run.
script-how-grey = Say aloud only the words in bold. Read the grey words around them in your mind: they give your voice the melody of the sentence.
script-how-brackets = Say aloud only the words in [ ]. Read the others in your mind: they give your voice the melody of the sentence.
script-how-medial = Where it says “{ script-medial }”, keep your voice up: more follows.
script-how-final = Where it says “{ script-final }”, let your voice fall, as at the end of a sentence.
script-medial = goes on
script-final = ends
script-part = Part { $part }
script-part-lines = lines { $first_line } to { $last_line }
script-rest = For other farms and dates
script-opening = Beginning of every message
script-closing = End of every message
script-sentences = Whole sentences
script-parts = Parts of sentences
script-numbers = Numbers, form { $form }
script-dates = Parts of dates
script-months = Months
script-units = Measures
script-unlocks = Messages that need it
script-complete = Complete with this line
script-stale = The old recording says
script-other-ending = There is a recording, but with the other ending.
script-recorded = It is recorded already.
script-unsaid = No known sentence says it so: it may be left out.
script-nothing = Nothing is left to record.
## The check of recordings

clips-title = The recordings, checked
clips-intro = What is to be recorded again stands first. Each picture shows the voice from left to right: above, how loud it is; below, its tones, dark where they are strong.
clips-again = Record again
clips-usable = Can be used
clips-good = Good
clips-unused = No longer needed
clips-missing = Not yet recorded
clips-picture = Picture of the recording “{ $words }”
clips-length = Length
clips-level = Loudness of the voice
clips-noise = Voice above the noise
clips-hum = Voice above the hum
clips-pace = Pace, against the usual
clip-clipped = The voice is too loud for the microphone and sounds harsh. Hold the microphone further away, or turn it down.
clip-cut-start = The first sound is cut off. Start the recording, take a breath, then speak.
clip-cut-end = The last sound is cut off. Take a breath before you stop the recording.
clip-noise = There is noise behind the voice. Find a quieter place, and hold the microphone closer.
clip-hum = There is a hum of electricity. Unplug the charger, and move away from wires and machines.
clip-room = The room echoes. Record in a small room with cloth, mats or a mattress, and hold the microphone closer.
clip-quiet = The voice is quieter than in the other recordings. Always keep the same distance from the microphone.
clip-loud = The voice is louder than in the other recordings. Always keep the same distance from the microphone.
clip-fast = This is spoken faster than the other recordings. Speak at your usual pace.
clip-slow = This is spoken more slowly than the other recordings. Speak at your usual pace.
clip-offset = The recorder has shifted the sound a little. You need do nothing: it is put right by itself.
clip-broken = The recording cannot be opened. Record it again.
clip-stale = The words have changed. Record them as they are now: “{ $words }”
clip-unused = No message uses these words any more.
## Radio segments: script for the presenter, plan of the season

segment-title = Radio segment
segment-season = Radio segments of the season
segment-week = Week
segment-topics = What is told
segment-nothing = Nothing to say this week
segment-due = This week
segment-past = Still holds
segment-soon = Soon
segment-opening = Opening signature
segment-closing = Closing signature
segment-bed = Music under the voice
segment-bed-value = { $decibels } dB below the voice
segment-said = What is heard
segment-read-before = Read live before it
segment-read-after = Read live after it
segment-intro = Good day to all who grow sweet potatoes in { $place }. Hear now about the work from { DAY($first) } to { DAY($last) }.
segment-outro = That was about the work from { DAY($first) } to { DAY($last) }. If anything was not clear, ask your extension worker.
segment-reading-time = Reading time, estimated
segment-read-live = To be read aloud. Times are estimated, at { $rate } syllables a second.
segment-pauses = A stroke (/) is a short pause, two strokes (//) a longer one. Between the parts, wait a little longer still.
segment-no-sound = No sound was made: some phrases have no recording. They are listed below.
segment-no-voice = No sound was made: this language has no recorded voice yet.
segment-left-out = No time was left for
segment-missing = Phrases without a recording
## Questions for a meeting, as they are spoken

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

## Channels: cue sheets for phones and meetings

cue-active-level = Active speech level
cue-chapter = Chapter
cue-talk = time to talk, { $seconds } s

## The guide for a meeting: each step has what to show (.show) and what to ask (.ask)

guide-show = What to show
guide-ask = Ask

## Plans on the terminal and in JSON. A pack may still lack what stands from here on: plans are then told in English.

plan-rains = Rains expected on { DAY($rains) }
plan-rains-observed = Rains may begin from { DAY($early) }; usually about { DAY($usual) }; in most years by { DAY($late) }
plan-rains-begun = Rains since { DAY($rains) }
plan-column-when = WHEN
plan-column-weeks = WEEKS TO RAINS
plan-column-step = STEP
plan-column-what = WHAT TO DO, AND WHY THEN
plan-weeks-after = { $weeks } after
plan-past = (past)
plan-now = (NOW)
plan-done = (done)
plan-beside-planned = { $much }, planned { $planned }
plan-checks = once a month: { $dates }
plan-late-certain = NOT DONE WHEN DUE, counted anew from { DAY($today) }
plan-late-maybe = IF NOT DONE BY { DAY($today) } (say what is done: { $option })
plan-column-due = DUE BY
plan-column-still = WHAT CAN STILL BE DONE, AND WHAT THE DELAY COSTS
plan-column-amount = AMOUNT
plan-column-much = HOW MUCH
plan-column-why = WHY
# The amounts by their names in JSON, each with its unit.
plan-amount =
    .field_m2 = Field that this plants, m²
    .field_rows = Rows in the field
    .cuttings_per_row = Cuttings in a row
    .cuttings_needed = Cuttings for the field
    .bundles = Bundles of cuttings
    .cuttings_at_first_cut = Cuttings at the first cut
    .cuttings_over_season = Cuttings over the bed season
    .roots_to_store = Roots to store
    .plants_to_mark = Plants to mark
    .plants_per_member = Plants each member marks
    .roots_left = Roots left
    .roots_at_bed = Roots left for the bed
    .cuttings_expected = Cuttings now expected
    .cuttings_short = Cuttings short of the field
    .roots_per_layer = Roots in the lowest layer
    .roots_in_top_layer = Roots in the top layer
    .layers = Layers of roots
    .containers = Containers
    .lining_m2 = Lining paper, m²
    .sand_l = Sand, litres
    .sand_kg = Sand, kg
    .sand_loads = Loads of sand
    .bed_area_m2 = Bed, m²
    .bed_length_m = Length of the bed, m
    .bed_width_m = Width of the bed with its paths, m
    .bed_strips = Strips of the bed
    .strip_length_m = Length of a strip, m
    .strip_width_m = Width of a strip, m
    .bed_path_m = Width of a path between strips, m
    .bed_rows = Rows in the bed
    .roots_per_bed_row = Roots in each row
    .watering_days_until_shoots = Days between waterings, until shoots show
    .water_l_until_shoots = Water at a time, until shoots show, litres
    .water_l_per_day = Water a day, litres
    .jerrycans_per_day = Jerrycans a day
    .water_trips_per_day = Trips to the water a day
    .water_hours_per_day = Hours of carrying water a day
    .water_total_l = Water in all, litres
    .work_ridging_days = Work on ridges or mounds, person-days
    .work_bed_days = Work on the bed, person-days
    .work_watering_days = Work on watering, person-days
    .work_cutting_days = Work on cutting vines, person-days
    .work_planting_days = Work on planting, person-days
    .work_days = All this work, person-days
plan-containers = CONTAINERS, from the bottom up
plan-container = { $count } × { $shape ->
    [round] round, { $width_cm } cm wide
    [tapered] round, { $width_cm } cm wide, { $bottom_cm } at the bottom
    [pot] pot, { $widths } cm wide from the bottom up
   *[box] box, { $length_cm } × { $width_cm } cm
 }, { $depth_cm } cm deep
plan-container-roots = { $roots } roots, in layers of { $each_layer }{ $rest ->
    [yes] , the last one with the rest
   *[no] {""}
 }
plan-column-water = WATER FOR THE BED
plan-column-et0 = ET₀ MM/DAY
plan-column-kc = KC
plan-column-rain = RAIN MM/DAY
plan-column-litres = L/DAY
plan-column-every-days = EVERY … DAYS
plan-column-each-time = L AT A TIME
plan-column-cuts = CUTS FROM THE BED
plan-column-cuttings = CUTTINGS
plan-column-field = FIELD M²
plan-column-ripe = RIPE BEFORE THE RAINS END
plan-ripe = { $counted ->
    [yes] { $known ->
        [record] in { $of_100 } of 100 years
       *[case] { $of_100 ->
            [0] no
           *[other] yes
         }
     }
   *[no] { $known ->
        [record] in { $of_100 } of 100 years: not counted on
       *[case] no: not counted on
     }
 }
plan-advice = GOOD TO KNOW
plan-ways = Ways to plant the whole field when the rains come. None is sure; each counts by the middle, and asks for as much water, room and hands as it takes, whatever there is.
plan-ways-left = The store keeps too few roots. What can be done now, the cuttings each way gives when the rains come, and what it takes, whatever there is:
plan-way = { $way ->
    [one-bed] one bed, cut when the rains come
    [second-bed] a small early bed; its first cut grows on in a watered plot
    [vine-plot] vines of the old field in a watered plot; nothing is stored
    [as-planned] the roots stay in the sand, as planned
    [bed-now] the sound roots go to the bed now
    [bed-now-second-bed] to the bed now; the first cut grows on in a watered plot
   *[buy] vines from somebody else
}
plan-column-way = WAY
plan-column-begins = BEGINS
plan-column-roots = ROOTS
plan-column-at-rains = CUTTINGS
plan-column-all-litres = L IN ALL
plan-column-days = DAYS
plan-column-trips = TRIPS
plan-harvest = Harvest from { DAY($first) } to { DAY($last) }
plan-yield = It may give { $low } to { $high } kg
plan-vitamin = Vitamin A
plan-vitamin-why = { $serving_g } g, boiled, hold about { $vitamin_ug } µg of vitamin A (retinol activity equivalents). A child of 1 to 3 years should have 300 a day, of 4 to 8 years 400. Roots of one variety differ: this is no promise.
plan-column-farm = FARM
plan-column-plants = PLANTS TO MARK
plan-column-bring = ROOTS TO BRING
plan-column-store = ROOTS TO STORE
plan-column-bed = BED M²
plan-column-jerrycans = JERRYCANS/DAY
plan-delays = Planting on the first wet days from a day on, whatever comes after them:
plan-column-from = FROM
plan-column-planted = YEARS PLANTED
plan-column-false-starts = FALSE STARTS
plan-column-rain-left = DAYS OF RAIN LEFT (MEDIAN)
plan-planted = { $planted } of { $years }
plan-changed = From the case instead of the default
plan-warning = warning
plan-note = note
plan-do = hint

## Why a date is so

onset-total = the first day with { $total_mm } mm of rain in { $days } { $days ->
    [one] day
   *[other] days
 }{ $rain_days ->
    [0] {""}
    [1] {""}
   *[other] , { $rain_days } of them rain days
 }{ $look_ahead ->
    [0] {""}
   *[other] {" "}and no dry spell over { $dry_spell } days in the { $look_ahead } days after it
 }
onset-dekad = the first dekad with { $total_mm } mm of rain and { $next_two_mm } mm over the next two
years-without-onset = { $none ->
    [0] In none of { $judged } years did they fail to begin.
    [one] In one of { $judged } years they never began.
   *[other] In { $none } of { $judged } years they never began.
 }
why-rains-begun = the plan counted on { DAY($expected) }
why-rains-usual = the rains usually begin on { BRIEF($day) }; the first such day after the harvest counts
rains-length-observed = The rains last { $short_days } days in short seasons, { $usual_days } in the middle one and { $long_days } in long ones (20, 50 and 80 % of { $years } years). They end about { DAY($early_end) }, { DAY($usual_end) } and { DAY($late_end) }.
rains-length-named = The rains last { $days } days and end on { DAY($end) }.
why-rains-named = the date named in the case
why-rains-observed = the rains had begun by these days in { $early_percent }, { $usual_percent } and { $late_percent } % of { $years } years with an onset. { years-without-onset } The dates are counted from { DAY($timed) } ({ $percent } %). The onset is { onset-total }, looked for from { BRIEF($from) } to { BRIEF($until) }.{ $outlook ->
    [yes] {" "}The years are weighed by the seasonal outlook.
   *[no] {""}
 }
why-rains-observed-dekads = the rains had begun by these days in { $early_percent }, { $usual_percent } and { $late_percent } % of { $years } years with an onset. { years-without-onset } The dates are counted from { DAY($timed) } ({ $percent } %). The onset is { onset-dekad }, looked for from { BRIEF($from) } to { BRIEF($until) }.{ $outlook ->
    [yes] {" "}The years are weighed by the seasonal outlook.
   *[no] {""}
 }
why-mark-plants = { $days } days before the harvest on { DAY($harvest) }, while healthy and sick plants can still be told apart
why-gather-sand = before the harvest, so that the sand is dry and cool when the roots are there
why-check-plants = { $least_days } to { $most_days } days before the harvest, and before the vines are cut: sickness may have shown since the marking, and nobody sees it on cut vines
why-cut-vines = { $least_days } to { $most_days } days before the harvest, so that the skin toughens
why-before-harvest-late = as soon as it still can be, { $days ->
    [0] on the day of the harvest
    [one] a day before the harvest
   *[other] { $days } days before the harvest
 }: mark first, then look for sickness, and cut the vines last
why-harvest = the harvest date of the case
why-harvest-of-many = the first farms dig on { DAY($first) }, the last ones on { DAY($last) }; who digs later does what comes before the harvest as many days later, in the same order
why-fill-container = after some hours in shade, before the roots dry out
why-early-check = { $least_days } to { $most_days } days after filling on { DAY($filled) }, since most losses come early
why-monthly-check = { $months ->
    [one] a month
   *[other] { $months } months
 } after filling on { DAY($filled) }
why-overdue-check = an earlier check is overdue
why-check-again = { $days } { $days ->
    [one] day
   *[other] days
 } after the check that was overdue: sooner, it would only disturb the roots
why-checked = looked through on that day: { $healthy } healthy { $healthy ->
    [one] root
   *[other] roots
 } packed again
why-check-soon = { $days } { $days ->
    [one] day
   *[other] days
 } after the check of { DAY($checked) }, which found more roots lost than the worst on record
why-prepare-bed = in the { $days } days before the roots go in
why-last-check = on the day the first roots go to the bed
why-plant-bed = counted back from { DAY($rains) }, when the rains may begin: vines take { $least_weeks } to { $most_weeks } weeks to grow long enough
why-plant-bed-late = as soon as it can be; counted back from { DAY($rains) }, when the rains may begin, it was due on { DAY($due) }
why-water-bed = from planting the bed until rain keeps it moist
why-cut-as-rains-came = the rains have come, on { DAY($began) }
why-cut-when-rains-come = when the rains have come, from about { DAY($rains) }
why-cut-from-early-to-late = when the rains have come: from { DAY($rains) }, in late years from { DAY($late) }
why-plant-field = within { $days } days of the onset, a day or two after each cutting
why-first-harvest = { $least_days } to { $most_days } days after planting

## Why an amount is so

# How cuttings stand; the reasons below use it.
why-spacing = { $layout ->
    [mounds] { $each } on each mound, mounds { $between_m } m apart
   *[ridges] one every { $each } m on ridges { $between_m } m apart
 }
why-sprouting = { $sprouting ->
    [100] {""}
   *[other] , of these { $sprouting } of 100 sprout
 }
why-gaps = { $gaps ->
    [0] {""}
   *[other] , and { $gaps } of 100 once more for gaps
 }
why-part-of-group = its part of the { $whole } of the whole group
why-field-of-cuttings = what { $cuttings } cuttings plant, { why-spacing }
why-field-rows = { $layout ->
    [mounds] rows of mounds { $between_m } m apart
   *[ridges] ridges { $between_m } m apart
 }, along the longer side of the field
why-cuttings-per-row = a row as long as the field, { why-spacing }
why-cuttings-for-field = { $area_m2 } m² of field, { why-spacing }{ why-gaps }
why-cuttings-for-farms = the sum of { $farms } farms with { $area_m2 } m² of field together{ why-gaps }
why-cuttings-of-season = what { $roots } roots give over the bed season
why-cuttings-of-first-cut = what { $roots } roots give at the first cut
why-cuttings-of-zone = what { $roots } roots give over the bed season; each farm scales it to its field
why-bundles = bundles of { $bundle_size } cuttings
why-roots-at-hand = the roots at hand
why-roots-of-plants = { $plants } plants at hand, about { $per_plant } roots fit to store from each{ $sick ->
    [0] {""}
   *[other] ; about { $sick } of 100 plants are found sick later and given up
 }
why-roots-of-bed = a bed of { $bed_m2 } m², { $per_root_m2 } m² a root
why-roots-of-containers = { $containers ->
    [one] as many as the container at hand holds
   *[other] as many as the { $containers } containers at hand hold
 }
why-roots-of-sand = as many as { $sand_l } litres of sand cover
why-roots-of-water = as many as are watered in the bed from { $source }, with { $litres } litres { $per ->
    [all] in all
   *[day] a day
 }
why-roots-of-hands = as many as { $people } { $people ->
    [one] person waters
   *[other] people water
 } in the bed, with { $hours } { $hours ->
    [one] hour
   *[other] hours
 } a day each: { $trips } trips to the water
why-roots-for-season = { $cuttings } cuttings; a stored root gives about { $per_root } over the bed season and { $cuts } { $cuts ->
    [one] cut
   *[other] cuts
 }, usual losses included
why-roots-for-first-cut = { $cuttings } cuttings at the first cut; about { $surviving } of 100 roots survive{ why-sprouting }; each then gives about { $per_root }, after { $days } days in the bed
why-roots-to-be-sure = enough for { $cuttings } cuttings in { $percent } of 100 such seasons, where { $usual } are enough by the middle of all values; from season to season { $plan_by ->
    [practice] the roots that survive and the cuttings that fail
   *[print] the roots that survive and sprout, what each gives, and the cuttings that fail
 } differ
why-roots-of-zone = the round number a zone's plan is made for
why-first-cut = { $roots } roots; about { $surviving } of 100 survive { $months } months{ why-sprouting }; each then gives about { $per_root } cuttings at the first cut, after { $days } days in the bed
why-bed-season = { $roots } roots stored, about { $per_root } cuttings from each over the bed season and { $cuts } { $cuts ->
    [one] cut
   *[other] cuts
 }
why-plants-to-mark = a plant gives about { $per_plant } roots fit to store: { $without_spare } { $without_spare ->
    [one] plant
   *[other] plants
 } for { $roots } { $roots ->
    [one] root
   *[other] roots
 }{ $spare ->
    [0] {""}
   *[other] , and { $spare } to spare
 }{ $sick ->
    [0] {""}
   *[other] ; about { $sick } of 100 are found sick later and given up
 }
why-plants-per-member = { $plants } plants shared among { $members } members, rounded up
why-roots-left = healthy at the last check
why-roots-at-bed = what is left of { $left } on { DAY($bed) }, losses as usual or as so far
why-cuttings-expected = { $sprouting } roots that sprout, about { $per_root } cuttings from each at the first cut, after { $days } days in the bed
why-cuttings-short = { $cuttings } needed for the whole field, { $expected } expected at the first cut
why-roots-per-layer = roots lying flat with { $gap_cm } cm to each other and to the side
why-roots-in-top-layer = when it is full: the container has another width there
why-layers = between { $base_cm } cm of sand below and { $top_cm } cm on top
why-containers = for { $roots } roots
why-lining = for bottom and sides up to the top sand, overlaps not counted
why-sand-litres = room of the containers up to the top sand, less the roots
why-sand-kilograms = loose dry sand, { $per_litre_kg } kg a litre
why-sand-loads = loads of at most { $load_kg } kg
why-bed-area = { $per_root_m2 } m² a root
why-bed-length = { $strips ->
    [one] the area over the width, rounded up
   *[other] as long as its strips
 }
why-bed-width = { $strips ->
    [one] arms reach across { $most_m } m at most
   *[other] { $strips } strips with paths of { $path_m } m between them; arms reach across { $most_m } m at most
 }
why-bed-strips = so many that none is longer than { $longest_m } m
why-strip-length = the area over the width, shared among the strips, rounded up
why-strip-width = arms reach across { $most_m } m at most
why-bed-path = room to walk and to kneel
why-bed-rows = along the bed, { $between_cm } cm apart{ $strips ->
    [one] {""}
   *[other] , { $per_strip } in each of { $strips } strips
 }
why-roots-per-bed-row = the roots shared among the rows, { $along_cm } cm apart
why-watering-until-shoots = { $soil ->
    [sand] sand holds little water
    [clay] clay holds much water, and roots rot where it is wet
    [loam] loam holds water for some days
   *[unknown] the soil is not named, and counts as loam
 }; moist, not wet, until shoots show after about { $days } days
why-water-until-shoots = what { $days } { $days ->
    [one] day takes
   *[other] days take
 } from bare soil on { $bed_m2 } m²: { $kc } × { $et0_mm } mm a day; where that is too much for one day, water a part of the bed each day
why-water-per-day = from { DAY($from) } on, when the bed needs most: { $bed_m2 } m² × { $kc } × { $et0_mm } mm a day (ET₀ by { $method ->
    [penman-monteith] Penman–Monteith
   *[hargreaves] Hargreaves
 }), { $rain_mm ->
    [0] no rain counted on
   *[other] less { $rain_mm } mm of rain a day
 }; { $reaching } of 100 litres reach the roots
why-jerrycans-per-day = jerrycans of { $litres } L, rounded up
why-trips-per-day = trips with { $litres } L each
why-water-hours = { $trips } trips of { $minutes } minutes each, of all who carry together
why-water-total = all days from { DAY($from) } to { DAY($to) }
why-work-on-field = { $area_m2 } m² of field, by what { $per_m2 } m² take
why-work-on-cuttings = { $cuttings } cuttings, by what { $per } take
why-work-total = ridges, bed, watering, cutting and planting; digging, storing and checks not counted
why-harvest-ripe = { $maturity ->
    [early] early-maturing
    [medium] medium-maturing
    [late] late-maturing
   *[unknown] orange-fleshed
 } varieties are ripe { $least_days } to { $most_days } days after planting; dig within { $within_days } days after that, as weevil damage grows with age
why-yield = { $area_m2 } m² at { $low } to { $high } t/ha, from farmers' usual yields to good practice; a dry or sick season gives less, or nothing

## Late work: what can still be done, and what the delay costs

advice-roots-not-chosen = Small, wounded and crooked roots are food: eat or sell them soon, the wounded ones first. They keep badly, and rot the others. Rotten, mouldy and bored roots are not food, neither for people nor for animals.
advice-storage-place = Keep the containers in a cool, dry, shaded room where air moves and no rain comes in, out of reach of children, rats, fowl and goats. In one trial an open heap of roots had { $times } times the weevils of a closed box.
advice-clean-vines = Cut from the tips first. They carry fewer weevils than the lower vine. Take no vine from a plant with holes at its foot or signs of sickness.
advice-clean-field = Plant at least { $metres } m from old sweet potato fields: weevils come from there. Clear away old vines and roots. Many advise to plant the same ground only once in { $years } years; no trial was found that shows what that gains.
advice-deep-planting = Set the cuttings deep. In a trial { $deep_cm } cm did better than { $shallow_cm } cm. It is also advised against weevils; no trial was found that shows it.
advice-dry-after-planting = The first rains may stop. Of 100 cuttings about { $week_least } to { $week_most } live where a dry week follows the planting, and { $fortnight_least } to { $fortnight_most } where a dry fortnight does. Go on watering the bed until the field has taken, keep vines back, and plant the gaps again.
advice-feed-and-weed = Work old, rotted manure or compost into the ridges before planting. Fresh manure and much of it gives leaves, not roots. Weed until the vines cover the ground.
advice-children = In one trial, children who ate { $serving_g } g of orange roots a day for { $days } days had better stores of vitamin A. Pale roots hold far less. No sheet can promise as much for one child.
late-mark-plants = Choose healthy plants now, at the latest while digging. Sickness shows less so late: choose more, and keep only the best.
late-gather-sand = Bring sand now. Let it dry and cool first: damp or warm sand rots the roots.
late-check-plants = Look at the marked plants before digging. Take nothing from a doubtful one.
late-cut-vines = Cut now if some days are left before digging. If not, dig with care: the skin is soft and wounds easily.
late-harvest = Dig as soon as the soil is dry, and look harder for weevil holes: their damage grows every week.
late-fill-container = Lay the roots in sand today. Leave out those that have shrivelled.
late-monthly-check = Check today. What rots infects what lies beside it.
late-prepare-bed = Make the bed now.
late-last-check = Check today, and plant the roots in the bed with the sprouts they have.
late-plant-bed = Plant the roots in the bed today, with the sprouts they have.
late-water-bed = Water today: a bed that dries out loses its sprouts.
late-cut-for-planting = Cut and plant as soon as the soil is moist. No figure for what late planting costs is published, but the season left is shorter.
late-plant-field = Cut and plant as soon as the soil is moist. No figure for what late planting costs is published, but the season left is shorter.
late-first-harvest = Dig now: weevil damage grows every week.
late-cost = { $days_later ->
    [0] { $fewer ->
        [0] Nothing is lost yet.
       *[other] It costs about { $fewer } cuttings at the first cut.
     }
   *[other] The field can then be planted from { DAY($field_from) }, { $days_later } { $days_later ->
        [one] day
       *[other] days
     } later than planned{ $fewer ->
        [0] .
       *[other] , with about { $fewer } fewer cuttings at the first cut.
     }
 }

## Remarks on a plan, each with what to do (.do)

remark-no-container = No container is named. Straight basins { $width_cm } cm wide and { $depth_cm } cm deep are assumed.
    .do = Measure the containers at hand and name them in the case.
# What limited roots plant; the remarks below use it.
remark-planted = Of { $field_m2 } m² their first cut plants about { $first_m2 } m², all cuts that are counted on about { $area_m2 } m².
remark-containers-too-small = The containers at hand hold { $fit } of { $roots } roots; { $left_over } have no room. { remark-planted }
    .do = { $more ->
        [0] For the whole field find another container
        [one] For the whole field find one more of the last kind
       *[other] For the whole field find { $more } more of the last kind
     } before the harvest, or plant less field.
remark-sand-short = { $has_l } litres of sand cover { $fit } of { $roots } roots; all of them take { $needs_l } litres. { remark-planted }
    .do = To cover all of them bring { $more_l } litres of sand more, or plant less field.
remark-water-limits = From { $source } come { $gives_l } litres { $per ->
    [all] in all
   *[day] a day
 }. That waters { $bed_m2 } m² of bed with { $fit } roots. A bed of { $roots } roots would need { $needs_l } litres { $per ->
    [all] in all
   *[day] a day
 }, and lack water from { DAY($from) } on. { remark-planted }
    .do = For the whole field find { $more_l } litres more { $per ->
        [all] in all
       *[day] a day
     }, or plant less field. Mulch and shade save water.
remark-hands-short = { $people } { $people ->
    [one] person who carries
   *[other] people who carry
 } water for { $hours_each } { $hours_each ->
    [one] hour
   *[other] hours
 } a day can water { $bed_m2 } m² of bed with { $fit } roots. A bed of { $roots } roots would take { $trips } trips a day, { $hours } hours together. { remark-planted }
    .do = For the whole field let more people carry, or for longer; make the bed closer to the water; carry more at a time, with a cart or a bicycle; or plant less field.
remark-water-heavy = When it needs most, the bed takes { $litres } litres a day: { $trips } trips and about { $hours } hours of carrying, { $hours_each } for { $people ->
    [one] the one who carries.
   *[other] each of { $people } people.
 }
    .do = Let more people carry (in the case: [hands]), or carry more at a time, with a cart or a bicycle. In { $most_hours } hours a day each, they water a bed of { $bed_m2 } m² with { $roots } roots.
# What there is; the remarks below use it.
remark-limit = { $limit ->
    [roots] The roots at hand allow
    [plants] The plants at hand allow
    [sand] The sand at hand allows
    [containers] The containers at hand allow
    [water] The water allows
    [hands] The time to carry water allows
   *[bed] The room for the bed allows
 }
remark-limited-at-hand = { remark-limit } { $roots } roots to be stored, where the field wants { $wanted }. { remark-planted }
    .do = For the whole field find { $lacking } { $limit ->
        [roots] more roots
        [plants] more plants
       *[bed] m² more for the bed
     }, or cuttings from neighbours; or plant less field.
remark-nothing-at-hand = { remark-limit } no root to be stored.
    .do = Find more of it, or get vines from neighbours at the onset.
remark-never-so-sure = No number of roots makes { $percent } % sure with so wide a spread of what roots give.
    .do = Ask for less, or give what is known here in [assumptions]: what the case gives is taken as certain.
remark-field-waits = Expect about { $cuttings } cuttings at the first cut ({ $low } in a poor season, { $high } in a good one), enough for { $area_m2 } m² of { $field_m2 } m². The rest of the field waits { $least_days } to { $most_days } days for each later cut.
    .do = To plant the whole field at the onset, store { $roots } roots (in the case: sizing = "first-planting").
remark-by-print = Cuttings are counted by the middle of a growth curve, computed from values of memory and held against print: { $roots } roots give about { $first } at the first cut and { $season } over the bed season. Common practice counts on about { $other_first } and { $other_season }.
    .do = Keep to the curve unless beds here are known to give more (then, in the case: plan_by = "practice").
remark-by-practice = Cuttings are counted by common practice: { $roots } roots give about { $first } at the first cut and { $season } over the bed season. By the middle of the growth curve they give about { $other_first } and { $other_season }.
    .do = Count on what the curve says, unless beds here are known to give as much (in the case: plan_by = "print").
remark-rains-too-soon = The rains may begin on { DAY($rains) }, too soon after the harvest for storage. The roots go to the bed on { DAY($bed) }.
    .do = Plant vines from the old field instead, or sprout the roots at once and plant late.
remark-storing-not-needed = { $two_seasons ->
    [yes] The record has two rainy seasons a year. From { DAY($from) } there are { $days } dry days until the rains have begun
   *[no] From { DAY($from) } there are { $days } days until the rains have begun
 } in most years, by { DAY($rains) }. Vines can be kept alive for about { $kept_days } days, so roots need not be stored.
    .do = Leave part of the old field standing, or keep vines in a small watered plot, and take the vines to plant from there. Where vines here do not live so long, give vines_kept_days in [assumptions].
# When the rains end; the remarks below use it.
remark-end-of-rains = { $known ->
    [record] The rains usually end about { DAY($end) } by the record.
    [case] The rains end on { DAY($end) } by the case.
   *[open] In most years missing days leave the end of the rains open.
 }
remark-rains-too-short = The rains are too short for the crop. Planted on { DAY($planted) } at the earliest, the last roots are ripe after { $most_days } days: before the rains end in { $of_100 } of 100 years. { remark-end-of-rains }{ $known ->
    [record] {" "}In half of the years they last { $usual_days } days or less.
    [case] {" "}They last { $usual_days } days.
   *[open] {""}
 }
    .do = { $helps ->
        [on-time] Make the bed earlier, so that the field is planted when the rains begin: then the crop is ripe in time in most years.
        [quicker] Plant on the first day you can, and look for a variety that ripens sooner: one that is ripe within { $early_days } days is in time in { $early_of_100 } of 100 years.
       *[neither] Plant on the first day you can. Water the field after the rains where there is water, or expect small roots and few.
     }
remark-cuts-too-late = { $more ->
    [0] Cut { $cut } of the bed comes
   *[other] Cut { $cut } of the bed and those after it come
 } too late, on { DAY($from) } to { DAY($to) }. What it plants is ripe about { DAY($ripe) } at the earliest: before the rains end in { $of_100 } of 100 years. { remark-end-of-rains } { $counted ->
    [yes] The case has it counted all the same.
   *[no] It is not counted on.
 }
    .do = { $counted ->
        [yes] Take sizing out of the case, so that enough roots are stored to plant the field in time.
       *[no] Do not keep a part of the field for it. Use what it gives as vines for others, as fodder, or to keep vines growing where there is water.
     }
remark-end-unknown = { $known ->
    [open] Missing days leave open when the rains end.
   *[nothing] Nothing is known of when the rains end.
 } The last cut is planted from { DAY($planted) } on and ripe about { DAY($ripe) }. All cuts are counted on.
    .do = { $known ->
        [open] Complete the record, so that cuts which come too late are left out.
       *[nothing] Give rains_end in the case, such as "04-20", so that cuts which come too late are left out.
     }
remark-bed-late = The bed gives its first cuttings on about { DAY($cut) }, after { $came ->
    [yes] the rains came
   *[no] the onset
 } on { DAY($onset) }.
    .do = Plant what vines you have at the onset. The bed fills the rest.
remark-long-in-sand = The roots would stay { $days } days in sand, longer than the { $evidence_days } days the survival figures come from.
    .do = Check the date of the harvest. If it is right, do not count on these roots alone: keep vines growing in a small watered plot, or agree with somebody who sells vines. Store more roots than the plan says, and ask the local extension office.
remark-late-work = { $steps ->
    [one] One step was not done when due.
   *[other] { $steps } steps were not done when due.
 } The dates are counted anew from { DAY($today) }. { late-cost }
    .do = Do at once what can still be done; the plan says what.
remark-fast-loss = On { DAY($day) } only { $healthy } of { $roots } roots were healthy. { $expected } were to be expected, { $worst } at the worst on record.
    .do = Look for the reason: damp or warm sand, wounded roots, roots that touch, weevils. Change the sand, and check again in two weeks.
remark-enough = The first cut is enough for the whole field, with about { $spare } cuttings to spare.
    .do = Go on checking as before.
remark-cuttings-short = The first cut will be about { $short } cuttings short of the { $cuttings } for the whole field.
    .do = Plant { $area_m2 } m² at the onset instead of { $field_m2 } m². { $later_cuts ->
        [0] No later cut is ripe before the rains end.
       *[other] Or wait { $least_days } to { $most_days } days for each later cut: { $still_short ->
            [0] these plant the rest.
           *[other] these leave about { $still_short } cuttings short.
         }
     } Or get about { $short } vines from neighbours or a vine grower.
remark-no-temperatures = No temperatures are given. { $day_c } °C by day and { $night_c } °C by night are assumed for the bed's water.
    .do = Give tmax_c and tmin_c in [climate].
remark-water-short = The bed's water cannot all come from { $source }. From { DAY($from) } on it has only about { $gives } of every 100 litres needed at the worst.
    .do = Find a second source, mulch and shade the bed, or make a bed of about { $bed_m2 } m² and plant less field.
remark-years-without-rains = In { $count } of { $judged } years the rains never began by this rule ({ $years }). The percentiles leave them out.
    .do = In such a year vines planted on the first rain may die: keep some roots or a watered bed back.
remark-years-unknown = In { $count ->
    [one] one year
   *[other] { $count } years
 } missing days leave the onset open ({ $years }). The dates rest on the other years.{ $bounded ->
    [yes] {" "}Whatever fell on those days, the early onset lies between { BRIEF($early_from) } and { BRIEF($early_to) }, the late one between { BRIEF($late_from) } and { BRIEF($late_to) }.
   *[no] {""}
 }
    .do = Complete the record, or be aware that these years are left out.
refusal-no-onset = No year of the rainfall record has an onset by the chosen rule, so no date can be set.
    .do = Choose another rule or window, or give rains_begin.
refusal-stored-too-long = The roots would lie { $days } days in sand, from the harvest on { DAY($harvest) } to the bed on { DAY($bed) } for the rains of { DAY($rains) }. No roots are known to keep so long; { $most_days } days are the most.
    .do = Is the date of the harvest right, or does it lie after the rains that it belongs to? If it is right, store no roots: keep vines growing in a small watered plot, take vines from the field that stands when the rains begin, or buy vines. Where roots do keep so long, give storage_most_days in [assumptions].
refusal-no-root-fits = No root fits. Under { $top_cm } cm of top sand and over { $base_cm } cm of base sand a container must have room for at least one root { $length_mm } mm × { $width_mm } mm and { $gap_cm } cm of sand around it.
    .do = Use a deeper or wider container.
