//! The units of case files and reference figures, each with the core's constructor and reader.

use crate::quantity::Quantity;
use farend_core::quantity::{
    AngularSpeed, Area, Conductance, Density, Displacement, Energy, FilmCoefficient, Flow, Force,
    HeatCapacity, Length, Mass, Power, Pressure, SpecificHeat, Temperature, TemperatureDifference,
    Time, Torque, Velocity, Viscosity, Volume,
};

/// A unit as those files write it.
pub struct Unit {
    /// Its name: the end of an input's name, or the unit of a result.
    pub name: &'static str,
    /// A number of it as a quantity.
    pub make: fn(f64) -> Quantity,
    /// A quantity as a number of it, where it is of that kind.
    pub read: fn(Quantity) -> Option<f64>,
}

macro_rules! units {
    ($( $name:literal = $kind:ident of $type:ident :: $make:ident / $read:ident; )*) => {
        /// All of them.
        pub const UNITS: &[Unit] = &[$(
            Unit {
                name: $name,
                make: |number| Quantity::$kind($type::$make(number)),
                read: |quantity| match quantity {
                    Quantity::$kind(value) => Some(value.$read()),
                    _ => None,
                },
            },
        )*];
    };
}

units! {
    "w" = Power of Power::watts / to_watts;
    "kw" = Power of Power::kilowatts / to_kilowatts;
    "hp" = Power of Power::horsepower / to_horsepower;
    "metric_hp" = Power of Power::metric_horsepower / to_metric_horsepower;
    "btu_h" = Power of Power::btu_per_hour / to_btu_per_hour;
    "rad_s" = Speed of AngularSpeed::radians_per_second / to_radians_per_second;
    "rpm" = Speed of AngularSpeed::rpm / to_rpm;
    "nm" = Torque of Torque::newton_metres / to_newton_metres;
    "lb_ft" = Torque of Torque::pound_feet / to_pound_feet;
    "lb_in" = Torque of Torque::pound_inches / to_pound_inches;
    "pa" = Pressure of Pressure::pascals / to_pascals;
    "bar" = Pressure of Pressure::bar / to_bar;
    "psi" = Pressure of Pressure::psi / to_psi;
    "m3_s" = Flow of Flow::cubic_metres_per_second / to_cubic_metres_per_second;
    "l_min" = Flow of Flow::litres_per_minute / to_litres_per_minute;
    "gpm" = Flow of Flow::us_gallons_per_minute / to_us_gallons_per_minute;
    "m3" = Displacement of Displacement::cubic_metres / to_cubic_metres;
    "cm3" = Displacement of Displacement::cubic_centimetres / to_cubic_centimetres;
    "in3" = Displacement of Displacement::cubic_inches / to_cubic_inches;
    "m" = Length of Length::metres / to_metres;
    "mm" = Length of Length::millimetres / to_millimetres;
    "cm" = Length of Length::centimetres / to_centimetres;
    "in" = Length of Length::inches / to_inches;
    "ft" = Length of Length::feet / to_feet;
    "m_s" = Velocity of Velocity::metres_per_second / to_metres_per_second;
    "ft_s" = Velocity of Velocity::feet_per_second / to_feet_per_second;
    "k" = Temperature of Temperature::kelvins / to_kelvins;
    "km_h" = Velocity of Velocity::kilometres_per_hour / to_kilometres_per_hour;
    "mph" = Velocity of Velocity::miles_per_hour / to_miles_per_hour;
    "c" = Temperature of Temperature::celsius / to_celsius;
    "f" = Temperature of Temperature::fahrenheit / to_fahrenheit;
    "m2_s" = Viscosity of Viscosity::square_metres_per_second / to_square_metres_per_second;
    "cst" = Viscosity of Viscosity::centistokes / to_centistokes;
    "kg_m3" = Density of Density::kilograms_per_cubic_metre / to_kilograms_per_cubic_metre;
    "lb_ft3" = Density of Density::pounds_per_cubic_foot / to_pounds_per_cubic_foot;
    "n" = Force of Force::newtons / to_newtons;
    "kn" = Force of Force::kilonewtons / to_kilonewtons;
    "lbf" = Force of Force::pounds_force / to_pounds_force;
    "kg" = Mass of Mass::kilograms / to_kilograms;
    "t" = Mass of Mass::tonnes / to_tonnes;
    "short_tons" = Mass of Mass::short_tons / to_short_tons;
    "lb" = Mass of Mass::pounds / to_pounds;
    "m2" = Area of Area::square_metres / to_square_metres;
    "in2" = Area of Area::square_inches / to_square_inches;
    "ft2" = Area of Area::square_feet / to_square_feet;
    "l" = Volume of Volume::litres / to_litres;
    "cubic_metres" = Volume of Volume::cubic_metres / to_cubic_metres;
    "yd3" = Volume of Volume::cubic_yards / to_cubic_yards;
    "gal" = Volume of Volume::us_gallons / to_us_gallons;
    "s" = Time of Time::seconds / to_seconds;
    "min" = Time of Time::minutes / to_minutes;
    "h" = Time of Time::hours / to_hours;
    "j" = Energy of Energy::joules / to_joules;
    "kwh" = Energy of Energy::kilowatt_hours / to_kilowatt_hours;
    "btu" = Energy of Energy::btu / to_btu;
    "k_degrees" = Difference of TemperatureDifference::kelvins / to_kelvins;
    "f_degrees" = Difference of TemperatureDifference::fahrenheit_degrees / to_fahrenheit_degrees;
    "j_k" = HeatCapacity of HeatCapacity::joules_per_kelvin / to_joules_per_kelvin;
    "j_kg_k" = SpecificHeat of SpecificHeat::joules_per_kilogram_kelvin / to_joules_per_kilogram_kelvin;
    "kj_kg_k" = SpecificHeat of SpecificHeat::kilojoules_per_kilogram_kelvin / to_kilojoules_per_kilogram_kelvin;
    "btu_lb_f" = SpecificHeat of SpecificHeat::btu_per_pound_fahrenheit / to_btu_per_pound_fahrenheit;
    "w_k" = Conductance of Conductance::watts_per_kelvin / to_watts_per_kelvin;
    "w_m2_k" = Film of FilmCoefficient::watts_per_square_metre_kelvin / to_watts_per_square_metre_kelvin;
    "btu_h_ft2_f" = Film of FilmCoefficient::btu_per_hour_square_foot_fahrenheit / to_btu_per_hour_square_foot_fahrenheit;
    "hp_ft2_f" = Film of FilmCoefficient::horsepower_per_square_foot_fahrenheit / to_horsepower_per_square_foot_fahrenheit;
}

/// The unit of a name.
pub fn unit(name: &str) -> Option<&'static Unit> {
    UNITS.iter().find(|unit| unit.name == name)
}

/// A result as a number of a unit; without a unit, a plain number. `None` for another kind.
pub fn read(quantity: Quantity, name: &str) -> Option<f64> {
    match (name, quantity) {
        ("", Quantity::Ratio(number)) => Some(number),
        ("", _) => None,
        _ => (unit(name)?.read)(quantity),
    }
}
