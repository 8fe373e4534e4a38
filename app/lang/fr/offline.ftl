### No native speaker has read this yet.

newer = Une nouvelle version de cette page est prête. Rien n'est rechargé avant que vous le disiez.
loses = Ce navigateur ne garde pas vos modifications du parc : recharger les ferait perdre. Enregistrez
    d'abord le parc comme fichier, et rouvrez-le ensuite.
reload = Recharger maintenant
    .all-the-same = Recharger quand même
later = Plus tard
version = Version { $number }
version-of-build = Version { $number } ({ $build })
kept = Ce navigateur garde la page : elle s'ouvre aussi sans réseau.
refused = Ce navigateur ne garde pas la page : il faut un réseau pour l'ouvrir.
licences = Licences de ce dont ce programme est fait
