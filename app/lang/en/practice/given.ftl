### What a learner is given to answer by: names of facts, and what is known of them.

not-known-unless-said = What isn't said isn't known.
# In place of what a machine or an implement doesn't have.
none = none

## Engine and PTOs

engine-runs = { $power } net at { $rated }; runs at { $speed }
pto = PTO
mid-pto = Mid PTO
# A gear, and the direction that the PTO turns in: "540 rpm with the engine at 2,200 rpm, turns clockwise".
pto-turns = { $gear }, turns { $direction }

## The machine's own hydraulics

machine-oil = Machine's oil
    .facts = { $flow } at { $speed }, relief { $relief }
steering = Steering
    .separate-pump = a pump of its own, not in that flow
    .load-sensing = takes its share only while steering
    .fixed = takes { $flow } of that, always
    .summed = its { $flow } are counted in, and never reach it

## The implement

rotor-facts = built for { $rated }, works from { $lowest } on
need = The job needs
motor = Motor
    .facts = { $displacement }, up to { $flow } and { $pressure }
    .geared = { $displacement }, up to { $flow } and { $pressure }, 1 to { $ratio } to the rotor
input-rear = Input for the rear
input-front = Input for the front
shaft = { $speed }, must turn { $direction }
    .rated = { $speed }, must turn { $direction }, may take { $power }

## The kit

kit = Kit
kit-box = Kit's box
    .facts = 1 to { $ratio }
kit-pump = Kit's pump
    .facts = { $displacement } each turn, relief { $relief }
hoses = Hoses
    .each-way = { $hose } each way
    .there-and-back = { $there } there, { $back } back
# A hose by its length and its bore.
hose = { $length } of { $bore }

## A sheet

sheet-says = sheet says { $figure }
engine-net = { $power } net
engine-gross = { $power } gross
