//! Flow that the implement can't use: a valve sends it back to the tank at working pressure.

use super::{Pass, StageKind, StagePhysics};
use crate::drive::{Drive, Rate, Stall};
use crate::formula::{Figure, Formula};
use crate::physics::hydraulic::motor_speed;
use crate::quantity::{AngularSpeed, Displacement, Flow, Power};
use crate::spread::{Scenario, Spread};
use crate::units::Quantity;

/// What the implement's motor can swallow at most.
#[derive(Clone, Debug, PartialEq)]
pub struct Divert {
    /// The motor's highest flow.
    pub highest_flow: Flow,
    /// The motor's displacement.
    pub displacement: Displacement,
    /// The motor's volumetric efficiency.
    pub volumetric: Spread<f64>,
    /// The motor's speed at the rotor's highest speed.
    pub highest_speed: AngularSpeed,
}

impl Divert {
    /// The most flow that may go on to the motor.
    ///
    /// Equation: Q ≤ Q_max and Q ≤ V·n_max/ηv. Units: SI. Valid range: as the fields'.
    /// Source: definition of displacement.
    fn most(&self, scenario: Scenario) -> Flow {
        // A flow of Q_max turns the motor at ω(Q_max); the flow for n_max is in proportion.
        let fastest = motor_speed(
            self.displacement,
            self.highest_flow,
            self.volumetric.at(scenario),
        );
        self.highest_flow * (self.highest_speed / fastest).min(1.0)
    }
}

impl StagePhysics for Divert {
    fn kind(&self) -> StageKind {
        StageKind::Divert
    }

    fn pass(&self, rate: Rate, scenario: Scenario) -> Result<Pass, Stall> {
        let flow = rate.flowing()?;
        // Q₂ = min(Q₁, Q_max)
        let used = flow.min(self.most(scenario));
        Ok(Pass {
            rate: Rate::Flowing(used),
            // P₂ = P₁·Q₂/Q₁, the pressure being the same
            share: used / flow,
            toll: Power::ZERO,
            cap: None,
        })
    }

    fn formulas(&self, takes: Drive, gives: Drive) -> Vec<Formula> {
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
}
