//! What the page says of the yard's lists as tables for spreadsheets.

pub use super::say::tables_in::*;

use super::say::tables_in as say;
use super::{in_turn, items};
use crate::model::table::Preview;
use crate::number;
use farend_core::yard::list::List;
use farend_core::yard::table::{Change, DecimalMark, Doubt, TakenIn};

/// A list's name, alone and within a sentence.
fn names(list: List) -> [&'static str; 2] {
    match list {
        List::Machines => [machines(), machines_small()],
        List::Implements => [implements(), implements_small()],
        List::Kits => [kits(), kits_small()],
    }
}

/// A list's name.
pub fn of(list: List) -> &'static str {
    let [name, _] = names(list);
    name
}

/// What saves a list.
pub fn save(list: List) -> String {
    save_list(of(list))
}

/// What saves a template.
pub fn template(list: List) -> String {
    let [_, name] = names(list);
    template_of(name)
}

/// The name of a list's file.
pub fn file(list: List) -> String {
    format!("farend-{}.csv", list.word())
}

/// The name of a template's file.
pub fn template_file(list: List) -> String {
    format!("farend-{}-template.csv", list.word())
}

/// What is known so far of what would come of it.
pub fn summary(preview: &Preview) -> String {
    match preview {
        Preview::AsksList => asks_list().to_owned(),
        Preview::AsksMark => asks_mark().to_owned(),
        Preview::Faults(faults) => has_faults(faults.len()),
        Preview::Ready(taken) => {
            let [new, changed, unchanged] = taken.counts();
            ready(&counts([new, changed, unchanged, taken.removed.len()]))
        }
    }
}

/// How many entries are new, changed, unchanged and gone.
fn counts([new, changed, unchanged, removed]: [usize; 4]) -> String {
    say::Counts {
        new,
        changed,
        unchanged,
        removed,
    }
    .said()
}

/// Why a table can't be taken over as it stands.
pub fn why_not(preview: &Preview) -> Option<&'static str> {
    match preview {
        Preview::AsksList => Some(first_list()),
        Preview::AsksMark => Some(first_mark()),
        Preview::Faults(_) => Some(first_mend()),
        Preview::Ready(taken) if is_as_before(taken) => Some(changes_nothing()),
        Preview::Ready(_) => None,
    }
}

fn is_as_before(taken: &TakenIn) -> bool {
    let [new, changed, _] = taken.counts();
    new + changed + taken.removed.len() == 0
}

/// What is asked of a number that can be read in two ways.
pub fn which_mark(doubt: &Doubt) -> String {
    let Doubt {
        row, column, cell, ..
    } = doubt;
    say::WhichMark {
        row: &row.to_string(),
        column,
        cell,
    }
    .said()
}

/// An answer to that.
pub fn mark(doubt: &Doubt, mark: DecimalMark) -> String {
    let (number, other) = match mark {
        DecimalMark::Point => (doubt.with_point, doubt.with_comma),
        DecimalMark::Comma => (doubt.with_comma, doubt.with_point),
    };
    // Digits, and a point where there are decimals, whatever the cell has.
    let told = &number.to_string();
    match number < other {
        true => mark_decimals(told),
        false => mark_thousands(told),
    }
}

/// What becomes of a row.
pub fn change(change: &Change) -> String {
    match change {
        Change::New => becomes_new().to_owned(),
        Change::Changed(columns) => becomes_changed(&items(columns)),
        Change::Unchanged => becomes_unchanged().to_owned(),
    }
}

/// The entries that go.
pub fn removed(names: &[String]) -> String {
    removed_are(&in_turn(names))
}

/// How many rows are left out of what is shown.
pub fn more_rows(count: usize) -> String {
    rows_more(&number::count(count))
}

/// How many faults aren't listed.
pub fn more_faults(count: usize) -> String {
    faults_more(&number::count(count))
}

/// That a table is in the yard now.
pub fn took(file: &str, list: List, of_each: [usize; 4]) -> String {
    say::TookList {
        file,
        list: of(list),
        counts: &counts(of_each),
    }
    .said()
}

/// That only one file is opened at a time.
pub fn several(count: u32) -> String {
    several_files(&number::count(count as usize))
}
