//! What a case asks, in words.

use crate::number;
use crate::text::say::practice::case as say;
use crate::text::{capital, claims, labels, sentences};
use farend_core::claims::Check;
use farend_core::implement::Implement;
use farend_core::kit::Kit;
use farend_core::machine::Machine;
use farend_core::practice::{Case, Change, Fits, Question};
use farend_core::route::RouteId;
use farend_core::units::{Quantity, UnitSystem};

/// What a case is about, found in the yard.
#[derive(Clone, Debug, PartialEq)]
pub struct Scene {
    pub machine: Machine,
    pub implement: Implement,
    pub kit: Option<Kit>,
}

/// The route and the kit that a case asks about, where it asks about one.
pub fn route_and_kit(question: &Question) -> Option<(RouteId, &str)> {
    match question {
        Question::Amount { route, kit }
        | Question::Limit { route, kit, .. }
        | Question::Fit { route, kit, .. }
        | Question::Wanted { route, kit, .. } => Some((*route, kit)),
        Question::Route { .. } | Question::Sheet { .. } => None,
    }
}

/// Machine and implement, as people say it.
pub fn pair(scene: &Scene) -> String {
    say::Pair {
        machine: sentences::short(&scene.machine.name),
        implement: sentences::short(&scene.implement.name),
    }
    .said()
}

/// The question.
pub fn question(case: &Case) -> String {
    match &case.question {
        Question::Route { .. } => say::question_route().to_owned(),
        Question::Amount { route, .. } => say::question_amount(labels::the_route(*route)),
        Question::Limit { route, .. } => say::question_limit(labels::the_route(*route)),
        Question::Sheet { .. } => say::question_sheet().to_owned(),
        Question::Fit { route, .. } => say::question_fit(labels::the_route(*route)),
        Question::Wanted { route, wish, .. } => say::QuestionWanted {
            route: labels::the_route(*route),
            standing: labels::standing(wish.standing()),
            meaning: labels::at_work(wish.standing()),
        }
        .said(),
    }
}

/// What a group is asked where it can't put things in order by a show of hands.
pub fn question_to_group(case: &Case) -> String {
    match &case.question {
        Question::Route { .. } => say::question_route_group().to_owned(),
        _ => question(case),
    }
}

/// What there is to choose from; nothing where a number is asked for.
pub fn choices(case: &Case, units: UnitSystem) -> Vec<String> {
    match &case.question {
        Question::Route { routes } => routes
            .iter()
            .map(|route| labels::route(*route).to_owned())
            .collect(),
        Question::Amount { .. } => Vec::new(),
        Question::Limit { choices, .. } => choices
            .iter()
            .map(|limit| capital(labels::limit(*limit)))
            .collect(),
        Question::Sheet { choices, .. } => choices
            .iter()
            .map(|flaw| self::flaw(*flaw).to_owned())
            .collect(),
        Question::Fit { choices, .. } => choices.iter().map(|it| fits(*it).to_owned()).collect(),
        Question::Wanted { choices, .. } => choices.iter().map(|it| change(*it, units)).collect(),
    }
}

/// What is wrong with a sheet.
pub fn flaw(flaw: Option<Check>) -> &'static str {
    match flaw {
        None => say::flaw_none(),
        Some(Check::HydraulicPower) => say::flaw_hydraulic_power(),
        Some(Check::EnginePower) => say::flaw_engine_power(),
        Some(Check::Steering) => say::flaw_steering(),
        Some(Check::PtoPower) => say::flaw_pto_power(),
        Some(other) => claims::check(other),
    }
}

/// Whether it can be hooked up.
pub fn fits(fits: Fits) -> &'static str {
    match fits {
        Fits::Fits => say::fits(),
        Fits::AskFirst => say::fits_ask_first(),
        Fits::Cant => say::fits_cant(),
    }
}

/// One thing changed.
pub fn change(change: Change, units: UnitSystem) -> String {
    let shown = |quantity| number::shown(quantity, units);
    match change {
        Change::Flow(flow) => say::change_flow(&shown(Quantity::Flow(flow))),
        Change::Relief(pressure) => say::change_relief(&shown(Quantity::Pressure(pressure))),
        Change::EngineSpeed(speed) => say::change_engine_speed(&shown(Quantity::Speed(speed))),
        Change::Hoses(bore) => say::change_hoses(&shown(Quantity::Bore(bore))),
    }
}
