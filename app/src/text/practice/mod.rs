//! The words of practice: the messages of `practice.ftl`, and which of them is whose.

pub mod case;
pub mod given;
mod given_fit;
pub mod group;
pub mod kept;
pub mod outcome;
pub mod steps;
pub mod walk;

use super::say::practice as say;
use crate::number;
use farend_core::practice::{Confidence, Help, Idea, Kind};

pub use super::say::practice::*;

/// A kind of case.
pub fn kind(kind: Kind) -> &'static str {
    match kind {
        Kind::Route => kind_route(),
        Kind::Amount => kind_amount(),
        Kind::Limit => kind_limit(),
        Kind::Sheet => kind_sheet(),
        Kind::Fit => kind_fit(),
        Kind::Wanted => kind_wanted(),
    }
}

/// An idea.
pub fn idea(idea: Idea) -> &'static str {
    match idea {
        Idea::PowerIsFlowTimesPressure => idea_power_is_flow_times_pressure(),
        Idea::FlowIsSpeed => idea_flow_is_speed(),
        Idea::EveryChangeCosts => idea_every_change_costs(),
        Idea::ShaftBringsMost => idea_shaft_brings_most(),
        Idea::FiguresBelongTogether => idea_figures_belong_together(),
        Idea::ItMustHookUp => idea_it_must_hook_up(),
    }
}

/// How sure somebody is.
pub fn confidence(confidence: Confidence) -> &'static str {
    match confidence {
        Confidence::Guessing => guessing(),
        Confidence::Fairly => fairly_sure(),
        Confidence::Sure => sure(),
    }
}

/// How much help there is, alone and within a sentence.
fn help_names(help: Help) -> [&'static str; 2] {
    match help {
        Help::Shown => [help_shown(), help_shown_small()],
        Help::FirstBlank => [help_first_blank(), help_first_blank_small()],
        Help::AllBlank => [help_all_blank(), help_all_blank_small()],
    }
}

/// How much help there is.
pub fn help(help: Help) -> &'static str {
    let [name, _] = help_names(help);
    name
}

/// How much help there is, within a sentence.
pub fn help_small(help: Help) -> &'static str {
    let [_, name] = help_names(help);
    name
}

/// Which case it is, so that it can be found again.
pub fn number_of(seed: u32) -> String {
    say::number_of(&seed.to_string())
}

/// Where a case stands in a set.
pub fn of_set(place: usize, count: usize) -> String {
    OfSet {
        place: &number::count(place + 1),
        count: &number::count(count),
    }
    .said()
}

/// Where a route stands now.
pub fn moved(route: &str, place: usize) -> String {
    Moved {
        route,
        place: &number::count(place + 1),
    }
    .said()
}

/// That a route was set apart, or put back.
pub fn set_apart(route: &str, is_apart: bool) -> String {
    match is_apart {
        true => moved_apart(route),
        false => moved_back(route),
    }
}

/// What somebody knows of a thing that is there or isn't.
fn yes_or_no(it: Option<bool>) -> &'static str {
    match it {
        Some(true) => yes(),
        Some(false) => no(),
        None => not_known(),
    }
}
