### No native speaker has read this yet.

pair = { $machine } avec { $implement }

question-route =
    Quelle voie apporte le plus de puissance au rotor ? Mettez-les dans l'ordre, et à part ce qui ne peut pas
    être attelé.
    .group = Quelle voie apporte le plus de puissance au rotor ?
question-amount = Combien de puissance arrive au rotor par { $route } ?
question-limit = Qu'est-ce qui limite ce qui arrive par { $route } ?
question-sheet = Cette fiche peut-elle être juste ? Sinon, qu'est-ce qui cloche ?
question-fit = Peut-on l'atteler par { $route } ?
question-wanted = Lequel de ces changements, à lui seul, amène { $route } à « { $standing } » ({ $meaning }) ?

## What is wrong with a sheet

flaw-none = Rien : c'est possible
flaw-hydraulic-power = La puissance hydraulique n'est pas son débit fois sa pression
flaw-engine-power = Le moteur ne peut pas entraîner une pompe pour cela
flaw-steering = Le débit de la direction est compté dedans
flaw-pto-power = La prise de force ne peut pas donner cela avec un tel moteur

## Whether it can be hooked up

fits = Oui, on peut
fits-ask-first = Il faut d'abord demander quelque chose
fits-cant = Non, on ne peut pas

## One thing changed

change-flow = Débit de { $flow }
change-relief = Tarage à { $pressure }
change-engine-speed = Moteur à { $speed }
change-hoses = Flexibles de { $bore } de diamètre intérieur
