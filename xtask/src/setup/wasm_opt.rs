//! wasm-opt, from the npm package binaryen: distributions carry versions too old for today's modules.

use anyhow::{Context, Result, bail};
use xshell::cmd;

use crate::host::Host;

pub fn ensure(host: &Host, version: &str) -> Result<()> {
    if has_version(host, version) {
        println!("Found wasm-opt {version} on PATH.");
        return Ok(());
    }
    let folder = host.tools.join(format!("binaryen-{version}"));
    host.prepend_path(&folder.join("node_modules").join(".bin"))?;
    if has_version(host, version) {
        println!("Found wasm-opt {version} in {}", folder.display());
        return Ok(());
    }
    println!(
        "Installing binaryen {version} with npm into {}",
        folder.display()
    );
    let sh = &host.sh;
    sh.create_dir(&folder)?;
    cmd!(sh, "npm install --prefix {folder} --no-save --no-package-lock --ignore-scripts --no-audit --no-fund binaryen@{version}")
        .run()
        .context("installing binaryen")?;
    if !has_version(host, version) {
        bail!("binaryen {version} is installed, but its wasm-opt does not run");
    }
    Ok(())
}

/// wasm-opt names only the first number of its version: "wasm-opt version 132 (version_132)".
fn has_version(host: &Host, version: &str) -> bool {
    let sh = &host.sh;
    let major = version.split('.').next();
    host.find(&["wasm-opt"]).is_some_and(|program| {
        cmd!(sh, "{program} --version")
            .quiet()
            .ignore_stderr()
            .read()
            .is_ok_and(|words| words.split_whitespace().nth(2) == major)
    })
}
