//! What is asked of the browser itself. Every refusal comes back as a value.

mod frame;

pub use frame::{
    address, colour, follow_height, now, open_tab, origin_of, public_address, query, root_style,
    set_root_style, tell_parent, yard_address,
};

use js_sys::Promise;
use leptos::prelude::set_timeout;
use std::cell::Cell;
use std::rc::Rc;
use std::time::Duration;
use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    Blob, BlobPropertyBag, CanvasRenderingContext2d, CustomEvent, Element, Event, File,
    HtmlAnchorElement, HtmlCanvasElement, HtmlElement, HtmlImageElement, HtmlScriptElement,
    Storage, Url, Worker, WorkerOptions, WorkerType, XmlSerializer,
};

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

/// Whether the page has no more room across than on a phone, as the style has it.
pub fn is_narrow() -> bool {
    let across = window().and_then(|window| window.inner_width().ok()?.as_f64());
    across.is_some_and(|across| across < 640.0)
}

/// Gives an element the focus once the page has been drawn, if it's there by then.
pub fn focus(id: impl Into<String>) {
    let id = id.into();
    let give = move || {
        let element = window()
            .and_then(|window| window.document())
            .and_then(|document| document.get_element_by_id(&id))
            .and_then(|element| element.dyn_into::<HtmlElement>().ok());
        if let Some(element) = element {
            // One that can't take it leaves it where it is.
            let _ = element.focus();
        }
    };
    leptos::prelude::request_animation_frame(give);
}

/// Folds what an element is the head of.
pub fn fold(id: &str) {
    let details = window()
        .and_then(|window| window.document())
        .and_then(|document| document.get_element_by_id(id))
        .and_then(|element| element.closest("details").ok()?);
    if let Some(details) = details {
        // One that is folded already stays so.
        let _ = details.remove_attribute("open");
    }
}

/// The fragment of the page's address, without the number sign.
pub fn fragment() -> String {
    window()
        .and_then(|window| window.location().hash().ok())
        .map(|hash| hash.trim_start_matches('#').to_owned())
        .unwrap_or_default()
}

/// Loads the page anew, where it may.
pub fn reload() {
    if let Some(window) = window() {
        let _ = window.location().reload();
    }
}

/// Puts a fragment in the page's address without a new entry in the history. A frame that may not
/// do so keeps its address.
pub fn replace_fragment(fragment: &str) {
    if let Some(history) = window().and_then(|window| window.history().ok()) {
        let address = format!("#{fragment}");
        let _ = history.replace_state_with_url(&JsValue::NULL, "", Some(&address));
    }
}

/// Puts a word of the query in the page's address, where the address has one to replace.
pub fn replace_query(name: &str, word: &str) {
    let replaced = || {
        let window = window()?;
        let address = Url::new(&window.location().href().ok()?).ok()?;
        address.search_params().get(name)?;
        address.search_params().set(name, word);
        let history = window.history().ok()?;
        history
            .replace_state_with_url(&JsValue::NULL, "", Some(&address.href()))
            .ok()
    };
    // A frame that may not change its address keeps it.
    let _ = replaced();
}

/// Says in which language the document is, and what it is called.
pub fn name_document(locale: &str, title: &str) {
    if let Some(document) = window().and_then(|window| window.document()) {
        document.set_title(title);
    }
    if let Some(root) = root() {
        root.set_lang(locale);
    }
}

/// Pixels of the page's own type size.
pub fn rem() -> f64 {
    let size = || {
        let window = window()?;
        let root = window.document()?.document_element()?;
        let style = window.get_computed_style(&root).ok()??;
        let size = style.get_property_value("font-size").ok()?;
        size.trim_end_matches("px").parse().ok()
    };
    size().unwrap_or(16.0)
}

/// The pixels of the screen for each pixel of the page.
pub fn pixel_ratio() -> f64 {
    window().map_or(1.0, |window| window.device_pixel_ratio())
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

/// Why the browser doesn't keep something.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotKept {
    /// It gives this page no room.
    Denied,
    /// The room is used up.
    Full,
}

fn storage() -> Result<Storage, NotKept> {
    // Where it is forbidden, asking for it throws.
    let storage = window().and_then(|window| window.local_storage().ok());
    storage.flatten().ok_or(NotKept::Denied)
}

/// What the browser keeps under a key.
pub fn kept(key: &str) -> Result<Option<String>, NotKept> {
    storage()?.get_item(key).map_err(|_| NotKept::Denied)
}

/// Lets the browser keep a text under a key, or nothing any more. What it kept before stays where it
/// refuses.
pub fn keep(key: &str, text: Option<&str>) -> Result<(), NotKept> {
    let storage = storage()?;
    let Some(text) = text else {
        return storage.remove_item(key).map_err(|_| NotKept::Denied);
    };
    storage.set_item(key, text).map_err(|error| {
        let name = js_sys::Reflect::get(&error, &"name".into()).ok();
        match name.and_then(|name| name.as_string()).as_deref() {
            Some("QuotaExceededError") => NotKept::Full,
            _ => NotKept::Denied,
        }
    })
}

/// The type of JSON files.
pub const JSON: &str = "application/json";
/// The type of tables for spreadsheets.
pub const CSV: &str = "text/csv;charset=utf-8";
/// The type of pictures as SVG.
pub const SVG: &str = "image/svg+xml";

/// A text as the content of a file. `None` where the browser refuses.
pub fn blob(text: &str, kind: &str) -> Option<Blob> {
    let parts = js_sys::Array::of1(&text.into());
    let options = BlobPropertyBag::new();
    options.set_type(kind);
    Blob::new_with_str_sequence_and_options(&parts, &options).ok()
}

