//! Every case that is drawn is fair: its answer found again without the generator, at the corners of
//! what isn't known exactly.

use farend_core::claims::Check as Claim;
use farend_core::compare::{Comparison, Outcome, RouteResult, Run, compare, evaluate};
use farend_core::drive::{Limit, Rate};
use farend_core::fit::{Check, Item, Judgement, Look};
use farend_core::implement::Implement;
use farend_core::kit::Kit;
use farend_core::machine::{Machine, SteeringShare};
use farend_core::practice::{
    Answer, Case, Change, Draw, Fits, Guess, Idea, Kind, Misconception, Question, Truth, draw,
    judge, reveal,
};
use farend_core::quantity::{Flow, Power};
use farend_core::route::RouteId;
use farend_core::route::part::{Hookup, NoFit, assemble};
use farend_core::settings::Settings;
use farend_core::spread::{Corner, Scenario};
use farend_core::units::{Quantity, UnitSystem};
use farend_core::yard::Yard;
use farend_tests::{demo, load};
use std::collections::{BTreeMap, BTreeSet};
use std::thread;

/// How many cases have something.
type Counts = BTreeMap<String, u32>;

/// Draws cases of all kinds in turn and looks at each.
fn all_are_fair(yard: &Yard, seeds: std::ops::Range<u32>) -> Counts {
    let halves = [0, 1].map(|half| seeds.clone().filter(move |seed| seed / 6 % 2 == half));
    let counts = thread::scope(|scope| {
        let threads = halves.map(|seeds| {
            scope.spawn(move || {
                let mut counts = Counts::new();
                for seed in seeds {
                    let kind = Kind::ALL[seed as usize % Kind::ALL.len()];
                    let case = draw(yard, Draw { kind, seed });
                    let case = case.unwrap_or_else(|| panic!("{kind:?} {seed}: no case"));
                    for what in fair(yard, &case) {
                        *counts.entry(what).or_default() += 1;
                    }
                }
                counts
            })
        });
        threads.map(|it| it.join().expect("a thread of this test"))
    });
    counts
        .into_iter()
        .flatten()
        .fold(Counts::new(), |mut all, (what, count)| {
            *all.entry(what).or_default() += count;
            all
        })
}

#[test]
fn ten_thousand_cases_of_the_demo_yard_are_fair() {
    const CASES: u32 = 10_000;
    let counts = all_are_fair(&demo(), 0..CASES);
    for (what, count) in &counts {
        println!("{count:6} {what}");
    }
    let kinds = Kind::ALL.iter().map(|kind| format!("kind {}", kind.word()));
    let ideas = Idea::ALL.iter().map(|idea| format!("idea {}", idea.word()));
    for what in kinds.chain(ideas) {
        let count = counts.get(&what).copied().unwrap_or(0);
        assert!(count * 20 >= CASES, "{what}: {count} of {CASES}");
    }
    // Nor is an answer so rare that it may be left out of account.
    let limits = [
        Limit::Engine,
        Limit::ShaftRating,
        Limit::Flow,
        Limit::Pressure,
        Limit::Implement,
    ];
    let limits = limits.map(|limit| format!("limit: {}", limit.word()));
    let fits = Fits::ALL.iter().map(|fits| format!("fit: {}", fits.word()));
    let flaws = [
        Claim::HydraulicPower,
        Claim::EnginePower,
        Claim::Steering,
        Claim::PtoPower,
    ];
    let flaws = flaws.map(|flaw| format!("sheet: {}", flaw.word()));
    let changes = ["flow", "relief", "engine speed"].map(|change| format!("wanted: {change}"));
    let answers = limits.into_iter().chain(fits).chain(flaws).chain(changes);
    for what in answers.chain(["sheet: nothing".into()]) {
        let count = counts.get(&what).copied().unwrap_or(0);
        assert!(count * 20 * 6 >= CASES, "{what}: {count} of {CASES}");
    }
    // Every wrong idea can be shown.
    for idea in Misconception::ALL {
        let what = format!("shows {}", idea.word());
        assert!(counts.contains_key(&what), "{what}: never");
    }
}

#[test]
fn cases_of_a_large_yard_are_fair() {
    let yard = load(&farend_bench::large::large(60, 24, 24, 3));
    all_are_fair(&yard, 0..2_000);
}

/// A case with all that it's about.
struct Seen<'a> {
    case: &'a Case,
    machine: &'a Machine,
    implement: &'a Implement,
    yard: &'a Yard,
    comparison: Comparison,
    answer: Answer,
}

