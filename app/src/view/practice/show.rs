//! A case large enough for a projector, with what the group says, and the answer when it's time.

use super::case::fact_list;
use super::group::OPENER;
use super::tally::TallyView;
use crate::browser;
use crate::model::Model;
use crate::model::practice::PracticeModel;
use crate::text::practice::{self as text, case as words, given, group, outcome, steps};
use crate::text::stop;
use leptos::prelude::*;

/// Identifier of the question.
pub const TITLE: &str = "show-question";
/// Identifier of the answer.
const ANSWER: &str = "show-answer";

/// The case, alone on the screen.
#[component]
pub fn ShowLarge() -> impl IntoView {
    let model = Model::of_page();
    let of = PracticeModel::of_page().group;
    let desk = of.desk;
    let close = move || {
        desk.close();
        of.showing.set(false);
        // Where the trainer came from.
        browser::focus(OPENER);
    };
    let question = move || {
        let case = desk.case.read();
        match case.as_ref() {
            None => text::no_case().to_owned(),
            Some(case) => words::question_to_group(case),
        }
    };
    let pair = move || desk.scene.read().as_ref().map(words::pair);
    let facts = move || {
        let (case, scene) = (desk.case.read(), desk.scene.read());
        let facts = given::facts(scene.as_ref()?, case.as_ref()?, model.units.get());
        Some(fact_list(facts))
    };
    let number = move || Some(text::number_of(desk.case.read().as_ref()?.draw.seed));
    view! {
        <section
            class="show"
            data-large="true"
            data-testid="show"
            on:keydown=move |event| {
                if event.key() == "Escape" {
                    close();
                }
            }
        >
            <Steer close=close>
                <p class="pair">{pair}</p>
            </Steer>
            <h1 id=TITLE tabindex="-1" data-testid="show-question">
                {question}
            </h1>
            <dl class="facts">{facts}</dl>
            <TallyView />
            <Answer />
            <p class="fine">{number}</p>
        </section>
    }
}

/// From case to case, and the way out, beside what the case is about.
#[component]
fn Steer(close: impl Fn() + Copy + 'static, children: Children) -> impl IntoView {
    let group = PracticeModel::of_page().group;
    let to = move |place: usize| {
        group.go_to(place);
        browser::focus(TITLE);
    };
    let last = move || group.count().saturating_sub(1);
    view! {
        <div class="tools steer">
            {children()}
            <span data-testid="show-place">
                {move || group::place(group.place.get(), group.count())}
            </span>
            <button
                type="button"
                data-testid="show-before"
                disabled=move || group.place.get() == 0
                on:click=move |_| to(group.place.get_untracked().saturating_sub(1))
            >
                {group::before()}
            </button>
            <button
                type="button"
                data-testid="show-next"
                disabled=move || group.place.get() == last()
                on:click=move |_| to(group.place.get_untracked() + 1)
            >
                {group::next()}
            </button>
            <button type="button" data-testid="show-close" on:click=move |_| close()>
                {group::close()}
            </button>
        </div>
    }
}

/// The answer, once it's revealed.
#[component]
fn Answer() -> impl IntoView {
    let model = Model::of_page();
    let desk = PracticeModel::of_page().group.desk;
    let answer = move || {
        let worked = desk.answer.read();
        let worked = worked.as_ref()?;
        let units = model.units.get();
        let steps = steps::steps(worked, units);
        Some(view! {
            <h2 id=ANSWER tabindex="-1" data-testid="show-answer">
                {outcome::truth(&worked.answer, units)}
            </h2>
            <p>{stop(text::idea(worked.case.idea))}</p>
            <ul class="worked-steps">
                {steps.into_iter().map(|line| view! { <li>{line}</li> }).collect_view()}
            </ul>
        })
    };
    let is_open = move || desk.answer.read().is_some();
    let press = move |_| {
        if untrack(is_open) {
            desk.close();
        } else {
            desk.open();
            browser::focus(ANSWER);
        }
    };
    view! {
        <div class="tools">
            <button
                type="button"
                class="commit"
                data-testid="reveal"
                disabled=move || desk.case.read().is_none()
                on:click=press
            >
                {move || if is_open() { group::take_back() } else { group::reveal() }}
            </button>
        </div>
        {answer}
    }
}
