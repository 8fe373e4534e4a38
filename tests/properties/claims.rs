//! Sheets that say what a machine can do, and any others.

use crate::every::{loaded, pairs};
use crate::random::{log, yard};
use farend_core::claims::{
    Answer, Check, HYDRAULIC_POWER_LIMITS, Honest, Rating, Sheet, Taken, Weighed, Weight, weigh,
};
use farend_core::defaults::{coupler_drop, coupler_flow};
use farend_core::drive::Limit;
use farend_core::machine::{Machine, Outlet};
use farend_core::physics::line::rated_drop;
use farend_core::quantity::{AngularSpeed, Flow, Power, Pressure};
use farend_core::route::RouteId;
use farend_core::route::joined::Joined;
use farend_core::route::part::{Hookup, assemble};
use farend_core::settings::{
    ENGINE_POWER_LIMITS, FLOW_LIMITS, RELIEF_LIMITS, SHAFT_POWER_LIMITS, Settings,
};
use farend_core::spread::{Corner, Spread};
use farend_core::stage::{Stage, StageKind, StagePhysics};
use farend_core::yard::Yard;
use farend_tests::most;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::select;

/// The routes of each machine's own hydraulics, from every outlet.
fn own_hydraulics(yard: &Yard) -> Vec<(&Machine, Settings, Joined)> {
    let mut all = Vec::new();
    for (machine, implement) in pairs(yard) {
        for outlet in Outlet::ALL {
            let settings = Settings {
                outlet: Some(*outlet),
                ..Settings::default()
            };
            for route in [RouteId::MachineHydraulics, RouteId::SkidSteer] {
                let kit = yard.kits.iter().find(|kit| kit.routes.contains(&route));
                let hookup = Hookup {
                    machine,
                    implement,
                    kit,
                    settings: &settings,
                };
                if let Ok(joined) = assemble(route.parts(), hookup) {
                    all.push((machine, settings, joined));
                }
            }
        }
    }
    all
}

/// Flow and pressure at the couplers at relief pressure, at the engine speed that the yard's flow
/// holds for. `None` where the engine can't hold it or nothing is left.
fn at_couplers(
    machine: &Machine,
    joined: &Joined,
    speed: AngularSpeed,
) -> Option<(Flow, Pressure)> {
    let stages: Vec<_> = joined
        .stages
        .iter()
        .filter(|stage| {
            let kind = stage.kind();
            matches!(
                kind,
                StageKind::Pump | StageKind::Steering | StageKind::Valve
            )
        })
        .cloned()
        .collect();
    let net = machine.engine.net_at(speed).likely;
    let ledger = most(&stages, net, speed, Corner::LIKELY);
    let drive = ledger.delivered()?;
    let flow = drive.rate.flowing().ok()?;
    // Two couplers.
    let drop = rated_drop(coupler_drop().likely, coupler_flow(), flow) * 2.0;
    let pressure = drive.power / flow - drop;
    let is_held = ledger.limit == Limit::Pressure && ledger.stall.is_none();
    let is_a_sheet =
        flow.to_litres_per_minute() >= FLOW_LIMITS.0 && pressure.to_bar() >= RELIEF_LIMITS.0;
    (is_held && is_a_sheet).then_some((flow, pressure))
}

/// What reaches the PTO of a machine that has one.
fn at_pto(machine: &Machine) -> Option<Power> {
    let pto = machine.rear_pto(false).or(machine.mid_pto.as_ref())?;
    let train = Stage::Gear(pto.train(&machine.engine));
    let net = machine.engine.net_at(pto.engine_speed).likely;
    let arrives = most(&[train], net, pto.engine_speed, Corner::LIKELY)
        .delivered()?
        .power;
    let (least, most) = SHAFT_POWER_LIMITS;
    (least..=most)
        .contains(&arrives.to_kilowatts())
        .then_some(arrives)
}

type Numbers = (Option<f64>, Option<f64>, Option<f64>);

/// Any sheet; its engine speed is a part of the way from the lowest to the rated one.
fn sheet() -> BoxedStrategy<(Sheet, Option<f64>)> {
    let oil = (
        option::weighted(0.8, log(FLOW_LIMITS.0, FLOW_LIMITS.1)),
        option::weighted(0.8, log(RELIEF_LIMITS.0, RELIEF_LIMITS.1)),
        option::of(log(HYDRAULIC_POWER_LIMITS.0, HYDRAULIC_POWER_LIMITS.1)),
    );
    let powers = (
        option::weighted(0.8, log(ENGINE_POWER_LIMITS.0, ENGINE_POWER_LIMITS.1)),
        option::of(log(SHAFT_POWER_LIMITS.0, SHAFT_POWER_LIMITS.1)),
        option::of(0.0..=1.0_f64),
    );
    let words = (
        option::of(select(Taken::ALL)),
        option::of(select(Rating::ALL)),
    );
    (oil, powers, words)
        .prop_map(|(oil, powers, (taken, rating)): (Numbers, Numbers, _)| {
            let sheet = Sheet {
                flow: oil.0.map(Flow::litres_per_minute),
                pressure: oil.1.map(Pressure::bar),
                hydraulic: oil.2.map(Power::kilowatts),
                taken,
                engine_speed: None,
                engine: powers.0.map(Power::kilowatts),
                rating,
                pto: powers.1.map(Power::kilowatts),
            };
            (sheet, powers.2)
        })
        .boxed()
}

