//! A set for a group, and what the group says.

use super::desk::Desk;
use crate::browser;
use crate::model::Model;
use farend_core::practice::{Draw, Kinds, Set as CaseSet};
use farend_core::quantity::Power;
use leptos::prelude::*;

/// Cases of a set to begin with: this project's judgement.
const COUNT: u8 = 6;

/// What a group says to one case.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Tally {
    of: Option<Draw>,
    /// Voices for each choice, as far as there are any.
    voices: Vec<u32>,
    /// Powers that were said.
    pub powers: Vec<Power>,
}

/// Cases for many.
#[derive(Clone, Copy)]
pub struct Group {
    model: Model,
    set: Memo<Vec<Draw>>,
    /// The place of the case that is shown.
    pub place: Memo<usize>,
    at: RwSignal<usize>,
    /// Whether it's shown large.
    pub showing: RwSignal<bool>,
    draw: Signal<Option<Draw>>,
    /// The case.
    pub desk: Desk,
    tally: RwSignal<Tally>,
}

impl Group {
    /// With the first case of a set.
    pub fn new(model: Model, set: Memo<Vec<Draw>>) -> Self {
        let at = RwSignal::new(0);
        let place = Memo::new(move |_| at.get().min(set.read().len().saturating_sub(1)));
        let draw = Signal::derive(move || set.read().get(place.get()).copied());
        Self {
            model,
            set,
            place,
            at,
            showing: RwSignal::new(false),
            draw,
            desk: Desk::new(model, draw),
            tally: RwSignal::default(),
        }
    }

    /// The set that is open, else one to begin with.
    pub fn chosen(self) -> Option<CaseSet> {
        self.model.state.read().practice
    }

    /// How many cases the set has.
    pub fn count(self) -> usize {
        self.set.read().len()
    }

    /// Opens a set of all kinds.
    pub fn draw_anew(self) {
        let before = self.model.state.read_untracked().practice;
        self.choose(CaseSet {
            seed: browser::any_number(),
            kinds: before.map_or(Kinds::ALL, |set| set.kinds),
            count: before.map_or(COUNT, |set| set.count),
        });
    }

    /// Opens a set.
    pub fn choose(self, set: CaseSet) {
        self.at.set(0);
        self.desk.close();
        self.model.state.update(|state| state.practice = Some(set));
    }

    /// Goes to another case.
    pub fn go_to(self, place: usize) {
        self.desk.close();
        self.at.set(place);
    }

    /// What the group says to the case that is shown.
    pub fn tally(self) -> Tally {
        let tally = self.tally.read();
        if tally.of == self.draw.get() {
            tally.clone()
        } else {
            Tally::default()
        }
    }

    /// Voices for a choice.
    pub fn voices(self, choice: usize) -> u32 {
        let tally = self.tally();
        tally.voices.get(choice).copied().unwrap_or_default()
    }

    fn change(self, change: impl FnOnce(&mut Tally)) {
        let mut tally = untrack(|| self.tally());
        tally.of = self.draw.get_untracked();
        change(&mut tally);
        self.tally.set(tally);
    }

    /// One voice more or fewer for a choice.
    pub fn count_voice(self, choice: usize, more: bool) {
        self.change(|tally| {
            if tally.voices.len() <= choice {
                tally.voices.resize(choice + 1, 0);
            }
            if let Some(count) = tally.voices.get_mut(choice) {
                *count = match more {
                    true => count.saturating_add(1),
                    false => count.saturating_sub(1),
                };
            }
        });
    }

    /// A power that somebody says.
    pub fn add_power(self, power: Power) {
        self.change(|tally| tally.powers.push(power));
    }

    /// Takes back a power.
    pub fn remove_power(self, place: usize) {
        self.change(|tally| {
            if place < tally.powers.len() {
                tally.powers.remove(place);
            }
        });
    }
}
