//! What is asked of the browser itself. Every refusal comes back as a value.

use crate::number::LOCALE;
use std::cell::Cell;
use std::rc::Rc;
use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, BlobPropertyBag, File, HtmlAnchorElement, HtmlElement, Url};

fn window() -> Option<web_sys::Window> {
    web_sys::window()
}

/// Removes an element of the document, if it's there.
pub fn remove(id: &str) {
    let element = window()
        .and_then(|window| window.document())
        .and_then(|document| document.get_element_by_id(id));
    if let Some(element) = element {
        element.remove();
    }
}

/// Gives an element the focus once the page has been drawn, if it's there by then.
pub fn focus(id: &'static str) {
    let give = move || {
        let element = window()
            .and_then(|window| window.document())
            .and_then(|document| document.get_element_by_id(id))
            .and_then(|element| element.dyn_into::<HtmlElement>().ok());
        if let Some(element) = element {
            // One that can't take it leaves it where it is.
            let _ = element.focus();
        }
    };
    leptos::prelude::request_animation_frame(give);
}

/// The fragment of the page's address, without the number sign.
pub fn fragment() -> String {
    window()
        .and_then(|window| window.location().hash().ok())
        .map(|hash| hash.trim_start_matches('#').to_owned())
        .unwrap_or_default()
}

/// Puts a fragment in the page's address without a new entry in the history. A frame that may not
/// do so keeps its address.
pub fn replace_fragment(fragment: &str) {
    if let Some(history) = window().and_then(|window| window.history().ok()) {
        let address = format!("#{fragment}");
        let _ = history.replace_state_with_url(&JsValue::NULL, "", Some(&address));
    }
}

/// The page's address with its fragment.
pub fn address() -> String {
    window()
        .and_then(|window| window.location().href().ok())
        .unwrap_or_default()
}

/// The pixels of the screen for each pixel of the page.
pub fn pixel_ratio() -> f64 {
    window().map_or(1.0, |window| window.device_pixel_ratio())
}

/// The address to hand to others: none where the page comes from a disk or stands in a frame.
pub fn public_address() -> Option<String> {
    let window = window()?;
    let alone = window.parent().ok()?.as_ref() == Some(&window);
    let protocol = window.location().protocol().ok()?;
    (alone && matches!(protocol.as_str(), "http:" | "https:")).then(address)
}

/// Today in the reader's calendar.
pub fn today() -> String {
    let options = js_sys::Object::new();
    let style = ("dateStyle", "long");
    // Setting a key of a fresh object has no way to fail.
    let _ = js_sys::Reflect::set(&options, &style.0.into(), &style.1.into());
    js_sys::Date::new_0()
        .to_locale_date_string(LOCALE, &options)
        .into()
}

/// Opens the browser's printing. False where nothing came of it, as in a frame that may not print.
pub fn print() -> bool {
    let Some(window) = window() else {
        return false;
    };
    let begun = Rc::new(Cell::new(false));
    let note = Rc::clone(&begun);
    let listener = Closure::<dyn Fn()>::new(move || note.set(true));
    let function: &js_sys::Function = listener.as_ref().unchecked_ref();
    let listens = window.add_event_listener_with_callback("beforeprint", function);
    let printed = window.print().is_ok();
    // A listener that isn't there any more is as good as removed.
    let _ = window.remove_event_listener_with_callback("beforeprint", function);
    listens.is_ok() && printed && begun.get()
}

/// Puts text on the clipboard. False where the browser refuses.
pub async fn copy(text: &str) -> bool {
    let Some(window) = window() else {
        return false;
    };
    // Outside a secure context there is no clipboard at all, and calling it would throw.
    let navigator = window.navigator();
    let there = js_sys::Reflect::get(&navigator, &"clipboard".into())
        .is_ok_and(|clipboard| clipboard.is_object());
    there
        && JsFuture::from(navigator.clipboard().write_text(text))
            .await
            .is_ok()
}

/// The text of a file that the user has picked. `None` where it can't be read.
pub async fn read(file: &File) -> Option<String> {
    JsFuture::from(file.text()).await.ok()?.as_string()
}

/// Offers a text as a file to save. `None` where the browser refuses.
pub fn save(name: &str, text: &str) -> Option<()> {
    let parts = js_sys::Array::of1(&text.into());
    let kind = BlobPropertyBag::new();
    kind.set_type("application/json");
    let blob = Blob::new_with_str_sequence_and_options(&parts, &kind).ok()?;
    let address = Url::create_object_url_with_blob(&blob).ok()?;
    let document = window()?.document()?;
    let anchor: HtmlAnchorElement = document.create_element("a").ok()?.dyn_into().ok()?;
    anchor.set_href(&address);
    anchor.set_download(name);
    anchor.click();
    Url::revoke_object_url(&address).ok()
}
