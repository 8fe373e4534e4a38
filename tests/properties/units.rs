//! Every unit comes back as it went in.

use crate::random::log;
use farend_core::measure::{Amount, Measure};
use farend_core::quantity::{
    AngularSpeed, Area, Conductance, Density, Displacement, Flow, Force, Length, Mass, Power,
    Pressure, Temperature, Time, Torque, Velocity, Viscosity, Volume,
};
use farend_core::units::{Quantity, UnitSystem};
use farend_tests::quantity::Quantity as Known;
use farend_tests::units::unit;
use proptest::prelude::*;

/// Rounding of one product and one quotient, relative.
const ROUNDING: f64 = 1e-12;

macro_rules! come_back {
    ($number:ident: $( $type:ident { $( $make:ident / $read:ident ),+ } )+) => {
        [$( $( (stringify!($make), $type::$make($number).$read()), )+ )+]
    };
}

/// Every kind of quantity that is shown, so many of its SI unit.
fn every_kind(si: f64) -> Vec<Quantity> {
    use Quantity as Q;
    let mut all = vec![
        Q::Power(Power::watts(si)),
        Q::Speed(AngularSpeed::radians_per_second(si)),
        Q::Torque(Torque::newton_metres(si)),
        Q::Flow(Flow::cubic_metres_per_second(si)),
        Q::Pressure(Pressure::pascals(si)),
        Q::Displacement(Displacement::cubic_metres(si)),
        Q::Length(Length::metres(si)),
        Q::Bore(Length::metres(si)),
        Q::Velocity(Velocity::metres_per_second(si)),
        Q::Viscosity(Viscosity::square_metres_per_second(si)),
        Q::Temperature(Temperature::kelvins(si)),
        Q::Density(Density::kilograms_per_cubic_metre(si)),
        Q::Ratio(si),
        Q::GroundSpeed(Velocity::metres_per_second(si)),
        Q::Slope(si),
        Q::Angle(si),
        Q::Depth(Length::metres(si)),
        Q::Time(Time::seconds(si)),
        Q::Force(Force::newtons(si)),
        Q::Mass(Mass::kilograms(si)),
        Q::Volume(Volume::cubic_metres(si)),
        Q::Conductance(Conductance::watts_per_kelvin(si)),
    ];
    for measure in Measure::ALL {
        all.push(Q::Amount(Amount::of(*measure, si)));
        all.push(Q::WorkRate(*measure, si));
        all.push(Q::WorkEnergy(*measure, si));
    }
    all
}

/// Symbols that readers see, with the names of the units that are held against a library's.
const SYMBOLS: &[(&str, &str)] = &[
    ("kW", "kw"),
    ("hp", "hp"),
    ("rpm", "rpm"),
    ("N·m", "nm"),
    ("lb·ft", "lb_ft"),
    ("L/min", "l_min"),
    ("gpm", "gpm"),
    ("bar", "bar"),
    ("psi", "psi"),
    ("cm³", "cm3"),
    ("in³", "in3"),
    ("m", "m"),
    ("ft", "ft"),
    ("mm", "mm"),
    ("cm", "cm"),
    ("in", "in"),
    ("m/s", "m_s"),
    ("ft/s", "ft_s"),
    ("km/h", "km_h"),
    ("mph", "mph"),
    ("cSt", "cst"),
    ("°C", "c"),
    ("°F", "f"),
    ("kg/m³", "kg_m3"),
    ("lb/ft³", "lb_ft3"),
    ("t", "t"),
    ("tons", "short_tons"),
    ("m²", "m2"),
    ("ft²", "ft2"),
    ("m³", "cubic_metres"),
    ("yd³", "yd3"),
    ("min", "min"),
    ("N", "n"),
    ("lbf", "lbf"),
    ("kg", "kg"),
    ("lb", "lb"),
    ("L", "l"),
    ("gal", "gal"),
    ("W/K", "w_k"),
];

/// A number of what a symbol stands for, in SI.
fn in_si(number: f64, symbol: &str) -> f64 {
    if let Some((_, name)) = SYMBOLS.iter().find(|(known, _)| *known == symbol) {
        let unit = unit(name).expect("a unit of the list");
        return match (unit.make)(number) {
            Known::Power(it) => it.to_si(),
            Known::Speed(it) => it.to_si(),
            Known::Torque(it) => it.to_si(),
            Known::Flow(it) => it.to_si(),
            Known::Pressure(it) => it.to_si(),
            Known::Displacement(it) => it.to_si(),
            Known::Length(it) => it.to_si(),
            Known::Velocity(it) => it.to_si(),
            Known::Viscosity(it) => it.to_si(),
            Known::Temperature(it) => it.to_kelvins(),
            Known::Density(it) => it.to_si(),
            Known::Force(it) => it.to_si(),
            Known::Mass(it) => it.to_si(),
            Known::Area(it) => it.to_si(),
            Known::Volume(it) => it.to_si(),
            Known::Time(it) => it.to_si(),
            Known::Conductance(it) => it.to_si(),
            other => panic!("{other:?} is never shown"),
        };
    }
    match symbol {
        "" => return number,
        "%" => return number / 100.0,
        "°" => return number.to_radians(),
        _ => {}
    }
    // So much an hour.
    if let Some(amount) = symbol.strip_suffix("/h") {
        return in_si(number, amount) / 3600.0;
    }
    // Energy for so much.
    let (energy, amount) = symbol.split_once('/').expect("a symbol that is known");
    let joules = match energy {
        "kWh" => in_si(number, "kW") * 3600.0,
        "hp·h" => in_si(number, "hp") * 3600.0,
        other => panic!("{other} is no energy"),
    };
    joules
        / match amount.split_once(' ') {
            Some((thousand, unit)) => in_si(thousand.parse().expect("a number"), unit),
            None if amount == "ton" => in_si(1.0, "tons"),
            None if amount == "km" => 1000.0,
            None => in_si(1.0, amount),
        }
}

