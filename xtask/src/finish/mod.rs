//! What happens to the release page after Trunk has built it. Every step goes by the files that are
//! there, and leaves a finished page as it is.

pub mod files;
mod headers;
pub mod html;
mod icons;
mod integrity;
mod notices;
mod pack;
mod successor;
pub mod sum;
mod version;
mod worker;

use std::path::Path;

use anyhow::Result;

pub use files::{first_view, parts};
pub use headers::{Header, everywhere};
pub use pack::{brotli, pack};
pub use successor::successor;

/// Finishes the page in `dist`, with what the repository at `root` has for it.
pub fn finish(root: &Path, dist: &Path) -> Result<()> {
    icons::draw(root, dist)?;
    notices::write(root, dist)?;
    seal(root, dist)
}

/// Adds what follows from all files of the page as they are.
fn seal(root: &Path, dist: &Path) -> Result<()> {
    integrity::write(dist)?;
    let version = version::stamp(root, dist)?;
    worker::write(root, dist, &version)?;
    headers::write(dist)
}
