//! A yard while it is being edited: what is written, faulty or not, and what of it is sound.
//!
//! Each entry is checked once, when it is put in, so that a change costs as little in a yard of
//! many entries as in a small one.

mod entry;
mod made;
mod sound;

use super::entry::YardEntry;
use super::format::VERSION;
use super::list::List;
use super::report::Report;
use super::rules::{self, LARGEST_FILE, MOST_ENTRIES};
use super::shape::check_group;
use super::{Yard, check, drop_nulls, format, path, read_group};
use crate::fault::{Expected, Fault, Rule};
use crate::hint::Hint;
use entry::{Kept, id_of, kept};
use serde_json::{Map, Value};
use sound::sound_own;

/// A yard that is being edited.
#[derive(Clone, Debug, PartialEq)]
pub struct Editing {
    /// The yard's own fields.
    own: Map<String, Value>,
    own_faults: Vec<Fault>,
    machines: Vec<Kept>,
    implements: Vec<Kept>,
    kits: Vec<Kept>,
}

/// What a field or a fault belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Whose {
    /// The yard itself.
    Yard,
    /// An entry at a place of a list.
    Entry(List, usize),
}

/// A change of a yard.
#[derive(Clone, Debug, PartialEq)]
pub enum Change {
    /// Another entry stands at a place.
    Put(List, usize, Value),
    /// A new entry comes to stand at a place; those from there on move back.
    Insert(List, usize, Value),
    /// An entry goes.
    Remove(List, usize),
    /// An entry moves from a place to another.
    Move(List, usize, usize),
    /// The yard's own fields are these.
    Own(Map<String, Value>),
    /// The whole yard is another.
    All(Box<Editing>),
}

impl Editing {
    /// Reads a yard file that may have faults in its fields and entries.
    ///
    /// # Errors
    /// All that keeps it from being taken apart: it isn't JSON, is of another version, or its lists
    /// aren't lists of groups.
    pub fn from_json(text: &str) -> Result<Self, Vec<Fault>> {
        Self::from_group(read_group(text, LARGEST_FILE)?)
    }

    /// The same from a group of JSON.
    ///
    /// # Errors
    /// As [`Self::from_json`].
    pub(crate) fn from_group(group: Map<String, Value>) -> Result<Self, Vec<Fault>> {
        let mut group = format::raised(group)?;
        let mut report = Report::default();
        let mut yard = Self::default();
        for list in List::ALL {
            let items = match group.remove(list.word()) {
                Some(Value::Array(items)) => items,
                Some(Value::Null) | None => Vec::new(),
                Some(other) => {
                    report.wrong_type(list.word(), &other, Expected::List, Hint::ListOfYard);
                    continue;
                }
            };
            if items.len() > MOST_ENTRIES {
                let found = items.len().to_string();
                let rule = Rule::AtMost(MOST_ENTRIES);
                report.add(list.word(), found, rule, Hint::ListOfYard);
            }
            for (place, item) in items.iter().enumerate() {
                if !item.is_object() {
                    let path = format!("{}[{place}]", list.word());
                    report.wrong_type(&path, item, Expected::Group, Hint::ListOfYard);
                }
            }
            *yard.list_mut(*list) = items.into_iter().map(|item| kept(*list, item)).collect();
        }
        yard.set_own(group);
        let of_version = |fault: &&Fault| fault.path == VERSION;
        let version = yard.own_faults.iter().find(of_version).cloned();
        match (report.into_faults(), version) {
            (faults, None) if faults.is_empty() => Ok(yard),
            (faults, version) => Err(faults.into_iter().chain(version).collect()),
        }
    }

    /// All of it as it is written.
    pub fn written(&self) -> Value {
        let mut group = self.own.clone();
        for list in List::ALL {
            let entries = self.list(*list).iter().map(|it| it.written.clone());
            group.insert(list.word().to_owned(), entries.collect());
        }
        Value::Object(group)
    }

    /// All of it as the text of a yard file: in indented lines, unless that were too large to be
    /// opened again.
    ///
    /// # Errors
    /// None that is known: whatever was read can be written.
    pub fn to_json(&self) -> Result<String, serde_json::Error> {
        let written = self.written();
        let indented = serde_json::to_string_pretty(&written)?;
        if indented.len() <= LARGEST_FILE {
            Ok(indented)
        } else {
            serde_json::to_string(&written)
        }
    }

    /// How many entries a list has.
    pub fn len(&self, list: List) -> usize {
        self.list(list).len()
    }

