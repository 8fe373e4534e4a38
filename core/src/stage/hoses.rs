//! Hoses and couplers, there and back. What the return needs stands behind the motor as back
//! pressure, so both directions are taken off here.

use super::{AtWork, FigureName, Pass, StageKind, StagePhysics, Uncertain, Visit};
use crate::drive::{Drive, Rate, Stall};
use crate::formula::{Figure, Formula};
use crate::physics::line::{Pipe, fitting_drop, friction_factor, rated_drop};
use crate::quantity::{Flow, Pressure};
use crate::source::Source;
use crate::spread::{Axis, Corner, Spread};
use crate::units::Quantity;

/// A pair of hoses with their couplers.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hoses {
    /// The hose to the motor.
    pub supply: Pipe,
    /// The hose back from it.
    pub back: Pipe,
    /// Couplers that the oil passes, both ways together.
    pub couplers: f64,
    /// Pressure that one coupler takes at its rated flow.
    pub coupler_drop: Spread<Pressure>,
    /// The flow that this holds for.
    pub coupler_flow: Flow,
    /// Loss coefficients K of elbows and adapters added up, one way.
    pub fittings: f64,
}

impl Hoses {
    /// One hose with its fittings.
    fn in_line(&self, pipe: &Pipe, flow: Flow, at: &AtWork) -> Pressure {
        let fittings = fitting_drop(self.fittings, at.density, pipe.velocity(flow));
        pipe.drop(flow, at.viscosity, at.density) + fittings
    }

    fn in_couplers(&self, flow: Flow, corner: Corner) -> Pressure {
        let rated = corner.of(Axis::Burden, &self.coupler_drop);
        rated_drop(rated, self.coupler_flow, flow) * self.couplers
    }
}

impl StagePhysics for Hoses {
    fn kind(&self) -> StageKind {
        StageKind::Hoses
    }

    fn pass(&self, takes: Drive, at: &AtWork) -> Result<Pass, Stall> {
        let flow = takes.rate.flowing()?;
        let supply = self.in_line(&self.supply, flow, at);
        // Both ways are often the same hose.
        let back = if self.back == self.supply {
            supply
        } else {
            self.in_line(&self.back, flow, at)
        };
        let drop = supply + back + self.in_couplers(flow, at.corner);
        Ok(Pass::less_pressure(takes, flow, drop))
    }

    fn formulas(&self, takes: Drive, gives: Drive, at: &AtWork) -> Vec<Formula> {
        let Rate::Flowing(flow) = takes.rate else {
            return Vec::new();
        };
        let drop_in = |symbol, pipe: &Pipe| {
            Figure::computed(symbol, Quantity::Pressure(self.in_line(pipe, flow, at)))
        };
        let supply = drop_in("Δp₁", &self.supply);
        let back = drop_in("Δp₂", &self.back);
        let couplers =
            Figure::computed("Δp₃", Quantity::Pressure(self.in_couplers(flow, at.corner)));
        let from_yard = |symbol, value| Figure::known(symbol, value, Source::Own);
        let flow_now = Figure::computed("Q", Quantity::Flow(flow));
        // It belongs to the rated drop, and comes from where that does.
        let rated = Quantity::Flow(self.coupler_flow);
        let mut all = self.pipe_formulas(supply, &self.supply, flow, at);
        if self.back == self.supply {
            all.push(Formula::new(back, supply));
        } else {
            all.extend(self.pipe_formulas(back, &self.back, flow, at));
        }
        all.extend([
            Formula::new(couplers, from_yard("z", Quantity::Ratio(self.couplers)))
                .then(
                    "·",
                    Figure::spread("Δpᵣ", self.coupler_drop, Quantity::Pressure),
                )
                .then("· (", flow_now)
                .then("/", Figure::known("Qᵣ", rated, self.coupler_drop.source))
                .sign(")²"),
            Formula::new(Figure::power_out(gives), Figure::power_in(takes))
                .then("− (", supply)
                .then("+", back)
                .then("+", couplers)
                .then(") ·", flow_now),
        ]);
        all
    }

    fn visit(&mut self, visit: &mut Visit<'_>) {
        let drop = Uncertain::Pressure(&mut self.coupler_drop);
        visit(FigureName::CouplerDrop, Axis::Burden, drop);
    }
}

impl Hoses {
    /// How one hose's drop comes about.
    fn pipe_formulas(&self, drop: Figure, pipe: &Pipe, flow: Flow, at: &AtWork) -> Vec<Formula> {
        let velocity = Figure::computed("v", Quantity::Velocity(pipe.velocity(flow)));
        let reynolds = pipe.reynolds(flow, at.viscosity);
        let factor = friction_factor(reynolds, pipe.relative_roughness);
        let from_yard = |symbol, value| Figure::known(symbol, value, Source::Own);
        let bore = from_yard("d", Quantity::Bore(pipe.bore));
        let density = Figure::known("ρ", Quantity::Density(at.density), Source::FromMemory);
        vec![
            // v = 4·Q/(π·d²)
            Formula::new(velocity, Figure::computed("Q", Quantity::Flow(flow)))
                .then("· 4 / (π · (", bore)
                .sign(")²)"),
            // Re = v·d/ν
            Formula::new(Figure::computed("Re", Quantity::Ratio(reynolds)), velocity)
                .then("·", bore)
                .then(
                    "/",
                    Figure::computed("ν", Quantity::Viscosity(at.viscosity)),
                ),
            // Δp = (f·L/d + ΣK)·ρ·v²/2
            Formula::of(drop)
                .sign("(")
                .figure(Figure::computed("f", Quantity::Ratio(factor)))
                .then("·", from_yard("L", Quantity::Length(pipe.length)))
                .then("/", bore)
                .then("+", from_yard("ΣK", Quantity::Ratio(self.fittings)))
                .then(") ·", density)
                .then("· (", velocity)
                .sign(")² / 2"),
        ]
    }
}
