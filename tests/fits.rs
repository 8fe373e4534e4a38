//! Whether a route can be had, and every reason why not. The limits between fit and misfit are
//! this project's judgement.

use farend_core::drive::{Limit, Rate};
use farend_core::implement::{InputShaft, Place};
use farend_core::machine::{MachineKind, Outlet};
use farend_core::quantity::AngularSpeed;
use farend_core::route::RouteId;
use farend_core::route::part::NoFit;
use farend_tests::parts::Parts;

/// A tractor with both PTOs and an implement that every route can drive.
fn parts() -> Parts {
    Parts::of("curlew-46", "snow-thrower-150")
}

const TRACTOR_ROUTES: [RouteId; 5] = [
    RouteId::RearShaft,
    RouteId::MidShaft,
    RouteId::TurnedForward,
    RouteId::MachineHydraulics,
    RouteId::PumpPack,
];

#[test]
fn unchanged_every_route_of_a_tractor_fits() {
    for route in TRACTOR_ROUTES {
        assert_eq!(parts().why(route), [], "{}", route.word());
    }
}

#[test]
fn what_the_machine_lacks_is_named() {
    let mut parts = parts();
    parts.machine.rear_pto = None;
    parts.machine.mid_pto = None;
    parts.machine.circuits.clear();
    for (route, why) in [
        (RouteId::RearShaft, NoFit::NoRearPto),
        (RouteId::MidShaft, NoFit::NoMidPto),
        (RouteId::TurnedForward, NoFit::NoRearPto),
        (RouteId::MachineHydraulics, NoFit::NoOutlet),
        (RouteId::PumpPack, NoFit::NoRearPto),
        (RouteId::SkidSteer, NoFit::WrongKind(MachineKind::SkidSteer)),
    ] {
        assert_eq!(parts.why(route), [why], "{}", route.word());
    }
    parts.machine.kind = MachineKind::SkidSteer;
    let why = parts.why(RouteId::MachineHydraulics);
    assert_eq!(why, [NoFit::WrongKind(MachineKind::Tractor)]);
    assert_eq!(parts.why(RouteId::SkidSteer), [NoFit::NoOutlet]);
}

#[test]
fn what_the_implement_lacks_is_named() {
    let mut parts = parts();
    parts.implement.shafts.clear();
    parts.implement.motor = None;
    for (route, why) in [
        (RouteId::RearShaft, NoFit::NoShaft(Place::Rear)),
        (RouteId::MidShaft, NoFit::NoShaft(Place::Front)),
        (RouteId::TurnedForward, NoFit::NoShaft(Place::Front)),
        (RouteId::MachineHydraulics, NoFit::NoMotor),
        (RouteId::PumpPack, NoFit::NoMotor),
    ] {
        assert_eq!(parts.why(route), [why], "{}", route.word());
    }
}

#[test]
fn every_reason_is_named_and_not_only_the_first() {
    let mut parts = parts();
    parts.machine.rear_pto = None;
    parts.implement.shafts.clear();
    parts.kits.clear();
    let why = parts.why(RouteId::RearShaft);
    assert_eq!(
        why,
        [NoFit::NoKit, NoFit::NoRearPto, NoFit::NoShaft(Place::Rear)]
    );
}

/// A shaft in front is none for the rear, whatever it turns at.
#[test]
fn without_a_pto_the_shaft_in_its_place_is_missed_all_the_same() {
    let mut parts = parts();
    parts.machine.rear_pto = None;
    parts
        .implement
        .shafts
        .retain(|shaft| shaft.place == Place::Front);
    let why = parts.why(RouteId::RearShaft);
    assert_eq!(why, [NoFit::NoRearPto, NoFit::NoShaft(Place::Rear)]);
    assert_eq!(parts.why(RouteId::TurnedForward), [NoFit::NoRearPto]);
}

#[test]
fn without_kits_only_the_kit_is_missing() {
    let mut parts = parts();
    parts.kits.clear();
    for route in [
        RouteId::RearShaft,
        RouteId::MachineHydraulics,
        RouteId::PumpPack,
    ] {
        assert_eq!(parts.why(route), [NoFit::NoKit], "{}", route.word());
    }
}

fn with_rear_pto(rpm: f64) -> Parts {
    let mut parts = parts();
    let pto = parts.machine.rear_pto.as_mut().expect("a rear PTO");
    pto.rated = AngularSpeed::rpm(rpm);
    parts
}

/// The implement's rear shaft wants 540 rpm and takes 0.8 to 1.1 times that.
#[test]
fn a_shaft_must_come_near_the_speed_that_it_is_for() {
    for (times, fits) in [
        (0.79, false),
        (0.81, true),
        (1.0, true),
        (1.09, true),
        (1.11, false),
    ] {
        let why = with_rear_pto(540.0 * times).why(RouteId::RearShaft);
        assert_eq!(why.is_empty(), fits, "{times}: {why:?}");
        if let [NoFit::WrongSpeed { brings, needs }] = why.as_slice() {
            assert_eq!(brings.to_rpm().round(), (540.0 * times).round());
            assert_eq!(needs.to_rpm().round(), 540.0);
        } else {
            assert!(fits, "{times}: {why:?}");
        }
    }
}

