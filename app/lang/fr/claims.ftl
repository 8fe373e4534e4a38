### No native speaker has read this yet.

title = La fiche est-elle honnête ?
lead = Saisissez ce qu'une fiche ou une annonce dit de cette machine. Laissez vide ce qu'elle ne dit pas.
taken-heading = Débit et pression relevés
rating-heading = La puissance du moteur est
not-said = Non précisé
take-over = Comparer avec les chiffres honnêtes
clear = Vider la fiche
ask-heading = À demander
taken-over = C'est fait : les barres ci-dessus montrent maintenant les chiffres honnêtes.
not-taken-over = Rien n'a été repris : la fiche en dit trop peu, ou cette machine ne peut pas tourner avec ses chiffres.
nothing = Rien n'a encore été saisi.
allowed = un nombre au-dessus de zéro, d'une taille propre à ces machines.

## Figures of a sheet. `.small` is the name within a list

figure-flow = Débit hydraulique
    .small = débit hydraulique
figure-pressure = Pression hydraulique
    .small = pression hydraulique
figure-hydraulic = Puissance hydraulique
    .small = puissance hydraulique
figure-taken = Où débit et pression ont été relevés
    .small = où débit et pression ont été relevés
figure-engine-speed = À un régime du moteur de
    .small = à quel régime du moteur
figure-engine = Puissance du moteur
    .small = puissance du moteur
figure-rating = Si la puissance du moteur est nette ou brute
    .small = si la puissance du moteur est nette ou brute
figure-pto = Puissance à la prise de force
    .small = puissance à la prise de force
at-pump = À la pompe
at-couplers = Aux coupleurs
net = Nette
gross = Brute

## What is held against what

check-hydraulic-power = Débit, pression et puissance
    .small = débit, pression et puissance
check-engine-power = Débit et pression face au moteur
    .small = débit et pression face au moteur
check-steering = Débit de la direction
    .small = débit de la direction
check-working-speed = Débit au régime de travail
    .small = débit au régime de travail
check-couplers = Pression aux coupleurs
    .small = pression aux coupleurs
check-relief = Pression de tarage
    .small = pression de tarage
check-engine-rating = Puissance du moteur
    .small = puissance du moteur
check-pto-power = Puissance à la prise de force
    .small = puissance à la prise de force

## What it means for the sheet

holds = Tient
advice = Attention
restated = Signifie
wrong = Impossible

## Findings

hydraulic-too-much =
    { $flow } fois { $pressure } font { $power }, pas les { $claimed } que dit la fiche : { $apart } de trop.
hydraulic-less =
    { $flow } fois { $pressure } font { $power } ; la fiche ne dit que { $claimed }, { $apart } de moins : demandez à
    quel débit et à quelle pression.
hydraulic-holds = { $flow } fois { $pressure } font { $power }, comme le dit la fiche.
engine-cant =
    Pour { $flow } à { $pressure }, la pompe prend { $needs } au moteur ; à { $speed } le moteur a { $net } nets : il ne
    peut pas entraîner cette pompe à cette pression.
engine-at-best =
    Pour { $flow } à { $pressure }, la pompe prend { $needs } au moteur ; à { $speed } le moteur a { $net } nets :
    seulement si tout est au mieux.
engine-can =
    Pour { $flow } à { $pressure }, la pompe prend { $needs } au moteur ; à { $speed } le moteur a { $net } nets : il
    le peut.
steering-apart = Les { $claimed } sont pour l'outil ; les { $steering } de la direction n'y sont pas compris.
steering-of-pump =
    Des { $pump-gives } que donne la pompe, la direction prend { $steering } : il reste { $left } pour l'outil.
steering-within = Les { $claimed } comprennent { $steering } pour la direction : il reste { $left } pour l'outil.
working-slower = { $flow } valent pour { $speed } ; au régime de travail de { $working }, cela fait { $left }.
working-same = { $flow } valent pour { $speed }, qui est le régime de travail.
couplers =
    À { $flow }, le distributeur ouvert prend { $valve } et deux coupleurs { $couplers } : { $at-pump } à la pompe
    font { $at-couplers } aux coupleurs.
relief-closed =
    Le limiteur de pression est taré à { $relief } et commence à s'ouvrir à { $opens } ; à { $pressure }, tout le débit
    est là.
relief-open =
    Le limiteur de pression est taré à { $relief } et commence à s'ouvrir à { $opens } : à { $pressure }, une partie du
    débit s'échappe par lui. Plein débit et pleine pression ne vont pas ensemble.
rating-net = { $claimed } de puissance nette ; le parc donne { $known }.
rating-gross =
    { $claimed } est une puissance brute, sans ventilateur, filtre et autres : environ { $net } nets ; le parc donne
    { $known }.
pto-too-much = De { $net } nets, environ { $gives } arrivent à la prise de force, pas { $claimed }.
pto-at-best = De { $net } nets, environ { $gives } arrivent à la prise de force ; { $claimed } est à l'extrême haut.
pto-holds = De { $net } nets, environ { $gives } arrivent à la prise de force ; la fiche dit { $claimed }.
pto-above-engine =
    { $claimed } à la prise de force dépassent les { $engine } du moteur : aucune transmission ne donne plus que son
    moteur.
