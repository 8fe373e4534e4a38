//! Random ways to hook things up.

use super::log;
use farend_core::hookup::Turns;
use farend_core::physics::hitch::Category;
use farend_core::physics::shaft::ShaftType;
use farend_core::yard::entry_hookup::{
    AxlesEntry, HitchEntry, InputEndEntry, KitShaftEntry, LoaderEntry, MountEntry, PtoEndEntry,
};
use proptest::option::{self, OptionStrategy};
use proptest::prelude::*;
use proptest::sample::select;

/// What most yards say: where half of it were missing, hardly anything could be reckoned.
pub fn often<S: Strategy>(it: S) -> OptionStrategy<S> {
    option::weighted(0.85, it)
}

fn category() -> BoxedStrategy<Option<Category>> {
    often(select(Category::ALL)).boxed()
}

fn shaft_type() -> BoxedStrategy<Option<ShaftType>> {
    often(select(ShaftType::ALL)).boxed()
}

fn turns() -> BoxedStrategy<Option<Turns>> {
    often(select(Turns::ALL)).boxed()
}

fn reach() -> BoxedStrategy<Option<f64>> {
    often(0.0..=2.0_f64).boxed()
}

/// The size of a coupler, of those that are sold.
pub fn coupler() -> BoxedStrategy<f64> {
    select(&[10.0, 12.5, 16.0, 20.0][..]).boxed()
}

pub fn hitch() -> BoxedStrategy<HitchEntry> {
    (
        category(),
        often(log(100.0, 10_000.0)),
        often(select(&[0.0, 0.61][..])),
        often(0.1..=0.4_f64),
        often(0.6..=1.2_f64),
    )
        .prop_map(
            |(category, lift_kg, lift_at_m, lowest_m, highest_m)| HitchEntry {
                category,
                lift_kg,
                lift_at_m,
                lowest_m,
                highest_m,
            },
        )
        .boxed()
}

pub fn loader() -> BoxedStrategy<LoaderEntry> {
    (
        often(log(100.0, 10_000.0)),
        often(0.5..=4.0_f64),
        often(any::<bool>()),
    )
        .prop_map(|(lift_kg, reach_m, third_function)| LoaderEntry {
            lift_kg,
            reach_m,
            third_function,
        })
        .boxed()
}

/// The front axle's load is a part of the machine's mass, which isn't known here.
pub fn axles() -> BoxedStrategy<AxlesEntry> {
    (
        0.8..=3.5_f64,
        0.1..=0.9_f64,
        often(log(100.0, 10_000.0)),
        often(log(100.0, 10_000.0)),
        reach(),
        reach(),
        reach(),
    )
        .prop_map(
            |(
                wheelbase_m,
                front_kg,
                front_limit_kg,
                rear_limit_kg,
                loader_ahead_m,
                frame_ahead_m,
                hitch_behind_m,
            )| AxlesEntry {
                wheelbase_m,
                front_kg,
                front_limit_kg,
                rear_limit_kg,
                loader_ahead_m,
                frame_ahead_m,
                hitch_behind_m,
            },
        )
        .boxed()
}

pub fn pto_end() -> BoxedStrategy<PtoEndEntry> {
    (shaft_type(), turns(), reach(), reach())
        .prop_map(|(shaft, turns, height_m, ahead_m)| PtoEndEntry {
            shaft,
            turns,
            height_m,
            ahead_m,
        })
        .boxed()
}

pub fn input_end() -> BoxedStrategy<InputEndEntry> {
    (shaft_type(), turns(), reach(), often(-1.0..=1.0_f64))
        .prop_map(|(shaft, turns, behind_m, above_m)| InputEndEntry {
            shaft,
            turns,
            behind_m,
            above_m,
        })
        .boxed()
}

pub fn mount() -> BoxedStrategy<MountEntry> {
    (
        category(),
        reach(),
        often(any::<bool>()),
        often(any::<bool>()),
    )
        .prop_map(|(category, centre_m, backwards, guarded)| MountEntry {
            category,
            centre_m,
            backwards,
            guarded,
        })
        .boxed()
}

pub fn kit_shaft() -> BoxedStrategy<KitShaftEntry> {
    (
        shaft_type(),
        shaft_type(),
        often(0.3..=1.0_f64),
        often(1.0..=2.0_f64),
        often(any::<bool>()),
        often(any::<bool>()),
    )
        .prop_map(
            |(pto_end, far_end, closed_m, open_m, reverses, guarded)| KitShaftEntry {
                pto_end,
                far_end,
                closed_m,
                open_m,
                reverses,
                guarded,
            },
        )
        .boxed()
}
