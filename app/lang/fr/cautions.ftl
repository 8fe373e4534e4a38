### No native speaker has read this yet.

lead =
    Les arbres et l'huile sous pression mutilent et tuent. Ces rappels ne remplacent ni les manuels de la machine et
    de l'outil, ni les règles locales, ni la formation.

## For every route with a shaft

guards = Tous les protecteurs en place, sur l'arbre et à ses deux bouts. Personne d'autre ne monte.
engine-off = Moteur coupé et tout à l'arrêt avant que quiconque dégage, graisse ou attelle.
never-step-over =
    N'enjambez jamais un arbre qui tourne : à 540 tr/min il fait neuf tours par seconde et prend un bras avant que
    vous le sentiez.

## For every route with oil

trapped-pressure = Relâchez la pression emprisonnée avant d'ouvrir un coupleur ou un flexible.
leaks =
    Cherchez les fuites avec un morceau de carton, jamais avec la main. De l'huile sous la peau est une urgence même
    si cela se voit à peine : allez tout de suite à l'hôpital.
hot-oil = L'huile et les raccords chauffent assez pour brûler, surtout là où beaucoup de puissance se perd.

## For every route

carry-low = Portez la charge bas ; un outil à l'avant allège l'essieu arrière : lestez comme le dit le manuel.
flung-stones = Souffleuses, broyeurs et tondeuses projettent des pierres : tenez les gens bien à l'écart.

## Where they come from

university-advice = conseils universitaires de sécurité à la ferme
extension-advice = conseils de vulgarisation agricole sur la sécurité hydraulique
common-practice = usage courant, sans source
loader-manual = le manuel d'un fabricant de chargeurs

## What the figures take for granted

net-power =
    La puissance du moteur est la puissance nette ; selon le régime elle suit les points du parc ou, s'il n'y en a
    pas, une forme par défaut pour moteurs diesel. L'air est à 15 °C et au niveau de la mer tant que vous ne le
    changez pas.
driving =
    L'avancement prend le roulement, la pente et la poussée, divisés par le rendement de la transmission, quand le parc
    connaît la masse de la machine. Le patinage des roues n'est pas compté.
ranges =
    Chaque chiffre qui n'est pas connu exactement a une valeur basse, une probable et une haute ; les barres
    montrent la probable, et le trait fin le moins et le plus que toutes ensemble peuvent donner.
efficiencies =
    Les rendements des pompes et des moteurs sont ceux de leur point nominal ; en dehors, ils suivent la pression,
    le régime et la viscosité de l'huile.
hooking-up =
    L'attelage est jugé d'après ce que le parc dit de la machine, de l'outil et des kits : arbres, régimes, sens de
    rotation, attelage trois points, poids, lestage et coupleurs. Ce qu'il ne dit pas est à demander ; ce qu'il dit
    reste à vérifier sur la machine.
standings =
    Le verdict est ce qui arrive divisé par ce que demande le travail : Confortable dès 1,15, Suffisant dès 1,0, Plus lent
    dès 0,7, À la peine dès 0,4, et À bout en dessous ; un rotor sous son régime de travail le plus bas ne fait jamais
    mieux que « À la peine ». Ces bandes sont le jugement de ce projet.
units = hp est le cheval-vapeur britannique de 745,7 W, gpm le gallon américain par minute.

## The equations that are used

model-engine =
    Moteur dans un air raréfié ou chaud : la forme de l'ISO 3046-1, atmosphère standard, pression de saturation
    selon Buck. Puissance selon le régime sans points : la forme de Leiderman.
model-pumps =
    Pompes et moteurs : le modèle de Wilson, avec fuites laminaires, frottement sec et traînée visqueuse, ajusté aux
    rendements du point nominal (au sens de l'ISO 4391) ; la moitié du frottement de ce point est visqueuse.
model-lines =
    Conduites : Darcy-Weisbach, laminaire jusqu'à Re 2000, Haaland dès 4000, une droite entre les deux ; raccords
    par K ; coupleurs et distributeurs par le carré du débit.
model-oil = Huile : ASTM D341 pour la viscosité selon la température ; la masse volumique baisse de 0,07 % par kelvin.
model-joints =
    Joints : cinématique générale du joint de cardan. Le milieu d'un arbre à cardans fluctue de q ; deux angles
    égaux, fourches en phase, l'annulent au bout. Le rendement baisse avec l'angle.
model-heat =
    Chaleur : chaque watt que perd une étape avec huile chauffe l'huile une fois ; le réservoir évacue selon deux
    règles pratiques.
model-work =
    Travail : ce que prend la marche à vide croît avec le carré du régime du rotor ; projeter prend une énergie qui
    croît aussi avec le carré ; les autres travaux prennent tant par tonne, par mètre carré ou cube, ou par mètre de
    parcours.

## What isn't modelled

not-sag = La chute de régime en charge : le moteur tient le régime réglé.
not-slip = Le patinage des roues, les demi-tours en bout de ligne, le conducteur.
not-other-heat = La chaleur évacuée par flexibles, tuyaux, carters et vérins ; vent et soleil sur le réservoir.
not-foam = Mousse et air dans l'huile, usure, démarrages sous le point d'écoulement de l'huile.
not-shock = Les à-coups, ce qu'un arbre supporte un instant, la fatigue.
not-peaks = Les pics de pression, le temps que prennent les valves, la dilatation des flexibles.
not-air-drag = Jusqu'où va vraiment une projection dans l'air.
