//! A route with all that bears on it, and how far it is from a wished standing.

use crate::compare::{Candidate, best};
use crate::implement::Implement;
use crate::kit::Kit;
use crate::machine::{Machine, Pto};
use crate::quantity::{AngularSpeed, Flow, Power, Pressure};
use crate::route::RouteId;
use crate::route::part::{NoFit, most_for};
use crate::settings::{FLOW_LIMITS, OilSettings, RELIEF_LIMITS, Settings};
use crate::stage::pump::PumpSize;
use crate::work::need_for;

/// A route that is tried.
#[derive(Clone, Copy, Debug)]
pub(super) struct Scene<'a> {
    pub route: RouteId,
    pub machine: &'a Machine,
    pub implement: &'a Implement,
    pub kits: &'a [Kit],
    pub settings: Settings,
    /// Delivered over needed that is wished for.
    pub aim: f64,
    /// Steps in which the engine's range is looked along.
    pub looks: u32,
}

/// How far off a route counts as that can't be hooked up.
const NO_FIT: f64 = 1e3;

/// A speed this little above its highest is rounding.
const ROUNDING: f64 = 1.0 + 1e-9;

/// Steps in which the engine's range is looked along for hardware: this project's judgement.
pub(super) const LOOKS: u32 = 10;
/// The same where a limit or the motor is another than it is: coarser, for much is tried then.
pub(super) const FEW_LOOKS: u32 = 2;

impl<'a> Scene<'a> {
    /// At an engine speed.
    pub fn at(self, speed: AngularSpeed) -> Self {
        Self {
            settings: Settings {
                engine_speed: Some(speed),
                ..self.settings
            },
            ..self
        }
    }

    /// With one kit only.
    pub fn with<'b>(self, kit: &'b Kit) -> Scene<'b>
    where
        'a: 'b,
    {
        Scene {
            kits: core::slice::from_ref(kit),
            ..self
        }
    }

    /// With flow and relief pressure of the route's pump.
    pub fn with_oil(self, oil: OilSettings) -> Self {
        Self {
            settings: with_oil(self.settings, self.route, oil),
            ..self
        }
    }

    /// What is set at the route's pump.
    pub fn oil(&self) -> OilSettings {
        if self.is_pack() {
            self.settings.pack
        } else {
            self.settings.own
        }
    }

    /// Whether a kit brings the pump.
    pub fn is_pack(&self) -> bool {
        self.route.has_kit_pump()
    }

    /// With that of its kits which delivers most.
    pub fn best(&self) -> Result<Candidate<'a>, Vec<NoFit>> {
        best(
            self.route,
            self.machine,
            self.implement,
            self.kits,
            &self.settings,
        )
    }

    /// Power that must arrive.
    pub fn wished(&self) -> Power {
        need_for(self.implement, &self.settings).likely * self.aim
    }

    /// How far it is from the wished standing: not above zero where it has it, the rotor is within
    /// its speeds and a kit's pump isn't too fast.
    pub fn short(&self) -> f64 {
        self.best().map_or(NO_FIT, |it| self.short_of(&it))
    }

    /// The same of a route that has been joined up.
    pub fn short_of(&self, candidate: &Candidate<'_>) -> f64 {
        let need = need_for(self.implement, &self.settings).likely;
        let power = self.aim - candidate.delivers() / need;
        let rotor = &self.implement.rotor;
        let fast = candidate.rotor() / (rotor.highest * ROUNDING) - 1.0;
        let pump = too_fast_a_pump(candidate);
        power.max(self.slow(candidate)).max(fast).max(pump)
    }

    /// Whether it can be hooked up and a kit's pump isn't too fast.
    pub fn pump_turns(&self) -> bool {
        self.best().is_ok_and(|it| too_fast_a_pump(&it) <= 0.0)
    }

    /// How far the rotor is below its lowest speed; not above zero where it isn't.
    pub fn slow(&self, candidate: &Candidate<'_>) -> f64 {
        let lowest = self.implement.rotor.lowest;
        (lowest - candidate.rotor()) / lowest
    }

    /// Whether the motor could do it if nothing were lost.
    ///
    /// Equation: V·ω_min/2π ≤ Q and p·Q ≥ P, Q the most that it may be given or that can be set.
    /// Units: SI. Source: definition of displacement.
    pub fn motor_could(&self) -> bool {
        let Some(motor) = &self.implement.motor else {
            return false;
        };
        let rotor = &self.implement.rotor;
        let least = motor.displacement * (rotor.lowest / motor.ratio);
        let most = most_for(motor, self.implement);
        let flow = most.min(Flow::litres_per_minute(FLOW_LIMITS.1));
        let pressure = motor.highest_pressure.min(Pressure::bar(RELIEF_LIMITS.1));
        // V·ω_min/2π ≤ Q, p·Q ≥ P
        least <= flow && pressure * flow >= self.wished()
    }

    /// The PTO that the route begins with.
    pub fn pto(&self) -> Option<&'a Pto> {
        self.route.pto(self.machine, self.settings.economy)
    }

    /// Engine speeds in the order in which they are tried: that which is set, that of the PTO, and
    /// evenly spaced ones from the lowest to the rated.
    pub fn speeds(&self) -> Vec<AngularSpeed> {
        let set = self.settings.engine_speed_for(self.machine);
        let mut speeds = vec![set];
        let pto = self.pto().map(|pto| pto.engine_speed);
        for speed in pto.into_iter().chain(self.spaced(self.looks)) {
            if !speeds.contains(&speed) {
                speeds.push(speed);
            }
        }
        speeds
    }

    /// Engine speeds from the lowest to the rated, with so many steps between.
    pub fn spaced(&self, steps: u32) -> impl Iterator<Item = AngularSpeed> + use<> {
        let (lowest, rated) = (self.machine.engine.lowest, self.machine.engine.rated);
        (0..=steps).map(move |step| {
            let part = f64::from(step) / f64::from(steps);
            lowest * (1.0 - part) + rated * part
        })
    }
}

/// Settings with those of a route's pump.
pub(super) fn with_oil(settings: Settings, route: RouteId, oil: OilSettings) -> Settings {
    if route.has_kit_pump() {
        Settings {
            pack: oil,
            ..settings
        }
    } else {
        Settings {
            own: oil,
            ..settings
        }
    }
}

/// How far a kit's pump is above its highest speed; not above zero where it isn't.
fn too_fast_a_pump(candidate: &Candidate<'_>) -> f64 {
    match (candidate.joined.pump(), &candidate.kit.pump) {
        // A kit may serve a route with the machine's own pump too.
        (Some((pump, speed)), Some(own)) if matches!(pump.size, PumpSize::Displacement(_)) => {
            speed / (own.highest * ROUNDING) - 1.0
        }
        _ => -1.0,
    }
}
