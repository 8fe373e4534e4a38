//! Does something when changes have come to rest.

use leptos::leptos_dom::helpers::TimeoutHandle;
use leptos::prelude::*;
use std::time::Duration;

/// Something to be done after a while, unless something newer takes its place before.
#[derive(Clone, Copy)]
pub struct AfterRest {
    rest: Duration,
    waiting: StoredValue<Option<TimeoutHandle>>,
}

impl AfterRest {
    /// Nothing waits yet.
    pub fn of(rest: Duration) -> Self {
        Self {
            rest,
            waiting: StoredValue::new(None),
        }
    }

    /// Takes the place of what waits.
    pub fn then(self, act: impl FnOnce() + 'static) {
        if let Some(earlier) = self.waiting.get_value() {
            earlier.clear();
        }
        self.waiting
            .set_value(set_timeout_with_handle(act, self.rest).ok());
    }
}
