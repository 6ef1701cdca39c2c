### English, as spoken on radio and phones.
### Every literal text is recorded as it stands here, cut at the { … }.
### No digits, no abbreviations. Numbers: SAY, days: DAY and SPAN, measures: MEASURE.

## What must never be lost. The messages below refer to these sentences.

-bad-roots = If a root is rotten or mouldy, or has insect holes, never eat it. Never feed it to animals, and never plant it. Bury it deep or burn it.
-take-nothing = Take no roots and no vines from such a plant.
-dry-riverbed = Take sand only where local rules allow it, and from a river only when the river is dry. Never dig near a steep bank, because it can fall and bury you.
-children-water = Cover stored water, and keep children away from it.
-keep-dry = Never water the sand, because damp sand makes roots rot.
-moist-soil = Plant the field only in moist soil, because dry soil kills cuttings.

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
span-two-days = on { DAY($from) } or { DAY($to) }
span-day = on { DAY($from) }
unit-kilogram = { SAY($n, form: "cardinal") } { $n ->
    [one] kilogram
   *[other] kilograms
 }
unit-litre = { SAY($n, form: "cardinal") } { $n ->
    [one] litre
   *[other] litres
 }
# Lengths and hands come in halves: $whole is the number below, $half says whether a half is added.
unit-metre = { $half ->
    [yes] { SAY($whole, form: "cardinal") } and a half metres
   *[no] { SAY($whole, form: "cardinal") } { $whole ->
        [one] metre
       *[other] metres
     }
 }
unit-centimetre = { SAY($n, form: "cardinal") } { $n ->
    [one] centimetre
   *[other] centimetres
 }
unit-hand = { $half ->
    [yes] { SAY($whole, form: "cardinal") } and a half hands
   *[no] { SAY($whole, form: "cardinal") } { $whole ->
        [one] hand
       *[other] hands
     }
 }
unit-thumb-joint = { $half ->
    [yes] { SAY($whole, form: "cardinal") } and a half thumb joints
   *[no] { SAY($whole, form: "cardinal") } { $whole ->
        [one] thumb joint
       *[other] thumb joints
     }
 }
unit-bucket = { SAY($n, form: "cardinal") } { $n ->
    [one] bucket
   *[other] buckets
 }
unit-jerrycan = { SAY($n, form: "cardinal") } { $n ->
    [one] jerrycan
   *[other] jerrycans
 }
unit-bundle = { SAY($n, form: "cardinal") } { $n ->
    [one] bundle
   *[other] bundles
 }

## Opening and closing. $season says how the day stands to the rains, $variant which of three ways to say it.

opening = { $season ->
    [before] { $variant ->
        [1] The rains here usually begin about { DAY($rains) }.
        [2] Sweet potato farmers, count back with us from the rains. They usually begin about { DAY($rains) }.
       *[3] Here is the next work for your sweet potatoes. The rains usually begin about { DAY($rains) }.
     }
    [near] { $variant ->
        [1] Sweet potato farmers, the rains may begin any day now.
        [2] The rains may begin soon. Watch the sky and the soil.
       *[3] Sweet potato farmers, be ready. The rains are near.
     }
    [after] { $variant ->
        [1] Sweet potato farmers, the rains have begun.
        [2] The rains have come. Here is the next work for your sweet potatoes.
       *[3] Sweet potato farmers, the rains are here. Hear what to do next.
     }
   *[later] { $variant ->
        [1] Sweet potato farmers, here is what to do next.
        [2] Here is the next work for your sweet potatoes.
       *[3] Now to your sweet potatoes, and the work that comes next.
     }
 } { $kind ->
    [zone] The amounts you hear are for { SAY($roots, form: "cardinal") } roots. For a bigger field take more, and for a smaller field take fewer.{ $season ->
        [before] {" "}Dates before the harvest are for farms that dig first. If you dig later, do that work as many days later.
       *[later] {""}
     }
   *[other] {""}
 }
closing = { $variant ->
    [1] If your extension worker says otherwise, follow your extension worker.
    [2] Ask your extension worker too, and follow that advice first.
   *[3] Your extension worker's advice counts more than this message.
 }

## Steps

mark-plants = Choose healthy sweet potato plants for seed roots. Do this { SPAN($when) }. { $kind ->
    [group] Together, mark { SAY($plants, form: "cardinal") } plants. Each of you marks { SAY($plants_each, form: "cardinal") }.
   *[other] Mark { SAY($plants, form: "cardinal") } plants.
 } Take only strong plants with big, clean leaves and no sign of sickness. Push a stick into the soil beside each one. They will give about { SAY($roots, form: "cardinal") } roots to store. Remember: { SAY($plants, form: "cardinal") } plants, each with a stick.
