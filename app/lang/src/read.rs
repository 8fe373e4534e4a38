//! Fluent files as messages.

use crate::{FACTS, Fault, Language, Message, Piece, SOURCE};
use fluent_syntax::ast::{
    Entry, Expression, InlineExpression, Pattern, PatternElement, VariantKey,
};
use fluent_syntax::parser;
use fluent_syntax::unicode::unescape_unicode_to_string;
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;
use walkdir::WalkDir;

/// Plural categories of the world's languages, by Unicode's rules.
const CATEGORIES: [&str; 6] = ["zero", "one", "two", "few", "many", "other"];

/// So many arguments a packed message has marks for.
const MOST_ARGUMENTS: usize = 16;

pub fn languages(folder: &Path) -> Result<Vec<Language>, Vec<Fault>> {
    let mut subjects: BTreeMap<String, BTreeMap<String, Vec<Message>>> = BTreeMap::new();
    let mut faults = Vec::new();
    for entry in WalkDir::new(folder).sort_by_file_name() {
        let Ok(path) = entry.map(walkdir::DirEntry::into_path) else {
            continue;
        };
        let name = path.strip_prefix(folder).unwrap_or(&path);
        let name = name.to_string_lossy().replace('\\', "/");
        let Some((tag, subject)) = name
            .strip_suffix(".ftl")
            .and_then(|name| name.split_once('/'))
        else {
            continue;
        };
        match fs::read_to_string(&path) {
            Err(error) => faults.push(fault(&name, error.to_string())),
            Ok(text) => match messages(&text) {
                Err(wrong) => faults.extend(wrong.into_iter().map(|what| fault(&name, what))),
                Ok(messages) => {
                    let of_tag = subjects.entry(tag.to_owned()).or_default();
                    of_tag.insert(subject.to_owned(), messages);
                }
            },
        }
    }
    let mut languages = Vec::new();
    for (tag, subjects) in subjects {
        match language(&tag, subjects) {
            Ok(language) => languages.push(language),
            Err(what) => faults.push(fault(&format!("{tag}/{FACTS}.ftl"), what)),
        }
    }
    languages.sort_by_key(|language| (language.tag != SOURCE, language.tag.clone()));
    if languages.first().is_none_or(|first| first.tag != SOURCE) {
        faults.push(fault(SOURCE, "it must be there and be sound".to_owned()));
    }
    if faults.is_empty() {
        Ok(languages)
    } else {
        Err(faults)
    }
}

fn fault(file: &str, what: String) -> Fault {
    let file = file.to_owned();
    Fault { file, what }
}

/// A language with the facts of its own file.
fn language(tag: &str, mut subjects: BTreeMap<String, Vec<Message>>) -> Result<Language, String> {
    let facts = subjects.remove(FACTS).unwrap_or_default();
    let fact = |name: &str| {
        let message = facts.iter().find(|it| it.name == name);
        match message.map(|it| it.pieces.as_slice()) {
            Some([Piece::Words(words)]) => Ok(words.clone()),
            _ => Err(format!("`{name}` must be there, in words")),
        }
    };
    Ok(Language {
        tag: tag.to_owned(),
        name: fact("name")?,
        locale: fact("locale")?,
        lists: fact("lists")?,
        subjects,
    })
}

/// The messages of a file, in its order.
pub fn messages(text: &str) -> Result<Vec<Message>, Vec<String>> {
    let resource = parser::parse(text).map_err(|(_, errors)| {
        let told = errors.iter().map(|error| {
            let before = text.get(..error.pos.start).unwrap_or(text);
            format!("line {}: {error}", before.matches('\n').count() + 1)
        });
        told.collect::<Vec<_>>()
    })?;
    let mut messages: Vec<Message> = Vec::new();
    let mut faults = Vec::new();
    let mut take = |name: String, pattern: &Pattern<&str>| match pieces(pattern, false) {
        Err(what) => faults.push(format!("`{name}`: {what}")),
        Ok(_) if messages.iter().any(|it| same_function(&it.name, &name)) => {
            faults.push(format!("`{name}` is there twice"));
        }
        Ok(pieces) => messages.push(Message { name, pieces }),
    };
    let mut others = Vec::new();
    for entry in &resource.body {
        match entry {
            Entry::Message(message) => {
                if let Some(pattern) = &message.value {
                    take(message.id.name.to_owned(), pattern);
                }
                for attribute in &message.attributes {
                    let name = format!("{}.{}", message.id.name, attribute.id.name);
                    take(name, &attribute.value);
                }
            }
            Entry::Term(term) => others.push(format!("`-{}`: terms aren't packed", term.id.name)),
            _ => {}
        }
    }
    for message in &messages {
        if message.arguments().len() > MOST_ARGUMENTS {
            faults.push(format!(
                "`{}`: at most {MOST_ARGUMENTS} arguments are packed",
                message.name
            ));
        }
        if message.pieces.iter().any(holds_control) {
            faults.push(format!("`{}`: it holds a control character", message.name));
        }
    }
    let ill_named = messages.iter().filter(|it| !is_well_named(&it.name));
    let ill_named: Vec<_> = ill_named
        .map(|it| {
            format!(
                "`{}`: small letters, digits and hyphens make a name",
                it.name
            )
        })
        .collect();
    faults.extend(others);
    faults.extend(ill_named);
    if faults.is_empty() {
        Ok(messages)
    } else {
        Err(faults)
    }
}

