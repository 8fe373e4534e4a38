//! Pressure lost by oil in a hose or a coupler.

use crate::quantity::{Area, Density, Flow, Length, Pressure, Velocity, Viscosity};
use core::f64::consts::PI;
use libm::{log10, pow, sqrt};

/// Reynolds number from which the friction factor is led from laminar to turbulent: this project's
/// judgement.
pub const LAMINAR_BELOW: f64 = 2000.0;
/// Reynolds number up to which it is: this project's judgement.
pub const TURBULENT_ABOVE: f64 = 4000.0;

/// A round hose or tube and the oil in it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pipe {
    /// Inner diameter, above zero.
    pub bore: Length,
    /// Length along it.
    pub length: Length,
    /// Roughness of the wall over the bore, 0 to 0.05.
    pub relative_roughness: f64,
}

impl Pipe {
    /// Mean velocity.
    ///
    /// Equation: v = 4·Q/(π·d²). Units: SI. Valid range: bore above zero. Source: definition.
    pub fn velocity(&self, flow: Flow) -> Velocity {
        let d = self.bore.to_metres();
        // v = 4·Q/(π·d²)
        Velocity::metres_per_second(4.0 * flow.to_si() / (PI * d * d))
    }

    /// Reynolds number.
    ///
    /// Equation: Re = v·d/ν. Units: none. Valid range: bore and viscosity above zero.
    /// Source: definition.
    pub fn reynolds(&self, flow: Flow, viscosity: Viscosity) -> f64 {
        // Re = v·d/ν
        self.velocity(flow).to_si() * self.bore.to_metres() / viscosity.to_si()
    }

    /// Pressure lost along the pipe.
    ///
    /// Equation: Δp = f·(L/d)·ρ·v²/2 (Darcy-Weisbach). Units: SI. Valid range: flow from 0.
    /// Source: general fluid mechanics; worked example Esposito 4.3.
    pub fn drop(&self, flow: Flow, viscosity: Viscosity, density: Density) -> Pressure {
        let reynolds = self.reynolds(flow, viscosity);
        if reynolds <= 0.0 {
            return Pressure::ZERO;
        }
        let f = friction_factor(reynolds, self.relative_roughness);
        let v = self.velocity(flow).to_si();
        // Δp = f·(L/d)·ρ·v²/2
        Pressure::pascals(f * (self.length / self.bore) * density.to_si() * v * v / 2.0)
    }
}

/// Darcy friction factor over the whole range, without a jump.
///
/// Equation: 64/Re below 2000; Haaland's formula above 4000; a straight line in Re between the
/// two end values within. Units: none. Valid range: Re above 0, ε/D 0 to 0.05.
/// Source: laminar, exact; turbulent, see [`haaland_1983`]; the straight line is this project's
/// judgement (no formula holds in the transition).
pub fn friction_factor(reynolds: f64, relative_roughness: f64) -> f64 {
    if reynolds <= LAMINAR_BELOW {
        return laminar(reynolds);
    }
    if reynolds >= TURBULENT_ABOVE {
        return haaland_1983(reynolds, relative_roughness);
    }
    let from = laminar(LAMINAR_BELOW);
    let to = haaland_1983(TURBULENT_ABOVE, relative_roughness);
    from + (to - from) * (reynolds - LAMINAR_BELOW) / (TURBULENT_ABOVE - LAMINAR_BELOW)
}

/// Laminar Darcy friction factor.
///
/// Equation: f = 64/Re. Units: none. Valid range: Re above 0 to about 2000. Source: exact
/// (Hagen-Poiseuille).
fn laminar(reynolds: f64) -> f64 {
    // f = 64/Re
    64.0 / reynolds
}

/// Turbulent Darcy friction factor after Haaland.
///
/// Equation: 1/√f = −1.8·log₁₀((ε/D/3.7)^1.11 + 6.9/Re). Units: none. Valid range: Re from 4000
/// to 1e8, ε/D 0 to 0.05. Source: Haaland 1983, coefficients from memory; within 1.4 % of
/// Colebrook on the grid checked in tests/cases.
pub fn haaland_1983(reynolds: f64, relative_roughness: f64) -> f64 {
    // 1/√f = −1.8·log₁₀((ε/D/3.7)^1.11 + 6.9/Re)
    // Hoses are smooth, and a power costs more than all the rest.
    let wall = if relative_roughness > 0.0 {
        pow(relative_roughness / 3.7, 1.11)
    } else {
        0.0
    };
    let root = -1.8 * log10(wall + 6.9 / reynolds);
    1.0 / (root * root)
}

