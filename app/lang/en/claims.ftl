### What a sheet claims, in plain sentences with the arithmetic.

title = Is the sheet honest?
lead = Enter what a sheet or an advertisement says of this machine. Leave empty what it doesn't say.
taken-heading = Flow and pressure taken
rating-heading = Engine power is
not-said = Not said
take-over = Compare with the honest figures
clear = Clear the sheet
ask-heading = To ask for
taken-over = Taken over: the bars above now show the honest figures.
not-taken-over = Nothing was taken over: the sheet says too little, or this machine can't run with its figures.
nothing = Nothing has been entered yet.
# Behind "Enter a number, or leave it empty:".
allowed = a number above zero, of a size that such machines have.

## Figures of a sheet. `.small` is the name within a list

figure-flow = Hydraulic flow
    .small = hydraulic flow
figure-pressure = Hydraulic pressure
    .small = hydraulic pressure
figure-hydraulic = Hydraulic power
    .small = hydraulic power
figure-taken = Where flow and pressure were taken
    .small = where flow and pressure were taken
figure-engine-speed = At an engine speed of
    .small = at which engine speed
figure-engine = Engine power
    .small = engine power
figure-rating = Whether engine power is net or gross
    .small = whether engine power is net or gross
figure-pto = PTO power
    .small = PTO power
at-pump = At the pump
at-couplers = At the couplers
net = Net
gross = Gross

## What is held against what

check-hydraulic-power = Flow, pressure and power
    .small = flow, pressure and power
check-engine-power = Flow and pressure against the engine
    .small = flow and pressure against the engine
check-steering = Steering's flow
    .small = steering's flow
check-working-speed = Flow at working speed
    .small = flow at working speed
check-couplers = Pressure at the couplers
    .small = pressure at the couplers
check-relief = Relief pressure
    .small = relief pressure
check-engine-rating = Engine power
    .small = engine power
check-pto-power = PTO power
    .small = PTO power

## What it means for the sheet

holds = Holds
advice = Mind
restated = Means
wrong = Can't be

## Findings

hydraulic-too-much =
    { $flow } times { $pressure } is { $power }, not the { $claimed } that the sheet says: { $apart } too much.
hydraulic-less =
    { $flow } times { $pressure } is { $power }; the sheet says { $claimed } only, { $apart } less: ask at which flow
    and pressure.
hydraulic-holds = { $flow } times { $pressure } is { $power }, as the sheet says.
engine-cant =
    For { $flow } at { $pressure } the pump takes { $needs } off the engine; at { $speed } the engine has { $net } net:
    it can't turn that pump at that pressure.
engine-at-best =
    For { $flow } at { $pressure } the pump takes { $needs } off the engine; at { $speed } the engine has { $net } net:
    only with everything at its best.
engine-can =
    For { $flow } at { $pressure } the pump takes { $needs } off the engine; at { $speed } the engine has { $net } net:
    it can.
steering-apart = The { $claimed } are the implement's; steering's { $steering } are not in them.
steering-of-pump =
    Of the { $pump-gives } that the pump gives steering takes { $steering }: { $left } are left for the implement.
steering-within = Steering's { $steering } are in the { $claimed }: { $left } are left for the implement.
working-slower = { $flow } are for { $speed }; at the working speed of { $working } it is { $left }.
working-same = { $flow } are for { $speed }, which is the working speed.
couplers =
    At { $flow } the open valve takes { $valve } and two couplers { $couplers }: { $at-pump } at the pump are
    { $at-couplers } at the couplers.
relief-closed =
    The relief valve is set to { $relief } and begins to open at { $opens }; at { $pressure } the whole flow is there.
relief-open =
    The relief valve is set to { $relief } and begins to open at { $opens }: at { $pressure } a part of the flow runs
    off over it. Full flow and full pressure don't come together.
rating-net = { $claimed } as net power; the yard has { $known }.
rating-gross =
    { $claimed } is gross power, without fan, filter and the like: about { $net } net; the yard has { $known }.
pto-too-much = Of { $net } net about { $gives } reach the PTO, not { $claimed }.
pto-at-best = Of { $net } net about { $gives } reach the PTO; { $claimed } is at the upper end.
pto-holds = Of { $net } net about { $gives } reach the PTO; the sheet says { $claimed }.
pto-above-engine =
    { $claimed } at the PTO are more than the engine's { $engine }: no train gives more than its engine.
