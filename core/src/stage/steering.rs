//! The steering's share of the pump's flow.

use super::{AtWork, FigureName, Pass, StageKind, StagePhysics, Uncertain, Visit};
use crate::drive::{Drive, Rate, Stall};
use crate::formula::{Figure, Formula};
use crate::quantity::Flow;
use crate::spread::{Axis, Spread};
use crate::units::Quantity;

/// What steering takes of this pump's flow while the implement works straight on.
///
/// A steering pump of its own never meets this stage; one that a sheet has added in is taken out
/// of the sheet's figure by the pump stage.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Steering {
    /// A divider that gives steering a constant flow at every speed. The divided-off flow falls
    /// from working pressure to nothing in the divider.
    FixedPriority(Spread<Flow>),
    /// A divider that gives steering nothing while it isn't steering.
    LoadSensing,
}

impl StagePhysics for Steering {
    fn kind(&self) -> StageKind {
        StageKind::Steering
    }

    fn pass(&self, takes: Drive, at: &AtWork) -> Result<Pass, Stall> {
        let flow = takes.rate.flowing()?;
        let taken = match self {
            Self::FixedPriority(taken) => at.corner.of(Axis::Steering, taken),
            Self::LoadSensing => Flow::ZERO,
        };
        // Q₂ = Q₁ − Q_st
        let left = flow - taken;
        if left <= Flow::ZERO {
            return Ok(Pass::stalled(takes, takes, Stall::NoFlowLeft));
        }
        Ok(Pass {
            gives: Drive {
                rate: Rate::Flowing(left),
                // P₂ = P₁·Q₂/Q₁, the pressure being the same
                power: takes.power * (left / flow),
            },
            // P_loss = P₁·Q_st/Q₁
            loss: takes.power * (taken / flow),
            strain: None,
            stall: None,
        })
    }

    fn formulas(&self, takes: Drive, gives: Drive, _: &AtWork) -> Vec<Formula> {
        let share = match self {
            Self::FixedPriority(taken) => Figure::spread("Qₜ", *taken, Quantity::Flow),
            Self::LoadSensing => Figure::computed("Qₜ", Quantity::Flow(Flow::ZERO)),
        };
        vec![
            Formula::new(
                Figure::computed("Q₂", gives.rate.quantity()),
                Figure::computed("Q₁", takes.rate.quantity()),
            )
            .then("−", share),
        ]
    }

    fn visit(&mut self, visit: &mut Visit<'_>) {
        if let Self::FixedPriority(taken) = self {
            visit(
                FigureName::SteeringFlow,
                Axis::Steering,
                Uncertain::Flow(taken),
            );
        }
    }
}
