//! What each command does, step by step.

mod licences;
mod lint;
mod tests;

use std::env;
use std::path::{Path, PathBuf};

use anyhow::Result;

use crate::e2e::Network;
use crate::host::Host;
use crate::server::Server;
use crate::steps::Steps;
use crate::{
    bench as times, costs, e2e, finish, fuzz as fuzzer, mutants as mutation, page, program,
    reference as figures, release as given_out, setup, tidy, twice, web_bench,
};

/// How much `test` runs.
#[derive(Clone, Copy, PartialEq)]
pub enum Extent {
    /// Without what needs the release page.
    Quick,
    Usual,
    /// With the slow steps too.
    Full,
}

/// What `test --quick` leaves out.
const NOT_QUICK: &str = "reference figures by Python, licences and sources of dependencies, release page, \
flows in Chromium against the release page, size";

pub fn run(host: &Host, port: u16) -> Result<()> {
    let dist = timed(|steps| build_page(host, steps))?;
    let headers = finish::everywhere(&dist)?;
    let server = Server::bind(port, &dist, &headers)?.with_example(&host.example());
    let url = server.url()?;
    println!("\nFarend is served at {url}  (Ctrl-C ends it)");
    println!("A dealer's page with it in a frame: {url}example-dealer/");
    server.serve()
}

pub fn build(host: &Host) -> Result<()> {
    timed(|steps| build_packed(host, steps))
}

fn build_packed(host: &Host, steps: &mut Steps) -> Result<()> {
    let dist = build_page(host, steps)?;
    steps.run("packed files", || finish::pack(&dist))
}

/// For trying how the page goes over to a next version, by hand too.
pub fn next(host: &Host, folder: &Path) -> Result<()> {
    finish::successor(&host.root, &host.dist(), folder)
}

pub fn shots(host: &Host) -> Result<()> {
    timed(|steps| {
        build_page(host, steps)?;
        let browser = setup::browser(host, steps)?;
        setup::flow_packages(host, steps)?;
        steps.run("pictures", || e2e::shots(host, &browser))
    })
}

pub fn size(host: &Host) -> Result<()> {
    costs::report(&program::named(host))?;
    crate::size::report(&host.root, &host.dist())
}

pub fn reference(host: &Host, write: bool) -> Result<()> {
    timed(|steps| figures_by_python(host, steps, write))
}

pub fn bench(host: &Host) -> Result<()> {
    timed(|steps| {
        let wasm = setup::wasm(host, steps)?;
        setup::page(host, steps)?;
        let browser = setup::browser(host, steps)?;
        setup::flow_packages(host, steps)?;
        let python = setup::reference(host, steps)?;
        steps.run("release page", || page::build(host, wasm))?;
        steps.run("times", || times::report(host, wasm, &browser, &python))
    })
}

pub fn bench_web(host: &Host) -> Result<()> {
    timed(|steps| {
        build_packed(host, steps)?;
        let browser = setup::browser(host, steps)?;
        setup::flow_packages(host, steps)?;
        setup::bench_packages(host, steps)?;
        steps.run("times of the page", || web_bench::report(host, &browser))
    })
}

/// Actions of the soak in `test --full`.
pub const SOAKED: u32 = 10_000;

pub fn soak(host: &Host, actions: u32, seed: u32) -> Result<()> {
    timed(|steps| {
        build_page(host, steps)?;
        let browser = setup::browser(host, steps)?;
        setup::flow_packages(host, steps)?;
        steps.run("actions by chance", || {
            e2e::soak(host, &browser, actions, seed)
        })
    })
}

/// Seconds of the fuzzer on each target in CI and in `test --full`.
const FUZZED: u32 = 60;

pub fn fuzz(host: &Host, seconds: u32, target: Option<&str>) -> Result<()> {
    let targets = fuzzer::targets(host, target)?;
    timed(|steps| match fuzzers_program(host, steps) {
        Some(program) => steps.run("fuzzer", || fuzzer::run(host, &program, seconds, &targets)),
        None => steps.run("random changes of the fuzzer's corpus", || {
            fuzzer::twin(host, &targets)
        }),
    })
}

/// Where its tools work.
fn fuzzers_program(host: &Host, steps: &mut Steps) -> Option<PathBuf> {
    let program = setup::fuzzer(host, steps)
        .and_then(|()| steps.run("program of the fuzzer", || fuzzer::build(host)));
    if let Err(error) = &program {
        println!("No fuzzer here: {error:#}");
    }
    program.ok()
}

