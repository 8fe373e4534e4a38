//! The end of the way: what each route brings, and three ideas in this pair's figures.

use super::walk::OPEN;
use crate::model::Model;
use crate::model::practice::{Part, PracticeModel};
use crate::text::practice::walk as words;
use farend_core::compare::Run;
use farend_core::route::RouteId;
use leptos::prelude::*;

/// What it comes to.
#[component]
pub fn Ideas() -> impl IntoView {
    let model = Model::of_page();
    let practice = PracticeModel::of_page();
    let ideas = move || {
        let units = model.units.get();
        let (all, implement) = (model.comparison.read(), model.implement.read());
        let all = all.as_ref()?;
        let engine = all.budget.net.likely;
        let routes = practice.walk.routes.get();
        let [shaft, oil] = routes.map(|route| {
            let route: RouteId = route?;
            Some((route, all.route(route)?.run()?))
        });
        let arrives = |it: Option<(RouteId, &Run)>| {
            it.map(|(route, run)| {
                view! { <p>{words::arrives(route, run, engine, units)}</p> }
            })
        };
        let [shaft_run, oil_run] = [shaft, oil].map(|it| it.map(|(_, run)| run));
        let rotor = &implement.as_ref()?.rotor;
        let first = oil_run.and_then(|run| words::flow_times_pressure(run, engine, units));
        let second = oil_run.map(|run| words::flow_is_speed(run, rotor, units));
        Some(view! {
            {arrives(shaft)}
            {arrives(oil)}
            <h4>{words::ideas()}</h4>
            <ol class="three" data-testid="three-ideas">
                <li><b>{words::idea_flow_times_pressure()}</b> " " {first}</li>
                <li><b>{words::idea_flow_is_speed()}</b> " " {second}</li>
                <li>
                    <b>{words::idea_change_costs()}</b> " "
                    {words::change_costs(shaft_run, oil_run, units)}
                </li>
            </ol>
        })
    };
    view! {
        <article class="case" data-testid="walk-end">
            <h3 id=OPEN tabindex="-1">
                {words::brought_out()}
            </h3>
            {ideas}
            <button
                type="button"
                data-testid="walk-on"
                on:click=move |_| practice.part.set(Part::Alone)
            >
                {words::go_on()}
            </button>
        </article>
    }
}
