### No native speaker has read this yet.

## Judgements

pass = Encaja
advice = Ojo
question = Preguntar
stop = Impide
    .small = algo lo impide

## What was looked at

name-missing = Vía
name-input-speed = Régimen de entrada
name-pto-end = Eje en la TdF
name-far-end = Eje en el apero
name-direction = Sentido de giro
name-shaft-torque = Par en el eje
name-slip-clutch = Limitador de par
name-angle = Ángulo de las juntas del kit
name-lift-angle = Ángulo de las juntas tras el enganche
name-overlap = Longitud del eje cardán
name-guards = Protecciones
name-category = Categoría del enganche
name-lift = Elevación
name-front-hooks = Subchasis delante
name-third-function = Tercera función
name-balance = Lastre
name-axle-load = Carga por eje
name-couplers = Enchufes rápidos
name-motor-flow = Caudal hacia el motor hidráulico
name-motor-pressure = Presión en el motor hidráulico
name-case-drain = Línea de drenaje
name-oil-heat = Calor del aceite

other-kits = Se toma el kit que más entrega. Este otro del patio encaja mejor: { $kits }.
to-stop-for = { $count ->
    [one] { $count } punto que lo impide
   *[other] { $count } puntos que lo impiden
}
to-ask = { $count ->
    [one] { $count } punto por preguntar
   *[other] { $count } puntos por preguntar
}
to-mind = { $count ->
    [one] { $count } punto que tener en cuenta
   *[other] { $count } puntos que tener en cuenta
}
all-fits = todo lo que se sabe encaja

## What was found

input-speed = El eje trae { $brings }, el apero está hecho para { $needs }.
pto-end = TdF: { $pto }; el kit sirve para: { $kit }.
far-end = El kit sirve para: { $kit }; entrada del apero: { $input }.
shaft-type = tipo { $kind } de { $splines } estrías
    .unknown = no se sabe
direction = Vista desde detrás de la máquina, la entrada giraría { $comes }; debe girar { $needs }.
turns-clockwise = a derechas
turns-anticlockwise = a izquierdas
turns-unknown = en un sentido que no se conoce
shaft-torque = Todo el motor metería { $can } en el eje o la caja más débil, que admite { $may }.
    .unknown = Todo el motor metería { $can } en un eje del que no se sabe cuánto admite.
slip-clutch = Patina a { $torque }.
    .unknown = Lo que trabaja este apero puede atascarlo; no se sabe de ningún limitador de par.
angle = Trabajan a { $angle }, por lo que se sabe.
    .unknown = No se sabe cuánto se doblan las juntas del kit.
lift-angle = Bajado para trabajar, las juntas se doblan { $at-work }; en el recorrido del enganche, hasta { $steepest }.
    .unknown = No se sabe cuánto se doblan las juntas tras el enganche.
overlap = Con el eje en su posición más larga, los tubos se solapan { $overlap }; en la más corta quedan { $left } libres.
    .unknown = No se sabe si alcanza en la posición más larga y cabe en la más corta.
guards = En el eje: { $kit }; en el apero: { $implement }.
guards-implement = En el apero: { $implement }.
guards-there = completas
guards-not-all = incompletas
guards-unknown = no se sabe
category = Máquina: { $machine }; apero: { $implement }.
category-named = categoría { $category }
category-unknown = categoría desconocida
lift-loader = Peso del apero: { $load }, con el centro a { $centre }; ahí la pala cargadora levanta: { $lifts }.
    .unknown =
        Peso del apero: { $load }; no se sabe a qué distancia queda su centro, ni por tanto cuánto levanta ahí la
        pala cargadora.
lift-hitch = Peso del apero: { $load }, con el centro a { $centre }; ahí el enganche levanta: { $lifts }.
    .unknown =
        Peso del apero: { $load }; no se sabe a qué distancia queda su centro, ni por tanto cuánto levanta ahí el
        enganche.
load-unknown = desconocido
lifts-unknown = no se sabe
front-hooks = La máquina admite un subchasis delante.
    .unknown = No se sabe si la máquina admite un subchasis delante.
third-function = El aceite llega al extremo de la pala cargadora.
    .none = El aceite no llega al extremo de la pala cargadora.
    .unknown = No se sabe si el aceite llega al extremo de la pala cargadora.
axle-front = el eje delantero
axle-rear = el eje trasero
balance = Sin lastre, en { $axle } queda el { $share } del peso; lo mínimo es el { $least }.
    .lifts-off = Sin lastre, { $axle } se levanta del suelo.
    .unknown = No se sabe cuánto peso queda en { $axle }.
axle-load-front = El eje delantero lleva { $load } con el lastre que hace falta; admite { $limit }.
axle-load-rear = El eje trasero lleva { $load } con el lastre que hace falta; admite { $limit }.
axle-load-unknown = una carga desconocida
couplers = Tamaño en la máquina: { $machine }; en las mangueras: { $hoses }.
    .unknown = desconocido
