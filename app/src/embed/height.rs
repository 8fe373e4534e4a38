//! What the page tells the one around it: that it stands, and how high it is.
//!
//! Messages are `{ farend: 1, ready: true }`, once, and `{ farend: 1, height: 1234 }` in CSS pixels.
//! They go to the frame's parent and to the one origin that the host has named; where none is named,
//! nobody is told. Nothing is heard.

use crate::browser;
use leptos::prelude::*;
use std::cell::Cell;
use wasm_bindgen::JsValue;

/// Version of the messages.
const VERSION: u8 = 1;

/// Tells the height of what is in the page, now and whenever it changes, and when the page stands.
/// What is in it must not hang on the frame's own height: the mark sees to that in the style sheet.
pub fn tell(origin: Option<String>, stands: impl Fn() -> bool + 'static) {
    let Some(origin) = origin.filter(|_| browser::is_framed()) else {
        return;
    };
    browser::mark("data-fitted", true);
    let to = origin.clone();
    Effect::new(move |before: Option<bool>| {
        let told = before == Some(true);
        let stands = stands();
        if stands && !told {
            browser::tell_parent(&to, VERSION, "ready", &JsValue::TRUE);
        }
        told || stands
    });
    let last = Cell::new(None);
    browser::follow_height(move |height| {
        if last.replace(Some(height)) != Some(height) {
            browser::tell_parent(&origin, VERSION, "height", &height.into());
        }
    });
}
