### Français d’Afrique de l’Ouest et du Sahel, brouillon : textes imprimés. Personne ne les a encore relus.
### Draft, as printed on sheets. The words of the trade stand in glossary.toml, one word for one thing.
### The reader is addressed as "vous", one person or a group.
### In the phone texts the letters â ê î ô û ç, À and the curly apostrophe are replaced by plain ones (pack.toml), since they would
### make a message cost double; "œ" cannot be, so that phone texts write "noeuds" for "nœuds".

## Words of the sheet itself

sheet-title = Patates douces : de cette récolte aux prochaines pluies
sheet-for = Pour
sheet-place = Lieu
sheet-rains = Pluies attendues
# The field now standing, that will be dug: "ancien champ" would sound like abandoned land.
sheet-harvest = Récolte du champ actuel
sheet-amounts = Ce qu’il vous faut
sheet-steps = Que faire, et quand
sheet-cautions = Attention
sheet-when = Quand
# Between a label and its value, with the space before it that the language wants.
colon = {"\u00A0"}:
semicolon = {"\u00A0"};
# same
sheet-page = Page
sheet-group = Groupe
sheet-together = Ensemble
sheet-consequences = À propos de votre plan
sheet-tip = Bon à savoir
# The day the sheet was made, and that older ones hold no more.
sheet-made = Fiche du { DAY($today) }. Elle remplace toutes les fiches plus anciennes de cette saison.
step-done = Fait
step-now = Maintenant
step-next = Ensuite
status-draft = Brouillon : aucune personne qui parle bien la langue n’a encore relu ce texte.
status-read = Texte relu par une personne qui parle bien la langue, mais pas encore approuvé.
status-approved = Texte approuvé.

## Words of the cue sheet

# same
cue-title = Message
cue-language = Langue
cue-voice = Voix
cue-rights = Droits
cue-status = État de la voix
cue-length = Durée
# doubt: "intensité sonore" for loudness; sound engineers may say "sonie" or keep the English term.
cue-loudness = Intensité sonore
cue-true-peak = Crête vraie
cue-from = De
cue-to = À
cue-words = Paroles
cue-clip = Enregistrement
voice-stand-in = provisoire
voice-draft = enregistrée, pas encore approuvée
voice-approved = approuvée
voice-stand-in-remark = C’est une voix provisoire, faite par une machine. La voix d’une personne doit la remplacer.

## Amounts

amount-plants = Pieds à marquer
amount-plants-each = Pieds à marquer par membre
amount-roots = Patates à garder
amount-cuttings = Boutures pour le champ
amount-first-cuttings = Boutures attendues à la première coupe
amount-containers = Récipients
amount-layers = Couches de patates par récipient
amount-roots-per-layer = { $layer_widths ->
    [uneven] Patates dans la couche du bas, au plus
   *[even] Patates dans chaque couche, au plus
 }
amount-roots-top-layer = Patates dans la couche du haut, au plus
# doubt: "botte" for a bundle of cuttings; "fagot" or "paquet" in places.
amount-bundles = Bottes de boutures
amount-lining = Papier pour les récipients
amount-water-total = Eau de la pépinière, en tout
amount-sand = Sable sec
# doubt: "charge" for what one carries at a time; "voyage" is said too.
amount-loads = Charges de sable à porter
# doubt: "pépinière" alone for the seedbed; extension workers also say "planche de pépinière".
amount-bed = Pépinière
amount-strips = Bandes de la pépinière, avec des passages de { MEASURE($path_m, unit: "metre") } entre elles
amount-water = Eau par jour, pépinière couverte de feuilles
amount-jerrycans = Bidons d’eau par jour, pépinière couverte de feuilles

first-cuttings-value = { $first_cuttings_low } à { $first_cuttings_high }{ $plan_by ->
    [practice] , selon l’usage courant
   *[print] , selon les jours de croissance
 }
sand-value = { MEASURE($sand_l, unit: "litre") }, soit environ { MEASURE($sand_kg, unit: "kilogram") }
bed-value = { MEASURE($bed_length_m, unit: "metre") } × { MEASURE($bed_width_m, unit: "metre") }
strips-value = { $strips }, chacune de { MEASURE($strip_length_m, unit: "metre") } × { MEASURE($strip_width_m, unit: "metre") }
water-value = { MEASURE($water_l, unit: "litre") }
water-total-value = { MEASURE($water_total_l, unit: "litre") }
bundles-value = { MEASURE($bundles, unit: "bundle") } de { $bundle_size }
lining-value = { $lining_m2 } m²
roots-for-zone = { $roots } (un chiffre rond, à adapter à chaque champ)

## Dates and units

date = { $day ->
    [1] 1er
   *[other] { $day }
 } { month } { $year }
# For text messages on phones: as short as can be understood. No full stops, so that a date may end a sentence.
month-short = { $month ->
    [1] janv
    [2] fév
    [3] mars
    [4] avril
    [5] mai
    [6] juin
    [7] juil
    [8] août
    [9] sept
    [10] oct
    [11] nov
   *[12] déc
 }
date-short = { $day ->
    [1] 1er
   *[other] { $day }
 } { month-short }
week = la { $week ->
    [1] première
    [2] deuxième
    [3] troisième
    [4] quatrième
   *[5] dernière
 } semaine { $month ->
    [4] d’{ month }
    [8] d’{ month }
    [10] d’{ month }
   *[other] de { month }
 }
span = { DAY($from) } – { DAY($to) }
span-two-days = { DAY($from) } – { DAY($to) }
span-day = { WEEKDAY($from) } { DAY($from) }
# A plain space before the unit, since the phone texts use these messages too.
unit-kilogram = { $n } kg
unit-litre = { $n } L
unit-metre = { $n } m
unit-centimetre = { $n } cm
# doubt: "longueur de main" (wrist to fingertips); "empan" is the span of the spread fingers, something else.
unit-hand = { $n } { $n ->
    [one] longueur de main
   *[other] longueurs de main
 }
# doubt: "bout de pouce" for the last joint of the thumb; "phalange" is a school word.
unit-thumb-joint = { $n } { $n ->
    [one] bout de pouce
   *[other] bouts de pouce
 }
unit-bucket = { $n } { $n ->
    [one] seau
   *[other] seaux
 }
unit-jerrycan = { $n } { $n ->
    [one] bidon
   *[other] bidons
 }
unit-bundle = { $n } { $n ->
    [one] botte
   *[other] bottes
 }
# Counted from a local event of the case, such as a feast; $event is its name (best with its article), $days how far.
event-before = { $days } { $days ->
    [one] jour
   *[other] jours
 } avant { $event }
# doubt: "même jour que" because it fits any name with or without its article; "le jour de" would need it contracted.
event-on = même jour que { $event }
event-after = { $days } { $days ->
    [one] jour
   *[other] jours
 } après { $event }

## What must never be lost. The messages below refer to these sentences, each length to one of them.

