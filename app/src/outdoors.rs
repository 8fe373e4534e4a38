//! The page for glare and gloves. It belongs to the device, not to what is shown: the browser keeps it,
//! no link carries it.

use crate::browser;
use leptos::prelude::*;

/// Where the browser keeps it.
const KEY: &str = "farend-outdoors";
/// What the style sheet asks for.
const ATTRIBUTE: &str = "data-outdoors";

/// Whether the page is for glare and gloves.
#[derive(Clone, Copy)]
pub struct Outdoors(RwSignal<bool>);

impl Outdoors {
    /// As this browser was left.
    pub fn start() -> Self {
        let was = browser::kept(KEY).is_ok_and(|kept| kept.is_some());
        let outdoors = Self(RwSignal::new(was));
        Effect::new(move |_| browser::mark(ATTRIBUTE, outdoors.get()));
        outdoors
    }

    /// That of the page.
    pub fn of_page() -> Self {
        expect_context()
    }

    /// Whether it is.
    pub fn get(self) -> bool {
        self.0.get()
    }

    /// The other way.
    pub fn toggle(self) {
        let now = !self.0.get_untracked();
        self.0.set(now);
        // Where nothing can be kept it holds until the page is left.
        let _ = browser::keep(KEY, now.then_some("1"));
    }
}
