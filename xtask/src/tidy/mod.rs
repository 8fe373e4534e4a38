//! Rules of the house that a compiler doesn't know: what is built how, and what may name what. Where
//! structure matters the sources are parsed, not searched.

mod app;
mod defaults;
mod docs;
mod files;
mod invariants;
mod layers;
mod length;
mod physics;
mod syntax;

use std::path::Path;

use anyhow::{Result, bail};

/// Everything that is not as it should be, each with its place; an error only where nothing can be read.
pub fn check(root: &Path) -> Result<()> {
    let checks = [
        physics::check,
        defaults::check,
        layers::check,
        app::check,
        length::check,
        invariants::check,
    ];
    let mut faults = Vec::new();
    for check in checks {
        faults.extend(check(root)?);
    }
    for fault in &faults {
        println!("{fault}");
    }
    match faults.len() {
        0 => Ok(()),
        many => bail!("{many} breaches of the rules in xtask/src/tidy/"),
    }
}
