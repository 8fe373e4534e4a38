//! PTO shaft types.

use crate::quantity::{AngularSpeed, Length, Power, Torque};
use crate::words::words;

words! {
    /// A shaft type of ISO 500.
    ShaftType {
        /// Type 1: 1⅜ in, 6 splines, 540 rpm.
        One = "1",
        /// Type 2: 1⅜ in, 21 splines, 1000 rpm.
        Two = "2",
        /// Type 3: 1¾ in, 20 splines, 1000 rpm.
        Three = "3",
        /// Type 4: 57.5 mm, 22 splines, 1300 rpm.
        Four = "4",
    }
}

impl ShaftType {
    /// Nominal diameter over the splines.
    ///
    /// Source: types 1 to 3, tractordata.com, tractor PTO types; type 4, a Wikipedia mirror citing
    /// ISO 500-1:2014, which misprints the unit.
    pub fn diameter(self) -> Length {
        match self {
            Self::One | Self::Two => Length::inches(1.375),
            Self::Three => Length::inches(1.75),
            Self::Four => Length::millimetres(57.5),
        }
    }

    /// Number of splines; those of type 1 are straight, the others involute.
    ///
    /// Source: as for the diameter.
    pub fn splines(self) -> u8 {
        match self {
            Self::One => 6,
            Self::Two => 21,
            Self::Three => 20,
            Self::Four => 22,
        }
    }

    /// Rated speed.
    ///
    /// Source: as for the diameter.
    pub fn rated_speed(self) -> AngularSpeed {
        AngularSpeed::rpm(match self {
            Self::One => 540.0,
            Self::Two | Self::Three => 1000.0,
            Self::Four => 1300.0,
        })
    }

    /// Highest power at rated speed.
    ///
    /// Source: ISO 500, from memory.
    pub fn highest_power(self) -> Power {
        Power::kilowatts(match self {
            Self::One => 60.0,
            Self::Two => 115.0,
            Self::Three => 275.0,
            Self::Four => 450.0,
        })
    }

    /// The torque that power and speed mean.
    ///
    /// Equation: T = P/ω. Units: SI. Valid range: any type. Source: follows from the two.
    pub fn highest_torque(self) -> Torque {
        // T = P/ω
        self.highest_power() / self.rated_speed()
    }
}
