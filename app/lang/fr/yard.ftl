### No native speaker has read this yet.

## Steps, and the yard as a file

undo = Annuler
redo = Rétablir
undone = Annulé : { $deed }
redone = Rétabli : { $deed }
steps = Étapes
save = Enregistrer le parc comme fichier
to-demo = Revenir au parc de démonstration…
to-demo-sure =
    Ceci met le parc de démonstration à la place de celui d'ici. «{ "\u00A0" }Annuler{ "\u00A0" }» ramène le
    vôtre tant que cette page reste ouverte ; enregistrez-le comme fichier pour le garder plus longtemps.
yes-demo = Mettre ici le parc de démonstration
no-demo = Laisser le parc tel quel
kept = Les modifications sont gardées dans ce navigateur.
not-kept = Ce navigateur ne garde pas les modifications : enregistrez le parc comme fichier.
held = Les modifications ne sont pas gardées tant que vous n'avez pas décidé ci-dessus.

deed-own = parc : { $field }
deed-field = { $name } : { $field }
deed-added = ajouter { $name }
deed-removed = retirer { $name }
deed-moved = déplacer { $name }
deed-opened = ouvrir { $file }
deed-took-over = reprendre { $file }

## Lists

own = Le parc lui-même
lists = Ce que le parc contient
search = Chercher par nom
none-found = Rien de ce nom.
choose = Choisissez une entrée de la liste, ou ajoutez-en une.
add-machine = Ajouter une machine
add-implement = Ajouter un outil
add-kit = Ajouter un kit
new-machine = Nouvelle machine
new-implement = Nouvel outil
new-kit = Nouveau kit
copy-of = { $name } (copie)
more-entries = { $count } de plus : cherchez par nom.
so-many-to-mend = { $count } à corriger
fields-not-known = inconnu : { $fields }

## An entry's form

copy = Copier
remove = Retirer
earlier = Monter
later = Descendre
to-mend-first = À corriger avant de prendre part aux comparaisons
own-to-mend = À corriger : d'ici là, ceci est laissé de côté
more-figures = Autres chiffres
needed = nécessaire
not-known-yet = Inconnu
yes = Oui
no = Non
nothing-known = rien de saisi
range = Donner une marge
one-figure = Un seul chiffre
add-one = Ajouter…
leave-out = Omettre
take-away = Retirer ce champ
unclear = Ce n'est pas un nombre clair. Écrivez-le sans signe entre les milliers : 1234 ou 1,234.
assumed = supposé : { $number }
stands-elsewhere = Existe déjà ailleurs.
item-at = { $group }, { $item } { $place }

## Nothing to compare

nothing-to-compare = Rien à comparer pour l'instant
to-editor = Modifier le parc
lacks-mending = { $name } a d'abord quelque chose à corriger ({ $faults }). Ce qu'il faut faire est à son entrée.
lacks-machine = Le parc n'a aucune machine qui puisse être comparée. Ajoutez-en une, ou corrigez-en une de celles qu'il a.
lacks-implement = Le parc n'a aucun outil qui puisse être comparé. Ajoutez-en un, ou corrigez-en un de ceux qu'il a.
add-one-of = Ajouter : { $item }
numbered = { $item } { $place }
