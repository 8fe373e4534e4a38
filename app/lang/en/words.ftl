### The words of yard files as people say them.

## Three-point hitches and PTO shafts

shaft-1 = Type 1: 1⅜ in, 6 splines
shaft-2 = Type 2: 1⅜ in, 21 splines
shaft-3 = Type 3: 1¾ in, 20 splines
shaft-4 = Type 4: 57.5 mm, 22 splines

## Machines and implements

tractor = Tractor
skid-steer = Skid steer or track loader
thrower = Thrower
mulcher = Mulcher
broom = Broom
chipper = Chipper
mower = Mower
tiller = Tiller
auger = Auger
other = Something else that turns

## Gears and other steps of a shaft

spur = Spur gears
bevel = Bevel gears
spiral-bevel = Spiral bevel gears
worm = Worm gear
belt = Belt
chain = Chain
joint-shaft = Joint shaft
direct = Straight on, nothing between

## How an engine gets its air, how a machine drives

natural = Draws it in
turbo = Turbo
turbo-cooled = Turbo with charge cooler
gear = Gears
hydrostatic = Hydrostatic

## Circuits, and what steering takes of them

remotes = Remotes or third function
standard-flow = Standard flow
high-flow = High flow
separate-pump = From a pump of its own
fixed-priority = Takes a fixed flow first
load-sensing-priority = Takes oil only while steering
summed = Own pump, but added into the sheet's flow
open-centre = Fixed pump, open centre
pressure-compensated = Variable pump, pressure compensated
load-sensing = Variable pump, load sensing
tractor-fluid = Tractor fluid
clockwise = Clockwise
anticlockwise = Anticlockwise

## Places, work, ground

rear = Rear
front = Front
mass = Tonnes of material
area = Ground worked
volume = Cubic metres of material
length = Metres of way
firm = Firm
grass = Grass
loose = Loose
loader = On the loader
front-frame = On a subframe in front
rear-backwards = On the rear hitch, driving backwards
rear-forwards = On the rear hitch, driving forwards
rear-shaft = Rear shaft
mid-shaft = Mid shaft
turned-forward = Rear shaft turned forward
machine-hydraulics = Machine hydraulics
pump-pack = Pump pack

## Where a figure comes from

own = Own figure or sheet
computed = Computed from others
common-practice = Common practice
from-memory = From memory
judgement = Judgement
pump-reference = Reference on pumps
motor-article = Article on motors
rating-rule = 86 % rule
gear-note = Note on gears
belt-sheet = Sheet on belts
coupler-table = Table of couplers
starting-note = Note on starting torque
tank-rules = Rules for tanks
surface-rules = Rules for a tank's surface
mower-article = Article on mowers
chipper-trial = Trial of chippers
viscosity-chart = Chart of viscosities
