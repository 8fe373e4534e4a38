//! Files of the repository by their paths in it.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result};
use walkdir::WalkDir;

/// A file and its text.
pub struct File {
    /// With `/` between folders, on every machine.
    pub path: String,
    pub text: String,
}

#[cfg(test)]
impl File {
    /// One that is nowhere, with something in it that must be told or mustn't.
    pub fn planted(text: &str) -> Self {
        Self {
            path: "planted.rs".to_owned(),
            text: text.to_owned(),
        }
    }
}

/// What isn't ours or isn't written by hand.
const PASSED_OVER: [&str; 5] = ["target", "dist", "node_modules", ".git", "__pycache__"];

/// All files under a path of the repository that end so, in order.
pub fn under(root: &Path, path: &str, endings: &[&str]) -> Result<Vec<File>> {
    let ours = |it: &walkdir::DirEntry| {
        it.file_name()
            .to_str()
            .is_some_and(|name| !PASSED_OVER.contains(&name))
    };
    let mut files = Vec::new();
    for entry in WalkDir::new(root.join(path))
        .sort_by_file_name()
        .into_iter()
        .filter_entry(ours)
    {
        let entry = entry.with_context(|| format!("reading {path}"))?;
        let ending = entry.path().extension().and_then(|it| it.to_str());
        if entry.file_type().is_file() && ending.is_some_and(|it| endings.contains(&it)) {
            let parts = entry.path().strip_prefix(root)?.iter();
            let parts: Vec<_> = parts.map(|part| part.to_string_lossy()).collect();
            files.push(File {
                path: parts.join("/"),
                text: fs::read_to_string(entry.path())?,
            });
        }
    }
    Ok(files)
}
