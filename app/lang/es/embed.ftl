### No native speaker has read this yet.

try-again = Intentar de nuevo
use-demo = Usar el patio de muestra
not-loaded = No se ha podido cargar el patio
of-address = Este patio viene de una dirección y se carga cada vez de nuevo: sus cambios duran mientras esta página siga abierta. Guarde el patio como archivo para volver a tenerlo.
anew = Los cambios duran mientras esta página siga abierta: guarde el patio como archivo.
loading = El patio se está cargando desde { $address } …
unreachable = No se puede alcanzar: no hay red, no existe esa dirección o su servidor no lo comparte con otras páginas.
too-slow = Su servidor no ha contestado a tiempo.
moved = Su servidor remite a una dirección de la que no es seguro cargar.
nothing-there = No hay nada en esta dirección.
refused = Su servidor lo ha rechazado, con el número { $status }.
too-large = Es más grande que cualquier patio.
no-yard = No es un patio que se pueda usar:
kept-since = No se puede alcanzar la dirección del patio. Este es el patio tal como era cuando este navegador lo cargó por última vez, el { $day }.
opened = { $file } está abierto mientras lo esté esta página. Se queda en este dispositivo y este navegador no lo conserva.
open-in-tab = Abrir esta página en una pestaña propia
tab-refused = No se ha abierto ninguna pestaña: copie la dirección en una nueva.
address-to-copy = La dirección, para copiar
text-to-copy = El texto del archivo, para copiar

## What is wrong with the host's options

for-host =
    Para quien puso aquí esta página: { $options ->
        [one] { $options } opción no se puede usar
       *[other] { $options } opciones no se pueden usar
    }
option-twice = { $option } ({ $found }) está más de una vez. Vale la primera.
option-empty = { $option } no dice nada. Mejor quítela.
option-unknown = { $option } ({ $found }): la página no tiene ninguna opción con este nombre.
option-no-address =
    { $option } ({ $found }) debe ser una dirección que empiece por https://, o una del propio servidor de esta
    página. Para probar vale http://localhost. Se muestra el patio de muestra o el de quien lee.
option-no-currency = { $option } ({ $found }) debe ser tres letras mayúsculas: su código ISO 4217, como EUR o USD.
option-no-origin =
    { $option } ({ $found }) debe ser un origen como https://www.example.com, sin ruta y sin barra al final.
    A nadie se le comunica la altura de la página.
option-none-of = { $option } ({ $found }) debe ser uno de: { $words }. En minúsculas, como está escrito aquí.
option-not-spoken =
    { $option } ({ $found }) debe ser uno de: { $tags }. La página habla el idioma de quien lee, si lo tiene; si
    no, inglés.
option-not-in-yard = { $option } ({ $found }): el patio no tiene nada con este identificador, así que se puede elegir.
option-no-colour =
    { $option } ({ $found }) debe ser un color: por su nombre, como #rrggbb, rgb(…) o hsl(…), y no translúcido.
    Se queda el color propio de la página.
option-contrast =
    { $option } ({ $ink } sobre { $ground }: { $contrast } a 1) debe tener de { $least } a { $most } a 1. Lo
    escrito ahí debe poder leerse: se queda el color propio de la página.
