//! What is kept in folders.

use std::fs;
use std::path::{Path, PathBuf};

/// The files of a folder in the order of their names; none where it isn't there.
///
/// # Panics
/// Where an entry of it can't be read.
pub fn files(folder: &Path) -> Vec<PathBuf> {
    let Ok(entries) = fs::read_dir(folder) else {
        return Vec::new();
    };
    let mut files: Vec<_> = entries
        .map(|entry| entry.expect("an entry").path())
        .collect();
    files.sort();
    files
}
