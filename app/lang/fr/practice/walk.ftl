### No native speaker has read this yet.

lead =
    Le même moteur par un arbre et par l'huile. À chaque étape, dites d'abord combien elle transmet selon vous,
    puis regardez.
place = { $route }, étape { $place } sur { $count }
takes = Cette étape ({ $stage }) prend { $power } ({ $drive }).
question = Combien en transmet-elle ?
passes-on = Transmet
passed-on = transmis
lost = perdu
guess = Montrer ce qu'elle transmet
missing = Déplacez d'abord le curseur ou saisissez une puissance ; au jugé, cela suffit.
power-allowed = une puissance de zéro à ce que prend l'étape.
compared = Vous avez dit { $guess }. Elle transmet { $gives } ({ $drive }) et perd { $loses }, { $part } de ce qu'elle prend.
back = Précédent
forward = Suivant
restart = Depuis le début
no-route = Ici, aucune des voies ne peut être attelée. Choisissez une autre machine ou un autre outil.

changes-most = Ce qui y changerait le plus
influence =
    De ce qui n'est pas connu exactement de cette étape, voici ce qui pèse le plus : { $figure }. Sur toute sa
    marge, { $range } arrivent au rotor.
certain = Tout est assez bien connu de cette étape.
turn-it = Réglez-le ici et regardez les chiffres au-dessus.
turn-others = Régler autre chose

## The end of the way

brought-out = Ce que cela donne
brings = { $route } : { $power } arrivent au rotor à { $speed }, { $part } de la puissance du moteur.
ideas = Trois choses à retenir
idea-flow-times-pressure = La puissance, c'est débit fois pression.
    .here =
        Ici, { $flow } fois { $pressure } font { $power }. Le moteur a { $engine }, mais il n'entre pas plus que
        cela dans l'huile.
idea-flow-is-speed = Le débit, c'est la vitesse ; la pression, c'est le couple.
    .here =
        Le débit amène ce rotor à { $reached } ; il est fait pour { $rated } et travaille à partir de { $lowest }.
        Plus de pression le rendrait plus fort, pas plus rapide.
idea-change-costs = Chaque changement de forme coûte.
    .here = De l'arbre à l'huile, par les flexibles et de retour à un arbre, chaque passage prend sa part : { $each }.
    .shaft = l'arbre perd { $lost } des { $taken } qu'il prend
    .oil = l'huile perd { $lost } des { $taken } qu'elle prend
go-on = À vous d'essayer sur des cas
