//! Lossy gears and slip clutches.

use crate::quantity::{AngularSpeed, Power, Torque};
use libm::tan;

/// Efficiency of a worm that drives its wheel.
///
/// Equation: η = tan λ·(1 − f·tan λ)/(tan λ + f). Units: radians, ratio.
/// Valid range: λ above 0 to π/4, f from 0 and below 1.
/// Source: worked example in Wentzell, *Machine Design*, 13.6.
pub fn worm_efficiency(lead_angle: f64, friction: f64) -> f64 {
    let (lead, f) = (tan(lead_angle), friction);
    // η = tan λ·(1 − f·tan λ)/(tan λ + f)
    lead * (1.0 - f * lead) / (lead + f)
}

/// Heat that a gear makes of the power put into it.
///
/// Equation: P_l = P·(1 − η). Units: SI; ratio. Valid range: η 0 to 1.
/// Source: definition; worked example in Wentzell, *Machine Design*, 13.7.
pub fn heat(power: Power, efficiency: f64) -> Power {
    // P_l = P·(1 − η)
    power * (1.0 - efficiency)
}

/// Torque at which a slip clutch slips.
///
/// Equation: T_s = k·T_r. Units: SI; ratio. Valid range: k from 1.
/// Source: definition of the clutch's setting.
pub fn slip_torque(rated: Torque, factor: f64) -> Torque {
    // T_s = k·T_r
    rated * factor
}

/// Power that a clutch burns while it slips.
///
/// Equation: P = T_s·(ω₁ − ω₂). Units: SI. Valid range: ω₁ not below ω₂.
/// Source: definition.
pub fn slip_heat(torque: Torque, driving: AngularSpeed, driven: AngularSpeed) -> Power {
    // P = T_s·(ω₁ − ω₂)
    torque * (driving - driven)
}

/// The power above which a load at 540 rpm should have a slip clutch: 75 hp, a driveline maker's
/// page.
pub fn slip_clutch_above() -> Power {
    Power::horsepower(75.0)
}
