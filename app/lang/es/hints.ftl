### No native speaker has read this yet.

## What a yard file holds

version = Ponga 2 en un archivo nuevo; se pueden leer 1 y 2.
name = El nombre que ven los clientes.
id = Una palabra corta de minúsculas, cifras y guiones, única en su lista.
place = Dónde está el patio.
invented = Sí, si las máquinas son inventadas.
dealer = Quién entrega sus hojas.
note = Una línea propia del concesionario en esas hojas.
currency = Su código ISO 4217, como EUR o USD.
hour-price = Precio de una hora de trabajo.
machines = Al menos una máquina.
implements = Al menos un apero.
kits = Puede estar vacío: [].
kind = Qué es.
yard-price = En la moneda del patio.
where-none = Omítalo si no hay.
where-unknown = Omítalo si no se sabe nada.

## A machine and its engine

engine = Su motor.
net-power = Potencia neta al régimen nominal; 1 hp mecánico son 0,7457 kW. La bruta es mayor.
gross-power = Potencia bruta al régimen nominal, solo si no se conoce la neta.
engine-rated = El régimen al que se da esa potencia.
engine-lowest = El régimen más bajo al que puede trabajar con carga.
curve = Potencia según el régimen, del más bajo al nominal; se usa su forma.
curve-speed = Cada uno más rápido que el anterior.
curve-power = Potencia a ese régimen.
aspiration = Cómo toma el motor el aire; si falta, es atmosférico: natural.
economy-pto = La toma de fuerza trasera en su marcha económica: el mismo régimen con el motor más lento.
pto-speed = El régimen nominal del eje: casi siempre 540, 1000 o 2000.
pto-engine-speed = El régimen del motor con el que el eje gira a su régimen nominal.
pto-tested = Potencia medida en el eje, según un informe de ensayo.
pto-rating = Lo máximo para lo que está hecho el eje a su régimen nominal.
pto-end = Donde encaja el eje cardán.
circuits = Una entrada por cada salida que pueda usar un apero.
machine-mass = Lista para trabajar, sin apero; si falta, no se cuenta el avance.
transmission = Lo que mueve las ruedas; si falta, mecánica en un tractor e hidrostática en una minicargadora.
hitch = Lo que se sabe del enganche trasero.
loader = Lo que se sabe de la pala cargadora o de los brazos.
axles = Para el peso y el lastre.

## Oil, and what pumps it

oil = Si falta, es ISO VG 46.
grade = Omítalo si se dan las viscosidades.
viscosity-at-40 = Viscosidad a 40 °C, según la ficha del aceite.
viscosity-at-100 = Viscosidad a 100 °C, según la ficha del aceite.
oil-density = Densidad a 15 °C; si falta, es 870 kg/m³.
oil-volume = El aceite del depósito.
cooler = Lo que disipa un radiador por cada kelvin que el aceite está más caliente que el aire.
outlet = Donde se enchufan las mangueras.
sheet-flow = El caudal de la ficha; 1 gpm de EE. UU. son 3,785 L/min.
flow-speed = El régimen del motor al que se da ese caudal.
relief = Presión a la que abre la válvula limitadora; 1 bar son 14,5 psi.
steering = Qué toma la dirección, y de dónde.
steering-policy = Pregunte en el taller cuál es: de ello depende el caudal en las salidas.
steering-flow = Hace falta con fixed_priority y summed: el caudal de la dirección.
supply = Cómo responde la bomba; si falta, es una bomba fija: open_centre.
valve = Lo que se lleva la válvula abierta al caudal nominal de la bomba, o el margen de la sensibilidad a la carga.
volumetric = Caudal entre caudal, como parte de uno: 0,95 para el 95 %.
hydro-mechanical = Par entre par, como parte de uno: 0,94 para el 94 %.
coupler-size = El tamaño de los enchufes rápidos: 12,5 mm en casi todos los tractores.
case-drain = Si hay una tercera línea, sin presión, de vuelta al depósito.

## How things are hooked up

