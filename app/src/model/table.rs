//! A table that was picked, until it's taken over or left.

use super::{Model, Notice};
use farend_core::yard::edit::{Change, Editing};
use farend_core::yard::history::Deed;
use farend_core::yard::list::List;
use farend_core::yard::table::{
    DecimalMark, Doubt, How, Reading, RowFault, TakenIn, list_of, read, take_in,
};
use leptos::prelude::*;
use std::sync::Arc;

/// A table with what the user has said of it.
#[derive(Clone, Debug, PartialEq)]
pub struct TableFile {
    /// The file's name.
    pub name: String,
    /// What is in it.
    pub text: Arc<str>,
    /// Which list it is of, where the user has said so.
    pub list: Option<List>,
    /// What stands before decimals, where the user has said so.
    pub mark: Option<DecimalMark>,
    /// What becomes of entries that it doesn't have.
    pub how: How,
}

/// What would come of a table.
#[derive(Clone, Debug, PartialEq)]
pub enum Preview {
    /// Its headers are those of several lists.
    AsksList,
    /// A number can be read in two ways.
    AsksMark,
    /// What is wrong with it.
    Faults(Vec<RowFault>),
    /// The yard with it.
    Ready(Box<TakenIn>),
}

impl TableFile {
    fn new(name: String, text: &str) -> Self {
        Self {
            name,
            text: text.into(),
            list: None,
            mark: None,
            how: How::Merge,
        }
    }

    /// Whether a file is a table by its name.
    pub fn is_one(name: &str) -> bool {
        let ending = name.rsplit('.').next().unwrap_or_default();
        ["csv", "tsv"]
            .iter()
            .any(|it| ending.eq_ignore_ascii_case(it))
    }

    /// Which list it is of: what the user says, else what its headers tell.
    pub fn list(&self) -> Option<List> {
        self.list.or_else(|| list_of(&self.text).ok().flatten())
    }

    /// The number that can be read in two ways, whatever the user has said of it.
    pub fn doubt(&self) -> Option<Doubt> {
        match read(&self.text, self.list()?, None) {
            Ok(Reading::AsksMark(doubt)) => Some(doubt),
            _ => None,
        }
    }

    /// What would come of it in a yard.
    pub fn preview(&self, yard: &Editing) -> Preview {
        let list = match self
            .list
            .map_or_else(|| list_of(&self.text), |it| Ok(Some(it)))
        {
            Ok(Some(list)) => list,
            Ok(None) => return Preview::AsksList,
            Err(faults) => return Preview::Faults(faults),
        };
        let taken = match read(&self.text, list, self.mark) {
            Ok(Reading::Rows(rows)) => take_in(yard, &rows, self.how),
            Ok(Reading::AsksMark(_)) => return Preview::AsksMark,
            Err(faults) => Err(faults),
        };
        match taken {
            Ok(taken) => Preview::Ready(Box::new(taken)),
            Err(faults) => Preview::Faults(faults),
        }
    }
}

impl Model {
    /// Shows what would come of a table.
    pub(super) fn open_table(self, file: String, text: &str) {
        self.notice.set(None);
        self.table.set(Some(TableFile::new(file, text)));
    }

    /// Takes over the table that is shown, where it has no faults.
    pub fn take_over_table(self) {
        let Some(table) = self.table.get_untracked() else {
            return;
        };
        let preview = table.preview(&self.editing.read_untracked());
        let (Some(list), Preview::Ready(taken)) = (table.list(), preview) else {
            return;
        };
        let [new, changed, unchanged] = taken.counts();
        self.notice.set(Some(Notice::TookTable {
            file: table.name.clone(),
            list,
            new,
            changed,
            unchanged,
            removed: taken.removed.len(),
        }));
        let deed = Deed::TookOver(table.name);
        self.edit(Change::All(Box::new(taken.yard)), deed);
        self.table.set(None);
    }
}
