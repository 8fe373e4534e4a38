### No native speaker has read this yet.

open = Hoja para llevar a casa
back = Volver a la comparación
print = Imprimir o guardar como PDF
sideways = Deslice la imagen hacia un lado para verla entera; en papel sale completa.
cant-print = Este marco no deja imprimir. Abra la página por separado o use el menú del navegador.

outcome-heading = Qué resulta
need = El trabajo pide { $need } en el rotor ({ $range }). El motor tiene { $net } netos.
outcome = { $route }, { $seat }: llegan { $power } ({ $range }) a { $speed }. { $standing }.

ledger-heading = Adónde va
lost = se pierde
passed-on = se entrega

fit-heading = A resolver antes de ponerlo en marcha
fits = Todo lo que se sabe de ello encaja.
buy-heading = Lo que hace falta además de la máquina
with-motor = { $implement }, con motor hidráulico
with-shaft = { $implement }, con eje de entrada
fitting = Montaje
together = En total
ask-heading = Por preguntar
more = y { $count } más, en el enlace

code = Esta comparación, en vivo:
no-code =
    Una página abierta desde un disco no tiene dirección que dar; haga esta hoja desde la web
    del concesionario para tener un código.
long-code = La dirección es demasiado larga para un código: pida el enlace al concesionario.
foot = Calculado con Farend, que no sustituye ni los manuales ni a las personas formadas.
invented = Datos de muestra inventados.
