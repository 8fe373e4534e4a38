//! The answer in one sentence.

use crate::model::Model;
use crate::rest::AfterRest;
use crate::text::sentences;
use leptos::prelude::*;
use std::time::Duration;

/// How long the answer must rest before a screen reader is told: not at every step of a slider.
const REST: Duration = Duration::from_millis(500);

/// The answer, shown at once and spoken when it rests.
#[component]
pub fn Answer() -> impl IntoView {
    let model = Model::of_page();
    let answer = Memo::new(move |_| {
        let (machine, implement) = (model.machine.read(), model.implement.read());
        let all = model.comparison.read();
        match (machine.as_ref(), implement.as_ref(), all.as_ref()) {
            (Some(machine), Some(implement), Some(all)) => {
                sentences::answer(machine, implement, all, model.units.get())
            }
            _ => String::new(),
        }
    });
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
            <h2 data-testid="answer">{answer}</h2>
            <p data-testid="contrast">{contrast}</p>
            <p class="hidden" role="status" data-testid="spoken">
                {spoken}
            </p>
        </section>
    }
}
