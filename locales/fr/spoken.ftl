### Français d’Afrique de l’Ouest et du Sahel, brouillon : paroles de radio et de téléphone. Personne ne les a encore relues.
### Draft. Every literal text is recorded as it stands here, cut at the { … }.
### No digits, no abbreviations. Numbers: SAY, days: DAY and SPAN, measures: MEASURE.
### Forms: feminine for patate, bouture, couche, ligne, heure, année, botte and longueur; cardinal for pied, récipient, nœud,
### seau, bidon, voyage and the other units. No number, day or measure stands behind a bare "de" that would have to become
### "d’" before "un" or "une". "le" is bound to its day and recorded with it; no day stands behind "à" or "de", which would
### swallow it ("au", "du"): say "dès", "vers", "au plus tard" or "ou plus tard". "glossary.toml" holds the words of the trade.

## What must never be lost. The messages below refer to these sentences.

# doubt: "trouée par les insectes" for insect holes; the weevil's holes are small, and some may say "percée" or "piquée".
-bad-roots = Si une patate est pourrie, moisie ou trouée par les insectes, ne la mangez jamais. Ne la donnez jamais aux animaux, et ne la plantez jamais. Enterrez-la profondément ou brûlez-la.
-take-nothing = Ne prenez ni patates ni lianes sur un tel pied.
# doubt: "rivière" also for a seasonal stream, "marigot" in parts of the region; "berge raide" for a steep bank.
-dry-riverbed = Prenez du sable seulement là où les règles locales le permettent. Dans une rivière, prenez-en seulement quand elle est à sec. Ne creusez jamais près d’une berge raide, car elle peut s’écrouler et vous enterrer.
-children-water = Couvrez l’eau que vous gardez, et ne laissez pas les enfants s’en approcher.
-keep-dry = N’arrosez jamais le sable, car le sable humide fait pourrir les patates.
-moist-soil = Plantez le champ seulement quand la terre est humide, car la terre sèche tue les boutures.

## Dates and units

# The day with its article, each recorded as one piece.
day-of-month = { $day ->
    [1] le premier
    [2] le deux
    [3] le trois
    [4] le quatre
    [5] le cinq
    [6] le six
    [7] le sept
    [8] le huit
    [9] le neuf
    [10] le dix
    [11] le onze
    [12] le douze
    [13] le treize
    [14] le quatorze
    [15] le quinze
    [16] le seize
    [17] le dix-sept
    [18] le dix-huit
    [19] le dix-neuf
    [20] le vingt
    [21] le vingt-et-un
    [22] le vingt-deux
    [23] le vingt-trois
    [24] le vingt-quatre
    [25] le vingt-cinq
    [26] le vingt-six
    [27] le vingt-sept
    [28] le vingt-huit
    [29] le vingt-neuf
    [30] le trente
   *[31] le trente-et-un
 }
