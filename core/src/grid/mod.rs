//! Every machine of a yard with every implement.

mod arrange;
mod cell;
mod selection;

pub use arrange::{Arranged, Rows, arrange};
pub use cell::{Cell, Pair, from_bytes, rows, to_bytes};
pub use selection::{Order, Reading, Selection};
