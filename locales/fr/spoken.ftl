### Français d’Afrique de l’Ouest et du Sahel, brouillon : paroles de radio et de téléphone. Personne ne les a encore relues.
### Draft. Every literal text is recorded as it stands here, cut at the { … }.
### No digits, no abbreviations. Numbers: SAY, days: DAY and SPAN, measures: MEASURE.
### Forms: feminine for patate, bouture, couche, ligne, botte and longueur; cardinal for pied, récipient, nœud, bidon and the
### other units. No number, day or measure stands behind a bare "de" that would have to become "d’" before "un" or "une".
### Spans stand first ("entre le … et le …, coupez …"), because "les pieds marqués entre le …" would say when they were marked.

## Dates and units

date = le { SAY($day, form: "day") } { month }
week = la { $week ->
    [1] première
    [2] deuxième
    [3] troisième
    [4] quatrième
   *[5] dernière
 } semaine { $month ->
    [1] de janvier
    [2] de février
    [3] de mars
    [4] d’avril
    [5] de mai
    [6] de juin
    [7] de juillet
    [8] d’août
    [9] de septembre
    [10] d’octobre
    [11] de novembre
   *[12] de décembre
 }
span = entre { DAY($from) } et { DAY($to) }
span-day = { DAY($from) }
unit-kilogram = { SAY($n, form: "cardinal") } { $n ->
    [one] kilo
   *[other] kilos
 }
# same
unit-litre = { SAY($n, form: "cardinal") } { $n ->
    [one] litre
   *[other] litres
 }
# Beds are measured in halves of a metre, and nobody says "un virgule cinq mètre".
# doubt: longer sides with a half, from five and a half metres on, are still said with "virgule".
unit-metre = { $n ->
    [0.5] un demi-mètre
    [1.5] un mètre et demi
    [2.5] deux mètres et demi
    [3.5] trois mètres et demi
    [4.5] quatre mètres et demi
    [one] { SAY($n, form: "cardinal") } mètre
   *[other] { SAY($n, form: "cardinal") } mètres
 }
unit-centimetre = { SAY($n, form: "cardinal") } { $n ->
    [one] centimètre
   *[other] centimètres
 }
unit-hand = { SAY($n, form: "feminine") } { $n ->
    [one] longueur de main
   *[other] longueurs de main
 }
unit-thumb-joint = { SAY($n, form: "cardinal") } { $n ->
    [one] bout de pouce
   *[other] bouts de pouce
 }
unit-jerrycan = { SAY($n, form: "cardinal") } { $n ->
    [one] bidon
   *[other] bidons
 }
unit-bundle = { SAY($n, form: "feminine") } { $n ->
    [one] botte
   *[other] bottes
 }

## Opening and closing

opening = Patates douces, de cette récolte aux prochaines pluies. { $kind ->
    [zone] Les pluies sont attendues vers { WEEK($rains) }. Les quantités que vous entendez sont pour { SAY($roots, form: "feminine") } patates. Prenez plus ou moins de patates selon votre champ.
   *[other] Les pluies sont attendues vers { DAY($rains) }.
 }
# doubt: "agent d’agriculture" for the extension worker; "encadreur" or "conseiller agricole" in places.
closing = Votre agent d’agriculture connaît les variétés, les dates et les règles de votre zone. Si ce message dit autre chose, suivez son conseil.

## Steps

# doubt: "patates de semence" for seed roots; "piquet" for the stick.
mark-plants = { SPAN($when) }, choisissez les pieds qui donneront vos patates de semence. Marquez { SAY($plants, form: "cardinal") } pieds vigoureux. { $kind ->
    [group] Chaque membre en marque { SAY($plants_each, form: "cardinal") }. Mettez un piquet à côté de chacun.
   *[other] Mettez un piquet à côté de chacun.
 } Prenez seulement des pieds qui ont de grandes feuilles propres, sans aucun signe de maladie. Ils donneront environ { SAY($roots, form: "feminine") } patates à garder.
