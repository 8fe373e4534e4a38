### Whether it can be hooked up: what was found, and what to do or to ask.

## Judgements

pass = Fits
advice = Mind
question = Ask
stop = Stop
    .small = stop

## What was looked at

name-missing = Route
name-input-speed = Input speed
name-pto-end = Shaft on the PTO
name-far-end = Shaft on the implement
name-direction = Direction of rotation
name-shaft-torque = Torque in the shaft
name-slip-clutch = Slip clutch
name-angle = Joint angle of the kit
name-lift-angle = Joint angle behind the hitch
name-overlap = Length of the joint shaft
name-guards = Guards
name-category = Hitch category
name-lift = Lift
name-front-hooks = Subframe in front
name-third-function = Third function
name-balance = Ballast
name-axle-load = Axle load
name-couplers = Couplers
name-motor-flow = Flow to the motor
name-motor-pressure = Pressure at the motor
name-case-drain = Case drain
name-oil-heat = Heat of the oil

other-kits = It takes the kit that delivers most. This one of the yard fits better: { $kits }.
# How many of them, in a row of such counts.
to-stop-for = { $count } to stop for
to-ask = { $count } to ask
to-mind = { $count } to mind
all-fits = all that is known fits

## What was found

input-speed = The shaft brings { $brings }, the implement is built for { $needs }.
# Shafts are "type 1 with 6 splines" or "not known".
pto-end = The PTO is { $pto }; the kit suits { $kit }.
far-end = The kit suits { $kit }; the implement's input is { $input }.
shaft-type = type { $kind } with { $splines } splines
    .unknown = not known
direction = Seen from behind the machine the input would turn { $comes }; it must turn { $needs }.
turns-clockwise = clockwise
turns-anticlockwise = anticlockwise
turns-unknown = in a direction that isn't known
shaft-torque = All of the engine would put { $can } into its weakest shaft or box; that may take { $may }.
    .unknown = All of the engine would put { $can } into a shaft of which it isn't known what it may take.
slip-clutch = It slips at { $torque }.
    .unknown = What this implement works on can jam it; no slip clutch is known of.
angle = They work at { $angle }, as far as is known.
    .unknown = How far the kit's joints bend isn't known.
lift-angle = Lowered to work the joints bend { $at-work }, over the hitch's travel up to { $steepest }.
    .unknown = How far the joints bend behind the hitch isn't known.
overlap = At its longest its tubes overlap by { $overlap }; at its shortest { $left } are left.
    .unknown = Whether it is long and short enough isn't known.
guards = On the shaft: { $kit }; on the implement: { $implement }.
guards-implement = On the implement: { $implement }.
guards-there = there
guards-not-all = not all there
guards-unknown = not known
# Categories are "category 1" or "an unknown category".
category = The machine has { $machine }, the implement { $implement }.
category-named = category { $category }
category-unknown = an unknown category
lift-loader = The implement's weight: { $load }, its centre { $centre } out; there the loader lifts: { $lifts }.
    .unknown =
        The implement's weight: { $load }; how far out its centre lies, and so what the loader lifts there,
        isn't known.
lift-hitch = The implement's weight: { $load }, its centre { $centre } out; there the hitch lifts: { $lifts }.
    .unknown =
        The implement's weight: { $load }; how far out its centre lies, and so what the hitch lifts there,
        isn't known.
load-unknown = not known
lifts-unknown = not known
front-hooks = The machine takes a subframe in front.
    .unknown = Whether the machine takes a subframe in front isn't known.
third-function = Oil gets to the loader's end.
    .none = No oil gets to the loader's end.
    .unknown = Whether oil gets to the loader's end isn't known.
axle-front = the front axle
axle-rear = the rear axle
balance = Without ballast { $share } of the weight stays on { $axle }; { $least } is the least.
    .lifts-off = Without ballast { $axle } lifts off.
    .unknown = What stays on { $axle } isn't known.
