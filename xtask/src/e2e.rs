//! Scripts of tests/e2e, run by node against the served release page.

use std::path::{Path, PathBuf};

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
    let cut = (network == Network::Cut).then_some(("FAREND_OFFLINE", Path::new("1")));
    node(host, browser, &["--test", "--test-reporter=spec"], cut)
}

pub fn shots(host: &Host, browser: &Browser) -> Result<()> {
    node(host, browser, &["screenshots.mjs"], None)
}

pub fn spreadsheet(host: &Host, browser: &Browser, program: &Path) -> Result<()> {
    let arguments = [
        "--test",
        "--test-reporter=spec",
        "spreadsheet.mjs",
        "spreadsheet_tables.mjs",
    ];
    node(host, browser, &arguments, Some(("SOFFICE", program)))
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
    more: Option<(&str, &Path)>,
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
        .envs(more)
        .run()?;
    Ok(())
}
