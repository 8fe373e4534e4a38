//! Items of what carries the implement: hitch, loader, subframe, axles.

use super::{Balance, Check, Item, Judgement, Look, there};
use crate::hookup::{Axles, Seat};
use crate::machine::{Machine, MachineKind};
use crate::physics::balance::{AxleLoads, End, LEAST_SHARE};
use crate::physics::lift::{BUCKET_CENTRE, HITCH_ARM, LOADER_LEVEL, lifts_at};
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
                let known = look.machine.loader.and_then(|loader| loader.third_function);
                items.push(Item {
                    check: Check::ThirdFunction { there: known },
                    judgement: there(known),
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

/// What a sheet says is lifted: on which arm, and how far from the pins that was measured.
struct Rated {
    lift: Mass,
    arm: Spread<Length>,
    measured_at: Spread<Length>,
}

impl Rated {
    fn of(machine: &Machine, seat: Seat) -> Option<Self> {
        let exactly = |length| Spread::exact(length, Source::Own);
        let metres = |spread: Spread<f64>| spread.map(Length::metres);
        if seat != Seat::Loader {
            let hitch = machine.hitch?;
            return Some(Self {
                lift: hitch.lift?,
                arm: metres(HITCH_ARM),
                measured_at: exactly(hitch.lift_at),
            });
        }
        let loader = machine.loader?;
        let (arm, measured_at) = match machine.kind {
            MachineKind::Tractor => {
                let reach = loader.reach?;
                let arm = LOADER_LEVEL.map(|level| reach * level);
                (arm, exactly(Length::ZERO))
            }
            // Its rated load is a part of what tips it over the front axle.
            MachineKind::SkidSteer => {
                let ahead = machine.axles?.loader_ahead?;
                (exactly(ahead), metres(BUCKET_CENTRE))
            }
        };
        (arm.low > Length::ZERO).then_some(Self {
            lift: loader.lift?,
            arm,
            measured_at,
        })
    }

    fn at(&self, centre: Length) -> Spread<Mass> {
        let at = |arm, measured_at| lifts_at(self.lift, arm, measured_at, centre);
        // Nearer than measured a short arm lifts more, farther out less.
        let measured_at = self.measured_at;
        let (short, long) = (self.arm.low, self.arm.high);
        Spread::new(
            at(short, measured_at.low).min(at(long, measured_at.low)),
            at(self.arm.likely, measured_at.likely),
            at(short, measured_at.high).max(at(long, measured_at.high)),
            Source::Computed,
        )
    }
}

fn lift(look: &Look<'_>, seat: Seat) -> Item {
    let (mass, centre) = (look.implement.mass, look.implement.mount.centre);
    let rated = Rated::of(look.machine, seat);
    let lifts = rated.zip(centre).map(|(rated, centre)| match seat {
        // However near, no more than it is rated for.
        Seat::Loader => rated.at(centre).map(|mass| mass.min(rated.lift)),
        _ => rated.at(centre),
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
fn end(seat: Seat) -> End {
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

/// What the axles carry with the implement hung on.
fn laden(look: &Look<'_>, seat: Seat, axles: &Axles) -> Option<AxleLoads> {
    let alone = AxleLoads {
        front: axles.front,
        rear: look.machine.mass? - axles.front,
    };
    let out = hooks(axles, seat)? + look.implement.mount.centre?;
    Some(alone.with(look.implement.mass?, end(seat), out, axles.wheelbase))
}

fn balance(look: &Look<'_>, seat: Seat, items: &mut Vec<Item>) {
    // A skid steer's rated load keeps it from tipping.
    if look.machine.kind == MachineKind::SkidSteer {
        return;
    }
    let axle = end(seat).other();
    let axles = look.machine.axles;
    let loads = axles.and_then(|axles| laden(look, seat, &axles));
    let found = axles.zip(loads).map(|(axles, loads)| Balance {
        share: loads.share(axle),
        ballast: ballast_at(&axles, axle)
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
    let known = axles.zip(loads).zip(found);
    let ballasted = known.and_then(|((axles, loads), found)| {
        if found.share >= LEAST_SHARE {
            return Some(loads);
        }
        let out = ballast_at(&axles, axle)?;
        Some(loads.with(found.ballast?, axle, out, axles.wheelbase))
    });
    for axle in [End::Front, End::Rear] {
        let load = ballasted.map(|loads| loads.of(axle));
        let limit = axles.and_then(|axles| match axle {
            End::Front => axles.front_limit,
            End::Rear => axles.rear_limit,
        });
        items.push(Item {
            check: Check::AxleLoad { axle, load, limit },
            judgement: match load.zip(limit) {
                None => Judgement::Question,
                Some((load, limit)) if load <= limit => Judgement::Pass,
                Some(_) => Judgement::Stop,
            },
        });
    }
}

/// How far beyond an axle ballast hangs: on the hitch behind, where a subframe hooks in front.
fn ballast_at(axles: &Axles, axle: End) -> Option<Length> {
    match axle {
        End::Front => axles.frame_ahead,
        End::Rear => axles.hitch_behind,
    }
}