/// Pressure lost in a part with a rated drop (a coupler, a valve).
///
/// Equation: Δp = Δp_r·(Q/Q_r)². Units: SI. Valid range: Q_r above zero. Source: square law of
/// turbulent orifices, common practice.
pub fn rated_drop(rated: Pressure, rated_flow: Flow, flow: Flow) -> Pressure {
    let q = flow / rated_flow;
    // Δp = Δp_r·(Q/Q_r)²
    rated * (q * q)
}

/// Pressure lost in a fitting.
///
/// Equation: Δp = K·ρ·v²/2. Units: SI; ratio. Valid range: K and v from 0, turbulent flow.
/// Source: definition of the loss coefficient.
pub fn fitting_drop(k: f64, density: Density, velocity: Velocity) -> Pressure {
    let v = velocity.to_si();
    // Δp = K·ρ·v²/2
    Pressure::pascals(k * density.to_si() * v * v / 2.0)
}

/// Flow through a sharp-edged orifice.
///
/// Equation: Q = C·A·√(2·Δp/ρ). Units: SI; ratio. Valid range: Δp from 0, ρ above zero, C 0.6 to 1.
/// Source: general fluid mechanics; worked example Esposito 8.4.
pub fn orifice_flow(area: Area, coefficient: f64, drop: Pressure, density: Density) -> Flow {
    let velocity = sqrt(2.0 * drop.to_si() / density.to_si());
    // Q = C·A·√(2·Δp/ρ)
    Flow::cubic_metres_per_second(coefficient * area.to_si() * velocity)
}

/// Bore in which a flow runs at a velocity.
///
/// Equation: d = √(4·Q/(π·v)). Units: SI. Valid range: Q from 0, v above zero.
/// Source: definition of the mean velocity; worked example Esposito 10.1.
pub fn bore_for(flow: Flow, velocity: Velocity) -> Length {
    // d = √(4·Q/(π·v))
    Length::metres(sqrt(4.0 * flow.to_si() / (PI * velocity.to_si())))
}

/// What a line is for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum LineKind {
    /// From the tank to the pump.
    Suction,
    /// Back to the tank.
    Return,
    /// Under this working pressure.
    Pressure(Pressure),
}

/// How a velocity suits a line.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum VelocityAdvice {
    /// Below the usual band: a larger line than needed, which does no harm.
    Slow,
    /// Within the usual band.
    Usual,
    /// Above it: loss and noise, at a pump's inlet also wear.
    Fast,
}

impl LineKind {
    /// The usual band of velocities.
    ///
    /// Source: a distributor's page for suction, return, medium and high pressure;
    /// flowprod.com/technicalinfo.htm for the working pressures between them.
    pub fn usual_velocities(self) -> (Velocity, Velocity) {
        let (from, to) = match self {
            Self::Suction => (2.0, 4.0),
            Self::Return => (10.0, 15.0),
            Self::Pressure(working) if working <= Pressure::psi(500.0) => (10.0, 15.0),
            Self::Pressure(working) if working <= Pressure::psi(3000.0) => (15.0, 20.0),
            Self::Pressure(_) => (20.0, 25.0),
        };
        (
            Velocity::feet_per_second(from),
            Velocity::feet_per_second(to),
        )
    }

    /// Where a velocity lies about the usual band, whose ends count as usual.
    pub fn advice(self, velocity: Velocity) -> VelocityAdvice {
        let (from, to) = self.usual_velocities();
        if velocity < from {
            VelocityAdvice::Slow
        } else if velocity <= to {
            VelocityAdvice::Usual
        } else {
            VelocityAdvice::Fast
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_velocity_gets_its_advice() {
        use VelocityAdvice::{Fast, Slow, Usual};
        for (kind, feet_per_second, advice) in [
            (LineKind::Suction, 1.9, Slow),
            (LineKind::Suction, 2.0, Usual),
            (LineKind::Suction, 4.0, Usual),
            (LineKind::Suction, 4.1, Fast),
            (LineKind::Return, 9.9, Slow),
            (LineKind::Return, 15.1, Fast),
            (LineKind::Pressure(Pressure::psi(2500.0)), 20.0, Usual),
            (LineKind::Pressure(Pressure::psi(3500.0)), 26.0, Fast),
        ] {
            let velocity = Velocity::feet_per_second(feet_per_second);
            assert_eq!(kind.advice(velocity), advice, "{kind:?} {feet_per_second}");
        }
    }
}
