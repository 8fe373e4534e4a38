//! Low and high are never inside what the uncertain figures can bring about.

use crate::every::{is_sound, loaded, pairs};
use crate::random::{settings, yard};
use farend_core::compare::compare;
use farend_core::route::part::{Hookup, assemble};
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
        let yard = loaded(&entry);
        for (machine, implement) in pairs(&yard) {
            let settings = turned.on(machine, implement);
            let comparison = compare(machine, implement, &yard.kits, &settings);
            let comparison = comparison.expect("settings within their ranges");
            for result in &comparison.routes {
                let Some(run) = result.run() else { continue };
                let hookup = Hookup {
                    machine,
                    implement,
                    kit: yard.kit(&run.kit),
                    settings: &settings,
                };
                for corner in &corners {
                    let mut joined = assemble(result.route.parts(), hookup).expect("it runs");
                    let mut values = corner.iter();
                    joined.visit(&mut |_, _, _, figure| {
                        figure.pin(*values.next().expect("fewer figures"));
                    });
                    let chain = joined.chain(Corner::LIKELY);
                    let (most, limit) = chain.most().expect("it joins");
                    let ledger = chain.ledger(&most, limit).expect("it joins");
                    if !is_sound(&ledger) || !is_sound(&run.ledger) {
                        continue;
                    }
                    sound.set(sound.get() + 1);
                    let arrives = most.arrives().to_watts();
                    let (low, high) = (run.delivered.low.to_watts(), run.delivered.high.to_watts());
                    prop_assert!(
                        low * (1.0 - ROUNDING) <= arrives && arrives <= high * (1.0 + ROUNDING),
                        "{} W by {} is outside {low} to {high} W",
                        arrives,
                        result.route.word()
                    );
                }
            }
        }
        Ok(())
    });
    if let Err(error) = result {
        panic!("{error}");
    }
    assert!(sound.get() > 2_000, "only {} corners", sound.get());
}