gather-sand = Bring sand for your sweet potato roots. Do this { SPAN($when) }. You need about { MEASURE($buckets, unit: "bucket") } of { MEASURE($bucket_l, unit: "litre") }. Take clean, coarse sand, with grains you can feel. Spread it under a roof until it is dry, and use it only when it is cool. Fine, damp or warm sand makes roots rot. Remember: about { MEASURE($buckets, unit: "bucket") } of sand, coarse, dry and cool.
check-plants = Look at your marked sweet potato plants again. Do this { SPAN($when) }. Look for small, curled or spotted leaves, weak vines, or holes at the foot of the stem. If you see any of these, or if you are not sure, pull the stick out.
cut-vines = Cut the vines of your marked sweet potato plants. Do this { SPAN($when) }. Leave { MEASURE($stem_cm, unit: "centimetre") } of stem standing, about { MEASURE($stem_hands, unit: "hand") }. The skin of the roots then grows tough, and the roots keep longer.
harvest = Dig the sweet potato plants that you marked. Do this { SPAN($when) }. If the soil is wet, wait until it is dry. Lift gently, so that the hoe cuts no root. Choose { SAY($roots, form: "cardinal") } roots about as long as your hand, with unbroken skin. Brush off the soil by hand, and never wash them. Leave them in the shade for some hours. Do not store roots that the hoe has cut. Cook them soon. Remember: store { SAY($roots, form: "cardinal") } whole roots.
fill-container = Lay your sweet potato roots in dry sand. Do this { SPAN($when) }. You need { SAY($containers, form: "cardinal") } { $containers ->
    [one] container
   *[other] containers
 }{ $container_kinds ->
    [one] { $containers ->
        [one] {" "}of about { MEASURE($container_l, unit: "litre") }.
       *[other] , each of about { MEASURE($container_l, unit: "litre") }.
     }
   *[several] .
 } Use a basin, pot, bucket or tight basket, never a sack. Fill it where it will stay: in a cool, dry and shaded place, away from children, animals and rain. Line its bottom and sides with paper. Spread { MEASURE($base_cm, unit: "centimetre") } of sand. { $layer_widths ->
    [uneven] Lay up to { SAY($roots_per_layer, form: "cardinal") } roots in the lowest layer, and up to { SAY($roots_top, form: "cardinal") } in the highest. In layers between, lay as many as have room.
   *[even] Lay up to { SAY($roots_per_layer, form: "cardinal") } roots in each layer.
 } No root may touch another, or the side. { $layers ->
    [1] Cover them with { MEASURE($top_cm, unit: "centimetre") } of sand.
   *[other] Cover them with { MEASURE($layer_cm, unit: "centimetre") } of sand, and lay the next roots. Make { SAY($layers, form: "cardinal") } layers of roots this way, but cover the last with { MEASURE($top_cm, unit: "centimetre") } of sand.
 } Deep sand keeps out rats, insects and chickens. Use no lid, and no water.
monthly-check = Check your stored sweet potato roots every month. { $turn ->
    [next] The next check is on
   *[first] The first check is on
 } { DAY($first) }. Take out every root and look at it. { -bad-roots } Rub the sprouts off the good roots. Pack them again in dry sand, the same way. Write down how many are left. Then leave them alone until the next check.
prepare-bed = Make the bed for your sweet potato roots. Do this { SPAN($when) }. Choose a place close to water. Make the bed { MEASURE($bed_length_m, unit: "metre") } long and { MEASURE($bed_width_m, unit: "metre") } wide. { $bed_parts ->
    [strips] Make it of { SAY($strips, form: "cardinal") } strips, each { MEASURE($strip_width_m, unit: "metre") } wide, with paths between them.
   *[one] {""}
 } Loosen the soil well. Fence the bed against goats and chickens.
last-check = Check your stored sweet potato roots for the last time on { DAY($first) }. Take out every root and look at it. { -bad-roots } This time, leave the sprouts on. The good roots go into the bed now.
plant-bed = Plant the sweet potato roots in the bed. Do this { SPAN($when) }. Do not wait for rain, but water the bed until it is moist. Make { SAY($bed_rows, form: "cardinal") } { $bed_rows ->
    [one] row.
   *[other] rows along the bed, { MEASURE($spacing_cm, unit: "centimetre") } apart.
 } Lay about { SAY($row_roots, form: "cardinal") } roots in each row, { MEASURE($along_row_cm, unit: "centimetre") } from one to the next. Leave the sprouts on. Cover the roots with { MEASURE($soil_cm, unit: "centimetre") } of soil. Water again gently. Keep the soil moist but not wet, because wet soil rots the roots.
