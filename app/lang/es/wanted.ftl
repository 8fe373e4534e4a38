### No native speaker has read this yet.

title = ¿Qué haría falta?
wished = Para llegar a
already = Tal como está, ya llega.
apply = Probar estos ajustes
note =
    Con los valores probables. Los tamaños de cajas, bombas, motores y mangueras son los corrientes; lo que
    ofrece un fabricante puede quedar en medio. Pregunte al taller de la máquina antes de que nadie suba una
    presión de tarado: bombas, mangueras y válvulas tienen sus propios límites.

engine-speed = Basta con el motor a { $speed }, con todo lo demás como está.
settings = Ajustes que bastan: { $flow } a { $relief }, con el motor a { $speed }.

## The hardware that does it, a line for each part

engine = Motor: { $power } netos a { $speed }
pto = TdF: { $power }, { $torque }
gearbox = Caja: de 1 a { $ratio }
pump = Bomba: { $figures }
    .relief = tarado a { $pressure }
hoses = Mangueras: { $figures }
    .supply = { $bore } hacia el motor hidráulico
    .back = { $bore } de retorno
    .suction = { $bore } de aspiración
oil = Aceite: lo habitual son { $tank }, con un radiador para { $cooler }
    .uncooled = Aceite: lo habitual son { $tank }, sin radiador
shaft = { $stage } para { $torque }

## What is in the way

no-fit = { $reason }: ningún ajuste lo arregla.
engine-too-weak = El motor necesitaría { $needs } a { $speed }; tiene { $has }.
shaft-too-weak = { $shaft }: tendría que aguantar { $needs }, admite { $bears }.
motor-needs = El motor hidráulico necesitaría { $needs }, admite { $highest }.
    .instead = El motor hidráulico necesitaría { $needs }, admite { $highest }; uno de { $size } serviría.
no-size = Ningún tamaño corriente de caja, bomba o manguera basta.
