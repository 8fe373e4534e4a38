//! What the user must be told about a file or a link.

use super::copy_box::CopyBox;
use super::elsewhere::Elsewhere;
use crate::browser;
use crate::embed::part::Part;
use crate::model::{Model, Notice};
use crate::storage::Keeper;
use crate::text::{embed, faults, labels, notices};
use farend_core::fault::Fault;
use farend_core::state::View;
use farend_core::yard::edit::Editing;
use leptos::prelude::*;

/// Identifier of what closes it.
pub const CLOSE: &str = "close-notice";

/// The notice, until it is closed.
#[component]
pub fn NoticeBox() -> impl IntoView {
    let model = Model::of_page();
    let keeper = Keeper::of_page();
    let body = move |notice: &Notice| {
        let (sentence, faults) = match notice {
            // Whatever is opened beside it, the yard of an address is loaded again.
            Notice::OpenedYard(file) | Notice::OpenedComparison(file) if keeper.is_of_address() => {
                (embed::opened(file), Default::default())
            }
            _ => notices::notice(notice),
        };
        let good = matches!(
            notice,
            Notice::OpenedYard(_) | Notice::OpenedComparison(_) | Notice::TookTable { .. }
        );
        view! {
            <div class="notice" class:good=good data-testid="notice">
                <p>{sentence}</p>
                {(!faults.is_empty())
                    .then(|| {
                        let line = |fault: &Fault| view! { <li>{faults::fault(fault)}</li> };
                        view! { <ul>{faults.iter().map(line).collect_view()}</ul> }
                    })}
                {offer(model, keeper, notice)}
                <button
                    type="button"
                    id=CLOSE
                    data-testid="close-notice"
                    on:click=move |_| model.notice.set(None)
                >
                    {labels::close()}
                </button>
            </div>
        }
    };
    view! { <div role="alert">{move || model.notice.read().as_ref().map(body)}</div> }
}

/// What can be done about it at once.
fn offer(model: Model, keeper: Keeper, notice: &Notice) -> Option<AnyView> {
    match notice {
        Notice::BadFile {
            file,
            mendable: Some(yard),
            ..
        } if model.shows(Part::Editor) => {
            let (file, yard) = (file.clone(), Editing::clone(yard));
            let open = move |_| {
                model.notice.set(None);
                model.open_yard(yard.clone(), file.clone());
                model.state.update(|state| state.view = View::Yard);
            };
            Some(
                view! {
                    <button type="button" data-testid="mend-here" on:click=open>
                        {notices::mend_here()}
                    </button>
                }
                .into_any(),
            )
        }
        Notice::MissingFromYard {
            in_demo: Some(link),
            ..
        } => {
            let link = link.clone();
            let open = move |_| {
                keeper.open_demo(model);
                model.notice.set(None);
                model.open_link(&link);
            };
            Some(
                view! {
                    <button type="button" data-testid="open-demo" on:click=open>
                        {notices::open_demo()}
                    </button>
                }
                .into_any(),
            )
        }
        Notice::SavedFromFrame { text, .. } => {
            let text = text.clone().map(|text| {
                view! { <CopyBox id="file-text" label=embed::text_to_copy() text=text lines=4 /> }
            });
            Some(view! { {text} <Elsewhere /> }.into_any())
        }
        Notice::CantSave | Notice::CantDraw if browser::is_framed() => {
            Some(view! { <Elsewhere /> }.into_any())
        }
        _ => None,
    }
}
