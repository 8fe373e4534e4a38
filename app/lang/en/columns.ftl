### What stands above the columns of tables for spreadsheets, and beside a bar of the picture.

why = Why
delivered-low = Delivered, low
delivered-likely = Delivered, likely
delivered-high = Delivered, high
need-low = Need, low
need-likely = Need, likely
need-high = Need, high
part = Of the engine's net power
rotor = Rotor speed
kit = Kit
seat = Place of the implement
hook-up = Hooking up
job = Job
time-quickest = Time, quickest
time-likely = Time, likely
time-slowest = Time, slowest
price-kit = Price of the kit
price-variant = Price of the implement for this route
price-fitting = Price of fitting
price-total = Price in all
takes-speed = Takes: speed
takes-torque = Takes: torque
takes-flow = Takes: flow
takes-pressure = Takes: pressure
passes-on-speed = Passes on: speed
passes-on-torque = Passes on: torque
passes-on-flow = Passes on: flow
passes-on-pressure = Passes on: pressure

## How many items come to a judgement, and which

pass = Items that fit
    .which = Which fit
advice = Items with advice
    .which = Which have advice
question = Items to ask about
    .which = Which to ask about
stop = Items that don't fit
    .which = Which don't fit

# What holds a route, beside its bar.
limit = limit: { $limit }
