//! What it would take: for each route, what brings it to a wished standing, or why nothing can.
//!
//! There is one model: an answer is a kit, settings or an engine speed with which
//! [`crate::compare`] itself finds the standing at the likely values. What is taken as monotone,
//! and so found as a root: less arrives and the rotor turns more slowly with less flow, below the
//! flow at which most arrives; less arrives with a lower relief pressure. Nothing is known of how
//! what arrives runs over the engine's speed, so that is looked along.
//!
//! How answers are chosen is this project's judgement: the engine's speed stays where it is set if
//! the standing can be had there, else at the PTO's rated speed, else at the lowest that is looked
//! at. The relief pressure stays as it is if any flow does, else it is raised as little as need be.
//! Then the flow is the least, and after that the relief pressure.

mod boxes;
mod hindrance;
mod least;
mod lift;
mod lines;
mod outfit;
mod pack;
mod scene;
mod shaft;
pub mod sizes;
mod speed;

pub use hindrance::Hindrance;
pub use lines::Lines;
pub use outfit::{Outfit, Tank};

use crate::fault::Fault;
use crate::implement::Implement;
use crate::kit::Kit;
use crate::machine::Machine;
use crate::quantity::{AngularSpeed, Flow, Pressure};
use crate::route::RouteId;
use crate::settings::{OilSettings, Settings};
use crate::standing::Standing;
use scene::Scene;
use serde::Serialize;

/// A standing that can be wished for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
pub enum Wish {
    /// At least [`Standing::Ample`].
    Ample,
    /// At least [`Standing::Enough`].
    Enough,
    /// At least [`Standing::Slower`].
    Slower,
}

impl Wish {
    /// All of them, the highest first.
    pub const ALL: [Self; 3] = [Self::Ample, Self::Enough, Self::Slower];

    /// The standing.
    pub fn standing(self) -> Standing {
        match self {
            Self::Ample => Standing::Ample,
            Self::Enough => Standing::Enough,
            Self::Slower => Standing::Slower,
        }
    }
}

/// What one route would take.
#[derive(Clone, Debug, PartialEq)]
pub struct Wanted {
    /// Which.
    pub route: RouteId,
    /// The lowest engine speed that does it with all else as it is, where one does. The rotor is
    /// within its speeds there, and a kit's pump not above its highest.
    pub engine_speed: Option<AngularSpeed>,
    /// What would have to be turned at the pump to do it with the hoses and the shafts that are
    /// there, where that can do it.
    pub turned: Option<Turned>,
    /// The hardware that does it, or all that is in the way: then no setting of this route can,
    /// unless that is [`Hindrance::NoSize`] only.
    pub outfit: Result<Outfit, Vec<Hindrance>>,
}

/// Flow and relief pressure that do it. A little less of either doesn't, unless it is the lowest
/// that can be set ([`crate::settings::FLOW_LIMITS`], [`crate::settings::RELIEF_LIMITS`]).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Turned {
    /// The engine's speed with that.
    pub engine_speed: AngularSpeed,
    /// The sheet's flow, or the pump pack's flow at the PTO's rated speed.
    pub flow: Flow,
    /// Relief pressure.
    pub relief: Pressure,
}

impl Turned {
    /// The settings with these taken over for a route.
    pub fn applied(&self, route: RouteId, settings: Settings) -> Settings {
        let oil = OilSettings {
            flow: Some(self.flow),
            relief: Some(self.relief),
        };
        Settings {
            engine_speed: Some(self.engine_speed),
            ..scene::with_oil(settings, route, oil)
        }
    }
}

impl Wanted {
    /// The settings that do it with the kits that are there, where any do: the engine's speed alone
    /// where that is enough, else flow and relief pressure too.
    pub fn applied(&self, settings: Settings) -> Option<Settings> {
        match (self.engine_speed, self.turned) {
            (Some(speed), _) => Some(Settings {
                engine_speed: Some(speed),
                ..settings
            }),
            (None, Some(turned)) => Some(turned.applied(self.route, settings)),
            (None, None) => None,
        }
    }
}

/// What each route would take, in the order of [`RouteId::ALL`].
///
/// # Errors
/// Every setting that is out of its range.
pub fn wanted(
    machine: &Machine,
    implement: &Implement,
    kits: &[Kit],
    settings: &Settings,
    wish: Wish,
) -> Result<Vec<Wanted>, Vec<Fault>> {
    settings.check(machine)?;
    let of = |route: &RouteId| wanted_by(*route, machine, implement, kits, settings, wish);
    Ok(RouteId::ALL.iter().map(of).collect())
}

/// What one route would take. The settings must have been checked.
pub fn wanted_by(
    route: RouteId,
    machine: &Machine,
    implement: &Implement,
    kits: &[Kit],
    settings: &Settings,
    wish: Wish,
) -> Wanted {
    let scene = Scene {
        route,
        machine,
        implement,
        kits,
        settings: *settings,
        aim: wish.standing().begins_at(),
        looks: scene::LOOKS,
    };
    let engine_speed = speed::lowest(&scene);
    let turned = least::turned(&scene);
    Wanted {
        route,
        engine_speed,
        turned,
        outfit: outfit::outfit(&scene, engine_speed.is_some() || turned.is_some()),
    }
}
