### Names of things. `.small` is the name within a sentence or a list, `.within` with its article.

document = Farend: what really drives the implement
purpose = What really drives the implement: how much of the engine's power reaches its shaft, by each route.
language = Language
# Beside the choice of a language, where no native speaker has read its texts. English says nothing.
unread = { "" }
# The text of a language couldn't be loaded; said in the one that stays.
missed = { $language } couldn't be loaded, so the page stays in English. Try again when there is a network.

machine = Machine
implement = Implement
units = Units
metric = Metric: kW, bar
us = US: hp, psi
outdoors = Glare and gloves
views = Views
view-pair = One pair
view-grid = Whole yard
view-yard = Edit yard
view-practice = Practice
invented = Demo yard. Machines, implements and the place are invented.
menu = Yard and link
open-file = Open a yard, a comparison or a table…
save-demo = Save the demo yard as a pattern
copy-link = Copy link to this comparison
copied = Copied.
copy-by-hand = This browser keeps the clipboard closed. Copy it from here:
save = Save
save-routes = Table of the routes (CSV)
save-ledger = Ledger of the open route (CSV)
save-svg = Picture, sharp at any size (SVG)
save-png = Picture for slides and mail (PNG)
save-comparison = This comparison, to open again (JSON)
close = Close
not-loaded = This part of the page couldn't be loaded. Is the network there?
try-again = Try again

## Bars

routes-heading = Six routes, one engine
arrives = arrives at the rotor
lost-in-shafts = lost in shafts, gears, belts
lost-in-oil = lost in oil
not-taken-up = engine power that the route can't take up
# The same beside a bar of the picture, each with its power behind it.
in-shafts = lost in shafts
in-oil = lost in oil
left-over = not taken up
before = air and driving
invented-data = Invented demo data
air-and-driving = taken by thin air and driving
need = what the job needs, likely and range
spread = low to high of what arrives
as-table = The same as a table

## Controls and curve

what-if = What if…
less = Less
more = More
own = To begin with: { $value }
engine-set = The engine's net power is set as a sheet says: { $power }.
back-to-own = Back to { $value }
curve-over = Curve over
circuit = Circuit
curve-point = where it stands now
curve-likely = likely
curve-range = low to high
curve-need = need
delivered = Delivered
enter = Enter a number, or leave it empty: { $allowed }
driving-and-material = Driving and material
site-and-oil = Site and oil
rear-pto = Rear PTO
ground-heading = Ground
oil-grade = Oil in the circuits
as-in-the-yard = As in the yard

## Before a decision

deciding-heading = Before you decide
fit = Can it be hooked up?
fits = What fits
questions = To ask before anything is bought, over all routes
choose = Where it sits, and what matters to you
seat = Place
at-work-heading = At work
hookup = To hook up
usually = usually
standing-for-good = In the long run
points = Points
points-of = { $points } ({ $power } for power, { $wishes } for what matters)
not-weighed = not weighed
points-note =
    Power: 6 points for Ample, 5 for Enough, 2 for Slower; below that, and where something stops it, a
    route isn't weighed. Each thing that matters adds up to 1 point, or 2 where it matters much. Cost
    counts once every price is known. Oil that gets too hot leaves no better than Slower until it is
    cooled. The points are this project's judgement.

## For those who want to know more

deeper-heading = For those who want to know more
work = How the work goes
heat = How warm the oil gets
influences = What moves this figure most
all-sources = Where the figures come from, and what isn't modelled
job = The job
job-by = Measured by
most-work = Most work
time = Time for the job
ground-speed = Speed over ground
throws = Throws, at most
tips = Tips run at
no-work = The yard doesn't say what this implement's work takes: no time can be given.
no-oil = No oil carries power on this route.
nothing-moves = Nothing moves on this route.
figure-heading = Figure
at-low = Arrives at its low value
at-high = Arrives at its high value
not-uncertain = Nothing on this route is uncertain.
rule = Tank sheds
settles-at = Settles at
to-limit = From cold to the limit
for-good = Arrives in the long run
never = never
never-done = not done
too-slow = The rotor is too slow to work properly.
nothing = nothing
not-modelled = Not modelled
models = Equations
figures = Figures

## Ledger

ledger-heading = Where the power goes
stage-heading = Stage
takes = Takes
loses = Loses
passes-on = Passes on
route-heading = Route
standing-heading = Standing
held-by = Held by
lost = Lost on the way
engine = Engine
rotor = Rotor
kit = Needs
can-give = Can give
keeps = Keeps
not-for-this-route = can't be taken up
formulas = Show formulas
sources = Show sources
cautions-heading = Before anything turns
assumed-heading = What this takes for granted

## Routes

route-rear-shaft = Rear shaft
    .small = rear shaft
    .within = the rear shaft
route-mid-shaft = Mid shaft
    .small = mid shaft
    .within = the mid shaft
route-turned-forward = Rear shaft turned forward
    .small = rear shaft turned forward
    .within = the rear shaft turned forward
route-machine-hydraulics = Machine hydraulics
    .small = machine hydraulics
    .within = the machine's own hydraulics
route-pump-pack = Pump pack
    .small = pump pack
    .within = a pump pack on the PTO
