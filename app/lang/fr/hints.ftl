### No native speaker has read this yet.

## What a yard file holds

version = Écrivez 2 dans un nouveau fichier ; 1 et 2 peuvent être lus.
name = Le nom que voient les clients.
id = Un mot court, fait de minuscules, de chiffres et de tirets, unique dans sa liste.
place = Où se trouve le parc.
invented = Oui si les machines sont inventées.
dealer = Qui remet ses feuilles.
note = Une ligne du concessionnaire sur ces feuilles.
currency = Son code ISO 4217, comme EUR ou USD.
hour-price = Prix d'une heure de travail.
machines = Au moins une machine.
implements = Au moins un outil.
kits = Peut être vide : [].
kind = Ce que c'est.
yard-price = Dans la monnaie du parc.
where-none = Omettez-le s'il n'y en a pas.
where-unknown = Omettez-le si l'on n'en sait rien.

## A machine and its engine

engine = Son moteur.
net-power = Puissance nette au régime nominal ; 1 hp mécanique vaut 0,7457 kW. La puissance brute est plus élevée.
gross-power = Puissance brute au régime nominal, seulement si la nette est inconnue.
engine-rated = Le régime auquel vaut cette puissance.
engine-lowest = Le régime le plus bas auquel il peut travailler en charge.
curve = Puissance selon le régime, du plus bas au nominal ; c'est sa forme qui compte.
curve-speed = Chacun plus rapide que le précédent.
curve-power = Puissance à ce régime.
aspiration = Comment le moteur prend son air ; sans indication, il est atmosphérique : natural.
economy-pto = La prise de force arrière en mode économique : le même régime avec un moteur plus lent.
pto-speed = Le régime nominal de l'arbre : 540, 1000 ou 2000 le plus souvent.
pto-engine-speed = Le régime du moteur auquel l'arbre tourne à son régime nominal.
pto-tested = Puissance mesurée à l'arbre, selon un rapport d'essai.
pto-rating = Le maximum prévu pour l'arbre à son régime nominal.
pto-end = Là où s'emboîte l'arbre à cardans.
circuits = Une entrée pour chaque sortie qu'un outil peut utiliser.
machine-mass = Prête au travail, sans outil ; sans lui, l'avancement n'est pas compté.
transmission = Ce qui entraîne les roues ; sans indication, mécanique pour un tracteur, hydrostatique pour une chargeuse compacte.
hitch = Ce que l'on sait de l'attelage arrière.
loader = Ce que l'on sait du chargeur ou des bras.
axles = Pour le poids et le lestage.

## Oil, and what pumps it

oil = Sans indication, c'est ISO VG 46.
grade = Omettez-le si les viscosités sont données.
viscosity-at-40 = Viscosité à 40 °C, selon la fiche de l'huile.
viscosity-at-100 = Viscosité à 100 °C, selon la fiche de l'huile.
oil-density = Masse volumique à 15 °C ; sans indication, 870 kg/m³.
oil-volume = L'huile dans le réservoir.
cooler = Ce qu'évacue un refroidisseur pour chaque kelvin d'écart entre l'huile et l'air.
outlet = Là où se branchent les flexibles.
sheet-flow = Le débit de la fiche ; 1 gpm US vaut 3,785 L/min.
flow-speed = Le régime du moteur auquel vaut ce débit.
relief = Pression à laquelle s'ouvre le limiteur de pression ; 1 bar vaut 14,5 psi.
steering = Ce que prend la direction, et où.
steering-policy = Demandez à l'atelier : le débit aux sorties en dépend.
steering-flow = Nécessaire avec fixed_priority et summed : le débit de la direction.
supply = Comment répond la pompe ; sans indication, c'est une pompe fixe : open_centre.
valve = Ce que prend le distributeur ouvert au débit nominal de la pompe, ou la marge de la détection de charge.
volumetric = Débit sur débit, en part de un : 0,95 pour 95 %.
hydro-mechanical = Couple sur couple, en part de un : 0,94 pour 94 %.
coupler-size = La taille des coupleurs : 12,5 mm pour la plupart des tracteurs.
case-drain = S'il y a une troisième conduite, sans pression, vers le réservoir.

## How things are hooked up

