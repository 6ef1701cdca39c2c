### Français d’Afrique de l’Ouest et du Sahel, brouillon : textes imprimés. Personne ne les a encore relus.
### Draft, as printed on sheets. Nouns: patate (root), pied (plant), tige (vine and stem), bouture (cutting), nœud (node),
### pousse (shoot), germe (sprout on a stored root), couche (layer), récipient (container), charge (load), bidon (jerrycan),
### planche (seedbed), billon (ridge), butte (mound), charançon (weevil), exploitation (farm), réserve (store).
### The reader is addressed as "vous", one person or a group.
### In the phone texts (.sms) the letters â ê î ô û ç œ, the curly apostrophe and no-break spaces do not occur, since they
### would make the message cost double: "brulez" and "aout" are the spellings of 1990, "noeuds" stands for "nœuds".

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
amount-plants-each = Pieds que chaque membre marque
amount-roots = Patates à garder
amount-cuttings = Boutures pour le champ
amount-first-cuttings = Boutures attendues à la première coupe
amount-containers = Récipients
amount-layers = Couches de patates dans un récipient
amount-roots-per-layer = { $layer_widths ->
    [uneven] Patates dans la couche du bas, au plus
   *[even] Patates dans chaque couche, au plus
 }
amount-roots-top-layer = Patates dans la couche du haut, au plus
# doubt: "botte" for a bundle of cuttings; "fagot" or "paquet" in places.
amount-bundles = Bottes de boutures
amount-lining = Papier pour garnir les récipients
amount-water-total = Eau pour la planche, toute la saison
amount-sand = Sable sec
# doubt: "charge" for what one carries at a time; "voyage" is said too.
amount-loads = Charges de sable à porter
amount-bed = Planche de pépinière
amount-strips = Bandes de la planche, avec des passages de { MEASURE($path_m, unit: "metre") } entre elles
amount-water = Eau pour la planche, chaque jour
amount-jerrycans = Bidons d’eau, chaque jour

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
    [8] aout
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
# doubt: whether the size of the "bidon" should be named.
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

## Opening and closing

# doubt: "zone" for the area; "localité" or "secteur" may be more usual.
opening = { $kind ->
    [zone] Ce plan est pour tous les cultivateurs de la zone. Ses quantités sont pour { $roots } patates : prenez plus ou moins de patates selon votre champ.
   *[other] Les dates de ce plan sont calculées à partir des pluies. Les pluies sont attendues vers le { DAY($rains) }.
 }
# doubt: "agent d’agriculture" for the extension worker; "encadreur" or "conseiller agricole" in places.
closing = Votre agent d’agriculture connaît les variétés, les dates et les règles de votre zone. Si cette feuille dit autre chose, suivez son conseil.
    .sms = Le conseil de votre agent d'agriculture passe avant tout.

## Steps: title, text (.text), picture in words (.alt), text message on a phone (.sms, 160 letters or less where it can be)

# doubt: "patates de semence" for seed roots; "piquet" for the stick beside the plant.
mark-plants = Marquez { $plants } pieds sains
    .short = Des pieds vigoureux, de grandes feuilles propres, sans maladie. Un piquet à côté de chacun.
    .text = { $kind ->
        [group] Choisissez ensemble { $plants } pieds de patate vigoureux ; chaque membre en marque { $plants_each }.
       *[other] Choisissez { $plants } pieds de patate vigoureux.
     } Mettez un piquet à côté de chacun. Prenez seulement des pieds qui ont de grandes feuilles propres, sans aucun signe de maladie. Ils donneront environ { $roots } patates à garder.
    .alt = Une main enfonce un piquet dans la terre à côté d’un pied vigoureux.
    .show = Une tige saine et une malade, et un piquet.
    .ask = Comment distingue-t-on un pied sain d’un pied malade ?
    .sms = { BRIEF($first) } : marquez avec des piquets { $plants } pieds sains pour les patates de semence. De grandes feuilles propres, aucun signe de maladie.
