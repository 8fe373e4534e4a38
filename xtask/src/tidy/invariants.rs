//! What must stay true is held by something that is there: ARCHITECTURE.md names for each invariant the
//! tests and lints that would fail.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result};

const DOCUMENT: &str = "ARCHITECTURE.md";
const SECTION: &str = "\n## What must stay true\n";

pub fn check(root: &Path) -> Result<Vec<String>> {
    let text = fs::read_to_string(root.join(DOCUMENT)).context(DOCUMENT)?;
    let (_, section) = text
        .split_once(SECTION)
        .with_context(|| format!("{DOCUMENT} has no section{SECTION}"))?;
    let section = section.split("\n## ").next().unwrap_or_default();
    let rows = section.lines().filter(|it| it.starts_with("| ")).skip(1);
    Ok(rows.flat_map(|row| of(root, row)).collect())
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
    let holders: Vec<_> = held.split('`').skip(1).step_by(2).collect();
    if holders.is_empty() {
        return vec![format!("{DOCUMENT}: nothing holds that {what}")];
    }
    let absent = holders.into_iter().filter(|it| !is_there(root, it));
    absent
        .map(|it| format!("{DOCUMENT}: {it} isn't there, which should hold that {what}"))
        .collect()
}

/// `file` or `file::name`: a function of Rust by its name, anything else by its text.
fn is_there(root: &Path, holder: &str) -> bool {
    let (path, name) = holder.split_once("::").unwrap_or((holder, ""));
    let Ok(text) = fs::read_to_string(root.join(path)) else {
        return false;
    };
    let is_function = path.ends_with(".rs") && !name.contains("::") && !name.is_empty();
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
}
