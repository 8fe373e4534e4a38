//! The two choices that everything hangs on.

use crate::model::Model;
use crate::text::labels;
use leptos::prelude::*;

/// Machine and implement.
#[component]
pub fn Choices() -> impl IntoView {
    view! {
        <section class="choices">
            <MachineChoice />
            <ImplementChoice />
        </section>
    }
}

/// The choice of a machine, where the page's host hasn't fixed one.
#[component]
pub fn MachineChoice() -> impl IntoView {
    let model = Model::of_page();
    let machines = move || {
        let yard = model.yard.read();
        yard.machines
            .iter()
            .map(|machine| (machine.id.clone(), machine.name.clone()))
            .collect()
    };
    let is_free = move || {
        let yard = model.yard.read();
        model.options.read_value().machine_of(&yard).is_none()
    };
    view! {
        <Show when=is_free>
            <Choice
                id="machine"
                name=labels::machine()
                items=Signal::derive(machines)
                chosen=Signal::derive(move || model.state.read().machine.clone())
                choose=move |id| model.choose_machine(id)
            />
        </Show>
    }
}

/// The choice of an implement, where the page's host hasn't fixed one.
#[component]
pub fn ImplementChoice() -> impl IntoView {
    let model = Model::of_page();
    let implements = move || {
        let yard = model.yard.read();
        yard.implements
            .iter()
            .map(|implement| (implement.id.clone(), implement.name.clone()))
            .collect()
    };
    let is_free = move || {
        let yard = model.yard.read();
        model.options.read_value().implement_of(&yard).is_none()
    };
    view! {
        <Show when=is_free>
            <Choice
                id="implement"
                name=labels::implement()
                items=Signal::derive(implements)
                chosen=Signal::derive(move || model.state.read().implement.clone())
                choose=move |id| model.choose_implement(id)
            />
        </Show>
    }
}

/// One list to choose from: identifiers and names.
#[component]
fn Choice(
    id: &'static str,
    name: &'static str,
    items: Signal<Vec<(String, String)>>,
    chosen: Signal<String>,
    choose: impl Fn(String) + Copy + Send + Sync + 'static,
) -> impl IntoView {
    view! {
        <label class="choice">
            <span>{name}</span>
            <select
                data-testid=id
                prop:value=chosen
                on:change=move |event| choose(event_target_value(&event))
            >
                {move || {
                    items
                        .get()
                        .into_iter()
                        .map(|(id, name)| {
                            let is_chosen = {
                                let id = id.clone();
                                move || chosen.get() == id
                            };
                            view! {
                                <option value=id selected=is_chosen>
                                    {name}
                                </option>
                            }
                        })
                        .collect_view()
                }}
                {move || {
                    let chosen = chosen.get();
                    let is_there = items.with(|all| all.iter().any(|(id, _)| *id == chosen));
                    // Where it isn't, the list would show its first entry as if that were chosen.
                    (!is_there)
                        .then(|| view! { <option value=chosen selected=true hidden=true></option> })
                }}
            </select>
        </label>
    }
}