/// A kit for 540 rpm takes a PTO within a twentieth of that.
#[test]
fn a_kit_must_be_for_the_speed_of_the_pto() {
    for (times, fits) in [(0.94, false), (0.96, true), (1.04, true), (1.06, false)] {
        let mut parts = with_rear_pto(540.0 * times);
        parts.kits.retain(|kit| kit.id == "pump-pack-540");
        let why = parts.why(RouteId::PumpPack);
        let is_kit = matches!(why.as_slice(), [NoFit::KitForOtherPto { .. }]);
        assert_eq!((why.is_empty(), is_kit), (fits, !fits), "{times}: {why:?}");
    }
}

#[test]
fn a_pump_must_not_turn_too_fast() {
    for (highest, fits) in [(1880.0, false), (1900.0, true)] {
        let mut parts = parts();
        for pump in parts.kits.iter_mut().filter_map(|kit| kit.pump.as_mut()) {
            pump.highest = AngularSpeed::rpm(highest);
        }
        // 540 rpm at 3.5 times the speed is 1890 rpm.
        match parts.why(RouteId::PumpPack).as_slice() {
            [] => assert!(fits),
            [NoFit::PumpTooFast { brings, .. }] => {
                assert!(!fits);
                assert_eq!(brings.to_rpm().round(), 1890.0);
            }
            why => panic!("{why:?}"),
        }
    }
}

/// What is just at its limit isn't beyond it, though 540 · 3.5 and 1890 rpm differ in their last
/// digit in SI, and 540/675 comes to less than 0.8.
#[test]
fn what_is_just_at_a_limit_fits() {
    let mut parts = parts();
    for pump in parts.kits.iter_mut().filter_map(|kit| kit.pump.as_mut()) {
        pump.highest = AngularSpeed::rpm(1890.0);
    }
    for shaft in &mut parts.implement.shafts {
        shaft.speed = AngularSpeed::rpm(675.0);
    }
    assert_eq!(parts.why(RouteId::PumpPack), []);
    assert_eq!(parts.why(RouteId::RearShaft), []);
    // 1.1 times the speed that the shaft is for.
    assert_eq!(with_rear_pto(594.0).why(RouteId::RearShaft), []);
}

#[test]
fn the_input_shaft_nearest_in_speed_is_taken() {
    let mut parts = with_rear_pto(1000.0);
    let shaft = |rpm: f64| InputShaft {
        speed: AngularSpeed::rpm(rpm),
        ..parts.implement.shafts[0].clone()
    };
    parts.implement.shafts = vec![shaft(950.0), shaft(1000.0), shaft(1080.0)];
    let run = parts.route(RouteId::RearShaft).expect("it fits");
    // At its own speed the rotor has its rated 600 rpm.
    assert_eq!(run.rotor.to_rpm().round(), 600.0);
}

#[test]
fn the_kit_that_delivers_most_is_taken() {
    let mut parts = Parts::of("heron-68", "wood-chipper-15");
    // What isn't known of it stops neither.
    parts.machine.hitch = None;
    let of = |parts: &Parts| parts.route(RouteId::RearShaft).expect("it fits");
    assert_eq!(of(&parts).kit, "joint-shaft-heavy");
    parts.kits.retain(|kit| kit.id == "joint-shaft");
    let lighter = of(&parts);
    assert_eq!(lighter.kit, "joint-shaft");
    // 900 N·m at 540 rpm, then a belt of 0.955 (default).
    let expected = 900.0 * 540.0 * core::f64::consts::TAU / 60_000.0 * 0.955;
    assert!((lighter.delivered.likely.to_kilowatts() / expected - 1.0).abs() < 1e-9);
}

/// Where the implement holds both shafts, only rounding tells what they deliver apart.
#[test]
fn of_kits_that_deliver_the_same_the_first_is_taken() {
    let mut parts = Parts::of("plover-28", "broom-180");
    let (lowest, rated) = (
        parts.machine.engine.lowest.to_rpm(),
        parts.machine.engine.rated.to_rpm(),
    );
    let mut held = 0;
    for first in ["joint-shaft", "joint-shaft-heavy"] {
        parts.kits.sort_by_key(|kit| kit.id != first);
        for part in 0..=100 {
            let rpm = lowest + (rated - lowest) * f64::from(part) / 100.0;
            parts.settings.engine_speed = Some(AngularSpeed::rpm(rpm));
            let run = parts.route(RouteId::RearShaft).expect("it fits");
            if run.limit == Limit::Implement {
                assert_eq!(run.kit, first, "{rpm} rpm");
                held += 1;
            }
        }
    }
    assert!(held > 100, "the implement holds it only {held} times");
}

/// A skid steer's outlets: 126 L/min on high flow, 84 L/min on standard flow.
#[test]
fn the_outlet_that_is_set_is_taken_where_the_machine_has_it() {
    for (outlet, litres) in [
        (None, 126.0),
        (Some(Outlet::HighFlow), 126.0),
        (Some(Outlet::StandardFlow), 84.0),
        (Some(Outlet::Remotes), 126.0),
    ] {
        let mut parts = Parts::of("puffin-62", "stump-cutter");
        parts.settings.outlet = outlet;
        let run = parts.route(RouteId::SkidSteer).expect("it fits");
        let Rate::Flowing(flow) = run.ledger.passages[0].gives.rate else {
            panic!("a pump gives oil");
        };
        assert_eq!(flow.to_litres_per_minute().round(), litres, "{outlet:?}");
    }
}
