//! Sheets, and what comes of them.

use farend_core::claims::{Answer, Check, Finding, Sheet, Weighed, Weight, weigh};
use farend_core::quantity::{AngularSpeed, Flow, Power, Pressure};
use farend_tests::parts::Parts;

/// A flow in L/min.
pub fn litres(number: f64) -> Option<Flow> {
    Some(Flow::litres_per_minute(number))
}

/// A pressure in bar.
pub fn bar(number: f64) -> Option<Pressure> {
    Some(Pressure::bar(number))
}

/// A power in kW.
pub fn kilowatts(number: f64) -> Option<Power> {
    Some(Power::kilowatts(number))
}

/// A speed in rpm.
pub fn rpm(number: f64) -> Option<AngularSpeed> {
    Some(AngularSpeed::rpm(number))
}

/// A machine of the demo, with an implement and all kits.
pub fn tractor(machine: &str) -> Parts {
    Parts::of(machine, "snow-thrower-150")
}

/// What comes of a sheet for a machine.
pub fn weighed(parts: &Parts, sheet: Sheet) -> Weighed {
    weigh(&sheet, &parts.machine, &parts.settings).expect("figures within their ranges")
}

/// The answer of one check.
pub fn answer(parts: &Parts, sheet: Sheet, check: Check) -> Answer {
    let answers = weighed(parts, sheet).answers;
    let found = answers.into_iter().find(|(made, _)| *made == check);
    found.expect("every check has an answer").1
}

/// The finding of one check that was made.
pub fn found(parts: &Parts, sheet: Sheet, check: Check) -> (Weight, Finding) {
    match answer(parts, sheet, check) {
        Answer::Found(weight, finding) => (weight, finding),
        other => panic!("{check:?}: {other:?}"),
    }
}

/// What it weighs.
pub fn weight(parts: &Parts, sheet: Sheet, check: Check) -> Weight {
    found(parts, sheet, check).0
}

/// Within the last digits.
pub fn is_near(actual: f64, expected: f64) -> bool {
    (actual - expected).abs() <= 1e-9 * expected.abs()
}
