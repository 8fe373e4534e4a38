//! A hydraulic motor: flow under pressure becomes a turning shaft again.

use super::{Pass, StageKind, StagePhysics};
use crate::drive::{Drive, Limit, Rate, Stall};
use crate::formula::{Figure, Formula};
use crate::physics::hydraulic::{motor_speed, motor_torque};
use crate::quantity::{Displacement, Power, Pressure};
use crate::source::Source;
use crate::spread::{Scenario, Spread};
use crate::units::Quantity;

/// A fixed-displacement motor.
#[derive(Clone, Debug, PartialEq)]
pub struct Motor {
    /// Displacement per revolution, above zero.
    pub displacement: Displacement,
    /// Volumetric efficiency, above 0 to 1.
    pub volumetric: Spread<f64>,
    /// Hydro-mechanical efficiency, above 0 to 1.
    pub hydro_mechanical: Spread<f64>,
    /// The most pressure difference that it may see.
    pub highest: Pressure,
}

impl StagePhysics for Motor {
    fn kind(&self) -> StageKind {
        StageKind::Motor
    }

    fn pass(&self, rate: Rate, scenario: Scenario) -> Result<Pass, Stall> {
        let volumetric = self.volumetric.at(scenario);
        let hydro_mechanical = self.hydro_mechanical.at(scenario);
        let speed = motor_speed(self.displacement, rate.flowing()?, volumetric);
        Ok(Pass {
            rate: Rate::Turning(speed),
            // P₂ = P₁·ηv·ηhm
            share: volumetric * hydro_mechanical,
            toll: Power::ZERO,
            // P₂ ≤ T(Δp_max)·ω
            cap: Some((
                motor_torque(self.displacement, self.highest, hydro_mechanical) * speed,
                Limit::Implement,
            )),
        })
    }

    fn formulas(&self, takes: Drive, gives: Drive) -> Vec<Formula> {
        let displacement =
            Figure::known("V", Quantity::Displacement(self.displacement), Source::Own);
        let volumetric = Figure::spread("ηv", self.volumetric, Quantity::Ratio);
        let hydro_mechanical = Figure::spread("ηhm", self.hydro_mechanical, Quantity::Ratio);
        vec![
            Formula::new(
                Figure::computed("n", gives.rate.quantity()),
                Figure::computed("Q", takes.rate.quantity()),
            )
            .then("·", volumetric)
            .then("/", displacement),
            Formula::new(
                Figure::computed("T", gives.effort()),
                Figure::computed("Δp", takes.effort()),
            )
            .then("·", displacement)
            .then("/ 2π ·", hydro_mechanical),
            Formula::new(Figure::power_out(gives), Figure::power_in(takes))
                .then("·", volumetric)
                .then("·", hydro_mechanical),
        ]
    }
}
