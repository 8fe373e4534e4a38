//! What came of an answer, in plain and kind words.

use super::case;
use crate::number;
use crate::text::{capital, claims, fit, labels, list};
use farend_core::claims::{Answer as Claim, Check};
use farend_core::fit::{Item, Judgement, gravest};
use farend_core::practice::{Answer, Case, Confidence, Guess, Judged, Misconception, Truth};
use farend_core::quantity::Power;
use farend_core::route::RouteId;
use farend_core::spread::Spread;
use farend_core::units::{Quantity, UnitSystem};

pub const TRUTH: &str = "What is so";
pub const STAGE_BY_STAGE: &str = "Stage by stage";
pub const AT_ONCE: &str = "Looked at one by one";
pub const ENGINE: &str = "the engine's power";
pub const SAID: &str = "what you said";
pub const YOURS: &str = "your answer";
pub const YOUR_PLACE: &str = "You said";
pub const ARRIVES: &str = "Arrives";
pub const REASON: &str = "Why";
pub const CHANGE: &str = "Change";
pub const REACHES: &str = "Does it";
pub const YES: &str = "yes";
pub const NO: &str = "no";

/// How near is near: this project's judgement.
const CLOSE: f64 = 0.6;

/// The first word on it.
pub fn headline(judged: &Judged, confidence: Confidence) -> &'static str {
    match (judged.right, confidence) {
        (true, Confidence::Guessing) => "Right. Look why, and next time you needn't guess.",
        (true, _) => "Right.",
        (false, _) if judged.near >= CLOSE => "Close, but not quite.",
        (false, Confidence::Sure) => "Not this one. You were sure, so this is the one to remember.",
        (false, _) => "Not this one. Here is how it goes.",
    }
}

/// What was said.
pub fn said(case: &Case, guess: &Guess, units: UnitSystem) -> String {
    match guess {
        Guess::Order { order, cant } => order_of(order, cant),
        Guess::Power(power) => number::power(*power, units),
        Guess::Choice(place) => {
            let choices = case::choices(case, units);
            choices.get(*place).cloned().unwrap_or_default()
        }
    }
}

fn order_of(order: &[RouteId], cant: &[RouteId]) -> String {
    let names = |routes: &[RouteId]| -> Vec<_> {
        let names = routes.iter().map(|route| labels::route_small(*route));
        names.collect()
    };
    let mut told = Vec::new();
    if !order.is_empty() {
        told.push(names(order).join(", then "));
    }
    if !cant.is_empty() {
        told.push(format!("can't be hooked up: {}", list(&names(cant))));
    }
    capital(&told.join("; "))
}

/// A power with its range.
pub fn spread(power: Spread<Power>, units: UnitSystem) -> String {
    let (low, high) = (Quantity::Power(power.low), Quantity::Power(power.high));
    format!(
        "{} ({})",
        number::power(power.likely, units),
        number::range(low, high, units)
    )
}

/// The truth in short.
pub fn truth(answer: &Answer, units: UnitSystem) -> String {
    match &answer.truth {
        Truth::Route { order, cant } => format!("{}.", order_of(order, cant)),
        Truth::Amount { delivered, .. } => {
            format!("{} arrive at the rotor.", spread(*delivered, units))
        }
        Truth::Limit(limit) => format!(
            "{}. {}",
            capital(labels::limit(*limit)),
            labels::limit_reason(*limit)
        ),
        Truth::Sheet { flaw, .. } => match flaw {
            None => "The sheet can be so: what it says belongs together.".to_owned(),
            Some(flaw) => format!("{}.", case::flaw(Some(*flaw))),
        },
        Truth::Fit { fits, items } => {
            let first = gravest_of(items).map(|item| fit::finding(&item.check, units));
            let first = first.unwrap_or_default();
            format!("{}. {first}", case::fits(*fits))
                .trim_end()
                .to_owned()
        }
        Truth::Wanted(tried) => {
            let does = tried.iter().find(|it| it.reaches);
            does.map_or_else(String::new, |it| {
                format!(
                    "{}: {} arrive, {}.",
                    case::change(it.change, units),
                    number::power(it.run.delivered.likely, units),
                    labels::at_work(it.run.verdict.likely)
                )
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
            "Taking the engine's power for the oil's",
            "Many do. But oil carries only its flow times its pressure, however strong the engine \
             that turns the pump. The rest of the engine's power never gets into the oil.",
        ),
        Misconception::AddsFlows => (
            "Adding flows up",
            "It looks like one pump for all. But what steering takes, and what another outlet \
             gives, never reaches this implement's motor: count only what comes through its own \
             hose.",
        ),
        Misconception::ForgetsReturn => (
            "Forgetting the way there and back",
            "Easily done, for hoses don't look like a loss. But valve, couplers and hoses take \
             pressure both ways, and the motor works only with what is left between.",
        ),
        Misconception::PressureForSpeed => (
            "More pressure for more speed",
            "It feels right, for a stronger push seems faster. But the motor's speed is set by the \
             flow alone; more pressure makes it stronger, not faster.",
        ),
        Misconception::IgnoresSpeed => (
            "Counting power and forgetting speed",
            "The kilowatts are there, but a rotor below its lowest speed does no proper work with \
             them: look at the speed too.",
        ),
    }
}
