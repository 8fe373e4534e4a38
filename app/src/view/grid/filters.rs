//! How the yard is read, and what of it is shown in which order.

use super::super::choices::{ImplementChoice, MachineChoice};
use super::super::entry::NumberEntry;
use super::super::radio::radio;
use crate::model::Model;
use crate::model::grid::GridModel;
use crate::text::{grid, labels};
use farend_core::grid::{Order, Reading, Selection};
use farend_core::implement::ImplementKind;
use farend_core::machine::MachineKind;
use farend_core::quantity::Power;
use farend_core::route::RouteId;
use farend_core::standing::Standing;
use farend_core::units::Quantity;
use leptos::prelude::*;

/// The three readings, with what a list is for.
#[component]
pub fn Readings() -> impl IntoView {
    let grid = GridModel::of_page();
    let reading = Memo::new(move |_| grid.selection.get().reading);
    let choice = move |it: Reading, id: &'static str| {
        let chosen = move || reading.get() == it;
        radio("reading", id, grid::reading(it), chosen, move || {
            grid.select(|selection| selection.reading = it);
        })
    };
    view! {
        <fieldset class="switch">
            <legend class="hidden">{grid::how_read()}</legend>
            {choice(Reading::Machines, "reading-machines")}
            {choice(Reading::Implements, "reading-implements")}
            {choice(Reading::Whole, "reading-whole")}
        </fieldset>
        {move || match reading.get() {
            Reading::Whole => ().into_any(),
            Reading::Machines => view! { <div class="choices"><ImplementChoice /></div> }.into_any(),
            Reading::Implements => view! { <div class="choices"><MachineChoice /></div> }.into_any(),
        }}
    }
}

/// A choice of one of some words, or of none of them.
#[component]
fn OneOf<T: Copy + PartialEq + Send + Sync + 'static>(
    id: &'static str,
    name: &'static str,
    /// What no choice is called; `None` where one must be chosen.
    none: Option<&'static str>,
    all: &'static [T],
    word: fn(T) -> &'static str,
    of: fn(&Selection) -> Option<T>,
    set: fn(&mut Selection, Option<T>),
) -> impl IntoView {
    let grid = GridModel::of_page();
    let chosen = Memo::new(move |_| of(&grid.selection.get()));
    // Places in the list; the first is none.
    let place = move || {
        let chosen = chosen.get();
        let place = all.iter().position(|it| Some(*it) == chosen);
        place.map_or(0, |place| place + 1)
    };
    let change = move |event| {
        let place: usize = event_target_value(&event).parse().unwrap_or(0);
        let chosen = place
            .checked_sub(1)
            .and_then(|place| all.get(place))
            .copied();
        grid.select(|selection| set(selection, chosen));
    };
    let option = move |at: usize, name: &'static str| {
        view! {
            <option value=at.to_string() prop:selected=move || place() == at>
                {name}
            </option>
        }
    };
    view! {
        <label class="choice">
            <span>{name}</span>
            <select data-testid=id on:change=change>
                {none.map(|none| option(0, none))}
                {(1..).zip(all).map(|(at, it)| option(at, word(*it))).collect_view()}
            </select>
        </label>
    }
}

/// All filters, and the order.
#[component]
pub fn Filters() -> impl IntoView {
    let grid = GridModel::of_page();
    let reading = Memo::new(move |_| grid.selection.get().reading);
    let filtered = Memo::new(move |_| {
        let selection = grid.selection.get();
        let reading = selection.reading;
        selection
            != Selection {
                reading,
                ..Selection::default()
            }
    });
    let reset = move |_| {
        grid.select(|selection| {
            *selection = Selection {
                reading: selection.reading,
                ..Selection::default()
            };
        });
    };
    view! {
        <details class="filters" data-testid="filters">
            <summary>
                {grid::filters()}
            </summary>
            <div class="filter-fields">
                <OneOf
                    id="filter-route"
                    name=grid::by_route()
                    none=Some(grid::best_route())
                    all=RouteId::ALL
                    word=labels::route
                    of=|it| it.route
                    set=|it, route| it.route = route
                />
                <OneOf
                    id="filter-least"
                    name=grid::least()
                    none=Some(grid::any_standing())
                    all=Standing::ALL
                    word=labels::standing
                    of=|it| it.least
                    set=|it, least| it.least = least
                />
                <OneOf
                    id="filter-kits"
                    name=grid::kits()
                    none=None
                    all=&[false, true]
                    word=|bare| if bare { grid::as_it_stands() } else { grid::with_kit() }
                    of=|it| Some(it.as_it_stands)
                    set=|it, bare| it.as_it_stands = bare == Some(true)
                />
                <Show when=move || reading.get() != Reading::Implements>
                    <OneOf
                        id="filter-machines"
                        name=grid::machines()
                        none=Some(grid::all())
                        all=MachineKind::ALL
                        word=grid::machine_kind
                        of=|it| it.machines
                        set=|it, kind| it.machines = kind
                    />
                    <Engine
                        id="filter-from"
                        name=grid::from()
                        of=|it| it.from
                        set=|it, power| it.from = power
                    />
                    <Engine
                        id="filter-to"
                        name=grid::to()
                        of=|it| it.to
                        set=|it, power| it.to = power
                    />
                </Show>
                <Show when=move || reading.get() != Reading::Machines>
                    <OneOf
                        id="filter-implements"
                        name=grid::implements()
                        none=Some(grid::all())
                        all=ImplementKind::ALL
                        word=grid::implement_kind
                        of=|it| it.implements
                        set=|it, kind| it.implements = kind
                    />
                </Show>
                <OneOf
                    id="filter-order"
                    name=grid::sorted_by()
                    none=None
                    all=Order::ALL
                    word=grid::order
                    of=|it| Some(it.order)
                    set=|it, order| it.order = order.unwrap_or(Order::Best)
                />
                <label class="check">
                    <input
                        type="checkbox"
                        data-testid="filter-grouped"
                        prop:checked=move || grid.selection.get().grouped
                        on:change=move |event| {
                            let grouped = event_target_checked(&event);
                            grid.select(|selection| selection.grouped = grouped);
                        }
                    />
                    <span>{grid::grouped()}</span>
                </label>
            </div>
        </details>
        <Show when=move || filtered.get()>
            <button type="button" data-testid="filter-reset" on:click=reset>
                {grid::back()}
            </button>
        </Show>
    }
}

/// A power of the engine, or none.
#[component]
fn Engine(
    id: &'static str,
    name: &'static str,
    of: fn(&Selection) -> Option<Power>,
    set: fn(&mut Selection, Option<Power>),
) -> impl IntoView {
    let (model, grid) = (Model::of_page(), GridModel::of_page());
    let enter = Callback::new(move |entered: Option<f64>| {
        let units = model.units.get_untracked();
        let power = entered.map(|number| Quantity::Power(Power::ZERO).entered_in(units, number));
        match power {
            None => grid.select(|selection| set(selection, None)),
            Some(Some(Quantity::Power(power))) if power >= Power::ZERO => {
                grid.select(|selection| set(selection, Some(power)));
            }
            _ => return false,
        }
        true
    });
    let shown = move |power: Power| Quantity::Power(power).shown_in(model.units.get());
    view! {
        <NumberEntry
            id=id
            label=name
            unit=Signal::derive(move || shown(Power::ZERO).1.to_owned())
            value=Signal::derive(move || Some(shown(of(&grid.selection.get())?).0))
            hint=""
            enter=enter
            allowed=grid::a_power()
        />
    }
}
