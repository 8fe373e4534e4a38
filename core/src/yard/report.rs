//! Collects faults.

use crate::fault::{Fault, Rule};
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
        hint: impl Into<String>,
    ) {
        self.faults.push(Fault {
            path: path.into(),
            found: found.into(),
            rule,
            hint: hint.into(),
        });
    }

    /// Notes a value of the wrong type.
    pub fn wrong_type(&mut self, path: &str, value: &Value, expected: &'static str, hint: &str) {
        self.add(path, Self::shorten(value), Rule::Type(expected), hint);
    }

    /// A value as a fault repeats it.
    pub fn shorten(value: &Value) -> String {
        let text = value.to_string();
        if text.chars().count() <= Self::LONGEST {
            return text;
        }
        let start: String = text.chars().take(Self::LONGEST).collect();
        format!("{start}…")
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
