//! What was changed in a yard, to be taken back and made again.

use super::edit::{Change, Editing};
use std::collections::VecDeque;

/// What a change did, for people.
#[derive(Clone, Debug, PartialEq)]
pub enum Deed {
    /// A field of the yard itself was changed: its path.
    Own(String),
    /// A field of an entry was changed: the entry's name and the field's path.
    Field(String, String),
    /// An entry of this name was added.
    Added(String),
    /// An entry of this name went.
    Removed(String),
    /// An entry of this name was moved.
    Moved(String),
    /// A file of this name was opened.
    Opened(String),
    /// Another yard of this name was taken over.
    TookOver(String),
}

/// The most steps that are kept.
pub const MOST_STEPS: usize = 200;

#[derive(Clone, Debug)]
struct Step {
    deed: Deed,
    /// What takes it back, or makes it again.
    change: Change,
}

/// Steps behind and ahead.
#[derive(Clone, Debug, Default)]
pub struct History {
    behind: VecDeque<Step>,
    ahead: Vec<Step>,
}

impl History {
    /// Makes a change; what had been taken back before can't be made again. False where the change
    /// can't be made.
    pub fn make(&mut self, yard: &mut Editing, change: Change, deed: Deed) -> bool {
        let Some(change) = yard.apply(change) else {
            return false;
        };
        self.ahead.clear();
        self.push(Step { deed, change });
        true
    }

    fn push(&mut self, step: Step) {
        if self.behind.len() >= MOST_STEPS {
            self.behind.pop_front();
        }
        self.behind.push_back(step);
    }

    /// Takes the last step back; gives it as it was taken back, where there was one.
    pub fn undo(&mut self, yard: &mut Editing) -> Option<Change> {
        let Step { deed, change } = self.behind.pop_back()?;
        let done = change.clone();
        let change = yard.apply(change)?;
        self.ahead.push(Step { deed, change });
        Some(done)
    }

    /// Makes the step again that was taken back last; gives it as it was made, where there was one.
    pub fn redo(&mut self, yard: &mut Editing) -> Option<Change> {
        let Step { deed, change } = self.ahead.pop()?;
        let done = change.clone();
        let change = yard.apply(change)?;
        self.push(Step { deed, change });
        Some(done)
    }

    /// The step that would be taken back.
    pub fn behind(&self) -> Option<&Deed> {
        self.behind.back().map(|step| &step.deed)
    }

    /// The step that would be made again.
    pub fn ahead(&self) -> Option<&Deed> {
        self.ahead.last().map(|step| &step.deed)
    }
}
