//! The words about the page's version, and about times without network.

use super::say::offline as say;
use crate::offline::PageKept;

pub use super::say::offline::*;

/// The program's version, and the build's where it has one.
pub fn version(build: Option<&str>) -> String {
    let number = env!("CARGO_PKG_VERSION");
    match build {
        Some(build) => say::VersionOfBuild { number, build }.said(),
        None => say::version(number),
    }
}

/// Whether the page opens without network.
pub fn kept(kept: PageKept) -> &'static str {
    match kept {
        PageKept::Kept => say::kept(),
        PageKept::Refused => say::refused(),
    }
}
