//! The release page: laid out by Trunk, its program divided and all of it finished here.

use std::path::PathBuf;

use anyhow::Result;
use xshell::cmd;

use crate::finish::finish;
use crate::host::Host;
use crate::program;
use crate::setup::WasmToolchain;
use crate::texts;

pub fn build(host: &Host, toolchain: WasmToolchain) -> Result<PathBuf> {
    let sh = &host.sh;
    // All that the build takes from the network, so that it needs none itself.
    cmd!(sh, "cargo fetch --locked").run()?;
    texts::write(host)?;
    let build = cmd!(sh, "trunk build --release --offline")
        // Trunk takes this variable for its own option, and stops at the usual value 1.
        .env_remove("NO_COLOR");
    toolchain.choose(build).run()?;
    let dist = host.dist();
    program::divide(host, &dist)?;
    finish(&host.root, &dist)?;
    Ok(dist)
}