# doubt: "trouée par les insectes" for insect holes; the weevil's holes are small, and some may say "percée" or "piquée".
-bad-roots = Si une patate est pourrie, moisie ou trouée par les insectes, ne la mangez jamais. Ne la donnez jamais aux animaux, et ne la plantez jamais. Enterrez-la profondément ou brûlez-la.
-bad-roots-short = Patate pourrie, moisie ou trouée par les insectes : ne jamais manger, planter ni donner aux animaux. Enterrez profond ou brûlez.
# doubt: "même un peu" (even a little) has to tell that the part that looks good is bad too; the caution says it in full.
-bad-roots-sms = Patate pourrie, moisie ou trouée par les insectes, même un peu : ne jamais manger, planter ni donner aux animaux. Enterrez profond ou brûlez.
-take-nothing = Ne prenez ni patates ni lianes sur un tel pied.
-take-nothing-short = Ne prenez rien sur un tel pied.
# doubt: "rivière" also for a seasonal stream, "marigot" in parts of the region; "berge raide" for a steep bank.
-dry-riverbed = Prenez du sable seulement là où les règles locales le permettent. Dans une rivière, prenez-en seulement quand elle est à sec. Ne creusez jamais près d’une berge raide, car elle peut s’écrouler et vous enterrer.
-dry-riverbed-short = Rivière : seulement à sec, jamais près d’une berge raide.
-children-water = Couvrez l’eau que vous gardez, et ne laissez pas les enfants s’en approcher.
-children-water-short = Couvrez l’eau ; éloignez les enfants.
-keep-dry = N’arrosez jamais le sable, car le sable humide fait pourrir les patates.
-keep-dry-short = N’arrosez jamais le sable.
-moist-soil = Plantez le champ seulement quand la terre est humide, car la terre sèche tue les boutures.
-moist-soil-short = Plantez seulement en terre humide.

## Opening and closing

# doubt: "zone" for the area; "localité" or "secteur" may be more usual.
opening = { $kind ->
    [zone] Ce plan est pour tous ceux qui cultivent dans la zone. Ses quantités sont pour { $roots } patates. Si votre champ est plus grand, prenez-en plus. S’il est plus petit, prenez-en moins. Les dates d’avant la récolte sont celles des champs récoltés les premiers. Si vous récoltez plus tard, faites ces travaux autant de jours plus tard.
   *[other] { $season ->
        [after] Les pluies ont commencé le { DAY($rains) }. Les dates de ce plan sont comptées à partir de ce jour.
       *[before] Les dates de ce plan sont comptées à partir des pluies. D’habitude, elles commencent vers le { DAY($rains) }.
     }
 }
# doubt: "agent d’agriculture" for the extension worker; "encadreur" or "conseiller agricole" in places.
closing = Si votre agent d’agriculture dit autre chose, suivez son avis.
    .sms = Si votre agent d’agriculture dit autre chose, suivez son avis.

## Steps: title, text (.text), the same in a few words (.short), picture in words (.alt), what a meeting is shown (.show) and asked (.ask), text message on a phone (.sms: 160 letters or less where it can be, two messages where it must be)

# doubt: "patates de semence" for seed roots; "piquet" for the stick beside the plant.
mark-plants = { $plants ->
    [one] Marquez { $plants } pied sain
   *[other] Marquez { $plants } pieds sains
 }
    .short = Pieds forts, grandes feuilles propres. Un piquet à chacun.
    .text = Choisissez des pieds sains de patate douce, qui donneront vos patates de semence. { $kind ->
        [group] Ensemble, marquez { $plants } { $plants ->
            [one] pied.
           *[other] pieds.
         } Chacun de vous en marque { $plants_each }.
       *[other] Marquez { $plants } { $plants ->
            [one] pied.
           *[other] pieds.
         }
     } Prenez seulement des pieds vigoureux, avec de grandes feuilles propres et sans aucun signe de maladie. Enfoncez un piquet dans la terre à côté de chaque pied. Vous aurez ainsi environ { $roots } { $roots ->
        [one] patate
       *[other] patates
     } à garder.
    .alt = Une main enfonce un piquet dans la terre à côté d’un pied vigoureux.
    .show = Une liane saine et une malade, et un piquet.
    .ask = Comment distingue-t-on un pied sain d’un pied malade ?
    .sms = { BRIEF($first) } : marquez { $plants } { $plants ->
        [one] pied sain
       *[other] pieds sains
     } de patate douce pour vos patates de semence : forts, grandes feuilles propres, aucun signe de maladie. Un piquet à chacun.
# doubt: "gros sable" for coarse sand.
gather-sand = Apportez et séchez du sable
    .short = { MEASURE($buckets, unit: "bucket") } de { MEASURE($bucket_l, unit: "litre") } de gros sable propre. Séchez sous un toit, laissez refroidir. { -dry-riverbed-short }
    .text = Apportez du sable pour vos patates douces. Il vous faut environ { MEASURE($buckets, unit: "bucket") } de { MEASURE($bucket_l, unit: "litre") }, soit { MEASURE($sand_kg, unit: "kilogram") }. Prenez du gros sable propre, dont on sent les grains sous les doigts. Étalez-le sous un toit jusqu’à ce qu’il soit sec, et utilisez-le seulement quand il n’est plus chaud. Le sable fin, humide ou chaud fait pourrir les patates. Portez au plus { MEASURE($load_kg, unit: "kilogram") } à la fois, car le sable est lourd. { -dry-riverbed }
    .alt = Sous un toit, une main avec un bol met du sable sec d’un tas dans un petit seau.
    .show = Une poignée de gros sable sec, et une de sable fin et humide.
    .ask = Près d’ici, où y a-t-il du gros sable, et peut-on y creuser sans danger ?
    .sms = D’ici au { BRIEF($last) } : apportez { MEASURE($buckets, unit: "bucket") } ({ MEASURE($bucket_l, unit: "litre") }) de gros sable propre pour les patates douces, { MEASURE($load_kg, unit: "kilogram") } au plus à la fois. Séchez-le sous un toit, laissez-le refroidir. { -dry-riverbed-short }
# doubt: "coche" for a tick, in the words for pictures.
check-plants = Revoyez les pieds marqués
    .short = Feuilles petites, enroulées ou tachées, lianes faibles, trous à leur base ? Enlevez le piquet. { -take-nothing-short }
    .text = Retournez voir les pieds de patate douce que vous avez marqués. Cherchez des feuilles petites, enroulées ou tachées, des lianes faibles, ou des trous à la base des lianes. Si un pied montre l’un de ces signes, ou si vous avez un doute, enlevez son piquet. { -take-nothing }
    .alt = Un pied sain, marqué d’une coche, garde son piquet ; une main retire le piquet d’un pied malade aux feuilles tachées et froissées.
    .show = Des feuilles petites, enroulées et tachées.
    .ask = Que faites-vous d’un pied marqué qui est tombé malade ?
    .sms = { BRIEF($first) } : revoyez les pieds marqués de patate douce. Feuilles petites, enroulées ou tachées, lianes faibles, trous à la base des lianes, ou un doute ? Enlevez le piquet. { -take-nothing-short }
# doubt: "lianes" for vines ("tiges" would make many think of millet stalks); "fanes" in places.
cut-vines = Coupez les lianes des pieds marqués
    .short = Laissez { MEASURE($stem_cm, unit: "centimetre") } de liane : { MEASURE($stem_hands, unit: "hand") }.
    .text = Coupez les lianes des pieds de patate douce que vous avez marqués. Laissez sur chaque pied { MEASURE($stem_cm, unit: "centimetre") } de liane, soit environ { MEASURE($stem_hands, unit: "hand") }. Ainsi, la peau des patates durcit, et elles se gardent plus longtemps.
    .alt = Un couteau coupe les lianes ; ce qui reste est aussi haut que la main ouverte posée à côté.
    .show = Une main ouverte le long d’une liane.
    .ask = Pourquoi la peau des patates a-t-elle besoin de temps pour durcir ?
    .sms = { BRIEF($first) } : coupez les lianes des pieds de patate douce marqués. Laissez { MEASURE($stem_cm, unit: "centimetre") } de liane sur le pied. Ainsi la peau des patates durcit.
