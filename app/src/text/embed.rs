//! The words around the page: for the host that frames it, for a yard that comes from an address, and
//! for what a frame keeps back.

pub use super::say::embed::*;

use super::items;
use super::say::embed as say;
use crate::embed::colours::{LEAST, MOST};
use crate::embed::fault::{OptionFault, Wrong};
use crate::far_yard::Refusal;
use crate::fetched::Failure;
use crate::number;

/// What is wrong with an option of the host's.
pub fn option_fault(fault: &OptionFault) -> String {
    let (option, found) = (fault.option.as_str(), fault.found.as_str());
    match &fault.wrong {
        Wrong::Twice => say::OptionTwice { option, found }.said(),
        Wrong::Empty => option_empty(option),
        Wrong::Unknown => say::OptionUnknown { option, found }.said(),
        Wrong::NoAddress => say::OptionNoAddress { option, found }.said(),
        Wrong::NoCurrency => say::OptionNoCurrency { option, found }.said(),
        Wrong::NoOrigin => say::OptionNoOrigin { option, found }.said(),
        Wrong::NoneOf(words) => say::OptionNoneOf {
            option,
            found,
            words: &items(words),
        }
        .said(),
        Wrong::NotSpoken(tags) => say::OptionNotSpoken {
            option,
            found,
            tags: &items(tags),
        }
        .said(),
        Wrong::NotInYard => say::OptionNotInYard { option, found }.said(),
        Wrong::NoColour => say::OptionNoColour { option, found }.said(),
        Wrong::Contrast([ink, ground], contrast) => say::OptionContrast {
            option,
            ink,
            ground,
            contrast: &number::fixed(*contrast, 1),
            least: &number::fixed(LEAST, 1),
            most: &number::fixed(MOST, 0),
        }
        .said(),
    }
}

/// Why a yard isn't there.
pub fn refusal(refusal: &Refusal) -> String {
    match refusal {
        Refusal::Failed(Failure::Unreachable) => unreachable().to_owned(),
        Refusal::Failed(Failure::TooSlow) => too_slow().to_owned(),
        Refusal::Failed(Failure::Moved) => moved().to_owned(),
        Refusal::Failed(Failure::Status(404 | 410)) => nothing_there().to_owned(),
        Refusal::Failed(Failure::Status(status)) => refused(&status.to_string()),
        Refusal::Failed(Failure::TooLarge) => too_large().to_owned(),
        Refusal::Faults(_) => no_yard().to_owned(),
    }
}
