//! The words of the page to take home.

pub use super::say::sheet::*;

use super::{advice, clauses, labels, list, named};
use crate::number;
use farend_core::budget::Budget;
use farend_core::compare::{Comparison, Run};
use farend_core::fit::{Item, Judgement};
use farend_core::hookup::Seat;
use farend_core::money::RoutePrices;
use farend_core::route::RouteId;
use farend_core::units::{Quantity, UnitSystem};

/// What the job needs and how the engine's power comes about.
pub fn need(all: &Comparison, units: UnitSystem) -> String {
    let Budget { net, .. } = all.budget;
    Need {
        need: &number::power(all.need.likely, units),
        range: &number::range(
            Quantity::Power(all.need.low),
            Quantity::Power(all.need.high),
            units,
        ),
        net: &number::power(net.likely, units),
    }
    .said()
}

/// How the route comes out.
pub fn outcome(route: RouteId, run: &Run, seat: &'static str, units: UnitSystem) -> String {
    Outcome {
        route: labels::route(route),
        seat,
        power: &number::power(run.delivered.likely, units),
        range: &number::range(
            Quantity::Power(run.delivered.low),
            Quantity::Power(run.delivered.high),
            units,
        ),
        speed: &number::shown(Quantity::Speed(run.rotor), units),
        standing: labels::standing(run.verdict.likely),
    }
    .said()
}

/// The kit and the implement's variant, with their prices where they are known.
pub fn to_buy(
    kit: &str,
    implement: &str,
    route: RouteId,
    prices: RoutePrices,
    price: impl Fn(f64) -> String,
) -> Vec<String> {
    let priced = |what: String, amount: Option<f64>| match amount {
        Some(amount) => named(&what, &price(amount)),
        None => what,
    };
    let variant = if route.needs_oil() {
        with_motor(implement)
    } else {
        with_shaft(implement)
    };
    let mut lines = vec![
        priced(kit.to_owned(), prices.kit),
        priced(variant, prices.variant),
    ];
    lines.extend(
        prices
            .fitting
            .map(|amount| named(fitting(), &price(amount))),
    );
    lines.extend(prices.total().map(|total| named(together(), &price(total))));
    lines
}

/// Which items are told on the sheet: the gravest first.
pub fn told(items: &[Item]) -> Vec<Item> {
    let mut told: Vec<_> = items
        .iter()
        .filter(|it| matches!(it.judgement, Judgement::Stop | Judgement::Advice))
        .copied()
        .collect();
    told.sort_by_key(|it| core::cmp::Reverse(it.judgement));
    told
}

/// The seat's consequences in one line.
pub fn at_work(seat: Seat, drives_over: Option<bool>) -> String {
    let mut told = vec![advice::view(seat.view())];
    told.extend(drives_over.map(advice::drives_over));
    told.push(advice::loader(seat.loader()));
    clauses(&[list(&told)])
}
