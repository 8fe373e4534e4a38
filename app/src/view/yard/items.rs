//! Lists within an entry: outlets, steps, points of a curve, words in an order.

use super::field::{complaint, explains, invalid, needed};
use super::form::{Form, part, planned};
use super::plan::Plan;
use crate::text::{fields, hints, named, words, yard as text};
use farend_core::yard::shape::{Field, Shape};
use leptos::prelude::*;
use serde_json::{Value, json};

/// How many entries a list at a path has.
fn length(form: Form, path: &str) -> usize {
    let value = form.value(path);
    value.as_ref().and_then(Value::as_array).map_or(0, Vec::len)
}

/// The list with an entry moved to another place.
fn moved(form: Form, path: &str, from: usize, to: usize) {
    if let Some(Value::Array(mut items)) = untrack(|| form.value(path))
        && from.max(to) < items.len()
    {
        let item = items.remove(from);
        items.insert(to, item);
        form.put(path, Some(Value::Array(items)));
    }
}

/// Buttons of one entry of a list.
fn buttons(
    form: Form,
    path: &str,
    place: usize,
    name: String,
    changed: RwSignal<()>,
) -> impl IntoView + use<> {
    let path = StoredValue::new(path.to_owned());
    let earlier = move |_| {
        path.with_value(|path| moved(form, path, place, place.saturating_sub(1)));
        changed.set(());
    };
    let remove = move |_| {
        path.with_value(|path| form.put(&format!("{path}[{place}]"), None));
        changed.set(());
    };
    view! {
        <span class="item-tools">
            <button
                type="button"
                class="small"
                aria-label=named(text::earlier(), &name)
                disabled=place == 0
                on:click=earlier
            >
                "↑"
            </button>
            <button
                type="button"
                class="small"
                data-testid=path.with_value(|path| format!("remove-{path}[{place}]"))
                aria-label=named(text::remove(), &name)
                on:click=remove
            >
                "✕"
            </button>
        </span>
    }
}

/// A list of groups.
pub fn many(
    form: Form,
    key: &'static str,
    of: &'static [Field],
    most: usize,
    path: String,
) -> AnyView {
    let path = StoredValue::new(path);
    let count = Memo::new(move |_| path.with_value(|path| length(form, path)));
    // Set where entries have changed their places.
    let changed = RwSignal::new(());
    // A few single figures need no fold of their own.
    let is_row = of.len() <= 2 && of.iter().all(|it| !matches!(it.shape, Shape::Group(_)));
    let row = move |place: usize| {
        let at = path.with_value(|path| format!("{path}[{place}]"));
        let name = text::numbered(fields::item(key), place);
        let tools = path.with_value(|path| buttons(form, path, place, name.clone(), changed));
        if is_row {
            return view! {
                <div class="item-row" role="group" aria-label=name>
                    {planned(form, Plan::of_group(of), key, &at)} {tools}
                </div>
            }
            .into_any();
        }
        let summary = {
            let at = at.clone();
            Signal::derive(move || {
                let value = form.value(&at);
                text::group(key, of.iter(), value.as_ref(), form.model.units.get())
            })
        };
        let body = {
            let at = at.clone();
            move || planned(form, Plan::of_group(of), key, &at)
        };
        view! {
            <div class="item">
                {part(form, name.into(), vec![at.clone()], summary, at, body)}
                {tools}
            </div>
        }
        .into_any()
    };
    let rows = move || {
        changed.track();
        (0..count.get()).map(row).collect_view()
    };
    let is_full = move || count.get() >= most;
    let add = move |_| {
        let place = count.get_untracked();
        path.with_value(|path| {
            let to = json!({});
            match place {
                0 => form.put(path, Some(json!([to]))),
                _ => form.put(&format!("{path}[{place}]"), Some(to)),
            }
        });
    };
    view! {
        <div class="items">{rows}</div>
        <button
            type="button"
            data-testid=path.with_value(|path| format!("add-{path}"))
            disabled=is_full
            on:click=add
        >
            {text::add_one_of(fields::item(key))}
        </button>
    }
    .into_any()
}

/// Words in an order.
pub fn words_list(
    form: Form,
    field: &'static Field,
    label: &'static str,
    of: &'static [&'static str],
    most: usize,
    path: String,
) -> AnyView {
    let id = form.id(&path);
    let path = StoredValue::new(path);
    let key = field.key;
    let now = Memo::new(move |_| {
        let value = path.with_value(|path| form.value(path));
        let items = value.as_ref().and_then(Value::as_array);
        let words = items.into_iter().flatten().filter_map(Value::as_str);
        words.map(str::to_owned).collect::<Vec<_>>()
    });
    let changed = RwSignal::new(());
    let name = move |word: &str| words::word(key, word).map_or(word.to_owned(), str::to_owned);
    let chip = move |(place, word): (usize, String)| {
        let said = name(&word);
        view! {
            <li>
                <span>{said.clone()}</span>
                {path.with_value(|path| buttons(form, path, place, said, changed))}
            </li>
        }
    };
    let is_full = move || now.read().len() >= most;
    let add = move |event| {
        let word = event_target_value(&event);
        if word.is_empty() {
            return;
        }
        let mut words = now.get_untracked();
        words.push(word);
        path.with_value(|path| form.put(path, Some(json!(words))));
        // It stays the way to add one more.
        let select: web_sys::HtmlSelectElement = event_target(&event);
        select.set_value("");
    };
    let option = |word: &'static str| {
        view! { <option value=word>{words::word(key, word).unwrap_or(word)}</option> }
    };
    let options = of.iter().copied().map(option).collect_view();
    view! {
        <div class="field">
            <label for=id.clone() class="field-name">
                {label} {needed(field)}
            </label>
            <ul class="chips">
                {move || {
                    changed.track();
                    now.get().into_iter().enumerate().map(chip).collect_view()
                }}
            </ul>
            <select
                id=id.clone()
                data-testid=id.clone()
                aria-invalid=path.with_value(|path| invalid(form, path))
                aria-describedby=explains(&id)
                disabled=is_full
                on:change=add
            >
                <option value="">{text::add_one()}</option>
                {options}
            </select>
            <p class="fine" id=format!("{id}-hint")>
                {hints::hint(field.hint)}
            </p>
            {path.with_value(|path| complaint(form, field, path, &id))}
        </div>
    }
    .into_any()
}
