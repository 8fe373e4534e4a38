//! Stages in a row, joined to an engine: what flows through them at one engine speed.
//!
//! The harder the engine turns the first stage, the higher every torque and pressure behind it. So
//! one number, the part of the engine's budget that is taken, settles everything, and the most
//! that arrives is found by raising it until a torque or a pressure is at its limit, or the budget
//! is used up.

use crate::drive::{Drive, Limit, Rate, Stall};
use crate::formula::Formula;
use crate::quantity::{AngularSpeed, Power};
use crate::root::{Bracket, rising_root};
use crate::stage::{AtWork, Stage, StageKind, StagePhysics};

/// What one stage took and handed on.
#[derive(Clone, Debug, PartialEq)]
pub struct Passage<S = Stage> {
    /// The stage.
    pub stage: S,
    /// What it took.
    pub takes: Drive,
    /// What it handed on.
    pub gives: Drive,
    /// What it lost, by its own equation.
    pub loss: Power,
}

impl<S: StagePhysics> Passage<S> {
    /// The stage's equations with their figures filled in; none where nothing is handed on, for
    /// then none of them holds.
    pub fn formulas(&self, at: &AtWork) -> Vec<Formula> {
        if self.gives.power <= Power::ZERO {
            return Vec::new();
        }
        self.stage.formulas(self.takes, self.gives, at)
    }
}

/// A route's stages in order, with what each took, lost and passed on.
#[derive(Clone, Debug, PartialEq)]
pub struct Ledger<S = Stage> {
    /// What the engine could give at this speed.
    pub available: Power,
    /// The stages. As far as oil or shafts move; the rest is left out after a stall.
    pub passages: Vec<Passage<S>>,
    /// Which values its figures have, and the oil.
    pub at: AtWork,
    /// What holds the power where it is.
    pub limit: Limit,
    /// Why nothing arrives, if so.
    pub stall: Option<Stall>,
}

impl<S: StagePhysics> Ledger<S> {
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

    /// Power that ends as heat in the oil: what every stage with oil loses, each once.
    pub fn heats_oil(&self) -> Power {
        self.passages
            .iter()
            .filter(|passage| passage.stage.kind().heats_oil())
            .map(|passage| passage.loss)
            .sum()
    }
}

/// Stages joined to an engine: those of this crate, or any that tell what [`StagePhysics`] asks.
#[derive(Clone, Copy, Debug)]
pub struct Chain<'a, S = Stage> {
    /// The stages, from the engine on.
    pub stages: &'a [S],
    /// What the engine can give them.
    pub available: Power,
    /// The engine's speed.
    pub speed: AngularSpeed,
    /// Which values the figures have, and the oil.
    pub at: AtWork,
}

/// How a chain runs with one part of its budget.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Running {
    /// Part of the budget taken, 0 to 1.
    pub part: f64,
    /// The highest of all torques and pressures over what each is allowed.
    pub strain: f64,
    /// The limit that this one is.
    pub limit: Option<Limit>,
    /// What arrives.
    pub end: Drive,
    /// What ends as heat in the oil: what every stage with oil loses, each once.
    pub heat: Power,
    /// What the pump hands on, where there is one.
    pub pumped: Option<Drive>,
    /// Why nothing does, if so.
    pub stall: Option<Stall>,
}

impl Running {
    /// Power that arrives: none after a stall.
    pub fn arrives(&self) -> Power {
        match self.stall {
            Some(_) => Power::ZERO,
            None => self.end.power,
        }
    }
}

/// How near the best part is found, as a part of the interval. At a peak, what arrives differs by
/// the square of that: rounding.
const BEST: f64 = 1e-8;
/// Parts tried before a peak is refined: this project's judgement. A dip between two peaks that is
/// narrower than their distance is passed over.
const TRIED: u8 = 64;
/// A part by which less is taken to see whether more would arrive.
const HAIR: f64 = 1e-7;

