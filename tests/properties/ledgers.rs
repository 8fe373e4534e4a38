//! Ledgers balance, and results are numbers in their order.

use crate::every::{hooked, loaded, pairs};
use crate::random::{settings, yard};
use farend_core::chain::Ledger;
use farend_core::compare::{Comparison, Run, compare};
use farend_core::drive::{Drive, Limit, Rate};
use farend_core::implement::Implement;
use farend_core::quantity::Power;
use farend_core::route::RouteId;
use farend_core::spread::Spread;
use farend_core::standing::Standing;
use proptest::prelude::*;
use proptest::test_runner::TestRunner;
use std::cell::RefCell;
use std::collections::HashMap;

/// Rounding of doubles over a few dozen steps, relative.
const ROUNDING: f64 = 1e-12;
/// What the ledger promises: in = out + losses, relative.
const BALANCE: f64 = 1e-9;

fn is_number(drive: Drive) -> bool {
    let rate = match drive.rate {
        Rate::Turning(speed) => speed.to_si(),
        Rate::Flowing(flow) => flow.to_si(),
    };
    drive.power.to_watts().is_finite() && rate.is_finite() && rate > 0.0
}

fn balances(ledger: &Ledger) -> Result<(), TestCaseError> {
    for passage in &ledger.passages {
        prop_assert!(is_number(passage.takes) && is_number(passage.gives));
        let (takes, gives, loss) = (
            passage.takes.power.to_watts(),
            passage.gives.power.to_watts(),
            passage.loss.to_watts(),
        );
        let off = (takes - gives - loss).abs();
        prop_assert!(
            off <= BALANCE * takes.max(1.0),
            "off by {off} W: {passage:?}"
        );
        prop_assert!(loss >= -BALANCE * takes.max(1.0), "gains: {passage:?}");
        prop_assert!(gives >= 0.0, "takes back: {passage:?}");
    }
    for two in ledger.passages.windows(2) {
        prop_assert_eq!(two[0].gives, two[1].takes);
    }
    let all_losses: f64 = ledger.passages.iter().map(|it| it.loss.to_watts()).sum();
    let taken = ledger.taken().to_watts();
    let delivered = ledger
        .delivered()
        .map_or(0.0, |drive| drive.power.to_watts());
    prop_assert!((taken - delivered - all_losses).abs() <= BALANCE * taken.max(1.0));
    prop_assert!(delivered <= taken * (1.0 + ROUNDING));

    let available = ledger.available.to_watts();
    prop_assert!(available.is_finite() && available >= 0.0);
    prop_assert!(
        taken <= available * (1.0 + ROUNDING),
        "{taken} W of {available} W"
    );
    let all_taken = taken >= available * (1.0 - BALANCE);
    if ledger.stall.is_some() {
        prop_assert!(ledger.delivered().is_none());
    } else if ledger.limit == Limit::Engine {
        prop_assert!(
            all_taken,
            "limited by the engine at {taken} W of {available} W"
        );
    }
    Ok(())
}

/// Counts the routes that were run, so that a generator that never fits fails the test.
#[test]
fn every_ledger_balances() {
    let runs: RefCell<HashMap<RouteId, (u32, u32)>> = RefCell::default();
    let result = TestRunner::new(crate::cases(400)).run(&(yard(), settings()), |(yard, turned)| {
        let yard = loaded(&yard);
        for (machine, implement) in pairs(&yard) {
            for one in hooked(
                machine,
                implement,
                &yard.kits,
                &turned.on(machine, implement),
            ) {
                balances(&one.ledger)?;
                let mut runs = runs.borrow_mut();
                let (all, stalled) = runs.entry(one.route).or_default();
                *all += 1;
                *stalled += u32::from(one.ledger.stall.is_some());
            }
        }
        Ok(())
    });
    if let Err(error) = result {
        panic!("{error}");
    }
    let runs = runs.borrow();
    for route in RouteId::ALL {
        let (all, stalled) = runs.get(route).copied().unwrap_or_default();
        assert!(all >= 100, "{} was run only {all} times", route.word());
        if route.needs_oil() {
            assert!(
                stalled > 0 && stalled < all / 2,
                "{stalled} of {all} stalled"
            );
        }
    }
}

