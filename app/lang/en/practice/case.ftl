### What a case asks.

# Machine and implement, as people say it.
pair = { $machine } with { $implement }

question-route =
    Which route brings most power to the rotor? Put them in order, and set apart what can't be hooked up.
    .group = Which route brings most power to the rotor?
# Routes come with their article.
question-amount = How much power arrives at the rotor by { $route }?
question-limit = What holds { $route } where it is?
question-sheet = Can this sheet be right, and if not, what is wrong?
question-fit = Can it be hooked up by { $route }?
question-wanted = Which of these alone brings { $route } to { $standing } ({ $meaning })?

## What is wrong with a sheet

flaw-none = Nothing: it can be so
flaw-hydraulic-power = Hydraulic power isn't its flow times its pressure
flaw-engine-power = The engine can't turn a pump for that
flaw-steering = Steering's flow is counted in
flaw-pto-power = The PTO can't give that of such an engine

## Whether it can be hooked up

fits = It can
fits-ask-first = Something must be asked first
fits-cant = It can't

## One thing changed

change-flow = Flow { $flow }
change-relief = Relief { $pressure }
change-engine-speed = Engine at { $speed }
change-hoses = Hoses of { $bore } bore
