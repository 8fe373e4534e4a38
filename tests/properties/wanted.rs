//! What it would take is what the comparison itself then finds, and a little less isn't enough.

use crate::every::{loaded, pairs};
use crate::random::{log, settings, yard};
use farend_core::compare::{Outcome, Run, evaluate};
use farend_core::implement::Implement;
use farend_core::kit::Kit;
use farend_core::machine::Machine;
use farend_core::quantity::{AngularSpeed, Flow, Length, Pressure};
use farend_core::route::RouteId;
use farend_core::settings::{FLOW_LIMITS, OilSettings, RELIEF_LIMITS, Settings};
use farend_core::source::Source;
use farend_core::spread::Spread;
use farend_core::wanted::{Hindrance, Outfit, Turned, Wanted, Wish, sizes, wanted};
use farend_core::warning::{Line, Warning};
use farend_core::yard::entry::{UncertainEntry, YardEntry};
use proptest::prelude::*;
use proptest::strategy::ValueTree;
use proptest::test_runner::{TestCaseError, TestRunner};
use std::cell::RefCell;
use std::collections::BTreeMap;
use std::sync::OnceLock;

/// A little less, of which it is said that it isn't enough.
const LESS: f64 = 0.98;

/// What is tried, and what is wished for.
#[derive(Clone, Copy)]
struct Tried<'a> {
    route: RouteId,
    machine: &'a Machine,
    implement: &'a Implement,
    kits: &'a [Kit],
    settings: Settings,
    wish: Wish,
}

impl Tried<'_> {
    fn run(&self) -> Option<Run> {
        let Self {
            route,
            machine,
            implement,
            kits,
            settings,
            ..
        } = self;
        match evaluate(*route, machine, implement, kits, settings) {
            Outcome::Runs(run) => Some(*run),
            Outcome::NoFit(_) => None,
        }
    }

    fn does(&self) -> bool {
        self.run().is_some_and(|run| {
            run.verdict.likely >= self.wish.standing() && run.rotor <= self.fastest()
        })
    }

    /// Not even with a hundredth more power.
    fn nearly_does(&self) -> bool {
        let from = self.wish.standing().begins_at() * 1.01;
        self.run().is_some_and(|run| {
            let rotor = &self.implement.rotor;
            let clearly = run.rotor >= rotor.lowest * 1.01 && run.rotor <= rotor.highest * 0.99;
            run.verdict.ratio >= from && clearly && !run.warnings.iter().any(is_pump_too_fast)
        })
    }

    fn fastest(&self) -> AngularSpeed {
        self.implement.rotor.highest * (1.0 + 1e-6)
    }

    fn at(self, speed: AngularSpeed) -> Self {
        Self {
            settings: Settings {
                engine_speed: Some(speed),
                ..self.settings
            },
            ..self
        }
    }

    fn with_oil(self, change: impl Fn(&mut OilSettings)) -> Self {
        let mut settings = self.settings;
        change(match self.route {
            RouteId::PumpPack => &mut settings.pack,
            _ => &mut settings.own,
        });
        Self { settings, ..self }
    }

    /// Whether the wished standing holds, the rotor and a kit's pump within their speeds.
    fn answers(&self) -> Result<Run, TestCaseError> {
        let name = self.route.word();
        prop_assert_eq!(self.settings.check(self.machine), Ok(()));
        let run = self.run();
        let run = run.ok_or_else(|| TestCaseError::fail(format!("{name} doesn't fit")))?;
        let is = run.verdict.likely;
        prop_assert!(
            is >= self.wish.standing(),
            "{name}: {is:?} {}",
            run.verdict.ratio
        );
        prop_assert!(run.rotor >= self.implement.rotor.lowest, "{name}");
        prop_assert!(run.rotor <= self.fastest(), "{name}");
        let fast =
            |it: &Warning| is_pump_too_fast(it) || matches!(it, Warning::RotorTooFast { .. });
        prop_assert!(!run.warnings.iter().any(fast), "{name}: {:?}", run.warnings);
        Ok(run)
    }
}

