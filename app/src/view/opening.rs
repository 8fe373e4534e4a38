//! Files that are picked, or dropped anywhere on the page.

use crate::browser;
use crate::embed::part::Part;
use crate::model::{Model, Notice};
use crate::text::tables_in;
use leptos::ev;
use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::{DragEvent, FileList};

/// Opens the one file that was picked or dropped, then does what is left to do.
pub fn open(model: Model, files: Option<FileList>, then: impl FnOnce() + 'static) {
    let Some(files) = files.filter(|files| files.length() > 0) else {
        return;
    };
    if files.length() > 1 {
        let number = files.length();
        return model.notice.set(Some(Notice::SeveralFiles(number)));
    }
    let Some(file) = files.get(0) else { return };
    spawn_local(async move {
        let name = file.name();
        match browser::read(&file).await {
            Some(text) => model.open_file(name, &text),
            None => model.notice.set(Some(Notice::UnreadableFile(name))),
        }
        then();
    });
}

/// Takes files that are dropped anywhere, and says so while one is held over the page.
#[component]
pub fn DropHint() -> impl IntoView {
    let model = Model::of_page();
    let held = RwSignal::new(false);
    let over = window_event_listener(ev::dragover, move |event| {
        if has_files(&event) && model.shows(Part::Files) {
            event.prevent_default();
            held.set(true);
        }
    });
    let leave = window_event_listener(ev::dragleave, move |event| {
        // From one part of the page to another it has a target.
        if event.related_target().is_none() {
            held.set(false);
        }
    });
    let drop = window_event_listener(ev::drop, move |event| {
        if has_files(&event) && model.shows(Part::Files) {
            event.prevent_default();
            held.set(false);
            open(
                model,
                event.data_transfer().and_then(|it| it.files()),
                || {},
            );
        }
    });
    on_cleanup(move || {
        over.remove();
        leave.remove();
        drop.remove();
    });
    view! {
        <Show when=move || held.get()>
            <div class="drop" data-testid="drop-hint">
                <p>{tables_in::let_go()}</p>
            </div>
        </Show>
    }
}

/// Whether files are dragged, and not a piece of text.
fn has_files(event: &DragEvent) -> bool {
    event
        .data_transfer()
        .is_some_and(|data| data.types().includes(&"Files".into(), 0))
}
