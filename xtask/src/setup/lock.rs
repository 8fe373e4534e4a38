//! One set-up of this user at a time installs into the shared folder of tools.

use std::fs::File;

use anyhow::{Context, Result};

use crate::host::Host;

/// Held until dropped.
pub fn hold(host: &Host) -> Result<File> {
    let file = open(host)?;
    if file.try_lock().is_err() {
        println!("Waiting for another set-up of this user to end.");
        file.lock()?;
    }
    Ok(file)
}

/// As [`hold`], or nothing where another holds it.
pub fn hold_if_free(host: &Host) -> Result<Option<File>> {
    let file = open(host)?;
    let free = file.try_lock().is_ok();
    Ok(free.then_some(file))
}

fn open(host: &Host) -> Result<File> {
    host.sh.create_dir(&host.tools)?;
    let path = host.tools.join("lock");
    File::create(&path).with_context(|| format!("opening {}", path.display()))
}
