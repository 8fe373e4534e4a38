//! What each route would take to reach a standing.

use super::radio::radio;
use crate::model::Model;
use crate::number;
use crate::text::{labels, wanted as text};
use farend_core::compare::Comparison;
use farend_core::units::{Quantity, UnitSystem};
use farend_core::wanted::{Wanted, Wish, wanted};
use leptos::prelude::*;

/// The standing to reach, and what each route would take.
#[component]
pub fn WhatItTakes() -> impl IntoView {
    let model = Model::unhurried();
    let answers = Memo::new(move |_| {
        let (machine, implement) = (model.machine.read(), model.implement.read());
        let kits = &model.yard.read().kits;
        let wish = model.state.read().wished;
        let settings = model.settings.get();
        wanted(
            machine.as_ref()?,
            implement.as_ref()?,
            kits,
            &settings,
            wish,
        )
        .ok()
    });
    let cards = move || {
        let answers = answers.read();
        let all = model.comparison.read();
        let (wish, units) = (model.state.read().wished, model.units.get());
        let answers = answers.as_ref()?.iter();
        let cards = answers.map(|answer| card(model, answer, all.as_ref(), wish, units));
        Some(cards.collect_view())
    };
    let choice = move |wish: Wish| {
        let name = labels::standing(wish.standing());
        let chosen = move || model.state.read().wished == wish;
        let choose = move || model.state.update(|state| state.wished = wish);
        radio("wished", name, name, chosen, choose)
    };
    view! {
        <fieldset class="switch" data-testid="wished">
            <legend>{text::wished()}</legend>
            {Wish::ALL.into_iter().map(choice).collect_view()}
        </fieldset>
        <div class="cards">{cards}</div>
        <p class="fine">{text::note()}</p>
    }
}

fn card(
    model: Model,
    answer: &Wanted,
    all: Option<&Comparison>,
    wish: Wish,
    units: UnitSystem,
) -> impl IntoView + use<> {
    let run = all.and_then(|all| all.route(answer.route)?.run());
    let already = run.is_some_and(|run| run.verdict.likely >= wish.standing());
    let body = if already {
        view! { <p>{text::already()}</p> }.into_any()
    } else {
        to_change(model, answer, units).into_any()
    };
    view! {
        <section class="card" data-testid=format!("wanted-{}", answer.route.word())>
            <h3>{labels::route(answer.route)}</h3>
            {body}
        </section>
    }
}

fn to_change(model: Model, answer: &Wanted, units: UnitSystem) -> impl IntoView + use<> {
    let speed = answer
        .engine_speed
        .map(|speed| text::engine_speed(&number::shown(Quantity::Speed(speed), units)));
    let turned = match speed {
        Some(_) => None,
        None => answer.turned.as_ref().map(|it| text::turned(it, units)),
    };
    let applied = answer.applied(model.settings.get());
    let lines = match &answer.outfit {
        Ok(outfit) => text::outfit(answer.route, outfit, units),
        Err(hindrances) => hindrances
            .iter()
            .map(|it| text::hindrance(it, units))
            .collect(),
    };
    view! {
        {speed.map(|it| view! { <p>{it}</p> })}
        {turned.map(|it| view! { <p>{it}</p> })}
        {applied
            .map(|settings| {
                view! {
                    <button
                        type="button"
                        data-testid=format!("try-{}", answer.route.word())
                        on:click=move |_| {
                            model.take_over(settings);
                        }
                    >
                        {text::apply()}
                    </button>
                }
            })}
        <ul class="list">
            {lines.into_iter().map(|it| view! { <li>{it}</li> }).collect_view()}
        </ul>
    }
}
