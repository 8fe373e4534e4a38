//! What a sheet claims, held against itself and the machine; the honest figures by one press.

use super::entry::NumberEntry;
use super::radio::radio;
use crate::model::Model;
use crate::number;
use crate::text::{brackets, claims, stop};
use farend_core::claims::{
    Answer, Check, Rating, Sheet, SheetFigure, Taken, Weighed, Weight, weigh,
};
use farend_core::quantity::{AngularSpeed, Flow, Power, Pressure};
use farend_core::settings::Settings;
use farend_core::units::{Quantity, UnitSystem};
use leptos::prelude::*;

/// A sheet's number as a quantity, and put back into it.
struct Figure {
    name: SheetFigure,
    of: fn(&Sheet) -> Option<Quantity>,
    /// Any value of its kind.
    kind: Quantity,
    set: fn(&mut Sheet, Option<Quantity>),
}

/// A figure whose quantity is of one kind.
macro_rules! figure {
    ($name:ident, $kind:ident, $zero:expr, $field:ident) => {
        Figure {
            name: SheetFigure::$name,
            of: |sheet| sheet.$field.map(Quantity::$kind),
            kind: Quantity::$kind($zero),
            set: |sheet, to| {
                sheet.$field = match to {
                    Some(Quantity::$kind(it)) => Some(it),
                    _ => None,
                };
            },
        }
    };
}

const FIGURES: [Figure; 6] = [
    figure!(Flow, Flow, Flow::ZERO, flow),
    figure!(Pressure, Pressure, Pressure::ZERO, pressure),
    figure!(Hydraulic, Power, Power::ZERO, hydraulic),
    figure!(EngineSpeed, Speed, AngularSpeed::ZERO, engine_speed),
    figure!(Engine, Power, Power::ZERO, engine),
    figure!(Pto, Power, Power::ZERO, pto),
];

/// The sheet and what it comes to.
#[component]
pub fn Claims() -> impl IntoView {
    let model = Model::unhurried();
    let asked = RwSignal::new(false);
    let weighed = Memo::new(move |_| {
        let machine = model.machine.read();
        let sheet = model.state.read().sheet;
        weigh(&sheet, machine.as_ref()?, &model.settings.get()).ok()
    });
    // What became of it. It may have been changed since.
    let outcome = move || {
        if !asked.get() {
            return None;
        }
        let settings = model.settings.get();
        let honest = weighed.read().as_ref()?.honest;
        let applied = honest.applied(settings);
        let says_nothing = honest.applied(Settings::default()) == Settings::default();
        if says_nothing || !model.fits(&applied) {
            Some(claims::not_taken_over())
        } else {
            (applied == settings).then_some(claims::taken_over())
        }
    };
    let answers = move || {
        let empty = model.state.read().sheet == Sheet::default();
        if empty {
            return view! { <p>{claims::nothing()}</p> }.into_any();
        }
        let weighed = weighed.read();
        let units = model.units.get();
        weighed
            .as_ref()
            .map(|weighed| answers(weighed, units))
            .into_any()
    };
    let take_over = move |_| {
        let honest = weighed.read().as_ref().map(|it| it.honest);
        if let Some(honest) = honest {
            let settings = honest.applied(model.state.read_untracked().settings);
            asked.set(true);
            model.take_over(settings);
        }
    };
    let cleared = Trigger::new();
    let fields = move || {
        // What was refused goes too: the fields begin anew.
        cleared.track();
        FIGURES
            .iter()
            .map(|figure| view! { <Entry figure=figure /> })
            .collect_view()
    };
    let clear = move |_| {
        asked.set(false);
        cleared.notify();
        model.state.update(|state| state.sheet = Sheet::default());
    };
    view! {
        <p>{claims::lead()}</p>
        <div class="wishes">
            {fields}
        </div>
        <div class="wishes">
            {either(
                "taken",
                claims::taken_heading(),
                Taken::ALL,
                claims::taken,
                Taken::word,
                |sheet| &mut sheet.taken,
            )}
            {either(
                "rating",
                claims::rating_heading(),
                Rating::ALL,
                claims::rating,
                Rating::word,
                |sheet| &mut sheet.rating,
            )}
        </div>
        <div data-testid="claims-answers">{answers}</div>
        <div class="tools">
            <button type="button" data-testid="take-over" on:click=take_over>
                {claims::take_over()}
            </button>
            <button type="button" data-testid="clear-sheet" on:click=clear>
                {claims::clear()}
            </button>
        </div>
        <p role="status" data-testid="taken-over">
            {outcome}
        </p>
    }
}

