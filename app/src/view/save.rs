//! What can be taken along of the comparison: tables, a picture, the comparison itself.

use super::picture;
use crate::model::{Model, Notice};
use crate::text::{columns, labels};
use crate::{browser, tables};
use farend_core::export::comparison::Saved;
use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::Blob;

/// How many pixels of a PNG stand for one of the picture's units, each way.
const SHARP: u32 = 2;

/// Offers a text as a file, or says why that isn't possible and what is.
pub fn hand_over(model: Model, name: &str, text: Option<String>, kind: &str) {
    let content = text.as_deref().and_then(|text| browser::blob(text, kind));
    offer(model, name, content, text);
}

/// Offers a file, which may have a text. Whether a frame has kept it back isn't told to the page, so
/// the text is offered beside it there.
fn offer(model: Model, name: &str, content: Option<Blob>, text: Option<String>) {
    let saved = content.and_then(|content| browser::save(name, &content));
    let from_frame = || {
        let file = name.to_owned();
        Notice::SavedFromFrame { file, text }
    };
    let notice = match saved {
        None => Some(Notice::CantSave),
        Some(()) => browser::is_framed().then(from_frame),
    };
    if notice.is_some() {
        model.notice.set(notice);
    }
}

/// All that can be saved.
#[component]
pub fn SaveTools() -> impl IntoView {
    let model = Model::of_page();
    let button = |id: &'static str, label: &'static str, save: fn(Model)| {
        view! {
            <button type="button" data-testid=id on:click=move |_| save(model)>
                {label}
            </button>
        }
    };
    view! {
        {button("save-routes", labels::save_routes(), save_routes)}
        {button("save-ledger", labels::save_ledger(), save_ledger)}
        {button("save-svg", labels::save_svg(), save_svg)}
        {button("save-png", labels::save_png(), save_png)}
        {button("save-comparison", labels::save_comparison(), save_comparison)}
    }
}

/// A file's name with the machine and the implement in it.
fn file_name(model: Model, ending: &str) -> String {
    let state = model.state.read_untracked();
    columns::file(&state.machine, &state.implement, ending)
}

/// Offers the text that the comparison makes.
fn save_text(
    model: Model,
    ending: &str,
    kind: &str,
    make: impl FnOnce(Saved<'_>) -> Option<String>,
) {
    let text = model.with_saved(make).flatten();
    hand_over(model, &file_name(model, ending), text, kind);
}

fn save_routes(model: Model) {
    save_text(model, "-routes.csv", browser::CSV, |saved| {
        tables::routes(saved).to_csv()
    });
}

fn save_ledger(model: Model) {
    let Some(table) = model.with_saved(tables::ledger).flatten() else {
        let route = model.state.with_untracked(|state| state.route);
        return model.notice.set(Some(Notice::NoLedger(route)));
    };
    let name = file_name(model, "-ledger.csv");
    hand_over(model, &name, table.to_csv(), browser::CSV);
}

fn save_comparison(model: Model) {
    save_text(model, ".json", browser::JSON, |saved| saved.to_json().ok());
}

fn save_svg(model: Model) {
    let name = file_name(model, ".svg");
    hand_over(model, &name, picture::file(model), browser::SVG);
}

fn save_png(model: Model) {
    let name = file_name(model, ".png");
    let svg = picture::file(model).and_then(|text| browser::blob(&text, browser::SVG));
    spawn_local(async move {
        let size = picture::SIZE.map(|side| side * SHARP);
        let png = match &svg {
            Some(svg) => browser::png(svg, size.into()).await,
            None => None,
        };
        match png {
            Some(png) => offer(model, &name, Some(png), None),
            None => model.notice.set(Some(Notice::CantDraw)),
        }
    });
}
