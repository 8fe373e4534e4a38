//! Where each route puts the implement, what that means at work, and what matters to the user.

use super::radio::radio;
use crate::model::Model;
use crate::number;
use crate::text::{advice, fit, in_turn, labels, remark};
use farend_core::choice::{Weighed, Weight, Wish};
use farend_core::fit::{Judgement, gravest};
use farend_core::implement::ImplementKind;
use farend_core::seat::minds_wheels;
use farend_core::survey::{Running, Surveyed};
use leptos::prelude::*;

/// The wishes, and the routes beside each other with their points.
#[component]
pub fn Choose() -> impl IntoView {
    let model = Model::unhurried();
    let rows = move || {
        let survey = model.survey.read();
        let survey = survey.as_ref()?;
        let kind = model.implement.read().as_ref()?.kind;
        let weighed = |route| survey.weighed.iter().find(|it| it.route == route);
        let rows = survey.routes.iter().filter_map(|surveyed| {
            let running = surveyed.running.as_ref()?;
            Some(row(surveyed, running, weighed(surveyed.route), kind))
        });
        Some(rows.collect_view())
    };
    view! {
        <div class="wishes">
            {Wish::ALL
                .iter()
                .enumerate()
                .map(|(place, wish)| view! { <WishChoice wish=*wish place=place /> })
                .collect_view()}
        </div>
        <div class="scroll" tabindex="0" role="region" aria-label=labels::choose()>
            <table data-testid="places" class="stack">
                <thead>
                    <tr>
                        <th scope="col">{labels::route_heading()}</th>
                        <th scope="col">{labels::seat()}</th>
                        <th scope="col">{labels::at_work_heading()}</th>
                        <th scope="col">{labels::hookup()}</th>
                        <th scope="col">{labels::standing_for_good()}</th>
                        <th scope="col">{labels::points()}</th>
                    </tr>
                </thead>
                <tbody>{rows}</tbody>
            </table>
        </div>
        <p class="fine">{labels::points_note()}</p>
    }
}

#[component]
fn WishChoice(wish: Wish, place: usize) -> impl IntoView {
    let model = Model::unhurried();
    let choice = move |weight: Weight| {
        let chosen = move || model.state.read().weights.get(place) == Some(&weight);
        let choose = move || {
            model.state.update(|state| {
                if let Some(slot) = state.weights.get_mut(place) {
                    *slot = weight;
                }
            });
        };
        radio(
            wish.word(),
            weight.word(),
            advice::weight(weight),
            chosen,
            choose,
        )
    };
    view! {
        <fieldset class="switch" data-testid=wish.word()>
            <legend>{advice::wish(wish)}</legend>
            {Weight::ALL.iter().copied().map(choice).collect_view()}
        </fieldset>
    }
}

fn row(
    surveyed: &Surveyed,
    running: &Running,
    weighed: Option<&Weighed>,
    kind: ImplementKind,
) -> impl IntoView + use<> {
    let seat = running.seat;
    let mut means = vec![advice::view(seat.view())];
    if minds_wheels(kind) {
        means.push(advice::drives_over(seat.drives_over(kind)));
    }
    means.push(advice::loader(seat.loader()));
    let hookup = if running.hookup_known {
        number::time(running.hookup)
    } else {
        remark(&number::time(running.hookup), labels::usually())
    };
    let points = match weighed {
        Some(weighed) => points(weighed),
        None => {
            let why = match gravest(&surveyed.items) {
                Judgement::Stop => fit::stop_small().to_owned(),
                _ => labels::standing_small(running.for_good).to_owned(),
            };
            remark(labels::not_weighed(), &why)
        }
    };
    view! {
        <tr data-testid=format!("place-{}", surveyed.route.word())>
            <th scope="row">{labels::route(surveyed.route)}</th>
            <td data-label=labels::seat()>{advice::seat(seat)}</td>
            <td data-label=labels::at_work_heading()>{in_turn(&means)}</td>
            <td data-label=labels::hookup()>{hookup}</td>
            <td data-label=labels::standing_for_good()>{labels::standing(running.for_good)}</td>
            <td data-label=labels::points()>{points}</td>
        </tr>
    }
}

/// "7.3 = 5 + 1·1.0 + 0·0.5 …" would be read by nobody: the sum, and the two parts of it.
fn points(weighed: &Weighed) -> String {
    labels::PointsOf {
        points: &number::fixed(weighed.points, 1),
        power: &number::fixed(weighed.power, 0),
        wishes: &number::fixed(weighed.points - weighed.power, 1),
    }
    .said()
}
