//! Whether two values are the same but for the last digits of their numbers: a link's numbers go
//! through other units and back.

use std::fmt::Debug;

/// Rounding of a number on its way through other units and back, relative.
const ROUNDING: f64 = 1e-12;
/// Below this a number has no more digits to lose.
const LEAST: f64 = 1e-290;

/// Panics where two values differ by more than rounding.
pub fn assert_alike(one: &impl Debug, other: &impl Debug) {
    let (one, other) = (format!("{one:?}"), format!("{other:?}"));
    let (mut left, mut right) = (words(&one), words(&other));
    loop {
        match (left.next(), right.next()) {
            (None, None) => return,
            (Some(a), Some(b)) if same(a, b) => {}
            (a, b) => panic!("{a:?} isn't {b:?}: {one} and {other}"),
        }
    }
}

fn words(text: &str) -> impl Iterator<Item = &str> {
    let is_end = |sign: char| sign.is_whitespace() || "(){}[],:\"".contains(sign);
    text.split(is_end).filter(|word| !word.is_empty())
}

fn same(a: &str, b: &str) -> bool {
    if a == b {
        return true;
    }
    let (Ok(a), Ok(b)) = (a.parse::<f64>(), b.parse::<f64>()) else {
        return false;
    };
    (a - b).abs() <= ROUNDING * a.abs() || a.abs().max(b.abs()) < LEAST
}
