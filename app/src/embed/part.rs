//! The parts of the page that a host can leave out.

use farend_core::state::View;

/// A part. What is none of them is always there: the yard's name, the answer and the dangers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Part {
    /// The page's name and what it is for.
    Header,
    /// The switch of units.
    Units,
    /// The choice of a language.
    Language,
    /// Opening a file and copying the link.
    Files,
    /// The menu of all that can be saved.
    Save,
    /// The view of the whole yard.
    Grid,
    /// The view of the yard's entries.
    Editor,
    /// The view of practice.
    Practice,
    /// The lists of machines and implements.
    Choices,
    /// The six routes beside each other.
    Routes,
    /// What can be turned.
    WhatIf,
    /// The open route's ledger.
    Ledger,
    /// What leads from the answer to the sale.
    Deciding,
    /// What goes deeper.
    Deeper,
    /// The page to take home.
    Sheet,
}

impl Part {
    /// Every part by its word.
    pub const WORDS: &[(&'static str, Self)] = &[
        ("header", Self::Header),
        ("units", Self::Units),
        ("language", Self::Language),
        ("files", Self::Files),
        ("save", Self::Save),
        ("grid", Self::Grid),
        ("editor", Self::Editor),
        ("practice", Self::Practice),
        ("choices", Self::Choices),
        ("routes", Self::Routes),
        ("what-if", Self::WhatIf),
        ("ledger", Self::Ledger),
        ("deciding", Self::Deciding),
        ("deeper", Self::Deeper),
        ("sheet", Self::Sheet),
    ];

    /// The part that a view is; the view of one pair is always there.
    pub fn of_view(view: View) -> Option<Self> {
        match view {
            View::Pair => None,
            View::Grid => Some(Self::Grid),
            View::Yard => Some(Self::Editor),
            View::Practice => Some(Self::Practice),
        }
    }
}
