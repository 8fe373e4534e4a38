//! Check sums of what the page loads, so that the browser refuses what isn't of this build.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result};
use base64::Engine;
use base64::prelude::BASE64_STANDARD;
use sha2::{Digest, Sha384};

use super::files::PAGE;
use super::html;

/// The check sum of a content as browsers take it.
pub fn of(content: &[u8]) -> String {
    format!("sha384-{}", BASE64_STANDARD.encode(Sha384::digest(content)))
}

/// Gives every tag of the page that loads a file of ours the file's check sum, and the start script
/// that of the program.
pub fn write(dist: &Path) -> Result<()> {
    let path = dist.join(PAGE);
    let page = fs::read_to_string(&path)?;
    let sum = |address: &str| -> Result<String> {
        let name = address.trim_start_matches("./");
        let content = fs::read(dist.join(name)).with_context(|| format!("{PAGE} names {name}"))?;
        Ok(of(&content))
    };
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
    fn tags_get_the_sums_of_their_files_twice_the_same() {
        let sh = xshell::Shell::new().unwrap();
        let dist = sh.create_temp_dir().unwrap();
        let dist = dist.path();
        let page = "<link rel=\"stylesheet\" href=\"./a.css\" integrity=\"old\"/>\
            <link rel=\"preload\" href=\"./a.wasm\"><link rel=\"icon\" href=\"data:x\">\
            <meta name=\"page-wasm\" content=\"./a.wasm\"><meta name=\"page-sum\" content=\"\">";
        sh.write_file(dist.join(PAGE), page).unwrap();
        sh.write_file(dist.join("a.css"), "style").unwrap();
        sh.write_file(dist.join("a.wasm"), "program").unwrap();
        write(dist).unwrap();
        let once = sh.read_file(dist.join(PAGE)).unwrap();
        assert!(
            once.contains(&format!("href=\"./a.css\" integrity=\"{}\"", of(b"style"))),
            "{once}"
        );
        assert!(
            once.contains(&format!("\"page-sum\" content=\"{}\"", of(b"program"))),
            "{once}"
        );
        assert_eq!(once.matches("integrity=").count(), 1);
        write(dist).unwrap();
        assert_eq!(sh.read_file(dist.join(PAGE)).unwrap(), once);
    }
}