/// Offers a file to save. `None` where the browser refuses.
pub fn save(name: &str, content: &Blob) -> Option<()> {
    let address = Url::create_object_url_with_blob(content).ok()?;
    let anchor: HtmlAnchorElement = element("a")?;
    anchor.set_href(&address);
    anchor.set_download(name);
    anchor.click();
    // Some browsers fetch the address long after the click, when the user has chosen a place.
    set_timeout(
        move || {
            let _ = Url::revoke_object_url(&address);
        },
        Duration::from_secs(60),
    );
    Some(())
}

/// A whole number below a million: short enough to be read out and typed again.
pub fn any_number() -> u32 {
    (js_sys::Math::random() * 1e6) as u32
}

/// Whether the page stands in a frame of another one, which may keep back what is saved.
pub fn is_framed() -> bool {
    window().is_some_and(|window| match window.parent() {
        Ok(Some(parent)) => parent != window,
        _ => true,
    })
}

/// The build that the page is of. `None` where it was built without finishing.
pub fn build() -> Option<String> {
    meta("page-version").filter(|build| !build.is_empty())
}

/// What a tag in the page's head says under a name.
fn meta(name: &str) -> Option<String> {
    let selector = format!("meta[name=\"{name}\"]");
    let found = window()?.document()?.query_selector(&selector).ok()??;
    found.get_attribute("content")
}

/// Tells a script beside the program something.
pub fn announce(event: &str) {
    if let (Some(window), Ok(event)) = (window(), Event::new(event)) {
        // Nobody prevents it.
        let _ = window.dispatch_event(&event);
    }
}

/// The word that a script beside the program tells with an event.
pub fn detail(event: &Event) -> Option<String> {
    event.dyn_ref::<CustomEvent>()?.detail().as_string()
}

/// The program again, as a worker. `None` where the browser refuses.
pub fn worker() -> Option<Worker> {
    let document = window()?.document()?;
    let script = document.get_element_by_id("start")?;
    let script: HtmlScriptElement = script.dyn_into().ok()?;
    let address = Url::new(&script.src()).ok()?;
    for name in ["page-code", "page-wasm", "page-sum"] {
        address.search_params().append(name, &meta(name)?);
    }
    let options = WorkerOptions::new();
    options.set_type(WorkerType::Module);
    Worker::new_with_options(&address.href(), &options).ok()
}

/// An element that isn't in the document.
pub fn element<T: JsCast>(name: &str) -> Option<T> {
    let document = window()?.document()?;
    document.create_element(name).ok()?.dyn_into().ok()
}

/// An element as the text of a file of its own.
pub fn serialized(element: &Element) -> Option<String> {
    XmlSerializer::new().ok()?.serialize_to_string(element).ok()
}

/// A picture as PNG with so many pixels. `None` where the browser refuses.
pub async fn png(svg: &Blob, (width, height): (u32, u32)) -> Option<Blob> {
    let address = Url::create_object_url_with_blob(svg).ok()?;
    let image = decoded(&address).await;
    let _ = Url::revoke_object_url(&address);
    let canvas: HtmlCanvasElement = element("canvas")?;
    canvas.set_width(width);
    canvas.set_height(height);
    let context = canvas.get_context("2d").ok()??;
    let context: CanvasRenderingContext2d = context.dyn_into().ok()?;
    let (width, height) = (f64::from(width), f64::from(height));
    context
        .draw_image_with_html_image_element_and_dw_and_dh(&image?, 0.0, 0.0, width, height)
        .ok()?;
    let made = Promise::new(&mut |resolve, reject| {
        if canvas.to_blob(&resolve).is_err() {
            let _ = reject.call0(&JsValue::UNDEFINED);
        }
    });
    JsFuture::from(made).await.ok()?.dyn_into().ok()
}

async fn decoded(address: &str) -> Option<HtmlImageElement> {
    let image = HtmlImageElement::new().ok()?;
    image.set_src(address);
    JsFuture::from(image.decode()).await.ok()?;
    Some(image)
}

/// The whole document.
fn root() -> Option<HtmlElement> {
    window()?.document()?.document_element()?.dyn_into().ok()
}

/// Marks the whole document for the style sheet, or takes the mark away.
pub fn mark(attribute: &str, on: bool) {
    if let Some(root) = root() {
        // The name is ours, so there is no way to fail.
        let _ = root.toggle_attribute_with_force(attribute, on);
    }
}

/// Whether the page is in sight.
pub fn is_in_sight() -> bool {
    window()
        .and_then(|window| window.document())
        .is_some_and(|document| !document.hidden())
}

/// Keeps the screen on: what lets go of it again. `None` where the browser doesn't offer that, or refuses.
pub async fn screen_on() -> Option<JsValue> {
    let navigator = window()?.navigator();
    let lock = js_sys::Reflect::get(&navigator, &"wakeLock".into()).ok()?;
    let asked = call(&lock, "request")?;
    JsFuture::from(asked.dyn_into::<Promise>().ok()?).await.ok()
}

/// Lets go of the screen.
pub fn release(lock: &JsValue) {
    let _ = call(lock, "release");
}

/// What a method gives that browsers may lack.
fn call(of: &JsValue, method: &str) -> Option<JsValue> {
    let method = js_sys::Reflect::get(of, &method.into()).ok()?;
    method.dyn_ref::<js_sys::Function>()?.call0(of).ok()
}
