//! The offer to go over to a newer version of the page. Nothing happens unless the user says so.

use super::yard::save_yard;
use crate::link;
use crate::model::Model;
use crate::offline::Offline;
use crate::storage::Keeper;
use crate::text::{notices, offline as text};
use leptos::prelude::*;

/// The offer, as long as there is one.
#[component]
pub fn NewerBox() -> impl IntoView {
    let model = Model::of_page();
    let keeper = Keeper::of_page();
    let offline = expect_context::<Offline>();
    // Whether reloading would lose changes that the browser doesn't keep.
    let loses = RwSignal::new(false);
    let reload = move |_| {
        link::write(model);
        if keeper.keep_now(model) || loses.get_untracked() {
            offline.reload();
        } else {
            loses.set(true);
        }
    };
    let label = move || match loses.get() {
        true => text::reload_all_the_same(),
        false => text::reload(),
    };
    let offer = move || {
        view! {
            <div class="newer" data-testid="newer">
                <p>{move || if loses.get() { text::loses() } else { text::newer() }}</p>
                <div class="tools">
                    <Show when=move || loses.get()>
                        <button
                            type="button"
                            data-testid="save-before"
                            on:click=move |_| save_yard(model)
                        >
                            {notices::save_yard()}
                        </button>
                    </Show>
                    <button type="button" data-testid="reload-now" on:click=reload>
                        {label}
                    </button>
                    <button
                        type="button"
                        data-testid="reload-later"
                        on:click=move |_| {
                            loses.set(false);
                            offline.offered.set(false);
                        }
                    >
                        {text::later()}
                    </button>
                </div>
            </div>
        }
    };
    view! {
        <div role="status">{move || offline.offered.get().then(offer)}</div>
    }
}
