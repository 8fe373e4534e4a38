### No native speaker has read this yet.

not-known-unless-said = Ce qui n'est pas dit n'est pas connu.
none = il n'y en a pas

## Engine and PTOs

engine-runs = { $power } nets à { $rated } ; tourne à { $speed }
pto = Prise de force
mid-pto = Prise de force ventrale
pto-turns = { $gear }, tourne { $direction }

## The machine's own hydraulics

machine-oil = Huile de la machine
    .facts = { $flow } à { $speed }, tarage { $relief }
steering = Direction
    .separate-pump = a sa propre pompe, hors de ce débit
    .load-sensing = ne prend sa part qu'en braquant
    .fixed = prend toujours { $flow } de ce débit
    .summed = ses { $flow } sont comptés dedans, mais n'arrivent jamais à l'outil

## The implement

rotor-facts = fait pour { $rated }, travaille à partir de { $lowest }
need = Le travail demande
motor = Moteur hydraulique
    .facts = { $displacement }, jusqu'à { $flow } et { $pressure }
    .geared = { $displacement }, jusqu'à { $flow } et { $pressure }, 1 à { $ratio } vers le rotor
input-rear = Entrée pour l'arrière
input-front = Entrée pour l'avant
shaft = { $speed }, doit tourner { $direction }
    .rated = { $speed }, doit tourner { $direction }, admet { $power }

## The kit

kit = Kit
kit-box = Boîtier du kit
    .facts = 1 à { $ratio }
kit-pump = Pompe du kit
    .facts = { $displacement } par tour, tarage { $relief }
hoses = Flexibles
    .each-way = { $hose } à l'aller, autant au retour
    .there-and-back = { $there } à l'aller, { $back } au retour
hose = { $length } en { $bore }

## A sheet

sheet-says = la fiche dit : { $figure }
engine-net = { $power } nets
engine-gross = { $power } bruts
