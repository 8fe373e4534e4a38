### No native speaker has read this yet.

title = Lo que cuesta
lead =
    Sus propios precios, guardados en el enlace. Sin un precio no se dice nada del coste; escriba 0 donde algo no
    cueste nada.
currency = Moneda, tres letras (EUR, USD …)
other-currency = Los precios del patio están en { $currency }: junto a otra moneda no cuentan.
currency-refused = Escriba tres letras o nada.
hour = Una hora de trabajo
kit = Kit
variant = Apero para esta vía
fitting = Montaje
total = Compra
per-power-unit = Por cada { $unit }
job = Hacer el trabajo
pays = Frente al mejor eje
prices = 0 o más, hasta mil millones.
note =
    Hacer el trabajo es su tiempo al precio de una hora, sin contar giros ni paradas. Una vía más cara se ha pagado
    tras esas horas de su propio trabajo, comparada con la mejor vía por eje.

## When a route has paid for itself

at-once = se paga desde el principio
after = se paga tras { $time } de trabajo
ahead-for = más barata, más lenta: sale mejor durante { $time } de trabajo
never = no se paga nunca: ni más barata ni más rápida
