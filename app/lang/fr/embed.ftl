### No native speaker has read this yet.

try-again = Réessayer
use-demo = Utiliser le parc de démonstration
not-loaded = Le parc n'a pas pu être chargé
of-address = Ce parc vient d'une adresse et se charge chaque fois à nouveau : vos modifications durent tant que cette page reste ouverte. Enregistrez le parc comme fichier pour le retrouver.
anew = Les modifications durent tant que cette page reste ouverte : enregistrez le parc comme fichier.
loading = Le parc se charge depuis { $address } …
unreachable = Il ne peut pas être atteint : pas de réseau, pas de telle adresse, ou son hébergeur ne le partage pas avec d'autres pages.
too-slow = Son hébergeur n'a pas répondu à temps.
moved = Son hébergeur renvoie à une adresse d'où il n'est pas sûr de charger.
nothing-there = Il n'y a rien à cette adresse.
refused = Son hébergeur l'a refusé, avec le numéro { $status }.
too-large = Il est plus grand que tout parc.
no-yard = Ce n'est pas un parc utilisable :
kept-since = L'adresse du parc ne peut pas être atteinte. Voici le parc tel qu'il était quand ce navigateur l'a chargé la dernière fois, le { $day }.
opened = { $file } est ouvert tant que cette page l'est. Il reste sur cet appareil, et ce navigateur ne le conserve pas.
open-in-tab = Ouvrir cette page dans son propre onglet
tab-refused = Aucun onglet ne s'est ouvert : copiez l'adresse dans un nouveau.
address-to-copy = L'adresse, à copier
text-to-copy = Le texte du fichier, à copier

## What is wrong with the host's options

for-host =
    Pour qui a mis cette page ici : { $options ->
        [one] { $options } option n'est pas utilisable
       *[other] { $options } options ne sont pas utilisables
    }
option-twice = { $option } ({ $found }) figure plus d'une fois. La première compte.
option-empty = { $option } ne dit rien. Retirez-la plutôt.
option-unknown = { $option } ({ $found }) : la page n'a pas d'option de ce nom.
option-no-address =
    { $option } ({ $found }) doit être une adresse qui commence par https://, ou une adresse de l'hébergeur de
    cette page. Pour essayer, http://localhost convient. Le parc de démonstration ou celui du lecteur est montré.
option-no-currency = { $option } ({ $found }) doit être fait de trois lettres majuscules : son code ISO 4217, comme EUR ou USD.
option-no-origin =
    { $option } ({ $found }) doit être une origine comme https://www.example.com, sans chemin ni barre à la fin.
    Personne n'apprend la hauteur de la page.
option-none-of = { $option } ({ $found }) doit être l'un de : { $words }. En minuscules, comme écrit ici.
option-not-spoken =
    { $option } ({ $found }) doit être l'un de : { $tags }. La page parle la langue du lecteur si elle le peut,
    sinon l'anglais.
option-not-in-yard = { $option } ({ $found }) : le parc n'a rien sous cet identifiant, le lecteur peut donc choisir.
option-no-colour =
    { $option } ({ $found }) doit être une couleur : par son nom, comme #rrggbb, rgb(…) ou hsl(…), et non
    translucide. La couleur de la page reste.
option-contrast =
    { $option } ({ $ink } sur { $ground } : { $contrast } pour 1) doit être de { $least } à { $most } pour 1. Ce
    qui y est écrit doit rester lisible : la couleur de la page reste.
