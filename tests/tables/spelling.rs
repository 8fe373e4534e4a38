//! What may be spelt in several ways: separators, headers, words for yes and no, guards.

use crate::{entries, faults, rows};
use farend_core::export::csv::STARTS_FORMULA;
use farend_core::fault::Rule;
use farend_core::yard::Yard;
use farend_core::yard::list::List;
use farend_core::yard::table::{list_of, table};
use farend_tests::demo;
use serde_json::{Value, json};

/// One kit, with the guards of its shaft said in a cell.
fn guarded(cell: &str) -> String {
    format!("id;name;routes;shaft.guarded\nkit;A kit;rear_shaft;{cell}\n")
}

/// As LibreOffice and others write a flag in English, German, French and Spanish.
#[test]
fn flags_are_read_in_the_words_of_spreadsheets() {
    for (says, cells) in [
        (
            true,
            [
                "yes",
                "true",
                "1",
                "TRUE",
                "WAHR",
                "Vrai",
                "VERDADERO",
                " Yes ",
            ],
        ),
        (
            false,
            [
                "no", "false", "0", "FALSE", "FALSCH", "Faux", "FALSO", " No ",
            ],
        ),
    ] {
        for cell in cells {
            let read = entries(List::Kits, &guarded(cell), None);
            assert_eq!(read[0]["shaft"], json!({ "guarded": says }), "{cell}");
        }
    }
    let faults = faults(List::Kits, &guarded("perhaps"));
    assert_eq!(faults.len(), 1);
    assert_eq!(faults[0].fault.rule, Rule::OneOf(vec!["yes", "no"]));
}

#[test]
fn an_empty_cell_is_unknown() {
    for cell in ["", " ", "\"\"", "\"  \""] {
        let read = entries(List::Kits, &guarded(cell), None);
        assert_eq!(read[0].get("shaft"), None, "{cell:?}");
    }
}

#[test]
fn words_and_headers_may_have_capitals_and_blanks() {
    let text = "ID; Name ;\"ROUTES \";Drive.1.Kind;drive.1.ratio;;\n\
                 kit ;A kit; Rear_Shaft  turned_forward;Spur;2;;\n";
    let read = entries(List::Kits, text, None);
    assert_eq!(read[0]["id"], "kit");
    assert_eq!(read[0]["routes"], json!(["rear_shaft", "turned_forward"]));
    assert_eq!(read[0]["drive"][0]["kind"], "spur");
    let commas = text.replace("Rear_Shaft  ", "rear_shaft, ");
    assert_eq!(entries(List::Kits, &commas, None), read);
}

#[test]
fn places_that_a_row_leaves_empty_close_up() {
    let text = "id;name;routes;drive.1.kind;drive.1.ratio;drive.3.kind;drive.3.ratio\n\
                one;One;rear_shaft;;;belt;2\n\
                two;Two;rear_shaft;spur;3;chain;4\n";
    let read = entries(List::Kits, text, None);
    let kinds = |entry: &Value| -> Vec<Value> {
        let drive = entry["drive"].as_array().expect("steps");
        drive.iter().map(|step| step["kind"].clone()).collect()
    };
    assert_eq!(kinds(&read[0]), ["belt"]);
    assert_eq!(kinds(&read[1]), ["spur", "chain"]);
}

/// A loader of which nothing is known is more than none.
#[test]
fn a_group_may_be_there_with_nothing_known_of_it() {
    let mut yard = demo().written;
    yard["machines"][0]["loader"] = json!({});
    yard["machines"][1]["loader"] = json!({ "comment": " ", "lift_kg": null });
    yard["machines"][2]["rear_pto"]["end"] = json!({});
    let yard = Yard::from_json(&yard.to_string()).expect("a yard");
    let table = table(&yard, List::Machines);
    let column = |name: &str| table.headers.iter().position(|it| it == name);
    assert!(column("loader").is_some() && column("rear_pto.end").is_some());
    assert_eq!(column("hitch"), None);
    let read = entries(List::Machines, &table.to_csv().expect("a table"), None);
    assert_eq!(read[0]["loader"], json!({}));
    assert_eq!(read[1]["loader"], json!({}));
    assert_eq!(read[2]["rear_pto"]["end"], json!({}));

    let contrary = "id;name;routes;shaft;shaft.guarded\nkit;A kit;rear_shaft;no;yes\n";
    let faults = faults(List::Kits, contrary);
    assert_eq!(faults.len(), 1, "{faults:?}");
    assert_eq!(faults[0].fault.path, "shaft");
    let no = contrary.replace("no;yes", "no;");
    assert_eq!(entries(List::Kits, &no, None)[0].get("shaft"), None);
}

