//! The truth of a case stage by stage, with what somebody said beside it.

use crate::model::practice::desk::Worked;
use crate::number;
use crate::text::practice::case::{self as case_words, route_and_kit};
use crate::text::practice::{self as text, outcome as words, steps};
use crate::text::{labels, named, remark, sentences};
use crate::view::ledger::stage_table;
use farend_core::practice::{Guess, Tried, Truth};
use farend_core::quantity::Power;
use farend_core::route::RouteId;
use farend_core::spread::Spread;
use farend_core::units::{Quantity, UnitSystem};
use leptos::prelude::*;

/// All that leads to the answer.
pub fn truth(worked: &Worked, guess: Option<&Guess>, units: UnitSystem) -> impl IntoView + use<> {
    match &worked.answer.truth {
        Truth::Route { order, cant } => routes(worked, order, cant, guess, units).into_any(),
        Truth::Amount { delivered, .. } => {
            let said = match guess {
                Some(Guess::Power(power)) => Some(*power),
                _ => None,
            };
            let engine = worked.answer.comparison.budget.net.likely;
            let marks = [
                ("arrives", labels::arrives()),
                ("not-taken", words::engine_power()),
                ("is-range", labels::spread()),
                ("said", words::you_said()),
            ];
            view! { {beside(*delivered, said, engine)} {key(&marks)} {stages(worked, units)} }
                .into_any()
        }
        Truth::Limit(_) => stages(worked, units).into_any(),
        Truth::Sheet { flaw, .. } => {
            let flaw = flaw.and_then(|flaw| words::flaw(&worked.answer, flaw, units));
            view! {
                {flaw.map(|flaw| view! { <p><b>{flaw}</b></p> })}
                {one_by_one(worked, units)}
            }
            .into_any()
        }
        Truth::Fit { .. } => one_by_one(worked, units).into_any(),
        Truth::Wanted(tried) => changes(tried, guess, units).into_any(),
    }
}

/// The ledger of the route that is asked about.
fn stages(worked: &Worked, units: UnitSystem) -> impl IntoView + use<> {
    let (route, _) = route_and_kit(&worked.case.question)?;
    let run = worked.run.as_ref()?;
    Some(view! {
        <h4>{words::stage_by_stage()}</h4>
        {stage_table(route, run, &worked.answer.comparison.budget, units)}
    })
}

fn one_by_one(worked: &Worked, units: UnitSystem) -> impl IntoView + use<> {
    let lines = steps::steps(worked, units);
    view! {
        <h4>{words::at_once()}</h4>
        <ul class="list">
            {lines.into_iter().map(|line| view! { <li>{line}</li> }).collect_view()}
        </ul>
    }
}

/// The routes in their true order, each with the place that was said.
fn routes(
    worked: &Worked,
    order: &[RouteId],
    cant: &[RouteId],
    guess: Option<&Guess>,
    units: UnitSystem,
) -> impl IntoView + use<> {
    let said = |route: RouteId| match guess {
        Some(Guess::Order { order, cant }) => {
            let place = order.iter().position(|it| *it == route);
            let place = place.map(|place| (place + 1).to_string());
            place.or_else(|| {
                cant.contains(&route)
                    .then(|| labels::no_fit_small().to_owned())
            })
        }
        _ => None,
    };
    let rows = order.iter().chain(cant).enumerate().map(|(place, route)| {
        let is_cant = cant.contains(route);
        let run = worked
            .answer
            .comparison
            .route(*route)
            .and_then(|it| it.run());
        let (arrives, why) = match run.filter(|_| !is_cant) {
            Some(run) => (
                words::spread(run.delivered, units),
                sentences::losses(run, units).unwrap_or_default(),
            ),
            None => (
                labels::no_fit().to_owned(),
                steps::why_not(worked, *route, units),
            ),
        };
        let is = match is_cant {
            true => labels::no_fit_small().to_owned(),
            false => (place + 1).to_string(),
        };
        view! {
            <tr>
                <th scope="row">{named(&is, labels::route(*route))}</th>
                <td data-label=words::your_place()>{said(*route)}</td>
                <td data-label=words::arrives()>{arrives}</td>
                <td data-label=words::reason()>{why}</td>
            </tr>
        }
    });
    view! {
        <div class="scroll" tabindex="0" role="region" aria-label=words::truth_heading()>
            <table class="stack" data-testid="truth-routes">
                <thead>
                    <tr>
                        <th scope="col">{labels::route_heading()}</th>
                        <th scope="col">{words::your_place()}</th>
                        <th scope="col">{words::arrives()}</th>
                        <th scope="col">{words::reason()}</th>
                    </tr>
                </thead>
                <tbody>{rows.collect_view()}</tbody>
            </table>
        </div>
    }
}

