### What a field is for, and what to do about a fault of it.

## What a yard file holds

version = Write 2 in a new file; 1 and 2 can be read.
name = The name that customers see.
id = A short word of small letters, digits and hyphens, unique in its list.
place = Where the yard is.
invented = True where the machines are made up.
dealer = Who hands out its pages.
note = A line of the dealer's own on those pages.
currency = Its code in ISO 4217, such as EUR or USD.
hour-price = Price of an hour of work.
machines = At least one machine.
implements = At least one implement.
kits = May be empty: [].
kind = What it is.
yard-price = In the yard's currency.
where-none = Leave it out where there is none.
where-unknown = Leave it out where nothing is known of it.

## A machine and its engine

engine = Its engine.
net-power = Net power at rated speed; 1 mechanical hp is 0.7457 kW. Gross power is higher.
gross-power = Gross power at rated speed, only where no net power is known.
engine-rated = The speed that the power holds for.
engine-lowest = The lowest speed at which it may work under load.
curve = Power over speed, from the lowest speed to the rated one; its shape is used.
curve-speed = Each faster than the one before.
curve-power = Power at that speed.
aspiration = How the engine gets its air; left out, it draws it in: natural.
economy-pto = The rear PTO in its economy gear: the same speed at a lower engine speed.
pto-speed = The shaft's rated speed: 540, 1000 or 2000 for most.
pto-engine-speed = The engine speed at which the shaft has its rated speed.
pto-tested = Power measured at the shaft, from a test report.
pto-rating = The most that the shaft is made for at its rated speed.
pto-end = What the joint shaft slides on to.
circuits = One entry for each outlet that an implement can use.
machine-mass = Ready to work, without an implement; without it driving isn't counted.
transmission = What drives the wheels; left out, it's gears for a tractor and hydrostatic for a skid steer.
hitch = What is known of the rear hitch.
loader = What is known of the loader or the arms.
axles = For weight and ballast.

## Oil, and what pumps it

oil = Left out, it's ISO VG 46.
grade = Leave it out where the viscosities are given.
viscosity-at-40 = Viscosity at 40 °C, from the oil's sheet.
viscosity-at-100 = Viscosity at 100 °C, from the oil's sheet.
oil-density = Density at 15 °C; left out, it's 870 kg/m³.
oil-volume = The oil in the tank.
cooler = What a cooler sheds for each kelvin that the oil is warmer than the air.
outlet = Where the hoses plug in.
sheet-flow = The sheet's flow; 1 US gpm is 3.785 L/min.
flow-speed = The engine speed that the flow holds for.
relief = Pressure at which the relief valve opens; 1 bar is 14.5 psi.
steering = Who takes what for steering.
steering-policy = Ask the workshop which it is: it decides the flow at the outlets.
steering-flow = Needed for fixed_priority and summed: the steering's flow.
supply = How the pump answers; left out, it's a fixed pump: open_centre.
valve = What the open valve takes at the pump's rated flow, or the margin of load sensing.
volumetric = Flow against flow, as a part of one: 0.95 for 95 %.
hydro-mechanical = Torque against torque, as a part of one: 0.94 for 94 %.
coupler-size = The couplers' size: 12.5 mm for most tractors.
case-drain = Whether a third, pressureless line back to the tank is there.

## How things are hooked up

hitch-category = Its pins tell: 22 mm is 1, 28 mm is 2.
hitch-lift = From the machine's sheet.
hitch-lift-at = How far behind the ball ends the sheet's lift holds: 0 or 0.61 m (24 in).
hitch-lowest = Height of the ball ends when lowered to work.
hitch-highest = Their height when lifted.
loader-lift = At the pins to full height; for a skid steer its rated operating capacity.
loader-reach = From the arms' pivot to the pins.
third-function = Whether hoses for an implement's oil come to the loader's end.
wheelbase = From front to rear axle.
front-weight = On the front axle, without implement and ballast: from the sheet or a scale.
front-limit = The most that the front axle may carry.
rear-limit = The most that the rear axle may carry.
loader-ahead = From the front axle to the loader's pins, arms down.
frame-ahead = From the front axle to a front subframe's hooks.
hitch-behind = From the rear axle to the hitch's ball ends.
shaft-type = 6 splines is 1, 21 is 2, 20 is 3, 22 is 4.
turns = Seen from behind the machine by one who looks forward.
pto-height = Its height above the ground.
pto-ahead = How far it ends ahead of the hitch's ball ends.
input-turns = Which way it must turn, seen from behind the machine.
input-behind = How far it ends behind the hitch's pins.
input-above = How far it stands above the lower pins, negative below.
mount-category = The hitch category of its pins.
mount-centre = How far its centre of mass lies from the pins or hooks that carry it.
mount-backwards = Whether, on the rear hitch, it works with the machine driving backwards.
mount-guarded = Whether every guard on it is there.
kit-pto-end = The PTO type that it suits.
kit-far-end = The input type that it suits.
kit-closed = Its length pushed together, joint to joint.
kit-open = Its length where its tubes part, joint to joint.
kit-reverses = Whether what the kit brings in all turns the direction round.
kit-guarded = Whether its guards are there.

