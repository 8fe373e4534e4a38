//! The whole page.

use super::answer::Answer;
use super::bars::Bars;
use super::cautions::Cautions;
use super::choices::Choices;
use super::header::Header;
use super::language::focus_choice;
use super::parts::{self, Later};
use crate::browser;
use crate::language::Speech;
use crate::model::Model;
use crate::model::grid::GridModel;
use crate::model::once::Once;
use crate::model::practice::PracticeModel;
use crate::model::yard::name;
use crate::storage::Keeper;
use crate::text::yard as text;
use farend_core::state::View;
use farend_core::yard::edit::Whose;
use farend_core::yard::list::List;
use leptos::prelude::*;

/// The page, with the state that its address holds.
#[component]
pub fn Page() -> impl IntoView {
    let speech = Speech::start();
    provide_context(speech);
    let (yard, keeper) = Keeper::start();
    let model = Model::new(yard, &browser::fragment());
    provide_context(model);
    provide_context(keeper);
    provide_context(Once::<GridModel>::new());
    provide_context(Once::<PracticeModel>::new());
    parts::load_all();
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
        </main>
    }
}

/// One machine with one implement.
#[component]
fn Pair() -> impl IntoView {
    let model = Model::of_page();
    view! {
        <Choices />
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
                <button type="button" data-testid="to-editor" on:click=edit>
                    {text::to_editor()}
                </button>
            </section>
        </Show>
    }
}

/// All that is told of a machine and an implement that can be compared.
#[component]
fn Compared() -> impl IntoView {
    view! {
        <Answer />
        <div class="columns">
            <Bars />
            <Later load=parts::what_if />
            <Later load=parts::ledger />
        </div>
        <Later load=parts::deciding />
        <Later load=parts::deeper />
        <Cautions />
    }
}
