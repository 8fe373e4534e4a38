//! A text from an address, bounded in size and time, and kept for days without a network.

use crate::browser;
use js_sys::{Reflect, Uint8Array};
use leptos::prelude::set_timeout_with_handle;
use std::cell::Cell;
use std::rc::Rc;
use std::time::Duration;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    AbortController, AbortSignal, Cache, Headers, ReadableStreamDefaultReader, ReferrerPolicy,
    RequestCache, RequestCredentials, RequestInit, Response, ResponseInit,
};

/// Why a text isn't there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Failure {
    /// No network, no such host, or one that doesn't share it.
    Unreachable,
    /// It wasn't there in time.
    TooSlow,
    /// The host led on to an address that isn't allowed.
    Moved,
    /// The host's answer is another than yes.
    Status(u16),
    /// More than was asked for.
    TooLarge,
}

/// Where texts are kept.
const STORE: &str = "farend-yards";
/// The header that says since when.
const SINCE: &str = "date";

/// Loads a text of at most so many bytes, without telling the host who asks. What comes beyond them,
/// or later, is not waited for.
pub async fn text(
    address: &str,
    most: usize,
    patience: Duration,
    allowed: impl Fn(&str) -> bool,
) -> Result<String, Failure> {
    let abort = AbortController::new().map_err(|_| Failure::Unreachable)?;
    let late = Rc::new(Cell::new(false));
    let timer = {
        let (abort, late) = (abort.clone(), Rc::clone(&late));
        let give_up = move || {
            late.set(true);
            abort.abort();
        };
        set_timeout_with_handle(give_up, patience)
    };
    let read = read(address, most, &abort.signal(), allowed).await;
    if let Ok(timer) = timer {
        timer.clear();
    }
    read.map_err(|failure| {
        // Whatever has come by now is enough.
        abort.abort();
        match late.get() {
            true => Failure::TooSlow,
            false => failure,
        }
    })
}

async fn read(
    address: &str,
    most: usize,
    signal: &AbortSignal,
    allowed: impl Fn(&str) -> bool,
) -> Result<String, Failure> {
    let unreachable = |_: JsValue| Failure::Unreachable;
    let options = RequestInit::new();
    options.set_credentials(RequestCredentials::Omit);
    options.set_referrer_policy(ReferrerPolicy::NoReferrer);
    options.set_cache(RequestCache::NoCache);
    options.set_signal(Some(signal));
    let window = web_sys::window().ok_or(Failure::Unreachable)?;
    let response = window.fetch_with_str_and_init(address, &options);
    let response = JsFuture::from(response).await.map_err(unreachable)?;
    let response: Response = response.dyn_into().map_err(unreachable)?;
    if !allowed(&response.url()) {
        return Err(Failure::Moved);
    }
    if !response.ok() {
        return Err(Failure::Status(response.status()));
    }
    // The pieces of a copy are counted: a text that is itself read by pieces counts as broken off in
    // Chromium.
    let copy = response.clone().map_err(unreachable)?;
    if let Some(body) = copy.body() {
        let reader: ReadableStreamDefaultReader = body
            .get_reader()
            .dyn_into()
            .map_err(|_| Failure::Unreachable)?;
        let mut bytes = 0;
        while let Some(length) = next(&reader).await.map_err(unreachable)? {
            bytes += length;
            if bytes > most {
                return Err(Failure::TooLarge);
            }
        }
    }
    let text = JsFuture::from(response.text().map_err(unreachable)?).await;
    let text = text.map_err(unreachable)?;
    text.as_string().ok_or(Failure::Unreachable)
}

/// The bytes of the next piece of a stream; nothing at its end.
async fn next(reader: &ReadableStreamDefaultReader) -> Result<Option<usize>, JsValue> {
    let piece = JsFuture::from(reader.read()).await?;
    if Reflect::get(&piece, &"done".into())?.is_truthy() {
        return Ok(None);
    }
    let bytes: Uint8Array = Reflect::get(&piece, &"value".into())?.dyn_into()?;
    Ok(Some(bytes.length() as usize))
}

/// The store. `None` where the browser has none for this page.
async fn store() -> Option<Cache> {
    let window = web_sys::window()?;
    // Outside a secure context there is none at all, and calling it would throw.
    let there = Reflect::get(&window, &"caches".into()).is_ok_and(|caches| caches.is_object());
    let store = there.then(|| window.caches().ok())??.open(STORE);
    JsFuture::from(store).await.ok()?.dyn_into().ok()
}

/// Keeps a text under its address, if the browser lets it.
pub async fn keep(address: &str, text: &str) {
    let write = async {
        let headers = Headers::new().ok()?;
        headers.set(SINCE, &browser::now()).ok()?;
        let options = ResponseInit::new();
        options.set_headers(&headers);
        let response = Response::new_with_opt_str_and_init(Some(text), &options).ok()?;
        let put = store().await?.put_with_str(address, &response);
        JsFuture::from(put).await.ok()
    };
    // Without it the text is there as long as there is a network.
    let _ = write.await;
}

/// The text that is kept under an address, and since when.
pub async fn kept(address: &str) -> Option<(String, String)> {
    let found = JsFuture::from(store().await?.match_with_str(address)).await;
    let response: Response = found.ok()?.dyn_into().ok()?;
    let since = response.headers().get(SINCE).ok()??;
    let text = JsFuture::from(response.text().ok()?).await.ok()?;
    Some((text.as_string()?, since))
}
