//! Tests that need a real browser. They run in Chromium, by `cargo xtask test`.

#![cfg(target_arch = "wasm32")]

use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

#[wasm_bindgen_test]
fn numbers_have_the_width_that_the_browser_gives() {
    assert_eq!(usize::BITS, 32);
}
