### No native speaker has read this yet.

## Three-point hitches and PTO shafts

shaft-1 = Tipo 1: 1⅜ in, 6 estrías
shaft-2 = Tipo 2: 1⅜ in, 21 estrías
shaft-3 = Tipo 3: 1¾ in, 20 estrías
shaft-4 = Tipo 4: 57,5 mm, 22 estrías

## Machines and implements

tractor = Tractor
skid-steer = Minicargadora de ruedas u orugas
thrower = Lanzadora
mulcher = Trituradora
broom = Barredora
chipper = Astilladora
mower = Segadora
tiller = Rotocultor
auger = Ahoyador
other = Otra cosa que gira

## Gears and other steps of a shaft

spur = Engranajes rectos
bevel = Engranajes cónicos
spiral-bevel = Engranajes cónicos espirales
worm = Tornillo sin fin
belt = Correa
chain = Cadena
joint-shaft = Eje cardán
direct = Directo, sin nada en medio

## How an engine gets its air, how a machine drives

natural = Atmosférico
turbo = Turbo
turbo-cooled = Turbo con intercooler
gear = Mecánica
hydrostatic = Hidrostática

## Circuits, and what steering takes of them

remotes = Salidas auxiliares o tercera función
standard-flow = Caudal estándar
high-flow = Alto caudal
separate-pump = De una bomba propia
fixed-priority = Toma primero un caudal fijo
load-sensing-priority = Solo toma aceite al girar
summed = Bomba propia, pero sumada al caudal de la ficha
open-centre = Bomba fija, centro abierto
pressure-compensated = Bomba variable, compensada por presión
load-sensing = Bomba variable, sensible a la carga
tractor-fluid = Aceite de tractor (UTTO)
clockwise = A derechas
anticlockwise = A izquierdas

## Places, work, ground

rear = Detrás
front = Delante
mass = Toneladas de material
area = Superficie trabajada
volume = Metros cúbicos de material
length = Metros de recorrido
firm = Firme
grass = Hierba
loose = Suelto
loader = En la pala cargadora
front-frame = En un subchasis delante
rear-backwards = En el enganche trasero, marcha atrás
rear-forwards = En el enganche trasero, hacia delante
rear-shaft = Cardán trasero
mid-shaft = Cardán ventral
turned-forward = Cardán trasero llevado adelante
machine-hydraulics = Hidráulica de la máquina
pump-pack = Grupo hidráulico

## Where a figure comes from

own = Cifra propia o ficha
computed = Calculada a partir de otras
common-practice = Práctica habitual
from-memory = De memoria
judgement = Criterio propio
pump-reference = Referencia sobre bombas
motor-article = Artículo sobre motores
rating-rule = Regla del 86 %
gear-note = Nota sobre engranajes
belt-sheet = Ficha de correas
coupler-table = Tabla de enchufes rápidos
starting-note = Nota sobre el par de arranque
tank-rules = Reglas para depósitos
surface-rules = Reglas para la superficie del depósito
mower-article = Artículo sobre segadoras
chipper-trial = Ensayo de astilladoras
viscosity-chart = Gráfico de viscosidades
