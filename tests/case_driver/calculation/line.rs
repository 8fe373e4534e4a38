//! Oil in hoses and couplers.

use super::Outcome;
use crate::inputs::{Point, Problem};
use crate::quantity::Quantity;
use farend_core::physics::line::{self, Pipe};
use farend_core::physics::oil::Oil;
use farend_core::quantity::{Density, Flow, Length, Velocity};

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
