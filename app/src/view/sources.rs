//! Where every figure comes from, which equations are used, and what isn't modelled.

use crate::text::{cautions, labels, sources};
use farend_core::source::Source;
use leptos::prelude::*;

/// Equations, sources and omissions.
#[component]
pub fn Sources() -> impl IntoView {
    let figures = Source::ALL
        .iter()
        .filter(|source| **source != Source::Computed)
        .map(|source| view! { <li>{sources::citation(*source)}</li> })
        .collect_view();
    view! {
        <div class="sources">
            <h3>{labels::models()}</h3>
            <ul>{list(cautions::models())}</ul>
            <h3>{labels::figures()}</h3>
            <ul>{figures}</ul>
            <h3>{labels::not_modelled()}</h3>
            <ul>{list(cautions::not_modelled())}</ul>
        </div>
    }
}

fn list(items: impl IntoIterator<Item = &'static str>) -> impl IntoView {
    let lines = items.into_iter().map(|text| view! { <li>{text}</li> });
    lines.collect_view()
}
