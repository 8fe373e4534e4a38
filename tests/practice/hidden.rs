//! A case tells nothing of its answer.

use farend_core::practice::{Answer, Case, Draw, Kind, Truth, draw, reveal};
use farend_core::spread::Spread;
use farend_tests::demo;
use serde_json::Value;

const SEEDS: u32 = 60;

/// Every number in a text of JSON.
fn numbers(value: &Value, found: &mut Vec<f64>) {
    match value {
        Value::Number(number) => found.extend(number.as_f64()),
        Value::Array(items) => items.iter().for_each(|it| numbers(it, found)),
        Value::Object(group) => group.values().for_each(|it| numbers(it, found)),
        _ => {}
    }
}

/// Every number of an answer that would give it away, in SI.
fn secrets(answer: &Answer) -> Vec<f64> {
    let mut secrets = Vec::new();
    if let Truth::Sheet { .. } = answer.truth {
        // Which check it doesn't stand; its own figures are the question.
        return secrets;
    }
    let mut powers = |spread: Spread<_>| {
        let spread = spread.map(farend_core::quantity::Power::to_si);
        secrets.extend([spread.low, spread.likely, spread.high]);
    };
    if let Truth::Amount { delivered, .. } = &answer.truth {
        powers(*delivered);
    }
    for run in answer.comparison.routes.iter().filter_map(|it| it.run()) {
        powers(run.delivered);
    }
    let mut runs: Vec<_> = answer
        .comparison
        .routes
        .iter()
        .filter_map(|it| it.run())
        .collect();
    if let Truth::Wanted(tried) = &answer.truth {
        runs.extend(tried.iter().map(|it| &it.run));
    }
    for run in runs {
        secrets.extend([run.verdict.ratio, run.rotor.to_si()]);
        for passage in &run.ledger.passages {
            secrets.extend([passage.gives.power.to_si(), passage.loss.to_si()]);
        }
    }
    if let Truth::Amount { traps, .. } = &answer.truth {
        secrets.extend(traps.iter().map(|trap| trap.gives.to_si()));
    }
    // Nothing and one of something are everywhere.
    secrets.retain(|number| *number != 0.0 && *number != 1.0);
    secrets
}

fn cases(kind: Kind) -> Vec<(Case, Answer)> {
    let yard = demo();
    let of = |seed| {
        let case = draw(&yard, Draw { kind, seed }).expect("a case");
        let answer = reveal(&yard, &case).expect("an answer");
        (case, answer)
    };
    (0..SEEDS).map(of).collect()
}

#[test]
fn no_number_of_an_answer_stands_in_its_case() {
    for kind in Kind::ALL {
        for (case, answer) in cases(*kind) {
            let mut written = Vec::new();
            numbers(
                &serde_json::to_value(&case).expect("plain fields"),
                &mut written,
            );
            assert!(
                written.contains(&case.draw.seed.into()),
                "what is looked through is all"
            );
            for secret in secrets(&answer) {
                // A millionth: to all digits that are ever shown.
                let same = |it: &&f64| (*it / secret - 1.0).abs() < 1e-6;
                let told = written.iter().find(same);
                assert_eq!(told, None, "{case:?}");
            }
        }
    }
}

/// What is asked alike teaches alike and offers alike, whatever the answer: neither the idea nor
/// what there is to choose from gives it away.
#[test]
fn neither_idea_nor_choices_tell_the_answer() {
    use farend_core::practice::Question::{Amount, Fit, Limit, Route, Sheet, Wanted};
    for kind in Kind::ALL {
        let mut alike = std::collections::BTreeMap::new();
        for (case, _) in cases(*kind) {
            let (asked, offered) = match &case.question {
                Route { .. } => (String::new(), String::new()),
                Amount { route, .. } => (route.word().into(), String::new()),
                Limit { route, choices, .. } => (route.word().into(), format!("{choices:?}")),
                Sheet { choices, .. } => (case.machine.clone(), format!("{choices:?}")),
                Fit { choices, .. } => (String::new(), format!("{choices:?}")),
                // Choices of changes are drawn; of those their order must be that of their kinds.
                Wanted { choices, .. } => {
                    let place = |it: &farend_core::practice::Change| {
                        use farend_core::practice::Change::{EngineSpeed, Flow, Hoses, Relief};
                        match it {
                            Flow(it) => (0, it.to_si()),
                            Relief(it) => (1, it.to_si()),
                            EngineSpeed(it) => (2, it.to_si()),
                            Hoses(it) => (3, it.to_si()),
                        }
                    };
                    assert!(choices.is_sorted_by_key(place), "{choices:?}");
                    (String::new(), String::new())
                }
            };
            let told = (case.idea, offered);
            let first = alike.entry(asked).or_insert_with(|| told.clone());
            assert_eq!(*first, told);
        }
    }
}
