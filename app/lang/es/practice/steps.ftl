### No native speaker has read this yet.

route-brings = { $route }: llegan { $power }. { $losses }
route-cant = { $route }: no se puede acoplar. { $why }
stage = { $stage }: toma { $takes }, pierde { $loses }, entrega { $gives } ({ $rate }, { $effort }).
at-the-rotor = Rotor: { $arrives }.

sheet-holds = { $check }: cuadra. { $finding }
sheet-mind = { $check }: ojo. { $finding }
sheet-wrong = { $check }: imposible. { $finding }

looked-at = { $judgement }: { $name }. { $finding }
these-fit = Esto encaja: { $names }.

change-brings = { $change }: llegan { $power } a { $speed }, { $meaning }.
