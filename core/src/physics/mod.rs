//! Equations without a machine: each states its form, units, range and source.

pub mod balance;
pub mod coupler;
pub mod derate;
pub mod displacement;
pub mod driving;
pub mod engine;
pub mod gearing;
pub mod heat;
pub mod hitch;
pub mod hydraulic;
pub mod joint;
pub mod joint_shaft;
pub mod lift;
pub mod line;
pub mod oil;
pub mod shaft;
pub mod suction;
pub mod throwing;

/// Standard acceleration of free fall, m/s²: exact by definition.
pub const GRAVITY: f64 = 9.806_65;
