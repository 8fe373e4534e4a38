//! Walks a JSON value along a table of fields and notes every fault: one walk, all faults.

use super::report::Report;
use crate::fault::{Expected, Rule, beginning};
use crate::hint::{FaultHint, Hint};
use crate::source::Source;
use serde_json::{Map, Value};

/// One field of a group.
#[derive(Debug)]
pub struct Field {
    /// Its key.
    pub key: &'static str,
    /// Whether it must be there.
    pub required: bool,
    /// What it may hold.
    pub shape: Shape,
    /// What a user should know to fill it in.
    pub hint: Hint,
}

/// What a field may hold.
#[derive(Clone, Copy, Debug)]
pub enum Shape {
    /// True or false.
    Flag,
    /// Text that isn't empty, with at most so many characters.
    Text {
        /// Most characters.
        most: usize,
    },
    /// Small letters, digits and hyphens, at most 40.
    Id,
    /// A number within limits.
    Number {
        /// Lowest.
        min: f64,
        /// Highest.
        max: f64,
        /// Unit of both.
        unit: &'static str,
    },
    /// A whole number within limits.
    Whole {
        /// Lowest.
        min: u32,
        /// Highest.
        max: u32,
    },
    /// A number, or low, likely and high in rising order with a source.
    Uncertain {
        /// Lowest.
        min: f64,
        /// Highest.
        max: f64,
        /// Unit of both.
        unit: &'static str,
    },
    /// One word of a list.
    OneOf(&'static [&'static str]),
    /// A list of words of a list.
    Words {
        /// The words.
        of: &'static [&'static str],
        /// Most entries.
        most: usize,
    },
    /// A group of fields.
    Group(&'static [Field]),
    /// A list of groups.
    Many {
        /// The fields of each.
        of: &'static [Field],
        /// Most entries.
        most: usize,
    },
}

/// Longest identifier.
const LONGEST_ID: usize = 40;

/// Checks a value against a field's shape.
pub fn check(value: &Value, field: &Field, path: &str, report: &mut Report) {
    let hint = field.hint;
    match field.shape {
        Shape::Flag => {
            if !value.is_boolean() {
                report.wrong_type(path, value, Expected::Flag, hint);
            }
        }
        Shape::Text { most } => check_text(value, most, path, hint, report),
        Shape::Id => check_id(value, path, hint, report),
        Shape::Number { min, max, unit } => {
            check_number(value, (min, max, unit), path, hint, report);
        }
        Shape::Whole { min, max } => {
            let limits = (f64::from(min), f64::from(max), "");
            if value.as_f64().is_some_and(|number| number.fract() != 0.0) {
                report.wrong_type(path, value, Expected::Whole, hint);
            } else {
                check_number(value, limits, path, hint, report);
            }
        }
        Shape::Uncertain { min, max, unit } => {
            check_uncertain(value, (min, max, unit), path, hint, report);
        }
        Shape::OneOf(words) => check_word(value, words, path, hint, report),
        Shape::Words { of, most } => {
            for (place, item) in list(value, most, path, hint, report).iter().enumerate() {
                check_word(item, of, &format!("{path}[{place}]"), hint, report);
            }
        }
        Shape::Group(fields) => match value {
            Value::Object(group) => check_group(group, fields, path, report),
            other => report.wrong_type(path, other, Expected::Group, hint),
        },
        Shape::Many { of, most } => {
            for (place, item) in list(value, most, path, hint, report).iter().enumerate() {
                let path = format!("{path}[{place}]");
                match item {
                    Value::Object(group) => check_group(group, of, &path, report),
                    other => report.wrong_type(&path, other, Expected::Group, hint),
                }
            }
        }
    }
}

/// Checks a group's fields: each that is known, none that isn't.
pub fn check_group(
    group: &Map<String, Value>,
    fields: &'static [Field],
    path: &str,
    report: &mut Report,
) {
    let join = |key: &str| match path {
        "" => key.to_owned(),
        _ => format!("{path}.{key}"),
    };
    for field in fields {
        match group.get(field.key) {
            None | Some(Value::Null) => {
                if field.required {
                    report.add(join(field.key), "", Rule::Required, field.hint);
                }
            }
            Some(value) => check(value, field, &join(field.key), report),
        }
    }
    for key in group.keys() {
        if !knows(fields, key) {
            let key = match key.trim() {
                // As it stands in the file, for nothing would be no place.
                "" => "\"\"".to_owned(),
                _ => beginning(key),
            };
            report.add(join(&key), "", Rule::UnknownField, nearest(&key, fields));
        }
    }
}

/// Whether a group of these fields may have a key.
pub(super) fn knows(fields: &[Field], key: &str) -> bool {
    // "$schema" and "comment" are for people and editors.
    fields.iter().any(|field| field.key == key) || key == "$schema" || key == "comment"
}

