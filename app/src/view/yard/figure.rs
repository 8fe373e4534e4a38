//! Numbers of a form, in the reader's units; uncertain ones unfold into three.

use super::field::{as_text, explains, invalid};
use super::form::Form;
use crate::browser;
use crate::figure::{Counts, written};
use crate::number;
use crate::text::{fields, named, words, yard as text};
use farend_core::source::Source;
use farend_core::units::UnitSystem;
use farend_core::yard::assumed::assumed;
use leptos::prelude::*;
use serde_json::{Value, json};

/// A number as the file has it: a whole one without a point.
fn in_file(number: f64) -> Value {
    /// Beyond this a double has no more single units.
    const MOST_WHOLE: f64 = 9e15;
    match number.fract() == 0.0 && number.abs() < MOST_WHOLE {
        true => json!(number as i64),
        false => json!(number),
    }
}

/// What stands there for the reader.
fn shown(value: Option<Value>, counts: Counts, units: UnitSystem) -> String {
    match value.as_ref().and_then(Value::as_f64) {
        Some(number) => written(counts.shown(number, units), units),
        None => as_text(value),
    }
}

/// A field for a number with its unit. What isn't one clear number stays in it until it's mended, and
/// changes nothing. What else can be done with it stands beside it.
pub fn number(
    form: Form,
    path: &str,
    counts: Signal<Counts>,
    limits: (f64, f64),
    beside: Option<AnyView>,
) -> AnyView {
    let model = form.model;
    let id = form.id(path);
    let path = path.to_owned();
    let at = path.clone();
    let value = {
        let path = path.clone();
        Memo::new(move |_| form.value(&path))
    };
    // What was typed, as long as the value stays what it was then.
    let refused = RwSignal::new(None::<(String, Option<Value>)>);
    let unclear = move || {
        let refused = refused.read();
        let (text, then) = refused.as_ref()?;
        (*then == *value.read()).then(|| text.clone())
    };
    let change = {
        let path = path.clone();
        move |event| {
            let entered = event_target_value(&event);
            if entered.trim().is_empty() {
                refused.set(None);
                return form.put(&path, None);
            }
            match number::typed(&entered) {
                None => refused.set(Some((entered, value.get_untracked()))),
                Some(number) => {
                    refused.set(None);
                    let (counts, units) = (counts.get_untracked(), model.units.get_untracked());
                    form.put(&path, Some(in_file(counts.entered(number, units))));
                }
            }
        }
    };
    let shown = move || {
        let standing = || shown(value.get(), counts.get(), model.units.get());
        unclear().unwrap_or_else(standing)
    };
    // What is taken as long as nothing is entered, else what may be.
    let placeholder = move || {
        let (counts, units) = (counts.get(), model.units.get());
        let assumed = form.value("").and_then(|entry| assumed(&entry, &at));
        match (counts, assumed) {
            (Counts::Money, _) => String::new(),
            (counts, Some(number)) => {
                let number = written(counts.shown(number, units), units);
                text::assumed(&number)
            }
            (counts, None) => text::limits(counts, limits, units),
        }
    };
    let unit = move || match counts.get() {
        Counts::Money => model.yard.read().currency.clone().unwrap_or_default(),
        counts => counts.symbol(model.units.get()).to_owned(),
    };
    let faulty = invalid(form, &path);
    view! {
        <div class="figure-row">
            <input
                type="text"
                inputmode="decimal"
                autocomplete="off"
                id=id.clone()
                data-testid=id.clone()
                placeholder=placeholder
                aria-invalid=move || {
                    if unclear().is_some() { "true".to_owned() } else { faulty() }
                }
                aria-describedby=format!("{id}-unit {id}-unclear {}", explains(&id))
                prop:value=shown
                on:change=change
            />
            <span class="unit" id=format!("{id}-unit")>
                {unit}
            </span>
            {beside}
        </div>
        <p class="complaint" id=format!("{id}-unclear") role="alert">
            {move || unclear().map(|_| text::unclear())}
        </p>
    }
    .into_any()
}

/// The three figures of an uncertain one.
const THREE: [&str; 3] = ["low", "likely", "high"];