/// Looks at a case, and says what it has.
fn fair(yard: &Yard, case: &Case) -> Vec<String> {
    let machine = yard.machine(&case.machine).expect("of this yard");
    let implement = yard.implement(&case.implement).expect("of this yard");
    let comparison = compare(machine, implement, &yard.kits, &case.settings);
    let seen = Seen {
        case,
        machine,
        implement,
        yard,
        comparison: comparison.unwrap_or_else(|faults| panic!("{case:?}: {faults:?}")),
        answer: reveal(yard, case).unwrap_or_else(|| panic!("{case:?}: no answer")),
    };
    assert_eq!(seen.comparison, seen.answer.comparison, "{case:?}");
    let mut counts = match &case.question {
        Question::Route { routes } => seen.route(routes),
        Question::Amount { route, kit } => seen.amount(*route, kit),
        Question::Limit {
            route,
            kit,
            choices,
        } => seen.limit(*route, kit, choices),
        Question::Sheet { choices, .. } => seen.sheet(choices),
        Question::Fit {
            route,
            kit,
            choices,
        } => seen.fit(*route, kit, choices),
        Question::Wanted {
            route,
            kit,
            choices,
            ..
        } => seen.wanted(*route, kit, choices),
    };
    counts.push(format!("kind {}", case.draw.kind.word()));
    counts.push(format!("idea {}", case.idea.word()));
    counts
}

/// Nothing stands there twice.
fn distinct<T: Ord>(things: impl IntoIterator<Item = T>) {
    let mut seen = BTreeSet::new();
    assert!(things.into_iter().all(|it| seen.insert(it)), "twice");
}

/// The choice at which a guess is right: just one.
fn right_one(case: &Case, answer: &Answer, choices: usize) -> (usize, Vec<Misconception>) {
    let judged: Vec<_> = (0..choices)
        .map(|place| judge(case, answer, &Guess::Choice(place)))
        .collect();
    let right: Vec<_> = (0..choices).filter(|place| judged[*place].right).collect();
    assert_eq!(right.len(), 1, "{case:?}: {right:?}");
    let shown = judged.iter().filter_map(|it| it.misconception).collect();
    (right[0], shown)
}

fn shows(misconceptions: impl IntoIterator<Item = Misconception>) -> Vec<String> {
    let misconceptions = misconceptions.into_iter();
    let shown: BTreeSet<_> = misconceptions
        .map(|it| format!("shows {}", it.word()))
        .collect();
    shown.into_iter().collect()
}

