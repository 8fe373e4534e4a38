//! The learner's own answers, kept in this browser.

use crate::browser;
use farend_core::export::record::{Record, Unreadable};
use farend_core::practice::Answered;
use leptos::prelude::*;

/// Where the browser keeps it.
const KEY: &str = "farend-practice-record";

/// Why the record isn't kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Trouble {
    /// The browser lets the page keep nothing.
    Closed,
    /// There is no room.
    Full,
    /// What was kept can't be read.
    Damaged,
    /// A newer version of this page kept it.
    Newer,
}

/// The record.
#[derive(Clone, Copy)]
pub struct RecordModel {
    /// The answers, kept or not.
    pub record: RwSignal<Record>,
    /// Why they aren't kept, if so.
    pub trouble: RwSignal<Option<Trouble>>,
}

impl RecordModel {
    /// As the browser has kept it.
    pub fn new() -> Self {
        let (record, trouble) = match read() {
            Ok(record) => (record.unwrap_or_default(), None),
            Err(trouble) => (Record::default(), Some(trouble)),
        };
        let model = Self {
            record: RwSignal::new(record),
            trouble: RwSignal::new(trouble),
        };
        // Another tab has kept something.
        let handle = window_event_listener_untyped("storage", move |_| {
            if let Ok(record) = read() {
                model.record.set(record.unwrap_or_default());
            }
        });
        on_cleanup(move || handle.remove());
        model
    }

    /// Puts an answer to the others.
    pub fn add(self, answer: Answered) {
        let kept = read();
        self.record.update(|record| {
            // Another tab may have kept more.
            if let Ok(Some(kept)) = &kept
                && self.trouble.get_untracked().is_none()
            {
                record.clone_from(kept);
            }
            record.add(answer);
        });
        // What can't be read is left as it is.
        self.trouble.set(kept.and_then(|_| self.write()).err());
    }

    fn write(self) -> Result<(), Trouble> {
        let text = self.record.with_untracked(Record::to_json);
        let text = text.map_err(|_| Trouble::Full)?;
        browser::keep(KEY, Some(&text)).map_err(|_| Trouble::Full)
    }

    /// Forgets all of it.
    pub fn erase(self) {
        self.record.set(Record::default());
        let forgotten = browser::keep(KEY, None);
        self.trouble.set(forgotten.err().map(|_| Trouble::Closed));
    }
}

fn read() -> Result<Option<Record>, Trouble> {
    match browser::kept(KEY) {
        Err(_) => Err(Trouble::Closed),
        Ok(None) => Ok(None),
        Ok(Some(text)) => match Record::from_json(&text) {
            Ok(record) => Ok(Some(record)),
            Err(Unreadable::Damaged) => Err(Trouble::Damaged),
            Err(Unreadable::Newer) => Err(Trouble::Newer),
        },
    }
}
