//! The schema of saved comparisons.

use super::{committed, is_committed, narrow_yard, wrong};
use crate::comparison::of_demo;
use farend_core::export::comparison::SavedComparison;
use serde_json::{Value, json};

const NAME: &str = "comparison";

#[test]
fn the_committed_schema_is_that_of_the_types() {
    let mut schema = schemars::schema_for!(SavedComparison<'static>).to_value();
    narrow_yard(&mut schema, "/$defs/YardEntry");
    is_committed(NAME, &schema);
}

#[test]
fn what_is_saved_follows_the_schema() {
    let schema = committed(NAME);
    for made in of_demo() {
        let file = serde_json::from_str(&made.text()).expect("JSON");
        assert_eq!(wrong(&schema, &file), [""; 0], "{}", made.state.machine);
    }
}

/// It can say no.
#[test]
fn what_breaks_a_rule_breaks_the_schema() {
    let schema = committed(NAME);
    let made = of_demo().next().expect("a machine");
    let good: Value = serde_json::from_str(&made.text()).expect("JSON");
    for (pointer, value) in [
        ("/format", json!("farend-yard")),
        ("/format_version", json!(2)),
        ("/link", json!(5)),
        ("/yard/format_version", json!(3)),
        ("/yard/name", json!("x".repeat(81))),
        ("/yard/machines/0/id", json!("Upper")),
        ("/yard/machines/0/engine/net_kw", json!(9000)),
        ("/yard/machines/0/engine/rated_rpm", json!("2400")),
        ("/yard/machines/0/kind", json!("horse")),
        ("/yard/kits/0/routes", json!(["by_air"])),
        ("/results/routes/0/fits", json!("perhaps")),
    ] {
        let mut bad = good.clone();
        *bad.pointer_mut(pointer).expect(pointer) = value;
        assert!(!schema.is_valid(&bad), "{pointer}");
    }
}
