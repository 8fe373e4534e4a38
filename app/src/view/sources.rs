//! Where every figure comes from, which equations are used, and what isn't modelled.

use crate::text::{cautions, labels};
use farend_core::source::Source;
use leptos::prelude::*;

/// Equations, sources and omissions.
#[component]
pub fn Sources() -> impl IntoView {
    let list = |items: &'static [&'static str]| {
        items
            .iter()
            .map(|text| view! { <li>{*text}</li> })
            .collect_view()
    };
    let figures = Source::ALL
        .iter()
        .filter(|source| **source != Source::Computed)
        .map(|source| view! { <li>{source.citation()}</li> })
        .collect_view();
    view! {
        <div class="sources">
            <h3>{labels::models()}</h3>
            <ul>{list(cautions::MODELS)}</ul>
            <h3>{labels::figures()}</h3>
            <ul>{figures}</ul>
            <h3>{labels::not_modelled()}</h3>
            <ul>{list(cautions::NOT_MODELLED)}</ul>
        </div>
    }
}
