### No native speaker has read this yet.

lead =
    Prepare una serie de casos, muéstrelos en grande, recoja lo que piensa el grupo y descubra la respuesta
    cuando todos hayan dicho algo.
kinds = Qué preguntan los casos
count = Cuántos
    .allowed = un número entero de 1 a 30.
seed = Número de la serie
draw-anew = Sacar otra serie
no-kind = Elija al menos un tipo.

share = Repartirla
copy-link = Copiar el enlace a esta serie
save = Guardar la serie (JSON)
open = Abrir una serie…
opened = La serie está abierta.
other-yard =
    Esta serie se hizo en el patio «{ $yard }». Aquí está abierto otro patio, así que los casos son otros.
    Abra el archivo de aquel patio para tener los mismos.

## Shown large

show = Mostrar en grande
close = Cerrar
before = Caso anterior
next = Caso siguiente
place = { $place } de { $count }
reveal = Descubrir
take-back = Volver a ocultar
one-more = Uno más dice
one-less = Uno menos dice
guesses = Lo que dice el grupo
a-guess = Lo que dice alguien
remove = Quitar
none-yet = Nadie ha dicho nada todavía.
says = del grupo
right = es esta
spread = { $count ->
    [one] { $count } voz: { $middle }.
   *[other] { $count } voces: { $range }; en el medio, { $middle }.
}

## On paper

print = Imprimir la hoja
print-answers = Imprimir con respuestas
sheet = Casos prácticos
    .with-answers = Casos prácticos, con respuestas
set = Serie { $seed }, { $cases }
answer = Respuesta
name-and-date = Nombre y fecha:
