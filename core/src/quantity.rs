//! Physical quantities: `uom`'s dimensions behind this project's own names.
//!
//! Each type holds one SI value. Units other than SI exist only in the named constructors
//! (`Power::kilowatts`) and readers (`to_kilowatts`), whose factors are listed here once.
//! Products between types (`Pressure * Flow = Power`) go through `uom`, so that a wrong
//! dimension does not compile.

mod temperature;

pub use temperature::Temperature;

use core::f64::consts::TAU;
use core::iter::Sum;
use core::ops::{Add, Div, Mul, Sub};
use serde::{Serialize, Serializer};
use uom::si::f64 as si;

/// One inch, exact by definition.
const INCH: f64 = 0.0254;
/// One pound force, exact by definition: 0.453 592 37 kg times 9.806 65 m/s².
const POUND_FORCE: f64 = 4.448_221_615_260_5;
/// One pound of mass, exact by definition.
const POUND: f64 = 0.453_592_37;
/// One international table Btu, exact by definition: 2326 J/kg for a pound.
const BTU: f64 = 2326.0 * POUND;
/// One degree Fahrenheit as a difference, exact by definition.
const FAHRENHEIT_DEGREE: f64 = 1.0 / 1.8;
/// One hour in seconds.
const HOUR: f64 = 3600.0;
/// One US gallon, exact by definition: 231 cubic inches.
const US_GALLON: f64 = 231.0 * INCH * INCH * INCH;

macro_rules! quantity {
    (
        $(#[$doc:meta])*
        $name:ident = $uom:ident, $module:ident :: $base:ident {
            $( $unit:ident / $reader:ident = $factor:expr; )*
        }
    ) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
        pub struct $name(si::$uom);

        impl $name {
            /// Nothing of it.
            pub const ZERO: Self = Self::from_si(0.0);

            // Without `uom`'s conversion, which costs a product and a sum each time.
            pub(crate) const fn from_si(value: f64) -> Self {
                Self(si::$uom {
                    dimension: core::marker::PhantomData,
                    units: core::marker::PhantomData,
                    value,
                })
            }

            /// The value in the SI unit.
            pub fn to_si(self) -> f64 {
                self.0.value
            }

            $(
                #[doc = concat!("From a number of ", stringify!($unit), ".")]
                pub fn $unit(value: f64) -> Self {
                    Self::from_si(value * ($factor))
                }

                #[doc = concat!("As a number of ", stringify!($unit), ".")]
                pub fn $reader(self) -> f64 {
                    self.to_si() / ($factor)
                }
            )*

            /// The smaller of two.
            pub fn min(self, other: Self) -> Self {
                if other < self { other } else { self }
            }

            /// The larger of two.
            pub fn max(self, other: Self) -> Self {
                if other > self { other } else { self }
            }
        }

        impl Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }

        impl Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self {
                Self(self.0 - other.0)
            }
        }

        impl Mul<f64> for $name {
            type Output = Self;
            fn mul(self, factor: f64) -> Self {
                Self(self.0 * factor)
            }
        }

        impl Div<f64> for $name {
            type Output = Self;
            fn div(self, divisor: f64) -> Self {
                Self(self.0 / divisor)
            }
        }

        impl Div for $name {
            type Output = f64;
            fn div(self, other: Self) -> f64 {
                self.to_si() / other.to_si()
            }
        }

        /// Its number of SI units.
        impl Serialize for $name {
            fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
                to.serialize_f64(self.to_si())
            }
        }

        impl Sum for $name {
            fn sum<I: Iterator<Item = Self>>(items: I) -> Self {
                items.fold(Self::ZERO, Add::add)
            }
        }
    };
}

