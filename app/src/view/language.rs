//! The choice of a language, apart from that of units.

use crate::browser;
use crate::language::{Speech, offered};
use crate::text::labels;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::HtmlSelectElement;

const CHOICE: &str = "language";

/// The languages by their own names, and what is to be known about the one that is spoken.
#[component]
pub fn LanguageChoice() -> impl IntoView {
    let speech = Speech::of_page();
    let choose = move |event: leptos::ev::Event| {
        let Some(select) = event
            .target()
            .and_then(|target| target.dyn_into::<HtmlSelectElement>().ok())
        else {
            return;
        };
        let wanted = select.value();
        // Until the text is there, the choice is what it was.
        select.set_value(speech.language.get_untracked().tag);
        speech.choose(&wanted);
    };
    let missed = move || speech.missed.get().map(|it| labels::missed(it.name));
    let unread = Some(labels::unread()).filter(|it| !it.is_empty());
    view! {
        <div class="language">
            <label>
                <span class="hidden">{labels::language()}</span>
                <select id=CHOICE data-testid=CHOICE on:change=choose>
                    {offered()
                        .iter()
                        .map(|it| {
                            let spoken = *it == *speech.language.get_untracked();
                            view! {
                                <option value=it.tag lang=it.tag selected=spoken>
                                    {it.name}
                                </option>
                            }
                        })
                        .collect_view()}
                </select>
            </label>
            {unread.map(|it| view! { <p data-testid="unread">{it}</p> })}
            <p role="alert" data-testid="missed">
                {missed}
            </p>
        </div>
    }
}

/// Gives the choice the focus again, where a change has made all of the page anew.
pub fn focus_choice() {
    browser::focus(CHOICE);
}
