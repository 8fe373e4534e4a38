//! The truth of a case, with the results that it comes from.

use super::scene::Scene;
use super::{Case, Change, Fits, Misconception, Question};
use super::{amount, fit, route, sheet, wanted};
use crate::claims::{Check, Weighed};
use crate::compare::{Comparison, Run, compare};
use crate::drive::Limit;
use crate::fit::Item;
use crate::quantity::Power;
use crate::route::RouteId;
use crate::spread::Spread;
use crate::yard::Yard;

/// A case's answer.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// What is true.
    pub truth: Truth,
    /// All routes of the pair as the case sets them.
    pub comparison: Comparison,
}

/// What is true.
#[derive(Clone, Debug, PartialEq)]
pub enum Truth {
    /// Of [`super::Question::Route`].
    Route {
        /// Those that can be hooked up, most arriving power first.
        order: Vec<RouteId>,
        /// Those that can't.
        cant: Vec<RouteId>,
    },
    /// Of [`super::Question::Amount`].
    Amount {
        /// What arrives.
        delivered: Spread<Power>,
        /// What wrong ideas would make of it.
        traps: Vec<Trap>,
    },
    /// Of [`super::Question::Limit`].
    Limit(Limit),
    /// Of [`super::Question::Sheet`].
    Sheet {
        /// The check that it doesn't stand, if any.
        flaw: Option<Check>,
        /// Every check with its arithmetic.
        weighed: Weighed,
    },
    /// Of [`super::Question::Fit`].
    Fit {
        /// What the items come to.
        fits: Fits,
        /// Every item.
        items: Vec<Item>,
    },
    /// Of [`super::Question::Wanted`]: what comes of each choice, in the question's order.
    Wanted(Vec<Tried>),
}

/// What a wrong idea would make of an amount.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Trap {
    /// The idea.
    pub misconception: Misconception,
    /// What it comes to.
    pub gives: Power,
}

/// What comes of a change.
#[derive(Clone, Debug, PartialEq)]
pub struct Tried {
    /// Which.
    pub change: Change,
    /// The route with it.
    pub run: Run,
    /// Whether it has the standing.
    pub reaches: bool,
    /// The wrong idea of who takes it for right, where it shows one.
    pub misconception: Option<Misconception>,
}

/// The answer of a case; `None` where the yard no longer has what it asks about.
pub fn reveal(yard: &Yard, case: &Case) -> Option<Answer> {
    let scene = Scene::of(yard, case)?;
    let (machine, implement) = (scene.machine, scene.implement);
    let comparison = compare(machine, implement, scene.kits, &scene.settings).ok()?;
    let truth = match &case.question {
        Question::Route { routes } => route::truth(&scene, &comparison, routes),
        Question::Amount { route, kit } => amount::truth(&scene, *route, scene.kit(kit)?)?,
        Question::Limit { route, kit, .. } => {
            Truth::Limit(scene.run(*route, scene.kit(kit)?)?.limit)
        }
        Question::Sheet { sheet, .. } => sheet::truth(&scene, sheet)?,
        Question::Fit { route, kit, .. } => fit::truth(&scene, *route, scene.kit(kit)?),
        Question::Wanted {
            route,
            kit,
            wish,
            choices,
        } => wanted::truth(&scene, (*route, scene.kit(kit)?), *wish, choices)?,
    };
    Some(Answer { truth, comparison })
}
