//! The release page: laid out by Trunk, its program divided and all of it finished here.

use std::env;
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
    let build = match same_everywhere() {
        None => build,
        // Cargo adds them to those of .cargo/config.toml.
        Some(flags) => build.env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUSTFLAGS", flags),
    };
    toolchain.choose(build).run()?;
    let dist = host.dist();
    program::divide(host, &dist)?;
    finish(&host.root, &dist)?;
    Ok(dist)
}

/// Flags by which the page doesn't hold where this machine keeps the sources of libraries, so that another
/// machine builds the same bytes. None for a path with spaces, at which Cargo would part them.
fn same_everywhere() -> Option<String> {
    let home = match env::var_os("CARGO_HOME") {
        Some(home) => home.into(),
        None => etcetera::home_dir().ok()?.join(".cargo"),
    };
    let home = home.to_str()?;
    (!home.contains(char::is_whitespace)).then(|| format!("--remap-path-prefix={home}=cargo"))
}
