//! The answer: which route to take, in one sentence, with its reasons.

use super::take_home::OPENER;
use crate::embed::part::Part;
use crate::model::Model;
use crate::rest::AfterRest;
use crate::text::{advice, sentences, sheet};
use leptos::prelude::*;
use std::time::Duration;

/// Where a pair begins, for the focus.
pub const HEAD: &str = "answer";
/// How long the answer must rest before a screen reader is told: not at every step of a slider.
const REST: Duration = Duration::from_millis(500);

/// The reasons for what is recommended, a line each.
pub fn reasons(model: Model) -> impl IntoView {
    let recommended = model.recommendation.read();
    let reasons = recommended.as_ref()?.reasons.iter();
    let lines = reasons.map(|reason| view! { <li>{advice::reason(reason)}</li> });
    Some(lines.collect_view())
}

/// The answer, shown at once and spoken when it rests.
#[component]
pub fn Answer() -> impl IntoView {
    let model = Model::of_page();
    let answer = Memo::new(move |_| model.answer());
    let drawbacks = move || {
        let recommended = model.recommendation.read();
        advice::drawbacks(&recommended.as_ref()?.drawbacks)
    };
    let takes = move || model.takes();
    let contrast = move || {
        let all = model.comparison.read();
        sentences::contrast(all.as_ref()?, model.units.get())
    };
    let spoken = RwSignal::new(String::new());
    let at_rest = AfterRest::of(REST);
    Effect::new(move |before: Option<()>| {
        let sentence = answer.get();
        // What the page opens with is read anyway.
        if before.is_some() {
            at_rest.then(move || {
                spoken.try_set(sentence);
            });
        }
    });
    view! {
        <section class="answer">
            <h2 id=HEAD tabindex="-1" data-testid="answer">
                {answer}
            </h2>
            <ul class="reasons" data-testid="reasons">
                {move || reasons(model)}
            </ul>
            <p data-testid="drawbacks">{drawbacks}</p>
            <p data-testid="takes">{takes}</p>
            <p data-testid="contrast">{contrast}</p>
            <Show when=move || model.shows(Part::Sheet)>
                <button
                    type="button"
                    id=OPENER
                    class="take-home-button"
                    data-testid="take-home"
                    on:click=move |_| model.taking_home.set(true)
                >
                    {sheet::open()}
                </button>
            </Show>
            <p class="hidden" role="status" data-testid="spoken">
                {spoken}
            </p>
        </section>
    }
}
