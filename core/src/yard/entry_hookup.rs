//! The groups of the yard file that say how things are hooked up, as they are written, and what
//! they become.

use crate::hookup::{Axles, Hitch, InputEnd, KitShaft, Loader, Mount, PtoEnd, Turns};
use crate::physics::hitch::Category;
use crate::physics::shaft::ShaftType;
use crate::quantity::{Length, Mass};
use serde::{Deserialize, Serialize};

/// A rear hitch.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct HitchEntry {
    /// Its category.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub category: Option<Category>,
    /// What it lifts.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub lift_kg: Option<f64>,
    /// How far behind the ball ends it lifts that.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub lift_at_m: Option<f64>,
    /// Height of the ball ends when lowered to work.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub lowest_m: Option<f64>,
    /// Their height when lifted.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub highest_m: Option<f64>,
}

impl From<&HitchEntry> for Hitch {
    fn from(entry: &HitchEntry) -> Self {
        Self {
            category: entry.category,
            lift: entry.lift_kg.map(Mass::kilograms),
            lift_at: entry.lift_at_m.map_or(Length::ZERO, Length::metres),
            lowest: entry.lowest_m.map(Length::metres),
            highest: entry.highest_m.map(Length::metres),
        }
    }
}

/// A loader.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct LoaderEntry {
    /// What it lifts at its pins to full height, or a skid steer's rated load.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub lift_kg: Option<f64>,
    /// From the arms' pivot to the pins.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub reach_m: Option<f64>,
    /// Whether a third function's oil gets to its end.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub third_function: Option<bool>,
}

impl From<&LoaderEntry> for Loader {
    fn from(entry: &LoaderEntry) -> Self {
        Self {
            lift: entry.lift_kg.map(Mass::kilograms),
            reach: entry.reach_m.map(Length::metres),
            third_function: entry.third_function,
        }
    }
}

/// Axles.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct AxlesEntry {
    /// From front to rear axle.
    pub wheelbase_m: f64,
    /// What the front axle carries of the machine without implement and ballast.
    pub front_kg: f64,
    /// The most that the front axle may carry.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub front_limit_kg: Option<f64>,
    /// The most that the rear axle may carry.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rear_limit_kg: Option<f64>,
    /// From the front axle forward to the loader's pins.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub loader_ahead_m: Option<f64>,
    /// From the front axle forward to a front subframe's hooks.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub frame_ahead_m: Option<f64>,
    /// From the rear axle back to the hitch's ball ends.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub hitch_behind_m: Option<f64>,
}

impl From<&AxlesEntry> for Axles {
    fn from(entry: &AxlesEntry) -> Self {
        Self {
            wheelbase: Length::metres(entry.wheelbase_m),
            front: Mass::kilograms(entry.front_kg),
            front_limit: entry.front_limit_kg.map(Mass::kilograms),
            rear_limit: entry.rear_limit_kg.map(Mass::kilograms),
            loader_ahead: entry.loader_ahead_m.map(Length::metres),
            frame_ahead: entry.frame_ahead_m.map(Length::metres),
            hitch_behind: entry.hitch_behind_m.map(Length::metres),
        }
    }
}

/// The end of a PTO shaft.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct PtoEndEntry {
    /// Its type.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub shaft: Option<ShaftType>,
    /// Which way it turns, seen from behind the machine.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub turns: Option<Turns>,
    /// How high it stands.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub height_m: Option<f64>,
    /// How far it ends ahead of the hitch's ball ends.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub ahead_m: Option<f64>,
}

impl From<&PtoEndEntry> for PtoEnd {
    fn from(entry: &PtoEndEntry) -> Self {
        Self {
            shaft: entry.shaft,
            turns: entry.turns,
            height: entry.height_m.map(Length::metres),
            ahead: entry.ahead_m.map(Length::metres),
        }
    }
}

/// The end of an input shaft.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct InputEndEntry {
    /// Its type.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub shaft: Option<ShaftType>,
    /// Which way it must turn, seen from behind the machine.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub turns: Option<Turns>,
    /// How far it ends behind the hitch's pins.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub behind_m: Option<f64>,
    /// How far it stands above the lower pins.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub above_m: Option<f64>,
}

impl From<&InputEndEntry> for InputEnd {
    fn from(entry: &InputEndEntry) -> Self {
        Self {
            shaft: entry.shaft,
            turns: entry.turns,
            behind: entry.behind_m.map(Length::metres),
            above: entry.above_m.map(Length::metres),
        }
    }
}

/// How an implement hangs from its machine.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct MountEntry {
    /// The hitch category of its pins.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub category: Option<Category>,
    /// How far its centre of mass lies from the pins or hooks that carry it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub centre_m: Option<f64>,
    /// Whether, on the rear hitch, it works with the machine driving backwards.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub backwards: Option<bool>,
    /// Whether every guard on it is there.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub guarded: Option<bool>,
}

impl From<&MountEntry> for Mount {
    fn from(entry: &MountEntry) -> Self {
        Self {
            category: entry.category,
            centre: entry.centre_m.map(Length::metres),
            backwards: entry.backwards,
            guarded: entry.guarded,
        }
    }
}

/// A kit's shaft.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct KitShaftEntry {
    /// The PTO type that it suits.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pto_end: Option<ShaftType>,
    /// The input type that it suits.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub far_end: Option<ShaftType>,
    /// Its length pushed together, joint to joint.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub closed_m: Option<f64>,
    /// Its length where its tubes part, joint to joint.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub open_m: Option<f64>,
    /// Whether what the kit brings in all turns the direction round.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub reverses: Option<bool>,
    /// Whether its guards are there.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub guarded: Option<bool>,
}

impl From<&KitShaftEntry> for KitShaft {
    fn from(entry: &KitShaftEntry) -> Self {
        Self {
            pto_end: entry.pto_end,
            far_end: entry.far_end,
            closed: entry.closed_m.map(Length::metres),
            open: entry.open_m.map(Length::metres),
            reverses: entry.reverses,
            guarded: entry.guarded,
        }
    }
}
