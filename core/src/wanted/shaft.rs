//! What a shaft route would take.

use super::boxes;
use super::outfit::Draft;
use super::scene::Scene;
use crate::kit::Kit;
use crate::route::part::nearest_shaft;

/// The kit with the box that brings the implement's input to its rated speed when the PTO has its
/// own; as it is where there is no PTO or no such input.
///
/// Equation: i = ω_input/(ω_PTO·i_other). Units: ratio. Source: definition.
pub(super) fn geared(scene: &Scene<'_>, kit: &Kit) -> Kit {
    let with = || {
        let pto = scene.pto()?;
        let place = scene.route.input_place()?;
        let all: f64 = kit.drive.iter().map(|gear| gear.ratio).product();
        let shaft = nearest_shaft(scene.implement, place, pto.rated * all)?;
        let other = all / boxes::ratio(kit);
        // i = ω_input/(ω_PTO·i_other)
        let mut geared = boxes::with_ratio(kit, shaft.speed / pto.rated / other);
        geared.pto_speed = geared.pto_speed.map(|_| pto.rated);
        Some(geared)
    };
    with().unwrap_or_else(|| kit.clone())
}

/// A kit and an engine speed that do it: with the box for the rated speed, else with the kit's own,
/// for a faster shaft bears more power.
pub(super) fn find(scene: &Scene<'_>, kit: &Kit) -> Option<Draft> {
    let own = boxes::with_ratio(kit, boxes::ratio(kit));
    [geared(scene, kit), own]
        .into_iter()
        .find_map(|kit| at_a_speed(scene, kit))
}

fn at_a_speed(scene: &Scene<'_>, kit: Kit) -> Option<Draft> {
    let does = |at: &Scene<'_>| at.with(&kit).short() <= 0.0;
    let speeds = scene.speeds().into_iter();
    let at = speeds.map(|speed| scene.at(speed)).find(does)?;
    Some(Draft {
        settings: at.settings,
        kit,
        lines: None,
    })
}
