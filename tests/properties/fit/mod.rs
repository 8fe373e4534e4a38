//! Whether things can be hooked up, on random yards.

mod unknown;
mod weight;

use crate::every::{Case, each_route};
use crate::random::{settings, yard};
use crate::uses::Uses;
use farend_core::fit::{Item, Look};
use farend_core::implement::Implement;
use farend_core::kit::Kit;
use farend_core::machine::Machine;
use farend_tests::item_kind::ItemKind;
use proptest::prelude::*;
use proptest::test_runner::TestRunner;

/// What is joined up, to be changed where it has nothing to do with the power.
#[derive(Clone)]
struct Joint {
    machine: Machine,
    implement: Implement,
    kit: Kit,
}

impl Joint {
    fn of(case: &Case<'_>) -> Self {
        Self {
            machine: case.hookup.machine.clone(),
            implement: case.hookup.implement.clone(),
            kit: case.hookup.kit.expect("a run has a kit").clone(),
        }
    }

    /// Nothing here bears on the oil's heat.
    fn look<'a>(&'a self, case: &'a Case<'_>) -> Look<'a> {
        Look {
            route: case.route,
            machine: &self.machine,
            implement: &self.implement,
            settings: case.hookup.settings,
            kit: &self.kit,
            run: Some(case.run),
            heat: None,
        }
    }
}

/// Shows each route of random yards that runs.
fn on_each_route(cases: u32, holds: impl Fn(Case<'_>) -> Result<(), TestCaseError>) {
    let random = (yard(), settings());
    let result = TestRunner::new(crate::cases(cases)).run(&random, |(entry, turned)| {
        each_route(&entry, &turned, &holds)
    });
    if let Err(error) = result {
        panic!("{error}");
    }
}

/// The same items before and after, in the same order.
fn pairs(before: &[Item], after: &[Item]) -> Result<Vec<(Item, Item)>, TestCaseError> {
    let kinds =
        |items: &[Item]| -> Vec<_> { items.iter().map(|item| ItemKind::of(&item.check)).collect() };
    prop_assert_eq!(kinds(before), kinds(after));
    Ok(before.iter().copied().zip(after.iter().copied()).collect())
}
