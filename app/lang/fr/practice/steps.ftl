### No native speaker has read this yet.

route-brings = { $route } : { $power } arrivent. { $losses }
route-cant = { $route } : non attelable. { $why }
stage = { $stage } : prend { $takes }, perd { $loses }, transmet { $gives } ({ $rate }, { $effort }).
at-the-rotor = Rotor : { $arrives }.

sheet-holds = { $check } : tient. { $finding }
sheet-mind = { $check } : attention. { $finding }
sheet-wrong = { $check } : impossible. { $finding }

looked-at = { $judgement } : { $name }. { $finding }
these-fit = Ceci convient : { $names }.

change-brings = { $change } : { $power } arrivent à { $speed }, { $meaning }.
