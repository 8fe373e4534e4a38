//! The user's own prices, and what they come to.

use super::price::price;
use crate::model::Model;
use crate::number;
use crate::text::{cost, labels};
use farend_core::compare::Comparison;
use farend_core::money::{RoutePrices, Worker, break_even, per_watt, working};
use farend_core::quantity::Power;
use farend_core::route::RouteId;
use farend_core::survey::Survey;
use farend_core::units::{Quantity, UnitSystem};
use farend_core::work::Progress;
use farend_core::yard::is_currency;
use leptos::prelude::*;

/// Prices in, costs out.
#[component]
pub fn Cost() -> impl IntoView {
    let model = Model::unhurried();
    let runs = Memo::new(move |_| {
        let all = model.comparison.read();
        let runs = all.as_ref().map(Comparison::ranked).unwrap_or_default();
        RouteId::ALL
            .iter()
            .copied()
            .filter(|route| runs.iter().any(|(other, _)| other == route))
            .collect::<Vec<_>>()
    });
    view! {
        <p>{cost::lead()}</p>
        <div class="wishes">
            <Currency />
            {price(
                "hour".to_owned(),
                cost::hour().to_owned(),
                String::new(),
                |prices| Some(&mut prices.hour),
                move || model.yard_hour_price(),
            )}
        </div>
        {move || {
            model
                .is_other_currency()
                .then(|| model.yard.read().currency.clone())
                .flatten()
                .map(|currency| {
                    view! { <p data-testid="other-currency">{cost::other_currency(&currency)}</p> }
                })
        }}
        {move || runs.get().into_iter().map(|route| view! { <Prices route=route /> }).collect_view()}
        <Table />
        <p class="fine">{cost::note()}</p>
    }
}

#[component]
fn Currency() -> impl IntoView {
    let model = Model::unhurried();
    let refused = RwSignal::new(None::<String>);
    let change = move |event| {
        let text = event_target_value(&event);
        let code = text.trim().to_uppercase();
        let fits = code.is_empty() || is_currency(&code);
        if fits {
            let code = (!code.is_empty()).then_some(code);
            model.state.update(|state| state.prices.currency = code);
        }
        refused.set((!fits).then_some(text));
    };
    let shown = move || {
        let own = model.state.read().prices.currency.clone();
        refused.get().or(own).unwrap_or_default()
    };
    view! {
        <div class="entry">
            <label class="control-name">
                <span>{cost::currency()}</span>
                <input
                    type="text"
                    autocomplete="off"
                    maxlength="8"
                    data-testid="currency"
                    placeholder=move || model.yard.read().currency.clone()
                    aria-invalid=move || refused.read().is_some().to_string()
                    aria-describedby="currency-complaint"
                    prop:value=shown
                    on:change=change
                />
            </label>
            <p id="currency-complaint" class="complaint" role="alert">
                {move || refused.read().is_some().then_some(cost::currency_refused())}
            </p>
        </div>
    }
}

/// One of a route's three prices.
type Part = (
    &'static str,
    fn() -> &'static str,
    fn(&mut RoutePrices) -> &mut Option<f64>,
);

const PARTS: [Part; 3] = [
    ("kit", cost::kit, |prices| &mut prices.kit),
    ("variant", cost::variant, |prices| &mut prices.variant),
    ("fitting", cost::fitting, |prices| &mut prices.fitting),
];

#[component]
fn Prices(route: RouteId) -> impl IntoView {
    let model = Model::unhurried();
    let field = move |(key, name, part): Part| {
        price(
            format!("{}-{key}", route.word()),
            name().to_owned(),
            labels::route_small(route).to_owned(),
            move |prices| prices.of_mut(route).map(part),
            move || *part(&mut model.yard_prices(route)),
        )
    };
    view! {
        <fieldset class="prices">
            <legend>{labels::route(route)}</legend>
            {PARTS.map(field).into_iter().collect_view()}
        </fieldset>
    }
}

