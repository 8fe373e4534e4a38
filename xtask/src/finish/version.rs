//! The version of the page: a short sum of all that it runs on.

use std::fs;
use std::path::Path;

use anyhow::{Result, ensure};

use super::files::{self, PAGE, parts};
use super::sum::Sum;
use super::{html, worker};

/// Bytes of the sum that are told: enough for a person to tell two versions apart.
const BYTES: usize = 4;

/// Writes the version into the page, and gives it.
pub fn stamp(root: &Path, dist: &Path) -> Result<String> {
    let path = dist.join(PAGE);
    let page = fs::read_to_string(&path)?;
    ensure!(
        html::meta(&page, "name", "page-version").is_some(),
        "no page-version in {PAGE}"
    );
    // The page can't be of the sum that stands in it.
    let mut sum = Sum::default();
    for name in parts(dist)? {
        let content = match name.as_str() {
            PAGE => stamped(&page, "").into_bytes(),
            _ => fs::read(dist.join(&name))?,
        };
        sum = sum.and(&name, &content);
    }
    let worker = worker::template(root)?;
    let version = sum.and(files::WORKER, worker.as_bytes()).told(BYTES);
    fs::write(path, stamped(&page, &version))?;
    Ok(version)
}

fn stamped(page: &str, version: &str) -> String {
    html::with_tags(page, |tag| {
        let is_version = html::value(tag, "name") == Some("page-version");
        is_version.then(|| html::with(tag, "content", version))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn any_change_is_another_version_and_none_is_none() {
        let sh = xshell::Shell::new().unwrap();
        let root = sh.create_temp_dir().unwrap();
        let (root, dist) = (root.path(), root.path().join("dist"));
        let page = "<meta name=\"page-version\" content=\"\">";
        sh.write_file(dist.join(PAGE), page).unwrap();
        sh.write_file(dist.join("a-00000000.css"), "style").unwrap();
        sh.write_file(worker::source(root), "worker").unwrap();
        let first = stamp(root, &dist).unwrap();
        assert_eq!(stamp(root, &dist).unwrap(), first);
        assert!(sh.read_file(dist.join(PAGE)).unwrap().contains(&first));

        sh.write_file(dist.join("a-00000000.css"), "stylf").unwrap();
        let second = stamp(root, &dist).unwrap();
        assert_ne!(second, first);
        sh.write_file(worker::source(root), "Worker").unwrap();
        assert_ne!(stamp(root, &dist).unwrap(), second);
    }
}
