### No native speaker has read this yet.

parts = Partes de la práctica
part-walk = Seguir la potencia
part-alone = Practicar a solas
part-group = Para un grupo
part-record = Cómo va

alone-lead =
    Un caso cada vez: una máquina, un apero, una pregunta. Diga primero lo que piensa y vea después por qué.
    Nadie cuenta sus errores.
what = Qué practicar
any-kind = Un poco de todo
begin = Empezar
begin-set = { $count ->
    [one] Hacer la serie: { $count } caso
   *[other] Hacer la serie: { $count } casos
}
no-case =
    En este patio no hay ninguna pareja de máquina y apero que dé un caso claro de ese tipo. Pruebe otro
    tipo u otro patio.
find = Volver a un caso
case-number = Número del caso
number-allowed = un número entero de 0 a 4294967295.
show-case = Mostrar este caso
number-of = Caso { $seed }
of-set = Caso { $place } de { $count } de la serie

known = Lo que se sabe
your-answer = Su respuesta
how-sure = ¿Qué seguridad tiene?
commit = Esta es mi respuesta
missing-guess = Elija o escriba primero una respuesta; vale a ojo.
missing-confidence = Diga qué seguridad tiene; entonces cuenta.
power = Potencia en el rotor
    .on-paper = Potencia en el rotor:
power-allowed = una potencia mayor que cero.
yes = sí
no = no
not-known = no se sabe

know-this = Ya lo sé: sin ayuda
example = Resuelto con otra pareja
first-is-yours = El primer paso es suyo: ¿qué pondría aquí?
show-first = Mostrar el primer paso
to-begin-with = Para empezar.

next-same = Otro de este tipo
next-any = Otro de cualquier tipo
next-in-set = Siguiente caso de la serie
set-done = Ese era el último caso de la serie.
look = Abrir esta pareja con todas sus cifras

## Routes put in order

order = Primero la que da más potencia
apart = Aparte: no se puede acoplar
up = Subir
down = Bajar
cant = No se puede acoplar
can = Devolver al orden
moved = { $route }: ahora en el puesto { $place }.
moved-apart = { $route }: aparte, no se puede acoplar.
moved-back = { $route }: de vuelta en el orden, al final.

## Kinds of cases

kind-route = ¿Qué vía entrega más?
kind-amount = ¿Cuánto llega?
kind-limit = ¿Qué la limita?
kind-sheet = ¿Puede ser cierta esta ficha?
kind-fit = ¿Se puede acoplar?
kind-wanted = ¿Qué haría falta?

## Ideas

idea-power-is-flow-times-pressure = La potencia del aceite es caudal por presión
idea-flow-is-speed = El caudal es velocidad, la presión es par
idea-every-change-costs = Cada cambio de forma cuesta
idea-shaft-brings-most = Un eje es lo que más entrega
idea-figures-belong-together = Las cifras de una ficha tienen que cuadrar entre sí
idea-it-must-hook-up = Lo que no se puede acoplar no entrega nada

## How sure somebody is

guessing = A ojo
fairly-sure = Bastante
sure = Total

## How much help there is

help-shown = Con un ejemplo al lado, resuelto por completo
    .small = con un ejemplo al lado, resuelto por completo
help-first-blank = Con un ejemplo al lado, con el primer paso para usted
    .small = con un ejemplo al lado, con el primer paso para usted
help-all-blank = Sin ayuda
    .small = sin ayuda
