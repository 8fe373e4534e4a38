//! One case at a time, for one learner.

use super::answer_form::AnswerForm;
use super::case::{CaseHead, HEAD};
use super::help::HelpBeside;
use super::outcome::OutcomeView;
use crate::browser;
use crate::model::practice::PracticeModel;
use crate::text::{pair, practice as text};
use crate::view::entry::NumberEntry;
use crate::view::radio::radio;
use farend_core::practice::{Case, Draw, Kind};
use leptos::prelude::*;

/// What to practise, and the case that is asked.
#[component]
pub fn AloneView() -> impl IntoView {
    let practice = PracticeModel::of_page();
    let alone = practice.alone;
    let told = RwSignal::new(String::new());
    let asked = move || {
        alone.draw.get()?;
        Some(match alone.desk.case.get() {
            None => view! { <p class="empty">{text::no_case()}</p> }.into_any(),
            Some(case) => view! { <Asked case=case told=told /> }.into_any(),
        })
    };
    view! {
        <h2>{text::part_alone()}</h2>
        <p>{text::alone_lead()}</p>
        <Start />
        {asked}
        <p class="told" role="status" data-testid="practice-told">
            {told}
        </p>
    }
}

/// Begins with a case, or finds one again.
#[component]
fn Start() -> impl IntoView {
    let practice = PracticeModel::of_page();
    let alone = practice.alone;
    let kind = move |kind: Option<Kind>| {
        let (id, name) = match kind {
            None => ("any", text::any_kind()),
            Some(kind) => (kind.word(), text::kind(kind)),
        };
        let chosen = move || alone.kind.get() == kind;
        radio(
            "practice-kind",
            format!("kind-{id}"),
            name,
            chosen,
            move || {
                alone.kind.set(kind);
            },
        )
    };
    let kinds = core::iter::once(None).chain(Kind::ALL.iter().copied().map(Some));
    let begin_set = move |_| {
        alone.begin_set();
        browser::focus(HEAD);
    };
    view! {
        <fieldset class="switch">
            <legend>{text::what()}</legend>
            {kinds.map(kind).collect_view()}
        </fieldset>
        <div class="tools">
            <button
                type="button"
                data-testid="begin"
                on:click=move |_| {
                    alone.ask_any(alone.kind.get_untracked());
                    browser::focus(HEAD);
                }
            >
                {text::begin()}
            </button>
            <Show when=move || !practice.set.read().is_empty()>
                <button type="button" data-testid="begin-set" on:click=begin_set>
                    {move || text::begin_set(practice.set.read().len())}
                </button>
            </Show>
        </div>
        <Find />
    }
}

/// A case by its number.
#[component]
fn Find() -> impl IntoView {
    let alone = PracticeModel::of_page().alone;
    let kind = RwSignal::new(Kind::Route);
    let seed = RwSignal::new(None::<f64>);
    let is_seed =
        |number: f64| number.fract() == 0.0 && (0.0..=f64::from(u32::MAX)).contains(&number);
    let enter = Callback::new(move |entered: Option<f64>| {
        let fits = entered.is_none_or(is_seed);
        if fits {
            seed.set(entered);
        }
        fits
    });
    let find = move |_| {
        if let Some(number) = seed.get_untracked() {
            alone.ask_again(Draw {
                kind: kind.get_untracked(),
                seed: number as u32,
            });
            browser::focus(HEAD);
        }
    };
    let choose = move |event| {
        let word = event_target_value(&event);
        if let Some(found) = Kind::ALL.iter().find(|kind| kind.word() == word) {
            kind.set(*found);
        }
    };
    view! {
        <details class="more" data-testid="find">
            <summary>{text::find()}</summary>
            <div class="find">
                <label class="choice">
                    <span>{text::what()}</span>
                    <select data-testid="find-kind" on:change=choose>
                        {Kind::ALL
                            .iter()
                            .map(|of| {
                                let of = *of;
                                view! {
                                    <option value=of.word() prop:selected=move || kind.get() == of>
                                        {text::kind(of)}
                                    </option>
                                }
                            })
                            .collect_view()}
                    </select>
                </label>
                <NumberEntry
                    id="find-number"
                    label=text::case_number()
                    unit=""
                    value=seed
                    hint=""
                    enter=enter
                    allowed=text::number_allowed()
                />
                <button type="button" data-testid="find-case" on:click=find>
                    {text::show_case()}
                </button>
            </div>
        </details>
    }
}

/// A case, with the help that it comes with, and what is said to it.
#[component]
fn Asked(case: Case, told: RwSignal<String>) -> impl IntoView {
    let practice = PracticeModel::of_page();
    let alone = practice.alone;
    let (head, help, form) = (case.clone(), case.clone(), case);
    let set_place = move || {
        let place = alone.place.get()?;
        Some(text::of_set(place, practice.set.read().len()))
    };
    // A yard that was changed lays another case under the same draw: to that nothing was said.
    let is_open = Memo::new(move |_| alone.desk.answer.read().is_some());
    view! {
        <article class="case" data-testid="case" data-help=move || alone.help.get().word()>
            <CaseHead case=head>
                <p class="fine">
                    {set_place} " " {pair(&text::number_of(help.draw.seed), text::kind(help.draw.kind))}
                </p>
            </CaseHead>
            {move || match alone.committed.get().filter(|_| is_open.get()) {
                None => {
                    view! {
                        <HelpBeside case=help.clone() />
                        <AnswerForm case=form.clone() told=told />
                    }
                        .into_any()
                }
                Some(committed) => view! { <OutcomeView committed=committed /> }.into_any(),
            }}
        </article>
    }
}
