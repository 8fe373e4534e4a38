//! The edited yard is kept in this browser, and nothing that is kept there is lost unasked.

use crate::browser::{self, NotKept};
use crate::model::Model;
use crate::model::yard::demo;
use crate::rest::AfterRest;
use crate::start_script;
use farend_core::yard::edit::{Change, Editing};
use farend_core::yard::history::Deed;
use farend_core::yard::kept::{self, KeptFault};
use leptos::ev;
use leptos::prelude::*;
use std::time::Duration;

/// Where the yard is kept.
const KEY: &str = "farend-yard";
/// Where one is set aside that can't be read, with a number behind it.
const ASIDE: &str = "farend-yard-set-aside";
/// The most that are set aside: one more stays where it is.
const MOST_ASIDE: usize = 5;
/// How long changes must rest before the yard is written: it may be large.
const REST: Duration = Duration::from_millis(400);

/// How the yard is kept.
#[derive(Clone, Debug, PartialEq)]
pub enum Keeping {
    /// After each change, as soon as there is one.
    Kept,
    /// The browser doesn't: it gives no room, or no more.
    Not(NotKept),
    /// After each change; what was kept before couldn't be read and was set aside.
    SetAside(String),
    /// Not before the user says so: what is kept is from a newer version, or can neither be read nor
    /// be set aside.
    Held(String),
    /// Not before the user says whose: another tab keeps this, or nothing but the demo.
    Other(Option<String>),
    /// Not before the user says whose: the demo was asked for, by the address or for a link, and this is
    /// kept.
    PassedOver(String),
    /// Not at all: the yard comes from an address, and what is kept is another one.
    OfAddress,
}

/// Keeps the yard.
#[derive(Clone, Copy)]
pub struct Keeper {
    /// How it is kept.
    pub keeping: RwSignal<Keeping>,
    /// Whether the user is being told.
    pub telling: RwSignal<bool>,
    /// What the browser keeps, as far as this tab knows.
    known: StoredValue<Option<String>>,
    /// What need not be kept, as it would be: the demo, or what came from an address.
    given: StoredValue<Option<String>>,
    /// Whether the user has been told that nothing is kept.
    told: StoredValue<bool>,
}

impl Keeper {
    /// The yard that is kept, else the demo.
    pub fn start() -> (Editing, Self) {
        let demo = demo();
        let (yard, keeping, known) = match browser::kept(KEY) {
            // Told as soon as there is something to keep.
            Err(why) => (None, Keeping::Not(why), None),
            Ok(None) => (None, Keeping::Kept, None),
            Ok(Some(text)) => match kept::read(&text) {
                Ok(yard) => (Some(yard), Keeping::Kept, Some(text)),
                Err(KeptFault::Damaged) if set_aside(&text) => {
                    (None, Keeping::SetAside(text), None)
                }
                Err(_) => (None, Keeping::Held(text.clone()), Some(text)),
            },
        };
        let keeper = Self::of(keeping, known, &demo);
        (yard.unwrap_or(demo), keeper)
    }

    /// The demo, whatever is kept: that stays as it is.
    pub fn start_with_demo() -> (Editing, Self) {
        let demo = demo();
        let kept = browser::kept(KEY).ok().flatten();
        let keeping = kept.clone().map_or(Keeping::Kept, Keeping::PassedOver);
        let keeper = Self::of(keeping, kept, &demo);
        (demo, keeper)
    }

    /// For a yard that comes from an address: nothing is kept, and what is kept isn't touched.
    pub fn of_address(yard: &Editing) -> Self {
        Self::of(Keeping::OfAddress, None, yard)
    }

    fn of(keeping: Keeping, known: Option<String>, given: &Editing) -> Self {
        let telling = matches!(
            keeping,
            Keeping::SetAside(_) | Keeping::Held(_) | Keeping::PassedOver(_)
        );
        Self {
            keeping: RwSignal::new(keeping),
            telling: RwSignal::new(telling),
            known: StoredValue::new(known),
            given: StoredValue::new(kept::write(given)),
            told: StoredValue::new(false),
        }
    }

    /// Whether the yard comes from an address.
    pub fn is_of_address(self) -> bool {
        *self.keeping.read() == Keeping::OfAddress
    }

    /// The keeper that the page has provided to its parts.
    pub fn of_page() -> Self {
        expect_context()
    }

    /// Keeps the yard from now on, and listens to other tabs.
    pub fn follow(self, model: Model) {
        let at_rest = AfterRest::of(REST);
        Effect::new(move |_| {
            model.editing.track();
            at_rest.then(move || self.keep(model));
        });
        // Whoever closes the page doesn't wait for changes to rest.
        let leaving = [
            window_event_listener_untyped("pagehide", move |_| self.keep(model)),
            window_event_listener_untyped("visibilitychange", move |_| self.keep(model)),
        ];
        let others = window_event_listener(ev::storage, move |_| self.look(model));
        on_cleanup(move || {
            leaving.into_iter().for_each(|it| it.remove());
            others.remove();
        });
    }

