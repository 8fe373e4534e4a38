//! Flow of a sheet: what steering takes of it, and what the engine's speed makes of it.

use super::oil::OfOil;
use super::sheet::left_out;
use super::{Answer, Finding, ROUNDING, SheetFigure, Taken, Weight};
use crate::machine::SteeringShare;
use crate::quantity::{AngularSpeed, Flow};
use crate::spread::Spread;

/// What the implement's pump gives of a claimed flow, and what is left of that for the implement.
struct Shared {
    pump_gives: Flow,
    steering: Flow,
    left: Flow,
}

impl OfOil<'_> {
    /// n/n_r: the sheet's engine speed over that of the yard's flow.
    fn times(&self) -> f64 {
        self.speed / self.circuit.engine_speed
    }

    /// A claimed flow shared out, where the yard knows of a flow for steering.
    ///
    /// It is taken for the machine's flow with steering's where it lies within that one's range, and
    /// nearer to it than to the flow without, which is this project's judgement. Behind a divider
    /// that flow may be the pump's, or the pump's with steering's added once more.
    fn shared(&self, claimed: Flow) -> Option<Shared> {
        let known = self.circuit.flow.map(|flow| flow * self.times());
        let is_about = |known: Spread<Flow>, steering: Flow| {
            let off = claimed.max(known.likely) - claimed.min(known.likely);
            off < steering * 0.5
                && claimed >= known.low * (1.0 - ROUNDING)
                && claimed <= known.high * (1.0 + ROUNDING)
        };
        // Q₂ = Q₁ − Q_t
        let less = |flow: Flow, steering: Flow| (flow - steering).max(Flow::ZERO);
        match self.circuit.steering {
            SteeringShare::SeparatePump | SteeringShare::LoadSensingPriority => None,
            SteeringShare::Summed(share) => {
                let steering = share.likely * self.times();
                let left = if is_about(known, steering) {
                    less(claimed, steering)
                } else {
                    claimed
                };
                Some(Shared {
                    pump_gives: left,
                    steering,
                    left,
                })
            }
            SteeringShare::FixedPriority(share) => {
                let steering = share.likely;
                let added = known.map(|flow| flow + steering);
                let (pump_gives, left) = if is_about(added, steering) {
                    let pump_gives = less(claimed, steering);
                    (pump_gives, less(pump_gives, steering))
                } else if self.sheet.taken == Some(Taken::AtPump) || is_about(known, steering) {
                    (claimed, less(claimed, steering))
                } else {
                    (claimed + steering, claimed)
                };
                Some(Shared {
                    pump_gives,
                    steering,
                    left,
                })
            }
        }
    }

    /// The flow for the implement at the sheet's engine speed.
    pub(super) fn flow(&self) -> Option<Flow> {
        let claimed = self.sheet.flow?;
        Some(self.shared(claimed).map_or(claimed, |it| it.left))
    }

    /// The sheet's flow as a yard file means it: at the yard's engine speed, with what a divider
    /// or a pump that is added in gives to steering.
    ///
    /// Equation: Q_s = (Q + Q_t)·n_r/n with a divider, Q·n_r/n + Q_t where steering's is added in.
    pub(super) fn as_of_yard(&self) -> Option<Flow> {
        let flow = self.flow()?;
        Some(match self.circuit.steering {
            SteeringShare::FixedPriority(share) => (flow + share.likely) / self.times(),
            SteeringShare::Summed(share) => flow / self.times() + share.likely,
            SteeringShare::SeparatePump | SteeringShare::LoadSensingPriority => flow / self.times(),
        })
    }

    /// Flow against the machine's with and without steering's.
    pub(super) fn steering(&self) -> Answer {
        if matches!(
            self.circuit.steering,
            SteeringShare::SeparatePump | SteeringShare::LoadSensingPriority
        ) {
            return Answer::NotForThisMachine;
        }
        let Some((claimed, shared)) = self
            .sheet
            .flow
            .and_then(|flow| Some((flow, self.shared(flow)?)))
        else {
            return Answer::Lacks(vec![SheetFigure::Flow]);
        };
        let Shared {
            pump_gives,
            steering,
            left,
        } = shared;
        let weight = if left >= claimed {
            Weight::Holds
        } else if self.sheet.taken == Some(Taken::AtPump) && pump_gives == claimed {
            Weight::Restated
        } else {
            Weight::Wrong
        };
        let finding = Finding::Steering {
            claimed,
            pump_gives,
            steering,
            left,
        };
        Answer::Found(weight, finding)
    }

    /// The flow at the working speed.
    ///
    /// Equation: Q₂ = (Q₁ + Q_t)·n₂/n₁ − Q_t; Q_t = 0 without a divider. Units: SI.
    /// Source: definition of displacement; a divider's share is the same at every speed.
    pub(super) fn working_speed(&self, working: AngularSpeed) -> Answer {
        let (Some(flow), Some(speed)) = (self.flow(), self.sheet.engine_speed) else {
            return Answer::Lacks(left_out([
                (SheetFigure::Flow, self.sheet.flow.is_some()),
                (SheetFigure::EngineSpeed, self.sheet.engine_speed.is_some()),
            ]));
        };
        let steering = match self.circuit.steering {
            SteeringShare::FixedPriority(share) => share.likely,
            _ => Flow::ZERO,
        };
        let weight = if (working / speed - 1.0).abs() > ROUNDING {
            Weight::Restated
        } else {
            Weight::Holds
        };
        let finding = Finding::WorkingSpeed {
            flow,
            speed,
            steering,
            working,
            // Q₂ = (Q₁ + Q_t)·n₂/n₁ − Q_t
            left: ((flow + steering) * (working / speed) - steering).max(Flow::ZERO),
        };
        Answer::Found(weight, finding)
    }
}
