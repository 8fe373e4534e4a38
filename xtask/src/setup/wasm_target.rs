//! A compiler for wasm32-unknown-unknown: what is there, else rustup's, else Debian's.

use std::ffi::OsStr;
use std::path::PathBuf;
use std::process::Command;
use std::time::Duration;

use anyhow::{Result, bail};
use xshell::{Cmd, cmd};

use super::debian_rust;
use crate::host::Host;
use crate::limited;

pub const TARGET: &str = "wasm32-unknown-unknown";

const BY_HAND: &str = "\
no compiler for wasm32-unknown-unknown. By hand, one of:
  1. with a network that reaches Rust's servers:
       rustup target add wasm32-unknown-unknown
  2. on a Debian whose packages include rustc-web, as root:
       apt-get install --no-install-recommends rustc-web cargo-web rust-web-src rust-web-clippy lld-22
     and then, as root again, so that the standard library can be built and copied beside it:
       cargo xtask setup
  3. any toolchain that has the target, made the active one:
       rustup default NAME";

#[derive(Clone, Copy)]
pub enum WasmToolchain {
    /// The one that also compiles the rest.
    Active,
    Debian,
}

impl WasmToolchain {
    /// Makes `command` compile with this toolchain.
    pub fn choose<'a>(self, command: Cmd<'a>) -> Cmd<'a> {
        match self {
            Self::Active => command,
            Self::Debian => command
                .env("RUSTUP_TOOLCHAIN", debian_rust::PREFIX)
                .env(
                    "CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER",
                    debian_rust::LINKER,
                )
                // Cargo hands its own path down, and the other toolchain's would take it for its own.
                .env_remove("CARGO"),
        }
    }
}

pub fn ensure(host: &Host) -> Result<WasmToolchain> {
    if active_works(host) {
        println!(
            "Found {TARGET} in the active toolchain: {}",
            sysroot(host)?.display()
        );
        return Ok(WasmToolchain::Active);
    }
    if debian_works(host) {
        println!(
            "Found {TARGET} in Debian's toolchain, from an earlier set-up: {}",
            debian_rust::RUSTC
        );
        return Ok(WasmToolchain::Debian);
    }
    match add_with_rustup(host) {
        Ok(()) => {
            println!("Added {TARGET} with rustup to {}", sysroot(host)?.display());
            return Ok(WasmToolchain::Active);
        }
        Err(error) => println!("rustup could not add it: {error:#}"),
    }
    println!("Taking Debian's compiler and building its standard library for {TARGET} instead.");
    if let Err(error) = debian_rust::install(host) {
        bail!("{error:#}\n{BY_HAND}");
    }
    if !debian_works(host) {
        bail!("Debian's compiler is installed, but does not compile for {TARGET}\n{BY_HAND}");
    }
    println!(
        "Built {TARGET} for Debian's toolchain: {}",
        debian_rust::RUSTC
    );
    Ok(WasmToolchain::Debian)
}

fn active_works(host: &Host) -> bool {
    compiles(host, "rustc".as_ref(), &[])
}

fn debian_works(host: &Host) -> bool {
    let linker = format!("-Clinker={}", debian_rust::LINKER);
    compiles(host, debian_rust::RUSTC.as_ref(), &[&linker])
}

/// A trial, because a folder of the right name may hold libraries of another compiler version.
fn compiles(host: &Host, rustc: &OsStr, options: &[&str]) -> bool {
    let sh = &host.sh;
    let output = host.scratch().join("trial.wasm");
    sh.create_dir(host.scratch()).is_ok()
        && cmd!(
            sh,
            "{rustc} --target {TARGET} {options...} --crate-name trial -o {output} -"
        )
        .stdin("fn main() {}")
        .quiet()
        .ignore_stdout()
        .ignore_stderr()
        .run()
        .is_ok()
}

fn sysroot(host: &Host) -> Result<PathBuf> {
    let sh = &host.sh;
    Ok(cmd!(sh, "rustc --print sysroot").quiet().read()?.into())
}

fn add_with_rustup(host: &Host) -> Result<()> {
    let sh = &host.sh;
    if host.find(&["rustup"]).is_none() {
        bail!("this machine has no rustup");
    }
    let home: PathBuf = cmd!(sh, "rustup show home").quiet().read()?.into();
    let (downloads, temporary) = (home.join("downloads"), home.join("tmp"));
    println!("Trying rustup target add {TARGET}");
    let mut command = Command::new("rustup");
    command.args(["target", "add", TARGET]);
    be_brief(&mut command);
    let limit = Duration::from_secs(60);
    let status = limited::run(&mut command, limit, &[&downloads, &temporary])?;
    if !status.success() {
        bail!("it ended with {status}");
    }
    if !active_works(host) {
        bail!("it reports success, but the compiler does not find the target");
    }
    Ok(())
}

/// One try: a server that cannot be reached must cost little, another way comes after.
pub fn be_brief(rustup: &mut Command) {
    rustup
        .env("RUSTUP_MAX_RETRIES", "0")
        .env("RUSTUP_DOWNLOAD_TIMEOUT", "30");
}
