//! The engine's power over its speed.

use crate::quantity::{AngularSpeed, Power};

/// Net power at a speed, from the net power at rated speed.
///
/// Equation: P = P_r·(0.87·x + 1.13·x² − x³), x = n/n_r (Leiderman's form with the coefficients
/// of a direct-injection diesel).
/// Units: SI. Valid range: x from 0.3 to 1; the caller keeps to it.
/// Source: from memory. It is a default shape, used where no curve is known.
pub fn net_power_at(rated: Power, rated_speed: AngularSpeed, speed: AngularSpeed) -> Power {
    // x = n/n_r
    let x = speed / rated_speed;
    // P = P_r·(0.87·x + 1.13·x² − x³)
    rated * (x * (0.87 + x * (1.13 - x)))
}
