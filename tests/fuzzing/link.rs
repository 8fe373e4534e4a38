//! A link's fragment, and a link's body with a check sum that fits.

use super::alike::assert_alike;
use super::faults_hold;
use crate::demo;
use base64::Engine as _;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use farend_core::compare::compare;
use farend_core::state::{LONGEST_LINK, State};
use farend_core::yard::Yard;
use std::sync::LazyLock;

static YARD: LazyLock<Yard> = LazyLock::new(demo);

/// The bytes as text, and as what a link's text says.
pub fn holds(bytes: &[u8]) {
    fragment_holds(&super::text(bytes));
    let sum = crc32fast::hash(bytes).to_le_bytes();
    fragment_holds(&URL_SAFE_NO_PAD.encode([bytes, &sum].concat()));
}

fn fragment_holds(fragment: &str) {
    let Ok(state) = State::from_link(fragment) else {
        return;
    };
    assert!(fragment.len() <= LONGEST_LINK);
    let again = State::from_link(&state.to_link());
    assert_alike(&again, &Ok::<_, ()>(&state));
    settings_hold(&state);
}

/// Numbers come through unlooked at: what suits no machine is refused before anything is computed.
fn settings_hold(state: &State) {
    let (Some(machine), Some(implement)) = (YARD.machines.first(), YARD.implements.first()) else {
        return;
    };
    match state.settings.check(machine) {
        Err(faults) => {
            faults_hold(&faults);
            assert!(compare(machine, implement, &YARD.kits, &state.settings).is_err());
        }
        Ok(()) => {
            let all = compare(machine, implement, &YARD.kits, &state.settings);
            let all = all.expect("settings that suit the machine");
            for run in all.routes.iter().filter_map(|route| route.run()) {
                let delivered = run.delivered.likely.to_watts();
                assert!(delivered.is_finite() && delivered >= 0.0, "{delivered}");
            }
        }
    }
}
