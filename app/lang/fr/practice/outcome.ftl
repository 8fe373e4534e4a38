### No native speaker has read this yet.

truth-heading = Ce qui est
stage-by-stage = Étape par étape
at-once = Vu point par point
engine-power = la puissance du moteur
you-said = ce que vous avez dit
yours = votre réponse
your-place = Vous avez dit
arrives = Arrive
reason = Pourquoi
change = Changement
reaches = Cela suffit ?

## The first word on it

right = Juste.
    .by-guessing = Juste. Voyez pourquoi, et la prochaine fois vous n'aurez pas à deviner.
close = Proche, mais pas tout à fait.
wrong = Pas celle-ci. Voici ce qu'il en est.
    .though-sure = Pas celle-ci. Vous en étiez sûr, donc c'est celle à retenir.

## The truth in short

then = { $before }, puis { $next }
cant = non attelable : { $routes }
power-arrives = { $power } arrivent au rotor.
sheet-can-be = La fiche peut être juste : ce qu'elle dit va ensemble.
change-brings = { $change } : { $power } arrivent, { $meaning }.

## Wrong ideas, and what to think instead

engine-as-hydraulic = Prendre la puissance du moteur pour celle de l'huile
    .instead =
        Beaucoup le font. Mais l'huile ne porte que son débit fois sa pression, si fort que soit le moteur qui
        entraîne la pompe. Le reste de la puissance du moteur n'entre jamais dans l'huile.
adds-flows = Additionner des débits
    .instead =
        On dirait une seule pompe pour tout. Mais ce que prend la direction et ce que donne une autre sortie
        n'arrivent jamais au moteur de cet outil : ne comptez que ce qui vient par son propre flexible.
forgets-return = Oublier l'aller et le retour
    .instead =
        C'est vite fait, car des flexibles n'ont pas l'air d'une perte. Mais distributeur, coupleurs et
        flexibles prennent de la pression à l'aller et au retour, et le moteur hydraulique ne travaille
        qu'avec ce qui reste entre les deux.
pressure-for-speed = Plus de pression pour plus de vitesse
    .instead =
        Cela semble juste, car pousser plus fort paraît plus rapide. Mais seul le débit fixe la vitesse du
        moteur hydraulique ; plus de pression le rend plus fort, pas plus rapide.
ignores-speed = Compter la puissance et oublier la vitesse
    .instead =
        Les kilowatts sont là, mais un rotor sous son régime minimal n'en fait rien de bon : regardez aussi la
        vitesse.
