### No native speaker has read this yet.

let-go = Suelte para abrirlo: un patio o una comparación (JSON), o una tabla (CSV).
title = Tablas para hojas de cálculo
tables =
    Las listas del patio para una hoja de cálculo, como CSV; una vez cambiadas, se abren aquí como un archivo
    de patio. Un modelo trae todas las columnas y una fila inventada para empezar.
machines = Máquinas
    .small = máquinas
implements = Aperos
    .small = aperos
kits = Kits
    .small = kits
save-list = { $list } (CSV)
template-of = Modelo: { $list }

which-list = Es una tabla de
which-how = Lo que tiene el patio y la tabla no
merge = Se queda
replace = Se va
take-over = Pasar al patio
leave = Dejarlo
row = Fila
entry = Entrada
becomes = Qué ocurre
faults = Lo que tiene mal
heading = Lo que cambiaría { $file }

asks-list = Sus encabezados sirven para varias listas: diga de cuál es. En el patio aún no ha cambiado nada.
asks-mark = Sus números se pueden leer de dos maneras: diga cuál vale. En el patio aún no ha cambiado nada.
has-faults =
    No puede pasar al patio: tiene { $faults ->
        [one] un error
       *[other] { $faults } errores
    }. El patio queda como está.
ready = { $counts }. En el patio aún no ha cambiado nada.
counts =
    { $new ->
        [one] { $new } entrada nueva
       *[other] { $new } entradas nuevas
    }, { $changed ->
        [one] { $changed } cambiada
       *[other] { $changed } cambiadas
    }, { $unchanged } sin cambios, { $removed ->
        [one] { $removed } quitada
       *[other] { $removed } quitadas
    }

first-list = Diga primero de qué lista es.
first-mark = Diga primero cómo se leen sus números.
first-mend = Corrija sus errores en la hoja de cálculo, guárdela y vuelva a abrirla.
changes-nothing = No cambia nada.

which-mark = Fila { $row }, en { $column } pone { $cell }. ¿Qué número es?
mark-decimals = { $number }: el signo va delante de los decimales
mark-thousands = { $number }: el signo separa los millares

becomes-new = nueva
becomes-changed = cambia: { $columns }
becomes-unchanged = sin cambios
removed-are = Se quitan: { $names }.
rows-more = y { $number } más
faults-more = Y { $number } más, en cuanto estos estén corregidos.
took-list = { $file } está en el patio. { $list }: { $counts }.
several-files = { $number } archivos a la vez son demasiados: ábralos de uno en uno.
