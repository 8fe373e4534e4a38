//! Hydraulic power and pressure of a sheet.

use crate::sheets::{answer, bar, found, is_near, kilowatts, litres, tractor, weighed, weight};
use farend_core::claims::{Answer, Check, Finding, Sheet, Taken, Weight};
use farend_core::machine::Outlet;
use farend_core::quantity::Pressure;
use farend_tests::parts::Parts;

/// 62 L/min x 190 bar / 600 = 19.633 kW; 3 % more are 20.222 kW, 3 % less 19.044 kW.
#[test]
fn hydraulic_power_is_flow_times_pressure() {
    for (claimed, expected) in [
        (25.0, Weight::Wrong),
        (20.23, Weight::Wrong),
        (20.22, Weight::Holds),
        (19.05, Weight::Holds),
        (19.04, Weight::Advice),
    ] {
        let sheet = Sheet {
            flow: litres(62.0),
            pressure: bar(190.0),
            hydraulic: kilowatts(claimed),
            ..Sheet::default()
        };
        let (weight, finding) = found(&tractor("curlew-46"), sheet, Check::HydraulicPower);
        assert_eq!(weight, expected, "{claimed}");
        let Finding::HydraulicPower {
            comes_to, apart, ..
        } = finding
        else {
            panic!("{finding:?}");
        };
        let by_hand: f64 = 62.0 * 190.0 / 600.0;
        assert!(is_near(comes_to.to_kilowatts(), by_hand));
        let by_hand = (claimed - by_hand).abs();
        assert!((apart.to_kilowatts() - by_hand).abs() < 1e-9);
    }
}

/// The curlew's valve takes 3, 5 and 8 bar at 52 L/min (from memory), two couplers 0.825, 1.2 and 1.5
/// bar each at 45 L/min (a maker's table reproducing ISO 14541, and this project's judgement). The
/// gannet's load sensing keeps 15, 20 and 25 bar (from memory) at any flow.
#[test]
fn pressure_at_the_pump_is_less_at_the_couplers() {
    use Taken::{AtCouplers, AtPump};
    let part = (45.0 / 52.0) * (45.0 / 52.0);
    let [least, likely, most] = [3.0 * part + 1.65, 5.0 * part + 2.4, 8.0 * part + 3.0];
    for (machine, taken, at_pump, at_couplers) in [
        ("curlew-46", AtPump, [0.0; 3], [-most, -likely, -least]),
        ("curlew-46", AtCouplers, [least, likely, most], [0.0; 3]),
        ("gannet-90", AtPump, [0.0; 3], [-28.0, -22.4, -16.65]),
    ] {
        let parts = tractor(machine);
        let sheet = Sheet {
            flow: litres(45.0),
            pressure: bar(190.0),
            taken: Some(taken),
            ..Sheet::default()
        };
        let (weight, finding) = found(&parts, sheet, Check::Couplers);
        assert_eq!(weight == Weight::Restated, taken == AtPump, "{weight:?}");
        assert_eq!(weight == Weight::Holds, taken == AtCouplers, "{weight:?}");
        let Finding::Couplers {
            at_pump: pump,
            at_couplers: couplers,
            ..
        } = finding
        else {
            panic!("{finding:?}");
        };
        for (pressures, apart) in [(pump, at_pump), (couplers, at_couplers)] {
            let three = [pressures.low, pressures.likely, pressures.high];
            for (actual, apart) in three.iter().zip(apart) {
                assert!(is_near(actual.to_bar(), 190.0 + apart), "{finding:?}");
            }
        }
        let honest = weighed(&parts, sheet).honest;
        assert_eq!(honest.at_couplers, Some(couplers));
        assert_eq!(honest.flow, litres(45.0));
    }
}

/// What valve and couplers would take of 400 L/min is more than 20 bar: nothing is left.
#[test]
fn no_pressure_is_left_where_the_couplers_take_all() {
    let sheet = Sheet {
        flow: litres(400.0),
        pressure: bar(20.0),
        taken: Some(Taken::AtPump),
        ..Sheet::default()
    };
    let honest = weighed(&tractor("curlew-46"), sheet).honest;
    let left = honest.at_couplers.map(|there| there.high);
    assert_eq!(left, Some(Pressure::ZERO));
}

/// A valve set to 190 bar begins to open at 0.8, 0.9 or 0.95 of that: common practice, no source.
#[test]
fn a_relief_valve_begins_to_open_before() {
    for (pressure, taken, expected) in [
        (190.0, None, Weight::Advice),
        (172.0, None, Weight::Advice),
        (170.0, None, Weight::Holds),
        // 5 + 3.2 bar more at the pump, at 52 L/min.
        (164.0, Some(Taken::AtCouplers), Weight::Advice),
        (162.0, Some(Taken::AtCouplers), Weight::Holds),
    ] {
        let sheet = Sheet {
            flow: litres(52.0),
            pressure: bar(pressure),
            taken,
            ..Sheet::default()
        };
        let (weight, finding) = found(&tractor("curlew-46"), sheet, Check::Relief);
        assert_eq!(weight, expected, "{pressure}");
        let Finding::Relief { opens, .. } = finding else {
            panic!("{finding:?}");
        };
        for (actual, expected) in [opens.low, opens.likely, opens.high]
            .iter()
            .zip([152.0, 171.0, 180.5])
        {
            assert!(is_near(actual.to_bar(), expected), "{finding:?}");
        }
        // A pump that swings back has no such valve at work.
        let swings = answer(&tractor("heron-68"), sheet, Check::Relief);
        assert_eq!(swings, Answer::NotForThisMachine);
    }
}

/// A skid steer's outlets have 230 and 210 bar; their valves begin to open at 207 and 189 bar.
#[test]
fn the_outlet_that_is_set_is_meant() {
    let mut parts = Parts::of("puffin-62", "stump-cutter");
    let sheet = Sheet {
        flow: litres(84.0),
        pressure: bar(200.0),
        ..Sheet::default()
    };
    assert_eq!(weight(&parts, sheet, Check::Relief), Weight::Holds);
    parts.settings.outlet = Some(Outlet::StandardFlow);
    assert_eq!(weight(&parts, sheet, Check::Relief), Weight::Advice);
}
