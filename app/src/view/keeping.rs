//! What must be said, and asked, about the yard that this browser keeps.

use super::save::hand_over;
use super::yard::save_yard;
use crate::browser;
use crate::model::Model;
use crate::storage::{Keeper, Keeping};
use crate::text::{labels, notices};
use leptos::prelude::*;

/// The message, as long as it is to be read or answered.
#[component]
pub fn KeepingBox() -> impl IntoView {
    let model = Model::of_page();
    let keeper = Keeper::of_page();
    let button = |id: &'static str, label: &'static str, act: Box<dyn Fn() + Send>| {
        view! {
            <button type="button" data-testid=id on:click=move |_| act()>
                {label}
            </button>
        }
        .into_any()
    };
    let close = move || {
        button(
            "close-keeping",
            labels::close(),
            Box::new(move || keeper.telling.set(false)),
        )
    };
    let keep = move |label| button("keep-own", label, Box::new(move || keeper.keep_own(model)));
    let save_kept = move |text: &str| {
        let text = text.to_owned();
        let save = move || {
            hand_over(model, notices::KEPT_FILE, Some(text.clone()), browser::JSON);
        };
        button("save-kept", notices::save_kept(), Box::new(save))
    };
    let take = move |label| {
        let take = move || keeper.take_other(model);
        button("take-other", label, Box::new(take))
    };
    let answers = move |keeping: &Keeping| match keeping {
        Keeping::Kept | Keeping::Not(_) | Keeping::OfAddress => vec![close()],
        Keeping::SetAside(text) => vec![save_kept(text), close()],
        Keeping::Held(text) => vec![save_kept(text), keep(notices::overwrite())],
        Keeping::Other(_) => vec![take(notices::take_other()), keep(notices::keep_mine())],
        Keeping::PassedOver(text) => vec![
            save_kept(text),
            take(notices::take_kept()),
            keep(notices::overwrite()),
        ],
    };
    let body = move || {
        let keeping = keeper.keeping.read();
        view! {
            <div class="notice" data-testid="keeping">
                <p>{notices::keeping(&keeping)}</p>
                <div class="tools">
                    {button(
                        "save-own",
                        notices::save_yard(),
                        Box::new(move || save_yard(model)),
                    )} {answers(&keeping)}
                </div>
            </div>
        }
    };
    view! { <div role="alert">{move || keeper.telling.get().then(body)}</div> }
}
