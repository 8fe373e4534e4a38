//! Random machines.

use super::{efficiency, log, shaft_rpm, uncertain};
use farend_core::machine::{MachineKind, Outlet, SteeringPolicy, Supply};
use farend_core::yard::entry::{
    CircuitEntry, EngineEntry, MachineEntry, PtoEntry, SteeringEntry, UncertainEntry,
};
use proptest::option;
use proptest::prelude::*;

/// A tractor, with or without either PTO and remotes.
pub fn tractor(id: &'static str) -> BoxedStrategy<MachineEntry> {
    engine()
        .prop_flat_map(move |engine| {
            (
                option::weighted(0.9, pto(engine.clone())),
                option::weighted(0.8, pto(engine.clone())),
                option::weighted(0.9, circuit(Outlet::Remotes, engine.rated_rpm)),
            )
                .prop_map(move |(rear_pto, mid_pto, remotes)| MachineEntry {
                    id: id.to_owned(),
                    name: "A tractor".to_owned(),
                    kind: MachineKind::Tractor,
                    engine: engine.clone(),
                    rear_pto,
                    mid_pto,
                    circuits: remotes.into_iter().collect(),
                })
        })
        .boxed()
}

/// A skid steer with either circuit, both or none.
pub fn skid_steer(id: &'static str) -> BoxedStrategy<MachineEntry> {
    engine()
        .prop_flat_map(move |engine| {
            (
                option::weighted(0.9, circuit(Outlet::StandardFlow, engine.rated_rpm)),
                option::weighted(0.7, circuit(Outlet::HighFlow, engine.rated_rpm)),
            )
                .prop_map(move |(standard, high)| MachineEntry {
                    id: id.to_owned(),
                    name: "A skid steer".to_owned(),
                    kind: MachineKind::SkidSteer,
                    engine: engine.clone(),
                    rear_pto: None,
                    mid_pto: None,
                    circuits: standard.into_iter().chain(high).collect(),
                })
        })
        .boxed()
}

/// The likely net power at a speed, by the equation and not by the core.
pub fn net_kw_at(engine: &EngineEntry, rpm: f64) -> f64 {
    let rated = match engine.net_kw {
        UncertainEntry::One(likely) | UncertainEntry::Three { likely, .. } => likely,
    };
    let x = rpm / engine.rated_rpm;
    rated * (0.87 * x + 1.13 * x * x - x * x * x)
}

/// Its lowest speed lies where the default curve of power over speed holds.
fn engine() -> BoxedStrategy<EngineEntry> {
    (uncertain(3.0, 600.0), log(1200.0, 5000.0), 0.3..=1.0_f64)
        .prop_map(|(net_kw, rated_rpm, part)| EngineEntry {
            net_kw,
            rated_rpm,
            lowest_rpm: (rated_rpm * part).max(300.0),
        })
        .boxed()
}

fn pto(engine: EngineEntry) -> BoxedStrategy<PtoEntry> {
    (
        shaft_rpm(),
        0.0..=1.0_f64,
        option::of((0.5..0.9_f64, 0.9..0.95_f64, 0.95..0.999_f64)),
        option::of(uncertain(1.0, 600.0)),
    )
        .prop_map(move |(rpm, part, tested, rating_kw)| {
            let span = engine.rated_rpm - engine.lowest_rpm;
            let engine_rpm = (engine.lowest_rpm + span * part).min(engine.rated_rpm);
            let net = net_kw_at(&engine, engine_rpm);
            // Where even half of it is below what a file may say there is no test.
            let tested_kw =
                tested
                    .filter(|_| net > 2.0)
                    .map(|(low, likely, high)| UncertainEntry::Three {
                        low: net * low,
                        likely: net * likely,
                        high: (net * high).min(600.0),
                        source: None,
                    });
            PtoEntry {
                rpm,
                engine_rpm,
                tested_kw,
                rating_kw,
            }
        })
        .boxed()
}

fn circuit(outlet: Outlet, rated_rpm: f64) -> BoxedStrategy<CircuitEntry> {
    (
        uncertain(2.0, 400.0),
        0.3..=1.0_f64,
        uncertain(20.0, 420.0),
        steering_policy(),
        0.01..0.9_f64,
        (
            option::of(proptest::sample::select(Supply::ALL)),
            option::of(uncertain(0.1, 60.0)),
        ),
        option::of(efficiency(0.5)),
        option::of(efficiency(0.5)),
    )
        .prop_map(
            move |(
                flow_l_min,
                part,
                relief_bar,
                policy,
                share,
                (supply, valve_bar),
                volumetric,
                hydro_mechanical,
            )| {
                CircuitEntry {
                    outlet,
                    supply,
                    valve_bar,
                    steering: steering(policy, &flow_l_min, share),
                    flow_l_min,
                    engine_rpm: (rated_rpm * part).max(300.0),
                    relief_bar,
                    volumetric,
                    hydro_mechanical,
                }
            },
        )
        .boxed()
}

fn steering_policy() -> BoxedStrategy<SteeringPolicy> {
    proptest::sample::select(SteeringPolicy::ALL).boxed()
}

/// A share of the least that the sheet's flow may be.
fn steering(policy: SteeringPolicy, sheet: &UncertainEntry, share: f64) -> SteeringEntry {
    let least = match sheet {
        UncertainEntry::One(flow) | UncertainEntry::Three { low: flow, .. } => *flow,
    };
    let taken = (least * share).max(1.0);
    let takes_flow = matches!(
        policy,
        SteeringPolicy::FixedPriority | SteeringPolicy::Summed
    );
    SteeringEntry {
        policy,
        flow_l_min: takes_flow.then(|| UncertainEntry::Three {
            low: (taken * 0.8).max(1.0),
            likely: taken,
            high: taken,
            source: None,
        }),
    }
}
