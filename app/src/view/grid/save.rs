//! What is shown, to be taken along: as a table, on paper.

use super::super::elsewhere::CantPrint;
use super::super::save::hand_over;
use crate::model::Model;
use crate::model::grid::GridModel;
use crate::text::grid;
use crate::{browser, tables};
use leptos::prelude::*;

/// The buttons.
#[component]
pub fn Take() -> impl IntoView {
    let (model, grid) = (Model::of_page(), GridModel::of_page());
    let refused = RwSignal::new(false);
    let save = move |_| {
        let text = untrack(|| tables::grid(model, grid)).to_csv();
        hand_over(model, grid::FILE, text, browser::CSV);
    };
    let print = move |_| refused.set(!browser::print());
    view! {
        <div class="tools">
            <button type="button" data-testid="grid-save" on:click=save>
                {grid::save()}
            </button>
            <button type="button" data-testid="grid-print" on:click=print>
                {grid::print()}
            </button>
        </div>
        <CantPrint refused=refused told=grid::cant_print() />
    }
}
