//! Help that fades: another case worked out, with or without its first step.

use crate::model::Model;
use crate::model::practice::PracticeModel;
use crate::model::practice::desk::{Worked, run, scene};
use crate::text::practice::{self as text, case as words, outcome, steps};
use crate::text::stop;
use crate::{browser, number};
use farend_core::practice::{Case, Help, Question};
use farend_core::units::UnitSystem;
use leptos::prelude::*;

/// Identifier of the worked example.
const EXAMPLE: &str = "practice-example";

/// The help that a case comes with, and the way to do without.
#[component]
pub fn HelpBeside(case: Case) -> impl IntoView {
    let model = Model::of_page();
    let alone = PracticeModel::of_page().alone;
    let example = {
        let case = case.clone();
        // Not worked out before it's wanted, for it takes a moment.
        Memo::new(move |_| (alone.help.get() != Help::AllBlank).then(|| alone.example(&case))?)
    };
    let first_shown = RwSignal::new(false);
    let begins = move || {
        let is_wanted = alone.help.get() == Help::FirstBlank;
        is_wanted.then(|| first_stage(model, &case, model.units.get()))?
    };
    let beside = move || {
        let example = example.read();
        let hide_first = alone.help.get() == Help::FirstBlank && !first_shown.get();
        Some(worked_out(
            example.as_ref()?,
            hide_first,
            first_shown,
            model.units.get(),
        ))
    };
    view! {
        <Show when=move || alone.help.get() != Help::AllBlank>
            <div class="help">
                <p>{move || text::help(alone.help.get())}</p>
                <button
                    type="button"
                    data-testid="know-this"
                    on:click=move |_| alone.help.set(Help::KNOWN)
                >
                    {text::know_this()}
                </button>
            </div>
        </Show>
        {begins}
        {beside}
    }
}

/// An example's question, steps and answer.
fn worked_out(
    worked: &Worked,
    hide_first: bool,
    first_shown: RwSignal<bool>,
    units: UnitSystem,
) -> impl IntoView + use<> {
    let steps = steps::steps(worked, units);
    let lines = steps.into_iter().enumerate().map(|(place, line)| {
        if place == 0 && hide_first {
            return view! {
                <li>
                    <i>{text::first_is_yours()}</i>
                    " "
                    <button
                        type="button"
                        data-testid="show-first"
                        on:click=move |_| {
                            first_shown.set(true);
                            browser::focus(EXAMPLE);
                        }
                    >
                        {text::show_first()}
                    </button>
                </li>
            }
            .into_any();
        }
        view! { <li>{line}</li> }.into_any()
    });
    view! {
        <aside class="example" data-testid="example" aria-labelledby=EXAMPLE>
            <h4 id=EXAMPLE tabindex="-1">
                {text::example()}
            </h4>
            <p>{stop(&words::pair(&worked.scene))} " " {words::question(&worked.case)}</p>
            <ol class="worked-steps">{lines.collect_view()}</ol>
            <p>
                <b>{outcome::truth(&worked.answer, units)}</b>
            </p>
        </aside>
    }
}

/// The first stage of what a case asks about, unless that would be the answer.
fn first_stage(model: Model, case: &Case, units: UnitSystem) -> Option<impl IntoView + use<>> {
    let asks_for_stages = matches!(
        case.question,
        Question::Amount { .. } | Question::Limit { .. } | Question::Wanted { .. }
    );
    let scene = scene(&model.yard.read(), case).filter(|_| asks_for_stages)?;
    let run = run(&scene, case)?;
    let shown = |power| number::power(power, units);
    let answer = shown(run.delivered.likely);
    let first = run.ledger.passages.first()?;
    let gives_away = [first.takes.power, first.gives.power]
        .into_iter()
        .any(|power| shown(power) == answer);
    (!gives_away).then(|| {
        view! {
            <p data-testid="first-stage">
                <b>{text::to_begin_with()}</b>
                " "
                {steps::passage(first, units)}
            </p>
        }
    })
}
