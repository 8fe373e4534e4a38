//! Every field of a full yard, spoilt in every way that its shape can be.

use crate::full;
use farend_core::fault::{Fault, Rule};
use farend_core::hint::FaultHint;
use farend_core::yard::Yard;
use farend_core::yard::report::Report;
use farend_core::yard::rules::YARD;
use farend_core::yard::shape::{Field, Shape, check};
use serde_json::{Value, json};

/// A field where it stands in the full yard.
pub struct Place {
    /// The JSON pointer to it.
    pub pointer: String,
    /// The path that a fault names.
    pub path: String,
    pub field: &'static Field,
}

pub fn places() -> Vec<Place> {
    let mut places = Vec::new();
    collect(YARD, "", "", &mut places);
    places
}

fn collect(fields: &'static [Field], pointer: &str, path: &str, places: &mut Vec<Place>) {
    for field in fields {
        let pointer = format!("{pointer}/{}", field.key);
        let path = match path {
            "" => field.key.to_owned(),
            _ => format!("{path}.{}", field.key),
        };
        match field.shape {
            Shape::Group(inner) => collect(inner, &pointer, &path, places),
            Shape::Many { of, .. } => {
                collect(of, &format!("{pointer}/0"), &format!("{path}[0]"), places);
            }
            _ => {}
        }
        places.push(Place {
            pointer,
            path,
            field,
        });
    }
}

/// The full yard that has a field: of fields that exclude one another each has one.
pub fn full(place: &Place) -> Value {
    full::loadable()
        .iter()
        .map(|yard| serde_json::to_value(yard).expect("a yard as JSON"))
        .find(|yard| yard.pointer(&place.pointer).is_some())
        .unwrap_or_else(|| panic!("nothing at {}", place.pointer))
}

/// The full yard with another value at a place.
pub fn with(place: &Place, value: Value) -> Value {
    let mut yard = full(place);
    let at = yard.pointer_mut(&place.pointer);
    *at.unwrap_or_else(|| panic!("nothing at {}", place.pointer)) = value;
    yard
}

/// The full yard without a place's key.
pub fn without(place: &Place) -> Value {
    let mut yard = full(place);
    let (group, key) = place.pointer.rsplit_once('/').expect("a pointer");
    let group = yard.pointer_mut(group).and_then(Value::as_object_mut);
    let removed = group.and_then(|group| group.remove(key));
    assert!(removed.is_some(), "nothing at {}", place.pointer);
    yard
}

pub fn faults(yard: &Value) -> Vec<Fault> {
    Yard::from_json(&yard.to_string()).err().unwrap_or_default()
}

