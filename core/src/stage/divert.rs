//! Flow that the implement can't use: a valve sends it back to the tank at working pressure.

use super::{AtWork, Pass, StageKind, StagePhysics, Visit};
use crate::drive::{Drive, Rate, Stall};
use crate::formula::{Figure, Formula};
use crate::quantity::{AngularSpeed, Displacement, Flow};
use crate::units::Quantity;

/// A fixed pump's valve that lets no more flow through than the motor can use.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Divert {
    /// The most that may go on.
    pub most: Flow,
}

/// The most flow that a motor may be given: its own highest, and no more than turns the rotor at
/// its highest speed without load, when nothing leaks.
///
/// Equation: Q ≤ Q_max and Q ≤ V·n_max. Units: SI. Valid range: all above zero.
/// Source: definition of displacement.
pub fn most_flow(highest: Flow, displacement: Displacement, highest_speed: AngularSpeed) -> Flow {
    // Q ≤ Q_max, Q ≤ V·n_max
    highest.min(displacement * highest_speed)
}

impl StagePhysics for Divert {
    fn kind(&self) -> StageKind {
        StageKind::Divert
    }

    fn pass(&self, takes: Drive, _: &AtWork) -> Result<Pass, Stall> {
        let flow = takes.rate.flowing()?;
        // Q₂ = min(Q₁, Q_max)
        let used = flow.min(self.most);
        Ok(Pass {
            gives: Drive {
                rate: Rate::Flowing(used),
                // P₂ = P₁·Q₂/Q₁, the pressure being the same
                power: takes.power * (used / flow),
            },
            // P_loss = P₁·(Q₁ − Q₂)/Q₁
            loss: takes.power * ((flow - used) / flow),
            strain: None,
            stall: None,
        })
    }

    fn formulas(&self, takes: Drive, gives: Drive, _: &AtWork) -> Vec<Formula> {
        let loss = takes.power - gives.power;
        vec![
            Formula::of(Figure::computed("P₁ − P₂", Quantity::Power(loss)))
                .figure(Figure::computed("p", gives.effort()))
                .sign("· (")
                .figure(Figure::computed("Q₁", takes.rate.quantity()))
                .then("−", Figure::computed("Q₂", gives.rate.quantity()))
                .sign(")"),
        ]
    }

    fn visit(&mut self, _: &mut Visit<'_>) {}
}
