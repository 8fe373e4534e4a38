### No native speaker has read this yet.

try-again = Réessayer
use-demo = Utiliser le parc de démonstration
not-loaded = Le parc n'a pas pu être chargé
of-address = Ce parc vient d'une adresse et se charge chaque fois à nouveau : vos changements durent tant que cette page reste ouverte. Enregistrez le parc dans un fichier pour le retrouver.
anew = Les changements durent tant que cette page reste ouverte : enregistrez le parc dans un fichier.
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
open-in-tab = Ouvrir cette page dans un onglet à elle
tab-refused = Aucun onglet ne s'est ouvert : copiez l'adresse dans un nouveau.
address-to-copy = L'adresse, à copier
text-to-copy = Le texte du fichier, à copier
