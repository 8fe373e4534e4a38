//! Items of what carries the implement, by moments worked out here. A fifth of the weight on the
//! other axle is a loader maker's page's figure; how far out arms and links bear is from memory.

use crate::Row;
use farend_core::fit::Judgement;
use farend_core::hookup::{Axles, Hitch, Loader, Seat};
use farend_core::physics::hitch::Category;
use farend_core::quantity::{Length, Mass};
use farend_core::route::RouteId;
use farend_tests::item_kind::ItemKind;
use farend_tests::parts::Parts;

use ItemKind::{AxleLoad, Balance, Category as Pins, FrontHooks, Lift, ThirdFunction};
use RouteId::{MachineHydraulics, MidShaft, PumpPack, RearShaft, SkidSteer};

const PASS: Option<Judgement> = Some(Judgement::Pass);
const ADVICE: Option<Judgement> = Some(Judgement::Advice);
const QUESTION: Option<Judgement> = Some(Judgement::Question);
const STOP: Option<Judgement> = Some(Judgement::Stop);

fn metres(value: f64) -> Option<Length> {
    Some(Length::metres(value))
}

fn kilograms(value: f64) -> Option<Mass> {
    Some(Mass::kilograms(value))
}

fn hitch(parts: &mut Parts) -> &mut Hitch {
    parts.machine.hitch.as_mut().expect("a hitch")
}

fn loader(parts: &mut Parts) -> &mut Loader {
    parts.machine.loader.as_mut().expect("a loader")
}

fn axles(parts: &mut Parts) -> &mut Axles {
    parts.machine.axles.as_mut().expect("axles")
}

fn pinned(parts: &mut Parts, machine: Option<Category>, implement: Option<Category>) {
    hitch(parts).category = machine;
    parts.implement.mount.category = implement;
}

/// An implement of a mass, its centre so far from the pins.
fn weighs(parts: &mut Parts, mass: f64, centre: f64) {
    parts.implement.mass = kilograms(mass);
    parts.implement.mount.centre = metres(centre);
}

/// A hitch that lifts 1000 kg at its ball ends: 1.6 m behind them 360 kg on an arm of 0.9 m, 652.2
/// kg on one of 3 m.
fn hung(parts: &mut Parts, mass: f64) {
    (hitch(parts).lift, hitch(parts).lift_at) = (kilograms(1000.0), Length::ZERO);
    weighs(parts, mass, 1.6);
}

/// A hitch that lifts 1000 kg 0.61 m behind its ball ends: at them 1203.3 kg on an arm of 3 m,
/// 1677.8 kg on one of 0.9 m.
fn hung_near(parts: &mut Parts, mass: f64) {
    (hitch(parts).lift, hitch(parts).lift_at) = (kilograms(1000.0), Length::metres(0.61));
    weighs(parts, mass, 0.0);
}

/// A loader with arms of 2 m that lifts 1000 kg at its pins: 0.8 m ahead of them 600 kg with the
/// pins 1.2 m ahead of the pivot, 714.3 kg with 2 m.
fn loaded(parts: &mut Parts, mass: f64) {
    (loader(parts).lift, loader(parts).reach) = (kilograms(1000.0), metres(2.0));
    weighs(parts, mass, 0.8);
}

/// A skid steer rated for 900 kg with its pins 0.9 m ahead of the axle: 1.5 m ahead of them 450 kg
/// where its rating holds 0.3 m ahead, 525 kg where it holds 0.5 m ahead.
fn tipping(parts: &mut Parts, mass: f64) {
    loader(parts).lift = kilograms(900.0);
    axles(parts).loader_ahead = metres(0.9);
    weighs(parts, mass, 1.5);
}

