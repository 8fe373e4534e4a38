//! Three-point hitch categories.

use crate::quantity::{Length, Power};
use crate::words::words;

words! {
    /// A category of three-point hitch.
    Category {
        /// Category 1.
        One = "1",
        /// Category 2.
        Two = "2",
        /// Category 3.
        Three = "3",
        /// Category 4, narrow.
        FourNarrow = "4n",
    }
}

impl Category {
    /// Diameter of the lower link pins.
    ///
    /// Source: makers' tables citing ISO 730-1; category 1 from memory.
    pub fn lower_pin(self) -> Length {
        Length::millimetres(match self {
            Self::One => 22.0,
            Self::Two => 28.0,
            Self::Three => 36.6,
            Self::FourNarrow => 50.8,
        })
    }

    /// Highest PTO power of a tractor with it.
    ///
    /// Source: makers' tables citing ISO 730-1; category 1 from memory.
    pub fn highest_power(self) -> Power {
        Power::kilowatts(match self {
            Self::One => 48.0,
            Self::Two => 92.0,
            Self::Three => 185.0,
            Self::FourNarrow => 350.0,
        })
    }
}
