//! The words of a learner's own record.

use crate::model::practice::record::Trouble;
use crate::text::case_word;
use farend_core::practice::Help;

pub const LEAD: &str = "This is for you alone. It stays in this browser, on this device, and goes \
    nowhere.";
pub const NOTHING: &str = "not met yet";
pub const EXPORT: &str = "Save as a file (JSON)";
pub const FILE: &str = "farend-practice-record.json";
pub const ERASE: &str = "Erase it";
pub const ASK: &str = "Erase all of it? It can't be brought back.";
pub const YES: &str = "Yes, erase it";
pub const NO: &str = "Keep it";
pub const ERASED: &str = "Erased.";
pub const EMPTY: &str = "Nothing is kept yet. It begins with your first case.";

/// Cases before which nothing is called firm: this project's judgement.
const FIRM_AFTER: usize = 4;
/// From which part of the way on it is which word: this project's judgement.
const FIRM: f64 = 0.7;
const BETWEEN: f64 = 0.3;

/// How far an idea has come, from guessing to knowing, after so many cases.
pub fn word(part: f64, cases: usize) -> &'static str {
    if part >= FIRM && cases >= FIRM_AFTER {
        "firm: you know it, and you know that you do"
    } else if part >= BETWEEN {
        "getting there"
    } else {
        "taking shape"
    }
}

/// What lies behind the word.
pub fn behind(cases: usize, help: Help) -> String {
    format!(
        "{}; next: {}",
        case_word(cases),
        super::help(help).to_lowercase()
    )
}

/// Why the record isn't kept, and what that means.
pub fn trouble(trouble: Trouble) -> &'static str {
    match trouble {
        Trouble::Closed => {
            "This browser doesn't let the page keep anything here. You can practise all the same; \
             how it goes is forgotten when you leave, unless you save it as a file."
        }
        Trouble::Full => {
            "This browser has no room left to keep your last answer. Save it as a file, or free \
             some room in the browser's settings."
        }
        Trouble::Damaged => {
            "What this browser kept can't be read any more. It is left as it is, and new answers \
             aren't kept. Erase it to begin anew."
        }
        Trouble::Newer => {
            "A newer version of this page kept what is here. Reload the page to use it; until then \
             it is left as it is, and new answers aren't kept."
        }
    }
}
