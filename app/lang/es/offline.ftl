### No native speaker has read this yet.

newer = Hay una versión nueva de esta página. Nada se recarga antes de que usted lo diga.
loses = Este navegador no guarda sus cambios en el patio: al recargar se perderían. Guarde antes el
    patio como archivo y ábralo de nuevo después.
reload = Recargar ahora
    .all-the-same = Recargar de todos modos
later = Más tarde
version = Versión { $number }
version-of-build = Versión { $number } ({ $build })
kept = Este navegador guarda la página: se abre también sin red.
refused = Este navegador no guarda la página: hace falta red para abrirla.
licences = Licencias de lo que compone este programa
