//! Each finding about a sheet: a claim that brings it and one that doesn't. Sheets and machines are
//! invented; the arithmetic stands beside each, by the definitions unless a source is named.

mod engine;
mod oil;
mod sheets;
mod steering;
mod whole;
