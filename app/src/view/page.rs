//! The whole page.

use super::answer::Answer;
use super::bars::Bars;
use super::cautions::Cautions;
use super::choices::Choices;
use super::deciding::Deciding;
use super::deeper::Deeper;
use super::grid::GridView;
use super::header::Header;
use super::ledger::LedgerView;
use super::notice::NoticeBox;
use super::opening::DropHint;
use super::table_in::TableIn;
use super::take_home::TakeHome;
use super::what_if::WhatIf;
use super::yard::YardView;
use crate::model::Model;
use crate::model::grid::GridModel;
use crate::{browser, link};
use farend_core::state::View;
use leptos::prelude::*;

/// The page, with the state that its address holds.
#[component]
pub fn Page() -> impl IntoView {
    let model = Model::new(&browser::fragment());
    provide_context(model);
    provide_context(GridModel::new(model));
    link::follow(model);
    view! {
        <DropHint />
        <TakeHome />
        <div class:covered=move || model.taking_home.get()>
            <Header />
        </div>
        <main class="page" class:covered=move || model.taking_home.get()>
            <NoticeBox />
            <TableIn />
            {move || match model.view.get() {
                View::Pair => view! { <Pair /> }.into_any(),
                View::Grid => view! { <GridView /> }.into_any(),
                View::Yard => view! { <YardView /> }.into_any(),
            }}
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
        <Choices />
        <Answer />
        <div class="columns">
            <Bars />
            <WhatIf />
            <LedgerView heat=heat />
        </div>
        <Deciding />
        <Deeper heat=heat />
        <Cautions />
    }
}
