//! The screen stays on while something is shown to others or thought about.

use crate::browser;
use leptos::ev;
use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen::JsValue;

/// Keeps the screen on for as long as the view that asks for it is there, where the browser offers that. The
/// page around a frame would have to allow it.
pub fn stay_awake() {
    if browser::is_framed() {
        return;
    }
    let lock = StoredValue::<Option<JsValue>, LocalStorage>::new_local(None);
    let hold = move || {
        spawn_local(async move {
            let held = browser::screen_on().await;
            match lock.try_with_value(Option::is_some) {
                Some(_) => lock.set_value(held),
                // The view has gone meanwhile.
                None => held.iter().for_each(browser::release),
            }
        });
    };
    hold();
    // Browsers let go of the screen when the page is out of sight.
    let seen = window_event_listener(ev::visibilitychange, move |_| {
        if browser::is_in_sight() {
            hold();
        }
    });
    on_cleanup(move || {
        seen.remove();
        lock.with_value(|lock| lock.iter().for_each(browser::release));
    });
}
