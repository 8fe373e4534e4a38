//! What stands above the columns of tables for spreadsheets, and in them.

pub use super::say::columns::{hook_up, job, kit, part, price_total, rotor, seat, why};

use super::say::columns as say;
use super::{labels, remark};
use farend_core::drive::Limit;
use farend_core::fit::Judgement;

/// What arrives: low, likely, high.
pub fn delivered() -> [&'static str; 3] {
    [
        say::delivered_low(),
        say::delivered_likely(),
        say::delivered_high(),
    ]
}

/// What the job needs: low, likely, high.
pub fn need() -> [&'static str; 3] {
    [say::need_low(), say::need_likely(), say::need_high()]
}

/// The time for the job, the quickest first.
pub fn time() -> [&'static str; 3] {
    [
        say::time_quickest(),
        say::time_likely(),
        say::time_slowest(),
    ]
}

/// A route's three prices.
pub fn prices() -> [&'static str; 3] {
    [say::price_kit(), say::price_variant(), say::price_fitting()]
}

/// What a stage takes: speed, torque, flow, pressure.
pub fn takes() -> [&'static str; 4] {
    [
        say::takes_speed(),
        say::takes_torque(),
        say::takes_flow(),
        say::takes_pressure(),
    ]
}

/// What a stage passes on: speed, torque, flow, pressure.
pub fn passes_on() -> [&'static str; 4] {
    [
        say::passes_on_speed(),
        say::passes_on_torque(),
        say::passes_on_flow(),
        say::passes_on_pressure(),
    ]
}

/// A header with the unit of what stands below it.
pub fn with_unit(name: &str, unit: &str) -> String {
    if unit.is_empty() {
        name.to_owned()
    } else {
        remark(name, unit)
    }
}

/// How many items come to a judgement, and which.
pub fn judged(judgement: Judgement) -> [&'static str; 2] {
    match judgement {
        Judgement::Pass => [say::pass(), say::pass_which()],
        Judgement::Advice => [say::advice(), say::advice_which()],
        Judgement::Question => [say::question(), say::question_which()],
        Judgement::Stop => [say::stop(), say::stop_which()],
    }
}

/// What holds a route, beside its bar.
pub fn held_by(limit: Limit) -> String {
    say::limit(labels::limit(limit))
}

/// The name of a file with a comparison's machine and implement in it.
pub fn file(machine: &str, implement: &str, ending: &str) -> String {
    format!("farend-{machine}-{implement}{ending}")
}
