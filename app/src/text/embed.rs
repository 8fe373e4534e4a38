//! The words around the page: for the host that frames it, for a yard that comes from an address, and
//! for what a frame keeps back.

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

// A yard from an address.
pub const TRY_AGAIN: &str = "Try again";
pub const USE_DEMO: &str = "Use the demo yard";
pub const NOT_LOADED: &str = "The yard couldn't be loaded";
pub const OF_ADDRESS: &str = "This yard comes from an address and is loaded anew each time: your \
    changes last as long as this page stays open. Save the yard as a file to have it again.";
pub const ANEW: &str = "Changes last as long as this page stays open: save the yard as a file.";

/// While it comes.
pub fn loading(address: &str) -> String {
    format!("The yard is being loaded from {address} …")
}

/// Why it isn't there.
pub fn refusal(refusal: &Refusal) -> String {
    match refusal {
        Refusal::Failed(Failure::Unreachable) => {
            "It can't be reached: there is no network, no such \
            address, or its host doesn't share it with other pages."
                .to_owned()
        }
        Refusal::Failed(Failure::TooSlow) => "Its host hasn't answered in time.".to_owned(),
        Refusal::Failed(Failure::Moved) => {
            "Its host leads on to an address that isn't safe to load from.".to_owned()
        }
        Refusal::Failed(Failure::Status(404 | 410)) => {
            "There is nothing at this address.".to_owned()
        }
        Refusal::Failed(Failure::Status(status)) => {
            format!("Its host refused it, with number {status}.")
        }
        Refusal::Failed(Failure::TooLarge) => "It is larger than any yard.".to_owned(),
        Refusal::Faults(_) => "It isn't a yard that can be used:".to_owned(),
    }
}

/// A yard that was loaded on an earlier day.
pub fn kept_since(day: &str) -> String {
    format!(
        "The yard's address can't be reached. This is the yard as it was when this browser last \
         loaded it, on {day}."
    )
}

/// A file that is open, and not kept.
pub fn opened(file: &str) -> String {
    format!(
        "{file} is open for as long as this page is. It stays on this device, and this browser \
         doesn't keep it."
    )
}

// Ways round what a frame keeps back.
pub const OPEN_IN_TAB: &str = "Open this page in a tab of its own";
pub const TAB_REFUSED: &str = "No tab has opened: copy the address into a new one.";
pub const ADDRESS_TO_COPY: &str = "The address, to copy";
pub const TEXT_TO_COPY: &str = "The file's text, to copy";