/// 2200 kg on a wheelbase of 2 m, 1000 kg of it in front; an implement 1.5 m beyond the axle of its
/// end. On the hitch the front axle keeps (1000 − 0.75·m)/(2200 + m): 0.2 at 589.5 kg. On the
/// loader the rear axle keeps (1200 − 0.75·m)/(2200 + m): 0.2 at 800 kg.
fn stands(parts: &mut Parts, mass: f64) {
    parts.machine.mass = kilograms(2200.0);
    parts.machine.axles = Some(Axles {
        wheelbase: Length::metres(2.0),
        front: Mass::kilograms(1000.0),
        front_limit: kilograms(1e4),
        rear_limit: kilograms(1e4),
        loader_ahead: metres(1.0),
        frame_ahead: metres(0.6),
        hitch_behind: metres(1.0),
    });
    weighs(parts, mass, 0.5);
}

/// 400 kg on the hitch: 1200 + 400·3.5/2 = 1900 kg behind, 1000 − 400·1.5/2 = 700 kg in front.
fn stands_light(parts: &mut Parts, front_limit: f64, rear_limit: f64) {
    stands(parts, 400.0);
    axles(parts).front_limit = kilograms(front_limit);
    axles(parts).rear_limit = kilograms(rear_limit);
}

/// 1400 kg on the hitch: 3650 kg behind and 50 kg less than nothing in front. With 700 kg of
/// ballast 0.6 m ahead of the front axle 3440 kg behind and 860 kg in front, a fifth of 4300 kg.
fn stands_with_ballast(parts: &mut Parts, front_limit: f64, rear_limit: f64) {
    stands(parts, 1400.0);
    axles(parts).front_limit = kilograms(front_limit);
    axles(parts).rear_limit = kilograms(rear_limit);
}

