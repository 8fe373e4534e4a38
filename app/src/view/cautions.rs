//! The usual cautions for the open route, and what the figures take for granted.

use crate::model::Model;
use crate::text::cautions::{ALL, ASSUMED, Caution, LEAD, OIL, SHAFTS};
use crate::text::labels;
use leptos::prelude::*;

/// Cautions and assumptions.
#[component]
pub fn Cautions() -> impl IntoView {
    let model = Model::of_page();
    let shown = move || {
        let route = model.route.get();
        let shafts = if route.has_pto() { SHAFTS } else { &[] };
        let oil = if route.needs_oil() { OIL } else { &[] };
        shafts
            .iter()
            .chain(oil)
            .chain(ALL)
            .map(caution)
            .collect_view()
    };
    view! {
        <section class="cautions" data-testid="cautions">
            <h2>{labels::CAUTIONS_HEADING}</h2>
            <p>{LEAD}</p>
            <ul>{shown}</ul>
        </section>
        <details class="assumed">
            <summary>{labels::ASSUMED_HEADING}</summary>
            <ul>{ASSUMED.iter().map(|text| view! { <li>{*text}</li> }).collect_view()}</ul>
        </details>
    }
}

fn caution(caution: &'static Caution) -> impl IntoView {
    view! {
        <li>
            {caution.text} " " <span class="source">"(" {caution.source} ")"</span>
        </li>
    }
}
