//! Random oils and tanks.

use super::log;
use farend_core::physics::oil::Grade;
use farend_core::yard::entry::{OilEntry, ReservoirEntry};
use proptest::option;
use proptest::prelude::*;

/// A grade, or the viscosities of a sheet: as warm oils thin, from a third to a seventeenth.
pub fn oil() -> BoxedStrategy<OilEntry> {
    let of_sheet = (log(8.0, 500.0), 0.06..0.4_f64)
        .prop_map(|(at_40, part)| (None, Some(at_40), Some((at_40 * part).clamp(2.0, 50.0))));
    let grade = proptest::sample::select(Grade::ALL).prop_map(|grade| (Some(grade), None, None));
    (prop_oneof![grade, of_sheet], option::of(700.0..=1200.0_f64))
        .prop_map(|((grade, cst_40, cst_100), kg_m3)| OilEntry {
            grade,
            cst_40,
            cst_100,
            kg_m3,
        })
        .boxed()
}

/// A tank of which more or less is known.
pub fn reservoir() -> BoxedStrategy<ReservoirEntry> {
    (option::of(log(2.0, 1000.0)), option::of(0.0..=5000.0_f64))
        .prop_map(|(oil_l, cooler_w_k)| ReservoirEntry { oil_l, cooler_w_k })
        .boxed()
}