# doubt: "daba" for the hoe, as said in Mali and Burkina Faso; "houe" or "hilaire" in Niger.
harvest = { $roots ->
    [one] Récoltez { $roots } patate entière
   *[other] Récoltez { $roots } patates entières
 }
    .short = En terre sèche. Longues comme la main, peau entière, jamais lavées. Coupées à la daba : cuire vite. { -bad-roots-short }
    .text = Récoltez les patates douces des pieds que vous avez marqués. Si la terre est mouillée, attendez qu’elle soit sèche. Soulevez les patates doucement, pour que la daba n’en coupe aucune. Choisissez { $roots } { $roots ->
        [one] patate longue à peu près comme votre main,
       *[other] patates longues à peu près comme votre main,
     } avec la peau entière. Enlevez la terre à la main, et ne les lavez jamais. Laissez-les quelques heures à l’ombre. Les patates coupées par la daba ne se gardent pas. Cuisinez-les vite. { -bad-roots }
    .alt = Une main tire un pied de la terre meuble, avec ses patates entières ; une daba à côté.
    .show = Une patate moyenne à la peau entière, et une coupée par la daba.
    .ask = Quelles patates se gardent, et lesquelles faut-il vite cuisiner ?
    .sms = { BRIEF($first) }, terre sèche : récoltez les pieds marqués. Gardez { $roots } { $roots ->
        [one] patate douce entière, non lavée,
       *[other] patates douces entières, non lavées,
     } après quelques heures d’ombre. Coupées à la daba : cuire vite. { -bad-roots-sms }
# doubt: "canari" for a clay pot, the West African word; "pot" or "jarre" elsewhere.
fill-container = Rangez dans du sable sec
    .short = Sable : { MEASURE($base_cm, unit: "centimetre") } dessous, { $layers ->
        [1] {""}
       *[other] { MEASURE($layer_cm, unit: "centimetre") } entre,{" "}
     }{ MEASURE($top_cm, unit: "centimetre") } dessus. Patates écartées, pas de couvercle. { -keep-dry-short }
    .text = Rangez vos patates douces dans du sable sec. Il vous faut { $containers } { $containers ->
        [one] récipient
       *[other] récipients
     }{ $container_kinds ->
        [one] {" "}d’environ { MEASURE($container_l, unit: "litre") }{ $containers ->
            [one] .
           *[other] {" "}chacun.
         }
       *[several] .
     } Prenez une bassine, un canari, un seau ou un panier serré, jamais un sac. Remplissez le récipient là où il restera. L’endroit doit être frais, sec et à l’ombre, loin des enfants, des animaux et de la pluie. Mettez du papier au fond et sur les côtés. Étalez { MEASURE($base_cm, unit: "centimetre") } de sable, soit environ { MEASURE($base_joints, unit: "thumb-joint") }. { $layer_widths ->
        [uneven] Posez au plus { $roots_per_layer } { $roots_per_layer ->
            [one] patate
           *[other] patates
         } dans la couche du bas, et au plus { $roots_top } dans la couche du haut.{ $layers ->
            [1] {""}
            [2] {""}
           *[other] {" "}Dans les couches du milieu, posez-en autant que la place le permet.
         }
       *[even] Posez au plus { $roots_per_layer } { $roots_per_layer ->
            [one] patate
           *[other] patates
         } dans chaque couche.
     } Aucune patate ne doit toucher une autre patate, ni le bord. { $layers ->
        [1] Couvrez-les avec { MEASURE($top_cm, unit: "centimetre") } de sable.
       *[other] Couvrez-les avec { MEASURE($layer_cm, unit: "centimetre") } de sable, et posez les patates suivantes. Faites ainsi { $layers } couches de patates, mais couvrez la dernière avec { MEASURE($top_cm, unit: "centimetre") } de sable.
     } Cette épaisseur de sable arrête les rats, les insectes et les poules. Ne mettez pas de couvercle. { -keep-dry }
    .alt = Une bassine coupée pour montrer le dedans : sable, patates écartées, sable, patates, sable épais au-dessus ; une main répand du sable.
    .show = Une bassine, du sable sec et quelques patates : quelqu’un range la première couche.
    .ask = Pourquoi les patates ne doivent-elles pas se toucher ?
    .sms = { BRIEF($first) } : rangez les patates douces dans du sable sec, sans qu’elles se touchent. Sable : { MEASURE($base_cm, unit: "centimetre") } dessous, { $layers ->
        [1] {""}
       *[other] { MEASURE($layer_cm, unit: "centimetre") } entre les couches,{" "}
     }{ MEASURE($top_cm, unit: "centimetre") } dessus. Pas de couvercle. Loin de la pluie, des enfants et des animaux. Ne soulevez jamais le récipient plein. { -keep-dry-short }
monthly-check = Vérifiez chaque patate
    .short = Enlevez les germes, remettez dans du sable sec. { -bad-roots-short }
    .text = Sortez toutes les patates et regardez-les une à une. { -bad-roots } Frottez les bonnes patates pour enlever les germes. Remettez-les dans du sable sec, de la même façon. Notez combien il en reste. Ensuite, n’y touchez plus jusqu’à la prochaine vérification.
    .alt = Trois lunes, signe d’un mois passé ; une main sort une patate de la bassine ; une patate pourrie est à côté, barrée d’une croix.
    .show = Une patate pourrie s’il y en a, et comment ranger de nouveau.
    .ask = Que faites-vous d’une patate pourrie, et pourquoi ne pas la donner aux animaux ?
    .sms = { BRIEF($first) } : sortez et regardez une à une les patates douces gardées. Les bonnes : enlevez les germes, remettez dans du sable sec, notez combien il en reste. { -bad-roots-sms }
prepare-bed = Faites la pépinière
    .short = { MEASURE($bed_length_m, unit: "metre") } sur { MEASURE($bed_width_m, unit: "metre") }, près de l’eau. Remuez la terre, mettez une clôture. { -children-water-short }
    .text = Faites la pépinière pour vos patates douces. Choisissez un endroit près de l’eau. La pépinière doit mesurer { MEASURE($bed_length_m, unit: "metre") } de long et { MEASURE($bed_width_m, unit: "metre") } de large. { $bed_parts ->
        [strips] Faites-la en { $strips } { $strips ->
            [2] bandes, avec un passage pour marcher entre les deux.
           *[other] bandes, avec des passages pour marcher entre elles.
         } Chaque bande doit mesurer { MEASURE($strip_width_m, unit: "metre") } de large.{" "}
       *[one] {""}
     }Remuez bien la terre. Mettez une clôture contre les chèvres et les poules. { -children-water }
    .alt = Un homme ameublit la terre de la pépinière avec une daba ; derrière lui, une clôture.
    .show = L’endroit près de l’eau, et la taille de la pépinière, mesurée en pas.
    .ask = Qu’est-ce qui empêche les chèvres et les poules d’entrer ?
    .sms = D’ici au { BRIEF($last) } : faites une pépinière de { MEASURE($bed_length_m, unit: "metre") } sur { MEASURE($bed_width_m, unit: "metre") } pour les patates douces, près de l’eau. Mettez une clôture. { -children-water-short }
