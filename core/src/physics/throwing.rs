//! How far a thrower can throw at the most.

use crate::physics::GRAVITY;
use crate::quantity::{AngularSpeed, Length, Velocity};

/// Speed of a rotor's tip.
///
/// Equation: v = ω·D/2. Units: SI. Valid range: any. Source: definition.
pub fn tip_speed(speed: AngularSpeed, diameter: Length) -> Velocity {
    // v = ω·D/2
    Velocity::metres_per_second(speed.to_si() * diameter.to_metres() / 2.0)
}

/// Farthest that anything thrown at this speed lands on level ground: air only makes it less.
///
/// Equation: s = v²/g, at 45° without drag. Units: SI. Valid range: any.
/// Source: general mechanics.
pub fn casting_bound(tip_speed: Velocity) -> Length {
    let v = tip_speed.to_si();
    // s = v²/g
    Length::metres(v * v / GRAVITY)
}

/// The casting bound at a speed over that at rated speed.
///
/// Equation: s/s_r = (ω/ω_r)². Units: ratio. Valid range: ω_r above zero.
/// Source: follows from the other two.
pub fn casting_ratio(speed: AngularSpeed, rated: AngularSpeed) -> f64 {
    let part = speed / rated;
    // s/s_r = (ω/ω_r)²
    part * part
}
