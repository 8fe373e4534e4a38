//! What a table would change, before it's taken over.

use super::radio::radio;
use crate::browser;
use crate::model::Model;
use crate::model::table::{Preview, TableFile};
use crate::text::{faults, tables_in};
use farend_core::yard::list::List;
use farend_core::yard::table::{Change, DecimalMark, Doubt, How, RowFault, TakenIn};
use leptos::prelude::*;

/// Where the focus goes once it's shown.
const HEADING: &str = "table-in-heading";
/// The text that says why it can't be taken over.
const WHY_NOT: &str = "table-in-why-not";
/// The most rows that are shown.
const MOST_ROWS: usize = 8;
/// The most faults that are shown.
const MOST_FAULTS: usize = 200;

/// The table that was picked, as long as it's neither taken over nor left.
#[component]
pub fn TableIn() -> impl IntoView {
    let model = Model::of_page();
    // Another file is another section, another answer isn't.
    let file = Memo::new(move |_| {
        let table = model.table.read();
        table.as_ref().map(|it| (it.name.clone(), it.text.clone()))
    });
    move || file.get().map(|(name, _)| view! { <Section name=name /> })
}

#[component]
fn Section(
    /// The file's name.
    name: String,
) -> impl IntoView {
    let model = Model::of_page();
    let table = move || model.table.read();
    let of_table = move |take: fn(&TableFile) -> Option<List>| table().as_ref().and_then(take);
    let list = Memo::new(move |_| of_table(TableFile::list));
    let doubt = Memo::new(move |_| table().as_ref().and_then(TableFile::doubt));
    let preview = Memo::new(move |_| {
        let yard = model.editing.read();
        table().as_ref().map(|table| table.preview(&yard))
    });
    let with = move |change: &dyn Fn(&mut TableFile)| {
        model.table.update(|table| {
            if let Some(table) = table {
                change(table);
            }
        });
    };
    let list_choice = move |of: List| {
        let id = match of {
            List::Machines => "table-machines",
            List::Implements => "table-implements",
            List::Kits => "table-kits",
        };
        let choose = move || with(&move |table| table.list = Some(of));
        radio(
            "table-list",
            id,
            tables_in::of(of),
            move || list.get() == Some(of),
            choose,
        )
    };
    let how_choice = move |how: How, id: &'static str, text: &'static str| {
        let chosen = move || table().as_ref().is_some_and(|table| table.how == how);
        let choose = move || with(&move |table| table.how = how);
        radio("table-how", id, text, chosen, choose)
    };
    let mark_choice = move |doubt: &Doubt, mark: DecimalMark, id: &'static str| {
        let chosen = move || {
            table()
                .as_ref()
                .is_some_and(|table| table.mark == Some(mark))
        };
        let choose = move || with(&move |table| table.mark = Some(mark));
        radio(
            "table-mark",
            id,
            tables_in::mark(doubt, mark),
            chosen,
            choose,
        )
    };
    let question = move |doubt: &Doubt| {
        view! {
            <fieldset class="switch" data-testid="table-doubt">
                <legend>{tables_in::which_mark(doubt)}</legend>
                {mark_choice(doubt, DecimalMark::Point, "mark-point")}
                {mark_choice(doubt, DecimalMark::Comma, "mark-comma")}
            </fieldset>
        }
    };
    let why_not = move || preview.read().as_ref().and_then(tables_in::why_not);
    let take_over = move |_| {
        model.take_over_table();
        browser::focus(super::notice::CLOSE);
    };
    let leave = move |_| {
        model.table.set(None);
        browser::focus(super::header::MENU);
    };
    // On a wide screen the menu lies over it.
    browser::fold(super::header::MENU);
    browser::focus(HEADING);
    view! {
        <section class="table-in" aria-labelledby=HEADING data-testid="table-in">
            <h2 id=HEADING tabindex="-1">
                {tables_in::heading(&name)}
            </h2>
            <fieldset class="switch">
                <legend>{tables_in::which_list()}</legend>
                {List::ALL.iter().map(|list| list_choice(*list)).collect_view()}
            </fieldset>
            {move || doubt.read().as_ref().map(question)}
            <p role="status" data-testid="table-summary">
                {move || preview.read().as_ref().map(tables_in::summary)}
            </p>
            {move || match &*preview.read() {
                Some(Preview::Ready(taken)) => rows(taken).into_any(),
                Some(Preview::Faults(faults)) => fault_list(faults).into_any(),
                _ => ().into_any(),
            }}
            <fieldset class="switch">
                <legend>{tables_in::which_how()}</legend>
                {how_choice(How::Merge, "table-merge", tables_in::merge())}
                {how_choice(How::Replace, "table-replace", tables_in::replace())}
            </fieldset>
            <div class="tools">
                <button
                    type="button"
                    data-testid="table-take"
                    disabled=move || why_not().is_some()
                    aria-describedby=WHY_NOT
                    on:click=take_over
                >
                    {tables_in::take_over()}
                </button>
                <button type="button" data-testid="table-leave" on:click=leave>
                    {tables_in::leave()}
                </button>
            </div>
            <p id=WHY_NOT class="note" data-testid="table-why-not">
                {why_not}
            </p>
        </section>
    }
}

/// The first rows, those that change something before the others.
fn rows(taken: &TakenIn) -> impl IntoView + use<> {
    let (same, other): (Vec<_>, Vec<_>) = taken
        .rows
        .iter()
        .partition(|row| row.change == Change::Unchanged);
    let all: Vec<_> = other.into_iter().chain(same).collect();
    let more = all.len().saturating_sub(MOST_ROWS);
    let lines: Vec<_> = all
        .into_iter()
        .take(MOST_ROWS)
        .map(|row| {
            view! {
                <tr>
                    <td>{row.row}</td>
                    <th scope="row">{row.name.clone()}</th>
                    <td>{tables_in::change(&row.change)}</td>
                </tr>
            }
        })
        .collect();
    view! {
        <div class="scroll">
            <table data-testid="table-rows">
                <thead>
                    <tr>
                        <th scope="col">{tables_in::row()}</th>
                        <th scope="col">{tables_in::entry()}</th>
                        <th scope="col">{tables_in::becomes()}</th>
                    </tr>
                </thead>
                <tbody>{lines}</tbody>
            </table>
        </div>
        {(more > 0).then(|| view! { <p>{tables_in::more_rows(more)}</p> })}
        {(!taken.removed.is_empty())
            .then(|| view! { <p data-testid="table-removed">{tables_in::removed(&taken.removed)}</p> })}
    }
}

fn fault_list(faults: &[RowFault]) -> impl IntoView + use<> {
    let line = |fault: &RowFault| view! { <li>{faults::row_fault(fault)}</li> };
    let lines = faults.iter().take(MOST_FAULTS).map(line).collect_view();
    let more = faults.len().saturating_sub(MOST_FAULTS);
    view! {
        <div class="notice" data-testid="table-faults">
            <h3>{tables_in::faults()}</h3>
            <ul>{lines}</ul>
            {(more > 0).then(|| view! { <p>{tables_in::more_faults(more)}</p> })}
        </div>
    }
}