/// A sheet that says what another honestly means.
fn restated(sheet: &Sheet, honest: &Honest) -> Sheet {
    Sheet {
        flow: honest.flow,
        pressure: honest
            .at_couplers
            .map(|there| there.likely)
            .or(sheet.pressure),
        hydraulic: None,
        // The honest flow is that at the couplers.
        taken: match honest.flow {
            Some(_) => sheet.taken.map(|_| Taken::AtCouplers),
            None => sheet.taken,
        },
        engine: honest.net.map(|net| net.likely),
        rating: Some(Rating::Net),
        ..*sheet
    }
}

fn is_same(a: Option<f64>, b: Option<f64>) -> bool {
    match (a, b) {
        (Some(a), Some(b)) => (a - b).abs() <= 1e-9 * a.abs(),
        (a, b) => a == b,
    }
}

fn figures(honest: &Honest, settings: &Settings) -> [Option<f64>; 6] {
    let likely = |spread: Option<Spread<Pressure>>| spread.map(|it| it.likely.to_bar());
    [
        honest.flow.map(Flow::to_litres_per_minute),
        likely(honest.at_couplers),
        honest.net.map(|net| net.likely.to_kilowatts()),
        settings.own.flow.map(Flow::to_litres_per_minute),
        settings.own.relief.map(Pressure::to_bar),
        settings.engine_power.map(Power::to_kilowatts),
    ]
}

proptest! {
    #![proptest_config(crate::cases(300))]

    /// What the stages of a route hand on, written on a sheet, is not called wrong, and nothing of it
    /// means something else but the flow at another speed.
    #[test]
    fn a_sheet_that_says_what_a_machine_does_holds(entry in yard()) {
        let yard = loaded(&entry);
        for (machine, settings, joined) in own_hydraulics(&yard) {
            let circuit = settings.own_circuit(machine).expect("it has a route");
            let speed = circuit.engine_speed;
            if speed < machine.engine.lowest {
                continue;
            }
            let oil = at_couplers(machine, &joined, speed);
            // A file's gross power may be less net than a sheet may say.
            let net = Some(machine.engine.net.likely);
            let net = net.filter(|net| net.to_kilowatts() >= ENGINE_POWER_LIMITS.0);
            let sheet = Sheet {
                flow: oil.map(|(flow, _)| flow),
                pressure: oil.map(|(_, pressure)| pressure),
                hydraulic: oil.map(|(flow, pressure)| pressure * flow),
                taken: Some(Taken::AtCouplers),
                engine_speed: Some(speed),
                engine: net,
                rating: Some(Rating::Net),
                pto: at_pto(machine),
            };
            let weighed = weigh(&sheet, machine, &settings).expect("within its ranges");
            for (check, answer) in &weighed.answers {
                let most = match check {
                    Check::WorkingSpeed => Weight::Restated,
                    _ => Weight::Advice,
                };
                let holds = match answer {
                    Answer::Found(weight, _) => *weight <= most,
                    Answer::NotForThisMachine => true,
                    Answer::Lacks(_) if *check == Check::PtoPower => sheet.pto.is_none(),
                    Answer::Lacks(_) if *check == Check::EngineRating => net.is_none(),
                    Answer::Lacks(_) => oil.is_none(),
                };
                prop_assert!(holds, "{:?}: {:?} of {:?}", check, answer, sheet);
            }
            prop_assert_eq!(weighed.honest.flow, sheet.flow);
            prop_assert_eq!(weighed.honest.net.map(|net| net.likely), sheet.engine);
        }
    }

    /// What is honest stays so: said on a sheet of its own it means the same, to the settings too.
    /// Not so what a larger pump than the yard's would leave: at the couplers that may be the yard's
    /// with steering's added in.
    #[test]
    fn what_is_honest_is_not_changed_again(entry in yard(), (sheet, part) in sheet()) {
        for machine in &loaded(&entry).machines {
            let engine = &machine.engine;
            let sheet = Sheet {
                engine_speed: part.map(|part| engine.lowest + (engine.rated - engine.lowest) * part),
                ..sheet
            };
            let settings = Settings::default();
            let first = weigh(&sheet, machine, &settings).expect("within its ranges").honest;
            let applied = first.applied(settings);
            let own = settings.own_circuit(machine).map(|circuit| {
                let speed = sheet.engine_speed.unwrap_or(circuit.engine_speed);
                circuit.flow.likely * (speed / circuit.engine_speed)
            });
            let is_larger = sheet.taken == Some(Taken::AtPump) && first.flow > own;
            prop_assert_eq!(first.applied(applied), applied);
            // Where hardly anything is left, no sheet can say it.
            let second = weigh(&restated(&sheet, &first), machine, &settings);
            let Ok(Weighed { honest: second, .. }) = second else {
                continue;
            };
            if is_larger {
                continue;
            }
            let again = figures(&second, &second.applied(settings));
            for (new, old) in again.into_iter().zip(figures(&first, &applied)) {
                prop_assert!(is_same(new, old), "{:?} became {:?}", first, second);
            }
        }
    }
}
