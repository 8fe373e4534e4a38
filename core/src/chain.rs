//! Stages in a row, joined to an engine: what flows through them at one speed.
//!
//! Speeds and flows follow from the engine's speed alone, from the engine on. Powers then follow
//! in two sweeps. Forward: the engine's budget is passed on, each stage keeping its loss and
//! holding the rest under its cap; what is left at the end is delivered. Backward: what each
//! stage must take for that.

use crate::drive::{Drive, Limit, Rate, Stall};
use crate::quantity::{AngularSpeed, Power};
use crate::spread::Scenario;
use crate::stage::{Pass, Stage, StagePhysics};

/// What one stage took and handed on.
#[derive(Clone, Debug, PartialEq)]
pub struct Passage {
    /// The stage.
    pub stage: Stage,
    /// What it took.
    pub takes: Drive,
    /// What it handed on.
    pub gives: Drive,
    /// What it lost, by its own equation: P₁·(1 − share) + toll.
    pub loss: Power,
}

/// A route's stages in order, with what each took, lost and passed on.
#[derive(Clone, Debug, PartialEq)]
pub struct Ledger {
    /// What the engine could give at this speed.
    pub available: Power,
    /// The stages. As far as oil or shafts move; the rest is left out after a stall.
    pub passages: Vec<Passage>,
    /// What holds the power where it is.
    pub limit: Limit,
    /// Why nothing arrives, if so.
    pub stall: Option<Stall>,
}

impl Ledger {
    /// Power that the route takes from the engine.
    pub fn taken(&self) -> Power {
        self.passages
            .first()
            .map_or(Power::ZERO, |first| first.takes.power)
    }

    /// What arrives at the end: nothing after a stall.
    pub fn delivered(&self) -> Option<Drive> {
        match self.stall {
            Some(_) => None,
            None => self.passages.last().map(|last| last.gives),
        }
    }

    /// Power of the engine that this route can't take up.
    pub fn left_in_engine(&self) -> Power {
        self.available - self.taken()
    }
}

/// Runs stages on an engine budget at an engine speed.
///
/// # Errors
/// [`Stall::NotJoined`] where a stage for oil meets a shaft or the other way. Other stalls are
/// results, not errors: they stand in the ledger.
pub fn run(
    stages: &[Stage],
    available: Power,
    speed: AngularSpeed,
    scenario: Scenario,
) -> Result<Ledger, Stall> {
    let mut limit = Limit::Engine;
    let mut stall = None;
    // Each stage with what reaches it and what it does there.
    let mut steps: Vec<(&Stage, Drive, Pass)> = Vec::with_capacity(stages.len());
    let mut reached = Drive {
        rate: Rate::Turning(speed),
        power: available,
    };

    for stage in stages {
        let pass = match stage.pass(reached.rate, scenario) {
            Ok(pass) => pass,
            Err(Stall::NotJoined) => return Err(Stall::NotJoined),
            Err(why) => {
                // No flow is left: nothing moves, so nothing is taken.
                return Ok(Ledger {
                    available,
                    passages: Vec::new(),
                    limit: Limit::Flow,
                    stall: Some(why),
                });
            }
        };
        steps.push((stage, reached, pass));
        // P₂ = share·P₁ − toll
        let mut power = reached.power * pass.share - pass.toll;
        if power <= Power::ZERO {
            // All that comes in is lost here: the relief valve opens and the rest stands still.
            power = Power::ZERO;
            stall = Some(Stall::NoPressureLeft);
            limit = Limit::Pressure;
        } else if let Some((cap, whose)) = pass.cap
            && cap < power
        {
            power = cap;
            limit = whose;
        }
        reached = Drive {
            rate: pass.rate,
            power,
        };
        if stall.is_some() {
            break;
        }
    }

    Ok(Ledger {
        available,
        passages: backward(&steps, reached, stall.is_some()),
        limit,
        stall,
    })
}

/// What each stage takes for what is handed on at the end. Where the last stage hands on nothing,
/// it takes all that reaches it.
fn backward(steps: &[(&Stage, Drive, Pass)], end: Drive, stalled: bool) -> Vec<Passage> {
    let mut passages = Vec::with_capacity(steps.len());
    let mut gives = end;
    for (place, (stage, reached, pass)) in steps.iter().rev().enumerate() {
        let (power, loss) = if stalled && place == 0 {
            (reached.power, reached.power)
        } else {
            // P₁ = (P₂ + toll)/share
            let power = (gives.power + pass.toll) / pass.share;
            (power, power * (1.0 - pass.share) + pass.toll)
        };
        let takes = Drive {
            rate: reached.rate,
            power,
        };
        passages.push(Passage {
            stage: (*stage).clone(),
            takes,
            gives,
            loss,
        });
        gives = takes;
    }
    passages.reverse();
    passages
}
