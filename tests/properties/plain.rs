//! What an engine has left for a route, by the plain equations in kW, rpm, kg and km/h and not by
//! the core. At the likely values.

use farend_core::implement::{Ground, ImplementKind};
use farend_core::machine::{Aspiration, MachineKind, Transmission};
use farend_core::settings::Settings;
use farend_core::yard::entry::{EngineEntry, ImplementEntry, MachineEntry, UncertainEntry};
use libm::{exp, pow, sqrt};

/// The likely value of a figure.
pub fn likely(entry: &UncertainEntry) -> f64 {
    match entry {
        UncertainEntry::One(likely) | UncertainEntry::Three { likely, .. } => *likely,
    }
}

/// Net power at a speed.
pub fn net_kw_at(engine: &EngineEntry, rpm: f64) -> f64 {
    let rated = match (&engine.net_kw, &engine.gross_kw) {
        (Some(net), _) => likely(net),
        // P_net = 0.92·P_gross
        (None, Some(gross)) => likely(gross) * 0.92,
        (None, None) => panic!("an engine has a power"),
    };
    if engine.curve.is_empty() {
        let x = rpm / engine.rated_rpm;
        // P = P_r·(0.87x + 1.13x² − x³)
        return rated * (0.87 * x + 1.13 * x * x - x * x * x);
    }
    // P = P_r·c(n)/c(n_r)
    rated * on_curve(engine, rpm) / on_curve(engine, engine.rated_rpm)
}

/// Straight lines between the points.
fn on_curve(engine: &EngineEntry, rpm: f64) -> f64 {
    let above = engine.curve.iter().position(|point| point.rpm >= rpm);
    let place = above.expect("a speed on the curve").max(1);
    let (from, to) = (&engine.curve[place - 1], &engine.curve[place]);
    let part = (rpm - from.rpm) / (to.rpm - from.rpm);
    from.kw * (1.0 - part) + to.kw * part
}

/// The part of its power that the air leaves an engine: the form of ISO 3046-1 at half humidity
/// and a mechanical efficiency of 0.85.
fn left_by_air(engine: &EngineEntry, metres: f64, celsius: f64) -> f64 {
    let vapour = |t: f64| 0.61121 * exp((18.678 - t / 234.5) * (t / (257.14 + t)));
    // The standard atmosphere, kPa.
    let air = 101.325
        * pow(
            1.0 - 0.0065 * metres / 288.15,
            9.80665 / (287.05287 * 0.0065),
        );
    let warmth = 298.15 / (celsius + 273.15);
    let k = match engine.aspiration {
        None | Some(Aspiration::Natural) => {
            (air - 0.5 * vapour(celsius)) / (100.0 - 0.3 * vapour(25.0)) * pow(warmth, 0.75)
        }
        Some(Aspiration::Turbo) => pow(air / 100.0, 0.7) * warmth * warmth,
        Some(Aspiration::TurboCooled) => pow(air / 100.0, 0.7) * pow(warmth, 1.2) * warmth,
    };
    // α = k − 0.7·(1 − k)·(1/0.85 − 1), and no more than the rated power.
    (k - 0.7 * (1.0 - k) * (1.0 / 0.85 - 1.0)).min(1.0)
}

/// What driving takes: nothing where the mass isn't known or the implement stands.
fn driving_kw(machine: &MachineEntry, implement: &ImplementEntry, settings: &Settings) -> f64 {
    let (Some(mass), Some(travel)) = (machine.mass_kg, &implement.travel) else {
        return 0.0;
    };
    let usual = match implement.kind {
        ImplementKind::Thrower | ImplementKind::Broom => Ground::Firm,
        ImplementKind::Tiller => Ground::Loose,
        _ => Ground::Grass,
    };
    let rolling = match settings.ground.or(travel.ground).unwrap_or(usual) {
        Ground::Firm => 0.03,
        Ground::Grass => 0.08,
        Ground::Loose => 0.15,
    };
    let efficiency = match (machine.transmission, machine.kind) {
        (Some(Transmission::Gear), _) | (None, MachineKind::Tractor) => 0.9,
        (Some(Transmission::Hydrostatic), _) | (None, MachineKind::SkidSteer) => 0.7,
    };
    let km_h = settings
        .ground_speed
        .map_or(travel.usual_km_h, |speed| speed.to_kilometres_per_hour());
    let slope = settings.slope.unwrap_or(0.0);
    let weight = (mass + implement.mass_kg.unwrap_or(0.0)) * 9.80665;
    let pushing = travel.pushing_n.as_ref().map_or(0.0, likely);
    // F = m·g·(c_rr + tan θ)·cos θ + F_p, kW = N·km/h/3600
    let force = weight * (rolling + slope) / sqrt(1.0 + slope * slope) + pushing;
    force.max(0.0) * km_h / 3600.0 / efficiency
}

/// What is left for a route.
pub fn left_kw(
    machine: &MachineEntry,
    implement: &ImplementEntry,
    settings: &Settings,
    rpm: f64,
) -> f64 {
    let metres = settings.altitude.map_or(0.0, |it| it.to_metres());
    let celsius = settings.air.map_or(15.0, |it| it.to_celsius());
    // P = P_set·P(n)/P(n_r)
    let set = settings.engine_power.map_or(1.0, |power| {
        power.to_kilowatts() / net_kw_at(&machine.engine, machine.engine.rated_rpm)
    });
    let net = set * net_kw_at(&machine.engine, rpm) * left_by_air(&machine.engine, metres, celsius);
    (net - driving_kw(machine, implement, settings)).max(0.0)
}
