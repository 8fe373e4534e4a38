//! The single cardan (Hooke) joint.

use crate::quantity::AngularSpeed;
use libm::cos;

/// Slowest and fastest speed of the driven shaft within a turn, the driver's speed being steady.
///
/// Equation: ω₂/ω₁ = cos β/(1 − sin²β·cos²θ), lowest cos β, highest 1/cos β.
/// Units: speed as given, angle in radians. Valid range: |β| below π/2; the caller keeps to it.
/// Source: general kinematics; worked example in Khurmi & Gupta, *Theory of Machines*, 9.7.
pub fn speed_extremes(speed: AngularSpeed, angle: f64) -> (AngularSpeed, AngularSpeed) {
    // ω₂,min = ω₁·cos β, ω₂,max = ω₁/cos β
    (speed * cos(angle), speed / cos(angle))
}
