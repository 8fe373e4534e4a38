//! What is wrong with a yard that is being edited, and what of it is sound.

use super::entry::{Kept, id_of};
use super::{Editing, Whose, with_lists};
use crate::fault::{Fault, Rule};
use crate::hint::Hint;
use crate::implement::Implement;
use crate::kit::Kit;
use crate::machine::Machine;
use crate::yard::Yard;
use crate::yard::check::{self, Built};
use crate::yard::entry::YardEntry;
use crate::yard::format::VERSION;
use crate::yard::list::List;
use crate::yard::report::Report;
use crate::yard::rules::{self, FORMAT_VERSION};
use crate::yard::shape::knows;
use serde_json::{Map, Value};
use std::collections::HashSet;

/// The name of a yard whose own can't be used.
const UNNAMED: &str = "Yard";

impl Editing {
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
            let own = match &kept.built {
                Err(faults) => faults.len(),
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
        let mut faults = match &kept.built {
            Err(faults) => faults.clone(),
            _ => Vec::new(),
        };
        if twice.contains(&place) {
            let id = id_of(&kept.written).unwrap_or_default();
            faults.push(Fault::new("id", id, Rule::Unique, Hint::OwnId));
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
                match &kept.built {
                    Ok(Built::Machine(machine)) => yard.machines.push(Machine::clone(machine)),
                    Ok(Built::Implement(implement)) => {
                        yard.implements.push(Implement::clone(implement));
                    }
                    Ok(Built::Kit(kit)) => yard.kits.push(Kit::clone(kit)),
                    Err(_) => continue,
                }
                texts.push(kept.written.clone());
            }
            written.insert(list.word().to_owned(), Value::Array(texts));
        }
        // What is left of the yard's own fields has passed the rules.
        let entry = check::read::<YardEntry>(&with_lists(&own), "", &mut Report::default());
        let written = Value::Object(written);
        match entry {
            Some(entry) => Yard {
                machines: yard.machines,
                implements: yard.implements,
                kits: yard.kits,
                ..Yard::without_lists(&entry, written, &mut Report::default())
            },
            None => Yard { written, ..yard },
        }
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
}

/// The yard's own fields without those that have faults, and with all that it must have.
pub(super) fn sound_own(own: &Map<String, Value>, faults: &[Fault]) -> Map<String, Value> {
    let mut own = own.clone();
    // A fault's path may tell only the beginning of such a key.
    own.retain(|key, _| knows(rules::YARD, key));
    for fault in faults {
        let key = fault.path.split(['.', '[']).next().unwrap_or_default();
        own.remove(key);
    }
    own.entry("name").or_insert_with(|| UNNAMED.into());
    own.entry(VERSION).or_insert_with(|| FORMAT_VERSION.into());
    own
}
