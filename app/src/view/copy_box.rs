//! A box with a text to copy by hand, for where the clipboard is closed.

use crate::browser;
use leptos::prelude::*;

/// The box. Its text is selected as soon as it has the focus, which it takes at once where the user
/// has just asked to copy.
#[component]
pub fn CopyBox(
    id: &'static str,
    label: &'static str,
    #[prop(into)] text: Signal<String>,
    #[prop(default = 1)] lines: u32,
    #[prop(optional)] at_once: bool,
) -> impl IntoView {
    if at_once {
        browser::focus(id);
    }
    view! {
        <label class="copy-box">
            {label}
            <textarea
                id=id
                readonly
                rows=lines
                data-testid=id
                prop:value=text
                on:focus=move |event| {
                    event_target::<web_sys::HtmlTextAreaElement>(&event).select();
                }
            ></textarea>
        </label>
    }
}
