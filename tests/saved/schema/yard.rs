//! The schema of yard files. That it refuses what the rules refuse is tried field by field with the
//! yard files.

use super::{committed, is_committed, narrow_yard, wrong};
use crate::comparison::of_demo;
use farend_core::yard::DEMO;
use farend_core::yard::entry::YardEntry;
use farend_tests::load;
use serde_json::Value;

const NAME: &str = "yard";

#[test]
fn the_committed_schema_is_that_of_the_types() {
    let mut schema = schemars::schema_for!(YardEntry).to_value();
    narrow_yard(&mut schema, "");
    is_committed(NAME, &schema);
}

/// The demo is the pattern that the page hands out; what is opened is what a comparison keeps.
#[test]
fn yards_follow_the_schema() {
    let schema = committed(NAME);
    let pattern: Value = serde_json::from_str(DEMO).expect("JSON");
    assert_eq!(wrong(&schema, &pattern), [""; 0]);
    let opened = load(include_str!("../../yards/hand-written.json")).written;
    assert_eq!(wrong(&schema, &opened), [""; 0]);
    let made = of_demo().next().expect("a machine");
    let saved: Value = serde_json::from_str(&made.text()).expect("JSON");
    assert_eq!(wrong(&schema, &saved["yard"]), [""; 0]);
}
