//! Collects faults.

use crate::fault::{Expected, Fault, Rule};
use crate::hint::{FaultHint, Hint};
use crate::settings::LAST_DIGITS;
use serde_json::{Error, Value};

/// The faults found so far.
#[derive(Debug, Default)]
pub struct Report {
    faults: Vec<Fault>,
}

impl Report {
    /// Notes a fault.
    pub fn add(
        &mut self,
        path: impl Into<String>,
        found: impl Into<String>,
        rule: Rule,
        hint: impl Into<FaultHint>,
    ) {
        self.faults.push(Fault::new(path, found, rule, hint));
    }

    /// Notes a number that is there and lies outside two limits, or isn't one.
    pub fn within(
        &mut self,
        path: &str,
        value: Option<f64>,
        (min, max): (f64, f64),
        unit: &'static str,
        hint: Hint,
    ) {
        let rounding = max.abs().max(min.abs()) * LAST_DIGITS;
        if let Some(value) = value
            && !(min - rounding..=max + rounding).contains(&value)
        {
            let rule = Rule::Within { min, max, unit };
            self.add(path, value.to_string(), rule, hint);
        }
    }

    /// Notes a value of the wrong type.
    pub fn wrong_type(&mut self, path: &str, value: &Value, expected: Expected, hint: Hint) {
        self.add(path, value.to_string(), Rule::Type(expected), hint);
    }

    /// Notes what the reader of JSON says: all of it, for the place stands at its end.
    pub fn reader_says(&mut self, path: &str, error: &Error, rule: Rule, hint: Hint) {
        self.faults.push(Fault {
            found: error.to_string(),
            ..Fault::new(path, "", rule, hint)
        });
    }

    /// Nothing found?
    pub fn is_empty(&self) -> bool {
        self.faults.is_empty()
    }

    /// All that was found.
    pub fn into_faults(self) -> Vec<Fault> {
        self.faults
    }
}