fn is_pump_too_fast(warning: &Warning) -> bool {
    matches!(warning, Warning::PumpTooFast { .. })
}

fn is_narrow(warning: &Warning) -> bool {
    matches!(warning, Warning::LineTooNarrow { .. })
}

/// How many of each kind of answer there were.
type Seen = RefCell<BTreeMap<&'static str, u32>>;

fn saw(seen: &Seen, what: &'static str) {
    *seen.borrow_mut().entry(what).or_default() += 1;
}

/// Draws that make a yard's oil routes such as might be bought: need, highest pressure, part of it
/// that the need takes, motor's speed, flow to spare; the engine's power for each watt of need.
type Draws = (f64, f64, f64, f64, f64, f64);

fn draws() -> BoxedStrategy<Draws> {
    (
        log(3.0, 40.0),
        150.0..350.0_f64,
        0.4..0.9_f64,
        log(300.0, 2500.0),
        1.0..1.6_f64,
        log(1.0, 4.0),
    )
        .boxed()
}

/// Motors of a size for their need, engines and pumps not far from it, hoses and couplers as they
/// are used. The rest stays random.
fn sensible(mut entry: YardEntry, draws: Draws) -> YardEntry {
    let (need, bar, part, rpm, spare, engine) = draws;
    for implement in &mut entry.implements {
        implement.need_kw = UncertainEntry::One(need);
        implement.work = None;
        implement.mass_kg = None;
        let rotor = &mut implement.rotor;
        rotor.lowest_rpm = rotor.lowest_rpm.min(rotor.rated_rpm * 0.9);
        rotor.highest_rpm = rotor.highest_rpm.max(rotor.rated_rpm * 1.05);
        if let Some(motor) = &mut implement.motor {
            motor.ratio = (rotor.rated_rpm / rpm).clamp(0.01, 20.0);
            let rpm = rotor.rated_rpm / motor.ratio;
            motor.highest_bar = bar;
            // V = 2π·P/(ω·Δp): in cm³, kW, rpm and bar, V = 600 000·P/(n·Δp)
            motor.displacement_cm3 = (600_000.0 * need / (rpm * bar * part)).clamp(4.0, 2000.0);
            motor.highest_l_min = (motor.displacement_cm3 * rpm * spare / 1000.0).clamp(1.0, 400.0);
        }
    }
    for machine in &mut entry.machines {
        machine.engine.gross_kw = None;
        machine.engine.net_kw = Some(UncertainEntry::One(need * engine));
        machine.mass_kg = None;
        machine.axles = None;
        let ptos = [
            &mut machine.rear_pto,
            &mut machine.economy_pto,
            &mut machine.mid_pto,
        ];
        for pto in ptos.into_iter().flatten() {
            pto.tested_kw = None;
        }
    }
    for kit in &mut entry.kits {
        kit.pto_rpm = None;
        for gear in &mut kit.drive {
            gear.ratio = 1.0;
            gear.efficiency = None;
            gear.angle_deg = None;
        }
        if let Some(hoses) = &mut kit.hoses {
            hoses.couplers = hoses.couplers.min(4.0);
            hoses.coupler_bar = None;
            hoses.coupler_l_min = Some(106.0);
            hoses.length_m = hoses.length_m.min(6.0);
        }
        if let Some(pump) = &mut kit.pump {
            pump.valve_bar = None;
            pump.highest_rpm = pump.highest_rpm.max(2000.0);
            pump.suction_bore_mm = Some(40.0);
            pump.suction_length_m = Some(0.6);
        }
    }
    entry
}

/// What each route of a random yard would take.
struct Answer {
    machine: Machine,
    implement: Implement,
    kits: Vec<Kit>,
    settings: Settings,
    wish: Wish,
    all: Vec<Wanted>,
}