/// Whether words hold what marks something else in a packed message.
fn holds_control(piece: &Piece) -> bool {
    match piece {
        Piece::Words(words) => words.contains(|it: char| it < ' '),
        Piece::Argument(_) => false,
        Piece::Forms { forms, .. } => forms.iter().any(|(_, said)| said.iter().any(holds_control)),
    }
}

/// Whether two messages would be one function.
fn same_function(one: &str, other: &str) -> bool {
    one.replace('.', "-") == other.replace('.', "-")
}

fn is_well_named(name: &str) -> bool {
    name.chars()
        .all(|it| it.is_ascii_lowercase() || it.is_ascii_digit() || "-.".contains(it))
}

/// The pieces of a pattern. A line's end is a space, as in a page.
fn pieces(pattern: &Pattern<&str>, within_forms: bool) -> Result<Vec<Piece>, String> {
    let mut pieces = Vec::new();
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } => say(&mut pieces, value),
            PatternElement::Placeable { expression } => match expression {
                Expression::Inline(InlineExpression::StringLiteral { value }) => {
                    say(&mut pieces, &unescape_unicode_to_string(value));
                }
                Expression::Inline(InlineExpression::VariableReference { id }) => {
                    pieces.push(Piece::Argument(id.name.to_owned()));
                }
                Expression::Select {
                    selector: InlineExpression::VariableReference { id },
                    variants,
                } if !within_forms => {
                    let mut forms = Vec::new();
                    for variant in variants {
                        let key = match variant.key {
                            VariantKey::NumberLiteral { value } => value,
                            VariantKey::Identifier { name } if CATEGORIES.contains(&name) => name,
                            VariantKey::Identifier { name } => {
                                return Err(format!("[{name}] is no plural category"));
                            }
                        };
                        forms.push((key.to_owned(), self::pieces(&variant.value, true)?));
                    }
                    if !variants.iter().any(|it| is_other(&it.key) && it.default) {
                        return Err("*[other] must be the form for all the rest".to_owned());
                    }
                    let by = id.name.to_owned();
                    pieces.push(Piece::Forms { by, forms });
                }
                _ => {
                    let what = "only words, arguments and forms by a count are packed";
                    return Err(what.to_owned());
                }
            },
        }
    }
    for piece in &mut pieces {
        if let Piece::Words(words) = piece {
            *words = words.replace('\n', " ");
        }
    }
    Ok(pieces)
}

fn is_other(key: &VariantKey<&str>) -> bool {
    matches!(key, VariantKey::Identifier { name: "other" })
}

/// Puts words behind what was said.
fn say(pieces: &mut Vec<Piece>, more: &str) {
    if !matches!(pieces.last(), Some(Piece::Words(_))) {
        pieces.push(Piece::Words(String::new()));
    }
    if let Some(Piece::Words(words)) = pieces.last_mut() {
        for letter in more.chars() {
            match (letter, words.chars().next_back()) {
                // What indents the next line, and blank lines.
                (' ' | '\n', Some('\n')) => {}
                _ => words.push(letter),
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::messages;
    use crate::{Message, Piece};

    fn words(text: &str) -> Piece {
        Piece::Words(text.to_owned())
    }

    #[test]
    fn a_message_is_read_with_its_attributes() {
        let read = messages("pump = Pump { $size }\n    .within = the pump\n").unwrap();
        let argument = Piece::Argument("size".to_owned());
        let expected = [
            ("pump", vec![words("Pump "), argument]),
            ("pump.within", vec![words("the pump")]),
        ];
        let expected = expected.map(|(name, pieces)| Message {
            name: name.to_owned(),
            pieces,
        });
        assert_eq!(read, expected);
    }

    #[test]
    fn a_line_s_end_is_a_space() {
        let read = messages("a =\n    One line\n    and { $b }\n\n    more.\n").unwrap();
        let argument = Piece::Argument("b".to_owned());
        let expected = [words("One line and "), argument, words(" more.")];
        assert_eq!(read[0].pieces, expected);
    }

    #[test]
    fn forms_by_a_count_are_read() {
        let read = messages(
            "case = { $count ->\n    [one] { $count } case\n   *[other] { $count } cases\n }\n",
        );
        let Piece::Forms { by, forms } = &read.unwrap()[0].pieces[0] else {
            panic!("forms");
        };
        assert_eq!(by, "count");
        let keys: Vec<_> = forms.iter().map(|(key, _)| key.as_str()).collect();
        assert_eq!(keys, ["one", "other"]);
    }

    #[test]
    fn what_cant_be_packed_is_refused_with_its_name() {
        for (text, told) in [
            ("a = { b }\n", "`a`: only words"),
            ("-a = b\n", "`-a`: terms"),
            (
                "a = { $b ->\n   [masculine] x\n  *[other] y\n }\n",
                "[masculine]",
            ),
            ("a = { $b ->\n  *[one] x\n   [other] y\n }\n", "*[other]"),
            ("a-b = x\na = y\n    .b = z\n", "`a.b` is there twice"),
            ("aB = x\n", "`aB`: small letters"),
            ("a = x{ \"\\u0010\" }y\n", "`a`: it holds a control"),
            ("a = x\nb =\nc = z\n", "line 2"),
        ] {
            let faults = messages(text).unwrap_err();
            assert!(
                faults.iter().any(|it| it.contains(told)),
                "{text}: {faults:?}"
            );
        }
    }
}
