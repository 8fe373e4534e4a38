### No native speaker has read this yet.

truth-heading = Lo que es
stage-by-stage = Etapa por etapa
at-once = Mirado punto por punto
engine-power = la potencia del motor
you-said = lo que dijo usted
yours = su respuesta
your-place = Usted dijo
arrives = Llega
reason = Por qué
change = Cambio
reaches = ¿Basta?

## The first word on it

right = Correcto.
    .by-guessing = Correcto. Mire por qué, y la próxima vez no tendrá que adivinar.
close = Cerca, pero no del todo.
wrong = No es esta. Vea cómo es.
    .though-sure = No es esta. Lo daba por seguro, así que esta es la que conviene recordar.

## The truth in short

then = { $before }, luego { $next }
cant = no se puede acoplar: { $routes }
power-arrives = Llegan al rotor { $power }.
sheet-can-be = La ficha puede ser así: lo que dice cuadra.
change-brings = { $change }: llegan { $power }, { $meaning }.

## Wrong ideas, and what to think instead

engine-as-hydraulic = Tomar la potencia del motor por la del aceite
    .instead =
        A muchos les pasa. Pero el aceite solo lleva su caudal por su presión, por fuerte que sea el motor que
        mueve la bomba. El resto de la potencia del motor nunca entra en el aceite.
adds-flows = Sumar caudales
    .instead =
        Parece una sola bomba para todo. Pero lo que toma la dirección y lo que da otra salida no llegan nunca
        al motor de este apero: cuente solo lo que viene por su propia manguera.
forgets-return = Olvidar la ida y la vuelta
    .instead =
        Es fácil, porque unas mangueras no parecen una pérdida. Pero válvula, enchufes rápidos y mangueras
        quitan presión a la ida y a la vuelta, y el motor hidráulico trabaja solo con lo que queda en medio.
pressure-for-speed = Más presión para más velocidad
    .instead =
        Suena lógico, porque un empuje más fuerte parece más rápido. Pero la velocidad del motor
        hidráulico la marca solo el caudal; más presión lo hace más fuerte, no más rápido.
ignores-speed = Contar la potencia y olvidar la velocidad
    .instead =
        Los kilovatios están, pero un rotor por debajo de su régimen mínimo no trabaja bien con ellos: mire
        también la velocidad.
