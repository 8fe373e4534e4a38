//! A case: what it is about, what is known, what is asked.

use crate::model::Model;
use crate::model::practice::desk::scene;
use crate::text::practice::{self as text, case as words, given};
use farend_core::practice::Case;
use leptos::prelude::*;

/// Identifier of the question.
pub const HEAD: &str = "practice-case";

/// Pair, question and what is known; the children stand below the question.
#[component]
pub fn CaseHead(case: Case, children: Children) -> impl IntoView {
    let model = Model::of_page();
    let of = scene(&model.yard.read_untracked(), &case);
    let pair = of.as_ref().map(words::pair);
    let question = words::question(&case);
    let facts = move || {
        let facts = given::facts(of.as_ref()?, &case, model.units.get());
        Some(fact_list(facts))
    };
    view! {
        <p class="pair" data-testid="case-pair">
            {pair}
        </p>
        <h3 id=HEAD tabindex="-1" data-testid="case-question">
            {question}
        </h3>
        {children()}
        <h4>{text::known()}</h4>
        <dl class="facts">{facts}</dl>
        <p class="fine">{given::not_known_unless_said()}</p>
    }
}

/// Facts as terms with what is known of them.
pub fn fact_list(facts: Vec<given::Fact>) -> impl IntoView {
    facts
        .into_iter()
        .map(|(name, what)| view! { <div><dt>{name}</dt> <dd>{what}</dd></div> })
        .collect_view()
}
