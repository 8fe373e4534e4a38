//! The engine's power, what its air leaves of it and what driving takes.

use super::{Outcome, three};
use crate::inputs::{Point, Problem};
use farend_core::defaults;
use farend_core::machine::{Aspiration, Engine};
use farend_core::physics::derate::{self, Air, PlainRule};
use farend_core::physics::driving::{self, Travel};
use farend_core::physics::engine::{Curve, net_from_gross};
use farend_core::quantity::{AngularSpeed, Force, Mass, Power};
use farend_core::source::Source;
use farend_core::spread::Spread;
use farend_tests::quantity::Quantity;

pub(super) fn net_power(point: &Point<'_>) -> Result<Outcome, Problem> {
    let net = net_from_gross(point.get("gross")?, point.number("factor")?);
    Ok(Outcome::Results(vec![("net", Quantity::Power(net))]))
}

/// A curve of three points.
pub(super) fn curve_power(point: &Point<'_>) -> Result<Outcome, Problem> {
    let curve = Curve::new(vec![
        (point.get("first_speed")?, point.get("first_power")?),
        (point.get("second_speed")?, point.get("second_power")?),
        (point.get("third_speed")?, point.get("third_power")?),
    ])
    .map_err(|faults| format!("{faults:?}"))?;
    let power = curve
        .power_at(point.get("speed")?)
        .ok_or("outside the curve")?;
    Ok(Outcome::Results(vec![("power", Quantity::Power(power))]))
}

/// The ISO 3046 form. What isn't given is as in the reference, or without loss.
pub(super) fn derated(point: &Point<'_>) -> Result<Outcome, Problem> {
    let exponents = match point.text("engine")? {
        "naturally_aspirated" => derate::NATURALLY_ASPIRATED,
        "turbocharged" => derate::TURBOCHARGED,
        "turbocharged_cooled" => derate::TURBOCHARGED_COOLED,
        other => return Err(format!("{other} is no kind of engine")),
    };
    let reference = Air::reference();
    let site = Air {
        pressure: point.get("air")?,
        temperature: point.get("air_temperature")?,
        humidity: point.number_or("humidity", reference.humidity)?,
        coolant: point
            .get_if_any("coolant_temperature")?
            .unwrap_or(reference.coolant),
    };
    let indicated = derate::indicated_ratio(exponents, site);
    let factor = derate::brake_factor(indicated, point.number_or("mechanical_efficiency", 1.0)?);
    let rated: Power = point.get("rated")?;
    Ok(Outcome::Results(vec![
        ("indicated_ratio", Quantity::Ratio(indicated)),
        ("factor", Quantity::Ratio(factor)),
        ("power", Quantity::Power(rated * factor)),
    ]))
}

pub(super) fn saturation_pressure(point: &Point<'_>) -> Result<Outcome, Problem> {
    let pressure = derate::saturation_pressure(point.get("temperature")?);
    Ok(Outcome::Results(vec![(
        "pressure",
        Quantity::Pressure(pressure),
    )]))
}

pub(super) fn standard_pressure(point: &Point<'_>) -> Result<Outcome, Problem> {
    let pressure = derate::standard_pressure(point.get("altitude")?);
    Ok(Outcome::Results(vec![(
        "pressure",
        Quantity::Pressure(pressure),
    )]))
}

/// The plain rules.
pub(super) fn plainly_derated(point: &Point<'_>) -> Result<Outcome, Problem> {
    let rated = point.get("rated")?;
    let power = match point.text("rule")? {
        "altitude" => PlainRule::altitude().left_of(rated, point.get("altitude")?),
        "petrol" => PlainRule::petrol().left_of(rated, point.get("air_temperature")?),
        "diesel" => PlainRule::diesel().left_of(rated, point.get("air_temperature")?),
        other => return Err(format!("{other} is no rule")),
    };
    Ok(Outcome::Results(vec![("power", Quantity::Power(power))]))
}

/// What isn't given is nothing, and the transmission without loss.
pub(super) fn driving_power(point: &Point<'_>) -> Result<Outcome, Problem> {
    let travel = Travel {
        mass: point.get_if_any("mass")?.unwrap_or(Mass::ZERO),
        rolling: point.number_or("rolling", 0.0)?,
        slope: point.number_or("slope", 0.0)?,
        pushing: point.get_if_any("pushing")?.unwrap_or(Force::ZERO),
        speed: point.get("speed")?,
    };
    let power = travel.power(point.number_or("transmission", 1.0)?);
    Ok(Outcome::Results(vec![
        ("force", Quantity::Force(travel.force())),
        ("power", Quantity::Power(power)),
    ]))
}

pub(super) fn default_driving(point: &Point<'_>) -> Result<Outcome, Problem> {
    let spread = match point.text("figure")? {
        "rolling_firm" => driving::ROLLING_FIRM,
        "rolling_grass" => driving::ROLLING_GRASS,
        "rolling_loose" => driving::ROLLING_LOOSE,
        "gear_transmission" => driving::GEAR_TRANSMISSION,
        "hydrostatic_transmission" => driving::HYDROSTATIC_TRANSMISSION,
        other => return Err(format!("{other} is no figure of driving")),
    };
    Ok(three(spread, Quantity::Ratio))
}

/// Net over gross power.
pub(super) fn default_net_of_gross(_: &Point<'_>) -> Result<Outcome, Problem> {
    Ok(three(defaults::NET_OF_GROSS, Quantity::Ratio))
}

/// The part of its power that a site's air leaves an engine.
pub(super) fn left_by_air(point: &Point<'_>) -> Result<Outcome, Problem> {
    let word = point.text("aspiration")?;
    let mut aspirations = Aspiration::ALL.iter();
    let aspiration = aspirations
        .find(|aspiration| aspiration.word() == word)
        .ok_or_else(|| format!("{word} is no aspiration"))?;
    // Size and speed have no part in it.
    let speed = AngularSpeed::rpm(2200.0);
    let engine = Engine {
        net: Spread::exact(Power::kilowatts(50.0), Source::Own),
        rated: speed,
        lowest: speed,
        curve: None,
        aspiration: *aspiration,
    };
    let part = engine.left_by_air(point.get("altitude")?, point.get("air")?);
    Ok(Outcome::Results(vec![("part", Quantity::Ratio(part))]))
}
