//! An edited yard as a browser keeps it: the yard in a small envelope, which tells what it is and
//! which version wrote it.

use super::edit::Editing;
use super::format::refuse_newer;
use super::read_group;
use super::rules::{FORMAT_VERSION, LARGEST_FILE};
use crate::words::words;
use serde::Serialize;
use serde_json::Value;

/// The version of the envelope.
pub const VERSION: u32 = 1;
/// The most bytes that are read: the largest yard, faulty entries and all.
const LARGEST: usize = 4 * LARGEST_FILE;

words! {
    /// What the text is.
    Format {
        /// An edited yard.
        Yard = "farend-edited-yard",
    }
}

#[derive(Serialize)]
struct Envelope {
    format: Format,
    format_version: u32,
    yard: Value,
}

/// Why a kept yard can't be used.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum KeptFault {
    /// It isn't whole.
    Damaged,
    /// A newer version of this program wrote it.
    Newer,
}

/// A yard as it is kept. `None` is never seen: whatever was read can be written.
pub fn write(yard: &Editing) -> Option<String> {
    let envelope = Envelope {
        format: Format::Yard,
        format_version: VERSION,
        yard: yard.written(),
    };
    serde_json::to_string(&envelope).ok()
}

/// Reads a yard that was kept.
///
/// # Errors
/// [`KeptFault`] where it can't be used.
pub fn read(text: &str) -> Result<Editing, KeptFault> {
    let damaged = KeptFault::Damaged;
    let mut envelope = read_group(text, LARGEST).map_err(|_| damaged)?;
    if envelope.get("format").and_then(Value::as_str) != Some(Format::Yard.word()) {
        return Err(damaged);
    }
    let newer = |_| KeptFault::Newer;
    refuse_newer(&envelope, VERSION).map_err(newer)?;
    let yard = envelope.remove("yard");
    if let Some(Value::Object(yard)) = &yard {
        refuse_newer(yard, FORMAT_VERSION).map_err(newer)?;
    }
    match yard {
        Some(Value::Object(yard)) => Editing::from_group(yard).map_err(|_| damaged),
        _ => Err(damaged),
    }
}
