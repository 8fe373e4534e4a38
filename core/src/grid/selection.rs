//! What of a whole yard is shown, and in which order.

use crate::implement::ImplementKind;
use crate::machine::MachineKind;
use crate::quantity::Power;
use crate::route::RouteId;
use crate::standing::Standing;
use crate::words::words;

words! {
    /// How the grid is read.
    Reading {
        /// Every machine with every implement.
        Whole = "whole",
        /// The chosen implement: which machines drive it.
        Machines = "machines",
        /// The chosen machine: which implements it drives.
        Implements = "implements",
    }
}

words! {
    /// What rows and columns are sorted by.
    Order {
        /// The best first: the standing, then delivered over needed; in the whole grid, the number
        /// of pairs that do the work.
        Best = "best",
        /// The name.
        Name = "name",
        /// Machines by their engine's net power, implements by what they need, largest first.
        Size = "size",
    }
}

/// What is shown of the grid.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Selection {
    /// How it is read.
    pub reading: Reading,
    /// Only this route, where one is chosen; else the best of them that fits.
    pub route: Option<RouteId>,
    /// Only pairs that stand at least so.
    pub least: Option<Standing>,
    /// Only machines of this kind.
    pub machines: Option<MachineKind>,
    /// Only implements of this kind.
    pub implements: Option<ImplementKind>,
    /// Only machines with at least this net power.
    pub from: Option<Power>,
    /// Only machines with at most this net power.
    pub to: Option<Power>,
    /// Only what needs no kit that must be bought.
    pub as_it_stands: bool,
    /// What is sorted by.
    pub order: Order,
    /// Whether rows and columns of a kind stand together.
    pub grouped: bool,
}

impl Default for Selection {
    fn default() -> Self {
        Self {
            reading: Reading::Whole,
            route: None,
            least: None,
            machines: None,
            implements: None,
            from: None,
            to: None,
            as_it_stands: false,
            order: Order::Best,
            grouped: false,
        }
    }
}
