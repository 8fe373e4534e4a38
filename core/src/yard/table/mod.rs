//! The lists of a yard as tables for spreadsheets, out and in.
//!
//! A column for each figure, named by its dotted path in the yard file: `engine.net_kw`,
//! `circuits.1.flow_l_min` with places from 1, `engine.net_kw.low` of an uncertain figure. All of it
//! follows from the rules of yard files ([`super::rules`]), so that a new field needs nothing here.

mod cell;
mod columns;
mod number;
mod read;
mod row;
mod sheet;
mod take_in;
mod write;

pub use number::DecimalMark;
pub use read::{COLUMN, Doubt, Reading, Rows, list_of, read};
pub use sheet::{HEADERS, MOST_COLUMNS, QUOTES};
pub use take_in::{Change, How, RowChange, TakenIn, take_in};
pub use write::{table, template};

use super::list::List;
use crate::fault::Fault;
use core::fmt;

/// A fault of a table.
#[derive(Clone, Debug, PartialEq)]
pub struct RowFault {
    /// The row as a spreadsheet counts: the header is row 1. None where it's the whole file.
    pub row: Option<usize>,
    /// What is wrong; its path is the column's header.
    pub fault: Fault,
}

impl fmt::Display for RowFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.row {
            Some(row) => write!(f, "Row {row}, {}", self.fault),
            None => write!(f, "{}", self.fault),
        }
    }
}
