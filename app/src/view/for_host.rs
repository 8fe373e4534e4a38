//! What is wrong with the host's options, told at the page's foot and not in the reader's way.

use crate::embed::fault::OptionFault;
use crate::model::Model;
use crate::text::embed as text;
use leptos::prelude::*;

/// The faults, folded; nothing where there are none.
#[component]
pub fn ForHost() -> impl IntoView {
    let model = Model::of_page();
    let faults = Memo::new(move |_| {
        let options = model.options.read_value();
        let lacks = options.lacks(&model.yard.read());
        [&options.faults[..], &lacks].concat()
    });
    let lines = move || {
        let line = |fault: &OptionFault| view! { <li>{text::option_fault(fault)}</li> };
        faults.read().iter().map(line).collect_view()
    };
    view! {
        <Show when=move || !faults.read().is_empty()>
            <details class="more for-host" data-testid="for-host">
                <summary>{move || text::for_host(faults.read().len())}</summary>
                <ul>{lines}</ul>
            </details>
        </Show>
    }
}
