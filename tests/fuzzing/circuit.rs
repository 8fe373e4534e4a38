//! The core against the plain reference: whole circuits, from the engine to the rotor.

use crate::circuit::{Given, pump_bar};
use farend_core::chain::Ledger;

/// The limit is found by a search, and what arrives at a pressure is a difference of larger figures.
const SAME: f64 = 1e-6;
/// Part of the engine's power that the core's search may lose: it tries a number of parts before it refines
/// the peaks among them, and where two peaks nearly touch it may take the lower. Where inputs were made
/// worse step by step, 2,000,000 of them, it came to 2.3e-5.
const MISSED: f64 = 5e-5;
/// What is less than this part of the engine's power is rounding of what is lost.
const ROUNDING: f64 = 1e-9;

/// The circuit that the bytes draw.
pub fn holds(bytes: &[u8]) {
    let given = Given::drawn(bytes);
    let ledger = given.ledger();
    let delivered = ledger
        .delivered()
        .map_or(0.0, |drive| drive.power.to_kilowatts());
    if delivered > 0.0 {
        the_same_arrives(&given, &ledger, delivered);
    }
    let solved = given.solved();
    assert!(
        delivered >= solved.delivered_kw * (1.0 - SAME) - MISSED * given.engine_kw,
        "the core has only {delivered} kW by {:?}, the reference {solved:?} for {given:?}",
        ledger.limit
    );
    // in = out + losses
    let lost: f64 = ledger
        .passages
        .iter()
        .map(|it| it.loss.to_kilowatts())
        .sum();
    let off = ledger.taken().to_kilowatts() - delivered - lost;
    if ledger.stall.is_none() {
        assert!(off.abs() <= ROUNDING * given.engine_kw, "{off} kW are gone");
    }
}

/// At the core's pressure, which is allowed, as much arrives by the reference.
fn the_same_arrives(given: &Given, ledger: &Ledger, delivered: f64) {
    let bar = pump_bar(ledger).expect("a pump");
    let highest = given.highest_bar();
    assert!(
        bar <= highest * (1.0 + SAME),
        "the core has {bar} bar, the reference at most {highest} for {given:?}"
    );
    let arrives = given.arrives_kw(bar);
    let off = (delivered - arrives).abs();
    assert!(
        off <= SAME * delivered + ROUNDING * given.engine_kw,
        "at {bar} bar the core has {delivered} kW, the reference {arrives} for {given:?}"
    );
}
