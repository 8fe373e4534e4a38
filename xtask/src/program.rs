//! The program in several files: what the first view needs, and parts that load after it.
//!
//! Trunk lays the page out and has the program compiled as one file. That file is divided here where
//! the source says so (`app/src/view/parts.rs`), and takes its place in the page.

use std::fs;
use std::path::{Path, PathBuf};

use anyhow::{Context, Result};
use wasm_split_cli_support::{Options, transform};
use xshell::cmd;

use crate::finish::html;
use crate::finish::sum::Sum;
use crate::host::Host;
use crate::setup::TARGET;
use crate::wasm_opt;

/// The program's name, as Trunk and wasm-bindgen write it.
const NAME: &str = "farend-app";
/// Bytes of the sum that a name holds.
const BYTES: usize = 8;
/// The script that loads parts, as it is called before its name holds a version.
const LOADER: &str = "parts.js";

/// Divides the program that Trunk has put into `dist`.
pub fn divide(host: &Host, dist: &Path) -> Result<()> {
    let whole = host
        .target_folder()?
        .join(TARGET)
        .join("web")
        .join(format!("{NAME}.wasm"));
    let folder = folder(host);
    host.sh.remove_path(&folder)?;
    host.sh.create_dir(&folder)?;
    let files = files(host, &whole, &folder)?;
    place(&files, dist)
}

/// The first file as it was before anything took its names out.
pub fn named(host: &Host) -> PathBuf {
    folder(host).join(format!("{NAME}.wasm"))
}

fn folder(host: &Host) -> PathBuf {
    host.scratch().join("program")
}

/// The program's files: their names, and what is in them.
fn files(host: &Host, whole: &Path, folder: &Path) -> Result<Vec<(String, Vec<u8>)>> {
    let whole = fs::read(whole).with_context(|| format!("reading {}", whole.display()))?;
    let first = folder.join(format!("{NAME}.wasm"));
    let code = format!("{NAME}.js");
    let mut options = Options::new(&whole);
    let (link_name, main_module) = (format!("./{LOADER}"), format!("./{code}"));
    options.output_dir = folder;
    options.main_out_path = &first;
    options.link_name = &link_name;
    options.main_module = &main_module;
    let divided = transform(options).map_err(|error| anyhow::anyhow!("{error:#}"))?;

    let sh = &host.sh;
    cmd!(
        sh,
        "wasm-bindgen --target web --no-typescript --keep-lld-exports --out-name {NAME} --out-dir {folder} {first}"
    )
    .run()?;
    let bound = folder.join(format!("{NAME}_bg.wasm"));
    let mut paths = vec![folder.join(code), folder.join(LOADER), bound.clone()];
    for wasm in [bound].into_iter().chain(divided.split_modules) {
        wasm_opt::run(host, &wasm)?;
        if !paths.contains(&wasm) {
            paths.push(wasm);
        }
    }
    paths.iter().map(read).collect()
}

fn read(path: &PathBuf) -> Result<(String, Vec<u8>)> {
    let name = path.file_name().context("a file without a name")?;
    Ok((name.to_string_lossy().into_owned(), fs::read(path)?))
}

/// Puts the files into the page in place of Trunk's, with the program's version in their names: they
/// name each other, so each of them changes with any of them.
fn place(files: &[(String, Vec<u8>)], dist: &Path) -> Result<()> {
    let sum = files.iter().fold(Sum::default(), |sum, (name, content)| {
        sum.and(name, content)
    });
    let version = sum.told(BYTES);
    let names: Vec<_> = files
        .iter()
        .map(|(name, _)| (name, versioned(name, &version)))
        .collect();
    for (name, content) in files {
        let path = dist.join(versioned(name, &version));
        match std::str::from_utf8(content)
            .ok()
            .filter(|_| name.ends_with(".js"))
        {
            None => fs::write(path, content)?,
            Some(script) => fs::write(path, renamed(script, &names))?,
        }
    }
    let index = dist.join("index.html");
    let mut page = fs::read_to_string(&index)?;
    for (name, ending) in [("page-code", ".js"), ("page-wasm", "_bg.wasm")] {
        let old =
            html::meta(&page, "name", name).with_context(|| format!("no {name} in the page"))?;
        let old = old.trim_start_matches("./").to_owned();
        page = page.replace(&old, &versioned(&format!("{NAME}{ending}"), &version));
        fs::remove_file(dist.join(old))?;
    }
    fs::write(index, page)?;
    Ok(())
}

/// "farend-app_bg.wasm" becomes "farend-app-0123456789abcdef_bg.wasm", "parts.js" "parts-0123456789abcdef.js".
fn versioned(name: &str, version: &str) -> String {
    let stem = name
        .find("_bg.")
        .or_else(|| name.rfind('.'))
        .unwrap_or(name.len());
    let (stem, ending) = name.split_at(stem);
    format!("{stem}-{version}{ending}")
}

/// A script with new names for the files that it fetches. Keys of what it hands to a module stay: the
/// module knows them.
fn renamed(script: &str, names: &[(&String, String)]) -> String {
    names.iter().fold(script.to_owned(), |script, (old, new)| {
        ["from \"./", "URL(\"./", "URL('"]
            .iter()
            .fold(script, |script, before| {
                script.replace(&format!("{before}{old}"), &format!("{before}{new}"))
            })
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_hold_the_version_and_scripts_say_so() {
        let names = ["farend-app.js", "farend-app_bg.wasm", "split_yard.wasm"].map(str::to_owned);
        let names: Vec<_> = names
            .iter()
            .map(|name| (name, versioned(name, "7f")))
            .collect();
        let script = "import * as a from \"./farend-app.js\"; new URL('farend-app_bg.wasm', b); \
            fetch(new URL(\"./split_yard.wasm\", b)); ({ \"./farend-app.js\": a })";
        assert_eq!(
            renamed(script, &names),
            "import * as a from \"./farend-app-7f.js\"; new URL('farend-app-7f_bg.wasm', b); \
            fetch(new URL(\"./split_yard-7f.wasm\", b)); ({ \"./farend-app.js\": a })"
        );
    }
}
