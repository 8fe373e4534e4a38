//! What is told once, beside the results.

use farend_core::fault::Fault;
use farend_core::route::RouteId;
use farend_core::state::LinkFault;
use farend_core::yard::edit::Editing;
use farend_core::yard::list::List;

/// Something that the user must be told, until they have read it.
#[derive(Clone, Debug, PartialEq)]
pub enum Notice {
    /// A yard file or a saved comparison was refused.
    BadFile {
        /// Its name.
        file: String,
        /// All that is wrong with it.
        faults: Vec<Fault>,
        /// Its yard, where it can be opened all the same to be mended.
        mendable: Option<Box<Editing>>,
    },
    /// A file couldn't be read from the disk.
    UnreadableFile(String),
    /// A yard file was taken over.
    OpenedYard(String),
    /// A saved comparison was taken over.
    OpenedComparison(String),
    /// A table was taken over: so many entries are new, changed, unchanged and gone.
    TookTable {
        /// Its name.
        file: String,
        /// The list that it's of.
        list: List,
        /// Entries that the list didn't have.
        new: usize,
        /// Entries that say something else now.
        changed: usize,
        /// Entries that say the same.
        unchanged: usize,
        /// Entries that the list doesn't have any more.
        removed: usize,
    },
    /// Several files were picked or dropped at once.
    SeveralFiles(u32),
    /// A link couldn't be read.
    BadLink(LinkFault),
    /// A link names a machine or an implement that this yard doesn't have.
    MissingFromYard {
        /// Their identifiers.
        missing: Vec<String>,
        /// The link, where the demo has them.
        in_demo: Option<String>,
    },
    /// A link's settings are out of range.
    BadSettings(Vec<Fault>),
    /// The browser doesn't let the page save a file.
    CantSave,
    /// A file was handed over, but the frame around the page may keep it back.
    SavedFromFrame {
        /// Its name.
        file: String,
        /// Its text, where it has one.
        text: Option<String>,
    },
    /// The yard's address can't be reached, so it's the one that was loaded then.
    EarlierYard(String),
    /// The browser doesn't make pixels of the picture.
    CantDraw,
    /// The open route can't be hooked up, so there is no ledger to save.
    NoLedger(RouteId),
}
