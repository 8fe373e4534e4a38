//! Links: a state comes back as it was, and a damaged link never becomes another state.

mod seeded;

use base64::Engine as _;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use farend_core::choice::Weight;
use farend_core::claims::{Rating, Sheet, Taken};
use farend_core::control::Control;
use farend_core::export::practice_set::CASES;
use farend_core::fault::Rule;
use farend_core::grid::{Order, Reading, Selection};
use farend_core::implement::{Ground, ImplementKind};
use farend_core::machine::{MachineKind, Outlet};
use farend_core::measure::{Amount, Measure};
use farend_core::money::{Prices, RoutePrices};
use farend_core::physics::oil::Grade;
use farend_core::practice::{Kind, Kinds, Set};
use farend_core::quantity::{
    AngularSpeed, Density, Flow, Length, Power, Pressure, Temperature, Velocity,
};
use farend_core::route::RouteId;
use farend_core::settings::{OilSettings, Settings};
use farend_core::standing::Standing;
use farend_core::state::{LONGEST_LINK, LinkFault, State, View};
use farend_core::units::UnitSystem;
use farend_core::wanted::Wish;
use farend_tests::demo;
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::{Index, select};
use seeded::cases;

/// Rounding of a number on its way through the link's units and back, relative.
const ROUNDING: f64 = 1e-12;

fn oil() -> impl Strategy<Value = OilSettings> {
    (option::of(1.0..400.0), option::of(20.0..420.0)).prop_map(|(flow, relief)| OilSettings {
        flow: flow.map(Flow::litres_per_minute),
        relief: relief.map(Pressure::bar),
    })
}

fn practice() -> impl Strategy<Value = Set> {
    let bits = 1..=Kinds::ALL.bits();
    let (least, most) = CASES;
    (any::<u32>(), bits, least..=most).prop_map(|(seed, bits, count)| Set {
        seed,
        kinds: Kinds::from_bits(bits).expect("bits of kinds"),
        count,
    })
}

fn selection() -> impl Strategy<Value = Selection> {
    // Whole kilowatts come back as they were.
    let power = || option::of((3..600_u16).prop_map(|it| Power::kilowatts(it.into())));
    (
        select(Reading::ALL),
        option::of(select(RouteId::ALL)),
        option::of(select(Standing::ALL)),
        option::of(select(MachineKind::ALL)),
        option::of(select(ImplementKind::ALL)),
        (power(), power()),
        any::<bool>(),
        select(Order::ALL),
        any::<bool>(),
    )
        .prop_map(
            |(reading, route, least, machines, implements, (from, to), bare, order, grouped)| {
                Selection {
                    reading,
                    route,
                    least,
                    machines,
                    implements,
                    from,
                    to,
                    as_it_stands: bare,
                    order,
                    grouped,
                }
            },
        )
}

/// What a state has beside the comparison itself.
fn deciding() -> impl Strategy<Value = State> {
    let price = || option::of(0.0..1e9_f64);
    let route = (price(), price(), price()).prop_map(|(kit, variant, fitting)| RoutePrices {
        kit,
        variant,
        fitting,
    });
    let prices = (
        option::of("[A-Z]{3}"),
        price(),
        proptest::array::uniform6(route),
        [price(), price()],
    )
        .prop_map(|(currency, hour, routes, machines)| Prices {
            currency,
            hour,
            routes,
            machines,
        });
    let power = || option::of((3.0..600.0).prop_map(Power::watts));
    let sheet = (
        power(),
        option::of(select(Taken::ALL)),
        power(),
        option::of(select(Rating::ALL)),
        power(),
    )
        .prop_map(|(hydraulic, taken, engine, rating, pto)| Sheet {
            hydraulic,
            taken,
            engine,
            rating,
            pto,
            ..Sheet::default()
        });
    (
        option::of("[a-z0-9-]{1,40}"),
        select(&Wish::ALL[..]),
        proptest::array::uniform5(select(Weight::ALL)),
        prices,
        sheet,
        (select(View::ALL), selection(), option::of(practice())),
    )
        .prop_map(
            |(beside, wished, weights, prices, sheet, (view, selection, practice))| State {
                view,
                beside,
                wished,
                weights,
                prices,
                sheet,
                selection,
                practice,
                ..State::of(String::new(), String::new())
            },
        )
}

