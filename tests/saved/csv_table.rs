//! Tables for spreadsheets, read back by a reader of RFC 4180.

use csv::ReaderBuilder;
use farend_core::export::csv::{Cell, STARTS_FORMULA, Table};
use proptest::collection::vec;
use proptest::prelude::*;

fn cell() -> impl Strategy<Value = Cell> {
    let formula = (
        proptest::sample::select(&STARTS_FORMULA[..]),
        any::<String>(),
    );
    prop_oneof![
        any::<String>().prop_map(Cell::Text),
        formula.prop_map(|(sign, rest)| Cell::Text(format!("{sign}{rest}"))),
        "[\",\r\n;' a-z]{0,12}".prop_map(Cell::Text),
        proptest::num::f64::NORMAL.prop_map(Cell::Number),
        (-1e6..1e6).prop_map(Cell::Number),
        Just(Cell::Empty),
    ]
}

fn table() -> impl Strategy<Value = Table> {
    (1..6_usize).prop_flat_map(|columns| {
        (
            vec(any::<String>(), columns),
            vec(vec(cell(), columns), 0..8),
        )
            .prop_map(|(headers, rows)| Table { headers, rows })
    })
}

/// All records, the headers first.
fn read(text: &str) -> Vec<Vec<String>> {
    let text = text.strip_prefix('\u{feff}').expect("a byte order mark");
    let mut reader = ReaderBuilder::new()
        .has_headers(false)
        .from_reader(text.as_bytes());
    let records = reader.records().map(|record| {
        let record = record.expect("as many cells as headers");
        record.iter().map(str::to_owned).collect()
    });
    records.collect()
}

/// A guard can be told from an apostrophe that the text had.
fn is_guarded(written: &str, text: &str) -> bool {
    if text.trim_start_matches('\'').starts_with(STARTS_FORMULA) {
        written.strip_prefix('\'') == Some(text)
    } else {
        written == text
    }
}

proptest! {
    #![proptest_config(crate::seeded::cases(1000))]

    #[test]
    fn every_cell_comes_back(table in table()) {
        let text = table.to_csv().expect("an even table of finite numbers");
        let read = read(&text);
        prop_assert_eq!(read.len(), table.rows.len() + 1);
        for (written, header) in read[0].iter().zip(&table.headers) {
            prop_assert!(is_guarded(written, header), "{written:?} for {header:?}");
        }
        for (record, row) in read[1..].iter().zip(&table.rows) {
            prop_assert_eq!(record.len(), row.len());
            for (written, cell) in record.iter().zip(row) {
                match cell {
                    Cell::Text(text) => {
                        prop_assert!(is_guarded(written, text), "{written:?} for {text:?}");
                        prop_assert!(!written.starts_with(STARTS_FORMULA), "{written:?}");
                    }
                    Cell::Number(number) => {
                        let back: f64 = written.parse().expect("a number");
                        prop_assert!((back - number).abs() <= 1e-12 * number.abs(), "{written}");
                        prop_assert!(
                            written.bytes().all(|it| it.is_ascii_digit() || b"-.".contains(&it)),
                            "{written}"
                        );
                    }
                    Cell::Empty => prop_assert_eq!(written, ""),
                }
            }
        }
    }
}

fn one_row(cells: &[Cell]) -> Table {
    Table {
        headers: vec!["Header".to_owned(); cells.len()],
        rows: vec![cells.to_vec()],
    }
}

/// RFC 4180, 2: lines end with CR LF; quotes within quotes are doubled.
#[test]
fn lines_end_and_quotes_are_as_in_the_standard() {
    let text = |text: &str| Cell::Text(text.to_owned());
    let table = one_row(&[text("5/8\" bore"), text("one, two"), Cell::Number(-4.5)]);
    assert_eq!(
        table.to_csv().as_deref(),
        Some("\u{feff}Header,Header,Header\r\n\"5/8\"\" bore\",\"one, two\",-4.5\r\n")
    );
}

#[test]
fn a_negative_number_stays_a_number_and_a_text_like_one_does_not() {
    let cells = [
        Cell::Number(-3.0),
        Cell::Number(-0.0),
        Cell::Text("-3".to_owned()),
    ];
    let read = read(&one_row(&cells).to_csv().expect("a table"));
    assert_eq!(read[1], ["-3", "0", "'-3"]);
}

#[test]
fn what_is_no_table_is_refused() {
    for number in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        assert_eq!(one_row(&[Cell::Number(number)]).to_csv(), None);
    }
    let mut uneven = one_row(&[Cell::Empty, Cell::Empty]);
    uneven.rows.push(vec![Cell::Empty]);
    assert_eq!(uneven.to_csv(), None);
}
