//! The words of practice.

pub mod case;
pub mod given;
mod given_fit;
pub mod group;
pub mod kept;
pub mod outcome;
pub mod steps;
pub mod walk;

use farend_core::practice::{Confidence, Help, Idea, Kind};

pub const PARTS: &str = "Parts of practice";
pub const WALK: &str = "Follow the power";
pub const ALONE: &str = "Practise alone";
pub const GROUP: &str = "For a group";
pub const RECORD: &str = "How it goes";

pub const ALONE_LEAD: &str = "One case at a time: a machine, an implement, a question. Say what you \
    think first, then see why. Nobody counts your mistakes.";
pub const WHAT: &str = "What to practise";
pub const ANY_KIND: &str = "A bit of everything";
pub const BEGIN: &str = "Begin";
pub const NO_CASE: &str = "This yard has no pair of machine and implement that makes a fair case of \
    that kind. Try another kind, or another yard.";
pub const FIND: &str = "Find a case again";
pub const CASE_NUMBER: &str = "Number of the case";
pub const NUMBER_ALLOWED: &str = "a whole number from 0 to 4294967295.";
pub const SHOW_CASE: &str = "Show this case";
pub const GIVEN: &str = "What is known";
pub const YOUR_ANSWER: &str = "Your answer";
pub const HOW_SURE: &str = "How sure are you?";
pub const COMMIT: &str = "That's my answer";
pub const MISSING_GUESS: &str = "Choose or enter an answer first; a guess will do.";
pub const MISSING_CONFIDENCE: &str = "Say how sure you are, then it counts.";
pub const POWER: &str = "Power at the rotor";
pub const POWER_ALLOWED: &str = "a power above zero.";
pub const KNOW_THIS: &str = "I know this: no help";
pub const EXAMPLE: &str = "Worked out on another pair";
pub const FIRST_IS_YOURS: &str = "The first step is yours: what would stand here?";
pub const SHOW_FIRST: &str = "Show the first step";
pub const TO_BEGIN_WITH: &str = "To begin with";
pub const NEXT_SAME: &str = "Next of this kind";
pub const NEXT_ANY: &str = "Next of any kind";
pub const NEXT_IN_SET: &str = "Next case of the set";
pub const SET_DONE: &str = "That was the last case of the set.";
pub const LOOK: &str = "Open this pair with all its figures";
pub const UP: &str = "Up";
pub const DOWN: &str = "Down";
pub const CANT: &str = "Can't be hooked up";
pub const CAN: &str = "Back into the order";
pub const ORDER: &str = "Most power first";
pub const SET_APART: &str = "Set apart: can't be hooked up";

/// A kind of case.
pub fn kind(kind: Kind) -> &'static str {
    match kind {
        Kind::Route => "Which route brings most?",
        Kind::Amount => "How much arrives?",
        Kind::Limit => "What holds it back?",
        Kind::Sheet => "Can this sheet be right?",
        Kind::Fit => "Can it be hooked up?",
        Kind::Wanted => "What would it take?",
    }
}

/// An idea.
pub fn idea(idea: Idea) -> &'static str {
    match idea {
        Idea::PowerIsFlowTimesPressure => "Oil's power is flow times pressure",
        Idea::FlowIsSpeed => "Flow is speed, pressure is torque",
        Idea::EveryChangeCosts => "Every change of form costs",
        Idea::ShaftBringsMost => "A shaft brings the most",
        Idea::FiguresBelongTogether => "A sheet's figures must belong together",
        Idea::ItMustHookUp => "What can't be hooked up brings nothing",
    }
}

/// How sure somebody is.
pub fn confidence(confidence: Confidence) -> &'static str {
    match confidence {
        Confidence::Guessing => "Guessing",
        Confidence::Fairly => "Fairly sure",
        Confidence::Sure => "Sure",
    }
}

/// How much help there is.
pub fn help(help: Help) -> &'static str {
    match help {
        Help::Shown => "With an example beside it, worked out in full",
        Help::FirstBlank => "With an example beside it, its first step left to you",
        Help::AllBlank => "Without help",
    }
}

/// Which case it is, so that it can be found again.
pub fn number_of(seed: u32) -> String {
    format!("Case {seed}")
}

/// Where a case stands in a set.
pub fn of_set(place: usize, count: usize) -> String {
    format!("Case {} of {count} of the set", place + 1)
}

/// The button that begins a set.
pub fn begin_set(count: usize) -> String {
    match count {
        1 => "Go through the set: 1 case".to_owned(),
        _ => format!("Go through the set: {count} cases"),
    }
}

/// Where a route stands now.
pub fn moved(route: &str, place: usize) -> String {
    format!("{route} is now in place {}.", place + 1)
}

/// That a route was set apart, or put back.
pub fn set_apart(route: &str, is_apart: bool) -> String {
    match is_apart {
        true => format!("{route} is set apart: can't be hooked up."),
        false => format!("{route} is back in the order, last."),
    }
}
