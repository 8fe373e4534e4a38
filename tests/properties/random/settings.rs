//! Random settings.

use super::log;
use farend_core::implement::{Ground, Implement};
use farend_core::machine::{Machine, Outlet};
use farend_core::measure::{Amount, Measure};
use farend_core::physics::oil::Grade;
use farend_core::quantity::{Density, Flow, Length, Power, Pressure, Temperature, Velocity};
use farend_core::settings::{
    AIR_LIMITS, ALTITUDE_LIMITS, DENSITY_LIMITS, DEPTH_LIMITS, ENGINE_POWER_LIMITS, FLOW_LIMITS,
    GROUND_SPEED_LIMITS, JOB_LIMITS, OIL_LIMITS, OilSettings, RELIEF_LIMITS, SLOPE_LIMITS,
    Settings,
};
use proptest::option;
use proptest::prelude::*;

/// What a user may turn, before a machine says how fast its engine can go.
#[derive(Clone, Copy, Debug)]
pub struct Turned {
    /// From the lowest to the rated speed.
    pub speed: Option<f64>,
    /// The engine's net power as a multiple of the yard's.
    pub engine_power: Option<f64>,
    /// The machine's own flow and relief, L/min and bar.
    pub own: (Option<f64>, Option<f64>),
    /// The pump pack's.
    pub pack: (Option<f64>, Option<f64>),
    /// The oil's temperature, °C.
    pub oil: Option<f64>,
    /// An outlet, whether the machine has it or not.
    pub outlet: Option<Outlet>,
    /// Whether the rear PTO runs in its economy gear, whether the machine has one or not.
    pub economy: bool,
    /// An oil in place of the machine's and the kit's.
    pub grade: Option<Grade>,
    /// The site.
    pub site: Site,
    /// Speed over ground as a part of the highest of the implement.
    pub ground_speed: Option<f64>,
    /// Rise over run.
    pub slope: Option<f64>,
    /// What is driven on.
    pub ground: Option<Ground>,
    /// Depth in m and density in kg/m³.
    pub layer: (Option<f64>, Option<f64>),
    /// A measure and a number of its SI units, tonnes for mass.
    pub job: Option<(Measure, f64)>,
}

/// Where the work is.
#[derive(Clone, Copy, Debug)]
pub struct Site {
    /// Altitude, m.
    pub metres: Option<f64>,
    /// The air, °C.
    pub celsius: Option<f64>,
}

/// Anything that may be turned, or nothing.
pub fn settings() -> BoxedStrategy<Turned> {
    let oil = || {
        (
            option::of(log(FLOW_LIMITS.0, FLOW_LIMITS.1)),
            option::of(log(RELIEF_LIMITS.0, RELIEF_LIMITS.1)),
        )
    };
    (
        (option::of(0.0..=1.0_f64), option::of(log(0.5, 2.0))),
        oil(),
        oil(),
        option::of(OIL_LIMITS.0..=OIL_LIMITS.1),
        (
            option::of(proptest::sample::select(Outlet::ALL)),
            any::<bool>(),
        ),
        option::of(proptest::sample::select(Grade::ALL)),
        site(),
        driving(),
        work(),
    )
        .prop_map(
            |(
                (speed, engine_power),
                own,
                pack,
                oil,
                (outlet, economy),
                grade,
                site,
                driving,
                (layer, job),
            )| {
                let (ground_speed, slope, ground) = driving;
                Turned {
                    speed,
                    engine_power,
                    own,
                    pack,
                    oil,
                    outlet,
                    economy,
                    grade,
                    site,
                    ground_speed,
                    slope,
                    ground,
                    layer,
                    job,
                }
            },
        )
        .boxed()
}

fn site() -> BoxedStrategy<Site> {
    (
        option::of(ALTITUDE_LIMITS.0..=ALTITUDE_LIMITS.1),
        option::of(AIR_LIMITS.0..=AIR_LIMITS.1),
    )
        .prop_map(|(metres, celsius)| Site { metres, celsius })
        .boxed()
}

fn driving() -> BoxedStrategy<(Option<f64>, Option<f64>, Option<Ground>)> {
    (
        option::of(0.0..=1.0_f64),
        option::of(SLOPE_LIMITS.0..=SLOPE_LIMITS.1),
        option::of(proptest::sample::select(Ground::ALL)),
    )
        .boxed()
}

type Layer = (Option<f64>, Option<f64>);

fn work() -> BoxedStrategy<(Layer, Option<(Measure, f64)>)> {
    let layer = (
        option::of(log(DEPTH_LIMITS.0, DEPTH_LIMITS.1)),
        option::of(log(DENSITY_LIMITS.0, DENSITY_LIMITS.1)),
    );
    let job = (
        proptest::sample::select(Measure::ALL),
        log(JOB_LIMITS.0, JOB_LIMITS.1),
    );
    (layer, option::of(job)).boxed()
}

impl Turned {
    /// As the settings of a machine with an implement.
    pub fn on(&self, machine: &Machine, implement: &Implement) -> Settings {
        let fastest = implement.travel.map_or(
            Velocity::kilometres_per_hour(GROUND_SPEED_LIMITS.1),
            |travel| travel.highest,
        );
        let engine = &machine.engine;
        let oil = |(flow, relief): (Option<f64>, Option<f64>)| OilSettings {
            flow: flow.map(Flow::litres_per_minute),
            relief: relief.map(Pressure::bar),
        };
        Settings {
            engine_speed: self
                .speed
                .map(|part| engine.lowest + (engine.rated - engine.lowest) * part),
            engine_power: self.engine_power.map(|times| {
                let [least, most] = [ENGINE_POWER_LIMITS.0, ENGINE_POWER_LIMITS.1];
                (engine.net.likely * times)
                    .max(Power::kilowatts(least))
                    .min(Power::kilowatts(most))
            }),
            own: oil(self.own),
            pack: oil(self.pack),
            oil: self.oil.map(Temperature::celsius),
            outlet: self.outlet,
            economy: self.economy,
            grade: self.grade,
            altitude: self.site.metres.map(Length::metres),
            air: self.site.celsius.map(Temperature::celsius),
            ground_speed: self.ground_speed.map(|part| fastest * part),
            slope: self.slope,
            ground: self.ground,
            depth: self.layer.0.map(Length::metres),
            density: self.layer.1.map(Density::kilograms_per_cubic_metre),
            job: self.job.map(|(measure, number)| match measure {
                Measure::Mass => Amount::of(measure, number * 1000.0),
                _ => Amount::of(measure, number),
            }),
        }
    }
}
