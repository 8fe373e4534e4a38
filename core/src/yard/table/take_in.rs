//! Brings a table's entries into a yard, and tells what that changes.

use super::write::{Column, Entry, Extent, columns, entries};
use super::{List, RowFault, Rows};
use crate::yard::edit::Editing;
use serde_json::Value;

/// What becomes of entries that the table doesn't have.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum How {
    /// They stay.
    Merge,
    /// They go.
    Replace,
}

/// A yard with a table's entries in it.
#[derive(Clone, Debug, PartialEq)]
pub struct TakenIn {
    /// The yard.
    pub yard: Editing,
    /// What each row changes.
    pub rows: Vec<RowChange>,
    /// The names of the entries that go.
    pub removed: Vec<String>,
}

/// What a row changes.
#[derive(Clone, Debug, PartialEq)]
pub struct RowChange {
    /// The row as a spreadsheet counts.
    pub row: usize,
    /// Its entry's identifier.
    pub id: String,
    /// Its entry's name.
    pub name: String,
    /// What it is beside the entry of the yard with that identifier.
    pub change: Change,
}

/// What an entry is beside that of the yard with its identifier.
#[derive(Clone, Debug, PartialEq)]
pub enum Change {
    /// The yard has none.
    New,
    /// It differs in these columns.
    Changed(Vec<String>),
    /// It says the same.
    Unchanged,
}

impl TakenIn {
    /// How many rows are new, changed and unchanged.
    pub fn counts(&self) -> [usize; 3] {
        let count = |is: fn(&Change) -> bool| self.rows.iter().filter(|it| is(&it.change)).count();
        [
            count(|it| matches!(it, Change::New)),
            count(|it| matches!(it, Change::Changed(_))),
            count(|it| matches!(it, Change::Unchanged)),
        ]
    }
}

/// A yard with a table's entries. An entry with an identifier that the yard has takes the place of that
/// one; others come behind. Entries of the yard that have faults stay as they are.
///
/// # Errors
/// That what would come of it is no yard file: too many entries, or too large.
pub fn take_in(yard: &Editing, rows: &Rows, how: How) -> Result<TakenIn, Vec<RowFault>> {
    let list = rows.list;
    let mut written = yard.written();
    let before = written.clone();
    let old = entries(&before, list);
    let with_id = |id: &str| old.iter().position(|entry| text(entry, "id") == id);
    let mut changes = Vec::with_capacity(rows.rows.len());
    let mut kept: Vec<Entry> = old.iter().map(|entry| (*entry).clone()).collect();
    let mut added = Vec::new();
    let mut told = vec![false; old.len()];
    for (row, entry) in &rows.rows {
        let id = text(entry, "id");
        let place = with_id(id);
        let before = place.and_then(|place| old.get(place));
        let change = match before {
            None => Change::New,
            Some(before) => match differing(list, before, entry) {
                columns if columns.is_empty() => Change::Unchanged,
                columns => Change::Changed(columns),
            },
        };
        // What says the same stays as it was written.
        let entry = match (&change, before) {
            (Change::Unchanged, Some(before)) => (*before).clone(),
            _ => entry.clone(),
        };
        changes.push(RowChange {
            row: *row,
            id: id.to_owned(),
            name: text(&entry, "name").to_owned(),
            change,
        });
        if let Some(told) = place.and_then(|place| told.get_mut(place)) {
            *told = true;
        }
        match place
            .filter(|_| how == How::Merge)
            .and_then(|place| kept.get_mut(place))
        {
            Some(before) => *before = entry,
            None => added.push(entry),
        }
    }
    let gone = old
        .iter()
        .zip(&told)
        .filter(|(_, told)| how == How::Replace && !**told);
    let removed = gone
        .map(|(entry, _)| text(entry, "name").to_owned())
        .collect();
    if how == How::Replace {
        kept.clear();
    }
    let entries = kept.into_iter().chain(added).map(Value::Object);
    if let Some(at) = written.get_mut(list.word()) {
        *at = entries.collect();
    }
    // As a file, for it must open again.
    match Editing::from_json(&written.to_string()) {
        Ok(yard) => Ok(TakenIn {
            yard,
            rows: changes,
            removed,
        }),
        Err(faults) => Err(faults
            .into_iter()
            .map(|fault| RowFault { row: None, fault })
            .collect()),
    }
}

fn text<'e>(entry: &'e Entry, key: &str) -> &'e str {
    entry.get(key).and_then(Value::as_str).unwrap_or_default()
}

/// The columns in which two entries differ.
fn differing(list: List, before: &Entry, after: &Entry) -> Vec<String> {
    let differs = |(_, cells): &Column| !matches!(cells.as_slice(), [a, b] if a == b);
    let columns = columns(list, &[Some(before), Some(after)], Extent::Used);
    columns
        .into_iter()
        .filter(differs)
        .map(|(name, _)| name)
        .collect()
}
