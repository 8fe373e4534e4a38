//! Figures that stand in where a yard has none.

use super::{Outcome, three};
use crate::inputs::{Point, Problem};
use farend_core::defaults;
use farend_core::physics::shaft::ShaftType;
use farend_core::quantity::Temperature;
use farend_core::spread::Spread;
use farend_core::stage::gear::GearKind;
use farend_tests::quantity::Quantity;

fn product(a: Spread<f64>, b: Spread<f64>) -> Spread<f64> {
    Spread::new(
        a.low * b.low,
        a.likely * b.likely,
        a.high * b.high,
        a.source,
    )
}

fn pump() -> Spread<f64> {
    product(defaults::PUMP_VOLUMETRIC, defaults::PUMP_HYDRO_MECHANICAL)
}

fn motor() -> Spread<f64> {
    product(defaults::MOTOR_VOLUMETRIC, defaults::MOTOR_HYDRO_MECHANICAL)
}

pub(super) fn default_gear(point: &Point<'_>) -> Result<Outcome, Problem> {
    let word = point.text("kind")?;
    let mut kinds = GearKind::ALL.iter();
    let kind = kinds
        .find(|kind| kind.word() == word)
        .ok_or_else(|| format!("{word} is no kind of gear"))?;
    Ok(three(defaults::gear_efficiency(*kind), Quantity::Ratio))
}

/// Overall efficiency.
pub(super) fn default_pump(_: &Point<'_>) -> Result<Outcome, Problem> {
    Ok(three(pump(), Quantity::Ratio))
}

/// Overall efficiency.
pub(super) fn default_motor(_: &Point<'_>) -> Result<Outcome, Problem> {
    Ok(three(motor(), Quantity::Ratio))
}

/// Part of the power that both hand on together.
pub(super) fn default_pump_and_motor(_: &Point<'_>) -> Result<Outcome, Problem> {
    Ok(three(product(pump(), motor()), Quantity::Ratio))
}

pub(super) fn default_coupler(_: &Point<'_>) -> Result<Outcome, Problem> {
    let drop = defaults::coupler_drop();
    Ok(Outcome::Results(vec![
        ("flow", Quantity::Flow(defaults::coupler_flow())),
        ("highest_drop", Quantity::Pressure(drop.high)),
        ("likely_drop", Quantity::Pressure(drop.likely)),
    ]))
}

pub(super) fn default_oil(_: &Point<'_>) -> Result<Outcome, Problem> {
    let viscosity = defaults::viscosity(&defaults::oil(), Temperature::celsius(40.0));
    Ok(Outcome::Results(vec![
        ("thickest", Quantity::Viscosity(viscosity.high)),
        ("thinnest", Quantity::Viscosity(viscosity.low)),
        ("density", Quantity::Density(defaults::oil().density_at_15)),
    ]))
}

pub(super) fn default_shaft_rating(point: &Point<'_>) -> Result<Outcome, Problem> {
    let kind = match point.text_if_any("type")? {
        None => None,
        Some(word) => {
            let mut kinds = ShaftType::ALL.iter().copied();
            let kind = kinds.find(|kind| kind.word() == word);
            Some(kind.ok_or_else(|| format!("{word} is no type of shaft"))?)
        }
    };
    let rating = defaults::shaft_rating(kind, point.get("speed")?).ok_or("no rating is known")?;
    Ok(three(rating, Quantity::Power))
}
