//! The words for those who teach a group.

use crate::number;
use crate::text::case_word;
use farend_core::quantity::Power;
use farend_core::units::{Quantity, UnitSystem};

pub const LEAD: &str = "Put a set of cases together, show them large, collect what the group \
    thinks, and reveal when everybody has said something.";
pub const KINDS: &str = "What the cases ask";
pub const COUNT: &str = "How many";
pub const COUNT_ALLOWED: &str = "a whole number from 1 to 30.";
pub const SEED: &str = "Number of the set";
pub const DRAW_ANEW: &str = "Draw another set";
pub const NO_KIND: &str = "Choose one kind at least.";
pub const SHARE: &str = "Hand it out";
pub const COPY_LINK: &str = "Copy the link to this set";
pub const SAVE: &str = "Save the set (JSON)";
pub const OPEN: &str = "Open a set…";
pub const FILE: &str = "farend-practice-set.json";
pub const PRINT: &str = "Print the sheet";
pub const PRINT_ANSWERS: &str = "Print it with answers";
pub const SHOW: &str = "Show it large";
pub const CLOSE: &str = "Close";
pub const BEFORE: &str = "Case before";
pub const NEXT: &str = "Next case";
pub const REVEAL: &str = "Reveal";
pub const TAKE_BACK: &str = "Take it back";
pub const ONE_MORE: &str = "One more says";
pub const ONE_LESS: &str = "One fewer says";
pub const A_GUESS: &str = "What somebody says";
pub const GUESSES: &str = "What the group says";
pub const REMOVE: &str = "Remove";
pub const NONE_YET: &str = "Nobody has said anything yet.";
pub const SAYS: &str = "the group";
pub const RIGHT: &str = "this is it";
pub const SHEET: &str = "Practice cases";
pub const WITH_ANSWERS: &str = "with answers";
pub const ANSWER: &str = "Answer";
pub const NAME_AND_DATE: &str = "Name and date";

/// Where a case stands in the set.
pub fn place(place: usize, count: usize) -> String {
    format!("{} of {count}", place + 1)
}

/// The counted voices for a choice, for those who don't see the bar.
pub fn voices(count: u32) -> String {
    match count {
        1 => "1 voice".to_owned(),
        _ => format!("{count} voices"),
    }
}

/// How far apart the group's powers lie.
pub fn spread(powers: &[Power], units: UnitSystem) -> String {
    let mut sorted = powers.to_vec();
    sorted.sort_by(|a, b| a.to_si().total_cmp(&b.to_si()));
    let (Some(low), Some(high)) = (sorted.first(), sorted.last()) else {
        return NONE_YET.to_owned();
    };
    let middle = sorted.get(sorted.len() / 2).unwrap_or(low);
    let range = number::range(Quantity::Power(*low), Quantity::Power(*high), units);
    format!(
        "{}: {range}; the one in the middle says {}.",
        voices(u32::try_from(powers.len()).unwrap_or(u32::MAX)),
        number::power(*middle, units)
    )
}

/// A set as a line.
pub fn set(seed: u32, count: u8) -> String {
    format!("Set {seed}, {}", case_word(count.into()))
}

/// That a set was made in another yard.
pub fn other_yard(yard: &str) -> String {
    format!(
        "This set was made in the yard “{yard}”. Another yard is open here, so these are other \
         cases. Open that yard's file to have the same ones."
    )
}

/// That a set was opened.
pub const OPENED: &str = "The set is open.";
