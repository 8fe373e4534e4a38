//! Which route to take, why, where it sits and what that means: in words.

use super::say::advice as say;
use super::{capital, clauses, fit, labels, list, sentences, small};
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
use farend_core::standing::Standing;
use farend_core::units::UnitSystem;

/// The recommendation in a sentence or two.
pub fn recommendation(
    machine: &Machine,
    implement: &Implement,
    all: &Comparison,
    recommended: &Recommendation,
    units: UnitSystem,
) -> String {
    let pair = &sentences::picture_title(machine, implement);
    let engine = &number::power(all.budget.net.likely, units);
    let need = &number::power(all.need.likely, units);
    let arrives = |route: RouteId| {
        let run = all.route(route).and_then(|result| result.run());
        run.map_or_else(String::new, |run| {
            number::power(run.delivered.likely, units)
        })
    };
    match &recommended.advice {
        Advice::Take(route) => say::Take {
            pair,
            route: labels::the_route(*route),
            power: &arrives(*route),
            engine,
            need,
        }
        .said(),
        Advice::Equal(routes) => {
            let named: Vec<_> = routes.iter().map(|it| labels::the_route(*it)).collect();
            let power = &routes.first().map_or_else(String::new, |it| arrives(*it));
            say::Equal {
                pair,
                routes: &list(&named),
                power,
                engine,
                need,
            }
            .said()
        }
        Advice::None(None) => say::no_route(pair),
        Advice::None(Some((route, Obstacle::Stops))) => say::Stopped {
            pair,
            route: &capital(labels::the_route(*route)),
        }
        .said(),
        Advice::None(Some((route, Obstacle::TooWeak(standing)))) => say::TooWeak {
            pair,
            route: &capital(labels::the_route(*route)),
            standing: labels::standing(*standing),
            at_work: labels::at_work(*standing),
        }
        .said(),
    }
}

/// A reason for it, as a sentence.
pub fn reason(reason: &Reason) -> String {
    clauses(&[clause(reason)])
}

/// What speaks against it, in one sentence; nothing where nothing does.
pub fn drawbacks(drawbacks: &[Reason]) -> Option<String> {
    let told: Vec<_> = drawbacks.iter().map(clause).collect();
    (!told.is_empty()).then(|| say::drawbacks(&list(&told)))
}

fn clause(reason: &Reason) -> String {
    match *reason {
        Reason::Power { ratio, standing } => brings(ratio, standing),
        Reason::MoreThan { route, times } => say::MoreThan {
            times: &number::fixed(times, 1),
            route: labels::the_route(route),
        }
        .said(),
        Reason::View(view) => self::view(view).to_owned(),
        Reason::DrivesOver(over) => drives_over(over).to_owned(),
        Reason::Loader(use_) => loader(use_).to_owned(),
        Reason::HooksUp(time) => say::hooks_up(&number::time(time)),
        Reason::Cheapest(_) => say::cheapest().to_owned(),
    }
}

fn brings(ratio: f64, standing: Standing) -> String {
    let at_work = labels::at_work(standing);
    let standing = labels::standing(standing);
    if ratio < 0.995 {
        say::BringsPart {
            part: &number::percent(ratio),
            standing,
            at_work,
        }
        .said()
    } else {
        say::BringsTimes {
            times: &number::fixed(ratio, 2),
            standing,
            at_work,
        }
        .said()
    }
}

/// What it takes and what must be asked, a sentence each.
pub fn takes(kit: &str, needs: &[Item], questions: &[Item]) -> String {
    let named = |items: &[Item]| {
        let mut names: Vec<_> = items.iter().map(|it| small(fit::name(&it.check))).collect();
        names.dedup();
        list(&names)
    };
    let mut sentences = vec![say::takes(kit)];
    if !needs.is_empty() {
        sentences.push(say::to_mind(&named(needs)));
    }
    if !questions.is_empty() {
        sentences.push(say::to_ask(&named(questions)));
    }
    sentences.join(" ")
}

/// Where a route puts the implement.
pub fn seat(seat: Seat) -> &'static str {
    match seat {
        Seat::Loader => say::seat_loader(),
        Seat::FrontFrame => say::seat_front_frame(),
        Seat::RearBackwards => say::seat_rear_backwards(),
        Seat::RearForwards => say::seat_rear_forwards(),
    }
}

/// Where the driver looks.
pub fn view(view: View) -> &'static str {
    match view {
        View::Ahead => say::view_ahead(),
        View::OverTheShoulder => say::view_over_the_shoulder(),
        View::Behind => say::view_behind(),
    }
}

/// Whether the wheels go over the work before it's done.
pub fn drives_over(drives_over: bool) -> &'static str {
    if drives_over {
        say::drives_over()
    } else {
        say::keeps_off()
    }
}

/// What becomes of the loader.
pub fn loader(loader: LoaderUse) -> &'static str {
    match loader {
        LoaderUse::Stays => say::loader_stays(),
        LoaderUse::WithoutBucket => say::loader_without_bucket(),
        LoaderUse::ComesOff => say::loader_comes_off(),
    }
}

/// A wish.
pub fn wish(wish: Wish) -> &'static str {
    match wish {
        Wish::LookAhead => say::look_ahead(),
        Wish::KeepOff => say::keep_off(),
        Wish::KeepLoader => say::keep_loader(),
        Wish::HookUpQuickly => say::hook_up_quickly(),
        Wish::BuyCheaply => say::buy_cheaply(),
    }
}

/// How much a wish matters.
pub fn weight(weight: Weight) -> &'static str {
    match weight {
        Weight::Not => say::weight_not(),
        Weight::Somewhat => say::weight_somewhat(),
        Weight::Much => say::weight_much(),
    }
}
