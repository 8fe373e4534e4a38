//! What a pump pack would take.

use super::boxes;
use super::least::{can_do, higher, least_relief, reliefs, standing_relief};
use super::lines;
use super::outfit::Draft;
use super::scene::Scene;
use super::sizes::{BOX_RATIOS, pumps};
use crate::kit::Kit;
use crate::quantity::{Displacement, Pressure};
use crate::settings::{OilSettings, Settings};

/// The kit with a box of a ratio, for the PTO that is there.
fn boxed(scene: &Scene<'_>, kit: &Kit, ratio: f64) -> Kit {
    let mut boxed = boxes::with_ratio(kit, ratio);
    let pto = scene.pto().map(|pto| pto.rated);
    boxed.pto_speed = boxed.pto_speed.and(pto);
    boxed
}

/// The kit with the slowest box: what doesn't fit with that fits with none.
pub(super) fn slowest(scene: &Scene<'_>, kit: &Kit) -> Kit {
    let [slowest, ..] = BOX_RATIOS;
    boxed(scene, kit, slowest)
}

fn sized(kit: &Kit, size: Displacement) -> Kit {
    let mut kit = kit.clone();
    if let Some(pump) = &mut kit.pump {
        pump.displacement = size;
    }
    kit
}

/// The fastest box below the pump's highest speed, and with that the smallest pump that does it: a
/// small pump is the cheaper (this project's judgement).
pub(super) fn find(scene: &Scene<'_>, kit: &Kit) -> Option<Draft> {
    let wide = lines::widest(scene, kit);
    let boxes = BOX_RATIOS.into_iter().rev();
    let boxes: Vec<_> = boxes.map(|ratio| boxed(scene, &wide, ratio)).collect();
    let speeds = scene.speeds().into_iter();
    speeds
        .map(|speed| scene.at(speed))
        .find_map(|scene| at_speed(&scene, &boxes))
}

fn at_speed(scene: &Scene<'_>, boxes: &[Kit]) -> Option<Draft> {
    let turns = |kit: &&Kit| scene.with(kit).pump_turns();
    let boxes: Vec<_> = boxes.iter().filter(turns).collect();
    // With a valve that is large enough for any of the pumps, and any size between them.
    let any = sized(boxes.first()?, pumps().next_back()?);
    let any = scene.with(&any);
    reliefs(&any, standing_relief(&any)?)?
        .filter(|relief| can_do(&any.with_oil(only(*relief))))
        .find_map(|relief| {
            boxes
                .iter()
                .find_map(|kit| with_box(&scene.with_oil(only(relief)), kit, relief))
        })
}

/// The kit's own flow at a relief pressure.
fn only(relief: Pressure) -> OilSettings {
    OilSettings {
        flow: None,
        relief: Some(relief),
    }
}

fn with_box(scene: &Scene<'_>, kit: &Kit, relief: Pressure) -> Option<Draft> {
    let does = |kit: &Kit, relief| scene.with_oil(only(relief)).with(kit).short() <= 0.0;
    let sizes = || pumps().map(|size| sized(kit, size));
    let mut size = sizes().find(|kit| does(kit, relief))?;
    let mut relief = least_relief(&scene.with(&size), relief);
    // With less pressure less leaks, so that a smaller pump may do.
    while let Some(smaller) = sizes()
        .take_while(|smaller| *smaller != size)
        .find(|kit| does(kit, relief))
    {
        relief = least_relief(&scene.with(&smaller), relief);
        size = smaller;
    }
    let solve = |scene: &Scene<'_>| {
        let does = |relief: &Pressure| scene.with_oil(only(*relief)).short() <= 0.0;
        let enough = higher(relief).find(does)?;
        let relief = least_relief(&scene.with_oil(only(enough)), enough);
        Some(Settings {
            pack: only(relief),
            ..scene.settings
        })
    };
    let (lines, settings) = lines::fitted(scene, &size, solve)?;
    Some(Draft {
        kit: lines.of(&size),
        settings,
        lines: Some(lines),
    })
}
