//! A number that may be left empty.

use crate::number;
use crate::text::{labels, pair};
use leptos::prelude::*;

/// What becomes of an entry: a number, or nothing where the field is empty. False refuses it.
pub type Enter = Callback<Option<f64>, bool>;

/// A field for a number. What can't be used stays in it until it's mended, and changes nothing.
#[component]
pub fn NumberEntry(
    /// Identifier for tests and for what explains it.
    #[prop(into)]
    id: String,
    #[prop(into)] label: Signal<String>,
    /// What the label belongs to, for those who don't see where it stands.
    #[prop(optional, into)]
    of: String,
    #[prop(into)] unit: Signal<String>,
    /// The number that stands.
    #[prop(into)]
    value: Signal<Option<f64>>,
    /// What stands in the empty field.
    #[prop(into)]
    hint: Signal<String>,
    enter: Enter,
    /// What may be entered.
    #[prop(into)]
    allowed: Signal<String>,
) -> impl IntoView {
    let refused = RwSignal::new(None::<String>);
    let change = move |event| {
        let text = event_target_value(&event);
        let taken = if text.trim().is_empty() {
            enter.run(None)
        } else {
            number::typed(&text).is_some_and(|number| enter.run(Some(number)))
        };
        refused.set((!taken).then_some(text));
    };
    let shown = move || {
        let standing = || value.get().map(number::plain);
        refused.get().or_else(standing).unwrap_or_default()
    };
    let complaint = format!("{id}-complaint");
    let name = match of.is_empty() {
        true => view! { <span>{label}</span> }.into_any(),
        false => view! {
            <span>
                <span aria-hidden="true">{label}</span>
                <span class="hidden">{move || pair(&label.get(), &of)}</span>
            </span>
        }
        .into_any(),
    };
    view! {
        <div class="entry">
            <label class="control-name">
                {name}
                <input
                    type="text"
                    inputmode="decimal"
                    autocomplete="off"
                    data-testid=id
                    placeholder=hint
                    aria-invalid=move || refused.read().is_some().to_string()
                    aria-describedby=complaint.clone()
                    prop:value=shown
                    on:change=change
                />
                <span class="unit">{unit}</span>
            </label>
            <p id=complaint class="complaint" role="alert">
                {move || {
                    refused.read().is_some().then(|| labels::enter(&allowed.get()))
                }}
            </p>
        </div>
    }
}
