### What came of an answer.

truth-heading = What is so
stage-by-stage = Stage by stage
at-once = Looked at one by one
# Beside the marks of a picture.
engine-power = the engine's power
you-said = what you said
yours = your answer
your-place = You said
arrives = Arrives
reason = Why
change = Change
reaches = Does it

## The first word on it

right = Right.
    .by-guessing = Right. Look why, and next time you needn't guess.
close = Close, but not quite.
wrong = Not this one. Here is how it goes.
    .though-sure = Not this one. You were sure, so this is the one to remember.

## The truth in short

# Routes in their order, two at a time: "rear shaft, then mid shaft, then pump pack".
then = { $before }, then { $next }
cant = can't be hooked up: { $routes }
power-arrives = { $power } arrive at the rotor.
sheet-can-be = The sheet can be so: what it says belongs together.
# One change, the power that it brings, and how that does at work.
change-brings = { $change }: { $power } arrive, { $meaning }.

## Wrong ideas, and what to think instead

engine-as-hydraulic = Taking the engine's power for the oil's
    .instead =
        Many do. But oil carries only its flow times its pressure, however strong the engine that turns the
        pump. The rest of the engine's power never gets into the oil.
adds-flows = Adding flows up
    .instead =
        It looks like one pump for all. But what steering takes, and what another outlet gives, never reaches
        this implement's motor: count only what comes through its own hose.
forgets-return = Forgetting the way there and back
    .instead =
        Easily done, for hoses don't look like a loss. But valve, couplers and hoses take pressure both ways,
        and the motor works only with what is left between.
pressure-for-speed = More pressure for more speed
    .instead =
        It feels right, for a stronger push seems faster. But the motor's speed is set by the flow alone; more
        pressure makes it stronger, not faster.
ignores-speed = Counting power and forgetting speed
    .instead =
        The kilowatts are there, but a rotor below its lowest speed does no proper work with them: look at the
        speed too.
