//! deny.toml against the dependencies.

use std::process::Command;
use std::time::Duration;

use anyhow::{Context, Result, bail};
use xshell::cmd;

use crate::host::Host;
use crate::limited;

pub fn check(host: &Host) -> Result<()> {
    let sh = &host.sh;
    cmd!(
        sh,
        "cargo-deny check --hide-inclusion-graph bans licenses sources"
    )
    .run()?;
    match fetch_advisories(host) {
        Ok(()) => Ok(cmd!(sh, "cargo-deny check --disable-fetch advisories").run()?),
        Err(error) => {
            println!(
                "SKIPPED: known vulnerabilities, as their database was not reached: {error:#}"
            );
            Ok(())
        }
    }
}

fn fetch_advisories(host: &Host) -> Result<()> {
    let program = host
        .find(&["cargo-deny"])
        .context("cargo-deny is not on PATH")?;
    let mut command = Command::new(program);
    command.args(["fetch", "db"]).current_dir(&host.root);
    let status = limited::run(&mut command, Duration::from_secs(60), &[])?;
    if !status.success() {
        bail!("it ended with {status}");
    }
    Ok(())
}
