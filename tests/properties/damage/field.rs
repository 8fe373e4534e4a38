//! Damage to single fields of a yard's JSON.

use super::lies_in;
use farend_core::yard::rules::YARD;
use farend_core::yard::shape::{Field, Shape};
use proptest::sample::Index;
use serde_json::{Map, Value, json};

/// A field where it stands in a yard.
#[derive(Clone)]
struct Place {
    /// The JSON pointer to the group that it stands in.
    group: String,
    /// The path that a fault names.
    path: String,
    field: &'static Field,
}

/// What is done to a field.
#[derive(Clone, Copy, Debug)]
pub enum Kind {
    WrongType,
    TooLow,
    TooHigh,
    Enormous,
    LowAboveHigh,
    Missing,
    Misspelt,
    /// Beside it a field that the format doesn't have.
    Unknown,
    /// Brackets in brackets, as deep as JSON may go.
    Deep,
    Long,
}

/// What was done, and the places that faults must name.
pub type Damage = (Kind, Vec<String>);

/// Damages as many fields as there are choices, of which none lies in another.
pub fn damaged(yard: &mut Value, choices: &[(Index, Index)]) -> Vec<Damage> {
    let mut places = Vec::new();
    collect(yard, YARD, ("", ""), &mut places);
    // Of a newer version nothing else would be told.
    places.retain(|place| place.field.key != "format_version");
    let mut damaged = Vec::new();
    for (which, how) in choices {
        let Some(place) = places.get(which.index(places.len().max(1))).cloned() else {
            break;
        };
        let kinds = kinds(&place, yard);
        damaged.push(damage(yard, &place, *how.get(&kinds)));
        places.retain(|other| {
            !lies_in(&other.path, &place.path) && !lies_in(&place.path, &other.path)
        });
    }
    damaged
}

/// Every field that is there.
fn collect(
    value: &Value,
    fields: &'static [Field],
    (pointer, path): (&str, &str),
    places: &mut Vec<Place>,
) {
    for field in fields {
        let Some(value) = value.get(field.key) else {
            continue;
        };
        let place = Place {
            group: pointer.to_owned(),
            path: join(path, field.key),
            field,
        };
        let pointer = format!("{pointer}/{}", field.key);
        match (field.shape, value) {
            (Shape::Group(inner), _) => collect(value, inner, (&pointer, &place.path), places),
            (Shape::Many { of, .. }, Value::Array(items)) => {
                for (number, item) in items.iter().enumerate() {
                    let at = (
                        format!("{pointer}/{number}"),
                        format!("{}[{number}]", place.path),
                    );
                    collect(item, of, (&at.0, &at.1), places);
                }
            }
            _ => {}
        }
        places.push(place);
    }
}

fn join(path: &str, key: &str) -> String {
    match path {
        "" => key.to_owned(),
        _ => format!("{path}.{key}"),
    }
}

/// What can be done to a field so that it's wrong.
fn kinds(place: &Place, yard: &Value) -> Vec<Kind> {
    let mut kinds = vec![
        Kind::WrongType,
        Kind::Misspelt,
        Kind::Unknown,
        Kind::Deep,
        Kind::Long,
    ];
    if place.field.required {
        kinds.push(Kind::Missing);
    }
    if limits(place.field.shape).is_some() {
        kinds.extend([Kind::TooLow, Kind::TooHigh, Kind::Enormous]);
    }
    let group = yard.pointer(&place.group).expect("a group");
    let value = &group[place.field.key];
    if value["low"].as_f64() < value["high"].as_f64() {
        kinds.push(Kind::LowAboveHigh);
    }
    kinds
}

fn limits(shape: Shape) -> Option<(f64, f64)> {
    match shape {
        Shape::Number { min, max, .. } | Shape::Uncertain { min, max, .. } => Some((min, max)),
        Shape::Whole { min, max } => Some((f64::from(min), f64::from(max))),
        _ => None,
    }
}

fn damage(yard: &mut Value, place: &Place, kind: Kind) -> Damage {
    let group = yard
        .pointer_mut(&place.group)
        .and_then(Value::as_object_mut);
    let group = group.expect("a group");
    let key = place.field.key;
    let beside =
        |key: &str| place.path[..place.path.len() - place.field.key.len()].to_owned() + key;
    let limits = limits(place.field.shape);
    let mut named = vec![place.path.clone()];
    let mut set = |value: Value| {
        group.insert(key.to_owned(), value);
    };
    match kind {
        Kind::WrongType => set(match place.field.shape {
            Shape::Text { .. } | Shape::Id | Shape::OneOf(_) => json!(5),
            Shape::Words { .. } | Shape::Many { .. } => json!({}),
            Shape::Group(_) => json!([]),
            Shape::Flag | Shape::Number { .. } | Shape::Whole { .. } | Shape::Uncertain { .. } => {
                json!("5")
            }
        }),
        Kind::TooLow => set(json!(limits.expect("a number").0 - 1.0)),
        Kind::TooHigh => set(json!(limits.expect("a number").1 + 1.0)),
        Kind::Enormous => set(json!(f64::MAX)),
        Kind::Deep => set((0..100).fold(json!(1), |inside, _| json!([inside]))),
        Kind::Long => set(json!("x".repeat(200_000))),
        Kind::LowAboveHigh => swap(group.get_mut(key).and_then(Value::as_object_mut)),
        Kind::Missing => {
            group.remove(key);
        }
        Kind::Misspelt => {
            let misspelt = format!("{key}e");
            let value = group.remove(key).expect("it's there");
            group.insert(misspelt.clone(), value);
            if !place.field.required {
                named.clear();
            }
            named.push(beside(&misspelt));
        }
        Kind::Unknown => {
            group.insert("colour".to_owned(), json!("red"));
            named = vec![beside("colour")];
        }
    }
    (kind, named)
}

fn swap(three: Option<&mut Map<String, Value>>) {
    let three = three.expect("low, likely and high");
    let low = three["low"].take();
    let high = three["high"].take();
    three.insert("low".to_owned(), high);
    three.insert("high".to_owned(), low);
}
