//! A file that grows long has two subjects, or says why it has one.

use std::path::Path;

use anyhow::Result;

use super::files::{File, under};

const LONGEST: usize = 400;

/// What is code.
const ENDINGS: [&str; 6] = ["css", "html", "js", "mjs", "py", "rs"];

/// Longer files, and why they stay whole.
const LONG: [(&str, &str); 11] = [
    (
        "core/src/state.rs",
        "the link's versions stand beside the state that they carry, none may change",
    ),
    (
        "core/src/yard/build.rs",
        "one walk over the entries, a function for each, in the order of the file",
    ),
    (
        "core/src/yard/entry.rs",
        "the file's fields as plain structs, in the order of the file",
    ),
    (
        "style/main.css",
        "what all views share and the first view, in the order of the page",
    ),
    ("style/practice.css", "the style of one view"),
    (
        "tests/e2e/practice.test.mjs",
        "all flows of one view, on the same helpers",
    ),
    (
        "tests/links.rs",
        "all that a link must and mustn't do, on the same helpers",
    ),
    (
        "tests/properties/wanted.rs",
        "all that must hold for one question, on the same generators",
    ),
    (
        "tests/wanted.rs",
        "each thing that can be in the way of one question, on the same helpers",
    ),
    (
        "tests/yard_files/damaged.rs",
        "a list: what is spoilt, and the faults that must come of it",
    ),
    (
        "tests/yard_files/editing.rs",
        "what is edited and what is kept of it, on the same helpers",
    ),
];

pub fn check(root: &Path) -> Result<Vec<String>> {
    Ok(of(&under(root, "", &ENDINGS)?, &LONG))
}

fn of(files: &[File], known: &[(&str, &str)]) -> Vec<String> {
    let is_known = |path: &str| known.iter().any(|(it, _)| *it == path);
    let is_long = |it: &&File| it.text.lines().count() > LONGEST;
    let mut faults: Vec<_> = files
        .iter()
        .filter(is_long)
        .filter(|it| !is_known(&it.path))
        .map(|it| format!("{}: more than {LONGEST} lines, and no reason why", it.path))
        .collect();
    let is_still = |path: &str| files.iter().filter(is_long).any(|it| it.path == path);
    let over = known.iter().filter(|(path, _)| !is_still(path));
    faults.extend(over.map(|(path, _)| format!("{path}: isn't long any more, its reason can go")));
    faults
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_long_file_needs_a_reason_and_a_short_one_none() {
        let file = |path: &str, lines: usize| File {
            path: path.to_owned(),
            text: "line\n".repeat(lines),
        };
        let files = [file("short.rs", LONGEST), file("long.rs", LONGEST + 1)];
        assert_eq!(of(&files, &[]).len(), 1);
        assert!(of(&files, &[("long.rs", "why")]).is_empty());
        assert_eq!(
            of(&files, &[("long.rs", "why"), ("short.rs", "why")]).len(),
            1
        );
    }
}
