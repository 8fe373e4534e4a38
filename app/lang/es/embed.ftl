### No native speaker has read this yet.

try-again = Intentar de nuevo
use-demo = Usar el patio de demostración
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
