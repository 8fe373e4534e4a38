//! Debian's packages.

use anyhow::{Context, Result, bail};
use xshell::{Cmd, cmd};

use crate::host::Host;

pub fn install(host: &Host, packages: &[&str]) -> Result<()> {
    if host.find(&["apt-get"]).is_none() {
        bail!("this machine has no apt-get");
    }
    println!("Installing with apt-get: {}", packages.join(" "));
    as_root(host, "apt-get")?
        .args(["update", "--quiet=2"])
        .run()
        .context("apt-get update")?;
    as_root(host, "apt-get")?
        .args([
            "install",
            "--yes",
            "--quiet=2",
            "--option=Dpkg::Use-Pty=0",
            "--no-install-recommends",
        ])
        .args(packages)
        .env("DEBIAN_FRONTEND", "noninteractive")
        .run()
        .context("apt-get install")
}

/// `program` with the rights of root, or an error where that would need a password.
pub fn as_root<'a>(host: &'a Host, program: &str) -> Result<Cmd<'a>> {
    let sh = &host.sh;
    if cmd!(sh, "id -u").quiet().read()? == "0" {
        return Ok(cmd!(sh, "{program}"));
    }
    if host.find(&["sudo"]).is_some()
        && cmd!(sh, "sudo -n true")
            .quiet()
            .ignore_stderr()
            .run()
            .is_ok()
    {
        return Ok(cmd!(sh, "sudo -n {program}"));
    }
    bail!("{program} needs root, or sudo without a password");
}
