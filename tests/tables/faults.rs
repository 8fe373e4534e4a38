//! Every kind of fault, at its row and column.

use crate::{faults, rows};
use farend_core::fault::Rule;
use farend_core::yard::list::List;
use farend_core::yard::table::{MOST_COLUMNS, RowFault};

/// Row, column and a part of what is said.
type Expected = (usize, &'static str, &'static str);

fn are(faults: &[RowFault], expected: &[Expected]) {
    let found: Vec<_> = faults
        .iter()
        .map(|it| (it.row.expect("a row"), it.fault.path.as_str()))
        .collect();
    let wanted: Vec<_> = expected
        .iter()
        .map(|(row, column, _)| (*row, *column))
        .collect();
    assert_eq!(found, wanted, "{faults:#?}");
    for (fault, (_, _, says)) in faults.iter().zip(expected) {
        let text = fault.to_string();
        assert!(text.contains(says), "{text:?} doesn't say {says:?}");
        assert!(text.starts_with(&format!("Row {}", fault.row.unwrap_or_default())));
        assert!(!fault.fault.hint.to_string().is_empty());
    }
}

const MACHINES: &str = "id;name;kind;engine.net_kw;engine.rated_rpm;engine.lowest_rpm;\
                        rear_pto.rpm;rear_pto.engine_rpm";
const CIRCUITS: &str = "circuits.2.outlet;circuits.2.flow_l_min;circuits.2.engine_rpm;\
                        circuits.2.relief_bar;circuits.2.steering.policy";

#[test]
fn each_fault_names_its_row_and_column() {
    let table: &[(List, &str, &[&str], &[Expected])] = &[
        // What a cell may hold.
        (
            List::Machines,
            MACHINES,
            &[
                "a;A;tractor;46;2400;1100;540;2200",
                "b;B;tractor;9000;2400;1100;540;2200",
                "c;C;lorry;46;2400;1100;540;fast",
                "D!;D;tractor;46;2400;;540;2200",
            ],
            &[
                (3, "engine.net_kw", "(9000) must be 3 to 600 kW"),
                (4, "kind", "one of: tractor, skid_steer"),
                (4, "rear_pto.engine_rpm", "must be a number"),
                (5, "id", "an identifier"),
                (5, "engine.lowest_rpm", "is missing"),
            ],
        ),
        // What only shows when figures are held together, though another row has faults of its own.
        (
            List::Machines,
            MACHINES,
            &[
                "a;A;tractor;46;2400;1100;540;2500",
                "b;B;tractor;46;2400;2500;;",
                "c;C;tractor;46;;1100;540;2200",
            ],
            &[
                (2, "rear_pto.engine_rpm", "must not be above"),
                (3, "engine.lowest_rpm", "the engine's rated speed, 2400"),
                (4, "engine.rated_rpm", "is missing"),
            ],
        ),
        // A place of a list, with the one before left empty.
        (
            List::Machines,
            &format!("{MACHINES};{CIRCUITS}"),
            &[
                "a;A;tractor;46;2400;1100;;;remotes;52;2400;1900;separate_pump",
                "b;B;tractor;46;2400;1100;;;remotes;52;2500;190;separate_pump",
                "c;C;tractor;46;2400;1100;;;remotes;52;2400;190;summed",
                "d;D;tractor;46;2400;1100;;;remotes;;2400;190;",
            ],
            &[
                (2, "circuits.2.relief_bar", "1900"),
                (3, "circuits.2.engine_rpm", "not be above"),
                (4, "circuits.2.steering.flow_l_min", "is missing"),
                (5, "circuits.2.flow_l_min", "is missing"),
                (5, "circuits.2.steering.policy", "is missing"),
            ],
        ),
        // Uncertain figures.
        (
            List::Machines,
            "id;name;kind;engine.rated_rpm;engine.lowest_rpm;engine.net_kw;engine.net_kw.low;\
             engine.net_kw.likely;engine.net_kw.high;engine.net_kw.source",
            &[
                "a;A;tractor;2400;1100;;40;46;44;",
                "b;B;tractor;2400;1100;;40;;47;",
                "c;C;tractor;2400;1100;46;40;46;47;",
                "d;D;tractor;2400;1100;;40;46;47;hearsay",
                "e;E;tractor;2400;1100;;40;46;1000;own",
            ],
            &[
                (2, "engine.net_kw", "rising order"),
                (3, "engine.net_kw.likely", "is missing"),
                (4, "engine.net_kw", "not both"),
                (5, "engine.net_kw.source", "must be one of"),
                (6, "engine.net_kw.high", "must be 3 to 600 kW"),
            ],
        ),
        // A fault of a figure that has no cell of its own stands at its likely value.
        (
            List::Machines,
            "id;name;kind;engine.rated_rpm;engine.lowest_rpm;engine.net_kw.low;\
             engine.net_kw.likely;engine.net_kw.high",
            &[
                "a;A;tractor;2400;1100;40;46;44",
                "b;B;tractor;2400;1100;40;41;44",
            ],
            &[(2, "engine.net_kw.likely", "rising order")],
        ),
        // One word of several in a cell.
        (
            List::Kits,
            "id;name;Routes",
            &["a;A;rear_shaft mid_shaft", "b;B;rear_shaft middle", "c;C;"],
            &[(3, "Routes", "\"middle\""), (4, "Routes", "is missing")],
        ),
        // A group that must be there is one fault, not another for being left out.
        (
            List::Machines,
            "id;name;kind;engine;engine.net_kw;engine.rated_rpm;engine.lowest_rpm",
            &["a;A;tractor;;46;2400;1100", "b;B;tractor;no;46;2400;1100"],
            &[(3, "engine", "other columns say something")],
        ),
        // The same identifier twice.
        (
            List::Kits,
            "id;name;routes",
            &["a;A;rear_shaft", "b;B;rear_shaft", "a;C;rear_shaft"],
            &[(4, "id", "Row 2 has it too")],
        ),
        // Headers.
        (
            List::Kits,
            "id;name;routes;prize;drive.1.ratoi;drive.9.kind;drive.01.kind;routes;hoses.bore;drive",
            &["a;A;rear_shaft;;;;;;;"],
            &[
                (1, "prize", "Did you mean price?"),
                (1, "drive.1.ratoi", "Did you mean drive.1.ratio?"),
                (1, "drive.9.kind", "is not a field"),
                (1, "drive.01.kind", "is not a field"),
                (1, "routes", "column H"),
                (1, "hoses.bore", "Did you mean hoses.bore_mm?"),
                (1, "drive", "is not a field"),
            ],
        ),
        (
            List::Machines,
            "id;name;kind;engine.net_kw;engine.rated_rpm;engine.lowest_rpm;\
             circuits.2.flow_lmin;colour",
            &["a;A;tractor;46;2400;1100;;"],
            &[
                (
                    1,
                    "circuits.2.flow_lmin",
                    "Did you mean circuits.2.flow_l_min?",
                ),
                (1, "colour", "The template has all columns"),
            ],
        ),
        // Cells without a header, beyond the last too.
        (
            List::Kits,
            "id;name;routes;;",
            &[
                "a;A;rear_shaft;;",
                "b;B;rear_shaft;5;",
                "c;C;rear_shaft;6;;;;7",
            ],
            &[(3, "column D", "(\"5\")"), (4, "column H", "no header")],
        ),
        // Letters that another encoding had.
        (
            List::Kits,
            "id;name;routes",
            &["a;Gelenkwelle f\u{fffd}r vorn;rear_shaft"],
            &[(2, "name", "CSV UTF-8")],
        ),
        // What every row lacks is told once.
        (
            List::Kits,
            "id;name;drive.1.kind",
            &["a;A;belt", "b;B;", "c;C;chain"],
            &[
                (1, "routes", "is missing"),
                (2, "drive.1.ratio", "is missing"),
                (4, "drive.1.ratio", "is missing"),
            ],
        ),
        // What stands empty under its header is told in each row, be it in all of them.
        (
            List::Kits,
            "id;name;routes",
            &["a;;rear_shaft", "b;;rear_shaft"],
            &[(2, "name", "is missing"), (3, "name", "is missing")],
        ),
    ];
    for (list, headers, rows, expected) in table {
        let text = format!("{headers}\n{}\n", rows.join("\n"));
        are(&faults(*list, &text), expected);
    }
}

