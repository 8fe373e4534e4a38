### No native speaker has read this yet.

title = ¿Es honesta la ficha?
lead = Escriba lo que una ficha o un anuncio dice de esta máquina. Deje vacío lo que no diga.
taken-heading = Caudal y presión tomados
rating-heading = La potencia del motor es
not-said = No se dice
take-over = Comparar con las cifras honestas
clear = Vaciar la ficha
ask-heading = Lo que hay que pedir
taken-over = Hecho: las barras de arriba muestran ahora las cifras honestas.
not-taken-over = No se ha aplicado nada: la ficha dice demasiado poco, o esta máquina no puede funcionar con sus cifras.
nothing = Todavía no se ha escrito nada.
allowed = un número mayor que cero, de un tamaño propio de estas máquinas.

## Figures of a sheet. `.small` is the name within a list

figure-flow = Caudal hidráulico
    .small = caudal hidráulico
figure-pressure = Presión hidráulica
    .small = presión hidráulica
figure-hydraulic = Potencia hidráulica
    .small = potencia hidráulica
figure-taken = Dónde se tomaron caudal y presión
    .small = dónde se tomaron caudal y presión
figure-engine-speed = A un régimen del motor de
    .small = a qué régimen del motor
figure-engine = Potencia del motor
    .small = potencia del motor
figure-rating = Si la potencia del motor es neta o bruta
    .small = si la potencia del motor es neta o bruta
figure-pto = Potencia en la TdF
    .small = potencia en la TdF
at-pump = En la bomba
at-couplers = En los enchufes rápidos
net = Neta
gross = Bruta

## What is held against what

check-hydraulic-power = Caudal, presión y potencia
    .small = caudal, presión y potencia
check-engine-power = Caudal y presión frente al motor
    .small = caudal y presión frente al motor
check-steering = Caudal de la dirección
    .small = caudal de la dirección
check-working-speed = Caudal al régimen de trabajo
    .small = caudal al régimen de trabajo
check-couplers = Presión en los enchufes rápidos
    .small = presión en los enchufes rápidos
check-relief = Presión de tarado
    .small = presión de tarado
check-engine-rating = Potencia del motor
    .small = potencia del motor
check-pto-power = Potencia en la TdF
    .small = potencia en la TdF

## What it means for the sheet

holds = Cuadra
advice = Ojo
restated = Significa
wrong = Imposible

## Findings

hydraulic-too-much =
    { $flow } por { $pressure } son { $power }, no los { $claimed } que dice la ficha: sobran { $apart }.
hydraulic-less =
    { $flow } por { $pressure } son { $power }; la ficha dice solo { $claimed }, { $apart } menos: pregunte a qué
    caudal y presión.
hydraulic-holds = { $flow } por { $pressure } son { $power }, como dice la ficha.
engine-cant =
    Para { $flow } a { $pressure } la bomba le toma al motor { $needs }; a { $speed } el motor tiene { $net } netos: no
    puede girar esa bomba a esa presión.
engine-at-best =
    Para { $flow } a { $pressure } la bomba le toma al motor { $needs }; a { $speed } el motor tiene { $net } netos:
    solo si todo está en su mejor valor.
engine-can =
    Para { $flow } a { $pressure } la bomba le toma al motor { $needs }; a { $speed } el motor tiene { $net } netos:
    puede.
steering-apart = Los { $claimed } son para el apero; los { $steering } de la dirección no están incluidos.
steering-of-pump =
    De los { $pump-gives } que da la bomba, la dirección toma { $steering }: quedan { $left } para el apero.
steering-within = Los { $claimed } incluyen { $steering } de la dirección: quedan { $left } para el apero.
working-slower = { $flow } se dan a { $speed }; al régimen de trabajo de { $working } son { $left }.
working-same = { $flow } se dan a { $speed }, que es el régimen de trabajo.
couplers =
    A { $flow } la válvula abierta se lleva { $valve } y dos enchufes rápidos { $couplers }: { $at-pump } en la bomba
    son { $at-couplers } en los enchufes rápidos.
relief-closed =
    La válvula limitadora está tarada a { $relief } y empieza a abrirse a { $opens }; a { $pressure } llega todo el
    caudal.
relief-open =
    La válvula limitadora está tarada a { $relief } y empieza a abrirse a { $opens }: a { $pressure } una parte del
    caudal se escapa por ella. Todo el caudal y toda la presión no se dan a la vez.
rating-net = { $claimed } de potencia neta; el patio tiene { $known }.
rating-gross =
    { $claimed } es potencia bruta, sin ventilador, filtro y demás: unos { $net } netos; el patio tiene { $known }.
pto-too-much = De { $net } netos llegan a la TdF unos { $gives }, no { $claimed }.
pto-at-best = De { $net } netos llegan a la TdF unos { $gives }; { $claimed } queda en el extremo alto.
pto-holds = De { $net } netos llegan a la TdF unos { $gives }; la ficha dice { $claimed }.
pto-above-engine =
    { $claimed } en la TdF son más que los { $engine } del motor: ninguna transmisión da más que su motor.
