### No native speaker has read this yet.

document = Farend: qué mueve de verdad el apero
purpose = Qué mueve de verdad el apero: cuánta potencia del motor llega a su eje por cada vía.
language = Idioma
unread = Traducción aún no revisada por hablantes nativos.
missed = No se pudo cargar { $language }; la página sigue en español. Inténtelo de nuevo cuando haya red.

machine = Máquina
implement = Apero
units = Unidades
metric = Métricas: kW, bar
us = EE. UU.: hp, psi
outdoors = Sol y guantes
views = Vistas
view-pair = Una pareja
view-grid = Todo el patio
view-yard = Editar el patio
view-practice = Práctica
invented = Patio de muestra. Máquinas, aperos y lugar son inventados.
menu = Patio y enlace
open-file = Abrir un patio, una comparación o una tabla…
save-demo = Guardar el patio de muestra como modelo
copy-link = Copiar el enlace a esta comparación
copied = Copiado.
copy-by-hand = Este navegador no deja usar el portapapeles. Cópielo de aquí:
save = Guardar
save-routes = Tabla de las vías (CSV)
save-ledger = Balance de la vía abierta (CSV)
save-svg = Imagen nítida a cualquier tamaño (SVG)
save-png = Imagen para diapositivas y correo (PNG)
save-comparison = Esta comparación, para volver a abrirla (JSON)
close = Cerrar
not-loaded = No se ha podido cargar esta parte de la página. ¿Hay red?
try-again = Intentar de nuevo

## Bars

routes-heading = Seis vías, un motor
arrives = llega al rotor
lost-in-shafts = perdido en ejes, engranajes y correas
lost-in-oil = perdido en el aceite
not-taken-up = potencia del motor que la vía no puede tomar
in-shafts = perdido en ejes
in-oil = perdido en aceite
left-over = sin aprovechar
before = aire y avance
invented-data = Datos de muestra inventados
air-and-driving = lo que se llevan el aire enrarecido y el avance
need = lo que pide el trabajo, probable y margen
spread = de lo menos a lo más que llega
as-table = Lo mismo en una tabla

## Controls and curve

what-if = ¿Y si…?
less = Menos
more = Más
own = Para empezar: { $value }
engine-set = La potencia neta del motor está puesta como dice una ficha: { $power }.
back-to-own = Volver a { $value }
curve-over = Curva según
circuit = Circuito
curve-point = donde está ahora
curve-likely = probable
curve-range = de mínimo a máximo
curve-need = necesidad
delivered = Llega
enter = Escriba un número o déjelo vacío: { $allowed }
driving-and-material = Avance y material
site-and-oil = Lugar y aceite
rear-pto = TdF trasera
ground-heading = Suelo
oil-grade = Aceite de los circuitos
as-in-the-yard = Como en el patio

## Before a decision

deciding-heading = Antes de decidir
fit = ¿Se puede acoplar?
fits = Lo que encaja
questions = Lo que hay que preguntar antes de comprar nada, para todas las vías
choose = Dónde va colocado y qué le importa a usted
seat = Posición
at-work-heading = Trabajando
hookup = Acoplarlo
usually = normalmente
standing-for-good = De forma continua
points = Puntos
points-of = { $points } ({ $power } por potencia, { $wishes } por lo que importa)
not-weighed = no se valora
points-note =
    Potencia: 6 puntos para Sobrado, 5 para Suficiente, 2 para Más lento; por debajo, y donde algo lo
    impide, una vía no se valora. Cada cosa que importa suma hasta 1 punto, o 2 si importa mucho. El coste
    cuenta en cuanto se conocen todos los precios. Un aceite que se calienta demasiado no deja nada mejor
    que Más lento hasta que se enfríe. Los puntos son criterio de este proyecto.

## For those who want to know more

