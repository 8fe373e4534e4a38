//! What the first view doesn't need. Built with the feature `split`, it is in files of its own, which
//! load as soon as the first view stands.

use super::begin::FarYard;
use super::deciding::Deciding;
use super::deeper::Deeper;
use super::foot::Foot;
use super::for_host::ForHost;
use super::grid::GridView;
use super::header::FileTools;
use super::keeping::KeepingBox;
use super::ledger::LedgerView;
use super::newer::NewerBox;
use super::notice::NoticeBox;
use super::opening::DropHint;
use super::practice::PracticeView;
use super::save::SaveTools;
use super::table_in::TableIn;
use super::take_home::TakeHome;
use super::what_if::WhatIf;
use super::yard::YardView;
use crate::text::labels;
use leptos::prelude::*;
use leptos::task::spawn_local;
use std::pin::Pin;

/// What makes a part's view, once it's there.
type Make = fn() -> AnyView;
/// A part that is being loaded.
type Loading<T> = Pin<Box<dyn Future<Output = Result<T, NotLoaded>>>>;
/// Loads a part.
type Load = fn() -> Loading<Make>;

/// A part's file couldn't be loaded.
#[derive(Clone, Copy, Debug)]
pub struct NotLoaded;

#[cfg(feature = "split")]
impl From<wasm_split_helpers::SplitLoaderError> for NotLoaded {
    fn from(_: wasm_split_helpers::SplitLoaderError) -> Self {
        Self
    }
}

/// Functions that load parts: a name, the file that it's in, what it's to be called by.
macro_rules! parts {
    ($($name:ident in $file:ident: $of:ty = $part:expr;)*) => {
        $(
            /// Loads the part of this name.
            pub fn $name() -> Loading<$of> {
                #[cfg(feature = "split")]
                #[allow(unsafe_code)]
                #[wasm_split_helpers::wasm_split($file, fallible)]
                fn $name() -> Result<$of, NotLoaded> {
                    Ok($part)
                }
                #[cfg(not(feature = "split"))]
                async fn $name() -> Result<$of, NotLoaded> {
                    Ok($part)
                }
                Box::pin($name())
            }
        )*
    };
}

parts! {
    deciding in details: Make = || Deciding().into_any();
    deeper in details: Make = || Deeper().into_any();
    drop_hint in details: Make = || DropHint().into_any();
    far_yard in details: Make = || FarYard().into_any();
    file_tools in details: Make = || FileTools().into_any();
    following in details: Make = || super::following::Following().into_any();
    foot in details: Make = || Foot().into_any();
    for_host in details: Make = || ForHost().into_any();
    grid in yard: Make = || GridView().into_any();
    keeping in details: Make = || KeepingBox().into_any();
    ledger in details: Make = || LedgerView().into_any();
    newer in details: Make = || NewerBox().into_any();
    notice in details: Make = || NoticeBox().into_any();
    practice in practice: Make = || PracticeView().into_any();
    save_tools in details: Make = || SaveTools().into_any();
    serving in rows: fn() = crate::worker::serve;
    table_in in yard: Make = || TableIn().into_any();
    take_home in details: Make = || TakeHome().into_any();
    what_if in details: Make = || WhatIf().into_any();
    yard in yard: Make = || YardView().into_any();
}

/// One of each file, in the order in which they are likely to be wanted.
const FILES: [Load; 3] = [what_if, grid, practice];

/// Loads all files, so that nothing needs the network later. What fails is tried again when it's wanted.
pub fn load_all() {
    spawn_local(async {
        for load in FILES {
            let _ = load().await;
        }
    });
}

/// A part of the page, as soon as it has loaded.
#[component]
pub fn Later(
    /// What loads it.
    load: Load,
) -> impl IntoView {
    let made = RwSignal::new(None);
    let fetch = move || {
        made.set(None);
        spawn_local(async move {
            let part = load().await;
            // The reader may have gone elsewhere meanwhile.
            made.try_set(Some(part));
        });
    };
    fetch();
    move || match made.get() {
        None => ().into_any(),
        Some(Ok(make)) => make(),
        Some(Err(NotLoaded)) => view! {
            <p class="notice" role="alert">
                {labels::not_loaded()}
                <button type="button" on:click=move |_| fetch()>
                    {labels::try_again()}
                </button>
            </p>
        }
        .into_any(),
    }
}