last-check = Vérifiez une dernière fois
    .short = Laissez les germes. Les bonnes vont en pépinière. { -bad-roots-short }
    .text = Sortez toutes les patates et regardez-les une à une. { -bad-roots } Mais cette fois, laissez les germes. Les bonnes patates vont maintenant dans la pépinière.
    .alt = Une main sort de la bassine une patate avec des germes ; une flèche mène à la pépinière.
    .show = Une patate avec des germes.
    .ask = Pourquoi laisse-t-on les germes cette fois ?
    .sms = { BRIEF($first) } : dernière vérification des patates douces gardées. Laissez les germes : les bonnes vont maintenant en pépinière. { -bad-roots-sms }
# doubt: "humide" is said of the sand that rots roots and of the soil that roots and cuttings need; the noun tells which.
plant-bed = Plantez la pépinière
    .short = Arrosez d’abord. { $bed_rows } { $bed_rows ->
        [one] ligne
       *[other] lignes, une tous les { MEASURE($spacing_cm, unit: "centimetre") }
     }, { $row_roots } { $row_roots ->
        [one] patate
       *[other] patates
     } par ligne, sous { MEASURE($soil_cm, unit: "centimetre") } de terre. Terre humide, pas trop mouillée.
    .text = N’attendez pas la pluie. Arrosez la pépinière jusqu’à ce que la terre soit humide. Faites { $bed_rows } { $bed_rows ->
        [one] ligne dans le sens de la longueur.
       *[other] lignes dans le sens de la longueur, à { MEASURE($spacing_cm, unit: "centimetre") } l’une de l’autre.
     } Sur chaque ligne, posez environ { $row_roots } { $row_roots ->
        [one] patate. Laissez les germes.
       *[other] patates, avec { MEASURE($along_row_cm, unit: "centimetre") } d’une patate à l’autre. Laissez les germes.
     } Couvrez les patates avec { MEASURE($soil_cm, unit: "centimetre") } de terre. Arrosez encore, doucement. Gardez la terre humide mais pas trop mouillée, car trop d’eau fait pourrir les patates.
    .alt = Des patates couchées en ligne ; une main les couvre de terre.
    .show = L’écart entre les lignes, avec un bâton de la bonne longueur.
    .ask = Faut-il attendre la pluie pour planter la pépinière ?
    .sms = Dès le { BRIEF($first) } : arrosez la pépinière de patates douces, n’attendez pas la pluie. Posez-les en { $bed_rows } { $bed_rows ->
        [one] ligne
       *[other] lignes, une tous les { MEASURE($spacing_cm, unit: "centimetre") }
     }, sous { MEASURE($soil_cm, unit: "centimetre") } de terre. Terre humide, pas trop mouillée.
water-bed = Arrosez la pépinière
    .short = { $shoots ->
        [before] Jusqu’aux pousses : { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
            [1] par jour
           *[other] tous les { $water_every_days } jours
         }.{" "}
       *[after] {""}
     }Couverte de feuilles : environ { MEASURE($water_l, unit: "litre") } par jour, { MEASURE($jerrycans, unit: "jerrycan") }. Terre humide, pas trop mouillée. { -children-water-short }
    .text = Arrosez votre pépinière de patates douces dès le { DAY($first) }. { $shoots ->
        [before] Jusqu’à ce que les pousses sortent, donnez environ { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
            [1] chaque jour
           *[other] tous les { $water_every_days } jours
         }, soit environ { MEASURE($jerrycans_young, unit: "jerrycan") } de { MEASURE($jerrycan_l, unit: "litre") }. Gardez la terre humide mais pas trop mouillée, car trop d’eau fait pourrir les patates. Quand les feuilles commencent à pousser, arrosez chaque jour, avec un peu plus d’eau chaque semaine.{" "}
       *[after] {""}
     }Quand les feuilles couvrent la pépinière, donnez environ { MEASURE($water_l, unit: "litre") } chaque jour, soit environ { MEASURE($jerrycans, unit: "jerrycan") } de { MEASURE($jerrycan_l, unit: "litre") }. Donnez-en plus les jours de chaleur et de vent. Quand la pluie garde la terre humide, arrêtez d’arroser. { -children-water }
    .alt = Une main verse l’eau d’un bidon sur la pépinière où sortent les pousses.
    .show = Un bidon, et le peu d’eau qu’il faut aux jeunes plants.
    .ask = Qui apporte l’eau, et qui surveille les enfants là-bas ?
    .sms = Dès le { BRIEF($first) } : arrosez la pépinière de patates douces. { $shoots ->
        [before] Jusqu’aux pousses : { MEASURE($water_l_young, unit: "litre") } { $water_every_days ->
            [1] par jour
           *[other] tous les { $water_every_days } jours
         }. Ensuite, couverte de feuilles : { MEASURE($water_l, unit: "litre") } par jour.
       *[after] Couverte de feuilles : { MEASURE($water_l, unit: "litre") } par jour.
     } Plus les jours chauds. Arrêtez quand la pluie garde la terre humide. { -children-water-short }
# doubt: "à la profondeur d’un doigt entier": "un doigt de profondeur" would be heard as the width of a finger, and "la longueur
# d’un doigt" alone does not say that one looks downwards.
# doubt: "nœuds" for leaf joints; some may say "yeux".
cut-for-planting = Champ bien mouillé : coupez les boutures
    .short = Champ mouillé à la profondeur d’un doigt entier : coupez { MEASURE($cutting_cm, unit: "centimetre") }, { $nodes } nœuds, lianes saines. Laissez { MEASURE($stub_cm, unit: "centimetre") } de liane. Plantez au plus tard le lendemain.
    .text = Attendez que la pluie ait mouillé le champ à la profondeur d’un doigt entier. Coupez alors des lianes de patate douce dans la pépinière. Prenez seulement des lianes saines, sans feuilles tachées, enroulées ou très petites. Chaque bouture doit mesurer { MEASURE($cutting_cm, unit: "centimetre") }, soit environ { MEASURE($cutting_hands, unit: "hand") }, et avoir au moins { $nodes } { $nodes ->
        [one] nœud.
       *[other] nœuds.
     } Laissez en place { MEASURE($stub_cm, unit: "centimetre") } de liane, pour qu’elle repousse. { $plan_by ->
        [practice] Selon l’usage courant, la première coupe devrait donner environ
       *[print] La première coupe devrait donner environ
     } { $first_cuttings_low } à { $first_cuttings_high } boutures. Gardez-les à l’ombre, et plantez-les le jour même ou le lendemain.
    .alt = Une main tient une liane de la pépinière, l’autre la coupe au couteau ; le bas des lianes reste en place.
    .show = Une bouture de la bonne longueur à côté de la main : comptez les nœuds.
    .ask = Sur quels pieds ne prend-on pas de boutures ?
    .sms = Quand la pluie a mouillé le champ à la profondeur d’un doigt entier : coupez des lianes saines de patate douce, { MEASURE($cutting_cm, unit: "centimetre") }, { $nodes } noeuds. Laissez { MEASURE($stub_cm, unit: "centimetre") } de liane. Gardez à l’ombre, plantez au plus tard le lendemain.
