### No native speaker has read this yet.

bad-file =
    { $file } no se puede usar: { $faults ->
        [one] tiene un error
       *[other] tiene { $faults } errores
    }. El patio que estaba abierto sigue abierto. Corrija el archivo y vuelva a abrirlo.
unreadable-file = { $file } no se pudo leer del disco. El patio que estaba abierto sigue abierto.
opened-yard =
    { $file } está abierto, y volverá a abrirse con esta página: este navegador lo guarda. No sale de este
    dispositivo. En «Editar el patio» se puede deshacer este paso.
opened-comparison =
    { $file } está abierto, con el patio con el que se guardó, que este navegador conserva. No sale de este
    dispositivo. En «Editar el patio» se puede recuperar el patio anterior.
bad-link = { $fault } Lo que ve es el comienzo de este patio.
    .damaged = El enlace está dañado: quizá se cortó una parte al copiarlo.
    .newer = El enlace es de una versión más nueva de esta página. Primero recargue la página.
    .too-long = El enlace es más largo que cualquiera de los que hace esta página.
missing-from-yard =
    El enlace nombra algo que este patio no tiene, o tiene con errores: { $missing }. { $elsewhere } Lo demás
    se muestra.
    .in-demo = El patio de muestra lo tiene.
    .in-another = Si viene de otro patio, abra el archivo de ese patio.
bad-settings = Los ajustes del enlace no van con esta máquina, así que se muestran las cifras propias de ella.
cant-save = Este navegador no deja que la página guarde aquí un archivo. Abra la página en una pestaña propia y pruebe de nuevo.
saved-from-frame = Se ha entregado { $file }, pero la página que rodea a esta puede retener los archivos. Si no ha llegado ninguno, tómelo de aquí:
cant-draw =
    Este navegador no puede hacer aquí una imagen de píxeles. Guárdela como SVG: muestra lo mismo, nítido a
    cualquier tamaño.
no-ledger = { $route }: aquí no se puede acoplar, así que no tiene balance. Abra otra vía y guarde su balance.

mend-here = Abrirlo de todos modos y corregirlo aquí
open-demo = Abrir el patio de muestra para este enlace
save-yard = Guardar el patio de esta pestaña como archivo
save-kept = Guardar como archivo lo que se conservaba
take-other = Tomar el de la otra pestaña
take-kept = Abrir el patio que se conserva
keep-mine = Conservar el mío
overwrite = Conservar este patio en su lugar

denied =
    Este navegador no deja que la página conserve nada aquí: sus cambios duran mientras esta página siga
    abierta. Guarde el patio como archivo para volver a tenerlo.
full =
    El espacio que da este navegador está lleno: sus últimos cambios no se conservan, lo conservado antes sí.
    Guarde el patio como archivo para volver a tenerlo.
set-aside =
    Lo que este navegador conservaba de su patio está dañado y no se puede leer. Se ha apartado, no tirado;
    está abierto el patio de muestra. Si guardó su patio como archivo, ábralo.
held =
    Este navegador conserva un patio que esta versión de la página no puede leer, probablemente de una más
    nueva. Se queda como está, así que nada de lo que cambie aquí se conserva. Primero recargue la página;
    puede que sea una antigua.
other-changed =
    El patio se cambió en otra pestaña. Hasta que diga cuál de los dos vale, los cambios de esta pestaña no se
    conservan.
other-went-back =
    Otra pestaña volvió al patio de muestra. Hasta que diga cuál de los dos vale, los cambios de esta pestaña
    no se conservan.
passed-over =
    Está abierto el patio de muestra. El patio que este navegador conserva sigue como estaba; hasta que diga
    cuál de los dos vale, nada de lo que cambie aquí se conserva.
