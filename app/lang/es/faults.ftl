### No native speaker has read this yet.

at = { $place } { $rule } { $hint }
at-found = { $place } ({ $found }) { $rule } { $hint }
in-row = Fila { $row }, { $fault }
with-hint = { $rule } { $hint }

## Places that aren't fields

file = El archivo
quotes = el texto entre comillas
headers = la fila de encabezados
column = columna { $letters }

## Rules

limits-are = { $min } a { $max }
within = Debe ser de { $limits }.
required = Falta.
one-of = Debe ser uno de: { $words }.
unknown-field = No es un campo de este formato.
at-most = No debe pasar de { $most }.
not-empty = No puede quedar vacío.
unique = Está más de una vez.
not-above = No debe superar { $bound }.
below = Debe ser menor que { $bound }.
readable = No se puede leer.
json = No se puede leer a partir de la línea { $line }, columna { $column }.

## What was expected

expected-flag = Debe ser true (sí) o false (no).
expected-whole = Debe ser un número entero.
expected-number = Debe ser un número.
expected-number-with-point = Debe ser un número con punto decimal, sin comillas.
expected-rising = Debe ir en orden creciente.
expected-rising-three = Debe ir en orden creciente: low, likely, high.
expected-text = Debe ser un texto.
expected-id = Debe ser un identificador de 40 caracteres como máximo.
expected-capitals = Debe ser tres letras mayúsculas.
expected-group = Debe ser un grupo { "{" } … { "}" }.
expected-list = Debe ser una lista [ … ].
expected-yard = Debe ser un patio { "{" } … { "}" }.
expected-table = Debe ser una tabla de máquinas, aperos o kits.
expected-machine-of-yard = Debe ser una máquina de este patio.
expected-implement-of-yard = Debe ser un apero de este patio.

## Figures that another must not exceed

bound-engine-rated = el régimen nominal del motor, { $value }
bound-lifted-height = la altura de las rótulas levantadas, { $value }
bound-machine-mass = el peso de la máquina, { $value }
bound-viscosity-at-40 = la viscosidad a 40 °C, { $value }
bound-net-power-there = la potencia neta del motor a ese régimen, { $value }
bound-sheet-flow = el caudal de la ficha, { $value }
bound-rotor-rated = el régimen nominal del rotor, { $value }
bound-rotor-highest = el régimen máximo del rotor, { $value }
bound-need = lo que pide el trabajo, { $value }
bound-highest-speed = la velocidad máxima, { $value }
bound-open-length = la longitud a la que se separan los tubos, { $value }
