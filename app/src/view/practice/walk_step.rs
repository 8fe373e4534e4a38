//! One stage of the way: a guess first, then what it loses, why, and what would change it.

use super::answer_form::power_unit;
use super::truth::key;
use super::walk::OPEN;
use crate::browser;
use crate::model::Model;
use crate::model::practice::PracticeModel;
use crate::model::practice::walk::Step;
use crate::number;
use crate::text::practice::{outcome, walk as words};
use crate::text::{labels, named};
use crate::view::control::ControlRow;
use crate::view::entry::NumberEntry;
use crate::view::formula::formula;
use farend_core::chain::Passage;
use farend_core::control::Control;
use farend_core::quantity::Power;
use farend_core::route::RouteId;
use farend_core::sensitivity::influences;
use farend_core::stage::{StageKind, StagePhysics};
use farend_core::units::Quantity;
use leptos::prelude::*;

/// Identifier of what came of a guess.
const RESULT: &str = "walk-result";

/// One stage.
#[component]
pub fn WalkStep(step: Step) -> impl IntoView {
    let model = Model::of_page();
    let walk = PracticeModel::of_page().walk;
    let told = RwSignal::new("");
    let passage = Memo::new(move |_| walk.passage(step));
    let takes = move || Some(words::takes(passage.read().as_ref()?, model.units.get()));
    let guessed = Memo::new(move |_| walk.guess(step));
    view! {
        <article class="case" data-testid="walk-step" data-stage=format!("{:?}", step.kind)>
            <h3 id=OPEN tabindex="-1">
                {labels::stage(step.kind)}
                " "
                <span class="note">{words::place(step.route, step.place, step.of)}</span>
            </h3>
            <p data-testid="walk-takes">{takes}</p>
            {move || match guessed.get() {
                None => view! { <Ask step=step passage=passage told=told /> }.into_any(),
                Some(part) => view! { <Told step=step passage=passage part=part /> }.into_any(),
            }}
            <p class="told" role="status" data-testid="walk-told">
                {told}
            </p>
        </article>
    }
}

/// The power that a stage takes.
fn taken(passage: Memo<Option<Passage>>) -> Power {
    let passage = passage.read();
    passage.as_ref().map_or(Power::ZERO, |it| it.takes.power)
}

/// A guess by a slider of parts, by buttons or by a number.
#[component]
fn Ask(step: Step, passage: Memo<Option<Passage>>, told: RwSignal<&'static str>) -> impl IntoView {
    /// A press of a button, in per cent.
    const PRESS: f64 = 5.0;
    let model = Model::of_page();
    let walk = PracticeModel::of_page().walk;
    let part = RwSignal::new(None::<f64>);
    let per_cent = move || part.get().map_or(50.0, |part| part * 100.0);
    let spoken = move || part.get().map(number::percent);
    let slide = move |event: leptos::ev::Event| {
        if let Ok(value) = event_target_value(&event).parse::<f64>() {
            part.set(Some(value / 100.0));
        }
    };
    let push = move |by: f64| {
        let to = (untrack(per_cent) + by).clamp(0.0, 100.0);
        part.set(Some(to / 100.0));
    };
    let enter = Callback::new(move |entered: Option<f64>| {
        let Some(entered) = entered else {
            part.set(None);
            return true;
        };
        let units = model.units.get_untracked();
        let zero = Quantity::Power(Power::ZERO);
        let Some(Quantity::Power(power)) = zero.entered_in(units, entered) else {
            return false;
        };
        let all = untrack(|| taken(passage));
        // All of it is typed as it's shown, which may be rounded up.
        let is_all = number::power(power, units) == number::power(all, units);
        let fits = all > Power::ZERO && power >= Power::ZERO && (power <= all || is_all);
        if fits {
            part.set(Some((power / all).min(1.0)));
        }
        fits
    });
    let value = Signal::derive(move || {
        let power = taken(passage) * part.get()?;
        Some(Quantity::Power(power).shown_in(model.units.get()).0)
    });
    let say = move |_| match part.get_untracked() {
        None => told.set(words::missing()),
        Some(part) => {
            told.set("");
            walk.say(step, part);
            browser::focus(RESULT);
        }
    };
    view! {
        <h4>{words::question()}</h4>
        <div class="control">
            <NumberEntry
                id="walk-power"
                label=words::passes_on()
                unit=Signal::derive(move || power_unit(model))
                value=value
                hint=""
                enter=enter
                allowed=words::power_allowed()
            />
            <div class="slide">
                <button
                    type="button"
                    data-testid="walk-less"
                    aria-label=named(labels::less(), words::passes_on())
                    on:click=move |_| push(-PRESS)
                >
                    "−"
                </button>
                <input
                    type="range"
                    data-testid="walk-slider"
                    aria-label=words::passes_on()
                    aria-valuetext=spoken
                    min="0"
                    max="100"
                    step="1"
                    prop:value=per_cent
                    on:input=slide
                />
                <button
                    type="button"
                    data-testid="walk-more"
                    aria-label=named(labels::more(), words::passes_on())
                    on:click=move |_| push(PRESS)
                >
                    "+"
                </button>
            </div>
        </div>
        <button type="button" class="commit" data-testid="walk-say" on:click=say>
            {words::guess()}
        </button>
    }
}

