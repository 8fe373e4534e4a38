//! What of others is in the page, with the licences that ask to be handed on.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write;
use std::fs;
use std::path::Path;

use anyhow::{Context, Result, ensure};
use serde::Deserialize;
use xshell::{Shell, cmd};

use super::files::NOTICES;
use crate::dependencies::{self, Package};
use crate::setup::TARGET;

const APP: &str = "farend-app";
/// A browser that is told no encoding takes the text for what this mark says.
const UTF_8: char = '\u{feff}';

/// A library as Cargo tells it.
#[derive(Deserialize)]
struct Library {
    name: String,
    version: String,
    license: Option<String>,
    authors: Vec<String>,
    /// Where it comes from; nothing for what is ours.
    source: Option<String>,
    manifest_path: String,
}

#[derive(Deserialize)]
struct Metadata {
    packages: Vec<Library>,
}

/// Writes the notices beside the page.
pub fn write(root: &Path, dist: &Path) -> Result<()> {
    let linked = dependencies::linked(root, APP, &["--features", "split"])?;
    let all = metadata(root)?;
    let own = fs::read_to_string(root.join("LICENSE-MIT")).context("LICENSE-MIT")?;
    let notices = notices(&all, &linked, &own)?;
    Ok(fs::write(dist.join(NOTICES), notices)?)
}

fn metadata(root: &Path) -> Result<Vec<Library>> {
    let sh = Shell::new()?;
    sh.change_dir(root);
    let told = cmd!(
        sh,
        "cargo metadata --format-version 1 --filter-platform {TARGET}"
    );
    let metadata: Metadata = serde_json::from_str(&told.quiet().read()?)?;
    Ok(metadata.packages)
}

fn notices(all: &[Library], linked: &BTreeSet<Package>, own: &str) -> Result<String> {
    let mut text =
        format!("{UTF_8}Farend is licensed under MIT OR Apache-2.0, as you like.\n\n{own}\n");
    text += &format!(
        "\nWhat Farend is built with\n\n\
         Where a licence offers a choice with MIT in it, MIT is taken.\n\n\
         Rust's standard library: MIT OR Apache-2.0, The Rust Project contributors\n\
         farend-app.js, the glue between program and browser: made by wasm-bindgen {}, MIT OR Apache-2.0\n\
         parts.js, which loads parts of the program: made by wasm_split_cli_support {}, MIT OR Apache-2.0\n",
        version_of(all, "wasm-bindgen")?,
        version_of(all, "wasm_split_cli_support")?,
    );
    let others = all.iter().filter(|it| {
        it.source.is_some() && linked.contains(&(it.name.clone(), it.version.clone()))
    });
    let mut texts: BTreeMap<String, (String, Vec<String>)> = BTreeMap::new();
    for library in others {
        let Library { name, version, .. } = library;
        let licence = library.license.as_deref();
        let licence = licence.with_context(|| format!("{name} names no licence"))?;
        writeln!(text, "{name} {version}: {licence}")?;
        let found = texts_of(library, licence)?;
        let found = match found.is_empty() {
            false => found,
            true => vec![without_file(library, licence, own)?],
        };
        for licence in found {
            let words: Vec<_> = licence.split_whitespace().collect();
            let entry = texts.entry(words.join(" "));
            let (_, of) = entry.or_insert_with(|| (licence, Vec::new()));
            of.push(name.clone());
        }
    }
    for (licence, of) in texts.values() {
        write!(text, "\n\n==== {}\n\n{}\n", of.join(", "), licence.trim())?;
    }
    Ok(text)
}

fn version_of<'a>(all: &'a [Library], name: &str) -> Result<&'a str> {
    let found = all.iter().find(|it| it.name == name);
    Ok(&found.with_context(|| format!("no {name}"))?.version)
}

/// Whether a licence offers a choice with MIT in it.
fn is_choice(licence: &str) -> bool {
    let parts = licence.split(['/', ' ']);
    !licence.contains("AND") && parts.filter(|it| *it == "MIT").count() == 1
}

