### English, as printed on sheets.
### docs/translate.md tells the values that a message may use.

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
sheet-consequences = About your plan
sheet-tip = Good to know
# The day the sheet was made, and that older ones hold no more.
sheet-made = Made on { DAY($today) }. It replaces every older sheet of this season.
step-done = Done
step-now = Now
step-next = Next
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
amount-bed = Bed
amount-strips = Strips of the bed, with paths of { MEASURE($path_m, unit: "metre") } between them
amount-water = Water for the bed in full leaf, a day
amount-jerrycans = Jerrycans of water in full leaf, a day

first-cuttings-value = { $first_cuttings_low } to { $first_cuttings_high }{ $plan_by ->
    [practice] , by common practice
   *[print] , by days of growth
 }
sand-value = { MEASURE($sand_l, unit: "litre") }, about { MEASURE($sand_kg, unit: "kilogram") }
bed-value = { MEASURE($bed_length_m, unit: "metre") } × { MEASURE($bed_width_m, unit: "metre") }
strips-value = { $strips }, each { MEASURE($strip_length_m, unit: "metre") } × { MEASURE($strip_width_m, unit: "metre") }
water-value = { MEASURE($water_l, unit: "litre") }
water-total-value = { MEASURE($water_total_l, unit: "litre") }
bundles-value = { MEASURE($bundles, unit: "bundle") } of { $bundle_size }
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
span-two-days = { DAY($from) } – { DAY($to) }
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
unit-bucket = { $n } { $n ->
    [one] bucket
   *[other] buckets
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

## What must never be lost. The messages below refer to these sentences, each length to one of them.

-bad-roots = If a root is rotten or mouldy, or has insect holes, never eat it. Never feed it to animals, and never plant it. Bury it deep or burn it.
-bad-roots-short = Rot, mould or insect holes: never eat, never feed to animals, never plant. Bury deep or burn.
-bad-roots-sms = Sweet potato roots with rot, mould or insect holes: never eat, never feed to animals, never plant, even if a part looks good. Bury deep or burn.
-take-nothing = Take no roots and no vines from such a plant.
-take-nothing-short = Take nothing from such a plant.
-dry-riverbed = Take sand only where local rules allow it, and from a river only when the river is dry. Never dig near a steep bank, because it can fall and bury you.
-dry-riverbed-short = Never dig in a river that has water, or near a steep bank.
-children-water = Cover stored water, and keep children away from it.
-children-water-short = Cover water; keep children away.
-keep-dry = Never water the sand, because damp sand makes roots rot.
-keep-dry-short = Never water the sand.
-moist-soil = Plant the field only in moist soil, because dry soil kills cuttings.
-moist-soil-short = Plant only in moist soil.

## Opening and closing

opening = { $kind ->
    [zone] This plan is for every farmer in the area. Its amounts are for { $roots } roots. For a bigger field take more, and for a smaller field take fewer. The dates before the harvest are those of the farms that dig first. If you dig later, do that work as many days later.
   *[other] { $season ->
        [after] The rains began on { DAY($rains) }. The dates of this plan follow from that day.
       *[before] This plan is counted back from the rains. They usually begin about { DAY($rains) }.
     }
 }
closing = If your extension worker's advice differs from this sheet, follow your extension worker.
    .sms = If your extension worker says otherwise, follow your extension worker.

## Steps: title, text (.text), the same in a few words (.short), picture in words (.alt), what a meeting is shown (.show) and asked (.ask), text message on a phone (.sms: 160 letters or less where it can be, two messages where it must be)

mark-plants = Mark { $plants } healthy plants
    .short = Strong plants with big, clean leaves. Push a stick in beside each.
    .text = Choose healthy sweet potato plants for seed roots. { $kind ->
        [group] Together, mark { $plants } plants. Each of you marks { $plants_each }.
       *[other] Mark { $plants } plants.
     } Take only strong plants with big, clean leaves and no sign of sickness. Push a stick into the soil beside each one. They will give about { $roots } roots to store.
    .alt = A hand pushes a stick into the soil beside a strong plant.
    .show = A healthy vine and a sick one, and a stick.
    .ask = How do you tell a healthy plant from a sick one?
    .sms = { BRIEF($first) }: mark { $plants } healthy sweet potato plants for seed roots: strong, with big, clean leaves and no sign of sickness. Push a stick in beside each.
gather-sand = Bring sand, and dry it
    .short = { MEASURE($buckets, unit: "bucket") } of { MEASURE($bucket_l, unit: "litre") }. Coarse and clean. Dry it under a roof, let it cool. { -dry-riverbed-short }
    .text = Bring sand for your sweet potato roots. You need about { MEASURE($buckets, unit: "bucket") } of { MEASURE($bucket_l, unit: "litre") }, or { MEASURE($sand_kg, unit: "kilogram") }. Take clean, coarse sand, with grains you can feel. Spread it under a roof until it is dry, and use it only when it is cool. Fine, damp or warm sand makes roots rot. Carry no more than { MEASURE($load_kg, unit: "kilogram") } at a time, because sand is heavy. { -dry-riverbed }
    .alt = Under a roof, a hand with a bowl puts dry sand from a heap into a small bucket.
    .show = A handful of coarse, dry sand, and one of fine, damp sand.
    .ask = Where is coarse sand near here, and is it safe to dig there?
    .sms = By { BRIEF($last) }: bring { MEASURE($buckets, unit: "bucket") } ({ MEASURE($bucket_l, unit: "litre") }) of coarse, clean sand for sweet potato roots, at most { MEASURE($load_kg, unit: "kilogram") } at a time. Dry it under a roof, and let it cool. { -dry-riverbed-short }
check-plants = Look at the marked plants again
    .short = Small, curled or spotted leaves, weak vines, or holes at the foot of the stem? Pull the stick out. { -take-nothing-short }
    .text = Look at your marked sweet potato plants again. Look for small, curled or spotted leaves, weak vines, or holes at the foot of the stem. If you see any of these, or if you are not sure, pull the stick out. { -take-nothing }
    .alt = A healthy plant with a tick keeps its stick; a hand pulls the stick away from a sick plant with spotted, crumpled leaves.
    .show = Small, curled and spotted leaves.
    .ask = What do you do with a marked plant that has become sick?
    .sms = { BRIEF($first) }: look at the marked sweet potato plants. Small, curled or spotted leaves, weak vines, holes at the foot of the stem, or not sure? Pull the stick out. { -take-nothing-short }
cut-vines = Cut the vines of the marked plants
    .short = Leave { MEASURE($stem_cm, unit: "centimetre") } of stem standing: { MEASURE($stem_hands, unit: "hand") }.
    .text = Cut the vines of your marked sweet potato plants. Leave { MEASURE($stem_cm, unit: "centimetre") } of stem standing, about { MEASURE($stem_hands, unit: "hand") }. The skin of the roots then grows tough, and the roots keep longer.
    .alt = A knife cuts vines as high above the soil as the open hand beside them.
    .show = An open hand laid along a stem.
    .ask = Why does the skin of the roots need time to grow tough?
    .sms = { BRIEF($first) }: cut the vines of the marked sweet potato plants. Leave { MEASURE($stem_cm, unit: "centimetre") } of stem. Then the skin of the roots grows tough.
harvest = Dig, and choose { $roots } whole roots
    .short = Only in dry soil. As long as your hand, whole skin, never washed. Cook hoe-cut roots soon. { -bad-roots-short }
    .text = Dig the sweet potato plants that you marked. If the soil is wet, wait until it is dry. Lift gently, so that the hoe cuts no root. Choose { $roots } roots about as long as your hand, with unbroken skin. Brush off the soil by hand, and never wash them. Leave them in the shade for some hours. Do not store roots that the hoe has cut. Cook them soon. { -bad-roots }
    .alt = A hand lifts a plant with whole roots out of loose soil, a hoe beside it.
    .show = A medium root with whole skin, and one that a hoe has cut.
    .ask = Which of these roots do we store, and which do we cook soon?
    .sms = { BRIEF($first) }: when the soil is dry, dig the marked sweet potato plants. Store { $roots } whole roots, unwashed, after some hours in the shade. Cook hoe-cut roots soon. { -bad-roots-sms }
fill-container = Lay the roots in dry sand
    .short = Sand: { MEASURE($base_cm, unit: "centimetre") } below, { $layers ->
        [1] {""}
       *[other] { MEASURE($layer_cm, unit: "centimetre") } between,{" "}
     }{ MEASURE($top_cm, unit: "centimetre") } on top. Roots apart, no lid. { -keep-dry-short }
    .text = Lay your sweet potato roots in dry sand. You need { $containers } { $containers ->
        [one] container
       *[other] containers
     }{ $container_kinds ->
        [one] { $containers ->
            [one] {" "}of about { MEASURE($container_l, unit: "litre") }.
           *[other] , each of about { MEASURE($container_l, unit: "litre") }.
         }
       *[several] .
     } Use a basin, pot, bucket or tight basket, never a sack. Fill it where it will stay: in a cool, dry and shaded place, away from children, animals and rain. Line its bottom and sides with paper. Spread { MEASURE($base_cm, unit: "centimetre") } of sand, about { MEASURE($base_joints, unit: "thumb-joint") }. { $layer_widths ->
        [uneven] Lay up to { $roots_per_layer } roots in the lowest layer, and up to { $roots_top } in the highest. In layers between, lay as many as have room.
       *[even] Lay up to { $roots_per_layer } roots in each layer.
     } No root may touch another, or the side. { $layers ->
        [1] Cover them with { MEASURE($top_cm, unit: "centimetre") } of sand.
       *[other] Cover them with { MEASURE($layer_cm, unit: "centimetre") } of sand, and lay the next roots. Make { $layers } layers of roots this way, but cover the last with { MEASURE($top_cm, unit: "centimetre") } of sand.
     } Deep sand keeps out rats, insects and chickens. Use no lid. { -keep-dry }
    .alt = A basin cut open: sand, roots lying apart, sand, roots, thick sand on top; a hand strews sand.
    .show = A basin, dry sand and some roots: let somebody lay the first layer.
    .ask = Why may no root touch another?
    .sms = { BRIEF($first) }: lay the sweet potato roots in dry sand, none touching. Sand: { MEASURE($base_cm, unit: "centimetre") } below, { $layers ->
        [1] {""}
       *[other] { MEASURE($layer_cm, unit: "centimetre") } between layers,{" "}
     }{ MEASURE($top_cm, unit: "centimetre") } on top. No lid. Keep rain, children and animals away. Never lift it full. { -keep-dry-short }
monthly-check = Check every root, and pack again
    .short = Rub off sprouts. Pack again in dry sand. { -bad-roots-short }
    .text = Take out every root and look at it. { -bad-roots } Rub the sprouts off the good roots. Pack them again in dry sand, the same way. Write down how many are left. Then leave them alone until the next check.
    .alt = Three moons for a month gone by; a hand takes a root out of the basin; a rotten root lies aside, crossed out.
    .show = A rotten root, if there is one, and how to pack again.
    .ask = What do you do with a rotten root, and why do animals not get it?
    .sms = { BRIEF($first) }: take out all stored sweet potato roots, and look at each. Rub sprouts off good ones. Pack them again in dry sand. Write down how many are left. { -bad-roots-sms }
prepare-bed = Make the bed
    .short = { MEASURE($bed_length_m, unit: "metre") } by { MEASURE($bed_width_m, unit: "metre") }, close to water. Loosen the soil, and fence it. { -children-water-short }
    .text = Make the bed for your sweet potato roots. Choose a place close to water. Make the bed { MEASURE($bed_length_m, unit: "metre") } long and { MEASURE($bed_width_m, unit: "metre") } wide. { $bed_parts ->
        [strips] Make it of { $strips } strips, each { MEASURE($strip_width_m, unit: "metre") } wide, with paths between them.{" "}
       *[one] {""}
     }Loosen the soil well. Fence the bed against goats and chickens. { -children-water }
    .alt = A man loosens the soil of the bed with a hoe; behind him a fence.
    .show = The place near water, and the size of the bed in steps.
    .ask = What keeps goats and chickens out?
    .sms = By { BRIEF($last) }: make a bed of { MEASURE($bed_length_m, unit: "metre") } by { MEASURE($bed_width_m, unit: "metre") } for the sweet potato roots, close to water. Fence it. { -children-water-short }
last-check = Check for the last time, and leave the sprouts on
    .short = The good roots go into the bed with their sprouts. { -bad-roots-short }
    .text = Take out every root and look at it. { -bad-roots } This time, leave the sprouts on. The good roots go into the bed now.
    .alt = A hand takes a root with sprouts out of the basin; an arrow leads to the bed.
    .show = A root with sprouts.
    .ask = Why do the sprouts stay on this time?
    .sms = { BRIEF($first) }: last check of the stored sweet potato roots. Leave the sprouts on: good roots go into the bed now. { -bad-roots-sms }
plant-bed = Plant the roots in the bed
    .short = Wet the bed. { $bed_rows } { $bed_rows ->
        [one] row
       *[other] rows, { MEASURE($spacing_cm, unit: "centimetre") } apart
     }, { $row_roots } roots in each, { MEASURE($soil_cm, unit: "centimetre") } deep. Keep moist, not wet.
    .text = Do not wait for rain, but water the bed until it is moist. Make { $bed_rows } { $bed_rows ->
        [one] row.
       *[other] rows along the bed, { MEASURE($spacing_cm, unit: "centimetre") } apart.
     } Lay about { $row_roots } roots in each row, { MEASURE($along_row_cm, unit: "centimetre") } from one to the next. Leave the sprouts on. Cover the roots with { MEASURE($soil_cm, unit: "centimetre") } of soil. Water again gently. Keep the soil moist but not wet, because wet soil rots the roots.
    .alt = Roots laid in a row; a hand covers them with soil.
    .show = The distance between rows, with a stick of the right length.
    .ask = Do we wait for rain before we plant the bed?
    .sms = From { BRIEF($first) }: water the bed, do not wait for rain. Lay the sweet potato roots in { $bed_rows } { $bed_rows ->
        [one] row
       *[other] rows { MEASURE($spacing_cm, unit: "centimetre") } apart
     }, { MEASURE($soil_cm, unit: "centimetre") } deep. Keep moist, not wet.
water-bed = Water the bed
    .short = { $shoots ->
        [before] Until shoots show: { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
            [1] a day
           *[other] every { $water_every_days } days
         }.{" "}
       *[after] {""}
     }In full leaf: about { MEASURE($water_l, unit: "litre") } a day, { MEASURE($jerrycans, unit: "jerrycan") }. Moist, never wet. { -children-water-short }
    .text = Water your sweet potato bed from { DAY($first) }. { $shoots ->
        [before] Until shoots show, give about { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
            [1] every day
           *[other] every { $water_every_days } days
         }, about { MEASURE($jerrycans_young, unit: "jerrycan") } of { MEASURE($jerrycan_l, unit: "litre") }. Keep the soil moist but not wet, because wet soil rots the roots. As the leaves grow, water every day, and give a little more each week.{" "}
       *[after] {""}
     }When leaves cover the bed, give about { MEASURE($water_l, unit: "litre") } every day, about { MEASURE($jerrycans, unit: "jerrycan") } of { MEASURE($jerrycan_l, unit: "litre") }. Give more on hot, windy days. When rain keeps the soil moist, stop watering. { -children-water }
    .alt = A hand pours water from a jerrycan over the bed with sprouts.
    .show = A jerrycan, and how little water young plants need.
    .ask = Who brings the water, and who looks after the children there?
    .sms = From { BRIEF($first) }: water the sweet potato bed. { $shoots ->
        [before] Until shoots show { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
            [1] a day
           *[other] every { $water_every_days } days
         }, in full leaf { MEASURE($water_l, unit: "litre") } a day.
       *[after] In full leaf give { MEASURE($water_l, unit: "litre") } a day.
     } More on hot days. Stop when rain keeps the soil moist. { -children-water-short }
cut-for-planting = When rain has soaked in, cut vines
    .short = Field moist a finger deep: cut { MEASURE($cutting_cm, unit: "centimetre") }, { $nodes } leaf joints, healthy vines. Leave { MEASURE($stub_cm, unit: "centimetre") } of stem. Plant by the next day.
    .text = Wait until rain has made the field moist a finger deep. Then cut sweet potato vines from the bed. Take only healthy vines, without spotted, curled or very small leaves. Make each cutting { MEASURE($cutting_cm, unit: "centimetre") } long, about { MEASURE($cutting_hands, unit: "hand") }, with at least { $nodes } leaf joints. Leave { MEASURE($stub_cm, unit: "centimetre") } of stem standing, so that it grows again. { $plan_by ->
        [practice] By common practice, expect about
       *[print] Expect about
     } { $first_cuttings_low } to { $first_cuttings_high } cuttings from the first cut. Keep them in the shade, and plant them the same day or the next.
    .alt = One hand holds a vine of the bed, the other cuts it with a knife; stubs stay.
    .show = A cutting of the right length beside the hand: count its leaf joints.
    .ask = From which plants do we take no cuttings?
    .sms = When rain has made the field moist a finger deep: cut healthy sweet potato vines, { MEASURE($cutting_cm, unit: "centimetre") }, { $nodes } leaf joints. Leave { MEASURE($stub_cm, unit: "centimetre") } of stem. Keep shaded, plant by the next day.
plant-field = Plant the field
    .short = { -moist-soil-short } Bury two or three leaf joints. After two weeks, plant again where cuttings have died.
    .text = Plant the sweet potato field when rain has made the soil moist a finger deep. { $layout ->
        [own] Each farm plants on its own ridges or mounds.
        [mounds] Put { $on_mound } { $on_mound ->
            [one] cutting
           *[other] cuttings
         } on each mound, with mounds { MEASURE($between_cm, unit: "centimetre") } apart.
       *[ridges] Put a cutting every { MEASURE($along_cm, unit: "centimetre") } on the ridge, with ridges { MEASURE($between_cm, unit: "centimetre") } apart.
     } Bury two or three leaf joints of each cutting, and leave its tip above the soil. { $kind ->
        [zone] Over the whole season of the bed, { $roots } roots give about { $cuttings } cuttings.
       *[other] The whole field takes { $cuttings } cuttings.
     } After two weeks, plant again where cuttings have died. { -moist-soil }
    .alt = Under a rain cloud, a hand plants cuttings in a row; their lower nodes are in the soil.
    .show = Soil that is moist a finger deep, and a cutting with its lower joints in the soil.
    .ask = It has rained once. Do we plant now? What could go wrong?
    .sms = From { BRIEF($first) }, when rain has soaked in: plant about { $cuttings_to_plant } sweet potato cuttings. Bury two or three leaf joints of each. { -moist-soil-short }
first-harvest = Try the first roots
    .short = Feel for roots big enough to eat. Dig all by { DAY($last_harvest) }, because weevils find ripe roots.
    .text = Feel under some plants for roots that are big enough to eat. Do not leave ripe roots long in dry ground, because weevils find them. Dig the last ones by { DAY($last_harvest) }.
    .alt = A hand feels for a root under a plant; beside it a pot on the fire.
    .show = How to feel for a root without pulling out the plant.
    .ask = What happens to ripe roots that stay in dry ground?
    .sms = From { BRIEF($first) }: feel for ripe sweet potato roots. Dig all by { BRIEF($last_harvest) }, because weevils find ripe roots in dry ground.

## Tables: title, what it tells (.text), its picture in words (.alt)

table-cuts = Cuts from the bed{ $plan_by ->
    [practice] , by common practice
   *[print] , by days of growth
 }
    .text = { $cuts ->
        [1] Seasons differ, so expect between the lower and the higher number of cuttings.
       *[other] Seasons differ, so expect between the lower and the higher number of cuttings. Later cuts plant the rest of the field, and fill gaps.
     }
table-ways = What you can do, side by side
    .text = The table tells what each way gives in an ordinary season, by the time the rains come. None is sure. It also tells what each way takes, even if you do not have so much.
way-value = { $way ->
    [one-bed] One bed, cut when the rains come
    [second-bed] A small early bed; its cuttings grow on in a watered plot
    [vine-plot] Vines of the old field in a watered plot; store nothing
    [as-planned] Leave the roots in the sand, as planned
    [bed-now] Put the healthy roots into the bed now
    [bed-now-second-bed] Into the bed now; its cuttings grow on in a watered plot
   *[buy] Get the missing vines from somebody else
 }
table-shares = What each farm brings
    .text = Each farm marks its own plants, and brings its roots to the common store.
table-fields = Amounts by size of field
    .text = Find your field in the first column. If yours lies between two lines, so do its amounts.
table-planting-later = If you wait with planting
    .text = If you plant on the first heavy rain and a long dry time follows, young plants may die. That is a false start. If you wait, fewer days are left until the rains end. The table tells how both were in past years. It is no forecast. In the picture, striped bars are years with a false start, and black bars are days until the rains end.
    .alt = For each day from which you plant: a striped bar for years with a false start, and a black bar for the days until the rains end. The numbers stand in the table above.
column-when = When
column-way = What you do
column-farm = Farm
column-area = Field, m²
column-cuttings = Cuttings
column-cut = Cuttings
cut-value = { $low }–{ $high }
column-plants = Plants to mark
column-roots = Roots to store
column-bed = Bed, m²
column-jerrycans = Jerrycans of water a day
column-water = Water in all, L
column-trips = Trips to the water
column-from = First rain from
column-false-starts = Years with a false start
column-days-left = Days until the rains end, in half of the years
false-starts-value = { $false_starts } of { $years }

## Cautions: title, text (.text), the same in a few words (.short), picture in words (.alt); text message (.sms) where there is one

caution-rot = Bad roots can poison, even the part that looks good
    .short = { -bad-roots-short }
    .text = { -bad-roots } Do not cut, peel or cook it to save a part. Even the part that looks good can be poisonous. If you are not sure about a root, treat it as bad.
    .alt = A rotten root; below it a cow and a cooking pot, both crossed out.
    .sms = { -bad-roots-sms }
caution-virus = Sick plants
    .short = Small, curled or spotted leaves, weak vines: { -take-nothing-short }
    .text = Small, curled or spotted leaves and weak vines are signs of sickness. { -take-nothing }
    .alt = A hand with a knife at a plant with spotted, crumpled leaves, crossed out.
caution-cracks = Cracks in the soil
    .short = Weevils get in through cracks. Heap soil over them.
    .text = Weevils reach sweet potato roots through cracks in the soil. When you see a crack, heap soil over it.
    .alt = A weevil goes into a crack in the ridge; beneath it lies a root full of holes.
caution-heavy-sand = Sand is heavy
    .short = Carry no more than { MEASURE($load_kg, unit: "kilogram") }. Never lift the full container.
    .text = Carry no more than { MEASURE($load_kg, unit: "kilogram") } at a time. Fill the container where it will stay. Never lift it when it is full.
    .alt = A person bent under a great sack, crossed out; a woman upright with a small bucket, with a tick.
caution-riverbed = Sand from a river
    .short = Only where rules allow it. { -dry-riverbed-short }
    .text = { -dry-riverbed }
    .alt = A steep river bank falling on a digging person, crossed out.
caution-water-children = Water, children and animals
    .short = { -children-water-short } Fence wells, pits and the bed.
    .text = { -children-water } Fence wells and pits. Keep goats and chickens out of the bed.
    .alt = A covered drum of water behind a fence; a woman keeps a child outside.
caution-store-dry = Never water the stored roots
    .short = { -keep-dry-short } Damp sand makes roots rot.
    .text = The sand around stored sweet potato roots must stay dry, from the first day to the last. { -keep-dry }
    .alt = Water from a jerrycan falls on the basin of roots, crossed out.
caution-forecast = Dates are averages, not a forecast
    .short = Rain may come earlier or later this year. { -moist-soil-short }
    .text = These dates come from past years, and are no forecast. Rain may come earlier or later this year. Watch the sky and the soil. { -moist-soil }
    .alt = A woman with cuttings in her hand looks up at sun, cloud and rain.
caution-try-first = Try a few roots first
    .short = New to you? Begin with a few roots, and keep some vines in the old way.
    .text = If this is new to you, begin with a few roots. Keep some of your vines in the old way as well.
    .alt = A woman between a small pot with a few roots and a plant that goes on growing in the soil.

## Drawings: title, and what it shows in words; the names and sizes that stand in them

month-year = { month } { $year }
calendar-title = What to do, month by month
guide-title = Guide for a meeting
card-fold = Fold on the broken lines. Cut the thick line.
record-title = Checks of the stored roots
record-how = At each check, take out every root. Bury deep or burn every root that is rotten or mouldy, or has insect holes. Write down what you find, and show this card to your extension worker.
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
ask-gather-sand = Where is coarse sand near here, and how do we dig it safely?
ask-check-plants = What do sick sweet potato plants look like here?
ask-cut-vines = Why does the skin of the roots need time to grow tough?
ask-harvest = How will you dig so that the hoe cuts no root?
ask-fill-container = Where in your home is it cool and dry, away from children and animals?
ask-monthly-check = What do bad roots look like, and where will you bury them?
ask-prepare-bed = Where is water near here, and who keeps the children safe?
ask-last-check = How many of your roots have sprouts?
ask-plant-bed = What could keep you from planting the bed in time?
ask-water-bed = Who will water when you are away?
ask-cut-for-planting = How do you know that enough rain has come?
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

advice-roots-not-chosen = Small and crooked roots, and roots that the hoe has cut, are food. Eat or sell them soon, the cut ones first, because they do not keep. { -bad-roots }
advice-storage-place = Keep the containers in a cool, dry, shaded room where air moves and no rain comes in. Keep them out of reach of children, rats, chickens and goats.
advice-clean-vines = Cut from the tips of the vines first, because they carry fewer weevils. Take no vine from a plant with holes at its foot or signs of sickness.
advice-clean-field = Plant at least { $metres } m from old sweet potato fields, because weevils come from there. Clear away old vines and roots. Many advise to plant the same ground only once in { $years } years.
advice-deep-planting = Set the cuttings about { $deep_cm } cm deep. In one trial they did better there than at { $shallow_cm } cm.
advice-dry-after-planting = The first rains may stop. Of 100 cuttings, about { $week_least } to { $week_most } live through a dry week after planting, and { $fortnight_least } to { $fortnight_most } through a dry fortnight. Water the bed until the field has taken, keep some vines back, and plant again where cuttings have died.
advice-feed-and-weed = Work old, rotted manure or compost into the ridges before you plant. Fresh manure, or much of it, gives leaves and few roots. Weed until the vines cover the ground.
advice-children = Let young children eat orange roots often. In one trial, children who ate { $serving_g } g a day for { $days } days had better stores of vitamin A. Pale roots hold far less, and no sheet can promise as much for one child.
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
    .text = There is room for { $fit } sweet potato roots, not { $roots }. Do not press more in, because roots rot where they touch. This is enough to plant about { $area_m2 } of { $field_m2 } m². { $more ->
        [0] To store more, find another container, or plant a smaller field.
        [one] To store more, find one more container, or plant a smaller field.
       *[other] To store more, find { $more } more containers, or plant a smaller field.
     }
    .do = { $more ->
        [0] For the whole field find another container
        [one] For the whole field find one more of the last kind
       *[other] For the whole field find { $more } more of the last kind
     } before the harvest, or plant less field.
remark-sand-short = { $has_l } litres of sand cover { $fit } of { $roots } roots; all of them take { $needs_l } litres. { remark-planted }
    .text = Your sand covers { $fit } sweet potato roots, not { $roots }. Do not store roots that the sand does not cover. This is enough to plant about { $area_m2 } of { $field_m2 } m². Bring { MEASURE($more_l, unit: "litre") } more sand, or plant a smaller field.
    .do = To cover all of them bring { $more_l } litres of sand more, or plant less field.
remark-water-limits = From { $source } come { $gives_l } litres { $per ->
    [all] in all
   *[day] a day
 }. That waters { $bed_m2 } m² of bed with { $fit } roots. A bed of { $roots } roots would need { $needs_l } litres { $per ->
    [all] in all
   *[day] a day
 }, and lack water from { DAY($from) } on. { remark-planted }
    .text = Your water is enough for a bed with { $fit } sweet potato roots, not { $roots }. Make the bed no bigger than told here, and keep it moist. This is enough to plant about { $area_m2 } of { $field_m2 } m². For the whole field, find { MEASURE($more_l, unit: "litre") } more { $per ->
        [all] in all.
       *[day] a day.
     }
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
    .text = Those who carry water can water a bed with { $fit } sweet potato roots, not { $roots }. Make the bed no bigger than told here, and keep it moist. This is enough to plant about { $area_m2 } of { $field_m2 } m². For the whole field, let more people carry, or make the bed closer to the water.
    .do = For the whole field let more people carry, or for longer; make the bed closer to the water; carry more at a time, with a cart or a bicycle; or plant less field.
remark-water-heavy = When it needs most, the bed takes { $litres } litres a day: { $trips } trips and about { $hours } hours of carrying, { $hours_each } for { $people ->
    [one] the one who carries.
   *[other] each of { $people } people.
 }
    .text = On dry days the bed takes { $trips } trips to the water. That is about { $hours } hours of carrying a day. Plan now who will carry, or make a smaller bed.
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
    .text = { $limit ->
        [roots] You have { $roots } sweet potato roots to store.
        [plants] Your plants give about { $roots } sweet potato roots to store.
       *[bed] The bed has room for { $roots } sweet potato roots.
     } The whole field would take { $wanted }. Your roots are enough to plant about { $area_m2 } of { $field_m2 } m². Plant a smaller field, or ask neighbours for cuttings.
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
    .text = The first cut plants about { $area_m2 } of { $field_m2 } m². Later cuts plant the rest, each after { $least_days } to { $most_days } days.
    .do = To plant the whole field at the onset, store { $roots } roots (in the case: sizing = "first-planting").
remark-by-print = Cuttings are counted by the middle of a growth curve, computed from values of memory and held against print: { $roots } roots give about { $first } at the first cut and { $season } over the bed season. Common practice counts on about { $other_first } and { $other_season }.
    .do = Keep to the curve unless beds here are known to give more (then, in the case: plan_by = "practice").
remark-by-practice = Cuttings are counted by common practice: { $roots } roots give about { $first } at the first cut and { $season } over the bed season. By the middle of the growth curve they give about { $other_first } and { $other_season }.
    .do = Count on what the curve says, unless beds here are known to give as much (in the case: plan_by = "print").
remark-rains-too-soon = The rains may begin on { DAY($rains) }, too soon after the harvest for storage. The roots go to the bed on { DAY($bed) }.
    .text = The rains may begin about { BRIEF($rains) }. That is too soon after the harvest to store roots. Plant vines from the old field instead, or put the sweet potato roots into the bed at once.
    .do = Plant vines from the old field instead, or sprout the roots at once and plant late.
remark-storing-not-needed = { $two_seasons ->
    [yes] The record has two rainy seasons a year. From { DAY($from) } there are { $days } dry days until the rains have begun
   *[no] From { DAY($from) } there are { $days } days until the rains have begun
 } in most years, by { DAY($rains) }. Vines can be kept alive for about { $kept_days } days, so roots need not be stored.
    .text = Here the dry time lasts about { $days } days in most years. Vines can be kept alive for so long, so you need not store roots. Leave a part of the old field standing, or keep vines in a small watered plot.
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
    .text = Here the rains are short for this crop. { $known ->
        [case] What you plant may not be ripe before the rains end.
        [open] Nobody knows how often it is ripe before the rains end.
       *[record] It is ripe before the rains end in only { $of_100 } years out of 100.
     } { $helps ->
        [on-time] Make the bed early, so that you can plant as soon as rain has soaked in.
        [quicker] Plant as soon as rain has soaked in, and look for a variety that is ripe sooner.
       *[neither] Plant as soon as rain has soaked in, and expect small roots and few.
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
    .text = A later cut, planted from { BRIEF($from) } on, is ripe only about { BRIEF($ripe) }. In most years the rains end sooner. Do not keep a part of the field for later cuts. Use those vines as fodder, or keep them growing where there is water.
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
    .text = The bed gives its first cuttings about { BRIEF($cut) }, after the rains begin. When rain has soaked in, plant what vines you have. The bed fills the rest of the field later.
    .do = Plant what vines you have at the onset. The bed fills the rest.
remark-long-in-sand = The roots would stay { $days } days in sand, longer than the { $evidence_days } days the survival figures come from.
    .text = Your sweet potato roots must stay in the sand for { $days } days. Nobody has counted how many survive for so long. Keep some vines growing near water as well, and ask your extension worker.
    .do = Check the date of the harvest. If it is right, do not count on these roots alone: keep vines growing in a small watered plot, or agree with somebody who sells vines. Store more roots than the plan says, and ask the local extension office.
remark-late-work = { $steps ->
    [one] One step was not done when due.
   *[other] { $steps } steps were not done when due.
 } The dates are counted anew from { DAY($today) }. { late-cost }
    .text = Some work was not done in time, so the dates are counted anew. Do at once what can still be done. The field can be planted from { BRIEF($field_from) }.{ $fewer ->
        [0] {""}
       *[other] {" "}Expect about { $fewer } fewer cuttings from the first cut.
     }
    .do = Do at once what can still be done; the plan says what.
remark-fast-loss = On { DAY($day) } only { $healthy } of { $roots } roots were healthy. { $expected } were to be expected, { $worst } at the worst on record.
    .text = At the check on { BRIEF($day) }, only { $healthy } of { $roots } sweet potato roots were healthy. { $next ->
        [bed] Put the healthy roots into the bed now, and look for more vines to plant.
       *[check] Look for the reason: damp or warm sand, cut roots, roots that touch, or weevils. Use fresh, dry sand. Check again in two weeks. If many more rot, put the healthy roots into a watered bed at once.
     }
    .do = Look for the reason: damp or warm sand, wounded roots, roots that touch, weevils. Change the sand, and check again in two weeks.
remark-enough = The first cut is enough for the whole field, with about { $spare } cuttings to spare.
    .do = Go on checking as before.
remark-cuttings-short = The first cut will be about { $short } cuttings short of the { $cuttings } for the whole field.
    .text = The first cut will be about { $short } cuttings short. Plant about { $area_m2 } of { $field_m2 } m² when rain has soaked in. { $later_cuts ->
        [0] Later cuts come too late to ripen, so ask neighbours for vines in good time.
       *[other] Later cuts plant more of the field. You can also ask neighbours for vines in good time.
     }
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
    .text = From { BRIEF($from) }, there may be too little water for the bed. Find more water. Mulch and shade save water. Without them, make a smaller bed and plant a smaller field.
    .do = Find a second source, mulch and shade the bed, or make a bed of about { $bed_m2 } m² and plant less field.
remark-rains-may-be-late = The plan is ready for rains from { DAY($onset) } on. By { DAY($late) } they have begun in most years, but not in all.
    .text = The rains may begin as late as { BRIEF($late) }. Water your sweet potato bed until they come. { -moist-soil }
    .do = Have water for the bed until then.
remark-years-without-rains = In { $count } of { $judged } years the rains never began by this rule ({ $years }). The percentiles leave them out.
    .text = In { $count } of { $judged } past years the rains never began well. In such a year, vines planted on the first rain may die. Keep some roots back, or keep watering a part of the bed.
    .do = In such a year vines planted on the first rain may die: keep some roots back, or keep watering a part of the bed.
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
