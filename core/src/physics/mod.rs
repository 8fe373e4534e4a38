//! Equations without a machine: each states its form, units, range and source.

pub mod displacement;
pub mod engine;
pub mod hydraulic;
pub mod joint;
pub mod line;
pub mod oil;
