//! What a case asks, in words.

use crate::number;
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
    format!(
        "{} with {}",
        sentences::short(&scene.machine.name),
        sentences::short(&scene.implement.name)
    )
}

/// The question.
pub fn question(case: &Case) -> String {
    match &case.question {
        Question::Route { .. } => "Which route brings most power to the rotor? Put them in order, \
            and set apart what can't be hooked up."
            .to_owned(),
        Question::Amount { route, .. } => format!(
            "How much power arrives at the rotor by {}?",
            labels::the_route(*route)
        ),
        Question::Limit { route, .. } => {
            format!("What holds {} where it is?", labels::the_route(*route))
        }
        Question::Sheet { .. } => "Can this sheet be right, and if not, what is wrong?".to_owned(),
        Question::Fit { route, .. } => {
            format!("Can it be hooked up by {}?", labels::the_route(*route))
        }
        Question::Wanted { route, wish, .. } => format!(
            "Which of these alone brings {} to {} ({})?",
            labels::the_route(*route),
            labels::standing(wish.standing()),
            labels::at_work(wish.standing())
        ),
    }
}

/// What a group is asked where it can't put things in order by a show of hands.
pub fn question_to_group(case: &Case) -> String {
    match &case.question {
        Question::Route { .. } => "Which route brings most power to the rotor?".to_owned(),
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
        None => "Nothing: it can be so",
        Some(Check::HydraulicPower) => "Hydraulic power isn't its flow times its pressure",
        Some(Check::EnginePower) => "The engine can't turn a pump for that",
        Some(Check::Steering) => "Steering's flow is counted in",
        Some(Check::PtoPower) => "The PTO can't give that of such an engine",
        Some(other) => claims::check(other),
    }
}

/// Whether it can be hooked up.
pub fn fits(fits: Fits) -> &'static str {
    match fits {
        Fits::Fits => "It can",
        Fits::AskFirst => "Something must be asked first",
        Fits::Cant => "It can't",
    }
}

/// One thing changed.
pub fn change(change: Change, units: UnitSystem) -> String {
    let shown = |quantity| number::shown(quantity, units);
    match change {
        Change::Flow(flow) => format!("Flow {}", shown(Quantity::Flow(flow))),
        Change::Relief(pressure) => format!("Relief {}", shown(Quantity::Pressure(pressure))),
        Change::EngineSpeed(speed) => format!("Engine at {}", shown(Quantity::Speed(speed))),
        Change::Hoses(bore) => format!("Hoses of {} bore", shown(Quantity::Bore(bore))),
    }
}