hitch-category = Ses broches le disent : 22 mm, c'est 1 ; 28 mm, c'est 2.
hitch-lift = De la fiche de la machine.
hitch-lift-at = À quelle distance derrière les rotules vaut le relevage de la fiche : 0 ou 0,61 m (24 in).
hitch-lowest = Hauteur des rotules abaissées au travail.
hitch-highest = Leur hauteur relevées.
loader-lift = Aux broches, à pleine hauteur ; pour une chargeuse compacte, sa charge nominale.
loader-reach = De l'articulation des bras aux broches.
third-function = Si des flexibles pour l'huile d'un outil arrivent au bout du chargeur.
wheelbase = De l'essieu avant à l'essieu arrière.
front-weight = Sur l'essieu avant, sans outil ni lest : de la fiche ou d'une bascule.
front-limit = Le maximum que peut porter l'essieu avant.
rear-limit = Le maximum que peut porter l'essieu arrière.
loader-ahead = De l'essieu avant aux broches du chargeur, bras baissés.
frame-ahead = De l'essieu avant aux crochets d'un faux châssis avant.
hitch-behind = De l'essieu arrière aux rotules de l'attelage.
shaft-type = 6 cannelures, c'est 1 ; 21, c'est 2 ; 20, c'est 3 ; 22, c'est 4.
turns = Vu de derrière la machine, en regardant vers l'avant.
pto-height = Sa hauteur au-dessus du sol.
pto-ahead = De combien il s'arrête en avant des rotules de l'attelage.
input-turns = Dans quel sens il doit tourner, vu de derrière la machine.
input-behind = De combien il s'arrête en arrière des broches de l'attelage.
input-above = De combien il se trouve au-dessus des broches inférieures ; négatif, en dessous.
mount-category = La catégorie d'attelage de ses broches.
mount-centre = À quelle distance des broches ou crochets qui le portent se trouve son centre de gravité.
mount-backwards = Si, sur l'attelage arrière, il travaille avec la machine en marche arrière.
mount-guarded = Si tous ses protecteurs sont en place.
kit-pto-end = Le type de prise de force auquel il convient.
kit-far-end = Le type d'entrée auquel il convient.
kit-closed = Sa longueur rentré, de joint à joint.
kit-open = Sa longueur quand ses tubes se séparent, de joint à joint.
kit-reverses = Si tout ce qu'apporte le kit inverse au total le sens de rotation.
kit-guarded = Si ses protecteurs sont en place.

## An implement and its work

implement-kind = Ce qu'il fait.
rotor = Ce qui tourne.
need = Puissance au rotor pour le travail, et non la taille de machine que demande une fiche.
rotor-rated = Le régime pour lequel le rotor est fait.
rotor-lowest = En dessous, il ne travaille plus bien.
rotor-highest = Il ne doit jamais tourner plus vite.
rotor-diameter = Mesuré aux pointes, pour connaître leur vitesse.
shafts = Une entrée pour chaque entraînement par arbre proposé.
motor = Omettez-le s'il n'existe pas avec un moteur.
work = Ce que demande son travail ; sans cela, pas de temps pour un travail.
travel = Omettez-le pour ce qui travaille à l'arrêt.
implement-mass = Ce que la machine porte avec lui.
mount = Comment il est porté par sa machine.
shaft-place = Le bout de la machine auquel il convient.
shaft-speed = Le régime de l'entrée quand le rotor est à son régime nominal.
shaft-drive = Les étapes jusqu'au rotor, dans l'ordre, comme ["bevel"].
shaft-rating = Le maximum admis par l'entrée de l'outil.
shaft-price = Prix de l'outil avec cet arbre.
displacement = Par tour ; 1 in³ vaut 16,387 cm³.
motor-ratio = Régime du rotor sur celui du moteur : 1 si le moteur entraîne le rotor directement.
motor-flow = De la fiche du moteur.
motor-pressure = Plus forte différence de pression en continu, de la fiche du moteur.
motor-starting = Couple auquel il démarre, en part du couple sans pertes : 0,8 pour 80 %.
motor-case-drain = S'il lui faut une troisième conduite, sans pression, vers le réservoir.
motor-price = Prix de l'outil avec ce moteur.
measure = Masse pour ce qui est projeté ou déchiqueté, surface pour ce qui est tondu ou balayé, volume pour la terre.
idle = Puissance au rotor quand il tourne à son régime nominal sans rien faire.
energy = Énergie au rotor pour chaque tonne, 1000 m², m³ ou km.
width = Largeur de travail.
depth = Profondeur usuelle de neige, de végétation ou de labour.
material-density = Masse volumique usuelle : neige tassée, environ 200 kg/m³.
usual-speed = La vitesse usuelle au travail.
highest-speed = La plus grande vitesse à laquelle le travail reste bien fait.
ground = Ce sur quoi l'on roule.
pushing = La résistance qu'oppose le travail.

