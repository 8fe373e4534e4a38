//! The columns of a list: which names there are, and what each one's cells hold.

use super::List;
use super::write::{Extent, columns};
use crate::hint::{FaultHint, Hint};
use crate::source::Source;
use crate::yard::shape::{Field, Shape, closest};

/// The keys of an uncertain figure's numbers.
pub(super) const PARTS: [&str; 3] = ["low", "likely", "high"];
/// The key of where they come from.
pub(super) const SOURCE: &str = "source";
/// The key of what a person noted beside an entry.
pub(super) const COMMENT: &str = "comment";

/// What a column's cells hold.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Holds {
    Text,
    Id,
    Number,
    Flag,
    /// One word of a list.
    Word(&'static [&'static str]),
    /// Several words of a list.
    Words(&'static [&'static str]),
    /// Whether a group is there of which nothing else may be known.
    There,
}

/// What the cells below a header hold, given in small letters. `None` where the list has no such
/// column.
pub(super) fn holds(list: List, name: &str) -> Option<Holds> {
    let parts: Vec<_> = name.split('.').collect();
    in_group(list.fields(), &parts)
}

fn in_group(fields: &'static [Field], parts: &[&str]) -> Option<Holds> {
    let (key, rest) = parts.split_first()?;
    if *key == COMMENT && rest.is_empty() {
        return Some(Holds::Text);
    }
    let field = fields.iter().find(|field| field.key == *key)?;
    match (field.shape, rest) {
        (Shape::Group(of), rest) => there_or(of, rest),
        (Shape::Many { of, most }, [place, rest @ ..]) => {
            is_place(place, most).then(|| there_or(of, rest))?
        }
        (Shape::Uncertain { .. }, [SOURCE]) => Some(Holds::Word(Source::WORDS)),
        (Shape::Uncertain { .. }, [part]) => PARTS.contains(part).then_some(Holds::Number),
        (Shape::Uncertain { .. } | Shape::Number { .. } | Shape::Whole { .. }, []) => {
            Some(Holds::Number)
        }
        (Shape::Flag, []) => Some(Holds::Flag),
        (Shape::Text { .. }, []) => Some(Holds::Text),
        (Shape::Id, []) => Some(Holds::Id),
        (Shape::OneOf(of), []) => Some(Holds::Word(of)),
        (Shape::Words { of, .. }, []) => Some(Holds::Words(of)),
        _ => None,
    }
}

fn there_or(of: &'static [Field], rest: &[&str]) -> Option<Holds> {
    match rest {
        [] => Some(Holds::There),
        rest => in_group(of, rest),
    }
}

fn is_place(text: &str, most: usize) -> bool {
    // No other spelling of a number, so that one column has one name.
    text.parse()
        .is_ok_and(|place: usize| (1..=most).contains(&place) && place.to_string() == text)
}

/// A hint that names the column that was probably meant.
pub(super) fn nearest(list: List, name: &str) -> FaultHint {
    // Places, in the order in which they stand.
    let mut places = name.split('.').filter(|part| part.parse::<usize>().is_ok());
    let place = places.next().unwrap_or("1");
    let names: Vec<_> = columns(list, &[], Extent::All)
        .iter()
        .map(|(known, _)| known.replacen(".1.", &format!(".{place}."), 1))
        .filter(|known| holds(list, known).is_some())
        .collect();
    match closest(name, names.iter().map(String::as_str)) {
        Some(meant) => FaultHint::Meant(meant.to_owned()),
        None => Hint::SeeTemplate.into(),
    }
}