    /// Whether a list takes no more entries.
    pub fn is_full(&self, list: List) -> bool {
        self.len(list) >= MOST_ENTRIES
    }

    /// The yard's own fields.
    pub fn own(&self) -> &Map<String, Value> {
        &self.own
    }

    /// An entry as it is written.
    pub fn entry(&self, list: List, place: usize) -> Option<&Value> {
        Some(&self.list(list).get(place)?.written)
    }

    /// Where the entry with an identifier stands: the first of them.
    pub fn place(&self, list: List, id: &str) -> Option<usize> {
        let has = |kept: &Kept| id_of(&kept.written) == Some(id);
        self.list(list).iter().position(has)
    }

    /// What stands at a path of the yard itself or of an entry.
    pub fn get(&self, whose: Whose, at: &str) -> Option<&Value> {
        match whose {
            Whose::Yard => self.own.get(at),
            Whose::Entry(list, place) => path::get(self.entry(list, place)?, at),
        }
    }

    /// Makes a change and gives the one that takes it back. `None` where there is no such place, the
    /// entry isn't a group or the list is full; then nothing has changed.
    pub fn apply(&mut self, change: Change) -> Option<Change> {
        Some(match change {
            Change::Put(list, place, entry) => {
                let slot = self.list_mut(list).get_mut(place)?;
                let new = entry.is_object().then(|| kept(list, entry))?;
                Change::Put(list, place, core::mem::replace(slot, new).written)
            }
            Change::Insert(list, place, entry) => {
                let fits = entry.is_object() && !self.is_full(list);
                let entries = self.list_mut(list);
                if !fits || place > entries.len() {
                    return None;
                }
                entries.insert(place, kept(list, entry));
                Change::Remove(list, place)
            }
            Change::Remove(list, place) => {
                let entries = self.list_mut(list);
                if place >= entries.len() {
                    return None;
                }
                Change::Insert(list, place, entries.remove(place).written)
            }
            Change::Move(list, from, to) => {
                let entries = self.list_mut(list);
                if from.max(to) >= entries.len() {
                    return None;
                }
                let entry = entries.remove(from);
                entries.insert(to, entry);
                Change::Move(list, to, from)
            }
            Change::Own(own) => {
                let before = core::mem::take(&mut self.own);
                self.set_own(own);
                Change::Own(before)
            }
            Change::All(other) => {
                let before = core::mem::replace(self, *other);
                Change::All(Box::new(before))
            }
        })
    }

    fn set_own(&mut self, own: Map<String, Value>) {
        let mut own = Value::Object(own);
        drop_nulls(&mut own);
        self.own = match own {
            Value::Object(own) => own,
            _ => Map::new(),
        };
        let mut report = Report::default();
        let whole = with_lists(&self.own);
        check_group(&whole, rules::YARD, "", &mut report);
        if report.is_empty()
            && let Some(entry) = check::read::<YardEntry>(&whole, "", &mut report)
        {
            Yard::without_lists(&entry, Value::Null, &mut report);
        }
        self.own_faults = report.into_faults();
    }

    fn ids(&self, list: List) -> impl Iterator<Item = Option<&str>> {
        self.list(list).iter().map(|kept| id_of(&kept.written))
    }

    fn list(&self, list: List) -> &[Kept] {
        match list {
            List::Machines => &self.machines,
            List::Implements => &self.implements,
            List::Kits => &self.kits,
        }
    }

    fn list_mut(&mut self, list: List) -> &mut Vec<Kept> {
        match list {
            List::Machines => &mut self.machines,
            List::Implements => &mut self.implements,
            List::Kits => &mut self.kits,
        }
    }
}

impl Default for Editing {
    /// A yard with nothing in it.
    fn default() -> Self {
        Self {
            own: sound_own(&Map::new(), &[]),
            own_faults: Vec::new(),
            machines: Vec::new(),
            implements: Vec::new(),
            kits: Vec::new(),
        }
    }
}

impl From<&Yard> for Editing {
    fn from(yard: &Yard) -> Self {
        let group = yard.written.as_object().cloned().unwrap_or_default();
        // A yard's own text has passed the rules.
        Self::from_group(group).unwrap_or_default()
    }
}

/// The yard's own fields as the rules for whole yards want them.
fn with_lists(own: &Map<String, Value>) -> Map<String, Value> {
    let mut whole = own.clone();
    for list in List::ALL {
        whole.insert(list.word().to_owned(), Value::Array(Vec::new()));
    }
    whole
}
