//! Guesses held against the truth: what is right, how near the rest comes, and which wrong idea it
//! shows. What wrong ideas come to is reckoned by hand from the yard's figures.

mod choices;

use farend_core::practice::Misconception::{
    AddsFlows, EngineAsHydraulic, ForgetsReturn, IgnoresSpeed,
};
use farend_core::practice::{
    Answer, Case, Draw, Guess, Idea, Judged, Kind, Misconception, Question, Truth, judge, reveal,
};
use farend_core::quantity::{AngularSpeed, Power};
use farend_core::route::RouteId;
use farend_core::route::RouteId::{MachineHydraulics, MidShaft, PumpPack, RearShaft, SkidSteer};
use farend_core::settings::Settings;
use farend_tests::demo;

/// A case with its answer.
type Known = (Case, Answer);

/// A case of the demo yard at an engine speed.
fn case(machine: &str, implement: &str, rpm: f64, question: Question) -> Known {
    let case = Case {
        draw: Draw {
            kind: Kind::Amount,
            seed: 0,
        },
        machine: machine.into(),
        implement: implement.into(),
        settings: Settings {
            engine_speed: Some(AngularSpeed::rpm(rpm)),
            ..Settings::default()
        },
        question,
        idea: Idea::FlowIsSpeed,
    };
    let answer = reveal(&demo(), &case).expect("a case of the demo yard");
    (case, answer)
}

fn amount(machine: &str, implement: &str, rpm: f64, route: RouteId, kit: &str) -> Known {
    let kit = kit.into();
    case(machine, implement, rpm, Question::Amount { route, kit })
}

fn kilowatts((case, answer): &Known, guess: f64) -> Judged {
    judge(case, answer, &Guess::Power(Power::kilowatts(guess)))
}

fn choice((case, answer): &Known, place: usize) -> Judged {
    judge(case, answer, &Guess::Choice(place))
}

#[test]
fn an_amount_shows_what_it_was_reckoned_from() {
    let curlew = amount(
        "curlew-46",
        "snow-thrower-150",
        2400.0,
        MachineHydraulics,
        "loader-hoses",
    );
    let wren = amount(
        "wren-18",
        "broom-180",
        2600.0,
        MachineHydraulics,
        "loader-hoses",
    );
    let plover = amount(
        "plover-28",
        "snow-thrower-150",
        2600.0,
        MachineHydraulics,
        "loader-hoses",
    );
    let puffin = amount("puffin-62", "stump-cutter", 2600.0, SkidSteer, "skid-hoses");
    // P[kW] = Q[L/min]·p[bar]/600, from the definition of power.
    let table: [(&str, &Known, f64, Option<Misconception>); 14] = [
        (
            "the engine's net power",
            &curlew,
            46.0,
            Some(EngineAsHydraulic),
        ),
        ("about that", &curlew, 47.0, Some(EngineAsHydraulic)),
        ("a good deal more", &curlew, 50.0, None),
        (
            "52 L/min at 190 bar",
            &curlew,
            52.0 * 190.0 / 600.0,
            Some(ForgetsReturn),
        ),
        ("a tenth more", &curlew, 1.1 * 52.0 * 190.0 / 600.0, None),
        (
            "the engine's net power",
            &wren,
            18.0,
            Some(EngineAsHydraulic),
        ),
        (
            "37 L/min, 13 of them steering's, at 155 bar",
            &wren,
            37.0 * 155.0 / 600.0,
            Some(AddsFlows),
        ),
        ("5 per cent less", &wren, 0.95 * 37.0 * 155.0 / 600.0, None),
        (
            "41 L/min, 11 of them steering's, at 170 bar",
            &plover,
            41.0 * 170.0 / 600.0,
            Some(AddsFlows),
        ),
        (
            "the 30 L/min that are left, at 170 bar",
            &plover,
            30.0 * 170.0 / 600.0,
            Some(ForgetsReturn),
        ),
        ("a third of it", &plover, 2.2, None),
        (
            "126 and 84 L/min at 230 bar",
            &puffin,
            210.0 * 230.0 / 600.0,
            Some(AddsFlows),
        ),
        (
            "the engine's net power",
            &puffin,
            62.0,
            Some(EngineAsHydraulic),
        ),
        ("much too little", &puffin, 20.0, None),
    ];
    for (what, case, guess, misconception) in table {
        let judged = kilowatts(case, guess);
        assert!(!judged.right, "{what}: {guess} kW is right");
        assert_eq!(judged.misconception, misconception, "{what}: {guess} kW");
    }
}

/// A motor of 45 cm³ at the mulcher's 2100 rpm, with the torque of 155 bar that the small tractor has.
#[test]
fn power_at_a_speed_that_the_rotor_never_has_shows_that_speed_is_ignored() {
    let wren = amount(
        "wren-18",
        "flail-mulcher-140",
        2600.0,
        MachineHydraulics,
        "loader-hoses",
    );
    let run = wren
        .1
        .comparison
        .route(MachineHydraulics)
        .and_then(|it| it.run());
    let run = run.expect("it runs");
    assert!(run.rotor < AngularSpeed::rpm(1700.0), "below its lowest");
    // P = T·ω
    let torque = run.delivered.likely / run.rotor;
    let at_speed = (torque * AngularSpeed::rpm(2100.0)).to_kilowatts();
    assert_eq!(kilowatts(&wren, at_speed).misconception, Some(IgnoresSpeed));
    assert_eq!(kilowatts(&wren, at_speed * 1.05).misconception, None);
}

