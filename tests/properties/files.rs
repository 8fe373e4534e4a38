//! A yard written and read again is the same yard.

use crate::every::loaded;
use crate::random::yard;
use farend_core::yard::Yard;
use farend_core::yard::entry::YardEntry;
use proptest::prelude::*;

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