date = { day-of-month } { month }
week = { $week ->
    [1] la première semaine
    [2] la deuxième semaine
    [3] la troisième semaine
    [4] la quatrième semaine
   *[5] la dernière semaine
 } { $month ->
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
span-two-days = { DAY($from) } ou { DAY($to) }
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
# Lengths and hands come in halves: $whole is the number below, $half says whether a half is added.
# A strip of the bed is mostly 1.2 m wide, which is said "un mètre vingt" and not with a comma.
unit-metre = { $half ->
    [yes] { $whole ->
        [0] un demi-mètre
        [one] { SAY($whole, form: "cardinal") } mètre et demi
       *[other] { SAY($whole, form: "cardinal") } mètres et demi
     }
   *[no] { $whole ->
        [1.2] un mètre vingt
        [one] { SAY($whole, form: "cardinal") } mètre
       *[other] { SAY($whole, form: "cardinal") } mètres
     }
 }
unit-centimetre = { SAY($n, form: "cardinal") } { $n ->
    [one] centimètre
   *[other] centimètres
 }
# doubt: "longueur de main" (wrist to fingertips); "empan" is the span of the spread fingers, something else.
unit-hand = { $half ->
    [yes] { $whole ->
        [0] une demi-longueur de main
        [one] { SAY($whole, form: "feminine") } longueur de main et demie
       *[other] { SAY($whole, form: "feminine") } longueurs de main et demie
     }
   *[no] { SAY($whole, form: "feminine") } { $whole ->
        [one] longueur de main
       *[other] longueurs de main
     }
 }
# doubt: "bout de pouce" for the last joint of the thumb; "phalange" is a school word.
unit-thumb-joint = { $half ->
    [yes] { $whole ->
        [0] un demi-bout de pouce
        [one] { SAY($whole, form: "cardinal") } bout de pouce et demi
       *[other] { SAY($whole, form: "cardinal") } bouts de pouce et demi
     }
   *[no] { SAY($whole, form: "cardinal") } { $whole ->
        [one] bout de pouce
       *[other] bouts de pouce
     }
 }
unit-bucket = { SAY($n, form: "cardinal") } { $n ->
    [one] seau
   *[other] seaux
 }
unit-jerrycan = { SAY($n, form: "cardinal") } { $n ->
    [one] bidon
   *[other] bidons
 }
unit-bundle = { SAY($n, form: "feminine") } { $n ->
    [one] botte
   *[other] bottes
 }

## Opening and closing. $season says how the day stands to the rains, $variant which of three ways to say it.

# "Vous qui cultivez" calls women and men alike.
opening = { $season ->
    [before] { $variant ->
        [1] Ici, les pluies commencent d’habitude vers { DAY($rains) }.
        [2] Vous qui cultivez la patate douce, comptez les jours avec nous. Les pluies commencent d’habitude vers { DAY($rains) }.
       *[3] Voici le prochain travail pour vos patates douces. Les pluies commencent d’habitude vers { DAY($rains) }.
     }
    [near] { $variant ->
        [1] Vous qui cultivez la patate douce, les pluies peuvent commencer d’un jour à l’autre.
        [2] Les pluies peuvent bientôt commencer. Regardez le ciel et la terre.
       *[3] Vous qui cultivez la patate douce, soyez prêts. Les pluies sont proches.
     }
    [after] { $variant ->
        [1] Vous qui cultivez la patate douce, les pluies ont commencé.
        [2] Les pluies sont arrivées. Voici le prochain travail pour vos patates douces.
       *[3] Vous qui cultivez la patate douce, les pluies sont là. Écoutez ce qu’il faut faire maintenant.
     }
   *[later] { $variant ->
        [1] Vous qui cultivez la patate douce, voici ce qu’il faut faire maintenant.
        [2] Voici le prochain travail pour vos patates douces.
       *[3] Parlons de vos patates douces, et du travail qui vient.
     }
 } { $kind ->
    [zone] Les quantités que vous entendez sont pour { SAY($roots, form: "feminine") } patates douces. Si votre champ est plus grand, prenez-en plus. S’il est plus petit, prenez-en moins.{ $season ->
        [before] {" "}Si vous récoltez plus tard que les autres, retardez d’autant de jours les travaux d’avant la récolte.
       *[later] {""}
     }
   *[other] {""}
 }
# doubt: "agent d’agriculture" for the extension worker; "encadreur" or "conseiller agricole" in places.
closing = { $variant ->
    [1] Si votre agent d’agriculture dit autre chose, faites ce que dit l’agent.
    [2] Demandez aussi à votre agent d’agriculture, et suivez d’abord le conseil de l’agent.
   *[3] Le conseil de votre agent d’agriculture passe avant ce message.
 }

## Steps

# doubt: "patates de semence" for seed roots; "piquet" for the stick.
mark-plants = Choisissez des pieds sains de patate douce, qui donneront vos patates de semence. Faites ce travail { SPAN($when) }. { $kind ->
    [group] Ensemble, marquez { SAY($plants, form: "cardinal") } { $plants ->
        [one] pied.
       *[other] pieds.
     } Chacun de vous en marque { SAY($plants_each, form: "cardinal") }.
   *[other] Marquez { SAY($plants, form: "cardinal") } { $plants ->
        [one] pied.
       *[other] pieds.
     }
 } Prenez seulement des pieds vigoureux, avec de grandes feuilles propres et sans aucun signe de maladie. Enfoncez un piquet dans la terre à côté de chaque pied. Vous aurez ainsi environ { SAY($roots, form: "feminine") } { $roots ->
    [one] patate à garder.
   *[other] patates à garder.
 } N’oubliez pas, il faut { SAY($plants, form: "cardinal") } { $plants ->
    [one] pied, avec son piquet.
   *[other] pieds, chacun avec son piquet.
 }
# doubt: "gros sable" for coarse sand.
gather-sand = Apportez du sable pour vos patates douces. Faites ce travail { SPAN($when) }. Il vous faut environ { MEASURE($buckets, unit: "bucket") } de { MEASURE($bucket_l, unit: "litre") }. Prenez du gros sable propre, dont on sent les grains sous les doigts. Apportez-le, puis étalez-le sous un toit jusqu’à ce qu’il soit sec. Utilisez-le seulement quand il n’est plus chaud. Le sable fin, humide ou chaud fait pourrir les patates. N’oubliez pas, il faut environ { MEASURE($buckets, unit: "bucket") } de gros sable, sec et refroidi.
# doubt: "lianes" for vines ("tiges" would make many think of millet stalks); "fanes" in places.
check-plants = Retournez voir les pieds de patate douce que vous avez marqués. Faites ce travail { SPAN($when) }. Cherchez des feuilles petites, enroulées ou tachées, des lianes faibles, ou des trous à la base des lianes. Si un pied montre l’un de ces signes, ou si vous avez un doute, enlevez son piquet.
cut-vines = Coupez les lianes des pieds de patate douce qui ont encore leur piquet. Faites ce travail { SPAN($when) }. Laissez sur chaque pied { MEASURE($stem_cm, unit: "centimetre") } de liane, soit environ { MEASURE($stem_hands, unit: "hand") }. Ainsi, la peau des patates durcit, et elles se gardent plus longtemps.
# doubt: "daba" for the hoe, as said in Mali and Burkina Faso; "houe" or "hilaire" in Niger.
harvest = Récoltez les patates douces des pieds qui ont encore leur piquet. Faites ce travail { SPAN($when) }. Si la terre est mouillée, attendez qu’elle soit sèche. Soulevez les patates doucement, pour que la daba n’en coupe aucune. Choisissez { SAY($roots, form: "feminine") } { $roots ->
    [one] patate longue à peu près comme votre main, avec la peau entière.
   *[other] patates longues à peu près comme votre main, avec la peau entière.
 } Enlevez la terre à la main, et ne les lavez jamais. Laissez-les quelques heures à l’ombre. Les patates coupées par la daba ne se gardent pas. Cuisinez-les vite. N’oubliez pas, gardez { SAY($roots, form: "feminine") } { $roots ->
    [one] patate entière.
   *[other] patates entières.
 }
# doubt: "canari" for a clay pot, the West African word; "pot" or "jarre" elsewhere.
fill-container = Rangez vos patates douces dans du sable sec. Faites ce travail { SPAN($when) }. Il vous faut { SAY($containers, form: "cardinal") } { $containers ->
    [one] récipient
   *[other] récipients
 }{ $container_kinds ->
    [one] {" "}d’environ { MEASURE($container_l, unit: "litre") }{ $containers ->
        [one] .
       *[other] {" "}chacun.
     }
   *[several] .
 } Prenez une bassine, un canari, un seau ou un panier serré, jamais un sac. Remplissez le récipient là où il restera. L’endroit doit être frais, sec et à l’ombre, loin des enfants, des animaux et de la pluie. Mettez du papier au fond et sur les côtés. Étalez { MEASURE($base_cm, unit: "centimetre") } de sable. { $layer_widths ->
    [uneven] Posez au plus { SAY($roots_per_layer, form: "feminine") } { $roots_per_layer ->
        [one] patate dans la couche du bas, et au plus
       *[other] patates dans la couche du bas, et au plus
     } { SAY($roots_top, form: "feminine") } dans la couche du haut.{ $layers ->
        [1] {""}
        [2] {""}
       *[other] {" "}Dans les couches du milieu, posez-en autant que la place le permet.
     }
   *[even] Posez au plus { SAY($roots_per_layer, form: "feminine") } { $roots_per_layer ->
        [one] patate dans chaque couche.
       *[other] patates dans chaque couche.
     }
 } Aucune patate ne doit toucher une autre patate, ni le bord. { $layers ->
    [1] Couvrez-les avec { MEASURE($top_cm, unit: "centimetre") } de sable.
   *[other] Couvrez-les avec { MEASURE($layer_cm, unit: "centimetre") } de sable, et posez les patates suivantes. Faites ainsi { SAY($layers, form: "feminine") } couches de patates, mais couvrez la dernière avec { MEASURE($top_cm, unit: "centimetre") } de sable.
 } Cette épaisseur de sable arrête les rats, les insectes et les poules. Ne mettez ni couvercle ni eau.
monthly-check = Vérifiez chaque mois les patates douces gardées dans le sable. { $turn ->
    [next] La prochaine vérification est prévue
   *[first] La première vérification est prévue
 } { DAY($first) }. Sortez toutes les patates et regardez-les une à une. { -bad-roots } Frottez les bonnes patates pour enlever les germes. Remettez-les dans du sable sec, de la même façon. Notez combien il en reste. Ensuite, n’y touchez plus jusqu’à la prochaine vérification.
# doubt: "pépinière" alone for the seedbed; extension workers also say "planche de pépinière".
prepare-bed = Faites la pépinière pour vos patates douces. Faites ce travail { SPAN($when) }. Choisissez un endroit près de l’eau. La pépinière doit mesurer { MEASURE($bed_length_m, unit: "metre") } de long et { MEASURE($bed_width_m, unit: "metre") } de large. { $bed_parts ->
    [strips] Faites-la en { SAY($strips, form: "feminine") } { $strips ->
        [2] bandes, avec un passage pour marcher entre les deux.
       *[other] bandes, avec des passages pour marcher entre elles.
     } Chaque bande doit mesurer { MEASURE($strip_width_m, unit: "metre") } de large.
   *[one] {""}
 } Remuez bien la terre. Mettez une clôture contre les chèvres et les poules.
last-check = Vérifiez une dernière fois les patates douces gardées dans le sable. Faites ce travail { DAY($first) }. Sortez toutes les patates et regardez-les une à une. { -bad-roots } Mais cette fois, laissez les germes. Les bonnes patates vont maintenant dans la pépinière.
# doubt: "humide" is said of the sand that rots roots and of the soil that roots and cuttings need; the noun tells which.
plant-bed = Plantez les patates douces dans la pépinière. Faites ce travail { SPAN($when) }. N’attendez pas la pluie. Arrosez la pépinière jusqu’à ce que la terre soit humide. Faites { SAY($bed_rows, form: "feminine") } { $bed_rows ->
    [one] ligne dans le sens de la longueur.
   *[other] lignes dans le sens de la longueur, à { MEASURE($spacing_cm, unit: "centimetre") } l’une de l’autre.
 } Sur chaque ligne, posez environ { SAY($row_roots, form: "feminine") } { $row_roots ->
    [one] patate. Laissez les germes.
   *[other] patates, avec { MEASURE($along_row_cm, unit: "centimetre") } d’une patate à l’autre. Laissez les germes.
 } Couvrez les patates avec { MEASURE($soil_cm, unit: "centimetre") } de terre. Arrosez encore, doucement. Gardez la terre humide mais pas trop mouillée, car trop d’eau fait pourrir les patates.
water-bed = Arrosez votre pépinière de patates douces dès { DAY($first) }. { $shoots ->
    [before] Jusqu’à ce que les pousses sortent, donnez environ { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
        [1] chaque jour.
       *[other] tous les { SAY($water_every_days, form: "cardinal") } jours.
     } Cela fait environ { MEASURE($jerrycans_young, unit: "jerrycan") } de { MEASURE($jerrycan_l, unit: "litre") }. Gardez la terre humide mais pas trop mouillée, car trop d’eau fait pourrir les patates. Quand les feuilles commencent à pousser, arrosez chaque jour, avec un peu plus d’eau chaque semaine.
   *[after] {""}
 } Quand les feuilles couvrent la pépinière, donnez environ { MEASURE($water_l, unit: "litre") } chaque jour. Cela fait environ { MEASURE($jerrycans, unit: "jerrycan") } de { MEASURE($jerrycan_l, unit: "litre") }. Les jours de chaleur et de vent, donnez-en plus, pour que la terre reste humide. Quand la pluie garde la terre humide, arrêtez d’arroser.
# doubt: "à la profondeur d’un doigt entier": "un doigt de profondeur" would be heard as the width of a finger, and "la longueur
# d’un doigt" alone does not say that one looks downwards.
# doubt: "nœuds" for leaf joints; some may say "yeux".
cut-for-planting = Attendez que la pluie ait mouillé le champ à la profondeur d’un doigt entier. D’habitude, c’est { SPAN($when) }. Coupez alors des lianes de patate douce dans la pépinière. Prenez seulement des lianes saines, sans feuilles tachées, enroulées ou très petites. Chaque bouture doit mesurer { MEASURE($cutting_cm, unit: "centimetre") } et avoir au moins { SAY($nodes, form: "cardinal") } { $nodes ->
    [one] nœud.
   *[other] nœuds.
 } Laissez en place { MEASURE($stub_cm, unit: "centimetre") } de liane, pour qu’elle repousse. { $plan_by ->
    [practice] Selon l’usage courant, la première coupe devrait donner environ
   *[print] La première coupe devrait donner environ
 } { SAY($first_cuttings_low, form: "feminine") } à { SAY($first_cuttings_high, form: "feminine") } boutures. Gardez-les à l’ombre, et plantez-les le jour même ou le lendemain.
plant-field = Plantez le champ de patates douces quand la pluie a mouillé la terre à la profondeur d’un doigt entier. D’habitude, c’est { SPAN($when) }. { $layout ->
    [own] Chacun plante sur ses propres billons ou buttes.
    [mounds] Mettez { SAY($on_mound, form: "feminine") } { $on_mound ->
        [one] bouture
       *[other] boutures
     } sur chaque butte, avec { MEASURE($between_cm, unit: "centimetre") } d’une butte à l’autre.
   *[ridges] Mettez une bouture tous les { MEASURE($along_cm, unit: "centimetre") } sur le billon, avec { MEASURE($between_cm, unit: "centimetre") } d’un billon à l’autre.
 } Enterrez deux ou trois nœuds de chaque bouture, et laissez le haut hors de la terre. Après deux semaines, remplacez les boutures mortes.
# doubt: "charançons" may be unknown as a word.
first-harvest = Cherchez les premières patates douces. Faites ce travail { SPAN($when) }. Tâtez la terre sous quelques pieds de patate. Cherchez des patates assez grosses pour être mangées. Ne laissez pas longtemps les patates mûres dans la terre sèche, car les charançons les trouvent. Récoltez les dernières au plus tard { DAY($last_harvest) }.

## Cautions

caution-rot = Attention aux mauvaises patates douces. { -bad-roots } Ne la coupez pas, ne l’épluchez pas et ne la cuisez pas pour en sauver une partie. Même la partie qui semble bonne peut vous empoisonner. Si vous avez un doute sur une patate, traitez-la comme mauvaise.
caution-virus = Des feuilles petites, enroulées ou tachées, ou des lianes faibles, montrent qu’un pied de patate douce est malade. { -take-nothing }
caution-cracks = Les charançons arrivent aux patates douces par les fentes de la terre. Dès que vous voyez une fente, ramenez de la terre dessus.
caution-heavy-sand = Attention, le sable est lourd. Portez au plus { MEASURE($load_kg, unit: "kilogram") } à la fois. Remplissez le récipient des patates douces là où il restera. Ne le soulevez jamais quand il est plein.
caution-riverbed = Attention au bord des rivières. { -dry-riverbed }
caution-water-children = Attention aux enfants près de l’eau. { -children-water } Entourez les puits et les trous d’une clôture. Ne laissez pas les chèvres et les poules entrer dans la pépinière.
caution-store-dry = Autour des patates douces gardées, le sable doit rester sec, du premier jour au dernier. { -keep-dry }
caution-forecast = Ces dates viennent des années passées, et ne sont pas une prévision. Cette année, la pluie peut venir plus tôt ou plus tard. Regardez le ciel et la terre. { -moist-soil }
caution-try-first = Si c’est nouveau pour vous, commencez avec quelques patates douces. Gardez aussi une partie de vos lianes comme avant.

## What the plan leads to

remark-late-work = Pour vos patates douces, une partie du travail n’a pas été faite à temps. Les dates sont donc recomptées. Faites tout de suite ce qui peut encore être fait. Le champ pourra être planté dès { DAY($field_from) }.{ $fewer ->
    [0] {""}
    [one] {" "}La première coupe donnera environ { SAY($fewer, form: "feminine") } bouture de moins.
   *[other] {" "}La première coupe donnera environ { SAY($fewer, form: "feminine") } boutures de moins.
 }
remark-fast-loss = À la vérification faite { DAY($day) }, vous avez trouvé seulement { SAY($healthy, form: "feminine") } { $healthy ->
    [one] patate douce saine sur
   *[other] patates douces saines sur
 } { SAY($roots, form: "feminine") }. { $next ->
    [bed] Mettez maintenant les patates saines dans la pépinière, et cherchez d’autres lianes à planter.
   *[check] Cherchez la cause : du sable humide ou chaud, des patates coupées, des patates qui se touchent, ou des charançons. Prenez du sable nouveau et sec. Vérifiez encore dans deux semaines. Si beaucoup d’autres pourrissent, mettez tout de suite les patates saines dans une pépinière arrosée.
 }
remark-limited-at-hand = { $limit ->
    [roots] Vous avez { SAY($roots, form: "feminine") } { $roots ->
        [one] patate douce à garder.
       *[other] patates douces à garder.
     }
    [plants] Vos pieds donnent environ { SAY($roots, form: "feminine") } { $roots ->
        [one] patate douce à garder.
       *[other] patates douces à garder.
     }
   *[bed] La pépinière a de la place pour { SAY($roots, form: "feminine") } { $roots ->
        [one] patate douce.
       *[other] patates douces.
     }
 } Pour le champ entier, il en faudrait { SAY($wanted, form: "feminine") }. Vos patates suffisent pour planter environ { SAY($area_m2, form: "cardinal") } { $area_m2 ->
    [one] mètre carré sur les
   *[other] mètres carrés sur les
 } { SAY($field_m2, form: "cardinal") } du champ. Plantez un champ plus petit, ou demandez des boutures à vos voisins.
remark-containers-too-small = Dans vos récipients, il y a de la place pour { SAY($fit, form: "feminine") } { $fit ->
    [one] patate douce, pas pour
   *[other] patates douces, pas pour
 } { SAY($roots, form: "feminine") }. N’en tassez pas plus, car les patates pourrissent là où elles se touchent. Cela suffit pour planter environ { SAY($area_m2, form: "cardinal") } { $area_m2 ->
    [one] mètre carré sur les
   *[other] mètres carrés sur les
 } { SAY($field_m2, form: "cardinal") } du champ. { $more ->
    [0] Pour en garder plus, trouvez un autre récipient. Sinon, plantez un champ plus petit.
    [one] Pour en garder plus, trouvez encore un récipient. Sinon, plantez un champ plus petit.
   *[other] Pour en garder plus, trouvez encore { SAY($more, form: "cardinal") } récipients. Sinon, plantez un champ plus petit.
 }
remark-sand-short = Votre sable couvre { SAY($fit, form: "feminine") } { $fit ->
    [one] patate douce, mais pas
   *[other] patates douces, mais pas
 } { SAY($roots, form: "feminine") }. Ne gardez pas les patates que le sable ne couvre pas. Cela suffit pour planter environ { SAY($area_m2, form: "cardinal") } { $area_m2 ->
    [one] mètre carré sur les
   *[other] mètres carrés sur les
 } { SAY($field_m2, form: "cardinal") } du champ. Apportez encore { MEASURE($more_l, unit: "litre") } de sable, ou plantez un champ plus petit.
remark-water-limits = Votre eau suffit pour { SAY($fit, form: "feminine") } { $fit ->
    [one] patate douce en pépinière, pas pour
   *[other] patates douces en pépinière, pas pour
 } { SAY($roots, form: "feminine") }. Ne faites pas la pépinière plus grande que ce qui est dit ici, et gardez sa terre humide. Cela suffit pour planter environ { SAY($area_m2, form: "cardinal") } { $area_m2 ->
    [one] mètre carré sur les
   *[other] mètres carrés sur les
 } { SAY($field_m2, form: "cardinal") } du champ. Pour le champ entier, trouvez encore { MEASURE($more_l, unit: "litre") } { $per ->
    [all] d’eau en tout.
   *[day] d’eau par jour.
 }
remark-hands-short = Les personnes qui portent l’eau peuvent arroser { SAY($fit, form: "feminine") } { $fit ->
    [one] patate douce en pépinière, mais pas
   *[other] patates douces en pépinière, mais pas
 } { SAY($roots, form: "feminine") }. Ne faites pas la pépinière plus grande que ce qui est dit ici, et gardez sa terre humide. Cela suffit pour planter environ { SAY($area_m2, form: "cardinal") } { $area_m2 ->
    [one] mètre carré sur les
   *[other] mètres carrés sur les
 } { SAY($field_m2, form: "cardinal") } du champ. Pour le champ entier, il faut plus de personnes pour porter l’eau, ou une pépinière plus près de l’eau.
# doubt: "couvrir la terre de paille" for mulching; "paillage" is the word of extension workers.
remark-water-short = Dès { DAY($from) }, l’eau peut manquer pour la pépinière de patates douces. Trouvez plus d’eau. Si vous couvrez la terre de paille et faites de l’ombre, il faut moins d’eau. Sinon, faites une pépinière plus petite et plantez un champ plus petit.
remark-water-heavy = Les jours secs, la pépinière de patates douces demande { SAY($trips, form: "cardinal") } { $trips ->
    [one] voyage pour chercher l’eau.
   *[other] voyages pour chercher l’eau.
 } C’est environ { SAY($hours, form: "feminine") } { $hours ->
    [one] heure par jour à porter l’eau.
   *[other] heures par jour à porter l’eau.
 } Décidez dès maintenant qui portera l’eau, ou faites une pépinière plus petite.
remark-rains-too-soon = Les pluies peuvent commencer vers { DAY($rains) }. C’est trop tôt après la récolte pour garder des patates douces. Plantez plutôt des lianes du champ actuel, ou mettez tout de suite les patates dans la pépinière.
remark-storing-not-needed = Ici, la saison sèche dure environ { SAY($days, form: "cardinal") } { $days ->
    [one] jour, la plupart des années.
   *[other] jours, la plupart des années.
 } Les lianes de patate douce peuvent rester en vie aussi longtemps. Vous n’avez donc pas besoin de garder des patates. Laissez sur pied une partie du champ actuel, ou gardez des lianes dans une petite parcelle arrosée.
remark-long-in-sand = Vos patates douces doivent rester { SAY($days, form: "cardinal") } { $days ->
    [one] jour dans le sable.
   *[other] jours dans le sable.
 } Personne n’a compté combien survivent aussi longtemps. Faites aussi pousser quelques lianes près de l’eau, et demandez conseil à votre agent d’agriculture.
remark-bed-late = La pépinière donne ses premières boutures de patate douce vers { DAY($cut) }, après le début des pluies. Quand la pluie a bien mouillé la terre, plantez les lianes que vous avez. La pépinière remplira plus tard le reste du champ.
remark-field-waits = La première coupe suffit pour environ { SAY($area_m2, form: "cardinal") } { $area_m2 ->
    [one] mètre carré de patates douces, sur les
   *[other] mètres carrés de patates douces, sur les
 } { SAY($field_m2, form: "cardinal") } du champ. Les coupes suivantes serviront à planter le reste, chacune après { SAY($least_days, form: "cardinal") } à { SAY($most_days, form: "cardinal") } jours.
remark-cuttings-short = À la première coupe, il manquera environ { SAY($short, form: "feminine") } { $short ->
    [one] bouture de patate douce.
   *[other] boutures de patate douce.
 } Attendez que la pluie ait bien mouillé la terre. Plantez alors environ { SAY($area_m2, form: "cardinal") } { $area_m2 ->
    [one] mètre carré sur les
   *[other] mètres carrés sur les
 } { SAY($field_m2, form: "cardinal") } du champ. { $later_cuts ->
    [0] Les coupes suivantes viennent trop tard pour mûrir, alors demandez à temps des lianes à vos voisins.
   *[other] Les coupes suivantes serviront à planter une autre partie du champ. Vous pouvez aussi demander à temps des lianes à vos voisins.
 }
remark-rains-too-short = Ici, les pluies sont courtes pour la patate douce. { $known ->
    [case] Ce que vous plantez risque de ne pas être mûr avant la fin des pluies.
    [open] Personne ne sait combien de fois elle est mûre avant la fin des pluies.
   *[record] Elle est mûre avant la fin des pluies dans seulement { SAY($of_100, form: "feminine") } { $of_100 ->
        [one] année sur cent.
       *[other] années sur cent.
     }
 } { $helps ->
    [on-time] Faites la pépinière tôt, pour pouvoir planter dès que la pluie a bien mouillé la terre.
    [quicker] Plantez dès que la pluie a bien mouillé la terre, et cherchez une variété qui mûrit plus vite.
   *[neither] Plantez dès que la pluie a bien mouillé la terre. Vous aurez sans doute peu de patates, et petites.
 }
remark-cuts-too-late = Les patates douces d’une coupe tardive, plantée { DAY($from) } ou plus tard, seront mûres seulement vers { DAY($ripe) }. La plupart des années, les pluies finissent avant. Ne gardez pas une partie du champ pour les coupes tardives. Utilisez ces lianes comme fourrage, ou laissez-les pousser là où il y a de l’eau.
remark-rains-may-be-late = Les pluies peuvent tarder, et commencer seulement { DAY($late) }. Arrosez votre pépinière de patates douces jusqu’à l’arrivée des pluies. { -moist-soil }
remark-years-without-rains = Dans { SAY($count, form: "feminine") } des { SAY($judged, form: "feminine") } années passées, les pluies n’ont jamais bien commencé. Une telle année, les lianes de patate douce plantées à la première pluie peuvent mourir. Gardez en réserve quelques patates, ou continuez à arroser une partie de la pépinière.

## Questions for a meeting, each after its step

# doubt: whether the questions sound natural at a meeting.
ask-mark-plants = Quels sont les pieds les plus forts de votre champ ?
ask-gather-sand = Près d’ici, où y a-t-il du gros sable, et comment le prendre sans danger ?
ask-check-plants = Ici, à quoi ressemblent les pieds malades de patate douce ?
ask-cut-vines = Pourquoi la peau des patates a-t-elle besoin de temps pour durcir ?
ask-harvest = Comment allez-vous récolter sans que la daba coupe les patates ?
ask-fill-container = Chez vous, où fait-il frais et sec, loin des enfants et des animaux ?
ask-monthly-check = À quoi ressemblent les mauvaises patates, et où allez-vous les enterrer ?
ask-prepare-bed = Près d’ici, où y a-t-il de l’eau, et qui surveille les enfants ?
ask-last-check = Combien de vos patates ont des germes ?
ask-plant-bed = Qu’est-ce qui peut vous empêcher de planter la pépinière à temps ?
ask-water-bed = Qui va arroser quand vous êtes absents ?
ask-cut-for-planting = Comment savez-vous qu’il a assez plu ?
ask-plant-field = Quelle partie du champ allez-vous planter en premier ?
ask-first-harvest = Quelles lianes allez-vous garder pour la saison prochaine ?
