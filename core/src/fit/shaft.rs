//! Items of a route's shafts.

use super::{Check, Item, Judgement, Look, same};
use crate::drive::Rate;
use crate::hookup::{PtoEnd, Turns};
use crate::implement::{ImplementKind, InputShaft, Place};
use crate::machine::Pto;
use crate::physics::joint::AngleAdvice;
use crate::physics::joint_shaft::{Stance, Travel, least_clearance, least_overlap};
use crate::quantity::{AngularSpeed, Length, Power, Torque};
use crate::route::part::{Part, nearest_shaft};
use crate::stage::Stage;
use crate::stage::gear::{GearKind, GearRole};

/// How far the input's speed may lie off before it's worth a word: this project's judgement.
const SPEED_IS_RIGHT: core::ops::RangeInclusive<f64> = 0.97..=1.03;

pub(super) fn look(look: &Look<'_>, items: &mut Vec<Item>) {
    let Some(pto) = look.route.pto(look.machine, look.settings.economy) else {
        return;
    };
    let kit = look.kit.shaft;
    items.push(Item {
        check: Check::PtoEnd {
            pto: pto.end.shaft,
            kit: kit.pto_end,
        },
        judgement: same(pto.end.shaft, kit.pto_end),
    });
    let place = look.route.input_place();
    // What comes at the PTO's rated speed.
    let brings = (look.kit.drive.iter()).fold(pto.rated, |speed, gear| speed * gear.ratio);
    let input = place.and_then(|place| nearest_shaft(look.implement, place, brings));
    if let Some(input) = input {
        input_end(look, pto, brings, input, items);
    }
    torques(look, input, items);
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
    items.extend(working_angle(look, place));
}

/// What can take a stone or a stump, or may for all that is known: common practice, no source.
fn jams(kind: ImplementKind) -> bool {
    !matches!(kind, ImplementKind::Broom | ImplementKind::Mower)
}

fn input_end(
    look: &Look<'_>,
    pto: &Pto,
    brings: AngularSpeed,
    input: &InputShaft,
    items: &mut Vec<Item>,
) {
    let shaft = look.kit.shaft;
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
            kit: shaft.far_end,
            input: input.end.shaft,
        },
        judgement: same(shaft.far_end, input.end.shaft),
    });
    // A rear PTO turns clockwise: ISO 500-1:2014, 4.2.
    let is_rear = look.route.parts().contains(&Part::RearPto);
    let standard = is_rear.then_some(Turns::Clockwise);
    let comes = pto.end.turns.or(standard).zip(shaft.reverses);
    let comes = comes.map(|(turns, reverses)| if reverses { turns.reversed() } else { turns });
    items.push(Item {
        check: Check::Direction {
            comes,
            needs: input.end.turns,
        },
        judgement: same(comes, input.end.turns),
    });
    if input.place == Place::Rear {
        rear_shaft(look, pto.end, input, items);
    }
}

/// Angle and overlap over the hitch's travel.
fn rear_shaft(look: &Look<'_>, pto: PtoEnd, input: &InputShaft, items: &mut Vec<Item>) {
    let travel = travel(look, pto, input);
    let angles = travel.map(|travel| (travel.at_work, travel.steepest));
    items.push(Item {
        check: Check::LiftAngle { angles },
        judgement: match angles {
            None => Judgement::Question,
            Some((at_work, steepest)) => lasting(at_work).max(brief(steepest)),
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

/// An angle for as long as the work takes.
fn lasting(angle: f64) -> Judgement {
    match AngleAdvice::of(angle) {
        AngleAdvice::Fine => Judgement::Pass,
        AngleAdvice::Steady => Judgement::Advice,
        _ => Judgement::Stop,
    }
}

/// An angle for the moments of lifting.
fn brief(angle: f64) -> Judgement {
    match AngleAdvice::of(angle) {
        AngleAdvice::Fine | AngleAdvice::Steady => Judgement::Pass,
        AngleAdvice::Brief => Judgement::Advice,
        AngleAdvice::NeedsWideAngle | AngleAdvice::Never => Judgement::Stop,
    }
}

/// Of the kit's joints; what the hitch makes of those behind the machine has its own item.
fn working_angle(look: &Look<'_>, input: Option<Place>) -> Option<Item> {
    let drive = &look.kit.drive;
    let angles = drive.iter().filter_map(|gear| gear.angle);
    let working = angles.reduce(f64::max);
    let joint = GearRole::Step(GearKind::JointShaft);
    let open = (drive.iter()).any(|gear| gear.role == joint && gear.angle.is_none());
    let judgement = match working.map(lasting) {
        Some(Judgement::Stop) => Judgement::Stop,
        _ if open && input != Some(Place::Rear) => Judgement::Question,
        known => known?,
    };
    Some(Item {
        check: Check::Angle { working },
        judgement,
    })
}

/// Of shafts and boxes the one nearest to what it may take, were all of the engine's power led
/// through it, and the first of those that must be rated and aren't.
///
/// Equation: T = (P/ω)·(P_engine/P_taken). Units: SI. Valid range: a shaft that turns.
/// Source: before the first stage with oil all is in proportion to what is taken.
fn torques(look: &Look<'_>, input: Option<&InputShaft>, items: &mut Vec<Item>) {
    let Some(run) = look.run else { return };
    let ledger = &run.ledger;
    let taken = ledger.taken();
    if taken <= Power::ZERO {
        return;
    }
    let all = ledger.available / taken;
    let passages = ledger.passages.iter();
    let turning = passages.map_while(|passage| match (&passage.stage, passage.gives.rate) {
        (Stage::Gear(gear), Rate::Turning(speed)) => {
            // T = (P/ω)·(P_engine/P_taken)
            Some((gear, passage.gives.power / speed * all))
        }
        _ => None,
    });
    let rated = turning.clone().filter_map(|(gear, can)| {
        let (rating, _) = gear.rating?;
        Some((can, rating.likely))
    });
    let part = |(can, may): &(Torque, Torque)| *can / *may;
    let nearest = rated.max_by(|one, other| part(one).total_cmp(&part(other)));
    items.extend(nearest.map(|(can, may)| Item {
        check: Check::ShaftTorque {
            can,
            may: Some(may),
        },
        judgement: if can <= may {
            Judgement::Pass
        } else {
            Judgement::Advice
        },
    }));
    // The PTO's train and the kit's steps; the last hands on to the implement's input.
    let last = look.kit.drive.len();
    let input_is_open = input.is_some_and(|input| input.rating.is_none());
    let mut before_input = turning.take(last + 1).enumerate();
    let open = before_input.find(|(place, (gear, _))| {
        let must_be = matches!(
            gear.role,
            GearRole::PtoTrain | GearRole::Step(GearKind::JointShaft)
        );
        (must_be && gear.rating.is_none()) || (*place == last && input_is_open)
    });
    items.extend(open.map(|(_, (_, can))| Item {
        check: Check::ShaftTorque { can, may: None },
        judgement: Judgement::Question,
    }));
}