/// The standing of delivered over needed power, by the bands as they are published in the page's
/// own words: this project's judgement.
fn standing(ratio: f64) -> Standing {
    match ratio {
        ratio if ratio >= 1.15 => Standing::Ample,
        ratio if ratio >= 1.0 => Standing::Enough,
        ratio if ratio >= 0.7 => Standing::Slower,
        ratio if ratio >= 0.4 => Standing::Labours,
        _ => Standing::Starves,
    }
}

#[test]
fn a_band_begins_at_its_number() {
    for ratio in [1.15, 1.0, 0.7, 0.4, 0.0] {
        for ratio in [ratio, ratio - 1e-9] {
            assert_eq!(Standing::of(ratio), standing(ratio), "{ratio}");
        }
    }
}

/// Delivered against needed, and below the rotor's lowest speed never better than it labours.
fn is_judged(run: &Run, need: Spread<Power>, implement: &Implement) -> Result<(), TestCaseError> {
    let ratio = run.delivered.likely / need.likely;
    let poorest = run.delivered.low / need.high;
    let best = run.delivered.high / need.low;
    let most = if run.rotor < implement.rotor.lowest {
        Standing::Labours
    } else {
        Standing::Ample
    };
    let verdict = run.verdict;
    prop_assert_eq!(verdict.ratio, ratio);
    prop_assert_eq!(verdict.likely, standing(ratio).min(most));
    prop_assert_eq!(verdict.poorest, standing(poorest).min(most));
    prop_assert_eq!(verdict.best, standing(best).min(most));
    Ok(())
}

fn is_in_order(run: &Run) -> Result<(), TestCaseError> {
    let spread = run.delivered;
    let (low, likely, high) = (
        spread.low.to_watts(),
        spread.likely.to_watts(),
        spread.high.to_watts(),
    );
    prop_assert!(0.0 <= low && low <= likely && likely <= high && high.is_finite());
    let shown = run
        .ledger
        .delivered()
        .map_or(0.0, |drive| drive.power.to_watts());
    prop_assert_eq!(shown, likely);
    let verdict = run.verdict;
    prop_assert!(verdict.ratio.is_finite() && verdict.ratio >= 0.0);
    prop_assert!(verdict.poorest <= verdict.likely && verdict.likely <= verdict.best);
    prop_assert!(run.rotor.to_rpm().is_finite());
    Ok(())
}

fn is_ranked(comparison: &Comparison) -> bool {
    let ranked = comparison.ranked();
    let runs = comparison.routes.iter().filter(|it| it.run().is_some());
    ranked.len() == runs.count()
        && ranked
            .windows(2)
            .all(|two| two[0].1.delivered.likely >= two[1].1.delivered.likely)
}

proptest! {
    #![proptest_config(crate::cases(300))]

    #[test]
    fn low_likely_and_high_are_numbers_in_order((yard, turned) in (yard(), settings())) {
        let yard = loaded(&yard);
        for (machine, implement) in pairs(&yard) {
            let comparison = compare(machine, implement, &yard.kits, &turned.on(machine, implement));
            let comparison = comparison.expect("settings within their ranges");
            let engine = comparison.budget.net;
            prop_assert!(engine.low <= engine.likely && engine.likely <= engine.high);
            prop_assert_eq!(comparison.routes.len(), RouteId::ALL.len());
            for run in comparison.routes.iter().filter_map(|result| result.run()) {
                is_in_order(run)?;
                is_judged(run, comparison.need, implement)?;
            }
            prop_assert!(is_ranked(&comparison));
        }
    }
}
