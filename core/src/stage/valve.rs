//! The valve that lets the oil out to the implement.

use super::{AtWork, FigureName, Pass, StageKind, StagePhysics, Uncertain, Visit};
use crate::drive::{Drive, Stall};
use crate::formula::{Figure, Formula};
use crate::physics::line::rated_drop;
use crate::quantity::{Flow, Pressure};
use crate::spread::{Axis, Corner, Spread};
use crate::units::Quantity;

/// What the oil loses on its way through.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Valve {
    /// A spool that stands open: its drop grows with the square of the flow.
    Open {
        /// Pressure that it takes at its rated flow.
        drop: Spread<Pressure>,
        /// That flow.
        at: Flow,
    },
    /// A spool that a load-sensing pump keeps this margin above the load for, at any flow.
    Margin(Spread<Pressure>),
}

impl Valve {
    /// What it takes of a flow.
    pub fn drop(&self, flow: Flow, corner: Corner) -> Pressure {
        match self {
            // Δp = Δp_r·(Q/Q_r)²
            Self::Open { drop, at } => rated_drop(corner.of(Axis::Burden, drop), *at, flow),
            Self::Margin(margin) => corner.of(Axis::Burden, margin),
        }
    }
}

impl StagePhysics for Valve {
    fn kind(&self) -> StageKind {
        StageKind::Valve
    }

    fn pass(&self, takes: Drive, at: &AtWork) -> Result<Pass, Stall> {
        let flow = takes.rate.flowing()?;
        Ok(Pass::less_pressure(takes, flow, self.drop(flow, at.corner)))
    }

    fn formulas(&self, takes: Drive, gives: Drive, _: &AtWork) -> Vec<Formula> {
        let Ok(flow) = takes.rate.flowing() else {
            return Vec::new();
        };
        let drop = Figure::computed("Δp", Quantity::Pressure(self.drop(flow, Corner::LIKELY)));
        let flow = Figure::computed("Q", Quantity::Flow(flow));
        let first = match self {
            Self::Open { drop: rated, at } => {
                Formula::new(drop, Figure::spread("Δpᵣ", *rated, Quantity::Pressure))
                    .then("· (", flow)
                    // It belongs to the rated drop, and comes from where that does.
                    .then("/", Figure::known("Qᵣ", Quantity::Flow(*at), rated.source))
                    .sign(")²")
            }
            Self::Margin(margin) => {
                Formula::new(drop, Figure::spread("Δpₘ", *margin, Quantity::Pressure))
            }
        };
        vec![
            first,
            Formula::new(Figure::power_out(gives), Figure::power_in(takes))
                .then("−", drop)
                .then("·", flow),
        ]
    }

    fn visit(&mut self, visit: &mut Visit<'_>) {
        let (Self::Open { drop, .. } | Self::Margin(drop)) = self;
        let drop = Uncertain::Pressure(drop);
        visit(FigureName::ValveDrop, Axis::Burden, drop);
    }
}
