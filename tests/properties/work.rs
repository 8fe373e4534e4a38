//! The implement at work: the work done is what the route can do, and the oil's heat adds up.

use crate::every::{Case, each_route, is_sound};
use crate::random::{settings, yard};
use farend_core::budget::Budget;
use farend_core::chain::Chain;
use farend_core::drive::Rate;
use farend_core::physics::heat::{still_air_by_btu_rule, still_air_by_horsepower_rule};
use farend_core::quantity::{Conductance, Power, TemperatureDifference, Time, Velocity};
use farend_core::sensitivity::influences;
use farend_core::settings::Settings;
use farend_core::spread::Corner;
use farend_core::stage::{AtWork, OilAtWork, Stage, StageKind, StagePhysics};
use farend_core::thermal::{SurfaceRule, heat};
use farend_core::work::{Load, progress};
use proptest::prelude::*;
use proptest::test_runner::TestRunner;
use std::cell::Cell;

/// How close the search for a working point comes, relative.
const CLOSE: f64 = 1e-9;

/// Tries something on each route of random yards that runs; it must have been of use often enough.
fn on_each_route(cases: u32, fewest: u32, holds: impl Fn(Case<'_>) -> Result<bool, TestCaseError>) {
    let used = Cell::new(0_u32);
    let random = (yard(), settings());
    let result = TestRunner::new(crate::cases(cases)).run(&random, |(entry, turned)| {
        each_route(&entry, &turned, |case| {
            used.set(used.get() + u32::from(holds(case)?));
            Ok(())
        })
    });
    if let Err(error) = result {
        panic!("{error}");
    }
    assert!(used.get() >= fewest, "only {} times", used.get());
}

/// Where the load can be met, what arrives is the load, and nothing is beyond its limit; where it
/// can't, less arrives.
#[test]
fn at_work_the_load_is_met() {
    on_each_route(150, 150, |case| {
        let chain = case.joined.chain(Corner::LIKELY);
        let (most, _) = chain.most().expect("it joins");
        let load = Load::new(case.hookup.implement, case.need);
        let working = chain.working(most, |speed| load.at(speed));
        if working.stall.is_some() {
            prop_assert_eq!(working, most);
            return Ok(false);
        }
        let Rate::Turning(speed) = working.end.rate else {
            return Err(TestCaseError::fail("a rotor turns"));
        };
        let (arrives, asked) = (working.arrives().to_watts(), load.at(speed).to_watts());
        let allowed = CLOSE * most.end.power.to_watts();
        if working.part == most.part {
            prop_assert!(arrives <= asked + allowed);
            return Ok(false);
        }
        prop_assert!((arrives - asked).abs() <= CLOSE * asked + allowed);
        prop_assert!(working.part <= most.part);
        prop_assert!(working.strain <= 1.0 + CLOSE);
        Ok(true)
    });
}

/// Every watt that the pump takes and the motor doesn't hand on heats the oil, and none other.
#[test]
fn every_lost_watt_heats_the_oil_once() {
    on_each_route(150, 200, |case| {
        let chain = case.joined.chain(Corner::LIKELY);
        let (most, limit) = chain.most().expect("it joins");
        let ledger = chain.ledger(&most, limit).expect("it joins");
        let of = |kind| ledger.passages.iter().find(|it| it.stage.kind() == kind);
        let (Some(pump), Some(motor)) = (of(StageKind::Pump), of(StageKind::Motor)) else {
            return Ok(false);
        };
        let between = (pump.takes.power - motor.gives.power).to_watts();
        let heats = ledger.heats_oil().to_watts();
        prop_assert!(
            (between - heats).abs() <= CLOSE * between,
            "{heats} W, not {between} W"
        );
        prop_assert_eq!(heats, most.heat.to_watts());
        Ok(true)
    });
}

/// Where the oil settles, tank and cooler shed just what is lost there; a tank that never gets to
/// its limit settles below it.
#[test]
fn the_oil_settles_where_as_much_is_shed_as_lost() {
    on_each_route(60, 30, |case| {
        let air = case.hookup.settings.air();
        let load = Load::new(case.hookup.implement, case.need);
        let Some(found) = heat(&case.joined, load, air) else {
            return Ok(false);
        };
        prop_assert!(found.lost.to_watts().is_finite() && found.idle >= Power::ZERO);
        let mut settled = false;
        for settling in found.settling {
            let film = match settling.rule {
                SurfaceRule::Btu => still_air_by_btu_rule(),
                SurfaceRule::Horsepower => still_air_by_horsepower_rule(),
            };
            let reservoir = case.joined.filling.reservoir;
            let shed = film * found.surface + reservoir.cooler.unwrap_or(Conductance::ZERO);
            if let Some(for_good) = settling.for_good {
                let most = case.joined.budget.left(Corner::LIKELY);
                prop_assert!(Power::ZERO <= for_good && for_good <= most * (1.0 + 1e-6));
            }
            let Some(at) = settling.at else { continue };
            settled = true;
            // Close above the limit it may take forever.
            prop_assert!(
                at > found.limit || settling.to_limit.is_none(),
                "{settling:?}"
            );
            // A pump that always holds its set pressure loses more, which its ledger doesn't show.
            let throttled = case
                .joined
                .stages
                .iter()
                .any(|stage| matches!(stage, Stage::Pump(pump) if pump.demand.is_some()));
            if throttled {
                continue;
            }
            let lost = |kelvins| {
                let warm = at + TemperatureDifference::kelvins(kelvins);
                let chain = Chain {
                    at: AtWork::new(
                        &OilAtWork::of(&case.joined.filling.oil, warm),
                        Corner::LIKELY,
                    ),
                    ..case.joined.chain(Corner::LIKELY)
                };
                let (most, _) = chain.most().expect("it joins");
                let working = chain.working(most, |speed| load.at(speed));
                working.heat.to_watts()
            };
            // Where warmer oil just meets a load that colder oil doesn't, the loss jumps.
            let sheds = (shed * (at - air)).to_watts();
            let (colder, warmer) = (lost(-1e-3), lost(1e-3));
            prop_assert!(
                colder >= sheds * (1.0 - 1e-3),
                "{colder} W, sheds {sheds} W"
            );
            prop_assert!(
                warmer <= sheds * (1.0 + 1e-3),
                "{warmer} W, sheds {sheds} W"
            );
        }
        Ok(settled)
    });
}

/// Low, likely and high of the work are in order, and what is worked at the most is within reach:
/// the power for it is no more than the route delivers.
#[test]
fn the_most_work_is_within_reach() {
    on_each_route(100, 40, |mut case| {
        let Some(found) = progress(
            &mut case.joined,
            case.hookup.machine,
            case.hookup.implement,
            case.hookup.settings,
        ) else {
            return Ok(false);
        };
        let rate = found.rate;
        prop_assert!(0.0 <= rate.low && rate.low <= rate.likely && rate.likely <= rate.high);
        prop_assert!(rate.high.is_finite());
        if let Some(time) = found.time {
            let after = |time: Option<Time>| time.map_or(f64::INFINITY, Time::to_seconds);
            prop_assert!(after(time.low) <= after(time.likely));
            prop_assert!(after(time.likely) <= after(time.high));
        }
        let work = case.hookup.implement.work.expect("its work is known");
        let x = found.rotor / case.hookup.implement.rotor.rated;
        let asked = work.power(Corner::LIKELY, rate.likely, x);
        // Standing still it has all of the budget; driving only takes from it.
        let standing = Settings {
            ground_speed: Some(Velocity::ZERO),
            ..*case.hookup.settings
        };
        let budget = Budget::at(
            case.hookup.machine,
            case.hookup.implement,
            &standing,
            Velocity::ZERO,
        );
        let chain = Chain {
            available: budget.left(Corner::LIKELY),
            ..case.joined.chain(Corner::LIKELY)
        };
        let (most, _) = chain.most().expect("it joins");
        if is_sound(&case.run.ledger) && rate.likely > 0.0 {
            let most = most.arrives().to_watts();
            prop_assert!(
                asked.to_watts() <= most * (1.0 + 1e-6),
                "{asked:?} of {most} W"
            );
        }
        Ok(rate.likely > 0.0)
    });
}

/// The list of what matters has every open figure once, the one that moves the most first.
#[test]
fn what_matters_most_stands_first() {
    on_each_route(40, 100, |mut case| {
        let mut open = 0;
        case.joined
            .visit(&mut |_, _, _, figure| open += usize::from(figure.is_open()));
        let all = influences(&mut case.joined);
        prop_assert_eq!(all.len(), open);
        for two in all.windows(2) {
            prop_assert!(two[0].span() >= two[1].span());
        }
        Ok(open > 0)
    });
}
