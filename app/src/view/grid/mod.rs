//! The whole yard.

mod filters;
mod list;
mod paper;
mod save;
mod scroll;
mod span;
mod whole;

use super::answer;
use crate::browser;
use crate::model::Model;
use crate::model::grid::GridModel;
use crate::text::grid;
use farend_core::grid::Reading;
use filters::{Filters, Readings};
use leptos::prelude::*;
use list::List;
use paper::Paper;
use save::Take;
use whole::Whole;

/// Every machine with every implement, or the list for one of them.
#[component]
pub fn GridView() -> impl IntoView {
    let (model, grid) = (Model::of_page(), GridModel::of_page());
    let reading = Memo::new(move |_| grid.selection.get().reading);
    let empty = Memo::new(move |_| {
        let yard = model.yard.read();
        yard.machines.is_empty() || yard.implements.is_empty()
    });
    let nothing = Memo::new(move |_| {
        let arranged = grid.arranged.read();
        arranged.machines.is_empty() || arranged.implements.is_empty()
    });
    let shown = move || {
        let arranged = grid.arranged.read();
        let yard = model.yard.read();
        grid::shown(
            (arranged.machines.len(), arranged.implements.len()),
            (yard.machines.len(), yard.implements.len()),
        )
    };
    view! {
        <section class="grid-view">
            <Readings />
            <Show
                when=move || !empty.get()
                fallback=|| view! { <p class="empty">{grid::empty()}</p> }
            >
                <Filters />
                <div class="grid-state">
                    <p data-testid="grid-shown">{shown}</p>
                    <Progress />
                    <Take />
                </div>
                <Show
                    when=move || !nothing.get()
                    fallback=|| view! { <p class="empty">{grid::nothing()}</p> }
                >
                    {move || match reading.get() {
                        Reading::Whole => view! { <Whole /> }.into_any(),
                        list => view! { <List reading=list /> }.into_any(),
                    }}
                </Show>
                <p class="note">{grid::note()}</p>
                <Paper />
            </Show>
        </section>
    }
}

/// Opens a pair; what is said of it takes the focus, for the cell is gone.
fn open(grid: GridModel, row: usize, column: usize) {
    grid.open(row, column);
    browser::focus(answer::HEAD);
}

/// How far the work has come, while it isn't done.
#[component]
fn Progress() -> impl IntoView {
    let work = GridModel::of_page().work;
    let progress = Memo::new(move |_| work.progress());
    let done = move || {
        let (done, of) = progress.get();
        done == of
    };
    let toggle = move |_| work.stop(!work.stopped.get_untracked());
    view! {
        <div class="progress" data-testid="grid-progress" data-done=move || done().to_string()>
            <Show when=move || !done()>
                <progress
                    aria-label=grid::how_read()
                    value=move || progress.get().0
                    max=move || progress.get().1
                ></progress>
                <span>{move || grid::progress(progress.get().0, progress.get().1)}</span>
                <button type="button" data-testid="grid-stop" on:click=toggle>
                    {move || if work.stopped.get() { grid::go_on() } else { grid::stop() }}
                </button>
            </Show>
        </div>
    }
}