/// What lies in a library's sources about its licence: of a choice that of MIT alone.
fn texts_of(library: &Library, licence: &str) -> Result<Vec<String>> {
    let folder = Path::new(&library.manifest_path).parent();
    let folder = folder.context("a manifest lies in a folder")?;
    let mut names: Vec<_> = fs::read_dir(folder)?
        .map(|entry| Ok(entry?.file_name().to_string_lossy().into_owned()))
        .collect::<Result<_>>()?;
    names.sort();
    let starts = [
        "LICENSE",
        "LICENCE",
        "COPYING",
        "COPYRIGHT",
        "NOTICE",
        "UNLICENSE",
    ];
    names.retain(|it| {
        starts
            .iter()
            .any(|start| it.to_uppercase().starts_with(start))
    });
    let is_mit = |it: &String| it.to_uppercase().contains("MIT");
    if is_choice(licence) && names.iter().any(is_mit) {
        let notice = |it: &String| {
            let it = it.to_uppercase();
            it.starts_with("NOTICE") || it.starts_with("COPYRIGHT")
        };
        names.retain(|it| is_mit(it) || notice(it));
    }
    let paths = names.into_iter().map(|it| folder.join(it));
    paths
        .filter(|it| it.is_file())
        .map(|it| Ok(fs::read_to_string(it)?))
        .collect()
}

/// The text of MIT with the authors that a library's manifest names, where that is all it has.
fn without_file(library: &Library, licence: &str, own: &str) -> Result<String> {
    let name = &library.name;
    ensure!(is_choice(licence), "{name} brings no text of {licence}");
    let (_, terms) = own
        .split_once("\n\nPermission")
        .context("LICENSE-MIT without its terms")?;
    let names = library
        .authors
        .iter()
        .filter_map(|it| it.split(" <").next());
    let names: Vec<_> = names.collect();
    let by = match names.is_empty() {
        true => format!("the authors of {name}"),
        false => names.join(", "),
    };
    Ok(format!(
        "MIT License\n\n(no licence file in the package; by {by})\n\nPermission{terms}"
    ))
}

#[cfg(test)]
mod tests {
    use super::*;

    const OWN: &str = "MIT License\n\nCopyright (c) us\n\nPermission is granted\n";

    /// A library in a folder with these files.
    fn library(folder: &Path, name: &str, licence: &str, files: &[(&str, &str)]) -> Library {
        let folder = folder.join(name);
        fs::create_dir_all(&folder).unwrap();
        for (file, text) in files {
            fs::write(folder.join(file), text).unwrap();
        }
        let manifest = folder.join("Cargo.toml");
        Library {
            name: name.to_owned(),
            version: "1.0.0".to_owned(),
            license: Some(licence.to_owned()),
            authors: vec!["Somebody <at a place>".to_owned()],
            source: Some("elsewhere".to_owned()),
            manifest_path: manifest.to_string_lossy().into_owned(),
        }
    }

    #[test]
    fn each_library_is_listed_and_each_text_stands_once() {
        let sh = Shell::new().unwrap();
        let folder = sh.create_temp_dir().unwrap();
        let one =
            |name, licence, files: &[(&str, &str)]| library(folder.path(), name, licence, files);
        let both = [
            ("LICENSE-MIT", "the  same\ntext"),
            ("LICENSE-APACHE", "a choice not taken"),
        ];
        let all = [
            one("wasm-bindgen", "MIT/Apache-2.0", &both),
            one(
                "wasm_split_cli_support",
                "MIT",
                &[("LICENSE", "a tool's text")],
            ),
            one(
                "same",
                "Apache-2.0 OR MIT",
                &[("license-mit.txt", "the same text")],
            ),
            one("bare", "MIT", &[]),
            one("two", "(MIT OR Apache-2.0) AND Unicode-3.0", &both),
        ];
        let linked = ["wasm-bindgen", "same", "bare", "two"];
        let linked = linked.map(|it| (it.to_owned(), "1.0.0".to_owned()));
        let text = notices(&all, &linked.into(), OWN).unwrap();
        for line in [
            "wasm-bindgen 1.0.0: MIT/Apache-2.0\n",
            "bare 1.0.0: MIT\n",
            "==== wasm-bindgen, same, two\n",
            "==== two\n\na choice not taken\n",
            "(no licence file in the package; by Somebody)\n\nPermission is granted",
        ] {
            assert_eq!(text.matches(line).count(), 1, "{line} in {text}");
        }
        assert!(!text.contains("a tool's text"), "{text}");
        assert!(!text.contains(&*folder.path().to_string_lossy()), "{text}");

        let silent = one("silent", "Zlib", &[]);
        let linked = [("silent".to_owned(), "1.0.0".to_owned())];
        let all: Vec<_> = all.into_iter().chain([silent]).collect();
        assert!(notices(&all, &linked.into(), OWN).is_err());
    }
}
