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
    /// Those that aren't kept.
    unkept: StoredValue<Vec<Answered>>,
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
            unkept: StoredValue::new(Vec::new()),
        };
        // Another tab has kept something.
        let handle = window_event_listener_untyped("storage", move |_| {
            if let Ok(kept) = read() {
                model.record.set(model.with_unkept(kept));
            }
        });
        on_cleanup(move || handle.remove());
        model
    }

    /// Puts an answer to the others.
    pub fn add(self, answer: Answered) {
        self.unkept.update_value(|unkept| unkept.push(answer));
        let written = match read() {
            // Another tab may have kept more.
            Ok(kept) => {
                self.record.set(self.with_unkept(kept));
                self.write()
            }
            // What can't be read is left as it is.
            Err(trouble) => {
                self.record.update(|record| record.add(answer));
                Err(trouble)
            }
        };
        if written.is_ok() {
            self.unkept.update_value(Vec::clear);
        }
        self.trouble.set(written.err());
    }

    /// What is kept, and behind it what isn't.
    fn with_unkept(self, kept: Option<Record>) -> Record {
        let mut record = kept.unwrap_or_default();
        self.unkept
            .with_value(|unkept| unkept.iter().for_each(|answer| record.add(*answer)));
        record
    }

    fn write(self) -> Result<(), Trouble> {
        let text = self.record.with_untracked(Record::to_json);
        let text = text.map_err(|_| Trouble::Full)?;
        browser::keep(KEY, Some(&text)).map_err(|_| Trouble::Full)
    }

    /// Forgets all of it.
    pub fn erase(self) {
        self.record.set(Record::default());
        self.unkept.update_value(Vec::clear);
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
