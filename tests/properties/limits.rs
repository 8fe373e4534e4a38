//! What a stage says that it may take strains it to its limit, by its own equations.

use crate::every::each_route;
use crate::random::{settings, yard};
use farend_core::drive::{Drive, Rate};
use farend_core::spread::{Corner, Scenario};
use farend_core::stage::{Stage, StagePhysics};
use proptest::prelude::*;
use proptest::test_runner::TestRunner;
use std::cell::RefCell;
use std::collections::HashMap;

/// A pump's drag may be many times the torque that is left for pressure.
const ROUNDING: f64 = 1e-10;

fn kind(stage: &Stage) -> &'static str {
    match stage {
        Stage::Gear(_) => "gear",
        Stage::Pump(pump) if pump.demand.is_some() => "variable pump",
        Stage::Pump(_) => "fixed pump",
        _ => "other",
    }
}

#[test]
fn what_a_stage_may_take_strains_it_to_its_limit() {
    let seen: RefCell<HashMap<&str, u32>> = RefCell::default();
    let random = (yard(), settings());
    let result = TestRunner::new(crate::cases(200)).run(&random, |(entry, turned)| {
        each_route(&entry, &turned, |case| {
            for scenario in Scenario::ALL {
                let chain = case.joined.chain(Corner::all(scenario));
                let mut takes = Drive {
                    rate: Rate::Turning(chain.speed),
                    power: chain.available,
                };
                for stage in chain.stages {
                    if let Some(power) = stage.may_take(takes.rate, &chain.at) {
                        let most = Drive { power, ..takes };
                        let pass = stage.pass(most, &chain.at).expect("it joins");
                        let strain = pass.strain.map(|(strain, _)| strain);
                        prop_assert!(
                            strain.is_some_and(|strain| (strain - 1.0).abs() <= ROUNDING),
                            "{strain:?}: {stage:?}"
                        );
                        *seen.borrow_mut().entry(kind(stage)).or_default() += 1;
                    }
                    let pass = stage.pass(takes, &chain.at).expect("it joins");
                    if pass.stall.is_some() {
                        break;
                    }
                    takes = pass.gives;
                }
            }
            Ok(())
        })
    });
    if let Err(error) = result {
        panic!("{error}");
    }
    let seen = seen.borrow();
    for kind in ["gear", "fixed pump", "variable pump"] {
        let times = seen.get(kind).copied().unwrap_or_default();
        assert!(times >= 100, "{kind}: only {times} times");
    }
}
