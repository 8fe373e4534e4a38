//! The schema of saved comparisons, made from the types and the rules, and held against the
//! committed one.

use crate::comparison::of_demo;
use farend_core::export::comparison::SavedComparison;
use farend_core::yard::rules::YARD;
use farend_core::yard::shape::{Field, Shape};
use serde_json::{Value, json};

const COMMITTED: &str = include_str!("../../docs/comparison.schema.json");
const PATH: &str = concat!(
    env!("CARGO_MANIFEST_DIR"),
    "/../docs/comparison.schema.json"
);

fn schema() -> Value {
    let mut schema = schemars::schema_for!(SavedComparison<'static>).to_value();
    narrow(&mut schema, "YardEntry", YARD);
    schema
}

/// Adds the rules' ranges and hints to what the types say.
fn narrow(schema: &mut Value, group: &str, fields: &[Field]) {
    for field in fields {
        let pointer = format!("/$defs/{group}/properties/{}", field.key);
        let property = schema
            .pointer_mut(&pointer)
            .unwrap_or_else(|| panic!("{pointer} has a rule but no type"));
        let inner = inner(property);
        property["description"] = json!(field.hint);
        match field.shape {
            Shape::Text { most } => property["maxLength"] = json!(most),
            Shape::Id => property["pattern"] = json!("^[a-z0-9-]{1,40}$"),
            Shape::Number { min, max, .. } | Shape::Uncertain { min, max, .. } => {
                // Of three values it says nothing: they aren't a number.
                property["minimum"] = json!(min);
                property["maximum"] = json!(max);
            }
            Shape::Whole { min, max } => {
                property["minimum"] = json!(min);
                property["maximum"] = json!(max);
            }
            Shape::Words { most, .. } => property["maxItems"] = json!(most),
            Shape::Group(fields) => narrow(schema, &inner.expect("a group's type"), fields),
            Shape::Many { of, most } => {
                property["maxItems"] = json!(most);
                narrow(schema, &inner.expect("a list's type"), of);
            }
            Shape::Flag | Shape::OneOf(_) => {}
        }
    }
}

/// The type that a property refers to, by itself, as one of two or in a list.
fn inner(property: &Value) -> Option<String> {
    let reference = ["/$ref", "/anyOf/0/$ref", "/items/$ref"]
        .iter()
        .find_map(|pointer| property.pointer(pointer))?;
    let name = reference.as_str()?.rsplit('/').next()?;
    Some(name.to_owned())
}

#[test]
fn the_committed_schema_is_that_of_the_types() {
    let text = serde_json::to_string_pretty(&schema()).expect("JSON") + "\n";
    if std::env::var_os("FAREND_WRITE_SCHEMA").is_some() {
        std::fs::write(PATH, &text).expect("writing the schema");
        return;
    }
    assert!(
        text == COMMITTED,
        "docs/comparison.schema.json isn't what the types say. If the change is meant: \
         FAREND_WRITE_SCHEMA=1 cargo test -p farend-tests --test saved, then look at the difference"
    );
}

#[test]
fn what_is_saved_follows_the_schema() {
    let schema: Value = serde_json::from_str(COMMITTED).expect("JSON");
    jsonschema::draft202012::meta::validate(&schema).expect("a schema of draft 2020-12");
    let validator = jsonschema::draft202012::new(&schema).expect("a schema");
    for made in of_demo() {
        let file = serde_json::from_str(&made.text()).expect("JSON");
        let wrong: Vec<_> = validator
            .iter_errors(&file)
            .map(|error| format!("{}: {error}", error.instance_path()))
            .collect();
        assert_eq!(wrong, Vec::<String>::new(), "{}", made.state.machine);
    }
}

/// It can say no.
#[test]
fn what_breaks_a_rule_breaks_the_schema() {
    let schema: Value = serde_json::from_str(COMMITTED).expect("JSON");
    let validator = jsonschema::draft202012::new(&schema).expect("a schema");
    let made = of_demo().next().expect("a machine");
    let good: Value = serde_json::from_str(&made.text()).expect("JSON");
    for (pointer, value) in [
        ("/format", json!("farend-yard")),
        ("/format_version", json!(2)),
        ("/link", json!(5)),
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
        assert!(!validator.is_valid(&bad), "{pointer}");
    }
}
