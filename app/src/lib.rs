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
mod lettering;
mod link;
mod model;
mod number;
mod rest;
mod segments;
mod storage;
mod tables;
mod text;
mod view;
mod worker;

pub use model::Model;
pub use view::page::Page;
pub use worker::serve;

/// Puts the page in the document, in place of what stood there while it loaded.
pub fn start() {
    browser::remove("loading");
    leptos::mount::mount_to_body(Page);
}