/// The demo with a text in place of its first kit's name and comment.
fn named(text: &str) -> Yard {
    let mut yard = demo().written;
    yard["kits"][0]["name"] = text.into();
    yard["kits"][0]["comment"] = text.into();
    Yard::from_json(&yard.to_string()).expect("a yard")
}

#[test]
fn no_text_becomes_a_formula_and_every_text_comes_back() {
    let mut texts = vec![
        "=1+1".to_owned(),
        "'=1+1".to_owned(),
        "''-2".to_owned(),
        "'tis".to_owned(),
        "'".to_owned(),
        "5/8\" bore, \"long\"; for\ttwo".to_owned(),
        "two\r\nlines".to_owned(),
        " with blanks ".to_owned(),
        "\u{feff}mark".to_owned(),
        "über 1,5 m".to_owned(),
    ];
    texts.extend(
        STARTS_FORMULA
            .iter()
            .map(|sign| format!("{sign}cmd|' /C calc'!A0")),
    );
    for text in &texts {
        let csv = table(&named(text), List::Kits).to_csv().expect("a table");
        let mut reader = csv::ReaderBuilder::new().from_reader(csv.as_bytes());
        for record in reader.records() {
            for cell in &record.expect("a row") {
                let runs = cell.starts_with(STARTS_FORMULA) && cell.parse::<f64>().is_err();
                assert!(!runs, "{cell:?}");
            }
        }
        let read = entries(List::Kits, &csv, None);
        assert_eq!(read[0]["name"], text.as_str());
        assert_eq!(read[0]["comment"], text.as_str());
    }
}

#[test]
fn the_headers_tell_the_list_where_they_can() {
    for list in List::ALL {
        let text = table(&demo(), *list).to_csv().expect("a table");
        assert_eq!(list_of(&text), Ok(Some(*list)));
    }
    assert_eq!(list_of("id,name,routes\n"), Ok(Some(List::Kits)));
    assert_eq!(list_of("id;name;need_kw\n"), Ok(Some(List::Implements)));
    assert_eq!(
        list_of("id\tname\tengine.net_kw\n"),
        Ok(Some(List::Machines))
    );
    assert_eq!(list_of("id,name\n"), Ok(None));
    // More of one than of the others.
    assert_eq!(list_of("id,name,kind,mass_kg,engine.net_hp\n"), Ok(None));
    for text in [
        "",
        "\n\n",
        "\u{feff}",
        "height,colour\n1,red\n",
        "{\"machines\": []}",
    ] {
        let faults = list_of(text).expect_err("no table");
        assert_eq!(faults.len(), 1, "{text:?}");
        assert_eq!(
            (faults[0].row, faults[0].fault.path.as_str()),
            (None, "file")
        );
    }
}

#[test]
fn comments_stay_with_what_they_are_of() {
    let mut yard = demo().written;
    yard["kits"][0]["comment"] = "By the door.".into();
    yard["kits"][0]["drive"][0]["comment"] = "New oil in May.".into();
    let yard = Yard::from_json(&yard.to_string()).expect("a yard");
    let text = table(&yard, List::Kits).to_csv().expect("a table");
    let read = entries(List::Kits, &text, None);
    assert_eq!(read[0]["comment"], "By the door.");
    assert_eq!(read[0]["drive"][0]["comment"], "New oil in May.");
    assert_eq!(
        rows(List::Kits, &text, None),
        rows(List::Kits, &text.replace("\r\n", "\n"), None)
    );
}