/// A spreadsheet counts blank lines; a line break within a cell is none of them.
#[test]
fn rows_are_counted_as_a_spreadsheet_does() {
    let lines = [
        "",
        "id;name;routes",
        "a;A;rear_shaft",
        "",
        ";;",
        "b;\"B,\n\n two lines on\";rear_shaft",
        "",
        "",
        "c;C;sideways",
        "d;D;sideways",
    ];
    for ends in ["\n", "\r\n", "\r"] {
        let text = lines.join(ends);
        let faults = faults(List::Kits, &text);
        are(
            &faults,
            &[(9, "routes", "sideways"), (10, "routes", "sideways")],
        );
    }
}

#[test]
fn a_quote_left_open_is_told_with_its_row() {
    for (cell, says) in [("\"A", "stands alone"), ("A\" pipe", "stands alone")] {
        let text = format!("id;name;routes\na;A;rear_shaft\nb;{cell};rear_shaft\nc;C;rear_shaft\n");
        are(&faults(List::Kits, &text), &[(3, "quotes", says)]);
    }
    let faults = faults(List::Kits, "id;\"name;routes\na;A;rear_shaft\n");
    are(&faults, &[(1, "quotes", "stands alone")]);
}

#[test]
fn too_many_columns_are_one_fault() {
    // Just so many are read; what is below an empty header is left.
    let headers = format!("id;name;routes{}", ";".repeat(MOST_COLUMNS - 3));
    rows(List::Kits, &format!("{headers}\na;A;rear_shaft\n"), None);
    let headers = vec!["id"; MOST_COLUMNS + 1].join(";");
    let faults = faults(List::Kits, &format!("{headers}\na\n"));
    assert_eq!(faults.len(), 1);
    assert_eq!(faults[0].fault.rule, Rule::AtMost(MOST_COLUMNS));
}
