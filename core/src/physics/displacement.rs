//! How the losses of a pump or motor change with pressure, speed and viscosity.
//!
//! Wilson's model (1946, from memory; widely reprinted in texts on fluid power): leakage is laminar
//! flow through gaps, torque is lost to dry friction in proportion to pressure and to viscous drag
//! in proportion to speed. With D = V/2π:
//!
//! pump:  Q = D·ω − C_s·D·Δp/μ,  T = D·Δp + C_f·D·Δp + C_d·D·μ·ω
//! motor: Q = D·ω + C_s·D·Δp/μ,  T = D·Δp − C_f·D·Δp − C_d·D·μ·ω
//!
//! The three coefficients follow from the two efficiencies, in the sense of ISO 4391, at one rated
//! point, so that they are the sheet's there. The oil's density is taken as the same at both
//! points, so that ν stands for μ.

use crate::quantity::{AngularSpeed, Displacement, Flow, Pressure, Torque, Viscosity};

/// Part of the torque lost at the rated point that is viscous drag; the rest is dry friction: this
/// project's judgement.
pub const DRAG_SHARE: f64 = 0.5;

/// The point at which efficiencies are known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RatedPoint {
    /// Shaft speed, above zero.
    pub speed: AngularSpeed,
    /// Pressure difference, above zero.
    pub pressure: Pressure,
    /// Viscosity of the oil, above zero.
    pub viscosity: Viscosity,
}

/// A pump or motor's losses, for one choice of its uncertain figures.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Losses {
    /// Displacement per revolution, above zero.
    pub displacement: Displacement,
    /// Where the following hold.
    pub rated: RatedPoint,
    /// Leakage at the rated point, as a part of V·n there.
    pub leakage: f64,
    /// Torque lost at the rated point, as a part of V·Δp/2π there.
    pub torque: f64,
}

impl Losses {
    /// Of a pump with these efficiencies at its rated point.
    ///
    /// Equation: leakage 1 − ηv, torque 1/ηhm − 1. Units: none. Valid range: both above 0 to 1.
    /// Source: definitions of ISO 4391, from memory.
    pub fn of_pump(
        displacement: Displacement,
        rated: RatedPoint,
        volumetric: f64,
        hydro_mechanical: f64,
    ) -> Self {
        Self {
            displacement,
            rated,
            // C_s·Δp/(μ·ω) = 1 − ηv
            leakage: 1.0 - volumetric,
            // C_f + C_d·μ·ω/Δp = 1/ηhm − 1
            torque: 1.0 / hydro_mechanical - 1.0,
        }
    }

    /// Of a motor with these efficiencies at its rated point.
    ///
    /// Equation: leakage 1/ηv − 1, torque 1 − ηhm. Units: none. Valid range: both above 0 to 1.
    /// Source: definitions of ISO 4391, from memory.
    pub fn of_motor(
        displacement: Displacement,
        rated: RatedPoint,
        volumetric: f64,
        hydro_mechanical: f64,
    ) -> Self {
        Self {
            displacement,
            rated,
            // C_s·Δp/(μ·ω) = 1/ηv − 1
            leakage: 1.0 / volumetric - 1.0,
            // C_f + C_d·μ·ω/Δp = 1 − ηhm
            torque: 1.0 - hydro_mechanical,
        }
    }

    /// Flow that leaks from the high side.
    ///
    /// Equation: Q_s = C_s·D·Δp/μ. Units: SI. Valid range: pressure from 0, viscosity above 0.
    /// Source: Wilson's model, from memory.
    pub fn leaks(&self, difference: Pressure, viscosity: Viscosity) -> Flow {
        let rated = self.displacement * self.rated.speed;
        // Q_s = leakage·V·n_r·(Δp/Δp_r)·(ν_r/ν)
        rated
            * (self.leakage * (difference / self.rated.pressure)
                / (viscosity / self.rated.viscosity))
    }

    /// Torque that viscous drag takes.
    ///
    /// Equation: T_d = C_d·D·μ·ω. Units: SI. Valid range: speed from 0, viscosity above 0.
    /// Source: Wilson's model, from memory.
    pub fn drag(&self, speed: AngularSpeed, viscosity: Viscosity) -> Torque {
        let rated = self.rated.pressure * self.displacement;
        // T_d = torque·share·(V·Δp_r/2π)·(ω/ω_r)·(ν/ν_r)
        rated
            * (self.torque
                * DRAG_SHARE
                * (speed / self.rated.speed)
                * (viscosity / self.rated.viscosity))
    }

    /// Part of V·Δp/2π that dry friction takes.
    ///
    /// Equation: C_f. Units: none. Valid range: any losses. Source: Wilson's model, from memory.
    pub fn friction(&self) -> f64 {
        // C_f = torque·(1 − share)
        self.torque * (1.0 - DRAG_SHARE)
    }
}
