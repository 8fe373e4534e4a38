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

/// From which progress on it is which word: this project's judgement.
const WORDS: [(f64, &str); 3] = [
    (0.85, "firm: you know when you know"),
    (0.65, "getting there"),
    (0.0, "taking shape"),
];

/// How far an idea has come.
pub fn word(progress: f64) -> &'static str {
    let mut words = WORDS.into_iter();
    words
        .find(|(from, _)| progress >= *from)
        .map_or(NOTHING, |(_, word)| word)
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
