//! What routes cost, in words.

pub use super::say::cost::*;

use crate::number;
use farend_core::money::BreakEven;

/// In place of a price.
pub const NO_PRICE: &str = "–";

/// When a route has paid for itself.
pub fn pays_for_itself(pays: BreakEven) -> String {
    match pays {
        BreakEven::AtOnce => at_once().to_owned(),
        BreakEven::After(time) => after(&number::long_time(time)),
        BreakEven::AheadFor(time) => ahead_for(&number::long_time(time)),
        BreakEven::Never => never().to_owned(),
    }
}
