//! Hoses and couplers, there and back. What the return needs stands behind the motor as back
//! pressure, so both directions are taken off here.

use super::{Pass, StageKind, StagePhysics};
use crate::drive::{Drive, Rate, Stall};
use crate::formula::{Figure, Formula};
use crate::physics::line::{Pipe, friction_factor, rated_drop};
use crate::quantity::{Density, Flow, Pressure, Viscosity};
use crate::source::Source;
use crate::spread::{Scenario, Spread};
use crate::units::Quantity;

/// A pair of hoses with their couplers, and the oil in them.
#[derive(Clone, Debug, PartialEq)]
pub struct Hoses {
    /// One hose: bore and length, one way.
    pub hose: Pipe,
    /// Couplers that the oil passes, both ways together.
    pub couplers: f64,
    /// Pressure that one coupler takes at its rated flow.
    pub coupler_drop: Spread<Pressure>,
    /// The flow that this holds for.
    pub coupler_flow: Flow,
    /// Viscosity of the oil at work.
    pub viscosity: Spread<Viscosity>,
    /// Density of the oil.
    pub density: Density,
}

impl Hoses {
    fn in_hoses(&self, flow: Flow, scenario: Scenario) -> Pressure {
        let viscosity = self.viscosity.at(scenario.of_a_burden());
        self.hose.drop(flow, viscosity, self.density) * 2.0
    }

    fn in_couplers(&self, flow: Flow, scenario: Scenario) -> Pressure {
        let rated = self.coupler_drop.at(scenario.of_a_burden());
        rated_drop(rated, self.coupler_flow, flow) * self.couplers
    }
}

impl StagePhysics for Hoses {
    fn kind(&self) -> StageKind {
        StageKind::Hoses
    }

    fn pass(&self, rate: Rate, scenario: Scenario) -> Result<Pass, Stall> {
        let flow = rate.flowing()?;
        let drop = self.in_hoses(flow, scenario) + self.in_couplers(flow, scenario);
        Ok(Pass {
            rate,
            share: 1.0,
            // P₂ = P₁ − Δp·Q
            toll: drop * flow,
            cap: None,
        })
    }

    fn formulas(&self, takes: Drive, gives: Drive) -> Vec<Formula> {
        let Rate::Flowing(flow) = takes.rate else {
            return Vec::new();
        };
        let hoses = self.in_hoses(flow, Scenario::Likely);
        let couplers = self.in_couplers(flow, Scenario::Likely);
        let viscosity = self.viscosity.likely;
        let velocity = self.hose.velocity(flow);
        let reynolds = self.hose.reynolds(flow, viscosity);
        let factor = friction_factor(reynolds, self.hose.relative_roughness);
        let length = self.hose.length * 2.0;
        let from_yard = |symbol, value| Figure::known(symbol, value, Source::Own);
        vec![
            // v = 4·Q/(π·d²)
            Formula::new(
                Figure::computed("v", Quantity::Velocity(velocity)),
                Figure::computed("Q", Quantity::Flow(flow)),
            )
            .then(
                "· 4 / (π · (",
                from_yard("d", Quantity::Bore(self.hose.bore)),
            )
            .sign(")²)"),
            // Re = v·d/ν
            Formula::new(
                Figure::computed("Re", Quantity::Ratio(reynolds)),
                Figure::computed("v", Quantity::Velocity(velocity)),
            )
            .then("·", from_yard("d", Quantity::Bore(self.hose.bore)))
            .then(
                "/",
                Figure::spread("ν", self.viscosity, Quantity::Viscosity),
            ),
            // Δp = f·(L/d)·ρ·v²/2
            Formula::new(
                Figure::computed("Δp₁", Quantity::Pressure(hoses)),
                Figure::computed("f", Quantity::Ratio(factor)),
            )
            .then("·", from_yard("L", Quantity::Length(length)))
            .then("/", from_yard("d", Quantity::Bore(self.hose.bore)))
            .then(
                "·",
                Figure::known("ρ", Quantity::Density(self.density), Source::FromMemory),
            )
            .then("· (", Figure::computed("v", Quantity::Velocity(velocity)))
            .sign(")² / 2"),
            Formula::new(
                Figure::computed("Δp₂", Quantity::Pressure(couplers)),
                from_yard("z", Quantity::Ratio(self.couplers)),
            )
            .then(
                "·",
                Figure::spread("Δpᵣ", self.coupler_drop, Quantity::Pressure),
            )
            .then("· (", Figure::computed("Q", Quantity::Flow(flow)))
            .then("/", from_yard("Qᵣ", Quantity::Flow(self.coupler_flow)))
            .sign(")²"),
            Formula::new(Figure::power_out(gives), Figure::power_in(takes))
                .then("− (", Figure::computed("Δp₁", Quantity::Pressure(hoses)))
                .then("+", Figure::computed("Δp₂", Quantity::Pressure(couplers)))
                .then(") ·", Figure::computed("Q", Quantity::Flow(flow))),
        ]
    }
}
