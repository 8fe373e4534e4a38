//! Two machines beside each other, in words.

pub use super::say::beside::*;

use super::sentences::short;
use super::{clauses, labels, named};
use crate::number;
use farend_core::compare::Run;
use farend_core::quantity::Power;
use farend_core::units::UnitSystem;

/// What arrives on one machine by a route, and how long the job takes, where that is known.
pub fn arrives(run: &Run, time: Option<String>, units: UnitSystem) -> String {
    let power = &number::power(run.delivered.likely, units);
    let standing = labels::standing(run.verdict.likely);
    match time {
        None => named(power, standing),
        Some(time) => ArrivesAndJob {
            power,
            standing,
            time: &time,
        }
        .said(),
    }
}

/// What the other machine's gear brings at its best route, and what it costs.
pub fn difference(
    (name, best): (&str, Power),
    (other_name, other_best): (&str, Power),
    hours: Option<(String, String)>,
    costs: Option<String>,
    units: UnitSystem,
) -> String {
    let (own, other) = (short(name), short(other_name));
    let brings = if other_best >= best {
        let power = &number::power(other_best - best, units);
        BringsMore { other, power, own }.said()
    } else {
        let power = &number::power(best - other_best, units);
        BringsLess { other, power, own }.said()
    };
    let mut told = vec![brings];
    told.extend(hours.map(|(own, other)| {
        JobTakes {
            other: &other,
            own: &own,
        }
        .said()
    }));
    told.extend(costs);
    clauses(&told)
}

/// A difference of prices, as a clause.
pub fn costs(difference: f64, currency: Option<&str>) -> String {
    let amount = &number::money(difference.abs(), currency);
    if difference >= 0.0 {
        costs_more(amount)
    } else {
        costs_less(amount)
    }
}
