### Names of the fields of a yard file.

# A figure of a field: "Steering's flow, low".
figure-of = { $field }, { $figure }

## What means the same wherever it stands

place = Where it is
invented = Made-up machines
dealer = Who hands out its pages
note = A line on those pages
currency = Currency
hour-price = Price of an hour of work
machines = Machines
implements = Implements
kits = Kits
format-version = Version of the file
id = Short identifier, for links
name = Name
kind = Kind
mass-kg = Weight
price = Price
engine = Engine
rear-pto = Rear PTO
economy-pto = Rear PTO, economy gear
mid-pto = Mid PTO
circuits = Hydraulic outlets
oil = Oil
transmission = Transmission
hitch = Three-point hitch
loader = Loader
axles = Axles
end = Shaft end
reservoir = Tank and cooler
rotor = Rotor
need-kw = Power that the job needs
shafts = Shaft drives
motor = Hydraulic motor
work = Its work
travel = Over the ground
mount = How it hangs
routes = Routes that it serves
included = Comes along, nothing to buy
kit-pto-rpm = PTO speed
drive = Mechanical steps
pump = Pump
hoses = Hoses and couplers
shaft = Joint shaft
seat = Where it puts the implement
hookup-min = Time to hook it up
fitting-price = Price of fitting it
grade = Grade
cst-40 = Viscosity at 40 °C
cst-100 = Viscosity at 100 °C
kg-m3 = Density at 15 °C
oil-l = Oil in the tank
cooler-w-k = What the cooler sheds
relief-bar = Relief pressure
valve-bar = Pressure that the valve takes
volumetric = Volumetric efficiency
hydro-mechanical = Hydro-mechanical efficiency
displacement-cm3 = Displacement
coupler-mm = Coupler size
case-drain = Case drain
measure = Measured by
idle-kw = Power idling
kwh-per-unit = Energy for so much work
width-m = Working width
depth-m = Usual depth
density-kg-m3 = Density of the material
usual-km-h = Usual speed
highest-km-h = Highest speed for good work
ground = Ground
pushing-n = What the work pushes back with
category = Hitch category
centre-m = Centre of mass, from the pins or hooks
backwards = Works driving backwards
guarded = All guards are there
low = Low
likely = Likely
high = High
source = Where it comes from

## An engine

engine-net-kw = Net power
engine-gross-kw = Gross power
engine-rated-rpm = Rated speed
engine-lowest-rpm = Lowest speed under load
engine-curve = Power over speed
engine-aspiration = How it gets its air

## A point of its curve

curve-rpm = Speed
curve-kw = Power

## A PTO

pto-rpm = Shaft speed
pto-engine-rpm = At an engine speed of
pto-tested-kw = Power tested at the shaft
pto-rating-kw = Most that the shaft may take

## A hydraulic outlet

circuit-outlet = Outlet
circuit-flow-l-min = Flow on the sheet
circuit-engine-rpm = At an engine speed of
circuit-steering = Steering's share
circuit-supply = Kind of pump

## Steering

steering-policy = How steering gets its oil
steering-flow-l-min = Steering's flow

## A shaft end

end-shaft = Shaft type
end-turns = Turns
end-height-m = Height above the ground
end-ahead-m = Ends ahead of the ball ends by
end-behind-m = Ends behind the pins by
end-above-m = Stands above the lower pins by

## A three-point hitch

hitch-category = Category
hitch-lift-kg = Lifts
hitch-lift-at-m = Measured behind the ball ends
hitch-lowest-m = Ball ends at work, height
hitch-highest-m = Ball ends lifted, height

## A loader

loader-lift-kg = Lifts at the pins
loader-reach-m = From pivot to pins
loader-third-function = Third function at its end

## Axles

axles-wheelbase-m = Wheelbase
axles-front-kg = Weight on the front axle
axles-front-limit-kg = Most on the front axle
axles-rear-limit-kg = Most on the rear axle
axles-loader-ahead-m = Front axle to the loader's pins
axles-frame-ahead-m = Front axle to a subframe's hooks
axles-hitch-behind-m = Rear axle to the ball ends

## A rotor

rotor-rated-rpm = Rated speed
rotor-lowest-rpm = Lowest speed for good work
rotor-highest-rpm = Highest speed allowed
rotor-diameter-mm = Diameter over the tips

## A shaft drive of an implement

shaft-place = End of the machine
shaft-rpm = Input speed
shaft-drive = Steps to the rotor
shaft-rating-kw = Most that the input may take
shaft-end = Input shaft
shaft-price = Price of the implement so

## A hydraulic motor

motor-ratio = Rotor speed over motor speed
motor-drive = Steps to the rotor
motor-highest-l-min = Highest flow
motor-highest-bar = Highest pressure
motor-starting = Starting torque
motor-case-drain = Needs a case drain
motor-price = Price of the implement so

## A mechanical step

step-ratio = Speed out over speed in
step-efficiency = Efficiency
step-rating-nm = Most torque at its output
step-slip-clutch-nm = Slip clutch slips at
step-angle-deg = Angle of each joint

## A pump

pump-highest-rpm = Highest speed
pump-suction-bore-mm = Suction line, inner diameter
pump-suction-length-m = Suction line, length
pump-suction-lift-m = Pump above the oil by

## Hoses and couplers

hoses-bore-mm = Inner diameter
hoses-length-m = Length one way
hoses-back-bore-mm = Inner diameter of the hose back
hoses-couplers = Couplers, there and back
hoses-coupler-bar = Pressure that a coupler takes
hoses-coupler-l-min = At a flow of
hoses-fittings-k = Elbows and adapters, sum of K

## A joint shaft of a kit

kit-shaft-pto-end = PTO type that it suits
kit-shaft-far-end = Input type that it suits
kit-shaft-closed-m = Length pushed together
kit-shaft-open-m = Length where its tubes part
kit-shaft-reverses = Turns the direction round

## One of a list's groups

item-circuits = Outlet
item-shafts = Shaft drive
item-drive = Step
item-curve = Point
item-other = Entry
