//! Turning shafts, and units.

use super::Outcome;
use crate::inputs::{Point, Problem};
use farend_core::drive::{Drive, Rate};
use farend_core::hookup::PtoEnd;
use farend_core::machine::{Aspiration, Engine, Pto};
use farend_core::physics::joint::speed_extremes;
use farend_core::quantity::{AngularSpeed, Power, Torque};
use farend_core::source::Source;
use farend_core::spread::{Corner, Scenario, Spread};
use farend_core::stage::Stage;
use farend_tests::most;
use farend_tests::quantity::Quantity;

pub(super) fn convert(point: &Point<'_>) -> Result<Outcome, Problem> {
    let quantity = point.quantity("from")?.ok_or("from is missing")?;
    Ok(Outcome::Results(vec![("to", quantity)]))
}

pub(super) fn shaft_power(point: &Point<'_>) -> Result<Outcome, Problem> {
    let power = point.get::<Torque>("torque")? * point.get::<AngularSpeed>("speed")?;
    Ok(Outcome::Results(vec![("power", Quantity::Power(power))]))
}

pub(super) fn shaft_speed(point: &Point<'_>) -> Result<Outcome, Problem> {
    let speed = point.get::<Power>("power")? / point.get::<Torque>("torque")?;
    Ok(Outcome::Results(vec![("speed", Quantity::Speed(speed))]))
}

pub(super) fn shaft_torque(point: &Point<'_>) -> Result<Outcome, Problem> {
    let drive = Drive {
        rate: Rate::Turning(point.get("speed")?),
        power: point.get("power")?,
    };
    Ok(Outcome::Results(vec![("torque", drive.effort().into())]))
}

pub(super) fn joint_speeds(point: &Point<'_>) -> Result<Outcome, Problem> {
    let speed: AngularSpeed = point.get("speed")?;
    let (slowest, fastest) = speed_extremes(speed, point.number("angle_deg")?.to_radians());
    Ok(Outcome::Results(vec![
        ("slowest", Quantity::Speed(slowest)),
        ("fastest", Quantity::Speed(fastest)),
    ]))
}

/// Fastest less slowest, over the driving speed.
pub(super) fn joint_fluctuation(point: &Point<'_>) -> Result<Outcome, Problem> {
    let speed = AngularSpeed::rpm(540.0);
    let (slowest, fastest) = speed_extremes(speed, point.number("angle_deg")?.to_radians());
    let fluctuation = (fastest - slowest) / speed;
    Ok(Outcome::Results(vec![(
        "fluctuation",
        Quantity::Ratio(fluctuation),
    )]))
}

/// An engine at rated speed behind a train without a test and without a rating.
pub(super) fn pto_power(point: &Point<'_>) -> Result<Outcome, Problem> {
    let speed = AngularSpeed::rpm(2200.0);
    let engine = Engine {
        net: Spread::exact(point.get("engine")?, Source::Own),
        rated: speed,
        lowest: speed,
        curve: None,
        aspiration: Aspiration::Natural,
    };
    let pto = Pto {
        rated: AngularSpeed::rpm(540.0),
        engine_speed: speed,
        tested: None,
        rating: None,
        end: PtoEnd::default(),
    };
    let stages = [Stage::Gear(pto.train(&engine))];
    let delivered = |scenario: Scenario| {
        let available = engine.net_at(speed).at(scenario);
        most(&stages, available, speed, Corner::all(scenario))
            .delivered()
            .map(|drive| Quantity::Power(drive.power))
            .ok_or("the PTO train hands nothing on")
    };
    Ok(Outcome::Results(vec![
        ("low", delivered(Scenario::Low)?),
        ("likely", delivered(Scenario::Likely)?),
        ("high", delivered(Scenario::High)?),
    ]))
}
