### The usual cautions, paraphrased from public guidance, and what the figures take for granted.

lead =
    Shafts and oil under pressure maim and kill. These reminders replace neither the manuals of machine and
    implement, nor local rules, nor training.

## For every route with a shaft

guards = Every guard in place, on the shaft and at both ends. Nobody rides along.
engine-off = Engine off and everything at a standstill before anyone clears, greases or couples.
never-step-over =
    Never step over a turning shaft: at 540 rpm it turns nine times a second and has an arm before you feel it.

## For every route with oil

trapped-pressure = Let trapped pressure off before you open a coupler or a hose.
leaks =
    Look for leaks with a piece of cardboard, never a hand. Oil under the skin is an emergency even if it hardly
    shows: go to hospital at once.
hot-oil = Oil and fittings get hot enough to burn, above all where much of the power is lost.

## For every route

carry-low = Carry a load low; an implement in front takes weight off the rear axle: ballast as the manual says.
flung-stones = Throwers, mulchers and mowers fling stones: keep people well away.

## Where they come from

university-advice = university farm-safety advice
extension-advice = extension farm-safety advice on hydraulics
common-practice = common practice, no source
loader-manual = a loader maker's manual

## What the figures take for granted

net-power =
    Engine power is net power; over its speed it follows the yard's points or, where there are none, a default
    shape for diesel engines. Air is at 15 °C and sea level until you set it.
driving =
    Driving takes rolling, slope and pushing over the transmission's efficiency, where the yard knows the machine's
    mass. Wheel slip isn't counted.
ranges =
    Each figure that isn't known exactly is low, likely and high; the bars show the likely one, the whisker the
    least and the most that all of them together can bring about.
efficiencies =
    Efficiencies of pumps and motors are those of their rated point; away from it they follow pressure, speed and
    the oil's viscosity.
hooking-up =
    Whether it can be hooked up is judged by what the yard says of machine, implement and kits: shafts, speeds,
    direction of rotation, hitch, weight, ballast and couplers. What it doesn't say is asked; what it says is
    still to be checked at the machine.
standings =
    Standing is what arrives over what the job needs: Ample from 1.15, Enough from 1.0, Slower from 0.7, Labours
    from 0.4, below that Starves; a rotor below its lowest working speed never gets better than Labours. These
    bands are this project's judgement.
units = hp is the mechanical horsepower of 745.7 W, gpm the US gallon a minute.

## The equations that are used

model-engine =
    Engine in thin or warm air: the form of ISO 3046-1, standard atmosphere, saturation pressure by Buck. Power
    over speed without points: Leiderman's form.
model-pumps =
    Pumps and motors: Wilson's model of laminar leakage, dry friction and viscous drag, fitted to the efficiencies
    at the rated point (ISO 4391 sense); half the friction there is drag.
model-lines =
    Lines: Darcy-Weisbach, laminar to Re 2000, Haaland from 4000, a straight line between; fittings by K; couplers
    and valves by the square of the flow.
model-oil = Oil: ASTM D341 for viscosity over temperature, density falling by 0.07 % for each kelvin.
model-joints =
    Joints: general kinematics of the cardan joint. The middle of a joint shaft wavers by q; two equal angles with
    the yokes in phase cancel it at the end. Efficiency falls with the angle.
model-heat = Heat: every watt that a stage with oil loses heats the oil once; the tank sheds by two rules of thumb.
model-work =
    Work: what idles grows with the square of the rotor's speed; what is thrown takes energy with the square too;
    other work takes so much for each tonne, square or cubic metre, or metre of way.

## What isn't modelled

not-sag = How speed sags under load: the engine holds the speed that is set.
not-slip = Wheel slip, turning at the end of a row, the driver.
not-other-heat = Heat shed by hoses, pipes, housings and cylinders; wind and sun on the tank.
not-foam = Oil foaming, air in the oil, wear, cold starts below the oil's pour point.
not-shock = Shock loads, what a shaft bears for a moment, fatigue.
not-peaks = Pressure peaks, the time that valves take, hose stretch.
not-air-drag = How far a throw really goes in air.