#[component]
fn Table() -> impl IntoView {
    let model = Model::unhurried();
    let is_priced = Memo::new(move |_| {
        let survey = model.survey.read();
        let routes = survey.iter().flat_map(|survey| &survey.routes);
        let mut runs = routes.filter_map(|route| route.running.as_ref());
        model.hour_price().is_some() || runs.any(|run| run.prices.total().is_some())
    });
    let rows = move || {
        let (all, survey) = (model.comparison.read(), model.survey.read());
        let progress = model.progress().unwrap_or_default();
        let sums = Sums {
            all: all.as_ref()?,
            survey: survey.as_ref()?,
            progress: &progress,
            hour: model.hour_price(),
            currency: model.currency(),
            units: model.units.get(),
        };
        let routes = sums.all.routes.iter();
        let rows = routes.filter_map(|result| sums.row(result.route));
        Some(rows.collect_view())
    };
    let per = move || {
        let (_, unit) = Quantity::Power(Power::ZERO).shown_in(model.units.get());
        cost::per_power_unit(unit)
    };
    view! {
        <Show when=move || is_priced.get()>
            <div class="scroll" tabindex="0" role="region" aria-label=cost::title()>
                <table data-testid="costs" class="stack">
                    <thead>
                        <tr>
                            <th scope="col">{labels::route_heading()}</th>
                            <th scope="col">{cost::total()}</th>
                            <th scope="col">{per}</th>
                            <th scope="col">{cost::job()}</th>
                            <th scope="col">{cost::pays()}</th>
                        </tr>
                    </thead>
                    <tbody>{rows}</tbody>
                </table>
            </div>
        </Show>
    }
}

/// What the rows of costs are made from.
struct Sums<'a> {
    all: &'a Comparison,
    survey: &'a Survey,
    progress: &'a [(RouteId, Progress)],
    hour: Option<f64>,
    currency: Option<String>,
    units: UnitSystem,
}

impl Sums<'_> {
    fn total(&self, route: RouteId) -> Option<f64> {
        self.survey.route(route)?.running.as_ref()?.prices.total()
    }

    fn progress(&self, route: RouteId) -> Option<&Progress> {
        let mut all = self.progress.iter();
        all.find(|(other, _)| *other == route).map(|(_, it)| it)
    }

    fn worker(&self, route: RouteId) -> Option<Worker> {
        let rate = self.progress(route)?.rate.likely;
        Some(Worker {
            total: self.total(route)?,
            rate: (rate > 0.0).then_some(rate)?,
        })
    }

    fn row(&self, route: RouteId) -> Option<impl IntoView + use<>> {
        let run = self.all.route(route)?.run()?;
        let money = |amount: Option<f64>| {
            amount.map_or_else(
                || cost::NO_PRICE.to_owned(),
                |amount| number::money(amount, self.currency.as_deref()),
            )
        };
        let total = self.total(route);
        // In the reader's unit: so many watts.
        let (in_unit, unit) = Quantity::Power(Power::watts(1.0)).shown_in(self.units);
        let per = total
            .and_then(|total| per_watt(total, run.delivered.likely))
            .map(|per_watt| per_watt / in_unit);
        let time = self.progress(route).and_then(|it| it.time?.likely);
        let job = self.hour.zip(time).map(|(hour, time)| working(hour, time));
        let shaft = self.all.ranked().into_iter().map(|(route, _)| route);
        let shaft = shaft.into_iter().find(|route| !route.needs_oil());
        let pays = shaft.filter(|shaft| *shaft != route).and_then(|shaft| {
            let (one, other) = (self.worker(route)?, self.worker(shaft)?);
            Some(cost::pays_for_itself(break_even(one, other, self.hour?)))
        });
        Some(view! {
            <tr data-testid=format!("cost-{}", route.word())>
                <th scope="row">{labels::route(route)}</th>
                <td data-label=cost::total()>{money(total)}</td>
                <td data-label=cost::per_power_unit(unit)>{money(per)}</td>
                <td data-label=cost::job()>{money(job)}</td>
                <td data-label=cost::pays()>{pays.unwrap_or_else(|| cost::NO_PRICE.to_owned())}</td>
            </tr>
        })
    }
}
