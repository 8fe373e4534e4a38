//! A hydraulic motor: flow under pressure becomes a turning shaft again.

use super::{AtWork, FigureName, Pass, StageKind, StagePhysics, Uncertain, Visit};
use crate::drive::{Drive, Limit, Rate, Stall};
use crate::formula::{Figure, Formula};
use crate::physics::displacement::{Losses, RatedPoint};
use crate::quantity::{AngularSpeed, Displacement, Flow, Pressure, Torque};
use crate::source::Source;
use crate::spread::{Axis, Corner, Spread};
use crate::units::Quantity;

/// A fixed-displacement motor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Motor {
    /// Displacement per revolution, above zero.
    pub displacement: Displacement,
    /// Where its efficiencies hold.
    pub rated: RatedPoint,
    /// Volumetric efficiency there, above 0 to 1.
    pub volumetric: Spread<f64>,
    /// Hydro-mechanical efficiency there, above 0 to 1.
    pub hydro_mechanical: Spread<f64>,
    /// The most pressure difference that it may see.
    pub highest: Pressure,
}

impl Motor {
    fn losses(&self, corner: Corner) -> Losses {
        Losses::of_motor(
            self.displacement,
            self.rated,
            corner.of(Axis::Merit, &self.volumetric),
            corner.of(Axis::Merit, &self.hydro_mechanical),
        )
    }
}

impl StagePhysics for Motor {
    fn kind(&self) -> StageKind {
        StageKind::Motor
    }

    fn pass(&self, takes: Drive, at: &AtWork) -> Result<Pass, Stall> {
        let flow = takes.rate.flowing()?;
        let losses = self.losses(at.corner);
        let pressure = takes.power / flow;
        let strain = Some((pressure / self.highest, Limit::Implement));
        let leaks = losses.leaks(pressure, at.viscosity);
        // ω = 2π·(Q − Q_s)/V
        let turned = flow - leaks;
        let speed = AngularSpeed::radians_per_second(
            turned / (self.displacement * AngularSpeed::radians_per_second(1.0)),
        );
        let gives = |speed, power| Drive {
            rate: Rate::Turning(speed),
            power,
        };
        if turned <= Flow::ZERO {
            let gives = gives(AngularSpeed::ZERO, takes.power);
            return Ok(Pass::stalled(takes, gives, Stall::NoFlowLeft));
        }
        let without_loss = pressure * self.displacement;
        // T_loss = C_f·V·Δp/2π + T_d
        let rubbed = without_loss * losses.friction() + losses.drag(speed, at.viscosity);
        // T = V·Δp/2π − T_loss
        let torque = without_loss - rubbed;
        if torque <= Torque::ZERO {
            let gives = gives(speed, takes.power);
            let stalled = Pass::stalled(takes, gives, Stall::NoPressureLeft);
            return Ok(Pass { strain, ..stalled });
        }
        Ok(Pass {
            gives: gives(speed, torque * speed),
            // P_loss = Q_s·Δp + T_loss·ω
            loss: pressure * leaks + rubbed * speed,
            strain,
            stall: None,
        })
    }

    fn formulas(&self, takes: Drive, gives: Drive, at: &AtWork) -> Vec<Formula> {
        let (Rate::Flowing(flow), Rate::Turning(speed), Quantity::Pressure(pressure)) =
            (takes.rate, gives.rate, takes.effort())
        else {
            return Vec::new();
        };
        let displacement =
            Figure::known("V", Quantity::Displacement(self.displacement), Source::Own);
        let volumetric = self.displacement * speed / flow;
        let volumetric_now = Figure::computed("ηv", Quantity::Ratio(volumetric));
        let hydro_mechanical = gives.power / takes.power / volumetric;
        let hydro_mechanical_now = Figure::computed("ηhm", Quantity::Ratio(hydro_mechanical));
        vec![
            Formula::new(
                Figure::computed("n", gives.rate.quantity()),
                Figure::computed("Q", takes.rate.quantity()),
            )
            .then("·", volumetric_now)
            .then("/", displacement),
            // 1/ηv − 1 = (1/ηvᵣ − 1)·(Δp/Δpᵣ)·(nᵣ/n)·(νᵣ/ν)
            super::against_rated(
                Formula::of(Figure::computed(
                    "1/ηv − 1",
                    Quantity::Ratio(1.0 / volumetric - 1.0),
                ))
                .sign("(1 /")
                .figure(Figure::spread("ηvᵣ", self.volumetric, Quantity::Ratio))
                .sign("− 1)"),
                &self.rated,
                (speed, pressure),
                at,
            ),
            // Q_s = Q·(1 − ηv): inside the motor and through its case drain.
            Formula::new(
                Figure::computed("Qₗ", Quantity::Flow(flow * (1.0 - volumetric))),
                Figure::computed("Q", takes.rate.quantity()),
            )
            .then("· (1 −", volumetric_now)
            .sign(")"),
            Formula::new(
                Figure::computed("T", gives.effort()),
                Figure::computed("Δp", takes.effort()),
            )
            .then("·", displacement)
            .then("/ 2π ·", hydro_mechanical_now),
            Formula::new(Figure::power_out(gives), Figure::power_in(takes))
                .then("·", volumetric_now)
                .then("·", hydro_mechanical_now),
        ]
    }

    fn visit(&mut self, visit: &mut Visit<'_>) {
        let volumetric = Uncertain::Ratio(&mut self.volumetric);
        visit(FigureName::MotorVolumetric, Axis::Merit, volumetric);
        let hydro_mechanical = Uncertain::Ratio(&mut self.hydro_mechanical);
        visit(
            FigureName::MotorHydroMechanical,
            Axis::Merit,
            hydro_mechanical,
        );
    }
}
