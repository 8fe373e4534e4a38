//! One choice of a few, as a button that stays pressed.

use leptos::prelude::*;

/// A choice of the group `name`; the test id is `id`.
pub fn radio(
    name: &'static str,
    id: impl Into<String>,
    text: impl IntoView,
    chosen: impl Fn() -> bool + Send + Sync + 'static,
    choose: impl Fn() + 'static,
) -> impl IntoView {
    view! {
        <label>
            <input
                type="radio"
                name=name
                data-testid=id.into()
                prop:checked=chosen
                on:change=move |_| choose()
            />
            <span>{text}</span>
        </label>
    }
}
