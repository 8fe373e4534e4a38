//! The steps of a route. Each step has a file; here is what they share.
//!
//! At a given speed every stage passes power on by a straight line,
//! `P_out = share·P_in − toll`, up to a cap on what it may hand over. That is all that the chain
//! needs to know of a stage.

pub mod divert;
pub mod gear;
pub mod hoses;
pub mod motor;
pub mod pump;
pub mod steering;

use crate::drive::{Drive, Limit, Rate, Stall};
use crate::formula::Formula;
use crate::quantity::Power;
use crate::spread::Scenario;
use divert::Divert;
use gear::{Gear, GearRole};
use hoses::Hoses;
use motor::Motor;
use pump::Pump;
use steering::Steering;

/// What a stage does at one input speed or flow.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pass {
    /// Speed or flow handed on.
    pub rate: Rate,
    /// Part of the power taken that is handed on, above 0 to 1, before the toll.
    pub share: f64,
    /// Power lost whatever is taken.
    pub toll: Power,
    /// The most that may be handed on, and the limit that this is.
    pub cap: Option<(Power, Limit)>,
}

/// What kind of step a stage is: the key to its name.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum StageKind {
    /// A gear, belt, chain or joint.
    Gear(GearRole),
    /// Shaft to oil.
    Pump,
    /// The steering's share of the flow.
    Steering,
    /// Flow that the implement can't use, sent back to the tank.
    Divert,
    /// Hoses and couplers, there and back.
    Hoses,
    /// Oil to shaft.
    Motor,
}

/// What every kind of stage can tell.
pub trait StagePhysics {
    /// What kind it is.
    fn kind(&self) -> StageKind;

    /// What it does at an input speed or flow.
    ///
    /// # Errors
    /// [`Stall`] where nothing can be handed on.
    fn pass(&self, rate: Rate, scenario: Scenario) -> Result<Pass, Stall>;

    /// How its figures come about at the likely values, for showing.
    fn formulas(&self, takes: Drive, gives: Drive) -> Vec<Formula>;
}

/// One step of a route.
#[derive(Clone, Debug, PartialEq)]
pub enum Stage {
    /// A gear, belt, chain or joint.
    Gear(Gear),
    /// Shaft to oil.
    Pump(Pump),
    /// The steering's share.
    Steering(Steering),
    /// Flow that can't be used.
    Divert(Divert),
    /// Hoses and couplers.
    Hoses(Hoses),
    /// Oil to shaft.
    Motor(Motor),
}

impl Stage {
    fn physics(&self) -> &dyn StagePhysics {
        match self {
            Self::Gear(stage) => stage,
            Self::Pump(stage) => stage,
            Self::Steering(stage) => stage,
            Self::Divert(stage) => stage,
            Self::Hoses(stage) => stage,
            Self::Motor(stage) => stage,
        }
    }
}

impl StagePhysics for Stage {
    fn kind(&self) -> StageKind {
        self.physics().kind()
    }

    fn pass(&self, rate: Rate, scenario: Scenario) -> Result<Pass, Stall> {
        self.physics().pass(rate, scenario)
    }

    fn formulas(&self, takes: Drive, gives: Drive) -> Vec<Formula> {
        self.physics().formulas(takes, gives)
    }
}
