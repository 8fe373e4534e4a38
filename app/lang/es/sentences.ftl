### No native speaker has read this yet.

contrast = Por { $route } llegan solo { $power }, el { $part } de la potencia del motor; { $best } entrega { $times } veces esa potencia.

bars = De los { $engine } del motor, al rotor llegan: { $routes }. El trabajo pide { $need }.
bars-no-fit = { $route }: no acopla
engine-end = motor { $power }
need-end = el trabajo pide { $power }
picture-title = { $implement } con { $machine }
picture-subject = Lo que llega al rotor por seis vías, de los { $power } netos del motor a { $speed }
of-engine = { $part } del motor
losses = Se pierde en: { $losses }

verdict-sure = { $likely }, en todo el margen de lo que no se conoce con exactitud.
verdict-at-worst = { $likely }; en el peor caso, { $worst }.
verdict-at-best = { $likely }; en el mejor caso, { $best }.
verdict-between = { $likely }; en el peor caso, { $worst }; en el mejor, { $best }.

job-refused = Escriba un número mayor que cero y de un tamaño que se pueda hacer. Hasta entonces queda como estaba.
pto-gear = { $speed } con el motor a { $engine }
work-note =
    Lo máximo que una vía mantiene: cuanto más rápido se avanza, más se trabaja y menos le queda al motor.
    El tiempo es de trabajo, sin giros ni paradas. Lo lejos que lanza una lanzadora es un tope sin
    resistencia del aire; de verdad lanza menos lejos.
influences-note =
    Lo que llegaría si una sola cifra estuviera en su valor bajo o alto. La primera es la que más vale la
    pena preguntar.
time-range = de { $low } a { $high }
casting = { $distance }, { $part } de lo nominal
figure-of-stage = { $stage }: { $figure }

hotter-than = más de { $temperature }
heat =
    Trabajando, { $lost } acaban como calor en el aceite; con el rotor parado y el motor en marcha, { $idle }.
    Así se calientan { $tank } de aceite cuando solo los enfría la superficie del depósito, y un radiador si
    el patio conoce alguno. El aceite no debería pasar de { $limit }.
too-hot =
    { $reason } Desde frío pasa de { $limit } al cabo de unos { $after } de este trabajo; de forma continua,
    con este depósito y sin más refrigeración pueden llegar como mucho { $power }.
too-hot-empty =
    { $reason } Desde frío pasa de { $limit } al cabo de unos { $after } de este trabajo; de forma continua,
    con este depósito y sin más refrigeración no puede ni girar el rotor vacío.
work-takes = El rotor vacío toma { $idle } ({ $idle-range }): { $idle-source }. El trabajo toma { $energy } ({ $energy-range }): { $energy-source }.
cooling-none = Para este trabajo no hace falta radiador. El depósito habitual para este caudal: { $tank }.
cooling =
    Para no pasar nunca del límite, un radiador debe evacuar { $power } ({ $cooler }). El depósito habitual
    para este caudal: { $tank }. Mangueras, tubos y carcasas ayudan; no se cuentan.

budget = de { $net }; antes se restan: { $taken }
budget-with-rule = de { $net }; antes se restan: { $taken }; la regla sencilla del oficio para el aire: { $rule }
budget-air = aire enrarecido o cálido
budget-driving = avance
at-the-rotor = { $power } ({ $range }) a { $speed } y { $effort }
curve = Potencia que llega por { $route } según { $control }: de { $least } a { $most }.
out-of-range = Escriba un número de { $range }. Hasta entonces queda como estaba.