# doubt: "gros sable" for coarse sand, "à l’abri" for under cover.
gather-sand = { SPAN($when) }, apportez du sable sec. Il vous faut { MEASURE($sand_l, unit: "litre") } de sable, soit environ { MEASURE($sand_kg, unit: "kilogram") }. Prenez du gros sable propre. Faites-le sécher à l’abri et laissez-le refroidir. Le sable fin, humide ou chaud fait pourrir les patates.
check-plants = { SPAN($when) }, regardez encore les pieds marqués. Cherchez des feuilles petites, enroulées ou tachées. Cherchez des tiges restées courtes, et des trous au bas de la tige. Si vous avez un doute, enlevez le piquet et ne prenez rien sur ce pied.
# doubt: "tiges" for vines; "lianes" is said in parts of the region.
cut-vines = { SPAN($when) }, coupez les tiges des pieds marqués. Laissez sur le pied un bout de tige long comme la main. La peau des patates durcit, et elles se gardent plus longtemps.
# doubt: "blesser" and "blessées" for wounding roots.
harvest = { SPAN($when) }, récoltez les patates. Récoltez seulement dans une terre sèche, et sortez les patates sans les blesser. Prenez { SAY($roots, form: "feminine") } patates moyennes, à peu près de la longueur de votre main. Leur peau doit être intacte. Les patates blessées vont à la cuisine, pas dans la réserve. Enlevez la terre des patates à la main et ne les lavez jamais. Laissez-les quelques heures à l’ombre.
# doubt: "pot" for a clay pot; "canari" is the West African word, but not everywhere.
fill-container = { SPAN($when) }, rangez les patates dans le sable. Prenez une bassine, un pot, un seau ou un panier serré. Pas de sacs. Garnissez le récipient de papier. Remplissez-le là où il restera. L’endroit doit être frais, sec et à l’ombre, loin des enfants, des animaux et de la pluie. Il vous faut { SAY($containers, form: "cardinal") } { $containers ->
    [one] récipient.
   *[other] récipients.
 } Commencez par { MEASURE($base_cm, unit: "centimetre") } de sable. Posez les patates, { $layer_widths ->
    [uneven] au plus { SAY($roots_per_layer, form: "feminine") } dans la couche du bas, et au plus { SAY($roots_top, form: "feminine") } dans la couche du haut.
   *[even] au plus { SAY($roots_per_layer, form: "feminine") } par couche.
 } Elles ne doivent toucher ni une autre patate ni la paroi. { $layers ->
    [one] Mettez dessus { MEASURE($layer_cm, unit: "centimetre") } de sable. Faites une seule couche.
   *[other] Mettez dessus { MEASURE($layer_cm, unit: "centimetre") } de sable, et posez la couche suivante. Faites { SAY($layers, form: "feminine") } couches.
 } Finissez par { MEASURE($top_cm, unit: "centimetre") } de sable. Ce sable arrête les rats, les insectes et la volaille. Ne mettez pas de couvercle.
monthly-check = Vérifiez les patates chaque mois, { $turn ->
    [next] la prochaine fois
   *[first] la première fois
 } { DAY($first) }. Sortez toutes les patates et regardez-les une à une. Enterrez profondément, ou brûlez, toute patate pourrie, moisie ou percée par les insectes. Enlevez les germes en frottant. Remettez les bonnes patates dans le sable de la même façon, et notez combien il en reste. Entre deux vérifications, n’y touchez pas.
# doubt: "planche de pépinière" for the seedbed; farmers may say only "pépinière" or only "planche".
prepare-bed = { SPAN($when) }, préparez la planche de pépinière. Elle doit faire { MEASURE($bed_length_m, unit: "metre") } de long et { MEASURE($bed_width_m, unit: "metre") } de large, près de l’eau. Remuez bien la terre. Entourez la planche d’une clôture contre les chèvres et les poules.
last-check = Vérifiez les patates pour la dernière fois { DAY($first) }. Enterrez profondément, ou brûlez, toute patate pourrie, moisie ou percée par les insectes. Cette fois, laissez les germes en place. Les bonnes patates vont maintenant dans la planche.
plant-bed = { SPAN($when) }, plantez les patates dans la planche. Couchez-les en lignes, avec environ { MEASURE($spacing_cm, unit: "centimetre") } d’écart. Faites { SAY($bed_rows, form: "feminine") } { $bed_rows ->
    [one] ligne.
   *[other] lignes.
 } Couvrez-les d’un peu de terre.
# doubt: whether the size of the "bidon" should be said.
water-bed = { SPAN($when) }, arrosez la planche. Quand elle est pleine de feuilles, donnez { MEASURE($water_l, unit: "litre") } d’eau chaque jour. Cela fait { MEASURE($jerrycans, unit: "jerrycan") }. Les jeunes plants en demandent moins. Les jours de chaleur et de vent, il en faut plus. Arrêtez quand la pluie fait le travail.
# doubt: "nœuds" for nodes; some may say "yeux". "le bas des tiges" for the stubs left in the bed.
cut-for-planting = Quand les pluies sont là, { SPAN($when) }, coupez les boutures à planter. Chaque bouture doit mesurer { MEASURE($cutting_cm, unit: "centimetre") } et avoir au moins { SAY($nodes, form: "cardinal") } nœuds. Coupez seulement sur des pousses saines. { $plan_by ->
    [practice] Selon l’usage courant, la première coupe donne environ
   *[print] La première coupe donne environ
 } { SAY($first_cuttings_low, form: "feminine") } à { SAY($first_cuttings_high, form: "feminine") } boutures. Laissez le bas des tiges en place. Il donne d’autres boutures après quatre à six semaines. Gardez les boutures à l’ombre, et plantez-les dans les deux jours.