# doubt: "exploitation" for a farm is an official word; here "chacun", each one.
plant-field = Plantez le champ
    .short = { -moist-soil-short } Enterrez deux ou trois nœuds. Après deux semaines, remplacez les boutures mortes.
    .text = Plantez le champ de patates douces quand la pluie a mouillé la terre à la profondeur d’un doigt entier. { $layout ->
        [own] Chacun plante sur ses propres billons ou buttes.
        [mounds] Mettez { $on_mound } { $on_mound ->
            [one] bouture
           *[other] boutures
         } sur chaque butte, avec { MEASURE($between_cm, unit: "centimetre") } d’une butte à l’autre.
       *[ridges] Mettez une bouture tous les { MEASURE($along_cm, unit: "centimetre") } sur le billon, avec { MEASURE($between_cm, unit: "centimetre") } d’un billon à l’autre.
     } Enterrez deux ou trois nœuds de chaque bouture, et laissez le haut hors de la terre. { $kind ->
        [zone] Sur toute la saison de la pépinière, { $roots } patates donnent environ { $cuttings } boutures.
       *[other] Il faut { $cuttings } boutures pour le champ entier.
     } Après deux semaines, remplacez les boutures mortes. { -moist-soil }
    .alt = Sous un nuage de pluie, une main plante des boutures en ligne ; leurs nœuds du bas sont dans la terre.
    .show = De la terre humide à la profondeur d’un doigt entier, et une bouture dont les nœuds du bas sont enterrés.
    .ask = Il a plu une fois : faut-il planter maintenant ? Qu’est-ce qui pourrait mal tourner ?
    .sms = Dès le { BRIEF($first) }, quand la pluie a bien mouillé la terre : plantez environ { $cuttings_to_plant } boutures de patate douce. Enterrez deux ou trois noeuds de chacune. { -moist-soil-short }
# doubt: "charançons" may be unknown as a word.
first-harvest = Cherchez les premières patates
    .short = Tâtez la terre sous les lianes. Récoltez les dernières au plus tard le { DAY($last_harvest) }, avant les charançons.
    .text = Tâtez la terre sous quelques pieds de patate. Cherchez des patates assez grosses pour être mangées. Ne laissez pas longtemps les patates mûres dans la terre sèche, car les charançons les trouvent. Récoltez les dernières au plus tard le { DAY($last_harvest) }.
    .alt = Une main cherche une patate sous un pied ; à côté, une marmite sur le feu.
    .show = Comment chercher une patate avec la main sans arracher le pied.
    .ask = Que deviennent les patates mûres qui restent en terre sèche ?
    .sms = Dès le { BRIEF($first) } : cherchez à la main des patates douces mûres. Récoltez les dernières au plus tard le { BRIEF($last_harvest) } : en terre sèche, les charançons les trouvent.

## Tables: title, what it tells (.text), its picture in words (.alt)

# doubt: "selon" and "selon les jours de croissance" where cuttings are counted by the days that the bed has grown.
table-cuts = Coupes{ $plan_by ->
    [practice] , selon l’usage courant
   *[print] , selon les jours de croissance
 }
    .text = { $cuts ->
        [1] Les saisons changent : attendez-vous à un nombre de boutures entre le plus bas et le plus haut.
       *[other] Les saisons changent : attendez-vous à un nombre de boutures entre le plus bas et le plus haut. Les coupes suivantes servent à planter le reste du champ et à remplacer les boutures mortes.
     }
table-ways = Ce que vous pouvez faire, côte à côte
    .text = Le tableau dit ce que chaque façon de faire donne dans une saison ordinaire, au moment où les pluies arrivent. Aucune n’est sûre. Il dit aussi ce qu’il faut pour chacune, même si vous n’en avez pas autant.
way-value = { $way ->
    [one-bed] Une seule pépinière, coupée quand les pluies arrivent
    [second-bed] Une petite pépinière plus tôt ; ses boutures poussent ensuite dans une parcelle arrosée
    [vine-plot] Des lianes du champ actuel dans une parcelle arrosée ; pas de patates à garder
    [as-planned] Laisser les patates dans le sable, comme prévu
    [bed-now] Mettre maintenant les patates saines dans la pépinière
    [bed-now-second-bed] En pépinière maintenant ; les boutures poussent ensuite dans une parcelle arrosée
   *[buy] Trouver chez quelqu’un d’autre les lianes qui manquent
 }
table-shares = Ce que chacun apporte
    .text = Chacun marque ses propres pieds et apporte ses patates au lieu de garde commun.
table-fields = Quantités selon la taille du champ
    .text = Cherchez votre champ dans la première colonne. S’il est entre deux lignes, ses quantités sont aussi entre ces deux lignes.
table-planting-later = Si vous attendez pour planter
    .text = Si vous plantez à la première grosse pluie et qu’une longue période sèche vient après, les jeunes plants peuvent mourir. C’est un faux départ. Si vous attendez, il reste moins de jours avant la fin des pluies. Le tableau montre les deux dans les années passées. Ce n’est pas une prévision. Dans l’image, les barres rayées sont les années avec un faux départ, les barres noires sont les jours qui restent avant la fin des pluies.
    .alt = Pour chaque jour à partir duquel on plante : une barre rayée pour les années avec un faux départ, et une barre noire pour les jours qui restent avant la fin des pluies. Les chiffres sont dans le tableau au-dessus.
column-when = Quand
column-way = Ce que vous faites
# doubt: "exploitation" for a farm is an official word; "famille" or "ferme" may be plainer.
column-farm = Exploitation
column-area = Champ, m²
column-cuttings = Boutures
column-cut = Boutures
cut-value = { $low }–{ $high }
column-plants = Pieds à marquer
column-roots = Patates à garder
column-bed = Pépinière, m²
column-jerrycans = Bidons d’eau par jour
column-water = Eau en tout, L
column-trips = Voyages à l’eau
column-from = Première pluie à partir du
column-false-starts = Années avec un faux départ
column-days-left = Jours avant la fin des pluies, une année sur deux
false-starts-value = { $false_starts } sur { $years }

## Cautions: title, text (.text), the same in a few words (.short), picture in words (.alt); text message (.sms) where there is one

caution-rot = Mauvaise patate : poison, même là où elle semble bonne
    .short = { -bad-roots-short }
    .text = { -bad-roots } Ne la coupez pas, ne l’épluchez pas et ne la cuisez pas pour en sauver une partie. Même la partie qui semble bonne peut vous empoisonner. Si vous avez un doute sur une patate, traitez-la comme mauvaise.
    .alt = Une patate pourrie ; en dessous, une vache et une marmite, toutes deux barrées d’une croix.
    .sms = Attention aux mauvaises patates douces. { -bad-roots-sms }
caution-virus = Pieds malades
    .short = Feuilles petites, enroulées ou tachées, ou lianes faibles ? { -take-nothing-short }
    .text = Des feuilles petites, enroulées ou tachées, ou des lianes faibles, montrent qu’un pied de patate douce est malade. { -take-nothing }
    .alt = Une main avec un couteau près d’un pied aux feuilles tachées et froissées, le tout barré d’une croix.
caution-cracks = Fentes dans la terre
    .short = Les charançons y entrent : ramenez de la terre dessus.
    .text = Les charançons arrivent aux patates douces par les fentes de la terre. Dès que vous voyez une fente, ramenez de la terre dessus.
    .alt = Un charançon entre dans une fente du billon ; en dessous, une patate pleine de trous.
caution-heavy-sand = Le sable est lourd
    .short = Portez au plus { MEASURE($load_kg, unit: "kilogram") }. Ne soulevez jamais le récipient plein.
    .text = Portez au plus { MEASURE($load_kg, unit: "kilogram") } à la fois. Remplissez le récipient là où il restera. Ne le soulevez jamais quand il est plein.
    .alt = Une personne pliée sous un gros sac, le tout barré d’une croix ; une femme bien droite avec un petit seau, marquée d’une coche.
