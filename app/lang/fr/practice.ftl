### No native speaker has read this yet.

parts = Parties des exercices
part-walk = Suivre la puissance
part-alone = S'exercer seul
part-group = Pour un groupe
part-record = Où vous en êtes

alone-lead =
    Un cas à la fois : une machine, un outil, une question. Dites d'abord ce que vous pensez, puis voyez
    pourquoi. Personne ne compte vos erreurs.
what = Sur quoi s'exercer
any-kind = Un peu de tout
begin = Commencer
begin-set = { $count ->
    [one] Faire la série : { $count } cas
   *[other] Faire la série : { $count } cas
}
no-case =
    Ce parc n'a aucune paire de machine et d'outil qui donne un cas clair de ce genre. Essayez un autre
    genre ou un autre parc.
find = Retrouver un cas
case-number = Numéro du cas
number-allowed = un nombre entier de 0 à 4294967295.
show-case = Montrer ce cas
number-of = Cas { $seed }
of-set = Cas { $place } sur { $count } de la série

known = Ce que l'on sait
your-answer = Votre réponse
how-sure = À quel point êtes-vous sûr ?
commit = C'est ma réponse
missing-guess = Choisissez ou saisissez d'abord une réponse ; au jugé, cela suffit.
missing-confidence = Dites à quel point vous êtes sûr, et cela compte.
power = Puissance au rotor
    .on-paper = Puissance au rotor :
power-allowed = une puissance au-dessus de zéro.
yes = oui
no = non
not-known = inconnu

know-this = Je connais : sans aide
example = Résolu sur une autre paire
first-is-yours = La première étape est à vous : qu'est-ce qui irait ici ?
show-first = Montrer la première étape
to-begin-with = Pour commencer.

next-same = Suivant, même genre
next-any = Suivant, tous genres
next-in-set = Cas suivant de la série
set-done = C'était le dernier cas de la série.
look = Ouvrir cette paire avec tous ses chiffres

## Routes put in order

order = Le plus de puissance en premier
apart = À part : non attelable
up = Monter
down = Descendre
cant = Non attelable
can = Remettre dans l'ordre
moved = { $route } : maintenant à la place { $place }.
moved-apart = { $route } : à part, non attelable.
moved-back = { $route } : de retour dans l'ordre, en dernier.

## Kinds of cases

kind-route = Quelle voie apporte le plus ?
kind-amount = Combien arrive ?
kind-limit = Qu'est-ce qui la limite ?
kind-sheet = Cette fiche peut-elle être juste ?
kind-fit = Peut-on l'atteler ?
kind-wanted = Que faudrait-il ?

## Ideas

idea-power-is-flow-times-pressure = La puissance de l'huile, c'est débit fois pression
idea-flow-is-speed = Le débit, c'est la vitesse ; la pression, c'est le couple
idea-every-change-costs = Chaque changement de forme coûte
idea-shaft-brings-most = C'est un arbre qui apporte le plus
idea-figures-belong-together = Les chiffres d'une fiche doivent aller ensemble
idea-it-must-hook-up = Ce qu'on ne peut pas atteler n'apporte rien

## How sure somebody is

guessing = Au jugé
fairly-sure = Assez sûr
sure = Sûr

## How much help there is

help-shown = Avec un exemple à côté, résolu en entier
    .small = avec un exemple à côté, résolu en entier
help-first-blank = Avec un exemple à côté, sa première étape laissée à vous
    .small = avec un exemple à côté, sa première étape laissée à vous
help-all-blank = Sans aide
    .small = sans aide
