### No native speaker has read this yet.

document = Farend : ce qui entraîne vraiment l'outil
purpose = Ce qui entraîne vraiment l'outil : combien de la puissance du moteur arrive à son arbre, par chaque voie.
language = Langue
unread = Traduction pas encore relue par un francophone.
missed = Impossible de charger { $language } ; la page reste en français. Réessayez quand il y aura du réseau.

machine = Machine
implement = Outil
units = Unités
metric = Métriques : kW, bar
us = US : hp, psi
outdoors = Soleil et gants
views = Vues
view-pair = Une paire
view-grid = Tout le parc
view-yard = Modifier le parc
view-practice = Exercices
invented = Parc de démonstration. Machines, outils et lieu sont inventés.
menu = Parc et lien
open-file = Ouvrir un parc, une comparaison ou un tableau…
save-demo = Enregistrer le parc de démonstration comme modèle
copy-link = Copier le lien vers cette comparaison
copied = Copié.
copy-by-hand = Ce navigateur garde le presse-papiers fermé. Copiez-le d'ici :
save = Enregistrer
save-routes = Tableau des voies (CSV)
save-ledger = Bilan de la voie ouverte (CSV)
save-svg = Image nette à toute taille (SVG)
save-png = Image pour diapositives et courriel (PNG)
save-comparison = Cette comparaison, à rouvrir (JSON)
close = Fermer
not-loaded = Cette partie de la page n'a pas pu être chargée. Le réseau est-il là ?
try-again = Réessayer

## Bars

routes-heading = Six voies, un moteur
arrives = arrive au rotor
lost-in-shafts = perdu dans les arbres, engrenages et courroies
lost-in-oil = perdu dans l'huile
not-taken-up = puissance du moteur que la voie ne peut pas prendre
in-shafts = perdu dans les arbres
in-oil = perdu dans l'huile
left-over = non utilisé
before = air et avancement
invented-data = Données de démonstration inventées
air-and-driving = pris par l'air raréfié et l'avancement
need = ce que demande le travail, probable et marge
spread = du moins au plus de ce qui arrive
as-table = La même chose en tableau

## Controls and curve

what-if = Et si…
less = Moins
more = Plus
own = Au départ : { $value }
engine-set = La puissance nette du moteur est réglée comme le dit une fiche : { $power }.
back-to-own = Revenir à { $value }
curve-over = Courbe selon
circuit = Circuit
curve-point = où cela se tient maintenant
curve-likely = probable
curve-range = du minimum au maximum
curve-need = besoin
delivered = Arrive
enter = Saisissez un nombre ou laissez vide : { $allowed }
driving-and-material = Avance et matière
site-and-oil = Lieu et huile
rear-pto = Prise de force arrière
ground-heading = Sol
oil-grade = Huile des circuits
as-in-the-yard = Comme dans le parc

## Before a decision

deciding-heading = Avant de décider
fit = Peut-on l'atteler ?
fits = Ce qui convient
questions = À demander avant tout achat, pour toutes les voies
choose = Où il se place, et ce qui compte pour vous
seat = Place
at-work-heading = Au travail
hookup = Pour l'atteler
usually = d'habitude
standing-for-good = Dans la durée
points = Points
points-of = { $points } ({ $power } pour la puissance, { $wishes } pour ce qui compte)
not-weighed = non évalué
points-note =
    Puissance : 6 points pour Confortable, 5 pour Suffisant, 2 pour Plus lent ; en dessous, et là où quelque
    chose l'empêche, une voie n'est pas évaluée. Chaque chose qui compte ajoute jusqu'à 1 point, ou 2 si
    elle compte beaucoup. Le coût compte dès que tous les prix sont connus. Une huile qui chauffe trop ne
    laisse rien de mieux que Plus lent tant qu'elle n'est pas refroidie. Les points sont le jugement de ce
    projet.

## For those who want to know more