quantity! {
    /// Power, watts.
    Power = Power, power::watt {
        watts / to_watts = 1.0;
        kilowatts / to_kilowatts = 1e3;
        // Mechanical horsepower: 550 ft·lbf/s, exact by definition.
        horsepower / to_horsepower = 550.0 * 12.0 * INCH * POUND_FORCE;
        // Metric horsepower: 75 kgf·m/s, exact by definition.
        metric_horsepower / to_metric_horsepower = 735.498_75;
        btu_per_hour / to_btu_per_hour = BTU / HOUR;
    }
}
quantity! {
    /// Speed of turning, radians per second.
    AngularSpeed = AngularVelocity, angular_velocity::radian_per_second {
        radians_per_second / to_radians_per_second = 1.0;
        rpm / to_rpm = TAU / 60.0;
    }
}
quantity! {
    /// Torque, newton metres.
    Torque = Torque, torque::newton_meter {
        newton_metres / to_newton_metres = 1.0;
        pound_feet / to_pound_feet = 12.0 * INCH * POUND_FORCE;
        pound_inches / to_pound_inches = INCH * POUND_FORCE;
    }
}
quantity! {
    /// Pressure above the tank's, pascals.
    Pressure = Pressure, pressure::pascal {
        pascals / to_pascals = 1.0;
        bar / to_bar = 1e5;
        psi / to_psi = POUND_FORCE / (INCH * INCH);
    }
}
quantity! {
    /// Volume flow, cubic metres per second.
    Flow = VolumeRate, volume_rate::cubic_meter_per_second {
        cubic_metres_per_second / to_cubic_metres_per_second = 1.0;
        litres_per_minute / to_litres_per_minute = 1e-3 / 60.0;
        us_gallons_per_minute / to_us_gallons_per_minute = US_GALLON / 60.0;
    }
}
quantity! {
    /// Displacement of a pump or motor, cubic metres per revolution.
    Displacement = Volume, volume::cubic_meter {
        cubic_metres / to_cubic_metres = 1.0;
        cubic_centimetres / to_cubic_centimetres = 1e-6;
        cubic_inches / to_cubic_inches = INCH * INCH * INCH;
    }
}
quantity! {
    /// Length, metres.
    Length = Length, length::meter {
        metres / to_metres = 1.0;
        millimetres / to_millimetres = 1e-3;
        centimetres / to_centimetres = 1e-2;
        inches / to_inches = INCH;
        feet / to_feet = 12.0 * INCH;
    }
}
quantity! {
    /// Velocity, metres per second.
    Velocity = Velocity, velocity::meter_per_second {
        metres_per_second / to_metres_per_second = 1.0;
        feet_per_second / to_feet_per_second = 12.0 * INCH;
        kilometres_per_hour / to_kilometres_per_hour = 1e3 / HOUR;
        miles_per_hour / to_miles_per_hour = 5280.0 * 12.0 * INCH / HOUR;
    }
}
quantity! {
    /// Kinematic viscosity, square metres per second.
    Viscosity = KinematicViscosity, kinematic_viscosity::square_meter_per_second {
        square_metres_per_second / to_square_metres_per_second = 1.0;
        centistokes / to_centistokes = 1e-6;
    }
}
quantity! {
    /// Density, kilograms per cubic metre.
    Density = MassDensity, mass_density::kilogram_per_cubic_meter {
        kilograms_per_cubic_metre / to_kilograms_per_cubic_metre = 1.0;
        pounds_per_cubic_foot / to_pounds_per_cubic_foot = POUND / (1728.0 * INCH * INCH * INCH);
    }
}
quantity! {
    /// Force, newtons.
    Force = Force, force::newton {
        newtons / to_newtons = 1.0;
        kilonewtons / to_kilonewtons = 1e3;
        pounds_force / to_pounds_force = POUND_FORCE;
    }
}
quantity! {
    /// Mass, kilograms.
    Mass = Mass, mass::kilogram {
        kilograms / to_kilograms = 1.0;
        tonnes / to_tonnes = 1e3;
        // Short ton: 2000 lb, exact by definition.
        short_tons / to_short_tons = 2000.0 * POUND;
        pounds / to_pounds = POUND;
    }
}
quantity! {
    /// Area, square metres.
    Area = Area, area::square_meter {
        square_metres / to_square_metres = 1.0;
        square_inches / to_square_inches = INCH * INCH;
        square_feet / to_square_feet = 144.0 * INCH * INCH;
    }
}
quantity! {
    /// Volume, cubic metres.
    Volume = Volume, volume::cubic_meter {
        cubic_metres / to_cubic_metres = 1.0;
        litres / to_litres = 1e-3;
        us_gallons / to_us_gallons = US_GALLON;
        cubic_yards / to_cubic_yards = 46_656.0 * INCH * INCH * INCH;
    }
}
quantity! {
    /// Time, seconds.
    Time = Time, time::second {
        seconds / to_seconds = 1.0;
        minutes / to_minutes = 60.0;
        hours / to_hours = HOUR;
    }
}
quantity! {
    /// Energy, joules.
    Energy = Energy, energy::joule {
        joules / to_joules = 1.0;
        kilowatt_hours / to_kilowatt_hours = 1e3 * HOUR;
        btu / to_btu = BTU;
    }
}
quantity! {
    /// Difference of two temperatures, kelvins.
    TemperatureDifference = TemperatureInterval, temperature_interval::kelvin {
        kelvins / to_kelvins = 1.0;
        fahrenheit_degrees / to_fahrenheit_degrees = FAHRENHEIT_DEGREE;
    }
}
quantity! {
    /// Heat that a body takes up for each kelvin, joules per kelvin.
    HeatCapacity = HeatCapacity, heat_capacity::joule_per_kelvin {
        joules_per_kelvin / to_joules_per_kelvin = 1.0;
    }
}
quantity! {
    /// Heat that a kilogram takes up for each kelvin, joules per kilogram and kelvin.
    SpecificHeat = SpecificHeatCapacity, specific_heat_capacity::joule_per_kilogram_kelvin {
        joules_per_kilogram_kelvin / to_joules_per_kilogram_kelvin = 1.0;
        kilojoules_per_kilogram_kelvin / to_kilojoules_per_kilogram_kelvin = 1e3;
        btu_per_pound_fahrenheit / to_btu_per_pound_fahrenheit = BTU / (POUND * FAHRENHEIT_DEGREE);
    }
}
quantity! {
    /// Heat that flows for each kelvin of difference, watts per kelvin.
    Conductance = ThermalConductance, thermal_conductance::watt_per_kelvin {
        watts_per_kelvin / to_watts_per_kelvin = 1.0;
    }
}
quantity! {
    /// Film coefficient: conductance for each square metre, watts per square metre and kelvin.
    FilmCoefficient = HeatTransfer, heat_transfer::watt_per_square_meter_kelvin {
        watts_per_square_metre_kelvin / to_watts_per_square_metre_kelvin = 1.0;
        btu_per_hour_square_foot_fahrenheit / to_btu_per_hour_square_foot_fahrenheit =
            BTU / (HOUR * 144.0 * INCH * INCH * FAHRENHEIT_DEGREE);
        horsepower_per_square_foot_fahrenheit / to_horsepower_per_square_foot_fahrenheit =
            550.0 * POUND_FORCE / (12.0 * INCH * FAHRENHEIT_DEGREE);
    }
}