# doubt: "gros sable" for coarse sand, "à l’abri" for under cover.
gather-sand = Apportez du sable sec
    .short = Gros et propre : { MEASURE($sand_l, unit: "litre") }. Séchez-le à l’abri, laissez-le refroidir.
    .text = Apportez { MEASURE($sand_l, unit: "litre") } de gros sable propre, soit environ { MEASURE($sand_kg, unit: "kilogram") }. Faites-le sécher à l’abri et laissez-le refroidir. Le sable fin, humide ou chaud fait pourrir les patates. Portez au plus { MEASURE($load_kg, unit: "kilogram") } à la fois : il faut environ { $loads } { $loads ->
        [one] charge
       *[other] charges
     }.
    .alt = Sous un toit, une main avec un bol met du sable sec d’un tas dans un petit seau.
    .show = Une poignée de gros sable sec, et une de sable fin et humide.
    .ask = Où trouver du gros sable, et peut-on y creuser sans danger ?
    .sms = D'ici au { BRIEF($last) } : apportez { MEASURE($sand_l, unit: "litre") } de gros sable propre. Faites-le bien sécher à l'abri. Pas plus de { MEASURE($load_kg, unit: "kilogram") } à la fois.
# doubt: "coche" for a tick, in the words for pictures.
check-plants = Regardez encore les pieds marqués
    .short = Feuilles petites, enroulées ou tachées ? Enlevez le piquet, ne prenez rien.
    .text = Cherchez des feuilles petites, enroulées ou tachées, des tiges restées courtes, et des trous au bas de la tige. Si vous avez un doute, enlevez le piquet et ne prenez rien sur ce pied.
    .alt = Un pied sain, marqué d’une coche, garde son piquet ; une main retire le piquet d’un pied malade aux feuilles tachées et froissées.
    .show = Des feuilles petites, enroulées et tachées.
    .ask = Que faites-vous d’un pied marqué qui est tombé malade ?
    .sms = { BRIEF($first) } : regardez encore les pieds marqués. Feuilles petites, enroulées ou tachées : enlevez le piquet.
# doubt: "tiges" for vines; "lianes" is said in parts of the region.
cut-vines = Coupez les tiges des pieds marqués
    .short = Laissez { MEASURE($stem_cm, unit: "centimetre") } de tige : { MEASURE($stem_hands, unit: "hand") }.
    .text = Coupez les tiges, mais laissez sur le pied { MEASURE($stem_cm, unit: "centimetre") } de tige, soit environ { MEASURE($stem_hands, unit: "hand") }. La peau des patates durcit, et elles se gardent plus longtemps.
    .alt = Un couteau coupe les tiges ; ce qui reste est aussi haut que la main ouverte posée à côté.
    .show = Une main ouverte le long d’une tige.
    .ask = Pourquoi la peau des patates a-t-elle besoin de temps pour durcir ?
    .sms = { BRIEF($first) } : coupez les tiges des pieds marqués. Laissez sur le pied un bout de tige long comme la main.
# doubt: "blesser" and "blessées" for wounding roots; "houe" in the picture, "daba" in much of the Sahel.
harvest = Récoltez, et choisissez { $roots } patates
    .short = Seulement en terre sèche. Patates moyennes, peau intacte. Ne les lavez pas. Gardez-les à l’ombre.
    .text = Récoltez seulement dans une terre sèche, et sortez les patates sans les blesser. Prenez { $roots } patates moyennes, à peu près de la longueur de votre main, et dont la peau est intacte. Les patates blessées vont à la cuisine, pas dans la réserve. Enlevez la terre des patates à la main et ne les lavez jamais. Laissez-les quelques heures à l’ombre, pas au soleil.
    .alt = Une main tire un pied de la terre meuble, avec ses patates entières ; une houe à côté.
    .show = Une patate moyenne à la peau intacte, et une blessée.
    .ask = Quelles patates se gardent, et lesquelles vont à la cuisine ?
    .sms = { BRIEF($first) } : récoltez en terre sèche. Gardez { $roots } patates moyennes et intactes. Ne les lavez pas. Laissez-les à l'ombre.
