//! The yard's three lists, to find an entry in or to add one.

use crate::browser;
use crate::model::Model;
use crate::model::yard::{OpenEntry, name};
use crate::number;
use crate::text::{amount, yard as text};
use crate::view::radio::radio;
use farend_core::yard::edit::{Editing, Whose};
use farend_core::yard::list::List;
use leptos::prelude::*;

/// The most entries that are shown: more are found by their names.
const MOST_SHOWN: usize = 60;

/// An entry as a list shows it.
#[derive(Clone, PartialEq)]
struct Row {
    place: usize,
    name: String,
    faults: usize,
    /// What isn't known of it that much depends on.
    unknown: Vec<&'static str>,
}

fn rows(yard: &Editing, list: List, search: &str) -> Vec<Row> {
    let search = search.trim().to_lowercase();
    let counts = yard.fault_counts(list).into_iter().enumerate();
    let rows = counts.map(|(place, faults)| {
        let whose = Whose::Entry(list, place);
        let asked = list.asked_for().iter().copied();
        Row {
            place,
            name: name(yard, list, place),
            faults,
            unknown: asked.filter(|key| yard.get(whose, key).is_none()).collect(),
        }
    });
    rows.filter(|row| row.name.to_lowercase().contains(&search))
        .collect()
}

/// The lists.
#[component]
pub fn Lists() -> impl IntoView {
    let model = Model::of_page();
    let search = RwSignal::new(String::new());
    let list = Memo::new(move |_| model.open_entry.get().list);
    let rows = Memo::new(move |_| rows(&model.editing.read(), list.get(), &search.read()));
    let tab = move |which: List| {
        let label = move || {
            let count = model.editing.read().len(which);
            amount(text::list_name(which), &number::count(count))
        };
        let choose = move || {
            search.set(String::new());
            let place = (model.editing.read_untracked().len(which) > 0).then_some(0);
            model.open_entry.set(OpenEntry { list: which, place });
        };
        radio(
            "list",
            which.word(),
            label,
            move || list.get() == which,
            choose,
        )
    };
    let add = move |_| {
        let list = list.get_untracked();
        search.set(String::new());
        model.add_entry(list, text::new_name(list));
        browser::focus("field-name");
    };
    let hidden = move || rows.read().len().saturating_sub(MOST_SHOWN);
    view! {
        <section class="lists" aria-label=text::lists()>
            <fieldset class="switch" data-testid="lists">
                <legend class="hidden">{text::lists()}</legend>
                {List::ALL.iter().copied().map(tab).collect_view()}
            </fieldset>
            <label class="search">
                <span>{text::search()}</span>
                <input
                    type="text"
                    autocomplete="off"
                    data-testid="search"
                    prop:value=search
                    on:input=move |event| search.set(event_target_value(&event))
                />
            </label>
            <button
                type="button"
                data-testid="add-entry"
                disabled=move || model.editing.read().is_full(list.get())
                on:click=add
            >
                {move || text::add(list.get())}
            </button>
            <ul class="entries" data-testid="entries">
                <For
                    each=move || rows.get().into_iter().take(MOST_SHOWN)
                    key=|row| (row.place, row.name.clone(), row.faults, row.unknown.clone())
                    let:row
                >
                    {entry(model, row)}
                </For>
            </ul>
            <p class="fine">
                {move || rows.read().is_empty().then_some(text::none_found())}
                {move || (hidden() > 0).then(|| text::more(hidden()))}
            </p>
        </section>
    }
}

fn entry(model: Model, row: Row) -> impl IntoView {
    let place = Some(row.place);
    let current = move || (model.open_entry.get().place == place).then_some("true");
    let open = move |_| {
        let list = model.open_entry.get_untracked().list;
        model.open_entry.set(OpenEntry { list, place });
        browser::focus("entry-name");
    };
    view! {
        <li>
            <button type="button" class="entry-choice" aria-current=current on:click=open>
                <span>{row.name}</span>
                {(row.faults > 0)
                    .then(|| view! { <span class="mark">{text::to_mend(row.faults)}</span> })}
                {(!row.unknown.is_empty())
                    .then(|| view! { <span class="note">{text::not_known(&row.unknown)}</span> })}
            </button>
        </li>
    }
}
