//! Which uncertain figure moves what arrives the most.

use crate::quantity::Power;
use crate::route::joined::Joined;
use crate::spread::{Corner, Scenario};
use crate::stage::{FigureName, StageKind};

/// What one uncertain figure does, all others at their likely values.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Influence {
    /// The stage that it belongs to; `None` for engine, driving and oil.
    pub stage: Option<StageKind>,
    /// The figure.
    pub figure: FigureName,
    /// What arrives at its low value.
    pub at_low: Power,
    /// What arrives at its high value.
    pub at_high: Power,
}

impl Influence {
    /// How far it moves what arrives, up or down.
    pub fn span(&self) -> Power {
        let up = self.at_high - self.at_low;
        up.max(Power::ZERO - up)
    }
}

/// Every uncertain figure of a route, the one that moves the most first.
pub fn influences(joined: &mut Joined) -> Vec<Influence> {
    let mut figures = Vec::new();
    joined.visit(&mut |stage, figure, _, value| figures.push((stage, figure, value.is_open())));
    let mut all: Vec<_> = figures
        .into_iter()
        .enumerate()
        .filter(|(_, (_, _, open))| *open)
        .map(|(place, (stage, figure, _))| Influence {
            stage,
            figure,
            at_low: with_one_at(joined, place, Scenario::Low),
            at_high: with_one_at(joined, place, Scenario::High),
        })
        .collect();
    all.sort_by(|a, b| b.span().to_si().total_cmp(&a.span().to_si()));
    all
}

/// What arrives with the figure at a place at one end of its range.
fn with_one_at(joined: &Joined, place: usize, end: Scenario) -> Power {
    let mut joined = joined.clone();
    let mut next = 0;
    joined.visit(&mut |_, _, _, value| {
        if next == place {
            value.pin(end);
        }
        next += 1;
    });
    let most = joined.chain(Corner::LIKELY).most();
    most.map_or(Power::ZERO, |(most, _)| most.arrives())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_falls_spans_as_much_as_what_rises() {
        let span = |at_low, at_high| {
            let influence = Influence {
                stage: None,
                figure: FigureName::Viscosity,
                at_low: Power::watts(at_low),
                at_high: Power::watts(at_high),
            };
            influence.span().to_watts()
        };
        assert_eq!(span(2000.0, 2500.0), 500.0);
        assert_eq!(span(2500.0, 2000.0), 500.0);
    }
}
