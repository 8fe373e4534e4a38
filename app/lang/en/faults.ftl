### What is wrong with an input: a file, a link, a table, a figure. A rule is a sentence that begins with its verb; behind a
### place it begins small: "engine.net_kw (9000) must be 3 to 600 kW."

at = { $place } { $rule } { $hint }
at-found = { $place } ({ $found }) { $rule } { $hint }
in-row = Row { $row }, { $fault }
with-hint = { $rule } { $hint }

## Places that aren't fields

file = The file
quotes = the quoted text
headers = the row of headers
column = column { $letters }

## Rules

# Two numbers, the second with its unit.
limits-are = { $min } to { $max }
within = Must be { $limits }.
required = Is missing.
one-of = Must be one of: { $words }.
unknown-field = Is not a field of this format.
at-most = Must not be longer or more than { $most }.
not-empty = Must not be empty.
unique = Is used more than once.
not-above = Must not be above { $bound }.
below = Must be below { $bound }.
readable = Can't be read.
json = Can't be read beyond line { $line }, column { $column }.

## What was expected

expected-flag = Must be true or false.
expected-whole = Must be a whole number.
expected-number = Must be a number.
expected-number-with-point = Must be a number with a decimal point, without quotes.
expected-rising = Must be in rising order.
expected-rising-three = Must be in rising order: low, likely, high.
expected-text = Must be a text.
expected-id = Must be an identifier of at most 40 characters.
expected-capitals = Must be three capital letters.
expected-group = Must be a group { "{" } … { "}" }.
expected-list = Must be a list [ … ].
expected-yard = Must be a yard { "{" } … { "}" }.
expected-table = Must be a table of machines, implements or kits.
expected-machine-of-yard = Must be a machine of this yard.
expected-implement-of-yard = Must be an implement of this yard.

## Figures that another must not exceed

bound-engine-rated = the engine's rated speed, { $value }
bound-lifted-height = the height when lifted, { $value }
bound-machine-mass = the machine's mass_kg, { $value }
bound-viscosity-at-40 = the viscosity at 40 °C, { $value }
bound-net-power-there = the engine's net power there, { $value }
bound-sheet-flow = the sheet's flow, { $value }
bound-rotor-rated = the rotor's rated speed, { $value }
bound-rotor-highest = the rotor's highest speed, { $value }
bound-need = the need, { $value }
bound-highest-speed = the highest speed, { $value }
bound-open-length = the length where its tubes part, { $value }
