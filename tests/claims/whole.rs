//! A sheet as a whole: what it lacks, what is refused, and what it means for the settings.

use crate::sheets::{answer, bar, is_near, kilowatts, litres, rpm, tractor, weighed, weight};
use farend_core::claims::{Answer, Check, Rating, Sheet, SheetFigure, Taken, Weight, weigh};
use farend_core::quantity::{Flow, Power, Pressure};
use farend_core::route::RouteId;
use farend_core::route::part::{Hookup, assemble};
use farend_core::settings::{OilSettings, Settings};
use farend_core::spread::Corner;
use farend_core::stage::{StageKind, StagePhysics};
use farend_tests::most;

#[test]
fn what_a_check_lacks_is_named() {
    use SheetFigure::{Engine, EngineSpeed, Flow, Hydraulic, Pressure, Pto, Taken};
    let lacks = |figures: &[SheetFigure]| Answer::Lacks(figures.to_vec());
    let parts = tractor("plover-28");
    let expected = [
        (Check::HydraulicPower, lacks(&[Flow, Pressure, Hydraulic])),
        (Check::EnginePower, lacks(&[Flow, Pressure])),
        (Check::Steering, lacks(&[Flow])),
        (Check::WorkingSpeed, lacks(&[Flow, EngineSpeed])),
        (Check::Couplers, lacks(&[Flow, Pressure, Taken])),
        (Check::Relief, lacks(&[Flow, Pressure])),
        (Check::EngineRating, lacks(&[Engine])),
        (Check::PtoPower, lacks(&[Pto])),
    ];
    assert_eq!(weighed(&parts, Sheet::default()).answers, expected);
    let sheet = Sheet {
        flow: litres(30.0),
        pressure: bar(170.0),
        ..Sheet::default()
    };
    for (check, figure) in [
        (Check::HydraulicPower, Hydraulic),
        (Check::WorkingSpeed, EngineSpeed),
        (Check::Couplers, Taken),
    ] {
        assert_eq!(answer(&parts, sheet, check), lacks(&[figure]));
    }
}

#[test]
fn a_machine_without_outlets_has_nothing_to_hold_oil_against() {
    let mut parts = tractor("curlew-46");
    parts.machine.circuits.clear();
    let sheet = Sheet {
        flow: litres(62.0),
        pressure: bar(190.0),
        hydraulic: kilowatts(25.0),
        ..Sheet::default()
    };
    for check in [
        Check::EnginePower,
        Check::Steering,
        Check::WorkingSpeed,
        Check::Couplers,
        Check::Relief,
    ] {
        let asked = answer(&parts, sheet, check);
        assert_eq!(asked, Answer::NotForThisMachine, "{check:?}");
    }
    assert_eq!(weight(&parts, sheet, Check::HydraulicPower), Weight::Wrong);
    let honest = weighed(&parts, sheet).honest;
    assert_eq!(honest.flow, litres(62.0));
    assert_eq!(honest.applied(Settings::default()), Settings::default());
}

#[test]
fn all_faults_of_sheet_and_settings_come_at_once() {
    let mut parts = tractor("curlew-46");
    parts.settings.slope = Some(1.0);
    let sheet = Sheet {
        flow: litres(f64::NAN),
        pto: kilowatts(0.5),
        ..Sheet::default()
    };
    let faults = weigh(&sheet, &parts.machine, &parts.settings).expect_err("three faults");
    let paths: Vec<_> = faults.iter().map(|fault| fault.path.as_str()).collect();
    assert_eq!(paths, ["flow", "pto", "slope"]);
    assert!(
        faults
            .iter()
            .all(|fault| !fault.hint.to_string().is_empty())
    );
}

