//! The form of an entry, made from the rules of its fields.

use super::field::single;
use super::items::many;
use super::plan::Plan;
use crate::browser;
use crate::model::{Model, yard};
use crate::text::{fields, hints, named, yard as text};
use farend_core::fault::{Fault, Rule};
use farend_core::yard::edit::Whose;
use farend_core::yard::shape::{Field, Shape};
use leptos::prelude::*;
use serde_json::Value;

/// A form, for its fields.
#[derive(Clone, Copy)]
pub struct Form {
    /// The page's data.
    pub model: Model,
    /// What is edited.
    pub whose: Whose,
    faults: Memo<Vec<Fault>>,
    /// The path that is to be seen: what is folded round it opens.
    wanted: RwSignal<Option<String>>,
}

impl Form {
    fn of(model: Model, whose: Whose) -> Self {
        Self {
            model,
            whose,
            faults: Memo::new(move |_| model.editing.read().faults_of(whose)),
            wanted: RwSignal::new(None),
        }
    }

    /// What stands at a path; at none, the whole entry.
    pub fn value(self, path: &str) -> Option<Value> {
        let yard = self.model.editing.read();
        match (path, self.whose) {
            ("", Whose::Entry(list, place)) => yard.entry(list, place).cloned(),
            _ => yard.get(self.whose, path).cloned(),
        }
    }

    /// Puts something there, or takes away what stands there.
    pub fn put(self, path: &str, to: Option<Value>) {
        self.model.put(self.whose, path, to);
    }

    /// What is wrong with just that field.
    pub fn faults_at(self, path: &str) -> Vec<Fault> {
        let faults = self.faults.read();
        let here = faults.iter().filter(|fault| fault.path == path);
        here.cloned().collect()
    }

    /// How many faults a group or a list has in all.
    fn count_in(self, path: &str) -> usize {
        let faults = self.faults.read();
        faults.iter().filter(|it| is_in(&it.path, path)).count()
    }

    /// A field's identifier in the document: another form may be open beside this one.
    pub fn id(self, path: &str) -> String {
        match self.whose {
            Whose::Yard => format!("own-{path}"),
            Whose::Entry(..) => format!("field-{path}"),
        }
    }

    /// Shows a field and gives it the focus.
    fn show(self, path: String) {
        browser::focus(self.id(&path));
        self.wanted.set(Some(path));
    }
}

/// Whether a path leads to a field or into it.
fn is_in(path: &str, field: &str) -> bool {
    path.strip_prefix(field)
        .is_some_and(|rest| rest.is_empty() || rest.starts_with(['.', '[']))
}

/// Path of a field within a group.
pub fn join(path: &str, key: &str) -> String {
    match path {
        "" => key.to_owned(),
        _ => format!("{path}.{key}"),
    }
}

/// All fields of an entry or of the yard itself, with all that is wrong.
#[component]
pub fn EntryForm(whose: Whose) -> impl IntoView {
    let model = Model::of_page();
    let form = Form::of(model, whose);
    let plan = match whose {
        Whose::Yard => Plan::of_yard(),
        Whose::Entry(list, _) => Plan::of_entry(list.fields()),
    };
    view! {
        {match whose {
            Whose::Yard => ().into_any(),
            Whose::Entry(list, place) => {
                let name = move || yard::name(&model.editing.read(), list, place);
                view! {
                    <h3 id="entry-name" tabindex="-1">
                        {name}
                    </h3>
                    <EntryTools whose=whose />
                }
                    .into_any()
            }
        }}
        <Faults form=form />
        {planned(form, plan, "", "")}
    }
}

/// What can be done with an entry as a whole.
#[component]
fn EntryTools(whose: Whose) -> impl IntoView {
    let model = Model::of_page();
    let Whose::Entry(list, place) = whose else {
        return ().into_any();
    };
    let copy = move |_| {
        let name = yard::name(&model.editing.read_untracked(), list, place);
        model.copy_entry(list, place, text::copied(&name));
        browser::focus("entry-name");
    };
    let remove = move |_| {
        model.remove_entry(list, place);
        browser::focus("entry-name");
    };
    let shift = move |to: usize| {
        model.move_entry(list, place, to);
        browser::focus("entry-name");
    };
    let is_last = move || place + 1 >= model.editing.read().len(list);
    view! {
        <div class="tools">
            <button
                type="button"
                data-testid="copy-entry"
                disabled=move || model.editing.read().is_full(list)
                on:click=copy
            >
                {text::copy()}
            </button>
            <button type="button" data-testid="remove-entry" on:click=remove>
                {text::remove()}
            </button>
            <button
                type="button"
                data-testid="earlier"
                disabled=place == 0
                on:click=move |_| shift(place.saturating_sub(1))
            >
                {text::earlier()}
            </button>
            <button
                type="button"
                data-testid="later"
                disabled=is_last
                on:click=move |_| shift(place + 1)
            >
                {text::later()}
            </button>
        </div>
    }
    .into_any()
}

/// All that is wrong, each leading to its field.
#[component]
fn Faults(form: Form) -> impl IntoView {
    let heading = match form.whose {
        Whose::Yard => text::own_to_mend(),
        Whose::Entry(..) => text::to_mend_first(),
    };
    let line = move |fault: Fault| {
        let units = form.model.units.get();
        let said = text::fault_line(&fault, units);
        let path = fault.path.clone();
        match fault.rule {
            // No field leads there.
            Rule::UnknownField => {
                let drop = move |_| form.put(&path, None);
                view! {
                    <li>
                        {said} " "
                        <button type="button" on:click=drop>
                            {text::take_away()}
                        </button>
                    </li>
                }
                .into_any()
            }
            _ => view! {
                <li>
                    <button
                        type="button"
                        class="plain"
                        on:click=move |_| form.show(path.clone())
                    >
                        {said}
                    </button>
                </li>
            }
            .into_any(),
        }
    };
    let faults = move || form.faults.get();
    view! {
        <div role="status">
            <Show when=move || !form.faults.read().is_empty()>
                <div class="to-mend" data-testid="faults">
                    <p>{heading}</p>
                    <ul>{move || faults().into_iter().map(line).collect_view()}</ul>
                </div>
            </Show>
        </div>
    }
}

