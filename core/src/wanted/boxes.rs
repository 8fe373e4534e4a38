//! The box of a kit: the step that changes the speed the most.

use crate::defaults::gear_efficiency;
use crate::drive::Limit;
use crate::kit::Kit;
use crate::quantity::Torque;
use crate::source::Source;
use crate::spread::Spread;
use crate::stage::gear::{Gear, GearKind, GearRole};
use libm::log;

fn place(kit: &Kit) -> Option<usize> {
    let change = |gear: &Gear| log(gear.ratio).abs();
    let gears = kit.drive.iter().enumerate();
    let changing = gears.filter(|(_, gear)| gear.ratio != 1.0);
    let most = changing.max_by(|(_, a), (_, b)| change(a).total_cmp(&change(b)));
    most.map(|(place, _)| place)
}

/// Its ratio; 1 where there is none.
pub(super) fn ratio(kit: &Kit) -> f64 {
    let of_box = place(kit).and_then(|place| kit.drive.get(place));
    of_box.map_or(1.0, |gear| gear.ratio)
}

/// The kit with a box of another ratio, spur gears where it had none, and with steps that bear
/// whatever comes: what they must bear is asked for.
pub(super) fn with_ratio(kit: &Kit, ratio: f64) -> Kit {
    let mut kit = kit.clone();
    match place(&kit).and_then(|place| kit.drive.get_mut(place)) {
        Some(gear) => gear.ratio = ratio,
        None if ratio == 1.0 => {}
        None => kit.drive.push(Gear {
            role: GearRole::Step(GearKind::Spur),
            ratio,
            efficiency: gear_efficiency(GearKind::Spur),
            rating: None,
            angle: None,
        }),
    }
    for gear in &mut kit.drive {
        gear.rating = None;
    }
    kit
}

/// The kit with steps that bear no more than these torques on their output shafts.
pub(super) fn rated(kit: &mut Kit, torques: impl Iterator<Item = Torque>) {
    for (gear, torque) in kit.drive.iter_mut().zip(torques) {
        let rating = Spread::exact(torque * ROUNDING, Source::Computed);
        gear.rating = Some((rating, Limit::ShaftRating));
    }
}

/// What a rating has more than the torque that it must bear.
const ROUNDING: f64 = 1.0 + 1e-9;
