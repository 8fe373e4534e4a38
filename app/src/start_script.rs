//! What the start script hands over: the text of the first language, and the way to others. And what is
//! left with it, for when the program fails.

use js_sys::{Function, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

/// The text of a language as it was loaded beside the program.
pub struct FirstText {
    /// The language.
    pub tag: String,
    /// What its file holds.
    pub text: String,
    /// The language that was wanted, where its text couldn't be loaded.
    pub missed: Option<String>,
}

/// A thing that the script has put where the program finds it.
fn handed(name: &str) -> Option<JsValue> {
    let all = Reflect::get(&js_sys::global(), &"farend".into()).ok()?;
    // There is nothing where no script has started the program, as in tests.
    Reflect::get(&all, &name.into()).ok()
}

/// The text of the first language.
pub fn first_text() -> Option<FirstText> {
    let word = |name| handed(name)?.as_string();
    Some(FirstText {
        tag: word("language")?,
        text: word("text")?,
        missed: word("missed"),
    })
}

/// The text of a language of the program's own version. `None` where it can't be loaded.
pub async fn text_of(tag: &str) -> Option<String> {
    let load: Function = handed("textOf")?.dyn_into().ok()?;
    let loading: Promise = load
        .call1(&JsValue::UNDEFINED, &tag.into())
        .ok()?
        .dyn_into()
        .ok()?;
    JsFuture::from(loading).await.ok()?.as_string()
}

/// Leaves the yard where it outlasts a failure of the program. `None` where it need not be kept.
pub fn put_aside(yard: Option<&str>) {
    if let Ok(all) = Reflect::get(&js_sys::global(), &"farend".into()) {
        // There is nothing to leave it with where no script has started the program.
        let _ = Reflect::set(&all, &"yard".into(), &yard.into());
    }
}
