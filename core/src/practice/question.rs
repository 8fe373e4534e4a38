//! What a case asks, with what there is to choose from.

use crate::claims::{Check, Sheet};
use crate::drive::Limit;
use crate::quantity::{AngularSpeed, Flow, Length, Pressure};
use crate::route::RouteId;
use crate::wanted::Wish;
use crate::words::words;
use serde::Serialize;

/// What is asked. No choice stands there twice, and none looks like another as it's shown.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub enum Question {
    /// Put these routes in order, most arriving power first, and set apart those that can't be
    /// hooked up.
    Route {
        /// The routes, in the order of [`RouteId::ALL`].
        routes: Vec<RouteId>,
    },
    /// How much power arrives?
    Amount {
        /// By this route.
        route: RouteId,
        /// Identifier of the kit.
        kit: String,
    },
    /// What holds the route where it is?
    Limit {
        /// Which.
        route: RouteId,
        /// Identifier of the kit.
        kit: String,
        /// To choose from.
        choices: Vec<Limit>,
    },
    /// What is wrong with this sheet of the machine?
    Sheet {
        /// What it says.
        sheet: Sheet,
        /// To choose from: the check that it doesn't stand, or none, where it stands all.
        choices: Vec<Option<Check>>,
    },
    /// Can it be hooked up?
    Fit {
        /// By this route.
        route: RouteId,
        /// Identifier of the kit.
        kit: String,
        /// To choose from: all of them.
        choices: Vec<Fits>,
    },
    /// Which of these changes alone brings the route to the standing?
    Wanted {
        /// Which.
        route: RouteId,
        /// Identifier of the kit.
        kit: String,
        /// The standing.
        wish: Wish,
        /// To choose from.
        choices: Vec<Change>,
    },
}

words! {
    /// Whether something can be hooked up.
    Fits {
        /// It can, perhaps with something to know or to change: [`crate::fit::Judgement::Advice`].
        Fits = "fits",
        /// Something must be asked first.
        AskFirst = "ask_first",
        /// It can't.
        Cant = "cant",
    }
}

/// One thing changed.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub enum Change {
    /// The flow of the route's pump: the sheet's, or the pump pack's at the PTO's rated speed.
    Flow(Flow),
    /// Its relief pressure.
    Relief(Pressure),
    /// The engine's speed.
    EngineSpeed(AngularSpeed),
    /// Both hoses of this bore.
    Hoses(Length),
}
