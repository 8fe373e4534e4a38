//! A model whose results follow when changes rest, for what is dear to draw: no slider is held up by it.

use super::Model;
use crate::rest::AfterRest;
use leptos::prelude::*;
use std::time::Duration;

/// Changes that come faster than this wait for the last of them.
const REST: Duration = Duration::from_millis(100);

impl Model {
    /// The same model with results that follow a single change at once, and many when they rest.
    pub fn unhurried(self) -> Self {
        let hurried = RwSignal::new(false);
        let at_rest = AfterRest::of(REST);
        Effect::new(move |before: Option<()>| {
            self.settings.track();
            self.comparison.track();
            self.survey.track();
            self.recommendation.track();
            if before.is_some() {
                hurried.set(true);
                at_rest.then(move || {
                    // The view may be gone meanwhile.
                    hurried.try_set(false);
                });
            }
        });
        Self {
            settings: held(self.settings, hurried),
            comparison: held(self.comparison, hurried),
            survey: held(self.survey, hurried),
            recommendation: held(self.recommendation, hurried),
            ..self
        }
    }
}

/// What a memo came to before changes came fast.
fn held<T>(live: Memo<T>, hurried: RwSignal<bool>) -> Memo<T>
where
    T: Clone + PartialEq + Send + Sync + 'static,
{
    Memo::new(move |before: Option<&T>| match before {
        Some(before) if hurried.get() => before.clone(),
        _ => live.get(),
    })
}
