//! What routes cost, in words.

use crate::number;
use crate::text::labels;
use farend_core::money::BreakEven;
use farend_core::route::RouteId;

pub const TITLE: &str = "What it costs";
pub const LEAD: &str = "Your own prices, kept in the link. Without a price nothing is said of cost; \
    enter 0 where something costs nothing.";
pub const CURRENCY: &str = "Currency, three letters (EUR, USD …)";
pub const CURRENCY_REFUSED: &str = "Enter three letters, or nothing.";
pub const HOUR: &str = "An hour of work";
pub const KIT: &str = "Kit";
pub const VARIANT: &str = "Implement for this route";
pub const FITTING: &str = "Fitting";
pub const TOTAL: &str = "To buy";
pub const PER_POWER: &str = "For each";
pub const JOB: &str = "Working on the job";
pub const PAYS: &str = "Against the best shaft";
pub const NO_PRICE: &str = "–";
pub const PRICES: &str = "0 or more, up to a billion.";
pub const NOTE: &str = "Working on the job is time for it at the price of an hour, turning and \
    stopping not counted. A dearer route has paid for itself after so many hours of its own work \
    beside the best shaft route.";

/// Which route a price is for, behind the field's own name.
pub fn of_route(route: RouteId) -> String {
    format!(", {}", labels::route_small(route))
}

/// When a route has paid for itself.
pub fn pays(pays: BreakEven) -> String {
    match pays {
        BreakEven::AtOnce => "pays at once".to_owned(),
        BreakEven::After(time) => format!("pays after {} of work", number::long_time(time)),
        BreakEven::AheadFor(time) => {
            format!(
                "cheaper, slower: ahead for {} of work",
                number::long_time(time)
            )
        }
        BreakEven::Never => "never pays: no cheaper and no faster".to_owned(),
    }
}
