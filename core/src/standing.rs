//! How a route fares against the need.

use crate::quantity::Power;
use crate::spread::Spread;
use crate::words::words;

words! {
    /// In words: from delivered over needed. The bands are this project's judgement.
    Standing {
        /// Below 0.4 of the need: the work can't be done.
        Starves = "starves",
        /// From 0.4 of the need.
        Labours = "labours",
        /// From 0.7 of the need.
        Slower = "slower",
        /// The need is met.
        Enough = "enough",
        /// At least 1.15 times the need.
        Ample = "ample",
    }
}

/// Delivered over needed from which each standing holds, best first: this project's judgement.
pub const BANDS: [(f64, Standing); 4] = [
    (1.15, Standing::Ample),
    (1.0, Standing::Enough),
    (0.7, Standing::Slower),
    (0.4, Standing::Labours),
];

impl Standing {
    /// The standing of a ratio of delivered to needed power.
    pub fn of(ratio: f64) -> Self {
        BANDS
            .into_iter()
            .find(|(from, _)| ratio >= *from)
            .map_or(Self::Starves, |(_, standing)| standing)
    }

    /// The ratio of delivered to needed power from which it holds.
    pub fn begins_at(self) -> f64 {
        BANDS
            .into_iter()
            .find(|(_, standing)| *standing == self)
            .map_or(0.0, |(from, _)| from)
    }
}

/// The standing at the likely values, and at the poorest and best pairing of the ranges.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Verdict {
    /// Delivered over needed, both likely.
    pub ratio: f64,
    /// At the likely values.
    pub likely: Standing,
    /// Least delivered against most needed.
    pub poorest: Standing,
    /// Most delivered against least needed.
    pub best: Standing,
}

impl Verdict {
    /// Holds what is delivered against what is needed. Valid for a need above zero.
    pub fn of(delivered: Spread<Power>, need: Spread<Power>) -> Self {
        let ratio = delivered.likely / need.likely;
        Self {
            ratio,
            likely: Standing::of(ratio),
            poorest: Standing::of(delivered.low / need.high),
            best: Standing::of(delivered.high / need.low),
        }
    }

    /// The same, but no better than a standing.
    pub fn at_most(self, most: Standing) -> Self {
        Self {
            likely: self.likely.min(most),
            poorest: self.poorest.min(most),
            best: self.best.min(most),
            ..self
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::source::Source;

    #[test]
    fn no_value_is_better_than_the_bound() {
        let power =
            |low, likely, high| Spread::new(low, likely, high, Source::Own).map(Power::kilowatts);
        let verdict = Verdict::of(power(9.0, 20.0, 30.0), power(19.0, 20.0, 21.0));
        use Standing::{Ample, Enough, Labours, Slower};
        let all = |it: Verdict| (it.poorest, it.likely, it.best);
        assert_eq!(all(verdict), (Labours, Enough, Ample));
        assert_eq!(all(verdict.at_most(Slower)), (Labours, Slower, Slower));
        assert_eq!(all(verdict.at_most(Standing::Starves)).0, Standing::Starves);
    }
}
