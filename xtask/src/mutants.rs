//! Mutants of what has changed: each must make a test fail.

use anyhow::Result;
use xshell::cmd;

use crate::host::Host;

/// Changes one thing at a time in what differs from `since`, and runs the tests that
/// `.cargo/mutants.toml` names.
pub fn run(host: &Host, since: &str) -> Result<()> {
    let sh = &host.sh;
    let diff = cmd!(sh, "git diff --merge-base {since} -- core").read()?;
    if diff.is_empty() {
        println!("The core is as it was in {since}: nothing to change.");
        return Ok(());
    }
    let folder = host.scratch();
    let path = folder.join("mutants.diff");
    sh.write_file(&path, format!("{diff}\n"))?;
    Ok(cmd!(
        sh,
        "cargo-mutants mutants --in-diff {path} --output {folder}"
    )
    .run()?)
}
