//! rustfmt and clippy of the active toolchain; a minimal one comes without them.

use std::process::Command;
use std::time::Duration;

use anyhow::{Result, bail};
use xshell::cmd;

use super::wasm_target;
use crate::host::Host;
use crate::limited;

pub fn ensure(host: &Host) -> Result<()> {
    if present(host) {
        println!("Found in the active toolchain.");
        return Ok(());
    }
    println!("Adding them with rustup.");
    let mut command = Command::new("rustup");
    command.args(["component", "add", "rustfmt", "clippy"]);
    wasm_target::be_brief(&mut command);
    let added = limited::run(&mut command, Duration::from_secs(60), &[]);
    if matches!(added, Ok(status) if status.success()) && present(host) {
        return Ok(());
    }
    bail!(
        "the active toolchain lacks rustfmt or clippy: run `rustup component add rustfmt clippy`"
    );
}

fn present(host: &Host) -> bool {
    let sh = &host.sh;
    ["fmt", "clippy"].iter().all(|part| {
        cmd!(sh, "cargo {part} --version")
            .quiet()
            .ignore_stdout()
            .ignore_stderr()
            .run()
            .is_ok()
    })
}