motor-flow = Llegan { $comes }, el motor hidráulico admite { $most }.
motor-pressure = La válvula limitadora abre a { $relief }, el motor hidráulico admite { $most }.
case-drain-needed = el motor hidráulico necesita una línea sin presión hasta el depósito
case-drain-needed-unknown = no se sabe si el motor hidráulico necesita una línea sin presión hasta el depósito
case-drain-there = la hay
case-drain-missing = no la hay
case-drain-there-unknown = no se sabe si la hay
case-drain-none-needed = El motor hidráulico no la necesita.
oil-heat = En este trabajo el aceite pasa de su límite al cabo de unos { $after }.
    .none = En este trabajo el aceite no llega a su límite.

## What to do

do-missing = Otra vía, otra máquina u otro kit.
do-input-speed = Ponga el motor de modo que la entrada gire a su propio régimen; nunca más rápido.
do-shaft-end = Un eje cardán con la horquilla correcta en este extremo; nada de casquillos que solo salvan la medida.
do-direction = Una caja que invierta el giro, o el apero hecho para este sentido.
do-shaft-torque = Un limitador de par tarado por debajo, y no más régimen del motor que el que pide el trabajo.
do-angle = Solo por un rato; más alineado dura más.
    .stop = Alinee mejor los ejes, o ponga una junta gran angular como diga su fabricante.
do-lift-angle = Pare la TdF antes de levantar; bajado, más nivelado dura más.
    .stop = Trabaje y levante más nivelado, o ponga una junta gran angular como diga su fabricante.
do-overlap =
    Un eje de otra longitud: que en la posición más larga se solape { $overlap } y en la más corta queden
    { $left } libres.
do-guards = No se pone en marcha hasta que estén todas las protecciones.
do-category = Casquillos sobre los bulones del apero.
    .stop = Bulones de la categoría de la máquina, si los tiene el fabricante del apero.
do-lift = Cerca de lo máximo que levanta: mírelo en el manual de la máquina antes de comprar.
    .stop = Un apero más ligero o una máquina más fuerte.
do-third-function = Una tercera función en la pala cargadora, o mangueras llevadas adelante desde atrás.
end-front = la parte delantera
end-rear = la parte trasera
do-balance =
    Ponga unos { $ballast } de lastre en { $end }, calculado en llano y parado; el manual de la máquina tiene la
    última palabra.
    .unknown = Ponga lastre en { $end } como diga el manual de la máquina.
do-axle-load = Un apero más ligero o una máquina más pesada.
do-couplers = Tal como están no conectan: cambie una mitad; la mayor pierde menos.
do-motor-flow = Baje el caudal, o monte un divisor de caudal; de sobra lo hace girar demasiado rápido.
do-motor-pressure = Una válvula limitadora en el motor hidráulico, tarada a su límite.
do-case-drain = Una línea directa al depósito; sin ella se rompe el retén del eje.
do-oil-heat = Un radiador que evacúe { $power }, un depósito mayor, o pausas.

## What to ask

ask-pto-end = ¿Cuántas estrías tiene la TdF, y cuántas la horquilla del kit?
ask-far-end = ¿Cuántas estrías tiene la entrada del apero, y cuántas el eje?
ask-direction = ¿En qué sentido debe girar la entrada? Lo dice la placa o el manual del fabricante.
ask-slip-clutch = ¿Hay un limitador de par o un tornillo fusible, y con qué par cede?
ask-lift-angle = ¿A qué altura están TdF, enganche y entrada, bajado y levantado? Mídalo antes de comprar.
ask-overlap =
    ¿Cuánto hay de junta a junta, bajado y levantado, y cuánto mide el eje recogido del todo y extendido del
    todo?
ask-guards = ¿Están todas las protecciones, en el eje y en los dos extremos?
ask-category = ¿Qué categoría de enganche tienen la máquina y el apero?
ask-lift = ¿Cuánto pesa el apero, a qué distancia queda su centro, y cuánto se levanta ahí?
ask-front-hooks = ¿Hay un subchasis que vaya bajo esta máquina?
ask-third-function = ¿Hay tercera función en el extremo de la pala cargadora?
ask-balance = ¿Cuánto llevan los ejes, y a qué distancia cuelga el apero?
ask-couplers = ¿De qué tamaño son los enchufes rápidos de la máquina y los de las mangueras?
ask-case-drain = ¿Necesita el motor hidráulico una línea de drenaje, y hay una línea sin presión hasta el depósito?
ask-shaft-torque = ¿Cuánto admiten la TdF, el eje cardán y la entrada del apero?
ask-angle = ¿Cuánto se doblan las juntas del kit trabajando?
ask-axle-load = ¿Cuánto admite cada eje, y cuánto lleva con apero y lastre?
ask-maker = Pregunte al fabricante.
