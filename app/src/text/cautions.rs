//! The usual cautions, paraphrased from public guidance, and what the figures take for granted.

use farend_core::route::RouteId;

/// What the cautions are for.
pub const LEAD: &str = "Shafts and oil under pressure maim and kill. These reminders replace \
    neither the manuals of machine and implement, nor local rules, nor training.";

/// A caution and where it comes from.
pub struct Caution {
    /// What to mind.
    pub text: &'static str,
    /// Where it comes from.
    pub source: &'static str,
}

/// For every route with a shaft.
const SHAFTS: &[Caution] = &[
    Caution {
        text: "Every guard in place, on the shaft and at both ends. Nobody rides along.",
        source: "29 CFR 1928.57; NIOSH 2004-101",
    },
    Caution {
        text: "Engine off and everything at a standstill before anyone clears, greases or \
               couples.",
        source: "29 CFR 1928.57; NIOSH 2004-101",
    },
    Caution {
        text: "Never step over a turning shaft: at 540 rpm it turns nine times a second and has \
               an arm before you feel it.",
        source: "university farm-safety advice",
    },
];

/// For every route with oil.
const OIL: &[Caution] = &[
    Caution {
        text: "Let trapped pressure off before you open a coupler or a hose.",
        source: "extension farm-safety advice on hydraulics",
    },
    Caution {
        text: "Look for leaks with a piece of cardboard, never a hand. Oil under the skin is an \
               emergency even if it hardly shows: go to hospital at once.",
        source: "extension farm-safety advice on hydraulics",
    },
    Caution {
        text: "Oil and fittings get hot enough to burn, above all where much of the power is \
               lost.",
        source: "common practice, no source",
    },
];

/// For every route.
const ALL: &[Caution] = &[
    Caution {
        text: "Carry a load low; an implement in front takes weight off the rear axle: ballast as \
               the manual says.",
        source: "a loader maker's manual",
    },
    Caution {
        text: "Throwers, mulchers and mowers fling stones: keep people well away.",
        source: "common practice, no source",
    },
];

/// Those for a route.
pub fn of_route(route: RouteId) -> impl Iterator<Item = &'static Caution> {
    let shafts = if route.has_pto() { SHAFTS } else { &[] };
    let oil = if route.needs_oil() { OIL } else { &[] };
    shafts.iter().chain(oil).chain(ALL)
}

/// What the figures take for granted.
pub const ASSUMED: &[&str] = &[
    "Engine power is net power; over its speed it follows the yard's points or, where there are \
     none, a default shape for diesel engines. Air is at 15 °C and sea level until you set it.",
    "Driving takes rolling, slope and pushing over the transmission's efficiency, where the yard \
     knows the machine's mass. Wheel slip isn't counted.",
    "Each figure that isn't known exactly is low, likely and high; the bars show the likely one, \
     the whisker the least and the most that all of them together can bring about.",
    "Efficiencies of pumps and motors are those of their rated point; away from it they follow \
     pressure, speed and the oil's viscosity.",
    "Whether it can be hooked up is judged by shafts, speeds, outlets and kits only: weight, \
     hitch, ballast, couplers and direction of rotation are still to be checked at the machine.",
    "Standing is what arrives over what the job needs: Ample from 1.15, Enough from 1.0, Slower \
     from 0.7, Labours from 0.4, below that Starves; a rotor below its lowest working speed never \
     gets better than Labours. These bands are this project's judgement.",
    "hp is the mechanical horsepower of 745.7 W, gpm the US gallon a minute.",
];

/// The equations that are used.
pub const MODELS: &[&str] = &[
    "Engine in thin or warm air: the form of ISO 3046-1, standard atmosphere, saturation pressure \
     by Buck. Power over speed without points: Leiderman's form.",
    "Pumps and motors: Wilson's model of laminar leakage, dry friction and viscous drag, fitted to \
     the efficiencies at the rated point (ISO 4391 sense); half the friction there is drag.",
    "Lines: Darcy-Weisbach, laminar to Re 2000, Haaland from 4000, a straight line between; \
     fittings by K; couplers and valves by the square of the flow.",
    "Oil: ASTM D341 for viscosity over temperature, density falling by 0.07 % for each kelvin.",
    "Joints: general kinematics of the cardan joint. The middle of a joint shaft wavers by q; two \
     equal angles with the yokes in phase cancel it at the end. Efficiency falls with the angle.",
    "Heat: every watt that a stage with oil loses heats the oil once; the tank sheds by two rules \
     of thumb.",
    "Work: what idles grows with the square of the rotor's speed; what is thrown takes energy with \
     the square too; other work takes so much for each tonne, square or cubic metre.",
];

/// What isn't modelled.
pub const NOT_MODELLED: &[&str] = &[
    "How speed sags under load: the engine holds the speed that is set.",
    "Wheel slip, turning at the end of a row, the driver.",
    "Heat shed by hoses, pipes, housings and cylinders; wind and sun on the tank.",
    "Oil foaming, air in the oil, wear, cold starts below the oil's pour point.",
    "Shock loads, what a shaft bears for a moment, fatigue.",
    "Pressure peaks, the time that valves take, hose stretch.",
    "How far a throw really goes in air.",
];
