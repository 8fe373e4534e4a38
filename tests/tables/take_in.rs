//! A table taken into a yard: what is new, changed and gone, and what stays as it was written.

use crate::rows;
use farend_core::yard::Yard;
use farend_core::yard::edit::{Editing, Whose};
use farend_core::yard::list::List;
use farend_core::yard::table::{Change, How, TakenIn, table, take_in};
use farend_tests::{demo, load};
use serde_json::{Value, json};

fn taken(yard: &Yard, list: List, text: &str, how: How) -> TakenIn {
    take_in(&Editing::from(yard), &rows(list, text, None), how).expect("a yard")
}

fn ids(yard: &Yard, list: List) -> Vec<String> {
    let entries = yard.written[list.word()].as_array().expect("a list");
    let id = |entry: &Value| entry["id"].as_str().expect("an identifier").to_owned();
    entries.iter().map(id).collect()
}

/// The demo's kits as a table, two of them left out, one changed, one new.
fn edited() -> String {
    let text = table(&demo(), List::Kits).to_csv().expect("a table");
    let mut lines: Vec<_> = text.split_terminator("\r\n").map(str::to_owned).collect();
    lines.drain(2..4);
    let name = lines[2].split(',').nth(1).expect("a name").to_owned();
    lines[2] = lines[2].replacen(&name, "Another name", 1);
    let new = lines[1].split_once(',').expect("cells").1;
    lines.push(format!("new-kit,{new}"));
    lines.join("\r\n")
}

#[test]
fn merging_keeps_what_the_table_leaves_out_and_replacing_does_not() {
    let yard = demo();
    let before = ids(&yard, List::Kits);
    let merged = taken(&yard, List::Kits, &edited(), How::Merge);
    assert_eq!(merged.counts(), [1, 1, before.len() - 3]);
    assert_eq!(merged.removed, [""; 0]);
    let mut after = before.clone();
    after.push("new-kit".to_owned());
    assert_eq!(ids(&merged.yard.sound(), List::Kits), after);

    let replaced = taken(&yard, List::Kits, &edited(), How::Replace);
    assert_eq!(replaced.counts(), merged.counts());
    assert_eq!(replaced.rows, merged.rows);
    let names = [1, 2].map(|place| yard.kits[place].name.clone());
    assert_eq!(replaced.removed, names);
    after.drain(1..3);
    assert_eq!(ids(&replaced.yard.sound(), List::Kits), after);

    let changed = &merged.rows[1];
    assert_eq!((changed.row, changed.id.as_str()), (3, before[3].as_str()));
    assert_eq!(changed.name, "Another name");
    assert_eq!(changed.change, Change::Changed(vec!["name".to_owned()]));
    assert_eq!(merged.rows.last().map(|it| &it.change), Some(&Change::New));
    for made in [&merged.yard.sound(), &replaced.yard.sound()] {
        assert_eq!(made.kit(&before[3]).expect("a kit").name, "Another name");
        assert_eq!(made.machines, yard.machines);
        assert_eq!(made.name, yard.name);
    }
}

/// Notes that no cell can hold, numbers as they were typed.
#[test]
fn an_entry_that_says_the_same_stays_as_it_was_written() {
    let mut yard = demo().written;
    yard["kits"][0]["comment"] = json!({ "seen": ["May", 5] });
    yard["kits"][0]["$schema"] = "none".into();
    yard["kits"][0]["drive"][0]["ratio"] = json!(1.0);
    let yard = Yard::from_json(&yard.to_string()).expect("a yard");
    let text = table(&yard, List::Kits).to_csv().expect("a table");
    for how in [How::Merge, How::Replace] {
        let taken = taken(&yard, List::Kits, &text, how);
        assert_eq!(taken.counts(), [0, 0, yard.kits.len()]);
        assert_eq!(
            taken.yard.sound().written.to_string(),
            yard.written.to_string()
        );
    }
}

#[test]
fn a_change_of_a_figure_into_a_range_is_told_by_its_columns() {
    let yard = demo();
    let text = "id;name;routes;price;drive.1.kind;drive.1.ratio\nnew;New;rear_shaft;5;belt;2\n";
    let with = taken(&yard, List::Kits, text, How::Merge).yard.sound();
    let text = "id;name;routes;drive.1.kind;drive.1.ratio;drive.1.efficiency.low;\
                drive.1.efficiency.likely;drive.1.efficiency.high\n\
                new;New;rear_shaft;belt;2;0.9;0.92;0.95\n";
    let changed = taken(&with, List::Kits, text, How::Merge);
    let columns = ["drive.1.efficiency.low", "drive.1.efficiency.likely"];
    let mut columns = columns.map(str::to_owned).to_vec();
    columns.extend(["drive.1.efficiency.high".to_owned(), "price".to_owned()]);
    assert_eq!(changed.rows[0].change, Change::Changed(columns));
}

/// What is being edited isn't lost because a table comes in.
#[test]
fn entries_with_faults_stay_as_they_are() {
    let mut yard = Editing::from(&demo());
    let id = "heron-68";
    let place = yard.place(List::Machines, id).expect("a machine");
    let whose = Whose::Entry(List::Machines, place);
    let change = yard.putting(whose, "engine.net_kw", None);
    yard.apply(change.expect("a field")).expect("a change");
    assert!(yard.sound().machine(id).is_none());
    let faults = yard.faults();
    let text = "id;name;routes\nnew;New;rear_shaft\n";
    let taken = take_in(&yard, &rows(List::Kits, text, None), How::Merge).expect("a yard");
    assert_eq!(taken.yard.faults(), faults);
    assert!(taken.yard.sound().kit("new").is_some());
}

#[test]
fn a_yard_without_entries_is_filled_by_tables() {
    let mut yard = Editing::from_json(r#"{"format_version": 2, "name": "New"}"#).expect("a yard");
    for list in List::ALL {
        let table = table(&demo(), *list).to_csv().expect("a table");
        let taken = take_in(&yard, &rows(*list, &table, None), How::Merge).expect("a yard");
        assert_eq!(taken.counts()[0], taken.rows.len());
        yard = taken.yard;
    }
    assert_eq!(yard.sound().machines, demo().machines);
    assert_eq!(yard.sound().implements, demo().implements);
    assert_eq!(yard.sound().kits, demo().kits);
}

/// Such a group says that something is there of which nothing is known.
#[test]
fn a_group_that_holds_only_an_empty_comment_stays() {
    let mut written = demo().written;
    written["machines"][0]["hitch"] = json!({"comment": []});
    let yard = load(&written.to_string());
    let text = table(&yard, List::Machines).to_csv().expect("a table");
    // Into a yard that has it otherwise: what says the same would stay as it's written there.
    let taken = taken(&demo(), List::Machines, &text, How::Replace);
    let again = taken.yard.sound();
    assert_eq!(again.machines, yard.machines);
    assert_eq!(again.written["machines"][0]["hitch"], json!({}));
}
