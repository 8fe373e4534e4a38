### No native speaker has read this yet.

## Judgements

pass = Convient
advice = Attention
question = À demander
stop = Bloque
    .small = quelque chose bloque

## What was looked at

name-missing = Voie
name-input-speed = Régime d'entrée
name-pto-end = Arbre côté prise de force
name-far-end = Arbre côté outil
name-direction = Sens de rotation
name-shaft-torque = Couple dans l'arbre
name-slip-clutch = Limiteur de couple
name-angle = Angle des joints du kit
name-lift-angle = Angle des joints derrière l'attelage
name-overlap = Longueur de l'arbre à cardans
name-guards = Protecteurs
name-category = Catégorie d'attelage
name-lift = Relevage
name-front-hooks = Faux châssis à l'avant
name-third-function = Troisième fonction
name-balance = Lest
name-axle-load = Charge par essieu
name-couplers = Coupleurs
name-motor-flow = Débit vers le moteur hydraulique
name-motor-pressure = Pression au moteur hydraulique
name-case-drain = Retour de drain
name-oil-heat = Chaleur de l'huile

other-kits = C'est le kit qui apporte le plus qui est retenu. Cet autre du parc convient mieux : { $kits }.
to-stop-for = { $count ->
    [one] { $count } point qui bloque
   *[other] { $count } points qui bloquent
}
to-ask = { $count ->
    [one] { $count } point à demander
   *[other] { $count } points à demander
}
to-mind = { $count ->
    [one] { $count } point à surveiller
   *[other] { $count } points à surveiller
}
all-fits = tout ce qui est connu convient

## What was found

input-speed = L'arbre apporte { $brings }, l'outil est fait pour { $needs }.
pto-end = Prise de force : { $pto } ; le kit convient pour : { $kit }.
far-end = Le kit convient pour : { $kit } ; entrée de l'outil : { $input }.
shaft-type = type { $kind } à { $splines } cannelures
    .unknown = inconnu
direction = Vue de l'arrière de la machine, l'entrée tournerait { $comes } ; elle doit tourner { $needs }.
turns-clockwise = dans le sens horaire
turns-anticlockwise = dans le sens antihoraire
turns-unknown = dans un sens inconnu
shaft-torque = Tout le moteur mettrait { $can } dans l'arbre ou le boîtier le plus faible, qui admet { $may }.
    .unknown = Tout le moteur mettrait { $can } dans un arbre dont on ne sait pas ce qu'il admet.
slip-clutch = Il patine à { $torque }.
    .unknown = Ce que travaille cet outil peut le bloquer ; aucun limiteur de couple n'est connu.
angle = Ils travaillent à { $angle }, d'après ce qui est connu.
    .unknown = On ne sait pas de combien plient les joints du kit.
lift-angle = Baissé pour le travail, les joints plient de { $at-work } ; sur la course de l'attelage, jusqu'à { $steepest }.
    .unknown = On ne sait pas de combien plient les joints derrière l'attelage.
overlap = Au plus long, ses tubes se recouvrent sur { $overlap } ; au plus court, il reste { $left }.
    .unknown = On ne sait pas s'il est assez long et assez court.
guards = Sur l'arbre : { $kit } ; sur l'outil : { $implement }.
guards-implement = Sur l'outil : { $implement }.
guards-there = complets
guards-not-all = incomplets
guards-unknown = on ne sait pas
category = Machine : { $machine } ; outil : { $implement }.
category-named = catégorie { $category }
category-unknown = catégorie inconnue
lift-loader = Poids de l'outil : { $load }, centre à { $centre } ; là, le chargeur lève : { $lifts }.
    .unknown =
        Poids de l'outil : { $load } ; on ne sait pas à quelle distance est son centre, ni donc ce que le chargeur
        lève là.
lift-hitch = Poids de l'outil : { $load }, centre à { $centre } ; là, l'attelage lève : { $lifts }.
    .unknown =
        Poids de l'outil : { $load } ; on ne sait pas à quelle distance est son centre, ni donc ce que l'attelage
        lève là.
load-unknown = inconnu
lifts-unknown = on ne sait pas
front-hooks = La machine accepte un faux châssis à l'avant.
    .unknown = On ne sait pas si la machine accepte un faux châssis à l'avant.
third-function = L'huile arrive au bout du chargeur.
    .none = L'huile n'arrive pas au bout du chargeur.
    .unknown = On ne sait pas si l'huile arrive au bout du chargeur.
axle-front = l'essieu avant
axle-rear = l'essieu arrière
balance = Sans lest, il reste { $share } du poids sur { $axle } ; le minimum est { $least }.
    .lifts-off = Sans lest, { $axle } décolle du sol.
    .unknown = On ne sait pas ce qui reste sur { $axle }.
axle-load-front = L'essieu avant porte { $load } avec le lest qu'il faut ; il admet { $limit }.
axle-load-rear = L'essieu arrière porte { $load } avec le lest qu'il faut ; il admet { $limit }.
axle-load-unknown = une charge inconnue
couplers = Taille sur la machine : { $machine } ; sur les flexibles : { $hoses }.
    .unknown = inconnue