# doubt: "pot" for a clay pot; "canari" is the West African word, but not everywhere.
fill-container = Rangez les patates dans le sable
    .short = Sable : { MEASURE($base_cm, unit: "centimetre") } dessous, { MEASURE($layer_cm, unit: "centimetre") } entre, { MEASURE($top_cm, unit: "centimetre") } dessus. Aucune patate n’en touche une autre. Pas de couvercle.
    .text = Prenez { $containers } { $containers ->
        [one] récipient
       *[other] récipients
     } à parois solides : bassine, pot, seau ou panier serré. Pas de sacs. { $containers ->
        [one] Garnissez-le
       *[other] Garnissez chaque récipient
     } de papier, et remplissez-le là où il restera : un endroit frais, sec et à l’ombre, loin des enfants, des animaux et de la pluie. Commencez par { MEASURE($base_cm, unit: "centimetre") } de sable, soit environ { MEASURE($base_joints, unit: "thumb-joint") }. Posez les patates : { $layer_widths ->
        [uneven] au plus { $roots_per_layer } dans la couche du bas et au plus { $roots_top } dans celle du haut.
       *[even] au plus { $roots_per_layer } par couche.
     } Elles ne doivent toucher ni une autre patate ni la paroi. { $layers ->
        [one] Mettez dessus { MEASURE($layer_cm, unit: "centimetre") } de sable. Faites une seule couche.
       *[other] Mettez dessus { MEASURE($layer_cm, unit: "centimetre") } de sable et posez la couche suivante, { $layers } couches en tout.
     } Finissez par { MEASURE($top_cm, unit: "centimetre") } de sable : il arrête les rats, les insectes et la volaille. Ne mettez pas de couvercle.
    .alt = Une bassine coupée pour montrer le dedans : sable, patates écartées, sable, patates, sable épais au-dessus ; une main répand du sable.
    .show = Une bassine, du sable sec et quelques patates : quelqu’un range la première couche.
    .ask = Pourquoi les patates ne doivent-elles pas se toucher ?
    .sms = { BRIEF($first) } : rangez les patates dans du sable sec, sans qu'elles se touchent. { MEASURE($base_cm, unit: "centimetre") } de sable dessous, { MEASURE($top_cm, unit: "centimetre") } dessus. Ni couvercle, ni eau.
monthly-check = Vérifiez les patates chaque mois
    .short = Regardez chaque patate. Enterrez ou brûlez les pourries. Enlevez les germes. Rangez de nouveau.
    .text = Sortez toutes les patates et regardez-les une à une. Enterrez profondément, ou brûlez, toute patate pourrie, moisie ou percée par les insectes. Enlevez les germes en frottant. Remettez les bonnes patates dans le sable de la même façon, et notez combien il en reste. Entre deux vérifications, n’y touchez pas.
    .alt = Trois lunes, signe d’un mois passé ; une main sort une patate de la bassine ; une patate pourrie est à côté, barrée d’une croix.
    .show = Une patate pourrie s’il y en a, et comment ranger de nouveau.
    .ask = Que faites-vous d’une patate pourrie, et pourquoi ne pas la donner aux animaux ?
    .sms = { BRIEF($first) } : sortez toutes les patates. Enterrez ou brulez les pourries, n'en donnez jamais aux animaux. Enlevez les germes et remettez les bonnes dans le sable.
# doubt: "planche de pépinière" for the seedbed; farmers may say only "pépinière" or only "planche".
prepare-bed = Préparez la planche de pépinière
    .short = { MEASURE($bed_length_m, unit: "metre") } sur { MEASURE($bed_width_m, unit: "metre") }, près de l’eau. Remuez la terre. Mettez une clôture.
    .text = Faites une planche de { MEASURE($bed_length_m, unit: "metre") } sur { MEASURE($bed_width_m, unit: "metre") }, près de l’eau. Remuez bien la terre. Entourez la planche d’une clôture contre les chèvres et les poules.
    .alt = Un homme ameublit la terre de la planche avec une houe ; derrière lui, une clôture.
    .show = L’endroit près de l’eau, et la taille de la planche, mesurée en pas.
    .ask = Qu’est-ce qui empêche les chèvres et les poules d’entrer ?
    .sms = D'ici au { BRIEF($last) } : faites une planche de { MEASURE($bed_length_m, unit: "metre") } sur { MEASURE($bed_width_m, unit: "metre") } près de l'eau. Mettez une barrière autour.
