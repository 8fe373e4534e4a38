//! What must stay true is held by something that is there: ARCHITECTURE.md names for each invariant the
//! tests and lints that would fail. What the guide to a new route names is there too.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result};

const DOCUMENT: &str = "ARCHITECTURE.md";
const GUIDE: &str = "docs/adding-a-route.md";
const SECTION: &str = "\n## What must stay true\n";

pub fn check(root: &Path) -> Result<Vec<String>> {
    let text = fs::read_to_string(root.join(DOCUMENT)).context(DOCUMENT)?;
    let (_, section) = text
        .split_once(SECTION)
        .with_context(|| format!("{DOCUMENT} has no section{SECTION}"))?;
    let section = section.split("\n## ").next().unwrap_or_default();
    let rows = section.lines().filter(|it| it.starts_with("| ")).skip(1);
    let guide = fs::read_to_string(root.join(GUIDE)).context(GUIDE)?;
    let faults = rows.flat_map(|row| of(root, row));
    Ok(faults.chain(absent(root, &guide)).collect())
}

/// Files and folders of the repository that a text names and that aren't there.
fn absent(root: &Path, text: &str) -> Vec<String> {
    let paths = coded(text).filter(|it| it.contains('/'));
    let absent = paths.filter(|it| !root.join(it).exists());
    absent
        .map(|it| format!("{GUIDE}: there is no {it}"))
        .collect()
}

/// What stands between backticks.
fn coded(text: &str) -> impl Iterator<Item = &str> {
    text.split('`').skip(1).step_by(2)
}

/// What is wrong with a row `| what | held by |`.
fn of(root: &Path, row: &str) -> Vec<String> {
    let cells: Vec<_> = row
        .split(" | ")
        .map(|it| it.trim_matches(['|', ' ']))
        .collect();
    let [what, held] = cells.as_slice() else {
        return vec![format!("{DOCUMENT}: not two columns: {row}")];
    };
    if what.starts_with("---") {
        return Vec::new();
    }
    let holders: Vec<_> = coded(held).collect();
    if holders.is_empty() {
        return vec![format!("{DOCUMENT}: nothing holds that {what}")];
    }
    let gone = holders.into_iter().filter(|it| !is_there(root, it));
    gone.map(|it| format!("{DOCUMENT}: {it} isn't there, which should hold that {what}"))
        .collect()
}

/// `file` or `file::name`: a function of Rust by its name, anything else by its text.
fn is_there(root: &Path, holder: &str) -> bool {
    let (path, name) = holder.split_once("::").unwrap_or((holder, ""));
    let Ok(text) = fs::read_to_string(root.join(path)) else {
        return false;
    };
    let is_name = !name.is_empty() && name.chars().all(|it| it == '_' || it.is_alphanumeric());
    let is_function = path.ends_with(".rs") && is_name;
    match is_function {
        true => text.contains(&format!("fn {name}(")),
        false => text.contains(name),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_invariant_without_a_holder_is_told() {
        let root = Path::new(env!("CARGO_MANIFEST_DIR"));
        let me = "src/tidy/invariants.rs";
        let name = "an_invariant_without_a_holder_is_told";
        assert!(of(root, &format!("| this | `{me}::{name}`, `Cargo.toml` |")).is_empty());
        for planted in [
            "| this | good will |".to_owned(),
            format!("| this | `{me}::a_test_that_was_renamed` |"),
            "| this | `src/gone.rs` |".to_owned(),
            "| this |".to_owned(),
        ] {
            assert_eq!(of(root, &planted).len(), 1, "{planted}");
        }
    }

    #[test]
    fn a_guide_to_what_is_gone_is_told() {
        let root = Path::new(env!("CARGO_MANIFEST_DIR"));
        let text = "In `src/tidy/` a `mod` stands in `src/tidy/mod.rs`, one more in `src/gone.rs`.";
        assert_eq!(
            absent(root, text),
            ["docs/adding-a-route.md: there is no src/gone.rs"]
        );
    }
}
