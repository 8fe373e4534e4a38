//! One field of a form: text, yes or no, one of a few words. Numbers are in `figure`.

use super::figure::{number, uncertain};
use super::form::Form;
use super::items::words_list;
use crate::figure::Counts;
use crate::text::{fields, hints, words, yard as text};
use farend_core::measure::Measure;
use farend_core::yard::shape::{Field, Shape};
use leptos::prelude::*;
use serde_json::{Value, json};

/// A single field with its label, its hint and what is wrong with it.
pub fn single(form: Form, field: &'static Field, group: &'static str, path: String) -> AnyView {
    let label = fields::field(group, field.key).unwrap_or(field.key);
    match field.shape {
        Shape::Flag => flag(form, field, label, path),
        Shape::Text { .. } | Shape::Id => framed(form, field, label, &path, typed(form, &path)),
        Shape::Number { min, max, unit } => {
            let counts = counts(form, field.key, unit, &path);
            let limits = (min, max);
            let input = number(form, &path, counts, limits, None);
            framed(form, field, label, &path, input)
        }
        Shape::Whole { min, max } => {
            let counts = Signal::stored(Counts::Unit(""));
            let limits = (f64::from(min), f64::from(max));
            let input = number(form, &path, counts, limits, None);
            framed(form, field, label, &path, input)
        }
        Shape::Uncertain { min, max, unit } => {
            let counts = counts(form, field.key, unit, &path);
            let input = uncertain(form, label, &path, counts, (min, max));
            framed(form, field, label, &path, input)
        }
        Shape::OneOf(of) => {
            let input = select(form, field.key, of, &path);
            framed(form, field, label, &path, input)
        }
        Shape::Words { of, most } => words_list(form, field, label, of, most, path),
        Shape::Group(_) | Shape::Many { .. } => ().into_any(),
    }
}

/// What a number counts: energy goes by the measure that stands beside it.
fn counts(form: Form, key: &'static str, unit: &'static str, path: &str) -> Signal<Counts> {
    if key.ends_with("price") {
        return Signal::stored(Counts::Money);
    }
    if unit != "kWh" {
        return Signal::stored(Counts::Unit(unit));
    }
    let beside = match path.rsplit_once('.') {
        Some((group, _)) => format!("{group}.measure"),
        None => "measure".to_owned(),
    };
    Signal::derive(move || {
        let word = form.value(&beside);
        let word = word.as_ref().and_then(Value::as_str);
        let measure = Measure::ALL.iter().find(|it| Some(it.word()) == word);
        measure.map_or(Counts::Unit(unit), |measure| Counts::Energy(*measure))
    })
}

/// Identifiers of what explains a field.
pub fn explains(id: &str) -> String {
    format!("{id}-fault {id}-hint")
}

/// A field's frame.
pub fn framed(
    form: Form,
    field: &'static Field,
    label: &'static str,
    path: &str,
    input: AnyView,
) -> AnyView {
    let id = form.id(path);
    view! {
        <div class="field">
            <label for=id.clone() class="field-name">
                {label} {needed(field)}
            </label>
            {input}
            <p class="fine" id=format!("{id}-hint")>
                {hints::hint(field.hint)}
            </p>
            {complaint(form, field, path, &id)}
        </div>
    }
    .into_any()
}

/// The mark of what must be there.
pub fn needed(field: &'static Field) -> Option<impl IntoView> {
    field
        .required
        .then(|| view! { " " <span class="needed">{text::needed()}</span> })
}

/// What is wrong with a field.
pub fn complaint(form: Form, field: &'static Field, path: &str, id: &str) -> impl IntoView + use<> {
    let path = path.to_owned();
    let told = move || {
        let units = form.model.units.get();
        let faults = form.faults_at(&path).into_iter();
        let said = faults.map(|fault| text::fault(&fault, field.hint, units));
        said.collect::<Vec<_>>().join(" ")
    };
    view! {
        <p class="complaint" id=format!("{id}-fault")>
            {told}
        </p>
    }
}

/// Whether a field has a fault of its own, as attributes say it.
pub fn invalid(form: Form, path: &str) -> impl Fn() -> String + Clone + Send + Sync + use<> {
    let path = path.to_owned();
    move || (!form.faults_at(&path).is_empty()).to_string()
}

/// A text as it stands there, whatever it is.
pub fn as_text(value: Option<Value>) -> String {
    match value {
        None => String::new(),
        Some(Value::String(text)) => text,
        Some(other) => other.to_string(),
    }
}

/// A field for a text.
fn typed(form: Form, path: &str) -> AnyView {
    let id = form.id(path);
    let shown = {
        let path = path.to_owned();
        move || as_text(form.value(&path))
    };
    let change = {
        let path = path.to_owned();
        move |event| {
            let entered = event_target_value(&event);
            let entered = entered.trim();
            form.put(&path, (!entered.is_empty()).then(|| json!(entered)));
        }
    };
    view! {
        <input
            type="text"
            autocomplete="off"
            id=id.clone()
            data-testid=id.clone()
            aria-invalid=invalid(form, path)
            aria-describedby=explains(&id)
            prop:value=shown
            on:change=change
        />
    }
    .into_any()
}

/// A list of words to choose one from.
fn select(form: Form, key: &'static str, of: &'static [&'static str], path: &str) -> AnyView {
    let id = form.id(path);
    let now = {
        let path = path.to_owned();
        Memo::new(move |_| as_text(form.value(&path)))
    };
    let change = {
        let path = path.to_owned();
        move |event| {
            let word = event_target_value(&event);
            form.put(&path, (!word.is_empty()).then(|| json!(word)));
        }
    };
    let option = move |word: &'static str| {
        view! {
            <option value=word selected=move || *now.read() == word>
                {words::word(key, word).unwrap_or(word)}
            </option>
        }
    };
    view! {
        <select
            id=id.clone()
            data-testid=id.clone()
            aria-invalid=invalid(form, path)
            aria-describedby=explains(&id)
            prop:value=now
            on:change=change
        >
            <option value="" selected=move || now.read().is_empty()>
                {text::not_known_yet()}
            </option>
            {of.iter().copied().map(option).collect_view()}
        </select>
    }
    .into_any()
}

/// Yes, no, or not known.
fn flag(form: Form, field: &'static Field, label: &'static str, path: String) -> AnyView {
    let id = form.id(&path);
    let choice = |to: Option<bool>, name: &'static str, end: &'static str| {
        let chosen = {
            let path = path.clone();
            move || form.value(&path) == to.map(Value::Bool)
        };
        let choose = {
            let path = path.clone();
            move |_| form.put(&path, to.map(Value::Bool))
        };
        view! {
            <label>
                <input
                    type="radio"
                    name=id.clone()
                    id=(to == Some(true)).then(|| id.clone())
                    data-testid=format!("{id}-{end}")
                    aria-describedby=explains(&id)
                    prop:checked=chosen
                    on:change=choose
                />
                <span>{name}</span>
            </label>
        }
    };
    view! {
        <div class="field">
            <fieldset class="switch">
                <legend class="field-name">{label} {needed(field)}</legend>
                {choice(Some(true), text::yes(), "yes")}
                {choice(Some(false), text::no(), "no")}
                {choice(None, text::not_known_yet(), "unknown")}
            </fieldset>
            <p class="fine" id=format!("{id}-hint")>
                {hints::hint(field.hint)}
            </p>
            {complaint(form, field, &path, &id)}
        </div>
    }
    .into_any()
}
