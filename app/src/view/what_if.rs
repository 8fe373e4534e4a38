//! What can be turned, and a curve of what that does.

use super::control::ControlRow;
use super::curve::Curve;
use super::radio::radio;
use crate::model::Model;
use crate::number;
use crate::text::{labels, sentences};
use farend_core::control::Control;
use farend_core::implement::Ground;
use farend_core::machine::{Outlet, Pto};
use farend_core::physics::oil::Grade;
use farend_core::route::part::Part;
use leptos::prelude::*;

/// The controls of the open route and its curve.
#[component]
pub fn WhatIf() -> impl IntoView {
    let model = Model::of_page();
    let turnable = move |controls: &'static [Control]| {
        let (machine, implement) = (model.machine.get(), model.implement.get());
        let kit = model.kit();
        let settings = model.settings.get();
        let turns = |control: &&Control| {
            machine
                .as_ref()
                .zip(implement.as_ref())
                .is_some_and(|(machine, implement)| {
                    control
                        .range(machine, implement, kit.as_ref(), &settings)
                        .is_some()
                })
        };
        controls.iter().filter(turns).copied().collect::<Vec<_>>()
    };
    let of_route = Memo::new(move |_| turnable(Control::of(model.route.get())));
    let of_work = Memo::new(move |_| turnable(Control::WORK));
    let of_site = Memo::new(move |_| turnable(Control::SITE));
    let all = Memo::new(move |_| [of_route.get(), of_work.get(), of_site.get()].concat());
    let rows = |controls: Memo<Vec<Control>>| {
        view! {
            <For each=move || controls.get() key=|control| *control let:control>
                <ControlRow control=control />
            </For>
        }
    };
    view! {
        <section class="what-if">
            <h2>{labels::what_if()}</h2>
            <EngineSet />
            <CircuitChoice />
            <GearChoice />
            {rows(of_route)}
            <Curve controls=all />
            <Show when=move || !of_work.read().is_empty()>
                <details class="more" data-testid="driving">
                    <summary>{labels::driving_and_material()}</summary>
                    <GroundChoice />
                    {rows(of_work)}
                </details>
            </Show>
            <details class="more" data-testid="site">
                <summary>{labels::site_and_oil()}</summary>
                <OilChoice />
                {rows(of_site)}
            </details>
        </section>
    }
}

/// Which gear the rear PTO runs in, where it has two and the route takes it.
#[component]
fn GearChoice() -> impl IntoView {
    let model = Model::of_page();
    let ptos = Memo::new(move |_| {
        let machine = model.machine.read();
        let machine = machine.as_ref()?;
        let of_use = model.route.get().parts().contains(&Part::RearPto);
        let both = machine.rear_pto.clone().zip(machine.economy_pto.clone());
        both.filter(|_| of_use)
    });
    let choice = move |economy: bool, pto: &Pto| {
        let id = if economy {
            "pto-economy"
        } else {
            "pto-standard"
        };
        let text = sentences::pto_gear(pto, model.units.get());
        let chosen = move || model.settings.get().economy == economy;
        radio("pto", id, text, chosen, move || {
            // The engine speed that was turned belonged to the other gear.
            model.state.update(|state| {
                state.settings.economy = economy;
                state.settings.engine_speed = None;
            });
        })
    };
    move || {
        ptos.get().map(|(standard, economical)| {
            view! {
                <fieldset class="switch">
                    <legend>{labels::rear_pto()}</legend>
                    {choice(false, &standard)}
                    {choice(true, &economical)}
                </fieldset>
            }
        })
    }
}

/// What is driven on.
#[component]
fn GroundChoice() -> impl IntoView {
    let model = Model::of_page();
    let used = move || {
        let own = model.implement.read().as_ref()?.travel?.ground;
        Some(model.settings.get().ground.unwrap_or(own))
    };
    let choice = move |ground: Ground| {
        let (id, text) = (ground.word(), labels::ground(ground));
        let chosen = move || used() == Some(ground);
        radio("ground", id, text, chosen, move || {
            model
                .state
                .update(|state| state.settings.ground = Some(ground));
        })
    };
    view! {
        <fieldset class="switch">
            <legend>{labels::ground_heading()}</legend>
            {Ground::ALL.iter().copied().map(choice).collect_view()}
        </fieldset>
    }
}

/// The oil in the circuits.
#[component]
fn OilChoice() -> impl IntoView {
    let model = Model::of_page();
    let choose = move |event| {
        let word = event_target_value(&event);
        let grade = Grade::ALL
            .iter()
            .copied()
            .find(|grade| grade.word() == word);
        model.state.update(|state| state.settings.grade = grade);
    };
    let is = move |grade: Option<Grade>| model.settings.get().grade == grade;
    view! {
        <label class="choice" data-testid="oil-grade">
            <span>{labels::oil_grade()}</span>
            <select on:change=choose>
                <option value="" prop:selected=move || is(None)>
                    {labels::as_in_the_yard()}
                </option>
                {Grade::ALL
                    .iter()
                    .map(|grade| {
                        let grade = *grade;
                        view! {
                            <option value=grade.word() prop:selected=move || is(Some(grade))>
                                {labels::grade(grade)}
                            </option>
                        }
                    })
                    .collect_view()}
            </select>
        </label>
    }
}

/// That the engine's power is a sheet's, and the way back.
#[component]
fn EngineSet() -> impl IntoView {
    let model = Model::of_page();
    let set = Memo::new(move |_| {
        let own = model.machine.read().as_ref()?.engine.net.likely;
        Some((model.settings.get().engine_power?, own))
    });
    let back = move |_| {
        model
            .state
            .update(|state| state.settings.engine_power = None)
    };
    move || {
        let (set, own) = set.get()?;
        let power = |power| number::power(power, model.units.get());
        Some(view! {
            <p class="own" data-testid="engine-set">
                {labels::engine_set(&power(set))} " "
                <button type="button" on:click=back>
                    {labels::back_to_own(&power(own))}
                </button>
            </p>
        })
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
        let (id, text) = (outlet.word(), labels::outlet(outlet));
        let chosen = move || used() == Some(outlet);
        radio("circuit", id, text, chosen, move || {
            // What was turned belonged to the other circuit.
            model.state.update(|state| {
                state.settings.outlet = Some(outlet);
                state.settings.own = Default::default();
            });
        })
    };
    move || {
        outlets.get().map(|outlets| {
            view! {
                <fieldset class="switch">
                    <legend>{labels::circuit()}</legend>
                    {outlets.into_iter().map(choice).collect_view()}
                </fieldset>
            }
        })
    }
}
