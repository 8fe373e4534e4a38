//! The groups of a yard file that say how things are hooked up, and the range of prices.

use super::rules::{optional, required, within};
use super::shape::{Field, Shape};
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
    optional(
        "category",
        OneOf(Category::WORDS),
        "Its pins tell: 22 mm is 1, 28 mm is 2.",
    ),
    optional("lift_kg", LOAD, "From the machine's sheet."),
    optional(
        "lift_at_m",
        within(0.0, 2.0, "m"),
        "How far behind the ball ends the sheet's lift holds: 0 or 0.61.",
    ),
    optional(
        "lowest_m",
        REACH,
        "Height of the ball ends when lowered to work.",
    ),
    optional("highest_m", REACH, "Their height when lifted."),
];

pub(super) const LOADER: &[Field] = &[
    optional(
        "lift_kg",
        LOAD,
        "At the pins to full height; for a skid steer its rated operating load.",
    ),
    optional(
        "reach_m",
        within(0.5, 6.0, "m"),
        "From the arms' pivot to the pins.",
    ),
    optional(
        "third_function",
        Flag,
        "Whether hoses for an implement's oil come to the loader's end.",
    ),
];

pub(super) const AXLES: &[Field] = &[
    required(
        "wheelbase_m",
        within(0.6, 6.0, "m"),
        "From front to rear axle.",
    ),
    required(
        "front_kg",
        LOAD,
        "On the front axle, without implement and ballast: from the sheet or a scale.",
    ),
    optional(
        "front_limit_kg",
        LOAD,
        "The most that the front axle may carry.",
    ),
    optional(
        "rear_limit_kg",
        LOAD,
        "The most that the rear axle may carry.",
    ),
    optional(
        "loader_ahead_m",
        REACH,
        "From the front axle to the loader's pins, arms down.",
    ),
    optional(
        "frame_ahead_m",
        REACH,
        "From the front axle to a front subframe's hooks.",
    ),
    optional(
        "hitch_behind_m",
        REACH,
        "From the rear axle to the hitch's ball ends.",
    ),
];

pub(super) const PTO_END: &[Field] = &[
    optional(
        "shaft",
        SHAFT_TYPE,
        "6 splines is 1, 21 is 2, 20 is 3, 22 is 4.",
    ),
    optional(
        "turns",
        TURNS,
        "Seen from behind the machine by one who looks forward.",
    ),
    optional("height_m", REACH, "Its height above the ground."),
    optional(
        "ahead_m",
        REACH,
        "How far it ends ahead of the hitch's ball ends.",
    ),
];

pub(super) const INPUT_END: &[Field] = &[
    optional(
        "shaft",
        SHAFT_TYPE,
        "6 splines is 1, 21 is 2, 20 is 3, 22 is 4.",
    ),
    optional(
        "turns",
        TURNS,
        "Which way it must turn, seen from behind the machine.",
    ),
    optional(
        "behind_m",
        REACH,
        "How far it ends behind the hitch's pins.",
    ),
    optional(
        "above_m",
        within(-2.0, 2.0, "m"),
        "How far it stands above the lower pins, negative below.",
    ),
];

pub(super) const MOUNT: &[Field] = &[
    optional(
        "category",
        OneOf(Category::WORDS),
        "The hitch category of its pins.",
    ),
    optional(
        "centre_m",
        within(0.0, 4.0, "m"),
        "How far its centre of mass lies from the pins or hooks that carry it.",
    ),
    optional(
        "backwards",
        Flag,
        "Whether, on the rear hitch, it works with the machine driving backwards.",
    ),
    optional("guarded", Flag, "Whether every guard on it is there."),
];

pub(super) const KIT_SHAFT: &[Field] = &[
    optional("pto_end", SHAFT_TYPE, "The PTO type that it suits."),
    optional("far_end", SHAFT_TYPE, "The input type that it suits."),
    optional(
        "closed_m",
        REACH,
        "Its length pushed together, joint to joint.",
    ),
    optional(
        "open_m",
        REACH,
        "Its length where its tubes part, joint to joint.",
    ),
    optional(
        "reverses",
        Flag,
        "Whether what the kit brings in all turns the direction round.",
    ),
    optional("guarded", Flag, "Whether its guards are there."),
];
