//! Six routes beside each other: what arrives of the engine's power, what is lost where, and what
//! the job needs.

use super::bar::{Drawn, across, bar, whisker};
use super::standing::looks;
use crate::model::Model;
use crate::number;
use crate::segments::scale;
use crate::text::{labels, pair, sentences};
use farend_core::compare::{Outcome, RouteResult};
use farend_core::quantity::Power;
use farend_core::route::RouteId;
use farend_core::units::{Quantity, UnitSystem};
use leptos::prelude::*;

/// The six bars with their key and table.
#[component]
pub fn Bars() -> impl IntoView {
    let model = Model::of_page();
    let scale = Memo::new(move |_| {
        let (machine, all) = (model.machine.read(), model.comparison.read());
        Some(scale(
            machine.as_ref()?,
            &model.settings.get(),
            all.as_ref()?,
        ))
    });
    let caption = move || {
        let all = model.comparison.read();
        all.as_ref()
            .map(|all| sentences::bars(all, model.units.get()))
    };
    view! {
        <section class="bars">
            <h2 id="bars-heading">{labels::routes_heading()}</h2>
            <Patterns />
            <div role="radiogroup" aria-labelledby="bars-heading" aria-describedby="bars-message">
                <Ends scale=scale />
                {RouteId::ALL
                    .iter()
                    .map(|route| view! { <Row route=*route scale=scale /> })
                    .collect_view()}
            </div>
            <p id="bars-message" class="hidden" data-testid="bars-message">
                {caption}
            </p>
            <Key />
            <Table />
        </section>
    }
}

/// One route: a choice, its standing, its bar and its figures.
#[component]
fn Row(route: RouteId, scale: Memo<Option<Power>>) -> impl IntoView {
    let model = Model::of_page();
    let result = Memo::new(move |_| {
        let all = model.comparison.read();
        all.as_ref()?.route(route).cloned()
    });
    let chosen = move || model.route.get() == route;
    let standing = move || {
        let result = result.read();
        let run = result.as_ref().and_then(RouteResult::run)?;
        Some(run.verdict.likely)
    };
    let named = move || standing().map_or(labels::no_fit(), labels::standing);
    let figures = move || {
        let result = result.read();
        let run = result.as_ref()?.run()?;
        let all = model.comparison.read();
        let part = run.delivered.likely / all.as_ref()?.budget.net.likely;
        let power = number::power(run.delivered.likely, model.units.get());
        Some((power, number::percent(part)))
    };
    // Only the open route has room for its losses by name.
    let losses = move || {
        let result = result.read();
        let run = result.as_ref()?.run().filter(|_| chosen())?;
        sentences::losses(run, model.units.get())
    };
    // Most of what is turned leaves the bar its pieces, and makes them only longer or shorter.
    let drawn = Memo::new(move |_| {
        let (result, all) = (result.read(), model.comparison.read());
        let run = result.as_ref().and_then(RouteResult::run)?;
        Some(Drawn::of(run, all.as_ref()?, scale.get()?))
    });
    let pieces = Memo::new(move |_| drawn.read().as_ref().map(Drawn::pieces));
    let why = move || {
        let result = result.read();
        match &result.as_ref()?.outcome {
            Outcome::NoFit(reasons) => Some(sentences::no_fit(reasons, model.units.get())),
            Outcome::Runs(_) => None,
        }
    };
    let picture = move || match pieces.get() {
        Some(pieces) => bar(pieces, drawn).into_any(),
        None => view! { <span class="why">{why}</span> }.into_any(),
    };
    view! {
        <label class="row" class:chosen=chosen data-testid=route.word()>
            <input
                type="radio"
                name="route"
                prop:checked=chosen
                on:change=move |_| model.state.update(|state| state.route = route)
            />
            <span class="name">{labels::route(route)}</span>
            <span class="standing" data-standing=move || looks(standing())>
                {named}
            </span>
            <span class="figures">
                {move || {
                    figures()
                        .map(|(power, part)| {
                            view! {
                                <b data-testid="delivered">{power}</b>
                                " "
                                <span class="part">{part}</span>
                            }
                        })
                }}
            </span>
            <span class="picture">{picture}</span>
            <span class="losses">{losses}</span>
        </label>
    }
}

/// What the need line and the end of the bars stand for, above them.
#[component]
fn Ends(scale: Memo<Option<Power>>) -> impl IntoView {
    let model = Model::of_page();
    let label = move |power: Power, class: &'static str, text: String| {
        let part = scale.get().map_or(0.0, |scale| power / scale);
        // As far along the label as its line is along the bars: so it always has room.
        let back = format!("translateX(-{})", across(part));
        view! {
            <span class=class style:left=across(part) style:transform=back>
                {text}
            </span>
        }
    };
    let labels = move || {
        let all = model.comparison.read();
        let all = all.as_ref()?;
        let shown = |power| number::power(power, model.units.get());
        let (engine, need) = (all.budget.net.likely, all.need.likely);
        Some(view! {
            {label(engine, "engine-end", sentences::engine_end(&shown(engine)))}
            {label(need, "need-end", sentences::need_end(&shown(need)))}
        })
    };
    view! {
        <div class="row ends" aria-hidden="true">
            <span class="picture">{labels}</span>
        </div>
    }
}

