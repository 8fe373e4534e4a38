//! Temperature: a point on a scale, not an amount.

use super::TemperatureDifference;
use core::ops::{Add, Sub};
use serde::{Serialize, Serializer};
use uom::si::f64 as si;

/// Temperature, kelvins. No sums: only differences make sense.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Temperature(si::ThermodynamicTemperature);

/// The Celsius scale's zero in kelvins, exact by definition.
const ICE: f64 = 273.15;

impl Temperature {
    /// From a number of kelvins.
    pub fn kelvins(value: f64) -> Self {
        Self(si::ThermodynamicTemperature::new::<
            uom::si::thermodynamic_temperature::kelvin,
        >(value))
    }

    /// As a number of kelvins.
    pub fn to_kelvins(self) -> f64 {
        self.0.value
    }

    /// From a number of degrees Celsius.
    pub fn celsius(value: f64) -> Self {
        Self::kelvins(value + ICE)
    }

    /// As a number of degrees Celsius.
    pub fn to_celsius(self) -> f64 {
        self.to_kelvins() - ICE
    }

    /// From a number of degrees Fahrenheit.
    pub fn fahrenheit(value: f64) -> Self {
        Self::celsius((value - 32.0) / 1.8)
    }

    /// As a number of degrees Fahrenheit.
    pub fn to_fahrenheit(self) -> f64 {
        self.to_celsius() * 1.8 + 32.0
    }
}

/// Its number of kelvins.
impl Serialize for Temperature {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.serialize_f64(self.to_kelvins())
    }
}

impl Sub for Temperature {
    type Output = TemperatureDifference;
    fn sub(self, other: Self) -> TemperatureDifference {
        TemperatureDifference::kelvins(self.to_kelvins() - other.to_kelvins())
    }
}

impl Add<TemperatureDifference> for Temperature {
    type Output = Self;
    fn add(self, difference: TemperatureDifference) -> Self {
        Self::kelvins(self.to_kelvins() + difference.to_kelvins())
    }
}
