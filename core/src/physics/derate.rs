//! What thin, hot or damp air takes of an engine's power.

use crate::physics::GRAVITY;
use crate::quantity::{Length, Power, Pressure, Temperature, TemperatureDifference};
use libm::{exp, pow};

/// The air that an engine breathes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Air {
    /// Absolute pressure, above that of the water in it.
    pub pressure: Pressure,
    /// Temperature at the intake.
    pub temperature: Temperature,
    /// Relative humidity, 0 to 1.
    pub humidity: f64,
    /// Temperature of what cools the charge air; without effect where it isn't cooled.
    pub coolant: Temperature,
}

impl Air {
    /// The reference: 100 kPa, 298.15 K (coolant too), 30 % humidity.
    ///
    /// Source: ISO 3046-1, from memory.
    pub fn reference() -> Self {
        Self {
            pressure: Pressure::pascals(100e3),
            temperature: Temperature::kelvins(298.15),
            humidity: 0.3,
            coolant: Temperature::kelvins(298.15),
        }
    }

    /// Pressure without the part of the water that counts.
    fn dry(&self, a: f64) -> Pressure {
        self.pressure - saturation_pressure(self.temperature) * (a * self.humidity)
    }
}

/// How a kind of engine answers to its air.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Exponents {
    /// Whether humidity counts, 0 or 1.
    pub a: f64,
    /// For the pressure.
    pub m: f64,
    /// For the air's temperature.
    pub n: f64,
    /// For the coolant's temperature.
    pub q: f64,
}

/// Diesel without a turbocharger: ISO 3046-1, from memory; checked by a worked example.
pub const NATURALLY_ASPIRATED: Exponents = Exponents {
    a: 1.0,
    m: 1.0,
    n: 0.75,
    q: 0.0,
};
/// Diesel with a turbocharger: ISO 3046-1, from memory.
pub const TURBOCHARGED: Exponents = Exponents {
    a: 0.0,
    m: 0.7,
    n: 2.0,
    q: 0.0,
};
/// Diesel with a turbocharger and cooled charge air: ISO 3046-1, from memory.
pub const TURBOCHARGED_COOLED: Exponents = Exponents {
    a: 0.0,
    m: 0.7,
    n: 1.2,
    q: 1.0,
};

/// Ratio of indicated power in other air to that in the reference's.
///
/// Equation: k = ((p_x − a·φ_x·p_sx)/(p_r − a·φ_r·p_sr))^m · (T_r/T_x)^n · (T_cr/T_cx)^q.
/// Units: SI, pressures absolute. Valid range: −10 to 50 °C, φ 0 to 1, p_x from 55 kPa; above 1 in
/// better air, which not every maker lets an engine use.
/// Source: ISO 3046-1 form, from memory; worked example in Mathur & Sharma, 27.1.
pub fn indicated_ratio(exponents: Exponents, site: Air) -> f64 {
    let Exponents { a, m, n, q } = exponents;
    let reference = Air::reference();
    let ratio = |r: Temperature, x: Temperature| r.to_kelvins() / x.to_kelvins();
    // k = ((p_x − a·φ_x·p_sx)/(p_r − a·φ_r·p_sr))^m · (T_r/T_x)^n · (T_cr/T_cx)^q
    pow(site.dry(a) / reference.dry(a), m)
        * pow(ratio(reference.temperature, site.temperature), n)
        * pow(ratio(reference.coolant, site.coolant), q)
}

/// Factor on the brake power.
///
/// Equation: α = k − 0.7·(1 − k)·(1/η_m − 1). Units: ratios. Valid range: k from 0.5, η_m 0.7 to 1.
/// Source: ISO 3046-1 form, from memory; worked example in Mathur & Sharma, 27.1.
pub fn brake_factor(indicated_ratio: f64, mechanical_efficiency: f64) -> f64 {
    let k = indicated_ratio;
    // α = k − 0.7·(1 − k)·(1/η_m − 1)
    k - 0.7 * (1.0 - k) * (1.0 / mechanical_efficiency - 1.0)
}