water-bed = Water your sweet potato bed from { DAY($first) }. { $shoots ->
    [before] Until shoots show, give about { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
        [1] every day.
       *[other] every { SAY($water_every_days, form: "cardinal") } days.
     } That is about { MEASURE($jerrycans_young, unit: "jerrycan") } of { MEASURE($jerrycan_l, unit: "litre") }. Keep the soil moist but not wet, because wet soil rots the roots. As the leaves grow, water every day, and give a little more each week.
   *[after] {""}
 } When leaves cover the bed, give about { MEASURE($water_l, unit: "litre") } every day. That is about { MEASURE($jerrycans, unit: "jerrycan") } of { MEASURE($jerrycan_l, unit: "litre") }. Give more on hot, windy days. When rain keeps the soil moist, stop watering.
cut-for-planting = Wait until rain has made the field moist a finger deep. This usually happens { SPAN($when) }. Then cut sweet potato vines from the bed. Take only healthy vines, without spotted, curled or very small leaves. Make each cutting { MEASURE($cutting_cm, unit: "centimetre") } long, with at least { SAY($nodes, form: "cardinal") } leaf joints. Leave { MEASURE($stub_cm, unit: "centimetre") } of stem standing, so that it grows again. { $plan_by ->
    [practice] By common practice, expect about
   *[print] Expect about
 } { SAY($first_cuttings_low, form: "cardinal") } to { SAY($first_cuttings_high, form: "cardinal") } cuttings from the first cut. Keep them in the shade, and plant them the same day or the next.
plant-field = Plant the sweet potato field when rain has made the soil moist a finger deep. This usually happens { SPAN($when) }. { $layout ->
    [own] Each of you plants on your own ridges or mounds.
    [mounds] Put { SAY($on_mound, form: "cardinal") } { $on_mound ->
        [one] cutting
       *[other] cuttings
     } on each mound, with mounds { MEASURE($between_cm, unit: "centimetre") } apart.
   *[ridges] Put a cutting every { MEASURE($along_cm, unit: "centimetre") } on the ridge, with ridges { MEASURE($between_cm, unit: "centimetre") } apart.
 } Bury two or three leaf joints of each cutting, and leave its tip above the soil. After two weeks, plant again where cuttings have died.
first-harvest = Try the first sweet potato roots. Do this { SPAN($when) }. Feel under some plants for roots that are big enough to eat. Do not leave ripe roots long in dry ground, because weevils find them. Dig the last ones by { DAY($last_harvest) }.

## Cautions

caution-rot = Take care with bad sweet potato roots. { -bad-roots } Do not cut, peel or cook it to save a part. Even the part that looks good can be poisonous. If you are not sure about a root, treat it as bad.
caution-virus = Small, curled or spotted leaves and weak vines are signs of sickness. { -take-nothing }
caution-cracks = Weevils reach sweet potato roots through cracks in the soil. When you see a crack, heap soil over it.
caution-heavy-sand = Take care, sand is heavy. Carry no more than { MEASURE($load_kg, unit: "kilogram") } at a time. Fill the container for the roots where it will stay. Never lift it when it is full.
caution-riverbed = Take care at rivers. { -dry-riverbed }
caution-water-children = Take care of children near water. { -children-water } Fence wells and pits. Keep goats and chickens out of the bed.
caution-store-dry = The sand around stored sweet potato roots must stay dry, from the first day to the last. { -keep-dry }
caution-forecast = These dates come from past years, and are no forecast. Rain may come earlier or later this year. Watch the sky and the soil. { -moist-soil }
caution-try-first = If this is new to you, begin with a few roots. Keep some of your vines in the old way as well.

## What the plan leads to

remark-late-work = Some work was not done in time, so the dates are counted anew. Do at once what can still be done. The field can be planted from { DAY($field_from) }.{ $fewer ->
    [0] {""}
   *[other] {" "}Expect about { SAY($fewer, form: "cardinal") } fewer cuttings from the first cut.
 }
remark-fast-loss = At the check on { DAY($day) }, only { SAY($healthy, form: "cardinal") } of { SAY($roots, form: "cardinal") } sweet potato roots were healthy. { $next ->
    [bed] Put the healthy roots into the bed now, and look for more vines to plant.
   *[check] Look for the reason: damp or warm sand, cut roots, roots that touch, or weevils. Use fresh, dry sand. Check again in two weeks. If many more rot, put the healthy roots into a watered bed at once.
 }
remark-limited-at-hand = { $limit ->
    [roots] You have { SAY($roots, form: "cardinal") } sweet potato roots to store.
    [plants] Your plants give about { SAY($roots, form: "cardinal") } sweet potato roots to store.
   *[bed] The bed has room for { SAY($roots, form: "cardinal") } sweet potato roots.
 } The whole field would take { SAY($wanted, form: "cardinal") }. Your roots are enough to plant about { SAY($area_m2, form: "cardinal") } of { SAY($field_m2, form: "cardinal") } square metres. Plant a smaller field, or ask neighbours for cuttings.
