//! What can be taken along of a comparison: tables for spreadsheets, and the comparison itself as
//! a file that opens again.

pub mod comparison;
pub mod csv;
pub mod open;