## A kit

gear-ratio = Régime de sortie sur celui d'entrée : au-dessus de 1, il accélère.
gear-efficiency = En part de un : 0,96 pour 96 %.
gear-rating = Le couple maximal sur son arbre de sortie.
slip-clutch = Couple auquel patine son limiteur de couple.
joint-angle = Angle de chaque joint d'un arbre à cardans au travail.
pump-highest = De la fiche de la pompe.
suction-bore = Diamètre intérieur de la conduite d'aspiration.
suction-length = Longueur de la conduite d'aspiration.
suction-lift = De combien la pompe est au-dessus de l'huile ; négatif, en dessous.
hose-bore = Diamètre intérieur du flexible.
hose-length = L'aller seul.
hose-back-bore = Diamètre intérieur du flexible de retour, s'il est différent.
couplers = Tous ceux que l'huile traverse, aller et retour.
coupler-drop = Ce que prend un coupleur à son débit nominal.
coupler-flow = Ce débit nominal.
fittings = Somme des coefficients de perte K des coudes et adaptateurs, à l'aller : un coude vif vaut environ 1.
routes = Les voies pour lesquelles il sert.
kit-pto-speed = Le régime de prise de force pour lequel il est fait ; omettez-le pour des flexibles ou pour tout régime.
kit-drive = Les étapes mécaniques à partir de la prise de force, dans l'ordre.
pump = Seulement pour un groupe hydraulique.
hoses = Pour toute voie avec de l'huile.
kit-shaft = Son arbre, de la prise de force à l'outil.
seat = Où il place l'outil ; sans indication, la place habituelle de sa voie.
included = S'il vient avec la machine ou l'outil, de sorte qu'il n'y a rien à acheter.
hookup = Minutes pour l'atteler.
fitting-price = Ce que coûte son montage.

## Figures held against each other

check-both = Vérifiez les deux chiffres.
outlet-once = Donnez chaque sortie une seule fois.
rear-follows-from-mass = Ce que porte l'essieu arrière découle du poids de la machine.
net-or-gross = Donnez net_kw ou, si l'on ne connaît que lui, gross_kw.
only-net = Donnez net_kw ou gross_kw, pas les deux : c'est net_kw qui compte.
curve-reaches = Les points doivent aller du régime minimal du moteur au nominal.
curve-needs-two = Une courbe demande deux points ou plus.
curve-above-zero = Le régime et la puissance doivent dépasser zéro.
oil-thins = L'huile se fluidifie en chauffant : vérifiez les deux chiffres.
grade-or-viscosities = Donnez un grade ou les deux viscosités, pas les deux.
grade-or-both = Donnez un grade, ou cst_40 et cst_100 ensemble.
outside-engine = C'est hors de la plage du moteur lui-même.
is-it-net = Un arbre ne peut pas donner plus que son moteur : la puissance du moteur est-elle nette ?
policy-takes-flow = La direction prend ainsi un débit : dites combien.
nothing-left = Il ne resterait rien pour l'outil.
shaft-or-motor = Donnez-lui au moins une entrée dans shafts, ou un moteur.
no-usual-figure = Pour ce type d'outil, il n'y a pas de chiffre usuel dans cette mesure : donnez-en un.
idling-included = Le besoin vaut pour le travail, marche à vide comprise.
needs-step = Les deux régimes diffèrent, donc quelque chose doit les changer : nommez l'engrenage, la courroie ou la chaîne.
name-route = Nommez au moins une voie.
oil-needs-hoses = Une voie avec de l'huile demande des flexibles.
pack-needs-pump = Un groupe hydraulique demande sa pompe.
own-figure = Omettez-le pour un chiffre à vous.
own-id = Donnez à chaque entrée le sien.
at-least-one = Une comparaison en demande au moins un.

