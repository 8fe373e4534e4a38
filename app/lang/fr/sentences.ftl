### No native speaker has read this yet.

contrast = Par { $route } n'arrivent que { $power }, { $part } de la puissance du moteur ; { $best } en apporte { $times } fois autant.

bars = Des { $engine } du moteur arrivent au rotor : { $routes }. Le travail demande { $need }.
bars-no-fit = { $route } : non attelable
engine-end = moteur { $power }
need-end = le travail demande { $power }
picture-title = { $implement } avec { $machine }
picture-subject = Ce qui arrive au rotor par six voies, des { $power } nets du moteur à { $speed }
of-engine = { $part } du moteur
losses = Perdu dans : { $losses }

verdict-sure = { $likely }, sur toute la marge de ce qui n'est pas connu exactement.
verdict-at-worst = { $likely } ; au pire, { $worst }.
verdict-at-best = { $likely } ; au mieux, { $best }.
verdict-between = { $likely } ; au pire, { $worst }, au mieux, { $best }.

job-refused = Saisissez un nombre au-dessus de zéro et d'une taille faisable. D'ici là, tout reste comme avant.
pto-gear = { $speed } avec le moteur à { $engine }
work-note =
    Le maximum qu'une voie tient : plus on avance vite, plus on travaille et moins il reste au moteur. Le temps
    est celui du travail, sans demi-tours ni arrêts. La distance de projection est une limite sans la
    résistance de l'air ; en vrai, cela part moins loin.
influences-note =
    Ce qui arriverait si un seul chiffre était à sa valeur basse ou haute. Le premier est celui qu'il vaut le
    plus la peine de demander.
time-range = de { $low } à { $high }
casting = { $distance }, { $part } du nominal
figure-of-stage = { $stage } : { $figure }

hotter-than = plus de { $temperature }
heat =
    Au travail, { $lost } finissent en chaleur dans l'huile ; rotor arrêté et moteur en marche, { $idle }.
    Voici comment chauffent { $tank } d'huile quand seule la surface du réservoir, et un refroidisseur si le
    parc en connaît un, les refroidit. L'huile ne devrait pas dépasser { $limit }.
too-hot =
    { $reason } Partie froide, elle dépasse { $limit } après environ { $after } de ce travail ; dans la durée,
    avec ce réservoir et sans autre refroidissement, { $power } au plus peuvent arriver.
too-hot-empty =
    { $reason } Partie froide, elle dépasse { $limit } après environ { $after } de ce travail ; dans la durée,
    avec ce réservoir et sans autre refroidissement, elle ne peut même pas faire tourner le rotor à vide.
work-takes = Le rotor à vide prend { $idle } ({ $idle-range }) : { $idle-source }. Le travail prend { $energy } ({ $energy-range }) : { $energy-source }.
cooling-none = Aucun refroidisseur n'est nécessaire pour ce travail. Le réservoir usuel pour ce débit : { $tank }.
cooling =
    Pour tenir la limite dans la durée, un refroidisseur doit évacuer { $power } ({ $cooler }). Le réservoir
    usuel pour ce débit : { $tank }. Flexibles, tuyaux et carters aident ; ils ne sont pas comptés.

budget = sur { $net } ; pris avant : { $taken }
budget-with-rule = sur { $net } ; pris avant : { $taken } ; la règle simple du métier pour l'air : { $rule }
budget-air = air raréfié ou chaud
budget-driving = avancement
at-the-rotor = { $power } ({ $range }) à { $speed } et { $effort }
curve = Puissance qui arrive par { $route } selon { $control } : de { $least } à { $most }.
out-of-range = Saisissez un nombre de { $range }. D'ici là, tout reste comme avant.
