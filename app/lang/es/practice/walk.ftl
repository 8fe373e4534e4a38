### No native speaker has read this yet.

lead =
    El mismo motor por un eje y por aceite. En cada etapa diga primero cuánto cree que entrega y después mire.
place = { $route }, etapa { $place } de { $count }
takes = Esta etapa ({ $stage }) toma { $power } ({ $drive }).
question = ¿Cuánto de eso entrega?
passes-on = Entrega
passed-on = entregado
lost = perdido
guess = Mostrar lo que entrega
missing = Mueva primero el deslizador o escriba una potencia; vale a ojo.
power-allowed = una potencia desde cero hasta lo que toma la etapa.
compared = Usted dijo { $guess }. Entrega { $gives } ({ $drive }) y pierde { $loses }, el { $part } de lo que toma.
back = Atrás
forward = Adelante
restart = Desde el principio
no-route = Aquí no se puede acoplar ninguna de las vías. Elija otra máquina u otro apero.

changes-most = Lo que más lo cambiaría
influence =
    De lo que no se conoce con exactitud de esta etapa, lo que más pesa es esto: { $figure }. En todo su margen
    llegan al rotor { $range }.
certain = De esta etapa se conoce todo bastante bien.
turn-it = Muévalo aquí y observe las cifras de arriba.
turn-others = Mover otra cosa

## The end of the way

brought-out = En qué queda
brings = { $route }: llegan al rotor { $power } a { $speed }, el { $part } de la potencia del motor.
ideas = Tres cosas para recordar
idea-flow-times-pressure = La potencia es caudal por presión.
    .here =
        Aquí { $flow } por { $pressure } son { $power }. El motor tiene { $engine }, pero en el aceite no entra
        más que eso.
idea-flow-is-speed = El caudal es velocidad, y la presión es par.
    .here =
        El caudal lleva este rotor a { $reached }; está hecho para { $rated } y trabaja desde { $lowest }. Más
        presión lo haría más fuerte, no más rápido.
idea-change-costs = Cada cambio de forma cuesta.
    .here = Del eje al aceite, por las mangueras y de vuelta a un eje, cada paso se lleva su parte: { $each }.
    .shaft = el eje pierde { $lost } de los { $taken } que toma
    .oil = el aceite pierde { $lost } de los { $taken } que toma
go-on = Ahora, a probarlo con casos