fn state() -> impl Strategy<Value = State> {
    let settings = (
        option::of(300.0..5000.0),
        oil(),
        oil(),
        option::of(-20.0..100.0),
        (option::of(select(Outlet::ALL)), any::<bool>()),
        option::of(select(Grade::ALL)),
        (option::of(0.0..4000.0), option::of(-30.0..45.0)),
        (
            option::of(0.0..20.0),
            option::of(-0.3..0.3),
            option::of(select(Ground::ALL)),
        ),
        (option::of(0.01..2.0), option::of(20.0..2500.0)),
        (
            option::of((select(Measure::ALL), 0.1..1e7)),
            option::of(3.0..600.0),
        ),
    )
        .prop_map(
            |(rpm, own, pack, celsius, (outlet, economy), grade, site, driving, layer, more)| {
                let (job, kilowatts) = more;
                Settings {
                    engine_speed: rpm.map(AngularSpeed::rpm),
                    engine_power: kilowatts.map(Power::kilowatts),
                    own,
                    pack,
                    oil: celsius.map(Temperature::celsius),
                    outlet,
                    economy,
                    grade,
                    altitude: site.0.map(Length::metres),
                    air: site.1.map(Temperature::celsius),
                    ground_speed: driving.0.map(Velocity::kilometres_per_hour),
                    slope: driving.1,
                    ground: driving.2,
                    depth: layer.0.map(Length::metres),
                    density: layer.1.map(Density::kilograms_per_cubic_metre),
                    job: job.map(|(measure, si)| Amount::of(measure, si)),
                }
            },
        );
    (
        "[a-z0-9-]{1,40}",
        "[a-z0-9-]{1,40}",
        select(RouteId::ALL),
        settings,
        select(Control::ALL),
        select(vec![UnitSystem::Metric, UnitSystem::Us]),
        deciding(),
    )
        .prop_map(
            |(machine, implement, route, settings, over, units, deciding)| State {
                machine,
                implement,
                route,
                settings,
                over,
                units,
                ..deciding
            },
        )
}

/// The turned values, in SI.
fn numbers(settings: &Settings) -> [Option<f64>; 14] {
    [
        settings.engine_speed.map(AngularSpeed::to_si),
        settings.own.flow.map(Flow::to_si),
        settings.own.relief.map(Pressure::to_si),
        settings.pack.flow.map(Flow::to_si),
        settings.pack.relief.map(Pressure::to_si),
        settings.oil.map(Temperature::to_kelvins),
        settings.altitude.map(Length::to_si),
        settings.air.map(Temperature::to_kelvins),
        settings.ground_speed.map(Velocity::to_si),
        settings.slope,
        settings.depth.map(Length::to_si),
        settings.density.map(Density::to_si),
        settings.job.map(Amount::to_si),
        settings.engine_power.map(Power::to_si),
    ]
}

/// A body with the check sum that makes a whole link of it.
fn summed(body: &[u8]) -> String {
    let mut bytes = body.to_vec();
    bytes.extend(crc32fast::hash(body).to_le_bytes());
    URL_SAFE_NO_PAD.encode(bytes)
}

