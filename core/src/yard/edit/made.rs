//! Changes and entries that an editor's hands make.

use super::entry::id_of;
use super::{Change, Editing, Whose};
use crate::yard::list::List;
use crate::yard::path;
use crate::yard::shape::fits_id;
use serde_json::{Map, Value};
use std::collections::HashSet;

impl Editing {
    /// The change that puts something at a path, or takes away what stands there; see
    /// [`path::set`]. `None` where the path leads nowhere, or all stays as it is.
    pub fn putting(&self, whose: Whose, at: &str, to: Option<Value>) -> Option<Change> {
        let (before, mut after) = match whose {
            Whose::Yard => (None, Value::Object(self.own.clone())),
            Whose::Entry(list, place) => {
                let entry = self.entry(list, place)?;
                (Some(entry), entry.clone())
            }
        };
        let set = path::set(&mut after, at, to);
        match (whose, after) {
            _ if !set => None,
            (Whose::Yard, Value::Object(own)) => (own != self.own).then_some(Change::Own(own)),
            (Whose::Yard, _) => None,
            (Whose::Entry(list, place), after) => {
                (before != Some(&after)).then_some(Change::Put(list, place, after))
            }
        }
    }

    /// An entry of which nothing is known but its name, with a free identifier.
    pub fn blank(&self, list: List, name: &str) -> Value {
        let base = match list {
            List::Machines => "machine",
            List::Implements => "implement",
            List::Kits => "kit",
        };
        let mut entry = Map::new();
        entry.insert("id".to_owned(), self.free_id(list, base).into());
        entry.insert("name".to_owned(), name.into());
        Value::Object(entry)
    }

    /// A copy of an entry with another name and a free identifier.
    pub fn copy(&self, list: List, place: usize, name: &str) -> Option<Value> {
        let mut entry = self.entry(list, place)?.clone();
        let id = self.free_id(list, id_of(&entry).unwrap_or("copy"));
        path::set(&mut entry, "id", Some(id.into()));
        path::set(&mut entry, "name", Some(name.into()));
        Some(entry)
    }

    /// The base, or the first of base-2, base-3 … that no entry of a list has.
    fn free_id(&self, list: List, base: &str) -> String {
        let taken: HashSet<_> = self.ids(list).flatten().collect();
        let stem = match base.rsplit_once('-') {
            Some((stem, end)) if end.len() < 4 && end.bytes().all(|it| it.is_ascii_digit()) => stem,
            _ => base,
        };
        // Room for a hyphen and a number of four digits.
        let stem: String = stem.chars().take(35).collect();
        let numbered = (2..).map(|number: u32| format!("{stem}-{number}"));
        let mut names = core::iter::once(base.to_owned()).chain(numbered);
        let free = |id: &String| fits_id(id) && !taken.contains(id.as_str());
        // A base that is no identifier would never end.
        let most = taken.len() + 2;
        let found = names.by_ref().take(most).find(free);
        found.unwrap_or_else(|| self.free_id(list, "entry"))
    }
}
