//! Everything that the page says: which message of `app/lang/` it is, and what is put into it.

pub mod advice;
pub mod beside;
pub mod cautions;
pub mod claims;
pub mod columns;
pub mod cost;
pub mod drawing;
pub mod embed;
pub mod faults;
pub mod fields;
pub mod fit;
pub mod grid;
pub mod hints;
pub mod labels;
mod message;
pub mod notices;
pub mod offline;
pub mod practice;
pub mod reasons;
pub mod say;
pub mod sentences;
pub mod sheet;
pub mod sources;
pub mod tables_in;
pub mod wanted;
pub mod words;
pub mod yard;

use crate::intl;
use say::common;

/// A list as a part of a sentence: "a, b and c".
pub fn list(items: &[impl AsRef<str>]) -> String {
    intl::list(items)
}

/// Clauses as one sentence.
pub fn clauses(each: &[String]) -> String {
    stop(&capital(&in_turn(each)))
}

/// Parts that stand one after the other, as clauses do.
pub fn in_turn(each: &[impl AsRef<str>]) -> String {
    joined(each, common::between_clauses())
}

/// Things with their amounts, in one line.
pub fn amounts(each: &[impl AsRef<str>]) -> String {
    joined(each, common::between_amounts())
}

/// Items one after the other, without a last "and".
pub fn items(each: &[impl AsRef<str>]) -> String {
    joined(each, common::between_items())
}

fn joined(each: &[impl AsRef<str>], between: &str) -> String {
    let each: Vec<_> = each.iter().map(AsRef::as_ref).collect();
    each.join(between)
}

/// A label as a sentence: "PTO type."
pub fn stop(words: &str) -> String {
    common::stop(words)
}

/// What is added behind something: "35 min (usually)".
pub fn remark(what: &str, remark: &str) -> String {
    common::Remark { what, remark }.said()
}

/// The same where it stands by itself: "(usually)".
pub fn brackets(remark: &str) -> String {
    common::brackets(remark)
}

/// Two that belong together: "540 rpm, 400 N·m".
pub fn pair(one: &str, other: &str) -> String {
    common::Pair { one, other }.said()
}

/// A thing with its amount: "rear shaft 30 kW".
pub fn amount(what: &str, amount: &str) -> String {
    common::Amount { what, amount }.said()
}

/// A thing and what is said of it: "Less: Engine speed".
pub fn named(name: &str, what: &str) -> String {
    common::Named { name, what }.said()
}

/// With its first letter small, unless it begins with an abbreviation. "N'est" begins with a word.
pub fn small(text: &str) -> String {
    let mut letters = text.chars();
    match (letters.next(), letters.clone().next()) {
        (Some(first), Some(second)) if second.is_lowercase() || second == '\'' => {
            first.to_lowercase().chain(letters).collect()
        }
        _ => text.to_owned(),
    }
}

/// With its first letter large, as a sentence begins.
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters
        .next()
        .map(|first| first.to_uppercase().chain(letters).collect())
        .unwrap_or_default()
}

/// So many cases.
pub fn case_word(count: usize) -> String {
    common::cases(count)
}
