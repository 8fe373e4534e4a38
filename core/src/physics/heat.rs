//! Heat in an oil circuit: what the tank sheds, how fast the oil warms, what a cooler must do.

use crate::quantity::{
    Area, Conductance, Density, FilmCoefficient, Flow, HeatCapacity, Power, Pressure, SpecificHeat,
    Temperature, TemperatureDifference, Time, Volume,
};
use libm::{log1p, pow};

/// The film coefficient of the rule hp = 0.001·A(ft²)·ΔT(°F).
///
/// Source: Sullivan, *Fluid Power: Theory & Applications*, 14.6 and 14.7.
pub fn still_air_by_horsepower_rule() -> FilmCoefficient {
    FilmCoefficient::horsepower_per_square_foot_fahrenheit(0.001)
}

/// The film coefficient of the rule 2.0 Btu/h for each square foot and °F: about a fifth below the other.
///
/// Source: precisionfluidpower.com/thermal-formulas.
pub fn still_air_by_btu_rule() -> FilmCoefficient {
    FilmCoefficient::btu_per_hour_square_foot_fahrenheit(2.0)
}

/// Heat that a surface sheds.
///
/// Equation: P = U·A·(T − T_a). Units: SI. Valid range: T not below T_a; below, the tank takes up
/// heat and the result is negative. Source: definition of the film coefficient.
pub fn natural_loss(
    film: FilmCoefficient,
    area: Area,
    oil: Temperature,
    air: Temperature,
) -> Power {
    // P = U·A·(T − T_a)
    film * area * (oil - air)
}

/// Temperature at which a steady heat is all shed.
///
/// Equation: T = T_a + P/UA. Units: SI. Valid range: UA above zero. Source: balance of heat.
pub fn steady_temperature(heat: Power, shed: Conductance, air: Temperature) -> Temperature {
    // T = T_a + P/UA
    air + heat / shed
}

/// How much oil warms up where all of a pressure drop stays in it.
///
/// Equation: ΔT = Δp/(ρ·c_p). Units: SI. Valid range: ρ and c_p above zero.
/// Source: balance of energy; worked example Esposito 11.3.
pub fn adiabatic_rise(
    drop: Pressure,
    density: Density,
    specific_heat: SpecificHeat,
) -> TemperatureDifference {
    // ΔT = Δp/(ρ·c_p)
    TemperatureDifference::kelvins(drop.to_si() / (density.to_si() * specific_heat.to_si()))
}

/// Specific heat of mineral oil: 1.8 kJ/(kg·K), Esposito 11.3.
pub fn oil_specific_heat() -> SpecificHeat {
    SpecificHeat::kilojoules_per_kilogram_kelvin(1.8)
}

/// Heat that the oil in a tank takes up for each kelvin.
///
/// Equation: C = ρ·V·c_p. Units: SI. Valid range: any; the steel's share isn't counted.
/// Source: definition.
pub fn heat_capacity(
    volume: Volume,
    density: Density,
    specific_heat: SpecificHeat,
) -> HeatCapacity {
    // C = ρ·V·c_p
    density * volume * specific_heat
}

/// A tank that warms up under a constant heat.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Warming {
    /// Temperature at the start, not below the air's.
    pub start: Temperature,
    /// Temperature of the air.
    pub air: Temperature,
    /// Heat put in, from 0.
    pub heat: Power,
    /// Heat shed for each kelvin above the air, from 0.
    pub shed: Conductance,
    /// Heat taken up for each kelvin, above zero.
    pub capacity: HeatCapacity,
}

impl Warming {
    /// Time until the oil reaches a limit: zero where it is there already, `None` where it never
    /// gets there.
    ///
    /// Equation: C·dT/dt = P − UA·(T − T_a), so t = −(C/UA)·ln(1 − UA·(T_l − T₀)/(P − UA·(T₀ − T_a)));
    /// t = C·(T_l − T₀)/P where UA is zero.
    /// Units: SI. Valid range: see the fields. Source: balance of heat, solved for t.
    pub fn time_to(&self, limit: Temperature) -> Option<Time> {
        if limit <= self.start {
            return Some(Time::ZERO);
        }
        let climb = limit - self.start;
        let net = self.heat - self.shed * (self.start - self.air);
        if net <= self.shed * climb {
            return None;
        }
        if self.shed == Conductance::ZERO {
            // t = C·(T_l − T₀)/P
            return Some(Time::seconds(
                self.capacity.to_si() * climb.to_kelvins() / net.to_watts(),
            ));
        }
        // t = −(C/UA)·ln(1 − UA·(T_l − T₀)/(P − UA·(T₀ − T_a)))
        Some(self.capacity / self.shed * -log1p(-(self.shed * climb / net)))
    }
}