/// The fields of a group as planned.
pub fn planned(form: Form, plan: Plan, group: &'static str, path: &str) -> AnyView {
    let singles = |fields: &[&'static Field]| {
        let each = fields.iter();
        each.map(|field| single(form, field, group, join(path, field.key)))
            .collect_view()
    };
    let open = singles(&plan.open);
    let groups = plan.groups.iter().map(|field| {
        let path = join(path, field.key);
        view! {
            <fieldset class="group">
                <legend id=form.id(&path) tabindex="-1">
                    {fields::field(group, field.key).unwrap_or(field.key)}
                </legend>
                {own_faults(form, field, path.clone())}
                {within(form, field, path)}
            </fieldset>
        }
    });
    let groups = groups.collect_view();
    let folded = plan.folded.iter().map(|field| {
        let path = join(path, field.key);
        folded(form, field, group, path)
    });
    let folded = folded.collect_view();
    let more = (!plan.more.is_empty()).then(|| {
        let paths: Vec<_> = plan.more.iter().map(|it| join(path, it.key)).collect();
        let fields = plan.more;
        let within = path.to_owned();
        let summary = {
            let (fields, within) = (fields.clone(), within.clone());
            Signal::derive(move || {
                let value = form.value(&within);
                text::group(
                    group,
                    fields.iter().copied(),
                    value.as_ref(),
                    form.model.units.get(),
                )
            })
        };
        let body = move || {
            let each = fields.iter();
            each.map(|field| single(form, field, group, join(&within, field.key)))
                .collect_view()
                .into_any()
        };
        part(
            form,
            text::more_figures().into(),
            paths,
            summary,
            join(path, "more"),
            body,
        )
    });
    view! {
        <div class="fields">{open}</div>
        {groups}
        {folded}
        {more}
    }
    .into_any()
}

/// What stands in a group or a list.
fn within(form: Form, field: &'static Field, path: String) -> AnyView {
    match field.shape {
        Shape::Group(of) => planned(form, Plan::of_group(of), field.key, &path),
        Shape::Many { of, most } => many(form, field.key, of, most, path),
        _ => ().into_any(),
    }
}

/// A group or a list, folded, with what is known of it in one line.
fn folded(form: Form, field: &'static Field, group: &'static str, path: String) -> AnyView {
    let title = fields::field(group, field.key).unwrap_or(field.key);
    let summary = {
        let path = path.clone();
        Signal::derive(move || {
            text::summary(field, form.value(&path).as_ref(), form.model.units.get())
        })
    };
    let stored = StoredValue::new(path.clone());
    let there = move || stored.with_value(|path| form.value(path).is_some());
    let leave_out = move |_| stored.with_value(|path| form.put(path, None));
    let body = move || {
        let path = stored.get_value();
        view! {
            <p class="fine">{hints::hint(field.hint)}</p>
            {own_faults(form, field, path.clone())}
            {within(form, field, path)}
            <Show when=there>
                <button
                    type="button"
                    data-testid=stored.with_value(|path| format!("leave-out-{path}"))
                    aria-label=named(text::leave_out(), title)
                    on:click=leave_out
                >
                    {text::leave_out()}
                </button>
            </Show>
        }
        .into_any()
    };
    part(form, title.into(), vec![path.clone()], summary, path, body)
}

/// A part that is folded until it is opened, or until something in it is to be mended or shown.
pub fn part(
    form: Form,
    title: Signal<String>,
    paths: Vec<String>,
    summary: Signal<String>,
    id: String,
    body: impl Fn() -> AnyView + Send + Sync + 'static,
) -> AnyView {
    let paths = StoredValue::new(paths);
    let faults = Memo::new(move |_| {
        paths.with_value(|paths| paths.iter().map(|it| form.count_in(it)).sum::<usize>())
    });
    let open = RwSignal::new(faults.get_untracked() > 0);
    Effect::new(move |_| {
        let wanted = form.wanted.read();
        let here = |wanted: &String| paths.with_value(|all| all.iter().any(|it| is_in(wanted, it)));
        if wanted.as_ref().is_some_and(here) {
            open.set(true);
        }
    });
    let follow = move |event| {
        let details: web_sys::HtmlDetailsElement = event_target(&event);
        open.set(details.open());
    };
    view! {
        <details class="part-fold" data-testid=format!("part-{id}") open=open on:toggle=follow>
            <summary id=form.id(&id)>
                <span class="part-title">{title}</span>
                " "
                <span class="note">{summary}</span>
                <Show when=move || faults.get() != 0>
                    <span class="mark">{move || text::to_mend(faults.get())}</span>
                </Show>
            </summary>
            <Show when=move || open.get()>
                <div class="part-body">{body()}</div>
            </Show>
        </details>
    }
    .into_any()
}

/// What is wrong with a group or a list itself.
fn own_faults(form: Form, field: &'static Field, path: String) -> impl IntoView {
    let faults = move || {
        let units = form.model.units.get();
        let told = form.faults_at(&path).into_iter();
        told.map(
            |fault| view! { <p class="complaint">{text::fault(&fault, field.hint, units)}</p> },
        )
        .collect_view()
    };
    view! { {faults} }
}
