//! A part of the page that is folded until it's wanted.

use leptos::prelude::*;

/// A part that is there only while it's open. The note stands beside its title.
#[component]
pub fn Fold(
    name: &'static str,
    title: &'static str,
    #[prop(optional, into)] note: Option<Signal<String>>,
    children: ChildrenFn,
) -> impl IntoView {
    let open = RwSignal::new(false);
    let follow = move |event| {
        let details: web_sys::HtmlDetailsElement = event_target(&event);
        open.set(details.open());
    };
    view! {
        <details class="more" data-testid=name on:toggle=follow>
            <summary>
                {title} {note.map(|note| view! { " " <span class="note">{note}</span> })}
            </summary>
            <Show when=move || open.get()>{children()}</Show>
        </details>
    }
}
