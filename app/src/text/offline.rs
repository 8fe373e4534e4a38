//! The words about the page's version, and about times without network.

use super::labels;
use crate::offline::PageKept;

pub const NEWER: &str = "A new version of this page is ready. Nothing reloads before you say so.";
pub const LOSES: &str = "This browser doesn't keep your changes to the yard: reloading would lose \
    them. Save the yard as a file first, and open it again afterwards.";
pub const RELOAD: &str = "Reload now";
pub const RELOAD_ALL_THE_SAME: &str = "Reload all the same";
pub const LATER: &str = "Later";

/// The program's version, and the build's where it has one.
pub fn version(build: Option<&str>) -> String {
    let version = format!("{} {}", labels::version(), env!("CARGO_PKG_VERSION"));
    match build {
        Some(build) => format!("{version} ({build})"),
        None => version,
    }
}

/// Whether the page opens without network.
pub fn kept(kept: PageKept) -> &'static str {
    match kept {
        PageKept::Kept => "This browser keeps the page: it opens without network too.",
        PageKept::Refused => "This browser doesn't keep the page: it takes a network to open it.",
    }
}
