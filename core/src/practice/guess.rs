//! What a learner says, held against the truth.

use super::{Answer, Case, Misconception};
use crate::quantity::Power;
use crate::route::RouteId;

/// What a learner says.
#[derive(Clone, Debug, PartialEq)]
pub enum Guess {
    /// Of [`super::Question::Route`].
    Order {
        /// Those that can be hooked up, most arriving power first.
        order: Vec<RouteId>,
        /// Those that can't.
        cant: Vec<RouteId>,
    },
    /// Of [`super::Question::Amount`].
    Power(Power),
    /// Of all others: the place of a choice.
    Choice(usize),
}

/// A guess held against the truth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Judged {
    /// Whether it's right.
    pub right: bool,
    /// How near it comes, from 0 to 1, which is right.
    pub near: f64,
    /// The wrong idea that it shows, where it shows one.
    pub misconception: Option<Misconception>,
}

/// Holds a guess against the truth. A guess that doesn't belong to the question is wrong.
pub fn judge(_case: &Case, _answer: &Answer, _guess: &Guess) -> Judged {
    Judged {
        right: false,
        near: 0.0,
        misconception: None,
    }
}
