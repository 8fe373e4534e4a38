//! The service worker, with the list of what it keeps.

use std::fs;
use std::path::{Path, PathBuf};

use anyhow::{Context, Result, ensure};
use serde::Serialize;

use super::files::{PAGE, WORKER, WORKER_OFF, is_hashed, parts};
use super::integrity;

/// What the list takes the place of.
const PLACE: &str = "self.LIST";

#[derive(Serialize)]
struct List<'a> {
    version: &'a str,
    files: Vec<File>,
}

#[derive(Serialize)]
struct File {
    /// As the worker asks for it. The page is asked for by its folder: some hosts lead away from
    /// index.html.
    path: String,
    integrity: String,
    /// What the browser has of it already: good where the name changes with the content.
    cache: &'static str,
}

pub fn source(root: &Path) -> PathBuf {
    root.join("app").join("worker").join(WORKER)
}

pub fn template(root: &Path) -> Result<String> {
    fs::read_to_string(source(root)).context("app/worker/sw.js")
}

/// Writes the worker and what takes its place to be rid of it.
pub fn write(root: &Path, dist: &Path, version: &str) -> Result<()> {
    let template = template(root)?;
    ensure!(
        template.matches(PLACE).count() == 1,
        "app/worker/sw.js takes its list in one place, {PLACE}"
    );
    let files = parts(dist)?;
    let files = files.iter().map(|name| file(dist, name));
    let list = List {
        version,
        files: files.collect::<Result<_>>()?,
    };
    let worker = template.replace(PLACE, &serde_json::to_string(&list)?);
    fs::write(dist.join(WORKER), worker)?;
    let off = source(root).with_file_name(WORKER_OFF);
    fs::copy(off, dist.join(WORKER_OFF)).context("app/worker/sw-off.js")?;
    Ok(())
}

fn file(dist: &Path, name: &str) -> Result<File> {
    let path = if name == PAGE { "./" } else { name };
    Ok(File {
        path: path.to_owned(),
        integrity: integrity::of(&fs::read(dist.join(name))?),
        cache: if is_hashed(name) {
            "default"
        } else {
            "no-cache"
        },
    })
}
