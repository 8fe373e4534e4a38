//! Collects faults.

use crate::fault::{Expected, Fault, Rule};
use crate::hint::{FaultHint, Hint};
use crate::settings::LAST_DIGITS;
use serde_json::Value;

/// The faults found so far.
#[derive(Debug, Default)]
pub struct Report {
    faults: Vec<Fault>,
}

impl Report {
    /// Longest part of a value that a fault repeats.
    const LONGEST: usize = 40;

    /// Notes a fault.
    pub fn add(
        &mut self,
        path: impl Into<String>,
        found: impl Into<String>,
        rule: Rule,
        hint: impl Into<FaultHint>,
    ) {
        self.faults.push(Fault {
            path: path.into(),
            found: found.into(),
            rule,
            hint: hint.into(),
        });
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
        self.add(path, Self::shorten(value), Rule::Type(expected), hint);
    }

    /// A value as a fault repeats it.
    pub fn shorten(value: &Value) -> String {
        Self::cut(&value.to_string())
    }

    /// The start of a text that is longer than what a fault repeats.
    pub fn cut(text: &str) -> String {
        match text.char_indices().nth(Self::LONGEST) {
            None => text.to_owned(),
            Some((end, _)) => format!("{}…", text.get(..end).unwrap_or_default()),
        }
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
