//! A yard under the hands of an editor: every step can be taken back and made again, and what is
//! sound is what the rules of whole files let through.

use farend_core::yard::edit::{Change, Editing, Whose};
use farend_core::yard::history::{Deed, History};
use farend_core::yard::list::List;
use farend_core::yard::{DEMO, Yard, kept};
use proptest::prelude::*;
use proptest::sample::select;
use serde_json::{Value, json};

/// Paths of every kind: known, unknown, in groups and lists that may be there or not, nowhere.
const PATHS: &[&str] = &[
    "id",
    "name",
    "kind",
    "mass_kg",
    "price",
    "engine.net_kw",
    "engine.rated_rpm",
    "engine.curve[0].kw",
    "rear_pto.rpm",
    "mid_pto",
    "circuits[0].flow_l_min.low",
    "circuits[0].steering.policy",
    "circuits[1]",
    "need_kw",
    "rotor.rated_rpm",
    "shafts[0].drive",
    "shafts[0].drive[1]",
    "motor.ratio",
    "routes[0]",
    "drive[0].ratio",
    "hoses.bore_mm",
    "not_there",
    "circuits[7].x",
];

fn value() -> BoxedStrategy<Option<Value>> {
    prop_oneof![
        Just(None),
        (1.0..3000.0).prop_map(|number| Some(json!(number))),
        select(&["heron-68", "Curlew", "tractor", "bevel", "", "1,5"][..])
            .prop_map(|text| Some(json!(text))),
        Just(Some(json!({"low": 9.0, "likely": 8.0, "high": 10.0}))),
        Just(Some(json!(["bevel"]))),
        Just(Some(json!({}))),
    ]
    .boxed()
}

/// What an editor does, at places that are wrapped round to those there are.
#[derive(Clone, Debug)]
enum Act {
    Put(List, usize, &'static str, Option<Value>),
    Copy(List, usize),
    Add(List),
    Remove(List, usize),
    Move(List, usize, usize),
    Own(&'static str, Option<Value>),
    Other(bool),
}

fn act() -> BoxedStrategy<Act> {
    let list = || select(List::ALL);
    let place = 0..30_usize;
    prop_oneof![
        8 => (list(), place.clone(), select(PATHS), value())
            .prop_map(|(list, place, path, to)| Act::Put(list, place, path, to)),
        1 => (list(), place.clone()).prop_map(|(list, place)| Act::Copy(list, place)),
        1 => list().prop_map(Act::Add),
        1 => (list(), place.clone()).prop_map(|(list, place)| Act::Remove(list, place)),
        1 => (list(), place.clone(), place).prop_map(|(list, from, to)| Act::Move(list, from, to)),
        1 => (select(&["name", "currency", "note", "hour_price"][..]), value())
            .prop_map(|(key, to)| Act::Own(key, to)),
        1 => any::<bool>().prop_map(Act::Other),
    ]
    .boxed()
}

/// The change that an act comes to, where there is something to change.
fn change(yard: &Editing, act: &Act) -> Option<Change> {
    let at = |list: List, place: usize| Some(place % yard.len(list).max(1));
    match act {
        Act::Put(list, place, path, to) => {
            yard.putting(Whose::Entry(*list, at(*list, *place)?), path, to.clone())
        }
        Act::Copy(list, place) => {
            let place = at(*list, *place)?;
            Some(Change::Insert(
                *list,
                place,
                yard.copy(*list, place, "Copied")?,
            ))
        }
        Act::Add(list) => Some(Change::Insert(
            *list,
            yard.len(*list),
            yard.blank(*list, "New"),
        )),
        Act::Remove(list, place) => Some(Change::Remove(*list, at(*list, *place)?)),
        Act::Move(list, from, to) => Some(Change::Move(*list, at(*list, *from)?, at(*list, *to)?)),
        Act::Own(key, to) => yard.putting(Whose::Yard, key, to.clone()),
        Act::Other(empty) => Some(Change::All(Box::new(match empty {
            true => Editing::default(),
            false => demo(),
        }))),
    }
}

fn demo() -> Editing {
    Editing::from_json(DEMO).expect("the demo can be edited")
}

/// A yard after some acts, with the way there.
fn edited(acts: &[Act]) -> (Editing, History, usize) {
    let (mut yard, mut history, mut steps) = (demo(), History::default(), 0);
    for act in acts {
        if let Some(change) = change(&yard, act) {
            let deed = Deed::Own("name".to_owned());
            steps += usize::from(history.make(&mut yard, change, deed));
        }
    }
    (yard, history, steps)
}

/// As many as one yard takes in a row.
fn acts() -> impl Strategy<Value = Vec<Act>> {
    proptest::collection::vec(act(), 1..40)
}

proptest! {
    #![proptest_config(crate::cases(60))]

    #[test]
    fn whatever_is_done_can_be_undone_and_done_again(acts in acts()) {
        let (mut yard, mut history, steps) = edited(&acts);
        let done = yard.clone();
        let mut states = vec![yard.written()];
        for _ in 0..steps {
            prop_assert!(history.undo(&mut yard).is_some());
            states.push(yard.written());
        }
        prop_assert!(history.undo(&mut yard).is_none());
        prop_assert_eq!(&yard, &demo());
        for state in states.iter().rev().skip(1) {
            prop_assert!(history.redo(&mut yard).is_some());
            prop_assert_eq!(&yard.written(), state);
        }
        prop_assert!(history.redo(&mut yard).is_none());
        // What came of each entry comes back with it.
        prop_assert_eq!(yard, done);
    }

    #[test]
    fn a_yard_without_faults_is_one_that_a_file_may_hold(acts in acts()) {
        let (yard, ..) = edited(&acts);
        let file = Yard::from_json(&yard.written().to_string());
        let full = yard.len(List::Machines) > 0 && yard.len(List::Implements) > 0;
        prop_assert_eq!(file.is_ok(), yard.faults().is_empty() && full);
        if let Ok(file) = file {
            prop_assert_eq!(yard.sound(), file);
        }
    }

    #[test]
    fn what_is_sound_is_what_a_file_of_the_same_entries_gives(acts in acts()) {
        let (yard, ..) = edited(&acts);
        let sound = yard.sound();
        let left = List::ALL.iter().map(|list| {
            yard.fault_counts(*list).iter().filter(|count| **count == 0).count()
        });
        let parts = [sound.machines.len(), sound.implements.len(), sound.kits.len()];
        prop_assert_eq!(parts.to_vec(), left.collect::<Vec<_>>());
        if parts[0] > 0 && parts[1] > 0 {
            prop_assert_eq!(Yard::from_json(&sound.written.to_string()), Ok(sound));
        }
    }

    #[test]
    fn each_fault_belongs_to_an_entry_that_has_it(acts in acts()) {
        let (yard, ..) = edited(&acts);
        for (whose, fault) in yard.faults() {
            prop_assert!(yard.faults_of(whose).contains(&fault));
            if let Whose::Entry(list, place) = whose {
                prop_assert!(yard.fault_counts(list)[place] > 0);
            }
        }
    }

    #[test]
    fn what_is_kept_comes_back(acts in acts()) {
        let (yard, ..) = edited(&acts);
        let text = kept::write(&yard).expect("a text");
        prop_assert_eq!(kept::read(&text), Ok(yard));
    }
}
