//! Choices: limits, sheets, fits and changes.

use super::{case, choice};
use farend_core::claims::Check;
use farend_core::claims::{Rating, Sheet};
use farend_core::drive::Limit;
use farend_core::practice::Misconception::{
    AddsFlows, EngineAsHydraulic, IgnoresSpeed, PressureForSpeed,
};
use farend_core::practice::{Change, Fits, Judged, Question, Truth};
use farend_core::quantity::{Flow, Length, Power, Pressure};
use farend_core::route::RouteId::{MachineHydraulics, MidShaft};
use farend_core::wanted::Wish;

#[test]
fn a_limit_shows_pressure_taken_for_speed_and_the_engine_for_oil() {
    let choices = vec![
        Limit::Engine,
        Limit::Flow,
        Limit::Pressure,
        Limit::Implement,
    ];
    let limit = |machine: &str, implement: &str, rpm| {
        let question = Question::Limit {
            route: MachineHydraulics,
            kit: "loader-hoses".into(),
            choices: choices.clone(),
        };
        case(machine, implement, rpm, question)
    };
    // A 46 kW tractor's remotes turn the thrower too slowly.
    let by_flow = limit("curlew-46", "snow-thrower-150", 2200.0);
    assert_eq!(by_flow.1.truth, Truth::Limit(Limit::Flow));
    let of_flow = [Some(EngineAsHydraulic), None, Some(PressureForSpeed), None];
    // A 90 kW tractor's have flow enough.
    let by_pressure = limit("gannet-90", "snow-thrower-150", 2000.0);
    assert_eq!(by_pressure.1.truth, Truth::Limit(Limit::Pressure));
    let of_pressure = [Some(EngineAsHydraulic), None, None, None];
    for (case, expected) in [(by_flow, of_flow), (by_pressure, of_pressure)] {
        let judged: Vec<_> = (0..choices.len())
            .map(|place| choice(&case, place))
            .collect();
        let shown: Vec<_> = judged.iter().map(|it| it.misconception).collect();
        assert_eq!(shown, expected);
        assert_eq!(judged.iter().filter(|it| it.right).count(), 1);
        assert_eq!(
            choice(&case, 9),
            Judged {
                right: false,
                near: 0.0,
                misconception: None
            }
        );
    }
}

#[test]
fn a_sheet_shows_what_was_passed_over() {
    let choices = vec![Some(Check::HydraulicPower), Some(Check::Steering), None];
    let sheet = |flow, hydraulic| {
        let question = Question::Sheet {
            sheet: Sheet {
                flow: Some(Flow::litres_per_minute(flow)),
                pressure: Some(Pressure::bar(155.0)),
                hydraulic: Some(Power::kilowatts(hydraulic)),
                engine: Some(Power::kilowatts(18.0)),
                rating: Some(Rating::Net),
                ..Sheet::default()
            },
            choices: choices.clone(),
        };
        case("wren-18", "broom-180", 2600.0, question)
    };
    // 24 L/min at 155 bar are 6.2 kW; 37 L/min are with steering's 13, and come to 9.6 kW.
    let table = [
        (
            "honest",
            sheet(24.0, 6.2),
            2,
            [Some(EngineAsHydraulic), None, None],
        ),
        (
            "engine's",
            sheet(24.0, 18.0),
            0,
            [None, None, Some(EngineAsHydraulic)],
        ),
        (
            "steering's",
            sheet(37.0, 9.6),
            1,
            [None, None, Some(AddsFlows)],
        ),
    ];
    for (what, case, right, expected) in table {
        for (place, misconception) in expected.into_iter().enumerate() {
            let judged = choice(&case, place);
            assert_eq!(judged.right, place == right, "{what}: {place}");
            assert_eq!(judged.misconception, misconception, "{what}: {place}");
        }
    }
}

#[test]
fn asking_is_between_fitting_and_not() {
    let question = Question::Fit {
        route: MidShaft,
        kit: "subframe-drive".into(),
        choices: Fits::ALL.to_vec(),
    };
    // This tractor has no mid PTO.
    let case = case("heron-68", "snow-thrower-150", 1950.0, question);
    let near: Vec<_> = (0..3).map(|place| choice(&case, place).near).collect();
    assert_eq!(near, [0.0, 0.5, 1.0]);
    assert!(choice(&case, 2).right);
}

/// The small tractor's 24 L/min turn the broom's motor of 245 cm³ at less than 98 rpm, and it needs
/// 120; the thrower's at less than 180 of 480.
#[test]
fn more_pressure_for_a_slow_rotor_shows_which_idea_is_behind_it() {
    let choices = vec![
        Change::Flow(Flow::litres_per_minute(60.0)),
        Change::Relief(Pressure::bar(175.0)),
        Change::Hoses(Length::millimetres(16.0)),
    ];
    let wanted = |implement: &str, wish| {
        let question = Question::Wanted {
            route: MachineHydraulics,
            kit: "loader-hoses".into(),
            wish,
            choices: choices.clone(),
        };
        case("wren-18", implement, 2600.0, question)
    };
    let broom = wanted("broom-180", Wish::Slower);
    let judged = |case: &_| {
        [0, 1, 2].map(|place| (choice(case, place).right, choice(case, place).misconception))
    };
    // Power enough for that it has, only not the speed.
    let expected = [
        (true, None),
        (false, Some(IgnoresSpeed)),
        (false, Some(IgnoresSpeed)),
    ];
    assert_eq!(judged(&broom), expected);
    // The thrower lacks both.
    let thrower = wanted("snow-thrower-150", Wish::Ample);
    let expected = [
        (false, None),
        (false, Some(PressureForSpeed)),
        (false, None),
    ];
    assert_eq!(judged(&thrower), expected);
}
