//! For those who want to know more of the open route: its work, its oil's heat, what is uncertain.
//! Each part is worked out only while it's open.

use super::fold::Fold;
use super::sources::Sources;
use super::work::Work;
use crate::model::Model;
use crate::number;
use crate::text::{in_turn, labels, sentences, sources};
use farend_core::defaults;
use farend_core::sensitivity::influences;
use farend_core::source::Source;
use farend_core::thermal::Heat;
use farend_core::units::{Quantity, UnitSystem};
use leptos::prelude::*;

/// How many figures are listed: the rest hardly matters.
const MOST_FIGURES: usize = 8;

/// The parts, each folded.
#[component]
pub fn Deeper() -> impl IntoView {
    view! {
        <section class="deeper">
            <h2>{labels::deeper_heading()}</h2>
            <Fold name="work" title=labels::work()>
                <Work />
            </Fold>
            <Fold name="heat" title=labels::heat()>
                <HeatOfOil />
            </Fold>
            <Fold name="influences" title=labels::influences()>
                <Influences />
            </Fold>
            <Fold name="sources" title=labels::all_sources()>
                <Sources />
            </Fold>
        </section>
    }
}

#[component]
fn HeatOfOil() -> impl IntoView {
    let model = Model::unhurried();
    let heat = Memo::new(move |_| model.heat());
    move || {
        let units = model.units.get();
        let missing = || {
            if model.route.get().needs_oil() {
                labels::nothing_moves()
            } else {
                labels::no_oil()
            }
        };
        match heat.get() {
            None => view! { <p>{missing()}</p> }.into_any(),
            Some(heat) => heat_table(&heat, units).into_any(),
        }
    }
}

fn heat_table(heat: &Heat, units: UnitSystem) -> impl IntoView + use<> {
    let rows = heat
        .settling
        .iter()
        .map(|settling| {
            let warm = |temperature| number::shown(Quantity::Temperature(temperature), units);
            let at = settling
                .at
                .map_or_else(|| sentences::hotter_than(units), warm);
            let to_limit = settling
                .to_limit
                .map_or_else(|| labels::never().to_owned(), number::time);
            let for_good = settling.for_good.map_or_else(
                || labels::nothing().to_owned(),
                |power| number::power(power, units),
            );
            view! {
                <tr>
                    <th scope="row">{labels::surface_rule(settling.rule)}</th>
                    <td data-label=labels::settles_at()>{at}</td>
                    <td data-label=labels::to_limit()>{to_limit}</td>
                    <td data-label=labels::for_good()>{for_good}</td>
                </tr>
            }
        })
        .collect_view();
    view! {
        <p data-testid="heat-lost">{sentences::heat(heat, units)}</p>
        <div class="scroll" tabindex="0" role="region" aria-label=labels::heat()>
            <table class="stack">
                <thead>
                    <tr>
                        <th scope="col">{labels::rule()}</th>
                        <th scope="col">{labels::settles_at()}</th>
                        <th scope="col">{labels::to_limit()}</th>
                        <th scope="col">{labels::for_good()}</th>
                    </tr>
                </thead>
                <tbody>{rows}</tbody>
            </table>
        </div>
        <p>{sentences::cooling(heat, units)}</p>
        <p class="source">
            {in_turn(&[defaults::TANK_MINUTES.source, Source::SurfaceRules].map(sources::citation))}
        </p>
    }
}

#[component]
fn Influences() -> impl IntoView {
    let model = Model::unhurried();
    let found = Memo::new(move |_| {
        let mut joined = model.joined(model.route.get())?;
        let mut all = influences(&mut joined);
        all.truncate(MOST_FIGURES);
        Some(all)
    });
    move || {
        let units = model.units.get();
        let all = found.get().unwrap_or_default();
        if all.is_empty() {
            return view! { <p>{labels::not_uncertain()}</p> }.into_any();
        }
        let rows = all
            .iter()
            .map(|influence| {
                view! {
                    <tr>
                        <th scope="row">{sentences::figure_of(influence)}</th>
                        <td>{number::power(influence.at_low, units)}</td>
                        <td>{number::power(influence.at_high, units)}</td>
                    </tr>
                }
            })
            .collect_view();
        view! {
            <p>{sentences::influences_note()}</p>
            <div class="scroll" tabindex="0" role="region" aria-label=labels::influences()>
                <table>
                    <thead>
                        <tr>
                            <th scope="col">{labels::figure_heading()}</th>
                            <th scope="col">{labels::at_low()}</th>
                            <th scope="col">{labels::at_high()}</th>
                        </tr>
                    </thead>
                    <tbody>{rows}</tbody>
                </table>
            </div>
        }
        .into_any()
    }
}
