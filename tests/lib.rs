//! Shared by the tests of this crate.

pub mod circuit;
pub mod draws;
pub mod fingerprint;
pub mod folder;
pub mod fuzzing;
pub mod item_kind;
pub mod made;
pub mod parts;
pub mod quantity;
pub mod units;

use farend_core::chain::{Chain, Ledger};
use farend_core::compare::{Comparison, Run, compare};
use farend_core::defaults::{oil, rated_viscosity};
use farend_core::quantity::{AngularSpeed, Power};
use farend_core::route::RouteId;
use farend_core::settings::Settings;
use farend_core::source::Source;
use farend_core::spread::{Corner, Spread};
use farend_core::stage::{AtWork, OilAtWork, Stage};
use farend_core::yard::{DEMO, Yard};

/// The built-in yard.
///
/// # Panics
/// Where it has faults, with all of them.
pub fn demo() -> Yard {
    load(DEMO)
}

/// A yard that must be without faults.
///
/// # Panics
/// Where it has faults, with all of them.
pub fn load(json: &str) -> Yard {
    Yard::from_json(json).unwrap_or_else(|faults| {
        let lines: Vec<_> = faults.iter().map(ToString::to_string).collect();
        panic!("the yard has faults:\n{}", lines.join("\n"))
    })
}

/// The six routes of a yard's machine and implement.
///
/// # Panics
/// Where the yard has no such machine or implement, or refuses the settings.
pub fn compared(yard: &Yard, machine: &str, implement: &str, settings: &Settings) -> Comparison {
    let machine = yard.machine(machine).expect("a machine of this yard");
    let implement = yard
        .implement(implement)
        .expect("an implement of this yard");
    compare(machine, implement, &yard.kits, settings).expect("settings that fit the machine")
}

/// At work with the oil for which sheets of pumps and motors hold.
pub fn with_rated_oil(corner: Corner) -> AtWork {
    let oil = OilAtWork {
        viscosity: Spread::exact(rated_viscosity(), Source::Own),
        density: oil().density_at_15,
    };
    AtWork::new(&oil, corner)
}

/// The most that stages can hand on at a corner, with the default oil at its rated viscosity.
///
/// # Panics
/// Where a stage for oil meets a shaft or the other way.
pub fn most(stages: &[Stage], available: Power, speed: AngularSpeed, corner: Corner) -> Ledger {
    let chain = Chain {
        stages,
        available,
        speed,
        at: with_rated_oil(corner),
    };
    let (most, limit) = chain.most().expect("shafts join shafts");
    chain.ledger(&most, limit).expect("shafts join shafts")
}

/// One route of a yard's machine and implement at the yard's own settings, where it can be had.
///
/// # Panics
/// As [`compared`].
pub fn run(yard: &Yard, machine: &str, implement: &str, route: RouteId) -> Option<Run> {
    compared(yard, machine, implement, &Settings::default())
        .route(route)
        .and_then(|result| result.run().cloned())
}
