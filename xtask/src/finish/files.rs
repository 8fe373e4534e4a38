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

/// What of others is in the page, for people who want to know.
pub const NOTICES: &str = "third-party.txt";

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

/// What the page runs on, and the notices, which open without network too. Icons aren't, for only an
/// installer asks for them, and scripts under names that stay are for others: the workers, and what
/// other people's pages load.
pub fn parts(dist: &Path) -> Result<Vec<String>> {
    let mut all = all(dist)?;
    all.retain(|name| {
        let runs = ["css", "js", "txt", "wasm"]
            .iter()
            .any(|it| ends_with(name, it));
        [PAGE, MANIFEST, NOTICES].contains(&name.as_str()) || (runs && is_hashed(name))
    });
    Ok(all)
}

/// What is loaded until the first view stands: the page, what it names, and the texts of one language.
/// The service worker comes after it, and what it lists then is there already, or belongs to later views.
pub fn first_view(dist: &Path) -> Result<Vec<String>> {
    let page = fs::read_to_string(dist.join(PAGE))?;
    let mut parts = parts(dist)?;
    // A style for no medium comes later: start.js.
    let waits = |tag: &str| !tag.contains("media=\"not");
    let named = |name: &str| page.split('<').any(|tag| tag.contains(name) && waits(tag));
    let is_first = |name: &str| name == PAGE || named(name) || name.ends_with("/en.txt");
    parts.retain(|name| is_first(name));
    Ok(parts)
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
    fn a_first_view_loads_what_the_page_names() {
        let sh = xshell::Shell::new().unwrap();
        let dist = sh.create_temp_dir().unwrap();
        let dist = dist.path();
        let write = |name: &str, text: &str| sh.write_file(dist.join(name), text).unwrap();
        write(PAGE, "<script src=\"./a-11111111.js\"></script>");
        write("a-11111111.js", "fetch('later-33333333.wasm')");
        write("later-33333333.wasm", "");
        write("text/44444444/en.txt", "");
        write("text/44444444/fr.txt", "");
        write("for-others.js", "");
        write(NOTICES, "");
        write(WORKER, "");
        let first = ["a-11111111.js", PAGE, "text/44444444/en.txt"];
        assert_eq!(first_view(dist).unwrap(), first);
        let all = [
            "a-11111111.js",
            PAGE,
            "later-33333333.wasm",
            "text/44444444/en.txt",
            "text/44444444/fr.txt",
            NOTICES,
        ];
        assert_eq!(parts(dist).unwrap(), all);
    }
}
