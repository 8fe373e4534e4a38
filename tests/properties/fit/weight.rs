//! Ballast does what it is asked for, axles carry all there is, and a heavier implement or one whose
//! centre lies farther out never fits better.

use super::{Joint, Uses, on_each_route, pairs};
use farend_core::fit::{Balance, Check};
use farend_core::hookup::{Axles, Seat};
use farend_core::physics::balance::End;
use farend_core::quantity::Length;
use proptest::prelude::*;
use std::cell::RefCell;

/// How close loads come in plain arithmetic, relative.
const CLOSE: f64 = 1e-9;
/// A fifth of the weight stays on the other axle: a loader maker's page.
const LEAST: f64 = 0.2;

/// Where a mass stands, in metres behind the front axle.
fn place(end: End, out: Length, axles: &Axles) -> f64 {
    match end {
        End::Front => -out.to_metres(),
        End::Rear => axles.wheelbase.to_metres() + out.to_metres(),
    }
}

/// Front and rear load of masses at their places, by moments about the front axle.
fn loads(masses: &[(f64, f64)], wheelbase: f64) -> (f64, f64) {
    let all: f64 = masses.iter().map(|(mass, _)| mass).sum();
    let rear = masses.iter().map(|(mass, at)| mass * at).sum::<f64>() / wheelbase;
    (all - rear, rear)
}

/// Machine and implement as masses at their places, where all is known.
fn masses(joint: &Joint, seat: Seat) -> Option<(Axles, Vec<(f64, f64)>)> {
    let axles = joint.machine.axles?;
    let (end, hooks) = match seat {
        Seat::Loader => (End::Front, axles.loader_ahead?),
        Seat::FrontFrame => (End::Front, axles.frame_ahead?),
        Seat::RearBackwards | Seat::RearForwards => (End::Rear, axles.hitch_behind?),
    };
    let out = hooks + joint.implement.mount.centre?;
    let front = axles.front.to_kilograms();
    let rear = joint.machine.mass?.to_kilograms() - front;
    let implement = joint.implement.mass?.to_kilograms();
    let stand = vec![
        (front, 0.0),
        (rear, axles.wheelbase.to_metres()),
        (implement, place(end, out, &axles)),
    ];
    Some((axles, stand))
}

#[test]
fn with_its_ballast_a_machine_just_keeps_its_axle_down_and_carries_all() {
    let uses = Uses::default();
    on_each_route(200, |case| {
        let joint = Joint::of(&case);
        let look = joint.look(&case);
        let Some((axles, mut stand)) = masses(&joint, look.seat()) else {
            return Ok(());
        };
        let wheelbase = axles.wheelbase.to_metres();
        let mut carried = [None; 2];
        let mut balance = None;
        for item in look.items() {
            match item.check {
                Check::Balance { axle, found } => balance = found.map(|found| (axle, found)),
                Check::AxleLoad { axle, load, .. } => {
                    carried[usize::from(axle == End::Rear)] = load.map(|it| it.to_kilograms());
                }
                _ => {}
            }
        }
        let Some((axle, Balance { share, ballast })) = balance else {
            // A skid steer has none.
            return Ok(());
        };
        let of = |(front, rear)| match axle {
            End::Front => front,
            End::Rear => rear,
        };
        let share_of = |stand: &[(f64, f64)]| {
            let both = loads(stand, wheelbase);
            of(both) / (both.0 + both.1)
        };
        prop_assert!((share - share_of(&stand)).abs() <= CLOSE, "{share}");
        let hangs = match axle {
            End::Front => axles.frame_ahead,
            End::Rear => axles.hitch_behind,
        };
        prop_assert_eq!(ballast.is_some(), hangs.is_some());
        if let Some((ballast, out)) = ballast.zip(hangs) {
            let ballast = ballast.to_kilograms();
            stand.push((ballast, place(axle, out, &axles)));
            if ballast > 0.0 {
                let kept = share_of(&stand);
                prop_assert!((kept - LEAST).abs() <= CLOSE, "{kept} with {ballast} kg");
                uses.count("ballast");
            } else {
                prop_assert!(share >= LEAST * (1.0 - CLOSE), "{share} without ballast");
                uses.count("no ballast");
            }
        }
        if let [Some(front), Some(rear)] = carried {
            let all: f64 = stand.iter().map(|(mass, _)| mass).sum();
            let (in_front, behind) = loads(&stand, wheelbase);
            prop_assert!((front + rear - all).abs() <= CLOSE * all);
            prop_assert!(
                (front - in_front).abs() <= CLOSE * all,
                "{front}, {in_front}"
            );
            prop_assert!((rear - behind).abs() <= CLOSE * all, "{rear}, {behind}");
        } else {
            // Only ballast whose place isn't known leaves them open.
            prop_assert!(share < LEAST && ballast.is_none());
            uses.count("ballast somewhere");
        }
        Ok(())
    });
    for name in ["ballast", "no ballast", "ballast somewhere"] {
        assert!(uses.of(name) > 5, "{name}: {} times", uses.of(name));
    }
}

/// Tries a change that must make no item of some kinds better, or worse; some must change.
fn never(
    cases: u32,
    better: bool,
    concerns: impl Fn(&Check, Seat) -> bool,
    change: impl Fn(&mut Joint, f64),
) {
    let uses = Uses::default();
    let part = RefCell::new(0.0);
    on_each_route(cases, |case| {
        // Parts spread evenly over 0 to 1 by the golden section.
        let part = part.replace_with(|part| (*part + 0.618_033_988_749_894_9) % 1.0);
        let joint = Joint::of(&case);
        let (seat, before) = (joint.look(&case).seat(), joint.look(&case).items());
        let mut changed = joint.clone();
        change(&mut changed, part);
        for (was, is) in pairs(&before, &changed.look(&case).items())? {
            if ![was, is].iter().all(|item| concerns(&item.check, seat)) {
                continue;
            }
            let against = if better {
                is.judgement < was.judgement
            } else {
                is.judgement > was.judgement
            };
            prop_assert!(!against, "{was:?} becomes {is:?}");
            if is.judgement != was.judgement {
                uses.count("changed");
            }
        }
        Ok(())
    });
    let changed = uses.of("changed");
    assert!(changed > 5, "only {changed} judgements changed");
}

/// Of the axles only the one at its own end, where ballast isn't in doubt: it relieves the other.
#[test]
fn a_heavier_implement_never_fits_better() {
    let concerns = |check: &Check, seat| match (check, seat) {
        (Check::AxleLoad { axle, load, .. }, Seat::Loader | Seat::FrontFrame) => {
            *axle == End::Front && load.is_some()
        }
        (Check::AxleLoad { axle, load, .. }, _) => *axle == End::Rear && load.is_some(),
        _ => true,
    };
    never(150, true, concerns, |joint, part| {
        joint.implement.mass = joint.implement.mass.map(|mass| mass * (1.0 + 3.0 * part));
    });
}

#[test]
fn an_implement_whose_centre_is_nearer_is_never_harder_to_lift() {
    let concerns = |check: &Check, _| matches!(check, Check::Lift { .. });
    never(150, false, concerns, |joint, part| {
        let centre = &mut joint.implement.mount.centre;
        *centre = centre.map(|centre| centre * part);
    });
}
