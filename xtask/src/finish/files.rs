//! The files of the page.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result};
use walkdir::WalkDir;

/// The page itself.
pub const PAGE: &str = "index.html";
/// The service worker, and what takes its place to be rid of it.
pub const WORKER: &str = "sw.js";
pub const WORKER_OFF: &str = "sw-off.js";
/// What an installer asks for.
pub const MANIFEST: &str = "manifest.webmanifest";

/// All files of a folder by their paths in it, in order.
pub fn all(dist: &Path) -> Result<Vec<String>> {
    WalkDir::new(dist)
        .sort_by_file_name()
        .into_iter()
        .map(|entry| entry.context("no release page: run `cargo xtask build` first"))
        .filter(|entry| entry.as_ref().map_or(true, |it| it.file_type().is_file()))
        .map(|entry| {
            let entry = entry?;
            let path = entry.path().strip_prefix(dist)?;
            let parts: Vec<_> = path.iter().map(|part| part.to_string_lossy()).collect();
            Ok(parts.join("/"))
        })
        .collect()
}

/// What the page runs on. Icons aren't, for only an installer asks for them, and scripts under names
/// that stay are for others: the workers, and what other people's pages load.
pub fn parts(dist: &Path) -> Result<Vec<String>> {
    let mut all = all(dist)?;
    all.retain(|name| {
        let runs = ["css", "js", "wasm"].iter().any(|it| ends_with(name, it));
        name == PAGE || name == MANIFEST || (runs && is_hashed(name))
    });
    Ok(all)
}

/// What a first visit loads: the page, what it names, and what those name as modules at their heads.
pub fn first_visit(dist: &Path) -> Result<Vec<String>> {
    let parts = parts(dist)?;
    let mut found = vec![PAGE.to_owned(), WORKER.to_owned()];
    let mut next = 0;
    while let Some(name) = found.get(next).cloned() {
        next += 1;
        let text = match ends_with(&name, "html") || ends_with(&name, "js") {
            true if name != WORKER => fs::read_to_string(dist.join(&name))?,
            _ => continue,
        };
        for part in &parts {
            let file = part.rsplit('/').next().unwrap_or(part);
            let named = match name.as_str() {
                PAGE => text.contains(file),
                _ => imports(&text).any(|import| import.ends_with(file)),
            };
            if named && !found.contains(part) {
                found.push(part.clone());
            }
        }
    }
    found.sort();
    Ok(found)
}

/// What a module imports before it runs.
fn imports(module: &str) -> impl Iterator<Item = &str> {
    let statement = |line: &str| line.starts_with("import ") || line.starts_with("export ");
    module
        .lines()
        .filter(move |line| statement(line))
        .filter_map(|line| {
            let line = line.trim_end().trim_end_matches(';');
            let quote = line.chars().last().filter(|it| matches!(it, '"' | '\''))?;
            line.trim_end_matches(quote).rsplit(quote).next()
        })
}

/// Whether a name changes with the content: eight hexadecimal digits or more, set off.
pub fn is_hashed(name: &str) -> bool {
    name.split(['-', '_', '.', '/'])
        .any(|part| part.len() >= 8 && part.bytes().all(|it| it.is_ascii_hexdigit()))
}

pub fn ends_with(name: &str, ending: &str) -> bool {
    Path::new(name)
        .extension()
        .is_some_and(|it| it.eq_ignore_ascii_case(ending))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn hashes_are_told_from_words() {
        for name in [
            "main-68b9904fec0ca1.css",
            "farend-app-597cc585267ad742_bg.wasm",
        ] {
            assert!(is_hashed(name), "{name}");
        }
        for name in [
            "index.html",
            "icon-192.png",
            "farend-app.js",
            "manifest.webmanifest",
        ] {
            assert!(!is_hashed(name), "{name}");
        }
    }

    #[test]
    fn a_first_visit_loads_what_is_named_and_imported_but_not_what_comes_later() {
        let sh = xshell::Shell::new().unwrap();
        let dist = sh.create_temp_dir().unwrap();
        let dist = dist.path();
        let write = |name: &str, text: &str| sh.write_file(dist.join(name), text).unwrap();
        write("index.html", "<script src=\"./a-11111111.js\"></script>");
        write(
            "a-11111111.js",
            "import { b } from './b-22222222.js';\nfetch('later-33333333.wasm');\n",
        );
        write("b-22222222.js", "");
        write("later-33333333.wasm", "");
        write("sw.js", "import 'later-33333333.wasm'");
        let found = first_visit(dist).unwrap();
        assert_eq!(
            found,
            ["a-11111111.js", "b-22222222.js", "index.html", "sw.js"]
        );
    }
}
