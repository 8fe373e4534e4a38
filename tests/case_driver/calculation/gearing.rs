//! Gears, clutches, shaft types, hitches, and rotors that throw.

use super::Outcome;
use crate::inputs::{Point, Problem};
use farend_core::physics::balance::{AxleLoads, End, LEAST_SHARE};
use farend_core::physics::hitch::Category;
use farend_core::physics::shaft::ShaftType;
use farend_core::physics::{gearing, throwing};
use farend_core::quantity::AngularSpeed;
use farend_tests::quantity::Quantity;

pub(super) fn worm(point: &Point<'_>) -> Result<Outcome, Problem> {
    let lead = point.number("lead_deg")?.to_radians();
    let efficiency = gearing::worm_efficiency(lead, point.number("friction")?);
    Ok(Outcome::Results(vec![(
        "efficiency",
        Quantity::Ratio(efficiency),
    )]))
}

pub(super) fn gear_heat(point: &Point<'_>) -> Result<Outcome, Problem> {
    let heat = gearing::heat(point.get("power")?, point.number("efficiency")?);
    Ok(Outcome::Results(vec![("heat", Quantity::Power(heat))]))
}

pub(super) fn slip_clutch(point: &Point<'_>) -> Result<Outcome, Problem> {
    let torque = gearing::slip_torque(point.get("rated")?, point.number("factor")?);
    let heat = gearing::slip_heat(torque, point.get("driving")?, point.get("driven")?);
    Ok(Outcome::Results(vec![
        ("torque", Quantity::Torque(torque)),
        ("heat", Quantity::Power(heat)),
    ]))
}

pub(super) fn slip_clutch_above(_: &Point<'_>) -> Result<Outcome, Problem> {
    Ok(Outcome::Results(vec![(
        "power",
        Quantity::Power(gearing::slip_clutch_above()),
    )]))
}

pub(super) fn shaft_type(point: &Point<'_>) -> Result<Outcome, Problem> {
    let of_iso_500 = match point.text("type")? {
        "1" => ShaftType::One,
        "2" => ShaftType::Two,
        "3" => ShaftType::Three,
        "4" => ShaftType::Four,
        other => return Err(format!("{other} is no type of shaft")),
    };
    Ok(Outcome::Results(vec![
        ("diameter", Quantity::Length(of_iso_500.diameter())),
        ("splines", Quantity::Ratio(of_iso_500.splines().into())),
        ("speed", Quantity::Speed(of_iso_500.rated_speed())),
        ("power", Quantity::Power(of_iso_500.highest_power())),
        ("torque", Quantity::Torque(of_iso_500.highest_torque())),
    ]))
}

pub(super) fn hitch(point: &Point<'_>) -> Result<Outcome, Problem> {
    let category = match point.text("category")? {
        "1" => Category::One,
        "2" => Category::Two,
        "3" => Category::Three,
        "4N" => Category::FourNarrow,
        other => return Err(format!("{other} is no category")),
    };
    Ok(Outcome::Results(vec![
        ("pin", Quantity::Length(category.lower_pin())),
        ("power", Quantity::Power(category.highest_power())),
    ]))
}

pub(super) fn rear_share(point: &Point<'_>) -> Result<Outcome, Problem> {
    let loads = AxleLoads {
        front: point.get("front")?,
        rear: point.get("rear")?,
    };
    let share = loads.share(End::Rear);
    Ok(Outcome::Results(vec![
        ("share", Quantity::Ratio(share)),
        ("over_the_least", Quantity::Ratio(share / LEAST_SHARE)),
    ]))
}

pub(super) fn throwing(point: &Point<'_>) -> Result<Outcome, Problem> {
    let speed: AngularSpeed = point.get("speed")?;
    let tip = throwing::tip_speed(speed, point.get("diameter")?);
    let bound = throwing::casting_bound(tip);
    let ratio = throwing::casting_ratio(speed, point.get("rated")?);
    Ok(Outcome::Results(vec![
        ("tip", Quantity::Velocity(tip)),
        ("bound", Quantity::Length(bound)),
        ("ratio", Quantity::Ratio(ratio)),
    ]))
}
