//! LibreOffice, which reads the saved tables as their users do.

use std::path::PathBuf;

use anyhow::{Context, Result};

use super::apt;
use crate::host::Host;

const PROGRAMS: [&str; 2] = ["soffice", "libreoffice"];

const BY_HAND: &str = "LibreOffice is missing: install its Calc \
(Debian: apt-get install libreoffice-calc-nogui) and put soffice on PATH, then run this again";

pub fn ensure(host: &Host) -> Result<PathBuf> {
    let program = match host.find(&PROGRAMS) {
        Some(program) => program,
        None => {
            apt::install(host, &["libreoffice-calc-nogui"]).context(BY_HAND)?;
            host.find(&PROGRAMS).context(BY_HAND)?
        }
    };
    println!("Found LibreOffice: {}", program.display());
    Ok(program)
}