## Files

too-large = C'est plus grand que tout fichier de ce genre : est-ce le bon ?
no-yard = Un fichier de parc commence par { "{" } et finit par { "}" } : est-ce le bon fichier ?
no-json = Ce n'est pas du JSON : cherchez là une virgule, un guillemet, un crochet ou une accolade qui manque.
newer = Une version plus récente de cette page l'a fait : rechargez d'abord la page.
please-report = Les règles laissent passer ce qui ne peut pas être lu : merci de le signaler.
list-of-yard = La liste du parc : des entrées entre accolades, séparées par des virgules.
tells-from-yard = Il distingue ce fichier de celui d'un parc.
reads-version-1 = Ce programme lit la version 1.
written-link = Ce qui a été choisi, comme l'écrit la page : cela ne s'écrit pas à la main.
whole-yard = Le parc entier, comme dans un fichier de parc.
link-damaged = Il a été changé ou coupé. Prenez-le dans l'adresse de la page, derrière le #.
link-of-another-yard = Le lien a été fait dans un autre parc.
tells-from-others = Il distingue ce fichier des autres.
set-yard = Le nom du parc dans lequel la série a été faite.
set-seed = Le nombre par lequel les cas sont tirés.
set-count = Combien de cas il y a.
set-kinds = Ce que demandent les cas : un type au moins.

## Tables

plain-number = Tout simple, comme 1234,5 ou 1234.5 : sans unité, et sans blanc entre les chiffres.
empty-cell = Laissez la cellule vide si on ne le sait pas.
see-template = Le modèle a toutes les colonnes : prenez-y les noms.
column-once = Retirez l'une des colonnes.
no-header = Cette colonne n'a pas d'en-tête : donnez-lui-en un, ou videz-la.
lost-letters = Des lettres se sont perdues : enregistrez le tableau en CSV UTF-8.
says-no = Elle dit non, et d'autres colonnes en disent quelque chose.
one-or-three = Donnez un seul chiffre, ou low, likely et high : pas les deux.
no-utf-8 = Ce n'est pas du texte en UTF-8 : enregistrez le tableau en CSV UTF-8.
needs-headers = La première ligne doit avoir des en-têtes comme id, name et engine.net_kw : le modèle les a tous.
in-parts = Reprenez-le par parties.
too-many-columns = Aucune liste n'en a autant : est-ce le bon fichier ?
lone-quote = À partir d'ici, un guillemet est seul : une cellule avec guillemets se met elle-même entre guillemets, et ceux de l'intérieur se doublent.

## Settings, and figures of a sheet

horsepower = 1 hp mécanique vaut 0,7457 kW.
gallons = 1 gallon US par minute vaut 3,785 L/min.
psi = 1 bar vaut 14,5 psi.
pump-speed = Le moteur ne peut pas travailler là : est-ce le régime de la pompe ?
engine-speed = Le moteur ne peut pas travailler là : choisissez un régime entre le minimal et le nominal.
engine-power = Prenez la puissance nette au régime nominal ; 1 hp mécanique vaut 0,7457 kW.
oil-temperature = On ne travaille pas là avec une telle huile.
altitude = Prenez l'altitude au-dessus du niveau de la mer.
air = Personne ne travaille par une telle température.
ground-speed = Prenez la vitesse au travail, pas sur route.
slope = Montée sur parcours : 0,1 pour 10 %. Un terrain plus raide demande une autre machine.
worked-depth = Prenez la profondeur de ce qui est travaillé.
worked-density = La neige fraîche pèse environ 100 kg/m³, la terre mouillée environ 1800.
job = Tonnes, mètres carrés, mètres cubes ou mètres.
pump-flow = Aucune pompe pour ce travail n'a un tel débit.
relief-set = Aucune machine pour ce travail n'est tarée ainsi.

## With what was found

meant = Vouliez-vous dire { $name } ?
fields-are = Les champs sont ici : { $keys }.
has-it-too = La ligne { $row } l'a aussi : donnez à chacune le sien.
