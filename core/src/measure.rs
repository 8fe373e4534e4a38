//! How much work there is: by mass, area, volume or length.

use crate::quantity::{Area, Density, Length, Mass, Volume};
use crate::words::words;
use serde::Serialize;

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
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
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
        let (from, to) = (self.measure().dimensions(), measure.dimensions());
        // From fewer dimensions to more it grows by what lies between, and shrinks the other way.
        let number = if from <= to {
            self.to_si() * swath.product(from, to)?
        } else {
            self.to_si() / swath.product(to, from)?
        };
        Some(Self::of(measure, number))
    }
}

impl Measure {
    /// How many figures of a swath it has in it, in their order: width, depth, density.
    fn dimensions(self) -> usize {
        match self {
            Self::Length => 0,
            Self::Area => 1,
            Self::Volume => 2,
            Self::Mass => 3,
        }
    }
}

impl Swath {
    /// SI units of a measure for each metre of way; `None` where what that needs isn't known.
    ///
    /// Equation: 1, b, b·h, ρ·b·h. Units: SI. Valid range: all above zero. Source: definitions.
    pub fn per_metre(&self, measure: Measure) -> Option<f64> {
        self.product(0, measure.dimensions())
    }

    /// The product of its figures from one to before another; `None` where one isn't known.
    fn product(&self, from: usize, to: usize) -> Option<f64> {
        let figures = [
            self.width.map(Length::to_si),
            self.depth.map(Length::to_si),
            self.density.map(Density::to_si),
        ];
        figures.get(from..to)?.iter().copied().product()
    }
}
