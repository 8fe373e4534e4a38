### No native speaker has read this yet.

## Three-point hitches and PTO shafts

shaft-1 = Type 1 : 1⅜ in, 6 cannelures
shaft-2 = Type 2 : 1⅜ in, 21 cannelures
shaft-3 = Type 3 : 1¾ in, 20 cannelures
shaft-4 = Type 4 : 57,5 mm, 22 cannelures

## Machines and implements

tractor = Tracteur
skid-steer = Chargeuse compacte sur roues ou chenilles
thrower = Souffleuse
mulcher = Broyeur
broom = Balayeuse
chipper = Déchiqueteuse
mower = Tondeuse
tiller = Fraise rotative
auger = Tarière
other = Autre chose qui tourne

## Gears and other steps of a shaft

spur = Engrenages droits
bevel = Engrenages coniques
spiral-bevel = Engrenages coniques spiraux
worm = Vis sans fin
belt = Courroie
chain = Chaîne
joint-shaft = Arbre à cardans
direct = Direct, rien entre les deux

## How an engine gets its air, how a machine drives

natural = Atmosphérique
turbo = Turbo
turbo-cooled = Turbo avec refroidisseur d'air
gear = Mécanique
hydrostatic = Hydrostatique

## Circuits, and what steering takes of them

remotes = Distributeurs auxiliaires ou troisième fonction
standard-flow = Débit standard
high-flow = Haut débit
separate-pump = D'une pompe séparée
fixed-priority = Prend d'abord un débit fixe
load-sensing-priority = Ne prend de l'huile qu'en braquant
summed = Pompe séparée, mais ajoutée au débit de la fiche
open-centre = Pompe fixe, centre ouvert
pressure-compensated = Pompe variable, à pression compensée
load-sensing = Pompe variable, à détection de charge
tractor-fluid = Huile de tracteur (UTTO)
clockwise = Sens horaire
anticlockwise = Sens antihoraire

## Places, work, ground

rear = Arrière
front = Avant
mass = Tonnes de matière
area = Surface travaillée
volume = Mètres cubes de matière
length = Mètres de parcours
firm = Ferme
grass = Herbe
loose = Meuble
loader = Sur le chargeur
front-frame = Sur un faux châssis à l'avant
rear-backwards = Sur l'attelage arrière, en marche arrière
rear-forwards = Sur l'attelage arrière, en marche avant
rear-shaft = Arbre arrière
mid-shaft = Arbre ventral
turned-forward = Arbre arrière ramené vers l'avant
machine-hydraulics = Hydraulique de la machine
pump-pack = Groupe hydraulique

## Where a figure comes from

own = Chiffre personnel ou fiche
computed = Calculé à partir d'autres
common-practice = Usage courant
from-memory = De mémoire
judgement = Jugement
pump-reference = Référence sur les pompes
motor-article = Article sur les moteurs
rating-rule = Règle des 86 %
gear-note = Note sur les engrenages
belt-sheet = Fiche sur les courroies
coupler-table = Tableau des coupleurs
starting-note = Note sur le couple de démarrage
tank-rules = Règles pour les réservoirs
surface-rules = Règles pour la surface d'un réservoir
mower-article = Article sur les tondeuses
chipper-trial = Essai de déchiqueteuses
viscosity-chart = Graphique des viscosités
