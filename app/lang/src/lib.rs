//! What the page says, from the Fluent files beside this crate.
//!
//! Fluent is an open format for messages. A folder is a language, a file in it a subject, and English
//! is what the others are translations of: [`Texts::read`] takes all of them or none. Out of it come a
//! Rust function for each message ([`rust::functions`]), and for each language one file that the page
//! loads ([`packed::Packed`]).

mod agree;
pub mod packed;
mod pseudo;
mod read;
pub mod rust;

use std::collections::BTreeMap;
use std::fmt;
use std::path::Path;

/// The language that the others are translations of.
pub const SOURCE: &str = "en";

/// The file of each language that says what it is called and how it writes numbers and lists.
const FACTS: &str = "language";

/// A piece of a message.
#[derive(Clone, Debug, PartialEq)]
pub enum Piece {
    /// Words as they stand.
    Words(String),
    /// An argument.
    Argument(String),
    /// One of several forms, by the count that an argument is.
    Forms {
        /// The argument.
        by: String,
        /// Plural categories of the language, or numbers, with what is said then.
        forms: Vec<(String, Vec<Piece>)>,
    },
}

/// A message, or an attribute of one, which is a message of its own here: `pump.within`.
#[derive(Clone, Debug, PartialEq)]
pub struct Message {
    /// Its name in the file.
    pub name: String,
    /// What it says.
    pub pieces: Vec<Piece>,
}

/// What an argument is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Kind {
    /// Words or a number that is put in as it is.
    Text,
    /// A count that some language chooses a form by.
    Count,
}

impl Message {
    /// Its arguments in alphabetical order.
    pub fn arguments(&self) -> BTreeMap<&str, Kind> {
        let mut found = BTreeMap::new();
        collect(&self.pieces, &mut found);
        found
    }
}

fn collect<'a>(pieces: &'a [Piece], found: &mut BTreeMap<&'a str, Kind>) {
    for piece in pieces {
        match piece {
            Piece::Words(_) => {}
            Piece::Argument(name) => {
                found.entry(name).or_insert(Kind::Text);
            }
            Piece::Forms { by, forms } => {
                found.insert(by, Kind::Count);
                forms.iter().for_each(|(_, said)| collect(said, found));
            }
        }
    }
}

/// A language.
#[derive(Clone, Debug)]
pub struct Language {
    /// Its tag: `es`.
    pub tag: String,
    /// What it calls itself.
    pub name: String,
    /// The locale for numbers and dates.
    pub locale: String,
    /// The locale for lists.
    pub lists: String,
    /// Its messages by subject, which is the file's path without its ending: `practice/case`.
    pub subjects: BTreeMap<String, Vec<Message>>,
}

/// All languages: English first, the others by tag.
#[derive(Debug)]
pub struct Texts {
    /// The languages.
    pub languages: Vec<Language>,
}

/// What is wrong in a file.
#[derive(Clone, Debug, PartialEq)]
pub struct Fault {
    /// The file, from the folder of all languages on.
    pub file: String,
    /// What is wrong.
    pub what: String,
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.file, self.what)
    }
}

impl Texts {
    /// Reads all languages of a folder.
    ///
    /// # Errors
    ///
    /// All that is wrong with them at once: files that aren't Fluent or use more of it than is packed
    /// here, and translations that lack a message, have one more, or take other arguments.
    pub fn read(folder: &Path) -> Result<Self, Vec<Fault>> {
        let languages = read::languages(folder)?;
        let faults = agree::faults(&languages);
        if faults.is_empty() {
            Ok(Self { languages })
        } else {
            Err(faults)
        }
    }

    /// The language that the others are translations of.
    pub fn source(&self) -> &Language {
        &self.languages[0]
    }

    /// What an argument is: a count as soon as one language chooses a form by it.
    pub fn kind(&self, subject: &str, message: &str, argument: &str) -> Kind {
        let mut all = self.languages.iter().filter_map(|language| {
            let message = language
                .subjects
                .get(subject)?
                .iter()
                .find(|it| it.name == message)?;
            message.arguments().get(argument).copied()
        });
        let is_count = all.any(|kind| kind == Kind::Count);
        if is_count { Kind::Count } else { Kind::Text }
    }
}
