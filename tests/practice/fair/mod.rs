//! Every case that is drawn is fair: its answer found again without the generator, at the corners of
//! what isn't known exactly.

mod power;
mod sheets;
mod wanted;

use farend_core::claims::Check as Claim;
use farend_core::compare::{Comparison, Outcome, RouteResult, Run, compare, evaluate};
use farend_core::drive::Limit;
use farend_core::fit::{Check, Item, Judgement, Look};
use farend_core::implement::Implement;
use farend_core::kit::Kit;
use farend_core::machine::Machine;
use farend_core::practice::{
    Answer, Case, Draw, Fits, Guess, Idea, Kind, Misconception, Question, draw, judge, reveal,
};
use farend_core::route::RouteId;
use farend_core::route::part::{Hookup, NoFit};
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
}
