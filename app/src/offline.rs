//! Whether the browser keeps the page for times without network, and whether a newer version of it is
//! ready. `app/offline.js` asks the browser, for the page must not wait for that.

use crate::browser;
use leptos::prelude::*;

/// What comes from `app/offline.js`, with a word of what.
const HEARD: &str = "farend-offline";
/// What goes there.
const RELOAD: &str = "farend-reload";

/// Whether the browser keeps the page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PageKept {
    /// It opens without network.
    Kept,
    /// The browser refuses, or can't.
    Refused,
}

/// What is known of it.
#[derive(Clone, Copy)]
pub struct Offline {
    /// Nothing before the browser has decided, and in a frame.
    pub kept: ReadSignal<Option<PageKept>>,
    /// Whether a newer version is offered to the user.
    pub offered: RwSignal<bool>,
}

impl Offline {
    /// Listens from now on.
    pub fn follow() -> Self {
        let (kept, set_kept) = signal(None);
        let offered = RwSignal::new(false);
        let handle = window_event_listener_untyped(HEARD, move |event| {
            match browser::detail(&event).as_deref() {
                Some("kept") => set_kept.set(Some(PageKept::Kept)),
                Some("refused") => set_kept.set(Some(PageKept::Refused)),
                Some("newer") => offered.set(true),
                _ => {}
            }
        });
        on_cleanup(move || handle.remove());
        Self { kept, offered }
    }

    /// Goes over to the newer version.
    pub fn reload(self) {
        browser::announce(RELOAD);
    }
}
