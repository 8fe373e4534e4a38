//! What the page says of the yard's lists as tables for spreadsheets.

use crate::model::table::Preview;
use farend_core::yard::list::List;
use farend_core::yard::table::{Change, DecimalMark, Doubt, TakenIn};

pub const DROP: &str = "Let go to open it: a yard or a comparison (JSON), or a table (CSV).";
pub const TITLE: &str = "Tables for spreadsheets";
pub const TABLES: &str = "The yard's lists for a spreadsheet, as CSV; changed, they open here like a \
    yard file. A template has every column and an invented row to start from.";
pub const WHICH_LIST: &str = "It's a table of";
pub const WHICH_HOW: &str = "What the yard has and the table doesn't";
pub const MERGE: &str = "Stays";
pub const REPLACE: &str = "Goes";
pub const TAKE_OVER: &str = "Take over";
pub const LEAVE: &str = "Leave it";
pub const ROW: &str = "Row";
pub const ENTRY: &str = "Entry";
pub const BECOMES: &str = "What happens";
pub const FAULTS: &str = "What is wrong with it";
const NOT_YET: &str = "Nothing in the yard has changed yet.";

/// A list, as the object of a sentence.
pub fn of(list: List) -> &'static str {
    match list {
        List::Machines => "Machines",
        List::Implements => "Implements",
        List::Kits => "Kits",
    }
}

/// What saves a list.
pub fn save(list: List) -> String {
    format!("{} (CSV)", of(list))
}

/// What saves a template.
pub fn template(list: List) -> String {
    format!("Template: {}", of(list).to_lowercase())
}

/// The name of a list's file.
pub fn file(list: List) -> String {
    format!("farend-{}.csv", list.word())
}

/// The name of a template's file.
pub fn template_file(list: List) -> String {
    format!("farend-{}-template.csv", list.word())
}

/// The heading of what would come of a table.
pub fn heading(file: &str) -> String {
    format!("What {file} would change")
}

/// What is known so far of what would come of it.
pub fn summary(preview: &Preview) -> String {
    match preview {
        Preview::AsksList => {
            format!("Its headers suit several lists: say which it is of. {NOT_YET}")
        }
        Preview::AsksMark => {
            format!("Its numbers can be read in two ways: say which is meant. {NOT_YET}")
        }
        Preview::Faults(faults) => {
            let number = match faults.len() {
                1 => "one fault".to_owned(),
                many => format!("{many} faults"),
            };
            format!("It can't be taken over: it has {number}. The yard stays as it is.")
        }
        Preview::Ready(taken) => {
            let [new, changed, unchanged] = taken.counts();
            let counts = counts(new, changed, unchanged, taken.removed.len());
            format!("{counts}. {NOT_YET}")
        }
    }
}

/// How many entries are new, changed, unchanged and gone.
pub fn counts(new: usize, changed: usize, unchanged: usize, removed: usize) -> String {
    format!("{new} new, {changed} changed, {unchanged} unchanged, {removed} removed")
}

/// Why a table can't be taken over as it stands.
pub fn why_not(preview: &Preview) -> Option<&'static str> {
    match preview {
        Preview::AsksList => Some("First say which list it is of."),
        Preview::AsksMark => Some("First say how its numbers are meant."),
        Preview::Faults(_) => {
            Some("Mend its faults in the spreadsheet, save it and open it again.")
        }
        Preview::Ready(taken) if changes_nothing(taken) => Some("It changes nothing."),
        Preview::Ready(_) => None,
    }
}

fn changes_nothing(taken: &TakenIn) -> bool {
    let [new, changed, _] = taken.counts();
    new + changed + taken.removed.len() == 0
}

/// What is asked of a number that can be read in two ways.
pub fn which_mark(doubt: &Doubt) -> String {
    let Doubt {
        row, column, cell, ..
    } = doubt;
    format!("Row {row}, {column} says {cell}. Which number is that?")
}

/// An answer to that.
pub fn mark(doubt: &Doubt, mark: DecimalMark) -> String {
    let (number, other) = match mark {
        DecimalMark::Point => (doubt.with_point, doubt.with_comma),
        DecimalMark::Comma => (doubt.with_comma, doubt.with_point),
    };
    // Digits, and a point where there are decimals, whatever the cell has.
    match number < other {
        true => format!("{number}: the mark stands before decimals"),
        false => format!("{number}: the mark parts thousands"),
    }
}

/// What becomes of a row.
pub fn change(change: &Change) -> String {
    match change {
        Change::New => "new".to_owned(),
        Change::Changed(columns) => format!("changed: {}", columns.join(", ")),
        Change::Unchanged => "unchanged".to_owned(),
    }
}

/// The entries that go.
pub fn removed(names: &[String]) -> String {
    format!("Removed: {}.", names.join("; "))
}

/// How many rows are left out of what is shown.
pub fn more_rows(number: usize) -> String {
    format!("and {number} more")
}

/// How many faults aren't listed.
pub fn more_faults(number: usize) -> String {
    format!("And {number} more, once these are mended.")
}

/// That a table is in the yard now.
pub fn took(file: &str, of: List, [new, changed, unchanged, removed]: [usize; 4]) -> String {
    format!(
        "{file} is in the yard. {}: {}.",
        self::of(of),
        counts(new, changed, unchanged, removed)
    )
}

/// That only one file is opened at a time.
pub fn several(number: u32) -> String {
    format!("{number} files at once are too many: open one after the other.")
}
