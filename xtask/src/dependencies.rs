//! What a package of this repository is built from for the browser, as Cargo resolves it.

use std::collections::BTreeSet;
use std::path::Path;

use anyhow::{Context, Result};
use xshell::{Shell, cmd};

use crate::setup::TARGET;

/// A package's name and version.
pub type Package = (String, String);

/// All that is linked with a package, itself too, in order; `features` as Cargo's options.
pub fn linked(root: &Path, package: &str, features: &[&str]) -> Result<BTreeSet<Package>> {
    let sh = Shell::new()?;
    sh.change_dir(root);
    let tree = cmd!(
        sh,
        "cargo tree --package {package} {features...} --target {TARGET} --edges normal,no-proc-macro --prefix none"
    );
    let tree = tree.quiet().read()?;
    let packages = tree.lines().filter(|line| !line.is_empty()).map(|line| {
        let (name, version) = line.split_once(" v").context("a name and a version")?;
        let version = version.split(' ').next().unwrap_or_default();
        Ok((name.to_owned(), version.to_owned()))
    });
    packages.collect()
}
