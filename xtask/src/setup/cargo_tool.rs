//! Commands installed by Cargo, each at one pinned version.

use std::io::IsTerminal;
use std::path::{Path, PathBuf};

use anyhow::{Context, Result};
use xshell::cmd;

use super::lock;
use crate::host::Host;

pub struct CargoTool {
    package: &'static str,
    program: &'static str,
    /// What it answers with the package's version as its last word.
    asked: &'static [&'static str],
    options: &'static [&'static str],
}

const VERSION: &[&str] = &["--version"];

pub const TRUNK: CargoTool = CargoTool {
    package: "trunk",
    program: "trunk",
    asked: VERSION,
    // Without its defaults it needs no OpenSSL of the machine.
    options: &["--no-default-features", "--features", "rustls"],
};

pub const WASM_BINDGEN: CargoTool = CargoTool {
    package: "wasm-bindgen-cli",
    program: "wasm-bindgen",
    asked: VERSION,
    options: &[],
};

pub const CARGO_DENY: CargoTool = CargoTool {
    package: "cargo-deny",
    program: "cargo-deny",
    asked: VERSION,
    options: &[],
};

pub const CARGO_FUZZ: CargoTool = CargoTool {
    package: "cargo-fuzz",
    program: "cargo-fuzz",
    asked: VERSION,
    options: &[],
};

pub const CARGO_MUTANTS: CargoTool = CargoTool {
    package: "cargo-mutants",
    program: "cargo-mutants",
    // Without its own name it takes itself for Cargo.
    asked: &["mutants", "--version"],
    options: &[],
};

/// Makes `tool` at `version` the one that later commands find.
pub fn ensure(host: &Host, tool: &CargoTool, version: &str) -> Result<()> {
    if let Some(found) = host.find(&[tool.program])
        && has_version(host, tool, &found, version)
    {
        println!("Found {} {version}: {}", tool.package, found.display());
        return Ok(());
    }
    let folder = host.tools.join(format!("{}-{version}", tool.package));
    let bin = folder.join("bin");
    let program = bin
        .join(tool.program)
        .with_extension(std::env::consts::EXE_EXTENSION);
    if !has_version(host, tool, &program, version) {
        // Another clone's set-up must not remove the build folder of this one.
        let _alone = lock::hold(host)?;
        // The one that was waited for may have installed it.
        if !has_version(host, tool, &program, version) {
            install(host, tool, version, &folder)?;
        }
    }
    println!("Using {} {version}: {}", tool.package, program.display());
    host.prepend_path(&bin)
}

fn has_version(host: &Host, tool: &CargoTool, program: &Path, version: &str) -> bool {
    let (sh, asked) = (&host.sh, tool.asked);
    program.is_file()
        && cmd!(sh, "{program} {asked...}")
            .quiet()
            .ignore_stderr()
            .read()
            .is_ok_and(|words| words.split_whitespace().next_back() == Some(version))
}

fn install(host: &Host, tool: &CargoTool, version: &str, folder: &Path) -> Result<()> {
    let sh = &host.sh;
    let (package, options) = (tool.package, tool.options);
    println!(
        "Compiling {package} {version} into {} (some minutes).",
        folder.display()
    );
    // A person sees Cargo's progress; in a log it would be hundreds of lines.
    let quiet = (!std::io::stderr().is_terminal()).then_some("--quiet");
    cmd!(sh, "cargo install {quiet...} --locked --version {version} --root {folder} {options...} {package}")
        .env("CARGO_TARGET_DIR", build_folder(host))
        // These run for seconds and compile for minutes: their own settings ask for the slowest build.
        .env("CARGO_PROFILE_RELEASE_LTO", "off")
        .env("CARGO_PROFILE_RELEASE_CODEGEN_UNITS", "16")
        .env("CARGO_PROFILE_RELEASE_OPT_LEVEL", "1")
        .run()
        .with_context(|| format!("installing {package} {version}"))
}

/// One for all tools, so that what they share is compiled once.
fn build_folder(host: &Host) -> PathBuf {
    host.tools.join("build")
}

/// Removes what installations left behind: some hundred megabytes.
pub fn tidy(host: &Host) -> Result<()> {
    let Some(_alone) = lock::hold_if_free(host)? else {
        println!("Another set-up of this user is at work: what it needs stays.");
        return Ok(());
    };
    host.sh
        .remove_path(build_folder(host))
        .context("removing what the installations left behind")
}
