//! Published figures, rules of the trade and inputs to refuse: `tests/cases` against the core.

mod calculation;
mod case;
mod check;
mod files;
mod inputs;
mod judge;
mod soundness;

/// The fewest cases that there must be: a file that went missing is a failure.
const FEWEST: usize = 255;

/// Whether there are as many cases as there must be.
fn are_enough(cases: &[case::Case]) -> bool {
    cases.len() >= FEWEST
}

#[test]
fn every_case_holds() {
    let failures: Vec<_> = files::all().iter().flat_map(judge::failures).collect();
    assert!(failures.is_empty(), "{}", failures.join("\n"));
}

#[test]
fn there_are_enough_cases() {
    let cases = files::all();
    assert!(are_enough(&cases), "{} of {FEWEST}", cases.len());
}
