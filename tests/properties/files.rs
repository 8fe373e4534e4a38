//! A yard written and read again is the same yard.

use crate::every::loaded;
use crate::random::{Parts, skid_steer, tractor, yard};
use farend_core::yard::Yard;
use farend_core::yard::entry::YardEntry;
use farend_tests::load;
use jsonschema::Validator;
use proptest::prelude::*;
use proptest::test_runner::TestCaseError;
use std::sync::LazyLock;

static SCHEMA: LazyLock<Validator> = LazyLock::new(|| {
    let text = include_str!("../../docs/yard.schema.json");
    let schema = serde_json::from_str(text).expect("JSON");
    jsonschema::draft202012::new(&schema).expect("a schema")
});

proptest! {
    #![proptest_config(crate::cases(300))]

    #[test]
    fn an_entry_is_read_as_it_was_written(entry in yard()) {
        for text in [
            serde_json::to_string(&entry).expect("a yard as JSON"),
            serde_json::to_string_pretty(&entry).expect("a yard as JSON"),
        ] {
            let read: YardEntry = serde_json::from_str(&text).expect("its own JSON");
            // Equal doubles, so equal bit for bit: no field is zero or not a number.
            prop_assert_eq!(&read, &entry);
        }
    }

    #[test]
    fn a_yard_is_the_same_whatever_the_spaces(entry in yard()) {
        let pretty = serde_json::to_string_pretty(&entry).expect("a yard as JSON");
        prop_assert_eq!(Yard::from_json(&pretty), Ok(loaded(&entry)));
    }
}

/// A file becomes a yard, what the yard writes becomes the same file, and follows the schema.
fn comes_back(entry: &YardEntry) -> Result<(), TestCaseError> {
    let text = serde_json::to_string(entry).expect("a yard as JSON");
    let written = load(&text).written;
    prop_assert!(SCHEMA.is_valid(&written), "{:?}", SCHEMA.validate(&written));
    // In the order of the type's fields again; the schema knows no others. No two numbers have the
    // same digits, so the same text is the same to the last bit.
    let again: YardEntry = serde_json::from_str(&written.to_string()).expect("its own JSON");
    prop_assert_eq!(serde_json::to_string(&again).expect("a yard as JSON"), text);
    Ok(())
}

// 10,008 yards: each case is 18.
proptest! {
    #![proptest_config(crate::cases(278))]

    #[test]
    fn yards_with_a_tractor_come_back(parts in Parts::with(tractor)) {
        for yard in parts.yards() {
            comes_back(&yard)?;
        }
    }

    #[test]
    fn yards_with_a_skid_steer_come_back(parts in Parts::with(skid_steer)) {
        for yard in parts.yards() {
            comes_back(&yard)?;
        }
    }
}
