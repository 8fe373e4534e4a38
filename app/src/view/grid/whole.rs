//! Every machine with every implement: only what is in sight is in the document.

use super::open;
use super::scroll::{Scroll, Way};
use crate::model::grid::GridModel;
use crate::text::{grid, labels, pair};
use crate::view::standing::looks;
use farend_core::fit::Judgement;
use farend_core::grid::Cell;
use farend_core::route::RouteId;
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;
use std::ops::Range;

/// Sizes in rem: a cell, the names in front, the names above.
const CELL: [f64; 2] = [8.8, 3.5];
const NAMES: f64 = 10.0;
const NAMES_ON_A_PHONE: f64 = 6.5;
const HEAD: f64 = 4.6;
/// Narrower than so many rem it's a phone.
const PHONE: f64 = 34.0;

/// The grid.
#[component]
pub fn Whole() -> impl IntoView {
    let grid = GridModel::of_page();
    let scroll = Scroll::new();
    // Row and column of the cell that the keys are at.
    let at = RwSignal::new((0_usize, 0_usize));
    let rows = Memo::new(move |_| grid.arranged.read().machines.len());
    let columns = Memo::new(move |_| grid.arranged.read().implements.len());
    let names = Memo::new(move |_| {
        if scroll.width() < PHONE {
            NAMES_ON_A_PHONE
        } else {
            NAMES
        }
    });
    let active = Memo::new(move |_| {
        let (row, column) = at.get();
        let last = |count: usize| count.saturating_sub(1);
        (row.min(last(rows.get())), column.min(last(columns.get())))
    });
    let rows_in_sight = Memo::new(move |_| scroll.in_sight(Way::Down, rows.get(), CELL[1], HEAD));
    let columns_in_sight =
        Memo::new(move |_| scroll.in_sight(Way::Across, columns.get(), CELL[0], names.get()));
    let press = Callback::new(move |(row, column)| {
        at.set((row, column));
        open(grid, row, column);
    });
    let go = move |row: usize, column: usize| {
        at.set((row, column));
        scroll.to(Way::Down, row, CELL[1], HEAD);
        scroll.to(Way::Across, column, CELL[0], names.get_untracked());
    };
    let key = move |event: KeyboardEvent| {
        let (row, column) = active.get_untracked();
        let (rows, columns) = (rows.get_untracked(), columns.get_untracked());
        if rows == 0 || columns == 0 {
            return;
        }
        let page = scroll.page(CELL[1], HEAD);
        let far = event.ctrl_key() || event.meta_key();
        let (row, column) = match event.key().as_str() {
            "ArrowDown" => (row + 1, column),
            "ArrowUp" => (row.saturating_sub(1), column),
            "ArrowRight" => (row, column + 1),
            "ArrowLeft" => (row, column.saturating_sub(1)),
            "PageDown" => (row + page, column),
            "PageUp" => (row.saturating_sub(page), column),
            "Home" => (if far { 0 } else { row }, 0),
            "End" => (if far { rows - 1 } else { row }, columns - 1),
            "Enter" | " " => {
                event.prevent_default();
                return open(grid, row, column);
            }
            _ => return,
        };
        event.prevent_default();
        go(row.min(rows - 1), column.min(columns - 1));
    };
    let width = move || format!("{}rem", names.get() + CELL[0] * columns.get() as f64);
    let height = move || format!("{}rem", HEAD + CELL[1] * rows.get() as f64);
    let column_heads = move || {
        columns_in_sight
            .get()
            .map(|column| {
                let name = move || grid.implement_name(column);
                view! {
                    <div
                        role="columnheader"
                        class="column-head"
                        aria-colindex=column + 2
                        style:left=across(column)
                        style:width=format!("{}rem", CELL[0])
                    >
                        <span>{name}</span>
                    </div>
                }
            })
            .collect_view()
    };
    view! {
        <div
            class="whole"
            role="grid"
            tabindex="0"
            data-testid="whole"
            aria-label=grid::reading(farend_core::grid::Reading::Whole)
            aria-rowcount=move || rows.get() + 1
            aria-colcount=move || columns.get() + 1
            aria-activedescendant=move || {
                let (row, column) = active.get();
                cell_id(row, column)
            }
            node_ref=scroll.node
            on:scroll=move |_| scroll.follow()
            on:keydown=key
        >
            <div
                class="ground"
                role="presentation"
                style:width=width
                style:height=height
                style=("--names", move || format!("{}rem", names.get()))
            >
                <div
                    role="row"
                    class="heads"
                    aria-rowindex="1"
                    style:height=format!("{HEAD}rem")
                >
                    <div
                        role="columnheader"
                        class="corner"
                        aria-colindex="1"
                    >
                        {labels::machine()}
                    </div>
                    {column_heads}
                </div>
                <For
                    each=move || rows_in_sight.get()
                    key=|row| *row
                    children=move |row| {
                        view! { <Line row=row columns=columns_in_sight press=press /> }
                    }
                />
                <div
                    class="at"
                    role="presentation"
                    style:top=move || format!("{}rem", HEAD + CELL[1] * active.get().0 as f64)
                    style:left=move || across(active.get().1)
                    style:width=format!("{}rem", CELL[0])
                    style:height=format!("{}rem", CELL[1])
                ></div>
            </div>
        </div>
    }
}

fn cell_id(row: usize, column: usize) -> String {
    format!("cell-{row}-{column}")
}

/// Where a column begins, behind the names.
fn across(column: usize) -> String {
    format!("calc(var(--names) + {}rem)", CELL[0] * column as f64)
}

/// A machine's line, as far as it's in sight.
#[component]
fn Line(row: usize, columns: Memo<Range<usize>>, press: Callback<(usize, usize)>) -> impl IntoView {
    let grid = GridModel::of_page();
    let kind = move || grid.first_of_machine_kind(row).map(grid::machine_kind);
    view! {
        <div
            role="row"
            class="line"
            aria-rowindex=row + 2
            style:top=format!("{}rem", HEAD + CELL[1] * row as f64)
            style:height=format!("{}rem", CELL[1])
        >
            <div role="rowheader" class="row-head" aria-colindex="1">
                <span class="kind">{kind}</span>
                <span class="what">{move || grid.machine_name(row)}</span>
            </div>
            <For
                each=move || columns.get()
                key=|column| *column
                children=move |column| {
                    view! {
                        <div
                            role="gridcell"
                            class="cell"
                            id=cell_id(row, column)
                            aria-colindex=column + 2
                            style:left=across(column)
                            style:width=format!("{}rem", CELL[0])
                            on:click=move |_| press.run((row, column))
                        >
                            {move || match grid.shown(row, column) {
                                None => grid::NOT_YET.into_any(),
                                Some(shown) => content(shown).into_any(),
                            }}
                        </div>
                    }
                }
            />
        </div>
    }
}

/// What stands in a cell.
fn content(shown: Option<(RouteId, Cell)>) -> impl IntoView {
    match shown {
        None => view! {
            <span class="standing" data-standing=looks(None)>
                {labels::no_fit()}
            </span>
        }
        .into_any(),
        Some((route, cell)) => {
            let by = grid::route(route);
            // The mark isn't for the ear.
            let by = match cell.fit {
                Judgement::Question => view! {
                    <span aria-hidden="true">{by} " ?"</span>
                    <span class="hidden">{pair(by, grid::ask_first())}</span>
                }
                .into_any(),
                _ => by.into_any(),
            };
            view! {
                <span class="standing" data-standing=looks(Some(cell.standing))>
                    {grid::standing(&cell)}
                </span>
                " "
                <span class="by">{by}</span>
            }
            .into_any()
        }
    }
}
