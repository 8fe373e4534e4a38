//! Tests that need a real browser. They run in Chromium, by `cargo xtask test`.

#![cfg(target_arch = "wasm32")]

use leptos::mount::mount_to;
use leptos::prelude::*;
use std::any::Any;
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};
use web_sys::{Event, EventInit, HtmlElement, HtmlInputElement, HtmlSelectElement};

wasm_bindgen_test_configure!(run_in_browser);

/// The page in a section of its own, taken away again when this goes out of scope.
struct Mounted {
    section: HtmlElement,
    /// Unmounts when dropped.
    _page: Box<dyn Any>,
}

async fn mounted() -> Mounted {
    // The page before may have left what it showed in the address.
    window().location().set_hash("").unwrap();
    let section: HtmlElement = document()
        .create_element("section")
        .unwrap()
        .unchecked_into();
    document().body().unwrap().append_child(&section).unwrap();
    let page = mount_to(section.clone(), farend_app::Page);
    let mounted = Mounted {
        section,
        _page: Box::new(page),
    };
    // What the first view doesn't need comes after it.
    let all = ["ledger", "ownrelief"].map(|id| format!("[data-testid={id}]"));
    until("all of the pair is there", || {
        let is_there = |it: &String| mounted.section.query_selector(it).unwrap().is_some();
        all.iter().all(is_there)
    })
    .await;
    mounted
}

/// Lets the browser go on until something holds: effects are queued behind one another.
async fn until(what: &str, holds: impl Fn() -> bool) {
    const MOST_TASKS: usize = 500;
    for _ in 0..MOST_TASKS {
        if holds() {
            return;
        }
        let next_task = js_sys::Promise::new(&mut |resolve, _| {
            window()
                .set_timeout_with_callback(&resolve)
                .expect("a task can be queued");
        });
        JsFuture::from(next_task).await.unwrap();
    }
    panic!("waited in vain: {what}");
}

impl Drop for Mounted {
    fn drop(&mut self) {
        self.section.remove();
    }
}

impl Mounted {
    fn find<E: JsCast>(&self, selector: &str) -> E {
        let found = self.section.query_selector(selector).unwrap();
        found
            .unwrap_or_else(|| panic!("{selector} is on the page"))
            .unchecked_into()
    }

    fn value(&self, selector: &str) -> String {
        self.find::<HtmlInputElement>(selector).value()
    }

    fn text(&self, selector: &str) -> String {
        self.find::<HtmlElement>(selector).text_content().unwrap()
    }

    fn tell(&self, element: &HtmlElement, event: &str) {
        let options = EventInit::new();
        options.set_bubbles(true);
        let event = Event::new_with_event_init_dict(event, &options).unwrap();
        element.dispatch_event(&event).unwrap();
    }

    fn choose(&self, list: &str, id: &str) {
        let list: HtmlSelectElement = self.find(&format!("[data-testid={list}]"));
        list.set_value(id);
        self.tell(&list, "change");
    }

    fn enter(&self, selector: &str, value: &str, event: &str) {
        let input: HtmlInputElement = self.find(selector);
        input.set_value(value);
        self.tell(&input, event);
    }
}

const HYDRAULICS: &str = "[data-testid=machine_hydraulics] [data-testid=delivered]";
const SLIDER: &str = "[data-testid=ownrelief] [data-testid=slider]";
const NUMBER: &str = "[data-testid=ownrelief] [data-testid=number]";

#[wasm_bindgen_test]
fn the_browser_gives_the_same_bits_as_the_native_build() {
    farend_tests::fingerprint::assert_committed();
}

#[wasm_bindgen_test]
fn the_browser_draws_the_same_cases_as_the_native_build() {
    farend_tests::draws::assert_committed();
}

#[wasm_bindgen_test]
async fn six_routes_stand_beside_each_other() {
    let page = mounted().await;
    let rows = page.section.query_selector_all("label.row").unwrap();
    assert_eq!(rows.length(), 6);
    let answer = page.text("[data-testid=answer]");
    assert!(answer.contains("take the"), "{answer}");
}

#[wasm_bindgen_test]
async fn every_step_of_a_slider_moves_number_bar_and_ledger() {
    let page = mounted().await;
    for bar in ["160", "120", "80"] {
        let before = page.text(HYDRAULICS);
        page.enter(SLIDER, bar, "input");
        until("the number follows", || page.value(NUMBER) == bar).await;
        until("the bar follows", || page.text(HYDRAULICS) != before).await;
        let now = page.text(HYDRAULICS);
        let number = now.split('\u{a0}').next().unwrap();
        until("the ledger follows", || {
            page.text("[data-testid=at-rotor]").starts_with(number)
        })
        .await;
    }
}

#[wasm_bindgen_test]
async fn a_slider_follows_its_number_box_even_after_it_was_dragged() {
    let page = mounted().await;
    page.enter(SLIDER, "100", "input");
    until("the number follows", || page.value(NUMBER) == "100").await;
    page.enter(NUMBER, "210", "change");
    until("the slider follows", || page.value(SLIDER) == "210").await;
    page.enter(NUMBER, "9999", "change");
    let number: HtmlInputElement = page.find(NUMBER);
    until("the number is refused", || {
        number.get_attribute("aria-invalid").as_deref() == Some("true")
    })
    .await;
    assert_eq!(page.value(NUMBER), "9999");
    assert_eq!(page.value(SLIDER), "210");
}

#[wasm_bindgen_test]
async fn sliders_stand_right_when_a_machine_with_other_ranges_is_chosen() {
    let page = mounted().await;
    for (machine, name) in [
        ("gannet-90", "Gannet"),
        ("wren-18", "Wren"),
        ("puffin-62", "Puffin"),
        ("heron-68", "Heron"),
    ] {
        page.choose("machine", machine);
        until("the answer follows", || {
            page.text("[data-testid=answer]").contains(name)
        })
        .await;
        until("slider and number agree", || {
            let [number, slider] =
                [NUMBER, SLIDER].map(|part| page.value(part).parse::<f64>().unwrap());
            (number - slider).abs() <= 1.0
        })
        .await;
    }
}

#[wasm_bindgen_test]
async fn the_curve_has_its_message_and_its_table() {
    let page = mounted().await;
    let curve: HtmlElement = page.find("[data-testid=curve]");
    until("the curve has its message", || {
        let message = curve.get_attribute("aria-label");
        message.is_some_and(|message| message.contains("relief pressure"))
    })
    .await;
    let rows = page
        .section
        .query_selector_all("[data-testid=curve-table] tbody tr")
        .unwrap();
    assert!(rows.length() >= 5);
}
