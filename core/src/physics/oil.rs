//! Mineral oil over temperature.

use crate::quantity::{Density, Temperature, Viscosity};
use crate::source::Source;
use crate::spread::Spread;
use crate::words::words;
use libm::{log10, pow};

/// An oil as its sheet gives it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Oil {
    /// Viscosity at 40 °C, above 2 cSt.
    pub at_40: Viscosity,
    /// Viscosity at 100 °C, above 2 cSt and below that at 40 °C.
    pub at_100: Viscosity,
    /// Density at 15 °C.
    pub density_at_15: Density,
}

/// Part of its volume that mineral oil grows by for each kelvin: from memory.
const GROWTH: f64 = 7e-4;

impl Oil {
    /// Viscosity at a temperature.
    ///
    /// Equation: lg lg(ν + 0.7) = A − B·lg T, through the two points of the sheet; ν in cSt, T in K.
    /// Units: SI. Valid range: ν from 2 cSt up, above the oil's pour point. Source: ASTM D341.
    pub fn viscosity(&self, temperature: Temperature) -> Viscosity {
        // W = lg lg(ν + 0.7)
        let w = |viscosity: Viscosity| log10(log10(viscosity.to_centistokes() + 0.7));
        let lg = |temperature: Temperature| log10(temperature.to_kelvins());
        let (t_40, t_100) = (Temperature::celsius(40.0), Temperature::celsius(100.0));
        let (w_1, lg_1) = (w(self.at_40), lg(t_40));
        // B = (W₁ − W₂)/(lg T₂ − lg T₁), A = W₁ + B·lg T₁
        let b = (w_1 - w(self.at_100)) / (lg(t_100) - lg_1);
        let a = w_1 + b * lg_1;
        // ν = 10^10^(A − B·lg T) − 0.7
        Viscosity::centistokes(pow(10.0, pow(10.0, a - b * lg(temperature))) - 0.7)
    }

    /// Density at a temperature.
    ///
    /// Equation: ρ = ρ₁₅·(1 − α·(t − 15 °C)), α = 0.0007/K. Units: SI. Valid range: −20 to 100 °C.
    /// Source: from memory.
    pub fn density(&self, temperature: Temperature) -> Density {
        // ρ = ρ₁₅·(1 − α·(t − 15 °C))
        self.density_at_15 * (1.0 - GROWTH * (temperature.to_celsius() - 15.0))
    }
}

words! {
    /// An oil as it's sold: a grade of ISO 3448, or a tractor's fluid.
    Grade {
        /// ISO VG 22.
        Vg22 = "iso-vg-22",
        /// ISO VG 32.
        Vg32 = "iso-vg-32",
        /// ISO VG 46.
        Vg46 = "iso-vg-46",
        /// ISO VG 68.
        Vg68 = "iso-vg-68",
        /// ISO VG 100.
        Vg100 = "iso-vg-100",
        /// A typical fluid for a tractor's transmission and hydraulics.
        TractorFluid = "tractor-fluid",
    }
}

impl Grade {
    /// Viscosity at 40 °C: the grade's midpoint, and a tenth below and above.
    ///
    /// Equation: ν = k·ν_mid, k from 0.9 to 1.1. Units: SI; cSt in the table. Valid range: any grade.
    /// Source: aimsindustrial.com.au, oil viscosity chart, for VG 46 and 68; ISO 3448, from memory,
    /// for the others.
    pub fn at_40(self) -> Spread<Viscosity> {
        let (midpoint, source) = match self {
            Self::Vg22 => (22.0, Source::FromMemory),
            Self::Vg32 => (32.0, Source::FromMemory),
            Self::Vg46 => (46.0, Source::ViscosityChart),
            Self::Vg68 => (68.0, Source::ViscosityChart),
            Self::Vg100 => (100.0, Source::FromMemory),
            Self::TractorFluid => (60.0, Source::FromMemory),
        };
        Spread::new(0.9, 1.0, 1.1, source).map(|part| Viscosity::centistokes(midpoint * part))
    }

    /// A typical mineral oil of the grade, viscosity index about 100, a tractor's fluid 140.
    ///
    /// Source: viscosity at 100 °C and density from memory.
    pub fn typical(self) -> Oil {
        let at_100 = match self {
            Self::Vg22 => 4.3,
            Self::Vg32 => 5.4,
            Self::Vg46 => 6.8,
            Self::Vg68 => 8.7,
            Self::Vg100 => 11.2,
            Self::TractorFluid => 9.4,
        };
        Oil {
            at_40: self.at_40().likely,
            at_100: Viscosity::centistokes(at_100),
            density_at_15: Density::kilograms_per_cubic_metre(match self {
                Self::TractorFluid => 880.0,
                _ => 870.0,
            }),
        }
    }
}
