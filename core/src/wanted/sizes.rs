//! Common sizes of what can be bought: common practice, no source. Nobody's catalogue: what a maker
//! offers may lie between.

use crate::quantity::{Displacement, Length};

/// Speed-increasing boxes between PTO and pump: speed out over speed in.
pub const BOX_RATIOS: [f64; 6] = [1.5, 2.0, 2.5, 3.0, 3.5, 3.8];

/// Gear pumps, cm³.
const PUMPS: [f64; 18] = [
    16.0, 19.0, 22.5, 25.0, 28.0, 32.0, 36.0, 38.0, 45.0, 50.0, 56.0, 63.0, 71.0, 80.0, 90.0,
    100.0, 112.0, 125.0,
];

/// Motors, cm³: gear motors to 40, low-speed motors from there.
const MOTORS: [f64; 22] = [
    8.0, 11.0, 16.0, 19.0, 22.5, 25.0, 28.0, 32.0, 40.0, 50.0, 63.0, 80.0, 100.0, 125.0, 160.0,
    200.0, 250.0, 315.0, 400.0, 500.0, 630.0, 800.0,
];

/// Bores of hoses, and of suction lines above 38, mm.
const BORES: [f64; 12] = [
    6.3, 10.0, 12.5, 16.0, 19.0, 25.0, 31.5, 38.0, 51.0, 63.0, 76.0, 102.0,
];

/// Displacements of pumps, the smallest first.
pub fn pumps() -> impl DoubleEndedIterator<Item = Displacement> {
    PUMPS.into_iter().map(Displacement::cubic_centimetres)
}

/// Displacements of motors, the smallest first.
pub fn motors() -> impl DoubleEndedIterator<Item = Displacement> {
    MOTORS.into_iter().map(Displacement::cubic_centimetres)
}

/// Bores of lines, the narrowest first.
pub fn bores() -> impl DoubleEndedIterator<Item = Length> {
    BORES.into_iter().map(Length::millimetres)
}
