//! The whole page.

use super::answer::Answer;
use super::bars::Bars;
use super::begin::{Begin, Stage};
use super::cautions::Cautions;
use super::choices::Choices;
use super::header::Header;
use super::language::focus_choice;
use super::parts::{self, Later};
use crate::embed::part::Part;
use crate::embed::{Options, colours, height};
use crate::language::Speech;
use crate::model::Model;
use crate::model::grid::GridModel;
use crate::model::once::Once;
use crate::model::practice::PracticeModel;
use crate::model::yard::name;
use crate::offline::Offline;
use crate::outdoors::Outdoors;
use crate::storage::Keeper;
use crate::text::yard as text;
use farend_core::state::View;
use farend_core::yard::edit::Whose;
use farend_core::yard::list::List;
use leptos::prelude::*;

/// The page, as its host wants it.
#[component]
pub fn Page() -> impl IntoView {
    let speech = Speech::start();
    provide_context(speech);
    let mut options = Options::of_page();
    options.faults.extend(colours::take_over(&options.colours));
    let origin = options.origin.clone();
    let begin = Begin::of(options);
    provide_context(begin);
    height::tell(origin, move || begin.stands());
    parts::load_all();
    move || match begin.stage.get() {
        Stage::Waiting => view! { <Later load=parts::far_yard /> }.into_any(),
        Stage::Open(model, keeper) => view! { <Whole model=*model keeper=keeper /> }.into_any(),
    }
}

/// All of the page, with the state that its address holds.
#[component]
fn Whole(model: Model, keeper: Keeper) -> impl IntoView {
    let speech = Speech::of_page();
    model.provide();
    provide_context(keeper);
    provide_context(Offline::follow());
    provide_context(Outdoors::start());
    provide_context(Once::<GridModel>::new());
    provide_context(Once::<PracticeModel>::new());
    Effect::new(move |before: Option<()>| {
        speech.language.track();
        if before.is_some() {
            focus_choice();
        }
    });
    // Nothing of what was chosen is lost when all words are said anew: it's all in what was provided.
    let spoken = move || {
        speech.language.track();
        view! { <Parts /> }
    };
    view! {
        <Later load=parts::following />
        {spoken}
    }
}

/// All parts of the page, in the language that is spoken.
#[component]
fn Parts() -> impl IntoView {
    let model = Model::of_page();
    let practice: Once<PracticeModel> = expect_context();
    let is_large = move || practice.get().is_some_and(PracticeModel::is_large);
    view! {
        <Later load=parts::drop_hint />
        <Later load=parts::take_home />
        <div class:covered=move || model.taking_home.get() || is_large()>
            <Header />
        </div>
        <main class="page" class:covered=move || model.taking_home.get()>
            <Later load=parts::keeping />
            <Later load=parts::notice />
            <Later load=parts::table_in />
            {move || match model.view.get() {
                View::Pair => view! { <Pair /> }.into_any(),
                View::Grid => view! { <Later load=parts::grid /> }.into_any(),
                View::Yard => view! { <Later load=parts::yard /> }.into_any(),
                View::Practice => view! { <Later load=parts::practice /> }.into_any(),
            }}
            <Later load=parts::for_host />
        </main>
        <div class:covered=move || model.taking_home.get() || is_large()>
            <Later load=parts::foot />
        </div>
        <div class="newer-place" class:covered=is_large>
            <Later load=parts::newer />
        </div>
    }
}

/// One machine with one implement.
#[component]
fn Pair() -> impl IntoView {
    let model = Model::of_page();
    view! {
        <Show when=move || model.shows(Part::Choices)>
            <Choices />
        </Show>
        <Nothing />
        <Show when=move || model.comparison.read().is_some()>
            <Compared />
        </Show>
    }
}

/// What stands there while there is nothing to compare, and the way to mend that.
#[component]
fn Nothing() -> impl IntoView {
    let model = Model::of_page();
    let lacks = move |list: List, id: &str| {
        let yard = model.editing.read();
        let place = yard.place(list, id);
        let faults = place.map_or(0, |place| yard.faults_of(Whose::Entry(list, place)).len());
        text::lacks(list, place.map(|place| (name(&yard, list, place), faults)))
    };
    let told = move || {
        let state = model.state.read();
        let machine = model.machine.read().is_none();
        let implement = model.implement.read().is_none();
        let lacks = [
            machine.then(|| lacks(List::Machines, &state.machine)),
            implement.then(|| lacks(List::Implements, &state.implement)),
        ];
        let lines = lacks.into_iter().flatten();
        lines.map(|line| view! { <p>{line}</p> }).collect_view()
    };
    let edit = move |_| model.state.update(|state| state.view = View::Yard);
    view! {
        <Show when=move || model.comparison.read().is_none()>
            <section class="notice" data-testid="nothing">
                <h2>{text::nothing_to_compare()}</h2>
                {told}
                <Show when=move || model.shows(Part::Editor)>
                    <button type="button" data-testid="to-editor" on:click=edit>
                        {text::to_editor()}
                    </button>
                </Show>
            </section>
        </Show>
    }
}

/// All that is told of a machine and an implement that can be compared, as far as the host lets it.
#[component]
fn Compared() -> impl IntoView {
    let model = Model::of_page();
    let later = move |part, load| model.shows(part).then(|| view! { <Later load=load /> });
    view! {
        <Answer />
        <div class="columns">
            {model.shows(Part::Routes).then(|| view! { <Bars /> })}
            {later(Part::WhatIf, parts::what_if)}
            {later(Part::Ledger, parts::ledger)}
        </div>
        {later(Part::Deciding, parts::deciding)}
        {later(Part::Deeper, parts::deeper)}
        <Cautions />
    }
}
