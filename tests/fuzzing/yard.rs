//! A yard's file, and a yard as the browser keeps it.

use super::faults_hold;
use farend_core::compare::compare;
use farend_core::settings::Settings;
use farend_core::yard::Yard;
use farend_core::yard::edit::Editing;
use farend_core::yard::kept;
use farend_core::yard::list::List;
use farend_core::yard::rules::{LARGEST_FILE, MOST_ENTRIES};

/// A yard's file.
pub fn holds(text: &str) {
    match Yard::from_json(text) {
        Err(faults) => {
            faults_hold(&faults);
            editing_holds(text);
        }
        Ok(yard) => {
            assert!(text.len() <= LARGEST_FILE);
            yard_holds(&yard);
            // Opened to be edited, it's the same and has no faults.
            let editing = Editing::from_json(text).expect("a sound yard");
            assert_eq!(editing.faults(), []);
            assert_eq!(editing.sound(), yard);
        }
    }
}

/// What must hold for any yard without faults.
pub fn yard_holds(yard: &Yard) {
    for entries in [yard.machines.len(), yard.implements.len(), yard.kits.len()] {
        assert!(entries <= MOST_ENTRIES, "{entries} entries");
    }
    let written = yard.written.to_string();
    assert_eq!(Yard::from_json(&written).as_ref(), Ok(yard), "{written}");
    if let (Some(machine), Some(implement)) = (yard.machines.first(), yard.implements.first()) {
        let all = compare(machine, implement, &yard.kits, &Settings::default());
        let all = all.expect("a yard's own figures suit it");
        for run in all.routes.iter().filter_map(|route| route.run()) {
            let delivered = run.delivered.likely.to_watts();
            assert!(delivered.is_finite() && delivered >= 0.0, "{delivered}");
        }
    }
}

/// A file with faults, opened to be mended.
fn editing_holds(text: &str) {
    match Editing::from_json(text) {
        Err(faults) => faults_hold(&faults),
        Ok(editing) => edited_holds(&editing),
    }
}

/// What must hold for any yard that is being edited.
fn edited_holds(editing: &Editing) {
    let faults = editing.faults();
    if !faults.is_empty() {
        faults_hold(faults.iter().map(|(_, fault)| fault));
    }
    let sound = editing.sound();
    if !sound.machines.is_empty() && !sound.implements.is_empty() {
        yard_holds(&sound);
    }
    let kept = kept::write(editing).expect("what was read is written");
    assert_eq!(kept::read(&kept).as_ref(), Ok(editing), "{kept}");
}

/// A yard as the browser keeps it.
pub fn kept_holds(text: &str) {
    if let Ok(editing) = kept::read(text) {
        for list in List::ALL {
            assert!(editing.len(*list) <= MOST_ENTRIES);
        }
        edited_holds(&editing);
    }
}
