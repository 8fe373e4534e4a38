//! Every machine of a yard with every implement.

mod selection;

pub use selection::{Order, Reading, Selection};