proptest! {
    #![proptest_config(crate::cases(500))]

    #[test]
    fn a_number_comes_back(number in log(1e-6, 1e6), negative: bool) {
        let number = if negative { -number } else { number };
        let all = come_back!(number:
            Power { watts / to_watts, kilowatts / to_kilowatts, horsepower / to_horsepower,
                metric_horsepower / to_metric_horsepower }
            AngularSpeed { radians_per_second / to_radians_per_second, rpm / to_rpm }
            Torque { newton_metres / to_newton_metres, pound_feet / to_pound_feet,
                pound_inches / to_pound_inches }
            Pressure { pascals / to_pascals, bar / to_bar, psi / to_psi }
            Flow { cubic_metres_per_second / to_cubic_metres_per_second,
                litres_per_minute / to_litres_per_minute,
                us_gallons_per_minute / to_us_gallons_per_minute }
            Displacement { cubic_metres / to_cubic_metres,
                cubic_centimetres / to_cubic_centimetres, cubic_inches / to_cubic_inches }
            Length { metres / to_metres, centimetres / to_centimetres,
                millimetres / to_millimetres, inches / to_inches, feet / to_feet }
            Velocity { metres_per_second / to_metres_per_second,
                feet_per_second / to_feet_per_second,
                kilometres_per_hour / to_kilometres_per_hour,
                miles_per_hour / to_miles_per_hour }
            Viscosity { square_metres_per_second / to_square_metres_per_second,
                centistokes / to_centistokes }
            Density { kilograms_per_cubic_metre / to_kilograms_per_cubic_metre,
                pounds_per_cubic_foot / to_pounds_per_cubic_foot }
            Force { newtons / to_newtons, kilonewtons / to_kilonewtons,
                pounds_force / to_pounds_force }
            Mass { kilograms / to_kilograms, tonnes / to_tonnes, short_tons / to_short_tons,
                pounds / to_pounds }
            Area { square_metres / to_square_metres, square_inches / to_square_inches,
                square_feet / to_square_feet }
            Volume { cubic_metres / to_cubic_metres, litres / to_litres,
                us_gallons / to_us_gallons, cubic_yards / to_cubic_yards }
            Time { seconds / to_seconds, minutes / to_minutes, hours / to_hours }
            Conductance { watts_per_kelvin / to_watts_per_kelvin }
        );
        for (unit, back) in all {
            prop_assert!((back - number).abs() <= ROUNDING * number.abs(), "{unit}: {back}");
        }
    }

    /// What either system shows, and by its symbol back, is the same.
    #[test]
    fn whatever_is_shown_is_what_it_was(si in log(1e-6, 1e6)) {
        for quantity in every_kind(si) {
            for system in [UnitSystem::Metric, UnitSystem::Us] {
                let (number, symbol) = quantity.shown_in(system);
                let back = in_si(number, symbol);
                // Degrees have their zero at 273 K.
                let scale = match quantity {
                    Quantity::Temperature(_) => si + 500.0,
                    _ => si,
                };
                let off = (back - si).abs();
                prop_assert!(off <= ROUNDING * scale, "{back}, not {si}: {number} {symbol}");
            }
        }
    }

    /// What a reader enters is what a reader is shown, in either system.
    #[test]
    fn what_is_entered_is_shown(number in log(1e-3, 1e6)) {
        // Nobody enters these two.
        let entered = |kind: &Quantity| {
            !matches!(kind, Quantity::Velocity(_) | Quantity::WorkRate(..))
        };
        for kind in every_kind(1.0).into_iter().filter(entered) {
            for system in [UnitSystem::Metric, UnitSystem::Us] {
                let entered = kind.entered_in(system, number).expect("a kind that is entered");
                let (shown, unit) = entered.shown_in(system);
                // Degrees have their zero at 273 K.
                let scale = match kind {
                    Quantity::Temperature(_) => number + 500.0,
                    _ => number,
                };
                prop_assert!((shown - number).abs() <= ROUNDING * scale, "{shown} {unit}");
            }
        }
    }

    /// Metric and US show one and the same power: 1 hp is 0.745 699 872 kW (definition).
    #[test]
    fn both_systems_show_the_same_power(number in log(1e-3, 1e6)) {
        let power = Quantity::Power(Power::kilowatts(number));
        let (kilowatts, _) = power.shown_in(UnitSystem::Metric);
        let (horsepower, _) = power.shown_in(UnitSystem::Us);
        prop_assert!((kilowatts - horsepower * 0.745_699_872).abs() <= 1e-9 * number);
    }
}
