//! The model whose results wait while a slider is dragged, for what is dear to draw.

use super::Model;
use crate::rest::AfterRest;
use leptos::prelude::*;
use std::time::Duration;

/// How long a slider must rest.
const REST: Duration = Duration::from_millis(100);

/// That a slider is being dragged.
#[derive(Clone, Copy)]
pub struct Dragging {
    is: RwSignal<bool>,
    at_rest: AfterRest,
}

impl Dragging {
    /// Nothing is.
    pub fn no() -> Self {
        Self {
            is: RwSignal::new(false),
            at_rest: AfterRest::of(REST),
        }
    }

    /// A step of it.
    pub fn step(self) {
        // Only what begins is news: each change of it copies the results.
        if !self.is.get_untracked() {
            self.is.set(true);
        }
        self.at_rest.then(move || {
            self.is.try_set(false);
        });
    }

    /// What a memo came to before a slider was dragged.
    fn held<T>(self, live: Memo<T>) -> Memo<T>
    where
        T: Clone + PartialEq + Send + Sync + 'static,
    {
        Memo::new(move |before: Option<&T>| match before {
            Some(before) if self.is.get() => before.clone(),
            _ => live.get(),
        })
    }
}

/// The model that waits, as a part of what the page provides.
#[derive(Clone, Copy)]
struct Unhurried(Model);

impl Model {
    /// Provides both to the page's parts: the model, and the one that waits.
    pub fn provide(self) {
        let held = Self {
            settings: self.dragging.held(self.settings),
            comparison: self.dragging.held(self.comparison),
            survey: self.dragging.held(self.survey),
            recommendation: self.dragging.held(self.recommendation),
            ..self
        };
        provide_context(Unhurried(held));
        provide_context(self);
    }

    /// The model that waits.
    pub fn unhurried() -> Self {
        expect_context::<Unhurried>().0
    }
}
