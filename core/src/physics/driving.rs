//! Power that driving takes of the engine.

use crate::physics::GRAVITY;
use crate::quantity::{Force, Mass, Power, Velocity};
use crate::source::Source;
use crate::spread::Spread;
use libm::sqrt;

/// Rolling resistance coefficient of wheels on firm ground.
pub const ROLLING_FIRM: Spread<f64> = Spread::new(0.02, 0.03, 0.04, Source::FromMemory);
/// The same on a field or grass.
pub const ROLLING_GRASS: Spread<f64> = Spread::new(0.06, 0.08, 0.1, Source::FromMemory);
/// The same in loose snow or on soft ground.
pub const ROLLING_LOOSE: Spread<f64> = Spread::new(0.1, 0.15, 0.2, Source::FromMemory);

/// Efficiency from the engine to the ground's edge of the wheels, gears.
pub const GEAR_TRANSMISSION: Spread<f64> = Spread::new(0.85, 0.9, 0.95, Source::FromMemory);
/// The same, hydrostatic.
pub const HYDROSTATIC_TRANSMISSION: Spread<f64> = Spread::new(0.6, 0.7, 0.8, Source::FromMemory);

/// A machine on its way.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Travel {
    /// All that rolls: machine, implement and load.
    pub mass: Mass,
    /// Rolling resistance coefficient, from 0.
    pub rolling: f64,
    /// Rise over run, negative downhill.
    pub slope: f64,
    /// What the work pushes back with.
    pub pushing: Force,
    /// Speed over ground, from 0.
    pub speed: Velocity,
}

impl Travel {
    /// Force along the ground, negative where the hill pushes.
    ///
    /// Equation: F = c_rr·m·g·cos θ + m·g·sin θ + F_p, tan θ = slope.
    /// Units: SI. Valid range: slope −0.6 to 0.6. Source: general mechanics.
    pub fn force(&self) -> Force {
        // 1/cos θ = √(1 + tan²θ), sin θ = tan θ·cos θ
        let cos = 1.0 / sqrt(1.0 + self.slope * self.slope);
        let sin = self.slope * cos;
        let weight = Force::newtons(self.mass.to_kilograms() * GRAVITY);
        // F = c_rr·m·g·cos θ + m·g·sin θ + F_p
        weight * (self.rolling * cos) + weight * sin + self.pushing
    }

    /// Power that the transmission takes of the engine: nothing where the hill pushes, for what
    /// the engine brakes isn't counted.
    ///
    /// Equation: P = F·v/η, F and P not below 0. Units: SI. Valid range: η above 0 to 1, slip of
    /// the wheels not counted. Source: definition.
    pub fn power(&self, transmission_efficiency: f64) -> Power {
        // P = F·v/η
        self.force().max(Force::ZERO) * self.speed / transmission_efficiency
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_hill_that_pushes_takes_nothing() {
        let downhill = Travel {
            mass: Mass::kilograms(3000.0),
            rolling: 0.03,
            slope: -0.1,
            pushing: Force::ZERO,
            speed: Velocity::kilometres_per_hour(10.0),
        };
        assert!(downhill.force() < Force::ZERO);
        assert_eq!(downhill.power(0.9), Power::ZERO);
    }
}
