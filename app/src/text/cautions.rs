//! The usual cautions, paraphrased from public guidance, and what the figures take for granted.

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
pub const SHAFTS: &[Caution] = &[
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
pub const OIL: &[Caution] = &[
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
pub const ALL: &[Caution] = &[
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

/// What the figures take for granted and leave out.
pub const ASSUMED: &[&str] = &[
    "Engine power is net power. Over speed it follows a default shape for diesel engines, not \
     this engine's own curve; driving takes nothing off it yet.",
    "Each figure that isn't known exactly is low, likely and high; the bars show the likely one, \
     the whisker the result with all poor or all good together.",
    "Oil is ISO VG 46; its temperature thickens or thins it in hoses only. Oil heating up, motor \
     starting torque, valve losses, pump and motor efficiency over pressure and viscosity, and \
     altitude aren't modelled yet.",
    "Whether it can be hooked up is judged by shafts, speeds, outlets and kits only: weight, \
     hitch, ballast, couplers and direction of rotation are still to be checked at the machine.",
    "Standing is what arrives over what the job needs: Ample from 1.15, Enough from 1.0, Slower \
     from 0.7, Labours from 0.4, below that Starves; a rotor below its lowest working speed never \
     gets better than Labours. These bands are this project's judgement.",
    "hp is the mechanical horsepower of 745.7 W, gpm the US gallon a minute.",
];
