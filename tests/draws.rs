//! One number for practice cases of the demo yard: the same natively and in a browser.

use crate::demo;
use crc32fast::Hasher;
use farend_core::practice::{Draw, Kind, draw};

/// What [`fingerprint`] was when cases last changed on purpose.
pub const COMMITTED: u32 = 0xddc5_3e96;

/// Seeds of each kind.
const SEEDS: u32 = 12;

/// CRC-32 of some cases of every kind, as JSON.
///
/// # Panics
/// Where a case can't be drawn or written.
pub fn fingerprint() -> u32 {
    let yard = demo();
    let mut hasher = Hasher::new();
    for kind in Kind::ALL {
        for seed in 0..SEEDS {
            let case = draw(&yard, Draw { kind: *kind, seed }).expect("the demo yard has cases");
            hasher.update(&serde_json::to_vec(&case).expect("plain fields"));
        }
    }
    hasher.finalize()
}

/// Panics where the fingerprint isn't the committed one.
///
/// # Panics
/// As said.
pub fn assert_committed() {
    let now = fingerprint();
    assert_eq!(
        now, COMMITTED,
        "seeds draw other cases now, so that links of trainers ask other things: if the native test \
         says {now:#x} as well, and that was meant, COMMITTED in tests/draws.rs becomes that; if \
         only one of the two tests fails, something depends on the platform"
    );
}
