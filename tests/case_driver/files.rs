//! Reads the case files.

use crate::case::{Case, CaseFile};
use crate::inputs::Problem;
use std::fs;
use std::path::Path;

/// The cases of a file's text.
///
/// # Errors
/// Where it isn't readable, or has no case.
pub fn parse(text: &str) -> Result<Vec<Case>, Problem> {
    let file: CaseFile = toml::from_str(text).map_err(|error| error.to_string())?;
    if file.subject.trim().is_empty() {
        return Err("a file must name its subject".to_owned());
    }
    if file.cases.is_empty() {
        return Err("a file must have a case".to_owned());
    }
    Ok(file.cases)
}

/// The cases of all files in `tests/cases`.
///
/// # Panics
/// Where one can't be read.
pub fn all() -> Vec<Case> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("cases");
    let mut paths: Vec<_> = fs::read_dir(&folder)
        .expect("the folder of cases")
        .map(|entry| entry.expect("an entry of the folder").path())
        .collect();
    paths.sort();
    let mut cases = Vec::new();
    for path in paths {
        let name = path.display();
        let text = fs::read_to_string(&path).unwrap_or_else(|error| panic!("{name}: {error}"));
        cases.extend(parse(&text).unwrap_or_else(|problem| panic!("{name}: {problem}")));
    }
    cases
}
