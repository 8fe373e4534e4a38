//! Every value of a file makes a difference to the yard that is built of it.

use crate::every_field::{Place, full, places, with};
use farend_core::yard::Yard;
use farend_core::yard::shape::Shape;
use serde_json::{Value, json};

const VERSION: &str = "format_version";

/// Other values that its place may have, of which the first that is taken is tried. So that no other
/// figure is in the way, numbers differ by a little only.
fn others(place: &Place, value: &Value) -> Vec<Value> {
    let near = |number: f64| [number * 0.999, number * 1.001];
    let word = |of: &'static [&'static str]| of.iter().map(|word| json!(word));
    match place.field.shape {
        Shape::Flag => vec![json!(value != &json!(true))],
        Shape::Text { .. } => vec![json!("Another text"), json!("USD")],
        Shape::Id => vec![json!("another-id")],
        Shape::Number { .. } => near(value.as_f64().expect("a number"))
            .map(Value::from)
            .to_vec(),
        Shape::Whole { min, max } => (min..=max).map(Value::from).collect(),
        Shape::Uncertain { .. } => near(1.0)
            .map(|factor| {
                let part = |key: &str| json!(value[key].as_f64().expect("a number") * factor);
                json!({"low": part("low"), "likely": part("likely"), "high": part("high")})
            })
            .to_vec(),
        Shape::OneOf(of) => word(of).collect(),
        Shape::Words { of, .. } => word(of).map(|word| json!([word])).collect(),
        // Their fields stand for them.
        Shape::Group(_) | Shape::Many { .. } => Vec::new(),
    }
}

/// All but the file itself.
fn built(file: &Value) -> Option<String> {
    let yard = Yard::from_json(&file.to_string()).ok()?;
    let written = Value::Null;
    Some(format!("{:?}", Yard { written, ..yard }))
}

#[test]
fn every_value_of_a_file_arrives() {
    let mut lost = Vec::new();
    for place in places() {
        let full = full(&place);
        let before = built(&full).expect("the full yard");
        let value = full.pointer(&place.pointer).expect("a value");
        let others = others(&place, value);
        let is_group = others.is_empty();
        let mut others = others.iter().filter(|other| *other != value);
        let after = others.find_map(|other| built(&with(&place, other.clone())));
        if !is_group && after.is_none_or(|after| after == before) {
            lost.push(place.path);
        }
    }
    // That is the file's, not the yard's.
    assert_eq!(lost, [VERSION]);
}
