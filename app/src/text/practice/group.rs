//! The words for those who teach a group.

use crate::number;
use crate::text::case_word;
use farend_core::quantity::Power;
use farend_core::units::{Quantity, UnitSystem};

pub use crate::text::say::practice::group::*;

/// What a set's file is called.
pub const FILE: &str = "farend-practice-set.json";

/// Where a case stands in the set.
pub fn place(place: usize, count: usize) -> String {
    Place {
        place: &number::count(place + 1),
        count: &number::count(count),
    }
    .said()
}

/// How far apart the group's powers lie.
pub fn spread(powers: &[Power], units: UnitSystem) -> String {
    let mut sorted = powers.to_vec();
    sorted.sort_by(|a, b| a.to_si().total_cmp(&b.to_si()));
    let (Some(low), Some(high)) = (sorted.first(), sorted.last()) else {
        return none_yet().to_owned();
    };
    // Of an even number of voices the middle lies between two.
    let [before, after] = [(powers.len() - 1) / 2, powers.len() / 2]
        .map(|place| sorted.get(place).copied().unwrap_or(*low));
    let middle = (before + after) * 0.5;
    Spread {
        count: powers.len(),
        range: &number::range(Quantity::Power(*low), Quantity::Power(*high), units),
        middle: &number::power(middle, units),
    }
    .said()
}

/// A set as a line.
pub fn set(seed: u32, count: u8) -> String {
    Set {
        seed: &seed.to_string(),
        cases: &case_word(count.into()),
    }
    .said()
}
