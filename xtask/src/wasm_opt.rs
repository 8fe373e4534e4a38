//! wasm-opt, small before fast.

use std::path::Path;

use anyhow::{Result, bail};
use xshell::cmd;

use crate::host::Host;

/// The features are those that the compiler uses. All of them would let wasm-opt write what browsers
/// refuse.
const OPTIONS: [&str; 11] = [
    "-Oz",
    "--enable-bulk-memory",
    "--enable-bulk-memory-opt",
    "--enable-call-indirect-overlong",
    "--enable-multivalue",
    "--enable-mutable-globals",
    "--enable-nontrapping-float-to-int",
    "--enable-reference-types",
    "--enable-sign-ext",
    "--strip-producers",
    "--strip-target-features",
];

/// Puts what becomes of a module in its place.
pub fn run(host: &Host, module: &Path) -> Result<()> {
    let sh = &host.sh;
    let told = cmd!(sh, "wasm-opt {OPTIONS...} {module} -o {module}")
        .ignore_status()
        .output()?;
    if !told.status.success() {
        let told = String::from_utf8_lossy(&told.stderr);
        bail!("wasm-opt on {}: {told}", module.display());
    }
    Ok(())
}
