//! Each route of a yard, with each kit that serves it.

use crate::random::Turned;
use farend_core::chain::Ledger;
use farend_core::compare::{Run, compare};
use farend_core::implement::Implement;
use farend_core::kit::Kit;
use farend_core::machine::Machine;
use farend_core::quantity::Power;
use farend_core::route::RouteId;
use farend_core::route::joined::Joined;
use farend_core::route::part::{Hookup, assemble};
use farend_core::settings::Settings;
use farend_core::spread::{Corner, Scenario};
use farend_core::stage::{StageKind, StagePhysics};
use farend_core::yard::Yard;
use farend_core::yard::entry::{ImplementEntry, KitEntry, MachineEntry, YardEntry};
use farend_core::yard::rules::FORMAT_VERSION;
use farend_tests::load;
use proptest::prelude::TestCaseError;

/// A random yard as the program gets it: through its file.
pub fn loaded(entry: &YardEntry) -> Yard {
    load(&serde_json::to_string(entry).expect("a yard as JSON"))
}

/// A yard of one machine, one implement and one kit, as the program gets it.
pub fn yard_of(machine: MachineEntry, implement: ImplementEntry, kit: KitEntry) -> Yard {
    loaded(&YardEntry {
        format_version: FORMAT_VERSION,
        name: "A yard".to_owned(),
        place: None,
        invented: None,
        dealer: None,
        note: None,
        currency: None,
        hour_price: None,
        machines: vec![machine],
        implements: vec![implement],
        kits: vec![kit],
    })
}

/// Each machine with each implement.
pub fn pairs(yard: &Yard) -> impl Iterator<Item = (&Machine, &Implement)> {
    yard.machines
        .iter()
        .flat_map(|machine| yard.implements.iter().map(move |it| (machine, it)))
}

/// One hook-up in one scenario.
pub struct Hooked {
    /// Its route.
    pub route: RouteId,
    /// Its ledger.
    pub ledger: Ledger,
}

/// Every kit that can be hooked up, on every route, in every scenario.
pub fn hooked(
    machine: &Machine,
    implement: &Implement,
    kits: &[Kit],
    settings: &Settings,
) -> Vec<Hooked> {
    let mut all = Vec::new();
    for route in RouteId::ALL {
        for kit in kits.iter().filter(|kit| kit.routes.contains(route)) {
            let hookup = Hookup {
                machine,
                implement,
                kit: Some(kit),
                settings,
            };
            let Ok(joined) = assemble(route.parts(), hookup) else {
                continue;
            };
            for scenario in Scenario::ALL {
                let chain = joined.chain(Corner::all(scenario));
                let ledger = chain
                    .most()
                    .and_then(|(most, limit)| chain.ledger(&most, limit))
                    .unwrap_or_else(|stall| panic!("{}: {stall:?}", route.word()));
                all.push(Hooked {
                    route: *route,
                    ledger,
                });
            }
        }
    }
    all
}

/// Whether it runs and its pump and motor hand on at least half of what they take: only there is it
/// certain that more flow, more pressure and less loss are never for the worse.
pub fn is_sound(ledger: &Ledger) -> bool {
    ledger.stall.is_none()
        && ledger
            .passages
            .iter()
            .filter(|it| matches!(it.stage.kind(), StageKind::Pump | StageKind::Motor))
            .all(|it| it.loss <= it.gives.power)
}

/// A route that runs with its best kit, at its settings.
pub struct Case<'a> {
    /// The route.
    pub route: RouteId,
    /// What drives and what is driven, with that kit.
    pub hookup: Hookup<'a>,
    /// They, joined up.
    pub joined: Joined,
    /// How it runs.
    pub run: &'a Run,
    /// What the job takes.
    pub need: Power,
}

/// Shows each route of a random yard that runs.
pub fn each_route(
    entry: &YardEntry,
    turned: &Turned,
    mut holds: impl FnMut(Case<'_>) -> Result<(), TestCaseError>,
) -> Result<(), TestCaseError> {
    let yard = loaded(entry);
    for (machine, implement) in pairs(&yard) {
        let settings = turned.on(machine, implement);
        let comparison = compare(machine, implement, &yard.kits, &settings);
        let comparison = comparison.expect("settings within their ranges");
        for result in &comparison.routes {
            let Some(run) = result.run() else { continue };
            let hookup = Hookup {
                machine,
                implement,
                kit: yard.kit(&run.kit),
                settings: &settings,
            };
            holds(Case {
                route: result.route,
                hookup,
                joined: assemble(result.route.parts(), hookup).expect("it runs"),
                run,
                need: comparison.need.likely,
            })?;
        }
    }
    Ok(())
}