#[component]
fn Entry(figure: &'static Figure) -> impl IntoView {
    let model = Model::unhurried();
    let enter = Callback::new(move |entered: Option<f64>| {
        let units = model.units.get_untracked();
        let quantity = entered.map(|number| figure.kind.entered_in(units, number));
        // What has no unit to be read in can't be entered.
        if quantity == Some(None) {
            return false;
        }
        let mut sheet = model.state.read_untracked().sheet;
        (figure.set)(&mut sheet, quantity.flatten());
        let fits = model.machine.with_untracked(|machine| {
            machine
                .as_ref()
                .is_some_and(|machine| sheet.check(machine).is_ok())
        });
        if fits {
            model.state.update(|state| state.sheet = sheet);
        }
        fits
    });
    let value = Signal::derive(move || {
        let quantity = (figure.of)(&model.state.read().sheet)?;
        Some(quantity.shown_in(model.units.get()).0)
    });
    let unit = Signal::derive(move || number::unit(figure.kind, model.units.get()).to_owned());
    view! {
        <NumberEntry
            id=format!("sheet-{}", figure.name.word())
            label=claims::figure(figure.name)
            unit=unit
            value=value
            hint=""
            enter=enter
            allowed=claims::allowed()
        />
    }
}

/// One of two, or not said.
fn either<T: Copy + PartialEq + Send + Sync + 'static>(
    name: &'static str,
    legend: &'static str,
    all: &'static [T],
    text: fn(T) -> &'static str,
    word: fn(T) -> &'static str,
    part: fn(&mut Sheet) -> &mut Option<T>,
) -> impl IntoView {
    let model = Model::unhurried();
    let choice = move |choice: Option<T>| {
        let (id, label) = match choice {
            Some(it) => (word(it), text(it)),
            None => ("not_said", claims::not_said()),
        };
        let chosen = move || *part(&mut { model.state.read().sheet }) == choice;
        let choose = move || model.state.update(|state| *part(&mut state.sheet) = choice);
        radio(name, id, label, chosen, choose)
    };
    let choices = core::iter::once(None).chain(all.iter().copied().map(Some));
    view! {
        <fieldset class="switch" data-testid=format!("sheet-{name}")>
            <legend>{legend}</legend>
            {choices.map(choice).collect_view()}
        </fieldset>
    }
}

/// The gravest first; what lacks figures last.
fn answers(weighed: &Weighed, units: UnitSystem) -> impl IntoView + use<> {
    let mut found: Vec<_> = weighed
        .answers
        .iter()
        .filter_map(|(check, answer)| match answer {
            Answer::Found(weight, finding) => Some((*check, *weight, *finding)),
            Answer::Lacks(_) | Answer::NotForThisMachine => None,
        })
        .collect();
    found.sort_by_key(|(_, weight, _)| core::cmp::Reverse(*weight));
    let lines = found.into_iter().map(|(check, weight, finding)| {
        view! {
            <li data-testid=format!("claim-{}", check.word())>
                <span class="judged" data-judgement=mark(weight)>
                    {claims::weight(weight)}
                </span>
                <span>
                    <b>{stop(claims::check(check))}</b>
                    " "
                    {claims::finding(weight, &finding, units)}
                </span>
            </li>
        }
    });
    let lacking: Vec<_> = weighed
        .answers
        .iter()
        .filter_map(|(check, answer)| match answer {
            Answer::Lacks(figures) => Some(lack(*check, figures)),
            Answer::Found(..) | Answer::NotForThisMachine => None,
        })
        .collect();
    view! {
        <ul class="fit">{lines.collect_view()}</ul>
        {(!lacking.is_empty())
            .then(|| {
                view! {
                    <h3>{claims::ask_heading()}</h3>
                    <ul class="list">{lacking}</ul>
                }
            })}
    }
}

/// A weight's name in the style sheet, where it has looks of its own.
fn mark(weight: Weight) -> Option<&'static str> {
    (weight == Weight::Advice).then_some("Mind")
}

fn lack(check: Check, figures: &[SheetFigure]) -> impl IntoView + use<> {
    view! {
        <li>
            {claims::lacks(figures)} " "
            <span class="part">{brackets(claims::check_small(check))}</span>
        </li>
    }
}
