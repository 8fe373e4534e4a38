//! An entry as it is written, and what comes of it.

use crate::fault::{Fault, Rule};
use crate::implement::Implement;
use crate::kit::Kit;
use crate::machine::Machine;
use crate::yard::entry::{ImplementEntry, KitEntry, MachineEntry};
use crate::yard::list::List;
use crate::yard::report::Report;
use crate::yard::shape::check_group;
use crate::yard::{build, drop_nulls};
use serde::de::DeserializeOwned;
use serde_json::Value;

/// What an entry stands for, where nothing is wrong with it.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Part {
    Machine(Box<Machine>),
    Implement(Box<Implement>),
    Kit(Box<Kit>),
    Faulty(Vec<Fault>),
}

/// An entry as it is written, and what came of it.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Kept {
    /// A group.
    pub written: Value,
    pub part: Part,
}

/// Where an entry's faults stand while it is checked by rules that know whole yards.
const ROOT: &str = "entry";

/// An entry's identifier.
pub(super) fn id_of(entry: &Value) -> Option<&str> {
    entry.get("id")?.as_str()
}

/// Reads what the rules let through.
pub(super) fn read<T: DeserializeOwned>(written: &Value) -> Result<T, Fault> {
    T::deserialize(written).map_err(|error| Fault {
        path: String::new(),
        found: error.to_string(),
        rule: Rule::Readable,
        hint: "The rules let through what the reader doesn't take: please report it.".to_owned(),
    })
}

/// An entry with what comes of it.
pub(super) fn kept(list: List, mut written: Value) -> Kept {
    drop_nulls(&mut written);
    let part = checked(list, &written).unwrap_or_else(Part::Faulty);
    Kept { written, part }
}

/// Shape first: only what has it can be built.
fn checked(list: List, written: &Value) -> Result<Part, Vec<Fault>> {
    let mut report = Report::default();
    if let Value::Object(group) = written {
        check_group(group, list.fields(), ROOT, &mut report);
    }
    if !report.is_empty() {
        return Err(from_root(report));
    }
    let refused = |fault| vec![fault];
    let part = match list {
        List::Machines => {
            let entry: MachineEntry = read(written).map_err(refused)?;
            Part::Machine(Box::new(build::machine(&entry, ROOT, &mut report)))
        }
        List::Implements => {
            let entry: ImplementEntry = read(written).map_err(refused)?;
            Part::Implement(Box::new(build::implement(&entry, ROOT, &mut report)))
        }
        List::Kits => {
            let entry: KitEntry = read(written).map_err(refused)?;
            Part::Kit(Box::new(build::kit(&entry, ROOT, &mut report)))
        }
    };
    if report.is_empty() {
        Ok(part)
    } else {
        Err(from_root(report))
    }
}

/// Faults whose paths begin at the entry.
fn from_root(report: Report) -> Vec<Fault> {
    let faults = report.into_faults().into_iter().map(|fault| {
        let path = fault.path.strip_prefix(ROOT).unwrap_or(&fault.path);
        let path = path.trim_start_matches('.').to_owned();
        Fault { path, ..fault }
    });
    faults.collect()
}