motor-flow = { $comes } arrivent, le moteur hydraulique admet { $most }.
motor-pressure = Le limiteur de pression s'ouvre à { $relief }, le moteur hydraulique admet { $most }.
case-drain-needed = le moteur hydraulique demande un retour sans pression au réservoir
case-drain-needed-unknown = on ne sait pas si le moteur hydraulique demande un retour sans pression au réservoir
case-drain-there = il y en a un
case-drain-missing = il n'y en a pas
case-drain-there-unknown = on ne sait pas s'il y en a un
case-drain-none-needed = Le moteur hydraulique n'en demande pas.
oil-heat = À ce travail, l'huile dépasse sa limite après environ { $after }.
    .none = À ce travail, l'huile reste sous sa limite.

## What to do

do-missing = Une autre voie, une autre machine ou un autre kit.
do-input-speed = Réglez le moteur pour que l'entrée tourne à son propre régime ; jamais plus vite.
do-shaft-end = Un arbre à cardans avec la bonne mâchoire de ce côté ; pas de manchon qui ne fait qu'adapter la taille.
do-direction = Un boîtier qui inverse le sens, ou l'outil fait pour ce sens.
do-shaft-torque = Un limiteur de couple réglé plus bas, et pas plus de régime moteur que n'en demande le travail.
do-angle = Pour un moment seulement ; mieux aligné, cela dure plus longtemps.
    .stop = Alignez mieux les arbres, ou prenez un joint grand angle comme le dit son fabricant.
do-lift-angle = Arrêtez la prise de force avant de relever ; baissé, plus près de l'horizontale, cela dure plus longtemps.
    .stop = Travaillez et relevez plus près de l'horizontale, ou prenez un joint grand angle comme le dit son fabricant.
do-overlap = Un arbre d'une autre longueur : { $overlap } de recouvrement au plus long, { $left } de reste au plus court.
do-guards = À ne pas mettre en marche tant qu'il manque un protecteur.
do-category = Des bagues sur les broches de l'outil.
    .stop = Des broches de la catégorie de la machine, si le fabricant de l'outil en a.
do-lift = Proche de ce qui peut être levé : voyez le manuel de la machine avant d'acheter.
    .stop = Un outil plus léger ou une machine plus forte.
do-third-function = Une troisième fonction sur le chargeur, ou des flexibles ramenés de l'arrière vers l'avant.
end-front = l'avant
end-rear = l'arrière
do-balance =
    Lestez { $end } d'environ { $ballast }, calculé à plat et à l'arrêt ; le manuel de la machine a le dernier
    mot.
    .unknown = Lestez { $end } comme le dit le manuel de la machine.
do-axle-load = Un outil plus léger ou une machine plus lourde.
do-couplers = Tels quels, ils ne se branchent pas : changez une moitié ; la plus grande perd moins.
do-motor-flow = Baissez le débit, ou montez un diviseur de débit ; trop d'huile le fait tourner trop vite.
do-motor-pressure = Un limiteur de pression au moteur hydraulique, réglé à sa limite.
do-case-drain = Une conduite directe au réservoir ; sans elle, le joint de l'arbre lâche.
do-oil-heat = Un refroidisseur qui évacue { $power }, un plus grand réservoir, ou des pauses.

## What to ask

ask-pto-end = Combien de cannelures a la prise de force, et combien la mâchoire du kit ?
ask-far-end = Combien de cannelures a l'entrée de l'outil, et combien l'arbre ?
ask-direction = Dans quel sens l'entrée doit-elle tourner ? La plaque ou le manuel du fabricant le dit.
ask-slip-clutch = Y a-t-il un limiteur de couple ou un boulon de cisaillement, et à quel couple cède-t-il ?
ask-lift-angle = À quelle hauteur sont prise de force, attelage et entrée, baissé et relevé ? Mesurez avant d'acheter.
ask-overlap =
    Combien y a-t-il de joint à joint, baissé et relevé, et combien mesure l'arbre tout rentré et tout sorti ?
ask-guards = Tous les protecteurs sont-ils là, sur l'arbre et aux deux bouts ?
ask-category = Quelle catégorie d'attelage ont la machine et l'outil ?
ask-lift = Combien pèse l'outil, à quelle distance est son centre, et que lève-t-on là ?
ask-front-hooks = Y a-t-il un faux châssis qui va sous cette machine ?
ask-third-function = Y a-t-il une troisième fonction au bout du chargeur ?
ask-balance = Que portent les essieux, et à quelle distance pend l'outil ?
ask-couplers = De quelle taille sont les coupleurs de la machine et ceux des flexibles ?
ask-case-drain = Le moteur hydraulique demande-t-il un retour de drain, et y a-t-il un retour sans pression au réservoir ?
ask-shaft-torque = Qu'admettent la prise de force, l'arbre à cardans et l'entrée de l'outil ?
ask-angle = De combien plient les joints du kit au travail ?
ask-axle-load = Que peut porter chaque essieu, et que porte-t-il avec outil et lest ?
ask-maker = Demandez au fabricant.
