//! The usual cautions for the open route, and what the figures take for granted.

use crate::model::Model;
use crate::text::cautions::{Caution, assumed, lead, of_route};
use crate::text::{brackets, labels};
use leptos::prelude::*;

/// Cautions and assumptions.
#[component]
pub fn Cautions() -> impl IntoView {
    let model = Model::of_page();
    let shown = move || of_route(model.route.get()).map(caution).collect_view();
    view! {
        <section class="cautions" data-testid="cautions">
            <h2>{labels::cautions_heading()}</h2>
            <p>{lead()}</p>
            <ul>{shown}</ul>
        </section>
        <details class="assumed">
            <summary>{labels::assumed_heading()}</summary>
            <ul>{assumed().map(|text| view! { <li>{text}</li> }).collect_view()}</ul>
        </details>
    }
}

fn caution(caution: Caution) -> impl IntoView {
    view! {
        <li>
            {caution.text} " " <span class="source">{brackets(caution.source)}</span>
        </li>
    }
}
