//! The usual cautions, paraphrased from public guidance, and what the figures take for granted.

pub use super::say::cautions::lead;

use super::say::cautions as say;
use farend_core::route::RouteId;

/// A caution and where it comes from.
pub struct Caution {
    /// What to mind.
    pub text: &'static str,
    /// Where it comes from.
    pub source: &'static str,
}

/// Rules have the same names everywhere.
const GUARDING_RULES: &str = "29 CFR 1928.57; NIOSH 2004-101";

/// For every route with a shaft.
fn of_shafts() -> [Caution; 3] {
    [
        Caution {
            text: say::guards(),
            source: GUARDING_RULES,
        },
        Caution {
            text: say::engine_off(),
            source: GUARDING_RULES,
        },
        Caution {
            text: say::never_step_over(),
            source: say::university_advice(),
        },
    ]
}

/// For every route with oil.
fn of_oil() -> [Caution; 3] {
    [
        Caution {
            text: say::trapped_pressure(),
            source: say::extension_advice(),
        },
        Caution {
            text: say::leaks(),
            source: say::extension_advice(),
        },
        Caution {
            text: say::hot_oil(),
            source: say::common_practice(),
        },
    ]
}

/// For every route.
fn of_all() -> [Caution; 2] {
    [
        Caution {
            text: say::carry_low(),
            source: say::loader_manual(),
        },
        Caution {
            text: say::flung_stones(),
            source: say::common_practice(),
        },
    ]
}

/// Those for a route.
pub fn of_route(route: RouteId) -> impl Iterator<Item = Caution> {
    let shafts = route.has_pto().then(of_shafts);
    let oil = route.needs_oil().then(of_oil);
    let of_its_kind = shafts.into_iter().chain(oil).flatten();
    of_its_kind.chain(of_all())
}

/// What the figures take for granted.
pub fn assumed() -> [&'static str; 7] {
    [
        say::net_power(),
        say::driving(),
        say::ranges(),
        say::efficiencies(),
        say::hooking_up(),
        say::standings(),
        say::units(),
    ]
}

/// The equations that are used.
pub fn models() -> [&'static str; 7] {
    [
        say::model_engine(),
        say::model_pumps(),
        say::model_lines(),
        say::model_oil(),
        say::model_joints(),
        say::model_heat(),
        say::model_work(),
    ]
}

/// What isn't modelled.
pub fn not_modelled() -> [&'static str; 7] {
    [
        say::not_sag(),
        say::not_slip(),
        say::not_other_heat(),
        say::not_foam(),
        say::not_shock(),
        say::not_peaks(),
        say::not_air_drag(),
    ]
}
