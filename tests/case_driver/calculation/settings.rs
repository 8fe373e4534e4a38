//! What a user may turn.

use super::{Outcome, work};
use crate::inputs::{Point, Problem};
use farend_core::settings::{OilSettings, Settings};
use farend_tests::demo;
use farend_tests::quantity::Quantity;

/// Settings, as far as they are given.
pub(super) fn given(point: &Point<'_>) -> Result<Settings, Problem> {
    Ok(Settings {
        economy: false,
        engine_power: point.get_if_any("engine_power")?,
        engine_speed: point.get_if_any("engine_speed")?,
        own: OilSettings {
            flow: point.get_if_any("own_flow")?,
            relief: point.get_if_any("own_relief")?,
        },
        pack: OilSettings {
            flow: point.get_if_any("pack_flow")?,
            relief: point.get_if_any("pack_relief")?,
        },
        oil: point.get_if_any("oil")?,
        outlet: None,
        grade: None,
        altitude: point.get_if_any("altitude")?,
        air: point.get_if_any("air")?,
        ground_speed: point.get_if_any("ground_speed")?,
        slope: if_any(point, "slope")?,
        ground: None,
        depth: point.get_if_any("depth")?,
        density: point.get_if_any("density")?,
        job: work::job(point)?,
    })
}

/// The settings of a machine of the built-in yard.
pub(super) fn settings(point: &Point<'_>) -> Result<Outcome, Problem> {
    let settings = given(point)?;
    let yard = demo();
    let machine = yard
        .machine(point.text("machine")?)
        .ok_or("the demo has no such machine")?;
    Ok(match settings.check(machine) {
        Err(faults) => Outcome::Refused(faults),
        Ok(()) => Outcome::Results(vec![(
            "engine_speed",
            Quantity::Speed(settings.engine_speed_for(machine)),
        )]),
    })
}

/// A plain number, where it is there.
fn if_any(point: &Point<'_>, name: &str) -> Result<Option<f64>, Problem> {
    let number = point.number_or(name, f64::MIN)?;
    Ok((number != f64::MIN).then_some(number))
}
