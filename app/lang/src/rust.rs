//! A Rust function for each message.
//!
//! `heading = Fit` becomes `heading() -> &'static str`, a message with one argument
//! `name(argument) -> String`. Where there are more, they are given by name, in a type of the message's
//! own: `Needs { brings: "…", needs: "…" }.said()`.

use crate::packed::{ARGUMENT, END, FORM, FORMS, Packed, SAID};
use crate::{Kind, Message, Texts};
use std::fmt::Write;

/// A module for each subject, to be included where `Argument`, `plain` and `filled` are.
pub fn functions(texts: &Texts) -> String {
    let mut root = Module::default();
    let mut place = 0;
    for (subject, messages) in &texts.source().subjects {
        let mut code = String::new();
        for message in messages {
            code.push_str(&function(texts, subject, message, place));
            place += 1;
        }
        root.put(subject, code);
    }
    root.code("super", 0)
}

/// The marks of packed messages, by their names.
pub fn marks() -> String {
    let named = [
        ("ARGUMENT", ARGUMENT),
        ("FORMS", FORMS),
        ("FORM", FORM),
        ("SAID", SAID),
        ("END", END),
    ];
    let each = named.map(|(name, mark)| format!("const {name}: char = {mark:?};\n"));
    each.concat()
}

/// `LANGUAGES`, the pseudo-language last, to be included where the type `Language` is.
pub fn languages(texts: &Texts) -> String {
    let pseudo = crate::pseudo::of(texts.source());
    let all: Vec<_> = texts.languages.iter().chain([&pseudo]).collect();
    let each = all.iter().map(|it| {
        let [tag, name, locale, lists] = [&it.tag, &it.name, &it.locale, &it.lists];
        format!(
            "Language {{ tag: {tag:?}, name: {name:?}, locale: {locale:?}, lists: {lists:?} }}, "
        )
    });
    let each: String = each.collect();
    format!(
        "pub static LANGUAGES: [Language; {}] = [{each}];\n",
        all.len()
    )
}

/// `BUILT_IN`: what the files hold that lie beside the code by their tags, in the same order.
pub fn built_in(packed: &Packed) -> String {
    let each = packed
        .files
        .iter()
        .map(|(tag, _)| format!("include_str!(\"{tag}.txt\"), "));
    let each: String = each.collect();
    format!(
        "pub static BUILT_IN: [&str; {}] = [{each}];\n",
        packed.files.len()
    )
}

/// Modules within modules, as files lie within folders.
#[derive(Default)]
struct Module {
    functions: String,
    within: Vec<(String, Module)>,
}

impl Module {
    fn put(&mut self, path: &str, functions: String) {
        let (name, rest) = path.split_once('/').unwrap_or((path, ""));
        let found = self.within.iter().position(|(it, _)| it == name);
        let place = found.unwrap_or_else(|| {
            self.within.push((name.to_owned(), Self::default()));
            self.within.len() - 1
        });
        let module = &mut self.within[place].1;
        if rest.is_empty() {
            module.functions = functions;
        } else {
            module.put(rest, functions);
        }
    }

    fn code(&self, up: &str, depth: usize) -> String {
        let mut code = String::new();
        if !self.functions.is_empty() {
            // A subject need not have messages of each kind.
            let _ = writeln!(
                code,
                "#[allow(unused_imports)]\nuse {up}::{{Argument, filled, plain}};"
            );
            code.push_str(&self.functions);
        }
        let up = if depth == 0 {
            up.to_owned()
        } else {
            format!("{up}::super")
        };
        for (name, module) in &self.within {
            let name = name.replace('-', "_");
            let _ = writeln!(code, "pub mod {name} {{\n{}}}", module.code(&up, depth + 1));
        }
        code
    }
}

