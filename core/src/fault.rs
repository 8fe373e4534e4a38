//! What is wrong with an input: where, what was found, what is allowed and what to do.

use core::fmt;

/// One fault of an input. All faults of an input are reported together.
#[derive(Clone, Debug, PartialEq)]
pub struct Fault {
    /// Where, for example `machines[2].engine.net_kw`.
    pub path: String,
    /// What was found there, shortened.
    pub found: String,
    /// The rule that it breaks.
    pub rule: Rule,
    /// What to do about it.
    pub hint: String,
}

/// A rule that an input can break.
#[derive(Clone, Debug, PartialEq)]
pub enum Rule {
    /// A number within two limits, both included.
    Within {
        /// Lowest value allowed.
        min: f64,
        /// Highest value allowed.
        max: f64,
        /// Unit of both, empty for a plain number.
        unit: &'static str,
    },
    /// A field that must be there.
    Required,
    /// A value of another type was expected.
    Type(&'static str),
    /// One word of a list.
    OneOf(Vec<&'static str>),
    /// A field that this format doesn't have.
    UnknownField,
    /// At most so many characters, or entries of a list, or bytes of a file.
    AtMost(usize),
    /// Must not be empty.
    NotEmpty,
    /// The same identifier stands elsewhere.
    Unique,
    /// Must not exceed another figure, named with its value.
    NotAbove(String),
    /// Not readable at all.
    Readable,
}

impl fmt::Display for Rule {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Within { min, max, unit } => {
                write!(f, "must be {min} to {max}")?;
                if unit.is_empty() {
                    Ok(())
                } else {
                    write!(f, " {unit}")
                }
            }
            Self::Required => write!(f, "is missing"),
            Self::Type(expected) => write!(f, "must be {expected}"),
            Self::OneOf(words) => write!(f, "must be one of: {}", words.join(", ")),
            Self::UnknownField => write!(f, "is not a field of this format"),
            Self::AtMost(most) => write!(f, "must not be longer or more than {most}"),
            Self::NotEmpty => write!(f, "must not be empty"),
            Self::Unique => write!(f, "is used more than once"),
            Self::NotAbove(other) => write!(f, "must not be above {other}"),
            Self::Readable => write!(f, "can't be read"),
        }
    }
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.path)?;
        if !self.found.is_empty() {
            write!(f, " ({})", self.found)?;
        }
        write!(f, " {}", self.rule)?;
        if !self.hint.is_empty() {
            write!(f, ". {}", self.hint)?;
        }
        Ok(())
    }
}

impl core::error::Error for Fault {}