/// One figure, which can be given as a range with its source.
pub fn uncertain(
    form: Form,
    label: &'static str,
    path: &str,
    counts: Signal<Counts>,
    limits: (f64, f64),
) -> AnyView {
    let path = StoredValue::new(path.to_owned());
    let at = move |key: &str| path.with_value(|path| format!("{path}.{key}"));
    let value = Memo::new(move |_| path.with_value(|path| form.value(path)));
    let asked = RwSignal::new(false);
    let is_three = move || asked.get() || value.read().as_ref().is_some_and(Value::is_object);
    let widen = move |_| {
        match value.get_untracked().filter(Value::is_number) {
            Some(number) => {
                let three = json!({"low": number, "likely": number, "high": number});
                path.with_value(|path| form.put(path, Some(three)));
            }
            // There is nothing to widen yet, but room for it.
            None => asked.set(true),
        }
        browser::focus(form.id(&at("low")));
    };
    let narrow = move |_| {
        asked.set(false);
        let likely = value
            .get_untracked()
            .and_then(|it| it.get("likely").cloned());
        path.with_value(|path| {
            form.put(path, likely);
            browser::focus(form.id(path));
        });
    };
    let one = move || {
        let widen = view! {
            <button
                type="button"
                class="small"
                data-testid=path.with_value(|path| format!("range-{path}"))
                aria-label=named(text::range(), label)
                on:click=widen
            >
                {text::range()}
            </button>
        };
        let beside = Some(widen.into_any());
        path.with_value(|path| number(form, path, counts, limits, beside))
    };
    let figure = move |key: &'static str| {
        let at = at(key);
        let id = form.id(&at);
        let name = fields::field("", key).unwrap_or(key);
        let told = {
            let at = at.clone();
            move || {
                let units = form.model.units.get();
                let faults = form.faults_at(&at).into_iter();
                let said = faults.map(|fault| text::rule(&fault, counts.get(), units));
                said.collect::<Vec<_>>().join(" ")
            }
        };
        view! {
            <div class="of-three">
                <label for=id.clone()>
                    <span aria-hidden="true">{name}</span>
                    <span class="hidden">{fields::figure_of(label, name)}</span>
                </label>
                {number(form, &at, counts, limits, None)}
                <p class="complaint" id=format!("{id}-fault")>
                    {told}
                </p>
            </div>
        }
    };
    let source_name = fields::field("", "source").unwrap_or("source");
    let three = move || {
        view! {
            // Where a fault of all three together leads.
            <div class="three" id=path.with_value(|path| form.id(path)) tabindex="-1">
                {THREE.map(figure).collect_view()}
                <div class="of-three">
                    <label for=form.id(&at("source"))>
                        <span aria-hidden="true">{source_name}</span>
                        <span class="hidden">{fields::figure_of(label, source_name)}</span>
                    </label>
                    {source(form, at("source"))}
                </div>
                <button
                    type="button"
                    class="small"
                    data-testid=path.with_value(|path| format!("one-{path}"))
                    aria-label=named(text::one_figure(), label)
                    on:click=narrow
                >
                    {text::one_figure()}
                </button>
            </div>
        }
    };
    view! {
        <Show when=is_three fallback=one>
            {three()}
        </Show>
    }
    .into_any()
}

/// The sources that a user may have: those of published figures belong to the program's own.
const OWN_SOURCES: [Source; 4] = [
    Source::Own,
    Source::CommonPractice,
    Source::FromMemory,
    Source::Judgement,
];

/// Where the three come from.
fn source(form: Form, path: String) -> impl IntoView {
    let id = form.id(&path);
    let own = Source::Own.word();
    let now = {
        let path = path.clone();
        Memo::new(move |_| match form.value(&path) {
            None => own.to_owned(),
            value => as_text(value),
        })
    };
    let words = move || {
        let now = now.get();
        let other = Source::WORDS.iter().find(|word| **word == now).copied();
        let usual = OWN_SOURCES.map(Source::word);
        let other = other.filter(|word| !usual.contains(word));
        let all = usual.into_iter().chain(other);
        all.map(|word| {
            view! {
                <option value=word selected=word == now>
                    {words::word("source", word).unwrap_or(word)}
                </option>
            }
        })
        .collect_view()
    };
    let change = move |event| {
        let word = event_target_value(&event);
        form.put(&path, (word != own).then(|| json!(word)));
    };
    view! {
        <select id=id.clone() data-testid=id.clone() prop:value=now on:change=change>
            {words}
        </select>
    }
}