/// Pressure of saturated water vapour over water.
///
/// Equation: p_s = 611.21 Pa·exp((18.678 − t/234.5)·t/(257.14 + t)), t in °C.
/// Units: SI. Valid range: −10 to 50 °C.
/// Source: Arden Buck's equation of 1996, Buck Research CR-1A manual, appendix 1, as reproduced in
/// en.wikipedia.org/wiki/Arden_Buck_equation.
pub fn saturation_pressure(temperature: Temperature) -> Pressure {
    let t = temperature.to_celsius();
    // p_s = 611.21 Pa·exp((18.678 − t/234.5)·t/(257.14 + t))
    Pressure::pascals(611.21 * exp((18.678 - t / 234.5) * t / (257.14 + t)))
}

/// Pressure of the standard atmosphere, absolute.
///
/// Equation: p = p₀·(1 − L·h/T₀)^(g/(R·L)), p₀ = 101 325 Pa, T₀ = 288.15 K, L = 0.0065 K/m,
/// R = 287.052 87 J/(kg·K). Units: SI. Valid range: −1000 to 11 000 m.
/// Source: ISO 2533 (International Standard Atmosphere), constants from memory.
pub fn standard_pressure(altitude: Length) -> Pressure {
    let (p_0, t_0, lapse, r) = (101_325.0, 288.15, 0.0065, 287.052_87);
    let h = altitude.to_metres();
    // p = p₀·(1 − L·h/T₀)^(g/(R·L))
    Pressure::pascals(p_0 * pow(1.0 - lapse * h / t_0, GRAVITY / (r * lapse)))
}

/// Plain rule: so much lost for each step above a start.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlainRule<T, Step> {
    /// Part of the power lost for each step.
    pub loss: f64,
    /// The step, above zero.
    pub step: Step,
    /// Where it starts.
    pub start: T,
}

impl PlainRule<Length, Length> {
    /// For altitude, naturally aspirated: 3 % for each 1000 ft above 500 ft.
    ///
    /// Source: progressivegardening.com, agricultural engineering, altitude. The same page wants
    /// nothing taken from turbocharged engines; a US mine-safety note (msha.gov) disagrees for some.
    pub fn altitude() -> Self {
        Self {
            loss: 0.03,
            step: Length::feet(1000.0),
            start: Length::feet(500.0),
        }
    }
}

impl PlainRule<Temperature, TemperatureDifference> {
    /// For temperature, petrol: 1 % for each 10 °F above 85 °F.
    ///
    /// Source: progressivegardening.com, agricultural engineering, temperature.
    pub fn petrol() -> Self {
        Self {
            loss: 0.01,
            step: TemperatureDifference::fahrenheit_degrees(10.0),
            start: Temperature::fahrenheit(85.0),
        }
    }

    /// For temperature, diesel: 1 % for each 5 °F above 85 °F.
    ///
    /// Source: as for petrol.
    pub fn diesel() -> Self {
        Self {
            step: TemperatureDifference::fahrenheit_degrees(5.0),
            ..Self::petrol()
        }
    }
}

impl<T, Step> PlainRule<T, Step>
where
    T: Copy + PartialOrd + core::ops::Sub<Output = Step>,
    Step: Copy + core::ops::Div<Output = f64>,
{
    /// What the rule leaves of a power: all of it below the start.
    ///
    /// Equation: P = P_r·(1 − loss·(x − start)/step) for x above the start. Units: SI. Valid range:
    /// until nothing is left; the caller keeps to it. Source: that of the rule.
    pub fn left_of(&self, power: Power, at: T) -> Power {
        if at <= self.start {
            return power;
        }
        // P = P_r·(1 − loss·(x − start)/step)
        power * (1.0 - self.loss * ((at - self.start) / self.step))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn coolant_counts_only_where_charge_air_is_cooled() {
        let ratio = |exponents, celsius| {
            let site = Air {
                coolant: Temperature::celsius(celsius),
                ..Air::reference()
            };
            indicated_ratio(exponents, site)
        };
        for exponents in [NATURALLY_ASPIRATED, TURBOCHARGED] {
            assert_eq!(ratio(exponents, 20.0), ratio(exponents, 60.0));
        }
        assert!(ratio(TURBOCHARGED_COOLED, 20.0) > ratio(TURBOCHARGED_COOLED, 60.0));
    }
}
