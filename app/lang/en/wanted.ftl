### What it would take to reach a standing, and what is in the way.

title = What would it take?
wished = To reach
already = It reaches that as it is.
apply = Try these settings
note =
    At the likely values. Sizes of boxes, pumps, motors and hoses are common ones; what a maker offers may lie
    between. Ask the machine's workshop before anyone raises a relief pressure: pumps, hoses and valves have
    limits of their own.

engine-speed = The engine at { $speed } does it, all else as it is.
settings = Settings that do it: { $flow } at { $relief }, the engine at { $speed }.

## The hardware that does it, a line for each part

engine = Engine: { $power } net at { $speed }
pto = PTO: { $power }, { $torque }
gearbox = Box: 1 to { $ratio }
# The figures are a list: "45 cm³, 60 L/min, relief at 200 bar".
pump = Pump: { $figures }
    .relief = relief at { $pressure }
hoses = Hoses: { $figures }
    .supply = { $bore } to the motor
    .back = { $bore } back
    .suction = suction { $bore }
oil = Oil: { $tank } are usual, a cooler for { $cooler }
    .uncooled = Oil: { $tank } are usual, no cooler
shaft = { $stage } for { $torque }

## What is in the way

no-fit = { $reason }: no setting can.
engine-too-weak = The engine would need { $needs } at { $speed }; it has { $has }.
shaft-too-weak = { $shaft }: it would have to bear { $needs }, it may bear { $bears }.
motor-needs = The motor would need { $needs }, it may be given { $highest }.
    .instead = The motor would need { $needs }, it may be given { $highest }; a motor of { $size } would do.
no-size = No common size of box, pump or hose does it.
