//! The yard's entries, to look at and to change.

mod field;
mod figure;
mod form;
mod items;
mod lists;
mod plan;
mod steps;

use crate::model::Model;
use crate::model::yard::OpenEntry;
use crate::text::{labels, tables_in, yard as text};
use crate::view::fold::Fold;
use crate::view::yard_tables::YardTables;
use farend_core::yard::edit::Whose;
use farend_core::yard::list::List;
use form::EntryForm;
use leptos::prelude::*;
use lists::Lists;
use steps::Steps;
pub use steps::save_yard;

/// Machines, implements and kits, to look at and to change.
#[component]
pub fn YardView() -> impl IntoView {
    let model = Model::of_page();
    open_chosen(model);
    let entry = move || {
        let OpenEntry { list, place } = model.open_entry.get();
        match place {
            Some(place) => view! { <EntryForm whose=Whose::Entry(list, place) /> }.into_any(),
            None => view! { <p class="fine">{text::choose()}</p> }.into_any(),
        }
    };
    view! {
        <h2>{labels::view_yard()}</h2>
        <Steps />
        <Fold name="own" title=text::own()>
            <div class="part-body">
                <EntryForm whose=Whose::Yard />
            </div>
        </Fold>
        <Fold name="tables" title=tables_in::title()>
            <YardTables />
        </Fold>
        <div class="editor">
            <Lists />
            <section class="entry-form" aria-label=labels::view_yard() data-testid="entry">
                {entry}
            </section>
        </div>
    }
}

/// Opens what is chosen for the comparison, where nothing is open.
fn open_chosen(model: Model) {
    if model.open_entry.get_untracked().place.is_some() {
        return;
    }
    let machine = model.state.with_untracked(|state| state.machine.clone());
    let list = List::Machines;
    let place = model.editing.read_untracked().place(list, &machine);
    model.open_entry.set(OpenEntry { list, place });
}
