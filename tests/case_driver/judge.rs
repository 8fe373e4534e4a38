//! Runs a case and holds what comes out against what is known.

use crate::calculation::Outcome;
use crate::case::{Case, Refused};
use crate::check::{Band, Tolerance};
use crate::inputs::{Input, Point, Problem};
use farend_core::fault::{Fault, Rule};
use farend_tests::quantity::Quantity;
use farend_tests::units::read;

/// What is known of a result.
#[derive(Clone, Copy, Debug)]
pub enum Wanted {
    /// A number and how far from it.
    Number(f64, Tolerance),
    /// A band.
    Band(Band),
}

/// A result beside what is known of it, both in the case's unit.
#[derive(Clone, Debug)]
pub struct Reading {
    /// The case, the result's name and the point.
    pub what: String,
    /// What came out.
    pub actual: f64,
    /// What should have.
    pub wanted: Wanted,
}

impl Reading {
    /// Whether it is as it should be.
    pub fn holds(&self) -> bool {
        match self.wanted {
            Wanted::Number(expected, tolerance) => tolerance.admits(expected, self.actual),
            Wanted::Band(band) => band.admits(self.actual),
        }
    }
}

/// All readings of a case, one for each result and point. A case of refused input has none.
///
/// # Errors
/// What is wrong with the case itself, or with what was refused.
pub fn readings(case: &Case) -> Result<Vec<Reading>, Problem> {
    let mut readings = Vec::new();
    for place in 0..points(case)? {
        let point = Point::new(&case.inputs, place);
        let outcome = (case.calculation.calculate)(&point)?;
        let left_over = point.left_over();
        if !left_over.is_empty() {
            return Err(format!("{:?} takes no {left_over:?}", case.calculation));
        }
        match outcome {
            Outcome::Refused(faults) => as_refused(&case.refused, &faults)?,
            Outcome::Results(_) if !case.refused.is_empty() => {
                return Err("was taken, but must be refused".to_owned());
            }
            Outcome::Results(results) => readings.extend(of_point(case, place, &results)?),
        }
    }
    Ok(readings)
}

/// What is wrong with a case and its results: nothing where it holds.
pub fn failures(case: &Case) -> Vec<String> {
    match readings(case) {
        Err(problem) => vec![format!("{}: {problem}", case.id)],
        Ok(readings) => readings
            .iter()
            .filter(|reading| !reading.holds())
            .map(|reading| {
                format!(
                    "{}: got {}, wanted {:?} ({})",
                    reading.what, reading.actual, reading.wanted, case.source
                )
            })
            .collect(),
    }
}

fn of_point(
    case: &Case,
    place: usize,
    results: &[(&'static str, Quantity)],
) -> Result<Vec<Reading>, Problem> {
    let actual = |name: &str, unit: &str| {
        let (_, quantity) = results
            .iter()
            .find(|(known, _)| *known == name)
            .ok_or_else(|| format!("{:?} has no result {name}", case.calculation))?;
        read(*quantity, unit).ok_or_else(|| format!("{name} can't be read in {unit:?}"))
    };
    let reading = |name: &str, unit: &str, wanted| {
        actual(name, unit).map(|actual| Reading {
            what: format!("{} {name} at point {place}", case.id),
            actual,
            wanted,
        })
    };
    let numbers = case.expected.iter().map(|expected| {
        let number = expected.value.at(place).ok_or("too few values")?;
        let tolerance = case.tolerance.ok_or("the tolerance is missing")?;
        let wanted = Wanted::Number(number, tolerance);
        reading(&expected.name, &expected.unit, wanted)
    });
    let bands = case
        .within
        .iter()
        .map(|within| reading(&within.name, &within.unit, Wanted::Band(within.band())));
    numbers.chain(bands).collect()
}

/// How many points a case has: all its lists must be of one length.
fn points(case: &Case) -> Result<usize, Problem> {
    let inputs = case.inputs.values().filter_map(|input| match input {
        Input::Numbers(numbers) => Some(numbers.len()),
        Input::Number(_) | Input::Text(_) => None,
    });
    let expected = case.expected.iter().filter_map(|it| it.value.points());
    let mut lengths: Vec<_> = inputs.chain(expected).collect();
    lengths.sort_unstable();
    lengths.dedup();
    match lengths.as_slice() {
        [] => Ok(1),
        [0] => Err("a list is empty".to_owned()),
        [one] => Ok(*one),
        several => Err(format!("lists of different lengths: {several:?}")),
    }
}

fn as_refused(wanted: &[Refused], faults: &[Fault]) -> Result<(), Problem> {
    let is = |fault: &Fault, wanted: &Refused| {
        let rule = match &fault.rule {
            Rule::Within { min, max, unit } => {
                *min == wanted.min && *max == wanted.max && *unit == wanted.unit
            }
            _ => false,
        };
        rule && fault.path == wanted.path
            && fault.found == wanted.found
            && !fault.hint.to_string().is_empty()
    };
    let all_found = wanted
        .iter()
        .all(|it| faults.iter().any(|fault| is(fault, it)));
    if all_found && wanted.len() == faults.len() {
        Ok(())
    } else {
        Err(format!(
            "was refused for {faults:?}, but must be for {wanted:?}"
        ))
    }
}
