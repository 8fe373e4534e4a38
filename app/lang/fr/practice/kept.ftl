### No native speaker has read this yet.

lead = Ceci est pour vous seul. Cela reste dans ce navigateur, sur cet appareil, et ne va nulle part.
empty = Rien n'est encore gardé. Cela commence avec votre premier cas.
export = Enregistrer comme fichier (JSON)
erase = Effacer
    .ask = Tout effacer ? On ne peut pas le faire revenir.
    .yes = Oui, effacer
    .no = Garder
erased = Effacé.

## How far an idea has come

not-met = pas encore rencontré
taking-shape = prend forme
getting-there = en bonne voie
firm = solide : vous le savez, et vous savez que vous le savez
behind = { $cases } ; ensuite : { $help }

## Why the record isn't kept

trouble-closed =
    Ce navigateur ne laisse rien garder ici à la page. Vous pouvez vous exercer quand même ; ce que vous
    faites est oublié quand vous partez, à moins de l'enregistrer comme fichier.
trouble-full =
    Ce navigateur n'a plus de place pour garder votre dernière réponse. Enregistrez-la comme fichier, ou
    faites de la place dans les réglages du navigateur.
trouble-damaged =
    Ce que ce navigateur gardait n'est plus lisible. Cela reste tel quel, et les nouvelles réponses ne sont
    pas gardées. Effacez-le pour recommencer.
trouble-newer =
    Une version plus récente de cette page a gardé ce qui est ici. Rechargez la page pour l'utiliser ; d'ici
    là, cela reste tel quel, et les nouvelles réponses ne sont pas gardées.
