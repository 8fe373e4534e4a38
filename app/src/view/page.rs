//! The whole page.

use super::answer::Answer;
use super::bars::Bars;
use super::cautions::Cautions;
use super::choices::Choices;
use super::deciding::Deciding;
use super::deeper::Deeper;
use super::header::Header;
use super::ledger::LedgerView;
use super::notice::NoticeBox;
use super::take_home::TakeHome;
use super::what_if::WhatIf;
use crate::model::Model;
use crate::{browser, link};
use leptos::prelude::*;

/// The page, with the state that its address holds.
#[component]
pub fn Page() -> impl IntoView {
    let model = Model::new(&browser::fragment());
    provide_context(model);
    link::follow(model);
    // The ledger and its unfolded part show the same.
    let heat = Memo::new(move |_| model.heat());
    view! {
        <TakeHome />
        <div class:covered=move || model.taking_home.get()>
            <Header />
        </div>
        <main class="page" class:covered=move || model.taking_home.get()>
            <NoticeBox />
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
        </main>
    }
}
