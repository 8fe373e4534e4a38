//! What costs what in the program's first file: bytes of code by library, before wasm-opt takes the
//! names out.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use anyhow::{Context, Result};
use rustc_demangle::demangle;
use wasmparser::{KnownCustom, Name, Parser, Payload, TypeRef};

/// So many are told; the rest is one sum.
const TOLD: usize = 14;
/// What the compiler brings along counts as one.
const STANDARD: [&str; 5] = ["alloc", "compiler_builtins", "core", "dlmalloc", "std"];

/// Tells the largest parts of a module that still has its names.
pub fn report(module: &Path) -> Result<()> {
    let content = fs::read(module)
        .with_context(|| format!("{} is made by `cargo xtask build`", module.display()))?;
    let mut costs: Vec<_> = by_library(&content)?.into_iter().collect();
    costs.sort_by_key(|(_, bytes)| std::cmp::Reverse(*bytes));
    let all: usize = costs.iter().map(|(_, bytes)| bytes).sum();
    let rest = costs.split_off(TOLD.min(costs.len()));
    let rest = rest.iter().map(|(_, bytes)| bytes).sum();
    println!("\nOf the code of the program's first file, before it is made smaller:");
    for (library, bytes) in costs.iter().chain([&("the rest".to_owned(), rest)]) {
        println!(
            "{:>9} {:>7.1} %  {library}",
            bytes,
            100.0 * *bytes as f64 / all as f64
        );
    }
    Ok(())
}

/// Bytes of code by library; the core by its parts.
fn by_library(module: &[u8]) -> Result<BTreeMap<String, usize>> {
    let (mut imported, mut sizes, mut names) = (0, Vec::new(), BTreeMap::new());
    for payload in Parser::new(0).parse_all(module) {
        match payload? {
            Payload::ImportSection(imports) => {
                for import in imports.into_imports() {
                    imported += usize::from(matches!(import?.ty, TypeRef::Func(_)));
                }
            }
            Payload::CodeSectionEntry(body) => sizes.push(body.as_bytes().len()),
            Payload::CustomSection(section) => {
                let KnownCustom::Name(parts) = section.as_known() else {
                    continue;
                };
                for part in parts {
                    if let Name::Function(functions) = part? {
                        for function in functions {
                            let function = function?;
                            names.insert(function.index as usize, function.name.to_owned());
                        }
                    }
                }
            }
            _ => {}
        }
    }
    let mut costs = BTreeMap::new();
    for (place, size) in sizes.into_iter().enumerate() {
        let name = names.get(&(imported + place)).map_or("", String::as_str);
        *costs.entry(library(name)).or_default() += size;
    }
    Ok(costs)
}

/// Whose a function is: the first library that its name tells.
fn library(name: &str) -> String {
    let name = format!("{:#}", demangle(name));
    let is_part = |it: char| it.is_ascii_alphanumeric() || it == '_';
    let mut rest = name.as_str();
    while let Some(end) = rest.find("::") {
        // "tachys" of "<T as tachys::view::Render>", with or without a sum in brackets.
        let before = rest[..end].split('[').next().unwrap_or_default();
        let start = before.rfind(|it| !is_part(it)).map_or(0, |at| at + 1);
        let found = &before[start..];
        rest = &rest[end + 2..];
        if STANDARD.contains(&found) {
            return "the standard library".to_owned();
        }
        if found == "farend_core" {
            let part = rest.split(|it| !is_part(it)).next().unwrap_or_default();
            return format!("farend_core: {part}");
        }
        if found.starts_with(|it: char| it.is_ascii_lowercase()) {
            return found.to_owned();
        }
    }
    "without a name".to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_function_is_its_first_librarys() {
        for (name, expected) in [
            ("<T as tachys::view::any_view::IntoAny>::into_any", "tachys"),
            ("core[c5930c85a12de822]::fmt::write", "the standard library"),
            (
                "farend_core::yard::build::machine::h0123456789abcdef",
                "farend_core: yard",
            ),
            (
                "_ZN10farend_app4view6ledger11stage_table17h6bf836828b36ebd3E",
                "farend_app",
            ),
            (
                "<alloc::vec::Vec<farend_core::machine::Machine> as Clone>::clone",
                "the standard library",
            ),
            ("memcpy", "without a name"),
        ] {
            assert_eq!(library(name), expected, "{name}");
        }
    }

    #[test]
    fn code_counts_by_its_names() {
        // A module with one function, `serde_json::x`, whose body takes two bytes.
        let module = [
            b"\0asm\x01\0\0\0".as_slice(),
            b"\x01\x04\x01\x60\0\0",
            b"\x03\x02\x01\0",
            b"\x0a\x04\x01\x02\0\x0b",
            b"\0\x17\x04name\x01\x10\x01\0\x0dserde_json::x",
        ]
        .concat();
        let costs = by_library(&module).unwrap();
        assert_eq!(costs, BTreeMap::from([("serde_json".to_owned(), 2)]));
    }
}
