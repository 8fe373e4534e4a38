### No native speaker has read this yet.

not-a-skid-steer = cette machine n'est pas une chargeuse compacte
a-skid-steer = les circuits d'une chargeuse compacte ont leur propre voie
no-rear-pto = la machine n'a pas de prise de force arrière
no-mid-pto = la machine n'a pas de prise de force ventrale
no-outlet = la machine n'a pas de sortie d'huile pour un outil
no-rear-shaft = l'outil n'existe pas avec un arbre pour l'attelage arrière
no-front-shaft = l'outil n'existe pas avec un arbre pour l'avant
no-motor = l'outil n'existe pas avec un moteur hydraulique
no-kit = ce parc n'a pas de kit pour cela
kit-for-other-pto = le kit est fait pour { $needs }, la prise de force tourne à { $brings }
pump-would-be-too-fast = la pompe tournerait à { $brings }, elle est faite pour { $highest } au plus
wrong-speed = l'arbre apporte { $brings }, l'outil demande { $needs }

no-flow-left = Les fuites, et la direction si elle prend ici son huile, emportent tout ce que la pompe donne : il ne reste rien pour faire tourner le rotor.
no-pressure-left = Pompe, flexibles, coupleurs et moteur hydraulique consomment tout ce que permettent le moteur et le limiteur de pression à ce débit : le rotor reste immobile.
rotor-too-slow = Le rotor atteint { $speed } et demande au moins { $lowest } pour bien travailler, quelle que soit sa puissance : au mieux « À la peine ».
rotor-too-fast = Le rotor tournerait à { $speed }, plus vite que les { $highest } permis : baissez le régime du moteur.
far-from-rated = Cette étape ({ $stage }) transmet moins de la moitié de ce qu'elle prend : elle travaille loin de ce pour quoi elle est faite, et les chiffres sont approximatifs.
oil-out-of-range =
    L'huile est à { $viscosity } ; pompes et moteurs sont faits pour { $thinnest } à { $thickest }. Ici, les
    chiffres sont approximatifs ; le manuel de la machine dit comment la réchauffer.
pump-too-fast = La pompe du groupe tourne à { $speed }, plus vite que les { $highest } permis : baissez le régime du moteur.
line-too-narrow = L'huile passe à { $velocity } dans { $line } ; jusqu'à { $usual } y est l'usage : un diamètre plus large perd moins.
suction-too-low =
    L'entrée de la pompe reçoit { $inlet } absolus et demande { $lowest } : elle aspire des bulles et s'use. Une
    conduite d'aspiration plus large ou plus courte, ou une pompe sous le niveau de son huile.
joint-angle = Chaque joint plie de { $angle }° : { $advice }.
wont-start =
    Arrêté à pleine charge, il ne repart pas : le moteur hydraulique démarre avec { $starts } au rotor, le travail
    demande { $needs }. Reculez et dégagez-le, moteur de la machine arrêté.
flow-diverted = { $comes } arrivent, le moteur hydraulique peut prendre { $used } : le reste retourne au réservoir et chauffe l'huile.