hitch-category = Lo dicen sus bulones: 22 mm es 1, 28 mm es 2.
hitch-lift = De la ficha de la máquina.
hitch-lift-at = A qué distancia por detrás de las rótulas vale la elevación de la ficha: 0 o 0,61 m (24 in).
hitch-lowest = Altura de las rótulas bajadas para trabajar.
hitch-highest = Su altura levantadas.
loader-lift = En los bulones y a toda la altura; en una minicargadora, su carga nominal de trabajo.
loader-reach = De la articulación de los brazos a los bulones.
third-function = Si llegan mangueras para el aceite de un apero al extremo de la pala cargadora.
wheelbase = Del eje delantero al trasero.
front-weight = En el eje delantero, sin apero ni lastre: de la ficha o de una báscula.
front-limit = Lo máximo que puede llevar el eje delantero.
rear-limit = Lo máximo que puede llevar el eje trasero.
loader-ahead = Del eje delantero a los bulones de la pala cargadora, con los brazos abajo.
frame-ahead = Del eje delantero a los ganchos de un subchasis delantero.
hitch-behind = Del eje trasero a las rótulas del enganche.
shaft-type = 6 estrías es 1, 21 es 2, 20 es 3, 22 es 4.
turns = Visto desde detrás de la máquina, mirando hacia delante.
pto-height = Su altura sobre el suelo.
pto-ahead = Cuánto antes de las rótulas del enganche termina.
input-turns = Hacia dónde debe girar, visto desde detrás de la máquina.
input-behind = Cuánto después de los bulones del enganche termina.
input-above = Cuánto queda por encima de los bulones inferiores; negativo, por debajo.
mount-category = La categoría de enganche de sus bulones.
mount-centre = A qué distancia está su centro de masas de los bulones o ganchos que lo llevan.
mount-backwards = Si, en el enganche trasero, trabaja con la máquina marcha atrás.
mount-guarded = Si tiene puestas todas sus protecciones.
kit-pto-end = El tipo de toma de fuerza para el que sirve.
kit-far-end = El tipo de entrada para el que sirve.
kit-closed = Su longitud recogido, de junta a junta.
kit-open = Su longitud cuando se separan los tubos, de junta a junta.
kit-reverses = Si todo lo que trae el kit invierte en conjunto el sentido de giro.
kit-guarded = Si tiene puestas sus protecciones.

## An implement and its work

implement-kind = Qué hace.
rotor = Lo que gira.
need = Potencia en el rotor para el trabajo, no el tamaño de máquina que pide una ficha.
rotor-rated = El régimen para el que está hecho el rotor.
rotor-lowest = Por debajo ya no trabaja bien.
rotor-highest = Nunca debe girar más rápido.
rotor-diameter = Medido en las puntas, para saber su velocidad.
shafts = Una entrada por cada accionamiento por cardán con el que se ofrece.
motor = Omítalo si no se ofrece con motor.
work = Lo que pide su trabajo; si falta, no se puede dar el tiempo de un trabajo.
travel = Omítalo si trabaja parado.
implement-mass = Lo que lleva con él la máquina.
mount = Cómo va colgado de su máquina.
shaft-place = El extremo de la máquina para el que sirve.
shaft-speed = El régimen de la entrada cuando el rotor va a su régimen nominal.
shaft-drive = Los pasos hasta el rotor, en orden, como ["bevel"].
shaft-rating = Lo máximo que admite la entrada del apero.
shaft-price = Precio del apero con este eje.
displacement = Por vuelta; 1 in³ son 16,387 cm³.
motor-ratio = Régimen del rotor entre el del motor: 1 si el motor mueve el rotor directamente.
motor-flow = De la ficha del motor.
motor-pressure = Máxima diferencia de presión en continuo, de la ficha del motor.
motor-starting = Par con el que arranca, como parte del par sin pérdidas: 0,8 para el 80 %.
motor-case-drain = Si necesita una tercera línea, sin presión, de vuelta al depósito.
motor-price = Precio del apero con este motor.
measure = Masa para lo que se lanza o se astilla, superficie para lo que se siega o se barre, volumen para la tierra.
idle = Potencia en el rotor cuando gira a su régimen nominal sin hacer nada.
energy = Energía en el rotor por cada tonelada, 1000 m², m³ o km.
width = Ancho de trabajo.
depth = Profundidad habitual de nieve, vegetación o labor.
material-density = Densidad habitual: la nieve asentada, unos 200 kg/m³.
usual-speed = La velocidad habitual trabajando.
highest-speed = La velocidad más alta a la que aún se trabaja bien.
ground = Por dónde se circula.
pushing = La resistencia que opone el trabajo.

