//! What decides, beside power, whether a machine and an implement can be hooked up: hitch, loader,
//! axles, shaft ends. All of it optional: what isn't known is a question, never a pass.

use crate::physics::hitch::Category;
use crate::physics::shaft::ShaftType;
use crate::quantity::{Length, Mass};
use crate::words::words;

words! {
    /// Which way a shaft turns, seen from behind the machine by one who looks forward.
    Turns {
        /// As a rear PTO does (ISO 500-1:2014, 4.2).
        Clockwise = "clockwise",
        /// The other way.
        Anticlockwise = "anticlockwise",
    }
}

impl Turns {
    /// The other way.
    pub fn reversed(self) -> Self {
        match self {
            Self::Clockwise => Self::Anticlockwise,
            Self::Anticlockwise => Self::Clockwise,
        }
    }
}

words! {
    /// Where a route puts the implement.
    Seat {
        /// On the loader's arms or a skid steer's.
        Loader = "loader",
        /// On a subframe in front, under the machine.
        FrontFrame = "front_frame",
        /// On the rear hitch, the machine driving backwards.
        RearBackwards = "rear_backwards",
        /// On the rear hitch, the machine driving forwards over the work.
        RearForwards = "rear_forwards",
    }
}

/// A three-point hitch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hitch {
    /// Its category.
    pub category: Option<Category>,
    /// What it lifts.
    pub lift: Option<Mass>,
    /// How far behind the ball ends it lifts that.
    pub lift_at: Length,
    /// Height of the ball ends when lowered to work.
    pub lowest: Option<Length>,
    /// Their height when lifted.
    pub highest: Option<Length>,
}

/// A loader, or a skid steer's arms.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Loader {
    /// What it lifts at its pins to full height, or a skid steer's rated load.
    pub lift: Option<Mass>,
    /// From the arms' pivot to the pins.
    pub reach: Option<Length>,
    /// Whether a third function's oil gets to its end.
    pub third_function: Option<bool>,
}

/// Axles and where implements hang from them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Axles {
    /// From front to rear axle.
    pub wheelbase: Length,
    /// What the front axle carries of the machine without implement and ballast.
    pub front: Mass,
    /// The most that the front axle may carry.
    pub front_limit: Option<Mass>,
    /// The most that the rear axle may carry.
    pub rear_limit: Option<Mass>,
    /// From the front axle forward to the loader's pins, arms down.
    pub loader_ahead: Option<Length>,
    /// From the front axle forward to a front subframe's hooks.
    pub frame_ahead: Option<Length>,
    /// From the rear axle back to the hitch's ball ends.
    pub hitch_behind: Option<Length>,
}

/// The end of a machine's PTO shaft.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct PtoEnd {
    /// Its type.
    pub shaft: Option<ShaftType>,
    /// Which way it turns.
    pub turns: Option<Turns>,
    /// How high it stands.
    pub height: Option<Length>,
    /// How far it ends ahead of the hitch's ball ends.
    pub ahead: Option<Length>,
}

/// The end of an implement's input shaft.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct InputEnd {
    /// Its type.
    pub shaft: Option<ShaftType>,
    /// Which way it must turn.
    pub turns: Option<Turns>,
    /// How far it ends behind the hitch's pins.
    pub behind: Option<Length>,
    /// How far it stands above the lower pins, negative below.
    pub above: Option<Length>,
}

/// How an implement hangs from its machine.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Mount {
    /// The hitch category of its pins.
    pub category: Option<Category>,
    /// How far its centre of mass lies from the pins or hooks that carry it.
    pub centre: Option<Length>,
    /// Whether, on the rear hitch, it works with the machine driving backwards.
    pub backwards: Option<bool>,
    /// Whether every guard on it is there.
    pub guarded: Option<bool>,
}

/// A kit's shaft from the PTO to the implement.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct KitShaft {
    /// The PTO type that it suits.
    pub pto_end: Option<ShaftType>,
    /// The input type that it suits.
    pub far_end: Option<ShaftType>,
    /// Its length pushed together.
    pub closed: Option<Length>,
    /// Its length where its tubes part.
    pub open: Option<Length>,
    /// Whether what it brings in all turns the direction round.
    pub reverses: Option<bool>,
    /// Whether its guards are there.
    pub guarded: Option<bool>,
}
