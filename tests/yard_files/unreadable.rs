//! Files that are no yard at all.

use crate::every_field::speaks_plainly;
use farend_core::fault::{Expected, Fault, Rule};
use farend_core::yard::rules::LARGEST_FILE;
use farend_core::yard::{DEMO, Yard};

/// The one fault of a file that can't be walked through.
fn fault(text: &str) -> Fault {
    let mut faults = Yard::from_json(text).expect_err("no yard");
    let fault = faults.pop().expect("a fault");
    assert_eq!(faults, [], "only one fault of the file as a whole");
    assert_eq!(fault.path, "file");
    speaks_plainly(&fault);
    fault
}

#[test]
fn what_is_no_json_is_refused_with_its_place() {
    let half = &DEMO[..DEMO.len() / 2];
    let comma = DEMO.replacen("\"format_version\": 2,", "\"format_version\": 2", 1);
    assert_ne!(comma, DEMO);
    for text in [
        "",
        " ",
        "\u{feff}",
        "\u{feff}\u{feff}{}",
        "yard",
        "{",
        "{}}",
        "{'name': 1}",
        "{\"name\": NaN}",
        "{\"name\": Infinity}",
        "{\"name\": 1e999}",
        "{\"name\": -1e999}",
        "{\"name\": 5,5}",
        "{\"name\": .5}",
        "{\"name\": \"\u{0}\"}",
        "<html></html>",
        "id;name;kind\nwren-18;Wren;tractor\n",
        half,
        &comma,
    ] {
        let fault = fault(text);
        let Rule::Json { line, column } = fault.rule else {
            panic!("{text:.40}: {fault}");
        };
        let place = format!("line {line} column {column}");
        assert!(fault.found.ends_with(&place), "{fault}");
    }
}

#[test]
fn json_that_is_no_group_is_refused() {
    for text in ["[]", "5", "\"yard\"", "null", "true", "[{}]"] {
        assert_eq!(fault(text).rule, Rule::Type(Expected::Yard), "{text}");
    }
}

#[test]
fn a_file_that_is_too_large_is_not_read() {
    let blank = " ".repeat(LARGEST_FILE - DEMO.len());
    assert!(Yard::from_json(&format!("{DEMO}{blank}")).is_ok());
    let fault = fault(&format!("{DEMO}{blank} "));
    assert_eq!(fault.rule, Rule::AtMost(LARGEST_FILE));
    assert!(fault.found.contains(&(LARGEST_FILE + 1).to_string()));
}

/// A nest of a million brackets must not take the program's stack.
#[test]
fn deep_nesting_is_refused() {
    for (open, close) in [("[", "]"), ("{\"a\":", "}")] {
        let depth = (LARGEST_FILE - 10) / (open.len() + close.len());
        let nested = format!("{}1{}", open.repeat(depth), close.repeat(depth));
        for text in [nested, open.repeat(depth)] {
            assert!(matches!(fault(&text).rule, Rule::Json { .. }));
        }
    }
}