axle-load-front = The front axle carries { $load } with the ballast it takes; it may carry { $limit }.
axle-load-rear = The rear axle carries { $load } with the ballast it takes; it may carry { $limit }.
axle-load-unknown = an unknown load
couplers = The machine's are size { $machine }, the hoses' size { $hoses }.
    .unknown = unknown
motor-flow = { $comes } come, the motor may be given { $most }.
motor-pressure = The relief valve opens at { $relief }, the motor may be given { $most }.
# Two clauses, the need and then one of the others: a line is there, isn't there, may be there.
case-drain-needed = the motor needs a pressureless line back to the tank
case-drain-needed-unknown = whether the motor needs a pressureless line back to the tank isn't known
case-drain-there = it is there
case-drain-missing = there is none
case-drain-there-unknown = whether there is one isn't known
case-drain-none-needed = The motor needs none.
oil-heat = At this job the oil passes its limit after about { $after }.
    .none = The oil stays below its limit at this job.

## What to do

do-missing = Another route, another machine or another kit.
do-input-speed = Set the engine so that the input turns at its own speed; never faster.
do-shaft-end = A joint shaft with the right yoke at this end; no sleeve that only bridges the size.
do-direction = A box that turns the direction round, or the implement built for this one.
do-shaft-torque = A slip clutch set below that, and no more engine speed than the work needs.
do-angle = For a while only; nearer in line it lasts longer.
    .stop = Bring the shafts nearer in line, or use a wide-angle joint as its maker says.
do-lift-angle = Stop the PTO before lifting; lowered, nearer to level lasts longer.
    .stop = Work and lift nearer to level, or use a wide-angle joint as its maker says.
do-overlap = A shaft of another length: { $overlap } of overlap at its longest, { $left } left at its shortest.
do-guards = Not to be run until every guard is there.
do-category = Bushes over the implement's pins.
    .stop = Pins of the machine's category, if the implement's maker has them.
do-lift = Close to what it lifts: look it up in the machine's manual before you buy.
    .stop = A lighter implement or a stronger machine.
do-third-function = A third function on the loader, or hoses led forward from the rear.
end-front = the front end
end-rear = the rear end
do-balance =
    Hang about { $ballast } on { $end }, reckoned level and standing still; the machine's manual has the last
    word.
    .unknown = Ballast { $end } as the machine's manual says.
do-axle-load = A lighter implement or a heavier machine.
do-couplers = They won't plug in as they are: change one half; the larger loses less.
do-motor-flow = Set the flow down, or fit a flow divider; too much turns it too fast.
do-motor-pressure = A relief valve at the motor, set to its limit.
do-case-drain = A line straight to the tank; without it the shaft's seal goes.
do-oil-heat = A cooler that takes { $power }, a larger tank, or breaks.

## What to ask

ask-pto-end = How many splines has the PTO, and which does the kit's yoke take?
ask-far-end = How many splines has the implement's input, and which the shaft?
ask-direction = Which way does the input have to turn? Its maker's plate or manual says.
ask-slip-clutch = Is there a slip clutch or a shear bolt, and where does it give way?
ask-lift-angle = How high stand PTO, hitch and input, lowered and lifted? Measure before you buy.
ask-overlap =
    How far is it from joint to joint, lowered and lifted, and how long is the shaft pushed together and
    pulled out?
ask-guards = Is every guard there, on the shaft and at both ends?
ask-category = Which hitch category have machine and implement?
ask-lift = What does the implement weigh, how far out is its centre, and what is lifted there?
ask-front-hooks = Is there a subframe that fits under this machine?
ask-third-function = Is there a third function at the loader's end?
ask-balance = What do the axles carry, and how far out does the implement hang?
ask-couplers = Which size are the couplers on the machine and on the hoses?
ask-case-drain = Does the motor need a case drain, and is there a pressureless line to the tank?
ask-shaft-torque = What may the PTO, the joint shaft and the implement's input take?
ask-angle = How far do the kit's joints bend at work?
ask-axle-load = What may each axle carry, and what does it with implement and ballast?
ask-maker = Ask the maker.
