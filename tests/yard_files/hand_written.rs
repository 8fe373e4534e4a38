//! A yard that somebody else wrote: other machines, other choices among the format's fields.

use farend_core::compare::{Outcome, Run};
use farend_core::defaults;
use farend_core::drive::{Drive, Limit, Rate};
use farend_core::machine::MachineKind;
use farend_core::route::RouteId;
use farend_core::route::part::NoFit;
use farend_core::settings::Settings;
use farend_core::source::Source;
use farend_core::stage::{StageKind, StagePhysics};
use farend_core::yard::rules::FORMAT_VERSION;
use farend_core::yard::{DEMO, Yard};
use farend_tests::{compared, load, run};
use serde_json::Value;

const TEXT: &str = include_str!("../yards/hand-written.json");
const TRACTOR: &str = "dotterel-33";
const SKID_STEER: &str = "skua-55";
const MULCHER: &str = "verge-mulcher-120";

fn runs(machine: &str, route: RouteId) -> Run {
    run(&load(TEXT), machine, MULCHER, route).expect("it fits")
}

/// The oil at work against the 30 cSt at which efficiencies hold.
fn thick() -> f64 {
    let oil = defaults::oil().viscosity(defaults::oil_temperature());
    oil.to_centistokes() / 30.0
}

/// bar = kW · 600 / (L/min)
fn bar(drive: Drive) -> f64 {
    let Rate::Flowing(flow) = drive.rate else {
        panic!("oil flows");
    };
    drive.power.to_kilowatts() * 600.0 / flow.to_litres_per_minute()
}

fn nearly(actual: f64, expected: f64) {
    assert!(
        (actual - expected).abs() <= 1e-9 * expected,
        "{actual}, not {expected}"
    );
}

#[test]
fn it_begins_with_a_byte_order_mark_and_shares_nothing_with_the_demo() {
    assert!(TEXT.starts_with('\u{feff}'));
    for machine in load(TEXT).machines {
        assert!(!DEMO.contains(&machine.id) && !DEMO.contains(&machine.name));
    }
}

#[test]
fn it_shows_all_six_routes() {
    let yard = load(TEXT);
    let outcome = |machine| {
        let all = compared(&yard, machine, MULCHER, &Settings::default());
        let routes = all.routes.into_iter();
        routes
            .map(|result| match result.run() {
                Some(run) => Ok(run.kit.clone()),
                None => Err(result.outcome),
            })
            .collect::<Vec<_>>()
    };
    let no_fit = |why: &[NoFit]| Err(Outcome::NoFit(why.to_vec()));
    let kit = |id: &str| Ok(id.to_owned());
    assert_eq!(
        outcome(TRACTOR),
        [
            kit("long-joint-shaft"),
            kit("belly-drive"),
            kit("under-shaft"),
            kit("oil-set"),
            kit("three-point-pump"),
            no_fit(&[NoFit::WrongKind(MachineKind::SkidSteer)]),
        ]
    );
    assert_eq!(
        outcome(SKID_STEER),
        [
            no_fit(&[NoFit::NoRearPto]),
            no_fit(&[NoFit::NoMidPto]),
            no_fit(&[NoFit::NoRearPto]),
            no_fit(&[NoFit::WrongKind(MachineKind::Tractor)]),
            no_fit(&[NoFit::NoRearPto]),
            kit("oil-set"),
        ]
    );
}

/// At the PTO's engine speed a tested shaft gives what was tested, whatever the engine's figure.
#[test]
fn its_tested_pto_gives_what_was_tested() {
    let run = runs(TRACTOR, RouteId::RearShaft);
    let [train, ..] = run.ledger.passages.as_slice() else {
        panic!("a PTO train");
    };
    nearly(train.gives.power.to_kilowatts(), 26.0);
    // Joint shaft 0.97 (the kit's own), spiral bevel 0.97 and belt 0.955 (defaults).
    nearly(
        run.delivered.likely.to_kilowatts(),
        26.0 * 0.97 * 0.97 * 0.955,
    );
}

