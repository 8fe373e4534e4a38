//! The yard's entries.

use crate::text::labels;
use leptos::prelude::*;

/// Machines, implements and kits, to look at and to change.
#[component]
pub fn YardView() -> impl IntoView {
    view! { <h2>{labels::VIEW_YARD}</h2> }
}