deeper-heading = Pour qui veut en savoir plus
work = Comment va le travail
heat = Combien l'huile chauffe
influences = Ce qui déplace le plus ce chiffre
all-sources = D'où viennent les chiffres, et ce qui n'est pas modélisé
job = Le travail
job-by = Mesuré par
most-work = Travail maximal
time = Temps pour le travail
ground-speed = Vitesse d'avancement
throws = Projette, au plus
tips = Les pointes tournent à
no-work = Le parc ne dit pas ce que demande le travail de cet outil : aucun temps ne peut être donné.
no-oil = Sur cette voie, aucune huile ne porte de puissance.
nothing-moves = Rien ne tourne sur cette voie.
figure-heading = Chiffre
at-low = Arrive à sa valeur basse
at-high = Arrive à sa valeur haute
not-uncertain = Rien n'est incertain sur cette voie.
rule = Le réservoir évacue
settles-at = Se stabilise à
to-limit = Du froid à la limite
for-good = Arrive dans la durée
never = jamais
never-done = pas terminé
too-slow = Le rotor tourne trop lentement pour bien travailler.
nothing = rien
not-modelled = Non modélisé
models = Équations
figures = Chiffres

## Ledger

ledger-heading = Où va la puissance
stage-heading = Étape
takes = Prend
loses = Perd
passes-on = Transmet
route-heading = Voie
standing-heading = Verdict
held-by = Limité par
lost = Perdu en chemin
engine = Moteur
rotor = Rotor
kit = Demande
can-give = Peut donner
keeps = Garde
not-for-this-route = ne peut pas être pris
formulas = Montrer les formules
sources = Montrer les sources
cautions-heading = Avant que rien ne tourne
assumed-heading = Ce qui est tenu pour acquis ici

## Routes

route-rear-shaft = Arbre arrière
    .small = arbre arrière
    .within = l'arbre arrière
route-mid-shaft = Arbre ventral
    .small = arbre ventral
    .within = l'arbre ventral
route-turned-forward = Arbre arrière ramené vers l'avant
    .small = arbre arrière ramené vers l'avant
    .within = l'arbre arrière ramené vers l'avant
route-machine-hydraulics = Hydraulique de la machine
    .small = hydraulique de la machine
    .within = l'hydraulique de la machine elle-même
route-pump-pack = Groupe hydraulique
    .small = groupe hydraulique
    .within = un groupe hydraulique sur la prise de force
route-skid-steer = Hydraulique de la chargeuse compacte
    .small = hydraulique de la chargeuse compacte
    .within = l'hydraulique de la chargeuse compacte

## Standings

standing-ample = Confortable
    .small = confortable
    .at-work = de la puissance de reste pour le travail
standing-enough = Suffisant
    .small = suffisant
    .at-work = le travail est assuré
standing-slower = Plus lent
    .small = plus lent
    .at-work = le travail se fait, mais plus lentement
standing-labours = À la peine
    .small = à la peine
    .at-work = il peine : attendez-vous à des calages et à un mauvais travail
standing-starves = À bout
    .small = à bout
    .at-work = il est à bout : le travail ne peut pas se faire ainsi
no-fit = Non attelable
    .small = non attelable

## Limits

limit-engine = moteur
    .reason = Le moteur ne donne pas plus à ce régime.
limit-shaft-rating = couple admissible de l'arbre
    .reason = Un arbre ou un boîtier en chemin ne doit pas recevoir plus de couple.
limit-flow = débit (vitesse)
    .reason = Le débit, c'est la vitesse : il n'y a pas assez d'huile pour amener le rotor à son régime nominal.
limit-pressure = pression (couple)
    .reason = La pression, c'est le couple : le limiteur de pression ne laisse pas passer plus.
limit-oil-heat = chaleur de l'huile
    .reason = L'huile devient trop chaude.
limit-implement = limite de l'outil
    .reason = L'entrée de l'outil lui-même ne doit pas recevoir plus.

## Stages

stage-pto-train = Transmission de la prise de force
    .small = transmission de la prise de force
stage-input-shaft = Arbre d'entrée de l'outil
    .small = arbre d'entrée de l'outil
stage-spur = Engrenages droits
    .small = engrenages droits
stage-bevel = Engrenages coniques
    .small = engrenages coniques
