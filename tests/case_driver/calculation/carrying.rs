//! What is lifted and what the axles carry, and a joint shaft behind a hitch that goes up and down.

use super::Outcome;
use crate::inputs::{Point, Problem};
use farend_core::physics::balance::{AxleLoads, End};
use farend_core::physics::joint_shaft::{Stance, Travel, least_clearance, least_overlap};
use farend_core::physics::lift;
use farend_tests::quantity::Quantity;

pub(super) fn lifts_at(point: &Point<'_>) -> Result<Outcome, Problem> {
    let lifts = lift::lifts_at(
        point.get("lift")?,
        point.get("arm")?,
        point.get("measured")?,
        point.get("centre")?,
    );
    Ok(Outcome::Results(vec![("lifts", Quantity::Mass(lifts))]))
}

fn end(point: &Point<'_>) -> Result<End, Problem> {
    match point.text("end")? {
        "front" => Ok(End::Front),
        "rear" => Ok(End::Rear),
        other => Err(format!("{other} is no end")),
    }
}

fn alone(point: &Point<'_>) -> Result<AxleLoads, Problem> {
    Ok(AxleLoads {
        front: point.get("front")?,
        rear: point.get("rear")?,
    })
}

/// Both axles with a mass hung beyond one, and the share of the other one.
pub(super) fn axle_loads(point: &Point<'_>) -> Result<Outcome, Problem> {
    let end = end(point)?;
    let loads = alone(point)?.with(
        point.get("mass")?,
        end,
        point.get("out")?,
        point.get("wheelbase")?,
    );
    Ok(Outcome::Results(vec![
        ("front", Quantity::Mass(loads.front)),
        ("rear", Quantity::Mass(loads.rear)),
        ("other_share", Quantity::Ratio(loads.share(end.other()))),
    ]))
}

pub(super) fn ballast(point: &Point<'_>) -> Result<Outcome, Problem> {
    let mass = alone(point)?.ballast(
        point.number("share")?,
        end(point)?,
        point.get("out")?,
        point.get("wheelbase")?,
    );
    Ok(Outcome::Results(vec![("ballast", Quantity::Mass(mass))]))
}

pub(super) fn joint_shaft(point: &Point<'_>) -> Result<Outcome, Problem> {
    let stance = Stance {
        along: point.get("along")?,
        above: point.get("above")?,
    };
    Ok(Outcome::Results(vec![
        ("length", Quantity::Length(stance.length())),
        ("angle_deg", Quantity::Ratio(stance.angle().to_degrees())),
    ]))
}

pub(super) fn joint_shaft_travel(point: &Point<'_>) -> Result<Outcome, Problem> {
    let along = point.get("along")?;
    let stance = |above| Stance { along, above };
    let travel = Travel::between(stance(point.get("lowered")?), stance(point.get("lifted")?));
    let degrees = |angle: f64| Quantity::Ratio(angle.to_degrees());
    Ok(Outcome::Results(vec![
        ("shortest", Quantity::Length(travel.shortest)),
        ("longest", Quantity::Length(travel.longest)),
        ("at_work_deg", degrees(travel.at_work)),
        ("steepest_deg", degrees(travel.steepest)),
    ]))
}

pub(super) fn joint_shaft_limits(_: &Point<'_>) -> Result<Outcome, Problem> {
    Ok(Outcome::Results(vec![
        ("overlap", Quantity::Length(least_overlap())),
        ("clearance", Quantity::Length(least_clearance())),
    ]))
}
