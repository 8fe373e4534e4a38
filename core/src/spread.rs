//! A figure that is not known exactly: low, likely and high, with its source.

use crate::source::Source;
use core::ops::{Div, Mul};

/// Which of the three values a calculation takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scenario {
    /// Everything as poor as its range allows.
    Low,
    /// Everything as it most likely is.
    Likely,
    /// Everything as good as its range allows.
    High,
}

impl Scenario {
    /// All three, from the poorest.
    pub const ALL: [Self; 3] = [Self::Low, Self::Likely, Self::High];

    /// The scenario for a figure of which more is worse (a loss, a share taken away).
    pub fn of_a_burden(self) -> Self {
        match self {
            Self::Low => Self::High,
            Self::Likely => Self::Likely,
            Self::High => Self::Low,
        }
    }
}

/// Three values of one figure in rising order, and where they come from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spread<T> {
    /// The lowest value to expect.
    pub low: T,
    /// The value to expect.
    pub likely: T,
    /// The highest value to expect.
    pub high: T,
    /// Where the three come from.
    pub source: Source,
}

impl<T: Copy> Spread<T> {
    /// Three values in rising order.
    pub const fn new(low: T, likely: T, high: T, source: Source) -> Self {
        Self {
            low,
            likely,
            high,
            source,
        }
    }

    /// A figure without a range.
    pub const fn exact(value: T, source: Source) -> Self {
        Self::new(value, value, value, source)
    }

    /// The value that a scenario takes.
    pub fn at(&self, scenario: Scenario) -> T {
        match scenario {
            Scenario::Low => self.low,
            Scenario::Likely => self.likely,
            Scenario::High => self.high,
        }
    }

    /// Each value put through a rising function.
    pub fn map<U>(self, f: impl Fn(T) -> U) -> Spread<U> {
        Spread {
            low: f(self.low),
            likely: f(self.likely),
            high: f(self.high),
            source: self.source,
        }
    }
}

impl<T: Copy + Div<T, Output = f64> + Mul<f64, Output = T>> Spread<T> {
    /// The same relative range about another likely value (a figure that the user turned).
    /// Valid for a likely value above zero.
    pub fn moved_to(self, likely: T) -> Self {
        let scale = likely / self.likely;
        self.map(|value| value * scale)
    }
}

impl<T: Copy + PartialOrd> Spread<T> {
    /// The smallest, the likely and the largest of three results, one a scenario: the order of
    /// the scenarios is not always that of the results.
    pub fn around(low: T, likely: T, high: T) -> Self {
        let smaller = |a: T, b: T| if b < a { b } else { a };
        let larger = |a: T, b: T| if b > a { b } else { a };
        Self::new(
            smaller(likely, smaller(low, high)),
            likely,
            larger(likely, larger(low, high)),
            Source::Computed,
        )
    }
}
