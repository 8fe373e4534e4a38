//! The page computes no physics and has one way for data, as far as a program's text can tell: which
//! types a value has is not known here, so arithmetic on quantities isn't seen.

use std::path::Path;

use anyhow::Result;
use syn::visit::{self, Visit};

use super::files::{File, under};
use super::syntax::{is_test, named, parsed};

/// What of the core reckons.
const RECKONS: [&str; 4] = ["budget", "chain", "physics", "root"];

/// What of it the page may name: kinds and results to find words for, and limits that are told.
const MAY_NAME: [&str; 12] = [
    "budget::Budget",
    "chain::Ledger",
    "chain::Passage",
    "physics::balance::End",
    "physics::balance::LEAST_SHARE",
    "physics::hitch::Category",
    "physics::joint::AngleAdvice",
    "physics::joint_shaft::least_clearance",
    "physics::joint_shaft::least_overlap",
    "physics::line::Pipe",
    "physics::oil::Grade",
    "physics::shaft::ShaftType",
];

/// Files in which an effect writes to a signal, and why that is no second way for data.
const EFFECTS_THAT_WRITE: [(&str, &str); 2] = [
    (
        "app/src/view/header.rs",
        "a word about a copy, which is old once the state has changed",
    ),
    (
        "app/src/view/yard/form.rs",
        "what is unfolded so that a fault shows",
    ),
];

pub fn check(root: &Path) -> Result<Vec<String>> {
    let mut faults = Vec::new();
    for file in under(root, "app/src", &["rs"])? {
        faults.extend(reckoning(&file)?);
        faults.extend(writing(&file)?);
    }
    Ok(faults)
}

fn reckoning(file: &File) -> Result<Vec<String>> {
    let mut faults = Vec::new();
    for path in named(&parsed(file)?) {
        if let [first, second, ..] = path.as_slice()
            && first == "farend_core"
            && RECKONS.contains(&second.as_str())
        {
            let path = path.get(1..).unwrap_or_default().join("::");
            let may = |it: &&str| path == **it || path.starts_with(&format!("{it}::"));
            if !MAY_NAME.iter().any(may) {
                faults.push(format!("{}: {path} is for the core to call", file.path));
            }
        }
    }
    Ok(faults)
}

fn writing(file: &File) -> Result<Vec<String>> {
    let mut effects = Effects::default();
    effects.visit_file(&parsed(file)?);
    let known = EFFECTS_THAT_WRITE
        .iter()
        .any(|(path, _)| *path == file.path);
    Ok(match (effects.written.as_slice(), known) {
        ([], true) => vec![format!(
            "{}: no effect writes there any more, its reason can go",
            file.path
        )],
        ([], false) | ([_, ..], true) => Vec::new(),
        (written, false) => {
            let written = written.join(", ");
            vec![format!("{}: an effect writes to {written}", file.path)]
        }
    })
}

/// What is set within `Effect::new`.
#[derive(Default)]
struct Effects {
    depth: usize,
    written: Vec<String>,
}

impl Visit<'_> for Effects {
    fn visit_item_mod(&mut self, module: &syn::ItemMod) {
        if !is_test(&module.attrs) {
            visit::visit_item_mod(self, module);
        }
    }

    fn visit_expr_call(&mut self, it: &syn::ExprCall) {
        let effect = match &*it.func {
            syn::Expr::Path(path) => path.path.segments.iter().any(|it| it.ident == "Effect"),
            _ => false,
        };
        self.depth += usize::from(effect);
        visit::visit_expr_call(self, it);
        self.depth -= usize::from(effect);
    }

    fn visit_expr_method_call(&mut self, it: &syn::ExprMethodCall) {
        let sets = ["set", "update", "update_untracked", "write"];
        if self.depth > 0 && sets.iter().any(|name| it.method == name) {
            self.written.push(receiver(&it.receiver));
        }
        visit::visit_expr_method_call(self, it);
    }
}

/// A signal's name.
fn receiver(it: &syn::Expr) -> String {
    match it {
        syn::Expr::Path(it) => it.path.segments.last().map(|it| it.ident.to_string()),
        syn::Expr::Field(it) => match &it.member {
            syn::Member::Named(name) => Some(name.to_string()),
            syn::Member::Unnamed(_) => None,
        },
        _ => None,
    }
    .unwrap_or_else(|| "a signal".to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_call_of_the_physics_is_told_wherever_it_stands() {
        for code in [
            "use farend_core::physics::shaft::torque;",
            "use farend_core::physics::{self};",
            "use farend_core::physics::shaft::*;",
            "fn f() { farend_core::physics::shaft::torque(p, w) }",
            "fn f() { view! { <p>{farend_core::physics::shaft::torque(p, w)}</p> } }",
            "use farend_core::{yard::Yard, chain::Chain};",
        ] {
            assert!(
                !reckoning(&File::planted(code)).unwrap().is_empty(),
                "{code}"
            );
        }
        let kinds = "use farend_core::physics::oil::Grade; fn f() { Grade::ALL }";
        assert!(reckoning(&File::planted(kinds)).unwrap().is_empty());
    }

    #[test]
    fn an_effect_that_writes_is_told() {
        let code = "fn f() { Effect::new(move |_| { if a.get() { model.state.update(|it| it.b = 1) } }); }";
        let faults = writing(&File::planted(code)).unwrap();
        assert_eq!(faults, ["planted.rs: an effect writes to state"]);
        let reads = "fn f() { Effect::new(move |_| keep(a.get())); let on = move |_| a.set(1); }";
        assert!(writing(&File::planted(reads)).unwrap().is_empty());
    }
}