caution-riverbed = Sable d’une rivière
    .short = Seulement là où c’est permis. { -dry-riverbed-short }
    .text = { -dry-riverbed }
    .alt = La berge raide d’une rivière s’écroule sur une personne qui creuse, le tout barré d’une croix.
caution-water-children = Eau, enfants et animaux
    .short = { -children-water-short } Clôturez puits, trous et pépinière.
    .text = { -children-water } Entourez les puits et les trous d’une clôture. Ne laissez pas les chèvres et les poules entrer dans la pépinière.
    .alt = Un fût d’eau couvert derrière une clôture ; une femme retient un enfant au-dehors.
caution-store-dry = Patates gardées : jamais d’eau
    .short = { -keep-dry-short } Humide, il les fait pourrir.
    .text = Autour des patates douces gardées, le sable doit rester sec, du premier jour au dernier. { -keep-dry }
    .alt = L’eau d’un bidon tombe sur la bassine de patates, le tout barré d’une croix.
caution-forecast = Dates : pas une prévision
    .short = La pluie peut venir plus tôt ou plus tard. { -moist-soil-short }
    .text = Ces dates viennent des années passées, et ne sont pas une prévision. Cette année, la pluie peut venir plus tôt ou plus tard. Regardez le ciel et la terre. { -moist-soil }
    .alt = Une femme, des boutures à la main, regarde le soleil, le nuage et la pluie.
caution-try-first = C’est nouveau ? Faites un essai
    .short = Commencez avec peu de patates, gardez des lianes comme avant.
    .text = Si c’est nouveau pour vous, commencez avec quelques patates. Gardez aussi une partie de vos lianes comme avant.
    .alt = Une femme entre un petit pot avec quelques patates et un pied qui continue de pousser en terre.

## Drawings: title, and what it shows in words; the names and sizes that stand in them

month-year = { month } { $year }
calendar-title = Le travail, mois par mois
guide-title = Guide pour une réunion
card-fold = Pliez sur les pointillés. Coupez sur le trait épais.
record-title = Vérifications des patates gardées
record-how = À chaque vérification, sortez toutes les patates. Enterrez profondément ou brûlez toute patate pourrie, moisie ou trouée par les insectes. Notez ce que vous trouvez, et montrez cette fiche à votre agent d’agriculture.
record-planned = Prévu le
record-done = Fait le
record-healthy = Remises dans le sable
# doubt: "Mauvaises": how many were bad, since "Jetées" would say to throw them away where animals find them.
record-thrown-away = Mauvaises
record-sprouted = Avec germes
record-remark = Remarque
record-stored = Patates gardées
booklet-index = Exploitations par nom
span-brief = { BRIEF($from) } – { BRIEF($to) }
size-cm = { MEASURE($cm, unit: "centimetre") }
size-m = { MEASURE($m, unit: "metre") }
drawing-season = La saison
drawing-season-alt = Une bande d’une récolte à l’autre : patates dans le sable, puis dans la pépinière, puis pieds dans le champ, avec les dates.
season-store = Dans le sable
season-bed = En pépinière
season-field = Dans le champ
season-on-harvest = Récolte
season-on-sprout = En pépinière
season-on-rains = Pluies
season-on-food = Premières patates
drawing-store = Le récipient, vu en coupe
drawing-store-alt = Le récipient en coupe : couches de patates, avec du sable dessous, entre elles et dessus.
drawing-layers = Chaque couche, vue de dessus
drawing-layers-alt = Les couches vues de dessus : la place de chaque patate ; aucune ne touche une autre ni le bord.
drawing-bed = La pépinière, vue de dessus
drawing-bed-alt = La pépinière vue de dessus : les lignes de patates, sa longueur et sa largeur.
drawing-rows = Le champ, vu de dessus
drawing-rows-alt = Une partie du champ vue de dessus : l’écart entre les rangs, et les boutures.
## Words of the recording script

script-title = À enregistrer
script-new-voice = une nouvelle voix
script-lines = Lignes à lire
script-time = Durée, estimée d’après la longueur des mots
script-time-measured = Durée, au rythme de cette voix
script-minutes = environ { $minutes } { $minutes ->
    [one] minute
   *[other] minutes
 }
script-ready = Messages déjà complets
script-how = Avant de commencer
script-how-room = Trouvez une pièce calme où il y a du tissu : rideaux, lit, habits. Fermez les fenêtres, éteignez les ventilateurs, les frigos et les téléphones qui peuvent sonner.
script-how-distance = Gardez la bouche à une longueur de main du micro ou du téléphone, un peu sur le côté. Ne changez pas cette distance jusqu’à la fin.
script-how-tone = Lancez l’enregistrement et restez cinq secondes en silence complet : le son de la pièce sert aussi.
script-how-pause = Faites une seconde de silence avant chaque ligne, et une seconde après.
script-how-order = Lisez les lignes dans l’ordre et cochez-les une à une. Ne dites pas leur numéro.
script-how-slip = Si vous vous trompez, faites une pause et redites toute la ligne. N’arrêtez pas l’enregistrement.
script-how-grey = Dites à voix haute seulement les mots en gras. Lisez dans votre tête les mots gris autour : ils donnent à votre voix la mélodie de la phrase.
script-how-brackets = Dites à voix haute seulement les mots entre [ ]. Lisez les autres dans votre tête : ils donnent à votre voix la mélodie de la phrase.
script-how-medial = Là où il est écrit « { script-medial } », ne laissez pas tomber la voix : il y a une suite.
script-how-final = Là où il est écrit « { script-final } », laissez tomber la voix, comme à la fin d’une phrase.
script-medial = continue
script-final = finit
script-part = Partie { $part }
script-part-lines = lignes { $first_line } à { $last_line }
script-rest = Pour d’autres champs et d’autres dates
script-opening = Début de chaque message
script-closing = Fin de chaque message
script-sentences = Phrases entières
script-parts = Parties de phrases
script-numbers = Nombres, forme { $form }
script-dates = Parties de dates
script-months = Mois
script-units = Mesures
script-unlocks = Messages qui en ont besoin
script-complete = Messages complets avec cette ligne
script-stale = L’ancien enregistrement dit
script-other-ending = Il y a un enregistrement, mais la voix finit de l’autre façon.
script-recorded = Déjà enregistré.
script-unsaid = Aucune phrase connue ne le dit ainsi : on peut sauter cette ligne.
script-nothing = Il ne reste rien à enregistrer.
## The check of recordings