route-skid-steer = Skid steer hydraulics
    .small = skid steer hydraulics
    .within = the skid steer's hydraulics

## Standings

standing-ample = Ample
    .small = ample
    .at-work = power to spare for the job
standing-enough = Enough
    .small = enough
    .at-work = the job is met
standing-slower = Slower
    .small = slower
    .at-work = the job gets done, but slower
standing-labours = Labours
    .small = labours
    .at-work = it labours: expect stalling and poor work
standing-starves = Starves
    .small = starves
    .at-work = it starves: the job can't be done this way
# In place of a standing where a route can't be hooked up.
no-fit = No fit
    .small = no fit

## Limits. `.reason` is a sentence.

limit-engine = engine
    .reason = The engine gives no more at this speed.
limit-shaft-rating = shaft rating
    .reason = A shaft or a box on the way must not take more torque.
limit-flow = flow (speed)
    .reason = Flow is speed: there isn't enough oil to bring the rotor up to its rated speed.
limit-pressure = pressure (torque)
    .reason = Pressure is torque: the relief valve lets no more through.
limit-oil-heat = oil heat
    .reason = The oil gets too hot.
limit-implement = implement's rating
    .reason = The implement's own input must not take more.

## Stages

stage-pto-train = PTO train
    .small = PTO train
stage-input-shaft = Implement's input shaft
    .small = implement's input shaft
stage-spur = Spur gears
    .small = spur gears
stage-bevel = Bevel gears
    .small = bevel gears
stage-spiral-bevel = Spiral bevel gears
    .small = spiral bevel gears
stage-worm = Worm gear
    .small = worm gear
stage-belt = Belt drive
    .small = belt drive
stage-chain = Chain drive
    .small = chain drive
stage-joint-shaft = Joint shaft
    .small = joint shaft
stage-direct = Direct drive
    .small = direct drive
stage-pump = Pump
    .small = pump
stage-steering = Steering's share
    .small = steering's share
stage-divert = Flow sent back to the tank
    .small = flow sent back to the tank
stage-valve = Control valve
    .small = control valve
stage-hoses = Hoses and couplers
    .small = hoses and couplers
stage-motor = Hydraulic motor
    .small = hydraulic motor

## Things that can be turned

control-engine-speed = Engine speed
    .small = engine speed
control-own-flow = Flow on the sheet
    .small = flow on the sheet
control-own-relief = Relief pressure
    .small = relief pressure
control-pack-flow = Pack's flow at rated PTO speed
    .small = pack's flow at rated PTO speed
control-pack-relief = Pack's relief pressure
    .small = pack's relief pressure
control-oil-temperature = Oil temperature
    .small = oil temperature
control-altitude = Height above the sea
    .small = height above the sea
control-air-temperature = Air temperature
    .small = air temperature
control-ground-speed = Speed over ground
    .small = speed over ground
control-slope = Slope, uphill above zero
    .small = slope, uphill above zero
control-depth = Depth worked
    .small = depth worked
control-material-density = Density of the material
    .small = density of the material

## What is driven on, oils, measures, outlets, lines

ground-firm = Firm
ground-grass = Grass
ground-loose = Loose
grade-tractor-fluid = Tractor fluid
measure-mass = mass
measure-area = area
measure-volume = volume
measure-length = length
outlet-remotes = Remotes or third function
outlet-standard-flow = Standard flow
outlet-high-flow = High flow
# Oil runs too fast in it; said with its article.
line-suction = the suction line
line-supply = the hose to the motor
line-back = the hose back

## Uncertain figures

figure-engine-power = engine's net power
figure-driving = what driving takes
figure-efficiency = efficiency
figure-rating = rating
figure-sheet-flow = flow on the sheet
figure-steering-flow = steering's flow
figure-leakage = leakage (ηv)
figure-friction = friction (ηhm)
figure-relief = relief pressure
figure-valve-drop = pressure that it takes
figure-coupler-drop = pressure that a coupler takes
figure-viscosity = the oil's viscosity

## What a tank sheds

surface-btu = 11.4 W/(m²·K), which is 2.0 Btu/(h·ft²·°F)
surface-horsepower = 14.4 W/(m²·K), which is 0.001 hp/(ft²·°F)

## How long a joint may run at an angle

angle-fine = fine all day
angle-steady = up to 15° is good for all day, 25° is the most for steady work
angle-brief = only for moments; 25° is the most for steady work
angle-needs-wide-angle = only a wide-angle joint bears that, and only for moments
angle-never = no joint bears that

## Units as a screen reader should say them

spoken-rpm = revolutions per minute
spoken-litres-per-minute = litres per minute
spoken-celsius = degrees Celsius
spoken-fahrenheit = degrees Fahrenheit
spoken-gallons = US gallons per minute
spoken-psi = pounds per square inch
spoken-metres = metres
spoken-feet = feet
spoken-kilometres-per-hour = kilometres per hour
spoken-miles-per-hour = miles per hour
spoken-centimetres = centimetres
spoken-inches = inches
spoken-kilograms-per-cubic-metre = kilograms per cubic metre
spoken-pounds-per-cubic-foot = pounds per cubic foot
