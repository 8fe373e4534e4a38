### What a learner is given to see whether something can be hooked up.

# How many splines, as `fit` names them, and the direction that the PTO turns in.
pto-end = { $speed }, { $shaft }, turns { $direction }
input = { $speed }, { $shaft }, must turn { $direction }

kit-shaft = Kit's shaft
    .to-pump = suits a PTO of { $pto }
    .to-input = suits a PTO of { $pto } and an input of { $input }
    .reverses = suits a PTO of { $pto } and an input of { $input }, turns the direction round
    .keeps = suits a PTO of { $pto } and an input of { $input }, keeps the direction

hitch = Hitch
    .facts = machine { $machine }, implement { $implement }
weight = Weight
rear-lifts = Rear hitch lifts
loader-lifts = Loader lifts

couplers = Couplers
    .facts = machine { $machine }, hoses { $hoses }
# Each with "yes", "no" or "not known", in one list.
case-drain = Case drain
    .motor = motor needs one: { $answer }
    .hoses = hoses have one: { $answer }
    .machine = machine has one: { $answer }
third-function = Third function
