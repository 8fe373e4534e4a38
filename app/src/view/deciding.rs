//! From the answer to the sale: whether it can be hooked up, where it sits, what matters.

use super::beside::Beside;
use super::choose::Choose;
use super::claims::Claims;
use super::cost::Cost;
use super::fit::Fit;
use super::fold::Fold;
use super::wanted::WhatItTakes;
use crate::model::Model;
use crate::text::{beside, claims, cost, fit, labels, wanted};
use leptos::prelude::*;

/// The parts, each folded.
#[component]
pub fn Deciding() -> impl IntoView {
    let model = Model::of_page();
    let count = Signal::derive(move || {
        let survey = model.survey.read();
        let open = survey.as_ref().and_then(|it| it.route(model.route.get()));
        open.map_or_else(String::new, |open| fit::count(&open.items))
    });
    view! {
        <section class="deeper">
            <h2>{labels::deciding_heading()}</h2>
            <Fold name="fit" title=labels::fit() note=count>
                <Fit />
            </Fold>
            <Fold name="choose" title=labels::choose()>
                <Choose />
            </Fold>
            <Fold name="wanted" title=wanted::title()>
                <WhatItTakes />
            </Fold>
            <Fold name="claims" title=claims::title()>
                <Claims />
            </Fold>
            <Fold name="cost" title=cost::title()>
                <Cost />
            </Fold>
            <Fold name="beside" title=beside::title()>
                <Beside />
            </Fold>
        </section>
    }
}
