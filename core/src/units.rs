//! Units at the edge: what a quantity is called and how large it is for a reader.

use crate::quantity::{
    AngularSpeed, Density, Displacement, Flow, Length, Power, Pressure, Temperature, Torque,
    Velocity, Viscosity,
};
use serde::{Deserialize, Serialize};

/// The units that the reader wants.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub enum UnitSystem {
    /// kW, N·m, L/min, bar, mm.
    #[default]
    Metric,
    /// Mechanical horsepower, lb·ft, US gallons a minute, psi, inches.
    Us,
}

/// Any quantity, for showing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Quantity {
    /// Power.
    Power(Power),
    /// Speed of turning.
    Speed(AngularSpeed),
    /// Torque.
    Torque(Torque),
    /// Volume flow.
    Flow(Flow),
    /// Pressure or pressure difference.
    Pressure(Pressure),
    /// Displacement per revolution.
    Displacement(Displacement),
    /// A length along the ground or a hose.
    Length(Length),
    /// A bore or another small length.
    Bore(Length),
    /// Velocity.
    Velocity(Velocity),
    /// Kinematic viscosity.
    Viscosity(Viscosity),
    /// Temperature.
    Temperature(Temperature),
    /// Density.
    Density(Density),
    /// A ratio or an efficiency.
    Ratio(f64),
}

impl Quantity {
    /// The number and the unit's symbol in a system of units. The symbol of a ratio is empty.
    /// `hp` is the mechanical horsepower, `gpm` the US gallon a minute.
    pub fn shown_in(self, units: UnitSystem) -> (f64, &'static str) {
        use Quantity as Q;
        use UnitSystem::{Metric, Us};
        match (self, units) {
            (Q::Power(x), Metric) => (x.to_kilowatts(), "kW"),
            (Q::Power(x), Us) => (x.to_horsepower(), "hp"),
            (Q::Speed(x), _) => (x.to_rpm(), "rpm"),
            (Q::Torque(x), Metric) => (x.to_newton_metres(), "N·m"),
            (Q::Torque(x), Us) => (x.to_pound_feet(), "lb·ft"),
            (Q::Flow(x), Metric) => (x.to_litres_per_minute(), "L/min"),
            (Q::Flow(x), Us) => (x.to_us_gallons_per_minute(), "gpm"),
            (Q::Pressure(x), Metric) => (x.to_bar(), "bar"),
            (Q::Pressure(x), Us) => (x.to_psi(), "psi"),
            (Q::Displacement(x), Metric) => (x.to_cubic_centimetres(), "cm³"),
            (Q::Displacement(x), Us) => (x.to_cubic_inches(), "in³"),
            (Q::Length(x), Metric) => (x.to_metres(), "m"),
            (Q::Length(x), Us) => (x.to_feet(), "ft"),
            (Q::Bore(x), Metric) => (x.to_millimetres(), "mm"),
            (Q::Bore(x), Us) => (x.to_inches(), "in"),
            (Q::Velocity(x), Metric) => (x.to_metres_per_second(), "m/s"),
            (Q::Velocity(x), Us) => (x.to_feet_per_second(), "ft/s"),
            (Q::Viscosity(x), _) => (x.to_centistokes(), "cSt"),
            (Q::Temperature(x), Metric) => (x.to_celsius(), "°C"),
            (Q::Temperature(x), Us) => (x.to_fahrenheit(), "°F"),
            (Q::Density(x), _) => (x.to_kilograms_per_cubic_metre(), "kg/m³"),
            (Q::Ratio(x), _) => (x, ""),
        }
    }

    /// The value a part of the way from this one to another of the same kind.
    pub fn between(self, to: Self, part: f64) -> Option<Self> {
        use Quantity as Q;
        Some(match (self, to) {
            (Q::Power(a), Q::Power(b)) => Q::Power(a + (b - a) * part),
            (Q::Speed(a), Q::Speed(b)) => Q::Speed(a + (b - a) * part),
            (Q::Flow(a), Q::Flow(b)) => Q::Flow(a + (b - a) * part),
            (Q::Pressure(a), Q::Pressure(b)) => Q::Pressure(a + (b - a) * part),
            (Q::Temperature(a), Q::Temperature(b)) => {
                let (a, b) = (a.to_kelvins(), b.to_kelvins());
                Q::Temperature(Temperature::kelvins(a + (b - a) * part))
            }
            _ => return None,
        })
    }

    /// The same kind of quantity from a number in a system of units: the inverse of
    /// [`Self::shown_in`]. `None` for a kind that nobody enters.
    pub fn entered_in(self, units: UnitSystem, number: f64) -> Option<Self> {
        use Quantity as Q;
        use UnitSystem::{Metric, Us};
        Some(match (self, units) {
            (Q::Speed(_), _) => Q::Speed(AngularSpeed::rpm(number)),
            (Q::Flow(_), Metric) => Q::Flow(Flow::litres_per_minute(number)),
            (Q::Flow(_), Us) => Q::Flow(Flow::us_gallons_per_minute(number)),
            (Q::Pressure(_), Metric) => Q::Pressure(Pressure::bar(number)),
            (Q::Pressure(_), Us) => Q::Pressure(Pressure::psi(number)),
            (Q::Temperature(_), Metric) => Q::Temperature(Temperature::celsius(number)),
            (Q::Temperature(_), Us) => Q::Temperature(Temperature::fahrenheit(number)),
            _ => return None,
        })
    }
}
