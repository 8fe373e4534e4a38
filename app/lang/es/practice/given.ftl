### No native speaker has read this yet.

not-known-unless-said = Lo que no se dice no se sabe.
none = no hay

## Engine and PTOs

engine-runs = { $power } netos a { $rated }; ahora gira a { $speed }
pto = TdF
mid-pto = TdF ventral
pto-turns = { $gear }, gira { $direction }

## The machine's own hydraulics

machine-oil = Aceite de la máquina
    .facts = { $flow } a { $speed }, presión de tarado { $relief }
steering = Dirección
    .separate-pump = tiene su propia bomba, fuera de ese caudal
    .load-sensing = toma su parte solo al girar
    .fixed = toma siempre { $flow } de ese caudal
    .summed = sus { $flow } están incluidos, pero nunca llegan al apero

## The implement

rotor-facts = hecho para { $rated }, trabaja desde { $lowest }
need = El trabajo pide
motor = Motor hidráulico
    .facts = { $displacement }, hasta { $flow } y { $pressure }
    .geared = { $displacement }, hasta { $flow } y { $pressure }, 1 a { $ratio } hasta el rotor
input-rear = Entrada para atrás
input-front = Entrada para delante
shaft = { $speed }, debe girar { $direction }
    .rated = { $speed }, debe girar { $direction }, admite { $power }

## The kit

kit = Kit
kit-box = Caja del kit
    .facts = 1 a { $ratio }
kit-pump = Bomba del kit
    .facts = { $displacement } por vuelta, presión de tarado { $relief }
hoses = Mangueras
    .each-way = { $hose } de ida y otro tanto de vuelta
    .there-and-back = { $there } de ida, { $back } de vuelta
hose = { $length } de { $bore }

## A sheet

sheet-says = la ficha dice: { $figure }
engine-net = { $power } netos
engine-gross = { $power } brutos
