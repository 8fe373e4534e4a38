//! What is said about the whole yard.

pub use super::say::grid::*;

use super::say::{grid as say, words};
use super::{amount, labels};
use crate::number;
use farend_core::grid::{Cell, Order, Reading};
use farend_core::implement::ImplementKind;
use farend_core::machine::MachineKind;
use farend_core::route::RouteId;

/// What stands in a cell that isn't reckoned yet.
pub const NOT_YET: &str = "…";
/// What the table's file is called.
pub const FILE: &str = "farend-whole-yard.csv";

/// A reading, with what is chosen.
pub fn reading(reading: Reading) -> &'static str {
    match reading {
        Reading::Whole => reading_whole(),
        Reading::Machines => reading_machines(),
        Reading::Implements => reading_implements(),
    }
}

/// What is sorted by.
pub fn order(order: Order) -> &'static str {
    match order {
        Order::Best => by_best(),
        Order::Name => by_name(),
        Order::Size => by_size(),
    }
}

/// A kind of machine.
pub fn machine_kind(kind: MachineKind) -> &'static str {
    match kind {
        MachineKind::Tractor => words::tractor(),
        MachineKind::SkidSteer => skid_steer(),
    }
}

/// A kind of implement.
pub fn implement_kind(kind: ImplementKind) -> &'static str {
    match kind {
        ImplementKind::Thrower => words::thrower(),
        ImplementKind::Mulcher => words::mulcher(),
        ImplementKind::Broom => words::broom(),
        ImplementKind::Chipper => words::chipper(),
        ImplementKind::Mower => words::mower(),
        ImplementKind::Tiller => words::tiller(),
        ImplementKind::Auger => words::auger(),
        ImplementKind::Other => other(),
    }
}

/// A route where there is little room.
pub fn route(route: RouteId) -> &'static str {
    match route {
        RouteId::RearShaft => rear_shaft(),
        RouteId::MidShaft => mid_shaft(),
        RouteId::TurnedForward => turned_forward(),
        RouteId::MachineHydraulics => own_hydraulics(),
        RouteId::PumpPack => pump_pack(),
        RouteId::SkidSteer => skid_steer(),
    }
}

/// A cell's standing with its ratio: "Enough 1.08".
pub fn standing(cell: &Cell) -> String {
    amount(
        labels::standing(cell.standing),
        &number::fixed(cell.ratio, 2),
    )
}

/// Whether something must be asked.
pub fn asks(asks: bool) -> &'static str {
    if asks { asks_yes() } else { asks_no() }
}

/// How far it has come.
pub fn progress(done: usize, of: usize) -> String {
    say::Progress {
        done: &number::count(done),
        all: &number::count(of),
    }
    .said()
}

/// What is shown of the whole yard.
pub fn shown((machines, implements): (usize, usize), all: (usize, usize)) -> String {
    say::PartShown {
        machines: &number::count(machines),
        all_machines: &number::count(all.0),
        implements: &number::count(implements),
        all_implements: &number::count(all.1),
    }
    .said()
}