/// Values that a shape doesn't hold, and the word for the rule that each breaks.
pub fn bad_values(shape: Shape) -> Vec<(Value, &'static str)> {
    let number = |min: f64, max: f64| {
        vec![
            (json!(min - 0.001), "within"),
            (json!(max * 1.001 + 0.001), "within"),
            (json!(-1e300), "within"),
            (json!(1e300), "within"),
            (json!("5"), "type"),
            (json!("5,5"), "type"),
            (json!(true), "type"),
            (json!([5]), "type"),
        ]
    };
    let three =
        |low: f64, likely: f64, high: f64| json!({"low": low, "likely": likely, "high": high});
    match shape {
        Shape::Flag => vec![
            (json!("yes"), "type"),
            (json!(1), "type"),
            (json!({}), "type"),
        ],
        Shape::Text { most } => vec![
            (json!(""), "empty"),
            (json!(" \t"), "empty"),
            (json!("x".repeat(most + 1)), "at most"),
            (json!(5), "type"),
            (json!(["x"]), "type"),
        ],
        Shape::Id => vec![
            (json!(""), "type"),
            (json!("Upper"), "type"),
            (json!("with space"), "type"),
            (json!("höhe"), "type"),
            (json!("x".repeat(41)), "type"),
            (json!(5), "type"),
        ],
        Shape::Number { min, max, .. } => {
            let mut values = number(min, max);
            values.push((three(min, min, min), "type"));
            values
        }
        Shape::Whole { min, max } => {
            let mut values = number(f64::from(min), f64::from(max));
            // Below by a part: whole comes first.
            values[0] = (json!(i64::from(min) - 1), "within");
            values[1] = (json!(max + 1), "within");
            values.push((json!(f64::from(min) + 0.5), "type"));
            values
        }
        Shape::Uncertain { min, max, .. } => {
            let mut values = number(min, max);
            values.extend([
                (json!({}), "required"),
                (json!({"low": min, "likely": min}), "required"),
                (three(min, max, min), "type"),
                (three(min - 1.0, min, max), "within"),
                (three(min, min, max * 1.1 + 1.0), "within"),
                (json!({"low": min, "likely": "5", "high": max}), "type"),
                (json!({"low": null, "likely": min, "high": max}), "type"),
                (
                    json!({"low": min, "likely": min, "high": max, "source": "hearsay"}),
                    "one of",
                ),
                (
                    json!({"low": min, "likely": min, "high": max, "median": min}),
                    "unknown",
                ),
            ]);
            values
        }
        Shape::OneOf(_) => vec![
            (json!("nonsense"), "one of"),
            (json!(""), "one of"),
            (json!(5), "one of"),
        ],
        Shape::Words { of, most } => vec![
            (json!("bevel"), "type"),
            (json!({}), "type"),
            (json!(["nonsense"]), "one of"),
            (json!([5]), "one of"),
            (json!(vec![of[0]; most + 1]), "at most"),
        ],
        Shape::Group(_) => vec![
            (json!([]), "type"),
            (json!("x"), "type"),
            (json!(5), "type"),
        ],
        Shape::Many { most, .. } => vec![
            (json!({}), "type"),
            (json!("x"), "type"),
            (json!([5]), "type"),
            (json!(vec![json!({}); most + 1]), "at most"),
        ],
    }
}

/// The word for a rule.
pub fn word(rule: &Rule) -> &'static str {
    match rule {
        Rule::Within { .. } => "within",
        Rule::Required => "required",
        Rule::Type(_) => "type",
        Rule::OneOf(_) => "one of",
        Rule::UnknownField => "unknown",
        Rule::AtMost(_) => "at most",
        Rule::NotEmpty => "empty",
        Rule::Unique => "unique",
        Rule::NotAbove { .. } => "not above",
        Rule::Below { .. } => "below",
        Rule::Readable | Rule::Json { .. } => "readable",
    }
}

/// A fault must say in one line what was found, what is allowed and what to do.
pub fn speaks_plainly(fault: &Fault) {
    let text = fault.to_string();
    let hint = fault.hint.to_string();
    assert!(!hint.trim().is_empty(), "no hint: {text}");
    assert!(
        text.starts_with(&fault.path) && text.ends_with(&hint),
        "{text}"
    );
    assert!(text.contains(&fault.found), "{text}");
    assert!(text.chars().count() < 600, "{text}");
    if let Rule::Within { min, max, unit } = &fault.rule {
        for part in [&format!("{min} to {max}"), *unit] {
            assert!(text.contains(part), "{text} doesn't say {part}");
        }
    }
}

#[test]
fn each_bad_value_is_found_where_it_is() {
    let mut tried = 0;
    for place in places() {
        for (value, rule) in bad_values(place.field.shape) {
            let what = format!("{} = {value:.60}", place.path);
            let faults = faults(&with(&place, value));
            assert!(!faults.is_empty(), "{what} was taken");
            for fault in &faults {
                assert!(fault.path.starts_with(&place.path), "{what}: {fault}");
                speaks_plainly(fault);
            }
            let found: Vec<_> = faults.iter().map(|fault| word(&fault.rule)).collect();
            assert!(found.contains(&rule), "{what}: {found:?}, not {rule}");
            tried += 1;
        }
    }
    assert!(tried > 400, "only {tried}");
}

