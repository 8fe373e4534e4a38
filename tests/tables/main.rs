//! The lists of a yard as tables for spreadsheets.

mod faults;
mod hostile;
mod numbers;
mod spelling;
mod spreadsheets;
mod take_in;
mod template;

use farend_core::yard::edit::Editing;
use farend_core::yard::list::List;
use farend_core::yard::table::{DecimalMark, How, Reading, RowFault, Rows, read, take_in};
use farend_tests::demo;
use serde_json::Value;

/// The rows of a table that must be without faults and questions.
fn rows(list: List, text: &str, mark: Option<DecimalMark>) -> Rows {
    match read(text, list, mark) {
        Ok(Reading::Rows(rows)) => rows,
        other => panic!("{text:?}: {other:?}"),
    }
}

/// The entries that a table makes.
fn entries(list: List, text: &str, mark: Option<DecimalMark>) -> Vec<Value> {
    let rows = rows(list, text, mark);
    let taken = take_in(&Editing::from(&demo()), &rows, How::Replace).expect("a yard");
    let made = taken.yard.sound();
    let entries = made.written[list.word()].as_array();
    entries.expect("a list").clone()
}

/// The faults of a table.
fn faults(list: List, text: &str) -> Vec<RowFault> {
    read(text, list, None).expect_err("faults")
}

/// A table of kits with a price each, in a file with semicolons.
fn prices(cells: &[&str]) -> String {
    let line = |(place, cell): (usize, &&str)| format!("kit-{place};A kit;rear_shaft;{cell}\n");
    let lines: String = cells.iter().enumerate().map(line).collect();
    format!("id;name;routes;price\n{lines}")
}