remark-containers-too-small = There is room for { SAY($fit, form: "cardinal") } sweet potato roots, not { SAY($roots, form: "cardinal") }. Do not press more in, because roots rot where they touch. This is enough to plant about { SAY($area_m2, form: "cardinal") } of { SAY($field_m2, form: "cardinal") } square metres. { $more ->
    [0] To store more, find another container, or plant a smaller field.
    [one] To store more, find one more container, or plant a smaller field.
   *[other] To store more, find { SAY($more, form: "cardinal") } more containers, or plant a smaller field.
 }
remark-sand-short = Your sand covers { SAY($fit, form: "cardinal") } sweet potato roots, not { SAY($roots, form: "cardinal") }. Do not store roots that the sand does not cover. This is enough to plant about { SAY($area_m2, form: "cardinal") } of { SAY($field_m2, form: "cardinal") } square metres. Bring { MEASURE($more_l, unit: "litre") } more sand, or plant a smaller field.
remark-water-limits = Your water is enough for a bed with { SAY($fit, form: "cardinal") } sweet potato roots, not { SAY($roots, form: "cardinal") }. Make the bed no bigger than told here, and keep it moist. This is enough to plant about { SAY($area_m2, form: "cardinal") } of { SAY($field_m2, form: "cardinal") } square metres. For the whole field, find { MEASURE($more_l, unit: "litre") } more { $per ->
    [all] in all.
   *[day] a day.
 }
remark-hands-short = Those who carry water can water a bed with { SAY($fit, form: "cardinal") } sweet potato roots, not { SAY($roots, form: "cardinal") }. Make the bed no bigger than told here, and keep it moist. This is enough to plant about { SAY($area_m2, form: "cardinal") } of { SAY($field_m2, form: "cardinal") } square metres. For the whole field, let more people carry, or make the bed closer to the water.
remark-water-short = From { DAY($from) }, there may be too little water for the bed. Find more water. Mulch and shade save water. Without them, make a smaller bed and plant a smaller field.
remark-water-heavy = On dry days the bed takes { SAY($trips, form: "cardinal") } trips to the water. That is about { SAY($hours, form: "cardinal") } hours of carrying a day. Plan now who will carry, or make a smaller bed.
remark-rains-too-soon = The rains may begin about { DAY($rains) }. That is too soon after the harvest to store roots. Plant vines from the old field instead, or put the sweet potato roots into the bed at once.
remark-storing-not-needed = Here the dry time lasts about { SAY($days, form: "cardinal") } days in most years. Vines can be kept alive for so long, so you need not store roots. Leave a part of the old field standing, or keep vines in a small watered plot.
remark-long-in-sand = Your sweet potato roots must stay in the sand for { SAY($days, form: "cardinal") } days. Nobody has counted how many survive for so long. Keep some vines growing near water as well, and ask your extension worker.
remark-bed-late = The bed gives its first cuttings about { DAY($cut) }, after the rains begin. When rain has soaked in, plant what vines you have. The bed fills the rest of the field later.
remark-field-waits = The first cut plants about { SAY($area_m2, form: "cardinal") } of { SAY($field_m2, form: "cardinal") } square metres. Later cuts plant the rest, each after { SAY($least_days, form: "cardinal") } to { SAY($most_days, form: "cardinal") } days.
remark-cuttings-short = The first cut will be about { SAY($short, form: "cardinal") } cuttings short. Plant about { SAY($area_m2, form: "cardinal") } of { SAY($field_m2, form: "cardinal") } square metres when rain has soaked in. { $later_cuts ->
    [0] Later cuts come too late to ripen, so ask neighbours for vines in good time.
   *[other] Later cuts plant more of the field. You can also ask neighbours for vines in good time.
 }
remark-rains-too-short = Here the rains are short for this crop. { $known ->
    [case] What you plant may not be ripe before the rains end.
    [open] Nobody knows how often it is ripe before the rains end.
   *[record] It is ripe before the rains end in only { SAY($of_100, form: "cardinal") } years out of a hundred.
 } { $helps ->
    [on-time] Make the bed early, so that you can plant as soon as rain has soaked in.
    [quicker] Plant as soon as rain has soaked in, and look for a variety that is ripe sooner.
   *[neither] Plant as soon as rain has soaked in, and expect small roots and few.
 }
remark-cuts-too-late = A later cut, planted from { DAY($from) } on, is ripe only about { DAY($ripe) }. In most years the rains end sooner. Do not keep a part of the field for later cuts. Use those vines as fodder, or keep them growing where there is water.
remark-rains-may-be-late = The rains may begin as late as { DAY($late) }. Water your sweet potato bed until they come. { -moist-soil }
remark-years-without-rains = In { SAY($count, form: "cardinal") } of { SAY($judged, form: "cardinal") } past years the rains never began well. In such a year, vines planted on the first rain may die. Keep some roots back, or keep watering a part of the bed.

## Questions for a meeting, each after its step

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