/// Guess and truth, the formulas with their figures, and what can be turned.
#[component]
fn Told(step: Step, passage: Memo<Option<Passage>>, part: f64) -> impl IntoView {
    let model = Model::of_page();
    let result = move || {
        let passage = passage.read();
        let passage = passage.as_ref()?;
        let guess = passage.takes.power * part;
        Some(words::result(passage, guess, model.units.get()))
    };
    let picture = move || {
        let passage = passage.read();
        let passage = passage.as_ref()?;
        let passes = passage.gives.power / passage.takes.power;
        Some(picture(passes, part, step.kind.heats_oil()))
    };
    let formulas = move || {
        let units = model.units.get();
        let at = {
            let all = model.comparison.read();
            all.as_ref()?.route(step.route)?.run()?.ledger.at
        };
        let passage = passage.read();
        let passage = passage.as_ref()?;
        let formulas = passage.stage.formulas(passage.takes, passage.gives, &at);
        Some(formulas.iter().map(|it| formula(it, units)).collect_view())
    };
    let influence = move || {
        let found = influences(&mut model.joined(step.route)?);
        let most = found.into_iter().find(|it| it.stage == Some(step.kind));
        Some(most.map_or_else(
            || words::certain().to_owned(),
            |most| words::influence(&most, model.units.get()),
        ))
    };
    view! {
        <h4 id=RESULT tabindex="-1" data-testid="walk-result">
            {result}
        </h4>
        {picture}
        <div class="formulas">{formulas}</div>
        <h4>{words::changes_most()}</h4>
        <p data-testid="walk-influence">{influence}</p>
        <p>{words::turn_it()}</p>
        <Turn step=step />
    }
}

/// The control that bears most on a stage, and the others of its route.
#[component]
fn Turn(step: Step) -> impl IntoView {
    let model = Model::of_page();
    let first = bears_on(step.route, step.kind);
    let others = Memo::new(move |_| {
        let (machine, implement) = (model.machine.get(), model.implement.get());
        let (kit, settings) = (model.kit(), model.settings.get());
        let all = [Control::of(step.route), Control::WORK, Control::SITE].concat();
        let turns = |control: &Control| {
            let range =
                machine
                    .as_ref()
                    .zip(implement.as_ref())
                    .and_then(|(machine, implement)| {
                        control.range(machine, implement, kit.as_ref(), &settings)
                    });
            *control != first && range.is_some()
        };
        all.into_iter().filter(turns).collect::<Vec<_>>()
    });
    view! {
        <ControlRow control=first />
        <details class="more" data-testid="walk-others">
            <summary>{words::turn_others()}</summary>
            <For each=move || others.get() key=|control| *control let:control>
                <ControlRow control=control />
            </For>
        </details>
    }
}

/// What can be turned that bears most on a stage: this project's judgement.
fn bears_on(route: RouteId, stage: StageKind) -> Control {
    let (flow, relief) = match route {
        RouteId::PumpPack => (Control::PackFlow, Control::PackRelief),
        _ => (Control::OwnFlow, Control::OwnRelief),
    };
    match stage {
        StageKind::Gear(_) => Control::EngineSpeed,
        StageKind::Hoses => Control::OilTemperature,
        StageKind::Pump | StageKind::Motor => relief,
        StageKind::Steering | StageKind::Divert | StageKind::Valve => flow,
    }
}

/// What is passed on and lost of all that is taken, and the guess. The words stand beside it.
fn picture(passes: f64, said: f64, in_oil: bool) -> impl IntoView {
    let across = |part: f64| format!("{:.2}%", part * 100.0);
    let lost = if in_oil { "lost-oil" } else { "lost-shafts" };
    let marks = [
        ("arrives", words::passed_on()),
        (lost, words::lost()),
        ("said", outcome::you_said()),
    ];
    view! {
        <svg class="beside-bar" aria-hidden="true" focusable="false">
            <rect class="arrives" width=across(passes) y="20%" height="60%" />
            <rect class=lost x=across(passes) width=across(1.0 - passes) y="20%" height="60%" />
            <line class="said" x1=across(said) x2=across(said) y1="0" y2="100%" />
        </svg>
        {key(&marks)}
    }
}
