### No native speaker has read this yet.

figure-of = { $field }, { $figure }

## What means the same wherever it stands

place = Dónde está
invented = Máquinas inventadas
dealer = Quién entrega sus hojas
note = Una línea en esas hojas
currency = Moneda
hour-price = Precio de una hora de trabajo
machines = Máquinas
implements = Aperos
kits = Kits
format-version = Versión del archivo
id = Identificador corto, para los enlaces
name = Nombre
kind = Tipo
mass-kg = Peso
price = Precio
engine = Motor
rear-pto = Toma de fuerza trasera
economy-pto = Toma de fuerza trasera, económica
mid-pto = Toma de fuerza ventral
circuits = Salidas hidráulicas
oil = Aceite
transmission = Transmisión
hitch = Enganche de tres puntos
loader = Pala cargadora
axles = Ejes de la máquina
end = Extremo del eje
reservoir = Depósito y radiador
rotor = Rotor
need-kw = Potencia que pide el trabajo
shafts = Accionamientos por cardán
motor = Motor hidráulico
work = Su trabajo
travel = Sobre el terreno
mount = Cómo va montado
routes = Vías para las que sirve
included = Viene incluido, sin nada que comprar
kit-pto-rpm = Régimen de la toma de fuerza
drive = Pasos mecánicos
pump = Bomba
hoses = Mangueras y enchufes rápidos
shaft = Eje cardán
seat = Dónde coloca el apero
hookup-min = Tiempo para acoplarlo
fitting-price = Precio del montaje
grade = Grado
cst-40 = Viscosidad a 40 °C
cst-100 = Viscosidad a 100 °C
kg-m3 = Densidad a 15 °C
oil-l = Aceite en el depósito
cooler-w-k = Lo que disipa el radiador
relief-bar = Presión de tarado
valve-bar = Presión que se lleva la válvula de mando
volumetric = Rendimiento volumétrico
hydro-mechanical = Rendimiento hidromecánico
displacement-cm3 = Cilindrada
coupler-mm = Tamaño del enchufe rápido
case-drain = Línea de drenaje
measure = Medido por
idle-kw = Potencia en vacío
kwh-per-unit = Energía por unidad de trabajo
width-m = Ancho de trabajo
depth-m = Profundidad habitual
density-kg-m3 = Densidad del material
usual-km-h = Velocidad habitual
highest-km-h = Velocidad máxima para un buen trabajo
ground = Suelo
pushing-n = Resistencia que opone el trabajo
category = Categoría de enganche
centre-m = Centro de masas, desde los bulones o ganchos
backwards = Trabaja marcha atrás
guarded = Están todas las protecciones
low = Bajo
likely = Probable
high = Alto
source = De dónde viene

## An engine

engine-net-kw = Potencia neta
engine-gross-kw = Potencia bruta
engine-rated-rpm = Régimen nominal
engine-lowest-rpm = Régimen mínimo con carga
engine-curve = Potencia según el régimen
engine-aspiration = Cómo toma el aire

## A point of its curve

curve-rpm = Régimen
curve-kw = Potencia

## A PTO

pto-rpm = Régimen del eje
pto-engine-rpm = Con el motor a
pto-tested-kw = Potencia medida en el eje
pto-rating-kw = Lo máximo que admite el eje

## A hydraulic outlet

circuit-outlet = Salida
circuit-flow-l-min = Caudal según la ficha
circuit-engine-rpm = Con el motor a
circuit-steering = Parte de la dirección
circuit-supply = Tipo de bomba

## Steering

steering-policy = Cómo recibe aceite la dirección
steering-flow-l-min = Caudal de la dirección

## A shaft end

end-shaft = Tipo de eje
end-turns = Sentido de giro
end-height-m = Altura sobre el suelo
end-ahead-m = Termina por delante de las rótulas
end-behind-m = Termina por detrás de los bulones
end-above-m = Queda por encima de los bulones inferiores

## A three-point hitch

hitch-category = Categoría
hitch-lift-kg = Levanta
hitch-lift-at-m = Medido por detrás de las rótulas
hitch-lowest-m = Altura de las rótulas trabajando
hitch-highest-m = Altura de las rótulas levantadas

## A loader

loader-lift-kg = Levanta en los bulones
loader-reach-m = De la articulación a los bulones
loader-third-function = Tercera función en su extremo

## Axles

axles-wheelbase-m = Distancia entre ejes
axles-front-kg = Peso en el eje delantero
axles-front-limit-kg = Lo máximo en el eje delantero
axles-rear-limit-kg = Lo máximo en el eje trasero
axles-loader-ahead-m = Del eje delantero a los bulones de la pala cargadora
axles-frame-ahead-m = Del eje delantero a los ganchos del subchasis
axles-hitch-behind-m = Del eje trasero a las rótulas

## A rotor

rotor-rated-rpm = Régimen nominal
rotor-lowest-rpm = Régimen mínimo para un buen trabajo
rotor-highest-rpm = Régimen máximo permitido
rotor-diameter-mm = Diámetro en las puntas

## A shaft drive of an implement

shaft-place = Extremo de la máquina
shaft-rpm = Régimen de entrada
shaft-drive = Pasos hasta el rotor
shaft-rating-kw = Lo máximo que admite la entrada
shaft-end = Eje de entrada
shaft-price = Precio del apero en esta versión

## A hydraulic motor

motor-ratio = Régimen del rotor entre el del motor
motor-drive = Pasos hasta el rotor
motor-highest-l-min = Caudal máximo
motor-highest-bar = Presión máxima
motor-starting = Par de arranque
motor-case-drain = Necesita una línea de drenaje
motor-price = Precio del apero en esta versión

## A mechanical step

step-ratio = Régimen de salida entre el de entrada
step-efficiency = Rendimiento
step-rating-nm = Par máximo a su salida
step-slip-clutch-nm = El limitador de par patina a
step-angle-deg = Ángulo de cada junta

## A pump

pump-highest-rpm = Régimen máximo
pump-suction-bore-mm = Línea de aspiración, diámetro interior
pump-suction-length-m = Línea de aspiración, longitud
pump-suction-lift-m = Altura de la bomba sobre el aceite

## Hoses and couplers

hoses-bore-mm = Diámetro interior
hoses-length-m = Longitud de ida
hoses-back-bore-mm = Diámetro interior de la manguera de retorno
hoses-couplers = Enchufes rápidos, ida y vuelta
hoses-coupler-bar = Presión que se lleva un enchufe rápido
hoses-coupler-l-min = Con un caudal de
hoses-fittings-k = Codos y adaptadores, suma de K

## A joint shaft of a kit

kit-shaft-pto-end = Tipo de toma de fuerza para el que sirve
kit-shaft-far-end = Tipo de entrada para el que sirve
kit-shaft-closed-m = Longitud, recogido del todo
kit-shaft-open-m = Longitud a la que se separan los tubos
kit-shaft-reverses = Invierte el sentido de giro

## One of a list's groups

item-circuits = Salida
item-shafts = Accionamiento por cardán
item-drive = Paso
item-curve = Punto
item-other = Entrada
