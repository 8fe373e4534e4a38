### Results in words.

contrast = Through { $route } only { $power } arrive, { $part } of the engine's power; { $best } brings { $times } times as much.

# The message of the bars, for those who don't see them. Routes come as a list: "rear shaft 30 kW".
bars = Of the engine's { $engine }, these arrive at the rotor: { $routes }. The job needs { $need }.
bars-no-fit = { $route } no fit
engine-end = engine { $power }
need-end = the job needs { $power }
picture-title = { $implement } on the { $machine }
picture-subject = What arrives at the rotor by six routes, of the engine's { $power } net at { $speed }
of-engine = { $part } of engine
losses = Lost in: { $losses }

verdict-sure = { $likely }, over the whole range of what isn't known exactly.
verdict-at-worst = { $likely }; at worst { $worst }.
verdict-at-best = { $likely }; at best { $best }.
verdict-between = { $likely }; at worst { $worst }, at best { $best }.

job-refused = Enter a number above zero, of a size that can be done. It stays as it was until then.
# A gear of the PTO: "540 rpm with the engine at 2,200 rpm".
pto-gear = { $speed } with the engine at { $engine }
work-note =
    The most that a route keeps up: the faster it is driven, the more is worked and the less the engine
    has left. Time is for working without turning and stopping. How far a thrower throws is a bound
    without air's drag; real throws are shorter.
influences-note =
    What would arrive if one figure alone were at its low or its high value. The first is the one most
    worth asking about.
# Either may be "never".
time-range = { $low } to { $high }
casting = { $distance }, { $part } of rated
figure-of-stage = { $stage }: { $figure }

hotter-than = above { $temperature }
heat =
    At work { $lost } end as heat in the oil; while the rotor stands and the engine turns, { $idle }. This
    is how { $tank } of oil warm up where only the tank's surface, and a cooler if the yard knows one, cool
    them. The oil shouldn't pass { $limit }.
too-hot =
    { $reason } From cold it passes { $limit } after about { $after } of this work; in the long run, with this
    tank and no more cooling, { $power } can arrive at most.
too-hot-empty =
    { $reason } From cold it passes { $limit } after about { $after } of this work; in the long run, with this
    tank and no more cooling, it can't even turn the empty rotor.
work-takes = The empty rotor takes { $idle } ({ $idle-range }): { $idle-source }. The work takes { $energy } ({ $energy-range }): { $energy-source }.
cooling-none = No cooler is needed for this work. The usual tank for this flow: { $tank }.
cooling =
    To keep the limit in the long run, a cooler must take { $power } ({ $cooler }). The usual tank for this
    flow: { $tank }. Hoses, pipes and housings help; they aren't counted.

budget = of { $net }; taken before: { $taken }
budget-with-rule = of { $net }; taken before: { $taken }; the trade's plain rule for air: { $rule }
budget-air = thin or warm air
budget-driving = driving
at-the-rotor = { $power } ({ $range }) at { $speed } and { $effort }
# The curve's message, for those who don't see it.
curve = Power that arrives by { $route } over { $control }: from { $least } to { $most }.
out-of-range = Enter a number from { $range }. It stays as it was until then.
