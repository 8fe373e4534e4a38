//! The core against the plain reference: whole circuits, from the engine to the rotor.

use crate::circuit::Given;

/// Both search for the most that arrives, and a search knows the place of a peak to half of all digits.
const SAME: f64 = 1e-6;
/// Part of the engine's power. The reference tries 400 pressures before it refines the best of them, and a
/// peak that is narrower than their distance w is missed: it is about (w/2)² of what flows, so high.
const MISSED: f64 = 1e-5;
/// What is less than this part of the engine's power is rounding of what is lost.
const ROUNDING: f64 = 1e-9;

/// The circuit that the bytes draw.
pub fn holds(bytes: &[u8]) {
    let given = Given::drawn(bytes);
    let solved = given.solved();
    let ledger = given.ledger();
    let delivered = ledger
        .delivered()
        .map_or(0.0, |drive| drive.power.to_kilowatts());
    let off = (delivered - solved.delivered_kw).abs();
    let allowed = SAME * solved.delivered_kw + MISSED * given.engine_kw;
    assert!(
        off <= allowed,
        "the core has {delivered} kW by {:?}, the reference {solved:?} for {given:?}",
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
