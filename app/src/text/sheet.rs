//! The words of the page to take home.

use crate::number;
use crate::text::{capital, labels, list};
use farend_core::budget::Budget;
use farend_core::compare::{Comparison, Run};
use farend_core::fit::{Item, Judgement};
use farend_core::hookup::Seat;
use farend_core::money::RoutePrices;
use farend_core::route::RouteId;
use farend_core::spread::Spread;
use farend_core::units::{Quantity, UnitSystem};

pub const OPEN: &str = "Page to take home";
pub const BACK: &str = "Back to the comparison";
pub const PRINT: &str = "Print or save as PDF";
pub const CANT_PRINT: &str = "This frame keeps the printer closed. Print from a tab of its own, or from \
    the browser's own menu.";
pub const OUTCOME: &str = "How it comes out";
pub const LEDGER: &str = "Where it goes";
pub const LOST: &str = "lost";
pub const PASSED_ON: &str = "passed on";
pub const FIT: &str = "To see to before it runs";
pub const FITS: &str = "All that is known of it fits.";
pub const BUY: &str = "What it takes beside the machine";
pub const ASK: &str = "Still to ask";
pub const CODE: &str = "This comparison, live:";
pub const NO_CODE: &str = "A page from a disk has no address to give; make this page from the dealer's \
    website to get a code.";
pub const LONG_CODE: &str = "The address is too long for a code: ask the dealer for the link.";
pub const FOOT: &str = "Reckoned by Farend, which replaces neither manuals nor trained people.";
pub const INVENTED: &str = "Invented demo data.";

/// What the job needs and how the engine's power comes about.
pub fn need(all: &Comparison, units: UnitSystem) -> String {
    let Budget { net, .. } = all.budget;
    let range = |power: Spread<_>| {
        number::range(
            Quantity::Power(power.low),
            Quantity::Power(power.high),
            units,
        )
    };
    format!(
        "The job needs {} at the rotor ({}). The engine has {} net.",
        number::power(all.need.likely, units),
        range(all.need),
        number::power(net.likely, units)
    )
}

/// How the route comes out.
pub fn outcome(route: RouteId, run: &Run, seat: &'static str, units: UnitSystem) -> String {
    format!(
        "{}, {seat}: {} ({}) arrive at {}. {}.",
        labels::route(route),
        number::power(run.delivered.likely, units),
        number::range(
            Quantity::Power(run.delivered.low),
            Quantity::Power(run.delivered.high),
            units
        ),
        number::shown(Quantity::Speed(run.rotor), units),
        labels::standing(run.verdict.likely)
    )
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
        Some(amount) => format!("{what}: {}", price(amount)),
        None => what,
    };
    let variant = if route.needs_oil() {
        format!("{implement}, with hydraulic motor")
    } else {
        format!("{implement}, with input shaft")
    };
    let mut lines = vec![
        priced(kit.to_owned(), prices.kit),
        priced(variant, prices.variant),
    ];
    lines.extend(
        prices
            .fitting
            .map(|amount| format!("Fitting: {}", price(amount))),
    );
    lines.extend(
        prices
            .total()
            .map(|total| format!("Together: {}", price(total))),
    );
    lines
}

/// How many more there are than the sheet has room for.
pub fn more(count: usize) -> String {
    format!("and {count} more, by the link")
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
    use crate::text::advice;
    let mut told = vec![advice::view(seat.view()).to_owned()];
    told.extend(drives_over.map(|it| advice::drives_over(it).to_owned()));
    told.push(advice::loader(seat.loader()).to_owned());
    format!("{}.", capital(&list(&told)))
}
