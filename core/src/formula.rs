//! A formula as data: symbols, and the figures to fill in. The page chooses units and digits.

use crate::drive::Drive;
use crate::source::Source;
use crate::spread::Spread;
use crate::units::Quantity;

/// One figure of a formula.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Figure {
    /// Its symbol, as in the formula.
    pub symbol: &'static str,
    /// Its likely value.
    pub value: Quantity,
    /// Its low and high value, where they differ from the likely one.
    pub range: Option<(Quantity, Quantity)>,
    /// Where it comes from.
    pub source: Source,
}

impl Figure {
    /// A figure that follows from others.
    pub fn computed(symbol: &'static str, value: Quantity) -> Self {
        Self::known(symbol, value, Source::Computed)
    }

    /// A figure without a range.
    pub fn known(symbol: &'static str, value: Quantity, source: Source) -> Self {
        Self {
            symbol,
            value,
            range: None,
            source,
        }
    }

    /// A figure with its range.
    pub fn spread<T: Copy + PartialEq>(
        symbol: &'static str,
        spread: Spread<T>,
        quantity: impl Fn(T) -> Quantity,
    ) -> Self {
        let range =
            (spread.low != spread.high).then(|| (quantity(spread.low), quantity(spread.high)));
        Self {
            symbol,
            value: quantity(spread.likely),
            range,
            source: spread.source,
        }
    }

    /// The power taken by a stage.
    pub fn power_in(takes: Drive) -> Self {
        Self::computed("P₁", Quantity::Power(takes.power))
    }

    /// The power handed on by a stage.
    pub fn power_out(gives: Drive) -> Self {
        Self::computed("P₂", Quantity::Power(gives.power))
    }
}

/// A piece of a formula's right-hand side.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Part {
    /// An operator, a bracket or a number that belongs to the equation itself.
    Sign(&'static str),
    /// A figure.
    Figure(Figure),
}

/// `result = parts`.
#[derive(Clone, Debug, PartialEq)]
pub struct Formula {
    /// The left-hand side.
    pub result: Figure,
    /// The right-hand side, in reading order.
    pub parts: Vec<Part>,
}

impl Formula {
    /// Starts `result =`.
    pub fn of(result: Figure) -> Self {
        Self {
            result,
            parts: Vec::new(),
        }
    }

    /// Starts `result = first`.
    pub fn new(result: Figure, first: Figure) -> Self {
        Self::of(result).figure(first)
    }

    /// Goes on with an operator and a figure.
    pub fn then(self, sign: &'static str, figure: Figure) -> Self {
        self.sign(sign).figure(figure)
    }

    /// Goes on with a figure alone.
    pub fn figure(mut self, figure: Figure) -> Self {
        self.parts.push(Part::Figure(figure));
        self
    }

    /// Goes on with a bare operator, bracket or number.
    pub fn sign(mut self, sign: &'static str) -> Self {
        self.parts.push(Part::Sign(sign));
        self
    }
}
