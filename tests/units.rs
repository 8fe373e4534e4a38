//! The units of case files and reference figures, each with the core's constructor and reader.

use farend_core::quantity::{
    AngularSpeed, Density, Displacement, Flow, Length, Power, Pressure, Temperature, Torque,
    Velocity, Viscosity,
};
use farend_core::units::Quantity;

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
    "in" = Length of Length::inches / to_inches;
    "ft" = Length of Length::feet / to_feet;
    "m_s" = Velocity of Velocity::metres_per_second / to_metres_per_second;
    "ft_s" = Velocity of Velocity::feet_per_second / to_feet_per_second;
    "k" = Temperature of Temperature::kelvins / to_kelvins;
    "c" = Temperature of Temperature::celsius / to_celsius;
    "f" = Temperature of Temperature::fahrenheit / to_fahrenheit;
    "m2_s" = Viscosity of Viscosity::square_metres_per_second / to_square_metres_per_second;
    "cst" = Viscosity of Viscosity::centistokes / to_centistokes;
    "kg_m3" = Density of Density::kilograms_per_cubic_metre / to_kilograms_per_cubic_metre;
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
