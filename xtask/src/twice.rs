//! The release page built twice from scratch, in two folders: all bytes must be the same.

use std::fs;
use std::path::Path;

use anyhow::{Result, ensure};
use xshell::{TempDir, cmd};

use crate::finish;
use crate::finish::files;
use crate::host::Host;
use crate::page;
use crate::setup::WasmToolchain;

/// Builds what the work tree holds twice, and gives the folder with the page of the second.
pub fn build(host: &Host, toolchain: WasmToolchain) -> Result<TempDir> {
    let first = page_of_copy(host, toolchain, "a")?;
    // A path of another length, for what holds it to show.
    let second = page_of_copy(host, toolchain, "another-place")?;
    let differing = differing(first.path(), second.path())?;
    ensure!(
        differing.is_empty(),
        "two builds of the same sources differ in {}",
        differing.join(", ")
    );
    let all = files::all(second.path())?.len();
    println!("Two builds from scratch, in two folders: {all} files, all bytes the same.");
    Ok(second)
}

/// The page as it's built in a copy of the work tree, packed. The copy is gone afterwards.
fn page_of_copy(host: &Host, toolchain: WasmToolchain, name: &str) -> Result<TempDir> {
    let sh = &host.sh;
    let place = sh.create_temp_dir()?;
    let root = place.path().join(name);
    let listed = cmd!(
        sh,
        "git ls-files -z --cached --others --exclude-standard --deduplicate"
    )
    .quiet()
    .read()?;
    for file in listed.split('\0').filter(|file| !file.is_empty()) {
        let (from, to) = (host.root.join(file), root.join(file));
        // One that is deleted and not yet committed so.
        if from.is_file() {
            sh.create_dir(to.parent().unwrap_or(&root))?;
            fs::copy(from, to)?;
        }
    }
    let copy = host.at(root)?;
    let dist = page::build(&copy, toolchain)?;
    finish::pack(&dist)?;
    let kept = sh.create_temp_dir()?;
    for file in files::all(&dist)? {
        let to = kept.path().join(&file);
        sh.create_dir(to.parent().unwrap_or(kept.path()))?;
        fs::copy(dist.join(&file), to)?;
    }
    Ok(kept)
}

/// The files that one of two folders lacks or has with other bytes.
fn differing(one: &Path, other: &Path) -> Result<Vec<String>> {
    let mut all = files::all(one)?;
    all.extend(files::all(other)?);
    all.sort();
    all.dedup();
    let content = |folder: &Path, name: &String| fs::read(folder.join(name)).ok();
    all.retain(|name| content(one, name) != content(other, name));
    Ok(all)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_differs_or_is_missing_is_named() {
        let sh = xshell::Shell::new().unwrap();
        let (one, other) = (sh.create_temp_dir().unwrap(), sh.create_temp_dir().unwrap());
        let write = |folder: &TempDir, name: &str, text: &str| {
            sh.write_file(folder.path().join(name), text).unwrap();
        };
        for folder in [&one, &other] {
            write(folder, "same.js", "a");
            write(folder, "text/en.txt", "a");
        }
        assert!(differing(one.path(), other.path()).unwrap().is_empty());
        write(&other, "text/en.txt", "b");
        write(&one, "only-here.js", "a");
        let differing = differing(one.path(), other.path()).unwrap();
        assert_eq!(differing, ["only-here.js", "text/en.txt"]);
    }
}
