//! What is shown, to be taken along: as a table, on paper.

use super::super::elsewhere::CantPrint;
use super::super::save::hand_over;
use crate::model::Model;
use crate::model::grid::GridModel;
use crate::text::grid as words;
use crate::{browser, tables};
use leptos::prelude::*;

/// The buttons.
#[component]
pub fn Take() -> impl IntoView {
    let (model, grid) = (Model::of_page(), GridModel::of_page());
    let refused = RwSignal::new(false);
    let save = move |_| {
        let text = untrack(|| tables::grid(model, grid)).to_csv();
        hand_over(model, words::FILE, text, browser::CSV);
    };
    // A part of the yard would look like all of it.
    let unfinished = Memo::new(move |_| {
        let (done, of) = grid.work.progress();
        done < of
    });
    let print = move |_| refused.set(!browser::print());
    view! {
        <div class="tools">
            <button
                type="button"
                data-testid="grid-save"
                disabled=move || unfinished.get()
                on:click=save
            >
                {words::save()}
            </button>
            <button
                type="button"
                data-testid="grid-print"
                disabled=move || unfinished.get()
                on:click=print
            >
                {words::print()}
            </button>
        </div>
        <CantPrint refused=refused told=words::cant_print() />
    }
}