## A kit

gear-ratio = Régimen de salida entre el de entrada: por encima de 1 acelera.
gear-efficiency = Como parte de uno: 0,96 para el 96 %.
gear-rating = El par máximo en su eje de salida.
slip-clutch = Par al que patina su limitador de par.
joint-angle = Ángulo de cada junta de un eje cardán trabajando.
pump-highest = De la ficha de la bomba.
suction-bore = Diámetro interior de la línea de aspiración.
suction-length = Longitud de la línea de aspiración.
suction-lift = Cuánto queda la bomba por encima del aceite; negativo, por debajo.
hose-bore = Diámetro interior de la manguera.
hose-length = Solo la ida.
hose-back-bore = Diámetro interior de la manguera de retorno, si es otro.
couplers = Todos por los que pasa el aceite, ida y vuelta.
coupler-drop = Lo que se lleva un enchufe rápido a su caudal nominal.
coupler-flow = Ese caudal nominal.
fittings = Suma de los coeficientes de pérdida K de codos y adaptadores, solo la ida: un codo cerrado es más o menos 1.
routes = Las vías para las que sirve.
kit-pto-speed = El régimen de toma de fuerza para el que está hecho; omítalo si son mangueras o vale cualquiera.
kit-drive = Los pasos mecánicos desde la toma de fuerza, en orden.
pump = Solo para un grupo hidráulico.
hoses = Para toda vía con aceite.
kit-shaft = Su eje de la toma de fuerza al apero.
seat = Dónde coloca el apero; si falta, el lugar habitual de su vía.
included = Si viene con la máquina o con el apero, de modo que no hay que comprar nada.
hookup = Minutos para acoplarlo.
fitting-price = Lo que cuesta montarlo.

## Figures held against each other

check-both = Revise las dos cifras.
outlet-once = Ponga cada salida una sola vez.
rear-follows-from-mass = Lo que lleva el eje trasero se deduce del peso de la máquina.
net-or-gross = Dé net_kw o, si es lo único que se sabe, gross_kw.
only-net = Dé solo net_kw o gross_kw: el que cuenta es net_kw.
curve-reaches = Los puntos deben ir del régimen mínimo del motor al nominal.
curve-needs-two = Una curva necesita dos puntos o más.
curve-above-zero = El régimen y la potencia deben ser mayores que cero.
oil-thins = El aceite se aligera al calentarse: revise las dos cifras.
grade-or-viscosities = Dé el grado o las dos viscosidades, no ambas cosas.
grade-or-both = Dé el grado, o bien cst_40 y cst_100 juntos.
outside-engine = Queda fuera del margen del propio motor.
is-it-net = Un eje no puede dar más que su motor: ¿es neta la potencia del motor?
policy-takes-flow = Así la dirección toma un caudal: diga cuánto.
nothing-left = No quedaría nada para el apero.
shaft-or-motor = Dele al menos una entrada en shafts, o un motor.
no-usual-figure = Para este tipo de apero no hay una cifra habitual en esta medida: dé una.
idling-included = La necesidad es para el trabajo, con la marcha en vacío incluida.
needs-step = Los dos regímenes son distintos, así que algo debe cambiarlos: nombre el engranaje, la correa o la cadena.
name-route = Nombre al menos una vía.
oil-needs-hoses = Una vía con aceite necesita mangueras.
pack-needs-pump = Un grupo hidráulico necesita su bomba.
own-figure = Omítalo si la cifra es suya.
own-id = Dé a cada entrada el suyo.
at-least-one = Una comparación necesita al menos uno.

