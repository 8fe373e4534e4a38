//! Limits of a machine and an implement that are lifted, to see whether they are in the way.

use super::scene::Scene;
use crate::implement::Implement;
use crate::machine::{Machine, Pto};
use crate::quantity::{Flow, Pressure};
use crate::settings::{FLOW_LIMITS, RELIEF_LIMITS, Settings};

/// Limits to lift.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Lift {
    pub engine: bool,
    pub shafts: bool,
    /// The motor's highest flow: to the most that can be set.
    pub flow: bool,
    /// The motor's highest pressure: to this.
    pub pressure: Option<Pressure>,
}

/// So many times the engine's power is enough for everything.
const STRONG: f64 = 1e3;

fn highest_pressure() -> Pressure {
    Pressure::bar(RELIEF_LIMITS.1)
}

/// In the order in which they are lifted: the fewest first.
pub(super) fn lifts(scene: &Scene<'_>) -> Vec<Lift> {
    let none = Lift::default();
    let engine = Lift {
        engine: true,
        ..none
    };
    if !scene.route.needs_oil() {
        // In proportion: all that is in the way shows at once.
        return vec![Lift {
            shafts: true,
            ..engine
        }];
    }
    let flow = Lift { flow: true, ..none };
    let pressure = Lift {
        pressure: Some(highest_pressure()),
        ..none
    };
    let motor = Lift {
        flow: true,
        ..pressure
    };
    let shafts = Lift {
        shafts: true,
        ..none
    };
    let mut all = vec![engine, pressure, flow, motor];
    if scene.is_pack() {
        all.extend([
            shafts,
            Lift {
                shafts: true,
                ..motor
            },
        ]);
    }
    let with_engine = |lift: &Lift| Lift {
        engine: true,
        ..*lift
    };
    let both: Vec<_> = all.iter().skip(1).map(with_engine).collect();
    all.extend(both);
    all
}

impl Lift {
    /// The machine with what is lifted of it.
    pub fn machine(&self, machine: &Machine) -> Machine {
        let mut machine = machine.clone();
        if self.engine {
            machine.engine.net = machine.engine.net.map(|power| power * STRONG);
        }
        let Machine {
            rear_pto,
            economy_pto,
            mid_pto,
            ..
        } = &mut machine;
        for pto in [rear_pto, economy_pto, mid_pto].into_iter().flatten() {
            self.pto(pto);
        }
        machine
    }

    /// The settings with what is lifted of them.
    pub fn settings(&self, settings: Settings) -> Settings {
        let lifted = |power| if self.engine { power * STRONG } else { power };
        Settings {
            engine_power: settings.engine_power.map(lifted),
            ..settings
        }
    }

    fn pto(&self, pto: &mut Pto) {
        if self.engine {
            // The train stays as good as it is.
            pto.tested = pto.tested.map(|it| it.map(|power| power * STRONG));
        }
        if self.shafts {
            pto.rating = pto.rating.map(|it| it.map(|power| power * STRONG));
        }
    }

    /// The implement with what is lifted of it.
    pub fn implement(&self, implement: &Implement) -> Implement {
        let mut implement = implement.clone();
        if let Some(motor) = &mut implement.motor {
            if self.flow {
                motor.highest_flow = motor.highest_flow.max(most_flow());
            }
            if let Some(pressure) = self.pressure {
                motor.highest_pressure = motor.highest_pressure.max(pressure);
            }
        }
        for shaft in &mut implement.shafts {
            if self.shafts {
                shaft.rating = shaft.rating.map(|it| it.map(|power| power * STRONG));
            }
        }
        implement
    }
}

/// The most flow that can be set.
pub(super) fn most_flow() -> Flow {
    Flow::litres_per_minute(FLOW_LIMITS.1)
}
