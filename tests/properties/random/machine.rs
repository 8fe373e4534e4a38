//! Random machines.

use super::hookup::{axles, coupler, hitch, loader, often, pto_end};
use super::{efficiency, log, oil, reservoir, shaft_rpm, uncertain};
use crate::plain::net_kw_at;
use farend_core::machine::{Aspiration, MachineKind, Outlet, SteeringPolicy, Supply, Transmission};
use farend_core::yard::entry::{
    CircuitEntry, CurveEntry, EngineEntry, MachineEntry, OilEntry, PtoEntry, SteeringEntry,
    UncertainEntry,
};
use farend_core::yard::entry_hookup::{AxlesEntry, HitchEntry, LoaderEntry};
use proptest::collection::vec;
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
                rest(),
            )
                .prop_map(move |(rear_pto, mid_pto, remotes, rest)| MachineEntry {
                    id: id.to_owned(),
                    name: "A tractor".to_owned(),
                    kind: MachineKind::Tractor,
                    engine: engine.clone(),
                    economy_pto: rear_pto.as_ref().map(|pto| PtoEntry {
                        engine_rpm: engine.lowest_rpm,
                        tested_kw: None,
                        ..pto.clone()
                    }),
                    rear_pto,
                    mid_pto,
                    circuits: remotes.into_iter().collect(),
                    oil: rest.0,
                    mass_kg: rest.1,
                    transmission: rest.2,
                    axles: rest.3.axles(rest.1),
                    hitch: rest.3.hitch,
                    loader: rest.3.loader,
                    price: rest.3.price,
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
                rest(),
            )
                .prop_map(move |(standard, high, rest)| MachineEntry {
                    id: id.to_owned(),
                    name: "A skid steer".to_owned(),
                    kind: MachineKind::SkidSteer,
                    engine: engine.clone(),
                    rear_pto: None,
                    economy_pto: None,
                    mid_pto: None,
                    circuits: standard.into_iter().chain(high).collect(),
                    oil: rest.0,
                    mass_kg: rest.1,
                    transmission: rest.2,
                    axles: rest.3.axles(rest.1),
                    hitch: None,
                    loader: rest.3.loader,
                    price: rest.3.price,
                })
        })
        .boxed()
}

/// Oil, mass and transmission. Few weigh so much that driving takes all that the engine has.
type Rest = (Option<OilEntry>, Option<f64>, Option<Transmission>, Carries);

/// What carries an implement; the axles as parts of the machine's mass.
#[derive(Clone, Debug)]
struct Carries {
    hitch: Option<HitchEntry>,
    loader: Option<LoaderEntry>,
    axles: Option<AxlesEntry>,
    price: Option<f64>,
}

impl Carries {
    fn axles(&self, mass_kg: Option<f64>) -> Option<AxlesEntry> {
        let (axles, mass) = (self.axles.clone()?, mass_kg?);
        Some(AxlesEntry {
            front_kg: (axles.front_kg * mass).clamp(20.0, mass),
            ..axles
        })
    }
}

fn rest() -> BoxedStrategy<Rest> {
    (
        option::of(oil()),
        option::weighted(0.7, log(400.0, 8000.0)),
        option::of(proptest::sample::select(Transmission::ALL)),
        (
            often(hitch()),
            often(loader()),
            often(axles()),
            option::of(0.0..1e6),
        )
            .prop_map(|(hitch, loader, axles, price)| Carries {
                hitch,
                loader,
                axles,
                price,
            }),
    )
        .boxed()
}

/// Its lowest speed lies where the default curve of power over speed holds.
fn engine() -> BoxedStrategy<EngineEntry> {
    (
        uncertain(3.0, 600.0),
        option::weighted(0.3, Just(())),
        log(1200.0, 5000.0),
        0.3..=1.0_f64,
        option::of(proptest::sample::select(Aspiration::ALL)),
        option::weighted(0.4, vec(20.0..60.0_f64, 2..=5)),
    )
        .prop_map(|(kw, is_gross, rated_rpm, part, aspiration, heights)| {
            let (net_kw, gross_kw) = match is_gross {
                None => (Some(kw), None),
                Some(()) => (None, Some(kw)),
            };
            let lowest_rpm = (rated_rpm * part).max(300.0);
            EngineEntry {
                net_kw,
                gross_kw,
                rated_rpm,
                lowest_rpm,
                curve: curve(&heights.unwrap_or_default(), lowest_rpm, rated_rpm),
                aspiration,
            }
        })
        .boxed()
}

/// Points from a little below the lowest to a little above the rated speed.
fn curve(kilowatts: &[f64], lowest_rpm: f64, rated_rpm: f64) -> Vec<CurveEntry> {
    let (from, to) = (
        (lowest_rpm * 0.95).max(300.0),
        (rated_rpm * 1.05).min(5000.0),
    );
    let last = kilowatts.len().max(2) - 1;
    let point = |(place, kw): (usize, &f64)| CurveEntry {
        rpm: from + (to - from) * (place as f64 / last as f64),
        kw: *kw,
    };
    kilowatts.iter().enumerate().map(point).collect()
}

fn pto(engine: EngineEntry) -> BoxedStrategy<PtoEntry> {
    (
        shaft_rpm(),
        0.0..=1.0_f64,
        option::of((0.5..0.9_f64, 0.9..0.95_f64, 0.95..0.999_f64)),
        option::of(uncertain(1.0, 600.0)),
        often(pto_end()),
    )
        .prop_map(move |(rpm, part, tested, rating_kw, end)| {
            let span = engine.rated_rpm - engine.lowest_rpm;
            let engine_rpm = (engine.lowest_rpm + span * part).min(engine.rated_rpm);
            let net = net_kw_at(&engine, engine_rpm);
            // Where even half of it is below what a file may say there is no test.
            let tested_kw =
                tested
                    .filter(|_| net > 2.0)
                    .map(|(low, likely, high)| UncertainEntry::Three {
                        low: (net * low).min(600.0),
                        likely: (net * likely).min(600.0),
                        high: (net * high).min(600.0),
                        source: None,
                    });
            PtoEntry {
                rpm,
                engine_rpm,
                tested_kw,
                rating_kw,
                end,
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
        (
            option::of(reservoir()),
            often(coupler()),
            option::of(any::<bool>()),
        ),
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
                (reservoir, coupler_mm, case_drain),
            )| {
                CircuitEntry {
                    outlet,
                    supply,
                    reservoir,
                    valve_bar,
                    steering: steering(policy, &flow_l_min, share),
                    flow_l_min,
                    engine_rpm: (rated_rpm * part).max(300.0),
                    relief_bar,
                    volumetric,
                    hydro_mechanical,
                    coupler_mm,
                    case_drain,
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
