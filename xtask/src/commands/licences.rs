//! deny.toml against the dependencies.

use std::process::{Command, Stdio};
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
            println!("SKIPPED: known vulnerabilities weren't looked up, for {error:#}.");
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
    // Where it can't be reached, one line of ours says so.
    command.stderr(Stdio::null());
    let status = limited::run(&mut command, Duration::from_secs(60), &[])?;
    if !status.success() {
        bail!("their database can't be reached from here ({status})");
    }
    Ok(())
}
