//! What a cell says.

use super::columns::Holds;
use super::number::{DecimalMark, Figure};
use crate::fault::{Expected, Rule};
use crate::hint::Hint;
use serde_json::{Number, Value};

/// Words for yes, also as spreadsheets write them in English, German, French and Spanish.
const YES: [&str; 6] = ["yes", "true", "1", "wahr", "vrai", "verdadero"];
/// Words for no.
const NO: [&str; 6] = ["no", "false", "0", "falsch", "faux", "falso"];

/// A cell that isn't empty as a value of the yard file. What can't be read stays text, which the rules
/// refuse.
pub(super) fn value(holds: Holds, cell: &str, mark: DecimalMark) -> Value {
    let trimmed = cell.trim();
    let word = |of: &[&'static str], word: &str| {
        let known = of.iter().find(|known| known.eq_ignore_ascii_case(word));
        Value::from(known.map_or(word, |known| *known))
    };
    match holds {
        Holds::Text => cell.into(),
        Holds::Id => trimmed.into(),
        Holds::Number => match Figure::read(trimmed).and_then(|it| json(it.with(mark))) {
            Some(number) => Value::Number(number),
            None => trimmed.into(),
        },
        Holds::Flag | Holds::There => {
            let small = trimmed.to_lowercase();
            if YES.contains(&small.as_str()) {
                Value::Bool(true)
            } else if NO.contains(&small.as_str()) {
                Value::Bool(false)
            } else {
                trimmed.into()
            }
        }
        Holds::Word(of) => word(of, trimmed),
        Holds::Words(of) => {
            let words = trimmed.split([' ', '\t', '\n', '\r', ',', ';']);
            words
                .filter(|it| !it.is_empty())
                .map(|it| word(of, it))
                .collect()
        }
    }
}

/// A number of the yard file, whole where it is one. `None` where it's infinite.
fn json(number: f64) -> Option<Number> {
    // Below this every whole number is a double of its own.
    const EXACT: f64 = 9e15;
    if number.fract() == 0.0 && number.abs() < EXACT {
        Some((number as i64).into())
    } else {
        Number::from_f64(number)
    }
}

/// The rule and the hint for a cell of a column that can't be read as what it holds.
pub(super) fn unreadable(holds: Holds, value: &Value) -> Option<(Rule, Hint)> {
    match (holds, value) {
        (Holds::Number, Value::String(_)) => {
            Some((Rule::Type(Expected::Number), Hint::PlainNumber))
        }
        (Holds::Flag | Holds::There, Value::String(_)) => {
            Some((Rule::OneOf(vec!["yes", "no"]), Hint::EmptyCell))
        }
        _ => None,
    }
}
