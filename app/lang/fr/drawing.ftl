### No native speaker has read this yet.

shows = Par où passe { $route } sur la machine, du moteur à l'outil, placé { $seat }.
