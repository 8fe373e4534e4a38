### No native speaker has read this yet.

lead =
    Composez une série de cas, montrez-les en grand, recueillez ce que pense le groupe et dévoilez la réponse
    quand chacun a dit quelque chose.
kinds = Ce que demandent les cas
count = Combien
    .allowed = un nombre entier de 1 à 30.
seed = Numéro de la série
draw-anew = Tirer une autre série
no-kind = Choisissez au moins un genre.

share = La distribuer
copy-link = Copier le lien vers cette série
save = Enregistrer la série (JSON)
open = Ouvrir une série…
opened = La série est ouverte.
other-yard =
    Cette série a été faite dans le parc « { $yard } ». Un autre parc est ouvert ici, donc les cas sont
    autres. Ouvrez le fichier de ce parc-là pour avoir les mêmes.

## Shown large

show = Montrer en grand
close = Fermer
before = Cas précédent
next = Cas suivant
place = { $place } sur { $count }
reveal = Dévoiler
take-back = Cacher de nouveau
one-more = Un de plus dit
one-less = Un de moins dit
guesses = Ce que dit le groupe
a-guess = Ce que dit quelqu'un
remove = Retirer
none-yet = Personne n'a encore rien dit.
says = du groupe
right = c'est celle-ci
spread = { $count ->
    [one] { $count } voix : { $middle }.
   *[other] { $count } voix : { $range } ; au milieu, { $middle }.
}

## On paper

print = Imprimer la feuille
print-answers = Imprimer avec réponses
sheet = Cas d'exercice
    .with-answers = Cas d'exercice, avec réponses
set = Série { $seed }, { $cases }
answer = Réponse
name-and-date = Nom et date :
