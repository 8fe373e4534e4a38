//! What may name what inside the core, and what the core is built from.

use std::collections::BTreeSet;
use std::path::Path;

use anyhow::Result;
use syn::visit::{self, Visit};

use super::files::{File, under};
use super::syntax::{is_test, named, parsed};
use crate::dependencies::{self, Package};

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
    let linked = dependencies::linked(root, "farend-core", &["--all-features"])?;
    let mut faults = of_browser(&linked);
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

fn of_browser(linked: &BTreeSet<Package>) -> Vec<String> {
    let browser = linked
        .iter()
        .filter(|(name, _)| BROWSER.iter().any(|it| name.starts_with(it)));
    browser
        .map(|(name, _)| format!("core/Cargo.toml: {name} is of a browser"))
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

    #[test]
    fn what_is_of_a_browser_is_told() {
        let package = |name: &str| (name.to_owned(), "1.0.0".to_owned());
        let linked = ["farend-core", "web-sys"].map(package).into();
        assert_eq!(
            of_browser(&linked),
            ["core/Cargo.toml: web-sys is of a browser"]
        );
        let linked = ["farend-core", "libm"].map(package).into();
        assert!(of_browser(&linked).is_empty());
    }

    #[test]
    fn a_layer_that_looks_up_is_told() {
        let code = "use crate::{quantity::Power, machine::Machine}; use crate::physics::oil::Oil;
            fn f() { crate::route::best() }";
        let faults = above(&File::planted(code), "physics", &["quantity"]).unwrap();
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
        assert_eq!(kept(&File::planted(code)).unwrap().len(), 2);
    }
}
