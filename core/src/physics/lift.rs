//! What a hitch or a loader lifts at another distance than the one on its sheet.

use crate::quantity::{Length, Mass};
use crate::source::Source;
use crate::spread::Spread;

/// From the point about which a rear hitch's links swing to the ball ends, metres: the lower links'
/// own length at the least, more where the top link leads the load up level. From memory.
pub const HITCH_ARM: Spread<f64> = Spread::new(0.9, 1.6, 3.0, Source::FromMemory);
/// From a loader's pivot to its pins, metres, where the yard doesn't know it. From memory.
pub const LOADER_ARM: Spread<f64> = Spread::new(1.2, 1.8, 2.6, Source::FromMemory);

/// What is lifted farther out, the moment about the links' or arms' pivot being the same.
///
/// Equation: m = m₀·(a + d₀)/(a + d). Units: kg, m. Valid range: a above zero, d and d₀ from 0.
/// Source: equilibrium of moments; that the whole linkage swings about one point is this project's
/// judgement.
pub fn lifts_at(lift: Mass, arm: Length, measured_at: Length, at: Length) -> Mass {
    // m = m₀·(a + d₀)/(a + d)
    lift * ((arm + measured_at) / (arm + at))
}
