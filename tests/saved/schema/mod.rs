//! Schemas made from types and rules, and held against the committed ones.

mod comparison;
mod yard;

use farend_core::yard::shape::{Field, Shape};
use jsonschema::Validator;
use serde_json::{Value, json};
use std::fs;

/// Adds what the rules say of a yard file to what its types say. A pointer leads to the yard's own
/// schema in the whole one.
fn narrow_yard(schema: &mut Value, yard: &str) {
    narrow(schema, yard, farend_core::yard::rules::YARD);
    let three = at(schema, "/$defs/UncertainEntry/anyOf/1");
    three["additionalProperties"] = json!(false);
    // What the program asks of a single field beside its rule. What holds between fields only the
    // program can tell.
    let first = json!(1);
    at(schema, &format!("{yard}/properties/machines"))["minItems"] = first.clone();
    at(schema, &format!("{yard}/properties/implements"))["minItems"] = first.clone();
    at(schema, "/$defs/KitEntry/properties/routes")["minItems"] = first;
    at(schema, &format!("{yard}/properties/currency"))["pattern"] = json!("^[A-Z]{3}$");
}

/// Adds the rules of one group's fields, and of the groups in it.
fn narrow(schema: &mut Value, group: &str, fields: &[Field]) {
    for field in fields {
        let property = at(schema, &format!("{group}/properties/{}", field.key));
        let inner = inner(property);
        property["description"] = json!(field.hint.english());
        match field.shape {
            Shape::Text { most } => {
                property["minLength"] = json!(1);
                property["maxLength"] = json!(most);
                // Not spaces alone.
                property["pattern"] = json!("\\S");
            }
            Shape::Id => property["pattern"] = json!("^[a-z0-9-]{1,40}$"),
            Shape::Number { min, max, .. } => within(property, json!(min), json!(max)),
            Shape::Uncertain { min, max, .. } => {
                // Of one number, and of each of three.
                within(property, json!(min), json!(max));
                for key in ["low", "likely", "high"] {
                    within(&mut property["properties"][key], json!(min), json!(max));
                }
            }
            Shape::Whole { min, max } => {
                property["type"] = json!("integer");
                within(property, json!(min), json!(max));
            }
            Shape::Words { most, .. } => a_list(property, most, field.required),
            Shape::Group(fields) => narrow(schema, &inner.expect("a group's type"), fields),
            Shape::Many { of, most } => {
                a_list(property, most, field.required);
                narrow(schema, &inner.expect("a list's type"), of);
            }
            Shape::Flag | Shape::OneOf(_) => {}
        }
    }
    let group = at(schema, group);
    group["additionalProperties"] = json!(false);
    for (key, says) in [
        ("$schema", "Where an editor finds the schema."),
        ("comment", "For people: no program reads it."),
    ] {
        group["properties"][key] = json!({ "description": says });
    }
}

fn within(property: &mut Value, min: Value, max: Value) {
    property["minimum"] = min;
    property["maximum"] = max;
}

fn a_list(property: &mut Value, most: usize, required: bool) {
    property["maxItems"] = json!(most);
    if !required {
        property["type"] = json!(["array", "null"]);
    }
}

fn at<'s>(schema: &'s mut Value, pointer: &str) -> &'s mut Value {
    let found = schema.pointer_mut(pointer);
    found.unwrap_or_else(|| panic!("{pointer} has a rule but no type"))
}

/// Where the type stands that a property refers to, by itself, as one of two or in a list.
fn inner(property: &Value) -> Option<String> {
    let reference = ["/$ref", "/anyOf/0/$ref", "/items/$ref"]
        .iter()
        .find_map(|pointer| property.pointer(pointer))?;
    Some(reference.as_str()?.strip_prefix('#')?.to_owned())
}

fn path(name: &str) -> String {
    format!("{}/../docs/{name}.schema.json", env!("CARGO_MANIFEST_DIR"))
}

fn committed(name: &str) -> Validator {
    let text = fs::read_to_string(path(name)).expect("a schema in docs/");
    let schema = serde_json::from_str(&text).expect("JSON");
    jsonschema::draft202012::meta::validate(&schema).expect("a schema of draft 2020-12");
    jsonschema::draft202012::new(&schema).expect("a schema")
}

/// Holds the committed schema against what types and rules say, or renews it.
fn is_committed(name: &str, schema: &Value) {
    let text = serde_json::to_string_pretty(schema).expect("JSON") + "\n";
    if std::env::var_os("FAREND_WRITE_SCHEMA").is_some() {
        fs::write(path(name), &text).expect("writing the schema");
        return;
    }
    let committed = fs::read_to_string(path(name)).unwrap_or_default();
    assert!(
        text == committed,
        "docs/{name}.schema.json isn't what the types say. If the change is meant: \
         FAREND_WRITE_SCHEMA=1 cargo test -p farend-tests --test saved, then look at the difference"
    );
}

/// What a schema finds wrong with a file.
fn wrong(schema: &Validator, file: &Value) -> Vec<String> {
    let errors = schema.iter_errors(file);
    errors
        .map(|error| format!("{}: {error}", error.instance_path()))
        .collect()
}
