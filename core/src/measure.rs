//! How much work there is: by mass, area, volume or length.

use crate::quantity::{Area, Density, Length, Mass, Volume};
use crate::words::words;

words! {
    /// What a job is measured in.
    Measure {
        /// Tonnes of material.
        Mass = "mass",
        /// Square metres of ground.
        Area = "area",
        /// Cubic metres of material.
        Volume = "volume",
        /// Metres of ground along the way.
        Length = "length",
    }
}

/// An amount of work.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Amount {
    /// Of material.
    Mass(Mass),
    /// Of ground.
    Area(Area),
    /// Of material.
    Volume(Volume),
    /// Along the way.
    Length(Length),
}

/// What turns one measure into another.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Swath {
    /// Working width.
    pub width: Option<Length>,
    /// Depth of what is worked.
    pub depth: Option<Length>,
    /// Density of the material.
    pub density: Option<Density>,
}

impl Amount {
    /// So many SI units of a measure.
    pub fn of(measure: Measure, si: f64) -> Self {
        match measure {
            Measure::Mass => Self::Mass(Mass::kilograms(si)),
            Measure::Area => Self::Area(Area::square_metres(si)),
            Measure::Volume => Self::Volume(Volume::cubic_metres(si)),
            Measure::Length => Self::Length(Length::metres(si)),
        }
    }

    /// Its measure.
    pub fn measure(self) -> Measure {
        match self {
            Self::Mass(_) => Measure::Mass,
            Self::Area(_) => Measure::Area,
            Self::Volume(_) => Measure::Volume,
            Self::Length(_) => Measure::Length,
        }
    }

    /// The number of SI units.
    pub fn to_si(self) -> f64 {
        match self {
            Self::Mass(it) => it.to_si(),
            Self::Area(it) => it.to_si(),
            Self::Volume(it) => it.to_si(),
            Self::Length(it) => it.to_si(),
        }
    }

    /// The same work in another measure; `None` where what that needs isn't known.
    ///
    /// Equation: A = b·l, V = A·h, m = ρ·V. Units: SI. Valid range: width, depth and density above
    /// zero. Source: definitions.
    pub fn in_measure(self, measure: Measure, swath: &Swath) -> Option<Self> {
        let per_metre = |measure| swath.per_metre(measure);
        // Both are so much for each metre of way.
        let metres = self.to_si() / per_metre(self.measure())?;
        Some(Self::of(measure, metres * per_metre(measure)?))
    }
}

impl Swath {
    /// SI units of a measure for each metre of way; `None` where what that needs isn't known.
    ///
    /// Equation: 1, b, b·h, ρ·b·h. Units: SI. Valid range: all above zero. Source: definitions.
    pub fn per_metre(&self, measure: Measure) -> Option<f64> {
        if measure == Measure::Length {
            return Some(1.0);
        }
        let width = self.width?.to_metres();
        if measure == Measure::Area {
            return Some(width);
        }
        let section = width * self.depth?.to_metres();
        match measure {
            Measure::Mass => Some(section * self.density?.to_kilograms_per_cubic_metre()),
            _ => Some(section),
        }
    }
}
