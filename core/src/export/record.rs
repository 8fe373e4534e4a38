//! A learner's own answers, as a browser keeps them and as a file to take along.

use crate::practice::{Answered, Help, Idea, next};
use crate::words::words;
use serde::{Deserialize, Serialize};
use serde_json::Value;

words! {
    /// What kind of file it is.
    Format {
        /// A learner's answers.
        Record = "farend-practice-record",
    }
}

/// The version that this program writes and reads.
pub const FORMAT_VERSION: u32 = 1;
/// The most answers that are kept, the newest: many times what progress looks at, and small enough
/// for any browser's store. This project's judgement.
pub const MOST_ANSWERS: usize = 2_000;

/// A learner's answers, the newest last.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Record {
    answers: Vec<Answered>,
}

/// The file.
#[derive(Debug, Serialize, Deserialize)]
struct Written {
    format: Format,
    format_version: u32,
    answers: Vec<Answered>,
}

/// Why a record can't be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unreadable {
    /// It isn't one, or it was changed.
    Damaged,
    /// A newer version of this program wrote it.
    Newer,
}

impl Record {
    /// The answers, the newest last.
    pub fn answers(&self) -> &[Answered] {
        &self.answers
    }

    /// Puts an answer behind the others; the oldest goes where there are too many.
    pub fn add(&mut self, answer: Answered) {
        self.answers.push(answer);
        let beyond = self.answers.len().saturating_sub(MOST_ANSWERS);
        self.answers.drain(..beyond);
    }

    /// How much help the next case of an idea comes with. All is shown to begin with.
    pub fn help(&self, idea: Idea) -> Help {
        let of_idea = self.answers.iter().filter(|it| it.idea == idea);
        let of_idea: Vec<_> = of_idea.copied().collect();
        let last = of_idea.last();
        last.map_or(Help::Shown, |last| next(last.help, &of_idea))
    }

    /// The text to keep.
    ///
    /// # Errors
    /// As the library's.
    pub fn to_json(&self) -> serde_json::Result<String> {
        serde_json::to_string_pretty(&Written {
            format: Format::Record,
            format_version: FORMAT_VERSION,
            answers: self.answers.clone(),
        })
    }

    /// Reads a text that was kept.
    ///
    /// # Errors
    /// [`Unreadable`].
    pub fn from_json(text: &str) -> Result<Self, Unreadable> {
        let damaged = Unreadable::Damaged;
        let value: Value = serde_json::from_str(text).map_err(|_| damaged)?;
        let version = value.get("format_version").and_then(Value::as_f64);
        if version.is_some_and(|version| version > f64::from(FORMAT_VERSION)) {
            return Err(Unreadable::Newer);
        }
        let written: Written = serde_json::from_value(value).map_err(|_| damaged)?;
        let mut record = Self::default();
        for answer in written.answers {
            record.add(answer);
        }
        Ok(record)
    }
}
