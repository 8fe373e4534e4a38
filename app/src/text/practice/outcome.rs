//! What came of an answer, in plain and kind words.

use super::case;
use crate::number;
use crate::text::say::practice::outcome as say;
use crate::text::{capital, claims, clauses, fit, in_turn, labels, list, remark, stop};
use farend_core::claims::{Answer as Claim, Check};
use farend_core::fit::{Item, Judgement, gravest};
use farend_core::practice::{Answer, Case, Confidence, Guess, Judged, Misconception, Truth};
use farend_core::quantity::Power;
use farend_core::route::RouteId;
use farend_core::spread::Spread;
use farend_core::units::{Quantity, UnitSystem};

pub use crate::text::say::practice::outcome::*;

/// How near is near: this project's judgement.
const CLOSE: f64 = 0.6;

/// The first word on it.
pub fn headline(judged: &Judged, confidence: Confidence) -> &'static str {
    match (judged.right, confidence) {
        (true, Confidence::Guessing) => say::right_by_guessing(),
        (true, _) => say::right(),
        (false, _) if judged.near >= CLOSE => say::close(),
        (false, Confidence::Sure) => say::wrong_though_sure(),
        (false, _) => say::wrong(),
    }
}

/// What was said.
pub fn said(case: &Case, guess: &Guess, units: UnitSystem) -> String {
    match guess {
        Guess::Order { order, cant } => capital(&in_turn(&order_of(order, cant))),
        Guess::Power(power) => number::power(*power, units),
        Guess::Choice(place) => {
            let choices = case::choices(case, units);
            choices.get(*place).cloned().unwrap_or_default()
        }
    }
}

/// The routes in their order and those that are set apart, as clauses.
fn order_of(order: &[RouteId], cant: &[RouteId]) -> Vec<String> {
    let names = |routes: &[RouteId]| -> Vec<_> {
        let names = routes.iter().map(|route| labels::route_small(*route));
        names.map(str::to_owned).collect()
    };
    let then = |before: String, next: String| {
        let then = say::Then {
            before: &before,
            next: &next,
        };
        then.said()
    };
    let cant = (!cant.is_empty()).then(|| say::cant(&list(&names(cant))));
    let order = names(order).into_iter().reduce(then);
    order.into_iter().chain(cant).collect()
}

/// A power with its range.
pub fn spread(power: Spread<Power>, units: UnitSystem) -> String {
    let (low, high) = (Quantity::Power(power.low), Quantity::Power(power.high));
    remark(
        &number::power(power.likely, units),
        &number::range(low, high, units),
    )
}

/// The truth in short.
pub fn truth(answer: &Answer, units: UnitSystem) -> String {
    match &answer.truth {
        Truth::Route { order, cant } => clauses(&order_of(order, cant)),
        Truth::Amount { delivered, .. } => say::power_arrives(&spread(*delivered, units)),
        Truth::Limit(limit) => format!(
            "{} {}",
            stop(&capital(labels::limit(*limit))),
            labels::limit_reason(*limit)
        ),
        Truth::Sheet { flaw, .. } => match flaw {
            None => say::sheet_can_be().to_owned(),
            Some(flaw) => stop(case::flaw(Some(*flaw))),
        },
        Truth::Fit { fits, items } => {
            let first = gravest_of(items).map(|item| fit::finding(&item.check, units));
            let first = first.unwrap_or_default();
            format!("{} {first}", stop(case::fits(*fits)))
                .trim_end()
                .to_owned()
        }
        Truth::Wanted(tried) => {
            let does = tried.iter().find(|it| it.reaches);
            does.map_or_else(String::new, |it| {
                let brings = say::ChangeBrings {
                    change: &case::change(it.change, units),
                    power: &number::power(it.run.delivered.likely, units),
                    meaning: labels::at_work(it.run.verdict.likely),
                };
                brings.said()
            })
        }
    }
}

/// The first of the gravest items, unless all pass.
fn gravest_of(items: &[Item]) -> Option<&Item> {
    let gravest = gravest(items);
    let mut of_it = items.iter().filter(|item| item.judgement == gravest);
    of_it.next().filter(|_| gravest > Judgement::Advice)
}

/// What is wrong with a sheet, with its arithmetic.
pub fn flaw(answer: &Answer, check: Check, units: UnitSystem) -> Option<String> {
    let Truth::Sheet { weighed, .. } = &answer.truth else {
        return None;
    };
    let (_, claim) = weighed.answers.iter().find(|(it, _)| *it == check)?;
    match claim {
        Claim::Found(weight, finding) => Some(claims::finding(*weight, finding, units)),
        Claim::Lacks(_) | Claim::NotForThisMachine => None,
    }
}

/// A wrong idea by its name, and what to think instead.
pub fn misconception(misconception: Misconception) -> (&'static str, &'static str) {
    match misconception {
        Misconception::EngineAsHydraulic => (
            say::engine_as_hydraulic(),
            say::engine_as_hydraulic_instead(),
        ),
        Misconception::AddsFlows => (say::adds_flows(), say::adds_flows_instead()),
        Misconception::ForgetsReturn => (say::forgets_return(), say::forgets_return_instead()),
        Misconception::PressureForSpeed => {
            (say::pressure_for_speed(), say::pressure_for_speed_instead())
        }
        Misconception::IgnoresSpeed => (say::ignores_speed(), say::ignores_speed_instead()),
    }
}
