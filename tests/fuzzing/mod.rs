//! What must hold for any bytes that come from outside: nothing panics, what is taken is written and
//! read back as it was, and what is refused has a fault that says where and what to do.
//!
//! The fuzzer of `fuzz/` and the test `fuzzing` call the same functions, each with its own inputs.

mod alike;
mod circuit;
mod link;
mod saved;
mod table;
mod yard;

use farend_core::fault::Fault;

/// One kind of input.
#[derive(Clone, Copy, Debug)]
pub struct Target {
    /// Its name, and that of its folder in `fuzz/corpus/`.
    pub name: &'static str,
    /// Panics where what must hold doesn't.
    pub holds: fn(&[u8]),
}

/// All kinds of input.
pub const TARGETS: [Target; 8] = [
    Target {
        name: "yard",
        holds: |bytes| yard::holds(&text(bytes)),
    },
    Target {
        name: "kept",
        holds: |bytes| yard::kept_holds(&text(bytes)),
    },
    Target {
        name: "table",
        holds: |bytes| table::holds(&text(bytes)),
    },
    Target {
        name: "link",
        holds: link::holds,
    },
    Target {
        name: "record",
        holds: |bytes| saved::record_holds(&text(bytes)),
    },
    Target {
        name: "set",
        holds: |bytes| saved::set_holds(&text(bytes)),
    },
    Target {
        name: "comparison",
        holds: |bytes| saved::comparison_holds(&text(bytes)),
    },
    Target {
        name: "circuit",
        holds: circuit::holds,
    },
];

/// The kind of input with a name.
///
/// # Panics
/// Where there is none.
pub fn target(name: &str) -> Target {
    let target = TARGETS.into_iter().find(|target| target.name == name);
    target.unwrap_or_else(|| panic!("no target is called {name}"))
}

/// Bytes as a browser hands over a file's text.
fn text(bytes: &[u8]) -> String {
    String::from_utf8_lossy(bytes).into_owned()
}

/// The most characters that a fault takes: it repeats only a little of a file.
const LONGEST_FAULT: usize = 600;

/// At least one fault, and each with a place and what to do.
fn faults_hold<'f>(faults: impl IntoIterator<Item = &'f Fault>) {
    let mut count = 0;
    for fault in faults {
        count += 1;
        assert!(!fault.path.is_empty(), "no path: {fault}");
        assert!(
            !fault.hint.to_string().trim().is_empty(),
            "no hint: {fault}"
        );
        let long = fault.to_string().chars().count();
        assert!(long < LONGEST_FAULT, "{long} characters: {fault:.80}");
    }
    assert!(count > 0, "refused without a fault");
}