/// Heat that a cooler must take at a limit: none where the tank alone sheds enough.
///
/// Equation: P_c = P − UA·(T_l − T_a), not below 0. Units: SI. Valid range: T_l above T_a.
/// Source: balance of heat.
pub fn cooler_duty(heat: Power, shed: Conductance, limit: Temperature, air: Temperature) -> Power {
    // P_c = P − UA·(T_l − T_a)
    (heat - shed * (limit - air)).max(Power::ZERO)
}

/// Size of a cooler that takes a heat at a limit.
///
/// Equation: UA_c = P_c/(T_l − T_a). Units: SI. Valid range: T_l above T_a. Source: definition.
pub fn cooler_size(duty: Power, limit: Temperature, air: Temperature) -> Conductance {
    // UA_c = P_c/(T_l − T_a)
    duty / (limit - air)
}

/// Smallest tank: as much as flows in a minute.
///
/// Equation: V = Q·1 min. Units: SI. Valid range: Q from 0.
/// Source: US Army TM 5-3820-256-24-2, chapter 7, waterstorage.tpub.com: a gallon or more for
/// each gallon a minute.
pub fn smallest_tank(flow: Flow) -> Volume {
    // V = Q·1 min
    flow * Time::minutes(1.0)
}

/// Usual tank: three times as much as flows in a minute.
///
/// Equation: V = Q·3 min. Units: SI. Valid range: Q from 0.
/// Source: hydrauliclearning.com, an exercise: 45 gallons for 15 gallons a minute.
pub fn usual_tank(flow: Flow) -> Volume {
    // V = Q·3 min
    flow * Time::minutes(3.0)
}

/// Surface of a tank that sheds heat: a box half as long again as wide and high, without its
/// bottom.
///
/// Equation: A = 6.5·(V/1.5)^(2/3): top 1.5, long sides 3, ends 2, in squares of the width.
/// Units: SI. Valid range: V from 0. Source: the shape is this project's judgement.
pub fn tank_surface(volume: Volume) -> Area {
    // A = 6.5·(V/1.5)^(2/3)
    Area::square_metres(6.5 * pow(volume.to_si() / 1.5, 2.0 / 3.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn warming(shed: f64) -> Warming {
        Warming {
            start: Temperature::celsius(30.0),
            air: Temperature::celsius(20.0),
            heat: Power::watts(1000.0),
            shed: Conductance::watts_per_kelvin(shed),
            capacity: HeatCapacity::joules_per_kelvin(50e3),
        }
    }

    #[test]
    fn a_limit_beyond_the_steady_temperature_is_never_reached() {
        // 1000 W over 20 W/K is 50 K above the air's 20 °C.
        let time = |limit| warming(20.0).time_to(Temperature::celsius(limit));
        assert!(time(69.9).is_some());
        assert_eq!(time(70.1), None);
        assert_eq!(time(30.0), Some(Time::ZERO));
        assert_eq!(time(10.0), Some(Time::ZERO));
        let cold = Warming {
            heat: Power::ZERO,
            ..warming(0.0)
        };
        assert_eq!(cold.time_to(Temperature::celsius(31.0)), None);
    }

    #[test]
    fn a_tank_that_sheds_hardly_anything_warms_as_one_that_sheds_nothing() {
        let limit = Temperature::celsius(80.0);
        let linear = warming(0.0).time_to(limit).unwrap();
        let nearly = warming(1e-9).time_to(limit).unwrap();
        assert_eq!(linear, Time::seconds(2500.0));
        assert!((nearly / linear - 1.0).abs() < 1e-9);
    }

    #[test]
    fn a_cooler_that_is_not_needed_takes_nothing() {
        let (limit, air) = (Temperature::celsius(80.0), Temperature::celsius(20.0));
        let shed = Conductance::watts_per_kelvin(20.0);
        assert_eq!(
            cooler_duty(Power::watts(1000.0), shed, limit, air),
            Power::ZERO
        );
    }
}
