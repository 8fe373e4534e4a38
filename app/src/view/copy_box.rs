//! A box with a text to copy by hand, for where the clipboard is closed.

use leptos::html::Textarea;
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
    let node = NodeRef::<Textarea>::new();
    Effect::new(move |_| {
        if let Some(area) = node.get().filter(|_| at_once) {
            // One that can't take it leaves it where it is.
            let _ = area.focus();
        }
    });
    view! {
        <label class="copy-box">
            {label}
            <textarea
                node_ref=node
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
