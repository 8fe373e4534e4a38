### No native speaker has read this yet.

lead = Esto es solo para usted. Se queda en este navegador y en este aparato, y no va a ninguna parte.
empty = Todavía no hay nada guardado. Empieza con su primer caso.
export = Guardar como archivo (JSON)
erase = Borrarlo
    .ask = ¿Borrarlo todo? No se puede recuperar.
    .yes = Sí, borrarlo
    .no = Conservarlo
erased = Borrado.

## How far an idea has come

not-met = aún no ha salido
taking-shape = tomando forma
getting-there = va por buen camino
firm = firme: lo sabe, y sabe que lo sabe
behind = { $cases }; lo siguiente: { $help }

## Why the record isn't kept

trouble-closed =
    Este navegador no deja que la página guarde nada aquí. Puede practicar de todos modos; cómo va se olvida
    al salir, salvo que lo guarde como archivo.
trouble-full =
    A este navegador no le queda sitio para guardar su última respuesta. Guárdelo como archivo, o haga sitio
    en los ajustes del navegador.
trouble-damaged =
    Lo que guardó este navegador ya no se puede leer. Se deja como está, y las respuestas nuevas no se
    guardan. Bórrelo para empezar de nuevo.
trouble-newer =
    Lo que hay aquí lo guardó una versión más nueva de esta página. Vuelva a cargar la página para usarlo;
    hasta entonces se deja como está, y las respuestas nuevas no se guardan.
