//! What one stage hands to the next: power, at a speed or a flow.

use crate::quantity::{AngularSpeed, Flow, Power, Pressure, Torque};
use crate::units::Quantity;
use crate::words::words;

/// How fast: a shaft's speed or an oil flow.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Rate {
    /// A turning shaft.
    Turning(AngularSpeed),
    /// Oil in a line.
    Flowing(Flow),
}

impl Rate {
    /// The shaft's speed.
    ///
    /// # Errors
    /// [`Stall::NotJoined`] where oil flows.
    pub fn turning(self) -> Result<AngularSpeed, Stall> {
        match self {
            Self::Turning(speed) => Ok(speed),
            Self::Flowing(_) => Err(Stall::NotJoined),
        }
    }

    /// The flow.
    ///
    /// # Errors
    /// [`Stall::NotJoined`] where a shaft turns.
    pub fn flowing(self) -> Result<Flow, Stall> {
        match self {
            Self::Flowing(flow) => Ok(flow),
            Self::Turning(_) => Err(Stall::NotJoined),
        }
    }

    /// As a quantity to show.
    pub fn quantity(self) -> Quantity {
        match self {
            Self::Turning(speed) => Quantity::Speed(speed),
            Self::Flowing(flow) => Quantity::Flow(flow),
        }
    }
}

/// Power at a speed or a flow.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Drive {
    /// How fast.
    pub rate: Rate,
    /// How much.
    pub power: Power,
}

impl Drive {
    /// How hard: the torque or the pressure. Zero where nothing moves.
    ///
    /// Equation: T = P/ω, p = P/Q. Units: SI. Valid range: any. Source: definition.
    pub fn effort(self) -> Quantity {
        match self.rate {
            // T = P/ω
            Rate::Turning(speed) if speed > AngularSpeed::ZERO => {
                Quantity::Torque(self.power / speed)
            }
            // p = P/Q
            Rate::Flowing(flow) if flow > Flow::ZERO => Quantity::Pressure(self.power / flow),
            Rate::Turning(_) => Quantity::Torque(Torque::ZERO),
            Rate::Flowing(_) => Quantity::Pressure(Pressure::ZERO),
        }
    }
}

words! {
    /// What holds a route where it is.
    Limit {
        /// The engine gives no more at this speed.
        Engine = "engine",
        /// A shaft or a box must not take more.
        ShaftRating = "shaft_rating",
        /// The flow sets the speed, and it's short.
        Flow = "flow",
        /// The pressure sets the torque, and it's short.
        Pressure = "pressure",
        /// The oil would get too hot: what holds a route for good, not at once.
        OilHeat = "oil_heat",
        /// The implement must not take more.
        Implement = "implement",
    }
}

/// Why nothing arrives though everything is joined up.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stall {
    /// Leaks, and steering where it is fed from here, take all the flow that there is.
    NoFlowLeft,
    /// Pump, valve, hoses, couplers and motor use up all the pressure that there is.
    NoPressureLeft,
    /// A stage for oil was joined to a shaft or the other way: a route is built wrongly.
    NotJoined,
}
