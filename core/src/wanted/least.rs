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
/// Rounds after which flow and relief pressure count as settled.
const ROUNDS: u32 = 20;
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
    let standing = standing_relief(scene).filter(|_| scene.motor_could())?;
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

/// A relief pressure and higher ones in steps, to the highest that can be set.
pub(super) fn higher(from: Pressure) -> impl Iterator<Item = Pressure> {
    let bar = from.to_bar();
    let steps = ((RELIEF_LIMITS.1 - bar) / STEP).max(0.0).ceil() as u32;
    let further = (1..=steps).map(move |step| (bar + STEP * f64::from(step)).min(RELIEF_LIMITS.1));
    [from].into_iter().chain(further.map(relief))
}

/// The relief pressures to try at the scene's engine speed: as it is, then higher ones, then the
/// highest at which leakage leaves the rotor fast enough. `None` where no relief pressure does it.
pub(super) fn reliefs(
    scene: &Scene<'_>,
    standing: Pressure,
) -> Option<impl Iterator<Item = Pressure> + use<>> {
    if !is_strong(scene) {
        return None;
    }
    let does = |relief: &Pressure| can_do(&with_relief(scene, *relief));
    let highest = relief(RELIEF_LIMITS.1);
    let last = [highest, highest_that_turns(scene)]
        .into_iter()
        .find(does)?;
    Some(higher(standing).chain([last]))
}

/// The highest relief pressure at which the most flow turns the rotor fast enough.
fn highest_that_turns(scene: &Scene<'_>) -> Pressure {
    let at = |part: f64| relief(RELIEF_LIMITS.0 + (RELIEF_LIMITS.1 - RELIEF_LIMITS.0) * part);
    let most = with_flow(scene, flow(FLOW_LIMITS.1));
    at(rising_root(|part| too_slow(&with_relief(&most, at(part)))))
}

/// Flow and relief pressure at the scene's engine speed, where any do it.
pub(super) fn at_speed(scene: &Scene<'_>, standing: Pressure) -> Option<OilSettings> {
    let at = |relief| scene.with_oil(OilSettings { flow: None, relief });
    let (flow, relief) = reliefs(scene, standing)?
        .find_map(|relief| Some((enough_flow(&at(Some(relief)))?, relief)))?;
    let mut flow = least_flow(&at(Some(relief)), flow);
    let mut relief = relief;
    // With less pressure less leaks, so that the rotor may need less flow, and with less flow less
    // is lost, so that less pressure may do.
    for _ in 0..ROUNDS {
        relief = least_relief(&with_flow(scene, flow), relief);
        let less = least_flow(&at(Some(relief)), flow);
        let settled = less > flow * (1.0 - CLOSE);
        flow = less;
        if settled {
            break;
        }
    }
    Some(OilSettings {
        flow: Some(flow),
        relief: Some(relief),
    })
}

/// Whether enough arrives at any flow: no lower relief pressure does better than the highest.
fn is_strong(scene: &Scene<'_>) -> bool {
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
    let slow = |flow| too_slow(&with_flow(scene, flow));
    Some(towards(most, peak, slow)).filter(does)
}

/// How far the flow is from turning the rotor at its lowest speed, with whatever power.
fn too_slow(scene: &Scene<'_>) -> f64 {
    match scene.best() {
        Ok(best) if best.most.stall == Some(Stall::NoPressureLeft) => -1.0,
        Ok(best) => scene.slow(&best),
        Err(_) => 1.0,
    }
}

/// Whether any flow does it at the scene's relief pressure.
pub(super) fn can_do(scene: &Scene<'_>) -> bool {
    enough_flow(scene).is_some()
}

/// From a flow that does it down to the least. A little is kept over where it can be, so that
/// rounding doesn't hide the relief pressures that do it too.
fn least_flow(scene: &Scene<'_>, enough: Flow) -> Flow {
    let short = |flow| with_flow(scene, flow).short();
    let spare = if short(enough) <= -SPARE { SPARE } else { 0.0 };
    let least = flow(FLOW_LIMITS.0);
    towards(enough, least, |flow| sure(short(flow) + spare))
}

/// A shortfall kept away from zero: where a motor's pressure or the flow that it may be given binds,
/// just enough arrives over a whole range, and its far end is looked for.
fn sure(short: f64) -> f64 {
    if short <= 0.0 {
        short.min(-SURE)
    } else {
        short.max(SURE)
    }
}

/// Far above rounding.
const SURE: f64 = 1e-9;
/// What is kept over, as a part of the need.
const SPARE: f64 = 1e-9;

/// The last flow on the way from one to another at which a function that rises on that way isn't
/// above zero.
fn towards(from: Flow, to: Flow, f: impl Fn(Flow) -> f64) -> Flow {
    let at = |part: f64| from * exp(log(to / from) * part);
    at(rising_root(|part| f(at(part))))
}

/// From a relief pressure that does it down to the least.
pub(super) fn least_relief(scene: &Scene<'_>, enough: Pressure) -> Pressure {
    let at = |part: f64| enough + (relief(RELIEF_LIMITS.0) - enough) * part;
    at(rising_root(|part| {
        sure(with_relief(scene, at(part)).short())
    }))
}
