//! A language as the file that the page loads.
//!
//! Its first line is the version of all languages together, so that no text of another version is
//! ever taken for this program's. Each further line is a message, in the order of the English files. In
//! a message stand for
//!
//! - an argument: [`ARGUMENT`] further on by its place in the alphabet of the message's arguments;
//! - forms by a count: [`FORMS`], the argument, for each form [`FORM`], its key, [`SAID`] and what is
//!   said, and [`END`] behind all of them.

use crate::{Language, Message, Piece, Texts};
use std::fmt::Write;

/// The first argument; the others follow, up to the space.
pub const ARGUMENT: char = '\u{10}';
/// Before forms by a count.
pub const FORMS: char = '\u{1}';
/// Before a form's key.
pub const FORM: char = '\u{2}';
/// Between a form's key and what is said.
pub const SAID: char = '\u{3}';
/// Behind the last form.
pub const END: char = '\u{4}';

/// All languages as files.
pub struct Packed {
    /// Changes with every word of every language.
    pub version: String,
    /// Tags and what their files hold: the languages, and the pseudo-language behind them.
    pub files: Vec<(String, String)>,
}

impl Packed {
    /// Packs all languages, and one made of English for trying the page.
    pub fn of(texts: &Texts) -> Self {
        let pseudo = crate::pseudo::of(texts.source());
        let all = texts.languages.iter().chain([&pseudo]);
        let bodies: Vec<_> = all
            .map(|language| (language.tag.clone(), body(texts, language)))
            .collect();
        let mut sum = crc32fast::Hasher::new();
        for (_, body) in &bodies {
            sum.update(body.as_bytes());
        }
        // The names of the messages count too: their places are those of the program.
        sum.update(crate::rust::functions(texts).as_bytes());
        let version = format!("{:08x}", sum.finalize());
        let files = bodies
            .into_iter()
            .map(|(tag, body)| (tag, format!("{version}\n{body}")))
            .collect();
        Self { version, files }
    }
}

fn body(texts: &Texts, language: &Language) -> String {
    let mut lines = Vec::new();
    for (subject, messages) in &texts.source().subjects {
        let said = language.subjects.get(subject);
        for message in messages {
            let said = said.and_then(|all| all.iter().find(|it| it.name == message.name));
            // A set of texts without faults has it.
            lines.push(said.map(line).unwrap_or_default());
        }
    }
    lines.join("\n")
}

fn line(message: &Message) -> String {
    let arguments: Vec<_> = message.arguments().into_keys().collect();
    let mut line = String::new();
    put(&mut line, &message.pieces, &arguments);
    line
}

fn put(line: &mut String, pieces: &[Piece], arguments: &[&str]) {
    for piece in pieces {
        match piece {
            Piece::Words(words) => line.push_str(&kept_together(words)),
            Piece::Argument(name) => line.push(mark(name, arguments)),
            Piece::Forms { by, forms } => {
                line.push(FORMS);
                line.push(mark(by, arguments));
                for (key, said) in forms {
                    // Writing into a string has no way to fail.
                    let _ = write!(line, "{FORM}{key}{SAID}");
                    put(line, said, arguments);
                }
                line.push(END);
            }
        }
    }
}

/// Words in which no line begins with the marks that French sets off by a space.
fn kept_together(words: &str) -> String {
    const NO_BREAK: char = '\u{a0}';
    let mut kept = words.replace("« ", "«\u{a0}");
    for mark in [':', ';', '?', '!', '»'] {
        kept = kept.replace(&format!(" {mark}"), &format!("{NO_BREAK}{mark}"));
    }
    kept
}

fn mark(name: &str, arguments: &[&str]) -> char {
    let place = arguments.iter().position(|it| *it == name).unwrap_or(0);
    (ARGUMENT..).nth(place).unwrap_or(ARGUMENT)
}

#[cfg(test)]
mod tests {
    use super::line;
    use crate::read::messages;

    fn packed(text: &str) -> String {
        line(&messages(text).unwrap()[0])
    }

    #[test]
    fn arguments_are_marked_by_their_place_in_the_alphabet() {
        assert_eq!(packed("a = { $to }, not { $from }\n"), "\u{11}, not \u{10}");
    }

    #[test]
    fn forms_stand_between_their_marks() {
        assert_eq!(
            packed("a = { $n ->\n    [0] none\n   *[other] { $n } of { $all }\n } left\n"),
            "\u{1}\u{11}\u{2}0\u{3}none\u{2}other\u{3}\u{11} of \u{10}\u{4} left"
        );
    }

    #[test]
    fn no_line_begins_with_a_french_mark() {
        assert_eq!(
            packed("a = Quoi ? « Ça » : rien\n"),
            "Quoi\u{a0}? «\u{a0}Ça\u{a0}»\u{a0}: rien"
        );
    }
}
