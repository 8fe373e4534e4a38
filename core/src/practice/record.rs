//! How well somebody knows what they know.

use super::{Help, Idea};
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
    /// How much help there was.
    pub help: Help,
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

/// Answers that count for progress: this project's judgement.
const COUNTED: usize = 8;

/// The mean score of the last `COUNTED` answers about an idea, the newest last; `None` where there
/// are none.
pub fn progress(answers: &[Answered], idea: Idea) -> Option<f64> {
    let of_idea = answers.iter().rev().filter(|it| it.idea == idea);
    let scores: Vec<_> = of_idea.take(COUNTED).map(score).collect();
    let sum: f64 = scores.iter().sum();
    (!scores.is_empty()).then(|| sum / scores.len() as f64)
}
