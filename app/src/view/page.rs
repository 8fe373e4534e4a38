//! The whole page.

use super::answer::Answer;
use super::bars::Bars;
use super::begin::{Begin, Refused, Stage, Waiting};
use super::cautions::Cautions;
use super::choices::Choices;
use super::deciding::Deciding;
use super::deeper::Deeper;
use super::for_host::ForHost;
use super::grid::GridView;
use super::header::Header;
use super::keeping::KeepingBox;
use super::ledger::LedgerView;
use super::notice::NoticeBox;
use super::opening::DropHint;
use super::practice::PracticeView;
use super::table_in::TableIn;
use super::take_home::TakeHome;
use super::what_if::WhatIf;
use super::yard::YardView;
use crate::embed::part::Part;
use crate::embed::{Options, colours, height};
use crate::link;
use crate::model::Model;
use crate::model::grid::GridModel;
use crate::model::practice::PracticeModel;
use crate::model::yard::name;
use crate::storage::Keeper;
use crate::text::yard as text;
use farend_core::fault::Fault;
use farend_core::state::View;
use farend_core::thermal::Heat;
use farend_core::yard::edit::Whose;
use farend_core::yard::list::List;
use leptos::prelude::*;

/// The page, as its host wants it.
#[component]
pub fn Page() -> impl IntoView {
    let options = Options::of_page();
    let faults = colours::take_over(&options.colours);
    let origin = options.origin.clone();
    let begin = Begin::of(options);
    height::tell(origin, move || begin.stands());
    move || match begin.stage.get() {
        Stage::Waiting => view! { <Waiting begin=begin /> }.into_any(),
        Stage::Refused(why) => view! { <Refused begin=begin why=why /> }.into_any(),
        Stage::Open(model, keeper) => {
            view! { <Whole model=*model keeper=keeper faults=faults.clone() /> }.into_any()
        }
    }
}

/// All of the page, with the state that its address holds.
#[component]
fn Whole(model: Model, keeper: Keeper, faults: Vec<Fault>) -> impl IntoView {
    provide_context(model);
    provide_context(keeper);
    provide_context(GridModel::new(model));
    let practice = PracticeModel::new(model);
    provide_context(practice);
    link::follow(model);
    keeper.follow(model);
    view! {
        <DropHint />
        <TakeHome />
        <div class:covered=move || model.taking_home.get() || practice.is_large()>
            <Header />
        </div>
        <main class="page" class:covered=move || model.taking_home.get()>
            <KeepingBox />
            <NoticeBox />
            <TableIn />
            {move || match model.view.get() {
                View::Pair => view! { <Pair /> }.into_any(),
                View::Grid => view! { <GridView /> }.into_any(),
                View::Yard => view! { <YardView /> }.into_any(),
                View::Practice => view! { <PracticeView /> }.into_any(),
            }}
            <ForHost colours=faults />
        </main>
    }
}

/// One machine with one implement.
#[component]
fn Pair() -> impl IntoView {
    let model = Model::of_page();
    // The ledger and its unfolded part show the same.
    let heat = Memo::new(move |_| model.heat());
    view! {
        <Show when=move || model.shows(Part::Choices)>
            <Choices />
        </Show>
        <Nothing />
        <Show when=move || model.comparison.read().is_some()>
            <Compared heat=heat />
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
                <h2>{text::NOTHING_TO_COMPARE}</h2>
                {told}
                <Show when=move || model.shows(Part::Editor)>
                    <button type="button" data-testid="to-editor" on:click=edit>
                        {text::TO_EDITOR}
                    </button>
                </Show>
            </section>
        </Show>
    }
}

/// All that is told of a machine and an implement that can be compared, as far as the host lets it.
#[component]
fn Compared(heat: Memo<Option<Heat>>) -> impl IntoView {
    let model = Model::of_page();
    let shown =
        move |part, view: fn(Memo<Option<Heat>>) -> AnyView| model.shows(part).then(|| view(heat));
    view! {
        <Answer />
        <div class="columns">
            {shown(Part::Routes, |_| view! { <Bars /> }.into_any())}
            {shown(Part::WhatIf, |_| view! { <WhatIf /> }.into_any())}
            {shown(Part::Ledger, |heat| view! { <LedgerView heat=heat /> }.into_any())}
        </div>
        {shown(Part::Deciding, |_| view! { <Deciding /> }.into_any())}
        {shown(Part::Deeper, |heat| view! { <Deeper heat=heat /> }.into_any())}
        <Cautions />
    }
}
