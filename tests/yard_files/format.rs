//! The table of rules and the types of entries are one format, written down twice.

use crate::full;
use farend_core::yard::Yard;
use farend_core::yard::entry::{UncertainEntry, YardEntry};
use farend_core::yard::report::Report;
use farend_core::yard::rules::YARD;
use farend_core::yard::shape::{Field, Shape, check_group};
use serde_json::{Map, Value};
use std::collections::BTreeSet;

fn full_as_json() -> Map<String, Value> {
    match serde_json::to_value(full::yard()) {
        Ok(Value::Object(group)) => group,
        other => panic!("a yard is a group, not {other:?}"),
    }
}

/// Key sets of both, wherever they differ.
fn differences(group: &Map<String, Value>, fields: &[Field], path: &str) -> Vec<String> {
    let written: BTreeSet<_> = group.keys().map(String::as_str).collect();
    let ruled: BTreeSet<_> = fields.iter().map(|field| field.key).collect();
    let mut all = Vec::new();
    for key in written.difference(&ruled) {
        all.push(format!("{path}{key} has no rule"));
    }
    for key in ruled.difference(&written) {
        all.push(format!("{path}{key} is in no entry"));
    }
    for field in fields {
        let value = group.get(field.key);
        let (inner, items) = match (field.shape, value) {
            (Shape::Group(inner), Some(value)) => (inner, std::slice::from_ref(value)),
            (Shape::Many { of, .. }, Some(Value::Array(items))) => (of, items.as_slice()),
            _ => continue,
        };
        let path = format!("{path}{}.", field.key);
        if items.is_empty() {
            all.push(format!("{path} is an empty list: nothing is compared"));
        }
        for item in items {
            match item {
                Value::Object(group) => all.extend(differences(group, inner, &path)),
                other => all.push(format!("{path} isn't a group: {other}")),
            }
        }
    }
    all
}

#[test]
fn every_rule_has_its_entry_and_every_entry_its_rule() {
    assert_eq!(differences(&full_as_json(), YARD, ""), Vec::<String>::new());
}

/// The comparison itself can fail, in both directions and at depth.
#[test]
fn a_difference_is_found() {
    let mut group = full_as_json();
    let engine = group["machines"][0]["engine"].as_object_mut();
    let engine = engine.expect("an engine");
    engine.remove("net_kw");
    engine.insert("brake_kw".to_owned(), Value::from(1));
    assert_eq!(
        differences(&group, YARD, ""),
        [
            "machines.engine.brake_kw has no rule",
            "machines.engine.net_kw is in no entry",
        ]
    );
}

#[test]
fn a_full_entry_has_no_fault() {
    let mut report = Report::default();
    check_group(&full_as_json(), YARD, "", &mut report);
    assert_eq!(report.into_faults(), []);
    for yard in full::loadable() {
        let text = serde_json::to_string(&yard).expect("a yard as JSON");
        assert!(
            Yard::from_json(&text).is_ok(),
            "{:?}",
            Yard::from_json(&text)
        );
    }
}

#[test]
fn a_full_entry_is_read_as_it_was_written() {
    let read: Result<YardEntry, _> = serde_json::from_value(Value::Object(full_as_json()));
    assert_eq!(read.ok(), Some(full::yard()));
}

/// An uncertain figure isn't in the table of fields: its four keys are held together here.
#[test]
fn an_uncertain_figure_has_the_keys_of_its_rule() {
    let keys = match full_as_json().get("machines") {
        Some(machines) => machines[0]["engine"]["net_kw"].as_object().cloned(),
        None => None,
    };
    let keys: Vec<_> = keys
        .expect("three values")
        .into_iter()
        .map(|(key, _)| key)
        .collect();
    assert_eq!(keys, ["high", "likely", "low", "source"]);
    let entry: UncertainEntry = serde_json::from_str("60").expect("a number");
    assert_eq!(entry, UncertainEntry::One(60.0));
}
