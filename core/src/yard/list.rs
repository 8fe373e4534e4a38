//! The three lists of a yard.

use super::rules;
use super::shape::Field;
use crate::words::words;

words! {
    /// One of a yard's lists. Its word is its key in the file.
    List {
        /// What supplies the power.
        Machines = "machines",
        /// What uses it.
        Implements = "implements",
        /// What joins them.
        Kits = "kits",
    }
}

impl List {
    /// The fields of each entry.
    pub fn fields(self) -> &'static [Field] {
        match self {
            Self::Machines => rules::MACHINE,
            Self::Implements => rules::IMPLEMENT,
            Self::Kits => rules::KIT,
        }
    }

    /// Fields without which most of what is asked of an entry stays a question: this project's
    /// judgement.
    pub fn asked_for(self) -> &'static [&'static str] {
        match self {
            Self::Machines => &["circuits", "mass_kg", "loader", "axles"],
            Self::Implements => &["work", "mass_kg", "mount"],
            Self::Kits => &["hookup_min"],
        }
    }
}
