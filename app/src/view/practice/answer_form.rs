//! What somebody says to a case, and how sure they are.

use super::order::{Order, Ranking};
use super::outcome::RESULT;
use crate::browser;
use crate::model::Model;
use crate::model::practice::PracticeModel;
use crate::text::practice::{self as text, case as words};
use crate::view::entry::NumberEntry;
use crate::view::radio::radio;
use farend_core::practice::{Case, Confidence, Guess, Question};
use farend_core::quantity::Power;
use farend_core::units::Quantity;
use leptos::prelude::*;

/// A guess that isn't given yet.
#[derive(Clone, Copy)]
struct Draft {
    ranking: Option<RwSignal<Ranking>>,
    power: RwSignal<Option<Power>>,
    choice: RwSignal<Option<usize>>,
}

impl Draft {
    fn guess(self) -> Option<Guess> {
        if let Some(ranking) = self.ranking {
            let Ranking { order, cant } = ranking.get_untracked();
            return Some(Guess::Order { order, cant });
        }
        let power = self.power.get_untracked().map(Guess::Power);
        power.or(self.choice.get_untracked().map(Guess::Choice))
    }
}

/// The answer to one case.
#[component]
pub fn AnswerForm(case: Case, told: RwSignal<String>) -> impl IntoView {
    let alone = PracticeModel::of_page().alone;
    let draft = Draft {
        ranking: match &case.question {
            Question::Route { routes } => Some(RwSignal::new(Ranking::of(routes))),
            _ => None,
        },
        power: RwSignal::new(None),
        choice: RwSignal::new(None),
    };
    let confidence = RwSignal::new(None::<Confidence>);
    let commit = move |_| match (draft.guess(), confidence.get_untracked()) {
        (None, _) => told.set(text::missing_guess().to_owned()),
        (_, None) => told.set(text::missing_confidence().to_owned()),
        (Some(guess), Some(confidence)) => {
            alone.commit(guess, confidence);
            told.set(String::new());
            browser::focus(RESULT);
        }
    };
    let sure = move |of: Confidence| {
        let chosen = move || confidence.get() == Some(of);
        radio(
            "practice-sure",
            of.word(),
            text::confidence(of),
            chosen,
            move || {
                confidence.set(Some(of));
            },
        )
    };
    let answer = match (draft.ranking, &case.question) {
        (Some(ranking), _) => view! { <Order ranking=ranking told=told /> }.into_any(),
        (None, Question::Amount { .. }) => view! { <PowerGuess power=draft.power /> }.into_any(),
        _ => view! { <Choices case=case choice=draft.choice /> }.into_any(),
    };
    view! {
        <div class="answer-form" data-testid="answer-form">
            {answer}
            <fieldset class="switch" data-testid="sure-of-it">
                <legend>{text::how_sure()}</legend>
                {Confidence::ALL.iter().copied().map(sure).collect_view()}
            </fieldset>
            <button type="button" class="commit" data-testid="commit" on:click=commit>
                {text::commit()}
            </button>
        </div>
    }
}

#[component]
fn PowerGuess(power: RwSignal<Option<Power>>) -> impl IntoView {
    let model = Model::of_page();
    view! {
        <NumberEntry
            id="guess-power"
            label=text::power()
            unit=Signal::derive(move || power_unit(model))
            value=Signal::derive(move || {
                Some(Quantity::Power(power.get()?).shown_in(model.units.get()).0)
            })
            hint=""
            enter=Callback::new(move |entered: Option<f64>| {
                let said = entered_power(model, entered);
                let fits = said.is_some() || entered.is_none();
                if fits {
                    power.set(said);
                }
                fits
            })
            allowed=text::power_allowed()
        />
    }
}

/// The unit in which powers are entered.
pub fn power_unit(model: Model) -> String {
    Quantity::Power(Power::ZERO)
        .shown_in(model.units.get())
        .1
        .to_owned()
}

/// A power above zero that somebody has typed.
pub fn entered_power(model: Model, entered: Option<f64>) -> Option<Power> {
    let number = entered.filter(|number| *number > 0.0)?;
    match Quantity::Power(Power::ZERO).entered_in(model.units.get_untracked(), number) {
        Some(Quantity::Power(power)) => Some(power),
        _ => None,
    }
}

#[component]
fn Choices(case: Case, choice: RwSignal<Option<usize>>) -> impl IntoView {
    let model = Model::of_page();
    let count = words::choices(&case, model.units.get_untracked()).len();
    let pick = move |place: usize| {
        let case = case.clone();
        let name = move || {
            let choices = words::choices(&case, model.units.get());
            choices.get(place).cloned()
        };
        let chosen = move || choice.get() == Some(place);
        radio(
            "practice-choice",
            format!("choice-{place}"),
            name,
            chosen,
            move || {
                choice.set(Some(place));
            },
        )
    };
    view! {
        <fieldset class="switch picks" data-testid="choices">
            <legend>{text::your_answer()}</legend>
            {(0..count).map(pick).collect_view()}
        </fieldset>
    }
}
