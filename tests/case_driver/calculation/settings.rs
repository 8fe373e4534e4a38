//! What a user may turn.

use super::Outcome;
use crate::inputs::{Point, Problem};
use farend_core::settings::{OilSettings, Settings};
use farend_tests::demo;
use farend_tests::quantity::Quantity;

/// The settings of a machine of the built-in yard.
pub(super) fn settings(point: &Point<'_>) -> Result<Outcome, Problem> {
    let settings = Settings {
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
    };
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
