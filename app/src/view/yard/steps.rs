//! Taking steps back, the yard as a file, and the way back to the demo.

use crate::browser;
use crate::model::Model;
use crate::storage::{Keeper, Keeping};
use crate::text::{embed, named, notices, yard as text};
use crate::view::save::hand_over;
use farend_core::yard::history::{Deed, History};
use leptos::ev;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;

/// Offers the yard as a file.
pub fn save_yard(model: Model) {
    let text = model.editing.read_untracked().to_json().ok();
    hand_over(model, text::FILE, text, browser::JSON);
}

/// Undo, redo, saving, and what becomes of changes.
#[component]
pub fn Steps() -> impl IntoView {
    let model = Model::of_page();
    // What was just taken back or made again, for those who don't see it change.
    let said = RwSignal::new(String::new());
    let walk = move |back: bool| {
        let history = model.history.read_untracked();
        let told = match back {
            true => history.behind().map(|deed| text::undone(&text::deed(deed))),
            false => history.ahead().map(|deed| text::redone(&text::deed(deed))),
        };
        drop(history);
        if let Some(told) = told {
            said.set(told);
        }
        match back {
            true => model.undo(),
            false => model.redo(),
        }
    };
    listen_to_keys(walk);
    let button = move |id, word: &'static str, of: fn(&History) -> Option<&Deed>, back: bool| {
        let deed = move || of(&model.history.read()).map(text::deed);
        view! {
            <button
                type="button"
                data-testid=id
                disabled=move || deed().is_none()
                on:click=move |_| walk(back)
            >
                {move || match deed() {
                    Some(deed) => named(word, &deed),
                    None => word.to_owned(),
                }}
            </button>
        }
    };
    let keeper = Keeper::of_page();
    let kept = move || match &*keeper.keeping.read() {
        Keeping::Kept | Keeping::SetAside(_) => text::kept(),
        Keeping::Not(_) => text::not_kept(),
        Keeping::Held(_) | Keeping::Other(_) | Keeping::PassedOver(_) => text::held(),
        Keeping::OfAddress => embed::anew(),
    };
    view! {
        <div class="steps" role="group" aria-label=text::steps()>
            {button("undo", text::undo(), History::behind, true)}
            {button("redo", text::redo(), History::ahead, false)}
            <button type="button" data-testid="save-yard" on:click=move |_| save_yard(model)>
                {text::save()}
            </button>
            <BackToDemo />
            <p class="hidden" role="status">
                {said}
            </p>
            <p class="fine" data-testid="kept">
                {kept}
            </p>
        </div>
    }
}

/// The way back to the demo, which asks first.
#[component]
fn BackToDemo() -> impl IntoView {
    let model = Model::of_page();
    let asking = RwSignal::new(false);
    let ask = move |_| {
        asking.set(true);
        browser::focus("to-demo-sure");
    };
    let answer = move |yes: bool| {
        if yes {
            model.open_demo();
        }
        asking.set(false);
        browser::focus("to-demo");
    };
    let button = move || {
        view! {
            <button type="button" id="to-demo" data-testid="to-demo" on:click=ask>
                {text::to_demo()}
            </button>
        }
    };
    view! {
        <Show when=move || asking.get() fallback=button>
            <div class="question">
                <p id="to-demo-sure" tabindex="-1">
                    {text::to_demo_sure()}
                </p>
                <div class="tools">
                    <button type="button" data-testid="demo-yes" on:click=move |_| answer(true)>
                        {text::yes_demo()}
                    </button>
                    <button type="button" data-testid="demo-no" on:click=move |_| answer(false)>
                        {text::no_demo()}
                    </button>
                    <button type="button" on:click=move |_| save_yard(model)>
                        {notices::save_yard()}
                    </button>
                </div>
            </div>
        </Show>
    }
}

/// Ctrl+Z, Ctrl+Shift+Z and Ctrl+Y, but not while a field holds typing that isn't finished: there
/// they are the browser's.
fn listen_to_keys(walk: impl Fn(bool) + 'static) {
    let typing = StoredValue::new(false);
    let is_text = |event: &web_sys::Event| {
        let target = event.target();
        let input = target.and_then(|it| it.dyn_into::<HtmlInputElement>().ok());
        input.is_some_and(|input| input.type_() == "text")
    };
    let begin = window_event_listener_untyped("input", move |event| {
        if is_text(&event) {
            typing.set_value(true);
        }
    });
    let end = ["change", "focusout"]
        .map(|name| window_event_listener_untyped(name, move |_| typing.set_value(false)));
    let keys = window_event_listener(ev::keydown, move |event| {
        let with_control = (event.ctrl_key() || event.meta_key()) && !event.alt_key();
        if !with_control || typing.get_value() {
            return;
        }
        match (event.key().to_lowercase().as_str(), event.shift_key()) {
            ("z", false) => walk(true),
            ("z", true) | ("y", false) => walk(false),
            _ => return,
        }
        event.prevent_default();
    });
    on_cleanup(move || {
        begin.remove();
        end.into_iter().for_each(|it| it.remove());
        keys.remove();
    });
}
