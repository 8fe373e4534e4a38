//! What stands there until a yard is open: one from an address takes a while, or doesn't come.

use crate::browser;
use crate::embed::Options;
use crate::far_yard::{self, Loaded, Refusal};
use crate::link;
use crate::model::yard::demo;
use crate::model::{Model, Notice};
use crate::number;
use crate::storage::Keeper;
use crate::text::{embed as text, faults};
use farend_core::fault::Fault;
use farend_core::yard::edit::Editing;
use leptos::prelude::*;
use leptos::task::spawn_local;

/// How far the page has come.
#[derive(Clone)]
pub enum Stage {
    /// The yard is on its way from its address.
    Waiting,
    /// It's open, and kept like this.
    Open(Box<Model>, Keeper),
}

/// How the page begins.
#[derive(Clone, Copy)]
pub struct Begin {
    /// How far it has come.
    pub stage: RwSignal<Stage>,
    /// Why the yard isn't there.
    refused: RwSignal<Option<Refusal>>,
    options: StoredValue<Options>,
    /// The page's: what is made when the yard is there lives as long as that.
    owner: StoredValue<Owner>,
}

impl Begin {
    /// With the yard that the host names, as soon as it's there, else with the reader's own; with the
    /// demo where the address asks for that.
    pub fn of(options: Options) -> Self {
        let has_address = options.yard.is_some();
        let begin = Self {
            stage: RwSignal::new(Stage::Waiting),
            refused: RwSignal::new(None),
            options: StoredValue::new(options),
            owner: StoredValue::new(Owner::current().unwrap_or_default()),
        };
        let with_demo = browser::fragment() == link::DEMO;
        let opened = match (with_demo, has_address) {
            (true, false) => Some(Keeper::start_with_demo()),
            (true, true) => {
                let demo = demo();
                let keeper = Keeper::of_address(&demo);
                Some((demo, keeper))
            }
            (false, false) => Some(Keeper::start()),
            (false, true) => None,
        };
        if let Some((yard, keeper)) = opened {
            begin.open(yard, keeper);
        }
        begin
    }

    /// Whether there is something to show: a yard, or why there is none.
    pub fn stands(self) -> bool {
        self.refused.read().is_some() || matches!(*self.stage.read(), Stage::Open(..))
    }

    fn address(self) -> String {
        let options = self.options.read_value();
        options.yard.clone().unwrap_or_default()
    }

    fn open(self, yard: Editing, keeper: Keeper) -> Model {
        let model = Model::new(yard, &browser::fragment(), self.options.get_value());
        self.stage.set(Stage::Open(Box::new(model), keeper));
        model
    }

    /// With a yard that isn't kept.
    fn open_unkept(self, yard: Editing) -> Model {
        let owner = self.owner.get_value();
        owner.with(|| {
            let keeper = Keeper::of_address(&yard);
            self.open(yard, keeper)
        })
    }

    fn load(self) {
        self.refused.set(None);
        spawn_local(async move {
            match far_yard::load(&self.address()).await {
                Err(refusal) => self.refused.set(Some(refusal)),
                Ok(Loaded { yard, since }) => {
                    let model = self.open_unkept(yard);
                    if let Some(since) = since {
                        let day = number::day(&since, "long");
                        model.notice.set(Some(Notice::EarlierYard(day)));
                    }
                }
            }
        });
    }
}

/// Loads the yard: that it's on its way, or why it isn't there and what can be done.
#[component]
pub fn FarYard() -> impl IntoView {
    let begin: Begin = expect_context();
    begin.load();
    move || match &*begin.refused.read() {
        None => view! {
            <main class="page">
                <p role="status" data-testid="loading-yard">
                    {text::loading(&begin.address())}
                </p>
            </main>
        }
        .into_any(),
        Some(refusal) => refused(begin, refusal).into_any(),
    }
}

fn refused(begin: Begin, refusal: &Refusal) -> impl IntoView + use<> {
    let line = |fault: &Fault| view! { <li>{faults::fault(fault)}</li> };
    let faults = match refusal {
        Refusal::Faults(faults) => faults.iter().map(line).collect_view(),
        Refusal::Failed(_) => Vec::new(),
    };
    let use_demo = move |_| {
        begin.open_unkept(demo());
    };
    view! {
        <main class="page">
            <div class="notice" role="alert" data-testid="refused-yard">
                <h1>{text::not_loaded()}</h1>
                <p class="far-address">{begin.address()}</p>
                <p>{text::refusal(refusal)}</p>
                {(!faults.is_empty()).then(|| view! { <ul>{faults}</ul> })}
                <div class="tools">
                    <button type="button" data-testid="try-again" on:click=move |_| begin.load()>
                        {text::try_again()}
                    </button>
                    <button type="button" data-testid="use-demo" on:click=use_demo>
                        {text::use_demo()}
                    </button>
                </div>
            </div>
        </main>
    }
}