    /// Keeps the yard at once. False where its changes last only as long as this page.
    pub fn keep_now(self, model: Model) -> bool {
        self.keep(model);
        let own = self.own(model);
        own.is_none() || self.known.with_value(|known| *known == own)
    }

    /// Keeps the yard as it is now, where that is allowed and new.
    fn keep(self, model: Model) {
        let own = self.own(model);
        start_script::put_aside(own.as_deref());
        // The step that passed over it may have been taken back.
        let is_back = matches!(
            &*self.keeping.read_untracked(),
            Keeping::PassedOver(kept) if Some(kept) == own.as_ref()
        );
        if is_back {
            self.settle();
        }
        if matches!(
            *self.keeping.read_untracked(),
            Keeping::Held(_) | Keeping::Other(_) | Keeping::PassedOver(_)
        ) {
            return;
        }
        if self.known.with_value(|known| *known == own) {
            return;
        }
        if *self.keeping.read_untracked() == Keeping::OfAddress {
            return self.tell_once(Keeping::OfAddress);
        }
        let kept = match browser::kept(KEY) {
            // Another tab was faster.
            Ok(there) if self.known.with_value(|known| *known != there) && there != own => {
                return self.tell(Keeping::Other(there));
            }
            Ok(_) => browser::keep(KEY, own.as_deref()),
            Err(why) => Err(why),
        };
        match kept {
            Ok(()) => {
                self.known.set_value(own);
                self.told.set_value(false);
                if matches!(*self.keeping.read_untracked(), Keeping::Not(_)) {
                    self.keeping.set(Keeping::Kept);
                    self.telling.set(false);
                }
            }
            Err(why) => self.tell_once(Keeping::Not(why)),
        }
    }

    /// The yard as it would be kept: nothing where it need not be.
    fn own(self, model: Model) -> Option<String> {
        let own = kept::write(&model.editing.read_untracked());
        self.given
            .with_value(|given| own.filter(|own| Some(own) != given.as_ref()))
    }

    /// Looks whether another tab keeps something else now.
    fn look(self, model: Model) {
        let Ok(there) = browser::kept(KEY) else {
            return;
        };
        if matches!(
            *self.keeping.read_untracked(),
            Keeping::Held(_) | Keeping::OfAddress
        ) || self.known.with_value(|known| *known == there)
        {
            return;
        }
        if there == self.own(model) {
            self.known.set_value(there);
            self.settle();
        } else {
            self.tell(Keeping::Other(there));
        }
    }

    fn tell(self, keeping: Keeping) {
        self.keeping.set(keeping);
        self.telling.set(true);
    }

    /// Tells what the user need not hear again at every change.
    fn tell_once(self, keeping: Keeping) {
        if !self.told.get_value() {
            self.told.set_value(true);
            self.tell(keeping);
        }
    }

    /// From here on all is kept as ever.
    fn settle(self) {
        self.keeping.set(Keeping::Kept);
        self.telling.set(false);
    }

    /// This tab's yard is kept in place of what is kept now.
    pub fn keep_own(self, model: Model) {
        if let Ok(there) = browser::kept(KEY) {
            self.known.set_value(there);
        }
        self.settle();
        self.keep(model);
    }

    /// Opens the demo as a step, and passes over what is kept until the user says which of the two counts.
    pub fn open_demo(self, model: Model) {
        self.keep(model);
        model.open_demo();
        let is_kept = matches!(
            *self.keeping.read_untracked(),
            Keeping::Kept | Keeping::SetAside(_)
        );
        if let Some(kept) = self.known.get_value().filter(|_| is_kept) {
            self.tell(Keeping::PassedOver(kept));
        }
    }

    /// Takes over the yard of the other tab, or what was passed over, as a step.
    pub fn take_other(self, model: Model) {
        let text = match self.keeping.get_untracked() {
            Keeping::Other(text) => text,
            Keeping::PassedOver(text) => Some(text),
            _ => return,
        };
        let yard = match &text {
            None => demo(),
            Some(text) => match kept::read(text) {
                Ok(yard) => yard,
                // A newer version runs there.
                Err(_) => return self.tell(Keeping::Held(text.clone())),
            },
        };
        let deed = Deed::TookOver(yard.sound().name);
        model.edit(Change::All(Box::new(yard)), deed);
        self.known.set_value(text);
        self.settle();
    }
}

/// Puts what can't be read where nothing overwrites it. False where that can't be done.
fn set_aside(text: &str) -> bool {
    let free = (1..=MOST_ASIDE)
        .map(|number| format!("{ASIDE}-{number}"))
        .find(|key| matches!(browser::kept(key), Ok(None)));
    free.is_some_and(|key| {
        browser::keep(&key, Some(text)).is_ok() && browser::keep(KEY, None).is_ok()
    })
}
