//! A release: what must stand before one, and the archive that is given out.

use std::fs;
use std::path::{Path, PathBuf};

use anyhow::{Context, Result, bail, ensure};
use flate2::Compression;
use flate2::write::GzEncoder;
use sha2::{Digest, Sha256};
use tar::{Builder, EntryType, Header};
use xshell::cmd;

use crate::finish::files;
use crate::host::Host;

const CHANGES: &str = "CHANGELOG.md";
/// What a version's heading says that isn't out yet.
const NOT_YET: &str = "unreleased";
const LICENCES: [&str; 2] = ["LICENSE-APACHE", "LICENSE-MIT"];
/// Seconds since 1970 in every archive: 1 January 2000, for some programs distrust 0.
const TIME: u64 = 946_684_800;

/// Fails where something of the sources isn't ready for a version, with all that isn't.
pub fn check_sources(host: &Host, version: &str) -> Result<()> {
    let sh = &host.sh;
    let mut missing = Vec::new();
    let manifest: toml::Table = sh.read_file("Cargo.toml")?.parse()?;
    let own = manifest["workspace"]["package"]["version"].as_str();
    if own != Some(version) {
        missing.push(format!(
            "Cargo.toml has version {}",
            own.unwrap_or("nothing")
        ));
    }
    let changed = cmd!(sh, "git status --porcelain").quiet().read()?;
    if !changed.is_empty() {
        missing.push(format!("the work tree isn't clean:\n{changed}"));
    }
    missing.extend(lacks(&sh.read_file(CHANGES)?, version));
    ensure!(
        missing.is_empty(),
        "{version} isn't ready:\n{}",
        missing.join("\n")
    );
    Ok(())
}

/// What a list of changes lacks of a version: a heading with a date, and something below it.
fn lacks(changes: &str, version: &str) -> Option<String> {
    let mut lines = changes.lines();
    // 0.1.1 is not 0.1.10.
    let ends = |rest: &&str| !rest.starts_with(|next: char| next.is_ascii_digit() || next == '.');
    let heading = lines.find_map(|line| {
        let rest = line.strip_prefix("## ")?.strip_prefix(version)?;
        Some(rest).filter(ends)
    });
    let Some(rest) = heading else {
        return Some(format!("{CHANGES} has no heading `## {version}`"));
    };
    if rest.contains(NOT_YET) {
        return Some(format!(
            "{CHANGES} calls {version} {NOT_YET}: its date belongs there"
        ));
    }
    let mut below = lines.take_while(|line| !line.starts_with("## "));
    (!below.any(|line| line.starts_with("- ")))
        .then(|| format!("{CHANGES} says nothing about {version}"))
}

/// Writes the page of `dist` with the licences as an archive, and its check sum beside it. The same page
/// gives the same bytes.
pub fn archive(host: &Host, dist: &Path, version: &str) -> Result<PathBuf> {
    let folder = host.root.join("target").join("release-page");
    host.sh.create_dir(&folder)?;
    let name = format!("farend-{version}");
    let licences = LICENCES.map(|licence| (licence.to_owned(), host.root.join(licence)));
    let page = files::all(dist)?
        .into_iter()
        .map(|file| (file.clone(), dist.join(file)));
    let mut all: Vec<_> = page.chain(licences).collect();
    all.sort();
    let content = packed(&name, &all)?;
    let path = folder.join(format!("{name}.tar.gz"));
    fs::write(&path, &content)?;
    let sum: String = Sha256::digest(&content)
        .iter()
        .map(|byte| format!("{byte:02x}"))
        .collect();
    fs::write(
        folder.join(format!("{name}.tar.gz.sha256")),
        format!("{sum}  {name}.tar.gz\n"),
    )?;
    println!("{}\nSHA-256 {sum}", path.display());
    Ok(path)
}

/// Files in a folder of that name, all of one time and of nobody.
fn packed(name: &str, files: &[(String, PathBuf)]) -> Result<Vec<u8>> {
    let mut tar = Builder::new(GzEncoder::new(Vec::new(), Compression::best()));
    for (file, path) in files {
        let content = fs::read(path).with_context(|| format!("reading {}", path.display()))?;
        let mut header = Header::new_ustar();
        header.set_entry_type(EntryType::Regular);
        header.set_size(content.len() as u64);
        header.set_mode(0o644);
        header.set_mtime(TIME);
        tar.append_data(&mut header, format!("{name}/{file}"), &content[..])?;
    }
    Ok(tar.into_inner()?.finish()?)
}

/// Names the version in the repository. Nothing is pushed.
pub fn tag(host: &Host, version: &str) -> Result<()> {
    let sh = &host.sh;
    let tag = format!("v{version}");
    if cmd!(sh, "git tag --annotate {tag} --message {tag}")
        .run()
        .is_err()
    {
        bail!("the tag {tag} couldn't be made");
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_version_needs_a_heading_a_date_and_changes() {
        let changes = "# Changes\n\n## 0.2.0 (unreleased)\n\n- More\n\n## 0.1.0, 2026-12-01\n\n- All\n\n\
            ## 0.0.10, 2026-11-01\n\n## 0.0.9, 2026-11-01\n\n- Some\n";
        let lacks = |version| lacks(changes, version).unwrap_or_default();
        assert!(lacks("0.2.0").contains("unreleased"));
        assert_eq!(lacks("0.1.0"), "");
        assert!(lacks("0.0.1").contains("no heading"));
        assert!(lacks("0.0.10").contains("nothing about"));
    }

    #[test]
    fn an_archive_depends_on_contents_alone() {
        let sh = xshell::Shell::new().unwrap();
        let pack = |text: &str| {
            let folder = sh.create_temp_dir().unwrap();
            let path = folder.path().join("index.html");
            sh.write_file(&path, text).unwrap();
            packed("farend-1.0.0", &[("index.html".to_owned(), path)]).unwrap()
        };
        assert_eq!(pack("a"), pack("a"));
        assert_ne!(pack("a"), pack("b"));
        let archive = pack("a");
        let mut archive = tar::Archive::new(flate2::read::GzDecoder::new(&archive[..]));
        let mut entries = archive.entries().unwrap();
        let entry = entries.next().unwrap().unwrap();
        assert_eq!(entry.header().mtime().unwrap(), TIME);
        let path = entry.path().unwrap().into_owned();
        assert_eq!(path, Path::new("farend-1.0.0/index.html"));
        assert!(entries.next().is_none());
    }
}
