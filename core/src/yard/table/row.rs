//! An entry of the yard made from the cells of a row, and where in the row a fault of it stands.

use super::List;
use super::cell::unreadable;
use super::columns::{COMMENT, Holds, PARTS, SOURCE};
use super::write::{Entry, joined};
use crate::fault::{Fault, Rule};
use crate::hint::Hint;
use crate::yard::check;
use crate::yard::report::Report;
use crate::yard::shape::{Field, Shape};
use serde_json::Value;
use std::collections::HashMap;

/// What paths of faults begin with.
const ROW: &str = "row";

/// The cells of a row that aren't empty, under the names of their columns.
pub(super) type Values<'n> = HashMap<&'n str, (Holds, Value)>;

/// An entry while it's made.
struct Making<'v, 'n> {
    values: &'v Values<'n>,
    /// For each list of the entry the places of the row that its items come from: those that are empty
    /// are left out.
    places: HashMap<String, Vec<usize>>,
    /// Faults of columns, by their names.
    faults: Vec<Fault>,
}

/// Makes an entry and finds all its faults, their paths the names of columns.
pub(super) fn entry(list: List, values: &Values<'_>) -> (Entry, Vec<Fault>) {
    let mut making = Making {
        values,
        places: HashMap::new(),
        faults: Vec::new(),
    };
    let entry = making.group(list.fields(), "", "").unwrap_or_default();
    let mut report = Report::default();
    check::entry(list, &entry, ROW, &mut report);
    let faults = report.into_faults().into_iter();
    let mut faults: Vec<_> = faults.map(|fault| making.in_row(fault)).collect();
    // A group that can't be made is one fault, not also another of the rules.
    faults.retain(|it| making.faults.iter().all(|known| known.path != it.path));
    making.faults.extend(faults);
    (entry, making.faults)
}

impl Making<'_, '_> {
    /// A group from the columns whose names begin with one, at a path of the entry. `None` where all
    /// of them are empty.
    fn group(&mut self, fields: &'static [Field], name: &str, path: &str) -> Option<Entry> {
        let mut group = Entry::new();
        for field in fields {
            let name = joined(name, field.key);
            let path = joined(path, field.key);
            let value = match field.shape {
                Shape::Group(of) => self.inner(of, &name, &path),
                Shape::Many { of, most } => self.many(of, most, &name, &path),
                Shape::Uncertain { .. } => self.uncertain(&name),
                _ => self.value(&name),
            };
            if let Some(value) = value {
                group.insert(field.key.to_owned(), value);
            }
        }
        if let Some(comment) = self.value(&joined(name, COMMENT)) {
            group.insert(COMMENT.to_owned(), comment);
        }
        (!group.is_empty()).then_some(group)
    }

    fn value(&self, name: &str) -> Option<Value> {
        self.values.get(name).map(|(_, value)| value.clone())
    }

    fn inner(&mut self, of: &'static [Field], name: &str, path: &str) -> Option<Value> {
        let group = self.group(of, name, path);
        match self.value(name) {
            None => group.map(Value::Object),
            Some(Value::Bool(true)) => Some(Value::Object(group.unwrap_or_default())),
            Some(Value::Bool(false)) => {
                if group.is_some() {
                    self.fault(name, "no", Rule::OneOf(vec!["yes"]), Hint::SaysNo);
                }
                None
            }
            // Refused by the rules.
            other => other,
        }
    }

    fn many(&mut self, of: &'static [Field], most: usize, name: &str, path: &str) -> Option<Value> {
        let mut items = Vec::new();
        let mut places = Vec::new();
        for place in 1..=most {
            let path = format!("{path}[{}]", items.len());
            if let Some(item) = self.inner(of, &format!("{name}.{place}"), &path) {
                items.push(item);
                places.push(place);
            }
        }
        let any = !items.is_empty();
        self.places.insert(path.to_owned(), places);
        any.then_some(Value::Array(items))
    }

    fn uncertain(&mut self, name: &str) -> Option<Value> {
        let mut three = Entry::new();
        for key in PARTS.iter().chain([&SOURCE]) {
            if let Some(value) = self.value(&joined(name, key)) {
                three.insert((*key).to_owned(), value);
            }
        }
        match self.value(name) {
            None => (!three.is_empty()).then_some(Value::Object(three)),
            Some(one) => {
                if !three.is_empty() {
                    self.fault(name, &one.to_string(), Rule::Unique, Hint::OneOrThree);
                }
                Some(one)
            }
        }
    }

    fn fault(&mut self, name: &str, found: &str, rule: Rule, hint: Hint) {
        self.faults.push(Fault::new(name, found, rule, hint));
    }

    /// A fault of the entry as one of the row.
    fn in_row(&self, fault: Fault) -> Fault {
        let name = self.name(&fault.path);
        let cell = self.values.get(name.as_str());
        match cell.and_then(|(holds, value)| unreadable(*holds, value)) {
            None => Fault {
                path: name,
                ..fault
            },
            Some((rule, hint)) => Fault {
                path: name,
                found: fault.found,
                rule,
                hint: hint.into(),
            },
        }
    }

    /// The column that a path of the entry stands for: of `row.circuits[0].flow_l_min` with one place
    /// left out `circuits.2.flow_l_min`.
    fn name(&self, path: &str) -> String {
        let (mut name, mut walked) = (String::new(), String::new());
        for part in path.split('.').skip(1) {
            let (key, item) = match part.split_once('[') {
                None => (part, None),
                Some((key, item)) => (key, item.trim_end_matches(']').parse::<usize>().ok()),
            };
            name = joined(&name, key);
            walked = joined(&walked, key);
            // The words of a list share a cell.
            let places = self.places.get(&walked);
            if let Some((item, place)) = item.and_then(|it| Some((it, places?.get(it)?))) {
                name = joined(&name, &place.to_string());
                walked = format!("{walked}[{item}]");
            }
        }
        name
    }
}
