//! The least flow and the least relief pressure that do it.

use super::Turned;
use super::scene::Scene;
use crate::compare::Candidate;
use crate::drive::Stall;
use crate::quantity::{Flow, Pressure};
use crate::root::rising_root;
use crate::settings::{FLOW_LIMITS, OilSettings, RELIEF_LIMITS};
use crate::spread::Corner;
use libm::{exp, log};

/// Steps in which the relief pressure is raised, bar: this project's judgement.
const STEP: f64 = 20.0;
/// What arrives at the peak that is found, over what arrives at the peak, at the least.
const LENIENT: f64 = 1.0 - 1e-4;
/// How close the flow at which most arrives is found, as a part of it.
const CLOSE: f64 = 1e-3;

fn flow(litres_per_minute: f64) -> Flow {
    Flow::litres_per_minute(litres_per_minute)
}

fn relief(bar: f64) -> Pressure {
    Pressure::bar(bar)
}

/// What must be turned at the pump, where that does it.
pub(super) fn turned(scene: &Scene<'_>) -> Option<Turned> {
    let standing = standing_relief(scene)?;
    scene.speeds().into_iter().find_map(|engine_speed| {
        let oil = at_speed(&scene.at(engine_speed), standing)?;
        Some(Turned {
            engine_speed,
            flow: oil.flow?,
            relief: oil.relief?,
        })
    })
}

/// The relief pressure as it is; `None` for a route without a pump or one that can't be hooked up.
pub(super) fn standing_relief(scene: &Scene<'_>) -> Option<Pressure> {
    let best = scene.best().ok()?;
    Some(best.joined.pump()?.0.relief.likely)
}

/// The relief pressures to try: as it is, then higher ones in steps, then lower ones. Only a rotor
/// that a higher pressure slows below its lowest speed, by leakage, wants those.
pub(super) fn reliefs(standing: Pressure) -> impl Iterator<Item = Pressure> {
    let bar = standing.to_bar();
    let steps = |span: f64| 1..=(span / STEP).max(0.0).ceil() as u32;
    let up = steps(RELIEF_LIMITS.1 - bar)
        .map(move |step| (bar + STEP * f64::from(step)).min(RELIEF_LIMITS.1));
    let down = steps(bar - RELIEF_LIMITS.0)
        .map(move |step| (bar - STEP * f64::from(step)).max(RELIEF_LIMITS.0));
    [standing].into_iter().chain(up.chain(down).map(relief))
}

/// Flow and relief pressure at the scene's engine speed, where any do it.
pub(super) fn at_speed(scene: &Scene<'_>, standing: Pressure) -> Option<OilSettings> {
    if !is_strong(scene) {
        return None;
    }
    let at = |relief| scene.with_oil(OilSettings { flow: None, relief });
    let (flow, relief) =
        reliefs(standing).find_map(|relief| Some((enough_flow(&at(Some(relief)))?, relief)))?;
    let flow = least_flow(&at(Some(relief)), flow);
    let relief = least_relief(&with_flow(scene, flow), relief);
    // With less pressure less leaks, so that the rotor may need less flow.
    let flow = least_flow(&at(Some(relief)), flow);
    Some(OilSettings {
        flow: Some(flow),
        relief: Some(relief),
    })
}

/// Whether enough arrives at any flow: no lower relief pressure does better than the highest.
pub(super) fn is_strong(scene: &Scene<'_>) -> bool {
    let wished = scene.wished();
    let left = scene.best().map(|it| it.joined.budget.left(Corner::LIKELY));
    left.is_ok_and(|left| left >= wished) && {
        let scene = with_relief(scene, relief(RELIEF_LIMITS.1));
        let peak = with_flow(&scene, peak_flow(&scene)).best();
        peak.is_ok_and(|it| it.delivers() >= wished * LENIENT)
    }
}

fn with_flow<'a>(scene: &Scene<'a>, flow: Flow) -> Scene<'a> {
    scene.with_oil(OilSettings {
        flow: Some(flow),
        ..scene.oil()
    })
}

fn with_relief<'a>(scene: &Scene<'a>, relief: Pressure) -> Scene<'a> {
    scene.with_oil(OilSettings {
        relief: Some(relief),
        ..scene.oil()
    })
}

/// The flow at which most arrives: what arrives rises to a peak, or a plateau, and falls.
fn peak_flow(scene: &Scene<'_>) -> Flow {
    // The golden section: (√5 − 1)/2.
    const GOLDEN: f64 = 0.618_033_988_749_894_9;
    let at = |x: f64| (x, with_flow(scene, flow(exp(x))).best().ok());
    let (mut from, mut to) = (log(FLOW_LIMITS.0), log(FLOW_LIMITS.1));
    let mut low = at(to - GOLDEN * (to - from));
    let mut high = at(from + GOLDEN * (to - from));
    while to - from > CLOSE {
        if is_better(&high.1, &low.1) {
            from = low.0;
            low = high;
            high = at(from + GOLDEN * (to - from));
        } else {
            to = high.0;
            high = low;
            low = at(to - GOLDEN * (to - from));
        }
    }
    flow(exp(0.5 * (from + to)))
}

/// Whether more arrives with more flow.
fn is_better(more: &Option<Candidate<'_>>, less: &Option<Candidate<'_>>) -> bool {
    let (Some(more), Some(less)) = (more, less) else {
        return false;
    };
    match (more.most.stall, less.most.stall) {
        (_, Some(Stall::NoFlowLeft)) => true,
        (Some(_), _) => false,
        _ => more.delivers() > less.delivers(),
    }
}

/// A flow that does it at the scene's relief pressure: that at which most arrives, or the least
/// above it that turns the rotor fast enough.
fn enough_flow(scene: &Scene<'_>) -> Option<Flow> {
    let peak = peak_flow(scene);
    let does = |flow: &Flow| with_flow(scene, *flow).short() <= 0.0;
    if does(&peak) {
        return Some(peak);
    }
    let most = flow(FLOW_LIMITS.1);
    let slow = |flow| {
        let scene = with_flow(scene, flow);
        scene.best().map_or(1.0, |it| scene.slow(&it))
    };
    Some(towards(most, peak, slow)).filter(does)
}

/// Whether any flow does it at the scene's relief pressure.
pub(super) fn can_do(scene: &Scene<'_>) -> bool {
    enough_flow(scene).is_some()
}

/// From a flow that does it down to the least.
fn least_flow(scene: &Scene<'_>, enough: Flow) -> Flow {
    let least = flow(FLOW_LIMITS.0);
    towards(enough, least, |flow| with_flow(scene, flow).short())
}

/// The last flow on the way from one to another at which a function that rises on that way isn't
/// above zero.
fn towards(from: Flow, to: Flow, f: impl Fn(Flow) -> f64) -> Flow {
    let at = |part: f64| from * exp(log(to / from) * part);
    at(rising_root(|part| f(at(part))))
}

/// From a relief pressure that does it down to the least.
pub(super) fn least_relief(scene: &Scene<'_>, enough: Pressure) -> Pressure {
    let at = |part: f64| enough + (relief(RELIEF_LIMITS.0) - enough) * part;
    at(rising_root(|part| with_relief(scene, at(part)).short()))
}
