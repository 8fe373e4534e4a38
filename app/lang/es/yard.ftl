### No native speaker has read this yet.

## Steps, and the yard as a file

undo = Deshacer
redo = Rehacer
undone = Deshecho: { $deed }
redone = Rehecho: { $deed }
steps = Pasos
save = Guardar el patio como archivo
to-demo = Volver al patio de muestra…
to-demo-sure =
    Esto pone el patio de muestra en lugar del que está aquí. «Deshacer» recupera el suyo mientras esta página
    siga abierta; guárdelo como archivo para conservarlo más tiempo.
yes-demo = Poner aquí el patio de muestra
no-demo = Dejar el patio como está
kept = Los cambios se conservan en este navegador.
not-kept = Este navegador no conserva los cambios: guarde el patio como archivo.
held = Los cambios no se conservan hasta que usted decida arriba.

deed-own = patio: { $field }
deed-field = { $name }: { $field }
deed-added = añadir { $name }
deed-removed = quitar { $name }
deed-moved = mover { $name }
deed-opened = abrir { $file }
deed-took-over = pasar { $file } al patio

## Lists

own = El patio mismo
lists = Lo que hay en el patio
search = Buscar por nombre
none-found = Nada con ese nombre.
choose = Elija una entrada de la lista, o añada una.
add-machine = Añadir una máquina
add-implement = Añadir un apero
add-kit = Añadir un kit
new-machine = Máquina nueva
new-implement = Apero nuevo
new-kit = Kit nuevo
copy-of = { $name } (copia)
more-entries = { $count } más: busque por nombre.
so-many-to-mend = { $count } por corregir
fields-not-known = no se sabe: { $fields }

## An entry's form

copy = Copiar
remove = Quitar
earlier = Subir
later = Bajar
to-mend-first = Por corregir antes de que entre en las comparaciones
own-to-mend = Por corregir: hasta entonces, esto se deja fuera
more-figures = Más cifras
needed = necesario
not-known-yet = No se sabe
yes = Sí
no = No
nothing-known = nada escrito
range = Dar un margen
one-figure = Una sola cifra
add-one = Añadir…
leave-out = Omitirlo
take-away = Quitar este campo
unclear = No es un número claro. Escríbalo sin signos entre los millares: 1234 o 1,234.
assumed = se supone: { $number }
stands-elsewhere = Ya está en otro sitio.
item-at = { $group }, { $item } { $place }

## Nothing to compare

nothing-to-compare = Aún no hay nada que comparar
to-editor = Editar el patio
lacks-mending = { $name } tiene antes algo que corregir ({ $faults }). Lo que hay que hacer está en su entrada.
lacks-machine = El patio no tiene ninguna máquina que se pueda comparar. Añada una, o corrija una de las que tiene.
lacks-implement = El patio no tiene ningún apero que se pueda comparar. Añada uno, o corrija uno de los que tiene.
add-one-of = Añadir: { $item }
numbered = { $item } { $place }
