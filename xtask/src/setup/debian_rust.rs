//! Debian's compiler with a standard library for wasm32 that is built here from its sources.
//!
//! The way for machines that reach Debian's packages but not Rust's own servers.

use std::fs;
use std::path::{Path, PathBuf};

use anyhow::{Context, Result, bail};
use xshell::cmd;

use super::apt;
use super::wasm_target::TARGET;
use crate::host::Host;

/// As a toolchain's path for rustup, which needs no link of its own for it.
pub const PREFIX: &str = "/usr";
pub const RUSTC: &str = "/usr/bin/rustc";
pub const LINKER: &str = "/usr/bin/wasm-ld-22";

const CARGO: &str = "/usr/bin/cargo";
const PACKAGES: [&str; 5] = [
    "rustc-web",
    "cargo-web",
    "rust-web-src",
    "rust-web-clippy",
    "lld-22",
];
const LIBRARY_FOLDER: &str = "/usr/lib/rustlib/wasm32-unknown-unknown/lib";

/// The name of the crate that is compiled only to have the standard library compiled with it.
const CARRIER: &str = "carrier";

const MANIFEST: &str = r#"[package]
name = "carrier"
version = "0.0.0"
edition = "2024"

[profile.release]
panic = "abort"

# Not a member of the workspace around it.
[workspace]
"#;

pub fn install(host: &Host) -> Result<()> {
    if !Path::new("/etc/debian_version").exists() {
        bail!("this machine is no Debian");
    }
    apt::install(host, &PACKAGES)?;
    let libraries = build(host).context("building the standard library")?;
    copy(host, &libraries)
}

fn build(host: &Host) -> Result<Vec<PathBuf>> {
    let sh = &host.sh;
    let folder = host.scratch().join("wasm-std");
    let target = folder.join("target");
    sh.remove_path(&folder)?;
    sh.write_file(folder.join("Cargo.toml"), MANIFEST)?;
    sh.write_file(folder.join("src").join("lib.rs"), "#![no_std]\n")?;

    let _in_folder = sh.push_dir(&folder);
    cmd!(
        sh,
        "{CARGO} build --release --target {TARGET} -Zbuild-std=std,panic_abort,proc_macro,test"
    )
    .env("RUSTC", RUSTC)
    .env("CARGO_TARGET_DIR", &target)
    // Building the standard library is open to nightly only; this compiler builds its own sources.
    .env("RUSTC_BOOTSTRAP", "1")
    // Without it a build with LTO finds no bitcode in these libraries.
    .env("RUSTFLAGS", "-Cembed-bitcode=yes")
    .env_remove("CARGO")
    .env_remove("RUSTUP_TOOLCHAIN")
    .run()?;

    let own = format!("lib{CARRIER}-");
    let mut libraries = Vec::new();
    for entry in fs::read_dir(target.join(TARGET).join("release").join("deps"))? {
        let path = entry?.path();
        let is_own = path
            .file_name()
            .is_some_and(|name| name.to_string_lossy().starts_with(&own));
        if path
            .extension()
            .is_some_and(|extension| extension == "rlib")
            && !is_own
        {
            libraries.push(path);
        }
    }
    Ok(libraries)
}

fn copy(host: &Host, libraries: &[PathBuf]) -> Result<()> {
    println!("Copying {} libraries to {LIBRARY_FOLDER}", libraries.len());
    // Libraries of an earlier compiler version would be found beside the new ones.
    apt::as_root(host, "rm")?
        .args(["-rf", LIBRARY_FOLDER])
        .run()?;
    apt::as_root(host, "mkdir")?
        .args(["-p", LIBRARY_FOLDER])
        .run()?;
    apt::as_root(host, "cp")?
        .args(libraries)
        .arg(LIBRARY_FOLDER)
        .quiet()
        .run()
        .context("copying the standard library")
}
