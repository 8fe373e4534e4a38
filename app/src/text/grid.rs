//! What is said about the whole yard.

use super::labels;
use crate::number;
use farend_core::grid::{Cell, Order, Reading};
use farend_core::implement::ImplementKind;
use farend_core::machine::MachineKind;
use farend_core::route::RouteId;

pub const READING: &str = "Read the yard";
pub const ROUTE: &str = "Route";
pub const BEST_ROUTE: &str = "The best that fits";
pub const LEAST: &str = "Standing at least";
pub const ANY_STANDING: &str = "Any, also none";
pub const MACHINES: &str = "Machines";
pub const IMPLEMENTS: &str = "Implements";
pub const ALL: &str = "All";
pub const FROM: &str = "Engine from";
pub const TO: &str = "Engine to";
pub const KITS: &str = "Kits";
pub const WITH_KIT: &str = "With any kit of the yard";
pub const AS_IT_STANDS: &str = "Only what is there already";
pub const ORDER: &str = "Sorted by";
pub const GROUPED: &str = "By kind";
pub const FILTERS: &str = "Filter and sort";
pub const BACK: &str = "Show all again";
pub const STOP: &str = "Stop";
pub const GO_ON: &str = "Go on";
pub const SAVE: &str = "Save what is shown (CSV)";
pub const PRINT: &str = "Print what is shown";
pub const CANT_PRINT: &str = "This browser doesn't print from here. Open the page in a tab of its \
    own and print it there.";
pub const NOTHING: &str = "Nothing of this yard is shown: every pair is filtered out.";
pub const EMPTY: &str = "The yard has no machine or no implement yet. Add them under “Edit yard”, \
    or open a yard file.";
pub const NOT_YET: &str = "…";
pub const NOTE: &str = "Each pair is reckoned with its likely figures, at the engine speed of its \
    PTO, with the height above the sea and the temperatures set. How warm the oil gets and the \
    ranges of the figures are seen when a pair is opened. Of the routes of a pair that fit, the one with the best \
    standing is shown; of equals the one of which less must be asked, then the one that delivers \
    more. Delivered over needed: 1.00 is just enough.";
pub const ASKS: &str = "ask first";
pub const FILE: &str = "farend-whole-yard.csv";
pub const MACHINE_KIND: &str = "Kind of machine";
pub const IMPLEMENT_KIND: &str = "Kind of implement";
pub const RATIO: &str = "Delivered over needed";
pub const DELIVERED: &str = "Delivered";
pub const NEEDED: &str = "Needed";
pub const POWERS: &str = "a power of the engine";
pub const TOO_LARGE: &str = "That is more than fits on paper. Narrow it by the filters, or save it \
    as a table.";

/// A reading, with what is chosen.
pub fn reading(reading: Reading) -> &'static str {
    match reading {
        Reading::Whole => "Every machine with every implement",
        Reading::Machines => "What drives this implement?",
        Reading::Implements => "What can this machine drive?",
    }
}

/// What is sorted by.
pub fn order(order: Order) -> &'static str {
    match order {
        Order::Best => "the best first",
        Order::Name => "name",
        Order::Size => "size, largest first",
    }
}

/// A kind of machine.
pub fn machine_kind(kind: MachineKind) -> &'static str {
    match kind {
        MachineKind::Tractor => "Tractor",
        MachineKind::SkidSteer => "Skid steer",
    }
}

/// A kind of implement.
pub fn implement_kind(kind: ImplementKind) -> &'static str {
    match kind {
        ImplementKind::Thrower => "Thrower",
        ImplementKind::Mulcher => "Mulcher",
        ImplementKind::Broom => "Broom",
        ImplementKind::Chipper => "Chipper",
        ImplementKind::Mower => "Mower",
        ImplementKind::Tiller => "Tiller",
        ImplementKind::Auger => "Auger",
        ImplementKind::Other => "Other",
    }
}

/// A route where there is little room.
pub fn route(route: RouteId) -> &'static str {
    match route {
        RouteId::RearShaft => "Rear shaft",
        RouteId::MidShaft => "Mid shaft",
        RouteId::TurnedForward => "Turned forward",
        RouteId::MachineHydraulics => "Own hydraulics",
        RouteId::PumpPack => "Pump pack",
        RouteId::SkidSteer => "Skid steer",
    }
}

/// A cell's standing with its ratio: "Enough 1.08".
pub fn standing(cell: &Cell) -> String {
    let word = labels::standing(cell.standing);
    format!("{word} {}", number::fixed(cell.ratio, 2))
}

/// Whether something must be asked.
pub fn asks(asks: bool) -> &'static str {
    if asks { "yes" } else { "no" }
}

/// How far it has come.
pub fn progress(done: usize, of: usize) -> String {
    format!("{done} of {of} machines reckoned")
}

/// What is shown of the whole yard.
pub fn shown((machines, implements): (usize, usize), all: (usize, usize)) -> String {
    format!(
        "{machines} of {} machines, {implements} of {} implements",
        all.0, all.1
    )
}
