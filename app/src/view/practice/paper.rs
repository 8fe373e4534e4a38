//! A set on paper: the questions, or the questions with their answers.

use super::case::fact_list;
use crate::model::Model;
use crate::model::practice::PracticeModel;
use crate::model::practice::desk::{scene, worked};
use crate::number;
use crate::text::practice::{self as text, case as words, given, group, outcome, steps};
use crate::text::{labels, named, stop};
use farend_core::practice::{Case, Question, draw};
use farend_core::units::UnitSystem;
use farend_core::yard::Yard;
use leptos::prelude::*;

/// What is put on paper.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sheet {
    /// The questions alone.
    Questions,
    /// With their answers.
    Answers,
}

/// The sheet, while it is being printed; what the browser's own menu prints is without answers.
#[component]
pub fn Paper(sheet: RwSignal<Option<Sheet>>) -> impl IntoView {
    let before = window_event_listener_untyped("beforeprint", move |_| {
        if sheet.get_untracked().is_none() {
            sheet.set(Some(Sheet::Questions));
        }
    });
    let after = window_event_listener_untyped("afterprint", move |_| sheet.set(None));
    on_cleanup(move || {
        before.remove();
        after.remove();
    });
    move || sheet.get().map(|sheet| view! { <Cases sheet=sheet /> })
}

#[component]
fn Cases(sheet: Sheet) -> impl IntoView {
    let model = Model::of_page();
    let practice = PracticeModel::of_page();
    let yard = model.yard.read();
    let units = model.units.get();
    let cases = practice.set.get();
    let cases = cases.into_iter().filter_map(|of| draw(&yard, of));
    let lines = cases.map(|case| on_paper(&yard, &case, sheet, units));
    let set = practice.group.chosen();
    view! {
        <div class="practice-paper" data-testid="practice-paper">
            <h1>
                {match sheet {
                    Sheet::Questions => group::sheet(),
                    Sheet::Answers => group::sheet_with_answers(),
                }}
            </h1>
            <p>
                {stop(&yard.name)} " " {yard.invented.then_some(labels::invented())} " "
                {set.map(|set| stop(&group::set(set.seed, set.count)))} " " {number::today("long")}
            </p>
            {(sheet == Sheet::Questions)
                .then(|| view! { <p class="to-fill">{group::name_and_date()}</p> })}
            <ol class="cases">{lines.collect_view()}</ol>
        </div>
    }
}

fn on_paper(yard: &Yard, case: &Case, sheet: Sheet, units: UnitSystem) -> impl IntoView + use<> {
    let scene = scene(yard, case)?;
    let answer = (sheet == Sheet::Answers).then(|| {
        let worked = worked(yard, case)?;
        let steps = steps::steps(&worked, units);
        Some(view! {
            <p>
                <b>{named(group::answer(), &outcome::truth(&worked.answer, units))}</b>
            </p>
            <ul>{steps.into_iter().map(|line| view! { <li>{line}</li> }).collect_view()}</ul>
        })
    });
    let choices = words::choices(case, units);
    // Places are written before the routes of an order, a cross before any other choice.
    let mark = match case.question {
        Question::Route { .. } => "__ ",
        _ => "☐ ",
    };
    Some(view! {
        <li>
            <h2>{stop(&words::pair(&scene))} " " {words::question(case)}</h2>
            <dl class="facts">{fact_list(given::facts(&scene, case, units))}</dl>
            {(choices.is_empty() && sheet == Sheet::Questions)
                .then(|| view! { <p class="to-fill">{text::power_on_paper()}</p> })}
            <ul class="choices-on-paper">
                {choices.into_iter().map(|choice| view! { <li>{mark} {choice}</li> }).collect_view()}
            </ul>
            {answer}
            <p class="fine">{text::number_of(case.draw.seed)}</p>
        </li>
    })
}