/// The value and its limits are repeated as they are.
#[test]
fn a_number_out_of_range_is_repeated_with_its_limits() {
    for place in places() {
        let (min, max, unit) = match place.field.shape {
            Shape::Number { min, max, unit } | Shape::Uncertain { min, max, unit } => {
                (min, max, unit)
            }
            _ => continue,
        };
        for number in [min - 0.5, max + 0.5] {
            let faults = faults(&with(&place, json!(number)));
            assert_eq!(
                faults,
                [Fault {
                    path: place.path.clone(),
                    found: json!(number).to_string(),
                    rule: Rule::Within { min, max, unit },
                    hint: place.field.hint.into(),
                }]
            );
        }
    }
}

#[test]
fn both_limits_themselves_are_taken() {
    for place in places() {
        let numbers = match place.field.shape {
            Shape::Number { min, max, .. } | Shape::Uncertain { min, max, .. } => vec![min, max],
            Shape::Whole { min, max } => vec![f64::from(min), f64::from(max)],
            _ => continue,
        };
        for number in numbers {
            let mut report = Report::default();
            check(&json!(number), place.field, &place.path, &mut report);
            assert!(report.is_empty(), "{} = {number}", place.path);
        }
    }
}

#[test]
fn a_missing_field_is_missed_where_it_must_be_there() {
    for place in places().iter().filter(|place| place.field.required) {
        for yard in [without(place), with(place, Value::Null)] {
            let faults = faults(&yard);
            let [fault] = faults.as_slice() else {
                panic!("{}: {faults:?}", place.path);
            };
            assert_eq!((&fault.path, &fault.rule), (&place.path, &Rule::Required));
            speaks_plainly(fault);
        }
    }
}

/// An optional field may be left out or null: that is the same.
#[test]
fn null_is_the_same_as_left_out() {
    for place in places().iter().filter(|place| !place.field.required) {
        let left_out = Yard::from_json(&without(place).to_string());
        let null = Yard::from_json(&with(place, Value::Null).to_string());
        assert_eq!(null, left_out, "{}", place.path);
    }
}

/// So is a source that is null.
#[test]
fn a_figure_may_have_no_source() {
    for place in places() {
        let Shape::Uncertain { min, max, .. } = place.field.shape else {
            continue;
        };
        let left_out = json!({"low": min, "likely": min, "high": max});
        let mut null = left_out.clone();
        null["source"] = Value::Null;
        let [left_out, null] =
            [left_out, null].map(|it| Yard::from_json(&with(&place, it).to_string()));
        assert_eq!(null, left_out, "{}", place.path);
    }
}

#[test]
fn a_whole_number_may_be_written_with_a_point() {
    for place in places() {
        if let Shape::Whole { min, .. } = place.field.shape {
            let yard = with(&place, json!(f64::from(min)));
            assert_eq!(faults(&yard), [], "{}", place.path);
        }
    }
}

/// A key with a letter too few: what was meant is named.
#[test]
fn a_misspelt_field_is_named() {
    for place in places() {
        let (group, key) = place.pointer.rsplit_once('/').expect("a pointer");
        // Of two letters nothing can be told.
        if key.len() < 3 {
            continue;
        }
        let misspelt = &key[..key.len() - 1];
        let mut yard = full(&place);
        let group = yard.pointer_mut(group).and_then(Value::as_object_mut);
        let group = group.expect("a group");
        let value = group.remove(key).expect("a full yard has it");
        group.insert(misspelt.to_owned(), value);

        let faults = faults(&yard);
        let path = &place.path[..place.path.len() - 1];
        let fault = faults.iter().find(|fault| fault.path == path);
        let fault = fault.unwrap_or_else(|| panic!("{path}: {faults:?}"));
        assert_eq!(fault.rule, Rule::UnknownField, "{path}");
        assert_eq!(fault.hint, FaultHint::Meant(key.to_owned()), "{path}");
        speaks_plainly(fault);
        let missed = faults.iter().any(|fault| fault.path == place.path);
        assert_eq!(missed, place.field.required, "{}", place.path);
    }
}
