//! A gear pair, gear train, belt, chain, joint or plain shaft.

use super::{AtWork, FigureName, Pass, StageKind, StagePhysics, Uncertain, Visit};
use crate::drive::{Drive, Limit, Rate, Stall};
use crate::formula::{Figure, Formula};
use crate::physics::joint::total_fluctuation;
use crate::quantity::{AngularSpeed, Power, Torque};
use crate::source::Source;
use crate::spread::{Axis, Corner, Spread};
use crate::units::Quantity;
use crate::words::words;

words! {
    /// A mechanical step as files name it.
    GearKind {
        /// Spur or helical gears.
        Spur = "spur",
        /// Straight bevel gears.
        Bevel = "bevel",
        /// Spiral bevel gears.
        SpiralBevel = "spiral_bevel",
        /// A worm.
        Worm = "worm",
        /// A V-belt.
        Belt = "belt",
        /// A roller chain.
        Chain = "chain",
        /// A joint shaft with its two universal joints.
        JointShaft = "joint_shaft",
        /// Keyed or flanged straight on: nothing in between.
        Direct = "direct",
    }
}

/// What a mechanical step is in its route.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum GearRole {
    /// The machine's own train from engine to PTO shaft.
    PtoTrain,
    /// The implement's own input shaft, whose rating must be kept.
    InputShaft,
    /// A step that a kit or an implement brings.
    Step(GearKind),
}

/// A step that stays mechanical.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gear {
    /// What it is.
    pub role: GearRole,
    /// Speed out over speed in, above zero.
    pub ratio: f64,
    /// Part of the power handed on, above 0 to 1.
    pub efficiency: Spread<f64>,
    /// The most torque on its output shaft, and whose limit that is.
    pub rating: Option<(Spread<Torque>, Limit)>,
    /// Angle of each joint of a joint shaft, radians, where known.
    pub angle: Option<f64>,
}

impl Gear {
    /// The most power on its output shaft at a speed of that, and whose limit it is.
    fn allowed(&self, speed: AngularSpeed, corner: Corner) -> Option<(Power, Limit)> {
        let (rating, limit) = self.rating.as_ref()?;
        // P₂ = T_r·ω₂
        Some((corner.of(Axis::Merit, rating) * speed, *limit))
    }
}

impl StagePhysics for Gear {
    fn kind(&self) -> StageKind {
        StageKind::Gear(self.role)
    }

    fn pass(&self, takes: Drive, at: &AtWork) -> Result<Pass, Stall> {
        // ω₂ = i·ω₁
        let speed = takes.rate.turning()? * self.ratio;
        let efficiency = at.corner.of(Axis::Merit, &self.efficiency);
        // P₂ = P₁·η
        let power = takes.power * efficiency;
        // T₂/T_r = P₂/(T_r·ω₂)
        let strain = self
            .allowed(speed, at.corner)
            .map(|(allowed, limit)| (power / allowed, limit));
        Ok(Pass {
            gives: Drive {
                rate: Rate::Turning(speed),
                power,
            },
            loss: takes.power * (1.0 - efficiency),
            strain,
            stall: None,
        })
    }

    fn may_take(&self, rate: Rate, at: &AtWork) -> Option<Power> {
        let (allowed, _) = self.allowed(rate.turning().ok()? * self.ratio, at.corner)?;
        // P₁ = P₂/η
        Some(allowed / at.corner.of(Axis::Merit, &self.efficiency))
    }

    fn formulas(&self, takes: Drive, gives: Drive, _: &AtWork) -> Vec<Formula> {
        let mut formulas = vec![
            Formula::new(Figure::power_out(gives), Figure::power_in(takes))
                .then("·", Figure::spread("η", self.efficiency, Quantity::Ratio)),
        ];
        if let Rate::Turning(out) = gives.rate {
            formulas.push(
                Formula::new(
                    Figure::computed("T₂", gives.effort()),
                    Figure::power_out(gives),
                )
                .then("/", Figure::computed("ω₂", Quantity::Speed(out))),
            );
        }
        if let Some(angle) = self.angle {
            // q = 1/cos β − cos β
            let wavers = Quantity::Ratio(total_fluctuation(angle));
            let angle = Figure::known("β", Quantity::Angle(angle), Source::Own);
            formulas.push(
                Formula::of(Figure::computed("q", wavers))
                    .sign("1 / cos")
                    .figure(angle)
                    .sign("− cos")
                    .figure(angle),
            );
        }
        formulas
    }

    fn visit(&mut self, visit: &mut Visit<'_>) {
        let efficiency = Uncertain::Ratio(&mut self.efficiency);
        visit(FigureName::Efficiency, Axis::Merit, efficiency);
        if let Some((rating, _)) = &mut self.rating {
            visit(FigureName::Rating, Axis::Merit, Uncertain::Torque(rating));
        }
    }
}
