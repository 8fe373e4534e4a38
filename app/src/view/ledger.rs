//! The open route's ledger: what each stage took, lost and passed on, and how that comes about.

use super::drawing::Drawing;
use super::formula::formula;
use crate::browser;
use crate::model::Model;
use crate::number;
use crate::text::{labels, named, pair, reasons, sentences, stop};
use farend_core::budget::Budget;
use farend_core::chain::Passage;
use farend_core::compare::{Outcome, Run};
use farend_core::drive::Drive;
use farend_core::quantity::Power;
use farend_core::route::RouteId;
use farend_core::stage::{AtWork, StageKind, StagePhysics};
use farend_core::thermal::Heat;
use farend_core::units::{Quantity, UnitSystem};
use leptos::prelude::*;

/// The ledger of the open route.
#[component]
pub fn LedgerView() -> impl IntoView {
    let model = Model::unhurried();
    let heat = Memo::new(move |_| model.heat());
    let heading = move || named(labels::ledger_heading(), labels::route(model.route.get()));
    let body = move || {
        let all = model.comparison.read();
        let units = model.units.get();
        let route = model.route.get();
        match &all.as_ref()?.route(route)?.outcome {
            Outcome::NoFit(reasons) => Some(
                view! {
                    <p class="no-fit" data-testid="no-fit">
                        <b>{stop(labels::no_fit())}</b>
                        " "
                        {sentences::no_fit(reasons, units)}
                    </p>
                }
                .into_any(),
            ),
            Outcome::Runs(run) => {
                let kit = model.yard.read().kit(&run.kit).map(|kit| kit.name.clone());
                let budget = &all.as_ref()?.budget;
                Some(ledger(route, run, budget, kit, heat.get(), units).into_any())
            }
        }
    };
    // What is unfolded outlives each new ledger. On a phone the formulas would be all there is.
    let formulas = RwSignal::new(!browser::is_narrow());
    let sources = RwSignal::new(false);
    view! {
        <section class="ledger" data-testid="ledger">
            <h2>{heading}</h2>
            <Drawing />
            <div class="unfolds">
                <Unfold what=labels::formulas() open=formulas />
                <Unfold what=labels::sources() open=sources />
            </div>
            <div
                class="body"
                class:no-formulas=move || !formulas.get()
                class:no-sources=move || !sources.get()
            >
                {body}
            </div>
        </section>
    }
}

/// A switch for a part of the ledger.
#[component]
fn Unfold(what: &'static str, open: RwSignal<bool>) -> impl IntoView {
    view! {
        <label class="unfold">
            <input
                type="checkbox"
                prop:checked=open
                on:change=move |event| open.set(event_target_checked(&event))
            />
            <span>{what}</span>
        </label>
    }
}

fn ledger(
    route: RouteId,
    run: &Run,
    budget: &Budget,
    kit: Option<String>,
    heat: Option<Heat>,
    units: UnitSystem,
) -> impl IntoView + use<> {
    view! {
        <p class="summary" data-testid="verdict">
            <b>{sentences::verdict(&run.verdict)}</b>
            " "
            {labels::limit_reason(run.limit)}
        </p>
        <ul class="warnings">
            {run
                .warnings
                .iter()
                .map(|warning| {
                    let advice = reasons::is_advice(warning);
                    view! { <li class:advice=advice>{reasons::warning(*warning, units)}</li> }
                })
                .collect_view()}
            {heat
                .and_then(|heat| sentences::too_hot(&heat, units))
                .map(|text| view! { <li data-testid="too-hot">{text}</li> })}
        </ul>
        <p>{kit.map(|kit| named(labels::kit(), &kit))}</p>
        {stage_table(route, run, budget, units)}
    }
}

/// The stages of a route as a table, with their formulas.
pub fn stage_table(
    route: RouteId,
    run: &Run,
    budget: &Budget,
    units: UnitSystem,
) -> impl IntoView + use<> {
    let power = |power| number::power(power, units);
    let taken = run.ledger.taken();
    let left = run.ledger.left_in_engine();
    view! {
        <div class="scroll" tabindex="0" role="region" aria-label=labels::route(route)>
            <table class="stages">
                <thead>
                    <tr>
                        <th scope="col">{labels::stage_heading()}</th>
                        <th scope="col">{labels::takes()}</th>
                        <th scope="col">{labels::loses()}</th>
                        <th scope="col">{labels::passes_on()}</th>
                    </tr>
                </thead>
                <tbody>
                    <tr class="end engine">
                        <th scope="row">{labels::engine()}</th>
                        <td data-head=labels::can_give()>
                            {power(run.ledger.available)}
                            {sentences::budget(budget, units)
                                .map(|text| view! { " " <span class="quiet">{text}</span> })}
                        </td>
                        <td data-head=labels::keeps()>
                            {power(left)} " " <span class="quiet">{labels::not_for_this_route()}</span>
                        </td>
                        <td data-head=labels::passes_on()>{power(taken)}</td>
                    </tr>
                    {run
                        .ledger
                        .passages
                        .iter()
                        .filter(|passage| tells_something(passage))
                        .map(|passage| stage(passage, &run.ledger.at, units))
                        .collect_view()} <tr class="end">
                        <th scope="row">{labels::rotor()}</th>
                        <td colspan="3" data-testid="at-rotor">
                            {sentences::at_the_rotor(run, units)}
                        </td>
                    </tr>
                </tbody>
            </table>
        </div>
    }
}

/// A valve that sends nothing back to the tank is no news.
fn tells_something(passage: &Passage) -> bool {
    passage.stage.kind() != StageKind::Divert || passage.loss > Power::ZERO
}

fn stage(passage: &Passage, at: &AtWork, units: UnitSystem) -> impl IntoView + use<> {
    let formulas = passage.formulas(at);
    view! {
        <tr>
            <th scope="row">{labels::stage(passage.stage.kind())}</th>
            <td data-head=labels::takes()>{carried(passage.takes, units)}</td>
            <td data-head=labels::loses()>{number::power(passage.loss, units)}</td>
            <td data-head=labels::passes_on()>{carried(passage.gives, units)}</td>
        </tr>
        <tr class="formulas">
            <td colspan="4">
                {formulas.iter().map(|item| formula(item, units)).collect_view()}
            </td>
        </tr>
    }
}

/// Power, and the speed and torque or flow and pressure that make it.
fn carried(drive: Drive, units: UnitSystem) -> impl IntoView + use<> {
    let show = |quantity: Quantity| number::shown(quantity, units);
    view! {
        <b>{number::power(drive.power, units)}</b>
        " "
        <span class="quiet">
            {pair(&show(drive.rate.quantity()), &show(drive.effort()))}
        </span>
    }
}