proptest! {
    #![proptest_config(cases(1_000))]

    #[test]
    fn a_state_comes_back(state in state()) {
        let link = state.to_link();
        prop_assert!(link.len() <= LONGEST_LINK);
        let url_safe = |c: char| c.is_ascii_alphanumeric() || c == '-' || c == '_';
        prop_assert!(link.chars().all(url_safe), "{link}");
        let back = State::from_link(&link).expect("its own link");
        for (new, old) in numbers(&back.settings).into_iter().zip(numbers(&state.settings)) {
            prop_assert_eq!(new.is_some(), old.is_some());
            if let (Some(new), Some(old)) = (new, old) {
                prop_assert!((new - old).abs() <= ROUNDING * old.abs(), "{new}, was {old}");
            }
        }
        // All else is exact.
        let measure = |settings: &Settings| settings.job.map(Amount::measure);
        prop_assert_eq!(measure(&back.settings), measure(&state.settings));
        let Settings { outlet, economy, grade, ground, .. } = back.settings;
        let settings = Settings { outlet, economy, grade, ground, ..state.settings };
        let powers = |it: &Sheet| [it.hydraulic, it.engine, it.pto];
        for (new, old) in powers(&back.sheet).into_iter().zip(powers(&state.sheet)) {
            prop_assert_eq!(new.is_some(), old.is_some());
            if let (Some(new), Some(old)) = (new, old) {
                prop_assert!((new / old - 1.0).abs() <= ROUNDING);
            }
        }
        let Sheet { taken, rating, .. } = back.sheet;
        let sheet = Sheet { taken, rating, ..state.sheet };
        prop_assert_eq!(State { settings, sheet, ..back }, state);
    }

    #[test]
    fn a_truncated_link_is_refused(state in state(), at: Index) {
        let link = state.to_link();
        let cut = &link[..at.index(link.len())];
        prop_assert_eq!(State::from_link(cut), Err(LinkFault::Damaged));
    }

    #[test]
    fn a_link_with_another_byte_is_refused(state in state(), at: Index, byte: u8) {
        let mut bytes = URL_SAFE_NO_PAD.decode(state.to_link()).expect("base64");
        let place = at.index(bytes.len());
        prop_assume!(bytes[place] != byte);
        bytes[place] = byte;
        let link = URL_SAFE_NO_PAD.encode(bytes);
        prop_assert_eq!(State::from_link(&link), Err(LinkFault::Damaged));
    }

    #[test]
    fn a_link_with_another_character_is_refused(state in state(), at: Index, c: char) {
        let link = state.to_link();
        let place = at.index(link.len());
        prop_assume!(!link[place..].starts_with(c));
        let damaged = format!("{}{c}{}", &link[..place], &link[place + 1..]);
        prop_assert_eq!(State::from_link(&damaged), Err(LinkFault::Damaged));
    }

    #[test]
    fn a_link_with_something_added_is_refused(state in state(), more in "[A-Za-z0-9_-]{1,20}") {
        let link = state.to_link();
        prop_assert_eq!(State::from_link(&format!("{link}{more}")), Err(LinkFault::Damaged));
        prop_assert_eq!(State::from_link(&format!("{more}{link}")), Err(LinkFault::Damaged));
    }

    #[test]
    fn any_text_is_refused(text in ".{0,200}") {
        prop_assert_eq!(State::from_link(&text), Err(LinkFault::Damaged));
    }

    /// Someone who knows the check sum can write what they like. It is refused, or it is a state
    /// that comes back from its own link.
    #[test]
    fn any_bytes_under_a_right_sum_do_no_harm(state in state(), changes in vec(any::<(Index, u8)>(), 1..4)) {
        let bytes = URL_SAFE_NO_PAD.decode(state.to_link()).expect("base64");
        let mut body = bytes[..bytes.len() - 4].to_vec();
        for (at, byte) in changes {
            let place = at.index(body.len());
            body[place] = byte;
        }
        match State::from_link(&summed(&body)) {
            Err(fault) => prop_assert_ne!(fault, LinkFault::TooLong),
            Ok(read) => {
                let again = State::from_link(&read.to_link()).expect("its own link");
                prop_assert_eq!(again.machine, read.machine);
                prop_assert_eq!(again.route, read.route);
            }
        }
    }
}

fn a_state() -> State {
    State {
        route: RouteId::RearShaft,
        over: Control::EngineSpeed,
        ..State::of("curlew-46".to_owned(), "snow-thrower-150".to_owned())
    }
}

/// Links of version 1, put together byte by byte from the form that `state` describes: with
/// nothing turned, and with everything.
const FIRST_LINKS: [&str; 2] = [
    include_str!("golden/link/v1-plain.txt"),
    include_str!("golden/link/v1-turned.txt"),
];

