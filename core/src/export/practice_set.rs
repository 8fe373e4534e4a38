//! A trainer's set of practice cases as a small file. It says which yard it was made in: in another
//! one the same set is other cases.

use crate::fault::{FILE, Fault, Rule};
use crate::hint::Hint;
use crate::practice::{Kind, Kinds, Set};
use crate::words::words;
use crate::yard::entry::whole;
use crate::yard::format::{VERSION, refuse_newer};
use crate::yard::read_group;
use crate::yard::report::Report;
use crate::yard::rules::required;
use crate::yard::shape::{Field, Shape, check_group};
use serde::{Deserialize, Serialize};
use serde_json::Value;

words! {
    /// What kind of file it is.
    Format {
        /// A set of practice cases.
        Set = "farend-practice-set",
    }
}

/// The version that this program writes and reads.
pub const FORMAT_VERSION: u32 = 1;
/// The fewest and the most cases of a set: this project's judgement. A group that works through
/// more in one go learns no more.
pub const CASES: (u8, u8) = (1, 30);
/// The most bytes of such a file: many times what one has.
const LARGEST: usize = 10_000;
/// The most characters of a yard's name that are kept.
const LONGEST_NAME: usize = 200;

/// A set with the yard that it was made in.
#[derive(Clone, Debug, PartialEq)]
pub struct SavedSet {
    /// The yard's name.
    pub yard: String,
    /// The set.
    pub set: Set,
}

/// The file.
#[derive(Debug, Serialize, Deserialize)]
struct Written {
    format: Format,
    #[serde(deserialize_with = "whole")]
    format_version: u32,
    yard: String,
    #[serde(deserialize_with = "whole")]
    seed: u32,
    kinds: Vec<Kind>,
    #[serde(deserialize_with = "whole")]
    count: u32,
}

const FIELDS: &[Field] = &[
    required("format", Shape::OneOf(Format::WORDS), Hint::TellsFromOthers),
    required(
        VERSION,
        Shape::Whole {
            min: 1,
            max: FORMAT_VERSION,
        },
        Hint::ReadsVersion1,
    ),
    required("yard", Shape::Text { most: LONGEST_NAME }, Hint::SetYard),
    required(
        "seed",
        Shape::Whole {
            min: 0,
            max: u32::MAX,
        },
        Hint::SetSeed,
    ),
    required(
        KINDS,
        Shape::Words {
            of: Kind::WORDS,
            most: Kind::ALL.len(),
        },
        KINDS_HINT,
    ),
    required(
        "count",
        Shape::Whole {
            min: CASES.0 as u32,
            max: CASES.1 as u32,
        },
        Hint::SetCount,
    ),
];
const KINDS: &str = "kinds";
const KINDS_HINT: Hint = Hint::SetKinds;

impl SavedSet {
    /// The text of the file.
    ///
    /// # Errors
    /// As the library's.
    pub fn to_json(&self) -> serde_json::Result<String> {
        let kinds = Kind::ALL.iter().copied();
        serde_json::to_string_pretty(&Written {
            format: Format::Set,
            format_version: FORMAT_VERSION,
            yard: self.yard.chars().take(LONGEST_NAME).collect(),
            seed: self.set.seed,
            kinds: kinds.filter(|kind| self.set.kinds.has(*kind)).collect(),
            count: self.set.count.into(),
        })
    }

    /// Reads a file.
    ///
    /// # Errors
    /// Every fault of the file.
    pub fn from_json(text: &str) -> Result<Self, Vec<Fault>> {
        let group = read_group(text, LARGEST)?;
        refuse_newer(&group, FORMAT_VERSION)?;
        let mut report = Report::default();
        check_group(&group, FIELDS, "", &mut report);
        let kinds = group.get(KINDS).and_then(Value::as_array);
        if kinds.is_some_and(Vec::is_empty) {
            report.add(KINDS, "", Rule::NotEmpty, KINDS_HINT);
        }
        if !report.is_empty() {
            return Err(report.into_faults());
        }
        let written: Written = serde_json::from_value(Value::Object(group)).map_err(|error| {
            let mut report = Report::default();
            report.reader_says(FILE, &error, Rule::Readable, Hint::PleaseReport);
            report.into_faults()
        })?;
        // A kind that stands there twice is there once.
        let kinds = Kind::ALL.iter().filter(|kind| written.kinds.contains(kind));
        Ok(Self {
            yard: written.yard,
            set: Set {
                seed: written.seed,
                kinds: kinds.fold(Kinds::NONE, |kinds, kind| kinds.toggled(*kind)),
                // The rules have checked it.
                count: written.count as u8,
            },
        })
    }
}
