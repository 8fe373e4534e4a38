//! Keeps the page's address and the state together.

use crate::browser;
use crate::model::Model;
use crate::rest::AfterRest;
use farend_core::state::State;
use leptos::ev;
use leptos::prelude::*;
use std::time::Duration;

/// The fragment that asks for the demo yard as it is, and leaves alone whatever the browser keeps.
pub const DEMO: &str = "demo";

/// How long the state must rest before the address follows it: browsers refuse an address that
/// changes on every step of a slider.
const REST: Duration = Duration::from_millis(200);

/// Puts the state in the address at once.
pub fn write(model: Model) {
    browser::replace_fragment(&model.state.with_untracked(State::to_link));
}

/// The address follows the state, and a link followed within the page becomes the state.
pub fn follow(model: Model) {
    let at_rest = AfterRest::of(REST);
    Effect::new(move |_| {
        let link = model.state.with(State::to_link);
        at_rest.then(move || browser::replace_fragment(&link));
    });
    let handle = window_event_listener(ev::hashchange, move |_| {
        match browser::fragment() {
            // It concerns what the browser keeps, which is read when the page opens.
            fragment if fragment == DEMO => browser::reload(),
            fragment => model.open_link(&fragment),
        }
    });
    on_cleanup(move || handle.remove());
}
