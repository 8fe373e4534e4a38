//! The words around the page: for the host that frames it, for a yard that comes from an address, and
//! for what a frame keeps back. Faults of the host's options are told in English, as all faults are.

pub use super::say::embed::*;

use crate::far_yard::Refusal;
use crate::fetched::Failure;
use farend_core::fault::Fault;

// What an option must be, behind "must be".
pub const ADDRESS: &str = "an address that begins with https://, or one of this page's own host";
pub const CODE: &str = "three capital letters";
pub const COLOUR: &str = "a colour";
pub const ORIGIN: &str = "an origin such as https://www.example.com";
pub const TO_ONE: &str = "to 1";

// What to do about it.
pub const TWICE: &str = "The first one counts.";
pub const EMPTY: &str = "Leave it out instead.";
pub const UNKNOWN: &str = "The page has no option of this name.";
pub const AS_WRITTEN: &str = "In small letters, as written here.";
pub const YARD: &str = "For trying, http://localhost will do. The demo yard or the reader's own is \
    shown.";
pub const LANGUAGE: &str = "The page speaks the reader's own language where it \
    can, else English.";
pub const CURRENCY: &str = "Its code in ISO 4217, such as EUR or USD.";
pub const NO_ORIGIN: &str = "No path and no slash at its end. Nobody is told the page's height.";
pub const NOT_IN_YARD: &str = "The yard has none of this identifier, so the reader may choose.";
pub const PLAIN_COLOUR: &str = "By name, as #rrggbb, rgb(…) or hsl(…), and not translucent. The \
    page's own colour stays.";
pub const OURS_STAYS: &str = "What is written there must be readable: the page's own colour stays.";

/// Two colours with their contrast.
pub fn contrast(on: &str, under: &str, contrast: f64) -> String {
    format!("{on} on {under}: {contrast:.1} to 1")
}

/// The head of what is told the host.
pub fn for_host(faults: &[Fault]) -> String {
    let options = match faults.len() {
        1 => "1 option can't be used".to_owned(),
        many => format!("{many} options can't be used"),
    };
    format!("For whoever put this page here: {options}")
}

/// Why a yard isn't there.
pub fn refusal(refusal: &Refusal) -> String {
    match refusal {
        Refusal::Failed(Failure::Unreachable) => unreachable().to_owned(),
        Refusal::Failed(Failure::TooSlow) => too_slow().to_owned(),
        Refusal::Failed(Failure::Moved) => moved().to_owned(),
        Refusal::Failed(Failure::Status(404 | 410)) => nothing_there().to_owned(),
        Refusal::Failed(Failure::Status(status)) => refused(&status.to_string()),
        Refusal::Failed(Failure::TooLarge) => too_large().to_owned(),
        Refusal::Faults(_) => no_yard().to_owned(),
    }
}
