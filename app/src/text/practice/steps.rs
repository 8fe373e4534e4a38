//! An answer step by step, a line each.

use super::{case, outcome};
use crate::number;
use crate::text::{claims, fit, labels, list, reasons, sentences};
use farend_core::chain::Passage;
use farend_core::claims::{Answer as Claim, Weight};
use farend_core::compare::{Outcome, RouteResult, Run};
use farend_core::fit::Judgement;
use farend_core::practice::{Answer, Truth};
use farend_core::stage::StagePhysics;
use farend_core::units::{Quantity, UnitSystem};

/// The steps to an answer; `run` is that of the route which the case asks about.
pub fn steps(answer: &Answer, run: Option<&Run>, units: UnitSystem) -> Vec<String> {
    match &answer.truth {
        Truth::Route { order, cant } => {
            let results = order.iter().chain(cant);
            let results = results.filter_map(|route| answer.comparison.route(*route));
            results.map(|result| route(result, units)).collect()
        }
        Truth::Amount { .. } | Truth::Limit(_) => {
            let passages = run.into_iter().flat_map(|run| &run.ledger.passages);
            let mut steps: Vec<_> = passages.map(|it| passage(it, units)).collect();
            steps.extend(run.map(|run| sentences::at_the_rotor(run, units)));
            steps
        }
        Truth::Sheet { weighed, .. } => {
            let found = weighed
                .answers
                .iter()
                .filter_map(|(check, claim)| match claim {
                    // What holds for another place or speed is no flaw, and a sheet full of it no help.
                    Claim::Found(Weight::Restated, _) => None,
                    Claim::Found(weight, finding) => Some(format!(
                        "{}: {}. {}",
                        claims::check(*check),
                        claims::weight(*weight).to_lowercase(),
                        claims::finding(*weight, finding, units)
                    )),
                    Claim::Lacks(_) | Claim::NotForThisMachine => None,
                });
            found.collect()
        }
        Truth::Fit { items, .. } => {
            let mut told: Vec<_> = items
                .iter()
                .filter(|item| item.judgement > Judgement::Pass)
                .collect();
            told.sort_by_key(|item| core::cmp::Reverse(item.judgement));
            let lines = told.into_iter().map(|item| {
                format!(
                    "{}: {}. {}",
                    fit::judgement(item.judgement),
                    fit::name(&item.check),
                    fit::finding(&item.check, units)
                )
            });
            let passes = items.iter().filter(|it| it.judgement == Judgement::Pass);
            let passes: Vec<_> = passes
                .map(|it| fit::name(&it.check).to_lowercase())
                .collect();
            let passes = (!passes.is_empty()).then(|| format!("These fit: {}.", list(&passes)));
            lines.chain(passes).collect()
        }
        Truth::Wanted(tried) => {
            let lines = tried.iter().map(|it| {
                format!(
                    "{}: {} arrive at {}, {}.",
                    case::change(it.change, units),
                    outcome::spread(it.run.delivered, units),
                    number::shown(Quantity::Speed(it.run.rotor), units),
                    labels::at_work(it.run.verdict.likely)
                )
            });
            lines.collect()
        }
    }
}

/// How a route comes out, in a line.
fn route(result: &RouteResult, units: UnitSystem) -> String {
    let name = labels::route(result.route);
    match &result.outcome {
        Outcome::Runs(run) => format!(
            "{name}: {} arrive. {}",
            outcome::spread(run.delivered, units),
            sentences::losses(run, units).unwrap_or_default()
        ),
        Outcome::NoFit(why) => {
            let why: Vec<_> = why.iter().map(|it| reasons::no_fit(*it, units)).collect();
            format!("{name} can't be hooked up: {}.", why.join("; "))
        }
    }
}

/// What a stage takes, loses and passes on, in a line.
pub fn passage(passage: &Passage, units: UnitSystem) -> String {
    let power = |power| number::power(power, units);
    format!(
        "{}: takes {}, loses {}, passes on {} ({}, {}).",
        labels::stage(passage.stage.kind()),
        power(passage.takes.power),
        power(passage.loss),
        power(passage.gives.power),
        number::shown(passage.gives.rate.quantity(), units),
        number::shown(passage.gives.effort(), units)
    )
}
