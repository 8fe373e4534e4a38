//! What stands above the columns of tables for spreadsheets, and in them.

use farend_core::drive::Limit;
use farend_core::fit::Judgement;

use super::labels;

pub const WHY: &str = "Why";
pub const DELIVERED: [&str; 3] = ["Delivered, low", "Delivered, likely", "Delivered, high"];
pub const NEED: [&str; 3] = ["Need, low", "Need, likely", "Need, high"];
pub const PART: &str = "Of the engine's net power";
pub const ROTOR: &str = "Rotor speed";
pub const KIT: &str = "Kit";
pub const SEAT: &str = "Place of the implement";
pub const HOOK_UP: &str = "Hooking up";
pub const JOB: &str = "Job";
pub const TIME: [&str; 3] = ["Time, quickest", "Time, likely", "Time, slowest"];
pub const PRICES: [&str; 3] = [
    "Price of the kit",
    "Price of the implement for this route",
    "Price of fitting",
];
pub const TOTAL: &str = "Price in all";
pub const TAKES: [&str; 4] = [
    "Takes: speed",
    "Takes: torque",
    "Takes: flow",
    "Takes: pressure",
];
pub const PASSES_ON: [&str; 4] = [
    "Passes on: speed",
    "Passes on: torque",
    "Passes on: flow",
    "Passes on: pressure",
];

/// A header with the unit of what stands below it.
pub fn with_unit(name: &str, unit: &str) -> String {
    if unit.is_empty() {
        name.to_owned()
    } else {
        format!("{name} ({unit})")
    }
}

/// How many items come to a judgement, and which.
pub fn judged(judgement: Judgement) -> [&'static str; 2] {
    match judgement {
        Judgement::Pass => ["Items that fit", "Which fit"],
        Judgement::Advice => ["Items with advice", "Which have advice"],
        Judgement::Question => ["Items to ask about", "Which to ask about"],
        Judgement::Stop => ["Items that don't fit", "Which don't fit"],
    }
}

/// What holds a route, beside its bar.
pub fn held_by(limit: Limit) -> String {
    format!("limit: {}", labels::limit(limit))
}

/// The name of a file with a comparison's machine and implement in it.
pub fn file(machine: &str, implement: &str, ending: &str) -> String {
    format!("farend-{machine}-{implement}{ending}")
}
