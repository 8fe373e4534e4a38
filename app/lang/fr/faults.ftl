### No native speaker has read this yet.

at = { $place } { $rule } { $hint }
at-found = { $place } ({ $found }) { $rule } { $hint }
in-row = Ligne { $row }, { $fault }
with-hint = { $rule } { $hint }

## Places that aren't fields

file = Le fichier
quotes = le texte entre guillemets
headers = la ligne d'en-têtes
column = colonne { $letters }

## Rules

limits-are = { $min } à { $max }
within = Doit être de { $limits }.
required = Manque.
one-of = Doit être l'un de : { $words }.
unknown-field = N'est pas un champ de ce format.
at-most = Ne doit pas dépasser { $most }.
not-empty = Ne doit pas rester vide.
unique = Figure plus d'une fois.
not-above = Ne doit pas dépasser { $bound }.
below = Doit rester sous { $bound }.
readable = Est illisible.
json = Est illisible à partir de la ligne { $line }, colonne { $column }.

## What was expected

expected-flag = Doit être true (oui) ou false (non).
expected-whole = Doit être un nombre entier.
expected-number = Doit être un nombre.
expected-number-with-point = Doit être un nombre avec un point décimal, sans guillemets.
expected-rising = Doit être en ordre croissant.
expected-rising-three = Doit être en ordre croissant : low, likely, high.
expected-text = Doit être un texte.
expected-id = Doit être un identifiant de 40 caractères au plus.
expected-capitals = Doit être fait de trois lettres majuscules.
expected-group = Doit être un groupe { "{" } … { "}" }.
expected-list = Doit être une liste [ … ].
expected-yard = Doit être un parc { "{" } … { "}" }.
expected-table = Doit être un tableau de machines, d'outils ou de kits.
expected-machine-of-yard = Doit être une machine de ce parc.
expected-implement-of-yard = Doit être un outil de ce parc.

## Figures that another must not exceed

bound-engine-rated = le régime nominal du moteur, { $value }
bound-lifted-height = la hauteur des rotules relevées, { $value }
bound-machine-mass = le poids de la machine, { $value }
bound-viscosity-at-40 = la viscosité à 40 °C, { $value }
bound-net-power-there = la puissance nette du moteur à ce régime, { $value }
bound-sheet-flow = le débit de la fiche, { $value }
bound-rotor-rated = le régime nominal du rotor, { $value }
bound-rotor-highest = le régime maximal du rotor, { $value }
bound-need = ce que demande le travail, { $value }
bound-highest-speed = la vitesse maximale, { $value }
bound-open-length = la longueur où ses tubes se séparent, { $value }
