//! Scripts of tests/e2e, run by node against the served release page.

use anyhow::Result;
use xshell::cmd;

use crate::host::Host;
use crate::server::{SUB_FOLDER, Server};
use crate::setup::Browser;

pub fn flows(host: &Host, browser: &Browser) -> Result<()> {
    node(host, browser, &["--test", "--test-reporter=spec"])
}

pub fn shots(host: &Host, browser: &Browser) -> Result<()> {
    node(host, browser, &["screenshots.mjs"])
}

fn node(host: &Host, browser: &Browser, arguments: &[&str]) -> Result<()> {
    let server = Server::bind(0, &host.dist())?;
    let url = server.url()?;
    server.serve_in_background();

    let sh = &host.sh;
    let _in_folder = sh.push_dir(host.root.join("tests").join("e2e"));
    cmd!(sh, "node {arguments...}")
        .env("FAREND_URL", &url)
        .env("FAREND_SUB_FOLDER", SUB_FOLDER)
        .env("FAREND_SHOTS", host.root.join("target").join("shots"))
        .env("CHROMIUM", &browser.chromium)
        .run()?;
    Ok(())
}