last-check = Vérifiez une dernière fois et gardez les germes
    .short = Enterrez ou brûlez les pourries. Laissez les germes.
    .text = Sortez toutes les patates. Enterrez profondément, ou brûlez, toute patate pourrie, moisie ou percée par les insectes. Cette fois, laissez les germes en place : les bonnes patates vont maintenant dans la planche.
    .alt = Une main sort de la bassine une patate avec des germes ; une flèche mène à la planche.
    .show = Une patate avec des germes.
    .ask = Pourquoi laisse-t-on les germes cette fois ?
    .sms = { BRIEF($first) } : dernière vérification. Gardez les germes. Enterrez ou brulez les patates pourries, ne les donnez jamais aux animaux.
plant-bed = Plantez les patates dans la planche
    .short = Lignes : { $bed_rows }, à { MEASURE($spacing_cm, unit: "centimetre") } l’une de l’autre ; environ { $row_roots } patates dans chacune. Un peu de terre dessus.
    .text = Couchez les patates en lignes, avec environ { MEASURE($spacing_cm, unit: "centimetre") } d’écart : { $bed_rows } { $bed_rows ->
        [one] ligne
       *[other] lignes
     }, environ { $row_roots } par ligne. Couvrez-les d’un peu de terre.
    .alt = Des patates couchées en ligne ; une main les couvre de terre.
    .show = L’écart entre les lignes, avec un bâton de la bonne longueur.
    .ask = À quelle profondeur se trouve la patate dans la planche ?
    .sms = Dès le { BRIEF($first) } : plantez les patates en lignes, avec { MEASURE($spacing_cm, unit: "centimetre") } d'écart. Couvrez-les d'un peu de terre, et arrosez.
water-bed = Arrosez la planche
    .short = Jusqu’à { MEASURE($water_l, unit: "litre") } par jour ({ MEASURE($jerrycans, unit: "jerrycan") }) ; moins pour les jeunes plants.
    .text = Quand la planche est pleine de feuilles, donnez environ { MEASURE($water_l, unit: "litre") } d’eau chaque jour, soit { MEASURE($jerrycans, unit: "jerrycan") }. Les jeunes plants en demandent moins ; les jours de chaleur et de vent, il en faut plus. Arrêtez quand la pluie fait le travail.
    .alt = Une main verse l’eau d’un bidon sur la planche où poussent les germes.
    .show = Un bidon, et le peu d’eau qu’il faut aux jeunes plants.
    .ask = Qui apporte l’eau, et qui surveille les enfants là-bas ?
    .sms = Dès le { BRIEF($first) } : arrosez la planche chaque jour, jusqu'à { MEASURE($water_l, unit: "litre") }. Tenez les enfants loin de l'eau non couverte.
# doubt: "nœuds" for nodes; some may say "yeux". "le bas des tiges" for the stubs left in the bed.
cut-for-planting = Coupez les boutures à planter
    .short = Quand les pluies sont là : { MEASURE($cutting_cm, unit: "centimetre") }, { $nodes } nœuds, pousses saines. Laissez le bas des tiges.
    .text = Quand les pluies sont là, coupez des morceaux de tige de { MEASURE($cutting_cm, unit: "centimetre") }, soit environ { MEASURE($cutting_hands, unit: "hand") }. Chaque morceau doit avoir au moins { $nodes } nœuds. Coupez seulement sur des pousses saines. { $plan_by ->
        [practice] Selon l’usage courant, la première coupe donne environ
       *[print] La première coupe donne environ
     } { $first_cuttings_low } à { $first_cuttings_high } boutures. Laissez le bas des tiges en place : il donne d’autres boutures après quatre à six semaines. Gardez les boutures à l’ombre et plantez-les dans les deux jours.
    .alt = Une main tient une tige de la planche, l’autre la coupe au couteau ; le bas des tiges reste en place.
    .show = Une bouture de la bonne longueur à côté de la main : comptez les nœuds.
    .ask = Sur quels pieds ne prend-on pas de boutures ?
    .sms = Quand les pluies sont là : coupez des tiges de { MEASURE($cutting_cm, unit: "centimetre") } avec au moins { $nodes } noeuds, sur des pieds sains. Laissez le bas des tiges en place.