# doubt: "exploitation" for a farm is an official word; "famille" or "ferme" may be plainer.
plant-field = { SPAN($when) }, plantez le champ, mais seulement quand la terre est humide. { $layout ->
    [own] Chaque exploitation plante sur ses propres billons ou buttes.
    [mounds] Mettez { SAY($on_mound, form: "feminine") } { $on_mound ->
        [one] bouture sur chaque butte.
       *[other] boutures sur chaque butte.
     }
   *[ridges] Mettez une bouture tous les { MEASURE($along_cm, unit: "centimetre") } sur le billon.
 } Enterrez deux ou trois nœuds de chaque bouture. Après deux semaines, remplacez les boutures qui n’ont pas pris.
# doubt: "charançons" may be unknown as a word.
first-harvest = { SPAN($when) }, cherchez les premières patates. Tâtez la terre sous quelques pieds pour trouver des patates assez grosses pour être mangées. Ne laissez pas longtemps les patates mûres dans une terre sèche. Les charançons les trouvent. Récoltez les dernières au plus tard { DAY($last_harvest) }.

## Cautions

caution-rot = Attention. Ne mangez jamais de patates pourries, moisies ou percées par les insectes. Ne les donnez jamais aux animaux, et ne les plantez pas. Ne coupez pas la mauvaise partie pour manger le reste. Même la partie qui semble bonne peut vous empoisonner. Enterrez ces patates profondément ou brûlez-les.
caution-virus = Attention. Des feuilles tachées, petites ou tordues et des tiges restées courtes sont des signes de virus. Ne prenez jamais de patates ni de tiges sur ces pieds.
caution-cracks = Les charançons arrivent aux patates par les fentes de la terre. Dès que vous voyez une fente, ramenez de la terre dessus.
caution-heavy-sand = Attention, le sable est lourd. Portez au plus { MEASURE($load_kg, unit: "kilogram") } à la fois. Remplissez le récipient là où il restera, et ne le soulevez pas quand il est plein.
# doubt: "rivière" also for a seasonal stream, "marigot" in parts of the region; "berge raide" for a steep bank.
caution-riverbed = Prenez du sable dans le lit d’une rivière seulement quand ce lit est sec. Ne creusez jamais sous une berge raide, ni près d’elle. Elle peut s’écrouler sur vous et vous enterrer. Prenez du sable seulement là où les règles locales le permettent.
caution-water-children = Attention aux enfants. Ne les laissez pas jouer près de l’eau, des puits ou des trous. Couvrez l’eau que vous gardez, et entourez les puits et les trous d’une clôture. Ne laissez pas les chèvres et les poules entrer dans la planche.
caution-store-dry = N’arrosez jamais la réserve. Le sable doit rester sec du premier jour au dernier.
caution-forecast = Ces dates sont des moyennes des années passées, pas une prévision pour cette année. Les pluies peuvent venir plus tôt ou plus tard. Plantez seulement quand la terre est humide.
caution-try-first = Si c’est nouveau pour vous, commencez avec quelques patates. Gardez aussi une partie de vos tiges comme avant.

## Questions for a meeting, each after its step

# doubt: whether the questions sound natural at a meeting; "pieds" and "plants" are both used for plants.
ask-mark-plants = Quels sont les pieds les plus forts de votre champ ?
ask-gather-sand = Qui a du sable sec près d’ici, et comment le prendre sans danger ?
ask-check-plants = Ici, à quoi ressemblent les plants malades ?
ask-cut-vines = Que se passe-t-il si on coupe trop court ?
ask-harvest = Comment allez-vous récolter sans blesser les patates ?
ask-fill-container = Chez vous, où fait-il frais et sec, loin des enfants et des animaux ?
ask-monthly-check = Que voyez-vous quand les patates se gâtent, et où les enterrez-vous ?
ask-prepare-bed = Où y a-t-il de l’eau, et qui surveille les enfants ?
ask-last-check = Combien de vos patates ont germé ?
ask-plant-bed = Qu’est-ce qui peut vous retarder pour planter ?
ask-water-bed = En votre absence, qui va arroser ?
ask-cut-for-planting = Comment savez-vous que les pluies sont vraiment là ?
ask-plant-field = Quelle partie du champ allez-vous planter en premier ?
ask-first-harvest = Quelles tiges gardez-vous pour la saison prochaine ?
