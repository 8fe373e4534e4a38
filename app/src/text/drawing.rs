//! The drawing of a route, in words.

use super::{advice, labels};
use farend_core::hookup::Seat;
use farend_core::route::RouteId;

/// What it shows, for those who don't see it.
pub fn drawing(route: RouteId, seat: Seat) -> String {
    format!(
        "Where {} goes on the machine, from the engine to the implement {}.",
        labels::the_route(route),
        advice::seat(seat)
    )
}
