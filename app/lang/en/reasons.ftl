### Why a route can't be had, as a part of a sentence; and what to know beside its figures, as sentences.

not-a-skid-steer = this machine isn't a skid steer
a-skid-steer = a skid steer's circuits have a route of their own
no-rear-pto = the machine has no rear PTO
no-mid-pto = the machine has no mid PTO
no-outlet = the machine has no outlet for an implement's oil
no-rear-shaft = the implement can't be had with a shaft for the rear hitch
no-front-shaft = the implement can't be had with a shaft for the front
no-motor = the implement can't be had with a hydraulic motor
no-kit = this yard has no kit for it
kit-for-other-pto = the kit is built for { $needs }, the PTO turns at { $brings }
pump-would-be-too-fast = the pump would turn at { $brings }, it's built for at most { $highest }
wrong-speed = the shaft brings { $brings }, the implement needs { $needs }

no-flow-left = Leaks, and steering where it has its oil from here, take all that the pump gives: nothing is left to turn the rotor.
no-pressure-left = Pump, hoses, couplers and motor use up all that the engine and the relief valve allow at this flow: the rotor stands still.
rotor-too-slow = The rotor reaches { $speed } and needs at least { $lowest } to work properly, whatever its power: no better than Labours.
rotor-too-fast = The rotor would turn at { $speed }, faster than the { $highest } it may: lower the engine speed.
far-from-rated = The { $stage } hands on less than half of what it takes: here it works far from what it is made for, and the figures are rough.
oil-out-of-range =
    The oil is at { $viscosity }; pumps and motors are made for { $thinnest } to { $thickest }. The figures are
    rough here, and the machine's manual says how to warm it up.
pump-too-fast = The pack's pump turns at { $speed }, faster than the { $highest } it may: lower the engine speed.
line-too-narrow = Oil runs at { $velocity } in { $line }, up to { $usual } is usual there: a wider one loses less.
suction-too-low =
    The pump's inlet gets { $inlet } absolute and needs { $lowest }: it draws bubbles and wears out. A wider or
    shorter suction line, or a pump below its oil.
joint-angle = Each joint bends by { $angle }°: { $advice }.
wont-start =
    Stopped under full load it won't start again: the motor starts with { $starts } at the rotor, the job takes
    { $needs }. Back off and clear it with the engine stopped.
flow-diverted = { $comes } come, the motor may take { $used }: the rest goes back to the tank and heats the oil.
