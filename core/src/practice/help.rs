//! Help that fades.

use super::{Answered, Confidence};
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

    fn less(self) -> Self {
        match self {
            Self::Shown => Self::FirstBlank,
            Self::FirstBlank | Self::AllBlank => Self::AllBlank,
        }
    }

    fn more(self) -> Self {
        match self {
            Self::AllBlank => Self::FirstBlank,
            Self::FirstBlank | Self::Shown => Self::Shown,
        }
    }
}

/// Right answers in a row, given with fair confidence, after which less help is enough: this
/// project's judgement.
const IN_A_ROW: usize = 2;

/// How much to help with the next case of an idea, after its last answers, the newest last. Those
/// before the help last changed don't count.
///
/// Help fades forward, the first stage first: a step less after `IN_A_ROW` right answers that
/// weren't guessed, a step more after a wrong one. A right guess changes nothing.
pub fn next(help: Help, last: &[Answered]) -> Help {
    let known =
        |it: &&Answered| it.help == help && it.right && it.confidence > Confidence::Guessing;
    match last.last() {
        Some(last) if !last.right => help.more(),
        _ if last.iter().rev().take_while(known).count() >= IN_A_ROW => help.less(),
        _ => help,
    }
}
