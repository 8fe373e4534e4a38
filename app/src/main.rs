//! Starts the page, or what works beside it.

fn main() {
    console_error_panic_hook::set_once();
    // The same program runs in a worker, where there is no window.
    if web_sys::window().is_some() {
        farend_app::start();
    } else {
        farend_app::serve();
    }
}
