//! What is wrong with an input: where, what was found, what is allowed and what to do.

use crate::hint::FaultHint;
use crate::words::phrases;
use core::fmt;

/// The path of a fault of a whole file.
pub const FILE: &str = "file";

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
    pub hint: FaultHint,
}

/// Most characters of a value or a name that a fault repeats.
const REPEATED: usize = 40;

impl Fault {
    /// A fault. Of what was found it keeps the beginning.
    pub fn new(
        path: impl Into<String>,
        found: impl Into<String>,
        rule: Rule,
        hint: impl Into<FaultHint>,
    ) -> Self {
        Self {
            path: path.into(),
            found: beginning(found),
            rule,
            hint: hint.into(),
        }
    }
}

/// As much of a text as a fault repeats.
pub fn beginning(text: impl Into<String>) -> String {
    let mut text = text.into();
    if let Some((end, _)) = text.char_indices().nth(REPEATED) {
        text.truncate(end);
        text.push('…');
    }
    text
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
    Type(Expected),
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
    /// Must not exceed another figure.
    NotAbove {
        /// That figure.
        bound: Bound,
        /// Its value.
        most: f64,
        /// Its unit.
        unit: &'static str,
    },
    /// Must be less than another figure.
    Below {
        /// That figure.
        bound: Bound,
        /// Its value.
        most: f64,
        /// Its unit.
        unit: &'static str,
    },
    /// Not readable at all.
    Readable,
    /// Not readable as JSON from here on.
    Json {
        /// The line, from 1.
        line: usize,
        /// The column, from 1.
        column: usize,
    },
}

phrases! {
    /// What was expected, behind "must be".
    Expected {
        Flag = "true or false",
        Whole = "a whole number",
        Number = "a number",
        NumberWithPoint = "a number with a decimal point, without quotes",
        Rising = "in rising order",
        RisingThree = "in rising order: low, likely, high",
        Text = "a text",
        Id = "an identifier of at most 40 characters",
        Capitals = "three capital letters",
        Group = "a group { … }",
        List = "a list [ … ]",
        Yard = "a yard { … }",
        Table = "a table of machines, implements or kits",
        MachineOfYard = "a machine of this yard",
        ImplementOfYard = "an implement of this yard",
    }
}

phrases! {
    /// A figure that another must not exceed, behind "must not be above".
    Bound {
        EngineRated = "the engine's rated speed",
        LiftedHeight = "the height when lifted",
        MachineMass = "the machine's mass_kg",
        ViscosityAt40 = "the viscosity at 40 °C",
        NetPowerThere = "the engine's net power there",
        SheetFlow = "the sheet's flow",
        RotorRated = "the rotor's rated speed",
        RotorHighest = "the rotor's highest speed",
        Need = "the need",
        HighestSpeed = "the highest speed",
        OpenLength = "the length where its tubes part",
    }
}

impl fmt::Display for Rule {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Within { min, max, unit } => {
                write!(f, "must be {min} to {max}")?;
                write_unit(f, unit)
            }
            Self::Required => write!(f, "is missing"),
            Self::Type(expected) => write!(f, "must be {expected}"),
            Self::OneOf(words) => write!(f, "must be one of: {}", words.join(", ")),
            Self::UnknownField => write!(f, "is not a field of this format"),
            Self::AtMost(most) => write!(f, "must not be longer or more than {most}"),
            Self::NotEmpty => write!(f, "must not be empty"),
            Self::Unique => write!(f, "is used more than once"),
            Self::NotAbove { bound, most, unit } => {
                write!(f, "must not be above {bound}, {most}")?;
                write_unit(f, unit)
            }
            Self::Below { bound, most, unit } => {
                write!(f, "must be below {bound}, {most}")?;
                write_unit(f, unit)
            }
            Self::Readable | Self::Json { .. } => write!(f, "can't be read"),
        }
    }
}

fn write_unit(f: &mut fmt::Formatter<'_>, unit: &str) -> fmt::Result {
    if unit.is_empty() {
        Ok(())
    } else {
        write!(f, " {unit}")
    }
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.path)?;
        if !self.found.is_empty() {
            write!(f, " ({})", self.found)?;
        }
        write!(f, " {}. {}", self.rule, self.hint)
    }
}

impl core::error::Error for Fault {}
