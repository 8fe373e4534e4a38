//! The page. It shows what `farend_core` computes and computes no physics itself.
//!
//! One way for data: the yard and the state are the only things stored ([`model::Model`]); all
//! that is shown derives from them; only controls, links and files change them.

mod browser;
mod embed;
mod far_yard;
mod fetched;
mod figure;
mod grid_work;
mod intl;
mod language;
mod lettering;
mod link;
mod model;
mod number;
mod offline;
mod outdoors;
mod rest;
mod segments;
mod start_script;
mod storage;
mod tables;
mod text;
mod view;
mod worker;

pub use model::Model;
pub use view::page::Page;

/// Answers a page for which this program works as a worker.
pub fn serve() {
    wasm_bindgen_futures::spawn_local(async {
        // A page that hears nothing does the work itself.
        if let Ok(serve) = view::parts::serving().await {
            serve();
        }
    });
}

/// Puts the page in the document, in place of what stood there while it loaded.
pub fn start() {
    browser::remove("loading");
    leptos::mount::mount_to_body(Page);
}
