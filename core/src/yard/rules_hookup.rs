//! The groups of a yard file that say how things are hooked up, and the range of prices.

use super::rules::{optional, required, within};
use super::shape::{Field, Shape};
use crate::hint::Hint;
use crate::hookup::Turns;
use crate::physics::hitch::Category;
use crate::physics::shaft::ShaftType;
use Shape::{Flag, OneOf};

const LOAD: Shape = within(20.0, 30_000.0, "kg");
const REACH: Shape = within(0.0, 6.0, "m");
const SHAFT_TYPE: Shape = OneOf(ShaftType::WORDS);
const TURNS: Shape = OneOf(Turns::WORDS);
/// The highest price that a file may name, in any currency: this project's judgement.
pub const PRICE_LIMITS: (f64, f64) = (0.0, 1e9);
/// A price.
pub(super) const PRICE: Shape = within(PRICE_LIMITS.0, PRICE_LIMITS.1, "");

pub(super) const HITCH: &[Field] = &[
    optional("category", OneOf(Category::WORDS), Hint::HitchCategory),
    optional("lift_kg", LOAD, Hint::HitchLift),
    optional("lift_at_m", within(0.0, 2.0, "m"), Hint::HitchLiftAt),
    optional("lowest_m", REACH, Hint::HitchLowest),
    optional("highest_m", REACH, Hint::HitchHighest),
];

pub(super) const LOADER: &[Field] = &[
    optional("lift_kg", LOAD, Hint::LoaderLift),
    optional("reach_m", within(0.5, 6.0, "m"), Hint::LoaderReach),
    optional("third_function", Flag, Hint::ThirdFunction),
];

pub(super) const AXLES: &[Field] = &[
    required("wheelbase_m", within(0.6, 6.0, "m"), Hint::Wheelbase),
    required("front_kg", LOAD, Hint::FrontWeight),
    optional("front_limit_kg", LOAD, Hint::FrontLimit),
    optional("rear_limit_kg", LOAD, Hint::RearLimit),
    optional("loader_ahead_m", REACH, Hint::LoaderAhead),
    optional("frame_ahead_m", REACH, Hint::FrameAhead),
    optional("hitch_behind_m", REACH, Hint::HitchBehind),
];

pub(super) const PTO_END: &[Field] = &[
    optional("shaft", SHAFT_TYPE, Hint::ShaftType),
    optional("turns", TURNS, Hint::Turns),
    optional("height_m", REACH, Hint::PtoHeight),
    optional("ahead_m", REACH, Hint::PtoAhead),
];

pub(super) const INPUT_END: &[Field] = &[
    optional("shaft", SHAFT_TYPE, Hint::ShaftType),
    optional("turns", TURNS, Hint::InputTurns),
    optional("behind_m", REACH, Hint::InputBehind),
    optional("above_m", within(-2.0, 2.0, "m"), Hint::InputAbove),
];

pub(super) const MOUNT: &[Field] = &[
    optional("category", OneOf(Category::WORDS), Hint::MountCategory),
    optional("centre_m", within(0.0, 4.0, "m"), Hint::MountCentre),
    optional("backwards", Flag, Hint::MountBackwards),
    optional("guarded", Flag, Hint::MountGuarded),
];

pub(super) const KIT_SHAFT: &[Field] = &[
    optional("pto_end", SHAFT_TYPE, Hint::KitPtoEnd),
    optional("far_end", SHAFT_TYPE, Hint::KitFarEnd),
    optional("closed_m", REACH, Hint::KitClosed),
    optional("open_m", REACH, Hint::KitOpen),
    optional("reverses", Flag, Hint::KitReverses),
    optional("guarded", Flag, Hint::KitGuarded),
];
