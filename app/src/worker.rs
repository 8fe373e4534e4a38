//! The program as a worker: it computes rows of the whole yard while the page stays free.
//!
//! The page posts what the rows are of ([`Asked::post`]), and then ranges of rows; each range is
//! answered by the bytes of its rows. Before, the worker says with an empty message that it listens.

use farend_core::grid::{rows, to_bytes};
use farend_core::settings::Settings;
use farend_core::state::State;
use farend_core::yard::Yard;
use js_sys::{Array, Uint8Array};
use std::ops::Range;
use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{DedicatedWorkerGlobalScope, MessageEvent, Worker};

/// What the rows are of, as it is posted.
pub struct Asked {
    yard: Yard,
    settings: Settings,
    as_it_stands: bool,
}

impl Asked {
    /// Posts a yard, its site, which goes as a link, and which kits count.
    pub fn post(worker: &Worker, yard: &Yard, site: Settings, as_it_stands: bool) -> Option<()> {
        let state = State {
            settings: site,
            ..State::of(String::new(), String::new())
        };
        let message = Array::of3(
            &yard.written.to_string().into(),
            &state.to_link().into(),
            &as_it_stands.into(),
        );
        worker.post_message(&message).ok()
    }

    fn read(message: &Array) -> Option<Self> {
        let yard = Yard::from_json(&message.get(0).as_string()?).ok()?;
        let state = State::from_link(&message.get(1).as_string()?).ok()?;
        Some(Self {
            yard,
            settings: state.settings,
            as_it_stands: message.get(2).as_bool()?,
        })
    }

    fn rows(&self, range: Range<usize>) -> Vec<u8> {
        to_bytes(&rows(&self.yard, range, &self.settings, self.as_it_stands))
    }
}

/// Asks for a range of rows.
pub fn ask(worker: &Worker, range: &Range<usize>) -> Option<()> {
    let [from, to] = [range.start, range.end].map(|place| JsValue::from_f64(place as f64));
    worker.post_message(&Array::of2(&from, &to)).ok()
}

fn read_range(message: &Array) -> Option<Range<usize>> {
    let place = |at| message.get(at).as_f64().map(|place| place as usize);
    Some(place(0)?..place(1)?)
}

/// Answers the page for as long as the worker lives.
pub fn serve() {
    let Ok(scope) = js_sys::global().dyn_into::<DedicatedWorkerGlobalScope>() else {
        return;
    };
    let page = scope.clone();
    let mut asked = None;
    let answer = Closure::<dyn FnMut(MessageEvent)>::new(move |event: MessageEvent| {
        let message = Array::from(&event.data());
        match (&asked, read_range(&message)) {
            (Some(asked), Some(range)) => {
                let bytes = Asked::rows(asked, range);
                // A page that has gone asks no more.
                let _ = page.post_message(&Uint8Array::from(bytes.as_slice()));
            }
            _ => asked = Asked::read(&message),
        }
    });
    scope.set_onmessage(Some(answer.as_ref().unchecked_ref()));
    answer.forget();
    let _ = scope.post_message(&JsValue::UNDEFINED);
}