fn function(texts: &Texts, subject: &str, message: &Message, place: usize) -> String {
    let name = message.name.replace(['-', '.'], "_");
    let arguments: Vec<_> = message
        .arguments()
        .into_keys()
        .map(|argument| (argument, texts.kind(subject, &message.name, argument)))
        .collect();
    let given = |prefix: &str| {
        let each = arguments.iter().map(|(argument, kind)| {
            let variant = match kind {
                Kind::Text => "Text",
                Kind::Count => "Count",
            };
            format!("Argument::{variant}({prefix}{})", field(argument))
        });
        each.collect::<Vec<_>>().join(", ")
    };
    let of_type = |kind: &Kind, lifetime: &str| match kind {
        Kind::Text => format!("&{lifetime}str"),
        Kind::Count => "usize".to_owned(),
    };
    match arguments.as_slice() {
        [] => format!("#[inline(always)]\npub fn {name}() -> &'static str {{ plain({place}) }}\n"),
        [(argument, kind)] => format!(
            "pub fn {name}({}: {}) -> String {{ filled({place}, &[{}]) }}\n",
            field(argument),
            of_type(kind, ""),
            given("")
        ),
        _ => {
            let name = camel(&name);
            let fields = arguments.iter();
            let fields: Vec<_> = fields
                .map(|(it, kind)| format!("pub {}: {}", field(it), of_type(kind, "'a ")))
                .collect();
            let is_borrowed = arguments.iter().any(|(_, kind)| *kind == Kind::Text);
            let (declared, used) = if is_borrowed {
                ("<'a>", "<'_>")
            } else {
                ("", "")
            };
            format!(
                "pub struct {name}{declared} {{ {} }}\nimpl {name}{used} {{ pub fn said(self) -> String \
                 {{ filled({place}, &[{}]) }} }}\n",
                fields.join(", "),
                given("self.")
            )
        }
    }
}

fn field(argument: &str) -> String {
    argument.replace('-', "_")
}

fn camel(name: &str) -> String {
    let parts = name.split('_').map(|part| {
        let mut letters = part.chars();
        let first = letters.next().map(|it| it.to_ascii_uppercase());
        first.into_iter().chain(letters).collect::<String>()
    });
    parts.collect()
}

#[cfg(test)]
mod tests {
    use super::functions;
    use crate::read::messages;
    use crate::{Language, Texts};

    fn texts(files: &[(&str, &str)]) -> Texts {
        let subjects = files
            .iter()
            .map(|(name, text)| ((*name).to_owned(), messages(text).unwrap()))
            .collect();
        let [tag, name, locale, lists] = ["en"; 4].map(str::to_owned);
        let language = Language {
            tag,
            name,
            locale,
            lists,
            subjects,
        };
        Texts {
            languages: vec![language],
        }
    }

    #[test]
    fn words_alone_and_one_argument_are_functions() {
        let code = functions(&texts(&[("fit", "a-b = x\n    .c = { $one }\n")]));
        assert!(
            code.contains("pub fn a_b() -> &'static str { plain(0) }"),
            "{code}"
        );
        assert!(
            code.contains(
                "pub fn a_b_c(one: &str) -> String { filled(1, &[Argument::Text(one)]) }"
            ),
            "{code}"
        );
    }

    #[test]
    fn more_arguments_are_given_by_name() {
        let code = functions(&texts(&[(
            "fit",
            "a-b = { $n ->\n   *[other] { $n } of { $it }\n }\n",
        )]));
        let expected = [
            "pub struct AB<'a> { pub it: &'a str, pub n: usize }",
            "filled(0, &[Argument::Text(self.it), Argument::Count(self.n)])",
        ];
        assert!(expected.iter().all(|it| code.contains(it)), "{code}");
    }

    #[test]
    fn a_folder_is_a_module() {
        let code = functions(&texts(&[
            ("practice", "a = x\n"),
            ("practice/case", "b = y\n"),
        ]));
        let expected = [
            "pub mod practice {",
            "pub mod case {",
            "use super::super::{",
        ];
        assert!(expected.iter().all(|it| code.contains(it)), "{code}");
    }
}
