//! An answer step by step, a line each.

use super::{case, outcome};
use crate::model::practice::desk::Worked;
use crate::number;
use crate::text::say::practice::steps as say;
use crate::text::{claims, fit, labels, list, sentences, small};
use farend_core::chain::Passage;
use farend_core::claims::{Answer as Claim, Weight};
use farend_core::compare::Outcome;
use farend_core::fit::Judgement;
use farend_core::practice::Truth;
use farend_core::quantity::Power;
use farend_core::route::RouteId;
use farend_core::stage::StagePhysics;
use farend_core::units::{Quantity, UnitSystem};

/// The steps to an answer.
pub fn steps(worked: &Worked, units: UnitSystem) -> Vec<String> {
    match &worked.answer.truth {
        Truth::Route { order, cant } => {
            let can = order.iter().filter_map(|of| {
                let run = worked.answer.comparison.route(*of)?.run()?;
                let brings = say::RouteBrings {
                    route: labels::route(*of),
                    power: &outcome::spread(run.delivered, units),
                    losses: &sentences::losses(run, units).unwrap_or_default(),
                };
                Some(brings.said())
            });
            let cant = cant.iter().map(|of| {
                let cant = say::RouteCant {
                    route: labels::route(*of),
                    why: &why_not(worked, *of, units),
                };
                cant.said()
            });
            can.chain(cant).collect()
        }
        Truth::Amount { .. } | Truth::Limit(_) => {
            let run = worked.run.as_ref();
            let passages = run.into_iter().flat_map(|run| &run.ledger.passages);
            // What loses nothing is no step.
            let passages = passages.filter(|passage| passage.loss > Power::ZERO);
            let mut steps: Vec<_> = passages.map(|it| passage(it, units)).collect();
            steps.extend(run.map(|run| say::at_the_rotor(&sentences::at_the_rotor(run, units))));
            steps
        }
        Truth::Sheet { weighed, .. } => {
            let found = weighed
                .answers
                .iter()
                .filter_map(|(check, claim)| match claim {
                    Claim::Found(weight, finding) => {
                        let finding = claims::finding(*weight, finding, units);
                        weighed_up(claims::check(*check), *weight, &finding)
                    }
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
                let looked_at = say::LookedAt {
                    judgement: fit::judgement(item.judgement),
                    name: fit::name(&item.check),
                    finding: &fit::finding(&item.check, units),
                };
                looked_at.said()
            });
            let passes = items.iter().filter(|it| it.judgement == Judgement::Pass);
            let mut passes: Vec<_> = passes.map(|it| small(fit::name(&it.check))).collect();
            passes.dedup();
            let passes = (!passes.is_empty()).then(|| say::these_fit(&list(&passes)));
            lines.chain(passes).collect()
        }
        Truth::Wanted(tried) => {
            let lines = tried.iter().map(|it| {
                let brings = say::ChangeBrings {
                    change: &case::change(it.change, units),
                    power: &outcome::spread(it.run.delivered, units),
                    speed: &number::shown(Quantity::Speed(it.run.rotor), units),
                    meaning: labels::at_work(it.run.verdict.likely),
                };
                brings.said()
            });
            lines.collect()
        }
    }
}

/// What was held against what, and how it stands with it.
fn weighed_up(check: &str, weight: Weight, finding: &str) -> Option<String> {
    Some(match weight {
        // What holds for another place or speed is no flaw, and a sheet full of it no help.
        Weight::Restated => return None,
        Weight::Holds => say::SheetHolds { check, finding }.said(),
        Weight::Advice => say::SheetMind { check, finding }.said(),
        Weight::Wrong => say::SheetWrong { check, finding }.said(),
    })
}

/// Why a route can't be hooked up.
pub fn why_not(worked: &Worked, route: RouteId, units: UnitSystem) -> String {
    let result = worked.answer.comparison.route(route);
    if let Some(Outcome::NoFit(why)) = result.map(|result| &result.outcome) {
        return sentences::no_fit(why, units);
    }
    let mut stops = worked.stops.iter();
    let items = stops.find(|(of, _)| *of == route).map(|(_, items)| items);
    let found = items.into_iter().flatten();
    let found: Vec<_> = found.map(|it| fit::finding(&it.check, units)).collect();
    found.join(" ")
}

/// What a stage takes, loses and passes on, in a line.
pub fn passage(passage: &Passage, units: UnitSystem) -> String {
    let power = |power| number::power(power, units);
    say::Stage {
        stage: labels::stage(passage.stage.kind()),
        takes: &power(passage.takes.power),
        loses: &power(passage.loss),
        gives: &power(passage.gives.power),
        rate: &number::shown(passage.gives.rate.quantity(), units),
        effort: &number::shown(passage.gives.effort(), units),
    }
    .said()
}
