//! Keeps the page's address and the state together.

use crate::browser;
use crate::model::Model;
use farend_core::state::State;
use leptos::prelude::*;
use leptos::{ev, leptos_dom::helpers::TimeoutHandle};
use std::time::Duration;

/// How long the state must rest before the address follows it: browsers refuse an address that
/// changes on every step of a slider.
const REST: Duration = Duration::from_millis(200);

/// The address follows the state, and a link followed within the page becomes the state.
pub fn follow(model: Model) {
    let waiting = StoredValue::<Option<TimeoutHandle>>::new(None);
    Effect::new(move |_| {
        let link = model.state.with(State::to_link);
        if let Some(earlier) = waiting.get_value() {
            earlier.clear();
        }
        let later = move || browser::replace_fragment(&link);
        waiting.set_value(set_timeout_with_handle(later, REST).ok());
    });
    let handle = window_event_listener(ev::hashchange, move |_| {
        model.open_link(&browser::fragment());
    });
    on_cleanup(move || handle.remove());
}
