//! Random changes of inputs that are there: of bytes anywhere, and of values between marks.

use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::{Index, select};

/// What stands around values in the files that are read.
const MARKS: &[u8] = b",:;{}[]\t\r\n";

/// What often goes wrong.
const TOKENS: &[&str] = &[
    "",
    "null",
    "true",
    "0",
    "-0.0",
    "-1",
    "1",
    "2",
    "0.5",
    "1e-320",
    "1e308",
    "1e999",
    "5,5",
    "1.234",
    "1.234,5",
    "99999999999999999999",
    "NaN",
    "\"\"",
    "\" \"",
    "\"x\"",
    "'x",
    "\"=1+1\"",
    "=1+1",
    "@",
    "\"low\"",
    "\"comment\"",
    "\"$schema\"",
    "[]",
    "{}",
    "[[]]",
    "[null]",
    "{\"\":0}",
    "{\"low\":1,\"likely\":2,\"high\":3}",
    "\"\\u0000\"",
    "\"\\ud800\"",
    "\u{feff}",
    "\u{0}",
    "é",
    "\"",
    "\\",
    "//",
    "{",
    "}",
    "[",
    "]",
    ",",
    ":",
    ";",
    "\t",
    "\r\n",
    "\n\n",
];

/// One change of an input.
#[derive(Clone, Debug)]
enum Edit {
    /// Another byte.
    Byte(Index, u8),
    /// A few bytes go.
    Cut(Index, u8),
    /// A token comes in anywhere.
    Insert(Index, &'static str),
    /// A token takes the place of a value.
    Value(Index, &'static str),
    /// A value takes the place of another.
    Swap(Index, Index),
    /// A few bytes stand there twice.
    Twice(Index, u8),
    /// What follows is that of another input.
    Cross(Index, Index),
}

fn edit() -> impl Strategy<Value = Edit> {
    let place = any::<Index>;
    prop_oneof![
        1 => (place(), any::<u8>()).prop_map(|(at, to)| Edit::Byte(at, to)),
        1 => (place(), 1..40_u8).prop_map(|(at, count)| Edit::Cut(at, count)),
        1 => (place(), select(TOKENS)).prop_map(|(at, token)| Edit::Insert(at, token)),
        4 => (place(), select(TOKENS)).prop_map(|(at, token)| Edit::Value(at, token)),
        2 => (place(), place()).prop_map(|(at, from)| Edit::Swap(at, from)),
        1 => (place(), 1..40_u8).prop_map(|(at, count)| Edit::Twice(at, count)),
        1 => (place(), place()).prop_map(|(at, of)| Edit::Cross(at, of)),
    ]
}

/// An input of these with a few changes.
pub fn mutated(inputs: Vec<Vec<u8>>) -> impl Strategy<Value = Vec<u8>> {
    (any::<Index>(), vec(edit(), 0..6)).prop_map(move |(first, edits)| {
        let mut bytes = first.get(&inputs).clone();
        for edit in &edits {
            apply(edit, &mut bytes, &inputs);
        }
        bytes
    })
}

fn apply(edit: &Edit, bytes: &mut Vec<u8>, inputs: &[Vec<u8>]) {
    let place = |at: &Index| at.index(bytes.len() + 1);
    let run = |at: &Index, count: u8| {
        let from = place(at);
        from..bytes.len().min(from + usize::from(count))
    };
    match edit {
        Edit::Byte(at, to) => {
            let at = place(at);
            if let Some(byte) = bytes.get_mut(at) {
                *byte = *to;
            }
        }
        Edit::Cut(at, count) => {
            let run = run(at, *count);
            bytes.drain(run);
        }
        Edit::Insert(at, token) => {
            let at = place(at);
            bytes.splice(at..at, token.bytes());
        }
        Edit::Value(at, token) => {
            let at = value(at, bytes);
            bytes.splice(at, token.bytes());
        }
        Edit::Swap(at, from) => {
            let (at, from) = (value(at, bytes), bytes[value(from, bytes)].to_vec());
            bytes.splice(at, from);
        }
        Edit::Twice(at, count) => {
            let run = run(at, *count);
            let again = bytes[run.clone()].to_vec();
            bytes.splice(run.end..run.end, again);
        }
        Edit::Cross(at, of) => {
            let at = place(at);
            let other = of.get(inputs);
            bytes.truncate(at);
            bytes.extend(other.iter().skip(at));
        }
    }
}

/// Where the value about a place stands: between the marks before and behind it.
fn value(at: &Index, bytes: &[u8]) -> std::ops::Range<usize> {
    let at = at.index(bytes.len() + 1);
    let is_mark = |byte: &u8| MARKS.contains(byte);
    let from = bytes[..at].iter().rposition(is_mark);
    let to = bytes[at..].iter().position(is_mark);
    from.map_or(0, |mark| mark + 1)..to.map_or(bytes.len(), |count| at + count)
}
