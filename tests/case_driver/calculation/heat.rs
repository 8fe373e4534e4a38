//! Heat in an oil circuit.

use super::Outcome;
use crate::inputs::{Point, Problem};
use farend_core::physics::heat::{self, Warming};
use farend_core::quantity::{Area, FilmCoefficient, Power, Temperature, Time};
use farend_tests::quantity::Quantity;

pub(super) fn energy(point: &Point<'_>) -> Result<Outcome, Problem> {
    let energy = point.get::<Power>("power")? * point.get::<Time>("time")?;
    Ok(Outcome::Results(vec![("energy", Quantity::Energy(energy))]))
}

/// By a named rule, or by a coefficient.
fn film(point: &Point<'_>) -> Result<FilmCoefficient, Problem> {
    match point.get_if_any("film")? {
        Some(film) => Ok(film),
        None => match point.text("rule")? {
            "horsepower" => Ok(heat::still_air_by_horsepower_rule()),
            "btu" => Ok(heat::still_air_by_btu_rule()),
            other => Err(format!("{other} is no rule")),
        },
    }
}

pub(super) fn tank_loss(point: &Point<'_>) -> Result<Outcome, Problem> {
    let loss = heat::natural_loss(
        film(point)?,
        point.get("area")?,
        point.get("oil")?,
        point.get("air")?,
    );
    Ok(Outcome::Results(vec![("loss", Quantity::Power(loss))]))
}

pub(super) fn steady_oil(point: &Point<'_>) -> Result<Outcome, Problem> {
    let shed = film(point)? * point.get::<Area>("area")?;
    let oil = heat::steady_temperature(point.get("heat")?, shed, point.get("air")?);
    Ok(Outcome::Results(vec![("oil", Quantity::Temperature(oil))]))
}

/// From a temperature, where one is given, and else from the ice point.
pub(super) fn oil_after_drop(point: &Point<'_>) -> Result<Outcome, Problem> {
    let rise = heat::adiabatic_rise(
        point.get("drop")?,
        point.get("density")?,
        point.get("specific_heat")?,
    );
    let before = point.get_if_any("before")?;
    let before = before.unwrap_or(Temperature::celsius(0.0));
    Ok(Outcome::Results(vec![
        ("rise", Quantity::Difference(rise)),
        ("after", Quantity::Temperature(before + rise)),
    ]))
}

/// With the specific heat of mineral oil.
pub(super) fn tank_capacity(point: &Point<'_>) -> Result<Outcome, Problem> {
    let capacity = heat::heat_capacity(
        point.get("volume")?,
        point.get("density")?,
        heat::oil_specific_heat(),
    );
    Ok(Outcome::Results(vec![(
        "capacity",
        Quantity::HeatCapacity(capacity),
    )]))
}

/// In air of the oil's own temperature, where none is given.
pub(super) fn warming(point: &Point<'_>) -> Result<Outcome, Problem> {
    let start = point.get("start")?;
    let warming = Warming {
        start,
        air: point.get_if_any("air")?.unwrap_or(start),
        heat: point.get("heat")?,
        shed: point.get("shed")?,
        capacity: point.get("capacity")?,
    };
    let time = warming
        .time_to(point.get("limit")?)
        .ok_or("never reaches it")?;
    Ok(Outcome::Results(vec![("time", Quantity::Time(time))]))
}

pub(super) fn cooler(point: &Point<'_>) -> Result<Outcome, Problem> {
    let (limit, air) = (point.get("limit")?, point.get("air")?);
    let duty = heat::cooler_duty(point.get("heat")?, point.get("shed")?, limit, air);
    let size = heat::cooler_size(duty, limit, air);
    Ok(Outcome::Results(vec![
        ("duty", Quantity::Power(duty)),
        ("size", Quantity::Conductance(size)),
    ]))
}

pub(super) fn tank_for(point: &Point<'_>) -> Result<Outcome, Problem> {
    let flow = point.get("flow")?;
    Ok(Outcome::Results(vec![
        ("smallest", Quantity::Volume(heat::smallest_tank(flow))),
        ("usual", Quantity::Volume(heat::usual_tank(flow))),
    ]))
}

pub(super) fn tank_surface(point: &Point<'_>) -> Result<Outcome, Problem> {
    let surface = heat::tank_surface(point.get("volume")?);
    Ok(Outcome::Results(vec![("surface", Quantity::Area(surface))]))
}
