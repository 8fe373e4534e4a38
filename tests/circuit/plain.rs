//! A circuit solved the slow way, in plain numbers straight from the equations: everything at a pressure
//! at the pump's outlet, and that pressure by halving. Nothing of the core has a part in it.
//!
//! Equations: Wilson's model (from memory) and Darcy-Weisbach with Haaland's formula, as in
//! `tests/reference/circuits.py`, whose figures `tests/reference.rs` holds this against.

use super::{Given, GivenHose, GivenHoses, GivenValve, Held, RATED_CST};
use libm::{log10, pow};
use std::f64::consts::PI;

const KW: f64 = 1e3;
const BAR: f64 = 1e5;
const L_MIN: f64 = 1.0 / 60e3;
const RPM: f64 = 2.0 * PI / 60.0;
const CM3: f64 = 1e-6;
const CST: f64 = 1e-6;
const MM: f64 = 1e-3;

/// This project's judgement, as in the core.
const DRAG_SHARE: f64 = 0.5;
/// Where the transition begins: this project's judgement, as in the core and in
/// `tests/reference/friction.py`.
pub const LAMINAR_UP_TO: f64 = 2000.0;
/// The other end.
pub const TURBULENT_FROM: f64 = 4000.0;

/// Pressures tried before the best is refined: no assumption that there is but one peak.
const TRIED: u16 = 400;
/// So often an interval is halved: down to the last digit.
const HALVINGS: usize = 60;
/// So often an interval about a peak loses a third: down to half of all digits and some more.
const THIRDS: usize = 60;

/// A circuit at the most that arrives.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Solved {
    /// What arrives; 0 where nothing does.
    pub delivered_kw: f64,
    /// At the pump's outlet.
    pub pump_l_min: f64,
    /// At the pump's outlet.
    pub pump_bar: f64,
    /// What holds it there.
    pub held: Held,
}

/// Everything at one pressure, in SI.
struct At {
    engine: f64,
    pump_torque: f64,
    flow: f64,
    difference: f64,
    rotor_torque: f64,
    delivered: f64,
}

/// A pump's or motor's displacement for each radian, and the coefficients of its losses.
struct Coefficients {
    displacement: f64,
    slip: f64,
    dry: f64,
    viscous: f64,
}

impl Coefficients {
    fn new(cm3: f64, (rpm, bar): (f64, f64), leakage: f64, torque_lost: f64) -> Self {
        // μ·ω/Δp at the rated point
        let rated = RATED_CST * CST * rpm * RPM / (bar * BAR);
        Self {
            // D = V/2π
            displacement: cm3 * CM3 / (2.0 * PI),
            slip: leakage * rated,
            dry: torque_lost * (1.0 - DRAG_SHARE),
            viscous: torque_lost * DRAG_SHARE / rated,
        }
    }

    /// Q_s = C_s·D·Δp/μ
    fn leak(&self, pressure: f64, viscosity: f64) -> f64 {
        self.slip * self.displacement * pressure / viscosity
    }

    /// T_loss = C_f·D·Δp + C_d·D·μ·ω
    fn rub(&self, pressure: f64, viscosity: f64, speed: f64) -> f64 {
        self.displacement * (self.dry * pressure + self.viscous * viscosity * speed)
    }
}

impl Given {
    /// The circuit at the most that arrives.
    pub fn solved(&self) -> Solved {
        let (highest, held) = self.highest();
        let (pressure, held) = self.best(highest, held);
        let at = self.at(pressure);
        Solved {
            delivered_kw: at.delivered / KW,
            pump_l_min: at.flow / L_MIN,
            pump_bar: pressure / BAR,
            held,
        }
    }

    /// Kilowatts that arrive at a pressure at the pump's outlet, in bar, whether it's allowed or not.
    pub fn arrives_kw(&self, bar: f64) -> f64 {
        self.at(bar * BAR).delivered / KW
    }

    /// The highest pressure at the pump's outlet that every limit allows, in bar.
    pub fn highest_bar(&self) -> f64 {
        self.highest().0 / BAR
    }

    fn at(&self, pressure: f64) -> At {
        let (pump, motor) = (&self.pump, &self.motor);
        let viscosity = self.viscosity_cst * CST;
        let speed = self.engine_rpm * RPM * self.gear_in.ratio;
        let of_pump = Coefficients::new(
            pump.displacement_cm3,
            (pump.rated_rpm, pump.rated_bar),
            1.0 - pump.volumetric,
            1.0 / pump.hydro_mechanical - 1.0,
        );
        let of_motor = Coefficients::new(
            motor.displacement_cm3,
            (motor.rated_rpm, motor.rated_bar),
            1.0 / motor.volumetric - 1.0,
            1.0 - motor.hydro_mechanical,
        );

        // Q = x·D·ω − Q_s, x = 1 or what gives the flow that is asked for
        let leak = of_pump.leak(pressure, viscosity);
        let most = of_pump.displacement * speed - leak;
        let flow = pump
            .demand_l_min
            .map_or(most, |asked| most.min(asked * L_MIN));
        // T = x·D·Δp + T_loss
        let pump_torque =
            (flow + leak) / speed * pressure + of_pump.rub(pressure, viscosity, speed);

        let rest = (flow - self.steering_l_min * L_MIN).max(0.0);
        let used = self
            .divert_l_min
            .map_or(rest, |most| rest.min(most * L_MIN));
        let lines = self.hoses.drop(used, viscosity, self.density_kg_m3);
        let difference = pressure - self.valve.drop(used) - lines;

        // D·ω = Q − Q_s
        let leak = of_motor.leak(difference, viscosity);
        let motor_speed = (used - leak).max(0.0) / of_motor.displacement;
        // T = D·Δp − T_loss
        let torque =
            of_motor.displacement * difference - of_motor.rub(difference, viscosity, motor_speed);
        let turns = used > 0.0 && difference > 0.0 && motor_speed > 0.0 && torque > 0.0;
        At {
            engine: pump_torque * speed / self.gear_in.efficiency,
            pump_torque,
            flow,
            difference,
            rotor_torque: torque * self.gear_out.efficiency / self.gear_out.ratio,
            delivered: if turns {
                torque * motor_speed * self.gear_out.efficiency
            } else {
                0.0
            },
        }
    }

