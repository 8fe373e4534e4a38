//! The drawing of a route, in words.

use super::say::drawing as say;
use super::{advice, labels};
use farend_core::hookup::Seat;
use farend_core::route::RouteId;

/// What it shows, for those who don't see it.
pub fn drawing(route: RouteId, seat: Seat) -> String {
    say::Shows {
        route: labels::the_route(route),
        seat: advice::seat(seat),
    }
    .said()
}
