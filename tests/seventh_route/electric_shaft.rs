//! A stage that the core doesn't have: a generator, a cable and a motor in place of a long shaft.
//!
//! Generator and motor are synchronous, so that the motor keeps step; the voltage is held. Volts,
//! ohms and amperes stay inside this file: the chain only sees power at a speed.

use farend_core::drive::{Drive, Limit, Rate, Stall};
use farend_core::formula::{Figure, Formula};
use farend_core::quantity::Power;
use farend_core::spread::{Axis, Spread};
use farend_core::stage::gear::{GearKind, GearRole};
use farend_core::stage::{AtWork, FigureName, Pass, StageKind, StagePhysics, Uncertain, Visit};
use farend_core::units::Quantity;

/// Shaft to three-phase current and back.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ElectricShaft {
    /// Pairs of poles of generator and motor.
    pub pole_pairs: (f64, f64),
    /// Efficiency of the generator, above 0 to 1.
    pub generator: Spread<f64>,
    /// Efficiency of the motor, above 0 to 1.
    pub motor: Spread<f64>,
    /// Voltage between two conductors, volts, above 0.
    pub voltage: f64,
    /// Resistance of each conductor, ohms, from 0.
    pub resistance: f64,
    /// The most current in each conductor, amperes, above 0.
    pub most_current: f64,
}

impl ElectricShaft {
    /// Power lost in the cable that carries a power at its near end.
    ///
    /// Equation: P_l = 3·R·I² with P = √3·U·I, so P_l = R·(P/U)². Units: SI.
    /// Valid range: below U²/R, where nothing is left. Source: definitions of three-phase power at a
    /// power factor of 1, from memory.
    pub fn cable_loss(&self, carried: Power) -> Power {
        // P_l = R·(P/U)²
        let per_volt = carried.to_watts() / self.voltage;
        Power::watts(self.resistance * per_volt * per_volt)
    }

    /// The most power that the cable may be given.
    ///
    /// Equation: P = √3·U·I. Units: SI. Valid range: as [`Self::cable_loss`]. Source: the same.
    pub fn most_carried(&self) -> Power {
        // P = √3·U·I
        Power::watts(libm::sqrt(3.0) * self.voltage * self.most_current)
    }
}

impl StagePhysics for ElectricShaft {
    /// Here it goes by the kind of what it replaces; in the core it would have its own, and the
    /// compiler would ask for its name.
    fn kind(&self) -> StageKind {
        StageKind::Gear(GearRole::Step(GearKind::Direct))
    }

    fn pass(&self, takes: Drive, at: &AtWork) -> Result<Pass, Stall> {
        let (generator_poles, motor_poles) = self.pole_pairs;
        // ω₂ = ω₁·p₁/p₂
        let speed = takes.rate.turning()? * (generator_poles / motor_poles);
        let generator = at.corner.of(Axis::Merit, &self.generator);
        let motor = at.corner.of(Axis::Merit, &self.motor);
        // P_e = P₁·η_g
        let carried = takes.power * generator;
        let cable = self.cable_loss(carried);
        // P₂ = (P_e − P_l)·η_m
        let arrives = carried - cable;
        Ok(Pass {
            gives: Drive {
                rate: Rate::Turning(speed),
                power: arrives * motor,
            },
            // P₁·(1 − η_g) + P_l + (P_e − P_l)·(1 − η_m)
            loss: takes.power * (1.0 - generator) + cable + arrives * (1.0 - motor),
            // I/I_max = P_e/(√3·U·I_max)
            strain: Some((carried / self.most_carried(), Limit::ShaftRating)),
            stall: None,
        })
    }

    fn may_take(&self, _: Rate, at: &AtWork) -> Option<Power> {
        // P₁ = P_e/η_g
        Some(self.most_carried() / at.corner.of(Axis::Merit, &self.generator))
    }

    fn formulas(&self, takes: Drive, gives: Drive, at: &AtWork) -> Vec<Formula> {
        let generator = at.corner.of(Axis::Merit, &self.generator);
        let cable = Quantity::Power(self.cable_loss(takes.power * generator));
        vec![
            Formula::of(Figure::power_out(gives))
                .sign("(")
                .figure(Figure::power_in(takes))
                .then("·", Figure::spread("η_g", self.generator, Quantity::Ratio))
                .then("−", Figure::computed("P_l", cable))
                .sign(")")
                .then("·", Figure::spread("η_m", self.motor, Quantity::Ratio)),
        ]
    }

    fn visit(&mut self, visit: &mut Visit<'_>) {
        for efficiency in [&mut self.generator, &mut self.motor] {
            visit(
                FigureName::Efficiency,
                Axis::Merit,
                Uncertain::Ratio(efficiency),
            );
        }
    }
}
