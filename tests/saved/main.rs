//! What is saved of a comparison, and opening it again.

mod comparison;
mod csv_table;
mod schema;
#[path = "../seeded.rs"]
mod seeded;
