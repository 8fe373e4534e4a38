//! Holds a result against what is known of it.

use serde::Deserialize;

/// How far a result may lie from its number, itself still allowed.
#[derive(Clone, Copy, Debug, PartialEq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Tolerance {
    /// As a part of the number.
    Relative(f64),
    /// In the number's unit.
    Absolute(f64),
}

/// Wider than this part of its number, a tolerance would hide an error in the equation.
const WIDEST: f64 = 0.025;

impl Tolerance {
    /// How far from this number.
    pub fn allowed(self, expected: f64) -> f64 {
        match self {
            Self::Relative(part) => expected.abs() * part,
            Self::Absolute(difference) => difference,
        }
    }

    /// Whether a result is close enough. A result that isn't a number never is.
    pub fn admits(self, expected: f64, actual: f64) -> bool {
        (actual - expected).abs() <= self.allowed(expected)
    }

    /// Whether it can fail at all where it ought to.
    pub fn is_sound(self, expected: f64) -> bool {
        let allowed = self.allowed(expected);
        allowed > 0.0 && allowed <= expected.abs() * WIDEST
    }
}

/// Where a result must lie, both ends included.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Band {
    /// Lowest.
    pub from: f64,
    /// Highest.
    pub to: f64,
}

impl Band {
    /// Whether a result lies in it. A result that isn't a number never does.
    pub fn admits(self, actual: f64) -> bool {
        (self.from..=self.to).contains(&actual)
    }

    /// Whether it can fail on both sides where it ought to.
    pub fn is_sound(self) -> bool {
        self.from > 0.0 && self.from < self.to && self.to <= 2.0 * self.from
    }
}