## An implement and its work

implement-kind = What it does.
rotor = What turns.
need = Power at the rotor for the job, not the machine size that a sheet asks for.
rotor-rated = The speed that the rotor is built for.
rotor-lowest = Below this it no longer works properly.
rotor-highest = It must never turn faster.
rotor-diameter = Over the tips, for their speed.
shafts = One entry for each shaft drive that it can be had with.
motor = Leave it out where it can't be had with a motor.
work = What its work takes; without it there is no time for a job.
travel = Leave it out for what works standing.
implement-mass = What the machine carries with it.
mount = How it hangs from its machine.
shaft-place = The end of the machine that it suits.
shaft-speed = The input's speed when the rotor has its rated speed.
shaft-drive = The steps to the rotor in order, such as ["bevel"].
shaft-rating = The most that the implement's input may take.
shaft-price = Price of the implement with this shaft.
displacement = Per revolution; 1 in³ is 16.387 cm³.
motor-ratio = Rotor speed over motor speed: 1 where the motor drives the rotor straight.
motor-flow = From the motor's sheet.
motor-pressure = Highest continuous pressure difference, from the motor's sheet.
motor-starting = Torque at which it starts, as a part of the torque without loss: 0.8 for 80 %.
motor-case-drain = Whether it needs a third, pressureless line back to the tank.
motor-price = Price of the implement with this motor.
measure = Mass for what is thrown or chipped, area for what is mown or swept, volume for soil.
idle = Power at the rotor when it turns at rated speed and does nothing.
energy = Energy at the rotor for each tonne, 1000 m², m³ or km.
width = Working width.
depth = Usual depth of snow, growth or tilth.
material-density = Usual density: settled snow about 200 kg/m³.
usual-speed = The usual speed at work.
highest-speed = The highest speed at which the work is still done well.
ground = What is driven on.
pushing = What the work pushes back with.

## A kit

gear-ratio = Speed out over speed in: above 1 makes it faster.
gear-efficiency = As a part of one: 0.96 for 96 %.
gear-rating = The most torque on its output shaft.
slip-clutch = Torque at which a slip clutch in it slips.
joint-angle = Angle of each joint of a joint shaft at work.
pump-highest = From the pump's sheet.
suction-bore = Inner diameter of the suction line.
suction-length = Length of the suction line.
suction-lift = How far the pump stands above the oil, negative below it.
hose-bore = Inner diameter of the hose.
hose-length = One way.
hose-back-bore = Inner diameter of the hose back, where it's another.
couplers = All that the oil passes, there and back.
coupler-drop = What one coupler takes at its rated flow.
coupler-flow = That rated flow.
fittings = Loss coefficients K of elbows and adapters added up, one way: a sharp elbow is about 1.
routes = The routes that it serves.
kit-pto-speed = The PTO speed that it's built for; leave it out for hoses and for any speed.
kit-drive = The mechanical steps from the PTO on, in order.
pump = Only for a pump pack.
hoses = For every route with oil.
kit-shaft = Its shaft from the PTO to the implement.
seat = Where it puts the implement; left out, it's the usual place of its route.
included = Whether it comes with the machine or the implement, so that nothing must be bought.
hookup = Minutes to hook it up.
fitting-price = What fitting it costs.

## Figures held against each other

