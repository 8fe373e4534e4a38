//! What it would take, in words.

use super::{capital, labels, reasons};
use crate::number;
use farend_core::quantity::{Displacement, Power};
use farend_core::route::RouteId;
use farend_core::stage::gear::GearRole;
use farend_core::stage::StageKind;
use farend_core::units::{Quantity, UnitSystem};
use farend_core::wanted::{Hindrance, Outfit, Turned};

pub const TITLE: &str = "What would it take?";
pub const WISHED: &str = "To reach";
pub const ALREADY: &str = "It reaches that as it is.";
pub const APPLY: &str = "Try these settings";
pub const NOTE: &str = "At the likely values. Sizes of boxes, pumps, motors and hoses are common \
    ones; what a maker offers may lie between. Ask the machine's workshop before anyone raises a \
    relief pressure: pumps, hoses and valves have limits of their own.";

/// The engine speed that does it.
pub fn speed(speed: String) -> String {
    format!("The engine at {speed} does it, all else as it is.")
}

/// Flow and relief pressure that do it.
pub fn turned(turned: &Turned, units: UnitSystem) -> String {
    format!(
        "Settings that do it: {} at {}, the engine at {}.",
        number::shown(Quantity::Flow(turned.flow), units),
        number::shown(Quantity::Pressure(turned.relief), units),
        number::shown(Quantity::Speed(turned.engine_speed), units)
    )
}

/// The hardware that does it, a line for each part.
pub fn outfit(route: RouteId, outfit: &Outfit, units: UnitSystem) -> Vec<String> {
    let shown = |quantity| number::shown(quantity, units);
    let mut lines = vec![format!(
        "Engine: {} net at {}",
        number::power(outfit.engine, units),
        outfit
            .settings
            .engine_speed
            .map_or_else(String::new, |speed| shown(Quantity::Speed(speed)))
    )];
    if let Some((power, torque)) = outfit.pto() {
        lines.push(format!(
            "PTO: {}, {}",
            number::power(power, units),
            shown(Quantity::Torque(torque))
        ));
    }
    let ratio = outfit.box_ratio();
    if (ratio - 1.0).abs() > 1e-9 {
        lines.push(format!("Box: 1 to {}", number::fixed(ratio, 2)));
    }
    if let Some((_, passage)) = outfit.pump() {
        let flow = passage.gives.rate.quantity();
        let own = outfit.kit.pump.as_ref().filter(|_| route == RouteId::PumpPack);
        let size = own.map_or_else(String::new, |pump| {
            format!("{}, ", shown(Quantity::Displacement(pump.displacement)))
        });
        let relief = outfit.relief().map_or_else(String::new, |relief| {
            format!(", relief at {}", shown(Quantity::Pressure(relief)))
        });
        lines.push(format!("Pump: {size}{}{relief}", shown(flow)));
    }
    if let Some(bores) = &outfit.lines {
        let bore = |length| shown(Quantity::Bore(length));
        let suction = bores
            .suction
            .map_or_else(String::new, |it| format!(", suction {}", bore(it)));
        lines.push(format!(
            "Hoses: {} to the motor, {} back{suction}",
            bore(bores.supply),
            bore(bores.back)
        ));
    }
    if let Some(tank) = &outfit.tank {
        let cooler = if tank.cooler_duty > Power::ZERO {
            format!("a cooler for {}", number::power(tank.cooler_duty, units))
        } else {
            "no cooler".to_owned()
        };
        lines.push(format!(
            "Oil: {} are usual, {cooler}",
            shown(Quantity::Volume(tank.usual))
        ));
    }
    if !route.needs_oil() {
        let shafts = outfit.shafts().filter(|(role, _)| *role != GearRole::PtoTrain);
        lines.extend(shafts.map(|(role, torque)| {
            format!(
                "{} for {}",
                labels::stage(StageKind::Gear(role)),
                shown(Quantity::Torque(torque))
            )
        }));
    }
    lines
}

/// What is in the way.
pub fn hindrance(hindrance: &Hindrance, units: UnitSystem) -> String {
    let shown = |quantity| number::shown(quantity, units);
    let instead = |size: Option<Displacement>| {
        size.map_or_else(String::new, |size| {
            format!("; a motor of {} would do", shown(Quantity::Displacement(size)))
        })
    };
    match *hindrance {
        Hindrance::NoFit(reason) => {
            format!("{}: no setting can.", capital(&reasons::no_fit(reason, units)))
        }
        Hindrance::EngineTooWeak { at, needs, has } => format!(
            "The engine would need {} at {}; it has {}.",
            number::power(needs, units),
            shown(Quantity::Speed(at)),
            number::power(has, units)
        ),
        Hindrance::ShaftTooWeak {
            shaft,
            needs,
            bears,
        } => format!(
            "{}: it would have to bear {}, it may bear {}.",
            labels::stage(StageKind::Gear(shaft)),
            shown(Quantity::Torque(needs)),
            shown(Quantity::Torque(bears))
        ),
        Hindrance::MotorFlow {
            needs,
            highest,
            instead: size,
        } => format!(
            "The motor would need {}, it may be given {}{}.",
            shown(Quantity::Flow(needs)),
            shown(Quantity::Flow(highest)),
            instead(size)
        ),
        Hindrance::MotorPressure {
            needs,
            highest,
            instead: size,
        } => format!(
            "The motor would need {}, it may be given {}{}.",
            shown(Quantity::Pressure(needs)),
            shown(Quantity::Pressure(highest)),
            instead(size)
        ),
        Hindrance::NoSize => "No common size of box, pump or hose does it.".to_owned(),
    }
}