/// 20 kW at 2000 rpm is 95.49 N·m. Only that much passes, though the engine has more.
#[test]
fn its_mid_pto_is_held_at_its_rating() {
    let run = runs(TRACTOR, RouteId::MidShaft);
    assert_eq!(run.limit, Limit::ShaftRating);
    // Spur 0.96 (the kit's own), belt 0.955 (default).
    nearly(run.delivered.likely.to_kilowatts(), 20.0 * 0.96 * 0.955);
    nearly(run.rotor.to_rpm(), 1900.0);
}

#[test]
fn its_summed_steering_is_taken_out_of_the_sheet() {
    let run = runs(TRACTOR, RouteId::MachineHydraulics);
    let passages = &run.ledger.passages;
    let [pump, ..] = passages.as_slice() else {
        panic!("a pump");
    };
    let Rate::Flowing(flow) = pump.gives.rate else {
        panic!("a pump gives oil");
    };
    // (45 − 14) L/min at 2500 rpm and 172 bar, 0.95 (default) of the displacement's flow; the engine
    // at the PTO's 2300 rpm.
    let displaced = 31.0 / 0.95;
    let leaks = displaced * 0.05 * bar(pump.gives) / 172.0 / thick();
    let pumped = displaced * 2300.0 / 2500.0 - leaks;
    nearly(flow.to_litres_per_minute(), pumped);
    // The motor of 38 cm³ is straight on the rotor: 0.93 at 250 bar and 1900 rpm.
    let of_kind = |kind| passages.iter().find(|it| it.stage.kind() == kind);
    let motor = of_kind(StageKind::Motor).expect("a motor");
    let leaks = 0.038 * 1900.0 * (1.0 / 0.93 - 1.0) * bar(motor.takes) / 250.0 / thick();
    nearly(run.rotor.to_rpm(), (pumped - leaks) / 0.038);
}

#[test]
fn its_skid_steer_works_at_rated_speed_on_its_only_circuit() {
    let run = runs(SKID_STEER, RouteId::SkidSteer);
    let pumped = &run.ledger.passages[0];
    assert_eq!(pumped.stage.kind(), StageKind::Pump);
    // 76 L/min at 205 bar, 0.93 of the displacement's flow, with oil of 30 cSt; kW = L/min · bar /
    // 600; the engine has it twice.
    let displaced = 76.0 / 0.93;
    let flow = displaced * (1.0 - 0.07 / thick());
    nearly(pumped.gives.power.to_kilowatts(), flow * 205.0 / 600.0);
    // Of the torque that is lost half grows with the oil's thickness.
    let rubs = (1.0 / 0.93 - 1.0) * (0.5 + 0.5 * thick());
    nearly(
        pumped.takes.power.to_kilowatts(),
        displaced * 205.0 * (1.0 + rubs) / 600.0,
    );
}

#[test]
fn its_figures_keep_their_sources() {
    let yard = load(TEXT);
    let tractor = yard.machine(TRACTOR).expect("it is there");
    assert_eq!(tractor.engine.net.source, Source::Own);
    let rating = yard.kit("belly-drive").and_then(|kit| kit.drive[0].rating);
    assert_eq!(
        rating.map(|(torque, _)| torque.source),
        Some(Source::FromMemory)
    );
    let need = yard.implement(MULCHER).map(|it| it.need.source);
    assert_eq!(need, Some(Source::Judgement));
}

/// Comments, the mark and nulls are for people and editors: without them it is the same yard.
#[test]
fn it_is_the_same_without_comments() {
    let text = TEXT.trim_start_matches('\u{feff}');
    let mut value = serde_json::from_str(text).expect("JSON");
    strip(&mut value);
    let stripped = value.to_string();
    assert!(!stripped.contains("comment") && !stripped.contains("null"));
    // What was written differs by them: that is kept, comments and all. It has been raised.
    value["format_version"] = FORMAT_VERSION.into();
    let without = Yard {
        written: value,
        ..load(TEXT)
    };
    assert_eq!(Yard::from_json(&stripped), Ok(without));
    let kept = load(TEXT).written.to_string();
    assert!(kept.contains("\"comment\""));
}

fn strip(value: &mut Value) {
    match value {
        Value::Object(group) => {
            group.retain(|key, value| key != "comment" && key != "$schema" && !value.is_null());
            group.values_mut().for_each(strip);
        }
        Value::Array(items) => items.iter_mut().for_each(strip),
        _ => {}
    }
}
