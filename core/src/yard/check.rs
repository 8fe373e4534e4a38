//! Holds an entry against all rules: its shape first, for only what has it can be built.

use super::build;
use super::entry::{ImplementEntry, KitEntry, MachineEntry};
use super::list::List;
use super::report::Report;
use super::shape::check_group;
use crate::fault::Rule;
use crate::hint::Hint;
use crate::implement::Implement;
use crate::kit::Kit;
use crate::machine::Machine;
use serde::de::DeserializeOwned;
use serde_json::{Map, Value};

/// What an entry stands for.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Built {
    Machine(Box<Machine>),
    Implement(Box<Implement>),
    Kit(Box<Kit>),
}

/// What an entry stands for, where nothing is wrong with it; what is goes into the report.
pub(super) fn entry(
    list: List,
    written: &Map<String, Value>,
    path: &str,
    report: &mut Report,
) -> Option<Built> {
    check_group(written, list.fields(), path, report);
    if !report.is_empty() {
        return None;
    }
    let built = match list {
        List::Machines => {
            let entry: MachineEntry = read(written, path, report)?;
            Built::Machine(Box::new(build::machine(&entry, path, report)))
        }
        List::Implements => {
            let entry: ImplementEntry = read(written, path, report)?;
            Built::Implement(Box::new(build::implement(&entry, path, report)))
        }
        List::Kits => {
            let entry: KitEntry = read(written, path, report)?;
            Built::Kit(Box::new(build::kit(&entry, path, report)))
        }
    };
    report.is_empty().then_some(built)
}

/// Reads what the rules let through.
pub(super) fn read<T: DeserializeOwned>(
    written: &Map<String, Value>,
    path: &str,
    report: &mut Report,
) -> Option<T> {
    match T::deserialize(written) {
        Ok(read) => Some(read),
        Err(error) => {
            report.reader_says(path, &error, Rule::Readable, Hint::PleaseReport);
            None
        }
    }
}
