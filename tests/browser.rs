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

fn mounted() -> Mounted {
    let section: HtmlElement = document()
        .create_element("section")
        .unwrap()
        .unchecked_into();
    document().body().unwrap().append_child(&section).unwrap();
    let page = mount_to(section.clone(), farend_app::Page);
    Mounted {
        section,
        _page: Box::new(page),
    }
}

/// Until every effect has run: they are queued behind one another, before the browser's next task.
async fn settled() {
    let next_task = js_sys::Promise::new(&mut |resolve, _| {
        window()
            .set_timeout_with_callback(&resolve)
            .expect("a task can be queued");
    });
    JsFuture::from(next_task).await.unwrap();
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

    fn text(&self, selector: &str) -> String {
        self.find::<HtmlElement>(selector).text_content().unwrap()
    }

    async fn tell(&self, element: &HtmlElement, event: &str) {
        let options = EventInit::new();
        options.set_bubbles(true);
        let event = Event::new_with_event_init_dict(event, &options).unwrap();
        element.dispatch_event(&event).unwrap();
        settled().await;
    }

    async fn choose(&self, list: &str, id: &str) {
        let list: HtmlSelectElement = self.find(&format!("[data-testid={list}]"));
        list.set_value(id);
        self.tell(&list, "change").await;
    }

    async fn enter(&self, selector: &str, value: &str, event: &str) {
        let input: HtmlInputElement = self.find(selector);
        input.set_value(value);
        self.tell(&input, event).await;
    }
}

const HYDRAULICS: &str = "[data-testid=machine_hydraulics] [data-testid=delivered]";
const SLIDER: &str = "[data-testid=ownrelief] [data-testid=slider]";
const NUMBER: &str = "[data-testid=ownrelief] [data-testid=number]";

#[wasm_bindgen_test]
async fn six_routes_stand_beside_each_other() {
    let page = mounted();
    settled().await;
    let rows = page.section.query_selector_all("label.row").unwrap();
    assert_eq!(rows.length(), 6);
    assert!(
        page.text("[data-testid=answer]")
            .contains("the rear shaft brings most")
    );
}

#[wasm_bindgen_test]
async fn every_step_of_a_slider_moves_number_bar_and_ledger() {
    let page = mounted();
    settled().await;
    let mut before = page.text(HYDRAULICS);
    for bar in ["160", "120", "80"] {
        page.enter(SLIDER, bar, "input").await;
        assert_eq!(page.find::<HtmlInputElement>(NUMBER).value(), bar);
        let now = page.text(HYDRAULICS);
        assert_ne!(now, before);
        let number = now.split('\u{a0}').next().unwrap().to_owned();
        assert!(page.text("[data-testid=at-rotor]").starts_with(&number));
        before = now;
    }
}

#[wasm_bindgen_test]
async fn a_slider_follows_its_number_box_even_after_it_was_dragged() {
    let page = mounted();
    settled().await;
    page.enter(SLIDER, "100", "input").await;
    page.enter(NUMBER, "210", "change").await;
    assert_eq!(page.find::<HtmlInputElement>(SLIDER).value(), "210");
    page.enter(NUMBER, "9999", "change").await;
    let number: HtmlInputElement = page.find(NUMBER);
    assert_eq!(number.value(), "9999");
    assert_eq!(number.get_attribute("aria-invalid").unwrap(), "true");
    assert_eq!(page.find::<HtmlInputElement>(SLIDER).value(), "210");
}

#[wasm_bindgen_test]
async fn sliders_stand_right_when_a_machine_with_other_ranges_is_chosen() {
    let page = mounted();
    settled().await;
    for machine in ["gannet-90", "wren-18", "puffin-62", "heron-68"] {
        page.choose("machine", machine).await;
        let shown: f64 = page
            .find::<HtmlInputElement>(NUMBER)
            .value()
            .parse()
            .unwrap();
        let slid: f64 = page
            .find::<HtmlInputElement>(SLIDER)
            .value()
            .parse()
            .unwrap();
        assert!((shown - slid).abs() <= 1.0, "{machine}: {shown} {slid}");
    }
}

#[wasm_bindgen_test]
async fn the_curve_is_drawn_and_its_table_says_the_same() {
    let page = mounted();
    settled().await;
    let curve: HtmlElement = page.find("[data-testid=curve]");
    assert!(
        curve
            .get_attribute("aria-label")
            .unwrap()
            .contains("relief pressure")
    );
    let rows = page
        .section
        .query_selector_all("[data-testid=curve-table] tbody tr")
        .unwrap();
    assert!(rows.length() >= 5);
}
