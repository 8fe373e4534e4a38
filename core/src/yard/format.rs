//! Versions of the yard file's format: an older file is raised, version by version, to the one
//! that the rules hold.

use super::report::Report;
use super::rules::FORMAT_VERSION;
use crate::fault::{Fault, Rule};
use crate::hint::Hint;
use serde_json::{Map, Value};

/// The key of a file's version.
pub(crate) const VERSION: &str = "format_version";

/// What makes a file of one version a file of the next.
type Raise = fn(Map<String, Value>) -> Map<String, Value>;

/// The first raises version 1.
const RAISES: [Raise; FORMAT_VERSION as usize - 1] = [included];

/// 1 to 2: a kit may say whether it's `included`; one that doesn't says what it said before.
fn included(group: Map<String, Value>) -> Map<String, Value> {
    group
}

/// Raises a yard to [`FORMAT_VERSION`]. A version that isn't one is left to the rules.
///
/// # Errors
/// One fault where a newer program made the file.
pub(super) fn raised(group: Map<String, Value>) -> Result<Map<String, Value>, Vec<Fault>> {
    refuse_newer(&group, FORMAT_VERSION)?;
    let version = group.get(VERSION).and_then(Value::as_f64);
    let Some(version) = version.filter(|it| *it >= 1.0 && it.fract() == 0.0) else {
        return Ok(group);
    };
    let raises = RAISES.iter().skip(version as usize - 1);
    let mut group = raises.fold(group, |group, raise| raise(group));
    group.insert(VERSION.to_owned(), FORMAT_VERSION.into());
    Ok(group)
}

/// Refuses a file of a newer version than a program reads: what else is wrong with it can't be told.
///
/// # Errors
/// One fault.
pub(crate) fn refuse_newer(group: &Map<String, Value>, newest: u32) -> Result<(), Vec<Fault>> {
    let Some(version) = group.get(VERSION) else {
        return Ok(());
    };
    let (min, max) = (1.0, f64::from(newest));
    if version.as_f64().is_none_or(|version| version <= max) {
        return Ok(());
    }
    let mut report = Report::default();
    let rule = Rule::Within { min, max, unit: "" };
    report.add(VERSION, version.to_string(), rule, Hint::Newer);
    Err(report.into_faults())
}
