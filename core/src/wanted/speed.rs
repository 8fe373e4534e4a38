//! The lowest engine speed that does it with all else as it is.

use super::scene::Scene;
use crate::quantity::AngularSpeed;
use crate::root::rising_root;

/// Steps in which the engine's range is looked along: this project's judgement. What holds only
/// between two of them is missed.
const LOOKS: u32 = 40;

/// The lowest engine speed with the wished standing, where one has it.
pub(super) fn lowest(scene: &Scene<'_>) -> Option<AngularSpeed> {
    let mut before = None;
    for speed in looked_at(scene) {
        if scene.at(speed).short() <= 0.0 {
            return Some(before.map_or(speed, |before| between(scene, before, speed)));
        }
        before = Some(speed);
    }
    None
}

/// From one that doesn't do it to one that does.
fn between(scene: &Scene<'_>, without: AngularSpeed, with: AngularSpeed) -> AngularSpeed {
    let at = |part: f64| with + (without - with) * part;
    at(rising_root(|part| scene.at(at(part)).short()))
}

/// Evenly spaced speeds and those at which the rotor has its lowest and highest speed, if it keeps
/// step with the engine.
fn looked_at(scene: &Scene<'_>) -> Vec<AngularSpeed> {
    let engine = &scene.machine.engine;
    let mut speeds: Vec<_> = scene.spaced(LOOKS).collect();
    if let Ok(best) = scene.at(engine.rated).best() {
        let rotor = &scene.implement.rotor;
        let bounds = [rotor.lowest, rotor.rated, rotor.highest];
        let in_step = bounds.map(|bound| engine.rated * (bound / best.rotor()));
        let within = |it: &AngularSpeed| *it > engine.lowest && *it < engine.rated;
        speeds.extend(in_step.into_iter().filter(within));
    }
    speeds.sort_by(|a, b| a.to_si().total_cmp(&b.to_si()));
    speeds
}
