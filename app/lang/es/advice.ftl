### No native speaker has read this yet.

take = { $pair }: elija { $route }. De los { $engine } del motor llegan { $power }; el trabajo pide { $need }.
equal =
    { $pair }: { $routes } empatan según lo que le importa a usted. Por la primera vía, de los { $engine } del motor
    llegan { $power }; el trabajo pide { $need }.
no-route = { $pair }: nada de este patio puede moverlo.
stopped =
    { $pair }: tal como está, no se puede acoplar nada. { $route } haría el trabajo, pero algo lo impide: véalo más
    abajo.
too-weak = { $pair }: ninguna vía hace bien este trabajo. { $route } es lo que más se acerca: { $standing }, { $at-work }.

## Reasons, as clauses

brings-part = aporta el { $part } de lo que pide el trabajo; de forma continua queda en { $standing }: { $at-work }
brings-times = aporta { $times } veces lo que pide el trabajo; de forma continua queda en { $standing }: { $at-work }
more-than = llega { $times } veces la potencia que llega por { $route }
hooks-up = se acopla en unos { $time }
cheapest = de las vías que hacen el trabajo es la más barata de comprar

view-ahead = el conductor mira hacia delante, al trabajo
view-over-the-shoulder = el conductor mira de vez en cuando por encima del hombro
view-behind = el conductor mira hacia atrás mientras dura el trabajo
drives-over = las ruedas pasan por encima antes de hacer el trabajo
keeps-off = las ruedas no pisan el trabajo hasta que está hecho
loader-stays = la pala cargadora se queda puesta
loader-without-bucket = la pala cargadora se queda puesta, sin su cazo
loader-comes-off = se quita la pala cargadora

## What speaks against a route, and what it takes

drawbacks = En cambio, { $drawbacks }.
takes = Hace falta: { $kit }.
to-mind = A tener en cuenta: { $items }.
to-ask = A preguntar antes: { $items }.

## Where a route puts the implement, within a sentence

seat-loader = en la pala cargadora
seat-front-frame = en un subchasis delante
seat-rear-backwards = en el enganche trasero, marcha atrás
seat-rear-forwards = en el enganche trasero, hacia delante

## Wishes, and how much they matter

look-ahead = Mirar hacia delante al trabajar
keep-off = No pisar antes lo que se trabaja
keep-loader = Dejar puesta la pala cargadora
hook-up-quickly = Acoplar rápido
buy-cheaply = Comprar barato
weight-not = Nada
weight-somewhat = Algo
weight-much = Mucho
