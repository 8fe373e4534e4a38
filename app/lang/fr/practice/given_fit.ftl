### No native speaker has read this yet.

pto-end = { $speed }, { $shaft }, tourne { $direction }
input = { $speed }, { $shaft }, doit tourner { $direction }

kit-shaft = Arbre du kit
    .to-pump = convient à la prise de force : { $pto }
    .to-input = convient à la prise de force : { $pto } ; et à l'entrée : { $input }
    .reverses = convient à la prise de force : { $pto } ; et à l'entrée : { $input } ; inverse le sens
    .keeps = convient à la prise de force : { $pto } ; et à l'entrée : { $input } ; garde le sens

hitch = Attelage
    .facts = machine : { $machine } ; outil : { $implement }
weight = Poids
rear-lifts = L'attelage arrière lève
loader-lifts = Le chargeur lève

couplers = Coupleurs
    .facts = machine : { $machine } ; flexibles : { $hoses }
case-drain = Retour de drain
    .motor = le moteur en demande un : { $answer }
    .hoses = les flexibles en ont un : { $answer }
    .machine = la machine en a un : { $answer }
third-function = Troisième fonction
