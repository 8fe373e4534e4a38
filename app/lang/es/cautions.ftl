### No native speaker has read this yet.

lead =
    Los ejes y el aceite a presión mutilan y matan. Estos avisos no sustituyen los manuales de la máquina y del
    apero, ni las normas del lugar, ni la formación.

## For every route with a shaft

guards = Todas las protecciones puestas, en el eje y en sus dos extremos. Nadie más va montado.
engine-off = Motor apagado y todo parado antes de que nadie desatasque, engrase o acople.
never-step-over =
    Nunca pase por encima de un eje que gira: a 540 rpm da nueve vueltas por segundo y atrapa un brazo antes de que
    usted lo note.

## For every route with oil

trapped-pressure = Descargue la presión atrapada antes de abrir un enchufe rápido o una manguera.
leaks =
    Busque las fugas con un trozo de cartón, nunca con la mano. El aceite bajo la piel es una urgencia aunque apenas
    se vea: vaya al hospital de inmediato.
hot-oil = El aceite y los racores se calientan tanto que queman, sobre todo donde se pierde mucha potencia.

## For every route

carry-low = Lleve la carga baja; un apero delante quita peso al eje trasero: lastre como dice el manual.
flung-stones = Lanzadoras, trituradoras y segadoras despiden piedras: mantenga a la gente bien lejos.

## Where they come from

university-advice = consejos universitarios de seguridad en el campo
extension-advice = consejos de extensión agraria sobre seguridad con la hidráulica
common-practice = práctica habitual, sin fuente
loader-manual = el manual de un fabricante de palas cargadoras

## What the figures take for granted

net-power =
    La potencia del motor es potencia neta; según el régimen sigue los puntos del patio o, si no los hay, una forma
    por defecto para motores diésel. El aire está a 15 °C y al nivel del mar hasta que usted lo cambie.
driving =
    El avance se lleva rodadura, pendiente y empuje, divididos por el rendimiento de la transmisión, donde el patio
    conoce la masa de la máquina. No se cuenta el patinaje de las ruedas.
ranges =
    Cada cifra que no se conoce con exactitud tiene un valor bajo, uno probable y uno alto; las barras muestran el
    probable, y la línea fina lo menos y lo más que todas juntas pueden dar.
efficiencies =
    Los rendimientos de bombas y motores son los de su punto nominal; fuera de él siguen la presión, el régimen y la
    viscosidad del aceite.
hooking-up =
    Si se puede acoplar se juzga por lo que el patio dice de la máquina, el apero y los kits: ejes, regímenes,
    sentido de giro, enganche, peso, lastre y enchufes rápidos. Lo que no dice se pregunta; lo que dice queda por
    comprobar en la máquina.
standings =
    El resultado es lo que llega dividido por lo que pide el trabajo: Sobrado desde 1,15, Suficiente desde 1,0, Más
    lento desde 0,7, Forzado desde 0,4 y por debajo Escaso; un rotor por debajo de su régimen mínimo de trabajo
    nunca pasa de Forzado. Estas franjas son criterio de este proyecto.
units = hp es el caballo de fuerza mecánico de 745,7 W; gpm, el galón estadounidense por minuto.

## The equations that are used

model-engine =
    Motor con aire enrarecido o cálido: la forma de ISO 3046-1, atmósfera estándar, presión de saturación según
    Buck. Potencia según el régimen sin puntos: la forma de Leiderman.
model-pumps =
    Bombas y motores: el modelo de Wilson, con fugas laminares, rozamiento seco y resistencia viscosa, ajustado a
    los rendimientos del punto nominal (en el sentido de ISO 4391); la mitad del rozamiento de ese punto es viscosa.
model-lines =
    Líneas: Darcy-Weisbach, laminar hasta Re 2000, Haaland desde 4000 y una recta en medio; racores por K; enchufes
    rápidos y válvulas por el cuadrado del caudal.
model-oil = Aceite: ASTM D341 para la viscosidad según la temperatura; la densidad baja un 0,07 % por kelvin.
model-joints =
    Juntas: cinemática general de la junta cardán. El tramo central de un eje cardán oscila en q; dos ángulos
    iguales con las horquillas en fase lo anulan al final. El rendimiento baja con el ángulo.
model-heat =
    Calor: cada vatio que pierde una etapa con aceite calienta el aceite una vez; el depósito disipa según dos
    reglas prácticas.
model-work =
    Trabajo: lo que gasta en vacío crece con el cuadrado del régimen del rotor; lanzar pide energía también con el
    cuadrado; los demás trabajos piden tanto por tonelada, por metro cuadrado o cúbico, o por metro de recorrido.

## What isn't modelled

not-sag = La caída de régimen bajo carga: el motor mantiene el régimen que se ha puesto.
not-slip = El patinaje de las ruedas, los giros al final de la pasada, el conductor.
not-other-heat = El calor que disipan mangueras, tubos, carcasas y cilindros; viento y sol sobre el depósito.
not-foam = Espuma y aire en el aceite, desgaste, arranques por debajo del punto de fluidez del aceite.
not-shock = Golpes de carga, lo que un eje aguanta por un momento, fatiga.
not-peaks = Picos de presión, lo que tardan las válvulas, dilatación de las mangueras.
not-air-drag = Lo lejos que llega de verdad lo lanzado a través del aire.
