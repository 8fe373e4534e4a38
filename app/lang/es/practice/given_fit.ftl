### No native speaker has read this yet.

pto-end = { $speed }, { $shaft }, gira { $direction }
input = { $speed }, { $shaft }, debe girar { $direction }

kit-shaft = Eje del kit
    .to-pump = sirve para la TdF: { $pto }
    .to-input = sirve para la TdF: { $pto }; y para la entrada: { $input }
    .reverses = sirve para la TdF: { $pto }; y para la entrada: { $input }; invierte el giro
    .keeps = sirve para la TdF: { $pto }; y para la entrada: { $input }; mantiene el giro

hitch = Enganche
    .facts = máquina: { $machine }; apero: { $implement }
weight = Peso
rear-lifts = El enganche trasero levanta
loader-lifts = La pala cargadora levanta

couplers = Enchufes rápidos
    .facts = máquina: { $machine }; mangueras: { $hoses }
case-drain = Línea de drenaje
    .motor = el motor la necesita: { $answer }
    .hoses = las mangueras la tienen: { $answer }
    .machine = la máquina la tiene: { $answer }
third-function = Tercera función