impl Seen<'_> {
    fn kit(&self, id: &str) -> &Kit {
        self.yard.kit(id).expect("of this yard")
    }

    fn hookup<'b>(&'b self, kit: &'b Kit) -> Hookup<'b> {
        Hookup {
            machine: self.machine,
            implement: self.implement,
            kit: Some(kit),
            settings: &self.case.settings,
        }
    }

    fn with(&self, route: RouteId, kit: &Kit) -> Outcome {
        let kits = core::slice::from_ref(kit);
        evaluate(
            route,
            self.machine,
            self.implement,
            kits,
            &self.case.settings,
        )
    }

    /// Every item of a route with a kit that it runs with but how warm oil gets, which is never a
    /// stop.
    fn items(&self, route: RouteId, kit: &Kit, run: &Run) -> Vec<Item> {
        let look = Look {
            route,
            machine: self.machine,
            implement: self.implement,
            settings: &self.case.settings,
            kit,
            run: Some(run),
            heat: None,
        };
        look.items()
    }

    /// Whether a route can't be hooked up.
    fn cant(&self, result: &RouteResult) -> bool {
        match &result.outcome {
            Outcome::NoFit(_) => true,
            Outcome::Runs(run) => {
                let items = self.items(result.route, self.kit(&run.kit), run);
                items.iter().any(|it| it.judgement == Judgement::Stop)
            }
        }
    }

    /// The run of a route with a kit, which is that of the comparison; nothing stops it.
    fn run(&self, route: RouteId, kit: &str) -> &Run {
        let result = self.comparison.route(route).expect("all routes are there");
        let run = result.run().expect("a route that runs");
        assert_eq!(run.kit, kit);
        assert!(!self.cant(result), "{:?}", self.case);
        assert_eq!(run.ledger.stall, None);
        run
    }

    fn route(&self, routes: &[RouteId]) -> Vec<String> {
        distinct(routes);
        assert!((3..=4).contains(&routes.len()), "{routes:?}");
        let result = |route: &RouteId| self.comparison.route(*route).expect("all are there");
        let (cant, mut can): (Vec<_>, Vec<_>) =
            (routes.iter().copied()).partition(|route| self.cant(result(route)));
        assert!(cant.len() <= 1, "{cant:?}");
        for route in &cant {
            if let Outcome::NoFit(reasons) = &result(route).outcome {
                let kind = |it: &NoFit| matches!(it, NoFit::WrongKind(_));
                assert!(
                    !reasons.iter().any(kind),
                    "a trap that is none: {:?}",
                    self.case
                );
            }
        }
        let delivered = |route: &RouteId| result(route).run().expect("it runs").delivered;
        can.sort_by(|a, b| {
            delivered(b)
                .likely
                .partial_cmp(&delivered(a).likely)
                .expect("numbers")
        });
        for pair in can.windows(2) {
            let (more, less) = (delivered(&pair[0]), delivered(&pair[1]));
            assert!(more.low > less.high, "{:?}: {pair:?}", self.case);
        }
        let truth = Truth::Route {
            order: can.clone(),
            cant: cant.clone(),
        };
        assert_eq!(self.answer.truth, truth);
        // The same read backwards is wrong.
        let right = Guess::Order {
            order: can.clone(),
            cant: cant.clone(),
        };
        assert!(judge(self.case, &self.answer, &right).right);
        can.reverse();
        let wrong = Guess::Order {
            order: can,
            cant: cant.clone(),
        };
        let wrong = judge(self.case, &self.answer, &wrong);
        assert!(!wrong.right && wrong.near < 1.0);
        let mut counts = shows(wrong.misconception);
        counts.push(format!("route: {} of {} can't", cant.len(), routes.len()));
        counts
    }

    fn amount(&self, route: RouteId, kit: &str) -> Vec<String> {
        let run = self.run(route, kit);
        let Truth::Amount { delivered, traps } = &self.answer.truth else {
            panic!("{:?}", self.answer.truth);
        };
        assert_eq!(*delivered, run.delivered);
        let [low, likely, high] =
            [delivered.low, delivered.likely, delivered.high].map(Power::to_kilowatts);
        assert!(low > 0.0 && high <= 1.7 * low, "{low} to {high} kW");
        let judged = |kilowatts| {
            judge(
                self.case,
                &self.answer,
                &Guess::Power(Power::kilowatts(kilowatts)),
            )
        };
        assert!(judged(low).right && judged(likely).right && judged(high).right);
        let mut shown = Vec::new();
        for trap in traps {
            let gives = trap.gives.to_kilowatts();
            let beside = 0.049 * likely;
            assert!(
                gives < low - beside || gives > high + beside,
                "{trap:?}: {delivered:?}"
            );
            let it = judged(gives);
            assert!(!it.right);
            if let Some(idea) = it.misconception {
                assert_eq!(idea, trap.misconception);
                shown.push(idea);
            }
        }
        let mut counts = shows(shown);
        counts.push(format!("amount: {} traps", traps.len()));
        counts.push(format!("amount: {}", route.word()));
        counts
    }

    fn limit(&self, route: RouteId, kit: &str, choices: &[Limit]) -> Vec<String> {
        distinct(choices);
        let run = self.run(route, kit);
        assert_eq!(self.answer.truth, Truth::Limit(run.limit));
        let joined = assemble(route.parts(), self.hookup(self.kit(kit))).expect("it runs");
        let need = self.comparison.need;
        let mut random = u64::from(self.case.draw.seed) + 1;
        for corner in 0..48 {
            let mut pinned = joined.clone();
            pinned.visit(&mut |_, _, _, figure| {
                // Knuth's MMIX generator, from memory.
                random = random.wrapping_mul(6_364_136_223_846_793_005);
                random = random.wrapping_add(1_442_695_040_888_963_407);
                figure.pin(match corner {
                    0 => Scenario::Low,
                    1 => Scenario::High,
                    _ => [Scenario::Low, Scenario::High][(random >> 40) as usize % 2],
                });
            });
            let (most, limit) = pinned
                .chain(Corner::LIKELY)
                .most()
                .expect("shafts join shafts");
            assert_eq!(most.stall, None, "{:?}", self.case);
            let Rate::Turning(speed) = most.end.rate else {
                panic!("a rotor turns");
            };
            for need in [need.low, need.likely, need.high] {
                // Where pressure holds the torque, the flow is the limit if speed is the shorter.
                let rated = self.implement.rotor.rated;
                let torque = (most.end.power / speed) / (need / rated);
                let short = speed / rated;
                let is = match limit {
                    Limit::Pressure if short < 1.0 && short < torque => Limit::Flow,
                    other => other,
                };
                assert_eq!(is, run.limit, "{:?} at corner {corner}", self.case);
            }
        }
        let (right, shown) = right_one(self.case, &self.answer, choices.len());
        assert_eq!(choices[right], run.limit);
        let mut counts = shows(shown);
        counts.push(format!("limit: {}", run.limit.word()));
        counts
    }

    /// Whether a claim, the least and the likely, is clearly above what can be, the likely and the
    /// most: by 3 per cent of rounding and five more. What isn't must hold at the likely values.
    fn is_wrong(&self, claims: (f64, f64), can_be: (f64, f64)) -> bool {
        let is_wrong = claims.0 > can_be.1 * 1.03 * 1.049;
        assert!(is_wrong || claims.1 <= can_be.0 * 1.03, "{:?}", self.case);
        is_wrong
    }

    fn sheet(&self, choices: &[Option<Claim>]) -> Vec<String> {
        distinct(choices);
        assert!(choices.len() >= 3);
        let Question::Sheet { sheet, .. } = &self.case.question else {
            panic!("{:?}", self.case);
        };
        let machine = self.machine;
        let circuit = self.case.settings.own_circuit(machine).expect("it has oil");
        let flow = sheet.flow.expect("a flow");
        let pressure = sheet.pressure.expect("a pressure");
        // P = Q·p
        let hydraulic = (pressure * flow).to_kilowatts();
        let claimed = sheet.hydraulic.expect("a power").to_kilowatts();
        let power = self.is_wrong((claimed, claimed), (hydraulic, hydraulic));
        // P = Q·p/(ηv·ηhm) against the engine's net power at that speed; the sheet says net power.
        let at_speed = machine.engine.net_at(circuit.engine_speed).likely;
        let net = sheet.engine.expect("a power") * (at_speed / machine.engine.net.likely);
        let net = net.to_kilowatts();
        let (volumetric, hydro) = (circuit.volumetric, circuit.hydro_mechanical);
        let least = hydraulic / (volumetric.high * hydro.high);
        let likely = hydraulic / (volumetric.likely * hydro.likely);
        let engine = self.is_wrong((least, likely), (net, net));
        // Where steering takes a part of the pump's flow: just that pump's flow is claimed.
        let steering = match circuit.steering {
            SteeringShare::FixedPriority(share) | SteeringShare::Summed(share) if !engine => {
                let claimed = flow.to_litres_per_minute();
                let left = |flow: Flow, share| (flow - share).to_litres_per_minute();
                let most = left(circuit.flow.high, share.low);
                let likely = left(circuit.flow.likely, share.likely);
                self.is_wrong((claimed, claimed), (likely, most))
            }
            _ => false,
        };
        let pto = machine.rear_pto(false).or(machine.mid_pto.as_ref());
        let pto = pto.is_some_and(|pto| {
            let train = pto.train(&machine.engine).efficiency;
            let net = machine.engine.net_at(pto.engine_speed);
            let most = (net.high * train.high).to_kilowatts();
            let likely = (net.likely * train.likely).to_kilowatts();
            let claimed = sheet.pto.expect("a PTO's power").to_kilowatts();
            self.is_wrong((claimed, claimed), (likely, most))
        });
        let found: Vec<_> = [
            (Claim::HydraulicPower, power),
            (Claim::EnginePower, engine),
            (Claim::Steering, steering),
            (Claim::PtoPower, pto),
        ]
        .into_iter()
        .filter_map(|(claim, is_wrong)| is_wrong.then_some(claim))
        .collect();
        assert!(found.len() <= 1, "{found:?}: {:?}", self.case);
        let flaw = found.first().copied();
        let (right, shown) = right_one(self.case, &self.answer, choices.len());
        assert_eq!(choices[right], flaw, "{:?}", self.case);
        let mut counts = shows(shown);
        counts.push(format!("sheet: {}", flaw.map_or("nothing", Claim::word)));
        counts
    }

    fn fit(&self, route: RouteId, kit: &str, choices: &[Fits]) -> Vec<String> {
        assert_eq!(choices, Fits::ALL);
        let kit = self.kit(kit);
        assert!(kit.routes.contains(&route));
        let is = match self.with(route, kit) {
            Outcome::NoFit(reasons) => {
                let kind = |it: &NoFit| matches!(it, NoFit::WrongKind(_));
                assert!(!reasons.iter().any(kind), "{:?}", self.case);
                Fits::Cant
            }
            Outcome::Runs(run) => {
                let items = self.items(route, kit, &run);
                for item in &items {
                    // What is lifted only where the arm is at its best is no answer.
                    if let Check::Lift {
                        mass: Some(mass),
                        lifts: Some(lifts),
                        ..
                    } = item.check
                    {
                        assert!(mass <= lifts.low || mass > lifts.high, "{:?}", self.case);
                    }
                }
                let any = |judgement| items.iter().any(|it| it.judgement == judgement);
                if any(Judgement::Stop) {
                    Fits::Cant
                } else if any(Judgement::Question) {
                    Fits::AskFirst
                } else {
                    Fits::Fits
                }
            }
        };
        let (right, shown) = right_one(self.case, &self.answer, choices.len());
        assert_eq!(choices[right], is);
        assert!(shown.is_empty());
        vec![format!("fit: {}", is.word())]
    }

    fn wanted(&self, route: RouteId, kit: &str, choices: &[Change]) -> Vec<String> {
        assert!((3..=4).contains(&choices.len()));
        let Question::Wanted { wish, .. } = &self.case.question else {
            panic!("{:?}", self.case);
        };
        for units in [UnitSystem::Metric, UnitSystem::Us] {
            distinct(choices.iter().map(|it| shown(*it, units)));
        }
        let now = self.run(route, kit);
        let wished = wish.standing();
        assert!(now.verdict.likely < wished, "{:?}", self.case);
        let mut does = Vec::new();
        for (place, change) in choices.iter().enumerate() {
            let (settings, kit) = made(*change, route, self.case.settings, self.kit(kit));
            let all = compare(self.machine, self.implement, &[kit], &settings);
            let all = all.unwrap_or_else(|faults| panic!("{:?}: {faults:?}", self.case));
            let run = all
                .route(route)
                .and_then(|it| it.run())
                .expect("it still fits");
            let rotor = &self.implement.rotor;
            let ratio = run.verdict.ratio / wished.begins_at();
            let speed = run.rotor / rotor.lowest;
            if run.verdict.likely >= wished {
                assert!(
                    ratio >= 1.049 && speed >= 1.049,
                    "{change:?}: {:?}",
                    self.case
                );
                assert!(run.rotor <= rotor.highest);
                does.push(place);
            } else {
                assert!(
                    ratio <= 0.951 || speed <= 0.951,
                    "{change:?}: {:?}",
                    self.case
                );
            }
        }
        assert_eq!(does.len(), 1, "{:?}", self.case);
        let (right, shown) = right_one(self.case, &self.answer, choices.len());
        assert_eq!(right, does[0]);
        let mut counts = shows(shown);
        let kind = shown_kind(choices[right]);
        counts.push(format!("wanted: {kind}"));
        counts.push(format!("wanted: {} choices", choices.len()));
        counts
    }
}

