//! The foot of the page: its version, and whether it opens without network.

use crate::browser;
use crate::offline::{Offline, PageKept};
use crate::text::offline as text;
use leptos::prelude::*;

/// The foot.
#[component]
pub fn Foot() -> impl IntoView {
    let offline = expect_context::<Offline>();
    let kept = move || {
        offline
            .kept
            .get()
            .map(|kept| (kept == PageKept::Kept).to_string())
    };
    view! {
        <footer class="foot" data-testid="foot">
            <p data-testid="version">{text::version(browser::build().as_deref())}</p>
            <p role="status" data-testid="page-kept" data-kept=kept>
                {move || offline.kept.get().map(text::kept)}
            </p>
        </footer>
    }
}
