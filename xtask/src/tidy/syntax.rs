//! What the checks ask of a parsed program.

use anyhow::{Context, Result};
use syn::visit::{self, Visit};

use super::files::File;

pub fn parsed(file: &File) -> Result<syn::File> {
    syn::parse_file(&file.text).with_context(|| format!("parsing {}", file.path))
}

/// A doc comment as one text.
pub fn doc(attributes: &[syn::Attribute]) -> String {
    let lines = attributes.iter().filter_map(|it| match &it.meta {
        syn::Meta::NameValue(pair) if pair.path.is_ident("doc") => match &pair.value {
            syn::Expr::Lit(syn::ExprLit {
                lit: syn::Lit::Str(text),
                ..
            }) => Some(text.value()),
            _ => None,
        },
        _ => None,
    });
    lines.collect::<Vec<_>>().join("\n")
}

/// Whether this is only there for tests.
pub fn is_test(attributes: &[syn::Attribute]) -> bool {
    attributes.iter().any(|it| match &it.meta {
        syn::Meta::List(list) => list.path.is_ident("cfg") && list.tokens.to_string() == "test",
        _ => false,
    })
}

/// Every path that a program names, `use` or not, as its segments; what stands in the tests is left out.
pub fn named(program: &syn::File) -> Vec<Vec<String>> {
    let mut paths = Paths(Vec::new());
    paths.visit_file(program);
    paths.0
}

struct Paths(Vec<Vec<String>>);

impl Paths {
    fn used(&mut self, tree: &syn::UseTree, before: &[String]) {
        let with = |name: String| [before, &[name]].concat();
        match tree {
            syn::UseTree::Path(it) => self.used(&it.tree, &with(it.ident.to_string())),
            // `self` is what stands before it.
            syn::UseTree::Name(it) if it.ident == "self" => self.0.push(before.to_vec()),
            syn::UseTree::Name(it) => self.0.push(with(it.ident.to_string())),
            syn::UseTree::Rename(it) => self.0.push(with(it.ident.to_string())),
            syn::UseTree::Glob(_) => self.0.push(with("*".to_owned())),
            syn::UseTree::Group(it) => {
                for tree in &it.items {
                    self.used(tree, before);
                }
            }
        }
    }

    /// In a macro's input there are only tokens: names with `::` between them.
    fn tokens(&mut self, tokens: proc_macro2::TokenStream) {
        use proc_macro2::TokenTree::{Group, Ident, Punct};
        let mut path: Vec<String> = Vec::new();
        let mut colons = 0;
        for token in tokens {
            match token {
                Punct(it) if it.as_char() == ':' => colons += 1,
                Ident(it) if colons == 2 && !path.is_empty() => {
                    path.push(it.to_string());
                    colons = 0;
                }
                token => {
                    self.0
                        .extend((path.len() > 1).then(|| std::mem::take(&mut path)));
                    path.clear();
                    colons = 0;
                    match token {
                        Ident(it) => path.push(it.to_string()),
                        Group(it) => self.tokens(it.stream()),
                        _ => {}
                    }
                }
            }
        }
        self.0.extend((path.len() > 1).then_some(path));
    }
}

impl Visit<'_> for Paths {
    fn visit_item_mod(&mut self, module: &syn::ItemMod) {
        if !is_test(&module.attrs) {
            visit::visit_item_mod(self, module);
        }
    }

    fn visit_item_use(&mut self, item: &syn::ItemUse) {
        self.used(&item.tree, &[]);
    }

    fn visit_path(&mut self, path: &syn::Path) {
        let segments = path.segments.iter().map(|it| it.ident.to_string());
        self.0.push(segments.collect());
        visit::visit_path(self, path);
    }

    fn visit_macro(&mut self, it: &syn::Macro) {
        self.tokens(it.tokens.clone());
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn paths_are_found_wherever_they_stand() {
        let code = "
            use a::b::{self, c as d, e::*};
            fn f(x: g::h) { i::j(); view! { <p>{k::l(x)} m::n</p> } }
            #[cfg(test)] mod tests { use o::p; }
        ";
        let found = named(&syn::parse_file(code).unwrap());
        let found: Vec<_> = found.iter().map(|it| it.join("::")).collect();
        for path in [
            "a::b",
            "a::b::c",
            "a::b::e::*",
            "g::h",
            "i::j",
            "k::l",
            "m::n",
        ] {
            assert!(found.iter().any(|it| it == path), "{path} in {found:?}");
        }
        assert!(!found.iter().any(|it| it == "o::p"), "{found:?}");
    }
}
