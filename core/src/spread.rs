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

/// How an uncertain figure bears on what is delivered.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Axis {
    /// More of it never delivers less.
    Merit,
    /// More of it never delivers more.
    Burden,
    /// The sheet's flow: more of it is more flow for more torque.
    Flow,
    /// The steering's flow: more of it is less flow.
    Steering,
    /// The pump's volumetric efficiency: more of it is more flow for the same torque.
    Tightness,
    /// The oil's viscosity: thicker oil leaks less and rubs more.
    Viscosity,
}

/// Which value every figure takes: one for all merits, and one for each figure of which it can't be
/// said beforehand whether more is better. More flow helps until hoses or engine are too small.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Corner {
    /// Merits; burdens take the opposite.
    pub merit: Scenario,
    /// The sheet's flow.
    pub flow: Scenario,
    /// The steering's flow.
    pub steering: Scenario,
    /// The pump's volumetric efficiency.
    pub tightness: Scenario,
    /// The oil's viscosity.
    pub viscosity: Scenario,
}

impl Corner {
    /// Everything as it most likely is.
    pub const LIKELY: Self = Self::all(Scenario::Likely);

    /// One value for everything.
    pub const fn all(scenario: Scenario) -> Self {
        Self {
            merit: scenario,
            flow: scenario,
            steering: scenario,
            tightness: scenario,
            viscosity: scenario,
        }
    }

    /// The value of a spread that bears on what is delivered along an axis.
    pub fn of<T: Copy>(self, axis: Axis, spread: &Spread<T>) -> T {
        spread.at(match axis {
            Axis::Merit => self.merit,
            Axis::Burden => self.merit.of_a_burden(),
            Axis::Flow => self.flow,
            Axis::Steering => self.steering,
            Axis::Tightness => self.tightness,
            Axis::Viscosity => self.viscosity,
        })
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
