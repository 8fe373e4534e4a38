//! Every machine of a yard with every implement.

mod cell;
mod selection;

pub use cell::{Cell, Kits, Pair, row};
pub use selection::{Order, Reading, Selection};
