//! Name, yard, units, and what can be done with files and links.

use super::copy_box::CopyBox;
use super::language::LanguageChoice;
use super::opening;
use super::parts::{self, Later};
use super::radio::radio;
use super::save::hand_over;
use crate::browser;
use crate::embed::part::Part;
use crate::model::Model;
use crate::outdoors::Outdoors;
use crate::text::{labels, pair};
use farend_core::state::{State, View};
use farend_core::units::UnitSystem;
use farend_core::yard::DEMO;
use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;

/// Identifier of what opens the menu of files.
pub const MENU: &str = "menu";

/// The head of the page, as far as the host lets it. The yard's name is always there, and so is the
/// page's for those who listen.
#[component]
pub fn Header() -> impl IntoView {
    let model = Model::of_page();
    let yard_name = move || {
        let yard = model.yard.read();
        match &yard.place {
            None => yard.name.clone(),
            Some(place) => pair(&yard.name, place),
        }
    };
    view! {
        <header class="head">
            <div class="brand" class:hidden=move || !model.shows(Part::Header)>
                <h1>{labels::TITLE}</h1>
                <Show when=move || model.view.get() == View::Pair>
                    <p>{labels::purpose()}</p>
                </Show>
            </div>
            <div class="reader">
                <Show when=move || model.shows(Part::Units)>
                    <UnitSwitch />
                    <OutdoorsSwitch />
                </Show>
                <Show when=move || model.shows(Part::Language)>
                    <LanguageChoice />
                </Show>
            </div>
            <Views />
            <Show when=move || model.shows(Part::Files)>
                <details class="menu" data-testid="menu">
                    <summary id=MENU>{labels::menu()}</summary>
                    <div class="tools">
                        <Later load=parts::file_tools />
                    </div>
                </details>
            </Show>
            <Show when=move || model.shows(Part::Save)>
                <details class="menu" data-testid="save-menu">
                    <summary>{labels::save()}</summary>
                    <div class="tools">
                        <Later load=parts::save_tools />
                    </div>
                </details>
            </Show>
            <p class="yard" data-testid="yard-name">
                {yard_name}
                <Show when=move || model.yard.read().invented>
                    <strong class="invented">{labels::invented()}</strong>
                </Show>
            </p>
        </header>
    }
}

/// The views of what is chosen, where there are several.
#[component]
fn Views() -> impl IntoView {
    let model = Model::of_page();
    let others = [Part::Grid, Part::Editor, Part::Practice];
    if !others.into_iter().any(|part| model.shows(part)) {
        return None;
    }
    let view = move |view: View, name: &'static str| {
        let shown = Part::of_view(view).is_none_or(|part| model.shows(part));
        let current = move || (model.view.get() == view).then_some("page");
        let go = move |_| model.state.update(|state| state.view = view);
        shown.then(|| {
            view! {
                <button
                    type="button"
                    data-testid=format!("view-{}", view.word())
                    aria-current=current
                    on:click=go
                >
                    {name}
                </button>
            }
        })
    };
    Some(view! {
        <nav class="views" aria-label=labels::views()>
            {view(View::Pair, labels::view_pair())}
            {view(View::Grid, labels::view_grid())}
            {view(View::Yard, labels::view_yard())}
            {view(View::Practice, labels::view_practice())}
        </nav>
    })
}

/// For glare and gloves, or not.
#[component]
fn OutdoorsSwitch() -> impl IntoView {
    let outdoors = Outdoors::of_page();
    view! {
        <button
            type="button"
            class="outdoors"
            data-testid="outdoors"
            aria-pressed=move || outdoors.get().to_string()
            on:click=move |_| outdoors.toggle()
        >
            {labels::outdoors()}
        </button>
    }
}

#[component]
fn UnitSwitch() -> impl IntoView {
    let model = Model::of_page();
    let choice = move |units: UnitSystem, name: &'static str, id: &'static str| {
        let chosen = move || model.units.get() == units;
        radio("units", id, name, chosen, move || {
            model.state.update(|state| state.units = units);
        })
    };
    view! {
        <fieldset class="switch">
            <legend class="hidden">{labels::units()}</legend>
            {choice(UnitSystem::Metric, labels::metric(), "units-metric")}
            {choice(UnitSystem::Us, labels::us(), "units-us")}
        </fieldset>
    }
}

/// What can be done with files and the link.
#[component]
pub fn FileTools() -> impl IntoView {
    view! {
        <OpenFile />
        <CopyLink id="copy-link" label=labels::copy_link() />
    }
}

#[component]
fn OpenFile() -> impl IntoView {
    let model = Model::of_page();
    let open = move |event: leptos::ev::Event| {
        let Some(input) = event
            .target()
            .and_then(|target| target.dyn_into::<HtmlInputElement>().ok())
        else {
            return;
        };
        // Emptied, so that the same file, mended, can be picked again.
        opening::open(model, input.files(), move || input.set_value(""));
    };
    let save = move |_| {
        hand_over(
            model,
            labels::DEMO_FILE,
            Some(DEMO.to_owned()),
            browser::JSON,
        );
    };
    view! {
        <label class="button">
            <input
                type="file"
                class="hidden"
                accept=".json,.csv,.tsv,application/json,text/csv"
                data-testid="open-file"
                on:change=open
            />
            <span>{labels::open_file()}</span>
        </label>
        <button type="button" data-testid="save-demo" on:click=save>
            {labels::save_demo()}
        </button>
    }
}

/// What became of the last try to copy the link.
#[derive(Clone, PartialEq)]
enum Copied {
    NotTried,
    Done,
    ByHand(String),
}

/// Copies the link to what is chosen.
#[component]
pub fn CopyLink(
    /// Identifier for tests.
    id: &'static str,
    label: &'static str,
) -> impl IntoView {
    let model = Model::of_page();
    let copied = RwSignal::new(Copied::NotTried);
    // A copied link is old as soon as anything changes.
    Effect::new(move |_| {
        model.state.track();
        copied.set(Copied::NotTried);
    });
    let copy = move |_| {
        let link = model.state.with_untracked(State::to_link);
        // The address follows a little later than the state does.
        browser::replace_fragment(&link);
        let address = browser::address(&link);
        spawn_local(async move {
            copied.set(if browser::copy(&address).await {
                Copied::Done
            } else {
                Copied::ByHand(address)
            });
        });
    };
    view! {
        <button type="button" data-testid=id on:click=copy>
            {label}
        </button>
        <p class="copied" role="status">
            {move || match copied.get() {
                Copied::NotTried => ().into_any(),
                Copied::Done => labels::copied().into_any(),
                Copied::ByHand(address) => {
                    view! {
                        <CopyBox
                            id="link-by-hand"
                            label=labels::copy_by_hand()
                            text=address
                            at_once=true
                        />
                    }
                        .into_any()
                }
            }}
        </p>
    }
}