deeper-heading = Para quien quiera saber más
work = Cómo va el trabajo
heat = Cuánto se calienta el aceite
influences = Qué mueve más esta cifra
all-sources = De dónde salen las cifras y qué no se ha modelado
job = El trabajo
job-by = Medido por
most-work = Trabajo máximo
time = Tiempo para el trabajo
ground-speed = Velocidad de avance
throws = Lanza, como mucho
tips = Las puntas van a
no-work = El patio no dice cuánto pide el trabajo de este apero: no se puede dar ningún tiempo.
no-oil = En esta vía ningún aceite transmite potencia.
nothing-moves = En esta vía nada se mueve.
figure-heading = Cifra
at-low = Llega con su valor bajo
at-high = Llega con su valor alto
not-uncertain = En esta vía nada es incierto.
rule = El depósito disipa
settles-at = Se estabiliza en
to-limit = De frío al límite
for-good = Llega de forma continua
never = nunca
never-done = no se acaba
too-slow = El rotor gira demasiado lento para trabajar bien.
nothing = nada
not-modelled = Sin modelar
models = Ecuaciones
figures = Cifras

## Ledger

ledger-heading = Adónde va la potencia
stage-heading = Etapa
takes = Toma
loses = Pierde
passes-on = Entrega
route-heading = Vía
standing-heading = Resultado
held-by = Limitado por
lost = Perdido por el camino
engine = Motor
rotor = Rotor
kit = Necesita
can-give = Puede dar
keeps = Conserva
not-for-this-route = no se puede tomar
formulas = Mostrar las fórmulas
sources = Mostrar las fuentes
cautions-heading = Antes de que nada gire
assumed-heading = Lo que aquí se da por supuesto

## Routes

route-rear-shaft = Cardán trasero
    .small = cardán trasero
    .within = el cardán trasero
route-mid-shaft = Cardán ventral
    .small = cardán ventral
    .within = el cardán ventral
route-turned-forward = Cardán trasero llevado adelante
    .small = cardán trasero llevado adelante
    .within = el cardán trasero llevado adelante
route-machine-hydraulics = Hidráulica de la máquina
    .small = hidráulica de la máquina
    .within = la hidráulica de la propia máquina
route-pump-pack = Grupo hidráulico
    .small = grupo hidráulico
    .within = un grupo hidráulico en la TdF
route-skid-steer = Hidráulica de la minicargadora
    .small = hidráulica de la minicargadora
    .within = la hidráulica de la minicargadora

## Standings

standing-ample = Sobrado
    .small = sobrado
    .at-work = potencia de sobra para el trabajo
standing-enough = Suficiente
    .small = suficiente
    .at-work = el trabajo se cumple
standing-slower = Más lento
    .small = más lento
    .at-work = el trabajo sale, pero más lento
standing-labours = Forzado
    .small = forzado
    .at-work = va forzado: cuente con atascos y mal trabajo
standing-starves = Escaso
    .small = escaso
    .at-work = se queda sin fuerza: así no se puede hacer el trabajo
no-fit = No acopla
    .small = no acopla

## Limits

limit-engine = motor
    .reason = El motor no da más a este régimen.
limit-shaft-rating = par admisible del eje
    .reason = Un eje o una caja del camino no debe recibir más par.
limit-flow = caudal (velocidad)
    .reason = El caudal es velocidad: no hay aceite bastante para llevar el rotor a su régimen nominal.
limit-pressure = presión (par)
    .reason = La presión es par: la válvula limitadora no deja pasar más.
limit-oil-heat = calor del aceite
    .reason = El aceite se calienta demasiado.
limit-implement = límite del apero
    .reason = La entrada del propio apero no debe recibir más.

## Stages

stage-pto-train = Transmisión de la TdF
    .small = transmisión de la TdF
stage-input-shaft = Eje de entrada del apero
    .small = eje de entrada del apero
stage-spur = Engranajes rectos
    .small = engranajes rectos
stage-bevel = Engranajes cónicos
    .small = engranajes cónicos
stage-spiral-bevel = Engranajes cónicos espirales
    .small = engranajes cónicos espirales
stage-worm = Tornillo sin fin
    .small = tornillo sin fin
stage-belt = Transmisión por correa
    .small = transmisión por correa