stage-spiral-bevel = Engrenages coniques spiraux
    .small = engrenages coniques spiraux
stage-worm = Vis sans fin
    .small = vis sans fin
stage-belt = Transmission par courroie
    .small = transmission par courroie
stage-chain = Transmission par chaîne
    .small = transmission par chaîne
stage-joint-shaft = Arbre à cardans
    .small = arbre à cardans
stage-direct = Prise directe
    .small = prise directe
stage-pump = Pompe
    .small = pompe
stage-steering = Part de la direction
    .small = part de la direction
stage-divert = Débit renvoyé au réservoir
    .small = débit renvoyé au réservoir
stage-valve = Distributeur
    .small = distributeur
stage-hoses = Flexibles et coupleurs
    .small = flexibles et coupleurs
stage-motor = Moteur hydraulique
    .small = moteur hydraulique

## Things that can be turned

control-engine-speed = Régime du moteur
    .small = régime du moteur
control-own-flow = Débit selon la fiche
    .small = débit selon la fiche
control-own-relief = Pression de tarage
    .small = pression de tarage
control-pack-flow = Débit du groupe au régime nominal de la prise de force
    .small = débit du groupe au régime nominal de la prise de force
control-pack-relief = Pression de tarage du groupe
    .small = pression de tarage du groupe
control-oil-temperature = Température de l'huile
    .small = température de l'huile
control-altitude = Altitude
    .small = altitude
control-air-temperature = Température de l'air
    .small = température de l'air
control-ground-speed = Vitesse d'avancement
    .small = vitesse d'avancement
control-slope = Pente, en montée au-dessus de zéro
    .small = pente, en montée au-dessus de zéro
control-depth = Profondeur de travail
    .small = profondeur de travail
control-material-density = Masse volumique de la matière
    .small = masse volumique de la matière

## What is driven on, oils, measures, outlets, lines

ground-firm = Ferme
ground-grass = Herbe
ground-loose = Meuble
grade-tractor-fluid = Huile de tracteur (UTTO)
measure-mass = masse
measure-area = surface
measure-volume = volume
measure-length = longueur
outlet-remotes = Distributeurs auxiliaires ou troisième fonction
outlet-standard-flow = Débit standard
outlet-high-flow = Haut débit
line-suction = la conduite d'aspiration
line-supply = le flexible vers le moteur
line-back = le flexible de retour

## Uncertain figures

figure-engine-power = puissance nette du moteur
figure-driving = ce que prend l'avancement
figure-efficiency = rendement
figure-rating = limite admissible
figure-sheet-flow = débit selon la fiche
figure-steering-flow = débit de la direction
figure-leakage = fuites (ηv)
figure-friction = frottement (ηhm)
figure-relief = pression de tarage
figure-valve-drop = pression qu'il prend
figure-coupler-drop = pression que prend un coupleur
figure-viscosity = viscosité de l'huile

## What a tank sheds

surface-btu = 11,4 W/(m²·K), soit 2,0 Btu/(h·ft²·°F)
surface-horsepower = 14,4 W/(m²·K), soit 0,001 hp/(ft²·°F)

## How long a joint may run at an angle

angle-fine = bien toute la journée
angle-steady = jusqu'à 15° convient toute la journée, 25° est le maximum en travail continu
angle-brief = par moments seulement ; 25° est le maximum en travail continu
angle-needs-wide-angle = seul un joint grand angle le supporte, et par moments seulement
angle-never = aucun joint ne le supporte

## Units as a screen reader should say them

spoken-rpm = tours par minute
spoken-litres-per-minute = litres par minute
spoken-celsius = degrés Celsius
spoken-fahrenheit = degrés Fahrenheit
spoken-gallons = gallons américains par minute
spoken-psi = livres par pouce carré
spoken-metres = mètres
spoken-feet = pieds
spoken-kilometres-per-hour = kilomètres par heure
spoken-miles-per-hour = miles par heure
spoken-centimetres = centimètres
spoken-inches = pouces
spoken-kilograms-per-cubic-metre = kilogrammes par mètre cube
spoken-pounds-per-cubic-foot = livres par pied cube
