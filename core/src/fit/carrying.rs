//! Items of what carries the implement: hitch, loader, subframe, axles.

use super::{Balance, Check, Item, Judgement, Look};
use crate::hookup::{Axles, Seat};
use crate::machine::MachineKind;
use crate::physics::balance::{AxleLoads, End, LEAST_SHARE};
use crate::physics::lift::{HITCH_ARM, LOADER_ARM, lifts_at};
use crate::quantity::{Length, Mass};
use crate::route::RouteId;
use crate::source::Source;
use crate::spread::Spread;

pub(super) fn look(look: &Look<'_>, items: &mut Vec<Item>) {
    let seat = look.seat();
    match seat {
        Seat::RearBackwards | Seat::RearForwards => {
            items.push(category(look));
            items.push(lift(look, seat));
        }
        Seat::Loader => {
            // Oil of a pump pack comes by its own hoses; a skid steer's outlets are at its arms.
            if look.route == RouteId::MachineHydraulics {
                let there = look.machine.loader.and_then(|loader| loader.third_function);
                items.push(Item {
                    check: Check::ThirdFunction { there },
                    judgement: match there {
                        Some(true) => Judgement::Pass,
                        Some(false) => Judgement::Stop,
                        None => Judgement::Question,
                    },
                });
            }
            items.push(lift(look, seat));
        }
        Seat::FrontFrame => {
            let known = (look.machine.axles).is_some_and(|axles| axles.frame_ahead.is_some());
            items.push(Item {
                check: Check::FrontHooks { known },
                judgement: if known {
                    Judgement::Pass
                } else {
                    Judgement::Question
                },
            });
        }
    }
    balance(look, seat, items);
}

fn category(look: &Look<'_>) -> Item {
    let machine = look.machine.hitch.and_then(|hitch| hitch.category);
    let implement = look.implement.mount.category;
    Item {
        check: Check::Category { machine, implement },
        judgement: match (machine, implement) {
            (Some(machine), Some(implement)) if machine == implement => Judgement::Pass,
            // Thinner pins take bushes, thicker ones don't go through.
            (Some(machine), Some(implement)) if machine > implement => Judgement::Advice,
            (Some(_), Some(_)) => Judgement::Stop,
            _ => Judgement::Question,
        },
    }
}

fn lift(look: &Look<'_>, seat: Seat) -> Item {
    let (mass, centre) = (look.implement.mass, look.implement.mount.centre);
    let metres = |arm: Spread<f64>| arm.map(Length::metres);
    let known = match seat {
        Seat::Loader => look.machine.loader.and_then(|loader| {
            let arm = match loader.reach {
                Some(reach) => Spread::exact(reach, Source::Own),
                None => metres(LOADER_ARM),
            };
            Some((loader.lift?, arm, Length::ZERO))
        }),
        _ => look.machine.hitch.and_then(|hitch| {
            let arm = metres(HITCH_ARM);
            Some((hitch.lift?, arm, hitch.lift_at))
        }),
    };
    let lifts = known.zip(centre).map(|((lift, arm, measured_at), centre)| {
        let at = |arm| lifts_at(lift, arm, measured_at, centre);
        // Nearer than measured a short arm lifts more, farther out less.
        let (one, other) = (at(arm.low), at(arm.high));
        Spread::new(
            one.min(other),
            at(arm.likely),
            one.max(other),
            Source::Computed,
        )
    });
    Item {
        check: Check::Lift {
            seat,
            mass,
            centre,
            lifts,
        },
        judgement: match mass.zip(lifts) {
            None => Judgement::Question,
            Some((mass, lifts)) if mass <= lifts.low => Judgement::Pass,
            Some((mass, lifts)) if mass <= lifts.high => Judgement::Advice,
            Some(_) => Judgement::Stop,
        },
    }
}

/// The end at which a seat hangs the implement.
pub fn end(seat: Seat) -> End {
    match seat {
        Seat::Loader | Seat::FrontFrame => End::Front,
        Seat::RearBackwards | Seat::RearForwards => End::Rear,
    }
}

/// How far beyond its axle what hangs on an end begins.
fn hooks(axles: &Axles, seat: Seat) -> Option<Length> {
    match seat {
        Seat::Loader => axles.loader_ahead,
        Seat::FrontFrame => axles.frame_ahead,
        Seat::RearBackwards | Seat::RearForwards => axles.hitch_behind,
    }
}

/// What the axles carry with the implement hung on, and the implement's own part in it.
struct Laden {
    axles: Axles,
    loads: AxleLoads,
}

fn laden(look: &Look<'_>, seat: Seat) -> Option<Laden> {
    let axles = look.machine.axles?;
    let alone = AxleLoads {
        front: axles.front,
        rear: look.machine.mass? - axles.front,
    };
    let out = hooks(&axles, seat)? + look.implement.mount.centre?;
    let loads = alone.with(look.implement.mass?, end(seat), out, axles.wheelbase);
    Some(Laden { axles, loads })
}

fn balance(look: &Look<'_>, seat: Seat, items: &mut Vec<Item>) {
    // A skid steer's rated load keeps it from tipping.
    if look.machine.kind == MachineKind::SkidSteer {
        return;
    }
    let axle = end(seat).other();
    let laden = laden(look, seat);
    let found = laden.as_ref().map(|Laden { axles, loads }| Balance {
        share: loads.share(axle),
        ballast: ballast_at(axles, axle)
            .map(|out| loads.ballast(LEAST_SHARE, axle, out, axles.wheelbase)),
    });
    items.push(Item {
        check: Check::Balance { axle, found },
        judgement: match found {
            None => Judgement::Question,
            Some(balance) if balance.share >= LEAST_SHARE => Judgement::Pass,
            Some(_) => Judgement::Advice,
        },
    });
    if let Some(Laden { axles, loads }) = laden {
        let ballast = found.and_then(|found| found.ballast).unwrap_or(Mass::ZERO);
        let loads = match ballast_at(&axles, axle) {
            Some(out) => loads.with(ballast, axle, out, axles.wheelbase),
            None => loads,
        };
        for (axle, limit) in [
            (End::Front, axles.front_limit),
            (End::Rear, axles.rear_limit),
        ] {
            let load = loads.of(axle);
            items.extend(limit.map(|limit| Item {
                check: Check::AxleLoad { axle, load, limit },
                judgement: if load <= limit {
                    Judgement::Pass
                } else {
                    Judgement::Stop
                },
            }));
        }
    }
}

/// How far beyond an axle ballast hangs: on the hitch behind, where a subframe hooks in front.
fn ballast_at(axles: &Axles, axle: End) -> Option<Length> {
    match axle {
        End::Front => axles.frame_ahead,
        End::Rear => axles.hitch_behind,
    }
}
