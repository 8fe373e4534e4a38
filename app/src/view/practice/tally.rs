//! What a group says: voices for each choice, or powers in a list.

use super::answer_form::{entered_power, power_unit};
use crate::model::Model;
use crate::model::practice::PracticeModel;
use crate::model::practice::desk::Worked;
use crate::number;
use crate::text::practice::{self as text, case as words, group};
use crate::text::{brackets, named};
use crate::view::entry::NumberEntry;
use farend_core::practice::{Guess, Question, Truth, judge};
use farend_core::quantity::Power;
use leptos::prelude::*;

/// What the group says to the case that is shown.
#[component]
pub fn TallyView() -> impl IntoView {
    let desk = PracticeModel::of_page().group.desk;
    let by_power = move || {
        let case = desk.case.read();
        Some(matches!(case.as_ref()?.question, Question::Amount { .. }))
    };
    let by_power = Memo::new(move |_| by_power());
    move || match by_power.get()? {
        true => Some(view! { <Powers /> }.into_any()),
        false => Some(view! { <Voices /> }.into_any()),
    }
}

#[component]
fn Voices() -> impl IntoView {
    let model = Model::of_page();
    let group = PracticeModel::of_page().group;
    let desk = group.desk;
    let choices = Memo::new(move |_| {
        let case = desk.case.read();
        let choices = case
            .as_ref()
            .map(|case| words::choices(case, model.units.get()));
        choices.unwrap_or_default()
    });
    let most = move || {
        let counts = (0..choices.read().len()).map(|choice| group.voices(choice));
        counts.max().unwrap_or_default().max(1)
    };
    // Only an open answer tells which it is.
    let is_right = move |choice: usize| {
        let worked = desk.answer.read();
        worked
            .as_ref()
            .is_some_and(|worked| match &worked.case.question {
                Question::Route { routes } => match &worked.answer.truth {
                    Truth::Route { order, .. } => routes.get(choice) == order.first(),
                    _ => false,
                },
                _ => judge(&worked.case, &worked.answer, &Guess::Choice(choice)).right,
            })
    };
    let row = move |(choice, name): (usize, String)| {
        let press = move |more: bool| move |_| group.count_voice(choice, more);
        let part = move || format!("{}%", group.voices(choice) * 100 / most());
        let label = |what| named(what, &name);
        let (less, more) = (label(group::one_less()), label(group::one_more()));
        view! {
            <li class:right=move || is_right(choice) data-testid=format!("voices-{choice}")>
                <button type="button" data-testid="less" aria-label=less on:click=press(false)>
                    "−"
                </button>
                <b data-testid="count">
                    {move || group.voices(choice)} <span class="hidden">{group::says()}</span>
                </b>
                <button type="button" data-testid="more" aria-label=more on:click=press(true)>
                    "+"
                </button>
                <span>
                    {name} {move || is_right(choice).then(|| brackets(group::right()))}
                    <svg class="voice-bar" aria-hidden="true" focusable="false">
                        <rect class="arrives" width=part height="100%" />
                    </svg>
                </span>
            </li>
        }
    };
    view! {
        <ul class="voices" data-testid="voices" aria-label=group::guesses()>
            {move || choices.get().into_iter().enumerate().map(row).collect_view()}
        </ul>
    }
}

#[component]
fn Powers() -> impl IntoView {
    let model = Model::of_page();
    let group = PracticeModel::of_page().group;
    let enter = Callback::new(move |entered| {
        let power = entered_power(model, entered);
        if let Some(power) = power {
            group.add_power(power);
        }
        power.is_some() || entered.is_none()
    });
    // The field is emptied for the next voice.
    let empty = Signal::derive(move || {
        group.tally();
        None::<f64>
    });
    let list = move || {
        let powers = group.tally().powers.into_iter().enumerate();
        let rows = powers.map(|(place, power)| {
            let shown = number::power(power, model.units.get());
            let label = named(group::remove(), &shown);
            view! {
                <li>
                    {shown} " "
                    <button
                        type="button"
                        aria-label=label
                        on:click=move |_| group.remove_power(place)
                    >
                        "×"
                    </button>
                </li>
            }
        });
        rows.collect_view()
    };
    let told = move || group::spread(&group.tally().powers, model.units.get());
    view! {
        <NumberEntry
            id="group-power"
            label=group::a_guess()
            unit=Signal::derive(move || power_unit(model))
            value=empty
            hint=""
            enter=enter
            allowed=text::power_allowed()
        />
        <p data-testid="group-spread">{told}</p>
        {move || dots(&group.tally().powers, group.desk.answer.read().as_ref())}
        <ul class="powers" aria-label=group::guesses() data-testid="group-powers">
            {list}
        </ul>
    }
}

/// The powers on a line, and the true range once it's revealed.
fn dots(powers: &[Power], worked: Option<&Worked>) -> impl IntoView + use<> {
    let truth = worked.and_then(|worked| match &worked.answer.truth {
        Truth::Amount { delivered, .. } => Some(*delivered),
        _ => None,
    });
    let all = powers.iter().copied().chain(truth.map(|truth| truth.high));
    let whole = all.reduce(Power::max)? * 1.1;
    let across = |power: Power| format!("{:.2}%", power / whole * 100.0);
    let dots = powers.iter().map(|power| {
        view! { <circle class="is-said" cx=across(*power) cy="50%" r="0.35em" /> }
    });
    Some(view! {
        <svg class="beside-bar" aria-hidden="true" focusable="false">
            <line class="axis" x1="0" x2="100%" y1="50%" y2="50%" />
            {truth
                .map(|truth| {
                    view! {
                        <rect
                            class="is-range"
                            x=across(truth.low)
                            width=across(truth.high - truth.low)
                            y="10%"
                            height="80%"
                        />
                    }
                })}
            {dots.collect_view()}
        </svg>
    })
}
