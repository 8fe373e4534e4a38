//! What is saved beside a yard: a learner's record, a set of practice cases, a comparison.

use super::alike::assert_alike;
use super::faults_hold;
use super::yard::yard_holds;
use crate::made::made;
use farend_core::export::open::{LARGEST_COMPARISON, open};
use farend_core::export::practice_set::{CASES, SavedSet};
use farend_core::export::record::{MOST_ANSWERS, Record};

/// A learner's record.
pub fn record_holds(text: &str) {
    let Ok(record) = Record::from_json(text) else {
        return;
    };
    assert!(record.answers().len() <= MOST_ANSWERS);
    let written = record.to_json().expect("JSON");
    assert_eq!(Record::from_json(&written), Ok(record));
}

/// A set of practice cases.
pub fn set_holds(text: &str) {
    let saved = match SavedSet::from_json(text) {
        Err(faults) => return faults_hold(&faults),
        Ok(saved) => saved,
    };
    let (fewest, most) = CASES;
    assert!((fewest..=most).contains(&saved.set.count));
    let written = saved.to_json().expect("JSON");
    assert_eq!(SavedSet::from_json(&written).as_ref(), Ok(&saved));
    assert_eq!(saved.set.draws().len(), usize::from(saved.set.count));
}

/// A saved comparison, or a yard's file.
pub fn comparison_holds(text: &str) {
    let opened = match open(text) {
        Err(faults) => return faults_hold(&faults),
        Ok(opened) => opened,
    };
    assert!(text.len() <= LARGEST_COMPARISON);
    yard_holds(&opened.yard);
    let Some(state) = &opened.state else { return };
    let written = made(opened.yard.clone(), state.clone()).text();
    let again = open(&written).expect("a comparison of ours");
    assert_eq!(again.yard, opened.yard);
    assert_alike(&again.state, &opened.state);
}
