//! The way to this page in a tab of its own, where a frame keeps something back.

use super::copy_box::CopyBox;
use crate::browser;
use crate::model::Model;
use crate::text::embed as text;
use farend_core::state::State;
use leptos::prelude::*;

/// A button, and the address for where the frame keeps tabs back too. Nothing where the page has no
/// address to give.
#[component]
pub fn Elsewhere() -> impl IntoView {
    let model = Model::of_page();
    let address = Memo::new(move |_| {
        let link = model.state.with(State::to_link);
        browser::public_address(&link)
    });
    let refused = RwSignal::new(false);
    let open = move |_| {
        let address = address.get_untracked();
        refused.set(!address.is_some_and(|address| browser::open_tab(&address)));
    };
    view! {
        <Show when=move || address.read().is_some()>
            <div class="elsewhere">
                <button type="button" data-testid="open-in-tab" on:click=open>
                    {text::open_in_tab()}
                </button>
                <CopyBox
                    id="address"
                    label=text::address_to_copy()
                    text=Signal::derive(move || address.get().unwrap_or_default())
                />
                <p role="status">{move || refused.get().then_some(text::tab_refused())}</p>
            </div>
        </Show>
    }
}

/// What is said where printing was refused, with the way round it.
#[component]
pub fn CantPrint(refused: RwSignal<bool>, told: &'static str) -> impl IntoView {
    view! {
        <p role="status">{move || refused.get().then_some(told)}</p>
        <Show when=move || refused.get()>
            <Elsewhere />
        </Show>
    }
}
