### No native speaker has read this yet.

open = Feuille à emporter
back = Retour à la comparaison
print = Imprimer ou enregistrer en PDF
sideways = Faites glisser l'image de côté pour la voir en entier ; sur le papier, elle est entière.
cant-print = Ce cadre ne laisse pas imprimer. Ouvrez la page à part, ou passez par le menu du navigateur.

outcome-heading = Ce que cela donne
need = Le travail demande { $need } au rotor ({ $range }). Le moteur a { $net } nets.
outcome = { $route }, { $seat } : { $power } ({ $range }) arrivent à { $speed }. { $standing }.

ledger-heading = Où va la puissance
lost = perdu
passed-on = transmis

fit-heading = À régler avant la mise en marche
fits = Tout ce qui en est connu convient.
buy-heading = Ce qu'il faut en plus de la machine
with-motor = { $implement }, avec moteur hydraulique
with-shaft = { $implement }, avec arbre d'entrée
fitting = Montage
together = Au total
ask-heading = Encore à demander
more = { $count ->
    [one] et { $count } autre, par le lien
   *[other] et { $count } autres, par le lien
}

code = Cette comparaison, en direct :
no-code =
    Une page ouverte depuis un disque n'a pas d'adresse à donner ; faites cette feuille depuis le
    site du concessionnaire pour avoir un code.
long-code = L'adresse est trop longue pour un code : demandez le lien au concessionnaire.
foot = Calculé par Farend, qui ne remplace ni les manuels ni les personnes formées.
invented = Données de démonstration inventées.
