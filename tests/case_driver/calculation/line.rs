//! Oil in hoses and couplers.

use super::Outcome;
use crate::inputs::{Point, Problem};
use farend_core::physics::coupler::CouplerSize;
use farend_core::physics::line::{self, LineKind, Pipe};
use farend_core::physics::oil::{Grade, Oil};
use farend_core::physics::suction;
use farend_core::quantity::{Density, Flow, Length, Velocity};
use farend_tests::quantity::Quantity;

pub(super) fn friction_factor(point: &Point<'_>) -> Result<Outcome, Problem> {
    let factor = line::friction_factor(
        point.number("reynolds")?,
        point.number("relative_roughness")?,
    );
    Ok(Outcome::Results(vec![("factor", Quantity::Ratio(factor))]))
}

/// At a Reynolds number so high that it no longer counts.
pub(super) fn fully_rough_factor(point: &Point<'_>) -> Result<Outcome, Problem> {
    let factor = line::friction_factor(1e8, point.number("relative_roughness")?);
    Ok(Outcome::Results(vec![("factor", Quantity::Ratio(factor))]))
}

pub(super) fn line_velocity(point: &Point<'_>) -> Result<Outcome, Problem> {
    let pipe = smooth(point.get("bore")?, Length::ZERO);
    let velocity = pipe.velocity(point.get("flow")?);
    Ok(Outcome::Results(vec![(
        "velocity",
        Quantity::Velocity(velocity),
    )]))
}

pub(super) fn reynolds(point: &Point<'_>) -> Result<Outcome, Problem> {
    let pipe = smooth(point.get("bore")?, Length::ZERO);
    let reynolds = pipe.reynolds(flow(point, &pipe)?, point.get("viscosity")?);
    Ok(Outcome::Results(vec![(
        "reynolds",
        Quantity::Ratio(reynolds),
    )]))
}

pub(super) fn line_drop(point: &Point<'_>) -> Result<Outcome, Problem> {
    let pipe = smooth(point.get("bore")?, point.get("length")?);
    let drop = pipe.drop(
        flow(point, &pipe)?,
        point.get("viscosity")?,
        point.get("density")?,
    );
    Ok(Outcome::Results(vec![("drop", Quantity::Pressure(drop))]))
}

pub(super) fn oil_viscosity(point: &Point<'_>) -> Result<Outcome, Problem> {
    let oil = Oil {
        at_40: point.get("at_40")?,
        at_100: point.get("at_100")?,
        density_at_15: Density::ZERO,
    };
    let viscosity = oil.viscosity(point.get("temperature")?);
    Ok(Outcome::Results(vec![(
        "viscosity",
        Quantity::Viscosity(viscosity),
    )]))
}

/// The flow itself or, as some sources state it, from the mean velocity.
fn flow(point: &Point<'_>, pipe: &Pipe) -> Result<Flow, Problem> {
    match point.get_if_any::<Velocity>("velocity")? {
        None => point.get("flow"),
        // Q = v/v(1 m³/s) · 1 m³/s
        Some(velocity) => {
            let unit = Flow::cubic_metres_per_second(1.0);
            Ok(unit * (velocity / pipe.velocity(unit)))
        }
    }
}

pub(super) fn rated_drop(point: &Point<'_>) -> Result<Outcome, Problem> {
    let drop = line::rated_drop(
        point.get("rated_drop")?,
        point.get("rated_flow")?,
        point.get("flow")?,
    );
    Ok(Outcome::Results(vec![("drop", Quantity::Pressure(drop))]))
}

fn smooth(bore: Length, length: Length) -> Pipe {
    Pipe {
        bore,
        length,
        relative_roughness: 0.0,
    }
}

pub(super) fn fitting_drop(point: &Point<'_>) -> Result<Outcome, Problem> {
    let drop = line::fitting_drop(
        point.number("k")?,
        point.get("density")?,
        point.get("velocity")?,
    );
    Ok(Outcome::Results(vec![("drop", Quantity::Pressure(drop))]))
}

pub(super) fn orifice_flow(point: &Point<'_>) -> Result<Outcome, Problem> {
    let flow = line::orifice_flow(
        point.get("area")?,
        point.number("coefficient")?,
        point.get("drop")?,
        point.get("density")?,
    );
    Ok(Outcome::Results(vec![("flow", Quantity::Flow(flow))]))
}

pub(super) fn bore_for(point: &Point<'_>) -> Result<Outcome, Problem> {
    let bore = line::bore_for(point.get("flow")?, point.get("velocity")?);
    Ok(Outcome::Results(vec![("bore", Quantity::Length(bore))]))
}

pub(super) fn usual_velocities(point: &Point<'_>) -> Result<Outcome, Problem> {
    let kind = match point.text("line")? {
        "suction" => LineKind::Suction,
        "return" => LineKind::Return,
        "pressure" => LineKind::Pressure(point.get("working")?),
        other => return Err(format!("{other} is no line")),
    };
    let (from, to) = kind.usual_velocities();
    Ok(Outcome::Results(vec![
        ("from", Quantity::Velocity(from)),
        ("to", Quantity::Velocity(to)),
    ]))
}

pub(super) fn coupler_size(point: &Point<'_>) -> Result<Outcome, Problem> {
    let size = match point.text("size")? {
        "12.5" => CouplerSize::Size12,
        "20" => CouplerSize::Size20,
        other => return Err(format!("{other} is no size")),
    };
    let (flow, drop) = size.rated();
    Ok(Outcome::Results(vec![
        ("flow", Quantity::Flow(flow)),
        ("highest_drop", Quantity::Pressure(drop)),
    ]))
}

pub(super) fn suction(point: &Point<'_>) -> Result<Outcome, Problem> {
    let inlet = suction::inlet_pressure(
        point.get("atmosphere")?,
        point.get("line_drop")?,
        point.get("density")?,
        point.get("lift")?,
    );
    Ok(Outcome::Results(vec![
        ("inlet", Quantity::Pressure(inlet)),
        (
            "over_the_lowest",
            Quantity::Ratio(inlet / suction::lowest_inlet()),
        ),
    ]))
}

pub(super) fn oil_grade(point: &Point<'_>) -> Result<Outcome, Problem> {
    let word = point.text("grade")?;
    let mut grades = Grade::ALL.iter();
    let grade = grades
        .find(|grade| grade.word() == word)
        .ok_or_else(|| format!("{word} is no grade"))?;
    let (band, oil) = (grade.at_40(), grade.typical());
    Ok(Outcome::Results(vec![
        ("thinnest", Quantity::Viscosity(band.low)),
        ("thickest", Quantity::Viscosity(band.high)),
        ("at_40", Quantity::Viscosity(oil.at_40)),
        ("at_100", Quantity::Viscosity(oil.at_100)),
        ("density", Quantity::Density(oil.density_at_15)),
    ]))
}
