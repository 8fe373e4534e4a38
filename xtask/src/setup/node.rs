//! Node, which runs wasm-opt and the browser flows, and the packages of its scripts.

use std::fs;
use std::path::Path;
use std::time::SystemTime;

use anyhow::{Context, Result, anyhow};
use xshell::cmd;

use super::apt;
use crate::host::Host;

const OLDEST: u32 = 20;

pub fn ensure(host: &Host) -> Result<()> {
    if let Some(version) = usable(host) {
        println!("Found node {version}.");
        return Ok(());
    }
    let reason = match apt::install(host, &["nodejs", "npm"]) {
        Ok(()) => anyhow!("the distribution's own is older"),
        Err(error) => error,
    };
    if let Some(version) = usable(host) {
        println!("Installed node {version}.");
        return Ok(());
    }
    Err(reason).with_context(|| {
        format!("node {OLDEST} or later with npm is missing: install it, then run this again")
    })
}

/// The version of the node on PATH, if it is recent enough and npm is there too.
fn usable(host: &Host) -> Option<String> {
    let sh = &host.sh;
    host.find(&["npm"])?;
    host.find(&["node"])?;
    let words = cmd!(sh, "node --version").quiet().read().ok()?;
    let version = words.trim_start_matches('v');
    let major: u32 = version.split('.').next()?.parse().ok()?;
    (major >= OLDEST).then(|| version.to_owned())
}

/// The packages that scripts of a folder use.
pub fn ensure_packages(host: &Host, name: &str) -> Result<()> {
    let folder = host.root.join(name);
    let wanted = folder.join("package-lock.json");
    // npm writes this file last, so an interrupted installation lacks it.
    let installed = folder.join("node_modules").join(".package-lock.json");
    if changed(&installed).is_some_and(|time| Some(time) >= changed(&wanted)) {
        println!("Up to date in {name}/node_modules.");
        return Ok(());
    }
    let sh = &host.sh;
    cmd!(
        sh,
        "npm ci --prefix {folder} --ignore-scripts --no-audit --no-fund"
    )
    .run()
    .with_context(|| format!("installing the packages of {name}"))
}

fn changed(path: &Path) -> Option<SystemTime> {
    fs::metadata(path).ok()?.modified().ok()
}
