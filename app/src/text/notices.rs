//! Messages about files and links.

use super::{labels, list, tables_in};
use crate::model::Notice;
use farend_core::fault::Fault;
use farend_core::state::LinkFault;

/// A notice: what happened, what stands now, and the faults to list below.
pub fn notice(notice: &Notice) -> (String, &[Fault]) {
    match notice {
        Notice::BadFile { file, faults } => (
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
                "{file} is open. It stays on this device and isn't kept: open it again after a \
                 reload."
            ),
            &[],
        ),
        Notice::OpenedComparison(file) => (
            format!(
                "{file} is open, with the yard that it was saved in. It stays on this device and \
                 isn't kept: open it again after a reload."
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
        Notice::MissingFromYard(ids) => (
            format!(
                "The link names what this yard doesn't have: {}. If it comes from another yard, \
                 open that yard's file. The rest is shown.",
                list(ids)
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
        Notice::SavedFromFrame => (
            "This page stands in a frame of another page, which may keep files back. If none has \
             come, open the page in a tab of its own and save again."
                .to_owned(),
            &[],
        ),
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

fn count(faults: usize) -> String {
    match faults {
        1 => "it has one fault".to_owned(),
        many => format!("it has {many} faults"),
    }
}
