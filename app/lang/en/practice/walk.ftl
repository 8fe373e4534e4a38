### The way from the engine to the rotor, stage by stage.

lead =
    The same engine by a shaft and by oil. At each stage say first how much you think it passes on, then look.
# A stage's place on its route.
place = { $route }, stage { $place } of { $count }
# What a stage is given, as a flow and a pressure or a speed and a torque.
takes = The { $stage } takes { $power } ({ $drive }).
question = How much of that does it pass on?
passes-on = Passes on
passed-on = passed on
lost = lost
guess = Show what it passes on
missing = Move the slider or type a power first; a guess will do.
power-allowed = a power from zero up to what the stage takes.
compared = You said { $guess }. It passes on { $gives } ({ $drive }) and loses { $loses }, { $part } of what it takes.
back = Back
forward = Forward
restart = From the start
no-route = None of the routes can be hooked up here. Choose another machine or implement.

changes-most = What would change it most
# The figure is one of the stage: "pump: leakage".
influence =
    Of what isn't known exactly of this stage, this moves most: { $figure }. Over its range { $range } arrive at
    the rotor.
certain = All of this stage is known well enough.
turn-it = Turn it here and watch the figures above.
turn-others = Turn something else

## The end of the way

brought-out = What it comes to
brings = { $route }: { $power } arrive at the rotor at { $speed }, { $part } of the engine's power.
ideas = Three things to keep
idea-flow-times-pressure = Power is flow times pressure.
    .here =
        Here { $flow } times { $pressure } is { $power }. The engine has { $engine }, but no more than that goes
        into the oil.
idea-flow-is-speed = Flow is speed, and pressure is torque.
    .here =
        The flow brings this rotor to { $reached }; it is built for { $rated } and works from { $lowest } on. More
        pressure would make it stronger, not faster.
idea-change-costs = Every change of form costs.
    .here = From shaft to oil, through hoses and back to a shaft each takes its part: { $each }.
    .shaft = the shaft loses { $lost } of the { $taken } that it takes
    .oil = the oil loses { $lost } of the { $taken } that it takes
go-on = Now try it on cases
