//! Low and high are never inside what the uncertain figures can bring about.

use crate::every::{each_route, is_sound};
use crate::random::{settings, yard};
use farend_core::spread::{Corner, Scenario};
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::select;
use proptest::test_runner::TestRunner;
use std::cell::Cell;

/// How close the search for a limit comes, relative.
const ROUNDING: f64 = 1e-9;

/// More figures than any route has.
const MOST_FIGURES: usize = 60;

#[test]
fn no_corner_lies_outside() {
    let sound = Cell::new(0_u32);
    let corners = vec(
        vec(select(&[Scenario::Low, Scenario::High][..]), MOST_FIGURES),
        8,
    );
    let random = (yard(), settings(), corners);
    let result = TestRunner::new(crate::cases(300)).run(&random, |(entry, turned, corners)| {
        each_route(&entry, &turned, |case| {
            let delivered = case.run.delivered;
            for corner in &corners {
                let mut joined = case.joined.clone();
                let mut values = corner.iter();
                joined.visit(&mut |_, _, _, figure| {
                    figure.pin(*values.next().expect("fewer figures"));
                });
                let chain = joined.chain(Corner::LIKELY);
                let (most, limit) = chain.most().expect("it joins");
                let ledger = chain.ledger(&most, limit).expect("it joins");
                if !is_sound(&ledger) || !is_sound(&case.run.ledger) {
                    continue;
                }
                sound.set(sound.get() + 1);
                let arrives = most.arrives().to_watts();
                let (low, high) = (delivered.low.to_watts(), delivered.high.to_watts());
                prop_assert!(
                    low * (1.0 - ROUNDING) <= arrives && arrives <= high * (1.0 + ROUNDING),
                    "{} W by {} is outside {low} to {high} W",
                    arrives,
                    case.route.word()
                );
            }
            Ok(())
        })
    });
    if let Err(error) = result {
        panic!("{error}");
    }
    assert!(sound.get() > 2_000, "only {} corners", sound.get());
}