## Files

too-large = Es más grande que cualquier archivo así: ¿es el correcto?
no-yard = Un archivo de patio empieza con { "{" } y termina con { "}" }: ¿es el archivo correcto?
no-json = No es JSON: busque ahí una coma, unas comillas, un corchete o una llave que falten.
newer = Lo hizo una versión más nueva de esta página: primero recargue la página.
please-report = Las reglas dejan pasar lo que luego no se puede leer: avísenos, por favor.
list-of-yard = La lista del patio: entradas entre llaves, separadas por comas.
tells-from-yard = Distingue este archivo del de un patio.
reads-version-1 = Este programa lee la versión 1.
written-link = Lo elegido, tal como lo escribe la página: no se puede escribir a mano.
whole-yard = El patio entero, como en un archivo de patio.
link-damaged = Se cambió o se cortó. Tómelo de la dirección de la página, detrás de #.
link-of-another-yard = El enlace se hizo en otro patio.
tells-from-others = Distingue este archivo de otros.
set-yard = El nombre del patio en el que se hizo la serie.
set-seed = El número con el que se sortean los casos.
set-count = Cuántos casos hay.
set-kinds = Lo que preguntan los casos: al menos un tipo.

## Tables

plain-number = Sin más, como 1234,5 o 1234.5: sin unidad y sin espacios entre las cifras.
empty-cell = Deje la celda vacía si no se sabe.
see-template = El modelo tiene todas las columnas: tome de ahí los nombres.
column-once = Quite una de las columnas.
no-header = Esta columna no tiene encabezado: póngale uno o vacíela.
lost-letters = Se han perdido letras: guarde la tabla como CSV UTF-8.
says-no = Dice que no, y otras columnas dicen algo de ello.
one-or-three = Dé una sola cifra, o bien low, likely y high: no ambas cosas.
no-utf-8 = No es texto en UTF-8: guarde la tabla como CSV UTF-8.
needs-headers = La primera fila debe tener encabezados como id, name y engine.net_kw: el modelo los tiene todos.
in-parts = Páselo por partes.
too-many-columns = Ninguna lista tiene tantas: ¿es el archivo correcto?
lone-quote = A partir de aquí hay unas comillas sueltas: una celda con comillas va ella misma entre comillas, y las de dentro se duplican.

## Settings, and figures of a sheet

horsepower = 1 hp mecánico son 0,7457 kW.
gallons = 1 galón de EE. UU. por minuto son 3,785 L/min.
psi = 1 bar son 14,5 psi.
pump-speed = El motor no puede trabajar ahí: ¿es el régimen de la bomba?
engine-speed = El motor no puede trabajar ahí: elija un régimen entre el mínimo y el nominal.
engine-power = Tome la potencia neta al régimen nominal; 1 hp mecánico son 0,7457 kW.
oil-temperature = Con un aceite así no se trabaja a esa temperatura.
altitude = Tome la altitud sobre el nivel del mar.
air = Nadie trabaja con ese aire.
ground-speed = Tome la velocidad trabajando, no en carretera.
slope = Subida entre recorrido: 0,1 para el 10 %. Un terreno más empinado pide otra máquina.
worked-depth = Tome la profundidad de lo que se trabaja.
worked-density = La nieve fresca pesa unos 100 kg/m³, la tierra mojada unos 1800.
job = Toneladas, metros cuadrados, metros cúbicos o metros.
pump-flow = Ninguna bomba para este trabajo da ese caudal.
relief-set = Ninguna máquina para este trabajo está tarada así.

## With what was found

meant = ¿Quería decir { $name }?
fields-are = Los campos de aquí son: { $keys }.
has-it-too = También lo tiene la fila { $row }: dé a cada una el suyo.
