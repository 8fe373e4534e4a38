//! What the browser's own formatters write: numbers, money, dates and lists as the language has them.
//!
//! Outside a browser, where only tests run, English rules stand in for them.

#[cfg(target_arch = "wasm32")]
pub use in_browser::{date, list, money, number, plural};
#[cfg(not(target_arch = "wasm32"))]
pub use outside::{date, list, money, number, plural};

/// The mark before decimals.
pub fn decimal_mark() -> char {
    let shown = number(1.5, 1);
    shown.chars().find(|it| !it.is_numeric()).unwrap_or('.')
}

#[cfg(target_arch = "wasm32")]
mod in_browser {
    use crate::language::{self, Language};
    use js_sys::{Array, Date, Function, Intl, Object, Reflect};
    use std::cell::RefCell;
    use wasm_bindgen::JsValue;

    /// The digits after the point that have a formatter: from none to three.
    const MOST_DIGITS: usize = 3;

    /// Formatters of a language, one for each number of digits: making one is slow.
    type Formats = (&'static Language, [Option<Function>; MOST_DIGITS + 1]);

    thread_local! {
        static FORMATS: RefCell<Option<Formats>> = const { RefCell::new(None) };
    }

    fn locale() -> Array {
        Array::of1(&language::spoken().locale.into())
    }

    fn options(given: &[(&str, JsValue)]) -> Object {
        let options = Object::new();
        for (key, value) in given {
            // Setting a key of a fresh object has no way to fail.
            let _ = Reflect::set(&options, &(*key).into(), value);
        }
        options
    }

    fn digits(count: usize) -> [(&'static str, JsValue); 2] {
        ["minimumFractionDigits", "maximumFractionDigits"].map(|key| (key, (count as f64).into()))
    }

    fn written(format: &Function, value: f64) -> String {
        let text = format.call1(&JsValue::UNDEFINED, &value.into());
        // A formatter writes any number.
        text.ok()
            .and_then(|text| text.as_string())
            .unwrap_or_default()
    }

    /// A number with so many digits after the point, at most three.
    pub fn number(value: f64, count: usize) -> String {
        let spoken = language::spoken();
        FORMATS.with_borrow_mut(|formats| {
            if formats.as_ref().is_none_or(|(of, _)| *of != spoken) {
                *formats = Some((spoken, Default::default()));
            }
            let (_, formats) = formats.get_or_insert_with(|| (spoken, Default::default()));
            let format = formats[count.min(MOST_DIGITS)].get_or_insert_with(|| {
                Intl::NumberFormat::new(&locale(), &options(&digits(count))).format()
            });
            written(format, value)
        })
    }

    /// An amount of money in a currency, which is a code of three capital letters.
    pub fn money(amount: f64, currency: &str, count: usize) -> String {
        let [least, most] = digits(count);
        let options = options(&[
            ("style", "currency".into()),
            ("currency", currency.into()),
            least,
            most,
        ]);
        let format = Intl::NumberFormat::new(&locale(), &options).format();
        written(&format, amount)
    }

    /// The date of a time as headers of the web write it, else today's, in a style of the formatter:
    /// `medium`, `long`.
    pub fn date(written: Option<&str>, style: &str) -> String {
        let options = options(&[("dateStyle", style.into())]);
        let date = written.map_or_else(Date::new_0, |it| Date::new(&it.into()));
        let text = date.to_locale_date_string(language::spoken().locale, &options);
        text.into()
    }

    /// All of a list: "a, b and c".
    pub fn list(items: &[impl AsRef<str>]) -> String {
        let locale = Array::of1(&language::spoken().lists.into());
        let items: Array = items.iter().map(|it| JsValue::from(it.as_ref())).collect();
        Intl::ListFormat::new(&locale, &Object::new())
            .format(&items)
            .into()
    }

    /// The plural category of a count.
    pub fn plural(count: usize) -> String {
        let rules = Intl::PluralRules::new(&locale(), &Object::new());
        rules.select(count as f64).into()
    }
}

#[cfg(not(target_arch = "wasm32"))]
mod outside {
    pub fn number(value: f64, count: usize) -> String {
        format!("{value:.count$}")
    }

    pub fn money(amount: f64, currency: &str, count: usize) -> String {
        format!("{currency}\u{a0}{amount:.count$}")
    }

    pub fn date(_written: Option<&str>, style: &str) -> String {
        style.to_owned()
    }

    pub fn list(items: &[impl AsRef<str>]) -> String {
        let items: Vec<_> = items.iter().map(AsRef::as_ref).collect();
        match items.as_slice() {
            [] => String::new(),
            [one] => (*one).to_owned(),
            [most @ .., last] => format!("{} and {last}", most.join(", ")),
        }
    }

    pub fn plural(count: usize) -> String {
        if count == 1 { "one" } else { "other" }.to_owned()
    }
}
