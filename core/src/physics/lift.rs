//! What a hitch, a loader or a skid steer lifts at another distance than the one on its sheet.

use crate::quantity::{Length, Mass};
use crate::source::Source;
use crate::spread::Spread;

/// From the point about which a rear hitch's links swing to the ball ends, metres: the lower links'
/// own length at the least, more where the top link leads the load up level. From memory.
pub const HITCH_ARM: Spread<f64> = Spread::new(0.9, 1.6, 3.0, Source::FromMemory);
/// How far a loader's pins stand ahead of the arms' pivot at full height, over the arms' length from
/// pivot to pins: they stand steep there, and sheets name about three quarters of the lift half a
/// metre ahead of the pins. From memory.
pub const LOADER_LEVEL: Spread<f64> = Spread::new(0.6, 0.8, 1.0, Source::FromMemory);
/// From a skid steer's pins to the middle of the bucket's load that its rated load is meant for,
/// metres. From memory.
pub const BUCKET_CENTRE: Spread<f64> = Spread::new(0.3, 0.4, 0.5, Source::FromMemory);

/// What is lifted farther out, the moment being the same: about the point on which a hitch's links
/// or a loader's arms swing, or about the front axle, on which a skid steer tips.
///
/// Equation: m = m₀·(a + d₀)/(a + d), a from that point to the ball ends or pins, d and d₀ from
/// there outwards. Units: kg, m. Valid range: a above zero, d and d₀ from 0.
/// Source: equilibrium of moments; that the whole linkage swings about one point is this project's
/// judgement.
pub fn lifts_at(lift: Mass, arm: Length, measured_at: Length, at: Length) -> Mass {
    // m = m₀·(a + d₀)/(a + d)
    lift * ((arm + measured_at) / (arm + at))
}
