//! The foot of the page: its version, whether it opens without network, and what it is built with.

use crate::browser;
use crate::offline::{Offline, PageKept};
use crate::text::offline as text;
use leptos::prelude::*;

/// What the build writes beside the page: see `xtask/src/finish/notices.rs`.
const NOTICES: &str = "third-party.txt";

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
            <p>
                <a href=NOTICES target="_blank" rel="noopener" data-testid="notices">
                    {text::licences()}
                </a>
            </p>
        </footer>
    }
}
