//! Pressure at a pump's inlet. Pressures here are absolute.

use crate::physics::GRAVITY;
use crate::quantity::{Density, Length, Pressure};

/// Absolute pressure at a pump's inlet, to be held against [`lowest_inlet`].
///
/// Equation: p = p_atm − Δp_line − ρ·g·h, h being how far the pump stands above the oil, negative
/// below it. Units: SI. Valid range: an open tank. Source: general hydrostatics.
pub fn inlet_pressure(
    atmosphere: Pressure,
    line_drop: Pressure,
    density: Density,
    lift: Length,
) -> Pressure {
    let column = Pressure::pascals(density.to_si() * GRAVITY * lift.to_metres());
    // p = p_atm − Δp_line − ρ·g·h
    atmosphere - line_drop - column
}

/// Lowest absolute pressure that the usual pump takes at its inlet: 0.8 bar, from memory.
pub fn lowest_inlet() -> Pressure {
    Pressure::bar(0.8)
}
