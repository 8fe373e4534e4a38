//! A case as its file writes it.

use crate::calculation::Calculation;
use crate::check::{Band, Tolerance};
use crate::inputs::Input;
use serde::Deserialize;
use std::collections::BTreeMap;

/// A file of cases.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CaseFile {
    /// What its cases have in common.
    pub subject: String,
    /// At least one.
    #[serde(rename = "case")]
    pub cases: Vec<Case>,
}

/// A published figure, a rule of the trade, or an input that must be refused.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Case {
    /// Unique among all files.
    pub id: String,
    /// What it shows, in words.
    pub what: String,
    /// Which of the core's calculations it checks.
    pub calculation: Calculation,
    /// Under names that end with their unit: one number a name, or several for as many points.
    #[serde(default)]
    pub inputs: BTreeMap<String, Input>,
    /// Results that are known as numbers.
    #[serde(default)]
    pub expected: Vec<Expected>,
    /// Results that are known as a band.
    #[serde(default)]
    pub within: Vec<Within>,
    /// Faults that the core must find: these and no other.
    #[serde(default)]
    pub refused: Vec<Refused>,
    /// How far a result may lie from its number.
    pub tolerance: Option<Tolerance>,
    /// Why so far.
    pub tolerance_reason: Option<String>,
    /// Who says so.
    pub source: String,
    /// Where in the source.
    pub page: Option<String>,
}

/// A result that is known as a number.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Expected {
    /// The result's name in the calculation.
    pub name: String,
    /// Its value, or one for each point.
    pub value: Numbers,
    /// The value's unit; left out for a plain number.
    #[serde(default)]
    pub unit: String,
}

/// A result that is known as a band.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Within {
    /// The result's name in the calculation.
    pub name: String,
    /// Lowest value, itself allowed.
    pub from: f64,
    /// Highest value, itself allowed.
    pub to: f64,
    /// The unit of both; left out for plain numbers.
    #[serde(default)]
    pub unit: String,
}

impl Within {
    /// Where the result must lie.
    pub fn band(&self) -> Band {
        Band {
            from: self.from,
            to: self.to,
        }
    }
}

/// A fault that the core must find: a value outside two limits.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Refused {
    /// The path that it names.
    pub path: String,
    /// The value as the fault repeats it.
    pub found: String,
    /// Lowest value allowed.
    pub min: f64,
    /// Highest value allowed.
    pub max: f64,
    /// The unit of both.
    pub unit: String,
}

/// One number, or one for each point.
#[derive(Clone, Debug, Deserialize)]
#[serde(untagged)]
pub enum Numbers {
    /// The same for every point.
    One(f64),
    /// As many as there are points.
    Many(Vec<f64>),
}

impl Numbers {
    /// The number for a point.
    pub fn at(&self, point: usize) -> Option<f64> {
        match self {
            Self::One(number) => Some(*number),
            Self::Many(numbers) => numbers.get(point).copied(),
        }
    }

    /// How many points it stands for, where it says so.
    pub fn points(&self) -> Option<usize> {
        match self {
            Self::One(_) => None,
            Self::Many(numbers) => Some(numbers.len()),
        }
    }
}
