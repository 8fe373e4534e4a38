//! The native half of what `browser.rs` checks in Chromium.

#[test]
fn the_native_build_gives_the_committed_bits() {
    farend_tests::fingerprint::assert_committed();
}