/// One machine with one implement of each random yard, worked out once for all tests.
fn answers() -> &'static [Answer] {
    static ANSWERS: OnceLock<Vec<Answer>> = OnceLock::new();
    ANSWERS.get_or_init(|| {
        let answers = RefCell::new(Vec::new());
        let wish = proptest::sample::select(&Wish::ALL[..]);
        let random = (yard(), settings(), draws(), wish, 0..4_usize);
        let result = TestRunner::new(crate::cases(240)).run(
            &random,
            |(entry, turned, draws, wish, place)| {
                let yard = loaded(&sensible(entry, draws));
                let (machine, implement) = pairs(&yard).nth(place).expect("four pairs");
                let settings = turned.on(machine, implement);
                let all = wanted(machine, implement, &yard.kits, &settings, wish);
                answers.borrow_mut().push(Answer {
                    machine: machine.clone(),
                    implement: implement.clone(),
                    settings,
                    wish,
                    all: all.expect("settings within their ranges"),
                    kits: yard.kits,
                });
                Ok(())
            },
        );
        result.expect("nothing is asserted");
        answers.into_inner()
    })
}

/// Shows each route's answer, and asks that each kind of answer was seen some times.
fn each_wanted(
    mut holds: impl FnMut(Tried<'_>, &Wanted, &Seen) -> Result<(), TestCaseError>,
    at_least: &[&'static str],
) {
    let seen = Seen::default();
    for answer in answers() {
        for wanted in &answer.all {
            let tried = Tried {
                route: wanted.route,
                machine: &answer.machine,
                implement: &answer.implement,
                kits: &answer.kits,
                settings: answer.settings,
                wish: answer.wish,
            };
            if let Err(error) = holds(tried, wanted, &seen) {
                panic!("{error}\n{:?}\n{wanted:?}", answer.settings);
            }
        }
    }
    for what in at_least {
        let times = seen.borrow().get(what).copied().unwrap_or(0);
        assert!(times >= 3, "{what}: only {times} times in {seen:?}");
    }
}

#[test]
fn the_lowest_engine_speed_does_it_and_a_lower_one_does_not() {
    each_wanted(
        |tried, wanted, seen| {
            let Some(speed) = wanted.engine_speed else {
                return Ok(());
            };
            saw(seen, "speed");
            tried.at(speed).answers()?;
            // Looked at in fortieths of the range: only just below nothing is missed.
            let lower = speed * 0.999;
            if lower >= tried.machine.engine.lowest {
                prop_assert!(!tried.at(lower).does(), "{}", tried.route.word());
                saw(seen, "not the lowest");
            }
            prop_assert_eq!(
                wanted.applied(tried.settings).map(|it| it.engine_speed),
                Some(Some(speed))
            );
            Ok(())
        },
        &["speed", "not the lowest"],
    );
}

#[test]
fn flow_and_relief_do_it_and_less_of_either_does_not() {
    each_wanted(
        |tried, wanted, seen| {
            let Some(turned) = wanted.turned else {
                return Ok(());
            };
            let settings = turned.applied(tried.route, tried.settings);
            let tried = Tried { settings, ..tried };
            tried.answers()?;
            less_oil_does_not(tried, &turned, seen)
        },
        &["less flow", "less relief"],
    );
}

fn less_oil_does_not(tried: Tried<'_>, turned: &Turned, seen: &Seen) -> Result<(), TestCaseError> {
    let name = tried.route.word();
    // The function that is searched is taken as monotone: far less doesn't either.
    for part in [LESS, 0.9, 0.7, 0.4] {
        let flow = turned.flow * part;
        if flow >= Flow::litres_per_minute(FLOW_LIMITS.0) {
            saw(seen, "less flow");
            let less = tried.with_oil(|oil| oil.flow = Some(flow));
            prop_assert!(!less.does(), "{name}: {part} of the flow of {turned:?}");
        }
        let relief = turned.relief * part;
        if relief >= Pressure::bar(RELIEF_LIMITS.0) {
            saw(seen, "less relief");
            let less = tried.with_oil(|oil| oil.relief = Some(relief));
            prop_assert!(!less.does(), "{name}: {part} of the relief of {turned:?}");
        }
    }
    Ok(())
}

#[test]
fn an_outfit_does_it_and_the_next_smaller_does_not() {
    each_wanted(
        |tried, wanted, seen| {
            let Ok(outfit) = &wanted.outfit else {
                return Ok(());
            };
            let tried = Tried {
                kits: std::slice::from_ref(&outfit.kit),
                settings: outfit.settings,
                ..tried
            };
            let run = tried.answers()?;
            let narrow = run.warnings.iter().any(is_narrow);
            prop_assert!(!narrow, "{}: {:?}", tried.route.word(), run.warnings);
            if tried.route.needs_oil() {
                smaller_oil_does_not(tried, outfit, seen)
            } else {
                weaker_shafts_do_not(tried, outfit, seen)
            }
        },
        &[
            "less flow",
            "less relief",
            "smaller pump",
            "narrower supply",
            "narrower back",
            "narrower suction",
            "weaker shaft",
        ],
    );
}

fn smaller_oil_does_not(
    tried: Tried<'_>,
    outfit: &Outfit,
    seen: &Seen,
) -> Result<(), TestCaseError> {
    let oil = match tried.route {
        RouteId::PumpPack => outfit.settings.pack,
        _ => outfit.settings.own,
    };
    let relief = oil.relief.expect("a relief pressure");
    let changed = |change: &dyn Fn(&mut Kit)| {
        let mut kit = outfit.kit.clone();
        change(&mut kit);
        let kits = [kit];
        let tried = Tried {
            kits: &kits,
            ..tried
        };
        (tried.does(), tried.run())
    };
    match oil.flow {
        Some(flow) => less_oil_does_not(
            tried,
            &Turned {
                engine_speed: outfit.settings.engine_speed.expect("a speed"),
                flow,
                relief,
            },
            seen,
        )?,
        None => {
            let size = outfit.kit.pump.as_ref().expect("a pump").displacement;
            if let Some(smaller) = sizes::pumps().rev().find(|it| *it < size) {
                saw(seen, "smaller pump");
                let (does, _) = changed(&|kit| {
                    if let Some(pump) = &mut kit.pump {
                        pump.displacement = smaller;
                    }
                });
                prop_assert!(!does, "{smaller:?} would do");
            }
        }
    }
    let lines = outfit.lines.expect("lines");
    let all = [
        (Line::Supply, "narrower supply", Some(lines.supply)),
        (Line::Back, "narrower back", Some(lines.back)),
        (Line::Suction, "narrower suction", lines.suction),
    ];
    for (line, name, bore) in all {
        let Some(narrower) = bore.and_then(|bore| sizes::bores().rev().find(|it| *it < bore))
        else {
            continue;
        };
        if line == Line::Suction
            && outfit
                .kit
                .pump
                .as_ref()
                .is_none_or(|it| it.suction.is_none())
        {
            continue;
        }
        saw(seen, name);
        let (does, run) = changed(&|kit| set_bore(kit, line, narrower));
        let warns = run.is_some_and(|run| {
            run.warnings.iter().any(|it| {
                matches!(it, Warning::LineTooNarrow { line: at, .. } if *at == line)
                    || matches!(it, Warning::SuctionTooLow { .. })
            })
        });
        prop_assert!(!does || warns, "{name}: {narrower:?} would do");
    }
    Ok(())
}

fn set_bore(kit: &mut Kit, line: Line, bore: Length) {
    match line {
        Line::Supply => kit.hoses.as_mut().expect("hoses").supply.bore = bore,
        Line::Back => kit.hoses.as_mut().expect("hoses").back.bore = bore,
        Line::Suction => {
            let pump = kit.pump.as_mut().expect("a pump");
            pump.suction.as_mut().expect("a line").line.bore = bore;
        }
    }
}

fn weaker_shafts_do_not(
    tried: Tried<'_>,
    outfit: &Outfit,
    seen: &Seen,
) -> Result<(), TestCaseError> {
    for place in 0..outfit.kit.drive.len() {
        let mut kit = outfit.kit.clone();
        let (rating, limit) = kit.drive[place].rating.expect("a rating");
        let less = Spread::exact(rating.likely * LESS, Source::Own);
        kit.drive[place].rating = Some((less, limit));
        let kits = [kit];
        let weaker = Tried {
            kits: &kits,
            ..tried
        };
        saw(seen, "weaker shaft");
        prop_assert!(!weaker.does(), "step {place} of {}", tried.route.word());
    }
    Ok(())
}

#[test]
fn just_the_engine_that_it_takes_does_it_and_a_weaker_one_does_not() {
    each_wanted(
        |tried, wanted, seen| {
            let Ok(outfit) = &wanted.outfit else {
                return Ok(());
            };
            let speed = outfit.settings.engine_speed.expect("a speed");
            let has = tried.settings.net_at(tried.machine, speed).likely;
            prop_assert!(outfit.engine <= has * (1.0 + 1e-9));
            let with = |part: f64| {
                let mut machine = tried.machine.clone();
                machine.engine.net = machine.engine.net.map(|power| power * part);
                let set = outfit.settings.engine_power.map(|power| power * part);
                let tried = Tried {
                    machine: &machine,
                    kits: std::slice::from_ref(&outfit.kit),
                    settings: Settings {
                        engine_power: set,
                        ..outfit.settings
                    },
                    ..tried
                };
                let run = tried.run().expect("it fits");
                run.verdict.ratio / tried.wish.standing().begins_at()
            };
            let just = outfit.engine / has;
            saw(seen, "engine");
            // No PTO of these yards has a tested power, which would be another share of the engine's.
            let [enough, less] = [just * (1.0 + 1e-6), just * LESS].map(with);
            prop_assert!(enough >= 1.0 - 1e-9, "{}: {enough}", tried.route.word());
            prop_assert!(less < 1.0 - 1e-3, "{}: {less}", tried.route.word());
            Ok(())
        },
        &["engine"],
    );
}

#[test]
fn where_something_is_in_the_way_no_setting_does_it() {
    let tries = RefCell::new(TestRunner::new(crate::cases(1)));
    each_wanted(
        |tried, wanted, seen| {
            let Err(hindrances) = &wanted.outfit else {
                return Ok(());
            };
            prop_assert!(!hindrances.is_empty());
            if hindrances[..] != [Hindrance::NoSize] {
                prop_assert_eq!(wanted.applied(tried.settings), None);
            }
            let misfit = hindrances
                .iter()
                .any(|it| matches!(it, Hindrance::NoFit(_)));
            for it in hindrances {
                saw(
                    seen,
                    match it {
                        Hindrance::NoFit(_) => "no fit",
                        Hindrance::EngineTooWeak { .. } => "engine",
                        Hindrance::ShaftTooWeak { .. } => "shaft",
                        Hindrance::MotorFlow { .. } => "motor's flow",
                        Hindrance::MotorPressure { .. } => "motor's pressure",
                        Hindrance::NoSize => "no size",
                    },
                );
            }
            if misfit || wanted.applied(tried.settings).is_some() {
                return Ok(());
            }
            let draws = (0.0..=1.0_f64, 0.0..=1.0_f64, 0.0..=1.0_f64);
            for _ in 0..8 {
                let tree = draws.new_tree(&mut tries.borrow_mut()).expect("numbers");
                let (speed, flow, relief) = tree.current();
                let engine = &tried.machine.engine;
                let other = tried
                    .at(engine.lowest * (1.0 - speed) + engine.rated * speed)
                    .with_oil(|oil| {
                        let (min, max) = FLOW_LIMITS;
                        let flow = min * libm::pow(max / min, flow);
                        oil.flow = Some(Flow::litres_per_minute(flow));
                        let (min, max) = RELIEF_LIMITS;
                        oil.relief = Some(Pressure::bar(min + (max - min) * relief));
                    });
                prop_assert!(
                    !other.nearly_does(),
                    "{}: {hindrances:?}, and yet {:?}",
                    tried.route.word(),
                    other.settings
                );
            }
            Ok(())
        },
        &[
            "no fit",
            "engine",
            "shaft",
            "motor's flow",
            "motor's pressure",
        ],
    );
}
