//! A list of the yard as a table that a spreadsheet has saved.

use super::faults_hold;
use super::yard::yard_holds;
use crate::load;
use farend_core::export::csv::Table;
use farend_core::yard::edit::Editing;
use farend_core::yard::list::List;
use farend_core::yard::table::{
    DecimalMark, How, Reading, RowFault, Rows, list_of, read, table, take_in,
};
use std::sync::LazyLock;

/// The yard that tables are taken into: a small one, for it's read again and again.
static YARD: LazyLock<Editing> =
    LazyLock::new(|| Editing::from(&load(include_str!("../../fuzz/corpus/yard/small"))));

/// A table's text.
pub fn holds(text: &str) {
    match list_of(text) {
        Err(faults) => refused(&faults),
        Ok(Some(list)) => list_holds(text, list),
        Ok(None) => List::ALL.iter().for_each(|list| list_holds(text, *list)),
    }
}

fn list_holds(text: &str, list: List) {
    match read(text, list, None) {
        Err(faults) => refused(&faults),
        Ok(Reading::Rows(rows)) => rows_hold(&rows, list),
        Ok(Reading::AsksMark(doubt)) => {
            assert!(doubt.with_point != doubt.with_comma, "{doubt:?}");
            for mark in DecimalMark::ALL {
                match read(text, list, Some(*mark)) {
                    Err(faults) => refused(&faults),
                    Ok(Reading::Rows(rows)) => rows_hold(&rows, list),
                    Ok(asks) => panic!("asks again: {asks:?}"),
                }
            }
        }
    }
}

/// Rows without a fault are entries without one, and written as a table they are the same entries.
fn rows_hold(rows: &Rows, list: List) {
    for how in [How::Merge, How::Replace] {
        let taken = match take_in(&YARD, rows, how) {
            Err(faults) => {
                refused(&faults);
                continue;
            }
            Ok(taken) => taken,
        };
        assert_eq!(taken.yard.faults(), []);
        let yard = taken.yard.sound();
        if !yard.machines.is_empty() && !yard.implements.is_empty() {
            yard_holds(&yard);
        }
        if taken.yard.len(list) > 0 {
            let again = again(&table(&yard, list), list);
            let again = take_in(&taken.yard, &again, how).expect("its own table");
            assert_eq!(again.counts(), [0, 0, again.rows.len()], "{:?}", again.rows);
            assert_eq!(again.yard, taken.yard);
        }
    }
}

fn again(table: &Table, list: List) -> Rows {
    let text = table.to_csv().expect("finite numbers");
    // Where it can be doubted, our own tables have a point.
    match read(&text, list, Some(DecimalMark::Point)) {
        Ok(Reading::Rows(rows)) => rows,
        other => panic!("{other:?} of its own table: {text}"),
    }
}

fn refused(faults: &[RowFault]) {
    faults_hold(faults.iter().map(|it| &it.fault));
}
