//! A next version of a finished page, to try the change from one to the other.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result};

use super::files::{self, PAGE};
use super::sum::Sum;
use super::{html, seal};

/// What the start script of the next version has more.
const CHANGE: &str = "\n// The next version.\n";

/// Puts into `next` what is in `dist`, but for one script: changed, under the name that its content
/// then has, and with all that follows from it.
pub fn successor(root: &Path, dist: &Path, next: &Path) -> Result<()> {
    if next.exists() {
        fs::remove_dir_all(next)?;
    }
    let is_packed = |name: &String| ["br", "gz"].iter().any(|it| files::ends_with(name, it));
    for name in files::all(dist)?.iter().filter(|it| !is_packed(it)) {
        let to = next.join(name);
        fs::create_dir_all(to.parent().unwrap_or(next))?;
        fs::copy(dist.join(name), to)?;
    }
    let page = fs::read_to_string(next.join(PAGE))?;
    let mut script = None;
    html::with_tags(&page, |tag| {
        if html::value(tag, "id") == Some("start") {
            script = html::value(tag, "src").map(|it| it.trim_start_matches("./").to_owned());
        }
        None
    });
    let old = script.context("no start script in index.html")?;
    let content = fs::read_to_string(next.join(&old))? + CHANGE;
    let new = format!(
        "start-{}.js",
        Sum::default().and(&old, content.as_bytes()).told(8)
    );
    fs::write(next.join(&new), content)?;
    fs::remove_file(next.join(&old))?;
    fs::write(next.join(PAGE), page.replace(&old, &new))?;
    seal(root, next)
}
