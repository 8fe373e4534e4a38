//! What helps never harms, and helps somewhere.

use crate::every::{is_sound, loaded, pairs};
use crate::random::{Turned, settings, yard};
use farend_core::compare::{Comparison, RouteResult, compare};
use farend_core::defaults;
use farend_core::route::RouteId;
use farend_core::settings::{AIR_LIMITS, SLOPE_LIMITS};
use farend_core::spread::Spread;
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
    helps_where(|_, _, _| true, change);
}

/// The same, of the routes of two comparisons for which it is said to hold.
fn helps_where(
    holds: impl Fn(RouteId, &Comparison, &Comparison) -> bool,
    change: impl Fn(&mut YardEntry, &mut Turned, f64),
) {
    let better = Cell::new(0_u32);
    let random = (yard(), settings(), 0.0..=1.0_f64);
    let result = TestRunner::new(crate::cases(100)).run(&random, |(entry, turned, part)| {
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
            for route in RouteId::ALL {
                let run = |of| Comparison::route(of, *route).and_then(RouteResult::run);
                prop_assert_eq!(run(&old).is_some(), run(&new).is_some());
                if let (Some(was), Some(is)) = (run(&old), run(&new))
                    && is_sound(&was.ledger)
                    && is_sound(&is.ledger)
                    && holds(*route, &old, &new)
                {
                    let [was, is] = [was, is].map(|run| run.delivered.likely.to_watts());
                    let route = route.word();
                    prop_assert!(
                        is >= was * (1.0 - ROUNDING),
                        "{route}: {is} W, before {was} W"
                    );
                    better.set(better.get() + u32::from(is > was * 1.001));
                }
            }
        }
        Ok(())
    });
    if let Err(error) = result {
        panic!("{error}");
    }
    assert!(better.get() > 5, "it helped only {} times", better.get());
}

#[test]
fn a_stronger_engine() {
    helps(|entry, turned, part| {
        // Where its power is turned, that stands in place of the yard's.
        if let Some(times) = &mut turned.engine_power {
            *times *= 1.0 + part;
            return;
        }
        for machine in &mut entry.machines {
            let engine = &mut machine.engine;
            let either = [&mut engine.net_kw, &mut engine.gross_kw];
            for kw in either.into_iter().flatten() {
                each(kw, |kw| (kw * (1.0 + part)).min(600.0));
            }
        }
    });
}

/// An efficiency, or its default, nearer to 1.
fn closer_to_one(efficiency: &mut Option<UncertainEntry>, default: f64, part: f64) {
    let efficiency = efficiency.get_or_insert(UncertainEntry::One(default));
    each(efficiency, |eta| (eta + (1.0 - eta) * part).min(1.0));
}

#[test]
fn better_gears() {
    helps(|entry, _, part| {
        for gear in entry.kits.iter_mut().flat_map(|kit| &mut kit.drive) {
            // What an angle gives is at most 0.995² of two straight joints.
            let least = gear.angle_deg.map_or(0.0, |_| 0.995 * 0.995);
            let default = defaults::gear_efficiency(gear.kind).likely.max(least);
            closer_to_one(&mut gear.efficiency, default, part);
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

#[test]
fn wider_hoses() {
    helps(|entry, _, part| {
        for hoses in entry.kits.iter_mut().filter_map(|kit| kit.hoses.as_mut()) {
            let wider = |mm: f64| (mm * (1.0 + part)).min(80.0);
            hoses.back_bore_mm = hoses.back_bore_mm.map(wider);
            hoses.bore_mm = wider(hoses.bore_mm);
        }
    });
}

#[test]
fn smoother_fittings() {
    helps(|entry, _, _| {
        // They take little: that all of them are gone shows more often than a part.
        for hoses in entry.kits.iter_mut().filter_map(|kit| kit.hoses.as_mut()) {
            hoses.fittings_k = Some(0.0);
        }
    });
}

/// Of a pump only the hydro-mechanical efficiency: one that leaks less gives more flow, which a
/// weak engine can't put under as much pressure.
#[test]
fn a_pump_that_rubs_less() {
    let default = defaults::PUMP_HYDRO_MECHANICAL.likely;
    helps(|entry, _, part| {
        for circuit in entry.machines.iter_mut().flat_map(|it| &mut it.circuits) {
            closer_to_one(&mut circuit.hydro_mechanical, default, part);
        }
        for pump in entry.kits.iter_mut().filter_map(|kit| kit.pump.as_mut()) {
            closer_to_one(&mut pump.hydro_mechanical, default, part);
        }
    });
}

#[test]
fn a_motor_that_leaks_and_rubs_less() {
    let likely = |default: Spread<f64>| default.likely;
    helps(|entry, _, part| {
        let implements = entry.implements.iter_mut();
        for motor in implements.filter_map(|it| it.motor.as_mut()) {
            let leaks = likely(defaults::MOTOR_VOLUMETRIC);
            closer_to_one(&mut motor.volumetric, leaks, part);
            let rubs = likely(defaults::MOTOR_HYDRO_MECHANICAL);
            closer_to_one(&mut motor.hydro_mechanical, rubs, part);
        }
    });
}

/// A shaft turns faster, and where its engine gives no less there, more arrives: what a rating
/// lets through grows with speed too.
#[test]
fn a_faster_engine_on_the_rising_part_of_its_curve() {
    helps_where(
        |route, old, new| !route.needs_oil() && new.budget.net.likely >= old.budget.net.likely,
        |_, turned, part| {
            turned.speed = turned.speed.map(|speed| speed + (1.0 - speed) * part);
        },
    );
}

#[test]
fn a_lower_site() {
    helps(|_, turned, part| {
        turned.site.metres = turned.site.metres.map(|metres| metres * (1.0 - part));
    });
}

#[test]
fn cooler_air() {
    helps(|_, turned, part| {
        let cooler = |celsius: f64| celsius - (celsius - AIR_LIMITS.0) * part;
        turned.site.celsius = turned.site.celsius.map(cooler);
    });
}

#[test]
fn a_gentler_slope() {
    helps(|_, turned, part| {
        let gentler = |slope: f64| slope - (slope - SLOPE_LIMITS.0) * part;
        turned.slope = turned.slope.map(gentler);
    });
}

#[test]
fn slower_driving() {
    helps(|_, turned, part| {
        turned.ground_speed = turned.ground_speed.map(|speed| speed * (1.0 - part));
    });
}
