//! Numbers as programs and people write them. Which of them can be read in two ways follows from how
//! thousands are grouped: one to three digits, then three behind each mark.

use crate::{entries, faults, prices};
use farend_core::fault::{Expected, Rule};
use farend_core::yard::list::List;
use farend_core::yard::table::{DecimalMark, Reading, read};

fn read_prices(cells: &[&str], mark: Option<DecimalMark>) -> Vec<f64> {
    let entries = entries(List::Kits, &prices(cells), mark);
    let price = |it: &serde_json::Value| it["price"].as_f64().expect("a price");
    entries.iter().map(price).collect()
}

#[test]
fn a_number_that_leaves_no_doubt_is_read_beside_any_other() {
    let cells = [
        ("1,5", 1.5),
        ("1.5", 1.5),
        ("1234,56", 1234.56),
        ("2.400,5", 2400.5),
        ("2,400.5", 2400.5),
        ("1.234.567", 1_234_567.0),
        ("1,234,567.25", 1_234_567.25),
        ("0,234", 0.234),
        ("0.234", 0.234),
        ("1234,567", 1234.567),
        ("12,3456", 12.3456),
        (",5", 0.5),
        ("1234", 1234.0),
        ("+7", 7.0),
        (" 7 ", 7.0),
        ("1,5E+03", 1500.0),
        ("1,234E+03", 1234.0),
        ("2e2", 200.0),
        ("0", 0.0),
    ];
    let texts: Vec<_> = cells.iter().map(|(text, _)| *text).collect();
    let numbers: Vec<_> = cells.iter().map(|(_, number)| *number).collect();
    // Whatever is said of the others.
    for mark in [None, Some(DecimalMark::Point), Some(DecimalMark::Comma)] {
        assert_eq!(read_prices(&texts, mark), numbers);
    }
}

#[test]
fn where_nothing_tells_the_mark_it_is_asked_for() {
    for (cell, with_point, with_comma) in [
        ("1,234", 1234.0, 1.234),
        ("1.234", 1.234, 1234.0),
        ("123.456", 123.456, 123_456.0),
    ] {
        let text = prices(&["7", cell]);
        let Ok(Reading::AsksMark(doubt)) = read(&text, List::Kits, None) else {
            panic!("{cell} is taken for clear");
        };
        assert_eq!((doubt.row, doubt.column.as_str()), (3, "price"));
        assert_eq!(doubt.cell, cell);
        assert_eq!(
            (doubt.with_point, doubt.with_comma),
            (with_point, with_comma)
        );
        let both = [
            (DecimalMark::Point, with_point),
            (DecimalMark::Comma, with_comma),
        ];
        for (mark, number) in both {
            assert_eq!(read_prices(&["7", cell], Some(mark)), [7.0, number]);
        }
    }
}

#[test]
fn another_number_of_the_file_tells_the_mark() {
    assert_eq!(read_prices(&["1,234", "1,5"], None), [1.234, 1.5]);
    assert_eq!(read_prices(&["1.234", "1.5"], None), [1.234, 1.5]);
    assert_eq!(read_prices(&["1,234", "2.400,5"], None), [1.234, 2400.5]);
    // Thousands aren't guessed from it, nor a mark where two are used.
    for cells in [["1.234", "1,5"], ["1,234", "1.5"], ["1,234", "1.234"]] {
        let asked = read(&prices(&cells), List::Kits, None);
        assert!(matches!(asked, Ok(Reading::AsksMark(_))), "{cells:?}");
    }
    let asked = read(&prices(&["1,234", "1,5", "1.5"]), List::Kits, None);
    assert!(matches!(asked, Ok(Reading::AsksMark(_))));
}

/// Commas between cells go with points before decimals: common practice, no source.
#[test]
fn commas_between_cells_tell_a_point_but_no_thousands() {
    let table = |cell: &str| format!("id,name,routes,price\nkit,A kit,rear_shaft,{cell}\n");
    let read_one = entries(List::Kits, &table("1.234"), None);
    assert_eq!(read_one[0]["price"], 1.234);
    let asked = read(&table("\"1,234\""), List::Kits, None);
    assert!(matches!(asked, Ok(Reading::AsksMark(_))));
}

#[test]
fn what_is_no_plain_number_is_refused() {
    for cell in [
        "NaN",
        "nan",
        "inf",
        "-inf",
        "Infinity",
        "∞",
        "0x10",
        "1e",
        "1e+",
        "1e9999",
        "e5",
        "5 kW",
        "1 234",
        "1'234",
        "1\u{a0}234,5",
        "1.23.4",
        "1.2.3",
        "1,23,456.7",
        "1,2.345,6",
        "1..5",
        "5.",
        ".",
        ",",
        "-",
        "--5",
        "+-5",
        "1_000",
        "½",
        "٣",
        "#REF!",
        "5-6",
        "1/2",
        "50%",
    ] {
        let faults = faults(List::Kits, &prices(&["7", cell]));
        let [fault] = faults.as_slice() else {
            panic!("{cell}: {faults:?}");
        };
        assert_eq!(fault.row, Some(3), "{cell}");
        assert_eq!(fault.fault.path, "price");
        assert_eq!(fault.fault.rule, Rule::Type(Expected::Number), "{cell}");
        assert!(fault.fault.found.contains(cell.trim()), "{fault}");
    }
}

/// A spreadsheet in some languages writes the minus of typography (U+2212).
#[test]
fn a_number_may_lie_below_zero() {
    for minus in ["-", "−", "'-"] {
        let text = format!(
            "id;name;routes;pump.displacement_cm3;pump.highest_rpm;pump.relief_bar;\
             pump.suction_lift_m;hoses.bore_mm;hoses.length_m;hoses.couplers\n\
             pack;A pack;pump_pack;38;2200;180;{minus}0,25;19;3;2\n"
        );
        let read = entries(List::Kits, &text, None);
        assert_eq!(read[0]["pump"]["suction_lift_m"], -0.25, "{minus}");
    }
}
