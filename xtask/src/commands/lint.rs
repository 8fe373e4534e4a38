//! Format and lints; a warning fails.

use anyhow::Result;
use xshell::cmd;

use crate::host::Host;
use crate::setup::{TARGET, WasmToolchain};

pub fn format(host: &Host) -> Result<()> {
    let sh = &host.sh;
    Ok(cmd!(sh, "cargo fmt --all --check").run()?)
}

pub fn clippy(host: &Host) -> Result<()> {
    let sh = &host.sh;
    Ok(cmd!(sh, "cargo clippy --workspace --all-targets -- -D warnings").run()?)
}

/// What is compiled for the browser: the page with its calculation, and the tests that run there.
pub fn clippy_wasm(host: &Host, toolchain: WasmToolchain) -> Result<()> {
    let sh = &host.sh;
    let page = cmd!(
        sh,
        "cargo clippy --package farend-core --package farend-app --target {TARGET} -- -D warnings"
    );
    toolchain.choose(page).run()?;
    let tests = cmd!(
        sh,
        "cargo clippy --package farend-tests --test browser --target {TARGET} -- -D warnings"
    );
    Ok(toolchain.choose(tests).run()?)
}
