//! What came of an answer: the truth, the guess beside it, the reason.

use super::case::HEAD;
use super::truth::truth;
use crate::browser;
use crate::model::Model;
use crate::model::practice::PracticeModel;
use crate::model::practice::alone::Committed;
use crate::model::practice::desk::Worked;
use crate::text::practice::case::route_and_kit;
use crate::text::practice::{self as text, outcome as words};
use crate::text::stop;
use farend_core::practice::Truth;
use farend_core::route::RouteId;
use farend_core::state::View;
use leptos::prelude::*;

/// Identifier of the result.
pub const RESULT: &str = "practice-result";

/// The outcome of the case that was answered.
#[component]
pub fn OutcomeView(committed: Committed) -> impl IntoView {
    let model = Model::of_page();
    let alone = PracticeModel::of_page().alone;
    let headline = words::headline(&committed.judged, committed.confidence);
    let misconception = committed.judged.misconception.map(|wrong| {
        let (name, instead) = words::misconception(wrong);
        view! {
            <p class="wrong-idea" data-testid="misconception" data-idea=wrong.word()>
                <b>{stop(name)}</b>
                " "
                {instead}
            </p>
        }
    });
    let right = committed.judged.right;
    let body = move || {
        let worked = alone.desk.answer.read();
        let worked = worked.as_ref()?;
        let units = model.units.get();
        Some(view! {
            <dl class="facts guess-beside">
                <div>
                    <dt>{words::your_place()}</dt>
                    <dd>{words::said(&worked.case, &committed.guess, units)}</dd>
                </div>
                <div>
                    <dt>{words::truth_heading()}</dt>
                    <dd data-testid="truth">{words::truth(&worked.answer, units)}</dd>
                </div>
            </dl>
            <p>
                <b>{stop(text::idea(worked.case.idea))}</b>
            </p>
            {truth(worked, Some(&committed.guess), units)}
        })
    };
    view! {
        <section
            class="outcome"
            data-testid="outcome"
            data-right=right.to_string()
            aria-labelledby=RESULT
        >
            <h3 id=RESULT tabindex="-1">
                {headline}
            </h3>
            {misconception}
            {body}
            <GoOn />
        </section>
    }
}

/// Where to go from here.
#[component]
fn GoOn() -> impl IntoView {
    let model = Model::of_page();
    let alone = PracticeModel::of_page().alone;
    let next = move |kind| {
        move |_| {
            alone.ask_any(kind);
            browser::focus(HEAD);
        }
    };
    let kind = alone.draw.get_untracked().map(|draw| draw.kind);
    let set = move || {
        alone.place.get()?;
        Some(match alone.next_place() {
            None => view! { <p>{text::set_done()}</p> }.into_any(),
            Some(place) => view! {
                <button
                    type="button"
                    data-testid="next-in-set"
                    on:click=move |_| {
                        alone.ask_of_set(place);
                        browser::focus(HEAD);
                    }
                >
                    {text::next_in_set()}
                </button>
            }
            .into_any(),
        })
    };
    let look = move |_| {
        let worked = alone.desk.answer.get_untracked();
        if let Some(worked) = worked {
            open_pair(model, &worked);
        }
    };
    view! {
        <div class="tools">
            {set}
            <button type="button" data-testid="next-same" on:click=next(kind)>
                {text::next_same()}
            </button>
            <button type="button" data-testid="next-any" on:click=next(None)>
                {text::next_any()}
            </button>
            <button type="button" data-testid="look" on:click=look>
                {text::look()}
            </button>
        </div>
    }
}

/// The route by which a case is looked at: that which it asks about, else the best.
fn route(worked: &Worked) -> Option<RouteId> {
    let best = || match &worked.answer.truth {
        Truth::Route { order, .. } => order.first().copied(),
        _ => worked
            .answer
            .comparison
            .ranked()
            .first()
            .map(|(route, _)| *route),
    };
    let asked = route_and_kit(&worked.case.question).map(|(route, _)| route);
    asked.or_else(best)
}

/// Shows the pair of a case as it's set there.
fn open_pair(model: Model, worked: &Worked) {
    model.choose_machine(worked.case.machine.clone());
    model.choose_implement(worked.case.implement.clone());
    model.state.update(|state| {
        state.settings = worked.case.settings;
        state.view = View::Pair;
        if let Some(route) = route(worked) {
            state.route = route;
        }
    });
}