pub fn mutants(host: &Host, since: &str) -> Result<()> {
    timed(|steps| {
        setup::mutants(host, steps)?;
        steps.run("mutants", || mutation::run(host, since))
    })
}

pub fn golden(host: &Host) -> Result<()> {
    tests::golden(host, tests::Golden::Written)
}

pub fn release(host: &Host, version: &str, tag: bool) -> Result<()> {
    timed(|steps| {
        steps.run("sources", || given_out::check_sources(host, version))?;
        steps.run("golden files", || {
            tests::golden(host, tests::Golden::Checked)
        })?;
        let wasm = setup::wasm(host, steps)?;
        setup::page(host, steps)?;
        let dist = steps.run("release page, twice", || twice::build(host, wasm))?;
        steps.run("archive", || given_out::archive(host, dist.path(), version))?;
        if tag {
            given_out::tag(host, version)?;
        }
        Ok(())
    })
}

pub fn setup(host: &Host) -> Result<()> {
    timed(|steps| {
        setup::lints(host, steps)?;
        setup::wasm(host, steps)?;
        setup::page(host, steps)?;
        setup::browser(host, steps)?;
        setup::flow_packages(host, steps)?;
        setup::reference(host, steps)?;
        setup::licence_check(host, steps)?;
        setup::tidy(host)
    })
}

pub fn check(host: &Host) -> Result<()> {
    timed(|steps| {
        setup::lints(host, steps)?;
        native(host, steps)
    })
}

pub fn test(host: &Host, extent: Extent) -> Result<()> {
    let quick = extent == Extent::Quick;
    timed(|steps| {
        setup::lints(host, steps)?;
        let wasm = setup::wasm(host, steps)?;
        let browser = setup::browser(host, steps)?;
        if !quick {
            setup::page(host, steps)?;
            setup::flow_packages(host, steps)?;
            setup::licence_check(host, steps)?;
        }
        setup::tidy(host)?;

        native(host, steps)?;
        steps.run("clippy for wasm32", || lint::clippy_wasm(host, wasm))?;
        steps.run("unit tests in Chromium", || {
            tests::in_browser(host, wasm, &browser)
        })?;
        if quick {
            return Ok(());
        }
        figures_by_python(host, steps, false)?;
        steps.run("licences and sources of dependencies", || {
            licences::check(host)
        })?;
        steps.run("release page", || page::build(host, wasm))?;
        steps.run("flows in Chromium against the release page", || {
            e2e::flows(host, &browser, Network::There)
        })?;
        if extent == Extent::Full {
            steps.run("flows in Chromium with the network cut", || {
                e2e::flows(host, &browser, Network::Cut)
            })?;
            let program = setup::spreadsheet(host, steps)?;
            steps.run("saved tables in LibreOffice", || {
                e2e::spreadsheet(host, &browser, &program)
            })?;
            steps.run("actions by chance", || e2e::soak(host, &browser, SOAKED, 1))?;
            steps.run("release page, twice", || twice::build(host, wasm).map(drop))?;
        }
        // Without it the tests have tried its corpus, and random changes of that.
        if (extent == Extent::Full || is_ci())
            && let Some(program) = fuzzers_program(host, steps)
        {
            let targets = fuzzer::targets(host, None)?;
            steps.run("fuzzer", || fuzzer::run(host, &program, FUZZED, &targets))?;
        }
        steps.run("size", || size(host))
    })?;
    if quick {
        println!("Left out by --quick: {NOT_QUICK}.");
    }
    Ok(())
}

/// Whether nobody waits for the result.
fn is_ci() -> bool {
    env::var_os("CI").is_some()
}

fn native(host: &Host, steps: &mut Steps) -> Result<()> {
    steps.run("format", || lint::format(host))?;
    steps.run("tidy", || tidy::check(&host.root))?;
    steps.run("clippy", || lint::clippy(host))?;
    steps.run("tests", || tests::native(host))
}

fn figures_by_python(host: &Host, steps: &mut Steps, write: bool) -> Result<()> {
    let python = setup::reference(host, steps)?;
    steps.run("reference figures by Python", || {
        if write {
            figures::write(host, &python)
        } else {
            figures::check(host, &python)
        }
    })
}

fn build_page(host: &Host, steps: &mut Steps) -> Result<PathBuf> {
    let wasm = setup::wasm(host, steps)?;
    setup::page(host, steps)?;
    setup::tidy(host)?;
    steps.run("release page", || page::build(host, wasm))
}

fn timed<T>(work: impl FnOnce(&mut Steps) -> Result<T>) -> Result<T> {
    let mut steps = Steps::new();
    let result = work(&mut steps);
    steps.report();
    result
}