# doubt: "exploitation" for a farm is an official word; "famille" or "ferme" may be plainer.
plant-field = Plantez le champ
    .short = Seulement en terre humide. Enterrez deux ou trois nœuds. Après deux semaines, remplacez les boutures mortes.
    .text = Plantez seulement dans une terre humide. { $layout ->
        [own] Chaque exploitation plante sur ses propres billons ou buttes.
        [mounds] Mettez { $on_mound } { $on_mound ->
            [one] bouture
           *[other] boutures
         } sur chaque butte, et laissez { MEASURE($between_cm, unit: "centimetre") } entre les buttes.
       *[ridges] Mettez une bouture tous les { MEASURE($along_cm, unit: "centimetre") } sur le billon, et laissez { MEASURE($between_cm, unit: "centimetre") } entre les billons.
     } Enterrez deux ou trois nœuds de chaque bouture. { $kind ->
        [zone] Sur toute la saison de la planche, { $roots } patates donnent { $cuttings } boutures.
       *[other] Il faut { $cuttings } boutures pour le champ.
     } Après deux semaines, remplacez les boutures qui n’ont pas pris.
    .alt = Sous un nuage de pluie, une main plante des boutures en ligne ; leurs nœuds du bas sont dans la terre.
    .show = De la terre humide à la profondeur d’un doigt, et une bouture dont les nœuds du bas sont enterrés.
    .ask = Il a plu une fois : faut-il planter maintenant ? Pourquoi oui, pourquoi non ?
    .sms = Dès le { BRIEF($first) }, quand la terre est humide : plantez { $cuttings_to_plant } boutures. Les dates sont des moyennes : regardez le ciel.
# doubt: "charançons" may be unknown as a word; the phone text says "insectes", also because ç makes it cost double.
first-harvest = Cherchez les premières patates
    .short = Cherchez avec la main de grosses patates. Récoltez tout au plus tard le { DAY($last_harvest) } : les charançons arrivent.
    .text = Tâtez la terre sous quelques pieds pour trouver des patates assez grosses pour être mangées. Ne laissez pas longtemps les patates mûres dans une terre sèche : les charançons les trouvent. Récoltez les dernières au plus tard le { DAY($last_harvest) }.
    .alt = Une main cherche une patate sous un pied ; à côté, une marmite sur le feu.
    .show = Comment chercher une patate avec la main sans arracher le pied.
    .ask = Que deviennent les patates mûres qui restent en terre sèche ?
    .sms = Dès le { BRIEF($first) } : cherchez avec la main des patates assez grosses. Récoltez tout au plus tard le { BRIEF($last_harvest) } : les insectes arrivent.

## Tables: title, what it tells (.text), its picture in words (.alt)

# doubt: "selon les jours de croissance" where cuttings are counted by the days that the bed has grown.
table-cuts = Coupes dans la planche{ $plan_by ->
    [practice] , selon l’usage courant
   *[print] , selon les jours de croissance
 }
    .text = Voici combien de boutures on peut attendre de chaque coupe. Celles des coupes suivantes sont pour le reste du champ et pour remplacer celles qui n’ont pas pris.
table-shares = Ce que chaque exploitation apporte
    .text = Chaque exploitation marque ses propres pieds et apporte ses patates à la réserve commune.
