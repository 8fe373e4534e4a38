//! Every default names its source. A `Spread` can't be made without one, so the compiler sees to those;
//! what is no `Spread` says it in its comment.

use std::path::Path;

use anyhow::Result;
use syn::visit::{self, Visit};

use super::docs::functions;
use super::files::{File, under};
use super::syntax::{doc, parsed};

/// How a comment tells a source.
const TOLD: [&str; 5] = [
    "from memory",
    "judgement",
    "common practice",
    "Source:",
    "source",
];

pub fn check(root: &Path) -> Result<Vec<String>> {
    let mut faults = Vec::new();
    for file in under(root, "core/src", &["rs"])? {
        let name = file.path.trim_start_matches("core/src/");
        if name.starts_with("defaults") {
            faults.extend(of(&file)?);
        }
    }
    Ok(faults)
}

fn of(file: &File) -> Result<Vec<String>> {
    let program = parsed(file)?;
    let mut figures = Vec::new();
    for function in functions(&program).iter().filter(|it| it.public) {
        let mut types = Types::default();
        types.visit_return_type(&function.signature.output);
        figures.push((function.name(), function.doc.clone(), types.sourced));
    }
    for item in &program.items {
        if let syn::Item::Const(it) = item
            && matches!(it.vis, syn::Visibility::Public(_))
        {
            let mut types = Types::default();
            types.visit_type(&it.ty);
            figures.push((it.ident.to_string(), doc(&it.attrs), types.sourced));
        }
    }
    let silent = figures
        .into_iter()
        .filter(|(_, doc, sourced)| !sourced && !TOLD.iter().any(|it| doc.contains(it)));
    Ok(silent
        .map(|(name, ..)| format!("{}: {name} has no source", file.path))
        .collect())
}

/// Whether a type brings its source with it.
#[derive(Default)]
struct Types {
    sourced: bool,
}

impl Visit<'_> for Types {
    fn visit_path_segment(&mut self, it: &syn::PathSegment) {
        self.sourced |= it.ident == "Spread";
        visit::visit_path_segment(self, it);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_figure_without_a_source_is_told() {
        let code = "
            /// Sourced by its type.
            pub const GOOD: Spread<f64> = Spread::exact(1.0, Source::Own);
            /// Sourced by its comment: from memory.
            pub fn known() -> Power { Power::watts(1.0) }
            /// Sourced by nothing.
            pub fn bare() -> Power { Power::watts(1.0) }
        ";
        let path = "planted.rs".to_owned();
        let text = code.to_owned();
        let faults = of(&File { path, text }).unwrap();
        assert_eq!(faults, ["planted.rs: bare has no source"]);
    }
}