/// Settings and kit with a change made.
fn made(change: Change, route: RouteId, mut settings: Settings, kit: &Kit) -> (Settings, Kit) {
    let mut kit = kit.clone();
    let oil = match route {
        RouteId::PumpPack => &mut settings.pack,
        _ => &mut settings.own,
    };
    match change {
        Change::Flow(flow) => oil.flow = Some(flow),
        Change::Relief(pressure) => oil.relief = Some(pressure),
        Change::EngineSpeed(speed) => settings.engine_speed = Some(speed),
        Change::Hoses(bore) => {
            let hoses = kit.hoses.as_mut().expect("a kit with hoses");
            hoses.supply.bore = bore;
            hoses.back.bore = bore;
        }
    }
    (settings, kit)
}

fn shown_kind(change: Change) -> &'static str {
    match change {
        Change::Flow(_) => "flow",
        Change::Relief(_) => "relief",
        Change::EngineSpeed(_) => "engine speed",
        Change::Hoses(_) => "hoses",
    }
}

/// A change as it's shown: with no more digits than the page has.
fn shown(change: Change, units: UnitSystem) -> String {
    let (quantity, digits) = match change {
        Change::Flow(flow) => (Quantity::Flow(flow), 1),
        Change::Relief(pressure) => (Quantity::Pressure(pressure), 0),
        Change::EngineSpeed(speed) => (Quantity::Speed(speed), 0),
        Change::Hoses(bore) => (Quantity::Bore(bore), 1),
    };
    let (value, unit) = quantity.shown_in(units);
    format!("{} {value:.digits$} {unit}", shown_kind(change))
}
