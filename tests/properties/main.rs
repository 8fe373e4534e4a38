//! What must hold for every yard and every setting, tried on random ones.
//!
//! The same random ones each time: `PROPTEST_RNG_SEED` gives others, `PROPTEST_CASES` more.

mod choice;
mod claims;
mod controls;
mod damage;
mod editing;
mod every;
mod files;
mod fit;
mod friction;
mod hydraulics;
mod ledgers;
mod limits;
mod monotone;
mod plain;
mod random;
mod ranges;
#[path = "../seeded.rs"]
mod seeded;
mod shafts;
mod tables;
mod units;
mod uses;
mod wanted;
mod work;

use proptest::test_runner::Config;

/// So many cases, the same each time unless the environment wants others. A fault found gets a test of
/// its own.
fn cases(number: u32) -> Config {
    let seeded = seeded::cases(number);
    Config {
        // A yard of many fields takes minutes to shrink: only where the environment asks for it.
        max_shrink_iters: match std::env::var_os("PROPTEST_MAX_SHRINK_ITERS") {
            None => 0,
            Some(_) => seeded.max_shrink_iters,
        },
        ..seeded
    }
}
