### No native speaker has read this yet.

title = Que faudrait-il ?
wished = Pour atteindre
already = Tel quel, c'est déjà atteint.
apply = Essayer ces réglages
note =
    Aux valeurs probables. Les tailles de boîtiers, pompes, moteurs et flexibles sont les courantes ; ce qu'un
    fabricant propose peut se situer entre deux. Demandez à l'atelier de la machine avant que quiconque monte
    une pression de tarage : pompes, flexibles et distributeurs ont leurs propres limites.

engine-speed = Le moteur à { $speed } suffit, tout le reste inchangé.
settings = Réglages qui suffisent : { $flow } à { $relief }, le moteur à { $speed }.

## The hardware that does it, a line for each part

engine = Moteur : { $power } nets à { $speed }
pto = Prise de force : { $power }, { $torque }
gearbox = Boîtier : 1 à { $ratio }
pump = Pompe : { $figures }
    .relief = tarage à { $pressure }
hoses = Flexibles : { $figures }
    .supply = { $bore } vers le moteur hydraulique
    .back = { $bore } au retour
    .suction = { $bore } à l'aspiration
oil = Huile : { $tank } sont l'usage, un refroidisseur pour { $cooler }
    .uncooled = Huile : { $tank } sont l'usage, sans refroidisseur
shaft = { $stage } pour { $torque }

## What is in the way

no-fit = { $reason } : aucun réglage n'y peut rien.
engine-too-weak = Il faudrait au moteur { $needs } à { $speed } ; il a { $has }.
shaft-too-weak = { $shaft } : il faudrait supporter { $needs }, { $bears } sont admis.
motor-needs = Il faudrait au moteur hydraulique { $needs }, il admet { $highest }.
    .instead = Il faudrait au moteur hydraulique { $needs }, il admet { $highest } ; un moteur de { $size } suffirait.
no-size = Aucune taille courante de boîtier, de pompe ou de flexible ne suffit.
