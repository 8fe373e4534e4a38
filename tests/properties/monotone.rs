//! What helps never harms, and helps somewhere.

use crate::every::{is_sound, loaded, pairs};
use crate::random::{Turned, settings, yard};
use farend_core::compare::compare;
use farend_core::defaults;
use farend_core::yard::entry::{UncertainEntry, YardEntry};
use proptest::prelude::*;
use proptest::test_runner::TestRunner;
use std::cell::Cell;

/// How close the search for a limit comes, relative, where a small part of a budget is taken.
const ROUNDING: f64 = 1e-9;

/// Each value of a figure put through a rising function.
fn each(entry: &mut UncertainEntry, change: impl Fn(f64) -> f64) {
    match entry {
        UncertainEntry::One(likely) => *likely = change(*likely),
        UncertainEntry::Three {
            low, likely, high, ..
        } => {
            for value in [low, likely, high] {
                *value = change(*value);
            }
        }
    }
}

/// Holds random yards and settings against themselves after a change for the better, by a part
/// from 0 to 1. Each route must hook up as before and deliver no less, and some must deliver more.
fn helps(change: impl Fn(&mut YardEntry, &mut Turned, f64)) {
    let better = Cell::new(0_u32);
    let random = (yard(), settings(), 0.0..=1.0_f64);
    let result = TestRunner::new(crate::cases(200)).run(&random, |(entry, turned, part)| {
        let before = loaded(&entry);
        let (mut entry, mut after_turned) = (entry, turned);
        change(&mut entry, &mut after_turned, part);
        let after = loaded(&entry);
        for (old, new) in pairs(&before).zip(pairs(&after)) {
            let routes = |(machine, implement), kits, turned: &Turned| {
                let comparison = compare(machine, implement, kits, &turned.on(machine, implement));
                comparison.expect("settings within their ranges")
            };
            let old = routes(old, &before.kits, &turned);
            let new = routes(new, &after.kits, &after_turned);
            for (old, new) in old.routes.iter().zip(&new.routes) {
                let (old, new) = (old.run(), new.run());
                prop_assert_eq!(old.is_some(), new.is_some());
                if let (Some(old), Some(new)) = (old, new)
                    && is_sound(&old.ledger)
                    && is_sound(&new.ledger)
                {
                    let [old, new] = [old, new].map(|run| run.delivered.likely.to_watts());
                    prop_assert!(new >= old * (1.0 - ROUNDING), "{new} W, before {old} W");
                    better.set(better.get() + u32::from(new > old * 1.001));
                }
            }
        }
        Ok(())
    });
    if let Err(error) = result {
        panic!("{error}");
    }
    assert!(better.get() > 20, "it helped only {} times", better.get());
}

#[test]
fn a_stronger_engine() {
    helps(|entry, _, part| {
        for machine in &mut entry.machines {
            let engine = &mut machine.engine;
            let powers = [&mut engine.net_kw, &mut engine.gross_kw];
            for kw in powers.into_iter().flatten() {
                each(kw, |kw| (kw * (1.0 + part)).min(600.0));
            }
        }
    });
}

#[test]
fn better_gears() {
    helps(|entry, _, part| {
        for gear in entry.kits.iter_mut().flat_map(|kit| &mut kit.drive) {
            let default = defaults::gear_efficiency(gear.kind).likely;
            // An angle's efficiency would give way to this one.
            gear.angle_deg = None;
            let efficiency = gear.efficiency.get_or_insert(UncertainEntry::One(default));
            each(efficiency, |eta| (eta + (1.0 - eta) * part).min(1.0));
        }
    });
}

#[test]
fn a_higher_relief() {
    helps(|_, turned, part| {
        // Only where it is turned: the yard's own also says where its pump's efficiencies hold.
        let higher = |bar: f64| (bar * (1.0 + part)).min(420.0);
        turned.own.1 = turned.own.1.map(higher);
        turned.pack.1 = turned.pack.1.map(higher);
    });
}

#[test]
fn shorter_hoses() {
    helps(|entry, _, part| {
        for hoses in entry.kits.iter_mut().filter_map(|kit| kit.hoses.as_mut()) {
            hoses.length_m = (hoses.length_m * (1.0 - part)).max(0.2);
        }
    });
}
