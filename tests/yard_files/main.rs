//! Yard files: the built-in one, one written by hand, and damaged ones.

mod arrives;
mod damaged;
mod demo;
mod editing;
mod every_field;
mod example;
mod format;
mod full;
mod golden;
mod hand_written;
mod included;
mod schema;
mod unreadable;
