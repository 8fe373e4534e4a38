//! What it would take, in words.

pub use super::say::wanted::*;

use super::say::wanted as say;
use super::{capital, items, labels, reasons};
use crate::number;
use farend_core::quantity::{Displacement, Power};
use farend_core::route::RouteId;
use farend_core::stage::StageKind;
use farend_core::stage::gear::GearRole;
use farend_core::units::{Quantity, UnitSystem};
use farend_core::wanted::{Hindrance, Outfit, Turned};

/// Flow and relief pressure that do it.
pub fn turned(turned: &Turned, units: UnitSystem) -> String {
    say::Settings {
        flow: &number::shown(Quantity::Flow(turned.flow), units),
        relief: &number::shown(Quantity::Pressure(turned.relief), units),
        speed: &number::shown(Quantity::Speed(turned.engine_speed), units),
    }
    .said()
}

/// The hardware that does it, a line for each part.
pub fn outfit(route: RouteId, outfit: &Outfit, units: UnitSystem) -> Vec<String> {
    let shown = |quantity| number::shown(quantity, units);
    let speed = outfit.settings.engine_speed;
    let engine = say::Engine {
        power: &number::power(outfit.engine, units),
        speed: &speed.map_or_else(String::new, |speed| shown(Quantity::Speed(speed))),
    };
    let mut lines = vec![engine.said()];
    if let Some((power, torque)) = outfit.pto() {
        let pto = say::Pto {
            power: &number::power(power, units),
            torque: &shown(Quantity::Torque(torque)),
        };
        lines.push(pto.said());
    }
    let ratio = outfit.box_ratio();
    if (ratio - 1.0).abs() > 1e-9 {
        lines.push(say::gearbox(&number::fixed(ratio, 2)));
    }
    if let Some((_, passage)) = outfit.pump() {
        let own = outfit
            .kit
            .pump
            .as_ref()
            .filter(|_| route == RouteId::PumpPack);
        let size = own.map(|pump| shown(Quantity::Displacement(pump.displacement)));
        let flow = shown(passage.gives.rate.quantity());
        let relief = outfit
            .relief()
            .map(|relief| say::pump_relief(&shown(Quantity::Pressure(relief))));
        let figures: Vec<_> = [size, Some(flow), relief].into_iter().flatten().collect();
        lines.push(say::pump(&items(&figures)));
    }
    if let Some(bores) = &outfit.lines {
        let bore = |length| shown(Quantity::Bore(length));
        let mut figures = vec![
            say::hoses_supply(&bore(bores.supply)),
            say::hoses_back(&bore(bores.back)),
        ];
        figures.extend(bores.suction.map(|it| say::hoses_suction(&bore(it))));
        lines.push(say::hoses(&items(&figures)));
    }
    if let Some(tank) = &outfit.tank {
        let usual = &shown(Quantity::Volume(tank.usual));
        lines.push(if tank.cooler_duty > Power::ZERO {
            say::Oil {
                tank: usual,
                cooler: &number::power(tank.cooler_duty, units),
            }
            .said()
        } else {
            say::oil_uncooled(usual)
        });
    }
    if !route.needs_oil() {
        let shafts = outfit
            .shafts()
            .filter(|(role, _)| *role != GearRole::PtoTrain);
        lines.extend(shafts.map(|(role, torque)| {
            say::Shaft {
                stage: labels::stage(StageKind::Gear(role)),
                torque: &shown(Quantity::Torque(torque)),
            }
            .said()
        }));
    }
    lines
}

/// What is in the way.
pub fn hindrance(hindrance: &Hindrance, units: UnitSystem) -> String {
    let shown = |quantity| number::shown(quantity, units);
    match *hindrance {
        Hindrance::NoFit(reason) => say::no_fit(&capital(&reasons::no_fit(reason, units))),
        Hindrance::EngineTooWeak { at, needs, has } => say::EngineTooWeak {
            needs: &number::power(needs, units),
            speed: &shown(Quantity::Speed(at)),
            has: &number::power(has, units),
        }
        .said(),
        Hindrance::ShaftTooWeak {
            shaft,
            needs,
            bears,
        } => say::ShaftTooWeak {
            shaft: labels::stage(StageKind::Gear(shaft)),
            needs: &shown(Quantity::Torque(needs)),
            bears: &shown(Quantity::Torque(bears)),
        }
        .said(),
        Hindrance::MotorFlow {
            needs,
            highest,
            instead,
        } => motor(
            Quantity::Flow(needs),
            Quantity::Flow(highest),
            instead,
            units,
        ),
        Hindrance::MotorPressure {
            needs,
            highest,
            instead,
        } => motor(
            Quantity::Pressure(needs),
            Quantity::Pressure(highest),
            instead,
            units,
        ),
        Hindrance::NoSize => no_size().to_owned(),
    }
}

/// What the motor would have to be given, and the size of one that may be.
fn motor(
    needs: Quantity,
    highest: Quantity,
    instead: Option<Displacement>,
    units: UnitSystem,
) -> String {
    let needs = &number::shown(needs, units);
    let highest = &number::shown(highest, units);
    match instead {
        None => say::MotorNeeds { needs, highest }.said(),
        Some(size) => say::MotorNeedsInstead {
            needs,
            highest,
            size: &number::shown(Quantity::Displacement(size), units),
        }
        .said(),
    }
}
