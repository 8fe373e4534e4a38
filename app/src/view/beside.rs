//! The same implement on two machines beside each other.

use super::price::price;
use crate::model::Model;
use crate::number;
use crate::text::{beside, labels};
use farend_core::compare::{Comparison, compare};
use farend_core::machine::Machine;
use farend_core::route::RouteId;
use farend_core::settings::Settings;
use farend_core::units::UnitSystem;
use farend_core::work::Progress;
use leptos::prelude::*;

/// The choice of the other machine, and both side by side.
#[component]
pub fn Beside() -> impl IntoView {
    let model = Model::unhurried();
    let choose = move |event| {
        let id = event_target_value(&event);
        let id = (!id.is_empty()).then_some(id);
        model.state.update(|state| {
            state.beside = id;
            state.prices.machines[1] = None;
        });
    };
    let is = move |id: &str| model.state.read().beside.as_deref().unwrap_or_default() == id;
    let options = move || {
        let (yard, own) = (model.yard.read(), model.state.read().machine.clone());
        let others = yard.machines.iter().filter(|machine| machine.id != own);
        let option = |machine: &Machine| {
            let id = machine.id.clone();
            let chosen = is(&id);
            view! { <option value=id prop:selected=chosen>{machine.name.clone()}</option> }
        };
        others.map(option).collect_view()
    };
    view! {
        <label class="choice">
            <span>{beside::other()}</span>
            <select data-testid="beside-machine" on:change=choose>
                <option value="" prop:selected=move || is("")>
                    {beside::none()}
                </option>
                {options}
            </select>
        </label>
        {move || Pair::of(model).map(|pair| pair.view(model))}
        <p class="fine">{beside::note()}</p>
    }
}

/// Two machines with their results.
struct Pair {
    machines: [Machine; 2],
    results: [Comparison; 2],
    progress: [Vec<(RouteId, Progress)>; 2],
}

impl Pair {
    fn of(model: Model) -> Option<Self> {
        let own = model.machine.get()?;
        let other = model
            .yard
            .read()
            .machine(model.state.read().beside.as_ref()?)?
            .clone();
        let settings = model.settings.get();
        // What was turned belongs to the first; place, driving and job are the same.
        let settings = Settings {
            engine_speed: None,
            own: Settings::default().own,
            pack: Settings::default().pack,
            outlet: None,
            engine_power: None,
            job: model.job(),
            ..settings
        };
        let implement = model.implement.get()?;
        let kits = &model.yard.read().kits;
        let of_other = compare(&other, &implement, kits, &settings).ok()?;
        let of_own = model.comparison.get()?;
        let progress = model.progress_on(&other, &settings, &of_other);
        Some(Self {
            progress: [model.progress()?, progress?],
            machines: [own, other],
            results: [of_own, of_other],
        })
    }

    fn view(self, model: Model) -> impl IntoView {
        let units = model.units.get();
        let rows: Vec<_> = RouteId::ALL
            .iter()
            .map(|route| {
                let cells = [0, 1].map(|which| self.cell(which, *route, units));
                let [own, other] = cells;
                let names = self.names();
                view! {
                    <tr>
                        <th scope="row">{labels::route(*route)}</th>
                        <td data-label=names.0>{own}</td>
                        <td data-label=names.1>{other}</td>
                    </tr>
                }
            })
            .collect();
        let (own, other) = self.names();
        view! {
            <p class="summary" data-testid="beside-difference">
                {self.difference(model, units)}
            </p>
            <div class="scroll" tabindex="0" role="region" aria-label=beside::title()>
                <table data-testid="beside-table" class="stack">
                    <thead>
                        <tr>
                            <th scope="col">{labels::route_heading()}</th>
                            <th scope="col">{own}</th>
                            <th scope="col">{other}</th>
                        </tr>
                    </thead>
                    <tbody>{rows}</tbody>
                </table>
            </div>
            <div class="wishes">
                {machine_price(model, 0, &self.names().0)}
                {machine_price(model, 1, &self.names().1)}
            </div>
        }
    }

    fn names(&self) -> (String, String) {
        let [own, other] = &self.machines;
        (own.name.clone(), other.name.clone())
    }

    fn time(&self, which: usize, route: RouteId) -> Option<String> {
        let mut all = self.progress.get(which)?.iter();
        let (_, progress) = all.find(|(other, _)| *other == route)?;
        Some(number::time(progress.time?.likely?))
    }

    fn cell(&self, which: usize, route: RouteId, units: UnitSystem) -> String {
        let run = self
            .results
            .get(which)
            .and_then(|all| all.route(route)?.run());
        let Some(run) = run else {
            return labels::no_fit().to_owned();
        };
        beside::arrives(run, self.time(which, route), units)
    }

    fn difference(&self, model: Model, units: UnitSystem) -> Option<String> {
        let [own, other] = &self.results;
        let best = |all: &Comparison| {
            let (route, run) = all.ranked().into_iter().next()?;
            Some((route, run.delivered.likely))
        };
        let (own, other) = (best(own)?, best(other)?);
        let hours = self.time(0, own.0).zip(self.time(1, other.0));
        let names = self.names();
        let currency = model.currency();
        let [of_own, of_other] = [0, 1].map(|which| model.machine_price(which));
        let costs = of_other
            .zip(of_own)
            .map(|(other, own)| beside::costs(other - own, currency.as_deref()));
        Some(beside::difference(
            (&names.0, own.1),
            (&names.1, other.1),
            hours,
            costs,
            units,
        ))
    }
}

/// The price of one of the two machines.
fn machine_price(model: Model, which: usize, name: &str) -> impl IntoView + use<> {
    price(
        format!("machine-price-{which}"),
        beside::price_of(name),
        String::new(),
        move |prices| prices.machines.get_mut(which),
        move || model.yard_machine_price(which),
    )
}