/// What a sheet sets, in the words of the yard: L/min at the yard's engine speed, bar at the pump.
#[test]
fn honest_figures_are_taken_over() {
    let speed = 2400.0 / 2600.0;
    for (machine, flow, taken, sheet_rpm, litres_set, bar_set) in [
        // 24 for the implement and 13 for steering.
        ("wren-18", 37.0, Taken::AtPump, 2600.0, 37.0, 160.0),
        ("wren-18", 24.0, Taken::AtPump, 2600.0, 37.0, 160.0),
        // At 2400 rpm the implement's pump gives 24 x 2400/2600.
        ("wren-18", 24.0 * speed, Taken::AtPump, 2400.0, 37.0, 160.0),
        ("plover-28", 41.0, Taken::AtPump, 2600.0, 41.0, 160.0),
        // Half of 41 at half the speed.
        ("plover-28", 20.5, Taken::AtPump, 1300.0, 41.0, 160.0),
        // 5 x (45/52)² + 2.4 bar more at the pump.
        (
            "curlew-46",
            45.0,
            Taken::AtCouplers,
            2400.0,
            45.0,
            166.144_452_662_721_9,
        ),
        ("curlew-46", 26.0, Taken::AtPump, 1200.0, 52.0, 160.0),
    ] {
        let parts = tractor(machine);
        let sheet = Sheet {
            flow: litres(flow),
            pressure: bar(160.0),
            taken: Some(taken),
            engine_speed: rpm(sheet_rpm),
            engine: kilowatts(20.0),
            rating: Some(Rating::Gross),
            ..Sheet::default()
        };
        let before = Settings {
            slope: Some(0.1),
            ..Settings::default()
        };
        let settings = weighed(&parts, sheet).honest.applied(before);
        let set = |value: Option<f64>| value.expect("it is set");
        let flow = set(settings.own.flow.map(Flow::to_litres_per_minute));
        assert!(is_near(flow, litres_set), "{machine}: {flow}");
        let relief = set(settings.own.relief.map(Pressure::to_bar));
        assert!(is_near(relief, bar_set), "{machine}: {relief}");
        // 0.92 of 20 kW.
        let power = set(settings.engine_power.map(Power::to_kilowatts));
        assert!(is_near(power, 18.4), "{machine}: {power}");
        assert_eq!(settings.slope, Some(0.1));
    }
}

#[test]
fn what_a_sheet_leaves_out_stays_as_it_is_set() {
    let parts = tractor("curlew-46");
    let before = Settings {
        engine_power: kilowatts(40.0),
        own: OilSettings {
            flow: litres(50.0),
            relief: bar(180.0),
        },
        ..Settings::default()
    };
    let none = weighed(&parts, Sheet::default()).honest;
    assert_eq!(none.applied(before), before);
    // At couplers and without a flow the pressure at the pump isn't known.
    let sheet = Sheet {
        pressure: bar(100.0),
        taken: Some(Taken::AtCouplers),
        ..Sheet::default()
    };
    assert_eq!(weighed(&parts, sheet).honest.applied(before), before);
}

/// A route with the settings taken over brings the honest flow behind pump and divider, at the yard's
/// relief pressure and the engine speed that its flow holds for.
#[test]
fn a_route_brings_the_honest_flow() {
    for (machine, flow) in [("wren-18", 36.0), ("plover-28", 40.0), ("curlew-46", 50.0)] {
        let parts = tractor(machine);
        let circuit = &parts.machine.circuits[0];
        let sheet = Sheet {
            flow: litres(flow),
            ..Sheet::default()
        };
        let honest = weighed(&parts, sheet).honest;
        let settings = honest.applied(Settings::default());
        let kit = parts
            .kits
            .iter()
            .find(|kit| kit.routes.contains(&RouteId::MachineHydraulics));
        let hookup = Hookup {
            machine: &parts.machine,
            implement: &parts.implement,
            kit,
            settings: &settings,
        };
        let joined = assemble(RouteId::MachineHydraulics.parts(), hookup).expect("it fits");
        let stages: Vec<_> = joined
            .stages
            .into_iter()
            .filter(|stage| matches!(stage.kind(), StageKind::Pump | StageKind::Steering))
            .collect();
        let plenty = Power::kilowatts(1e3);
        let ledger = most(&stages, plenty, circuit.engine_speed, Corner::LIKELY);
        let brings = ledger
            .delivered()
            .and_then(|drive| drive.rate.flowing().ok());
        let brings = brings.expect("oil flows").to_litres_per_minute();
        let honest = honest.flow.expect("a flow").to_litres_per_minute();
        assert!(is_near(brings, honest), "{machine}: {brings}, not {honest}");
    }
}
