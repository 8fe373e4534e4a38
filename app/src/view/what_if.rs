//! What can be turned, and a curve of what that does.

use super::control::ControlRow;
use super::curve::Curve;
use crate::model::Model;
use crate::text::labels;
use farend_core::machine::Outlet;
use farend_core::settings::Control;
use leptos::prelude::*;

/// The controls of the open route and its curve.
#[component]
pub fn WhatIf() -> impl IntoView {
    let model = Model::of_page();
    let controls = Memo::new(move |_| {
        let machine = model.machine.get();
        let kit = model.kit();
        let settings = model.settings.get();
        let turnable = |control: &&Control| {
            machine
                .as_ref()
                .is_some_and(|machine| control.range(machine, kit.as_ref(), &settings).is_some())
        };
        Control::of(model.route.get())
            .iter()
            .filter(turnable)
            .copied()
            .collect::<Vec<_>>()
    });
    view! {
        <section class="what-if">
            <h2>{labels::WHAT_IF}</h2>
            <CircuitChoice />
            <For each=move || controls.get() key=|control| *control let:control>
                <ControlRow control=control />
            </For>
            <Curve controls=controls />
        </section>
    }
}

/// Which of a machine's circuits to use, where it has more than one.
#[component]
fn CircuitChoice() -> impl IntoView {
    let model = Model::of_page();
    let outlets = Memo::new(move |_| {
        let machine = model.machine.read();
        let outlets = machine.as_ref().map(|machine| {
            let circuits = machine.circuits.iter();
            circuits.map(|circuit| circuit.outlet).collect::<Vec<_>>()
        });
        outlets.filter(|outlets| outlets.len() > 1)
    });
    let used = move || {
        let machine = model.machine.read();
        let circuit = model.settings.get().own_circuit(machine.as_ref()?)?;
        Some(circuit.outlet)
    };
    let choice = move |outlet: Outlet| {
        let choose = move |_| {
            // What was turned belonged to the other circuit.
            model.state.update(|state| {
                state.settings.outlet = Some(outlet);
                state.settings.own = Default::default();
            });
        };
        view! {
            <label>
                <input
                    type="radio"
                    name="circuit"
                    data-testid=outlet.word()
                    prop:checked=move || used() == Some(outlet)
                    on:change=choose
                />
                <span>{labels::outlet(outlet)}</span>
            </label>
        }
    };
    move || {
        outlets.get().map(|outlets| {
            view! {
                <fieldset class="switch">
                    <legend>{labels::CIRCUIT}</legend>
                    {outlets.into_iter().map(choice).collect_view()}
                </fieldset>
            }
        })
    }
}