    /// The highest pressure that every limit allows, and the limit.
    fn highest(&self) -> (f64, Held) {
        type Figure = fn(&At) -> f64;
        let limits: [(Held, Figure, Option<f64>); 4] = [
            (Held::Engine, |at| at.engine, Some(self.engine_kw * KW)),
            (
                Held::Motor,
                |at| at.difference,
                Some(self.motor.highest_bar * BAR),
            ),
            (Held::GearIn, |at| at.pump_torque, self.gear_in.rating_nm),
            (Held::GearOut, |at| at.rotor_torque, self.gear_out.rating_nm),
        ];
        let mut highest = (self.pump.relief_bar * BAR, Held::Relief);
        for (held, figure, most) in limits {
            let Some(most) = most else { continue };
            let is_over = |pressure| figure(&self.at(pressure)) > most;
            if !is_over(highest.0) {
                continue;
            }
            let (mut from, mut to) = (0.0, highest.0);
            for _ in 0..HALVINGS {
                let middle = (from + to) / 2.0;
                if is_over(middle) {
                    to = middle;
                } else {
                    from = middle;
                }
            }
            highest = (from, held);
        }
        highest
    }

    /// The pressure up to the highest at which most arrives.
    fn best(&self, highest: f64, held: Held) -> (f64, Held) {
        let arrives = |pressure| self.at(pressure).delivered;
        let step = highest / f64::from(TRIED);
        let tried = (0..=TRIED).map(|place| f64::from(place) * step);
        let tried = tried.map(|pressure| (pressure, arrives(pressure)));
        let about = tried
            .max_by(|a, b| a.1.total_cmp(&b.1))
            .map_or(highest, |(pressure, _)| pressure);
        let (mut from, mut to) = ((about - step).max(0.0), (about + step).min(highest));
        for _ in 0..THIRDS {
            let third = (to - from) / 3.0;
            if arrives(from + third) < arrives(to - third) {
                from += third;
            } else {
                to -= third;
            }
        }
        let peak = (from + to) / 2.0;
        if arrives(highest) >= arrives(peak) {
            (highest, held)
        } else {
            (peak, Held::Flow)
        }
    }
}

impl GivenValve {
    fn drop(&self, flow: f64) -> f64 {
        match self.at_l_min {
            // Δp = Δp_r·(Q/Q_r)²
            Some(at) => self.drop_bar * BAR * (flow / (at * L_MIN)) * (flow / (at * L_MIN)),
            None => self.drop_bar * BAR,
        }
    }
}

impl GivenHoses {
    /// Both hoses with their fittings, and the couplers.
    fn drop(&self, flow: f64, viscosity: f64, density: f64) -> f64 {
        let part = flow / (self.coupler_l_min * L_MIN);
        let couplers = self.couplers * self.coupler_bar * BAR * part * part;
        let hoses = [&self.supply, &self.back];
        let hoses = hoses.map(|hose| hose.drop(flow, viscosity, density, self.fittings));
        couplers + hoses[0] + hoses[1]
    }
}

impl GivenHose {
    fn drop(&self, flow: f64, viscosity: f64, density: f64, fittings: f64) -> f64 {
        if flow <= 0.0 {
            return 0.0;
        }
        let bore = self.bore_mm * MM;
        // v = 4·Q/(π·d²), Re = v·d/ν
        let velocity = 4.0 * flow / (PI * bore * bore);
        let factor = self.friction(velocity * bore / viscosity);
        // Δp = (f·L/d + ΣK)·ρ·v²/2
        (factor * self.length_m / bore + fittings) * density * velocity * velocity / 2.0
    }

    fn friction(&self, reynolds: f64) -> f64 {
        // f = 64/Re
        let laminar = |reynolds: f64| 64.0 / reynolds;
        // 1/√f = −1.8·log₁₀((ε/D/3.7)^1.11 + 6.9/Re)
        let turbulent = |reynolds: f64| {
            let root = -1.8 * log10(pow(self.relative_roughness / 3.7, 1.11) + 6.9 / reynolds);
            1.0 / (root * root)
        };
        if reynolds <= LAMINAR_UP_TO {
            laminar(reynolds)
        } else if reynolds >= TURBULENT_FROM {
            turbulent(reynolds)
        } else {
            let (from, to) = (laminar(LAMINAR_UP_TO), turbulent(TURBULENT_FROM));
            from + (to - from) * (reynolds - LAMINAR_UP_TO) / (TURBULENT_FROM - LAMINAR_UP_TO)
        }
    }
}
