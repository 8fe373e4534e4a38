//! Scripts of tests/e2e, run by node against the served release page.

use std::ffi::OsString;
use std::path::{Path, PathBuf};
use std::thread::available_parallelism;

use anyhow::Result;
use xshell::cmd;

use crate::finish;
use crate::host::Host;
use crate::server::{SUB_FOLDER, Server};
use crate::setup::Browser;

/// Whether flows have a network after the page has been opened once.
#[derive(Clone, Copy, PartialEq)]
pub enum Network {
    There,
    Cut,
}

pub fn flows(host: &Host, browser: &Browser, network: Network) -> Result<()> {
    // One for each core: node would leave one of them to itself.
    let at_once = available_parallelism()?;
    let at_once = format!("--test-concurrency={at_once}");
    let cut = (network == Network::Cut).then_some(("FAREND_OFFLINE", "1".into()));
    node(
        host,
        browser,
        &["--test", "--test-reporter=spec", &at_once],
        cut.as_slice(),
    )
}

/// So many actions by chance, twice the same.
pub fn soak(host: &Host, browser: &Browser, actions: u32, seed: u32) -> Result<()> {
    let arguments = ["--test", "--test-reporter=spec", "soak.test.mjs"];
    let more = [
        ("FAREND_SOAK_ACTIONS", actions.to_string().into()),
        ("FAREND_SOAK_SEED", seed.to_string().into()),
    ];
    node(host, browser, &arguments, &more)
}

pub fn shots(host: &Host, browser: &Browser) -> Result<()> {
    node(host, browser, &["screenshots.mjs"], &[])
}

pub fn spreadsheet(host: &Host, browser: &Browser, program: &Path) -> Result<()> {
    let arguments = [
        "--test",
        "--test-reporter=spec",
        "spreadsheet.mjs",
        "spreadsheet_tables.mjs",
    ];
    node(host, browser, &arguments, &[("SOFFICE", program.into())])
}

/// A yard of 500 machines and 200 implements, as a file.
pub fn large_yard(host: &Host) -> Result<PathBuf> {
    let sh = &host.sh;
    let text = cmd!(
        sh,
        "cargo run --quiet --package farend-bench -- large 500 200"
    )
    .read()?;
    let file = host.scratch().join("large-yard.json");
    sh.write_file(&file, text)?;
    Ok(file)
}

fn node(
    host: &Host,
    browser: &Browser,
    arguments: &[&str],
    more: &[(&str, OsString)],
) -> Result<()> {
    let dist = host.dist();
    let headers = finish::everywhere(&dist)?;
    let server = Server::bind(0, &dist, &headers)?.with_example(&host.example());
    let url = server.url()?;
    server.serve_in_background();

    let sh = &host.sh;
    let yard = large_yard(host)?;
    let next = host.scratch().join("next");
    finish::successor(&host.root, &dist, &next)?;
    let _in_folder = sh.push_dir(host.root.join("tests").join("e2e"));
    cmd!(sh, "node {arguments...}")
        .env("FAREND_URL", &url)
        .env("FAREND_SUB_FOLDER", SUB_FOLDER)
        .env("FAREND_DIST", &dist)
        .env("FAREND_NEXT", &next)
        .env("FAREND_SHOTS", host.root.join("target").join("shots"))
        .env("FAREND_LARGE_YARD", &yard)
        .env("CHROMIUM", &browser.chromium)
        .envs(more.iter().map(|(name, value)| (name, value)))
        .run()?;
    Ok(())
}