table-fields = Quantités selon la taille du champ
    .text = Cherchez votre champ dans la première colonne. S’il est entre deux lignes, ses quantités sont aussi entre ces deux lignes.
table-planting-later = Si vous attendez pour planter
    .text = Si on plante à la première grosse pluie, on peut perdre les jeunes plants quand une longue période sèche vient après : c’est un faux départ. Si on attend, il reste moins de jours avant la fin des pluies. Le tableau montre les deux dans les années passées ; ce n’est pas une prévision. Dans l’image, les barres rayées sont les années avec un faux départ, les barres noires sont les jours qui restent avant la fin des pluies.
    .alt = Pour chaque jour à partir duquel on plante : une barre rayée pour les années avec un faux départ, et une barre noire pour les jours qui restent avant la fin des pluies. Les chiffres sont dans le tableau au-dessus.
column-when = Quand
column-farm = Exploitation
column-area = Champ, m²
column-cuttings = Boutures
column-cut = Boutures
cut-value = { $low }–{ $high }
column-plants = Pieds à marquer
column-roots = Patates à garder
column-bed = Planche, m²
column-jerrycans = Bidons d’eau par jour
column-from = Première pluie à partir du
column-false-starts = Années avec un faux départ
# doubt: "l’année du milieu" for the median year is hard to grasp; "une année sur deux, au moins" may be plainer.
column-days-left = Jours qui restent avant la fin des pluies, dans l’année du milieu
false-starts-value = { $false_starts } sur { $years }

## Cautions: title, text (.text), picture in words (.alt); text message (.sms) where there is one

caution-rot = Patates pourries, moisies ou percées par les insectes
    .short = Ne les mangez jamais, ne les donnez jamais aux animaux, même la partie qui semble bonne. Enterrez profond ou brûlez.
    .text = Ne les mangez jamais, ne les donnez jamais aux animaux, ne les plantez pas. Ne coupez pas la mauvaise partie pour manger le reste : même la partie qui semble bonne peut vous empoisonner. Enterrez ces patates profondément ou brûlez-les.
    .alt = Une patate pourrie ; en dessous, une vache et une marmite, toutes deux barrées d’une croix.
    .sms = Patates pourries ou moisies : n'en mangez jamais, n'en donnez jamais aux animaux. La partie qui semble bonne est dangereuse aussi. Enterrez profond ou brulez.
caution-virus = Pieds malades
    .short = Feuilles tachées, petites ou tordues : ne prenez rien sur ce pied.
    .text = Des feuilles tachées, petites ou tordues et des tiges restées courtes sont des signes de virus. Ne prenez jamais de patates ni de tiges sur ces pieds.
    .alt = Une main avec un couteau près d’un pied aux feuilles tachées et froissées, le tout barré d’une croix.
caution-cracks = Fentes dans la terre
    .short = Ramenez de la terre sur les fentes : les charançons entrent par là.
    .text = Les charançons arrivent aux patates par les fentes. Dès que vous voyez une fente, ramenez de la terre dessus.
    .alt = Un charançon entre dans une fente du billon ; en dessous, une patate pleine de trous.
caution-heavy-sand = Le sable est lourd
    .short = Portez au plus { MEASURE($load_kg, unit: "kilogram") }. Ne soulevez pas le récipient plein.
    .text = Ne portez pas plus de { MEASURE($load_kg, unit: "kilogram") } à la fois. Remplissez le récipient là où il restera, et ne le soulevez pas quand il est plein.
    .alt = Une personne pliée sous un gros sac, le tout barré d’une croix ; une femme bien droite avec un petit seau, marquée d’une coche.
# doubt: "rivière" also for a seasonal stream, "marigot" in parts of the region; "berge raide" for a steep bank.
caution-riverbed = Sable du lit d’une rivière
    .short = Seulement quand le lit est sec et là où les règles le permettent ; jamais sous une berge raide ni près d’elle.
    .text = Prenez du sable seulement quand le lit de la rivière est sec. Ne creusez jamais sous une berge raide, ni près d’elle : elle peut s’écrouler sur vous et vous enterrer. Prenez du sable seulement là où les règles locales le permettent.
    .alt = La berge raide d’une rivière s’écroule sur une personne qui creuse, le tout barré d’une croix.
