//! A yard while it is being edited: what is written, faulty or not, and what of it is sound.
//!
//! Each entry is checked once, when it is put in, so that a change costs as little in a yard of
//! many entries as in a small one.

use super::entry::{ImplementEntry, KitEntry, MachineEntry, YardEntry};
use super::format::VERSION;
use super::list::List;
use super::report::Report;
use super::rules::{self, FORMAT_VERSION, LARGEST_FILE, MOST_ENTRIES};
use super::shape::{check_group, fits_id};
use super::{Yard, build, drop_nulls, format, path, read_group};
use crate::fault::{Fault, Rule};
use crate::implement::Implement;
use crate::kit::Kit;
use crate::machine::Machine;
use serde::de::DeserializeOwned;
use serde_json::{Map, Value};
use std::collections::HashSet;

/// What an entry stands for, where nothing is wrong with it.
#[derive(Clone, Debug, PartialEq)]
enum Part {
    Machine(Box<Machine>),
    Implement(Box<Implement>),
    Kit(Box<Kit>),
    Faulty(Vec<Fault>),
}

/// An entry as it is written, and what came of it.
#[derive(Clone, Debug, PartialEq)]
struct Kept {
    /// A group.
    written: Value,
    part: Part,
}

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

/// The name of a yard whose own can't be used.
const UNNAMED: &str = "Yard";
/// Where an entry's faults stand while it is checked by rules that know whole yards.
const ROOT: &str = "entry";

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
                    report.wrong_type(list.word(), &other, "a list [ … ]", "");
                    continue;
                }
            };
            if items.len() > MOST_ENTRIES {
                let found = format!("{} entries", items.len());
                report.add(list.word(), found, Rule::AtMost(MOST_ENTRIES), "");
            }
            for (place, item) in items.iter().enumerate() {
                if !item.is_object() {
                    let path = format!("{}[{place}]", list.word());
                    report.wrong_type(&path, item, "a group { … }", "");
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

    /// All of it as the text of a yard file.
    ///
    /// # Errors
    /// None that is known: whatever was read can be written.
    pub fn to_json(&self) -> Result<String, serde_json::Error> {
        serde_json::to_string_pretty(&self.written())
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

    /// All that is wrong, each with what it belongs to. Paths begin there.
    pub fn faults(&self) -> Vec<(Whose, Fault)> {
        let own = self.own_faults.iter().map(|it| (Whose::Yard, it.clone()));
        let of_entries = List::ALL.iter().flat_map(|list| {
            let twice = self.twice(*list);
            (0..self.len(*list)).flat_map(move |place| {
                let whose = Whose::Entry(*list, place);
                let faults = self.faults_at(*list, place, &twice);
                faults.into_iter().map(move |fault| (whose, fault))
            })
        });
        own.chain(of_entries).collect()
    }

    /// All that is wrong with the yard itself or an entry.
    pub fn faults_of(&self, whose: Whose) -> Vec<Fault> {
        match whose {
            Whose::Yard => self.own_faults.clone(),
            Whose::Entry(list, place) => self.faults_at(list, place, &self.twice(list)),
        }
    }

    /// How many faults each entry of a list has.
    pub fn fault_counts(&self, list: List) -> Vec<usize> {
        let twice = self.twice(list);
        let entries = self.list(list).iter().enumerate();
        let count = |(place, kept): (usize, &Kept)| {
            let own = match &kept.part {
                Part::Faulty(faults) => faults.len(),
                _ => 0,
            };
            own + usize::from(twice.contains(&place))
        };
        entries.map(count).collect()
    }

    fn faults_at(&self, list: List, place: usize, twice: &HashSet<usize>) -> Vec<Fault> {
        let Some(kept) = self.list(list).get(place) else {
            return Vec::new();
        };
        let mut faults = match &kept.part {
            Part::Faulty(faults) => faults.clone(),
            _ => Vec::new(),
        };
        if twice.contains(&place) {
            faults.push(Fault {
                path: "id".to_owned(),
                found: id_of(&kept.written).unwrap_or_default().to_owned(),
                rule: Rule::Unique,
                hint: "Give each entry its own.".to_owned(),
            });
        }
        faults
    }

    /// The yard of all that has no fault. What has one takes no part until it is mended.
    pub fn sound(&self) -> Yard {
        let own = sound_own(&self.own, &self.own_faults);
        let mut written = own.clone();
        let mut yard = Yard::default();
        for list in List::ALL {
            let twice = self.twice(*list);
            let entries = self.list(*list).iter().enumerate();
            let mut texts = Vec::new();
            for (place, kept) in entries {
                if twice.contains(&place) {
                    continue;
                }
                match &kept.part {
                    Part::Machine(machine) => yard.machines.push(Machine::clone(machine)),
                    Part::Implement(implement) => {
                        yard.implements.push(Implement::clone(implement));
                    }
                    Part::Kit(kit) => yard.kits.push(Kit::clone(kit)),
                    Part::Faulty(_) => continue,
                }
                texts.push(kept.written.clone());
            }
            written.insert(list.word().to_owned(), Value::Array(texts));
        }
        // What is left of the yard's own fields has passed the rules.
        let entry = read(&Value::Object(with_lists(&own)));
        let written = Value::Object(written);
        match entry {
            Ok(entry) => Yard {
                machines: yard.machines,
                implements: yard.implements,
                kits: yard.kits,
                ..Yard::without_lists(&entry, written, &mut Report::default())
            },
            Err(_) => Yard { written, ..yard },
        }
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
            && let Ok(entry) = read::<YardEntry>(&Value::Object(whole))
        {
            Yard::without_lists(&entry, Value::Null, &mut report);
        }
        self.own_faults = report.into_faults();
    }

    /// The places of entries whose identifier stands further up already.
    fn twice(&self, list: List) -> HashSet<usize> {
        let mut seen = HashSet::new();
        let repeats = self.ids(list).enumerate();
        repeats
            .filter(|(_, id)| id.is_some_and(|id| !seen.insert(id)))
            .map(|(place, _)| place)
            .collect()
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

fn id_of(entry: &Value) -> Option<&str> {
    entry.get("id")?.as_str()
}

/// The yard's own fields without those that have faults, and with all that it must have.
fn sound_own(own: &Map<String, Value>, faults: &[Fault]) -> Map<String, Value> {
    let mut own = own.clone();
    for fault in faults {
        let key = fault.path.split(['.', '[']).next().unwrap_or_default();
        own.remove(key);
    }
    own.entry("name").or_insert_with(|| UNNAMED.into());
    own.entry(VERSION).or_insert_with(|| FORMAT_VERSION.into());
    own
}

/// The yard's own fields as the rules for whole yards want them.
fn with_lists(own: &Map<String, Value>) -> Map<String, Value> {
    let mut whole = own.clone();
    for list in List::ALL {
        whole.insert(list.word().to_owned(), Value::Array(Vec::new()));
    }
    whole
}

/// Reads what the rules let through.
fn read<T: DeserializeOwned>(written: &Value) -> Result<T, Fault> {
    T::deserialize(written).map_err(|error| Fault {
        path: String::new(),
        found: error.to_string(),
        rule: Rule::Readable,
        hint: "The rules let through what the reader doesn't take: please report it.".to_owned(),
    })
}

/// An entry with what comes of it.
fn kept(list: List, mut written: Value) -> Kept {
    drop_nulls(&mut written);
    let part = checked(list, &written).unwrap_or_else(Part::Faulty);
    Kept { written, part }
}

/// Shape first: only what has it can be built.
fn checked(list: List, written: &Value) -> Result<Part, Vec<Fault>> {
    let mut report = Report::default();
    if let Value::Object(group) = written {
        check_group(group, list.fields(), ROOT, &mut report);
    }
    if !report.is_empty() {
        return Err(from_root(report));
    }
    let refused = |fault| vec![fault];
    let part = match list {
        List::Machines => {
            let entry: MachineEntry = read(written).map_err(refused)?;
            Part::Machine(Box::new(build::machine(&entry, ROOT, &mut report)))
        }
        List::Implements => {
            let entry: ImplementEntry = read(written).map_err(refused)?;
            Part::Implement(Box::new(build::implement(&entry, ROOT, &mut report)))
        }
        List::Kits => {
            let entry: KitEntry = read(written).map_err(refused)?;
            Part::Kit(Box::new(build::kit(&entry, ROOT, &mut report)))
        }
    };
    if report.is_empty() {
        Ok(part)
    } else {
        Err(from_root(report))
    }
}

/// Faults whose paths begin at the entry.
fn from_root(report: Report) -> Vec<Fault> {
    let faults = report.into_faults().into_iter().map(|fault| {
        let path = fault.path.strip_prefix(ROOT).unwrap_or(&fault.path);
        let path = path.trim_start_matches('.').to_owned();
        Fault { path, ..fault }
    });
    faults.collect()
}
