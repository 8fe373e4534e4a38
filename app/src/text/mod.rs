//! Everything that the page says. No other file holds words for people.

pub mod advice;
pub mod beside;
pub mod cautions;
pub mod claims;
pub mod columns;
pub mod cost;
pub mod embed;
pub mod fields;
pub mod fit;
pub mod grid;
pub mod labels;
pub mod notices;
pub mod practice;
pub mod reasons;
pub mod sentences;
pub mod sheet;
pub mod tables_in;
pub mod wanted;
pub mod words;
pub mod yard;

/// Joins with commas and a last "and".
pub fn list(items: &[String]) -> String {
    match items {
        [] => String::new(),
        [one] => one.clone(),
        [most @ .., last] => format!("{} and {last}", most.join(", ")),
    }
}

/// With its first letter small, unless it begins with an abbreviation.
pub fn small(text: &str) -> String {
    let mut letters = text.chars();
    match (letters.next(), letters.clone().next()) {
        (Some(first), Some(second)) if second.is_lowercase() => {
            first.to_lowercase().chain(letters).collect()
        }
        _ => text.to_owned(),
    }
}

/// With its first letter large.
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters
        .next()
        .map(|first| first.to_uppercase().chain(letters).collect())
        .unwrap_or_default()
}

/// So many cases.
pub fn case_word(count: usize) -> String {
    match count {
        1 => "1 case".to_owned(),
        _ => format!("{count} cases"),
    }
}