macro_rules! product {
    ($a:ident * $b:ident = $c:ident) => {
        impl Mul<$b> for $a {
            type Output = $c;
            fn mul(self, other: $b) -> $c {
                $c((self.0 * other.0).into())
            }
        }
        impl Div<$a> for $c {
            type Output = $b;
            fn div(self, other: $a) -> $b {
                $b((self.0 / other.0).into())
            }
        }
        impl Div<$b> for $c {
            type Output = $a;
            fn div(self, other: $b) -> $a {
                $a((self.0 / other.0).into())
            }
        }
    };
}

// P = T·ω
product!(Torque * AngularSpeed = Power);
// P = p·Q
product!(Pressure * Flow = Power);
// P = F·v
product!(Force * Velocity = Power);
// E = P·t
product!(Power * Time = Energy);
// V = Q·t
product!(Flow * Time = Volume);
// m = ρ·V
product!(Density * Volume = Mass);
// C = m·c
product!(Mass * SpecificHeat = HeatCapacity);
// UA = U·A
product!(FilmCoefficient * Area = Conductance);
// P = UA·ΔT
product!(Conductance * TemperatureDifference = Power);
// C = UA·t
product!(Conductance * Time = HeatCapacity);

/// Flow of a displacement turned at a speed.
///
/// Equation: Q = V·ω/2π, with V per revolution. Units: SI. Valid for any finite input.
/// Source: definition of displacement per revolution.
impl Mul<AngularSpeed> for Displacement {
    type Output = Flow;
    fn mul(self, speed: AngularSpeed) -> Flow {
        // Q = V·ω/2π
        Flow(self.0 * speed.0 / TAU)
    }
}

/// Torque of a displacement under a pressure difference, without loss.
///
/// Equation: T = Δp·V/2π, with V per revolution. Units: SI. Valid for any finite input.
/// Source: definition; equal work per revolution on both sides.
impl Mul<Displacement> for Pressure {
    type Output = Torque;
    fn mul(self, displacement: Displacement) -> Torque {
        // T = Δp·V/2π
        Torque((self.0 * displacement.0 / TAU).into())
    }
}
