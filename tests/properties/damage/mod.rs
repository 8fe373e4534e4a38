//! Damaged yards: every damaged place is named, with what to do, and nothing else is blamed.

mod field;

use crate::random::yard;
use farend_core::fault::Fault;
use farend_core::yard::{DEMO, Yard};
use field::damaged;
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::{Index, select};
use proptest::test_runner::TestCaseError;
use serde_json::{Value, json};

/// A random yard or the demo, as JSON.
fn sound() -> BoxedStrategy<Value> {
    let demo: Value = serde_json::from_str(DEMO).expect("the demo is JSON");
    prop_oneof![
        yard().prop_map(|entry| serde_json::to_value(entry).expect("a yard as JSON")),
        Just(demo),
    ]
    .boxed()
}

/// The faults of a text that is no sound yard. Each says in a few words what to do.
fn faults(text: &str) -> Result<Vec<Fault>, TestCaseError> {
    let faults = Yard::from_json(text).err().unwrap_or_default();
    prop_assert!(!faults.is_empty(), "it was taken");
    for fault in &faults {
        prop_assert!(!fault.hint.to_string().is_empty(), "no hint: {fault}");
        prop_assert!(fault.to_string().chars().count() < 600, "{fault:.600}");
    }
    Ok(faults)
}

/// Whether a fault's path is a place or lies in it.
fn lies_in(path: &str, place: &str) -> bool {
    path.strip_prefix(place)
        .is_some_and(|rest| rest.is_empty() || rest.starts_with(['.', '[']))
}

proptest! {
    #![proptest_config(crate::cases(800))]

    #[test]
    fn damaged_fields_are_named_and_no_others(
        mut yard in sound(),
        choices in vec(any::<(Index, Index)>(), 1..=5),
    ) {
        let damaged = damaged(&mut yard, &choices);
        let faults = faults(&yard.to_string())?;
        for damage in &damaged {
            for place in &damage.1 {
                let named = faults.iter().any(|fault| lies_in(&fault.path, place));
                prop_assert!(named, "{damage:?} isn't in {faults:?}");
            }
        }
        for fault in &faults {
            let mut places = damaged.iter().flat_map(|(_, named)| named);
            prop_assert!(places.any(|place| lies_in(&fault.path, place)), "{fault} for {damaged:?}");
        }
    }
}

proptest! {
    #![proptest_config(crate::cases(100))]

    #[test]
    fn entries_with_the_same_identifier_are_named(
        mut yard in sound(),
        choices in vec((select(&["machines", "implements", "kits"][..]), any::<Index>()), 1..=5),
    ) {
        let mut expected = Vec::new();
        for (list, choice) in choices {
            let entries = yard[list].as_array_mut().expect("a list");
            let place = 1 + choice.index(entries.len() - 1);
            entries[place]["id"] = entries[0]["id"].clone();
            expected.push(format!("{list}[{place}].id"));
        }
        let mut found: Vec<_> = faults(&yard.to_string())?.into_iter().map(|it| it.path).collect();
        expected.sort();
        expected.dedup();
        found.sort();
        prop_assert_eq!(found, expected);
    }

    /// The file as a whole is to blame, once.
    #[test]
    fn text_that_is_no_json_is_refused(
        mut yard in sound(),
        choice in any::<Index>(),
        instead in select(&["NaN", "-Infinity", "1e999", "5,5", "deep", "cut"][..]),
    ) {
        const MARK: &str = "a value of the machine";
        yard["machines"][0]["engine"]["rated_rpm"] = json!(MARK);
        let text = yard.to_string();
        let text = match instead {
            "cut" => {
                let ends: Vec<_> = text.char_indices().map(|(end, _)| end).collect();
                text[..ends[choice.index(ends.len())]].to_owned()
            }
            "deep" => {
                let depth = 128 + choice.index(100_000);
                let nest = "[".repeat(depth) + &"]".repeat(depth);
                text.replace(&format!("\"{MARK}\""), &nest)
            }
            number => text.replace(&format!("\"{MARK}\""), number),
        };
        let faults = faults(&text)?;
        let paths: Vec<_> = faults.iter().map(|fault| fault.path.as_str()).collect();
        prop_assert_eq!(paths, ["file"]);
    }
}
