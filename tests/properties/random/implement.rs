//! Random implements.

use super::{efficiency, log, shaft_rpm, uncertain};
use farend_core::implement::{ImplementKind, Place};
use farend_core::stage::gear::GearKind;
use farend_core::yard::entry::{ImplementEntry, MotorEntry, RotorEntry, ShaftEntry};
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;

/// An implement with shafts at both ends and, most often, a motor.
pub fn implement(id: &'static str) -> BoxedStrategy<ImplementEntry> {
    rotor()
        .prop_flat_map(move |rotor| {
            (
                proptest::sample::select(ImplementKind::ALL),
                uncertain(0.2, 500.0),
                vec(shaft(Place::Rear), 1..=2),
                vec(shaft(Place::Front), 1..=2),
                option::weighted(0.9, motor()),
            )
                .prop_map(move |(kind, need_kw, rear, front, motor)| ImplementEntry {
                    id: id.to_owned(),
                    name: "An implement".to_owned(),
                    kind,
                    rotor: rotor.clone(),
                    need_kw,
                    shafts: rear.into_iter().chain(front).collect(),
                    motor,
                })
        })
        .boxed()
}

fn rotor() -> BoxedStrategy<RotorEntry> {
    (log(40.0, 4000.0), 0.3..=1.0_f64, 1.0..=1.5_f64)
        .prop_map(|(rated_rpm, lowest, highest)| RotorEntry {
            rated_rpm,
            lowest_rpm: rated_rpm * lowest,
            highest_rpm: rated_rpm * highest,
        })
        .boxed()
}

/// The steps that a change of speed needs.
fn drive() -> impl Strategy<Value = Vec<GearKind>> {
    vec(proptest::sample::select(GearKind::ALL), 1..=3)
}

fn shaft(place: Place) -> BoxedStrategy<ShaftEntry> {
    (shaft_rpm(), drive(), option::of(uncertain(1.0, 600.0)))
        .prop_map(move |(rpm, drive, rating_kw)| ShaftEntry {
            place,
            rpm,
            drive,
            rating_kw,
        })
        .boxed()
}

fn motor() -> BoxedStrategy<MotorEntry> {
    (
        log(4.0, 2000.0),
        log(0.01, 20.0),
        drive(),
        log(1.0, 400.0),
        log(20.0, 420.0),
        option::of(efficiency(0.5)),
        option::of(efficiency(0.5)),
    )
        .prop_map(
            |(
                displacement_cm3,
                ratio,
                drive,
                highest_l_min,
                highest_bar,
                volumetric,
                hydro_mechanical,
            )| MotorEntry {
                displacement_cm3,
                ratio,
                drive,
                highest_l_min,
                highest_bar,
                volumetric,
                hydro_mechanical,
            },
        )
        .boxed()
}
