//! Tables as a spreadsheet saves them in several languages, with its own marks, flags and separators.
//! `tests/e2e/spreadsheet_tables.mjs` has LibreOffice make them from the tables that this program wrote
//! of the built-in yard; `cargo xtask test --full` makes them again.

use crate::{entries, rows};
use farend_core::yard::list::List;
use farend_core::yard::table::list_of;
use std::fs::read_to_string;
use std::path::PathBuf;

fn file(name: &str) -> String {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR"))
        .join("yards/tables")
        .join(name);
    read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

/// Each file, and a part of it that shows what it is a sample of.
const SAVED: &[(List, &str, &str)] = &[
    (List::Machines, "en-US", ",0.45,"),
    (List::Machines, "de-DE", ";0,45;"),
    (List::Implements, "de-DE", ";WAHR;"),
    (List::Kits, "fr-FR", "\t1,25\tFAUX\tVRAI\t"),
    (List::Kits, "es-ES", ";1,25;FALSO;VERDADERO;"),
];

#[test]
fn a_table_says_the_same_in_every_language() {
    for (list, language, sample) in SAVED {
        let own = file(&format!("{}.csv", list.word()));
        let saved = file(&format!("{}.{language}.csv", list.word()));
        assert!(saved.contains(sample), "{language}: {sample} isn't in it");
        assert_ne!(saved, own);
        assert_eq!(list_of(&saved), Ok(Some(*list)));
        assert_eq!(
            rows(*list, &saved, None),
            rows(*list, &own, None),
            "{language}"
        );
    }
}

#[test]
fn what_this_program_wrote_can_be_read_for_ever() {
    for (list, number) in [(List::Machines, 6), (List::Implements, 8), (List::Kits, 10)] {
        let entries = entries(list, &file(&format!("{}.csv", list.word())), None);
        assert_eq!(entries.len(), number, "{}", list.word());
    }
}