clips-title = Les enregistrements, vérifiés
clips-intro = Ce qu’il faut réenregistrer vient en premier. Chaque image montre la voix de gauche à droite : en haut, sa force ; en bas, ses sons, foncés là où ils sont forts.
clips-again = À réenregistrer
clips-usable = Utilisable
clips-good = Bon
clips-unused = Plus nécessaire
clips-missing = Pas encore enregistré
clips-picture = Image de l’enregistrement « { $words } »
clips-length = Durée
clips-level = Force de la voix
clips-noise = Voix au-dessus du bruit
clips-hum = Voix au-dessus du ronflement
clips-pace = Vitesse, par rapport à l’habitude
clip-clipped = La voix est trop forte pour le micro et le son est déformé. Éloignez le micro, ou baissez son niveau.
clip-cut-start = Le premier son est coupé. Lancez l’enregistrement, respirez, puis parlez.
clip-cut-end = Le dernier son est coupé. Respirez avant d’arrêter l’enregistrement.
clip-noise = Il y a du bruit derrière la voix. Cherchez un endroit plus calme et rapprochez le micro.
clip-hum = On entend un ronflement électrique. Débranchez le chargeur, et éloignez-vous des fils et des machines.
clip-room = La pièce résonne. Enregistrez dans une petite pièce avec des tissus, des nattes ou un matelas, et rapprochez le micro.
clip-quiet = La voix est plus faible que dans les autres enregistrements. Gardez toujours la même distance au micro.
clip-loud = La voix est plus forte que dans les autres enregistrements. Gardez toujours la même distance au micro.
clip-fast = C’est dit plus vite que les autres enregistrements. Parlez à votre vitesse habituelle.
clip-slow = C’est dit plus lentement que les autres enregistrements. Parlez à votre vitesse habituelle.
clip-offset = L’appareil a un peu décalé le son. Vous n’avez rien à faire : cela se corrige tout seul.
clip-broken = L’enregistrement ne peut pas être ouvert. Enregistrez-le de nouveau.
clip-stale = Les mots ont changé. Enregistrez-les comme ils sont maintenant : « { $words } »
clip-unused = Aucun message n’emploie plus ces mots.
## Radio segments: script for the presenter, plan of the season

