//! The words of a learner's own record.

use crate::model::practice::record::Trouble;
use crate::text::case_word;
use farend_core::practice::Help;

pub use crate::text::say::practice::kept::*;

/// What the record's file is called.
pub const FILE: &str = "farend-practice-record.json";

/// Cases before which nothing is called firm: this project's judgement.
const FIRM_AFTER: usize = 4;
/// From which part of the way on it is which word: this project's judgement.
const FIRM: f64 = 0.7;
const BETWEEN: f64 = 0.3;

/// How far an idea has come, from guessing to knowing, after so many cases.
pub fn word(part: f64, cases: usize) -> &'static str {
    if part >= FIRM && cases >= FIRM_AFTER {
        firm()
    } else if part >= BETWEEN {
        getting_there()
    } else {
        taking_shape()
    }
}

/// What lies behind the word.
pub fn behind(cases: usize, help: Help) -> String {
    Behind {
        cases: &case_word(cases),
        help: super::help_small(help),
    }
    .said()
}

/// Why the record isn't kept, and what that means.
pub fn trouble(trouble: Trouble) -> &'static str {
    match trouble {
        Trouble::Closed => trouble_closed(),
        Trouble::Full => trouble_full(),
        Trouble::Damaged => trouble_damaged(),
        Trouble::Newer => trouble_newer(),
    }
}
