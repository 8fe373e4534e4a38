//! The machines for one implement, or the implements for one machine, best first.

use super::scroll::{Scroll, Way};
use crate::model::Model;
use crate::model::grid::GridModel;
use crate::number;
use crate::text::{grid, labels, named};
use crate::view::standing::looks;
use farend_core::fit::Judgement;
use farend_core::grid::{Cell, Reading};
use farend_core::route::RouteId;
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;

/// Height of an entry in rem, in one line and in three.
const ENTRY: f64 = 4.4;
const ENTRY_IN_THREE: f64 = 9.0;
/// Narrower than so many rem a line has no room for a route and its kit.
const NARROW: f64 = 50.0;

/// The list.
#[component]
pub fn List(reading: Reading) -> impl IntoView {
    let (model, grid) = (Model::of_page(), GridModel::of_page());
    let scroll = Scroll::new();
    let at = RwSignal::new(0_usize);
    let count = Memo::new(move |_| match reading {
        Reading::Implements => grid.arranged.read().implements.len(),
        _ => grid.arranged.read().machines.len(),
    });
    let narrow = Memo::new(move |_| scroll.width() < NARROW);
    let size = Memo::new(move |_| match narrow.get() {
        true => ENTRY_IN_THREE,
        false => ENTRY,
    });
    let active = Memo::new(move |_| at.get().min(count.get().saturating_sub(1)));
    let in_sight = Memo::new(move |_| scroll.in_sight(Way::Down, count.get(), size.get(), 0.0));
    let pair = move |place: usize| match reading {
        Reading::Implements => (0, place),
        _ => (place, 0),
    };
    let open = move |place: usize| {
        let (row, column) = pair(place);
        super::open(grid, row, column);
    };
    let key = move |event: KeyboardEvent| {
        let (now, count) = (active.get_untracked(), count.get_untracked());
        if count == 0 {
            return;
        }
        let page = scroll.page(size.get_untracked(), 0.0);
        let to = match event.key().as_str() {
            "ArrowDown" => now + 1,
            "ArrowUp" => now.saturating_sub(1),
            "PageDown" => now + page,
            "PageUp" => now.saturating_sub(page),
            "Home" => 0,
            "End" => count - 1,
            "Enter" | " " => {
                event.prevent_default();
                return open(now);
            }
            _ => return,
        };
        event.prevent_default();
        let to = to.min(count - 1);
        at.set(to);
        scroll.to(Way::Down, to, size.get_untracked(), 0.0);
    };
    view! {
        <div
            class="yard-list"
            class:narrow=move || narrow.get()
            role="listbox"
            tabindex="0"
            data-testid="list"
            aria-label=grid::reading(reading)
            aria-activedescendant=move || format!("entry-{}", active.get())
            node_ref=scroll.node
            on:scroll=move |_| scroll.follow()
            on:keydown=key
        >
            <div
                class="ground"
                role="presentation"
                style:height=move || format!("{}rem", size.get() * count.get() as f64)
            >
                <For
                    each=move || in_sight.get()
                    key=|place| *place
                    children=move |place| {
                        let (row, column) = pair(place);
                        let name = move || match reading {
                            Reading::Implements => grid.implement_name(column),
                            _ => grid.machine_name(row),
                        };
                        let kind = move || match reading {
                            Reading::Implements => {
                                grid.implement_kind(column).map(grid::implement_kind)
                            }
                            _ => grid.machine_kind(row).map(grid::machine_kind),
                        };
                        let shown = Memo::new(move |_| grid.shown(row, column));
                        let is_active = move || active.get() == place;
                        view! {
                            <div
                                role="option"
                                class="entry-line"
                                class:active=is_active
                                id=format!("entry-{place}")
                                aria-selected=move || is_active().to_string()
                                aria-posinset=place + 1
                                aria-setsize=move || count.get()
                                style:top=move || format!("{}rem", size.get() * place as f64)
                                style:height=move || format!("{}rem", size.get())
                                on:click=move |_| {
                                    at.set(place);
                                    open(place);
                                }
                            >
                                <span class="what">
                                    <span class="called">{name}</span>
                                    <span class="kind">{kind}</span>
                                </span>
                                {move || shown.get().map(|shown| details(model, grid, column, shown))}
                            </div>
                        }
                    }
                />
            </div>
        </div>
    }
}

/// What is said of an entry behind its name.
fn details(
    model: Model,
    grid: GridModel,
    implement: usize,
    shown: Option<(RouteId, Cell)>,
) -> impl IntoView {
    let Some((route, cell)) = shown else {
        return view! {
            <span class="standing" data-standing=looks(None)>
                {labels::no_fit()}
            </span>
        }
        .into_any();
    };
    let units = model.units.get();
    let delivered = grid
        .need(implement)
        .map(|need| number::power(cell.delivered(need), units));
    let kit = grid.kit_name(&cell);
    let asks = (cell.fit == Judgement::Question).then(|| {
        view! { <span class="asks">{grid::ask_first()}</span> }
    });
    view! {
        <span class="standing" data-standing=looks(Some(cell.standing))>
            {grid::standing(&cell)}
        </span>
        <span class="delivers">{delivered}</span>
        <span class="by">{match kit {
            Some(kit) => named(labels::route(route), &kit),
            None => labels::route(route).to_owned(),
        }}</span>
        {asks}
    }
    .into_any()
}