check-both = Check both figures.
outlet-once = Give each outlet once.
rear-follows-from-mass = What the rear axle carries follows from the machine's mass.
net-or-gross = Give net_kw or, where only that is known, gross_kw.
only-net = Give only one of net_kw and gross_kw: net_kw is the one that counts.
curve-reaches = The points must reach from the engine's lowest to its rated speed.
curve-needs-two = A curve needs two points or more.
curve-above-zero = Speed and power must be above zero.
oil-thins = Oil thins as it warms: check both figures.
grade-or-viscosities = Give either a grade or the two viscosities, not both.
grade-or-both = Give a grade, or cst_40 and cst_100 together.
outside-engine = It lies outside the engine's own range.
is-it-net = A shaft can't give more than its engine: is the engine's figure net power?
policy-takes-flow = This policy takes a flow: say how much.
nothing-left = Nothing would be left for the implement.
shaft-or-motor = Give it at least one entry in shafts, or a motor.
no-usual-figure = This kind of implement has no usual figure in this measure: give one.
idling-included = The need is for the work, idling included.
needs-step = The two speeds differ, so something must change them: name the gear, belt or chain.
name-route = Name at least one route.
oil-needs-hoses = A route with oil needs hoses.
pack-needs-pump = A pump pack needs its pump.
own-figure = Leave it out for a figure of your own.
own-id = Give each entry its own.
at-least-one = A comparison needs at least one.

## Files

too-large = This is larger than any such file: is it the right one?
no-yard = A yard file begins with { "{" } and ends with { "}" }: is it the right file?
no-json = It isn't JSON: look for a missing comma, quote or bracket there.
newer = A newer version of this page made it: reload the page first.
please-report = The rules let through what the reader doesn't take: please report it.
list-of-yard = The yard's list: entries in braces, parted by commas.
tells-from-yard = It tells this file from a yard's.
reads-version-1 = This program reads version 1.
written-link = What was chosen, as the page writes it: it can't be written by hand.
whole-yard = The whole yard, as in a yard file.
link-damaged = It was changed or cut off. Take it from the address of the page, behind the #.
link-of-another-yard = The link was made in another yard.
tells-from-others = It tells this file from others.
set-yard = The name of the yard that the set was made in.
set-seed = The number that the cases are drawn by.
set-count = How many cases there are.
set-kinds = What the cases ask: one kind at least.

## Tables

plain-number = Plain, such as 1234.5 or 1234,5: without a unit, and without blanks between digits.
empty-cell = Leave the cell empty where it isn't known.
see-template = The template has all columns: take the names from there.
column-once = Leave one of the columns out.
no-header = This column has no header: give it one, or empty it.
lost-letters = Some of its letters are lost: save the table as CSV UTF-8.
says-no = It says no, and other columns say something of it.
one-or-three = Give one figure, or low, likely and high: not both.
no-utf-8 = It isn't text in UTF-8: save the table as CSV UTF-8.
needs-headers = The first row must have headers such as id, name and engine.net_kw: the template has them all.
in-parts = Take it over in parts.
too-many-columns = No list has so many: is it the right file?
lone-quote = A double quote stands alone from here on: a cell with quotes is put in quotes itself, and those in it are doubled.

## Settings, and figures of a sheet

horsepower = 1 mechanical hp is 0.7457 kW.
gallons = 1 US gallon a minute is 3.785 L/min.
psi = 1 bar is 14.5 psi.
pump-speed = The engine can't work there: is it the speed of the pump?
engine-speed = The engine can't work there: choose a speed between its lowest and its rated one.
engine-power = Take the net power at rated speed; 1 mechanical hp is 0.7457 kW.
oil-temperature = Oil of this kind isn't worked with there.
altitude = Take the height above the sea.
air = Nobody works in such air.
ground-speed = Take the speed at work, not on the road.
slope = Rise over run: 0.1 for 10 %. Steeper ground needs another machine.
worked-depth = Take the depth of what is worked.
worked-density = Fresh snow weighs about 100 kg/m³, wet soil about 1800.
job = Tonnes, square metres, cubic metres or metres.
pump-flow = No pump for this job has such a flow.
relief-set = No machine for this job is set so.

## With what was found

meant = Did you mean { $name }?
fields-are = The fields here are: { $keys }.
has-it-too = Row { $row } has it too: give each its own.
