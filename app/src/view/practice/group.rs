//! A set for a group: put together, handed out, printed, shown.

use super::paper::{Paper, Sheet};
use super::show::{ShowLarge, TITLE};
use crate::browser;
use crate::model::Model;
use crate::model::practice::PracticeModel;
use crate::text::practice::{self as text, group as words};
use crate::text::{faults, sheet};
use crate::view::elsewhere::CantPrint;
use crate::view::entry::NumberEntry;
use crate::view::header::CopyLink;
use crate::view::save::hand_over;
use farend_core::export::practice_set::{CASES, SavedSet};
use farend_core::fault::Fault;
use farend_core::practice::{Kind, Kinds, Set as CaseSet};
use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::HtmlInputElement;

/// Identifier of what shows a case large.
pub const OPENER: &str = "show-large";

/// The set, or one of its cases shown large.
#[component]
pub fn GroupView() -> impl IntoView {
    let practice = PracticeModel::of_page();
    let group = practice.group;
    if untrack(|| group.chosen()).is_none() {
        group.draw_anew();
    }
    let sheet = RwSignal::new(None::<Sheet>);
    view! {
        <Show when=move || practice.is_large() fallback=move || view! { <Maker sheet=sheet /> }>
            <ShowLarge />
        </Show>
        <Paper sheet=sheet />
    }
}

#[component]
fn Maker(sheet: RwSignal<Option<Sheet>>) -> impl IntoView {
    let model = Model::of_page();
    let group = PracticeModel::of_page().group;
    let told = RwSignal::new(String::new());
    let refused = RwSignal::new(false);
    let change = move |change: &dyn Fn(CaseSet) -> CaseSet| {
        if let Some(set) = untrack(|| group.chosen()) {
            group.choose(change(set));
        }
    };
    let kind = move |kind: Kind| {
        let chosen = move || group.chosen().is_some_and(|set| set.kinds.has(kind));
        let toggle = move |event: leptos::ev::Event| {
            let Some(set) = untrack(|| group.chosen()) else {
                return;
            };
            let kinds = set.kinds.toggled(kind);
            if kinds == Kinds::NONE {
                told.set(words::no_kind().to_owned());
                // The browser has taken the mark away by itself.
                event_target::<HtmlInputElement>(&event).set_checked(true);
            } else {
                told.set(String::new());
                group.choose(CaseSet { kinds, ..set });
            }
        };
        view! {
            <label class="unfold">
                <input
                    type="checkbox"
                    data-testid=format!("set-{}", kind.word())
                    prop:checked=chosen
                    on:change=toggle
                />
                <span>{text::kind(kind)}</span>
            </label>
        }
    };
    let whole = |number: f64, (least, most): (u32, u32)| {
        let fits = number.fract() == 0.0 && (f64::from(least)..=f64::from(most)).contains(&number);
        fits.then_some(number as u32)
    };
    let enter_count = Callback::new(move |entered: Option<f64>| {
        let limits = (u32::from(CASES.0), u32::from(CASES.1));
        let count = entered.and_then(|number| whole(number, limits));
        let count = count.and_then(|count| u8::try_from(count).ok());
        if let Some(count) = count {
            change(&|set| CaseSet { count, ..set });
        }
        // An emptied field has its number back.
        count.is_some() || entered.is_none()
    });
    let enter_seed = Callback::new(move |entered: Option<f64>| {
        let seed = entered.and_then(|number| whole(number, (0, u32::MAX)));
        if let Some(seed) = seed {
            change(&|set| CaseSet { seed, ..set });
        }
        seed.is_some() || entered.is_none()
    });
    let save = move |_| {
        let Some(set) = untrack(|| group.chosen()) else {
            return;
        };
        let saved = SavedSet {
            yard: model.yard.read_untracked().name.clone(),
            set,
        };
        let text = saved.to_json().ok();
        hand_over(model, words::FILE, text, browser::JSON);
    };
    view! {
        <h2>{text::part_group()}</h2>
        <p>{words::lead()}</p>
        <fieldset class="plain">
            <legend>{words::kinds()}</legend>
            {Kind::ALL.iter().copied().map(kind).collect_view()}
        </fieldset>
        <div class="find">
            <NumberEntry
                id="set-count"
                label=words::count()
                unit=""
                value=Signal::derive(move || Some(group.chosen()?.count.into()))
                hint=""
                enter=enter_count
                allowed=words::count_allowed()
            />
            <NumberEntry
                id="set-seed"
                label=words::seed()
                unit=""
                value=Signal::derive(move || Some(group.chosen()?.seed.into()))
                hint=""
                enter=enter_seed
                allowed=text::number_allowed()
            />
            <button type="button" data-testid="draw-anew" on:click=move |_| group.draw_anew()>
                {words::draw_anew()}
            </button>
        </div>
        <div class="tools">
            <button
                type="button"
                class="commit"
                id=OPENER
                data-testid="show-large"
                on:click=move |_| {
                    group.go_to(0);
                    group.showing.set(true);
                    browser::focus(TITLE);
                }
            >
                {words::show()}
            </button>
            <PrintSheets sheet=sheet refused=refused />
        </div>
        <CantPrint refused=refused told=sheet::cant_print() />
        <h3>{words::share()}</h3>
        <div class="tools">
            <CopyLink id="copy-set" label=words::copy_link() />
            <button type="button" data-testid="save-set" on:click=save>
                {words::save()}
            </button>
            <OpenSet told=told />
        </div>
        <p class="told" role="status" data-testid="group-told">
            {told}
        </p>
    }
}

