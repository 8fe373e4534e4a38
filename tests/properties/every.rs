//! Each route of a yard, with each kit that serves it.

use farend_core::chain::{Ledger, run};
use farend_core::compare::Comparison;
use farend_core::implement::Implement;
use farend_core::kit::Kit;
use farend_core::machine::Machine;
use farend_core::route::RouteId;
use farend_core::route::part::{Hookup, assemble};
use farend_core::settings::Settings;
use farend_core::spread::Scenario;
use farend_core::yard::Yard;
use farend_core::yard::entry::YardEntry;
use farend_tests::load;

/// A random yard as the program gets it: through its file.
pub fn loaded(entry: &YardEntry) -> Yard {
    load(&serde_json::to_string(entry).expect("a yard as JSON"))
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
    let speed = settings.engine_speed_for(machine);
    let mut all = Vec::new();
    for route in RouteId::ALL {
        for kit in kits.iter().filter(|kit| kit.routes.contains(route)) {
            let hookup = Hookup {
                machine,
                implement,
                kit: Some(kit),
                settings,
            };
            let Ok(stages) = assemble(route.parts(), hookup) else {
                continue;
            };
            for scenario in Scenario::ALL {
                let available = machine.engine.net_at(speed).at(scenario);
                let ledger = run(&stages, available, speed, scenario)
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

/// What each route delivers at the likely values; `None` where it can't be hooked up.
pub fn delivered(comparison: &Comparison) -> Vec<Option<f64>> {
    let routes = comparison.routes.iter();
    routes
        .map(|result| result.run().map(|run| run.delivered.likely.to_watts()))
        .collect()
}
