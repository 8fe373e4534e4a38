### No native speaker has read this yet.

figure-of = { $field }, { $figure }

## What means the same wherever it stands

place = Où il se trouve
invented = Machines inventées
dealer = Qui remet ses feuilles
note = Une ligne sur ces feuilles
currency = Monnaie
hour-price = Prix d'une heure de travail
machines = Machines
implements = Outils
kits = Kits
format-version = Version du fichier
id = Identifiant court, pour les liens
name = Nom
kind = Type
mass-kg = Poids
price = Prix
engine = Moteur
rear-pto = Prise de force arrière
economy-pto = Prise de force arrière, économique
mid-pto = Prise de force ventrale
circuits = Sorties hydrauliques
oil = Huile
transmission = Transmission
hitch = Attelage trois points
loader = Chargeur
axles = Essieux
end = Bout d'arbre
reservoir = Réservoir et refroidisseur
rotor = Rotor
need-kw = Puissance que demande le travail
shafts = Entraînements par arbre
motor = Moteur hydraulique
work = Son travail
travel = Sur le terrain
mount = Comment il est monté
routes = Voies pour lesquelles il sert
included = Fourni d'origine, rien à acheter
kit-pto-rpm = Régime de la prise de force
drive = Étapes mécaniques
pump = Pompe
hoses = Flexibles et coupleurs
shaft = Arbre à cardans
seat = Où il place l'outil
hookup-min = Temps pour l'atteler
fitting-price = Prix du montage
grade = Grade
cst-40 = Viscosité à 40 °C
cst-100 = Viscosité à 100 °C
kg-m3 = Masse volumique à 15 °C
oil-l = Huile dans le réservoir
cooler-w-k = Ce qu'évacue le refroidisseur
relief-bar = Pression de tarage
valve-bar = Pression que prend le distributeur
volumetric = Rendement volumétrique
hydro-mechanical = Rendement hydromécanique
displacement-cm3 = Cylindrée
coupler-mm = Taille du coupleur
case-drain = Retour de drain
measure = Mesuré par
idle-kw = Puissance à vide
kwh-per-unit = Énergie par unité de travail
width-m = Largeur de travail
depth-m = Profondeur usuelle
density-kg-m3 = Masse volumique de la matière
usual-km-h = Vitesse usuelle
highest-km-h = Vitesse maximale pour un bon travail
ground = Sol
pushing-n = Résistance qu'oppose le travail
category = Catégorie d'attelage
centre-m = Centre de gravité, depuis les broches ou crochets
backwards = Travaille en marche arrière
guarded = Tous les protecteurs sont là
low = Bas
likely = Probable
high = Haut
source = D'où il vient

## An engine

engine-net-kw = Puissance nette
engine-gross-kw = Puissance brute
engine-rated-rpm = Régime nominal
engine-lowest-rpm = Régime minimal en charge
engine-curve = Puissance selon le régime
engine-aspiration = Comment il prend l'air

## A point of its curve

curve-rpm = Régime
curve-kw = Puissance

## A PTO

pto-rpm = Régime de l'arbre
pto-engine-rpm = Avec le moteur à
pto-tested-kw = Puissance mesurée à l'arbre
pto-rating-kw = Maximum admis par l'arbre

## A hydraulic outlet

circuit-outlet = Sortie
circuit-flow-l-min = Débit selon la fiche
circuit-engine-rpm = Avec le moteur à
circuit-steering = Part de la direction
circuit-supply = Type de pompe

## Steering

steering-policy = Comment la direction reçoit son huile
steering-flow-l-min = Débit de la direction

## A shaft end

end-shaft = Type d'arbre
end-turns = Sens de rotation
end-height-m = Hauteur au-dessus du sol
end-ahead-m = S'arrête en avant des rotules de
end-behind-m = S'arrête en arrière des broches de
end-above-m = Au-dessus des broches inférieures de

## A three-point hitch

hitch-category = Catégorie
hitch-lift-kg = Lève
hitch-lift-at-m = Mesuré derrière les rotules
hitch-lowest-m = Hauteur des rotules au travail
hitch-highest-m = Hauteur des rotules relevées

## A loader

loader-lift-kg = Lève aux broches
loader-reach-m = De l'articulation aux broches
loader-third-function = Troisième fonction à son bout

## Axles

axles-wheelbase-m = Empattement
axles-front-kg = Poids sur l'essieu avant
axles-front-limit-kg = Maximum sur l'essieu avant
axles-rear-limit-kg = Maximum sur l'essieu arrière
axles-loader-ahead-m = De l'essieu avant aux broches du chargeur
axles-frame-ahead-m = De l'essieu avant aux crochets d'un faux châssis
axles-hitch-behind-m = De l'essieu arrière aux rotules

## A rotor

rotor-rated-rpm = Régime nominal
rotor-lowest-rpm = Régime minimal pour un bon travail
rotor-highest-rpm = Régime maximal permis
rotor-diameter-mm = Diamètre aux pointes

## A shaft drive of an implement

shaft-place = Bout de la machine
shaft-rpm = Régime d'entrée
shaft-drive = Étapes jusqu'au rotor
shaft-rating-kw = Maximum admis par l'entrée
shaft-end = Arbre d'entrée
shaft-price = Prix de l'outil dans cette version

## A hydraulic motor

motor-ratio = Régime du rotor sur celui du moteur
motor-drive = Étapes jusqu'au rotor
motor-highest-l-min = Débit maximal
motor-highest-bar = Pression maximale
motor-starting = Couple de démarrage
motor-case-drain = Demande un retour de drain
motor-price = Prix de l'outil dans cette version

## A mechanical step

step-ratio = Régime de sortie sur celui d'entrée
step-efficiency = Rendement
step-rating-nm = Couple maximal à sa sortie
step-slip-clutch-nm = Le limiteur de couple patine à
step-angle-deg = Angle de chaque joint

## A pump

pump-highest-rpm = Régime maximal
pump-suction-bore-mm = Conduite d'aspiration, diamètre intérieur
pump-suction-length-m = Conduite d'aspiration, longueur
pump-suction-lift-m = Hauteur de la pompe au-dessus de l'huile

## Hoses and couplers

hoses-bore-mm = Diamètre intérieur
hoses-length-m = Longueur de l'aller
hoses-back-bore-mm = Diamètre intérieur du flexible de retour
hoses-couplers = Coupleurs, aller et retour
hoses-coupler-bar = Pression que prend un coupleur
hoses-coupler-l-min = À un débit de
hoses-fittings-k = Coudes et adaptateurs, somme des K

## A joint shaft of a kit

kit-shaft-pto-end = Type de prise de force auquel il va
kit-shaft-far-end = Type d'entrée auquel il va
kit-shaft-closed-m = Longueur, tout rentré
kit-shaft-open-m = Longueur où ses tubes se séparent
kit-shaft-reverses = Inverse le sens de rotation

## One of a list's groups

item-circuits = Sortie
item-shafts = Entraînement par arbre
item-drive = Étape
item-curve = Point
item-other = Entrée