/// The fillings that tell losses apart without colour.
#[component]
pub fn Patterns() -> impl IntoView {
    view! {
        <svg class="patterns" aria-hidden="true" focusable="false" width="0" height="0">
            <defs>
                <pattern id="hatch" width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
                    <rect width="8" height="8" class="hatch-ground" />
                    <rect width="3.5" height="8" class="hatch-line" />
                </pattern>
                <pattern id="drops" width="9" height="9" patternUnits="userSpaceOnUse">
                    <rect width="9" height="9" class="drops-ground" />
                    <circle cx="2.5" cy="2.5" r="1.7" class="drops-dot" />
                    <circle cx="7" cy="7" r="1.7" class="drops-dot" />
                </pattern>
            </defs>
        </svg>
    }
}

#[component]
fn Key() -> impl IntoView {
    let entry = |class: &'static str, text: &'static str| {
        view! {
            <li>
                <svg class="swatch" aria-hidden="true" focusable="false">
                    <rect class=class width="100%" height="100%" />
                </svg>
                <span>{text}</span>
            </li>
        }
    };
    view! {
        <ul class="key">
            {entry("arrives", labels::arrives())}
            {entry("lost-shafts", labels::lost_in_shafts())}
            {entry("lost-oil", labels::lost_in_oil())}
            {entry("not-taken", labels::not_taken_up())}
            {entry("air-and-driving", labels::air_and_driving())}
            <li>
                <svg class="swatch" aria-hidden="true" focusable="false">
                    <rect class="need-range" width="100%" height="100%" />
                    <line class="need" x1="50%" x2="50%" y1="0" y2="100%" />
                </svg>
                <span>{labels::need()}</span>
            </li>
            <li>
                <svg class="swatch" aria-hidden="true" focusable="false">
                    {whisker(0.3, || across(0.1), || across(0.8))}
                </svg>
                <span>{labels::spread()}</span>
            </li>
        </ul>
    }
}

/// The same figures as a table.
#[component]
fn Table() -> impl IntoView {
    let model = Model::unhurried();
    let rows = move || {
        let all = model.comparison.read();
        let all = all.as_ref()?;
        let units = model.units.get();
        let rows = all
            .routes
            .iter()
            .map(|result| table_row(result, all.budget.net.likely, units));
        Some(rows.collect_view())
    };
    view! {
        <details class="table">
            <summary>{labels::as_table()}</summary>
            <div class="scroll" tabindex="0" role="region" aria-label=labels::routes_heading()>
                <table data-testid="routes-table">
                    <thead>
                        <tr>
                            <th scope="col">{labels::route_heading()}</th>
                            <th scope="col">{labels::standing_heading()}</th>
                            <th scope="col">{labels::delivered()}</th>
                            <th scope="col">{labels::spread()}</th>
                            <th scope="col">{labels::lost()}</th>
                            <th scope="col">{labels::not_taken_up()}</th>
                            <th scope="col">{labels::held_by()}</th>
                        </tr>
                    </thead>
                    <tbody>{rows}</tbody>
                </table>
            </div>
        </details>
    }
}

fn table_row(result: &RouteResult, engine: Power, units: UnitSystem) -> impl IntoView + use<> {
    let name = view! { <th scope="row">{labels::route(result.route)}</th> };
    match &result.outcome {
        Outcome::NoFit(reasons) => view! {
            <tr>
                {name} <td>{labels::no_fit()}</td> <td colspan="5">{sentences::no_fit(reasons, units)}</td>
            </tr>
        }
        .into_any(),
        Outcome::Runs(run) => {
            let arrives = run.delivered.likely;
            let lost: Power = run.ledger.passages.iter().map(|passage| passage.loss).sum();
            let spread = number::range(
                Quantity::Power(run.delivered.low),
                Quantity::Power(run.delivered.high),
                units,
            );
            view! {
                <tr>
                    {name} <td>{labels::standing(run.verdict.likely)}</td>
                    <td>
                        {pair(&number::power(arrives, units), &number::percent(arrives / engine))}
                    </td> <td>{spread}</td> <td>{number::power(lost, units)}</td>
                    <td>{number::power(run.ledger.left_in_engine(), units)}</td>
                    <td>{labels::limit(run.limit)}</td>
                </tr>
            }
            .into_any()
        }
    }
}
