//! Pumps, motors and steering's share.

use super::Outcome;
use crate::inputs::{Point, Problem};
use crate::quantity::Quantity;
use farend_core::chain::run;
use farend_core::drive::{Drive, Rate};
use farend_core::physics::hydraulic as physics;
use farend_core::quantity::{AngularSpeed, Displacement, Flow, Power, Pressure, Torque};
use farend_core::source::Source;
use farend_core::spread::{Scenario, Spread};
use farend_core::stage::motor::Motor;
use farend_core::stage::pump::{Pump, PumpFlow};
use farend_core::stage::steering::Steering;
use farend_core::stage::{Stage, StagePhysics};

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

pub(super) fn pump_flow(point: &Point<'_>) -> Result<Outcome, Problem> {
    let pump = Pump {
        flow: PumpFlow::Displacement(point.get("displacement")?),
        volumetric: exact(point.number("volumetric")?),
        hydro_mechanical: exact(1.0),
        relief: exact(Pressure::ZERO),
    };
    let flow = pump.flow_at(point.get("speed")?, Scenario::Likely);
    Ok(Outcome::Results(vec![("flow", Quantity::Flow(flow))]))
}

/// A motor, without losses where none are given.
pub(super) fn motor(point: &Point<'_>) -> Result<Outcome, Problem> {
    let displacement: Displacement = point.get("displacement")?;
    let volumetric = point.number_or("volumetric", 1.0)?;
    let hydro_mechanical = point.number_or("hydro_mechanical", 1.0)?;
    let speed = physics::motor_speed(displacement, point.get("flow")?, volumetric);
    let torque = physics::motor_torque(displacement, point.get("pressure")?, hydro_mechanical);
    Ok(Outcome::Results(vec![
        ("speed", Quantity::Speed(speed)),
        ("torque", Quantity::Torque(torque)),
        ("power", Quantity::Power(torque * speed)),
    ]))
}

/// A pump that turns a motor at a wished speed, at relief pressure and with power to spare.
pub(super) fn pump_and_motor(point: &Point<'_>) -> Result<Outcome, Problem> {
    let pump = Pump {
        flow: PumpFlow::Displacement(point.get("pump_displacement")?),
        volumetric: exact(point.number("pump_volumetric")?),
        hydro_mechanical: exact(point.number_or("pump_hydro_mechanical", 1.0)?),
        relief: exact(point.get("pressure")?),
    };
    let volumetric = point.number("motor_volumetric")?;
    let speed: AngularSpeed = point.get("pump_speed")?;
    let displacement = physics::motor_displacement(
        pump.flow_at(speed, Scenario::Likely),
        point.get("motor_speed")?,
        volumetric,
    );
    let motor = Motor {
        displacement,
        volumetric: exact(volumetric),
        hydro_mechanical: exact(point.number("motor_hydro_mechanical")?),
        highest: Pressure::bar(1000.0),
    };
    let stages = [Stage::Pump(pump), Stage::Motor(motor)];
    let ledger = run(&stages, Power::kilowatts(1000.0), speed, Scenario::Likely)
        .map_err(|stall| format!("{stall:?}"))?;
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
    let pump = Pump {
        flow: PumpFlow::Sheet {
            flow: exact(point.get::<Flow>("sheet_flow")?),
            at: point.get("sheet_speed")?,
            less: None,
        },
        volumetric: exact(1.0),
        hydro_mechanical: exact(1.0),
        relief: exact(Pressure::ZERO),
    };
    let steering = Steering::FixedPriority(exact(point.get("share")?));
    let pumped = Drive {
        rate: Rate::Flowing(pump.flow_at(point.get("speed")?, Scenario::Likely)),
        power: Power::ZERO,
    };
    let pass = steering
        .pass(pumped.rate, Scenario::Likely)
        .map_err(|stall| format!("{stall:?}"))?;
    Ok(Outcome::Results(vec![(
        "flow",
        pass.rate.quantity().into(),
    )]))
}
