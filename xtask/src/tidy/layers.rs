//! What may name what inside the core, and what the core is built from.

use std::collections::BTreeSet;
use std::path::Path;
use std::process::Command;

use anyhow::{Context, Result, ensure};
use syn::visit::{self, Visit};

use super::files::{File, under};
use super::syntax::{is_test, named, parsed};

/// What is of a browser.
const BROWSER: [&str; 4] = ["js-sys", "leptos", "wasm-bindgen", "web-sys"];

/// Folders of the core, and the modules of the core that they may name beside themselves.
const LAYERS: [(&str, &[&str]); 2] = [
    // Equations without a machine.
    ("physics", &["quantity", "source", "spread", "words"]),
    // Steps without a route.
    (
        "stage",
        &[
            "defaults", "drive", "formula", "physics", "quantity", "source", "spread", "units",
            "words",
        ],
    ),
];

pub fn check(root: &Path) -> Result<Vec<String>> {
    let mut faults = of_browser(&dependencies(root)?);
    for (folder, may) in LAYERS {
        for file in under(root, &format!("core/src/{folder}"), &["rs"])? {
            faults.extend(above(&file, folder, may)?);
        }
    }
    for file in under(root, "core/src", &["rs"])? {
        faults.extend(kept(&file)?);
    }
    Ok(faults)
}

/// Names of all that the core needs in a browser, with all its features.
fn dependencies(root: &Path) -> Result<String> {
    let mut tree = Command::new(env!("CARGO"));
    tree.args(["tree", "--package", "farend-core", "--all-features"]);
    tree.args(["--edges", "normal", "--prefix", "none", "--format", "{p}"]);
    tree.args(["--target", "wasm32-unknown-unknown"]);
    let made = tree.current_dir(root).output().context("cargo tree")?;
    let said = String::from_utf8_lossy(&made.stderr);
    ensure!(made.status.success(), "cargo tree: {said}");
    Ok(String::from_utf8(made.stdout)?)
}

fn of_browser(tree: &str) -> Vec<String> {
    let names: BTreeSet<_> = tree.lines().filter_map(|it| it.split(' ').next()).collect();
    let browser = names
        .into_iter()
        .filter(|name| BROWSER.iter().any(|it| name.starts_with(it)));
    browser
        .map(|name| format!("core/Cargo.toml: {name} is of a browser"))
        .collect()
}

/// Modules of the core that a lower layer names.
fn above(file: &File, folder: &str, may: &[&str]) -> Result<Vec<String>> {
    let modules: BTreeSet<_> = named(&parsed(file)?)
        .into_iter()
        .filter(|path| path.first().is_some_and(|it| it == "crate"))
        .filter_map(|path| path.into_iter().nth(1))
        .filter(|it| it != folder && !may.contains(&it.as_str()))
        .collect();
    let told = |it| format!("{}: {folder} may not know {it}", file.path);
    Ok(modules.into_iter().map(told).collect())
}

/// What outlives a call: with it, the same inputs could give another result.
fn kept(file: &File) -> Result<Vec<String>> {
    let mut statics = Statics::default();
    statics.visit_file(&parsed(file)?);
    let told = |it| format!("{}: {it} keeps something between calls", file.path);
    Ok(statics.0.into_iter().map(told).collect())
}

#[derive(Default)]
struct Statics(Vec<String>);

impl Visit<'_> for Statics {
    fn visit_item_mod(&mut self, module: &syn::ItemMod) {
        if !is_test(&module.attrs) {
            visit::visit_item_mod(self, module);
        }
    }

    fn visit_item_static(&mut self, it: &syn::ItemStatic) {
        self.0.push(it.ident.to_string());
    }

    fn visit_macro(&mut self, it: &syn::Macro) {
        if it
            .path
            .segments
            .last()
            .is_some_and(|it| it.ident == "thread_local")
        {
            self.0.push("thread_local".to_owned());
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn planted(code: &str) -> File {
        File {
            path: "planted.rs".to_owned(),
            text: code.to_owned(),
        }
    }

    #[test]
    fn what_is_of_a_browser_is_told() {
        let tree = "farend-core v0.1.0 (a folder)\nlibm v0.2.16\nweb-sys v0.3.106\n";
        assert_eq!(
            of_browser(tree),
            ["core/Cargo.toml: web-sys is of a browser"]
        );
        assert!(of_browser("farend-core v0.1.0\nlibm v0.2.16 (*)\n").is_empty());
    }

    #[test]
    fn a_layer_that_looks_up_is_told() {
        let code = "use crate::{quantity::Power, machine::Machine}; use crate::physics::oil::Oil;
            fn f() { crate::route::best() }";
        let faults = above(&planted(code), "physics", &["quantity"]).unwrap();
        let expected = [
            "planted.rs: physics may not know machine",
            "planted.rs: physics may not know route",
        ];
        assert_eq!(faults, expected);
    }

    #[test]
    fn what_outlives_a_call_is_told() {
        let code = "fn f() { static LAST: Mutex<f64> = Mutex::new(0.0); }
            thread_local! { static SEEN: u8 = 0; }
            #[cfg(test)] mod tests { static FINE: u8 = 0; }
            const ALSO_FINE: &'static str = \"\";";
        assert_eq!(kept(&planted(code)).unwrap().len(), 2);
    }
}
