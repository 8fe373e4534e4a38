//! Installs what is missing, in the order in which it is needed, and says what it found where.

mod apt;
mod browser;
mod cargo_tool;
mod debian_rust;
mod lock;
mod node;
mod reference;
mod rust_parts;
mod spreadsheet;
mod wasm_opt;
mod wasm_target;

use std::path::PathBuf;

use anyhow::Result;

use crate::host::Host;
use crate::pins::Pins;
use crate::steps::Steps;

pub use browser::Browser;
pub use cargo_tool::tidy;
pub use wasm_target::{TARGET, WasmToolchain};

pub fn lints(host: &Host, steps: &mut Steps) -> Result<()> {
    steps.run("set-up: rustfmt and clippy", || rust_parts::ensure(host))
}

/// What compiles for the browser and runs tests in it.
pub fn wasm(host: &Host, steps: &mut Steps) -> Result<WasmToolchain> {
    let pins = Pins::read(&host.root)?;
    let toolchain = steps.run("set-up: compiler for wasm32", || wasm_target::ensure(host))?;
    steps.run("set-up: wasm-bindgen", || {
        cargo_tool::ensure(host, &cargo_tool::WASM_BINDGEN, &pins.wasm_bindgen_cli)
    })?;
    Ok(toolchain)
}

/// What else the release page takes.
pub fn page(host: &Host, steps: &mut Steps) -> Result<()> {
    let pins = Pins::read(&host.root)?;
    steps.run("set-up: node", || node::ensure(host))?;
    steps.run("set-up: wasm-opt", || {
        wasm_opt::ensure(host, &pins.binaryen)
    })?;
    steps.run("set-up: trunk", || {
        cargo_tool::ensure(host, &cargo_tool::TRUNK, &pins.trunk)
    })
}

pub fn browser(host: &Host, steps: &mut Steps) -> Result<Browser> {
    steps.run("set-up: Chromium and its driver", || browser::ensure(host))
}

pub fn flow_packages(host: &Host, steps: &mut Steps) -> Result<()> {
    steps.run("set-up: packages of tests/e2e", || {
        node::ensure_packages(host, "tests/e2e")
    })
}

/// What looks at the page as a whole.
pub fn bench_packages(host: &Host, steps: &mut Steps) -> Result<()> {
    steps.run("set-up: packages of tests/bench", || {
        node::ensure_packages(host, "tests/bench")
    })
}

/// The spreadsheet that reads the saved tables.
pub fn spreadsheet(host: &Host, steps: &mut Steps) -> Result<PathBuf> {
    steps.run("set-up: LibreOffice", || spreadsheet::ensure(host))
}

/// The Python that computes the reference figures.
pub fn reference(host: &Host, steps: &mut Steps) -> Result<PathBuf> {
    steps.run("set-up: Python for the reference figures", || {
        reference::ensure(host)
    })
}

/// What runs the fuzzer.
pub fn fuzzer(host: &Host, steps: &mut Steps) -> Result<()> {
    let pins = Pins::read(&host.root)?;
    steps.run("set-up: cargo-fuzz", || {
        cargo_tool::ensure(host, &cargo_tool::CARGO_FUZZ, &pins.cargo_fuzz)
    })
}

/// What changes the program to see whether a test notices.
pub fn mutants(host: &Host, steps: &mut Steps) -> Result<()> {
    let pins = Pins::read(&host.root)?;
    steps.run("set-up: cargo-mutants", || {
        cargo_tool::ensure(host, &cargo_tool::CARGO_MUTANTS, &pins.cargo_mutants)
    })
}

/// Last, because it takes longest to compile and nothing else waits for it.
pub fn licence_check(host: &Host, steps: &mut Steps) -> Result<()> {
    let pins = Pins::read(&host.root)?;
    steps.run("set-up: cargo-deny", || {
        cargo_tool::ensure(host, &cargo_tool::CARGO_DENY, &pins.cargo_deny)
    })
}
