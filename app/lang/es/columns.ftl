### No native speaker has read this yet.

why = Por qué
delivered-low = Llega, bajo
delivered-likely = Llega, probable
delivered-high = Llega, alto
need-low = Necesidad, baja
need-likely = Necesidad, probable
need-high = Necesidad, alta
part = De la potencia neta del motor
rotor = Régimen del rotor
kit = Kit
seat = Posición del apero
hook-up = Acoplarlo
job = Trabajo
time-quickest = Tiempo, el más corto
time-likely = Tiempo, probable
time-slowest = Tiempo, el más largo
price-kit = Precio del kit
price-variant = Precio del apero para esta vía
price-fitting = Precio del montaje
price-total = Precio en total
takes-speed = Toma: régimen
takes-torque = Toma: par
takes-flow = Toma: caudal
takes-pressure = Toma: presión
passes-on-speed = Entrega: régimen
passes-on-torque = Entrega: par
passes-on-flow = Entrega: caudal
passes-on-pressure = Entrega: presión

## How many items come to a judgement, and which

pass = Puntos que encajan
    .which = Cuáles encajan
advice = Puntos con aviso
    .which = Cuáles tienen aviso
question = Puntos por preguntar
    .which = Cuáles hay que preguntar
stop = Puntos que no encajan
    .which = Cuáles no encajan

limit = límite: { $limit }
