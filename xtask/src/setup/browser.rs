//! Chromium and the driver that steers it.

use std::env;
use std::path::{Path, PathBuf};

use anyhow::{Context, Result, bail};
use xshell::cmd;

use super::apt;
use crate::host::Host;

const BROWSERS: [&str; 4] = [
    "chromium",
    "chromium-browser",
    "google-chrome-stable",
    "google-chrome",
];

const BY_HAND: &str = "Chromium or its driver is missing: install both from one source \
(Debian: apt-get install chromium chromium-driver) and put them on PATH, \
or name them in CHROMIUM and CHROMEDRIVER; then run this again";

pub struct Browser {
    pub chromium: PathBuf,
    pub driver: PathBuf,
}

pub fn ensure(host: &Host) -> Result<Browser> {
    let browser = match find(host) {
        Some(browser) => browser,
        None => {
            apt::install(host, &["chromium", "chromium-driver"]).context(BY_HAND)?;
            find(host).context(BY_HAND)?
        }
    };
    let chromium = major_version(host, &browser.chromium)?;
    let driver = major_version(host, &browser.driver)?;
    println!("Found Chromium {chromium}: {}", browser.chromium.display());
    println!("Found its driver {driver}: {}", browser.driver.display());
    // The driver's own words for this are a bare 404.
    if chromium != driver {
        bail!("the driver steers only its own version of Chromium: install both from one source");
    }
    Ok(browser)
}

fn find(host: &Host) -> Option<Browser> {
    Some(Browser {
        chromium: named("CHROMIUM").or_else(|| host.find(&BROWSERS))?,
        driver: named("CHROMEDRIVER").or_else(|| host.find(&["chromedriver"]))?,
    })
}

fn named(variable: &str) -> Option<PathBuf> {
    env::var_os(variable).map(PathBuf::from)
}

/// From "Chromium 156.0.8078.73 built on Debian" or "ChromeDriver 156.0.8078.73 (...)".
fn major_version(host: &Host, program: &Path) -> Result<u32> {
    let sh = &host.sh;
    let words = cmd!(sh, "{program} --version")
        .quiet()
        .ignore_stderr()
        .read()?;
    words
        .split_whitespace()
        .find_map(|word| word.split_once('.')?.0.parse().ok())
        .with_context(|| format!("no version in the answer of {}: {words}", program.display()))
}
