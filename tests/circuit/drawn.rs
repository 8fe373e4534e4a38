//! A circuit for any bytes.

use super::{Given, GivenGear, GivenHose, GivenHoses, GivenMotor, GivenPump, GivenValve};
use libm::{exp, log, sqrt};
use std::f64::consts::PI;

/// Two bytes a number; where they are used up, all that follow are zero.
struct Bytes<'b>(&'b [u8]);

impl Bytes<'_> {
    /// From 0 to 1.
    fn part(&mut self) -> f64 {
        let Some((number, rest)) = self.0.split_first_chunk() else {
            return 0.0;
        };
        self.0 = rest;
        f64::from(u16::from_le_bytes(*number)) / f64::from(u16::MAX)
    }

    fn even(&mut self, from: f64, to: f64) -> f64 {
        from + (to - from) * self.part()
    }

    /// Evenly in the logarithm.
    fn log(&mut self, from: f64, to: f64) -> f64 {
        exp(self.even(log(from), log(to)))
    }

    /// The number in this part of all cases. Its bytes are always taken.
    fn perhaps(&mut self, share: f64, number: f64) -> Option<f64> {
        (self.part() < share).then_some(number)
    }
}

impl Given {
    /// A circuit of parts of about one size, as `circuits.py` draws them, in somewhat wider ranges.
    pub fn drawn(bytes: &[u8]) -> Self {
        let mut bytes = Bytes(bytes);
        let (engine_kw, engine_rpm) = (bytes.log(5.0, 200.0), bytes.even(800.0, 3000.0));
        let gear_in_ratio = bytes.log(0.2, 3.0);
        let pump_rpm = engine_rpm * gear_in_ratio;
        let relief = bytes.even(60.0, 400.0);
        // The pump that the engine could drive at relief pressure, cm³, times a factor.
        let fitting = engine_kw * 1e3 / (relief * 1e5) / (pump_rpm / 60.0) * 1e6;
        let pump_cm3 = bytes.log(0.2, 2.0) * fitting;
        let flow = pump_cm3 * pump_rpm / 1e3;
        let motor_rpm = bytes.log(300.0, 3000.0);
        let motor_cm3 = flow / motor_rpm * 1e3;
        let motor_bar = relief * bytes.log(0.5, 2.0);
        let gear_out_ratio = bytes.log(0.2, 2.0);
        // T = V·Δp/2π
        let torque = |cm3: f64| cm3 * relief * 0.1 / (2.0 * PI);
        let (torque_in, torque_out) = (torque(pump_cm3), torque(motor_cm3) / gear_out_ratio);
        let rating_in = torque_in * bytes.log(0.5, 2.0);
        let rating_out = torque_out * bytes.log(0.3, 2.0);
        let demand = flow * bytes.even(0.3, 1.0);
        let steering = flow * bytes.even(0.03, 0.5);
        let divert = flow * bytes.even(0.2, 1.0);
        Self {
            engine_kw,
            engine_rpm,
            viscosity_cst: bytes.log(5.0, 800.0),
            density_kg_m3: bytes.even(820.0, 920.0),
            gear_in: GivenGear {
                ratio: gear_in_ratio,
                efficiency: bytes.even(0.7, 1.0),
                rating_nm: bytes.perhaps(0.5, rating_in),
            },
            pump: GivenPump {
                displacement_cm3: pump_cm3,
                rated_rpm: pump_rpm * bytes.log(0.5, 2.0),
                rated_bar: relief * bytes.log(0.5, 1.5),
                volumetric: bytes.even(0.7, 1.0),
                hydro_mechanical: bytes.even(0.7, 1.0),
                relief_bar: relief,
                demand_l_min: bytes.perhaps(0.4, demand),
            },
            steering_l_min: bytes.perhaps(0.5, steering).unwrap_or(0.0),
            divert_l_min: bytes.perhaps(0.5, divert),
            valve: GivenValve {
                drop_bar: bytes.even(1.0, 30.0),
                at_l_min: bytes.perhaps(0.6, flow),
            },
            hoses: GivenHoses {
                supply: hose(&mut bytes, flow),
                back: hose(&mut bytes, flow),
                couplers: bytes.even(0.0, 6.0),
                coupler_bar: bytes.even(0.2, 5.0),
                fittings: bytes.even(0.0, 10.0),
                coupler_l_min: flow * bytes.even(0.5, 1.5),
            },
            motor: GivenMotor {
                displacement_cm3: motor_cm3,
                rated_rpm: motor_rpm * bytes.log(0.5, 2.0),
                rated_bar: motor_bar,
                volumetric: bytes.even(0.7, 1.0),
                hydro_mechanical: bytes.even(0.7, 1.0),
                highest_bar: motor_bar,
            },
            gear_out: GivenGear {
                ratio: gear_out_ratio,
                efficiency: bytes.even(0.7, 1.0),
                rating_nm: bytes.perhaps(0.5, rating_out),
            },
        }
    }
}

fn hose(bytes: &mut Bytes<'_>, flow_l_min: f64) -> GivenHose {
    let velocity = bytes.log(1.0, 15.0);
    GivenHose {
        // d = √(4·Q/(π·v))
        bore_mm: sqrt(4.0 * flow_l_min / 60e3 / (PI * velocity)) * 1e3,
        length_m: bytes.log(0.3, 20.0),
        relative_roughness: bytes.even(0.0, 1e-2),
    }
}
