//! Practice for those who learn the trade, and for those who teach it.

mod alone;
mod answer_form;
mod case;
mod group;
mod help;
mod ideas;
mod order;
mod outcome;
mod paper;
mod record;
mod show;
mod tally;
mod truth;
mod walk;
mod walk_step;

use crate::model::practice::{Part, PracticeModel};
use crate::text::practice as text;
use crate::view::awake::stay_awake;
use crate::view::bars::Patterns;
use alone::AloneView;
use group::GroupView;
use leptos::prelude::*;
use record::RecordView;
use walk::WalkView;

/// The part that is open.
#[component]
pub fn PracticeView() -> impl IntoView {
    let practice = PracticeModel::of_page();
    stay_awake();
    let part = move |part: Part, id: &'static str, name: &'static str| {
        let current = move || (practice.part.get() == part).then_some("true");
        view! {
            <button
                type="button"
                data-testid=id
                aria-current=current
                on:click=move |_| practice.part.set(part)
            >
                {name}
            </button>
        }
    };
    view! {
        <section class="practice">
            <Patterns />
            <nav
                class="views"
                aria-label=text::parts()
                class:covered=move || practice.is_large()
            >
                {part(Part::Walk, "practice-walk", text::part_walk())}
                {part(Part::Alone, "practice-alone", text::part_alone())}
                {part(Part::Group, "practice-group", text::part_group())}
                {part(Part::Record, "practice-record", text::part_record())}
            </nav>
            {move || match practice.part.get() {
                Part::Walk => view! { <WalkView /> }.into_any(),
                Part::Alone => view! { <AloneView /> }.into_any(),
                Part::Group => view! { <GroupView /> }.into_any(),
                Part::Record => view! { <RecordView /> }.into_any(),
            }}
        </section>
    }
}