/// What comes of each change.
fn changes(tried: &[Tried], guess: Option<&Guess>, units: UnitSystem) -> impl IntoView + use<> {
    let said = match guess {
        Some(Guess::Choice(place)) => Some(*place),
        _ => None,
    };
    let rows = tried.iter().enumerate().map(|(place, it)| {
        let change = case_words::change(it.change, units);
        let change = match said == Some(place) {
            true => remark(&change, words::yours()),
            false => change,
        };
        let does = if it.reaches { text::yes() } else { text::no() };
        view! {
            <tr>
                <th scope="row">{change}</th>
                <td data-label=words::arrives()>{words::spread(it.run.delivered, units)}</td>
                <td data-label=labels::rotor()>
                    {number::shown(Quantity::Speed(it.run.rotor), units)}
                </td>
                <td data-label=labels::standing_heading()>{labels::standing(it.run.verdict.likely)}</td>
                <td data-label=words::reaches()>{does}</td>
            </tr>
        }
    });
    view! {
        <div class="scroll" tabindex="0" role="region" aria-label=words::truth_heading()>
            <table class="stack" data-testid="truth-changes">
                <thead>
                    <tr>
                        <th scope="col">{words::change()}</th>
                        <th scope="col">{words::arrives()}</th>
                        <th scope="col">{labels::rotor()}</th>
                        <th scope="col">{labels::standing_heading()}</th>
                        <th scope="col">{words::reaches()}</th>
                    </tr>
                </thead>
                <tbody>{rows.collect_view()}</tbody>
            </table>
        </div>
    }
}

/// A power's range within the engine's, and what was said. The words stand beside it.
fn beside(power: Spread<Power>, said: Option<Power>, engine: Power) -> impl IntoView {
    let whole = said.map_or(engine, |said| said.max(engine));
    let across = move |power: Power| format!("{:.2}%", power / whole * 100.0);
    let said = said.map(|said| {
        view! { <line class="said" x1=across(said) x2=across(said) y1="0" y2="100%" /> }
    });
    view! {
        <svg class="beside-bar" aria-hidden="true" focusable="false">
            <rect class="not-taken" width=across(engine) y="25%" height="50%" />
            <rect class="arrives" width=across(power.likely) y="25%" height="50%" />
            <rect
                class="is-range"
                x=across(power.low)
                width=across(power.high - power.low)
                y="15%"
                height="70%"
            />
            {said}
        </svg>
    }
}

/// What the marks of a picture stand for.
pub fn key(marks: &[(&'static str, &'static str)]) -> impl IntoView + use<> {
    let entry = |(class, text): &(&'static str, &'static str)| {
        let mark = match *class {
            "said" => view! { <line class="said" x1="50%" x2="50%" y1="0" y2="100%" /> }.into_any(),
            class => view! { <rect class=class width="100%" height="100%" /> }.into_any(),
        };
        view! {
            <li>
                <svg class="swatch" aria-hidden="true" focusable="false">
                    {mark}
                </svg>
                <span>{*text}</span>
            </li>
        }
    };
    view! { <ul class="key">{marks.iter().map(entry).collect_view()}</ul> }
}
