//! Cardan joints.

use super::Outcome;
use crate::inputs::{Point, Problem};
use farend_core::physics::joint::{self, AngleAdvice};
use farend_tests::quantity::Quantity;

fn angle(point: &Point<'_>, name: &str) -> Result<f64, Problem> {
    Ok(point.number(name)?.to_radians())
}

fn one(name: &'static str, number: f64) -> Outcome {
    Outcome::Results(vec![(name, Quantity::Ratio(number))])
}

pub(super) fn joint_ratio(point: &Point<'_>) -> Result<Outcome, Problem> {
    let ratio = joint::speed_ratio_at(angle(point, "angle_deg")?, angle(point, "turned_deg")?);
    Ok(one("ratio", ratio))
}

pub(super) fn joint_total_fluctuation(point: &Point<'_>) -> Result<Outcome, Problem> {
    let fluctuation = joint::total_fluctuation(angle(point, "angle_deg")?);
    Ok(one("fluctuation", fluctuation))
}

pub(super) fn joint_angle(point: &Point<'_>) -> Result<Outcome, Problem> {
    let angle = joint::angle_for_fluctuation(point.number("fluctuation")?);
    Ok(one("angle_deg", angle.to_degrees()))
}

pub(super) fn two_joints(point: &Point<'_>) -> Result<Outcome, Problem> {
    let fluctuation = joint::two_joints(
        angle(point, "first_deg")?,
        angle(point, "second_deg")?,
        angle(point, "phase_deg")?,
    );
    Ok(one("fluctuation", fluctuation))
}

pub(super) fn joint_efficiency(point: &Point<'_>) -> Result<Outcome, Problem> {
    let angle = angle(point, "angle_deg")?;
    let efficiency = |friction| Quantity::Ratio(joint::efficiency(angle, friction));
    Ok(Outcome::Results(vec![
        ("low", efficiency(joint::FRICTION.high)),
        ("likely", efficiency(joint::FRICTION.likely)),
        ("high", efficiency(joint::FRICTION.low)),
    ]))
}

/// The largest angle of each advice.
pub(super) fn joint_angles(_: &Point<'_>) -> Result<Outcome, Problem> {
    let degrees = |advice: AngleAdvice| {
        let limit = advice.up_to().ok_or("no angle")?;
        Ok::<_, Problem>(Quantity::Ratio(limit.to_degrees()))
    };
    Ok(Outcome::Results(vec![
        ("fine", degrees(AngleAdvice::Fine)?),
        ("steady", degrees(AngleAdvice::Steady)?),
        ("brief", degrees(AngleAdvice::Brief)?),
        ("wide_angle", degrees(AngleAdvice::NeedsWideAngle)?),
    ]))
}
