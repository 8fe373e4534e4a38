//! What can be taken along: a comparison as tables for spreadsheets and as a file that opens again;
//! sets of practice cases and a learner's own answers.

pub mod comparison;
pub mod csv;
pub mod open;
pub mod practice_set;
pub mod record;
