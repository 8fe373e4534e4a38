//! Whether a kit comes with the machine or the implement, where its file doesn't say.

use farend_core::yard::DEMO;
use farend_tests::load;
use serde_json::{Value, json};

/// A kit of the demo with a change, as the program gets it.
fn included(id: &str, change: fn(&mut Value)) -> bool {
    let mut yard: Value = serde_json::from_str(DEMO).expect("the demo is JSON");
    let kits = yard["kits"].as_array_mut().expect("kits");
    let kit = kits.iter_mut().find(|kit| kit["id"] == id);
    change(kit.expect("a kit of the demo"));
    load(&yard.to_string())
        .kit(id)
        .expect("it's there")
        .included
}

/// This project's judgement: joint shafts and hoses come with what they join, all else is bought.
#[test]
fn joint_shafts_and_hoses_are_included_and_nothing_else() {
    for (id, expected) in [
        ("joint-shaft", true),
        ("loader-hoses", true),
        ("subframe-drive", false),
        ("forward-kit-540", false),
        ("pump-pack-1000", false),
    ] {
        assert_eq!(included(id, |_| {}), expected, "{id}");
    }
    assert!(!included("joint-shaft", |kit| kit["seat"] = json!("loader")));
    assert!(!included("joint-shaft", |kit| kit["drive"][0]["kind"] = json!("spur")));
    // A pump alone, without a box to drive it.
    assert!(!included("pump-pack-540", |kit| kit["drive"] = json!([])));
}

#[test]
fn what_the_file_says_counts() {
    assert!(!included("joint-shaft", |kit| kit["included"] = json!(false)));
    assert!(included("pump-pack-540", |kit| kit["included"] = json!(true)));
}
