//! Pumps and motors at one operating point.
//!
//! Efficiencies are in the sense of ISO 4391 (definitions from memory): volumetric is flow
//! against flow, hydro-mechanical is torque against torque, overall is their product.

use crate::quantity::{AngularSpeed, Displacement, Flow, Power, Pressure, Torque};

/// Power of a flow under a pressure difference.
///
/// Equation: P = p·Q. Units: SI. Valid range: any finite values.
/// Source: definition; in L/min and bar, kW = Q·p/600.
pub fn hydraulic_power(pressure: Pressure, flow: Flow) -> Power {
    // P = p·Q
    pressure * flow
}

/// Volumetric efficiency of a pump from its measured flow.
///
/// Equation: ηv = Q/(V·n). Units: ratio. Valid range: V and n above zero.
/// Source: ISO 4391 sense, from memory.
pub fn pump_volumetric_efficiency(
    displacement: Displacement,
    speed: AngularSpeed,
    flow: Flow,
) -> f64 {
    // ηv = Q/(V·n)
    flow / (displacement * speed)
}

/// Hydro-mechanical efficiency of a pump from its measured torque.
///
/// Equation: ηhm = (Δp·V/2π)/T. Units: ratio. Valid range: T above zero.
/// Source: ISO 4391 sense, from memory.
pub fn pump_hydro_mechanical_efficiency(
    displacement: Displacement,
    difference: Pressure,
    torque: Torque,
) -> f64 {
    // ηhm = (Δp·V/2π)/T
    (difference * displacement) / torque
}

/// Displacement of a motor that a flow turns at a speed.
///
/// Equation: V = 2π·Q·ηv/ω. Units: SI. Valid range: ω above zero, ηv above 0 to 1.
/// Source: definition of displacement.
pub fn motor_displacement(flow: Flow, speed: AngularSpeed, volumetric: f64) -> Displacement {
    let unit = Displacement::cubic_metres(1.0);
    // V = Q·ηv/(ω/2π)
    unit * (flow * volumetric / (unit * speed))
}

/// Displacement of a pump that gives a flow at a speed.
///
/// Equation: V = 2π·Q/(ω·ηv). Units: SI. Valid range: ω above zero, ηv above 0 to 1.
/// Source: definition of displacement.
pub fn pump_displacement(flow: Flow, speed: AngularSpeed, volumetric: f64) -> Displacement {
    let unit = Displacement::cubic_metres(1.0);
    // V = Q/(ω/2π·ηv)
    unit * (flow / (unit * speed * volumetric))
}
