//! Messages about files and links.

use super::{embed, labels, list, tables_in};
use crate::browser::NotKept;
use crate::model::Notice;
use crate::storage::Keeping;
use farend_core::fault::Fault;
use farend_core::state::LinkFault;

/// A notice: what happened, what stands now, and the faults to list below.
pub fn notice(notice: &Notice) -> (String, &[Fault]) {
    match notice {
        Notice::BadFile { file, faults, .. } => (
            format!(
                "{file} can't be used: {}. The yard that was open stays open. Mend these and open \
                 it again.",
                count(faults.len())
            ),
            faults,
        ),
        Notice::UnreadableFile(file) => (
            format!("{file} couldn't be read from the disk. The yard that was open stays open."),
            &[],
        ),
        Notice::OpenedYard(file) => (
            format!(
                "{file} is open, and opens again with this page: this browser keeps it. It stays on \
                 this device. “Edit the yard” can take this step back."
            ),
            &[],
        ),
        Notice::OpenedComparison(file) => (
            format!(
                "{file} is open, with the yard that it was saved in, which this browser keeps. It \
                 stays on this device. “Edit the yard” can bring back the yard before."
            ),
            &[],
        ),
        Notice::TookTable {
            file,
            list,
            new,
            changed,
            unchanged,
            removed,
        } => (
            tables_in::took(file, *list, [*new, *changed, *unchanged, *removed]),
            &[],
        ),
        Notice::SeveralFiles(number) => (tables_in::several(*number), &[]),
        Notice::BadLink(fault) => (
            format!(
                "{} What you see is the start of this yard.",
                match fault {
                    LinkFault::Damaged =>
                        "The link is damaged: perhaps a part was cut off when it was copied.",
                    LinkFault::Newer(_) =>
                        "The link was made by a newer version of this page. Reload the page first.",
                    LinkFault::TooLong => "The link is longer than any that this page makes.",
                }
            ),
            &[],
        ),
        Notice::MissingFromYard { missing, in_demo } => (
            format!(
                "The link names what this yard doesn't have, or has with faults: {}. {} The rest is \
                 shown.",
                list(missing),
                match in_demo {
                    Some(_) => "The demo yard has it.",
                    None => "If it comes from another yard, open that yard's file.",
                }
            ),
            &[],
        ),
        Notice::BadSettings(faults) => (
            "The link's settings don't suit this machine, so its own figures are shown.".to_owned(),
            faults,
        ),
        Notice::CantSave => (
            "This browser doesn't let the page save a file here. Open the page in a tab of its \
             own and try again."
                .to_owned(),
            &[],
        ),
        Notice::SavedFromFrame { file, .. } => (
            format!(
                "{file} was handed over, but the page around this one may keep files back. If none \
                 has come, take it from here:"
            ),
            &[],
        ),
        Notice::EarlierYard(day) => (embed::kept_since(day), &[]),
        Notice::CantDraw => (
            "This browser doesn't make pixels of the picture here. Save it as SVG: it shows the \
             same, sharp at any size."
                .to_owned(),
            &[],
        ),
        Notice::NoLedger(route) => (
            format!(
                "{} can't be hooked up here, so it has no ledger. Open another route and save its \
                 ledger.",
                labels::route(*route)
            ),
            &[],
        ),
    }
}

pub const MEND_HERE: &str = "Open it all the same, and mend it here";
pub const OPEN_DEMO: &str = "Open the demo yard for this link";
pub const SAVE_YARD: &str = "Save this tab's yard as a file";
pub const SAVE_KEPT: &str = "Save what was kept as a file";
pub const KEPT_FILE: &str = "farend-kept.json";
pub const TAKE_OTHER: &str = "Take over the other tab's";
pub const KEEP_MINE: &str = "Keep mine";
pub const OVERWRITE: &str = "Keep this yard in its place";

/// What must be said of how the yard is kept; nothing where all is well.
pub fn keeping(keeping: &Keeping) -> &'static str {
    match keeping {
        Keeping::Kept => "",
        Keeping::Not(NotKept::Denied) => {
            "This browser doesn't let the page keep anything here: your changes last as long as \
             this page stays open. Save the yard as a file to have it again."
        }
        Keeping::Not(NotKept::Full) => {
            "The room that this browser gives is used up: your last changes aren't kept, what was \
             kept before still is. Save the yard as a file to have it again."
        }
        Keeping::SetAside(_) => {
            "What this browser had kept of your yard is damaged and can't be read. It was set aside \
             and not thrown away; the demo yard is open. If you have saved your yard as a file, open \
             it."
        }
        Keeping::Held(_) => {
            "This browser keeps a yard that this version of the page can't read, probably from a \
             newer one. It stays as it is, so nothing that you change here is kept. Reload the page \
             first; it may be an old one."
        }
        Keeping::Other(Some(_)) => {
            "The yard was changed in another tab. Until you say which of the two counts, this tab's \
             changes aren't kept."
        }
        Keeping::OfAddress => embed::OF_ADDRESS,
        Keeping::Other(None) => {
            "Another tab went back to the demo yard. Until you say which of the two counts, this \
             tab's changes aren't kept."
        }
    }
}

fn count(faults: usize) -> String {
    match faults {
        1 => "it has one fault".to_owned(),
        many => format!("it has {many} faults"),
    }
}
