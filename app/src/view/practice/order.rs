//! Routes put in order by buttons.

use crate::browser;
use crate::text::practice as text;
use crate::text::{labels, named};
use farend_core::route::RouteId;
use leptos::prelude::*;

/// Routes in order, and those that are set apart.
#[derive(Clone, Debug, PartialEq)]
pub struct Ranking {
    /// Most power first.
    pub order: Vec<RouteId>,
    /// What can't be hooked up.
    pub cant: Vec<RouteId>,
}

impl Ranking {
    /// All in the order that they are named in.
    pub fn of(routes: &[RouteId]) -> Self {
        Self {
            order: routes.to_vec(),
            cant: Vec::new(),
        }
    }
}

/// Identifiers of a route's buttons.
fn button_id(what: &str, route: RouteId) -> String {
    format!("{what}-{}", route.word())
}

/// The routes with their buttons. What a press did is told.
#[component]
pub fn Order(ranking: RwSignal<Ranking>, told: RwSignal<String>) -> impl IntoView {
    let swap = move |route: RouteId, place: usize, to: usize| {
        ranking.update(|ranking| ranking.order.swap(place, to));
        told.set(text::moved(labels::route(route), to));
        // The same button, unless it has no further way to go.
        let last = ranking.read_untracked().order.len() - 1;
        let up = (to < place || to == last) && to > 0;
        browser::focus(button_id(if up { "up" } else { "down" }, route));
    };
    let set_apart = move |route: RouteId, apart: bool| {
        ranking.update(|ranking| {
            let (from, to) = match apart {
                true => (&mut ranking.order, &mut ranking.cant),
                false => (&mut ranking.cant, &mut ranking.order),
            };
            from.retain(|it| *it != route);
            to.push(route);
        });
        told.set(text::set_apart(labels::route(route), apart));
        browser::focus(button_id(if apart { "can" } else { "cant" }, route));
    };
    let order = move || {
        let order = ranking.read().order.clone();
        let last = order.len().saturating_sub(1);
        let rows = order.into_iter().enumerate().map(move |(place, route)| {
            view! {
                <li data-testid=button_id("order", route)>
                    <span class="name">{labels::route(route)}</span>
                    <span class="moves">
                        {button(("up", text::up()), route, place == 0, move || {
                            swap(route, place, place - 1);
                        })}
                        {button(("down", text::down()), route, place == last, move || {
                            swap(route, place, place + 1);
                        })}
                        {button(("cant", text::cant()), route, false, move || {
                            set_apart(route, true);
                        })}
                    </span>
                </li>
            }
        });
        rows.collect_view()
    };
    let cant = move || {
        let cant = ranking.read().cant.clone();
        (!cant.is_empty()).then(|| {
            let rows = cant.into_iter().map(|route| {
                view! {
                    <li data-testid=button_id("apart", route)>
                        <span class="name">{labels::route(route)}</span>
                        <span class="moves">
                            {button(("can", text::can()), route, false, move || {
                                set_apart(route, false);
                            })}
                        </span>
                    </li>
                }
            });
            view! {
                <h4>{text::apart()}</h4>
                <ul class="order">{rows.collect_view()}</ul>
            }
        })
    };
    view! {
        <div class="ranking">
            <h4>{text::order()}</h4>
            <ol class="order" data-testid="order">
                {order}
            </ol>
            {cant}
        </div>
    }
}

/// A button that does one thing with a route.
fn button(
    (id, name): (&'static str, &'static str),
    route: RouteId,
    disabled: bool,
    press: impl Fn() + 'static,
) -> impl IntoView {
    let id = button_id(id, route);
    view! {
        <button
            type="button"
            id=id.clone()
            data-testid=id
            disabled=disabled
            aria-label=named(name, labels::route(route))
            on:click=move |_| press()
        >
            {name}
        </button>
    }
}
