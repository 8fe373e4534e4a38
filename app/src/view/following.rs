//! What follows the state without being seen: the page's address, and the yard that the browser keeps.

use crate::link;
use crate::model::Model;
use crate::storage::Keeper;
use leptos::prelude::*;

/// Nothing to look at.
#[component]
pub fn Following() -> impl IntoView {
    let model = Model::of_page();
    link::follow(model);
    Keeper::of_page().follow(model);
}