stage-chain = Transmisión por cadena
    .small = transmisión por cadena
stage-joint-shaft = Eje cardán
    .small = eje cardán
stage-direct = Transmisión directa
    .small = transmisión directa
stage-pump = Bomba
    .small = bomba
stage-steering = Parte de la dirección
    .small = parte de la dirección
stage-divert = Caudal devuelto al depósito
    .small = caudal devuelto al depósito
stage-valve = Válvula de mando
    .small = válvula de mando
stage-hoses = Mangueras y enchufes rápidos
    .small = mangueras y enchufes rápidos
stage-motor = Motor hidráulico
    .small = motor hidráulico

## Things that can be turned

control-engine-speed = Régimen del motor
    .small = régimen del motor
control-own-flow = Caudal según la ficha
    .small = caudal según la ficha
control-own-relief = Presión de tarado
    .small = presión de tarado
control-pack-flow = Caudal del grupo al régimen nominal de la TdF
    .small = caudal del grupo al régimen nominal de la TdF
control-pack-relief = Presión de tarado del grupo
    .small = presión de tarado del grupo
control-oil-temperature = Temperatura del aceite
    .small = temperatura del aceite
control-altitude = Altitud
    .small = altitud
control-air-temperature = Temperatura del aire
    .small = temperatura del aire
control-ground-speed = Velocidad de avance
    .small = velocidad de avance
control-slope = Pendiente, cuesta arriba sobre cero
    .small = pendiente, cuesta arriba sobre cero
control-depth = Profundidad de trabajo
    .small = profundidad de trabajo
control-material-density = Densidad del material
    .small = densidad del material

## What is driven on, oils, measures, outlets, lines

ground-firm = Firme
ground-grass = Hierba
ground-loose = Suelto
grade-tractor-fluid = Aceite de tractor (UTTO)
measure-mass = masa
measure-area = superficie
measure-volume = volumen
measure-length = longitud
outlet-remotes = Salidas auxiliares o tercera función
outlet-standard-flow = Caudal estándar
outlet-high-flow = Alto caudal
line-suction = la línea de aspiración
line-supply = la manguera hacia el motor
line-back = la manguera de retorno

## Uncertain figures

figure-engine-power = potencia neta del motor
figure-driving = lo que se lleva el avance
figure-efficiency = rendimiento
figure-rating = límite admisible
figure-sheet-flow = caudal según la ficha
figure-steering-flow = caudal de la dirección
figure-leakage = fugas (ηv)
figure-friction = rozamiento (ηhm)
figure-relief = presión de tarado
figure-valve-drop = presión que se lleva
figure-coupler-drop = presión que se lleva un enchufe rápido
figure-viscosity = viscosidad del aceite

## What a tank sheds

surface-btu = 11,4 W/(m²·K), que son 2,0 Btu/(h·ft²·°F)
surface-horsepower = 14,4 W/(m²·K), que son 0,001 hp/(ft²·°F)

## How long a joint may run at an angle

angle-fine = bien para todo el día
angle-steady = hasta 15° sirve para todo el día, 25° es lo máximo en trabajo continuo
angle-brief = solo por momentos; 25° es lo máximo en trabajo continuo
angle-needs-wide-angle = solo lo aguanta una junta gran angular, y solo por momentos
angle-never = ninguna junta lo aguanta

## Units as a screen reader should say them

spoken-rpm = revoluciones por minuto
spoken-litres-per-minute = litros por minuto
spoken-celsius = grados Celsius
spoken-fahrenheit = grados Fahrenheit
spoken-gallons = galones estadounidenses por minuto
spoken-psi = libras por pulgada cuadrada
spoken-metres = metros
spoken-feet = pies
spoken-kilometres-per-hour = kilómetros por hora
spoken-miles-per-hour = millas por hora
spoken-centimetres = centímetros
spoken-inches = pulgadas
spoken-kilograms-per-cubic-metre = kilogramos por metro cúbico
spoken-pounds-per-cubic-foot = libras por pie cúbico