pub const ROWS: &[Row] = &[
    (Pins, RearShaft, PASS, |_| {}),
    (Pins, RearShaft, ADVICE, |it| {
        pinned(it, Some(Category::Two), Some(Category::One));
    }),
    (Pins, RearShaft, STOP, |it| {
        pinned(it, Some(Category::One), Some(Category::Two));
    }),
    (Pins, RearShaft, QUESTION, |it| {
        pinned(it, None, Some(Category::Two));
    }),
    (Pins, RearShaft, QUESTION, |it| {
        pinned(it, Some(Category::Two), None);
    }),
    (Pins, RearShaft, QUESTION, |it| it.machine.hitch = None),
    (Pins, MachineHydraulics, None, |_| {}),
    // Where a kit puts it on the hitch, it hangs there.
    (Pins, MachineHydraulics, PASS, |it| {
        for kit in &mut it.kits {
            kit.seat = Some(Seat::RearForwards);
        }
    }),
    (Lift, RearShaft, PASS, |it| hung(it, 359.0)),
    (Lift, RearShaft, ADVICE, |it| hung(it, 361.0)),
    (Lift, RearShaft, ADVICE, |it| hung(it, 652.0)),
    (Lift, RearShaft, STOP, |it| hung(it, 653.0)),
    (Lift, RearShaft, PASS, |it| hung_near(it, 1203.0)),
    (Lift, RearShaft, ADVICE, |it| hung_near(it, 1204.0)),
    (Lift, RearShaft, ADVICE, |it| hung_near(it, 1677.0)),
    (Lift, RearShaft, STOP, |it| hung_near(it, 1678.0)),
    (Lift, MachineHydraulics, PASS, |it| loaded(it, 599.0)),
    (Lift, MachineHydraulics, ADVICE, |it| loaded(it, 601.0)),
    (Lift, MachineHydraulics, ADVICE, |it| loaded(it, 714.0)),
    (Lift, PumpPack, STOP, |it| loaded(it, 715.0)),
    (Lift, SkidSteer, PASS, |it| tipping(it, 449.0)),
    (Lift, SkidSteer, ADVICE, |it| tipping(it, 451.0)),
    (Lift, SkidSteer, ADVICE, |it| tipping(it, 524.0)),
    (Lift, SkidSteer, STOP, |it| tipping(it, 526.0)),
    // Nearer than where its rating holds it may no more than that.
    (Lift, SkidSteer, PASS, |it| {
        tipping(it, 899.0);
        weighs(it, 899.0, 0.0);
    }),
    (Lift, SkidSteer, STOP, |it| {
        tipping(it, 901.0);
        weighs(it, 901.0, 0.0);
    }),
    (Lift, RearShaft, QUESTION, |it| hitch(it).lift = None),
    (Lift, RearShaft, QUESTION, |it| it.implement.mass = None),
    (Lift, RearShaft, QUESTION, |it| {
        it.implement.mount.centre = None;
    }),
    (Lift, MachineHydraulics, QUESTION, |it| {
        loader(it).reach = None;
    }),
    (Lift, MachineHydraulics, QUESTION, |it| {
        it.machine.loader = None;
    }),
    (Lift, SkidSteer, QUESTION, |it| {
        axles(it).loader_ahead = None;
    }),
    // Arms without length know no moment.
    (Lift, SkidSteer, QUESTION, |it| {
        axles(it).loader_ahead = metres(0.0);
    }),
    (Lift, MidShaft, None, |_| {}),
    (FrontHooks, MidShaft, PASS, |_| {}),
    (FrontHooks, MidShaft, QUESTION, |it| {
        axles(it).frame_ahead = None;
    }),
    (FrontHooks, MidShaft, QUESTION, |it| it.machine.axles = None),
    (FrontHooks, RearShaft, None, |_| {}),
    (ThirdFunction, MachineHydraulics, PASS, |_| {}),
    (ThirdFunction, MachineHydraulics, STOP, |it| {
        loader(it).third_function = Some(false);
    }),
    (ThirdFunction, MachineHydraulics, QUESTION, |it| {
        loader(it).third_function = None;
    }),
    (ThirdFunction, PumpPack, None, |_| {}),
    (ThirdFunction, SkidSteer, None, |_| {}),
    (Balance, RearShaft, PASS, |it| stands(it, 589.0)),
    (Balance, RearShaft, ADVICE, |it| stands(it, 590.0)),
    (Balance, RearShaft, ADVICE, |it| stands(it, 1400.0)),
    (Balance, MachineHydraulics, PASS, |it| stands(it, 799.0)),
    (Balance, MachineHydraulics, ADVICE, |it| stands(it, 801.0)),
    (Balance, RearShaft, QUESTION, |it| {
        axles(it).hitch_behind = None;
    }),
    (Balance, MachineHydraulics, QUESTION, |it| {
        axles(it).loader_ahead = None;
    }),
    (Balance, MidShaft, QUESTION, |it| {
        axles(it).frame_ahead = None;
    }),
    (Balance, RearShaft, QUESTION, |it| it.machine.mass = None),
    (Balance, RearShaft, QUESTION, |it| it.machine.axles = None),
    (Balance, SkidSteer, None, |_| {}),
    (AxleLoad, RearShaft, PASS, |it| {
        stands_light(it, 700.1, 1900.1)
    }),
    (AxleLoad, RearShaft, STOP, |it| {
        stands_light(it, 699.9, 1900.1)
    }),
    (AxleLoad, RearShaft, STOP, |it| {
        stands_light(it, 700.1, 1899.9)
    }),
    // Ballast relieves the axle behind and burdens the one in front.
    (AxleLoad, RearShaft, PASS, |it| {
        stands_with_ballast(it, 860.1, 3440.1);
    }),
    (AxleLoad, RearShaft, STOP, |it| {
        stands_with_ballast(it, 859.9, 3440.1);
    }),
    (AxleLoad, RearShaft, STOP, |it| {
        stands_with_ballast(it, 860.1, 3439.9);
    }),
    (AxleLoad, RearShaft, QUESTION, |it| {
        stands_with_ballast(it, 860.1, 3440.1);
        axles(it).frame_ahead = None;
    }),
    // Without any need of ballast its place doesn't matter.
    (AxleLoad, RearShaft, PASS, |it| {
        stands_light(it, 700.1, 1900.1);
        axles(it).frame_ahead = None;
    }),
    (AxleLoad, RearShaft, QUESTION, |it| {
        axles(it).rear_limit = None;
    }),
    (AxleLoad, RearShaft, QUESTION, |it| {
        it.implement.mass = None;
    }),
    (AxleLoad, RearShaft, QUESTION, |it| it.machine.axles = None),
    (AxleLoad, SkidSteer, None, |_| {}),
];
