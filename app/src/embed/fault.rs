//! What is wrong with the host's options.

/// An option that can't be used.
#[derive(Clone, Debug, PartialEq)]
pub struct OptionFault {
    /// Its name.
    pub option: String,
    /// What the host wrote.
    pub found: String,
    /// What is wrong with that.
    pub wrong: Wrong,
}

/// What is wrong with an option.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// It's there a second time.
    Twice,
    /// Nothing is said.
    Empty,
    /// There is none of this name.
    Unknown,
    /// No address of a yard.
    NoAddress,
    /// No code of a currency.
    NoCurrency,
    /// No origin.
    NoOrigin,
    /// None of these words.
    NoneOf(Vec<&'static str>),
    /// A language that the page doesn't speak; it speaks these.
    NotSpoken(Vec<&'static str>),
    /// The yard has none of this identifier.
    NotInYard,
    /// No colour.
    NoColour,
    /// A colour on another, which can't be read with so little contrast.
    Contrast([String; 2], f64),
}

/// The most characters of what was found that are told.
const MOST_TOLD: usize = 60;

impl OptionFault {
    /// A fault of an option.
    pub fn of(option: &str, found: &str, wrong: Wrong) -> Self {
        Self {
            option: option.chars().take(MOST_TOLD).collect(),
            found: found.chars().take(MOST_TOLD).collect(),
            wrong,
        }
    }
}
