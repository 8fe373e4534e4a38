//! Every unit comes back as it went in.

use crate::random::log;
use farend_core::quantity::{
    AngularSpeed, Density, Displacement, Flow, Length, Power, Pressure, Torque, Velocity, Viscosity,
};
use farend_core::units::{Quantity, UnitSystem};
use proptest::prelude::*;

/// Rounding of one product and one quotient, relative.
const ROUNDING: f64 = 1e-12;

macro_rules! come_back {
    ($number:ident: $( $type:ident { $( $make:ident / $read:ident ),+ } )+) => {
        [$( $( (stringify!($make), $type::$make($number).$read()), )+ )+]
    };
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
            Length { metres / to_metres, millimetres / to_millimetres, inches / to_inches,
                feet / to_feet }
            Velocity { metres_per_second / to_metres_per_second,
                feet_per_second / to_feet_per_second }
            Viscosity { square_metres_per_second / to_square_metres_per_second,
                centistokes / to_centistokes }
            Density { kilograms_per_cubic_metre / to_kilograms_per_cubic_metre }
        );
        for (unit, back) in all {
            prop_assert!((back - number).abs() <= ROUNDING * number.abs(), "{unit}: {back}");
        }
    }

    /// What a reader enters is what a reader is shown, in either system.
    #[test]
    fn what_is_entered_is_shown(number in log(1e-3, 1e6)) {
        for kind in [
            Quantity::Speed(AngularSpeed::ZERO),
            Quantity::Flow(Flow::ZERO),
            Quantity::Pressure(Pressure::ZERO),
        ] {
            for system in [UnitSystem::Metric, UnitSystem::Us] {
                let entered = kind.entered_in(system, number).expect("a kind that is entered");
                let (shown, unit) = entered.shown_in(system);
                prop_assert!((shown - number).abs() <= ROUNDING * number, "{shown} {unit}");
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
