//! Which route to take, why, where it sits and what that means: in words.

use super::sentences::short;
use super::{capital, fit, labels, list, small};
use crate::number;
use farend_core::choice::{Weight, Wish};
use farend_core::compare::Comparison;
use farend_core::fit::Item;
use farend_core::hookup::Seat;
use farend_core::implement::Implement;
use farend_core::machine::Machine;
use farend_core::recommend::{Advice, Obstacle, Reason, Recommendation};
use farend_core::route::RouteId;
use farend_core::seat::{LoaderUse, View};
use farend_core::units::UnitSystem;

/// The recommendation in one sentence.
pub fn recommendation(
    machine: &Machine,
    implement: &Implement,
    all: &Comparison,
    recommended: &Recommendation,
    units: UnitSystem,
) -> String {
    let pair = format!("{} on the {}", short(&implement.name), short(&machine.name));
    let of_need = |route: RouteId| {
        let run = all.route(route).and_then(|result| result.run());
        run.map_or_else(String::new, |run| {
            format!(
                "{} of the engine's {} arrive, the job needs {}",
                number::power(run.delivered.likely, units),
                number::power(all.budget.net.likely, units),
                number::power(all.need.likely, units)
            )
        })
    };
    match &recommended.advice {
        Advice::Take(route) => format!(
            "{pair}: take {}. {}.",
            labels::the_route(*route),
            of_need(*route)
        ),
        Advice::Equal(routes) => {
            let named: Vec<_> = routes
                .iter()
                .map(|route| labels::the_route(*route).to_owned())
                .collect();
            let first = routes.first().map_or_else(String::new, |it| of_need(*it));
            format!(
                "{pair}: {} come out equal, weighed by what matters to you. By the first {first}.",
                list(&named)
            )
        }
        Advice::None(None) => format!("{pair}: nothing in this yard can drive it."),
        Advice::None(Some((route, Obstacle::Stops))) => format!(
            "{pair}: nothing can be hooked up as it stands. {} would do the work, but something \
             stops it: see below.",
            capital(labels::the_route(*route))
        ),
        Advice::None(Some((route, Obstacle::TooWeak(standing)))) => format!(
            "{pair}: no route does this job well. {} comes nearest: {}, {}.",
            capital(labels::the_route(*route)),
            labels::standing(*standing),
            labels::at_work(*standing)
        ),
    }
}

/// A reason for it.
pub fn reason(reason: &Reason) -> String {
    match *reason {
        Reason::Power { ratio, standing } => format!(
            "It brings {} what the job needs; for good it is {}: {}.",
            times(ratio),
            labels::standing(standing),
            labels::at_work(standing)
        ),
        Reason::MoreThan { route, times } => format!(
            "{} times as much arrives as by {}.",
            capital(&number::fixed(times, 1)),
            labels::the_route(route)
        ),
        Reason::View(view) => format!("{}.", capital(self::view(view))),
        Reason::DrivesOver(over) => format!("{}.", capital(drives_over(over))),
        Reason::Loader(use_) => format!("{}.", capital(loader(use_))),
        Reason::HooksUp(time) => format!("It is hooked up in about {}.", number::time(time)),
        Reason::Cheapest(_) => "Of the routes that do the work it costs least to buy.".to_owned(),
    }
}

/// What speaks against it, in one sentence; nothing where nothing does.
pub fn drawbacks(drawbacks: &[Reason]) -> Option<String> {
    let told: Vec<_> = drawbacks
        .iter()
        .map(|it| small(reason(it).trim_end_matches('.')))
        .collect();
    (!told.is_empty()).then(|| format!("On the other hand {}.", list(&told)))
}

/// What it takes and what must be asked, in one sentence.
pub fn takes(kit: &str, needs: &[Item], questions: &[Item]) -> String {
    let named = |items: &[Item]| {
        let mut names: Vec<_> = items.iter().map(|it| small(fit::name(&it.check))).collect();
        names.dedup();
        list(&names)
    };
    let mut sentence = format!("It takes: {kit}.");
    if !needs.is_empty() {
        sentence.push_str(&format!(" To mind: {}.", named(needs)));
    }
    if !questions.is_empty() {
        sentence.push_str(&format!(" To ask before: {}.", named(questions)));
    }
    sentence
}

fn times(ratio: f64) -> String {
    if ratio < 0.995 {
        format!("{} of", number::percent(ratio))
    } else {
        format!("{} times", number::fixed(ratio, 2))
    }
}

/// Where a route puts the implement.
pub fn seat(seat: Seat) -> &'static str {
    match seat {
        Seat::Loader => "on the loader",
        Seat::FrontFrame => "on a subframe in front",
        Seat::RearBackwards => "on the rear hitch, driving backwards",
        Seat::RearForwards => "on the rear hitch, driving forwards",
    }
}

/// Where the driver looks.
pub fn view(view: View) -> &'static str {
    match view {
        View::Ahead => "the driver looks ahead at the work",
        View::OverTheShoulder => "the driver looks over the shoulder now and then",
        View::Behind => "the driver looks behind for as long as the work takes",
    }
}

/// Whether the wheels go over the work before it's done.
pub fn drives_over(drives_over: bool) -> &'static str {
    if drives_over {
        "the wheels go over the work before it is done"
    } else {
        "the wheels keep off the work until it is done"
    }
}

/// What becomes of the loader.
pub fn loader(loader: LoaderUse) -> &'static str {
    match loader {
        LoaderUse::Stays => "the loader stays on",
        LoaderUse::WithoutBucket => "the loader stays on, its bucket comes off",
        LoaderUse::ComesOff => "the loader comes off",
    }
}

/// A wish.
pub fn wish(wish: Wish) -> &'static str {
    match wish {
        Wish::LookAhead => "Looking ahead at the work",
        Wish::KeepOff => "Not driving over it first",
        Wish::KeepLoader => "Keeping the loader on",
        Wish::HookUpQuickly => "Hooking up quickly",
        Wish::BuyCheaply => "Buying cheaply",
    }
}

/// How much a wish matters.
pub fn weight(weight: Weight) -> &'static str {
    match weight {
        Weight::Not => "Not",
        Weight::Somewhat => "Somewhat",
        Weight::Much => "Much",
    }
}
