//! What parts of the page follow in the browser: printing, and an element's size.

use leptos::html::ElementType;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::{Element, ResizeObserver};

/// Whether the page is being printed.
pub fn printing() -> ReadSignal<bool> {
    let (printing, set) = signal(false);
    for (event, is) in [("beforeprint", true), ("afterprint", false)] {
        let handle = window_event_listener_untyped(event, move |_| set.set(is));
        on_cleanup(move || handle.remove());
    }
    printing
}

/// Measures an element once it's there, and whenever its size has changed.
pub fn size<E>(node: NodeRef<E>, measure: impl Fn(&Element) + Copy + 'static)
where
    E: ElementType + 'static,
    E::Output: JsCast + Clone + AsRef<Element> + 'static,
{
    Effect::new(move |_| {
        let Some(element) = node.get() else {
            return;
        };
        let measured = element.clone();
        let measure = Closure::<dyn FnMut()>::new(move || measure(measured.as_ref()));
        let Ok(observer) = ResizeObserver::new(measure.as_ref().unchecked_ref()) else {
            return;
        };
        observer.observe(element.as_ref());
        let kept = StoredValue::new_local((observer, measure));
        on_cleanup(move || {
            let _ = kept.try_with_value(|(observer, _)| observer.disconnect());
        });
    });
}
