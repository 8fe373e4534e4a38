//! The language that the page speaks, and the change to another one.
//!
//! The start script loads the text of the first one beside the program; the page asks the script for
//! others. All that the page says is asked for anew when the language changes.

use crate::text::labels;
use crate::{browser, start_script};
use leptos::prelude::*;
use leptos::task::spawn_local;
use std::cell::{Cell, RefCell};

/// Where the browser keeps the language that was chosen. The start script reads it.
const KEY: &str = "farend-language";
/// The part of the address that asks for a language. The start script reads it too.
pub const QUERY: &str = "lang";

/// A language.
#[derive(Debug, PartialEq)]
pub struct Language {
    /// Its tag.
    pub tag: &'static str,
    /// What it calls itself.
    pub name: &'static str,
    /// The locale for numbers and dates. Every browser must know it, or the formatter throws.
    pub locale: &'static str,
    /// The locale for lists.
    pub lists: &'static str,
}

include!(concat!(env!("OUT_DIR"), "/languages.rs"));
#[cfg(any(not(target_arch = "wasm32"), debug_assertions))]
include!(concat!(env!("OUT_DIR"), "/built_in.rs"));

/// A language with what is said in it. What has been loaded stays for as long as the page does.
#[derive(Clone, Copy)]
struct Spoken {
    language: &'static Language,
    messages: &'static [&'static str],
}

impl Spoken {
    /// A language with the content of its file: a message a line, behind the version.
    fn of(language: &'static Language, text: String) -> Self {
        let lines: Vec<&str> = text.leak().lines().skip(1).collect();
        Self {
            language,
            messages: lines.leak(),
        }
    }

    /// English, where it is part of the program: in tests, and while the page is being written.
    fn built_in() -> Self {
        #[cfg(any(not(target_arch = "wasm32"), debug_assertions))]
        let text = BUILT_IN[0];
        #[cfg(not(any(not(target_arch = "wasm32"), debug_assertions)))]
        let text = "";
        Self::of(&LANGUAGES[0], text.to_owned())
    }
}

thread_local! {
    static SPOKEN: Cell<Spoken> = Cell::new(Spoken::built_in());
    static LOADED: RefCell<Vec<Spoken>> = const { RefCell::new(Vec::new()) };
}

/// The language that is spoken now.
pub fn spoken() -> &'static Language {
    SPOKEN.get().language
}

/// A message as its file has it.
#[inline(never)]
pub fn message(place: usize) -> &'static &'static str {
    SPOKEN.get().messages.get(place).unwrap_or(&"")
}

/// The languages that are offered: all but the one that is only for trying the page.
pub fn offered() -> &'static [Language] {
    &LANGUAGES[..LANGUAGES.len() - 1]
}

fn tagged(tag: &str) -> Option<&'static Language> {
    LANGUAGES.iter().find(|it| it.tag == tag)
}

/// What the page speaks, for its parts.
#[derive(Clone, Copy)]
pub struct Speech {
    /// The language. Who says anything follows it.
    pub language: RwSignal<&'static Language>,
    /// A language whose text couldn't be loaded, until another one is.
    pub missed: RwSignal<Option<&'static Language>>,
    /// The one that was chosen last, whose text may still be on its way.
    asked: StoredValue<&'static str>,
}

impl Speech {
    /// Begins with what the start script has loaded.
    pub fn start() -> Self {
        let first = start_script::first_text().and_then(|first| {
            let language = tagged(&first.tag)?;
            take(Spoken::of(language, first.text));
            Some(first.missed)
        });
        name_document();
        Self {
            language: RwSignal::new(spoken()),
            missed: RwSignal::new(first.flatten().as_deref().and_then(tagged)),
            asked: StoredValue::new(spoken().tag),
        }
    }

    /// What the page has provided to its parts.
    pub fn of_page() -> Self {
        expect_context()
    }

    /// Changes to another language, and keeps the choice. Where its text can't be loaded, the page
    /// says so in the language that it speaks.
    pub fn choose(self, tag: &str) {
        let Some(language) = tagged(tag) else {
            return;
        };
        self.asked.set_value(language.tag);
        let loaded =
            LOADED.with_borrow(|all| all.iter().find(|it| it.language == language).copied());
        if let Some(loaded) = loaded {
            return self.change(loaded);
        }
        spawn_local(async move {
            let text = start_script::text_of(language.tag).await;
            if self.asked.get_value() != language.tag {
                return;
            }
            match text {
                Some(text) => self.change(Spoken::of(language, text)),
                None => self.missed.set(Some(language)),
            }
        });
    }

    fn change(self, to: Spoken) {
        take(to);
        name_document();
        let tag = to.language.tag;
        // Where the browser keeps nothing, the choice holds until the page is closed.
        let _ = browser::keep(KEY, Some(tag));
        browser::replace_query(QUERY, tag);
        self.missed.set(None);
        self.language.set(to.language);
    }
}

/// Speaks a language from now on.
fn take(spoken: Spoken) {
    SPOKEN.set(spoken);
    LOADED.with_borrow_mut(|all| {
        if all.iter().all(|it| it.language != spoken.language) {
            all.push(spoken);
        }
    });
}

/// Lets the browser know what the page speaks.
fn name_document() {
    browser::name_document(spoken().locale, labels::document());
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn english_is_first_and_the_one_for_trying_isn_t_offered() {
        assert_eq!(LANGUAGES[0].tag, "en");
        assert!(offered().iter().all(|it| it.tag != "pseudo"));
        assert_eq!(tagged("pseudo"), LANGUAGES.last());
    }

    #[test]
    fn what_is_said_follows_the_language() {
        let speak = |tag: &str| {
            let all = LANGUAGES.iter().zip(BUILT_IN);
            let (language, text) = all.into_iter().find(|(it, _)| it.tag == tag).unwrap();
            take(Spoken::of(language, text.to_owned()));
        };
        let told = |tag| {
            speak(tag);
            let range = crate::number::between("27", "30 kW");
            (labels::machine(), range, crate::text::case_word(2))
        };
        assert_eq!(
            told("es"),
            ("Máquina", "27\u{a0}a\u{a0}30 kW".into(), "2 casos".into())
        );
        assert_eq!(
            told("fr"),
            ("Machine", "27\u{a0}à\u{a0}30 kW".into(), "2 cas".into())
        );
        assert_eq!(
            told("en"),
            ("Machine", "27\u{a0}to\u{a0}30 kW".into(), "2 cases".into())
        );
    }

    #[test]
    fn every_language_has_as_many_messages_as_english() {
        let counts = LANGUAGES.iter().zip(BUILT_IN);
        let counts = counts.map(|(it, text)| Spoken::of(it, text.to_owned()).messages.len());
        let counts: Vec<_> = counts.collect();
        assert!(
            counts.iter().all(|it| *it == counts[0] && *it > 100),
            "{counts:?}"
        );
    }
}
