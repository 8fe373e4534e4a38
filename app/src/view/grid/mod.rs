//! The whole yard.

use crate::text::labels;
use leptos::prelude::*;

/// Every machine with every implement.
#[component]
pub fn GridView() -> impl IntoView {
    view! { <h2>{labels::VIEW_GRID}</h2> }
}
