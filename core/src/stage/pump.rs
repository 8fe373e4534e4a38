//! A pump: the shaft's power becomes flow under pressure.

use super::{Pass, StageKind, StagePhysics};
use crate::drive::{Drive, Limit, Rate, Stall};
use crate::formula::{Figure, Formula};
use crate::quantity::{AngularSpeed, Displacement, Flow, Power, Pressure};
use crate::spread::{Scenario, Spread};
use crate::units::Quantity;

/// How the pump's flow is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PumpFlow {
    /// A sheet's flow at a stated speed of the engine.
    Sheet {
        /// The sheet's figure.
        flow: Spread<Flow>,
        /// The engine speed that it holds for.
        at: AngularSpeed,
        /// The steering pump's flow, where the sheet has added it in.
        less: Option<Spread<Flow>>,
    },
    /// Displacement, turned by the shaft.
    Displacement(Displacement),
}

/// A fixed-displacement pump with its relief valve.
#[derive(Clone, Debug, PartialEq)]
pub struct Pump {
    /// How its flow is known.
    pub flow: PumpFlow,
    /// Volumetric efficiency, above 0 to 1.
    pub volumetric: Spread<f64>,
    /// Hydro-mechanical efficiency, above 0 to 1.
    pub hydro_mechanical: Spread<f64>,
    /// Pressure at which the relief valve opens.
    pub relief: Spread<Pressure>,
}

impl Pump {
    /// Flow at a speed of the shaft.
    ///
    /// Equation: Q = (Q_s − Q_st)·n/n_s from a sheet, Q = V·n·ηv from a displacement.
    /// Units: SI. Valid range: speed from zero. Source: pump flow in proportion to speed, as in
    /// the worked examples of Esposito, chapter 5.
    pub fn flow_at(&self, speed: AngularSpeed, scenario: Scenario) -> Flow {
        match self.flow {
            PumpFlow::Sheet { flow, at, less } => {
                let steering = less.map_or(Flow::ZERO, |less| less.at(scenario.of_a_burden()));
                // Q = (Q_s − Q_st)·n/n_s
                (flow.at(scenario) - steering) * (speed / at)
            }
            // Q = V·n·ηv
            PumpFlow::Displacement(displacement) => {
                displacement * speed * self.volumetric.at(scenario)
            }
        }
    }
}

impl StagePhysics for Pump {
    fn kind(&self) -> StageKind {
        StageKind::Pump
    }

    fn pass(&self, rate: Rate, scenario: Scenario) -> Result<Pass, Stall> {
        let flow = self.flow_at(rate.turning()?, scenario);
        if flow <= Flow::ZERO {
            return Err(Stall::NoFlowLeft);
        }
        Ok(Pass {
            rate: Rate::Flowing(flow),
            // P₂ = P₁·ηv·ηhm
            share: self.volumetric.at(scenario) * self.hydro_mechanical.at(scenario),
            toll: Power::ZERO,
            // P₂ ≤ p_relief·Q
            cap: Some((self.relief.at(scenario) * flow, Limit::Pressure)),
        })
    }

    fn formulas(&self, takes: Drive, gives: Drive) -> Vec<Formula> {
        let (Rate::Turning(speed), Rate::Flowing(flow)) = (takes.rate, gives.rate) else {
            return Vec::new();
        };
        let flow_now = Figure::computed("Q", Quantity::Flow(flow));
        let speed_now = Figure::computed("n", Quantity::Speed(speed));
        let volumetric = Figure::spread("ηv", self.volumetric, Quantity::Ratio);
        let flow_formula = match self.flow {
            PumpFlow::Sheet { flow, at, less } => {
                let sheet = Figure::spread("Qₛ", flow, Quantity::Flow);
                let at = Figure::known("nₛ", Quantity::Speed(at), flow.source);
                match less {
                    None => Formula::new(flow_now, sheet),
                    Some(less) => Formula::of(flow_now)
                        .sign("(")
                        .figure(sheet)
                        .then("−", Figure::spread("Qₜ", less, Quantity::Flow))
                        .sign(")"),
                }
                .then("·", speed_now)
                .then("/", at)
            }
            PumpFlow::Displacement(displacement) => Formula::new(
                flow_now,
                Figure::known(
                    "V",
                    Quantity::Displacement(displacement),
                    crate::source::Source::Own,
                ),
            )
            .then("·", speed_now)
            .then("·", volumetric),
        };
        vec![
            flow_formula,
            Formula::new(
                Figure::power_out(gives),
                Figure::computed("p", gives.effort()),
            )
            .then("·", flow_now),
            Formula::new(Figure::power_in(takes), Figure::power_out(gives))
                .then("/ (", volumetric)
                .then(
                    "·",
                    Figure::spread("ηhm", self.hydro_mechanical, Quantity::Ratio),
                )
                .sign(")"),
        ]
    }
}