#[test]
fn an_amount_is_right_from_low_to_high_and_near_by_its_ratio() {
    let curlew = amount(
        "curlew-46",
        "snow-thrower-150",
        2400.0,
        MachineHydraulics,
        "loader-hoses",
    );
    let Truth::Amount { delivered, .. } = curlew.1.truth else {
        panic!("an amount");
    };
    let [low, likely, high] = [delivered.low, delivered.likely, delivered.high];
    let [low, likely, high] = [low, likely, high].map(Power::to_kilowatts);
    for right in [low, likely, high, low - 0.04, high + 0.04] {
        let judged = kilowatts(&curlew, right);
        assert!(judged.right && judged.near == 1.0 && judged.misconception.is_none());
    }
    for wrong in [
        low - 0.06,
        high + 0.06,
        high * 3.0,
        low / 3.0,
        0.0,
        -5.0,
        f64::NAN,
        f64::INFINITY,
    ] {
        let judged = kilowatts(&curlew, wrong);
        assert!(
            !judged.right && (0.0..1.0).contains(&judged.near),
            "{wrong}: {judged:?}"
        );
    }
    // Twice too much is nowhere near; √2 times is half of that on a scale of ratios.
    assert_eq!(kilowatts(&curlew, high * 2.1).near, 0.0);
    assert!((kilowatts(&curlew, high * std::f64::consts::SQRT_2).near - 0.5).abs() < 1e-9);
    assert!((kilowatts(&curlew, low / std::f64::consts::SQRT_2).near - 0.5).abs() < 1e-9);
}

/// An order, what is set apart, how much of it is right, what it shows.
type Row = (
    &'static [RouteId],
    &'static [RouteId],
    u32,
    Option<Misconception>,
);

#[test]
fn an_order_shows_oil_put_above_a_shaft() {
    let routes = vec![RearShaft, MidShaft, MachineHydraulics];
    let (case, answer) = case(
        "heron-68",
        "snow-thrower-150",
        1950.0,
        Question::Route { routes },
    );
    let judged = |order: &[RouteId], cant: &[RouteId]| {
        let guess = Guess::Order {
            order: order.to_vec(),
            cant: cant.to_vec(),
        };
        judge(&case, &answer, &guess)
    };
    // This tractor has no mid PTO.
    let right = judged(&[RearShaft, MachineHydraulics], &[MidShaft]);
    assert!(right.right && right.near == 1.0);
    // Of three pairs and three routes so many are right.
    let table: [Row; 6] = [
        (
            &[MachineHydraulics, RearShaft],
            &[MidShaft],
            2 + 3,
            Some(EngineAsHydraulic),
        ),
        (&[RearShaft, MachineHydraulics, MidShaft], &[], 3 + 2, None),
        (&[RearShaft, MidShaft, MachineHydraulics], &[], 2 + 2, None),
        (&[MachineHydraulics], &[RearShaft, MidShaft], 1 + 2, None),
        (
            &[MidShaft, MachineHydraulics, RearShaft],
            &[],
            2,
            Some(EngineAsHydraulic),
        ),
        (&[], &[], 0, None),
    ];
    for (order, cant, near, misconception) in table {
        let judged = judged(order, cant);
        assert!(!judged.right, "{order:?} {cant:?}");
        assert!(
            (judged.near - f64::from(near) / 6.0).abs() < 1e-12,
            "{order:?} {cant:?}: {judged:?}"
        );
        assert_eq!(judged.misconception, misconception, "{order:?} {cant:?}");
    }
    // What isn't asked about, or is named twice, is no order of these.
    for (order, cant) in [
        (
            &[RearShaft, MachineHydraulics, PumpPack][..],
            &[MidShaft][..],
        ),
        (&[RearShaft, MachineHydraulics], &[MidShaft, MidShaft]),
        (&[RearShaft, MachineHydraulics], &[PumpPack]),
    ] {
        let judged = judged(order, cant);
        assert!(!judged.right && judged.near < 1.0, "{order:?} {cant:?}");
    }
}

#[test]
fn a_guess_of_another_kind_is_wrong() {
    let curlew = amount(
        "curlew-46",
        "snow-thrower-150",
        2400.0,
        MachineHydraulics,
        "loader-hoses",
    );
    let wrong = Judged {
        right: false,
        near: 0.0,
        misconception: None,
    };
    assert_eq!(choice(&curlew, 0), wrong);
    let order = Guess::Order {
        order: vec![RearShaft],
        cant: Vec::new(),
    };
    assert_eq!(judge(&curlew.0, &curlew.1, &order), wrong);
}
