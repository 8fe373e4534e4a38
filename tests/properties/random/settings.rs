//! Random settings.

use super::log;
use farend_core::machine::{Machine, Outlet};
use farend_core::quantity::{Flow, Pressure, Temperature};
use farend_core::settings::{FLOW_LIMITS, OIL_LIMITS, OilSettings, RELIEF_LIMITS, Settings};
use proptest::option;
use proptest::prelude::*;

/// What a user may turn, before a machine says how fast its engine can go.
#[derive(Clone, Copy, Debug)]
pub struct Turned {
    /// From the lowest to the rated speed.
    pub speed: Option<f64>,
    /// The machine's own flow and relief, L/min and bar.
    pub own: (Option<f64>, Option<f64>),
    /// The pump pack's.
    pub pack: (Option<f64>, Option<f64>),
    /// The oil's temperature, °C.
    pub oil: Option<f64>,
    /// An outlet, whether the machine has it or not.
    pub outlet: Option<Outlet>,
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
        option::of(0.0..=1.0_f64),
        oil(),
        oil(),
        option::of(OIL_LIMITS.0..=OIL_LIMITS.1),
        option::of(proptest::sample::select(Outlet::ALL)),
    )
        .prop_map(|(speed, own, pack, oil, outlet)| Turned {
            speed,
            own,
            pack,
            oil,
            outlet,
        })
        .boxed()
}

impl Turned {
    /// As a machine's settings.
    pub fn on(&self, machine: &Machine) -> Settings {
        let engine = &machine.engine;
        let oil = |(flow, relief): (Option<f64>, Option<f64>)| OilSettings {
            flow: flow.map(Flow::litres_per_minute),
            relief: relief.map(Pressure::bar),
        };
        Settings {
            engine_speed: self
                .speed
                .map(|part| engine.lowest + (engine.rated - engine.lowest) * part),
            own: oil(self.own),
            pack: oil(self.pack),
            oil: self.oil.map(Temperature::celsius),
            outlet: self.outlet,
        }
    }
}
