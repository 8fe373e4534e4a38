//! Sizes of hydraulic quick couplers.

use crate::quantity::{Flow, Pressure};

/// A size of ISO 14541, screw-to-connect.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CouplerSize {
    /// Size 12.5.
    Size12,
    /// Size 20.
    Size20,
}

impl CouplerSize {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Size12, Self::Size20];

    /// Rated flow, and the most pressure that it may take there.
    ///
    /// Source: a maker's table reproducing ISO 14541.
    pub fn rated(self) -> (Flow, Pressure) {
        let (litres_per_minute, bar) = match self {
            Self::Size12 => (45.0, 1.5),
            Self::Size20 => (106.0, 2.2),
        };
        (
            Flow::litres_per_minute(litres_per_minute),
            Pressure::bar(bar),
        )
    }
}
