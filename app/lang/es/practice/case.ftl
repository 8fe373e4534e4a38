### No native speaker has read this yet.

pair = { $machine } con { $implement }

question-route =
    ¿Qué vía lleva más potencia al rotor? Póngalas en orden y deje aparte lo que no se pueda acoplar.
    .group = ¿Qué vía lleva más potencia al rotor?
question-amount = ¿Cuánta potencia llega al rotor por { $route }?
question-limit = ¿Qué limita lo que llega por { $route }?
question-sheet = ¿Puede ser cierta esta ficha? Y si no, ¿qué está mal?
question-fit = ¿Se puede acoplar por { $route }?
question-wanted = ¿Cuál de estos cambios, por sí solo, lleva { $route } a «{ $standing }» ({ $meaning })?

## What is wrong with a sheet

flaw-none = Nada: puede ser así
flaw-hydraulic-power = La potencia hidráulica no es su caudal por su presión
flaw-engine-power = El motor no puede mover una bomba así
flaw-steering = El caudal de la dirección está incluido
flaw-pto-power = La TdF no puede dar eso con un motor así

## Whether it can be hooked up

fits = Sí, se puede
fits-ask-first = Antes hay que preguntar algo
fits-cant = No, no se puede

## One thing changed

change-flow = Caudal de { $flow }
change-relief = Presión de tarado de { $pressure }
change-engine-speed = Motor a { $speed }
change-hoses = Mangueras de { $bore } de diámetro interior