/// A hint that names the field that was probably meant.
fn nearest(key: &str, fields: &[Field]) -> FaultHint {
    match closest(key, fields.iter().map(|field| field.key)) {
        Some(meant) => FaultHint::Meant(meant.to_owned()),
        None => FaultHint::Fields(fields.iter().map(|field| field.key).collect()),
    }
}

/// The name that was probably meant, where one is close enough.
pub(super) fn closest<'n>(found: &str, names: impl Iterator<Item = &'n str>) -> Option<&'n str> {
    names
        .map(|name| (strsim::jaro_winkler(found, name), name))
        .max_by(|a, b| a.0.total_cmp(&b.0))
        .filter(|(likeness, _)| *likeness > 0.8)
        .map(|(_, name)| name)
}

fn list<'v>(
    value: &'v Value,
    most: usize,
    path: &str,
    hint: Hint,
    report: &mut Report,
) -> &'v [Value] {
    match value {
        Value::Array(items) if items.len() <= most => items.as_slice(),
        Value::Array(items) => {
            report.add(path, items.len().to_string(), Rule::AtMost(most), hint);
            &[]
        }
        other => {
            report.wrong_type(path, other, Expected::List, hint);
            &[]
        }
    }
}

fn check_text(value: &Value, most: usize, path: &str, hint: Hint, report: &mut Report) {
    match value.as_str() {
        None => report.wrong_type(path, value, Expected::Text, hint),
        Some(text) if text.trim().is_empty() => report.add(path, "", Rule::NotEmpty, hint),
        Some(text) if text.chars().count() > most => {
            report.add(path, value.to_string(), Rule::AtMost(most), hint);
        }
        Some(_) => {}
    }
}

/// Whether a text has the form of an identifier.
pub fn fits_id(id: &str) -> bool {
    (1..=LONGEST_ID).contains(&id.len())
        && id
            .bytes()
            .all(|byte| byte.is_ascii_lowercase() || byte.is_ascii_digit() || byte == b'-')
}

fn check_id(value: &Value, path: &str, hint: Hint, report: &mut Report) {
    let fits = value.as_str().is_some_and(fits_id);
    if !fits {
        report.wrong_type(path, value, Expected::Id, hint);
    }
}

fn check_word(value: &Value, words: &[&'static str], path: &str, hint: Hint, report: &mut Report) {
    if !value.as_str().is_some_and(|word| words.contains(&word)) {
        let rule = Rule::OneOf(words.to_vec());
        report.add(path, value.to_string(), rule, hint);
    }
}

fn check_number(
    value: &Value,
    (min, max, unit): (f64, f64, &'static str),
    path: &str,
    hint: Hint,
    report: &mut Report,
) {
    match value.as_f64() {
        None => {
            let decimal_comma = value.as_str().is_some_and(|text| text.contains(','));
            let expected = if decimal_comma {
                Expected::NumberWithPoint
            } else {
                Expected::Number
            };
            report.wrong_type(path, value, expected, hint);
        }
        Some(number) if (min..=max).contains(&number) => {}
        Some(_) => {
            let rule = Rule::Within { min, max, unit };
            report.add(path, value.to_string(), rule, hint);
        }
    }
}

fn check_uncertain(
    value: &Value,
    limits: (f64, f64, &'static str),
    path: &str,
    hint: Hint,
    report: &mut Report,
) {
    let Value::Object(group) = value else {
        return check_number(value, limits, path, hint, report);
    };
    const KEYS: [&str; 3] = ["low", "likely", "high"];
    for key in KEYS {
        let path = format!("{path}.{key}");
        match group.get(key) {
            None => report.add(path, "", Rule::Required, hint),
            Some(number) => check_number(number, limits, &path, hint, report),
        }
    }
    let numbers = KEYS.map(|key| group.get(key).and_then(Value::as_f64));
    if let [Some(low), Some(likely), Some(high)] = numbers
        && !(low <= likely && likely <= high)
    {
        let found = format!("{low}, {likely}, {high}");
        let rule = Rule::Type(Expected::RisingThree);
        report.add(path, found, rule, hint);
    }
    if let Some(source) = group.get("source")
        && !source.is_null()
        && !source
            .as_str()
            .is_some_and(|key| Source::WORDS.contains(&key))
    {
        let keys = Source::WORDS.to_vec();
        let path = format!("{path}.source");
        report.add(path, source.to_string(), Rule::OneOf(keys), Hint::OwnFigure);
    }
    for key in group.keys() {
        if !KEYS.contains(&key.as_str()) && key != "source" {
            let path = format!("{path}.{}", beginning(key));
            let hint = FaultHint::Fields(KEYS.into_iter().chain(["source"]).collect());
            report.add(path, "", Rule::UnknownField, hint);
        }
    }
}
