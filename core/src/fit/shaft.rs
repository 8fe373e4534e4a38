//! Items of a route's shafts.

use super::{Check, Item, Judgement, Look, same};
use crate::drive::Rate;
use crate::hookup::{PtoEnd, Turns};
use crate::implement::{ImplementKind, InputShaft, Place};
use crate::machine::Pto;
use crate::physics::joint::AngleAdvice;
use crate::physics::joint_shaft::{Stance, Travel, least_clearance, least_overlap};
use crate::quantity::{Length, Power, Torque};
use crate::route::part::{Part, nearest_shaft};
use crate::stage::Stage;

/// How far the input's speed may lie off before it's worth a word: this project's judgement.
const SPEED_IS_RIGHT: core::ops::RangeInclusive<f64> = 0.97..=1.03;

pub(super) fn look(look: &Look<'_>, items: &mut Vec<Item>) {
    let parts = look.route.parts();
    let rear = parts.contains(&Part::RearPto);
    let pto = if rear {
        look.machine.rear_pto(look.settings.economy)
    } else if parts.contains(&Part::MidPto) {
        look.machine.mid_pto.as_ref()
    } else {
        None
    };
    let Some(pto) = pto else { return };
    let kit = look.kit.shaft;
    items.push(Item {
        check: Check::PtoEnd {
            pto: pto.end.shaft,
            kit: kit.pto_end,
        },
        judgement: same(pto.end.shaft, kit.pto_end),
    });
    let input = parts.iter().find_map(|part| match part {
        Part::Shaft(place) => Some(*place),
        _ => None,
    });
    if let Some(place) = input {
        input_end(look, pto, place, rear, items);
    }
    items.extend(torque(look));
    if input.is_some() && jams(look.implement.kind) {
        let slips = look.kit.slips;
        items.push(Item {
            check: Check::SlipClutch { slips },
            judgement: match slips {
                Some(_) => Judgement::Pass,
                None => Judgement::Question,
            },
        });
    }
    items.extend(working_angle(look));
}

/// What can take a stone or a stump: common practice, no source.
fn jams(kind: ImplementKind) -> bool {
    !matches!(
        kind,
        ImplementKind::Broom | ImplementKind::Mower | ImplementKind::Other
    )
}

fn input_end(look: &Look<'_>, pto: &Pto, place: Place, rear: bool, items: &mut Vec<Item>) {
    let kit = look.kit;
    let brings = (kit.drive.iter()).fold(pto.rated, |speed, gear| speed * gear.ratio);
    let Some(input) = nearest_shaft(look.implement, place, brings) else {
        return;
    };
    items.push(Item {
        check: Check::InputSpeed {
            brings,
            needs: input.speed,
        },
        judgement: if SPEED_IS_RIGHT.contains(&(brings / input.speed)) {
            Judgement::Pass
        } else {
            Judgement::Advice
        },
    });
    items.push(Item {
        check: Check::FarEnd {
            kit: kit.shaft.far_end,
            input: input.end.shaft,
        },
        judgement: same(kit.shaft.far_end, input.end.shaft),
    });
    // A rear PTO turns clockwise: ISO 500-1:2014, 4.2.
    let standard = rear.then_some(Turns::Clockwise);
    let comes = pto.end.turns.or(standard).zip(kit.shaft.reverses);
    let comes = comes.map(|(turns, reverses)| if reverses { turns.reversed() } else { turns });
    items.push(Item {
        check: Check::Direction {
            comes,
            needs: input.end.turns,
        },
        judgement: same(comes, input.end.turns),
    });
    if place == Place::Rear {
        rear_shaft(look, pto.end, input, items);
    }
}

/// Angle and overlap over the hitch's travel.
fn rear_shaft(look: &Look<'_>, pto: PtoEnd, input: &InputShaft, items: &mut Vec<Item>) {
    let travel = travel(look, pto, input);
    let steepest = travel.map(|travel| travel.steepest);
    items.push(Item {
        check: Check::LiftAngle { steepest },
        judgement: match steepest.map(AngleAdvice::of) {
            None => Judgement::Question,
            Some(AngleAdvice::Fine | AngleAdvice::ForAWhile) => Judgement::Pass,
            Some(AngleAdvice::Brief) => Judgement::Advice,
            Some(AngleAdvice::NeedsWideAngle | AngleAdvice::Never) => Judgement::Stop,
        },
    });
    let shaft = look.kit.shaft;
    let least = travel
        .zip(shaft.open.zip(shaft.closed))
        .map(|(travel, (open, closed))| (open - travel.longest, travel.shortest - closed));
    items.push(Item {
        check: Check::Overlap { least },
        judgement: match least {
            None => Judgement::Question,
            Some((overlap, left)) if overlap < least_overlap() || left < Length::ZERO => {
                Judgement::Stop
            }
            Some((_, left)) if left < least_clearance() => Judgement::Advice,
            Some(_) => Judgement::Pass,
        },
    });
}

fn travel(look: &Look<'_>, pto: PtoEnd, input: &InputShaft) -> Option<Travel> {
    let hitch = look.machine.hitch?;
    let along = pto.ahead? + input.end.behind?;
    let (height, above) = (pto.height?, input.end.above?);
    let stance = |ball_ends: Length| Stance {
        along,
        above: ball_ends + above - height,
    };
    Some(Travel::between(
        stance(hitch.lowest?),
        stance(hitch.highest?),
    ))
}

fn working_angle(look: &Look<'_>) -> Option<Item> {
    let angles = look.kit.drive.iter().filter_map(|gear| gear.angle);
    let working = angles.map(f64::abs).reduce(f64::max)?;
    Some(Item {
        check: Check::Angle { working },
        judgement: match AngleAdvice::of(working) {
            AngleAdvice::Fine => Judgement::Pass,
            AngleAdvice::ForAWhile => Judgement::Advice,
            _ => Judgement::Stop,
        },
    })
}

/// The shaft or box nearest to what it may take, were all of the engine's power led through it.
///
/// Equation: T = (P/ω)·(P_engine/P_taken). Units: SI. Valid range: a shaft that turns.
/// Source: before the first stage with oil all is in proportion to what is taken.
fn torque(look: &Look<'_>) -> Option<Item> {
    let ledger = &look.run.ledger;
    let taken = ledger.taken();
    if taken <= Power::ZERO {
        return None;
    }
    let all = ledger.available / taken;
    let turning =
        ledger
            .passages
            .iter()
            .map_while(|passage| match (&passage.stage, passage.gives.rate) {
                (Stage::Gear(gear), Rate::Turning(speed)) => {
                    Some((gear, passage.gives.power / speed))
                }
                _ => None,
            });
    let rated = turning.filter_map(|(gear, torque)| {
        let (rating, _) = gear.rating?;
        Some((torque * all, rating.likely))
    });
    let part = |(can, may): &(Torque, Torque)| *can / *may;
    let (can, may) = rated.max_by(|one, other| part(one).total_cmp(&part(other)))?;
    Some(Item {
        check: Check::ShaftTorque { can, may },
        judgement: if can <= may {
            Judgement::Pass
        } else {
            Judgement::Advice
        },
    })
}
