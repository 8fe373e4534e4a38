### No native speaker has read this yet.

how-read = Leer el patio
reading-whole = Cada máquina con cada apero
reading-machines = ¿Qué mueve este apero?
reading-implements = ¿Qué puede mover esta máquina?

by-route = Vía
best-route = La mejor que encaja
least = Resultado mínimo
any-standing = Cualquiera, también ninguno
machines = Máquinas
implements = Aperos
all = Todos los tipos
from = Motor desde
to = Motor hasta
a-power = una potencia del motor
kits = Kits
with-kit = Con cualquier kit del patio
as-it-stands = Solo lo que ya hay
sorted-by = Orden
by-best = primero el mejor
by-name = nombre
by-size = tamaño, de mayor a menor
grouped = Por tipos
filters = Filtrar y ordenar
back = Volver a mostrar todo
stop = Parar
go-on = Seguir
save = Guardar lo que se ve (CSV)
print = Imprimir lo que se ve
cant-print = Este navegador no imprime desde aquí. Abra la página en una pestaña propia e imprímala allí.
too-large = Es más de lo que cabe en papel. Redúzcalo con los filtros, o guárdelo como tabla.
nothing = De este patio no se muestra nada: los filtros dejan fuera todas las parejas.
empty = El patio aún no tiene máquinas o no tiene aperos. Añádalos en «Editar el patio», o abra un archivo de patio.
note =
    Cada pareja se calcula con sus cifras probables, al régimen del motor que pide su TdF, con la altitud
    y las temperaturas elegidas. Cuánto se calienta el aceite y los márgenes de las cifras se ven al
    abrir una pareja. De las vías de una pareja que encajan se muestra la de mejor resultado; a igualdad,
    aquella en la que hay menos que preguntar, y después la que más entrega. Entregado entre necesario: 1,00
    es lo justo. «?»: preguntar antes, no se sabe algo que debe encajar.
ask-first = preguntar antes
asks-yes = sí
asks-no = no
progress = { $done } de { $all } máquinas calculadas
part-shown = { $machines } de { $all-machines } máquinas, { $implements } de { $all-implements } aperos

## Columns of the table

kind-of-machine = Tipo de máquina
kind-of-implement = Tipo de apero
ratio = Entregado entre necesario
delivered = Entregado
needed = Necesario

## Kinds and routes where there is little room

skid-steer = Minicargadora
other = Otro
rear-shaft = Cardán trasero
mid-shaft = Cardán ventral
turned-forward = Llevado adelante
own-hydraulics = Hidráulica propia
pump-pack = Grupo hidráulico
