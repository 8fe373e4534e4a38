//! Random cases that are the same each time. A module of each test that draws some: the library of these
//! tests, which the fuzzer is built with too, does without proptest.

use proptest::test_runner::{Config, RngSeed};

/// So many cases, the same each time unless the environment wants others. What is found isn't kept by
/// proptest: each caller says what becomes of it.
pub fn cases(number: u32) -> Config {
    let asked = Config::default();
    Config {
        cases: match std::env::var_os("PROPTEST_CASES") {
            None => number,
            Some(_) => asked.cases,
        },
        rng_seed: match asked.rng_seed {
            RngSeed::Random => RngSeed::Fixed(540),
            fixed => fixed,
        },
        failure_persistence: None,
        ..asked
    }
}
