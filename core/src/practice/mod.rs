//! Cases to practise on: a question about a machine and an implement of a yard, drawn by a seed, and
//! answered by the same comparison that the rest of the program shows.
//!
//! A case holds the question and nothing of its answer. [`draw`] makes only fair ones: the answer is
//! the same wherever the uncertain figures lie in their ranges, and no choice stands there twice. What
//! reaches a standing is asked at the likely values, for which standings are told, with some to spare.

mod amount;
mod answer;
mod chance;
mod draw;
mod fit;
mod guess;
mod help;
mod limit;
mod question;
mod record;
mod route;
mod scene;
mod set;
mod sheet;
mod wanted;

pub use answer::{Answer, Trap, Tried, Truth, reveal};
pub use draw::draw;
pub use guess::{Guess, Judged, judge};
pub use help::{Help, next};
pub use question::{Change, Fits, Question};
pub use record::{Answered, Confidence, progress, score};
pub use set::{Kinds, Set};

use crate::settings::Settings;
use crate::words::words;
use serde::{Deserialize, Serialize};

words! {
    /// What a case asks.
    Kind {
        /// Which route brings how much: to be put in order.
        Route = "route",
        /// How much arrives by a route.
        Amount = "amount",
        /// What holds a route where it is.
        Limit = "limit",
        /// Whether a sheet can be so, and what is wrong with it.
        Sheet = "sheet",
        /// Whether a route with a kit can be hooked up.
        Fit = "fit",
        /// What brings a route to a standing.
        Wanted = "wanted",
    }
}

words! {
    /// What a case teaches.
    Idea {
        /// Hydraulic power is flow times pressure, whatever the engine.
        PowerIsFlowTimesPressure = "power_is_flow_times_pressure",
        /// Flow is speed; pressure is torque.
        FlowIsSpeed = "flow_is_speed",
        /// Every change from shaft to oil and back costs.
        EveryChangeCosts = "every_change_costs",
        /// A shaft brings the most.
        ShaftBringsMost = "shaft_brings_most",
        /// Figures of a sheet hold for one place, speed and moment together.
        FiguresBelongTogether = "figures_belong_together",
        /// What can't be hooked up brings nothing.
        ItMustHookUp = "it_must_hook_up",
    }
}

words! {
    /// A wrong idea that a wrong answer shows.
    Misconception {
        /// Takes the engine's power for what oil brings.
        EngineAsHydraulic = "engine_as_hydraulic",
        /// Adds flows that one implement never gets: steering's, or another outlet's.
        AddsFlows = "adds_flows",
        /// Forgets what lines, couplers and the way back to the tank take.
        ForgetsReturn = "forgets_return",
        /// Takes more pressure for more speed.
        PressureForSpeed = "pressure_for_speed",
        /// Counts power though the rotor is below its lowest speed.
        IgnoresSpeed = "ignores_speed",
    }
}

/// Which case.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub struct Draw {
    /// What it asks.
    pub kind: Kind,
    /// The same seed draws the same case from the same yard, everywhere.
    pub seed: u32,
}

/// A question about a machine and an implement, with nothing of its answer.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Case {
    /// Where it was drawn.
    pub draw: Draw,
    /// Identifier of the machine.
    pub machine: String,
    /// Identifier of the implement.
    pub implement: String,
    /// How they are set.
    pub settings: Settings,
    /// What is asked.
    pub question: Question,
    /// What it teaches before all.
    pub idea: Idea,
}
