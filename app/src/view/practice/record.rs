//! How it goes: the learner's own record, by idea.

use crate::browser;
use crate::model::Model;
use crate::model::practice::PracticeModel;
use crate::text::practice::{self as text, kept as words};
use crate::view::save::hand_over;
use farend_core::export::record::Record;
use farend_core::practice::{Answered, Confidence, Help, Idea, progress, score};
use leptos::prelude::*;

/// Identifier of the question before all is erased.
const ASK: &str = "erase-question";
/// Identifier of the button that leads to it.
const ERASE: &str = "erase";

/// Progress by idea, and what can be done with the record.
#[component]
pub fn RecordView() -> impl IntoView {
    let practice = PracticeModel::of_page();
    let record = practice.record;
    let empty = move || record.record.read().answers().is_empty();
    view! {
        <h2>{text::part_record()}</h2>
        <p>{words::lead()}</p>
        {move || {
            record
                .trouble
                .get()
                .map(|trouble| {
                    view! {
                        <p class="notice" data-testid="record-trouble">
                            {words::trouble(trouble)}
                        </p>
                    }
                })
        }}
        <Show when=empty>
            <p>{words::empty()}</p>
        </Show>
        <ul class="ideas" data-testid="ideas">
            {move || {
                let record = record.record.read();
                Idea::ALL.iter().map(|idea| row(&record, *idea)).collect_view()
            }}
        </ul>
        <Keep />
    }
}

fn row(record: &Record, idea: Idea) -> impl IntoView + use<> {
    let progress = progress(record.answers(), idea);
    let cases = record.answers().iter().filter(|it| it.idea == idea).count();
    let part = progress.map(beyond_guessing);
    let word = part.map_or_else(words::not_met, |part| words::word(part, cases));
    let width = format!("{:.0}%", part.unwrap_or_default() * 100.0);
    view! {
        <li data-testid=format!("idea-{}", idea.word())>
            <b>{text::idea(idea)}</b>
            <svg class="voice-bar" aria-hidden="true" focusable="false">
                <rect class="not-taken" width="100%" height="100%" />
                <rect class="arrives" width=width height="100%" />
            </svg>
            <span>{word}</span>
            <span class="fine">{words::behind(cases, record.help(idea))}</span>
        </li>
    }
}

/// The part of the way from what guessing brings to all that can be had.
fn beyond_guessing(progress: f64) -> f64 {
    let guessing = score(&Answered {
        idea: Idea::FlowIsSpeed,
        right: true,
        confidence: Confidence::Guessing,
        help: Help::AllBlank,
    });
    ((progress - guessing) / (1.0 - guessing)).max(0.0)
}

/// Takes the record along, or erases it.
#[component]
fn Keep() -> impl IntoView {
    let model = Model::of_page();
    let record = PracticeModel::of_page().record;
    let asking = RwSignal::new(false);
    let told = RwSignal::new("");
    let export = move |_| {
        let text = record.record.with_untracked(Record::to_json).ok();
        hand_over(model, words::FILE, text, browser::JSON);
    };
    let answer = move |erase: bool| {
        move |_| {
            if erase {
                record.erase();
                told.set(words::erased());
            }
            asking.set(false);
            browser::focus(ERASE);
        }
    };
    let ask = move |_| {
        told.set("");
        asking.set(true);
        browser::focus(ASK);
    };
    view! {
        <div class="tools">
            <button type="button" data-testid="export-record" on:click=export>
                {words::export()}
            </button>
            <button type="button" id=ERASE data-testid="erase-record" on:click=ask>
                {words::erase()}
            </button>
        </div>
        <Show when=move || asking.get()>
            <div class="notice" data-testid="erase-asks">
                <p id=ASK tabindex="-1">
                    {words::erase_ask()}
                </p>
                <div class="tools">
                    <button type="button" data-testid="erase-yes" on:click=answer(true)>
                        {words::erase_yes()}
                    </button>
                    <button type="button" data-testid="erase-no" on:click=answer(false)>
                        {words::erase_no()}
                    </button>
                </div>
            </div>
        </Show>
        <p class="told" role="status">
            {told}
        </p>
    }
}