/// Links of version 2, put together in the same way: the same two states, the second with everything
/// turned that this version has beside the first.
const SECOND_LINKS: [&str; 2] = [
    include_str!("golden/link/v2-plain.txt"),
    include_str!("golden/link/v2-turned.txt"),
];

/// Everything that version 1 has, turned.
fn turned() -> State {
    let oil = |flow, relief| OilSettings {
        flow: Some(Flow::litres_per_minute(flow)),
        relief: Some(Pressure::bar(relief)),
    };
    State {
        route: RouteId::SkidSteer,
        settings: Settings {
            engine_speed: Some(AngularSpeed::rpm(2500.0)),
            own: oil(126.0, 230.0),
            pack: oil(82.0, 200.0),
            oil: Some(Temperature::celsius(-5.0)),
            outlet: Some(Outlet::HighFlow),
            ..Settings::default()
        },
        over: Control::PackFlow,
        units: UnitSystem::Us,
        ..State::of("puffin-62".to_owned(), "stump-cutter".to_owned())
    }
}

/// A link handed out once must be read for ever.
#[test]
fn links_of_the_first_version_are_still_read() {
    for (link, state) in FIRST_LINKS.into_iter().zip([a_state(), turned()]) {
        assert_eq!(State::from_link(link), Ok(state));
    }
}

/// Everything that version 2 has, turned.
fn all_turned() -> State {
    let first = turned();
    State {
        settings: Settings {
            economy: true,
            grade: Some(Grade::TractorFluid),
            altitude: Some(Length::metres(1500.0)),
            air: Some(Temperature::celsius(-12.5)),
            ground_speed: Some(Velocity::kilometres_per_hour(4.5)),
            slope: Some(-0.125),
            ground: Some(Ground::Loose),
            depth: Some(Length::metres(0.25)),
            density: Some(Density::kilograms_per_cubic_metre(250.0)),
            job: Some(Amount::of(Measure::Area, 1200.0)),
            ..first.settings
        },
        over: Control::MaterialDensity,
        ..first
    }
}

#[test]
fn links_of_the_second_version_are_still_read() {
    for (link, state) in SECOND_LINKS.into_iter().zip([a_state(), all_turned()]) {
        assert_eq!(State::from_link(link), Ok(state));
    }
}

/// Links of version 3 as this program wrote them first: the same two states, the second with
/// everything turned and entered that this version has beside the second.
const THIRD_LINKS: [&str; 2] = [
    include_str!("golden/link/v3-plain.txt"),
    include_str!("golden/link/v3-decided.txt"),
];

/// Everything that version 3 has.
fn decided() -> State {
    let second = all_turned();
    let mut prices = Prices {
        currency: Some("EUR".to_owned()),
        hour: Some(62.5),
        machines: [Some(41_000.0), Some(68_500.0)],
        ..Prices::default()
    };
    for (place, of_route) in (1..).zip(&mut prices.routes) {
        *of_route = RoutePrices {
            kit: Some(f64::from(place) * 100.0),
            variant: Some(f64::from(place) * 1000.0),
            fitting: Some(f64::from(place)),
        };
    }
    State {
        settings: Settings {
            engine_power: Some(Power::kilowatts(55.0)),
            ..second.settings
        },
        beside: Some("gannet-90".to_owned()),
        wished: Wish::Ample,
        weights: [
            Weight::Much,
            Weight::Not,
            Weight::Somewhat,
            Weight::Much,
            Weight::Not,
        ],
        prices,
        sheet: Sheet {
            flow: Some(Flow::litres_per_minute(62.0)),
            pressure: Some(Pressure::bar(190.0)),
            hydraulic: Some(Power::kilowatts(25.0)),
            taken: Some(Taken::AtCouplers),
            engine_speed: Some(AngularSpeed::rpm(2400.0)),
            engine: Some(Power::kilowatts(50.0)),
            rating: Some(Rating::Gross),
            pto: Some(Power::kilowatts(40.0)),
        },
        ..second
    }
}

#[test]
fn links_of_the_third_version_are_still_read() {
    for (link, state) in THIRD_LINKS.into_iter().zip([a_state(), decided()]) {
        assert_eq!(State::from_link(link), Ok(state));
    }
}

