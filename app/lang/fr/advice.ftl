### No native speaker has read this yet.

take = { $pair } : prenez { $route }. Des { $engine } du moteur, { $power } arrivent ; le travail demande { $need }.
equal =
    { $pair } : { $routes } sont à égalité, selon ce qui compte pour vous. Par la première voie, des { $engine } du
    moteur, { $power } arrivent ; le travail demande { $need }.
no-route = { $pair } : rien dans ce parc ne peut l'entraîner.
stopped =
    { $pair } : rien ne peut être attelé en l'état. { $route } ferait le travail, mais quelque chose l'empêche : voir
    plus bas.
too-weak = { $pair } : aucune voie ne fait bien ce travail. { $route } s'en approche le plus : { $standing }, { $at-work }.

## Reasons, as clauses

brings-part = elle apporte { $part } de ce que demande le travail ; dans la durée, c'est { $standing } : { $at-work }
brings-times = elle apporte { $times } fois ce que demande le travail ; dans la durée, c'est { $standing } : { $at-work }
more-than = il arrive { $times } fois autant de puissance que par { $route }
hooks-up = l'attelage prend environ { $time }
cheapest = des voies qui font le travail, c'est la moins chère à l'achat

view-ahead = le conducteur regarde devant lui, vers le travail
view-over-the-shoulder = le conducteur regarde de temps en temps par-dessus l'épaule
view-behind = le conducteur regarde en arrière tant que dure le travail
drives-over = les roues passent dessus avant que le travail soit fait
keeps-off = les roues évitent le travail jusqu'à ce qu'il soit fait
loader-stays = le chargeur reste monté
loader-without-bucket = le chargeur reste monté, sans son godet
loader-comes-off = le chargeur est démonté

## What speaks against a route, and what it takes

drawbacks = En revanche, { $drawbacks }.
takes = Il faut : { $kit }.
to-mind = À prendre en compte : { $items }.
to-ask = À demander avant : { $items }.

## Where a route puts the implement, within a sentence

seat-loader = sur le chargeur
seat-front-frame = sur un faux châssis à l'avant
seat-rear-backwards = sur l'attelage arrière, en marche arrière
seat-rear-forwards = sur l'attelage arrière, en marche avant

## Wishes, and how much they matter

look-ahead = Regarder le travail devant soi
keep-off = Ne pas rouler dessus avant
keep-loader = Garder le chargeur monté
hook-up-quickly = Atteler vite
buy-cheaply = Acheter à bas prix
weight-not = Pas
weight-somewhat = Un peu
weight-much = Beaucoup
