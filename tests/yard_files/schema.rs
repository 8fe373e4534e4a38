//! The schema of yard files against the rules, field by field: an editor that follows it says what
//! the program would.

use crate::every_field::{Place, bad_values, faults, full, places, with, without};
use farend_core::yard::shape::Shape;
use jsonschema::Validator;
use serde_json::{Value, json};

fn schema() -> Validator {
    let text = include_str!("../../docs/yard.schema.json");
    let schema = serde_json::from_str(text).expect("JSON");
    jsonschema::draft202012::new(&schema).expect("a schema")
}

/// No schema can say that one number is above another.
fn only_out_of_order(value: &Value, shape: Shape) -> bool {
    let Shape::Uncertain { min, max, .. } = shape else {
        return false;
    };
    let three = ["low", "likely", "high"].map(|key| value[key].as_f64().unwrap_or(f64::NAN));
    three.iter().all(|it| (min..=max).contains(it)) && !three.is_sorted()
}

/// The full yard with another key in a group.
fn with_key(place: &Place, key: &str) -> Value {
    let mut yard = full(place);
    let group = yard.pointer_mut(&place.pointer).expect("a group");
    group[key] = json!(["for people"]);
    yard
}

#[test]
fn a_full_yard_follows_it() {
    let schema = schema();
    for yard in crate::full::loadable() {
        let yard = serde_json::to_value(yard).expect("a yard as JSON");
        assert!(
            schema.validate(&yard).is_ok(),
            "{:?}",
            schema.validate(&yard)
        );
    }
}

#[test]
fn it_refuses_each_value_that_the_rules_refuse() {
    let schema = schema();
    let mut out_of_order = 0;
    for place in places() {
        for (value, _) in bad_values(place.field.shape) {
            let what = format!("{} = {value:.60}", place.path);
            if only_out_of_order(&value, place.field.shape) {
                out_of_order += 1;
                continue;
            }
            assert!(!schema.is_valid(&with(&place, value)), "{what} was taken");
        }
        if place.field.required {
            for yard in [without(&place), with(&place, Value::Null)] {
                assert!(!schema.is_valid(&yard), "{} isn't missed", place.path);
            }
        }
        if let Shape::Group(_) = place.field.shape {
            let yard = with_key(&place, "remark");
            assert!(!schema.is_valid(&yard), "{}: a key was taken", place.path);
        }
    }
    let uncertain = |place: &&Place| matches!(place.field.shape, Shape::Uncertain { .. });
    assert_eq!(out_of_order, places().iter().filter(uncertain).count());
}

/// Left out, null, at a limit, a whole number with a point, with a comment: where the rules take
/// it, so does the schema.
#[test]
fn it_takes_what_the_rules_take() {
    let schema = schema();
    for place in places() {
        let mut yards = vec![without(&place), with(&place, Value::Null)];
        match place.field.shape {
            Shape::Number { min, max, .. } => {
                yards.extend([min, max].map(|it| with(&place, json!(it))));
            }
            Shape::Uncertain { min, max, .. } => {
                let three = json!({ "low": min, "likely": min, "high": max, "source": null });
                yards.push(with(&place, three));
            }
            Shape::Whole { max, .. } => yards.push(with(&place, json!(f64::from(max)))),
            Shape::Group(_) => yards.push(with_key(&place, "comment")),
            _ => {}
        }
        for yard in yards {
            // The rules may refuse it for another field's sake, which no schema can know.
            let refused = faults(&yard)
                .iter()
                .any(|fault| fault.path.starts_with(&place.path));
            assert!(
                schema.is_valid(&yard) || refused,
                "{}: {:?}",
                place.path,
                schema.validate(&yard)
            );
        }
    }
}