/// Links of version 4 as this program wrote them first: the same two states, the second with a
/// selection of the whole yard and a set of practice cases.
const FOURTH_LINKS: [&str; 2] = [
    include_str!("golden/link/v4-plain.txt"),
    include_str!("golden/link/v4-selected.txt"),
];

/// Everything that version 4 has.
fn selected() -> State {
    State {
        view: View::Grid,
        selection: Selection {
            reading: Reading::Implements,
            route: Some(RouteId::PumpPack),
            least: Some(Standing::Slower),
            machines: Some(MachineKind::SkidSteer),
            implements: Some(ImplementKind::Broom),
            from: Some(Power::kilowatts(20.0)),
            to: Some(Power::kilowatts(75.0)),
            as_it_stands: true,
            order: Order::Size,
            grouped: true,
        },
        practice: Some(Set {
            seed: 4_711,
            kinds: Kinds::NONE.toggled(Kind::Amount).toggled(Kind::Fit),
            count: 12,
        }),
        ..decided()
    }
}

#[test]
fn links_of_the_fourth_version_are_read_and_written() {
    for (link, state) in FOURTH_LINKS.into_iter().zip([a_state(), selected()]) {
        assert_eq!(state.to_link(), link);
        assert_eq!(State::from_link(link), Ok(state));
    }
}

/// A whole link with a set that this program can't have made is refused, not read as another set.
#[test]
fn a_link_with_no_set_is_damaged() {
    for (kinds, count) in [(0, 6), (64, 6), (255, 6), (1, 0), (1, 31)] {
        let link = State {
            practice: Some(Set {
                seed: 7,
                kinds: Kinds::from_bits(1).expect("a kind"),
                count: 6,
            }),
            ..a_state()
        };
        let mut bytes = URL_SAFE_NO_PAD.decode(link.to_link()).expect("base64");
        bytes.truncate(bytes.len() - 4);
        let end = bytes.len();
        // Seed, kinds and count are the last three bytes.
        assert_eq!(bytes[end - 3..], [7, 1, 6]);
        bytes[end - 2] = kinds;
        bytes[end - 1] = count;
        assert_eq!(
            State::from_link(&summed(&bytes)),
            Err(LinkFault::Damaged),
            "{kinds} {count}"
        );
    }
}

#[test]
fn a_link_of_a_newer_version_says_so() {
    assert_eq!(State::from_link(&summed(&[5])), Err(LinkFault::Newer(5)));
    assert_eq!(State::from_link(&summed(&[4])), Err(LinkFault::Damaged));
    assert_eq!(State::from_link(&summed(&[3])), Err(LinkFault::Damaged));
    assert_eq!(State::from_link(&summed(&[2])), Err(LinkFault::Damaged));
    assert_eq!(State::from_link(&summed(&[0])), Err(LinkFault::Damaged));
}

#[test]
fn a_link_that_is_too_long_is_not_looked_at() {
    let longest = "A".repeat(LONGEST_LINK);
    assert_eq!(State::from_link(&longest), Err(LinkFault::Damaged));
    assert_eq!(
        State::from_link(&format!("{longest}A")),
        Err(LinkFault::TooLong)
    );
}

#[test]
fn an_empty_link_is_refused() {
    assert_eq!(State::from_link(""), Err(LinkFault::Damaged));
}

/// A whole link can carry what is no number: the check of the settings must stop it.
#[test]
fn a_link_with_what_is_no_number_is_stopped_by_the_settings_check() {
    for rpm in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, -2000.0, 1e300] {
        let mut state = a_state();
        state.settings.engine_speed = Some(AngularSpeed::rpm(rpm));
        let read = State::from_link(&state.to_link()).expect("a whole link");
        let yard = demo();
        let machine = yard.machine(&read.machine).expect("a machine of the demo");
        let faults = read.settings.check(machine).expect_err("no such speed");
        assert!(matches!(faults[0].rule, Rule::Within { .. }), "{faults:?}");
    }
}
