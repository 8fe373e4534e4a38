//! Messages about files and links.

pub use super::say::notices::{
    keep_mine, mend_here, open_demo, overwrite, save_kept, save_yard, take_kept, take_other,
};

use super::say::notices as say;
use super::{embed, labels, list, tables_in};
use crate::browser::NotKept;
use crate::model::Notice;
use crate::storage::Keeping;
use farend_core::fault::Fault;
use farend_core::state::LinkFault;

/// What the file is called that the browser had kept.
pub const KEPT_FILE: &str = "farend-kept.json";

/// A notice: what happened, what stands now, and the faults to list below.
pub fn notice(notice: &Notice) -> (String, &[Fault]) {
    let faults: &[Fault] = match notice {
        Notice::BadFile { faults, .. } | Notice::BadSettings(faults) => faults,
        _ => &[],
    };
    (sentence(notice), faults)
}

fn sentence(notice: &Notice) -> String {
    match notice {
        Notice::BadFile { file, faults, .. } => say::BadFile {
            file,
            faults: faults.len(),
        }
        .said(),
        Notice::UnreadableFile(file) => say::unreadable_file(file),
        Notice::OpenedYard(file) => say::opened_yard(file),
        Notice::OpenedComparison(file) => say::opened_comparison(file),
        Notice::TookTable {
            file,
            list,
            new,
            changed,
            unchanged,
            removed,
        } => tables_in::took(file, *list, [*new, *changed, *unchanged, *removed]),
        Notice::SeveralFiles(number) => tables_in::several(*number),
        Notice::BadLink(fault) => say::bad_link(match fault {
            LinkFault::Damaged => say::bad_link_damaged(),
            LinkFault::Newer(_) => say::bad_link_newer(),
            LinkFault::TooLong => say::bad_link_too_long(),
        }),
        Notice::MissingFromYard { missing, in_demo } => say::MissingFromYard {
            missing: &list(missing),
            elsewhere: match in_demo {
                Some(_) => say::missing_from_yard_in_demo(),
                None => say::missing_from_yard_in_another(),
            },
        }
        .said(),
        Notice::BadSettings(_) => say::bad_settings().to_owned(),
        Notice::CantSave => say::cant_save().to_owned(),
        Notice::SavedFromFrame { file, .. } => say::saved_from_frame(file),
        Notice::EarlierYard(day) => embed::kept_since(day),
        Notice::CantDraw => say::cant_draw().to_owned(),
        Notice::NoLedger(route) => say::no_ledger(labels::route(*route)),
    }
}

/// What must be said of how the yard is kept; nothing where all is well.
pub fn keeping(keeping: &Keeping) -> &'static str {
    match keeping {
        Keeping::Kept => "",
        Keeping::Not(NotKept::Denied) => say::denied(),
        Keeping::Not(NotKept::Full) => say::full(),
        Keeping::SetAside(_) => say::set_aside(),
        Keeping::Held(_) => say::held(),
        Keeping::Other(Some(_)) => say::other_changed(),
        Keeping::Other(None) => say::other_went_back(),
        Keeping::PassedOver(_) => say::passed_over(),
        Keeping::OfAddress => embed::of_address(),
    }
}