# doubt: "séquence" for a segment of a programme.
segment-title = Séquence radio
segment-season = Séquences radio de la saison
segment-week = Semaine
segment-topics = Ce qui est dit
segment-nothing = Rien à dire cette semaine
segment-due = Cette semaine
segment-past = Toujours valable
segment-soon = Bientôt
segment-opening = Indicatif d’ouverture
segment-closing = Indicatif de fin
segment-bed = Musique sous la voix
segment-bed-value = { $decibels } dB sous la voix
segment-said = Ce qu’on entend
segment-read-before = À lire en direct avant
segment-read-after = À lire en direct après
# doubt: "à" before a region may have to be "dans".
segment-intro = Bonjour à tous ceux qui cultivent la patate douce à { $place }. Voici maintenant les travaux du { DAY($first) } au { DAY($last) }.
segment-outro = C’étaient les travaux du { DAY($first) } au { DAY($last) }. Si quelque chose n’est pas clair, demandez à votre agent d’agriculture.
segment-reading-time = Temps de lecture, estimé
segment-read-live = À lire à haute voix. Les temps sont estimés, à { $rate } syllabes par seconde.
segment-pauses = Une barre (/) est une pause courte, deux barres (//) une pause plus longue. Entre les parties, attendez encore un peu plus.
segment-no-sound = Aucun son n’a été produit{"\u00A0"}: des phrases n’ont pas d’enregistrement. Elles sont listées plus bas.
segment-no-voice = Aucun son n’a été produit{"\u00A0"}: cette langue n’a pas encore de voix enregistrée.
segment-left-out = Laissé de côté, faute de temps
segment-missing = Phrases sans enregistrement
## Questions for a meeting, as they are spoken

ask-mark-plants = Quels sont les pieds les plus forts de votre champ ?
ask-gather-sand = Près d’ici, où y a-t-il du gros sable, et comment le prendre sans danger ?
ask-check-plants = Ici, à quoi ressemblent les pieds malades de patate douce ?
ask-cut-vines = Pourquoi la peau des patates a-t-elle besoin de temps pour durcir ?
ask-harvest = Comment allez-vous récolter sans que la daba coupe les patates ?
ask-fill-container = Chez vous, où fait-il frais et sec, loin des enfants et des animaux ?
ask-monthly-check = À quoi ressemblent les mauvaises patates, et où allez-vous les enterrer ?
ask-prepare-bed = Près d’ici, où y a-t-il de l’eau, et qui surveille les enfants ?
ask-last-check = Combien de vos patates ont des germes ?
ask-plant-bed = Qu’est-ce qui peut vous empêcher de planter la pépinière à temps ?
ask-water-bed = Qui va arroser quand vous êtes absents ?
ask-cut-for-planting = Comment savez-vous qu’il a assez plu ?
ask-plant-field = Quelle partie du champ allez-vous planter en premier ?
ask-first-harvest = Quelles lianes allez-vous garder pour la saison prochaine ?

## Channels: cue sheets for phones and meetings

# doubt: "niveau de la parole" for active speech level, a figure for sound technicians.
cue-active-level = Niveau de la parole
cue-chapter = Chapitre
cue-talk = temps pour parler, { $seconds } s

## The guide for a meeting: each step has what to show (.show) and what to ask (.ask)

guide-show = À montrer
guide-ask = Demandez

## Good to know

advice-roots-not-chosen = Les patates douces petites ou tordues, et celles que la daba a coupées, sont bonnes à manger. Mangez-les ou vendez-les vite, d’abord celles qui sont coupées, car elles ne se gardent pas. { -bad-roots }
advice-storage-place = Gardez les récipients dans une pièce fraîche, sèche et à l’ombre, où l’air circule et où la pluie n’entre pas. Mettez-les hors de portée des enfants, des rats, des poules et des chèvres.
advice-clean-vines = Prenez d’abord vos boutures au bout des lianes, où il y a moins de charançons. Ne prenez aucune liane sur un pied malade ou troué à sa base.
advice-clean-field = Plantez à { $metres } m au moins des anciens champs de patate douce, car les charançons viennent de là. Enlevez les vieilles lianes et les vieilles patates. Beaucoup conseillent de mettre la patate douce sur la même terre une seule fois en { $years } ans.
advice-deep-planting = Plantez les boutures à environ { $deep_cm } cm de profondeur. Dans un essai, elles ont mieux poussé là qu’à { $shallow_cm } cm.
advice-dry-after-planting = Les premières pluies peuvent s’arrêter. Sur 100 boutures, environ { $week_least } à { $week_most } survivent à une semaine sèche, et { $fortnight_least } à { $fortnight_most } à deux. Arrosez la pépinière jusqu’à ce que les boutures aient repris au champ. Gardez des lianes en réserve, et remplacez les boutures mortes.
advice-feed-and-weed = Avant de planter, mélangez à la terre des billons du fumier vieux et bien décomposé, ou du compost. Le fumier frais, ou trop de fumier, donne des feuilles et peu de patates. Sarclez jusqu’à ce que les lianes couvrent la terre.
# doubt: "patates à chair orange" for orange roots.
advice-children = Donnez souvent aux jeunes enfants des patates à chair orange. Dans un essai, des enfants qui en mangeaient { $serving_g } g par jour pendant { $days } jours avaient de meilleures réserves de vitamine A. Les patates à chair pâle en contiennent bien moins, et aucune fiche ne peut promettre autant pour un enfant.

## What the plan leads to: the plain text of each remark, which goes out as a text message too

remark-containers-too-small =
    .text = Dans vos récipients, il y a de la place pour { $fit } { $fit ->
        [one] patate douce
       *[other] patates douces
     }, pas pour { $roots }. N’en tassez pas plus, car les patates pourrissent là où elles se touchent. Cela suffit pour environ { $area_m2 } m² sur les { $field_m2 } du champ. { $more ->
        [0] Pour en garder plus, trouvez un autre récipient. Sinon, plantez un champ plus petit.
        [one] Pour en garder plus, trouvez encore un récipient. Sinon, plantez un champ plus petit.
       *[other] Pour en garder plus, trouvez encore { $more } récipients. Sinon, plantez un champ plus petit.
     }
remark-sand-short =
    .text = Votre sable couvre { $fit } { $fit ->
        [one] patate douce
       *[other] patates douces
     }, mais pas { $roots }. Ne gardez pas les patates que le sable ne couvre pas. Cela suffit pour planter environ { $area_m2 } m² sur les { $field_m2 } du champ. Apportez encore { MEASURE($more_l, unit: "litre") } de sable, ou plantez un champ plus petit.
remark-water-limits =
    .text = Votre eau suffit pour { $fit } { $fit ->
        [one] patate douce
       *[other] patates douces
     } en pépinière, pas pour { $roots }. Ne faites pas la pépinière plus grande que prévu ici, et gardez sa terre humide. Cela suffit pour planter environ { $area_m2 } m² sur les { $field_m2 } du champ. Pour le champ entier, trouvez encore { MEASURE($more_l, unit: "litre") } d’eau { $per ->
        [all] en tout.
       *[day] par jour.
     }
remark-hands-short =
    .text = L’eau que vous pouvez porter suffit pour { $fit } { $fit ->
        [one] patate douce
       *[other] patates douces
     } en pépinière, pas pour { $roots }. Ne faites pas la pépinière plus grande que prévu ici, et gardez sa terre humide. Cela suffit pour environ { $area_m2 } m² sur les { $field_m2 } du champ. Pour tout planter, il faut plus de bras, ou une pépinière plus près de l’eau.
remark-water-heavy =
    .text = Les jours secs, la pépinière de patates douces demande { $trips } { $trips ->
        [one] voyage
       *[other] voyages
     } pour chercher l’eau. C’est environ { $hours } { $hours ->
        [one] heure
       *[other] heures
     } par jour à porter l’eau. Décidez dès maintenant qui portera l’eau, ou faites une pépinière plus petite.
remark-limited-at-hand =
    .text = { $limit ->
        [roots] Vous avez { $roots } { $roots ->
            [one] patate douce
           *[other] patates douces
         } à garder.
        [plants] Vos pieds donnent environ { $roots } { $roots ->
            [one] patate douce
           *[other] patates douces
         } à garder.
       *[bed] La pépinière a de la place pour { $roots } { $roots ->
            [one] patate douce.
           *[other] patates douces.
         }
     } Pour le champ entier, il en faudrait { $wanted }. Vos patates suffisent pour planter environ { $area_m2 } m² sur les { $field_m2 } du champ. Plantez un champ plus petit, ou demandez des boutures à vos voisins.
remark-field-waits =
    .text = La première coupe suffit pour environ { $area_m2 } m² de patates douces, sur les { $field_m2 } du champ. Les coupes suivantes couvriront le reste, chacune après { $least_days } à { $most_days } jours.
remark-rains-too-soon =
    .text = Les pluies peuvent commencer vers le { BRIEF($rains) }. C’est trop tôt après la récolte pour garder des patates douces. Plantez plutôt des lianes du champ actuel, ou mettez tout de suite les patates dans la pépinière.
remark-storing-not-needed =
    .text = Ici, la saison sèche dure environ { $days } { $days ->
        [one] jour
       *[other] jours
     }, la plupart des années. Les lianes de patate douce peuvent rester en vie aussi longtemps. Vous n’avez donc pas besoin de garder des patates. Laissez sur pied une partie du champ actuel, ou gardez des lianes dans une petite parcelle arrosée.
remark-rains-too-short =
    .text = Ici, les pluies sont courtes pour la patate douce. { $known ->
        [case] Ce que vous plantez risque de ne pas être mûr avant la fin des pluies.
        [open] Personne ne sait combien de fois elle est mûre avant la fin des pluies.
       *[record] Elle est mûre avant la fin des pluies dans seulement { $of_100 } { $of_100 ->
            [one] année
           *[other] années
         } sur 100.
     } { $helps ->
        [on-time] Faites la pépinière tôt, pour pouvoir planter dès que la pluie a bien mouillé la terre.
        [quicker] Plantez dès que la pluie a bien mouillé la terre, et cherchez une variété qui mûrit plus vite.
       *[neither] Plantez dès que la pluie a bien mouillé la terre. Vous aurez sans doute peu de patates, et petites.
     }
remark-cuts-too-late =
    .text = Les patates douces d’une coupe tardive, plantée à partir du { BRIEF($from) }, seront mûres seulement vers le { BRIEF($ripe) }. La plupart des années, les pluies finissent avant. Ne gardez pas une partie du champ pour les coupes tardives. Utilisez ces lianes comme fourrage, ou laissez-les pousser là où il y a de l’eau.
remark-bed-late =
    .text = La pépinière donne ses premières boutures de patate douce vers le { BRIEF($cut) }, après le début des pluies. Quand la pluie a bien mouillé la terre, plantez les lianes que vous avez. La pépinière remplira plus tard le reste du champ.
remark-long-in-sand =
    .text = Vos patates douces doivent rester { $days } { $days ->
        [one] jour
       *[other] jours
     } dans le sable. Personne n’a compté combien survivent aussi longtemps. Faites aussi pousser quelques lianes près de l’eau, et demandez conseil à votre agent d’agriculture.
remark-late-work =
    .text = Pour vos patates douces, une partie du travail n’a pas été faite à temps. Les dates sont donc recomptées. Faites tout de suite ce qui peut encore être fait. Le champ pourra être planté dès le { BRIEF($field_from) }.{ $fewer ->
        [0] {""}
        [one] {" "}La première coupe donnera environ { $fewer } bouture de moins.
       *[other] {" "}La première coupe donnera environ { $fewer } boutures de moins.
     }
remark-fast-loss =
    .text = Vérification du { BRIEF($day) } : seulement { $healthy } { $healthy ->
        [one] patate douce saine
       *[other] patates douces saines
     } sur { $roots }. { $next ->
        [bed] Mettez maintenant les patates saines dans la pépinière, et cherchez d’autres lianes à planter.
       *[check] Cherchez la cause : sable humide ou chaud, patates coupées ou qui se touchent, charançons. Prenez du nouveau sable sec. Revérifiez dans deux semaines. Si beaucoup d’autres pourrissent, mettez vite les saines en pépinière arrosée.
     }
remark-cuttings-short =
    .text = À la première coupe, il manquera environ { $short } { $short ->
        [one] bouture
       *[other] boutures
     } de patate douce. Quand la pluie a bien mouillé la terre, plantez environ { $area_m2 } m² sur les { $field_m2 } du champ. { $later_cuts ->
        [0] Les coupes suivantes viennent trop tard pour mûrir, alors demandez à temps des lianes à vos voisins.
       *[other] Les coupes suivantes serviront à planter une autre partie du champ. Vous pouvez aussi demander à temps des lianes à vos voisins.
     }
# doubt: "couvrir la terre de paille" for mulching; "paillage" is the word of extension workers.
remark-water-short =
    .text = Dès le { BRIEF($from) }, l’eau peut manquer pour la pépinière de patates douces. Trouvez plus d’eau. Si vous couvrez la terre de paille et faites de l’ombre, il faut moins d’eau. Sinon, faites une pépinière plus petite et plantez un champ plus petit.
remark-rains-may-be-late =
    .text = Les pluies peuvent tarder, et commencer seulement le { BRIEF($late) }. Arrosez votre pépinière de patates douces jusqu’à l’arrivée des pluies. { -moist-soil }
remark-years-without-rains =
    .text = Dans { $count } des { $judged } années passées, les pluies n’ont jamais bien commencé. Une telle année, les lianes de patate douce plantées à la première pluie peuvent mourir. Gardez en réserve quelques patates, ou continuez à arroser une partie de la pépinière.
