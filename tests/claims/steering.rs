//! Flow of a sheet: what steering takes of it, and what the engine's speed makes of it.

use crate::sheets::{answer, found, is_near, litres, rpm, tractor, weighed, weight};
use farend_core::claims::{Answer, Check, Finding, Sheet, Taken, Weight};
use farend_core::machine::SteeringShare;
use farend_core::quantity::{AngularSpeed, Flow};
use farend_core::source::Source;
use farend_core::spread::Spread;
use farend_tests::parts::Parts;

/// What the pump gives and what is left, L/min.
fn shared(parts: &Parts, sheet: Sheet) -> (Weight, [f64; 2]) {
    let (weight, finding) = found(parts, sheet, Check::Steering);
    let Finding::Steering {
        pump_gives, left, ..
    } = finding
    else {
        panic!("{finding:?}");
    };
    assert_eq!(weighed(parts, sheet).honest.flow, Some(left));
    let rounded = |flow: Flow| (flow.to_litres_per_minute() * 1e6).round() / 1e6;
    (weight, [rounded(pump_gives), rounded(left)])
}

/// The wren's sheet says 37 L/min (35 to 38) with 13 for steering: 24 without. The plover's pump
/// gives 41 (39 to 42), of which a divider takes 11: 30 are left. A sheet may add steering's flow:
/// common practice, no source.
#[test]
fn steering_in_the_claimed_flow_is_found() {
    use Weight::{Holds, Restated, Wrong};
    let (wren, plover) = (tractor("wren-18"), tractor("plover-28"));
    let couplers = Some(Taken::AtCouplers);
    for (parts, flow, taken, expected) in [
        (&wren, 37.0, None, (Wrong, [24.0, 24.0])),
        (&wren, 34.0, None, (Wrong, [21.0, 21.0])),
        (&wren, 24.0, None, (Holds, [24.0, 24.0])),
        // Below 35 by more than 3 %.
        (&wren, 33.9, None, (Holds, [33.9, 33.9])),
        // Above 38 by more than 3 %.
        (&wren, 39.2, couplers, (Holds, [39.2, 39.2])),
        (&plover, 41.0, None, (Wrong, [41.0, 30.0])),
        (&plover, 41.0, couplers, (Wrong, [41.0, 30.0])),
        (&plover, 41.0, Some(Taken::AtPump), (Restated, [41.0, 30.0])),
        // Whatever the pump gives, the divider takes its share of it.
        (&plover, 60.0, Some(Taken::AtPump), (Restated, [60.0, 49.0])),
        (&plover, 7.0, Some(Taken::AtPump), (Restated, [7.0, 0.0])),
        // The pump's flow and steering's once more.
        (&plover, 52.0, None, (Wrong, [41.0, 30.0])),
        (&plover, 52.0, Some(Taken::AtPump), (Wrong, [41.0, 30.0])),
        (&plover, 30.0, None, (Holds, [41.0, 30.0])),
    ] {
        let sheet = Sheet {
            flow: litres(flow),
            taken,
            ..Sheet::default()
        };
        assert_eq!(shared(parts, sheet), expected, "{flow} {taken:?}");
    }
}

/// Both of the wren's pumps turn with the engine: 18.5 L/min at half the speed, 6.5 for steering.
#[test]
fn steering_is_looked_for_at_the_speed_of_the_sheet() {
    let sheet = Sheet {
        flow: litres(18.5),
        engine_speed: rpm(1300.0),
        ..Sheet::default()
    };
    let (wrong, left) = shared(&tractor("wren-18"), sheet);
    assert_eq!((wrong, left), (Weight::Wrong, [12.0, 12.0]));
}

/// Nearer to the flow without steering's than to that with it, a claim is let stand: 11 L/min of a
/// sheet's 12, when steering takes 1.
#[test]
fn a_claim_nearer_to_the_flow_without_steering_stands() {
    let mut parts = tractor("wren-18");
    let circuit = &mut parts.machine.circuits[0];
    circuit.flow = Spread::new(10.0, 12.0, 13.0, Source::Own).map(Flow::litres_per_minute);
    circuit.steering =
        SteeringShare::Summed(Spread::exact(Flow::litres_per_minute(1.0), Source::Own));
    for (flow, expected) in [(11.45, Weight::Holds), (11.55, Weight::Wrong)] {
        let sheet = Sheet {
            flow: litres(flow),
            ..Sheet::default()
        };
        assert_eq!(weight(&parts, sheet, Check::Steering), expected, "{flow}");
    }
}

#[test]
fn without_a_shared_pump_steering_is_not_looked_for() {
    for machine in ["curlew-46", "heron-68"] {
        let parts = tractor(machine);
        let sheet = Sheet {
            flow: litres(52.0),
            ..Sheet::default()
        };
        let asked = answer(&parts, sheet, Check::Steering);
        assert_eq!(asked, Answer::NotForThisMachine, "{machine}");
        assert_eq!(weighed(&parts, sheet).honest.flow, litres(52.0));
    }
}

/// A tractor whose pump gives 12 gpm at 2500 rpm, of which a divider takes 3 at every speed.
fn with_divider() -> Parts {
    let mut parts = tractor("plover-28");
    let circuit = &mut parts.machine.circuits[0];
    let exact = |gpm| Spread::exact(Flow::us_gallons_per_minute(gpm), Source::Own);
    circuit.flow = exact(12.0);
    circuit.steering = SteeringShare::FixedPriority(exact(3.0));
    circuit.engine_speed = AngularSpeed::rpm(2500.0);
    parts.machine.engine.lowest = AngularSpeed::rpm(600.0);
    parts
}

/// 12 gpm at 2500 rpm leave 9, at 1250 rpm 6 − 3 = 3: a service text on a fixed-priority divider. At
/// 600 rpm the pump gives 2.88, and steering takes all.
#[test]
fn flow_follows_the_engine_but_a_dividers_share_does_not() {
    for (working, expected, gpm) in [
        (2500.0, Weight::Holds, 9.0),
        // Within 3 %: (9 + 3) x 2450/2500 − 3.
        (2450.0, Weight::Holds, 8.76),
        (1250.0, Weight::Restated, 3.0),
        (600.0, Weight::Restated, 0.0),
    ] {
        let mut parts = with_divider();
        parts.settings.engine_speed = rpm(working);
        let sheet = Sheet {
            flow: Some(Flow::us_gallons_per_minute(12.0)),
            engine_speed: rpm(2500.0),
            ..Sheet::default()
        };
        let (weight, finding) = found(&parts, sheet, Check::WorkingSpeed);
        let Finding::WorkingSpeed { left, .. } = finding else {
            panic!("{finding:?}");
        };
        assert_eq!(weight, expected, "{working}");
        assert!(
            (left.to_us_gallons_per_minute() - gpm).abs() < 1e-9,
            "{finding:?}"
        );
    }
}

/// A pump of its own: 52 L/min at 2400 rpm, 26 at 1200.
#[test]
fn flow_without_a_divider_is_in_proportion_to_speed() {
    let mut parts = tractor("curlew-46");
    parts.settings.engine_speed = rpm(1200.0);
    let sheet = Sheet {
        flow: litres(52.0),
        engine_speed: rpm(2400.0),
        ..Sheet::default()
    };
    let (weight, finding) = found(&parts, sheet, Check::WorkingSpeed);
    let Finding::WorkingSpeed { left, .. } = finding else {
        panic!("{finding:?}");
    };
    assert_eq!(weight, Weight::Restated);
    assert!(is_near(left.to_litres_per_minute(), 26.0));
}
