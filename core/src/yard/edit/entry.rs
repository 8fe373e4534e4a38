//! An entry as it is written, and what comes of it.

use crate::fault::Fault;
use crate::yard::check::{self, Built};
use crate::yard::drop_nulls;
use crate::yard::list::List;
use crate::yard::report::Report;
use serde_json::Value;

/// An entry as it is written, and what came of it.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Kept {
    /// A group.
    pub written: Value,
    /// What it stands for, or all that is wrong with it.
    pub built: Result<Built, Vec<Fault>>,
}

/// Where an entry's faults stand while it is checked by rules that know whole yards.
const ROOT: &str = "entry";

/// An entry's identifier.
pub(super) fn id_of(entry: &Value) -> Option<&str> {
    entry.get("id")?.as_str()
}

/// An entry with what comes of it.
pub(super) fn kept(list: List, mut written: Value) -> Kept {
    drop_nulls(&mut written);
    let mut report = Report::default();
    let group = written.as_object();
    let built = group.and_then(|group| check::entry(list, group, ROOT, &mut report));
    Kept {
        built: built.ok_or_else(|| from_root(report)),
        written,
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
