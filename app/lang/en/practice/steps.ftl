### An answer step by step, a line each.

# Losses are a sentence: "Lost in: …".
route-brings = { $route }: { $power } arrive. { $losses }
route-cant = { $route } can't be hooked up. { $why }
# What a stage takes, loses and passes on; a rate is a flow or a speed, an effort a pressure or a torque.
stage = { $stage }: takes { $takes }, loses { $loses }, passes on { $gives } ({ $rate }, { $effort }).
at-the-rotor = Rotor: { $arrives }.

# What was held against what, how it stands with it, and the arithmetic as a sentence.
sheet-holds = { $check }: holds. { $finding }
sheet-mind = { $check }: mind. { $finding }
sheet-wrong = { $check }: can't be. { $finding }

# A judgement, what was looked at, and what was found as a sentence.
looked-at = { $judgement }: { $name }. { $finding }
these-fit = These fit: { $names }.

change-brings = { $change }: { $power } arrive at { $speed }, { $meaning }.
