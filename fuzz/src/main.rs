//! One program for all targets: `FAREND_TARGET` names the one that is tried.

#![no_main]

use farend_tests::fuzzing::{Target, target};
use libfuzzer_sys::fuzz_target;
use std::env;
use std::sync::LazyLock;

static TARGET: LazyLock<Target> = LazyLock::new(|| {
    let name = env::var("FAREND_TARGET").expect("FAREND_TARGET names a target");
    target(&name)
});

fuzz_target!(|bytes: &[u8]| (TARGET.holds)(bytes));
