//! Tests of the native build, and tests that run inside the browser.

use std::fs;
use std::path::PathBuf;

use anyhow::{Context, Result};
use serde_json::Value;
use xshell::cmd;

use crate::host::Host;
use crate::setup::{Browser, TARGET, WasmToolchain};

pub fn native(host: &Host) -> Result<()> {
    let sh = &host.sh;
    if host.find(&["cargo-nextest"]).is_none() {
        println!("cargo-nextest is not on PATH: cargo test does the same, slower.");
        return Ok(cmd!(sh, "cargo test --workspace").run()?);
    }
    cmd!(sh, "cargo nextest run --workspace").run()?;
    // nextest runs no doc tests.
    Ok(cmd!(sh, "cargo test --workspace --doc").run()?)
}

/// What becomes of golden files that aren't there.
#[derive(Clone, Copy, PartialEq)]
pub enum Golden {
    Checked,
    Written,
}

/// Holds every golden file against its format and its check sum.
pub fn golden(host: &Host, golden: Golden) -> Result<()> {
    let sh = &host.sh;
    let test = cmd!(
        sh,
        "cargo test --quiet --package farend-tests --test golden -- --nocapture"
    );
    Ok(match golden {
        Golden::Checked => test,
        Golden::Written => test.env("FAREND_WRITE_GOLDEN", "1"),
    }
    .run()?)
}

pub fn in_browser(host: &Host, toolchain: WasmToolchain, browser: &Browser) -> Result<()> {
    let capabilities = capabilities(host, browser)?;
    let sh = &host.sh;
    let tests = cmd!(
        sh,
        "cargo test --package farend-tests --test browser --target {TARGET}"
    )
    .env(
        "CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER",
        "wasm-bindgen-test-runner",
    )
    .env("CHROMEDRIVER", &browser.driver)
    .env("WASM_BINDGEN_TEST_WEBDRIVER_JSON", capabilities);
    Ok(toolchain.choose(tests).run()?)
}

/// The committed options with the path of this machine's Chromium, which no committed file can know.
fn capabilities(host: &Host, browser: &Browser) -> Result<PathBuf> {
    let committed = host.root.join("tests").join("webdriver.json");
    let text = fs::read_to_string(&committed).context("reading tests/webdriver.json")?;
    let mut capabilities: Value = serde_json::from_str(&text).context("tests/webdriver.json")?;
    let options = capabilities
        .get_mut("goog:chromeOptions")
        .and_then(Value::as_object_mut)
        .context("tests/webdriver.json has no goog:chromeOptions")?;
    let chromium = browser.chromium.to_string_lossy();
    options.insert("binary".to_owned(), Value::from(chromium));

    let completed = host.scratch().join("webdriver.json");
    host.sh.write_file(&completed, capabilities.to_string())?;
    Ok(completed)
}
