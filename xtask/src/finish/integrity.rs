//! Check sums of what the page loads, so that the browser refuses what isn't of this build.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result};
use base64::Engine;
use base64::prelude::BASE64_STANDARD;
use sha2::{Digest, Sha384};

use super::files::{self, PAGE};
use super::html;

/// The check sum of a content as browsers take it.
pub fn of(content: &[u8]) -> String {
    format!("sha384-{}", BASE64_STANDARD.encode(Sha384::digest(content)))
}

/// Says of everything that the page loads what it must be: the files that scripts fetch, the modules
/// that modules import, and all that stands in the page itself.
pub fn write(dist: &Path) -> Result<()> {
    check_fetches(dist)?;
    let path = dist.join(PAGE);
    let page = with_imports(dist, fs::read_to_string(&path)?)?;
    let sum = |address: &str| sum(dist, address);
    let program = html::meta(&page, "name", "page-wasm").context("no page-wasm in index.html")?;
    let program = sum(program)?;
    let mut failed = None;
    let made = html::with_tags(&page, |tag| {
        if html::value(tag, "name") == Some("page-sum") {
            return Some(html::with(tag, "content", &program));
        }
        match sum(loaded(tag)?) {
            // Without CORS, a frame with an origin of its own couldn't check and wouldn't load.
            Ok(sum) => {
                let tag = html::with(tag, "integrity", &sum);
                Some(html::with(&tag, "crossorigin", "anonymous"))
            }
            Err(error) => {
                failed = Some(error);
                None
            }
        }
    });
    match failed {
        Some(error) => Err(error),
        None => Ok(fs::write(path, made)?),
    }
}

/// The check sum of a file by its address in the page.
fn sum(dist: &Path, address: &str) -> Result<String> {
    let name = address.trim_start_matches("./");
    let content = fs::read(dist.join(name)).with_context(|| format!("{PAGE} names {name}"))?;
    Ok(of(&content))
}

/// Gives scripts that fetch parts of the program the parts' check sums.
fn check_fetches(dist: &Path) -> Result<()> {
    let parts = files::parts(dist)?;
    for script in parts.iter().filter(|it| files::ends_with(it, "js")) {
        let path = dist.join(script);
        let old = fs::read_to_string(&path)?;
        let mut new = old.clone();
        for part in parts.iter().filter(|it| files::ends_with(it, "wasm")) {
            let address = format!("fetch(new URL(\"./{part}\", import.meta.url)");
            let sum = of(&fs::read(dist.join(part))?);
            new = new.replace(
                &format!("{address})"),
                &format!("{address}, {{ integrity: \"{sum}\" }})"),
            );
        }
        if new != old {
            fs::write(path, new)?;
        }
    }
    Ok(())
}

/// The page with the modules beside those that it fetches ahead that those import: they come at the
/// same time then, and are checked.
fn with_imports(dist: &Path, page: String) -> Result<String> {
    let parts = files::parts(dist)?;
    let mut imported: Vec<&String> = Vec::new();
    html::with_tags(&page, |tag| {
        let module = loaded(tag).filter(|_| html::value(tag, "rel") == Some("modulepreload"))?;
        let module = fs::read_to_string(dist.join(module)).ok()?;
        imported.extend(parts.iter().filter(|part| {
            let from = format!("\"./{part}\"");
            !page.contains(part.as_str())
                && module
                    .lines()
                    .any(|it| it.starts_with("import ") && it.contains(&from))
        }));
        None
    });
    let links: String = imported
        .iter()
        .map(|part| format!("<link rel=\"modulepreload\" href=\"./{part}\">"))
        .collect();
    Ok(page.replacen("</head>", &format!("{links}</head>"), 1))
}

/// The file that a tag loads with a check sum. What is only fetched ahead takes none: browsers say
/// that they ignore it, and the start script checks.
fn loaded(tag: &str) -> Option<&str> {
    if html::is(tag, "script") {
        return html::value(tag, "src");
    }
    let checked = matches!(
        html::value(tag, "rel"),
        Some("stylesheet" | "modulepreload")
    );
    html::value(tag, "href").filter(|_| html::is(tag, "link") && checked)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The sum of nothing: from memory, as `openssl dgst -sha384` gives it.
    #[test]
    fn a_sum_is_written_as_browsers_take_it() {
        assert_eq!(
            of(b""),
            "sha384-OLBgp1GsljhM2TJ+sbHjaiH9txEUvgdDTAzHv2P24donTt6/529l+9Ua0vFImLlb"
        );
    }

    #[test]
    fn what_is_loaded_gets_its_sum_twice_the_same() {
        let sh = xshell::Shell::new().unwrap();
        let dist = sh.create_temp_dir().unwrap();
        let dist = dist.path();
        let write_file = |name: &str, text: &str| sh.write_file(dist.join(name), text).unwrap();
        let read = |name: &str| sh.read_file(dist.join(name)).unwrap();
        write_file(
            PAGE,
            "<head><link rel=\"stylesheet\" href=\"./a-00000000.css\" integrity=\"old\"/>\
            <link rel=\"modulepreload\" href=\"./a-00000000.js\">\
            <link rel=\"preload\" href=\"./a-00000000.wasm\"><link rel=\"icon\" href=\"data:x\">\
            <meta name=\"page-wasm\" content=\"./a-00000000.wasm\">\
            <meta name=\"page-sum\" content=\"\"></head>",
        );
        write_file("a-00000000.css", "style");
        write_file("a-00000000.wasm", "program");
        write_file("later-00000000.wasm", "part");
        write_file("a-00000000.js", "import * as b from \"./b-00000000.js\"\n");
        let fetch = "fetch(new URL(\"./later-00000000.wasm\", import.meta.url)";
        write_file("b-00000000.js", &format!("{fetch})"));

        write(dist).unwrap();
        let script = read("b-00000000.js");
        assert_eq!(
            script,
            format!("{fetch}, {{ integrity: \"{}\" }})", of(b"part"))
        );
        let page = read(PAGE);
        for (name, sum) in [
            ("a-00000000.css", of(b"style")),
            ("b-00000000.js", of(script.as_bytes())),
        ] {
            assert!(
                page.contains(&format!("./{name}\" integrity=\"{sum}\"")),
                "{page}"
            );
        }
        let program = format!("\"page-sum\" content=\"{}\"", of(b"program"));
        assert!(page.contains(&program), "{page}");
        assert_eq!(page.matches("integrity=").count(), 3);

        write(dist).unwrap();
        assert_eq!((read(PAGE), read("b-00000000.js")), (page, script));
    }
}
