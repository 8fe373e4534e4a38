//! Two machines beside each other, in words.

use crate::number;
use crate::text::sentences::short;
use farend_core::quantity::Power;
use farend_core::units::UnitSystem;

pub const TITLE: &str = "Beside another machine";
pub const OTHER: &str = "The other machine";
pub const NONE: &str = "none";
pub const NOTE: &str = "Both with the same implement and job, at the same place; the other machine's \
    speeds, flows and pressures as the yard has them.";
pub const JOB: &str = "the job";
pub const PRICE: &str = "Price";

/// What the other machine's gear brings at its best route, and what it costs.
pub fn difference(
    (name, best): (&str, Power),
    (other_name, other_best): (&str, Power),
    hours: Option<(String, String)>,
    price: Option<String>,
    units: UnitSystem,
) -> String {
    let (more, less) = if other_best >= best {
        (other_best - best, "more")
    } else {
        (best - other_best, "less")
    };
    let mut sentence = format!(
        "By its best route the {} brings {} {less} than the {}",
        short(other_name),
        number::power(more, units),
        short(name)
    );
    if let Some((own, other)) = hours {
        sentence.push_str(&format!("; the job takes {other} instead of {own}"));
    }
    if let Some(price) = price {
        sentence.push_str(&format!("; it costs {price}"));
    }
    sentence.push('.');
    sentence
}

/// A difference of prices.
pub fn price(difference: f64, currency: Option<&str>) -> String {
    let amount = number::money(difference.abs(), currency);
    if difference >= 0.0 {
        format!("{amount} more")
    } else {
        format!("{amount} less")
    }
}
