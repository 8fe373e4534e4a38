//! How the work goes by each route: how much an hour, how fast over the ground, how long.

use crate::model::Model;
use crate::model::work::first_job;
use crate::number;
use crate::text::{labels, sentences};
use farend_core::measure::{Amount, Measure};
use farend_core::route::RouteId;
use farend_core::units::{Quantity, UnitSystem};
use farend_core::work::Progress;
use leptos::prelude::*;

/// The job and, by each route, how the work goes.
#[component]
pub fn Work() -> impl IntoView {
    let model = Model::unhurried();
    let measures = Memo::new(move |_| model.measures());
    let job = Memo::new(move |_| model.job());
    let rows = Memo::new(move |_| model.progress());
    view! {
        <Show
            when=move || measures.read().is_some()
            fallback=|| view! { <p>{labels::no_work()}</p> }
        >
            <JobEntry job=job measures=measures />
            {move || {
                let units = model.units.get();
                rows.get().map(|rows| table(&rows, units))
            }}
            <p class="source">
                {move || {
                    let work = model.implement.read().as_ref()?.work?;
                    Some(sentences::work_takes(&work, model.units.get()))
                }}
            </p>
        </Show>
    }
}

/// How much there is to do.
#[component]
fn JobEntry(job: Memo<Option<Amount>>, measures: Memo<Option<Vec<Measure>>>) -> impl IntoView {
    let model = Model::unhurried();
    let refused = RwSignal::new(None::<String>);
    let shown = move || {
        let (amount, units) = (Quantity::Amount(job.get()?), model.units.get());
        Some((amount.shown_in(units).0, number::unit(amount, units)))
    };
    let type_in = move |event| {
        let text = event_target_value(&event);
        let entered = number::typed(&text).filter(|number| *number > 0.0);
        let amount = entered.zip(job.get_untracked()).and_then(|(number, job)| {
            let units = model.units.get_untracked();
            match Quantity::Amount(job).entered_in(units, number)? {
                Quantity::Amount(amount) => Some(amount),
                _ => None,
            }
        });
        let fits = amount.is_some_and(|amount| model.set_job(amount));
        refused.set((!fits).then_some(text));
    };
    let choose = move |event| {
        let word = event_target_value(&event);
        if let Some(measure) = Measure::ALL.iter().copied().find(|it| it.word() == word) {
            refused.set(None);
            model.set_job(first_job(measure));
        }
    };
    let measure = move || job.get().map(Amount::measure);
    view! {
        <div class="job">
            <label class="control-name">
                <span>{labels::job()}</span>
                <input
                    type="text"
                    inputmode="decimal"
                    autocomplete="off"
                    data-testid="job"
                    aria-invalid=move || refused.read().is_some().to_string()
                    aria-describedby="job-complaint"
                    prop:value=move || {
                        refused
                            .get()
                            .or_else(|| shown().map(|(number, _)| number::plain(number)))
                            .unwrap_or_default()
                    }
                    on:change=type_in
                />
                <span class="unit">{move || shown().map(|(_, unit)| unit)}</span>
            </label>
            <label class="choice">
                <span>{labels::job_by()}</span>
                <select data-testid="job-measure" on:change=choose>
                    {move || {
                        measures
                            .get()
                            .unwrap_or_default()
                            .into_iter()
                            .map(|it| {
                                view! {
                                    <option
                                        value=it.word()
                                        prop:selected=move || measure() == Some(it)
                                    >
                                        {labels::measure(it)}
                                    </option>
                                }
                            })
                            .collect_view()
                    }}
                </select>
            </label>
            <p id="job-complaint" class="complaint" role="alert">
                {move || refused.get().map(|_| sentences::job_refused())}
            </p>
        </div>
    }
}

fn table(rows: &[(RouteId, Progress)], units: UnitSystem) -> impl IntoView + use<> {
    let throws = rows.iter().any(|(_, progress)| progress.casting.is_some());
    let rows = rows
        .iter()
        .map(|(route, progress)| row(*route, progress, throws, units))
        .collect_view();
    view! {
        <div class="scroll" tabindex="0" role="region" aria-label=labels::work()>
            <table data-testid="work-table" class="stack">
                <thead>
                    <tr>
                        <th scope="col">{labels::route_heading()}</th>
                        <th scope="col">{labels::time()}</th>
                        <th scope="col">{labels::most_work()}</th>
                        <th scope="col">{labels::ground_speed()}</th>
                        <th scope="col">{labels::held_by()}</th>
                        <th scope="col">{labels::tips()}</th>
                        {throws.then(|| view! { <th scope="col">{labels::throws()}</th> })}
                    </tr>
                </thead>
                <tbody>{rows}</tbody>
            </table>
        </div>
        <p class="quiet">{sentences::work_note()}</p>
    }
}

fn row(
    route: RouteId,
    progress: &Progress,
    throws: bool,
    units: UnitSystem,
) -> impl IntoView + use<> {
    let rate = progress.rate;
    let work = |rate| Quantity::WorkRate(progress.measure, rate);
    let time = progress.time.and_then(|time| {
        let likely = number::time(time.likely?);
        Some((likely, sentences::time_range(time)))
    });
    let speed = progress
        .ground_speed
        .filter(|_| rate.likely > 0.0)
        .map(|speed| number::shown(Quantity::GroundSpeed(speed.likely), units));
    let tips = progress
        .tip
        .map(|tip| number::shown(Quantity::Velocity(tip), units));
    view! {
        <tr>
            <th scope="row">{labels::route(route)}</th>
            <td data-label=labels::time()>
                {progress
                    .too_slow
                    .then(|| view! { <span class="quiet">{labels::too_slow()}</span> " " })}
                {match time {
                    Some((likely, range)) => {
                        view! {
                            <b>{likely}</b>
                            " "
                            <span class="quiet">{range}</span>
                        }
                            .into_any()
                    }
                    None => labels::never_done().into_any(),
                }}
            </td>
            <td data-label=labels::most_work()>
                {(rate.likely > 0.0).then(|| number::shown(work(rate.likely), units))}
                {(rate.high > 0.0)
                    .then(|| {
                        let range = number::range(work(rate.low), work(rate.high), units);
                        view! { " " <span class="quiet">{range}</span> }
                    })}
            </td>
            <td data-label=labels::ground_speed()>{speed}</td>
            <td data-label=labels::held_by()>{progress.limit.map(labels::limit)}</td>
            <td data-label=labels::tips()>{tips}</td>
            {throws
                .then(|| {
                    view! { <td data-label=labels::throws()>{progress.casting.map(|it| sentences::casting(it, units))}</td> }
                })}
        </tr>
    }
}
