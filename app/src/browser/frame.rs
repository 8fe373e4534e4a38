//! The page's own address, the page around it, and its colours.

use super::{root, window};
use js_sys::{Array, Date, Object, Reflect};
use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{CanvasRenderingContext2d, HtmlCanvasElement, ResizeObserver, Url};

/// The query's option that is of no use but in a frame.
const OF_A_FRAME: &str = "origin";

/// Names and values of the address's query.
pub fn query() -> Vec<(String, String)> {
    let read = || {
        let url = Url::new(&window()?.location().href().ok()?).ok()?;
        let pairs = Array::from(url.search_params().as_ref());
        let pair = |pair: JsValue| {
            let pair = Array::from(&pair);
            Some((pair.get(0).as_string()?, pair.get(1).as_string()?))
        };
        Some(pairs.iter().filter_map(pair).collect())
    };
    read().unwrap_or_default()
}

/// The page's address with its options and a fragment.
pub fn address(fragment: &str) -> String {
    own_address(fragment).map_or_else(String::new, |url| url.href())
}

/// The same to hand to others: none where the page comes from a disk.
pub fn public_address(fragment: &str) -> Option<String> {
    let url = own_address(fragment)?;
    let is_served = matches!(url.protocol().as_str(), "http:" | "https:");
    is_served.then(|| url.href())
}

fn own_address(fragment: &str) -> Option<Url> {
    let url = Url::new(&window()?.location().href().ok()?).ok()?;
    // Untouched where it can be: writing a query again may spell it differently.
    if url.search_params().has(OF_A_FRAME) {
        url.search_params().delete(OF_A_FRAME);
    }
    url.set_hash(fragment);
    Some(url)
}

/// The whole address of a yard, where the page may load one from there: by https, from its own host,
/// or from the reader's own machine.
pub fn yard_address(written: &str) -> Option<String> {
    let window = window()?;
    let base = window.document()?.base_uri().ok()??;
    let url = Url::new_with_base(written, &base).ok()?;
    let own = window.location().origin().ok()?;
    let local = matches!(url.hostname().as_str(), "localhost" | "127.0.0.1");
    let allowed = match url.protocol().as_str() {
        "https:" => true,
        "http:" => local || url.origin() == own,
        _ => false,
    };
    let names_nobody = url.username().is_empty() && url.password().is_empty();
    (allowed && names_nobody).then(|| url.href())
}

/// The origin of a whole address.
pub fn origin_of(address: &str) -> Option<String> {
    Some(Url::new(address).ok()?.origin())
}

/// Opens an address in a tab. False where the browser or the frame refuses.
pub fn open_tab(address: &str) -> bool {
    let opened = window().map(|window| window.open_with_url_and_target(address, "_blank"));
    matches!(opened, Some(Ok(Some(_))))
}

/// Now, as headers of the web write it.
pub fn now() -> String {
    Date::new_0().to_utc_string().into()
}

/// What the style sheet says of a name.
pub fn root_style(name: &str) -> Option<String> {
    let style = window()?.get_computed_style(root()?.as_ref()).ok()??;
    style.get_property_value(name).ok()
}

/// Says something else of a name than the style sheet.
pub fn set_root_style(name: &str, value: &str) {
    if let Some(root) = root() {
        // What the browser can't use it leaves.
        let _ = root.style().set_property(name, value);
    }
}

/// Red, green and blue of a colour as CSS writes it. `None` where it is none, where it's translucent,
/// or where its parts aren't those of a screen's common colours.
pub fn colour(written: &str) -> Option<[u8; 3]> {
    let canvas: HtmlCanvasElement = super::element("canvas")?;
    let context = canvas.get_context("2d").ok()??;
    let context: CanvasRenderingContext2d = context.dyn_into().ok()?;
    // What is no colour leaves the one before; so it is asked twice, after two different ones.
    let read = |before: &str| {
        context.set_fill_style_str(before);
        context.set_fill_style_str(written);
        context.fill_style().as_string()
    };
    let (one, other) = (read("#000000")?, read("#ffffff")?);
    let digits = one.strip_prefix('#').filter(|_| one == other)?;
    let number = u32::from_str_radix(digits, 16)
        .ok()
        .filter(|_| digits.len() == 6)?;
    let [_, red, green, blue] = number.to_be_bytes();
    Some([red, green, blue])
}

/// Posts `{ farend: version, name: value }` to the page around this one, if that is of an origin.
pub fn tell_parent(origin: &str, version: u8, name: &str, value: &JsValue) {
    let message = Object::new();
    for (name, value) in [("farend", &version.into()), (name, value)] {
        // Setting a key of a fresh object has no way to fail.
        let _ = Reflect::set(&message, &name.into(), value);
    }
    if let Some(parent) = window().and_then(|window| window.parent().ok()?) {
        // A parent of another origin isn't told.
        let _ = parent.post_message(&message, origin);
    }
}

/// Hands over the height of all that is in the page, now and whenever it changes, for as long as the
/// page lives.
pub fn follow_height(tell: impl Fn(f64) + 'static) {
    let Some(body) = window().and_then(|window| window.document()?.body()) else {
        return;
    };
    let measured = body.clone();
    let measure = Closure::<dyn FnMut()>::new(move || {
        tell(measured.get_bounding_client_rect().height().ceil());
    });
    if let Ok(observer) = ResizeObserver::new(measure.as_ref().unchecked_ref()) {
        observer.observe(&body);
        measure.forget();
    }
}
