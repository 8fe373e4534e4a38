//! A joint shaft between a PTO and an implement on the rear hitch: how long it is and how far it
//! bends while the hitch goes up and down.

use crate::quantity::Length;
use libm::{atan2, hypot};

/// Least overlap of its tubes: 6 in, a driveline maker's page.
pub fn least_overlap() -> Length {
    Length::inches(6.0)
}

/// Least way left before it bottoms: 2 in, a driveline maker's page.
pub fn least_clearance() -> Length {
    Length::inches(2.0)
}

/// Where its two ends stand while the implement is carried level.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stance {
    /// From one end to the other along the machine.
    pub along: Length,
    /// The implement's end above the PTO's, negative below.
    pub above: Length,
}

impl Stance {
    /// From joint to joint.
    ///
    /// Equation: l = √(x² + y²). Units: m. Valid range: any. Source: Pythagoras; the joints are
    /// taken to sit at the shafts' ends.
    pub fn length(self) -> Length {
        // l = √(x² + y²)
        Length::metres(hypot(self.along.to_metres(), self.above.to_metres()))
    }

    /// Angle of each joint, both shafts lying level.
    ///
    /// Equation: β = arctan(|y|/x). Units: radians. Valid range: x from 0. Source: geometry.
    pub fn angle(self) -> f64 {
        // β = arctan(|y|/x)
        atan2(self.above.to_metres().abs(), self.along.to_metres())
    }
}

/// What the shaft goes through between the hitch's two ends of travel.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Travel {
    /// Shortest distance from joint to joint.
    pub shortest: Length,
    /// Longest distance.
    pub longest: Length,
    /// Angle of each joint with the hitch lowered to work.
    pub at_work: f64,
    /// Largest angle of each joint.
    pub steepest: f64,
}

impl Travel {
    /// Over all stances between two.
    ///
    /// Equation: length and angle grow with |y|, so their most is at an end and their least where
    /// the shaft lies level, if it does, else at the other end. Units: m, radians.
    /// Valid range: both at the same distance along, as if the ball ends went straight up; on the
    /// arc of their links they come some centimetres nearer at the ends. Source: [`Stance`].
    pub fn between(lowered: Stance, lifted: Stance) -> Self {
        let passes_level = lowered.above <= Length::ZERO && lifted.above >= Length::ZERO;
        let shortest = if passes_level {
            lowered.along
        } else {
            lowered.length().min(lifted.length())
        };
        Self {
            shortest,
            longest: lowered.length().max(lifted.length()),
            at_work: lowered.angle(),
            steepest: lowered.angle().max(lifted.angle()),
        }
    }
}
