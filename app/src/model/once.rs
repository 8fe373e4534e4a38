//! Models of views: made when a view is first opened, and there for as long as the page is.

use leptos::prelude::*;
use leptos::reactive::owner::Owner;

/// A model that may not have been made yet.
#[derive(Clone, Copy)]
pub struct Once<T: 'static> {
    made: RwSignal<Option<T>>,
    /// The page, which the model lives as long as.
    page: StoredValue<Owner>,
}

impl<T: Copy + Send + Sync> Once<T> {
    /// Within the page, which makes none yet.
    pub fn new() -> Self {
        Self {
            made: RwSignal::new(None),
            page: StoredValue::new(Owner::current().unwrap_or_default()),
        }
    }

    /// The model, where it has been made.
    pub fn get(self) -> Option<T> {
        self.made.get()
    }

    /// The page's model, made where there is none.
    pub fn of_page(make: impl FnOnce() -> T) -> T {
        let once = expect_context::<Self>();
        if let Some(made) = once.made.get_untracked() {
            return made;
        }
        let made = once.page.with_value(|page| page.with(|| untrack(make)));
        once.made.set(Some(made));
        made
    }
}
