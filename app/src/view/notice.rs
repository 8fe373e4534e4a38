//! What the user must be told about a file or a link.

use crate::model::{Model, Notice};
use crate::text::{labels, notices};
use farend_core::fault::Fault;
use leptos::prelude::*;

/// Identifier of what closes it.
pub const CLOSE: &str = "close-notice";

/// The notice, until it is closed.
#[component]
pub fn NoticeBox() -> impl IntoView {
    let model = Model::of_page();
    let body = move |notice: &Notice| {
        let (sentence, faults) = notices::notice(notice);
        let good = matches!(
            notice,
            Notice::OpenedYard(_) | Notice::OpenedComparison(_) | Notice::TookTable { .. }
        );
        view! {
            <div class="notice" class:good=good data-testid="notice">
                <p>{sentence}</p>
                {(!faults.is_empty())
                    .then(|| {
                        let line = |fault: &Fault| view! { <li>{fault.to_string()}</li> };
                        view! { <ul>{faults.iter().map(line).collect_view()}</ul> }
                    })}
                <button
                    type="button"
                    id=CLOSE
                    data-testid="close-notice"
                    on:click=move |_| model.notice.set(None)
                >
                    {labels::CLOSE}
                </button>
            </div>
        }
    };
    view! { <div role="alert">{move || model.notice.read().as_ref().map(body)}</div> }
}
