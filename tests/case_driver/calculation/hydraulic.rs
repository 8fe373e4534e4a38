//! Pumps, motors and steering's share.

use super::Outcome;
use crate::inputs::{Point, Problem};
use farend_core::defaults::rated_viscosity;
use farend_core::drive::{Drive, Rate};
use farend_core::physics::displacement::RatedPoint;
use farend_core::physics::hydraulic as physics;
use farend_core::quantity::{AngularSpeed, Displacement, Flow, Power, Pressure, Torque};
use farend_core::source::Source;
use farend_core::spread::{Corner, Spread};
use farend_core::stage::motor::Motor;
use farend_core::stage::pump::{Pump, PumpSize};
use farend_core::stage::steering::Steering;
use farend_core::stage::{Stage, StagePhysics};
use farend_tests::quantity::Quantity;
use farend_tests::{most, with_rated_oil};

fn exact<T: Copy>(value: T) -> Spread<T> {
    Spread::exact(value, Source::Own)
}

pub(super) fn hydraulic_power(point: &Point<'_>) -> Result<Outcome, Problem> {
    let power = physics::hydraulic_power(point.get("pressure")?, point.get("flow")?);
    Ok(Outcome::Results(vec![("power", Quantity::Power(power))]))
}

pub(super) fn pump_efficiency(point: &Point<'_>) -> Result<Outcome, Problem> {
    let displacement: Displacement = point.get("displacement")?;
    let volumetric =
        physics::pump_volumetric_efficiency(displacement, point.get("speed")?, point.get("flow")?);
    let mut results = vec![("volumetric", Quantity::Ratio(volumetric))];
    if let Some(torque) = point.get_if_any::<Torque>("torque")? {
        let pressure: Pressure = point.get("pressure")?;
        let hydro_mechanical =
            physics::pump_hydro_mechanical_efficiency(displacement, pressure, torque);
        results.extend([
            (
                "theoretical_torque",
                Quantity::Torque(pressure * displacement),
            ),
            ("hydro_mechanical", Quantity::Ratio(hydro_mechanical)),
            ("overall", Quantity::Ratio(volumetric * hydro_mechanical)),
        ]);
    }
    Ok(Outcome::Results(results))
}

/// A fixed pump whose efficiencies hold at this speed and pressure.
fn pump(
    size: PumpSize,
    (speed, pressure): (AngularSpeed, Pressure),
    (volumetric, hydro_mechanical): (f64, f64),
) -> Pump {
    Pump {
        size,
        rated: RatedPoint {
            speed,
            pressure,
            viscosity: rated_viscosity(),
        },
        volumetric: exact(volumetric),
        hydro_mechanical: exact(hydro_mechanical),
        relief: exact(pressure),
        demand: None,
    }
}

/// More than any pump of these cases needs, so that each works at its relief pressure.
const PLENTY: f64 = 1e3;

pub(super) fn pump_flow(point: &Point<'_>) -> Result<Outcome, Problem> {
    let speed = point.get("speed")?;
    let pump = pump(
        PumpSize::Displacement(point.get("displacement")?),
        (speed, Pressure::bar(150.0)),
        (point.number("volumetric")?, 1.0),
    );
    let ledger = most(
        &[Stage::Pump(pump)],
        Power::kilowatts(PLENTY),
        speed,
        Corner::LIKELY,
    );
    let delivered = ledger.delivered().ok_or("the pump gives nothing")?;
    Ok(Outcome::Results(vec![(
        "flow",
        delivered.rate.quantity().into(),
    )]))
}

/// A motor whose efficiencies hold at this flow and pressure, and are 1 where none are given.
pub(super) fn motor(point: &Point<'_>) -> Result<Outcome, Problem> {
    let displacement: Displacement = point.get("displacement")?;
    let (flow, pressure): (Flow, Pressure) = (point.get("flow")?, point.get("pressure")?);
    let volumetric = point.number_or("volumetric", 1.0)?;
    let one = AngularSpeed::radians_per_second(1.0);
    let motor = Motor {
        displacement,
        rated: RatedPoint {
            // ω = Q·ηv/(V/2π)
            speed: one * (flow * volumetric / (displacement * one)),
            pressure,
            viscosity: rated_viscosity(),
        },
        volumetric: exact(volumetric),
        hydro_mechanical: exact(point.number_or("hydro_mechanical", 1.0)?),
        highest: Pressure::bar(1000.0),
    };
    let takes = Drive {
        rate: Rate::Flowing(flow),
        power: pressure * flow,
    };
    let passed = motor.pass(takes, &with_rated_oil(Corner::LIKELY));
    let gives = passed.map_err(|stall| format!("{stall:?}"))?.gives;
    Ok(Outcome::Results(vec![
        ("speed", gives.rate.quantity().into()),
        ("torque", gives.effort().into()),
        ("power", Quantity::Power(gives.power)),
    ]))
}

/// A pump that turns a motor at a wished speed, at relief pressure and with power to spare.
pub(super) fn pump_and_motor(point: &Point<'_>) -> Result<Outcome, Problem> {
    let pump_displacement: Displacement = point.get("pump_displacement")?;
    let (speed, pressure): (AngularSpeed, Pressure) =
        (point.get("pump_speed")?, point.get("pressure")?);
    let pump_volumetric = point.number("pump_volumetric")?;
    let pump = pump(
        PumpSize::Displacement(pump_displacement),
        (speed, pressure),
        (
            pump_volumetric,
            point.number_or("pump_hydro_mechanical", 1.0)?,
        ),
    );
    let volumetric = point.number("motor_volumetric")?;
    let motor_speed: AngularSpeed = point.get("motor_speed")?;
    let displacement = physics::motor_displacement(
        pump_displacement * speed * pump_volumetric,
        motor_speed,
        volumetric,
    );
    let motor = Motor {
        displacement,
        rated: RatedPoint {
            speed: motor_speed,
            pressure,
            viscosity: rated_viscosity(),
        },
        volumetric: exact(volumetric),
        hydro_mechanical: exact(point.number("motor_hydro_mechanical")?),
        highest: Pressure::bar(1000.0),
    };
    let ledger = most(
        &[Stage::Pump(pump), Stage::Motor(motor)],
        Power::kilowatts(PLENTY),
        speed,
        Corner::LIKELY,
    );
    let delivered = ledger.delivered().ok_or("the motor stands still")?;
    Ok(Outcome::Results(vec![
        ("motor_displacement", Quantity::Displacement(displacement)),
        ("torque", delivered.effort().into()),
        ("speed", delivered.rate.quantity().into()),
        ("pump_power", Quantity::Power(ledger.taken())),
        ("motor_power", Quantity::Power(delivered.power)),
    ]))
}

/// A sheet's flow at an engine speed, less a constant share.
pub(super) fn flow_after_steering(point: &Point<'_>) -> Result<Outcome, Problem> {
    let size = PumpSize::Sheet {
        flow: exact(point.get::<Flow>("sheet_flow")?),
        less: None,
        volumetric: 1.0,
    };
    let pump = pump(
        size,
        (point.get("sheet_speed")?, Pressure::bar(150.0)),
        (1.0, 1.0),
    );
    let steering = Steering::FixedPriority(exact(point.get("share")?));
    let ledger = most(
        &[Stage::Pump(pump), Stage::Steering(steering)],
        Power::kilowatts(PLENTY),
        point.get("speed")?,
        Corner::LIKELY,
    );
    let delivered = ledger.delivered().ok_or("steering takes it all")?;
    Ok(Outcome::Results(vec![(
        "flow",
        delivered.rate.quantity().into(),
    )]))
}
