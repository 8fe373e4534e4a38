//! The power of one pair followed from the engine to the rotor, by a shaft and by oil.

use super::ideas::Ideas;
use super::walk_step::WalkStep;
use crate::browser;
use crate::model::practice::PracticeModel;
use crate::text::practice::{self as text, walk as words};
use crate::view::choices::Choices;
use leptos::prelude::*;

/// Identifier of what is open.
pub const OPEN: &str = "walk-open";

/// The chosen pair, and the step that is open.
#[component]
pub fn WalkView() -> impl IntoView {
    let walk = PracticeModel::of_page().walk;
    walk.follow_route();
    let step = Memo::new(move |_| walk.step());
    let open = move || {
        if walk.steps.read().is_empty() {
            return view! { <p class="empty">{words::no_route()}</p> }.into_any();
        }
        match step.get() {
            Some(step) => view! { <WalkStep step=step /> }.into_any(),
            None => view! { <Ideas /> }.into_any(),
        }
    };
    view! {
        <h2>{text::part_walk()}</h2>
        <p>{words::lead()}</p>
        <Choices />
        {open}
        <Steer />
    }
}

/// Back, forward, from the start.
#[component]
fn Steer() -> impl IntoView {
    let walk = PracticeModel::of_page().walk;
    let to = move |at: usize| {
        walk.go_to(at);
        browser::focus(OPEN);
    };
    view! {
        <div class="tools">
            <button
                type="button"
                data-testid="walk-back"
                disabled=move || walk.at.get() == 0
                on:click=move |_| to(walk.at.get_untracked().saturating_sub(1))
            >
                {words::back()}
            </button>
            <button
                type="button"
                data-testid="walk-forward"
                disabled=move || walk.at.get() == walk.steps.read().len()
                on:click=move |_| to(walk.at.get_untracked() + 1)
            >
                {words::forward()}
            </button>
            <button
                type="button"
                data-testid="walk-restart"
                on:click=move |_| {
                    walk.restart();
                    browser::focus(OPEN);
                }
            >
                {words::restart()}
            </button>
        </div>
    }
}
