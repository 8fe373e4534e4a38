//! The functions of a file, with what is said of them.

use super::syntax::{doc, is_test};

/// A function.
pub struct Function<'a> {
    pub signature: &'a syn::Signature,
    pub body: &'a syn::Block,
    pub doc: String,
    pub public: bool,
}

impl Function<'_> {
    pub fn name(&self) -> String {
        self.signature.ident.to_string()
    }

    /// The lines that it stands in.
    pub fn lines<'t>(&self, text: &'t str) -> impl Iterator<Item = &'t str> {
        let braces = self.body.brace_token.span;
        let (from, to) = (braces.open().start().line, braces.close().end().line);
        text.lines().skip(from - 1).take(to + 1 - from)
    }
}

/// All functions of a file and of its types, but for tests.
pub fn functions(program: &syn::File) -> Vec<Function<'_>> {
    let mut found = Vec::new();
    let is_public = |it: &syn::Visibility| matches!(it, syn::Visibility::Public(_));
    for item in &program.items {
        match item {
            syn::Item::Fn(it) if !is_test(&it.attrs) => found.push(Function {
                signature: &it.sig,
                body: &it.block,
                doc: doc(&it.attrs),
                public: is_public(&it.vis),
            }),
            syn::Item::Impl(it) => found.extend(it.items.iter().filter_map(|item| match item {
                syn::ImplItem::Fn(it) => Some(Function {
                    signature: &it.sig,
                    body: &it.block,
                    doc: doc(&it.attrs),
                    public: is_public(&it.vis),
                }),
                _ => None,
            })),
            _ => {}
        }
    }
    found
}