/// The sheet for the learners, and that for the trainer.
#[component]
fn PrintSheets(sheet: RwSignal<Option<Sheet>>, refused: RwSignal<bool>) -> impl IntoView {
    let print = move |which: Sheet| {
        move |_| {
            sheet.set(Some(which));
            // The sheet must be in the document before the browser looks at it.
            request_animation_frame(move || {
                let printed = browser::print();
                refused.set(!printed);
                if !printed {
                    sheet.set(None);
                }
            });
        }
    };
    view! {
        <button type="button" data-testid="print-sheet" on:click=print(Sheet::Questions)>
            {words::print()}
        </button>
        <button type="button" data-testid="print-answers" on:click=print(Sheet::Answers)>
            {words::print_answers()}
        </button>
    }
}

/// Opens a set's file, or tells all that is wrong with it.
#[component]
fn OpenSet(told: RwSignal<String>) -> impl IntoView {
    let model = Model::of_page();
    let group = PracticeModel::of_page().group;
    let faults = RwSignal::new(Vec::<Fault>::new());
    let take = move |text: &str| match SavedSet::from_json(text) {
        Err(found) => {
            told.set(String::new());
            faults.set(found);
        }
        Ok(saved) => {
            faults.set(Vec::new());
            group.choose(saved.set);
            let is_same = model.yard.read_untracked().name == saved.yard;
            told.set(match is_same {
                true => words::opened().to_owned(),
                false => words::other_yard(&saved.yard),
            });
        }
    };
    let open = move |event: leptos::ev::Event| {
        let input: HtmlInputElement = event_target(&event);
        let Some(file) = input.files().and_then(|files| files.get(0)) else {
            return;
        };
        spawn_local(async move {
            // What can't be read from the disk is as good as an empty file.
            take(&browser::read(&file).await.unwrap_or_default());
            // So that the same file, mended, can be picked again.
            input.set_value("");
        });
    };
    view! {
        <label class="button">
            <input
                type="file"
                class="hidden"
                accept=".json,application/json"
                data-testid="open-set"
                on:change=open
            />
            <span>{words::open()}</span>
        </label>
        <ul class="complaint" role="alert" data-testid="set-faults">
            {move || {
                faults
                    .get()
                    .iter()
                    .map(|fault| view! { <li>{faults::fault(fault)}</li> })
                    .collect_view()
            }}
        </ul>
    }
}