impl<S: StagePhysics + Copy> Chain<'_, S> {
    fn begin(&self, part: f64) -> Drive {
        Drive {
            rate: Rate::Turning(self.speed),
            power: self.available * part,
        }
    }

    /// How it runs with a part of its budget, from 0 to 1.
    ///
    /// # Errors
    /// [`Stall::NotJoined`] where a stage for oil meets a shaft or the other way. Other stalls are
    /// results, not errors.
    pub fn running(&self, part: f64) -> Result<Running, Stall> {
        let mut running = Running {
            part,
            strain: 0.0,
            limit: None,
            end: self.begin(part),
            heat: Power::ZERO,
            pumped: None,
            stall: None,
        };
        for stage in self.stages {
            let pass = stage.pass(running.end, &self.at)?;
            if let Some((strain, limit)) = pass.strain
                && strain > running.strain
            {
                running.strain = strain;
                running.limit = Some(limit);
            }
            if stage.kind().heats_oil() {
                running.heat = running.heat + pass.loss;
            }
            if stage.kind() == StageKind::Pump {
                running.pumped = Some(pass.gives);
            }
            running.end = pass.gives;
            running.stall = pass.stall;
            if pass.stall.is_some() {
                break;
            }
        }
        Ok(running)
    }

    /// The most that it can run at, and what holds it there.
    ///
    /// # Errors
    /// As [`Self::running`].
    pub fn most(&self) -> Result<(Running, Limit), Stall> {
        let (top, limit) = self.top()?;
        // What arrives is (Q − k·p)·(p − d) at most: it only falls with p where more than half of
        // the flow leaks, and then less arrives than is lost.
        if top.stall.is_none() && top.heat < top.end.power {
            return Ok((top, limit));
        }
        for less in [HAIR, 1.0 / f64::from(TRIED)] {
            let less = self.running(top.part * (1.0 - less))?;
            if less.arrives() > top.arrives() {
                // Leakage takes more than pressure brings: it does best below the top.
                return Ok((self.best_below(top)?, Limit::Flow));
            }
        }
        Ok((top, limit))
    }

    /// The most of its budget at which no torque or pressure is above its limit and flow is left.
    fn top(&self) -> Result<(Running, Limit), Stall> {
        let part = self.may_take()?;
        let most = self.running(part)?;
        let flows = most.stall != Some(Stall::NoFlowLeft);
        if flows && most.strain <= 1.0 + AT_LIMIT {
            let holds = most.limit.filter(|_| part < 1.0);
            return Ok((most, holds.unwrap_or(Limit::Engine)));
        }
        // What is behind a pump holds it lower, or flow is short.
        let over = |it: &Running| match it.stall {
            Some(Stall::NoFlowLeft) => NO_FLOW,
            _ => it.strain - 1.0,
        };
        // Without power there is no strain.
        let bracket = Bracket {
            a: 0.0,
            b: part,
            at_a: -1.0,
            at_b: over(&most),
        };
        let part = bracket.root(|part| self.running(part).map_or(NO_FLOW, |it| over(&it)));
        let top = self.running(part)?;
        if top.stall.is_some() && !flows {
            // There is no flow at any pressure.
            return Ok((most, Limit::Flow));
        }
        // Where flow ends first, more arrives below: see `most`.
        Ok((top, top.limit.unwrap_or(Limit::Flow)))
    }

    /// The most of its budget that shafts and a pump behind them may take.
    fn may_take(&self) -> Result<f64, Stall> {
        let mut part = 1.0;
        let mut takes = self.begin(part);
        for stage in self.stages {
            if let Some(most) = stage.may_take(takes.rate, &self.at)
                && most < takes.power
            {
                // Up to here there are only shafts, and everything is in proportion.
                part *= most / takes.power;
                takes.power = most;
            }
            if stage.kind().heats_oil() {
                break;
            }
            takes = stage.pass(takes, &self.at)?.gives;
        }
        Ok(part)
    }

    /// The part up to the top's at which most arrives. What arrives rises to a peak and falls, but may
    /// rise to another where the flow in a hose passes between turbulent and laminar.
    fn best_below(&self, top: Running) -> Result<Running, Stall> {
        let step = top.part / f64::from(TRIED);
        let (mut best, mut rose) = (top, true);
        let mut before = self.running(step)?;
        for place in 2..=TRIED {
            let here = self.running(step * f64::from(place))?;
            let rises = rises(&before, &here);
            if rose && !rises {
                best = more(best, self.peak(before.part - step, here.part)?);
            }
            (before, rose) = (here, rises);
        }
        if rose {
            best = more(best, self.peak(before.part - step, before.part)?);
        }
        Ok(best)
    }

    /// The peak between two parts, and there is but one.
    fn peak(&self, mut from: f64, mut to: f64) -> Result<Running, Stall> {
        // The golden section: (√5 − 1)/2.
        const GOLDEN: f64 = 0.618_033_988_749_894_9;
        let close = BEST * to;
        let mut low = self.running(to - GOLDEN * (to - from))?;
        let mut high = self.running(from + GOLDEN * (to - from))?;
        while to - from > close {
            if rises(&low, &high) {
                from = low.part;
                low = high;
                high = self.running(from + GOLDEN * (to - from))?;
            } else {
                to = high.part;
                high = low;
                low = self.running(to - GOLDEN * (to - from))?;
            }
        }
        Ok(if rises(&low, &high) { high } else { low })
    }

    /// How it runs where just so much is asked at each speed of its end, which doesn't grow as that
    /// slows down; at its most where that isn't enough.
    pub fn working(&self, most: Running, load: impl Fn(AngularSpeed) -> Power) -> Running {
        // What arrives less what is asked.
        let surplus = |running: &Running| {
            let asked = running.end.rate.turning().map_or(Power::ZERO, &load);
            (running.arrives() - asked).to_watts()
        };
        if surplus(&most) <= 0.0 {
            return most;
        }
        let part = rising_root(|part| match self.running(part * most.part) {
            Ok(running) if running.stall.is_none() => surplus(&running),
            _ => -1.0,
        });
        self.running(part * most.part).unwrap_or(most)
    }

    /// The ledger of how it runs.
    ///
    /// # Errors
    /// As [`Self::running`].
    pub fn ledger(&self, running: &Running, limit: Limit) -> Result<Ledger<S>, Stall> {
        let mut passages = Vec::with_capacity(self.stages.len());
        let mut takes = self.begin(running.part);
        // Without flow nothing moves, so nothing is taken.
        let moving = match running.stall {
            Some(Stall::NoFlowLeft) => &[],
            _ => self.stages,
        };
        for stage in moving {
            let pass = stage.pass(takes, &self.at)?;
            passages.push(Passage {
                stage: *stage,
                takes,
                gives: pass.gives,
                loss: pass.loss,
            });
            takes = pass.gives;
            if pass.stall.is_some() {
                break;
            }
        }
        Ok(Ledger {
            available: self.available,
            passages,
            at: self.at,
            limit,
            stall: running.stall,
        })
    }
}

/// Whether more arrives with the higher of two parts, or would with one that is higher still, since
/// the lower leaves no pressure.
fn rises(low: &Running, high: &Running) -> bool {
    low.stall == Some(Stall::NoPressureLeft) || high.arrives() > low.arrives()
}

/// The one with which more arrives.
fn more(one: Running, other: Running) -> Running {
    if other.arrives() > one.arrives() {
        other
    } else {
        one
    }
}

/// How near to its limit a torque or pressure counts as being there: rounding.
const AT_LIMIT: f64 = 1e-13;
/// Stands for a strain beyond all limits where pressure has eaten up the flow.
const NO_FLOW: f64 = 1e3;