caution-water-children = Eau, enfants et animaux
    .short = Éloignez les enfants. Couvrez l’eau ; clôturez puits, trous et planche.
    .text = Ne laissez pas les enfants jouer près de l’eau, des puits ou des trous. Couvrez l’eau que vous gardez, et entourez les puits et les trous d’une clôture. Ne laissez pas les chèvres et les poules entrer dans la planche.
    .alt = Un fût d’eau couvert derrière une clôture ; une femme retient un enfant au-dehors.
caution-store-dry = N’arrosez jamais la réserve
    .short = Pas d’eau dans le sable : les patates pourrissent.
    .text = Le sable doit rester sec du premier jour au dernier. Le sable humide fait germer les patates trop tôt ou les fait pourrir.
    .alt = L’eau d’un bidon tombe sur la bassine de patates, le tout barré d’une croix.
caution-forecast = Les dates sont des moyennes, pas une prévision
    .short = Les pluies peuvent venir plus tôt ou plus tard. Plantez seulement en terre humide.
    .text = Les dates viennent des années passées. Les pluies peuvent venir plus tôt ou plus tard. Regardez le ciel et la terre, et plantez seulement quand la terre est humide.
    .alt = Une femme, des boutures à la main, regarde le soleil, le nuage et la pluie.
caution-try-first = Essayez d’abord avec quelques patates
    .short = C’est nouveau ? Commencez avec quelques patates, et gardez une partie des tiges comme avant.
    .text = Si c’est nouveau pour vous, commencez avec quelques patates, et gardez aussi une partie de vos tiges comme avant.
    .alt = Une femme entre un petit pot avec quelques patates et un pied qui continue de pousser en terre.

## Drawings and formats: titles, what drawings show in words, the names and sizes that stand in them

month-year = { month } { $year }
calendar-title = Le travail, mois par mois
guide-title = Guide pour une réunion
card-fold = Pliez sur les pointillés. Coupez sur le trait épais.
record-title = Vérifications des patates gardées
record-how = À chaque vérification, sortez toutes les patates. Enterrez profondément ou brûlez les pourries. Notez ce que vous trouvez, et montrez cette fiche à votre agent d’agriculture.
record-planned = Prévu le
record-done = Fait le
record-healthy = Remises dans le sable
record-thrown-away = Jetées
record-sprouted = Avec germes
record-remark = Remarque
record-stored = Patates gardées
booklet-index = Exploitations par nom
span-brief = { BRIEF($from) } – { BRIEF($to) }
size-cm = { MEASURE($cm, unit: "centimetre") }
size-m = { MEASURE($m, unit: "metre") }
drawing-season = La saison
drawing-season-alt = Une bande d’une récolte à l’autre : patates dans le sable, puis dans la planche, puis pieds dans le champ, avec les dates.
season-store = Dans le sable
season-bed = Dans la planche
season-field = Dans le champ
season-on-harvest = Récolte
season-on-sprout = Vers la planche
season-on-rains = Pluies
season-on-food = Premières patates
drawing-store = Le récipient, vu en coupe
drawing-store-alt = Le récipient en coupe : couches de patates, avec du sable dessous, entre elles et dessus.
drawing-layers = Chaque couche, vue de dessus
drawing-layers-alt = Les couches vues de dessus : la place de chaque patate ; aucune ne touche une autre ni le bord.
drawing-bed = La planche, vue de dessus
drawing-bed-alt = La planche vue de dessus : les lignes de patates, sa longueur et sa largeur.
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

## Channels: cue sheets for phones and meetings

# doubt: "niveau de la parole" for active speech level, a figure for sound technicians.
cue-active-level = Niveau de la parole
cue-chapter = Chapitre
cue-talk = temps pour parler, { $seconds } s

## The guide for a meeting

guide-show = À montrer
guide-ask = Demandez
