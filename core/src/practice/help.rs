//! Help that fades.

use super::Answered;
use crate::words::words;

words! {
    /// How much of the way to the answer is shown.
    Help {
        /// All of it, worked out on another case.
        Shown = "shown",
        /// All but the first stage.
        FirstBlank = "first_blank",
        /// Nothing.
        AllBlank = "all_blank",
    }
}

impl Help {
    /// What "I know this" asks for.
    pub const KNOWN: Self = Self::AllBlank;
}

/// How much to help with the next case of an idea, after its last answers, the newest last.
pub fn next(help: Help, _last: &[Answered]) -> Help {
    help
}
