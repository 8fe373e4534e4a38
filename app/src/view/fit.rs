//! Whether the open route can be hooked up, and what must be asked before any is bought.

use crate::model::Model;
use crate::number;
use crate::text::{brackets, fit, labels, list, remark, stop};
use farend_core::fit::{Item, Judgement};
use farend_core::survey::Survey;
use farend_core::units::UnitSystem;
use leptos::prelude::*;

/// The items of the open route by their gravity, and the questions of all routes.
#[component]
pub fn Fit() -> impl IntoView {
    let model = Model::unhurried();
    let items = move || {
        let survey = model.survey.read();
        let open = survey.as_ref()?.route(model.route.get())?;
        Some(by_gravity(&open.items, model.units.get()))
    };
    let other_kits = move || {
        let names = model.other_kits()?;
        (!names.is_empty()).then(|| fit::other_kits(&names))
    };
    let questions = move || {
        let survey = model.survey.read();
        Some(questions(survey.as_ref()?))
    };
    view! {
        <p class="of-route">{move || labels::route(model.route.get())}</p>
        <div data-testid="fit-items">{items}</div>
        <p data-testid="other-kits">{other_kits}</p>
        {questions}
    }
}

fn by_gravity(items: &[Item], units: UnitSystem) -> impl IntoView + use<> {
    let grave = [Judgement::Stop, Judgement::Question, Judgement::Advice];
    let of = |judgement: Judgement| {
        let items: Vec<_> = items
            .iter()
            .filter(|it| it.judgement == judgement)
            .collect();
        (!items.is_empty()).then(|| {
            view! {
                <ul class="fit" data-judgement=mark(judgement)>
                    {items.into_iter().map(|it| item(it, units)).collect_view()}
                </ul>
            }
        })
    };
    let passes: Vec<_> = items
        .iter()
        .filter(|it| it.judgement == Judgement::Pass)
        .map(|it| view! { <li><b>{stop(fit::name(&it.check))}</b> " " {fit::finding(&it.check, units)}</li> })
        .collect();
    view! {
        {grave.map(of).into_iter().collect_view()}
        {(!passes.is_empty())
            .then(|| {
                view! {
                    <details class="passes">
                        <summary>{remark(labels::fits(), &number::count(passes.len()))}</summary>
                        <ul>{passes}</ul>
                    </details>
                }
            })}
    }
}

fn item(item: &Item, units: UnitSystem) -> impl IntoView + use<> {
    view! {
        <li>
            <span class="judged" data-judgement=mark(item.judgement)>
                {fit::judgement(item.judgement)}
            </span>
            <span>
                <b>{stop(fit::name(&item.check))}</b> " " {fit::finding(&item.check, units)} " "
                {fit::remedy(item, units).map(|remedy| view! { <i>{remedy}</i> })}
            </span>
        </li>
    }
}

/// A judgement's name in the style sheet.
fn mark(judgement: Judgement) -> &'static str {
    match judgement {
        Judgement::Pass => "Fits",
        Judgement::Advice => "Mind",
        Judgement::Question => "Ask",
        Judgement::Stop => "Stop",
    }
}

/// Each question once, with the routes that ask it.
fn questions(survey: &Survey) -> impl IntoView + use<> {
    let mut asked: Vec<(&'static str, Vec<&'static str>)> = Vec::new();
    for of_route in &survey.routes {
        let name = labels::route_small(of_route.route);
        for item in &of_route.items {
            if item.judgement == Judgement::Question {
                let question = fit::question(&item.check);
                match asked.iter_mut().find(|(other, _)| *other == question) {
                    Some((_, routes)) => routes.push(name),
                    None => asked.push((question, vec![name])),
                }
            }
        }
    }
    (!asked.is_empty()).then(|| {
        let line = |(question, routes): (&'static str, Vec<&'static str>)| {
            view! { <li>{question} " " <span class="part">{brackets(&list(&routes))}</span></li> }
        };
        view! {
            <h3>{labels::questions()}</h3>
            <ul class="list" data-testid="questions">{asked.into_iter().map(line).collect_view()}</ul>
        }
    })
}
